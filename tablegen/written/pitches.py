"""Pitches as people write them: one, a list or a range, in order and none twice."""

from __future__ import annotations

import re
from fractions import Fraction
from itertools import pairwise

from tablegen.errors import BookError, each_of
from tablegen.geometry.pitch import Pitch, pitch_of_degrees, pitch_of_rise
from tablegen.numbers.units import INCHES
from tablegen.written.degrees import signed_degrees
from tablegen.written.numbers import NUMBER, NoNumber, normalized, read_number
from tablegen.written.ranges import WrittenRange, split_range

ALLOWED = 'a pitch such as 6, 6/12, 6 in 12, 6:12, 7.5, 7 1/2 or 26.565 deg, above 0 and up to 24 in 12'
RANGE_ALLOWED = "a range such as '4 to 12 by 1/2'"
STEEPEST = 24
"""Inches of rise per foot of run that pass without being asked for."""
STEEPEST_AT_ALL = 120
"""Inches of rise per foot past which no table is of use (84 degrees)."""
MOST_PITCHES = 200
PER_RUN = re.compile(rf'(?P<rise>{NUMBER}) ?(?P<mark>/|:|in|on) ?(?P<run>{NUMBER})', re.IGNORECASE)
FRACTION = re.compile('(?P<above>[0-9]+)/(?P<below>[0-9]+)')


def pitch(written: object, place: str = 'pitch', steep: bool = False) -> Pitch:
    """Return the pitch that was written.

    Given:
        written  inches of rise per foot of run, a rise and a run, or degrees; or a whole number or Fraction
        place    what to call it in an error
        steep    whether a rise over 24 in 12 was asked for on purpose

    Errors:
        BookError if it is no pitch, can be read in two ways, or is 0, below 0 or too steep
    """
    return _passed(_read(written, place, bare_fraction=False), written, place, steep)


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
    found = sorted((one for some in read for one in some), key=lambda one: one.slope)
    once = found[:1] + [one for before, one in pairwise(found) if one.slope != before.slope]
    if len(once) > MOST_PITCHES:
        raise BookError(place, f'{len(once)} pitches are too many', f'up to {MOST_PITCHES}')
    return tuple(once)


def _pitches_of(item: object, place: str, steep: bool) -> list[Pitch]:
    written = split_range(item) if isinstance(item, str) else None
    return _pitch_range(written, place, steep) if written else [pitch(item, place, steep)]


def _pitch_range(written: WrittenRange, place: str, steep: bool) -> list[Pitch]:
    first, last = (
        _passed(_read(end, place, bare_fraction=True), end, place, steep)
        for end in (written.first, written.last)
    )
    try:
        by = read_number(normalized(written.step or '1')).value
    except NoNumber:
        by = Fraction(0)
    if first.rise_in is None or last.rise_in is None or by <= 0:
        raise BookError(place, 'a range needs inches of rise and a step above 0', RANGE_ALLOWED)
    if last.rise_in < first.rise_in:
        raise BookError(place, f'the range goes backwards, {first.short} to {last.short}', RANGE_ALLOWED)
    count = (last.rise_in - first.rise_in) // by + 1
    if count > MOST_PITCHES:
        raise BookError(place, f'{count} pitches are too many', f'up to {MOST_PITCHES}')
    return [pitch_of_rise(first.rise_in + by * step) for step in range(count)]


def _passed(found: Pitch, written: object, place: str, steep: bool) -> Pitch:
    if found.rise > STEEPEST_AT_ALL:
        raise BookError(place, f"'{written}' is steeper than any rafter", f'up to {STEEPEST_AT_ALL} in 12')
    if found.rise > STEEPEST and not steep:
        raise BookError(
            place,
            f"'{written}' is over {STEEPEST} in 12",
            ALLOWED,
            'if it is meant, say so: steep = true in the settings, --steep on the command line',
        )
    return found


def _read(written: object, place: str, bare_fraction: bool) -> Pitch:
    """Return a pitch; a bare fraction such as 1/2 is inches of rise in a range, where nothing else can be meant."""
    if isinstance(written, (int, Fraction)) and not isinstance(written, bool):
        return _checked(Fraction(written), str(written), place)
    if not isinstance(written, str):
        raise BookError(place, f'{written!r} is no pitch', ALLOWED)
    clean = normalized(written)
    try:
        fraction = FRACTION.fullmatch(clean)
        if fraction and int(fraction['below']) != INCHES.base:
            rise = read_number(clean)  # raises with what was meant by 71/2
            if not bare_fraction:
                raise BookError(
                    place,
                    f"'{written}' can be read in more than one way",
                    ALLOWED,
                    f"write '{clean} in 12' for so many inches per foot, or the rise and run as 6:12",
                )
            return _checked(rise.value, written, place)
        found = _in_degrees(clean, written, place) or _per_run(clean, written, place)
        return found or _plain(clean, written, place)
    except NoNumber as fault:
        meant = f'did you mean {fault.meant}?' if fault.meant else ''
        raise BookError(place, f"'{written}' is no pitch", ALLOWED, meant) from None


def _in_degrees(clean: str, written: str, place: str) -> Pitch | None:
    found = signed_degrees(clean)
    if found is None:
        return None
    if not 0 < found < 90:
        raise BookError(place, f"'{written}' is no slope", 'above 0 and below 90 degrees')
    return pitch_of_degrees(found)


def _per_run(clean: str, written: str, place: str) -> Pitch | None:
    match = PER_RUN.fullmatch(clean)
    if not match:
        return None
    rise, run = read_number(match['rise']).value, read_number(match['run']).value
    if run == 0 or (match['mark'] == '/' and run != INCHES.base):
        raise BookError(place, f"'{written}' is no pitch", ALLOWED)
    return _checked(INCHES.base * rise / run, written, place)


def _plain(clean: str, written: str, place: str) -> Pitch:
    below_zero = clean.startswith('-')
    rise = read_number(clean.removeprefix('-')).value
    return _checked(-rise if below_zero else rise, written, place)


def _checked(rise_in: Fraction, written: str, place: str) -> Pitch:
    if rise_in == 0:
        raise BookError(place, f"'{written}' is flat: a rafter needs a rise", ALLOWED)
    if rise_in < 0:
        raise BookError(place, f"'{written}' is below zero", ALLOWED)
    return pitch_of_rise(rise_in)
