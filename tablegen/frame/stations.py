"""Where rafters stand along a plate, by their center lines."""

from __future__ import annotations

from fractions import Fraction

from tablegen.numbers.exact import Exact, exact

Places = tuple[Exact, ...]


def between(first_in: Exact, last_in: Exact, spacing_in: Fraction, thickness_in: Fraction) -> Places:
    """Return places from one rafter to another, both of them, a space apart from the first on; the last bay is odd.

    Notes:
        1. No bay is wider than the spacing: one that would stand in the last rafter stands beside it.
    """
    place, places = first_in + spacing_in, [first_in]
    while place < last_in:
        places.append(min(place, last_in - thickness_in))
        place += spacing_in
    return (*places, last_in) if first_in < last_in else (first_in,)


def at_gables(
    length_in: Fraction, thickness_in: Fraction, spacing_in: Fraction, first_in: Fraction | None
) -> Places:
    """Return places along a plate that ends in two gables: outer faces flush, the others a space on center from its left end.

    Given:
        first_in  center of the first one after the gable's; None for one space from the end

    Notes:
        1. One that would stand in a gable's rafter stands beside it: without it the bay would be wider than the spacing.
    """
    half = exact(thickness_in / 2)
    place, places, last = exact(spacing_in if first_in is None else first_in), [half], length_in - half
    while place < last:
        if place > half:
            places.append(min(max(place, half + thickness_in), last - thickness_in))
        place += spacing_in
    return (*places, last)


def from_corner(
    run_in: Exact, clear_in: Exact, spacing_in: Fraction, first_in: Fraction | None = None
) -> Places:
    """Return the places of a hip's jacks, counted from the corner of the plates towards what stands at its run.

    Given:
        run_in    from the corner to the last common or end common
        clear_in  least distance from that one, center to center
        first_in  of the first; None for one space

    Notes:
        1. The bay beside the common is the odd one, no wider than the spacing.
    """
    place, places = exact(spacing_in if first_in is None else first_in), []
    while place < run_in:
        places.append(min(place, run_in - clear_in))
        place += spacing_in
    return tuple(one for one in places if one > 0)


def to_corner(last_in: Exact, spacing_in: Fraction) -> Places:
    """Return the places of a hip's jacks, counted from a common towards the corner: the first bay is the odd one."""
    place, places = last_in - spacing_in, []
    while place > 0:
        places.append(place)
        place -= spacing_in
    return tuple(reversed(places))


def mirrored(places: Places, length_in: Exact | Fraction) -> Places:
    """Return the same places seen from the other end of a plate."""
    return tuple(exact(length_in) - place for place in reversed(places))


def clear_of(
    places: Places, line_in: Exact, within_in: Exact, thickness_in: Fraction = Fraction(0)
) -> Places:
    """Return places with none nearer than a distance to a line: what is gives way to two, one on each side of it."""
    return clear_between(places, line_in - within_in, line_in + within_in, thickness_in)


def clear_between(
    places: Places,
    low_in: Exact,
    high_in: Exact,
    thickness_in: Fraction | Exact,
    kept_in: Exact | None = None,
) -> Places:
    """Return places with none between two but one that is kept there: those that are give way to one on either side.

    Given:
        kept_in  what has to stand between the two; None where nothing does

    Notes:
        1. What would then stand in another is moved away from there, until it stands beside it.
    """
    inside = [place for place in places if low_in < place < high_in and place != kept_in]
    below = [place for place in places if place < low_in]
    above = [place for place in places if place > high_in]
    if low_in in places or any(kept_in is None or place < kept_in for place in inside):
        below.append(low_in)
    if high_in in places or any(kept_in is None or place > kept_in for place in inside):
        above.insert(0, high_in)
    for n in range(len(below) - 2, -1, -1):
        below[n] = min(below[n], below[n + 1] - thickness_in)
    for n in range(1, len(above)):
        above[n] = max(above[n], above[n - 1] + thickness_in)
    return (*below, *(() if kept_in is None else (kept_in,)), *above)


def straddling(length_in: Exact, spacing_in: Fraction) -> Places:
    """Return places alike from both ends, two of them half a space from the middle; the odd bays stand at the ends."""
    half = length_in / 2
    place, right = exact(spacing_in / 2), []
    while place < half:
        right.append(half + place)
        place += spacing_in
    return (*mirrored(tuple(right), length_in), *right)
