"""Two pitches meeting at a square corner: what comes off members, where their cuts start, and what a slid hip changes."""

from __future__ import annotations

from dataclasses import dataclass

from tablegen.geometry import backing, shortening
from tablegen.geometry.pitch import Pitch
from tablegen.numbers.figure import Figure
from tablegen.settings import Settings
from tablegen.tables.finish import mark
from tablegen.tables.former import Table
from tablegen.tables.pairs import PAIRS, Pairs, corners


@dataclass(frozen=True, slots=True)
class UnequalSlideRow:
    """A square-topped hip slid towards eave A, the lower pitch, so that one drop serves both planes."""

    a: Pitch
    b: Pitch
    slide: Figure
    """in, level, square to the hip, towards eave A."""
    drop_once_slid: Figure
    """in, PLUMB, the one drop."""
    jacks_a_shorter_level: Figure
    """in, level along the jack, what jacks of A lose."""
    jacks_a_shorter_along: Figure
    """in, the same along the top edge."""
    jacks_b_longer_level: Figure
    """in, level along the jack, what jacks of B gain."""
    jacks_b_longer_along: Figure
    hip_longer_at_ridge_a: Figure
    """in, level along the hip, what it gains at a ridge over A."""


@dataclass(frozen=True, slots=True)
class UnequalShorteningRow:
    """Level deductions, for the set thicknesses."""

    a: Pitch
    b: Pitch
    hip_at_ridge_a: Figure
    """in, level along the hip, ridge center line to its side, ridge over A."""
    hip_at_ridge_b: Figure
    hip_between_commons: Figure
    """in, level along the hip, between a common of A and one of B, to the face it meets first."""
    point_aside_to_b: Figure
    """in, level, square to the hip, from its center line to the corner of those two commons, towards side B."""
    jack_a: Figure
    """in, level along A's jack, hip center line to its side."""
    jack_b: Figure


@dataclass(frozen=True, slots=True)
class UnequalPointsRow:
    """Where cheeks start, level, for the set thicknesses."""

    a: Pitch
    b: Pitch
    jack_a_short_to_long_point: Figure
    """in, level along the jack; half lies each side of its center line."""
    jack_b_short_to_long_point: Figure
    hip_a_set_back: Figure
    """in, level along the hip, mark on the center line to the plumb line of its side, against a ridge over A, A's fascia
    or a common of B."""
    hip_b_set_back: Figure
    """in, the same against a ridge over B, B's fascia or a common of A."""


def slide_rows(settings: Settings, pairs: Pairs = PAIRS) -> list[UnequalSlideRow]:
    """Return slides and what they change."""
    t = settings.hip_thickness
    rows = []
    for a, b, at in corners(pairs):
        shorter, longer = -backing.slid_jack(t, at), backing.slid_jack(t, at.turned())
        rows.append(
            UnequalSlideRow(
                a,
                b,
                mark(backing.slide(t, at), settings),
                mark(backing.drop_when_slid(t, at), settings),
                mark(shorter, settings),
                mark(shortening.along(shorter, at.slope_a), settings),
                mark(longer, settings),
                mark(shortening.along(longer, at.slope_b), settings),
                mark(backing.slid_hip_at_ridge(t, at), settings),
            )
        )
    return rows


def shortening_rows(settings: Settings, pairs: Pairs = PAIRS) -> list[UnequalShorteningRow]:
    """Return level deductions."""
    ridge, hip, rafter = settings.ridge_thickness, settings.hip_thickness, settings.rafter_thickness
    return [
        UnequalShorteningRow(
            a,
            b,
            mark(shortening.hip_at_ridge(ridge, at), settings),
            mark(shortening.hip_at_ridge(ridge, at.turned()), settings),
            mark(shortening.hip_between_commons(rafter, at), settings),
            mark(shortening.double_cheek_aside(rafter, rafter, at), settings),
            mark(shortening.jack_at_hip(hip, at), settings),
            mark(shortening.jack_at_hip(hip, at.turned()), settings),
        )
        for a, b, at in corners(pairs)
    ]


def points_rows(settings: Settings, pairs: Pairs = PAIRS) -> list[UnequalPointsRow]:
    """Return where cheeks start."""
    hip, rafter = settings.hip_thickness, settings.rafter_thickness
    return [
        UnequalPointsRow(
            a,
            b,
            mark(shortening.point_to_point(rafter, at), settings),
            mark(shortening.point_to_point(rafter, at.turned()), settings),
            mark(shortening.set_back_at_ridge(hip, at), settings),
            mark(shortening.set_back_at_ridge(hip, at.turned()), settings),
        )
        for a, b, at in corners(pairs)
    ]


def listed(settings: Settings) -> list[Table]:
    """Return the tables of this group."""
    return [
        Table(
            'unequal',
            'unequal-slide',
            'Two pitches: a slid hip',
            (
                *('A', 'B', 'slide', 'its drop'),
                *('A less: level', 'A less: along', 'B more: level', 'B more: along', 'hip: more'),
            ),
            'slide level, square to the hip, towards eave A, and the one drop, plumb; jacks of A become shorter, jacks of '
            'B longer, level and along the edge; hip: longer, level, at a ridge over A',
            slide_rows,
        ),
        Table(
            'unequal',
            'unequal-shortening',
            'Two pitches: shortening, level',
            ('A', 'B', 'hip: ridge A', 'hip: ridge B', 'hip: commons', 'aside to B', 'jack A', 'jack B'),
            "inches, level, along the member's center line, center line of what it meets to its face; aside: square to "
            "the hip, to the commons' corner, where its point stands",
            shortening_rows,
        ),
        Table(
            'unequal',
            'unequal-points',
            'Two pitches: where cheeks start',
            ('A', 'B', 'jack A: points', 'jack B: points', 'hip A: side', 'hip B: side'),
            "inches, level; jack: short to long point; hip: mark on the center line to its side's plumb line, hip A at a "
            "ridge over A, A's fascia or a common of B, hip B at one over B, B's, or of A",
            points_rows,
        ),
    ]
