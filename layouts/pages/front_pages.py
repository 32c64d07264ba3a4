"""The pages before the tables: their order, and those that are no more than a template or a drawing."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from markupsafe import Markup
from msgspec import Struct
from msgspec.structs import replace

from layouts.drawings.corner import CornerLabels, labelled_corner
from layouts.drawings.rafter import RafterLabels, labelled_rafter
from layouts.drawings.ridge_end import ridge_ends
from layouts.pages.contents_pages import contents_drafts
from layouts.pages.glance_pages import glance_drafts
from layouts.pages.how_to_page import how_to_drafts
from layouts.pages.line_pages import line_drafts
from layouts.pages.one_rafter_pages import one_rafter_drafts
from layouts.pages.part_tabs import part_tab
from layouts.pages.square_pages import square_drafts
from layouts.paper.page import Block, Draft, Index, Maker, Tab
from layouts.paper.trim import Trim
from layouts.words.caution import caution_source, caution_text
from layouts.words.drawings import CORNER_DRAWING, ENDS, RAFTER_DRAWING, RIDGE_ENDS_DRAWING
from layouts.words.pages import heading
from tablegen.examples import nearest_pitch
from tablegen.geometry import ridge
from tablegen.numbers.figure import length_figure
from tablegen.roof import cautions
from tablegen.settings import Settings

ENDS_HIGH = 66.0
"""Of the drawing of the ridge's end, units."""
OF_THE_CODE = (
    cautions.LOW_SLOPE,
    cautions.SHORT_SEAT,
    cautions.PAST_A_QUARTER,
    cautions.THIN_TAIL,
    cautions.LONG_TAIL,
)
"""Cautions that stand in front of every book, its reference tables or none."""


class CautionsPage(Struct, frozen=True):
    """What geometry does not know."""

    of_the_code: tuple[tuple[str, str], ...]
    """What is said, and its source."""
    falls: str
    past_scale: int
    """Page of the cuts that no saw tilts to, 0 where the book has none."""


class DrawingPage(Struct, frozen=True):
    """A page with one drawing."""

    picture: Markup


class CornerPage(DrawingPage, frozen=True):
    """The corner from above, and the ridge's end both ways."""

    ends: Markup


def front_block(cover: Draft, settings: Settings, trim: Trim) -> Block:
    """Return the pages before the first pitch."""
    drafts = [cover, Draft('cautions', _cautions_page, 'cautions', heading('cautions'))]
    drafts += contents_drafts(settings)
    if 'how-to' in settings.parts:
        drafts += how_to_drafts(settings, trim)
        _open_left(drafts)
        drafts += one_rafter_drafts(settings)
    if 'words' in settings.parts:
        _open_left(drafts)
        drafts.append(Draft('words_rafter', _rafter_page(settings), 'words', heading('words')))
        drafts.append(Draft('words_corner', _corner_page(settings), 'words-corner', heading('words-corner')))
    if 'square' in settings.parts:
        _open_left(drafts)
        drafts += _tabbed([*line_drafts(settings), *square_drafts(settings)], part_tab('square', trim))
    if 'glance' in settings.parts:
        _open_left(drafts)
        drafts += _tabbed(glance_drafts(settings, trim), part_tab('glance', trim))
    return Block((drafts[0], *_tabbed(drafts[1:], part_tab('front', trim))))


def _tabbed(drafts: Sequence[Draft], tab: Tab) -> list[Draft]:
    """Return drafts with a tab, those that have one already with theirs."""
    return [draft if draft.tab else replace(draft, tab=tab) for draft in drafts]


def _open_left(drafts: list[Draft]) -> None:
    """Add a page of notes where the next page would not lie on the left of an opening."""
    if len(drafts) % 2 == 0:
        drafts.append(Draft('notes', lambda index: None, '', heading('notes')))


def _cautions_page(index: Index) -> CautionsPage:
    return CautionsPage(
        tuple((caution_text(one), caution_source(one)) for one in OF_THE_CODE),
        caution_text(cautions.STEEP),
        index.get('page-past_scale'),
    )


def _rafter_page(settings: Settings) -> Maker:
    # flatter and steeper than this the words would meet
    slope = min(0.5, max(0.42, float(nearest_pitch(settings, Fraction(6)).slope)))
    return lambda index: DrawingPage(labelled_rafter(slope, RafterLabels(**RAFTER_DRAWING)))


def _corner_page(settings: Settings) -> Maker:
    ridge_in, hip_in, rafter_in = (
        settings.ridge_thickness, settings.hip_thickness, settings.rafter_thickness
    )  # fmt: skip
    corner, words = nearest_pitch(settings, Fraction(6)).corner, RIDGE_ENDS_DRAWING | ENDS
    off = (ridge.end_past_commons(rafter_in), ridge.end_past_hips(ridge_in, hip_in, corner))
    told = [(words['off'], {'length': length_figure(one, settings.measure).text}) for one in off]
    ends = ridge_ends(
        float(ridge_in), float(hip_in), float(rafter_in), words, (told[0], told[1]), words['title'], ENDS_HIGH
    )
    return lambda index: CornerPage(labelled_corner(CornerLabels(**CORNER_DRAWING)), ends)
