"""Shortening at ridges, hips and valleys, by thickness and by pitch; the ends of hip roofs' ridges."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from tablegen.geometry import ridge, shortening
from tablegen.geometry.pitch import Pitch, pitch_of_rise
from tablegen.numbers import text
from tablegen.numbers.figure import Figure
from tablegen.numbers.units import INCHES
from tablegen.settings import Settings
from tablegen.tables.finish import mark, parts
from tablegen.tables.former import Table

COLUMN_THICKNESSES_IN = tuple(map(Fraction, ('3/4', '1', '5/4', '3/2', '5/2', '7/2', '11/2')))
"""Thicknesses of the columns of rows by thickness, in."""
THICKNESS_HEADS = tuple(text.rational(t) for t in COLUMN_THICKNESSES_IN)
ANY_REGULAR = pitch_of_rise(Fraction(12)).corner
"""Level deductions of a regular corner are the same at every pitch."""


@dataclass(frozen=True, slots=True)
class LevelShorteningRow:
    """Deductions of a regular corner, level, for one thickness of what is met; the same at every pitch."""

    thickness_in: Fraction
    """in, of what is met, as each figure says."""
    common: Figure
    """in, level, ridge center line to ridge face, by the ridge; a valley jack at the ridge the same."""
    shed_on_ledger: Figure
    """in, level, the wall behind the ledger to the ledger's face, by the ledger: the run goes to the wall."""
    hip_or_jack: Figure
    """in, level along the member's center line, center line to face: a hip or valley at a ridge, by the ridge, or
    between commons, by those; a jack at a hip or valley, by that: half of the 45-degree thickness."""
    end_common: Figure
    """in, level, a ridge's theoretical end to its sawn end, hips between commons, by the last side commons: what the
    ridge runs past, and what comes off the end common."""


@dataclass(frozen=True, slots=True)
class RidgeEndRow:
    """Ends of regular hip roofs' ridges with the hips on their sides, for one thickness of the ridge."""

    ridge_in: Fraction
    end_common_with_hip: tuple[Figure, ...]
    """in, level, theoretical end to sawn end, one a thickness of the HIPS, COLUMN_THICKNESSES_IN in turn: what the
    ridge runs past, and what comes off the end common."""


@dataclass(frozen=True, slots=True)
class ShorteningRow:
    """Deductions of one member at one pitch, along its top edge, one a thickness of what it meets."""

    pitch: Pitch
    off_along_edge: tuple[Figure, ...]
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
            mark(shortening.at_ledger(t), settings),
            mark(shortening.hip_at_ridge(t, ANY_REGULAR), settings),
            mark(shortening.end_common(ridge.end_past_commons(t)), settings),
        )
        for t in INCHES.thicknesses
    ]


def ridge_end_rows(settings: Settings) -> list[RidgeEndRow]:
    """Return what ridges run past their ends, and end commons are shortened by, where hips bear on their sides."""
    return [
        RidgeEndRow(
            own,
            parts(
                [
                    shortening.end_common(ridge.end_past_hips(own, hip, ANY_REGULAR))
                    for hip in COLUMN_THICKNESSES_IN
                ],
                settings,
            ),
        )
        for own in COLUMN_THICKNESSES_IN
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
        at = pitch.corner
        along = [shortening.along(shortening.jack_at_hip(t, at), pitch.slope) for t in COLUMN_THICKNESSES_IN]
        rows.append(ShorteningRow(pitch, parts(along, settings)))
    return rows


def hip_rows(settings: Settings) -> list[ShorteningRow]:
    """Return the deductions of regular hips and valleys at a ridge, or between commons, along the hip."""
    rows = []
    for pitch in settings.pitches:
        at = pitch.corner
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


def listed(settings: Settings) -> list[Table]:
    """Return the tables of this group."""
    return [*_level(), *_by_pitch()]


def _level() -> list[Table]:
    return [
        Table(
            'ridge',
            'shortening-level',
            'Shortening, level, any pitch',
            ('thickness', 'common', 'shed, ledger', 'hip, jack', 'end common'),
            'inches, level, center line to face, by the thickness of what is met; common at a ridge: half; shed on a '
            'ledger: all, wall to face; hip at a ridge or between commons, jack at a hip: half of the 45-degree '
            "thickness; end common: a ridge's theoretical end to its sawn end, hips between commons, by those",
            level_rows,
        ),
        Table(
            'ridge',
            'ridge-ends',
            'End common, hips on the ridge',
            ('ridge', *THICKNESS_HEADS),
            "inches, level, a ridge's theoretical end to its sawn end, each hip with one cheek on its side of the "
            'ridge: what the ridge runs past, and what comes off the end common',
            ridge_end_rows,
        ),
    ]


def _by_pitch() -> list[Table]:
    by_pitch = ('pitch', *THICKNESS_HEADS)
    along = (
        "inches along the top edge, center line's plumb line to the face's, by the thickness of what is met"
    )
    return [
        Table('ridge', 'shortening-common', 'Shortening of commons at a ridge', by_pitch, along, common_rows),
        Table('ridge', 'shortening-hip', 'Shortening of hips and valleys', by_pitch, along, hip_rows),
        Table(
            'ridge', 'shortening-jack', 'Shortening of jacks at a hip or valley', by_pitch, along, jack_rows
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
