"""Any corner of two roof planes: where the hip or valley between them runs, in plan and in slope.

The two eaves, A and B, meet at an angle C in plan. The hip makes the angle a with eave A and the rest of C
with eave B. A valley has the same lines: its 'eaves' are then level lines of the two planes. A regular corner is
the one whose sides agree, square in plan: square_corner(slope, slope), Pitch.corner. It has no relations of its own.
"""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from functools import cached_property

from msgspec import Struct

from tablegen.errors import BookError
from tablegen.messages import message
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, exact, one_term, root, sign

SQUARE = exact(1)
"""Tangent of half the plan angle of a square corner."""


class Corner(Struct, frozen=True, dict=True):
    """The hip or valley of a corner, seen from side A; turned() sees it from side B."""

    slope_a: Exact
    """Rise over run of plane A."""
    slope_b: Exact
    half_tangent: Exact
    """tan C/2."""
    sine: Exact
    """sin C."""
    cosine: Exact
    """cos C."""
    plan_a: Angle
    """Plan angle a from eave A to the hip, above 0 and below 90."""
    plan_b: Angle
    """Plan angle from the hip to eave B."""
    hip_slope: Exact
    """tan H: rise of the hip over its own level run."""

    @cached_property
    def hip_length_squared(self) -> Fraction:
        """Return the square of hip_length for one inch of run of A, in²: what long tables of runs are rounded from."""
        return 1 + 1 / self.plan_a.tan().squared() + self.slope_a.squared()  # 1 + cot² is 1/sin²

    @cached_property
    def in_plane(self) -> Angle:
        """Return in_plane of it, which every jack asks for."""
        return Angle(self.plan_a.tan() / Angle(self.slope_a).cosine())

    def turned(self) -> Corner:
        """Return the same corner with A and B changed over: itself where both sides are of one slope."""
        if self.slope_a is self.slope_b:
            return self
        return Corner(
            self.slope_b,
            self.slope_a,
            self.half_tangent,
            self.sine,
            self.cosine,
            self.plan_b,
            self.plan_a,
            self.hip_slope,
        )


def corner(slope_a: Exact, slope_b: Exact, half_tangent: Exact = SQUARE, place: str = 'corner') -> Corner:
    """Return the corner of two pitches.

    Given:
        slope_a, slope_b  rise over run, above 0, one term each
        half_tangent      tangent of half the plan angle C between the eaves, inside the building, one term;
                          1 for a square corner
        place             what to call it in an error

    Errors:
        BookError if the hip would lean back, out over one of the two eaves

    Notes:
        1. Exact at a square corner. At another one tan a may be a sum of roots, and then stands as one_term.

    Source: a point of the hip is as high over eave A as over eave B. At a distance d from the corner, d sin a
    from eave A and d sin (C − a) from eave B: mA sin a = mB sin (C − a), so
    tan a = mB sin C / (mA + mB cos C); and its height over its run is mA sin a.
    """
    square = half_tangent.squared()
    sine, cosine = 2 * half_tangent / (1 + square), exact((1 - square) / (1 + square))
    forward_a, forward_b = slope_a + slope_b * cosine, slope_b + slope_a * cosine
    if sign(forward_a) <= 0 or sign(forward_b) <= 0:
        raise BookError(place, message('error.leans_back'), message('error.closer_pitches'))
    plan_a = Angle(one_term(slope_b * sine) / one_term(forward_a))
    plan_b = Angle(one_term(slope_a * sine) / one_term(forward_b))
    hip_slope = slope_a * plan_a.sine()
    return Corner(slope_a, slope_b, half_tangent, sine, cosine, plan_a, plan_b, hip_slope)


def square_corner(slope_a: Exact, slope_b: Exact) -> Corner:
    """Return the corner of two pitches whose eaves meet at 90 degrees."""
    return corner(slope_a, slope_b)


def hip_run(run_a_in: Exact | Fraction, at: Corner) -> Exact:
    """Return the hip's own level run, in: from the corner of the plates to where A's run ends.

    Given:
        run_a_in  level run of A's common rafter, square to eave A, in, plate line to ridge center line

    Source: the right triangle in plan of A's run and the hip, run over sin a.
    """
    return run_a_in / at.plan_a.sine()


def run_b(run_a_in: Exact | Fraction, at: Corner) -> Exact:
    """Return B's common run that rises as high as A's, in, both level.

    Source: one ridge height: run A · mA = run B · mB.
    """
    return at.slope_a * run_a_in / at.slope_b


def hip_length(run_a_in: Exact | Fraction, at: Corner) -> Exact:
    """Return the line length of the hip or valley, in, along its own slope.

    Given:
        run_a_in  level run of A's common rafter, in, plate line to ridge center line

    Returned:
        from the corner of the plates to the ridge center line, on the hip's center line; for 12 in of run
        of A it is √((12/sin a)² + rA²)

    Source: the right triangle of the hip's own run and its rise.
    """
    return run_a_in * root(at.hip_length_squared)


def hip_angle(at: Corner) -> Angle:
    """Return the slope angle H of the hip: its plumb cut, from the line square across the board's side."""
    return Angle(at.hip_slope)


def in_plane(at: Corner) -> Angle:
    """Return the angle from eave A to the hip or valley IN roof plane A, on its face.

    Source: for each inch along the eave the hip gains tan a of level run of A, which the slope stretches by 1/cos θ.
    """
    return at.in_plane


def greater(of: Callable[[Corner], Exact], at: Corner) -> Exact:
    """Return the greater of what a corner's two sides have."""
    other = at.turned()
    return of(at) if other is at else max(of(at), of(other))


def jack_difference(spacing_in: Fraction, at: Corner) -> Exact:
    """Return the difference in length of neighboring jacks of plane A.

    Given:
        spacing_in  on center along eave A, in

    Returned:
        in, along A's slope; jack n is n differences from the plate line to the hip's center line when the
        first stands one space from the corner

    Source: what the hip gains up the slope over a space along the eave.
    """
    return spacing_in * in_plane(at).tan()
