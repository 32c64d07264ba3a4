"""Two pitches meeting at a square corner, for chosen pairs: the flatter side is A."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from itertools import combinations

from tablegen.figures import Figure
from tablegen.geometry import backing, cheeks, corner, shortening, tail
from tablegen.geometry.corner import Corner, square_corner
from tablegen.pitch import Pitch, pitch_of_rise
from tablegen.reference.finish import deg, mark, unit
from tablegen.reference.table import Table
from tablegen.settings import Settings

PAIRS = tuple(
    (pitch_of_rise(Fraction(flat)), pitch_of_rise(Fraction(steep)))
    for flat, steep in combinations((4, 5, 6, 8, 9, 10, 12), 2)
)
"""Pairs of common pitches, flatter first."""
SPACING_IN = Fraction(16)


@dataclass(frozen=True, slots=True)
class UnequalHipRow:
    """Where the hip or valley runs, and its jacks."""

    a: Pitch
    b: Pitch
    plan_a: Figure
    """deg, in plan, from eave A to the hip; from eave B it is 90 less this."""
    per_foot_a: Figure
    """in, along the hip, per foot of run of A's commons, to thousandths."""
    slope: Figure
    """deg, the hip's plumb cut, on its side from square."""
    difference_a: Figure
    """in, along A's slope, neighboring jacks of A at 16 in on center."""
    difference_b: Figure
    """in, along B's slope, the same on B."""


@dataclass(frozen=True, slots=True)
class UnequalCheekRow:
    """Cheeks, for the same pairs; the plan angle is the blade's tilt for jacks of A, 90 less it for B's."""

    a: Pitch
    b: Pitch
    blade_a: Figure
    """deg, jack of A: tilt from square, shoe on its side; the saw follows A's plumb cut. Past 45 it is cut from
    an end first squared, with blade_b."""
    blade_b: Figure
    jack_a: Figure
    """in, against 12 on the square, top edge of A's jacks."""
    jack_b: Figure
    hip_over_a: Figure
    """in, against 12, SQUARE top of the hip, against a ridge over A or a common of B."""
    hip_over_b: Figure
    """in, against 12, the same against a ridge over B or a common of A."""


@dataclass(frozen=True, slots=True)
class UnequalFitRow:
    """Backing, drops and eaves, for the set hip thickness."""

    a: Pitch
    b: Pitch
    backing_a: Figure
    """deg, the hip's face towards A, from its square top."""
    backing_b: Figure
    drop_a: Figure
    """in, PLUMB, for the edge towards A; the hip takes the greater of the two."""
    drop_b: Figure
    slide: Figure
    """in, level, square to the hip, towards eave A, the lower pitch, instead of two drops."""
    slid_drop: Figure
    """in, PLUMB, the one drop after sliding."""
    overhang_b: Figure
    """in, level, on side B for 12 in on side A, that makes the eaves meet at one height."""


@dataclass(frozen=True, slots=True)
class UnequalShorteningRow:
    """Level deductions, for the set thicknesses."""

    a: Pitch
    b: Pitch
    hip_over_a: Figure
    """in, level along the hip, ridge center line to its side, ridge over A."""
    hip_over_b: Figure
    hip_between: Figure
    """in, level along the hip, between a common of A and one of B, to the face it meets first."""
    jack_a: Figure
    """in, level along A's jack, hip center line to its side."""
    jack_b: Figure


def hip_rows(settings: Settings, pairs: tuple[tuple[Pitch, Pitch], ...] = PAIRS) -> list[UnequalHipRow]:
    """Return where hips run."""
    return [
        UnequalHipRow(
            a,
            b,
            deg(at.plan_a),
            unit(corner.hip_length(Fraction(12), at)),
            deg(corner.hip_angle(at)),
            mark(corner.jack_difference(SPACING_IN, at), settings),
            mark(corner.jack_difference(SPACING_IN, at.turned()), settings),
        )
        for a, b, at in _corners(pairs)
    ]


def cheek_rows(settings: Settings, pairs: tuple[tuple[Pitch, Pitch], ...] = PAIRS) -> list[UnequalCheekRow]:
    """Return cheeks."""
    return [
        UnequalCheekRow(
            a,
            b,
            deg(cheeks.jack(at).blade),
            deg(cheeks.jack(at.turned()).blade),
            mark(cheeks.jack(at).figure(), settings),
            mark(cheeks.jack(at.turned()).figure(), settings),
            mark(cheeks.hip_at_ridge(at).figure(), settings),
            mark(cheeks.hip_at_ridge(at.turned()).figure(), settings),
        )
        for a, b, at in _corners(pairs)
    ]


def fit_rows(settings: Settings, pairs: tuple[tuple[Pitch, Pitch], ...] = PAIRS) -> list[UnequalFitRow]:
    """Return backings, drops and matching overhangs."""
    t = settings.hip_thickness
    return [
        UnequalFitRow(
            a,
            b,
            deg(backing.bevel(at)),
            deg(backing.bevel(at.turned())),
            mark(backing.drop_plumb(t, at), settings),
            mark(backing.drop_plumb(t, at.turned()), settings),
            mark(backing.slide(t, at), settings),
            mark(backing.drop_when_slid(t, at), settings),
            mark(tail.eave_matching_overhang(Fraction(12), at), settings),
        )
        for a, b, at in _corners(pairs)
    ]


def shortening_rows(
    settings: Settings, pairs: tuple[tuple[Pitch, Pitch], ...] = PAIRS
) -> list[UnequalShorteningRow]:
    """Return level deductions."""
    ridge, hip, rafter = settings.ridge_thickness, settings.hip_thickness, settings.rafter_thickness
    return [
        UnequalShorteningRow(
            a,
            b,
            mark(shortening.hip_at_ridge(ridge, at), settings),
            mark(shortening.hip_at_ridge(ridge, at.turned()), settings),
            mark(shortening.hip_between_commons(rafter, at), settings),
            mark(shortening.jack_at_hip(hip, at), settings),
            mark(shortening.jack_at_hip(hip, at.turned()), settings),
        )
        for a, b, at in _corners(pairs)
    ]


def _corners(pairs: tuple[tuple[Pitch, Pitch], ...]) -> list[tuple[Pitch, Pitch, Corner]]:
    return [(a, b, square_corner(a.slope, b.slope)) for a, b in pairs]


def listed(settings: Settings) -> list[Table]:
    """Return the tables of this group."""
    return [
        Table(
            'unequal',
            'unequal-hips',
            'Two pitches: the hip and its jacks',
            ('A', 'B', 'plan', 'per foot', 'slope', 'jacks A', 'jacks B'),
            'plan: in plan, eave A to the hip; per foot of run of A; slope from level; jacks at 16 in along the slope',
            hip_rows,
        ),
        Table(
            'unequal',
            'unequal-cheeks',
            'Two pitches: cheek cuts',
            ('A', 'B', 'blade A', 'blade B', 'jack A', 'jack B', 'hip at A', 'hip at B'),
            'blade: from square, on the side, with the plumb cut of A or B; others: figure on 12, top edge, hip left '
            'square, against a ridge over A or B',
            cheek_rows,
        ),
        Table(
            'unequal',
            'unequal-fit',
            'Two pitches: backing, drop and eaves',
            ('A', 'B', 'back A', 'back B', 'drop A', 'drop B', 'slide', 'drop', 'eave B'),
            'backing from the square top; drops plumb; slide level towards eave A, with its one drop; eave B: level '
            'overhang for 12 in on A',
            fit_rows,
        ),
        Table(
            'unequal',
            'unequal-shortening',
            'Two pitches: shortening, level',
            ('A', 'B', 'ridge A', 'ridge B', 'commons', 'jack A', 'jack B'),
            "inches, level, along the member's center line, center line of what it meets to its face",
            shortening_rows,
        ),
    ]
