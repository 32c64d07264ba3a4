"""One side of a corner: whose commons and jacks they are, and how high they stand."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from tablegen.geometry import corner, seat, shortening, tail
from tablegen.geometry.corner import SQUARE, Corner
from tablegen.geometry.pitch import Pitch
from tablegen.numbers.exact import Exact, exact
from tablegen.roof.question import RoofQuestion
from tablegen.roof.readings import Reading, length


@dataclass(frozen=True, slots=True)
class Side:
    """A roof plane with its rafters, at a corner seen from it; lengths in inches."""

    ask: RoofQuestion
    at: Corner
    """The corner with this side as its A."""
    pitch: Pitch
    run_in: Exact
    """Level, of its commons."""
    seat_in: Exact
    """Level, of its commons; 0 or less where their stock does not reach the plate."""
    overhang_in: Exact
    """Level, square to its eave."""

    @property
    def slope(self) -> Exact:
        """Return rise over run."""
        return self.at.slope_a

    @property
    def square(self) -> bool:
        """Return whether the eaves meet at 90 degrees: else no common of one side stands in line with a ridge."""
        return self.at.half_tangent == SQUARE

    @property
    def height_in(self) -> Exact:
        """Return the height above plate of its commons, plumb."""
        return seat.height_above_plate(self.ask.stock.depth_in, self.seat_in, self.slope)

    @property
    def hip_length_in(self) -> Exact:
        """Return the line length of its hip or valley, along its slope."""
        return shortening.along(self.run_in / self.at.plan_a.sine(), self.at.hip_slope)

    def both(self, key: str, level_in: Exact | Fraction, slope: Exact) -> tuple[Reading, Reading]:
        """Return a level length's reading, and that of the same along the edge of a member of some slope."""
        measure = self.ask.measure
        return (
            length(f'{key}_level', level_in, measure),
            length(f'{key}_along', shortening.along(level_in, slope), measure),
        )


def side_a(ask: RoofQuestion, at: Corner | None = None) -> Side:
    """Return the side that is asked about; at a regular corner where no other is given.

    Errors:
        BookError for a seat that cuts through the stock, or an overhang that cannot be
    """
    seat.checked_seat(ask.stock.depth_in, ask.seat_in, ask.pitch.slope)
    tail.checked_overhang(ask.overhang_in, ask.run_in)
    at = at or ask.pitch.corner
    lengths: Sequence[Exact] = [exact(one) for one in (ask.run_in, ask.seat_in, ask.overhang_in)]
    return Side(ask, at, ask.pitch, *lengths)


def side_b(a: Side, other: Pitch) -> Side:
    """Return the other side of the corner: one ridge height, one height above plate, eaves of one height."""
    return Side(
        a.ask,
        a.at.turned(),
        other,
        corner.run_b(a.run_in, a.at),
        seat.seat_for_height(a.ask.stock.depth_in, a.height_in, a.at.slope_b),
        tail.eave_matching_overhang(a.overhang_in, a.at),
    )
