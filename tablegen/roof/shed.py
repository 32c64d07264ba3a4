"""A shed roof: rafters of one slope that stand against a wall, or on a ledger on it. No ridge, hip or jack."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from tablegen.geometry import shortening
from tablegen.numbers.exact import Exact, exact
from tablegen.roof.lengths import common_cuts_of, common_square, squares_of
from tablegen.roof.readings import Group, Reading, length, words
from tablegen.roof.roof import area_of, gable_of
from tablegen.roof.seat import common_seat_of
from tablegen.roof.shortening import common_less
from tablegen.roof.side import Side
from tablegen.roof.tail import shed_tail_of

WALL, LEDGER = 'wall', 'ledger'
AGAINST = (WALL, LEDGER)


@dataclass(frozen=True, slots=True)
class Shed:
    """What a shed's rafters stand against."""

    against: str
    """WALL or LEDGER."""
    ledger_in: Fraction
    """Thickness of the ledger; 0 at a bare wall."""
    run_to: str
    """WALL or LEDGER: to which face the run that is asked about goes."""

    @property
    def off_in(self) -> Exact:
        """Return what comes off the run, level: the whole ledger where the run goes to the wall behind it."""
        takes = self.against == LEDGER and self.run_to == WALL
        return shortening.at_ledger(self.ledger_in) if takes else exact(0)

    @property
    def face(self) -> str:
        """Return in words where the run ends."""
        return "the ledger's face" if self.run_to == LEDGER else "the wall's face"


def shed_findings(side: Side, shed: Shed) -> tuple[Group, ...]:
    """Return all that is found of a shed: length, cut, square, shed, seat, tail, gable_stud, area."""
    return (
        _lengths(side, shed),
        common_cuts_of(side, 'rafter'),
        squares_of(common_square(side, 'rafter')),
        _upper_end(side, shed),
        Group('seat', (common_seat_of(side, 'rafter'),)),
        shed_tail_of(side),
        gable_of(side),
        area_of(side),
    )


def _lengths(side: Side, shed: Shed) -> Group:
    measure = side.ask.measure
    return Group(
        'length',
        (
            length('rafter', shortening.along(side.run_in, side.slope), measure),
            length('rise', side.run_in * side.slope, measure),
        ),
        f'rafter: along the slope, plate line to {shed.face}, nothing taken off; rise: plumb, between the same two',
    )


def _upper_end(side: Side, shed: Shed) -> Group:
    measure, off = side.ask.measure, shed.off_in
    ledger: tuple[Reading, ...] = (
        (length('ledger_thickness', shed.ledger_in, measure),) if shed.against == LEDGER else ()
    )
    top = side.slope * (side.run_in - off) + side.height_in
    return Group(
        'shed',
        (
            words('against', shed.against),
            words('run_to', shed.run_to),
            *ledger,
            *side.both('off', off, side.slope),
            length('sawn', common_less(side, off), measure),
            length('top_at_upper_end', top, measure),
        ),
        f'off: what comes off the run to {shed.face}, level, and off the length, along the top edge; sawn: along the top '
        'edge, plate line to the plumb cut at the upper end, rounded once; top at upper end: of the rafter there, plumb '
        "over the plate's top; no ridge, hip or jack",
    )
