"""A pitch: the slope of a roof, as the geometry takes it and as it is called."""

from __future__ import annotations

from fractions import Fraction
from functools import cached_property, lru_cache

from msgspec import Struct

from tablegen.geometry.corner import Corner, square_corner
from tablegen.numbers import text
from tablegen.numbers.angles import tangent_of_degrees
from tablegen.numbers.exact import Exact, exact
from tablegen.numbers.text import Parts
from tablegen.numbers.units import INCHES


class Pitch(Struct, frozen=True, dict=True):
    """A roof's slope."""

    slope: Exact
    """Rise over run, one term, above 0."""
    parts: Parts
    """Of its short name."""
    rise_in: Fraction | None
    """Inches of rise per foot of run, where that is rational; None for most pitches in degrees."""
    degrees: Fraction | None = None
    """From level, where it is named by them; None for one that is named by its rise."""

    @property
    def short(self) -> str:
        """Return what a thumb tab shows: '6', '7 1/2', '26.565°'."""
        return self.parts.text

    @property
    def unit(self) -> str:
        """Return what its short name is of: 'in 12'; '' for degrees, whose mark says it."""
        return INCHES.over_base if self.degrees is None else ''

    @property
    def text(self) -> str:
        """Return its whole name: '6 in 12', '7 1/2 in 12' or '26.565°'."""
        return f'{self.short} {self.unit}'.strip()

    @property
    def rise(self) -> Exact:
        """Return the inches of rise per foot of run."""
        return self.slope * INCHES.base

    @cached_property
    def corner(self) -> Corner:
        """Return the regular corner: planes of this pitch on both sides, their eaves square to each other."""
        return square_corner(self.slope, self.slope)


@lru_cache(maxsize=64)  # of one pitch there is one corner
def pitch_of_rise(rise_in: Fraction) -> Pitch:
    """Return the pitch that rises so many inches per foot of run."""
    return Pitch(exact(rise_in / INCHES.base), text.rational_parts(rise_in), rise_in)


def pitch_of_degrees(degrees: Fraction) -> Pitch:
    """Return the pitch that rises at so many degrees, above 0 and below 90."""
    rise_in = Fraction(INCHES.base) if degrees == 45 else None
    parts = text.rational_parts(degrees)._replace(mark='°')
    return Pitch(tangent_of_degrees(degrees), parts, rise_in, degrees)
