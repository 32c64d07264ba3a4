"""Finding a pitch: degrees to pitch, pitch to degrees by halves, and what a level and a tape show."""

from __future__ import annotations

from fractions import Fraction
from functools import cache

from tablegen.geometry import common, finding_pitch
from tablegen.geometry.pitch import Pitch, pitch_of_rise
from tablegen.messages import message
from tablegen.numbers.exact import Exact
from tablegen.numbers.units import INCHES
from tablegen.settings import Settings
from tablegen.tables.columns import Make, by_pitch, each
from tablegen.tables.table import Needs, Row, Table

DEGREES = range(1, 79)
"""78 rows, three pages of 26: past 63.4 degrees a roof is over 24 in 12."""
RULE_AFTER = 5
HALF_PITCHES = tuple(pitch_of_rise(Fraction(halves, 2)) for halves in range(1, 49))
LEVELS_IN = (Fraction(24), Fraction(48))


def listed(settings: Settings) -> list[Table[int] | Table[Pitch]]:
    """Return the tables of this group."""
    return [_degrees(settings), _half_pitches(settings)]


def _degrees(settings: Settings) -> Table[int]:
    make = Make[int](settings)

    @cache
    def rise(degrees: int | Fraction) -> Exact:
        return finding_pitch.rise_per_foot(finding_pitch.from_degrees(Fraction(degrees)))

    columns = (
        make.count('degrees', lambda degrees: degrees),
        make.decimal('rise', rise),
        make.length('rise_part', rise),
        make.decimal('half_rise', lambda degrees: rise(degrees + Fraction(1, 2))),
    )
    needs = Needs(rule=_after_fives)
    return make.table(
        'find-pitch', 'degrees-to-pitch', lambda: DEGREES, columns, datum='rise_per_foot', needs=needs
    )


def _after_fives(above: Row, below: Row) -> bool:
    degrees = above.cells[0]
    return isinstance(degrees, int) and degrees % RULE_AFTER == 0


def _half_pitches(settings: Settings) -> Table[Pitch]:
    """Return a row a half inch of rise, ½ to 24 in 12."""
    make = Make[Pitch](settings)
    columns = (
        make.degrees('slope', lambda it: common.slope_angle(it.slope), 'from_level', message('head.degrees')),
        make.decimal(
            'slope_per_foot',
            lambda it: INCHES.unit_run / common.slope_angle(it.slope).cosine(),
            'slope_per_foot',
        ),
        *each(
            make.length,
            'gap_on_level',
            LEVELS_IN,
            lambda it, level: it.slope * level,
            'under_a_level',
            'level',
        ),
    )
    return by_pitch(settings, 'find-pitch', 'pitch-to-degrees', columns, pitches=HALF_PITCHES)
