"""The lengths that can be checked, and the slope that a length would be exact for."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from msgspec import Struct

from tablegen.geometry import common, corner
from tablegen.geometry.pitch import Pitch, pitch_of_rise
from tablegen.numbers.exact import Exact, root


class Member(Struct, frozen=True):
    """A length that comes from a level run."""

    length: Callable[[Fraction, Pitch], Exact]
    """Of a run in inches, in inches."""
    level_squared: Fraction
    """Square of its own level run for one inch of the run it is found by; 0 where only its rise counts."""
    stepped: bool
    """Whether it is stepped off with the square."""


HIP_SQUARED = corner.hip_run(Fraction(1), pitch_of_rise(Fraction(1)).corner).squared()
"""A regular hip runs in plan alike at every pitch."""
MEMBERS = {
    'common': Member(lambda run, pitch: common.line_length(run, pitch.slope), Fraction(1), True),
    'hip-valley': Member(lambda run, pitch: corner.hip_length(run, pitch.corner), HIP_SQUARED, True),
    'jack-difference': Member(
        lambda run, pitch: corner.jack_difference(run, pitch.corner), Fraction(1), False
    ),
    'rise': Member(lambda run, pitch: common.rise(run, pitch.slope), Fraction(0), False),
}
"""The run of a jack difference is the spacing on center."""
STEPPED = tuple(key for key, member in MEMBERS.items() if member.stepped)


def slope_of(kind: str, run_in: Fraction, length_in: Fraction) -> Exact | None:
    """Return the slope at which a member of that run is just so long, or None where it is too short.

    Given:
        run_in     level run, in, above 0
        length_in  in

    Source: the right triangle: length² = own run² + rise².
    """
    square = (length_in / run_in) ** 2 - MEMBERS[kind].level_squared
    return root(square) if square > 0 else None
