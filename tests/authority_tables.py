"""Rows of the printed tables in authorities/, each set against what this book computes for the same pitch."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Callable
from fractions import Fraction
from functools import cache
from pathlib import Path

from msgspec import Struct

from tablegen.geometry import cheeks, common, corner
from tablegen.geometry.corner import Corner, square_corner
from tablegen.numbers.angles import Angle, degrees_count
from tablegen.numbers.exact import Exact, exact

FOLDER = Path(__file__).parent / 'authorities'
SIZES_AND_LIMITS = {'hb44-tapes.toml', 'ps20-lumber.toml', 'residential-code.toml'}
"""Files with nothing to compute in them: their sizes and limits are checked where the book names them."""
FOOT = Fraction(12)
HUNDREDTH = Fraction(1, 100)
EIGHTH = Fraction(1, 8)
SIXTEENTH = Fraction(1, 16)
TEN_MINUTES = Fraction(1, 6)
EXACT = Fraction(0)
"""A ratio in lowest terms is printed exactly: its last place has no half."""


class Reading(Struct, frozen=True):
    """One printed value and ours."""

    row: str
    """Id of the row."""
    piece: str
    """The part of the row's printed text that is compared."""
    theirs: Fraction
    """Its value."""
    ours: Exact | Angle
    """In the same unit; an angle is compared in degrees."""
    step: Fraction
    """The last place printed, in the same unit."""

    def off(self) -> Exact:
        """Return theirs less ours; an angle of ours is taken to 12 decimals of a degree."""
        return self.theirs - in_degrees(self.ours)

    def agrees(self) -> bool:
        """Return whether ours is within half of their last place, however close that comes."""
        return abs_exact(self.off()) <= self.step / 2


class Table(Struct, frozen=True):
    """One column or line of figures."""

    ours: Callable[[Exact, dict], Exact | Angle]
    """From the slope, rise over run, and what the row gives."""
    read: Callable[[str], Fraction]
    step: Fraction


@cache
def load() -> dict[str, dict]:
    """Return every file by name, its numbers exact."""
    return {
        path.name: tomllib.loads(path.read_text('utf-8'), parse_float=Fraction)
        for path in sorted(FOLDER.glob('*.toml'))
        if path.name not in SIZES_AND_LIMITS
    }


@cache
def rows() -> dict[str, dict]:
    """Return every row by id."""
    return {row['id']: row for file in load().values() for row in file['value']}


def all_ids() -> set[str]:
    """Return the id of every row of every file, those of sizes and limits too."""
    files = (tomllib.loads(path.read_text('utf-8')) for path in FOLDER.glob('*.toml'))
    return {row['id'] for file in files for row in file['value']}


def in_degrees(ours: Exact | Angle) -> Exact:
    return exact(Fraction(degrees_count(ours, 12), 10**12)) if isinstance(ours, Angle) else ours


def abs_exact(value: Exact) -> Exact:
    return -value if value < 0 else value


def mixed(printed: str) -> Fraction:
    """Read '20', '21 3/4', '17/24' or '13.42', without the book's own reader."""
    return sum((Fraction(word) for word in printed.split()), Fraction(0))


def feet_inches(printed: str) -> Fraction:
    """Read '2-4 7/8', feet and inches, or plain inches."""
    feet, dash, inches = printed.rpartition('-')
    return (12 * Fraction(feet) if dash else 0) + mixed(inches)


def degrees_minutes(printed: str) -> Fraction:
    """Read '33-40', degrees and minutes, which these tables print in tens."""
    degrees, minutes = re.fullmatch(r'(\d+)-([0-5]?0)', printed).groups()
    return Fraction(degrees) + Fraction(minutes) / 60


def regular(slope: Exact) -> Corner:
    """Return the corner of one pitch; for the tables' line of no rise, of one that rises next to nothing."""
    rises = slope if slope > 0 else exact(Fraction(1, 10**30))
    return square_corner(rises, rises)


TABLES = {
    'pitch (rise / span) of roof': Table(lambda m, _: m / 2, mixed, EXACT),
    'plumb cut, common/jack (complement of slope)': Table(
        lambda m, _: common.slope_angle(m).complement(), degrees_minutes, TEN_MINUTES
    ),
    'seat cut, common/jack (slope angle)': Table(
        lambda m, _: common.slope_angle(m), degrees_minutes, TEN_MINUTES
    ),
    'length of common or jack rafter per foot of run': Table(
        lambda m, _: common.line_length(FOOT, m), mixed, HUNDREDTH
    ),
    'side cut of jack, square corner (angle to the long edge of the rafter)': Table(
        lambda m, _: cheeks.jack(regular(m)).top.complement(), degrees_minutes, TEN_MINUTES
    ),
    'difference in length of jacks, 16 in. centres': Table(
        lambda m, given: corner.jack_difference(Fraction(given['spacing_in']), regular(m)),
        feet_inches,
        EIGHTH,
    ),
    'difference in length of jacks, 24 in. centres': Table(
        lambda m, given: corner.jack_difference(Fraction(given['spacing_in']), regular(m)),
        feet_inches,
        EIGHTH,
    ),
    'plumb cut, hip/valley, square building': Table(
        lambda m, _: corner.hip_angle(regular(m)).complement(), degrees_minutes, TEN_MINUTES
    ),
    'seat cut, hip/valley, square building': Table(
        lambda m, _: corner.hip_angle(regular(m)), degrees_minutes, TEN_MINUTES
    ),
    'length of hip/valley per foot of run of common rafter': Table(
        lambda m, _: corner.hip_length(FOOT, regular(m)), mixed, HUNDREDTH
    ),
    'side cut of hip/valley, square building (angle to the long edge of the rafter)': Table(
        lambda m, _: cheeks.hip_at_ridge(regular(m)).top.complement(), degrees_minutes, TEN_MINUTES
    ),
    'side cut of jacks, number used with 12 (modern square, line 5)': Table(
        lambda m, _: cheeks.jack(regular(m)).figure(), mixed, SIXTEENTH
    ),
    'side cut of hip/valley, number used with 12 (modern square, line 6)': Table(
        lambda m, _: cheeks.hip_at_ridge(regular(m)).figure(), mixed, SIXTEENTH
    ),
}
"""One entry for each quantity of griffith-1916-fig49.toml, griffith-1916-fig60.toml and engraved-figures.toml."""


def table_readings() -> list[Reading]:
    """Return a reading for every row whose quantity is a column of a table."""
    return [
        Reading(
            row['id'],
            row['printed'],
            table.read(row['printed']),
            table.ours(exact(Fraction(row['given']['rise_per_ft'], 12)), row['given']),
            table.step,
        )
        for row in rows().values()
        if (table := TABLES.get(row['quantity']))
    ]
