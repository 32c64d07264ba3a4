"""All pitches at a glance: an opening with a row for each pitch, in type that its columns have room for."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from layouts.pages.row_pages import Over, RowsPage, grouped
from layouts.paper.page import Draft, Index, Maker
from layouts.paper.trim import Trim
from layouts.paper.typeface import advance_em
from layouts.words.pages import GLANCE_HEADS, heading
from layouts.words.say import N_, _
from tablegen.geometry.pitch import Pitch
from tablegen.numbers import text
from tablegen.numbers.units import INCHES
from tablegen.settings import Settings
from tablegen.tables.member_columns import One
from tablegen.tables.values import ValueColumns, members_of, text_of, value_columns

ROWS = 24
"""Pitches on an opening."""
PITCH = N_('pitch')
"""Head of the pitches where any has another unit than the rest."""
FIGURES, BOLD, HEAVY = (86, 600), (80, 720), (76, 800)
"""Width and weight of figures, heads and labels, as the style sheet sets them."""
LABEL_EM, HEAD_EM, GAP_EM = 1.13, 0.88, 0.36
"""Size of labels and heads, and what stands left of every column, in em of the figures."""
TYPE_REM = 0.84
"""Figures are as large as that, where there is room."""
Chosen = Callable[[ValueColumns], tuple[One, ...]]
"""Chooses the columns of a page from a pitch's values."""


def glance_drafts(settings: Settings, trim: Trim) -> list[Draft]:
    """Return the openings, to begin on the left."""
    drafts = []
    for start in range(0, len(settings.pitches), ROWS):
        some = settings.pitches[start : start + ROWS]
        for key, chosen in (('glance', _of_members), ('glance-right', _of_jacks)):
            template = 'glance_right' if key == 'glance-right' else 'glance_left'
            make = _maker(settings, trim, some, key, chosen)
            drafts.append(Draft(template, make, '' if start else key, heading(key)))
    return drafts


def pitch_head(pitches: Sequence[Pitch]) -> tuple[str, str]:
    """Return what stands over a column of pitches: one in degrees has its unit with it."""
    in_base = not any(pitch.text == pitch.short for pitch in pitches)
    return (INCHES.unit, str(INCHES.base)) if in_base else ('', _(PITCH))


def _maker(settings: Settings, trim: Trim, pitches: Sequence[Pitch], key: str, chosen: Chosen) -> Maker:
    def make(index: Index) -> RowsPage:
        over, heads = _heads(key, [text.rational(spacing) for spacing in settings.spacings])
        heads = (pitch_head(settings.pitches), *heads)
        columns, members = chosen(value_columns(settings)), [members_of(pitch, settings) for pitch in pitches]
        rows = [(it.pitch.short, *(text_of(column, it) for column in columns)) for it in members]
        told = [tuple((words, '') for words in row) for row in rows]
        return RowsPage(heads, grouped(told), (Over((), 1), *over), _size(heads, rows, trim))

    return make


def _of_members(of: ValueColumns) -> tuple[One, ...]:
    common, hip = of.common, of.hip
    return (
        common.plumb_cut,
        common.level_cut,
        hip.plumb_cut,
        hip.level_cut,
        common.per_foot,
        hip.per_foot,
    )


def _of_jacks(of: ValueColumns) -> tuple[One, ...]:
    return (*of.jack.differences, of.jack.cheek.top, of.hip.cheek.top, of.hip.backing)


def _heads(key: str, spacings: Sequence[str]) -> tuple[tuple[Over, ...], tuple[tuple[str, str], ...]]:
    """Return what stands over the heads, and the heads; those of jacks are one a spacing."""
    over: list[Over] = []
    heads: list[tuple[str, str]] = []
    for lines, some in GLANCE_HEADS[key]:
        names = [('at', f'{spacing} in') for spacing in spacings] if some is None else some
        over.append(Over(lines, len(names)))
        heads += names
    return tuple(over), tuple(heads)


def _size(heads: Sequence[tuple[str, str]], rows: Sequence[tuple[str, ...]], trim: Trim) -> float:
    """Return the size of type in which every column stands clear of the next."""
    wide = 0.0
    for place, head in enumerate(heads):
        cut, scale = (FIGURES, 1.0) if place else (HEAVY, LABEL_EM)
        cells = [advance_em(row[place], *cut) * scale for row in rows]
        wide += max(*cells, *(advance_em(line, *BOLD) * HEAD_EM for line in head)) + GAP_EM
    return round(min(TYPE_REM, trim.text_width / 10 / wide), 3)
