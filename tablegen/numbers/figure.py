"""Figures: an exact number rounded once, which keeps its count, the parts that print it, and what it was rounded from."""

from __future__ import annotations

from fractions import Fraction

from msgspec import Struct

from tablegen.numbers import text
from tablegen.numbers.angles import Angle, degrees_count
from tablegen.numbers.exact import ONE, Exact, Rational, exact, floor_of, nearest, nearest_root, sign
from tablegen.numbers.text import Parts
from tablegen.numbers.units import INCHES, Units

INCH = 'in'
DEGREE = 'deg'
FOOT = 'ft'
RATIO = ''
DATA_PLACES = 9
"""Decimals of an inch or a degree that data files give."""
NEAREST, DOWN, UP = 'nearest', 'down', 'up'


class Root(Struct, frozen=True):
    """The root of a rational times a run, which run tables hold until it is rounded: quicker than a sum of roots."""

    square: Fraction
    times: Fraction = ONE


Value = Exact | Root | Angle | Fraction


class Figure(Struct, frozen=True, eq=False):
    """One printed number."""

    count: int
    """Whole count of the smallest printed part."""
    per: int
    """Parts in one unit: 16 for sixteenths of an inch, 1000 for thousandths, 100 for hundredths."""
    unit: str
    """'in', 'deg', 'ft', or '' for a ratio."""
    parts: Parts
    """Sign, feet, whole number and fraction or decimals as they are printed; final."""
    value: Value | None = None
    """What it was rounded from, in its unit; an Angle for degrees. None where only the count is known (a sum read
    from a table)."""
    way: str = NEAREST
    """NEAREST, a half going up; DOWN for a limit not to be passed; UP for one not to be gone under."""

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Figure) and self._printed == other._printed

    def __ne__(self, other: object) -> bool:  # a Struct has its own, which knows nothing of this ==
        return not self == other

    def __hash__(self) -> int:
        return hash(self._printed)

    @property
    def _printed(self) -> tuple[int, int, str, Parts]:
        return self.count, self.per, self.unit, self.parts

    @property
    def text(self) -> str:
        """Return what is printed."""
        return self.parts.text

    @property
    def sign(self) -> int:
        """Return -1, 0 or 1, of what it was rounded from."""
        match self.value:
            case None:
                return (self.count > 0) - (self.count < 0)
            case Root(square, times):
                return int(square * times > 0)
            case Angle(tangent):
                return 1 if tangent is None else sign(tangent)
            case value:
                return sign(exact(value))

    @property
    def size(self) -> str:
        """Return what is printed, without a sign."""
        return self.parts._replace(sign='').text

    @property
    def signed(self) -> str:
        """Return what is printed with its direction: '+0.084', '−0.096'; '0' for what rounds to nothing, which has none."""
        return f'{"+" if self.sign > 0 else text.MINUS}{self.size}' if self.count else '0'

    @property
    def decimal(self) -> str:
        """Return what it was rounded from to nine decimals, rounded the same way, with a hyphen for a minus."""
        return text.plain_decimal(self._count_of_decimals(), DATA_PLACES)

    def _count_of_decimals(self) -> int:
        scale = 10**DATA_PLACES
        match self.value:
            case None:
                return nearest(Fraction(self.count, self.per), scale)
            case Root(square, times):
                return nearest_root(square, scale, times)
            case Angle():
                return degrees_count(self.value, DATA_PLACES)
            case value:
                return _rounded(value, scale, self.way)


class Measure(Struct, frozen=True):
    """How a book's lengths are rounded and read."""

    per: int = INCHES.part
    """Smallest printed parts in one unit."""
    style: str = text.INCHES
    """'inches' or 'feet-inches'."""
    units: Units = INCHES
    """How its system counts."""


def length_figure(inches: Exact | Rational, measure: Measure, way: str = NEAREST) -> Figure:
    """Return a length to the nearest smallest part, a half up; or to the part below it (DOWN) or above it (UP)."""
    return length_of_count(_rounded(inches, measure.per, way), measure, exact(inches), way)


def length_rounded_down(inches: Exact | Rational, measure: Measure) -> Figure:
    """Return a length that is not to be passed, to the smallest part BELOW it: as printed it is never over the limit."""
    return length_figure(inches, measure, DOWN)


def length_rounded_up(inches: Exact | Rational, measure: Measure) -> Figure:
    """Return a length that is not to be gone under, to the smallest part ABOVE it."""
    return length_figure(inches, measure, UP)


def length_of_root(square: Fraction, measure: Measure, times: Fraction = ONE) -> Figure:
    """Return a run times the length whose square in inches is given, to the nearest smallest part: the fast way of the run tables."""
    return length_of_count(nearest_root(square, measure.per, times), measure, Root(square, times))


def length_of_count(count: int, measure: Measure, value: Value | None = None, way: str = NEAREST) -> Figure:
    """Return the figure of a length already counted in smallest parts; one without a value is a sum of printed figures."""
    parts = text.length(count, measure.per, measure.style, measure.units.group)
    return Figure(count, measure.per, measure.units.unit, parts, value, way)


def decimal_figure(number: Exact | Rational, places: int, unit: str = INCH) -> Figure:
    """Return a number to so many decimals, a half up."""
    count = nearest(number, 10**places)
    return Figure(count, 10**places, unit, text.decimal_parts(count, places), exact(number))


def degree_figure(angle: Angle, places: int = 2) -> Figure:
    """Return an angle in degrees to so many decimals, with its sign."""
    count = degrees_count(angle, places)
    return Figure(count, 10**places, DEGREE, text.degree_parts(count, places), angle)


def degrees_known(degrees: Fraction, places: int = 2) -> Figure:
    """Return an angle that is known as degrees themselves."""
    count = nearest(degrees, 10**places)
    return Figure(count, 10**places, DEGREE, text.degree_parts(count, places), degrees)


def rounding_left(inches: Exact | Rational, figure: Figure) -> Exact:
    """Return the printed length less the exact one, in inches: what rounding has added."""
    return exact(Fraction(figure.count, figure.per)) - exact(inches)


def _rounded(value: Exact | Rational, scale: int, way: str) -> int:
    if way == NEAREST:
        return nearest(value, scale)
    return floor_of(exact(value), scale) if way == DOWN else -floor_of(-exact(value), scale)
