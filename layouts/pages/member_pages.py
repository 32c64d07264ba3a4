"""The first opening of a pitch: the common rafter on the left, hip, valley and jacks on the right."""

from __future__ import annotations

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings.framing_square import square_on_board
from layouts.drawings.wedge import measured_wedge
from layouts.grid.run_tables import Head, PitchTables
from layouts.pages.member_rows import MemberRows, common_rows, has_marks, hip_rows
from layouts.paper.page import Index, Unplaced
from layouts.words.caution import caution_text
from layouts.words.say import say
from tablegen.numbers.units import INCHES
from tablegen.roof import cautions
from tablegen.tables.values import text_of


class CommonPage(Struct, frozen=True):
    """The common rafter of one pitch."""

    head: Head
    wedge: Markup
    square: Markup
    rows: MemberRows
    no_mouth: str
    """Name of the stock that its seat would cut through, '' where it does not."""
    pitch_cautions: tuple[str, ...]
    """What the pitch calls for, whole sentences."""
    notch_cautions: tuple[str, ...]
    """What the bird's mouth calls for."""
    defers: str
    caution_page: int
    """Where the cautions stand, 0 for nowhere."""


class HipPage(Struct, frozen=True):
    """Hip, valley and jacks of one pitch."""

    head: Head
    rows: MemberRows
    is_marked: bool
    """Whether a mark stands beside the wood that a notch leaves."""
    caution_page: int


def member_pages(tables: PitchTables) -> list[Unplaced]:
    """Return template and maker of both pages."""
    return [
        ('values', lambda index: _common_page(tables, index)),
        ('hip_values', lambda index: _hip_page(tables, index)),
    ]


def _common_page(tables: PitchTables, index: Index) -> CommonPage:
    pitch, it, settings = tables.pitch, tables.members, tables.settings
    of_rise, per_foot = tables.rise_per_foot.parts, text_of(tables.values.common_per_foot, it)
    rise = of_rise._replace(decimals=of_rise.decimals.rstrip('0').rstrip('.')).text
    return CommonPage(
        tables.head,
        measured_wedge(pitch, (str(INCHES.base), rise, per_foot), it.cut.common.plumb, pitch.text),
        square_on_board(it.common_hold, pitch.text),
        common_rows(tables.values, it, settings),
        settings.rafters.name if it.mouth.fault else '',
        tuple(map(caution_text, cautions.pitch_cautions(pitch.slope))),
        tuple(map(caution_text, it.mouth.cautions(it.side.overhang_in))),
        say(cautions.DEFERS),
        _caution_page(index),
    )


def _hip_page(tables: PitchTables, index: Index) -> HipPage:
    return HipPage(
        tables.head,
        hip_rows(tables.values, tables.members, tables.settings),
        has_marks(tables.values, tables.members),
        _caution_page(index),
    )


def _caution_page(index: Index) -> int:
    return next((index[key] for key in ('care', 'cautions') if key in index), 0)
