"""The book as a whole: every page planned from the settings, counted before anything is typeset."""

from __future__ import annotations

from fractions import Fraction

from msgspec import Struct
from msgspec.structs import replace

from layouts.pages.back_pages import (
    back_block,
    closing_draft,
    closing_made_draft,
    is_made_last,
    made_draft,
)
from layouts.pages.covers import cover_draft
from layouts.pages.example_pages import example_blocks, on_one_opening
from layouts.pages.front_pages import front_block
from layouts.pages.marking_sheets import marking_block
from layouts.pages.paging import Furniture, Pages, lay_out
from layouts.pages.pitch_pages import pitch_block
from layouts.pages.reference_pages import reference_blocks
from layouts.paper.page import Block, Draft, Index
from layouts.paper.trim import Trim, trim_of
from layouts.words.pages import heading
from tablegen.errors import BookError
from tablegen.messages import message
from tablegen.numbers import text
from tablegen.numbers.units import INCHES
from tablegen.settings import Settings
from tablegen.tables.opening_runs import MOST_FEET, opening_runs
from tablegen.tables.table import Kind
from tablegen.tables.values import VALUES, values_table

MOST_PAGES = 1000
FIGURES_BESIDE = 47
"""Beside the lengths of an opening, jacks' differences apart."""
LENGTHS_OF_A_JACK = 3


class Plan(Struct, frozen=True):
    """A book whose every page has its number."""

    settings: Settings
    common: Settings
    """Those that all pages are made from that say nothing of the copy."""
    trim: Trim
    drafts: tuple[Draft, ...]
    index: Index
    figures: int
    """Figures in its tables."""

    def pages(self) -> Pages:
        """Return the pages, their contents made as they are taken."""
        return Pages(self.drafts, self.index)


def plan(settings: Settings) -> Plan:
    """Return the plan of a book.

    Errors:
        BookError if it would be over 1,000 pages, saying how many; if it has openings and its runs cannot be their rows

    Notes:
        1. The roofs beside the garden store are left out of a book of openings that would be one section without them.
    """
    made = _plan(settings)
    if settings.roofs is None and on_one_opening(settings) and len(made.index.sections) > 1:
        alone = _plan(replace(settings, roofs=()))
        return alone if len(alone.index.sections) == 1 else made
    return made


def _plan(copy: Settings) -> Plan:
    settings = of_any_copy(copy)
    trim = trim_of(settings)
    if 'opening' in settings.parts:
        _check_rows_of_openings(settings)
    figures = figure_count(settings)
    blocks: list[Block] = [front_block(cover_draft(copy), settings, trim)]
    blocks += [pitch_block(pitch, place, settings, trim) for place, pitch in enumerate(settings.pitches)]
    blocks += reference_blocks(settings, trim)
    marking, made_last = marking_block(settings), is_made_last(copy)
    back = back_block(settings, None if made_last else made_draft(copy, figures))
    ends = (*example_blocks(settings), *((back, marking) if made_last else (marking, back)))
    blocks += [block for block in ends if block]
    pages = sum(len(block.drafts) for block in blocks)
    if pages > MOST_PAGES:
        raise BookError(
            'runs.by',
            message(
                'making.too_many_pages',
                step=text.run(settings.runs.step),
                pitches=len(settings.pitches),
                pages=f'{pages:,}',
            ),
            message('making.most_pages', most=f'{MOST_PAGES:,}'),
            message('making.fewer_pages'),
        )
    furniture = Furniture(
        Draft('notes', lambda index: None, '', heading('notes')),
        closing_draft(settings),
        closing_made_draft(copy, figures) if made_last else closing_draft(settings),
        lambda place, count, names: cover_draft(copy, place, count, names),
    )
    drafts, index = lay_out([block for block in blocks if block.drafts], furniture)
    return Plan(copy, settings, trim, tuple(drafts), index, figures)


def of_any_copy(settings: Settings) -> Settings:
    """Return settings with nothing in them of one copy, its title, its owner, and its paper where pages are as big on any."""
    usual = Settings()
    made = replace(settings, title='', owner='', paper=usual.paper, source='')
    return made if trim_of(made) == trim_of(settings) else replace(made, paper=settings.paper)


def _check_rows_of_openings(settings: Settings) -> None:
    runs, longest = settings.runs, Fraction(INCHES.group * MOST_FEET)
    if text.is_metric(runs.step):
        metric, advice = (
            message('making.metric_opening', run=text.run(runs.step)),
            'making.complete_edition_metric',
        )
        raise BookError('runs.by', metric, message('making.in_feet_and_inches'), message(advice))
    if runs.last > longest:
        long = message('making.past_an_opening', run=text.run(runs.last))
        most = message('making.longest_opening', longest=text.run(longest))
        raise BookError('runs.to', long, most, message('making.complete_edition'))


def figure_count(settings: Settings) -> int:
    """Return how many figures the tables of the pitches print."""
    tables = sum(name in settings.parts for name in ('common', 'hip-valley', 'rise'))
    jacks = sum(int(settings.runs.last // spacing) for spacing in settings.spacings)
    each = settings.runs.count() * tables
    each += LENGTHS_OF_A_JACK * jacks if 'jacks' in settings.parts else 0
    values = [
        column for column in values_table(settings).columns if column.kind not in (Kind.PITCH, Kind.WORD)
    ]
    each += len(values) if VALUES in settings.parts else 0
    if 'opening' in settings.parts:
        each += FIGURES_BESIDE + len(settings.spacings) + 3 * opening_runs(settings).count()
    return each * len(settings.pitches)
