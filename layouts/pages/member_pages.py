"""The first opening of a pitch: the common rafter on the left, hip, valley and jacks on the right."""

from __future__ import annotations

from dataclasses import dataclass

from markupsafe import Markup

from layouts.drawings.framing_square import square_on_board
from layouts.drawings.wedge import measured_wedge
from layouts.grid.run_tables import Head, PitchTables
from layouts.pages.member_rows import MemberRows, common_rows, hip_rows, wood_mark
from layouts.paper.page import Index, Unplaced
from layouts.words.caution import caution_text
from layouts.words.say import say
from tablegen.roof import cautions
from tablegen.tables.members import NoMouth


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
    pitch, values = tables.pitch, tables.members.common
    rise = tables.values.rise_per_foot.text.rstrip('0').rstrip('.')
    mouth = values.mouth
    return CommonPage(
        tables.head,
        measured_wedge(pitch, ('12', rise, values.per_foot.text), values.plumb_cut, pitch.text),
        square_on_board(values.hold, pitch.text),
        common_rows(values, tables.settings),
        mouth.stock.name if isinstance(mouth, NoMouth) else '',
        tuple(map(caution_text, cautions.pitch_cautions(pitch.slope))),
        () if isinstance(mouth, NoMouth) else tuple(map(caution_text, mouth.cautions)),
        say(cautions.DEFERS),
        _caution_page(index),
    )


def _hip_page(tables: PitchTables, index: Index) -> HipPage:
    hip = tables.members.hip
    return HipPage(
        tables.head,
        hip_rows(hip, tables.members.jack, tables.settings),
        any(map(wood_mark, (hip.dropped, hip.valley))),
        _caution_page(index),
    )


def _caution_page(index: Index) -> int:
    return next((index[key] for key in ('care', 'cautions') if key in index), 0)
