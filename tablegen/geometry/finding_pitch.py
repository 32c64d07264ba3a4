"""Finding a pitch from what can be measured: each function returns a slope, rise over run."""

from __future__ import annotations

from fractions import Fraction

from tablegen.errors import BookError
from tablegen.messages import message
from tablegen.numbers import text
from tablegen.numbers.angles import tangent_of_degrees
from tablegen.numbers.exact import Exact, exact, root
from tablegen.numbers.units import INCHES


def from_rise_and_run(rise_in: Fraction, run_in: Fraction, place: str = 'run') -> Exact:
    """Return the slope of a plumb rise over a level run, both between the same two plumb lines.

    Errors:
        BookError if either is not above 0
    """
    _measured(rise_in, 'rise')
    _measured(run_in, place)
    return exact(rise_in / run_in)


def from_level_and_tape(level_in: Fraction, gap_in: Fraction) -> Exact:
    """Return the slope of an existing roof from a level and a tape.

    Given:
        level_in  from the end of the level that touches the roof to where the tape hangs, in, the level level
        gap_in    plumb from the level's underside down to the roof there, in; for 12 in of level it is the
                  pitch itself

    Errors:
        BookError if either is not above 0
    """
    _measured(level_in, 'level')
    return from_rise_and_run(gap_in, level_in, 'level')


def from_length_and_run(length_in: Fraction, run_in: Fraction) -> Exact:
    """Return the slope from a length along the slope and its level run, in.

    Errors:
        BookError if the length is not more than the run

    Source: the right triangle: rise = √(length² − run²).
    """
    _measured(run_in, 'run')
    if length_in <= run_in:
        problem = message('error.no_longer_than_run', length=text.in_units(length_in))
        raise BookError('length', problem, message('error.more_than_run'))
    return root(length_in * length_in - run_in * run_in) / run_in


def from_length_and_rise(length_in: Fraction, rise_in: Fraction) -> Exact:
    """Return the slope from a length along the slope and its plumb rise, in.

    Errors:
        BookError if the length is not more than the rise
    """
    _measured(rise_in, 'rise')
    if length_in <= rise_in:
        problem = message('error.no_longer_than_rise', length=text.in_units(length_in))
        raise BookError('length', problem, message('error.more_than_rise'))
    return rise_in / root(length_in * length_in - rise_in * rise_in)


def from_degrees(degrees: Fraction) -> Exact:
    """Return the slope of an angle from level.

    Errors:
        BookError if it is not above 0 and below 90
    """
    if not 0 < degrees < 90:
        problem = message('error.no_slope', degrees=degrees)
        raise BookError('degrees', problem, message('error.above_zero_below', below=90))
    return tangent_of_degrees(degrees)


def rise_per_foot(slope: Exact) -> Exact:
    """Return the inches of rise in 12 inches of run."""
    return INCHES.base * slope


def _measured(length_in: Fraction, place: str) -> None:
    if length_in <= 0:
        problem = message('error.measures_nothing', length=text.in_units(length_in))
        raise BookError(place, problem, message('error.above_zero'))
