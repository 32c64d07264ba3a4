"""Cheek cuts: plumb cuts that meet something on the skew, each with its readings and the face they lie on."""

from __future__ import annotations

from fractions import Fraction

from msgspec import Struct

from tablegen.geometry.corner import Corner, hip_angle, in_plane
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, root
from tablegen.numbers.units import INCHES

SAW_SCALE_TANGENT = 1
"""Tangent of the tilt where most saws' scales end, 45 degrees: common practice, no source."""


class Cheek(Struct, frozen=True):
    """One cut on the skew, plumb but for what meets a leaning fascia, read three ways."""

    saw: Angle
    """On the SIDE of the board: the plumb cut, from the line square across. The saw follows this line."""
    blade: Angle
    """Tilt of the blade from square, the saw's shoe on that side."""
    top: Angle
    """On the TOP: the cut's line, from the line square across."""
    leaning: bool = False
    """Whether the saw's line leans the other way from square across than a plumb cut does: its lower end towards the ridge."""

    def figure(self) -> Exact:
        """Return the figure held against 12 on the square for the line on the top, in: see figure_against_12."""
        return figure_against_12(self.top)

    def within_scale(self) -> bool:
        """Return whether the blade's tilt is on a saw's scale, up to 45 degrees."""
        return self.blade.tangent is not None and self.blade.tangent <= SAW_SCALE_TANGENT

    def reach(self, thickness_in: Fraction) -> Exact:
        """Return how far a circular saw's blade must reach through the board, measured along the blade, in.

        Given:
            thickness_in  that the cheek crosses: of the whole board; half of it for each of two cheeks to a point

        Notes:
            1. The same from the side, the blade tilted as tabled, and from a squared end, tilted by from_end: the
               cut is as wide in plan.

        Source: across its thickness the board is cut at the blade's tilt: t over its cosine.
        """
        return thickness_in / self.blade.cosine()

    def from_end(self) -> Angle:
        """Return the tilt to set if it is past the scale: 90 degrees less the blade's tilt.

        Notes:
            1. Cut the end off plumb and square to the side first, past the long point; then cut with the shoe
               on that end, the blade tilted by this from square, along the plumb line on the side.
        """
        return self.blade.complement()


def figure_against_12(from_square: Angle) -> Exact:
    """Return the figure held against 12 on the square for a line at such an angle from square across, in.

    Notes:
        1. The line is marked along the 12: its tangent from square across is 12 over this figure.
    """
    return INCHES.base * from_square.complement().tan()


def jack(at: Corner) -> Cheek:
    """Return the cheek of a jack of plane A against the hip or valley of a corner: jack_against at its plan angle a."""
    return jack_against(at.plan_a, at.slope_a)


def jack_against(plan: Angle, slope: Exact) -> Cheek:
    """Return the cheek of a jack against a hip or valley with plumb sides.

    Given:
        plan   angle in plan from the jack's eave to the hip or valley, 0 or more and below 90
        slope  of the jack, rise over run

    Returned:
        top: the jack's top edge lies in its plane, square to its sides. Both cheeks of a cripple between a hip
        and a valley, and the lower end of a valley jack, are this cut. Regular: figure 144/Lc.

    Source: the hip's side stands at the plan angle a to a line square across the jack, which runs as the eave does; on
    the jack's top, in its plane, where the slope stretches what runs up it: tan a / cos θ.
    """
    return Cheek(saw=Angle(slope), blade=plan, top=Angle(plan.tan() / Angle(slope).cosine()))


def hip_against(plan: Angle, at: Corner) -> Cheek:
    """Return the cheek of a square-topped hip or valley against a plumb face.

    Given:
        plan  the angle in plan between the hip's length and the face, above 0 and below 90

    Returned:
        top: the square top of a hip that is not backed. Regular: figure 12·√288/Lh.

    Source: on the top the hip's length is stretched by 1/cos H, its width is not: tan(from square) = cot g / cos H.
    """
    slope = hip_angle(at)
    return Cheek(saw=slope, blade=plan.complement(), top=Angle(plan.tan() * slope.cosine()).complement())


def hip_at_ridge(at: Corner) -> Cheek:
    """Return the cheek of a square-topped hip or valley against a ridge parallel to eave A, or A's fascia (g = a).

    Notes:
        1. A hip's tail between two fascias comes to a point on its center line; a valley's is hollow, its sides the
           long points. The other side is this cut of the corner turned.
    """
    return hip_against(at.plan_a, at)


def hip_at_square_fascia(at: Corner) -> Cheek:
    """Return the cheek of a square-topped hip or valley against the fascia of A that stands square to its slope, on square tails.

    Returned:
        saw: past square across, the line's lower end towards the ridge

    Source: that fascia's plane is as far out of the eave as it is low times mA, u sin a + v cos a = mA z; on the member's
    side it falls 1 for mA / sin a inwards, on its top, which falls mA sin a an inch, it runs along cot a / (1 + mA²) level
    for an inch across. Its normal, cos θA level and square to the eave, makes cos θA cos a with the member's side.
    """
    level = 1 / (1 + at.slope_a.squared())
    beside = at.plan_a.cosine().squared() * level
    return Cheek(
        saw=Angle(at.slope_a * at.plan_a.cosine().squared() * level / at.plan_a.sine()),
        blade=Angle(root(beside / (1 - beside))),
        top=Angle(level / at.plan_a.tan() / hip_angle(at).cosine()),
        leaning=True,
    )


def hip_at_common(at: Corner) -> Cheek:
    """Return the cheek of a square-topped hip against a common rafter of plane A (g = 90 − a).

    A double cheek, between a common of A and one of B, is this cut on the hip's side towards A, and the same
    of the corner turned on its side towards B.
    """
    return hip_against(at.plan_a.complement(), at)


def backed_at_ridge(at: Corner) -> Angle:
    """Return the line of the hip's cut against a ridge parallel to eave A, on the BACKED face towards A.

    Returned:
        angle from the line square across the hip, on that face: tan = cot a · cos θ

    Source: the backed face lies in plane A, where the ridge's side is level as the eave is: the complement of in_plane.
    """
    return in_plane(at).complement()


def backed_at_common(at: Corner) -> Angle:
    """Return the line of the hip's cut against a common of plane A, on the BACKED face towards A.

    Returned:
        angle from the line square across the hip, on that face: tan = tan a / cos θ (regular: figure 144/Lc)

    Source: in plane A the common's side runs straight up the slope, square to the eave.
    """
    return in_plane(at)
