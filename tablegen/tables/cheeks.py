"""Cheek cuts of regular corners, read on the side, on the top and on the square; where each side's cut starts."""

from __future__ import annotations

from dataclasses import dataclass

from tablegen.geometry import cheeks, shortening
from tablegen.geometry.pitch import Pitch
from tablegen.numbers.figure import Figure
from tablegen.settings import Settings
from tablegen.tables.finish import deg, mark, parts
from tablegen.tables.former import Table
from tablegen.tables.ridge import COLUMN_THICKNESSES_IN, THICKNESS_HEADS


@dataclass(frozen=True, slots=True)
class CheekRow:
    """Cheeks of jacks and hips at one pitch; on the side the blade is tilted 45 degrees for every one."""

    pitch: Pitch
    jack_side: Figure
    """deg, on the jack's SIDE, the saw's line from square across: its plumb cut."""
    jack_top: Figure
    """deg, on the jack's TOP edge, from square across."""
    jack_top_12_and: Figure
    """in, held against 12 on the square for that line; marked along the 12."""
    hip_side: Figure
    """deg, on the hip's SIDE, from square across: its plumb cut."""
    hip_top: Figure
    """deg, on a SQUARE top edge, from square across; not for a backed hip."""
    hip_top_12_and: Figure
    """in, against 12, for that line."""


@dataclass(frozen=True, slots=True)
class BackedCheekRow:
    """Lines on the faces of a BACKED hip at one pitch, where a square top's figure does not hold."""

    pitch: Pitch
    at_ridge_top: Figure
    """deg, against a ridge over that face's side, from square across the hip, on the face."""
    at_ridge_top_12_and: Figure
    """in, held against 12 on the square for that line; marked along the 12."""
    at_common_top: Figure
    """deg, against a common of that face's side, from square across."""
    at_common_top_12_and: Figure


@dataclass(frozen=True, slots=True)
class SetBackRow:
    """Where the plumb line of each side of a hip or valley starts, at one pitch."""

    pitch: Pitch
    set_back: tuple[Figure, ...]
    """in, along the top edge, from the mark on the center line to the plumb line of the SIDE, COLUMN_THICKNESSES_IN of
    the hip or valley in turn: half of its short to long point."""


def cheek_rows(settings: Settings) -> list[CheekRow]:
    """Return one row a pitch."""
    rows = []
    for pitch in settings.pitches:
        at = pitch.corner
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
        at = pitch.corner
        ridge, common = cheeks.backed_at_ridge(at), cheeks.backed_at_common(at)
        rows.append(
            BackedCheekRow(
                pitch,
                deg(ridge),
                mark(cheeks.figure_against_12(ridge), settings),
                deg(common),
                mark(cheeks.figure_against_12(common), settings),
            )
        )
    return rows


def set_back_rows(settings: Settings) -> list[SetBackRow]:
    """Return one row a pitch."""
    rows = []
    for pitch in settings.pitches:
        at = pitch.corner
        along = [
            shortening.along(shortening.set_back_at_ridge(t, at), at.hip_slope) for t in COLUMN_THICKNESSES_IN
        ]
        rows.append(SetBackRow(pitch, parts(along, settings)))
    return rows


def listed(settings: Settings) -> list[Table]:
    """Return the tables of this group."""
    return [
        Table(
            'cheeks',
            'cheeks',
            'Cheek cuts, blade at 45°',
            ('pitch', 'jack: side', 'jack: top', 'jack: 12 &', 'hip: side', 'hip: top', 'hip: 12 &'),
            'side: on the side, from square across, the blade tilted 45°; top: on the top edge, from square across, the '
            "hip's left square; 12 &: the square for that line, marked along the 12; a valley as a hip",
            cheek_rows,
        ),
        Table(
            'cheeks',
            'backed-cheeks',
            'Cheek cuts of backed hips',
            ('pitch', 'ridge: top', 'ridge: 12 &', 'common: top', 'common: 12 &'),
            'top: on the backed face, from square across the hip, against a ridge or a common of that side; 12 &: the '
            'square for that line, marked along the 12; on the side as any hip',
            backed_cheek_rows,
        ),
        Table(
            'cheeks',
            'set-backs',
            'Set-backs of hips and valleys',
            ('pitch', *THICKNESS_HEADS),
            "inches along the top edge, mark on the center line to each side's plumb line: ridge, commons, tail, and a "
            'valley; half of short to long point',
            set_back_rows,
        ),
    ]
