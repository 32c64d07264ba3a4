"""The first opening of a pitch: the common rafter on the left, hip, valley and jacks on the right."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from layouts.drawings.framing_square import square_on_board
from layouts.drawings.wedge import measured_wedge
from layouts.grid.run_tables import Head, PitchTables
from layouts.pages.member_rows import MemberRows, common_rows, hip_rows, thousandths, wood_mark
from layouts.paper.page import Index, Unplaced
from layouts.words.caution import caution_text
from layouts.words.say import say
from tablegen.geometry.stepping import common_hold
from tablegen.numbers.units import INCHES
from tablegen.roof import cautions
from tablegen.roof.lengths import common_cut, common_length
from tablegen.roof.names import Why
from tablegen.roof.seat import common_notch, dropped_hip, valley


@dataclass(frozen=True, slots=True)
class CommonPage:
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


@dataclass(frozen=True, slots=True)
class HipPage:
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
    pitch, side = tables.pitch, tables.side
    rise = tables.values.rise_per_foot.text.rstrip('0').rstrip('.')
    notch, per_foot = common_notch(side), thousandths(common_length(side, INCHES.unit_run))
    return CommonPage(
        tables.head,
        measured_wedge(pitch, ('12', rise, per_foot.text), common_cut(side).plumb, pitch.text),
        square_on_board(common_hold(side.slope), pitch.text),
        common_rows(side, tables.settings),
        notch.stock.name if notch.fault else '',
        tuple(map(caution_text, cautions.pitch_cautions(pitch.slope))),
        tuple(map(caution_text, notch.cautions(side.overhang_in))),
        say(cautions.DEFERS),
        _caution_page(index),
    )


def _hip_page(tables: PitchTables, index: Index) -> HipPage:
    side = tables.side
    through = common_notch(side).fault is Why.CUT_THROUGH
    return HipPage(
        tables.head,
        hip_rows(side, tables.settings),
        not through and any(map(wood_mark, (dropped_hip(side), valley(side)))),
        _caution_page(index),
    )


def _caution_page(index: Index) -> int:
    return next((index[key] for key in ('care', 'cautions') if key in index), 0)
