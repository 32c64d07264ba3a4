"""Hips and valleys of regular corners: backing, and drops by thickness, plumb and square to the edge."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction

from tablegen.geometry import backing, corner
from tablegen.geometry.corner import Corner
from tablegen.geometry.pitch import Pitch
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import Figure
from tablegen.settings import Settings
from tablegen.tables.finish import deg, mark, parts, unit
from tablegen.tables.former import Table
from tablegen.tables.ridge import COLUMN_THICKNESSES_IN, THICKNESS_HEADS


@dataclass(frozen=True, slots=True)
class HipRow:
    """The hip or valley of one pitch."""

    pitch: Pitch
    plumb_cut: Figure
    """deg, on the side, from square across."""
    level_cut: Figure
    """deg, its complement."""
    per_foot: Figure
    """in per foot of COMMON run, along the hip, to thousandths."""
    backing_bevel: Figure
    """deg, each face of a backed top, from the square top, in a section square to the hip."""
    drop_plumb: Figure
    """in, for the set hip thickness, PLUMB, planes' meeting line to the square top."""
    drop_square_to_edge: Figure
    """in, the same lowering measured SQUARE to the hip's edge; also how far a backed face goes down its side."""


@dataclass(frozen=True, slots=True)
class DropRow:
    """Drops of square-topped hips at one pitch by thickness."""

    pitch: Pitch
    drop: tuple[Figure, ...]
    """in, COLUMN_THICKNESSES_IN in turn, all plumb or all square to the edge."""


def hip_rows(settings: Settings) -> list[HipRow]:
    """Return one row a pitch."""
    rows = []
    for pitch in settings.pitches:
        at = pitch.corner
        slope = corner.hip_angle(at)
        rows.append(
            HipRow(
                pitch,
                deg(slope),
                deg(slope.complement()),
                unit(corner.hip_length(Fraction(12), at)),
                deg(backing.bevel(at)),
                mark(backing.drop_plumb(settings.hip_thickness, at), settings),
                mark(backing.drop_square(settings.hip_thickness, at), settings),
            )
        )
    return rows


def drop_plumb_rows(settings: Settings) -> list[DropRow]:
    """Return plumb drops."""
    return [DropRow(pitch, _drops(backing.drop_plumb, pitch, settings)) for pitch in settings.pitches]


def drop_square_rows(settings: Settings) -> list[DropRow]:
    """Return drops square to the hip's edge."""
    return [DropRow(pitch, _drops(backing.drop_square, pitch, settings)) for pitch in settings.pitches]


def _drops(
    measured: Callable[[Fraction, Corner], Exact], pitch: Pitch, settings: Settings
) -> tuple[Figure, ...]:
    at = pitch.corner
    return parts([measured(t, at) for t in COLUMN_THICKNESSES_IN], settings)


def listed(settings: Settings) -> list[Table]:
    """Return the tables of this group."""
    by_pitch = ('pitch', *THICKNESS_HEADS)
    return [
        Table(
            'hips',
            'hips',
            'Hips and valleys',
            ('pitch', 'plumb cut', 'level cut', 'per foot', 'backing', 'drop: plumb', 'drop: square'),
            'cuts on the side, from square across; per foot of common run; backing of each face, from the square top; '
            'drop plumb, and square to the edge, for the set thickness',
            hip_rows,
        ),
        Table(
            'hips',
            'drop-plumb',
            'Drops, plumb',
            by_pitch,
            'inches, plumb, where the planes meet to the square top, by thickness of the hip',
            drop_plumb_rows,
        ),
        Table(
            'hips',
            'drop-square',
            'Drops, square to the edge',
            by_pitch,
            "inches, square to the hip's edge; also how far a backed face goes down its side",
            drop_square_rows,
        ),
    ]
