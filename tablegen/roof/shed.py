"""A shed roof: rafters of one slope that stand against a wall, or on a ledger on it. No ridge, hip or jack."""

from __future__ import annotations

from fractions import Fraction
from typing import ClassVar

from msgspec import Struct

from tablegen.errors import BookError
from tablegen.geometry import ridge, shortening
from tablegen.messages import message
from tablegen.numbers.exact import Exact, exact, sign
from tablegen.roof.called import Called, shed_cautions
from tablegen.roof.figures import Length, PlumbLevel, TwoWays
from tablegen.roof.lengths import Held, common_cut, common_held, common_length
from tablegen.roof.names import Against, Why
from tablegen.roof.planes import Area, GableStuds, area_of, gable_of
from tablegen.roof.question import Shed
from tablegen.roof.seat import Mouth, common_mouth
from tablegen.roof.side import Side
from tablegen.roof.tail import ShedTail, shed_tail_of


class ShedLengths(Struct, frozen=True):
    """The line lengths to the face that the run goes to."""

    datum: tuple[str, ...]
    rafter: Length
    rise: Length


class ShedCuts(Struct, frozen=True):
    """Cuts of the rafters."""

    datum: ClassVar = ('roof.cut',)
    rafter: PlumbLevel


class ShedSquares(Struct, frozen=True):
    """The square on the rafters."""

    datum: ClassVar = ('roof.square',)
    rafter: Held


class UpperEnd(Struct, frozen=True):
    """The rafters where they stand against wall or ledger."""

    datum: tuple[str, ...]
    against: Against
    run_to: Against
    ledger_thickness: Length | None
    off: TwoWays
    sawn: Length | Why
    top_at_upper_end: Length


class ShedSeat(Struct, frozen=True):
    """The bird's mouth of the rafters."""

    rafter: Mouth


class ShedRoof(Struct, frozen=True):
    """All that is found of a shed."""

    length: ShedLengths
    cut: ShedCuts
    square: ShedSquares
    shed: UpperEnd
    seat: ShedSeat
    tail: ShedTail
    gable_stud: GableStuds
    area: Area
    caution: tuple[Called, ...]


def off_in(shed: Shed) -> Exact:
    """Return what comes off the run, level, in: the whole ledger where the run goes to the wall behind it."""
    takes = shed.against is Against.LEDGER and shed.run_to is Against.WALL
    return shortening.at_ledger(shed.ledger_in) if takes else exact(0)


def shed_roof(side: Side, shed: Shed, run_in: Fraction) -> ShedRoof:
    """Return all about a shed.

    Errors:
        BookError for a ledger as thick as the run is long
    """
    off = off_in(shed)
    if sign(run_in - off) <= 0:
        raise BookError('ledger_thickness', message('error.thick_ledger'), message('error.less_than_the_run'))
    ledger = side.length(shed.ledger_in) if shed.against is Against.LEDGER else None
    return ShedRoof(
        ShedLengths(
            (f'roof.length.to_{shed.run_to}',), common_length(side, run_in), side.length(run_in * side.slope)
        ),
        ShedCuts(common_cut(side)),
        ShedSquares(common_held(side)),
        UpperEnd(
            (f'roof.shed.to_{shed.run_to}',),
            shed.against,
            shed.run_to,
            ledger,
            side.both(off, side.slope),
            side.common_less(run_in, off),
            side.length(ridge.top_of_planes(run_in - off, side.height_in, side.slope)),
        ),
        ShedSeat(common_mouth(side)),
        shed_tail_of(side),
        gable_of(side),
        area_of(side),
        shed_cautions(side),
    )
