"""Regular many-sided roofs: n equal sides, one pitch, hips meeting at a peak over the middle.

p is half of the angle at the middle over one side, 180/n degrees. The plates' inscribed circle has the apothem
as its radius: the run of the common rafter in the middle of a side.
"""

from __future__ import annotations

from fractions import Fraction

from tablegen.errors import BookError
from tablegen.geometry import cheeks
from tablegen.geometry.cheeks import Cheek
from tablegen.geometry.corner import Corner, corner
from tablegen.messages import message
from tablegen.numbers.angles import Angle, tangent_of_degrees
from tablegen.numbers.exact import Exact

FEWEST_SIDES = 3
MOST_SIDES = 360


def half_central(sides: int, place: str = 'sides') -> Angle:
    """Return p, 180/n degrees.

    Given:
        sides  n, 3 to 360

    Returned:
        exact for 3, 4 and 6 sides; else by a rational tangent (see tangent_of_degrees), which every other
        quantity of the roof is then an exact function of

    Errors:
        BookError for another number of sides
    """
    if not FEWEST_SIDES <= sides <= MOST_SIDES:
        problem = message('error.no_many_sided_roof', sides=sides)
        raise BookError(place, problem, message('error.from_to', least=FEWEST_SIDES, most=MOST_SIDES))
    return Angle(tangent_of_degrees(Fraction(180, sides)))


def plan_corner_degrees(sides: int) -> Fraction:
    """Return the inside angle C of a corner of the plates, degrees: 180 − 360/n."""
    return 180 - Fraction(360, sides)


def regular_corner(slope: Exact, sides: int) -> Corner:
    """Return the corner between two neighboring sides, for every cut and length that a corner has.

    Source: C = 180 − 2p, so tan C/2 = cot p; the hip halves it, a = 90 − p, and tan H = m cos p.
    """
    return corner(slope, slope, 1 / half_central(sides).tan())


def side_from_apothem(apothem_in: Fraction, sides: int) -> Exact:
    """Return the length of one side of the plates, in, corner to corner: 2 · apothem · tan p."""
    return 2 * apothem_in * half_central(sides).tan()


def apothem_from_side(side_in: Fraction, sides: int) -> Exact:
    """Return the apothem, in, level, middle of the plan to the middle of a side: side / (2 tan p)."""
    return side_in / 2 / half_central(sides).tan()


def radius_from_apothem(apothem_in: Fraction, sides: int) -> Exact:
    """Return the level distance from the middle to a corner of the plates, in: apothem / cos p."""
    return apothem_in / half_central(sides).cosine()


def peak_cheek(slope: Exact, sides: int) -> Cheek:
    """Return the cut of each of the TWO cheeks of a hip where all n hips meet in a point, without a post.

    Returned:
        as cheeks.hip_against with g = p, on each side of the hip's center line; square top, not backed.
        Three or four hips can also run through in pairs; the more sides, the thinner the points.

    Source: neighboring hips stand 2p apart in plan and share the plumb plane half way between them.
    """
    return cheeks.hip_against(half_central(sides), regular_corner(slope, sides))


def peak_point(hip_thickness_in: Fraction, sides: int) -> Exact:
    """Return the level length of that point, in, from the middle axis back to where the hip is full width.

    Also the apothem (half of the width across flats) of the smallest center post on which n square-ended hips
    find room side by side.

    Source: half of the thickness over tan p.
    """
    return hip_thickness_in / 2 / half_central(sides).tan()
