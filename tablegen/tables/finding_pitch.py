"""Finding a pitch: degrees to pitch, pitch to degrees by halves, and what a level and a tape show."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from tablegen.geometry import finding_pitch
from tablegen.geometry.pitch import Pitch, pitch_of_rise
from tablegen.numbers.figure import Figure
from tablegen.settings import Settings
from tablegen.tables.finish import deg, mark, unit
from tablegen.tables.former import Table

DEGREES = range(1, 79)
"""78 rows, three pages of 26: past 63.4 degrees a roof is over 24 in 12."""
HALF_PITCHES = range(1, 49)
LEVELS_IN = (Fraction(24), Fraction(48))


@dataclass(frozen=True, slots=True)
class DegreeRow:
    """A whole degree as a pitch."""

    degrees: int
    rise: Figure
    """in per foot of run, to thousandths."""
    rise_part: Figure
    """in per foot of run, to the smallest part."""
    half_rise: Figure
    """in per foot of run half a degree steeper, to thousandths."""


@dataclass(frozen=True, slots=True)
class HalfPitchRow:
    """A pitch by half inches as degrees, and how it shows on a level."""

    pitch: Pitch
    slope: Figure
    """deg, from level, to hundredths."""
    slope_per_foot: Figure
    """in along the slope for 12 in of level run, to thousandths: measure it to find the pitch from a length."""
    gap: tuple[Figure, ...]
    """in, PLUMB, underside of a level 24 in long, then 48 in, down to the roof at its free end."""


def degree_rows(settings: Settings) -> list[DegreeRow]:
    """Return one row a degree."""
    rows = []
    for degrees in DEGREES:
        rise = finding_pitch.rise_per_foot(finding_pitch.from_degrees(Fraction(degrees)))
        half = finding_pitch.rise_per_foot(finding_pitch.from_degrees(degrees + Fraction(1, 2)))
        rows.append(DegreeRow(degrees, unit(rise), mark(rise, settings), unit(half)))
    return rows


def half_pitch_rows(settings: Settings) -> list[HalfPitchRow]:
    """Return one row a half inch of rise, ½ to 24 in 12."""
    rows = []
    for halves in HALF_PITCHES:
        pitch = pitch_of_rise(Fraction(halves, 2))
        rows.append(
            HalfPitchRow(
                pitch,
                deg(finding_pitch.degrees_of(pitch.slope)),
                unit(12 / finding_pitch.degrees_of(pitch.slope).cosine()),
                tuple(mark(pitch.slope * level, settings) for level in LEVELS_IN),
            )
        )
    return rows


def listed(settings: Settings) -> list[Table]:
    """Return the tables of this group."""
    return [
        Table(
            'find-pitch',
            'degrees-to-pitch',
            'Degrees to pitch',
            ('degrees', 'rise', 'to a part', 'half a degree more'),
            'inches of rise per foot of level run',
            degree_rows,
        ),
        Table(
            'find-pitch',
            'pitch-to-degrees',
            'Pitch to degrees, and on a level',
            ('pitch', 'degrees', 'slope of a foot', '24 in level', '48 in level'),
            "degrees from level; slope: inches along it per foot of level run; plumb, level's underside to the roof",
            half_pitch_rows,
        ),
    ]
