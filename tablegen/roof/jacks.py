"""Jacks: what each gains on the one before it, and each one's length to its two points, rounded once."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from fractions import Fraction

from msgspec import Struct

from tablegen.geometry import corner, shortening
from tablegen.numbers.exact import Exact, sign
from tablegen.roof.figures import Length, given
from tablegen.roof.side import Side

MOST_JACKS = 100
"""Of one spacing: no roof has more, and a list must end."""
DIFFERENCES = ('roof.jack',)


class Difference(Struct, frozen=True):
    """How much longer each of some members is than the one before it."""

    spacing: Length
    """On center."""
    difference: Length


class Jack(Struct, frozen=True):
    """One jack."""

    spacing: Length
    number: int
    """Spaces from the corner of the plates."""
    line_length: Length
    long_point: Length
    short_point: Length


class Jacks(Struct, frozen=True):
    """The jacks of one side."""

    difference: tuple[Difference, ...]
    hip_jacks: tuple[Jack, ...] | None = None
    """None where they are not listed."""
    valley_jacks: tuple[Jack, ...] | None = None
    datum: tuple[str, ...] = DIFFERENCES


Lines = Callable[[Side, Exact, Exact], Iterator[tuple[Exact, Exact]]]
"""Gives each jack's line length, and that less what comes off, by the length of a common and the jacks' difference."""


def differences_of(side: Side) -> tuple[Difference, ...]:
    """Return what jacks gain, one a spacing."""
    return tuple(
        Difference(given(one), side.length(corner.jack_difference(one, side.at)))
        for one in side.boards.spacings
    )


def jacks_of(side: Side, run_in: Exact | Fraction, with_valley: bool = True, listed: bool = True) -> Jacks:
    """Return the differences and every jack at each spacing, as far as a run goes.

    Given:
        with_valley  whether there are valley jacks
        listed       whether each jack is told, or the differences only
    """
    differences = differences_of(side)
    if not listed:
        return Jacks(differences)
    whole_in = shortening.along(run_in, side.slope)
    hips = tuple(_jacks(side, whole_in, hip_jacks))
    if not with_valley:
        return Jacks(differences, hips, None, (*DIFFERENCES, 'roof.jack.hip'))
    valleys = tuple(_jacks(side, whole_in, valley_jacks))
    return Jacks(differences, hips, valleys, (*DIFFERENCES, 'roof.jack.hip_and_valley'))


def hip_jacks(side: Side, whole_in: Exact, difference_in: Exact) -> Iterator[tuple[Exact, Exact]]:
    """Return the line length, and that less what comes off at the hip, of each hip jack up to the ridge."""
    off = shortening.along(shortening.jack_at_hip(side.boards.hip_in, side.at), side.slope)
    for number in range(1, MOST_JACKS + 1):
        line = number * difference_in
        if sign(line - whole_in) >= 0:
            return
        yield line, line - off


def valley_jacks(side: Side, whole_in: Exact, difference_in: Exact) -> Iterator[tuple[Exact, Exact]]:
    """Return the line length, and that less what comes off at ridge and valley, of each valley jack."""
    at_valley = shortening.jack_at_hip(side.boards.valley_thickness_in, side.at)
    off = shortening.along(at_valley + shortening.at_ridge(side.boards.ridge_in), side.slope)
    for number in range(1, MOST_JACKS + 1):
        line = whole_in - number * difference_in
        if sign(line) <= 0:
            return
        yield line, line - off


def _jacks(side: Side, whole_in: Exact, lines: Lines) -> Iterator[Jack]:
    half = shortening.along(shortening.point_to_point(side.boards.rafter_in, side.at) / 2, side.slope)
    for spacing_in in side.boards.spacings:
        spacing, difference = given(spacing_in), corner.jack_difference(spacing_in, side.at)
        for number, (line, cut) in enumerate(lines(side, whole_in, difference), 1):
            if sign(cut - half) > 0:  # a shorter one is no board
                points = side.length(cut + half), side.length(cut - half)
                yield Jack(spacing, number, side.length(line), *points)
