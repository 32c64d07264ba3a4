"""One side of a corner: its roof plane, whose commons and jacks they are, and how high they stand; whatever its run.

Every member of a roof is made from a Side: `side` of one pitch at a regular corner, `sides` of any corner.
"""

from __future__ import annotations

from fractions import Fraction

from msgspec import Struct

from tablegen.errors import BookError
from tablegen.geometry import corner, seat, shortening
from tablegen.geometry.corner import SQUARE, Corner
from tablegen.geometry.pitch import Pitch
from tablegen.messages import message
from tablegen.numbers.angles import tangent_of_degrees
from tablegen.numbers.exact import Exact, Rational, exact
from tablegen.numbers.figure import Figure, Measure, length_figure
from tablegen.roof.figures import TwoWays, board
from tablegen.roof.names import Why
from tablegen.roof.question import SQUARE_DEGREES, Boards


class Side(Struct, frozen=True):
    """A roof plane with its rafters, at a corner seen from it; lengths in inches."""

    boards: Boards
    at: Corner
    """The corner with this side as its A."""
    pitch: Pitch
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
        return seat.height_above_plate(self.boards.stock.depth_in, self.seat_in, self.slope)

    def length(self, inches: Exact | Rational) -> Figure:
        """Return a length as the boards' measure reads it."""
        return length_figure(inches, self.boards.measure)

    def on_square(self, inches: Exact | Rational) -> Figure:
        """Return a figure on the square: in inches, however lengths read."""
        return length_figure(inches, Measure(self.boards.measure.per))

    def both(self, level_in: Exact | Fraction, slope: Exact) -> TwoWays:
        """Return a level length, and the same along the edge of a member of some slope."""
        return TwoWays(self.length(level_in), self.length(shortening.along(level_in, slope)))

    def common_less(self, run_in: Exact | Fraction, level_in: Exact) -> Figure | Why:
        """Return a common's length along its edge over a run, with so much taken off, level."""
        return board(shortening.along(run_in - level_in, self.slope), self.boards.measure)

    def hip_less(self, run_in: Exact | Fraction, level_in: Exact) -> Figure | Why:
        """Return the hip's or valley's length along its edge, with so much taken off its own run, level."""
        own = corner.hip_run(run_in, self.at)
        return board(shortening.along(own - level_in, self.at.hip_slope), self.boards.measure)


def side(pitch: Pitch, boards: Boards, at: Corner | None = None) -> Side:
    """Return a side of one pitch; at a regular corner where no other is given."""
    return Side(boards, at or pitch.corner, pitch, exact(boards.seat_in), exact(boards.overhang_in))


def sides(
    pitch: Pitch, boards: Boards, other: Pitch, corner_degrees: Fraction = SQUARE_DEGREES
) -> tuple[Side, Side]:
    """Return both sides of a corner: one ridge height, one height above plate, eaves of one height.

    Given:
        pitch, boards   side A's
        other           side B's pitch
        corner_degrees  plan angle between the eaves, inside the building

    Errors:
        BookError if the hip leans back, or the corner is no corner
    """
    if not 0 < corner_degrees < 180:
        problem = message('error.no_corner', degrees=corner_degrees)
        raise BookError('corner', problem, message('error.above_zero_below', below=180))
    half = SQUARE if corner_degrees == SQUARE_DEGREES else tangent_of_degrees(corner_degrees / 2)
    a = side(pitch, boards, corner.corner(pitch.slope, other.slope, half))
    seat_b = seat.seat_for_height(boards.stock.depth_in, a.height_in, other.slope)
    return a, Side(boards, a.at.turned(), other, seat_b, corner.run_b(a.overhang_in, a.at))
