"""Two pitches meeting at a square corner, for chosen pairs: the flatter side is A."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from tablegen.geometry import backing, cheeks, corner, tail
from tablegen.geometry.pitch import Pitch
from tablegen.numbers.figure import Figure
from tablegen.settings import Settings
from tablegen.tables.finish import at_least, deg, mark, unit
from tablegen.tables.former import Table
from tablegen.tables.pairs import PAIRS, Pairs, corners

SPACING_IN = Fraction(16)


@dataclass(frozen=True, slots=True)
class UnequalHipRow:
    """Where the hip or valley runs, and its jacks."""

    a: Pitch
    b: Pitch
    plan_from_eave_a: Figure
    """deg, in plan, from eave A to the hip; from eave B it is 90 less this."""
    per_foot_of_run_a: Figure
    """in, along the hip, per foot of run of A's commons, to thousandths."""
    plumb_cut: Figure
    """deg, the hip's, on its side from square."""
    jack_difference_a: Figure
    """in, along A's slope, neighboring jacks of A at 16 in on center."""
    jack_difference_b: Figure
    """in, along B's slope, the same on B."""


@dataclass(frozen=True, slots=True)
class UnequalCheekRow:
    """Cheeks, for the same pairs: jacks of A and B, and a hip with its top left square.

    hip_a is against a ridge over A, A's fascia, or a common of B; hip_b against a ridge over B, B's fascia, or a
    common of A. Their blades change over: hip_a has that of B's jacks, hip_b that of A's.
    """

    a: Pitch
    b: Pitch
    jack_a_blade: Figure
    """deg, jack of A, and hip_b: tilt from square, shoe on the side; the saw follows the plumb cut. Past 45."""
    jack_b_blade: Figure
    """deg, jack of B, and hip_a."""
    jack_a_reach: Figure
    """in, along the blade, that a circular saw's must go through a jack of A of the set thickness; rounded up."""
    hip_b_reach: Figure
    """in, the same through a hip of the set thickness with one cheek."""
    jack_a_12_and: Figure
    """in, against 12 on the square, top edge of A's jacks, marked along the 12."""
    jack_b_12_and: Figure
    hip_a_12_and: Figure
    """in, against 12, SQUARE top of the hip."""
    hip_b_12_and: Figure


@dataclass(frozen=True, slots=True)
class UnequalFitRow:
    """Backing, drops and eaves, for the set hip thickness."""

    a: Pitch
    b: Pitch
    backing_a: Figure
    """deg, the hip's face towards A, from its square top."""
    backing_b: Figure
    drop_a: Figure
    """in, PLUMB, for the edge towards A; the hip takes the greater of the two, which is B's."""
    drop_b: Figure
    gap_a: Figure
    """in, PLUMB, what then is free between the hip's edge towards A and plane A."""
    overhang_b: Figure
    """in, level, on side B for 12 in on side A, that makes the eaves meet at one height."""


def hip_rows(settings: Settings, pairs: Pairs = PAIRS) -> list[UnequalHipRow]:
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
        for a, b, at in corners(pairs)
    ]


def cheek_rows(settings: Settings, pairs: Pairs = PAIRS) -> list[UnequalCheekRow]:
    """Return cheeks."""
    return [
        UnequalCheekRow(
            a,
            b,
            deg(cheeks.jack(at).blade),
            deg(cheeks.jack(at.turned()).blade),
            at_least(cheeks.jack(at).reach(settings.rafter_thickness), settings),
            at_least(cheeks.hip_at_ridge(at.turned()).reach(settings.hip_thickness), settings),
            mark(cheeks.jack(at).figure(), settings),
            mark(cheeks.jack(at.turned()).figure(), settings),
            mark(cheeks.hip_at_ridge(at).figure(), settings),
            mark(cheeks.hip_at_ridge(at.turned()).figure(), settings),
        )
        for a, b, at in corners(pairs)
    ]


def fit_rows(settings: Settings, pairs: Pairs = PAIRS) -> list[UnequalFitRow]:
    """Return backings, drops, the gap that they leave, and matching overhangs."""
    t = settings.hip_thickness
    return [
        UnequalFitRow(
            a,
            b,
            deg(backing.bevel(at)),
            deg(backing.bevel(at.turned())),
            mark(backing.drop_plumb(t, at), settings),
            mark(backing.drop_plumb(t, at.turned()), settings),
            mark(backing.gap_when_dropped(t, at), settings),
            mark(tail.eave_matching_overhang(Fraction(12), at), settings),
        )
        for a, b, at in corners(pairs)
    ]


def listed(settings: Settings) -> list[Table]:
    """Return the tables of this group."""
    return [
        Table(
            'unequal',
            'unequal-hips',
            'Two pitches: the hip and its jacks',
            ('A', 'B', 'plan', 'per foot', 'plumb cut', 'jacks A', 'jacks B'),
            'plan: in plan, eave A to the hip; per foot of run of A, along the hip; plumb cut of the hip, on its side, '
            'from square across; difference of jacks at 16 in, along the slope',
            hip_rows,
        ),
        Table(
            'unequal',
            'unequal-cheeks',
            'Two pitches: cheek cuts',
            (
                *('A', 'B', 'jack A: blade', 'jack B: blade', 'jack A: reach', 'hip B: reach'),
                *('jack A: 12 &', 'jack B: 12 &', 'hip A: 12 &', 'hip B: 12 &'),
            ),
            'blade: tilt from square, on the side, over the plumb cut; hip A: hip at a ridge over A or a common of B, '
            'with the blade of jack B, hip B that of jack A; 12 &: the square, top edge, marked along the 12; reach: '
            'along the blade, at least',
            cheek_rows,
        ),
        Table(
            'unequal',
            'unequal-fit',
            'Two pitches: backing, drop and eaves',
            ('A', 'B', 'backing A', 'backing B', 'drop A', 'drop B', 'gap A', 'eave B'),
            'backing from the square top; drops plumb; gap A: plumb, between the edge towards A and its plane, the hip '
            'dropped by drop B; eave B: level overhang for 12 in on A',
            fit_rows,
        ),
    ]
