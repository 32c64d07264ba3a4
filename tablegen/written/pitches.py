"""Pitches as people write them: one, a list or a range, in order and none twice."""

from __future__ import annotations

import re
from fractions import Fraction
from itertools import pairwise

from tablegen.errors import BookError, did_you_mean, each_of
from tablegen.geometry.pitch import Pitch, pitch_of_degrees, pitch_of_rise
from tablegen.messages import message
from tablegen.numbers.units import INCHES
from tablegen.written.degrees import signed_degrees
from tablegen.written.numbers import NUMBER, NoNumber, normalized, number, read_number
from tablegen.written.ranges import WrittenRange, split_range

STEEPEST = 24
"""Inches of rise per foot of run that pass without being asked for."""
ALLOWED = message('reader.a_pitch', most=f'{STEEPEST} {INCHES.over_base}')
A_RANGE = message('reader.a_range')
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
        raise BookError(place, message('reader.no_pitch_given'), message('reader.pitch_list'))
    _refuse_too_many(len(items), place)
    read = (
        each_of(items, place, lambda item, here: _pitches_of(item, here, steep))
        if len(items) > 1
        else [_pitches_of(items[0], place, steep)]
    )
    found = sorted((one for some in read for one in some), key=lambda one: one.slope)
    once = found[:1] + [one for before, one in pairwise(found) if one.slope != before.slope]
    _refuse_too_many(len(once), place)
    return tuple(once)


def _refuse_too_many(count: int, place: str) -> None:
    if count > MOST_PITCHES:
        problem = message('reader.too_many_pitches', count=count)
        raise BookError(place, problem, message('error.up_to', most=MOST_PITCHES))


def _pitches_of(item: object, place: str, steep: bool) -> list[Pitch]:
    written = split_range(item) if isinstance(item, str) else None
    return _pitch_range(written, place, steep) if written else [pitch(item, place, steep)]


def _pitch_range(written: WrittenRange, place: str, steep: bool) -> list[Pitch]:
    first, last = (
        _passed(_read(end, place, bare_fraction=True), end, place, steep)
        for end in (written.first, written.last)
    )
    by, meant = Fraction(0), ''
    try:
        by = number(written.step or '1')
    except NoNumber as fault:
        meant = fault.meant
    if first.rise_in is None or last.rise_in is None or by <= 0:
        raise BookError(place, message('reader.range_needs'), A_RANGE, did_you_mean(meant))
    if last.rise_in < first.rise_in:
        backwards = message('reader.range_backwards', first=first.short, last=last.short)
        raise BookError(place, backwards, A_RANGE)
    count = (last.rise_in - first.rise_in) // by + 1
    _refuse_too_many(count, place)
    return [pitch_of_rise(first.rise_in + by * step) for step in range(count)]


def _passed(found: Pitch, written: object, place: str, steep: bool) -> Pitch:
    if found.rise > STEEPEST_AT_ALL:
        most = message('error.up_to', most=f'{STEEPEST_AT_ALL} {INCHES.over_base}')
        raise BookError(place, message('reader.too_steep', written=written), most)
    if found.rise > STEEPEST and not steep:
        problem = message('reader.steep', written=written, most=f'{STEEPEST} {INCHES.over_base}')
        raise BookError(place, problem, ALLOWED, message('reader.say_steep'))
    return found


def _read(written: object, place: str, bare_fraction: bool) -> Pitch:
    """Return a pitch; a bare fraction such as 1/2 is inches of rise in a range, where nothing else can be meant."""
    if isinstance(written, (int, Fraction)) and not isinstance(written, bool):
        return _checked(Fraction(written), str(written), place)
    if not isinstance(written, str):
        raise BookError(place, message('reader.no_pitch', written=repr(written)), ALLOWED)
    clean = normalized(written)
    try:
        fraction = FRACTION.fullmatch(clean)
        if fraction and int(fraction['below']) != INCHES.base:
            rise = read_number(clean)  # raises with what was meant by 71/2
            if not bare_fraction:
                problem = message('reader.two_ways', written=written)
                which = message('reader.say_which', rise=f'{clean} {INCHES.over_base}')
                raise BookError(place, problem, ALLOWED, which)
            return _checked(rise.value, written, place)
        found = _in_degrees(clean, written, place) or _per_run(clean, written, place)
        return found or _plain(clean, written, place)
    except NoNumber as fault:
        problem = message('reader.no_pitch', written=f"'{written}'")
        raise BookError(place, problem, ALLOWED, did_you_mean(fault.meant_in(clean))) from None


def _in_degrees(clean: str, written: str, place: str) -> Pitch | None:
    found = signed_degrees(clean)
    if found is None:
        return None
    if not 0 < found < 90:
        raise BookError(place, message('reader.no_slope', written=written), message('reader.slope_degrees'))
    return pitch_of_degrees(found)


def _per_run(clean: str, written: str, place: str) -> Pitch | None:
    match = PER_RUN.fullmatch(clean)
    if not match:
        return None
    rise, run = read_number(match['rise']).value, read_number(match['run']).value
    if run == 0 or (match['mark'] == '/' and run != INCHES.base):
        raise NoNumber(clean)
    return _checked(INCHES.base * rise / run, written, place)


def _plain(clean: str, written: str, place: str) -> Pitch:
    below_zero = clean.startswith('-')
    rise = read_number(clean.removeprefix('-')).value
    return _checked(-rise if below_zero else rise, written, place)


def _checked(rise_in: Fraction, written: str, place: str) -> Pitch:
    if rise_in == 0:
        raise BookError(place, message('reader.flat', written=written), ALLOWED)
    if rise_in < 0:
        raise BookError(place, message('reader.below_zero', written=written), ALLOWED)
    return pitch_of_rise(rise_in)
