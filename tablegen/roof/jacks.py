"""Jacks: what each gains on the one before it, and each one's length to its two points, rounded once."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from fractions import Fraction

from tablegen.geometry import corner, shortening
from tablegen.numbers.exact import Exact, sign
from tablegen.roof.readings import Group, Reading, Rows, length, set_length, whole
from tablegen.roof.side import Side

MOST_JACKS = 100
"""Of one spacing: no roof has more, and a list must end."""
ALONG = (
    'along the slope, on the top edge; jack n stands n spaces from the corner of the plates, on center; difference and '
    'line length: to the center line of what they meet'
)
HIP_POINTS = (
    '; long and short point: to the two plumb lines of its cheek. A hip jack: from the plate line, its long point away '
    'from the corner'
)
VALLEY_POINTS = (
    ". A valley jack: line length from the ridge's center line, points from its square cut at the ridge, "
    'the long one towards the corner'
)


def jacks_of(side: Side, with_valley: bool = True, listed: bool = True) -> Group:
    """Return the differences and every jack at each spacing.

    Given:
        with_valley  whether there are valley jacks
        listed       whether each jack is told, or the differences only
    """
    measure = side.ask.measure
    differences = tuple(
        (set_length('spacing', one), length('difference', corner.jack_difference(one, side.at), measure))
        for one in side.ask.spacings
    )
    lists, line = [Rows('difference', differences)], ALONG
    if listed:
        lists.append(Rows('hip_jacks', tuple(_rows(side, hip_jacks))))
        line += HIP_POINTS
    if listed and with_valley:
        lists.append(Rows('valley_jacks', tuple(_rows(side, valley_jacks))))
        line += VALLEY_POINTS
    return Group('jack', tuple(lists), line)


def hip_jacks(side: Side, difference_in: Exact) -> Iterator[tuple[Exact, Exact]]:
    """Return the line length, and that less what comes off at the hip, of each hip jack up to the ridge."""
    off = shortening.along(shortening.jack_at_hip(side.ask.hip_in, side.at), side.slope)
    whole_in = shortening.along(side.run_in, side.slope)
    for number in range(1, MOST_JACKS + 1):
        line = number * difference_in
        if sign(line - whole_in) >= 0:
            return
        yield line, line - off


def valley_jacks(side: Side, difference_in: Exact) -> Iterator[tuple[Exact, Exact]]:
    """Return the line length, and that less what comes off at ridge and valley, of each valley jack."""
    at_valley = shortening.jack_at_hip(side.ask.valley_thickness_in, side.at)
    off = shortening.along(at_valley + shortening.at_ridge(side.ask.ridge_in), side.slope)
    whole_in = shortening.along(side.run_in, side.slope)
    for number in range(1, MOST_JACKS + 1):
        line = whole_in - number * difference_in
        if sign(line) <= 0:
            return
        yield line, line - off


def _rows(
    side: Side, jacks: Callable[[Side, Exact], Iterator[tuple[Exact, Exact]]]
) -> Iterator[tuple[Reading, ...]]:
    measure = side.ask.measure
    half = shortening.along(shortening.point_to_point(side.ask.rafter_in, side.at) / 2, side.slope)
    for spacing_in in side.ask.spacings:
        spacing = set_length('spacing', Fraction(spacing_in))
        difference = corner.jack_difference(spacing_in, side.at)
        for number, (line, cut) in enumerate(jacks(side, difference), 1):
            if sign(cut - half) > 0:  # a shorter one is no board
                yield (
                    spacing,
                    whole('number', number),
                    length('line_length', line, measure),
                    length('long_point', cut + half, measure),
                    length('short_point', cut - half, measure),
                )
