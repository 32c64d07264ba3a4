"""A pitch: the slope of a roof as people write it, and as the geometry takes it."""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction

from tablegen import text
from tablegen.angles import tangent_of_degrees
from tablegen.errors import BookError
from tablegen.exact import Exact, exact
from tablegen.lengths import NUMBER, number

ALLOWED = 'a pitch such as 6, 6/12, 6 in 12, 6:12, 7.5, 7 1/2 or 26.565 deg, above 0 and up to 24 in 12'
STEEPEST = 24
"""Inches of rise per foot of run that pass without being asked for."""
STEEPEST_AT_ALL = 120
"""Inches of rise per foot past which no table is of use (84 degrees)."""
PER_RUN = re.compile(rf'(?P<rise>{NUMBER})\s*(?P<mark>/|:|in|on)\s*(?P<run>{NUMBER})', re.IGNORECASE)
DEGREES = re.compile(rf'(?P<degrees>{NUMBER})\s*(?:degrees|degree|deg\.?|°)', re.IGNORECASE)
AMBIGUOUS = re.compile(r'\d+/\d+')


@dataclass(frozen=True, slots=True)
class Pitch:
    """A roof's slope."""

    slope: Exact
    """Rise over run, one term, above 0."""
    text: str
    """'6 in 12', '7 1/2 in 12' or '26.565°'."""
    short: str
    """What a thumb tab shows: '6', '7 1/2', '26.565°'."""
    rise_in: Fraction | None
    """Inches of rise per foot of run, where that is rational; None for most pitches in degrees."""

    @property
    def rise(self) -> Exact:
        """Return the inches of rise per foot of run."""
        return self.slope * 12


def pitch_of_rise(rise_in: Fraction) -> Pitch:
    """Return the pitch that rises so many inches per foot of run."""
    short = text.rational(rise_in)
    return Pitch(exact(rise_in / 12), f'{short} in 12', short, rise_in)


def pitch_of_degrees(degrees: Fraction) -> Pitch:
    """Return the pitch that rises at so many degrees, above 0 and below 90."""
    slope = tangent_of_degrees(degrees)
    name = f'{text.rational(degrees)}°'
    return Pitch(slope, name, name, Fraction(12) if degrees == 45 else None)


def pitch(written: str | int | Fraction, place: str = 'pitch', steep: bool = False) -> Pitch:
    """Return the pitch that was written.

    Given:
        written  inches of rise per foot of run, a rise and a run, or degrees
        place    what to call it in an error
        steep    whether a rise over 24 in 12 was asked for on purpose

    Errors:
        BookError if it is no pitch, or is 0, below 0 or too steep
    """
    if isinstance(written, (int, Fraction)) and not isinstance(written, bool):
        found = _checked(Fraction(written), str(written), place)
    elif isinstance(written, str):
        found = _read(written.strip(), place)
    else:
        raise BookError(place, f'{written!r} is no pitch', ALLOWED)
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


def _read(written: str, place: str) -> Pitch:
    refusal = BookError(place, f"'{written}' is no pitch", ALLOWED)
    clean = re.sub(r'\s+', ' ', written.replace('⁄', '/').replace('−', '-').replace('½', ' 1/2').strip())
    if AMBIGUOUS.fullmatch(clean) and not clean.endswith('/12'):
        raise BookError(
            place,
            f"'{written}' can be read in more than one way",
            ALLOWED,
            f"write '{clean} in 12' for so many inches per foot, or the rise and run as 6:12",
        )
    try:
        if match := DEGREES.fullmatch(clean):
            degrees = number(match['degrees'])
            if not 0 < degrees < 90:
                raise BookError(place, f"'{written}' is no slope", 'above 0 and below 90 degrees')
            return pitch_of_degrees(degrees)
        if match := PER_RUN.fullmatch(clean):
            rise, run = number(match['rise']), number(match['run'])
            if run == 0 or (match['mark'] == '/' and run != 12):
                raise refusal
            return _checked(12 * rise / run, written, place)
        return _checked(
            number(clean.removeprefix('-')) * (-1 if clean.startswith('-') else 1), written, place
        )
    except ValueError:
        raise refusal from None


def _checked(rise_in: Fraction, written: str, place: str) -> Pitch:
    if rise_in == 0:
        raise BookError(place, f"'{written}' is flat: a rafter needs a rise", ALLOWED)
    if rise_in < 0:
        raise BookError(place, f"'{written}' is below zero", ALLOWED)
    return pitch_of_rise(rise_in)
