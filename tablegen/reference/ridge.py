"""Shortening at ridges, hips and valleys, by thickness and by pitch; ridges of hip roofs."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from tablegen import text
from tablegen.figures import Figure
from tablegen.geometry import ridge, shortening
from tablegen.geometry.corner import square_corner
from tablegen.lumber import THICKNESSES_IN
from tablegen.pitch import Pitch, pitch_of_rise
from tablegen.reference.finish import mark, parts
from tablegen.reference.table import Table
from tablegen.settings import Settings

COLUMN_THICKNESSES_IN = tuple(map(Fraction, ('3/4', '1', '5/4', '3/2', '5/2', '7/2', '11/2')))
"""Thicknesses of the columns of rows by thickness, in."""
THICKNESS_HEADS = tuple(text.rational(t) for t in COLUMN_THICKNESSES_IN)
ANY_REGULAR = square_corner(pitch_of_rise(Fraction(12)).slope, pitch_of_rise(Fraction(12)).slope)
"""Level deductions of a regular corner are the same at every pitch."""


@dataclass(frozen=True, slots=True)
class LevelShorteningRow:
    """Deductions of a regular corner, level, for one thickness of what is met; the same at every pitch."""

    thickness_in: Fraction
    """in: of the ridge for the first three, of the hip or valley for jacks, of the commons for between."""
    common: Figure
    """in, level, ridge center line to ridge face; a valley jack at the ridge the same."""
    hip: Figure
    """in, level along the hip's center line, ridge center line to the face it meets, ridge or commons; a jack at
    a hip or valley the same, level along the jack: half of the 45-degree thickness."""
    past_end_between_commons: Figure
    """in, level, theoretical end of a hip roof's ridge to its sawn end, hips between commons of this thickness."""


@dataclass(frozen=True, slots=True)
class ShorteningRow:
    """Deductions of one member at one pitch, along its top edge, one a thickness of what it meets."""

    pitch: Pitch
    along: tuple[Figure, ...]
    """in, along the top edge, from the center line's plumb line to the face's, COLUMN_THICKNESSES_IN in turn."""


@dataclass(frozen=True, slots=True)
class RidgeRow:
    """How far a square-topped ridge of each thickness sits below the planes' meeting line."""

    pitch: Pitch
    sits_down: tuple[Figure, ...]
    """in, plumb, the meeting line of the roof planes to the ridge's top, COLUMN_THICKNESSES_IN in turn."""


def level_rows(settings: Settings) -> list[LevelShorteningRow]:
    """Return the level deductions for every dressed thickness."""
    return [
        LevelShorteningRow(
            t,
            mark(shortening.at_ridge(t), settings),
            mark(shortening.hip_at_ridge(t, ANY_REGULAR), settings),
            mark(ridge.end_past_commons(t), settings),
        )
        for t in THICKNESSES_IN
    ]


def common_rows(settings: Settings) -> list[ShorteningRow]:
    """Return the deductions of commons at a ridge, and of valley jacks at it."""
    return [
        ShorteningRow(
            pitch,
            parts(
                [shortening.along(shortening.at_ridge(t), pitch.slope) for t in COLUMN_THICKNESSES_IN],
                settings,
            ),
        )
        for pitch in settings.pitches
    ]


def jack_rows(settings: Settings) -> list[ShorteningRow]:
    """Return the deductions of jacks at a regular hip or valley, at the jack's center line."""
    rows = []
    for pitch in settings.pitches:
        at = square_corner(pitch.slope, pitch.slope)
        along = [shortening.along(shortening.jack_at_hip(t, at), pitch.slope) for t in COLUMN_THICKNESSES_IN]
        rows.append(ShorteningRow(pitch, parts(along, settings)))
    return rows


def hip_rows(settings: Settings) -> list[ShorteningRow]:
    """Return the deductions of regular hips and valleys at a ridge, or between commons, along the hip."""
    rows = []
    for pitch in settings.pitches:
        at = square_corner(pitch.slope, pitch.slope)
        along = [
            shortening.along(shortening.hip_at_ridge(t, at), at.hip_slope) for t in COLUMN_THICKNESSES_IN
        ]
        rows.append(ShorteningRow(pitch, parts(along, settings)))
    return rows


def ridge_rows(settings: Settings) -> list[RidgeRow]:
    """Return how far ridges sit down."""
    return [
        RidgeRow(pitch, parts([ridge.sits_down(t, pitch.slope) for t in COLUMN_THICKNESSES_IN], settings))
        for pitch in settings.pitches
    ]


def past_end_with_hips(settings: Settings) -> Figure:
    """Return what each end of a regular hip roof's ridge is lengthened by where hips bear on its sides.

    Returned:
        in, level, theoretical end to sawn end, for the set thicknesses of ridge and hip
    """
    return mark(ridge.end_past_hips(settings.ridge_thickness, settings.hip_thickness, ANY_REGULAR), settings)


def listed(settings: Settings) -> list[Table]:
    """Return the tables of this group."""
    by_pitch = ('pitch', *THICKNESS_HEADS)
    along = (
        "inches along the top edge, center line's plumb line to the face's, by the thickness of what is met"
    )
    return [
        Table(
            'ridge',
            'shortening-level',
            'Shortening, level, any pitch',
            ('thickness', 'common', 'hip, jack', 'past the end'),
            'inches, level, center line to face; common: half; hip at a ridge, and jack at a hip: half of the '
            "45-degree thickness; past the end: a hip roof's ridge beyond its theoretical end, hips between commons",
            level_rows,
        ),
        Table(
            'ridge',
            'shortening-common',
            'Shortening of commons at a ridge',
            by_pitch,
            along,
            common_rows,
        ),
        Table(
            'ridge',
            'shortening-hip',
            'Shortening of hips and valleys',
            by_pitch,
            along,
            hip_rows,
        ),
        Table(
            'ridge',
            'shortening-jack',
            'Shortening of jacks at a hip or valley',
            by_pitch,
            along,
            jack_rows,
        ),
        Table(
            'ridge',
            'ridge-sits-down',
            'How far a ridge sits down',
            by_pitch,
            "inches, plumb, where the roof planes meet to the ridge's square top",
            ridge_rows,
        ),
    ]
