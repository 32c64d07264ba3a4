"""The lengths that can be checked, and the slope that a length would be exact for."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction

from tablegen.geometry import common, hip, jacks
from tablegen.geometry.stepping import RUN_PER_STEP
from tablegen.numbers.exact import Exact, exact, root

SEVENTEEN = Fraction(17)
"""What old squares stamp for a hip's run per foot of common run, which is √288."""


@dataclass(frozen=True, slots=True)
class Member:
    """A length that comes from a level run."""

    length: Callable[[Fraction, Exact], Exact]
    """Of a run in inches and a slope, in inches."""
    level_squared: int
    """Square of its own level run for one inch of the run it is found by; 0 where only its rise counts."""
    stepped: bool
    """Whether it is stepped off with the square."""


MEMBERS = {
    'common': Member(common.line_length, 1, True),
    'hip-valley': Member(hip.line_length, hip.RUN_SQUARED, True),
    'jack-difference': Member(jacks.difference, 1, False),
    'rise': Member(common.rise, 0, False),
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


def seventeen_length(run_in: Fraction, slope: Exact) -> Exact:
    """Return a hip's length where 17 is taken for √288, as old squares do.

    Given:
        run_in  level run of the COMMON rafter beside it, in

    Source: √(17² + r²) for every 12 in of common run.
    """
    return root((SEVENTEEN / RUN_PER_STEP) ** 2 + slope.squared()) * run_in


def seventeen_cheek(slope: Exact) -> Exact:
    """Return a hip's cheek figure against 12 where 17 is taken for √288: 12·17/√(17² + r²), in."""
    return RUN_PER_STEP * exact(SEVENTEEN) / root(SEVENTEEN**2 + RUN_PER_STEP**2 * slope.squared())
