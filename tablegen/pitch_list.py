"""Pitches as a list or a range, in order and none twice."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

from tablegen.errors import BookError, each_of
from tablegen.lengths import number
from tablegen.pitch import Pitch, pitch, pitch_of_rise

MOST_PITCHES = 200


def read_pitches(value: object, place: str, steep: bool) -> tuple[Pitch, ...]:
    """Return pitches from a list or a range such as '4 to 12 by 1/2', in order, none twice."""
    items = value if isinstance(value, list) else [value]
    if not items:
        raise BookError(place, 'no pitch is given', "a list such as [4, 6, '7 1/2'] or '1 to 24'")
    read = (
        each_of(items, place, lambda item, here: _pitches_of(item, here, steep))
        if len(items) > 1
        else [_pitches_of(items[0], place, steep)]
    )
    found = [one for some in read for one in some]
    found.sort(key=lambda one: one.slope)
    once = found[:1] + [one for before, one in pairwise(found) if one.slope != before.slope]
    if len(once) > MOST_PITCHES:
        raise BookError(place, f'{len(once)} pitches are too many', f'up to {MOST_PITCHES}')
    return tuple(once)


def _pitches_of(item: object, place: str, steep: bool) -> list[Pitch]:
    words = item.split(' to ') if isinstance(item, str) else [item]
    if len(words) != 2:
        return [pitch(item, place, steep)]
    last, _, step = words[1].partition(' by ')
    return _pitch_range(pitch(words[0], place, steep), pitch(last, place, steep), step or '1', place)


def _pitch_range(first: Pitch, last: Pitch, step: str, place: str) -> list[Pitch]:
    allowed = "a range such as '4 to 12 by 1/2'"
    try:
        by = number(step.strip())
    except ValueError:
        by = Fraction(0)
    if first.rise_in is None or last.rise_in is None or by <= 0:
        raise BookError(place, 'a range needs inches of rise and a step above 0', allowed)
    if last.rise_in < first.rise_in:
        raise BookError(place, f'the range goes backwards, {first.short} to {last.short}', allowed)
    count = (last.rise_in - first.rise_in) // by + 1
    if count > MOST_PITCHES:
        raise BookError(place, f'{count} pitches are too many', f'up to {MOST_PITCHES}')
    return [pitch_of_rise(first.rise_in + by * place) for place in range(count)]
