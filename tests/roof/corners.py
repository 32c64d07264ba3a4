"""The corners that the proof goes through, each as the book's record and as planes in space."""

from fractions import Fraction
from functools import cached_property

from mpmath import mp, mpf
from msgspec import Struct
from near import number
from oracle.planes import roof_corner

from tablegen.geometry.corner import Corner, corner
from tablegen.geometry.many_sided import regular_corner
from tablegen.numbers.angles import tangent_of_degrees
from tablegen.numbers.exact import Exact, exact

THICKNESSES = (Fraction(3, 4), Fraction(3, 2), Fraction(7, 2))
PAIRS = ((4, 12), (8, 12), (12, 8), (6, 9), (5, 10), (1, 24), (24, 1), (7, 8), (3, 18), (12, 5))
SKEW = ((120, 6, 9), (120, 9, 6), (135, 8, 10), (135, 10, 8), (75, 6, 12), (60, 7, 7), (100, 5, 11))
SIDES = (3, 4, 5, 6, 7, 8, 9, 10, 12, 16)


class Case(Struct, frozen=True, dict=True):
    name: str
    at: Corner
    degrees: Fraction
    """Plan angle of the corner."""

    @cached_property
    def roof(self):
        """The model, from the same two slopes and the angle only."""
        turn = mp.pi * mpf(self.degrees.numerator) / self.degrees.denominator / 180
        return roof_corner(number(self.at.slope_a), number(self.at.slope_b), turn)

    @property
    def slope(self) -> Exact:
        return self.at.slope_a


def per_foot(rise):
    return exact(Fraction(rise) / 12)


def _skew(degrees, rise_a, rise_b):
    at = corner(per_foot(rise_a), per_foot(rise_b), tangent_of_degrees(Fraction(degrees, 2)))
    return Case(f'{rise_a} and {rise_b} at {degrees} deg', at, Fraction(degrees))


REGULAR = [
    Case(f'{rise} in 12', corner(per_foot(rise), per_foot(rise)), Fraction(90))
    for rise in (*range(1, 25), Fraction(15, 2))
]
UNEQUAL = [Case(f'{a} and {b}', corner(per_foot(a), per_foot(b)), Fraction(90)) for a, b in PAIRS]
SKEWED = [_skew(*one) for one in SKEW]
POLYGONS = [
    Case(f'{sides} sides at {rise}', regular_corner(per_foot(rise), sides), 180 - Fraction(360, sides))
    for sides in SIDES
    for rise in (4, 9, 16)
]
DEGREES = [
    Case(
        '30 and 22.5 deg',
        corner(tangent_of_degrees(Fraction(30)), tangent_of_degrees(Fraction(45, 2))),
        Fraction(90),
    )
]
CORNERS = REGULAR + UNEQUAL + SKEWED + POLYGONS + DEGREES
NAMES = [case.name for case in CORNERS]
