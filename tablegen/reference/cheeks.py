"""Cheek cuts of regular corners, read on the side, on the top and on the square."""

from __future__ import annotations

from dataclasses import dataclass

from tablegen.figures import Figure
from tablegen.geometry import cheeks
from tablegen.geometry.corner import square_corner
from tablegen.pitch import Pitch
from tablegen.reference.finish import deg, mark
from tablegen.reference.table import Table
from tablegen.settings import Settings


@dataclass(frozen=True, slots=True)
class CheekRow:
    """Cheeks of jacks and hips at one pitch; on the side the blade is tilted 45 degrees for every one."""

    pitch: Pitch
    jack_saw: Figure
    """deg, on the jack's SIDE, the saw's line from square across."""
    jack_top: Figure
    """deg, on the jack's TOP edge, from square across."""
    jack_figure: Figure
    """in, held against 12 on the square for that line; marked on the side of the 12."""
    hip_saw: Figure
    """deg, on the hip's SIDE, from square across."""
    hip_top: Figure
    """deg, on a SQUARE top edge, from square across; not for a backed hip."""
    hip_figure: Figure
    """in, against 12, for that line."""


@dataclass(frozen=True, slots=True)
class BackedCheekRow:
    """Lines on the faces of a BACKED hip at one pitch, where a square top's figure does not hold."""

    pitch: Pitch
    at_ridge: Figure
    """deg, against a ridge over that face's side, from the hip's long edge."""
    at_ridge_figure: Figure
    """in, held against 12 on the square for that line: 12 along the edge."""
    at_common: Figure
    """deg, against a common of that face's side, from the hip's long edge."""
    at_common_figure: Figure


def cheek_rows(settings: Settings) -> list[CheekRow]:
    """Return one row a pitch."""
    rows = []
    for pitch in settings.pitches:
        at = square_corner(pitch.slope, pitch.slope)
        jack, hip = cheeks.jack(at), cheeks.hip_at_ridge(at)
        rows.append(
            CheekRow(
                pitch,
                deg(jack.saw),
                deg(jack.top_from_square()),
                mark(jack.figure(), settings),
                deg(hip.saw),
                deg(hip.top_from_square()),
                mark(hip.figure(), settings),
            )
        )
    return rows


def backed_cheek_rows(settings: Settings) -> list[BackedCheekRow]:
    """Return one row a pitch."""
    rows = []
    for pitch in settings.pitches:
        at = square_corner(pitch.slope, pitch.slope)
        ridge, common = cheeks.backed_top_at_ridge(at), cheeks.backed_top_at_common(at)
        rows.append(
            BackedCheekRow(
                pitch,
                deg(ridge),
                mark(12 * ridge.tangent, settings),
                deg(common),
                mark(12 * common.tangent, settings),
            )
        )
    return rows


def listed(settings: Settings) -> list[Table]:
    """Return the tables of this group."""
    return [
        Table(
            'cheeks',
            'cheeks',
            'Cheek cuts, blade at 45°',
            ('pitch', 'jack side', 'jack top', 'on 12', 'hip side', 'hip top', 'on 12'),
            'side: on the side, from square; top: on the top edge, from square, the hip left square; on 12: figure on '
            'the square, marked on the side of the 12',
            cheek_rows,
        ),
        Table(
            'cheeks',
            'backed-cheeks',
            'Cheek cuts of backed hips',
            ('pitch', 'at ridge', 'on 12', 'at common', 'on 12'),
            "on the backed face, from the hip's long edge; 12 along the edge",
            backed_cheek_rows,
        ),
    ]
