"""Jacks of regular corners: differences, deductions, long point to short point."""

from __future__ import annotations

from dataclasses import dataclass

from tablegen.geometry import corner, shortening
from tablegen.geometry.pitch import Pitch
from tablegen.numbers import text
from tablegen.numbers.figure import Figure
from tablegen.settings import Settings
from tablegen.tables.finish import mark
from tablegen.tables.former import Table


@dataclass(frozen=True, slots=True)
class JackTakeRow:
    """Differences and deductions of jacks at one pitch, for the set thicknesses."""

    pitch: Pitch
    difference: tuple[Figure, ...]
    """in, along the slope, per space, one a set spacing; the first jack, plate line to hip center line, is one."""
    off_at_hip_or_valley: Figure
    """in, along the top edge, hip or valley center line to its side, on the jack's center line."""
    off_at_ridge: Figure
    """in, along the top edge, ridge center line to its face: a valley jack's other end."""
    short_to_long_point: Figure
    """in, along the top edge, short point to long point of the cheek; half of it each side of the center line."""


def take_rows(settings: Settings) -> list[JackTakeRow]:
    """Return one row a pitch."""
    rows = []
    for pitch in settings.pitches:
        at, slope = pitch.corner, pitch.slope
        rows.append(
            JackTakeRow(
                pitch,
                tuple(mark(corner.jack_difference(one, at), settings) for one in settings.spacings),
                mark(shortening.along(shortening.jack_at_hip(settings.hip_thickness, at), slope), settings),
                mark(shortening.along(shortening.at_ridge(settings.ridge_thickness), slope), settings),
                mark(
                    shortening.along(shortening.point_to_point(settings.rafter_thickness, at), slope),
                    settings,
                ),
            )
        )
    return rows


def listed(settings: Settings) -> list[Table]:
    """Return the tables of this group."""
    spacings = tuple(text.rational(one) for one in settings.spacings)
    return [
        Table(
            'jack-deductions',
            'jacks',
            'Jacks: differences and deductions',
            ('pitch', *spacings, 'off: hip', 'off: ridge', 'points'),
            'inches along the top edge: difference per space on center; off: center line to face, at a hip or valley, '
            'and of a valley jack at the ridge; points: short point to long point',
            take_rows,
        ),
    ]
