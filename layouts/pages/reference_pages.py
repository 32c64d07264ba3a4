"""The part after the pitches: reference tables in groups as the work goes, each group with its drawings."""

from __future__ import annotations

from msgspec import Struct

from layouts.grid.reference_tables import table_drafts
from layouts.pages.part_tabs import part_tab
from layouts.pages.reference_intros import drawn_roof, intro_drafts
from layouts.paper.page import Block, Draft, Index, PageNumber, Tab
from layouts.paper.trim import Trim
from layouts.words.caution import caution_text
from layouts.words.lists import in_short
from layouts.words.pages import GROUP_HEADS, GROUP_SAYS, heading
from layouts.words.reference import low_pitches
from layouts.words.say import N_, _, say
from tablegen.groups import GROUPS
from tablegen.numbers import text
from tablegen.roof import cautions
from tablegen.settings import Settings
from tablegen.tables.tables import tables

LETTERS = 'ABCDEFGHIJKL'
"""On the thumb tabs: pitches have numbers."""
TAB_REM = 0.85
CAUTIONS = (
    (N_('Flat'), cautions.LOW_SLOPE),
    (N_('Falls'), cautions.STEEP),
    (N_('Notch †'), cautions.PAST_A_QUARTER),
    (N_('Notch ‡'), cautions.PAST_A_THIRD),
    (N_('Short seat'), cautions.SHORT_SEAT),
    (N_('Tail §'), cautions.THIN_TAIL),
    (N_('Long tail'), cautions.LONG_TAIL),
    (N_('Hip, valley'), cautions.SHALLOW_HIP),
)


class PartPage(Struct, frozen=True):
    """What the part holds."""

    groups: tuple[tuple[str, str, str, PageNumber], ...]
    """Letter, name, what it tells, page."""
    part: str
    """The smallest printed part of an inch."""


class CarePage(Struct, frozen=True):
    """The cautions that the tables call for."""

    cautions: tuple[tuple[str, str, str], ...]
    """Its name, what is said, and its source."""
    low: str
    """The book's pitches under 3 in 12, '' for none."""
    defers: str


def letters_of(settings: Settings) -> dict[str, str]:
    """Return the letter of every group that is in a book, none between them left out."""
    return dict(zip([group for group in GROUPS if group in settings.parts], LETTERS, strict=False))


def reference_blocks(settings: Settings, trim: Trim) -> list[Block]:
    """Return a block for each group that is in the book, beginning on a left-hand page; none for no group."""
    letters = letters_of(settings)
    if not letters:
        return []
    listed, drawn = tables(settings), drawn_roof(settings)
    blocks = [_opening(settings, letters, part_tab('reference', trim))]
    for place, (group, letter) in enumerate(letters.items()):
        tab, head = _tab(letter, place, trim), _(GROUP_HEADS[group])
        drafts = intro_drafts(group, settings, drawn, tab, head)
        drafts += table_drafts([table for table in listed if table.group == group], trim, tab, head)
        blocks.append(Block(tuple(drafts), opens_left=True, pitches=(letter,)))
    return blocks


def _opening(settings: Settings, letters: dict[str, str], tab: Tab) -> Block:
    def part(index: Index) -> PartPage:
        groups = tuple(
            (letter, _(GROUP_HEADS[group]), _(GROUP_SAYS[group]), index[f'group-{group}'])
            for group, letter in letters.items()
        )
        return PartPage(groups, text.mixed(1, settings.measure.per))

    def care(index: Index) -> CarePage:
        said = tuple((_(name), caution_text(one), say(one.sources[0])) for name, one in CAUTIONS)
        return CarePage(said, in_short(low_pitches(settings)), say(cautions.DEFERS))

    drafts = (
        Draft('ref_part', part, 'after-the-length', heading('after-the-length'), tab),
        Draft('ref_care', care, 'care', heading('care'), tab),
    )
    return Block(drafts, opens_left=True)


def _tab(letter: str, place: int, trim: Trim) -> Tab:
    slot_mm = (trim.height_mm - trim.top_mm - trim.foot_mm) / len(GROUPS)
    return Tab(letter, round(place * slot_mm, 3), round(slot_mm, 3), TAB_REM)
