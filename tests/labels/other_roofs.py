"""Groups A and J to L: setting out, two pitches at a corner, many-sided roofs, finding a pitch."""

from __future__ import annotations

from fractions import Fraction
from itertools import combinations

from oracle import cuts, framing_square, hip_ends, setting_out, shortening, tails, unequal
from oracle.corner import (
    common_length,
    corner,
    hip_length,
    hip_plan_angle,
    hip_run,
    jack_difference,
    many_sided,
)
from oracle.rounding import degrees, least, part
from skewed import HIP, RAFTER, RIDGE

from labels.expected import BY_PITCH, Labels, by, col
from labels.hips_to_gables import thousandths

SIDES = (5, 6, 8, 10, 12)
PAIRS = tuple(
    (f'{flat} {steep}', corner(Fraction(flat), Fraction(steep)))
    for flat, steep in combinations((4, 5, 6, 8, 9, 10, 12), 2)
)
RECTANGLES = (((4, 14, 2), (4, 29)), ((16, 26, 2), (16, 41)), ((28, 40, 2), (28, 53)))
"""Widths of the columns, ft, and first and last length, of each table; the last width is 40, not 38."""
LEGS = {str(leg): leg for leg in (12, 18, 24, 30, 36, 48)}
HALF_PITCHES = tuple(
    (f'{n // 2} 1/2'.removeprefix('0 ') if n % 2 else str(n // 2), corner(Fraction(n, 2)))
    for n in range(1, 49)
)


def setting_out_tables() -> list[Labels]:
    """Return the tables of diagonals, triangles and braces."""
    found = []
    for place, ((first, last, step), (shortest, longest)) in enumerate(RECTANGLES, 1):
        widths = [*range(first, last, step), last]
        found.append(
            Labels(
                f'diagonals-{place}', f'Diagonals of rectangles, {first} to {last} ft wide', 'ft',
                tuple((str(feet), feet) for feet in range(shortest, longest + 1)),
                by({str(width): width for width in widths if width != 38},
                   lambda long, wide: part(setting_out.diagonal(12 * long, 12 * wide)) if wide <= long else '', str),
                ('outside corner to opposite outside corner', 'sides in feet'), 'width, ft',
            )
        )  # fmt: skip
    triangles = tuple(
        (f'{a} {b} {c}', (a, b, c))
        for a, b, c in sorted(setting_out.whole_triangles(41), key=lambda abc: abc[2])
    )
    return [
        *found,
        Labels('whole-triangles', 'Triangles that are square', 'sides', triangles,
               by({f'× {k}': k for k in (2, 3, 4, 5)}, lambda abc, k: '-'.join(str(k * side) for side in abc), str),
               ('any unit, both legs and the diagonal measured in the same one',)),
        Labels('braces', 'Braces', 'leg', tuple((str(leg), leg) for leg in range(12, 97, 6)),
               (
                   col('equal', lambda leg: setting_out.diagonal(leg, leg)),
                   *by(LEGS, setting_out.diagonal),
                   *by({f'cut {leg}': leg for leg in LEGS.values()}, setting_out.brace_cut, degrees),
               ),
               ('between the long points', 'legs from the inner corner to those', "cut on the brace’s side, from square, where it meets the first leg")),
    ]  # fmt: skip


def two_pitches() -> list[Labels]:
    """Return the tables of two pitches at a corner; the flatter is A."""
    figure = framing_square.figure_against_12
    return [
        Labels(
            'unequal-hips', 'Two pitches: the hip and its jacks', 'A B', PAIRS,
            (
                col('plan', hip_plan_angle, degrees),
                col('per foot', lambda at: hip_length(at, 12), thousandths),
                col('plumb cut', cuts.hip_plumb_cut, degrees),
                col('jacks A', lambda at: jack_difference(at, 16)),
                col('jacks B', lambda at: jack_difference(at.turned, 16)),
            ),
            ('plan: in plan, eave A to the hip', 'per foot of run of A, along the hip',
             'plumb cut of the hip, on its side, from square across', 'difference of jacks at 16 in, along the slope'),
        ),
        Labels(
            'unequal-cheeks', 'Two pitches: cheek cuts', 'A B', PAIRS,
            (
                col('jack A: blade', cuts.jack_blade, degrees),
                col('jack B: blade', lambda at: cuts.jack_blade(at.turned), degrees),
                col('jack A: reach', lambda at: hip_ends.jack_reach(at, RAFTER), least),
                col('hip B: reach', lambda at: hip_ends.hip_reach(at.turned, HIP), least),
                col('jack A: 12 &', lambda at: figure(cuts.jack_cheek(at))),
                col('jack B: 12 &', lambda at: figure(cuts.jack_cheek(at.turned))),
                col('hip A: 12 &', lambda at: figure(cuts.hip_cheek(at))),
                col('hip B: 12 &', lambda at: figure(cuts.hip_cheek(at.turned))),
            ),
            ('blade: tilt from square, on the side, over the plumb cut', 'hip A: hip at a ridge over A or a common of B',
             'with the blade of jack B, hip B that of jack A', '12 &: the square, top edge, marked along the 12', 'reach: along the blade, at least'),
        ),
        Labels(
            'unequal-fit', 'Two pitches: backing, drop and eaves', 'A B', PAIRS,
            (
                col('backing A', cuts.backing, degrees),
                col('backing B', lambda at: cuts.backing(at.turned), degrees),
                col('drop A', lambda at: cuts.drop_plumb(at, HIP)),
                col('drop B', lambda at: cuts.drop_plumb(at.turned, HIP)),
                col('gap A', lambda at: hip_ends.gap_under_a(at, HIP)),
                col('eave B', lambda at: tails.matching_overhang(at, 12)),
            ),
            ('backing from the square top', 'drops plumb', 'gap A: plumb, between the edge towards A and its plane',
             'the hip dropped by drop B', 'eave B: level overhang for 12 in on A'),
        ),
        Labels(
            'unequal-slide', 'Two pitches: a slid hip', 'A B', PAIRS,
            (
                col('slide', lambda at: unequal.slide(at, HIP)),
                col('its drop', lambda at: unequal.slid_drop(at, HIP)),
                col('A less: level', lambda at: hip_ends.slid_jack_shorter(at, HIP)[0]),
                col('A less: along', lambda at: hip_ends.slid_jack_shorter(at, HIP)[1]),
                col('B more: level', lambda at: hip_ends.slid_jack_longer(at, HIP)[0]),
                col('B more: along', lambda at: hip_ends.slid_jack_longer(at, HIP)[1]),
                col('hip: more', lambda at: hip_ends.slid_hip_longer(at, HIP)),
            ),
            ('slide level, square to the hip, towards eave A', 'the one drop, plumb', 'jacks of A become shorter, jacks of '
             'B longer, level and along the edge', 'hip: longer, level, at a ridge over A'),
        ),
        Labels(
            'unequal-shortening', 'Two pitches: shortening, level', 'A B', PAIRS,
            (
                col('hip: ridge A', lambda at: shortening.hip_at_ridge(at, RIDGE)[0]),
                col('hip: ridge B', lambda at: shortening.hip_at_ridge(at.turned, RIDGE)[0]),
                col('hip: commons', lambda at: shortening.hip_between_commons(at, RAFTER)[0]),
                col('aside to B', lambda at: hip_ends.point_aside(at, RAFTER, RAFTER)),
                col('jack A', lambda at: shortening.jack_at_hip(at, HIP)[0]),
                col('jack B', lambda at: shortening.jack_at_hip(at.turned, HIP)[0]),
            ),
            ('level', "along the member’s center line", 'center line of what it meets to its face',
             "aside: square to the hip, to the commons’ corner, where its point stands"),
        ),
        Labels(
            'unequal-points', 'Two pitches: where cheeks start', 'A B', PAIRS,
            (
                col('jack A: points', lambda at: hip_ends.jack_points_level(at, RAFTER)),
                col('jack B: points', lambda at: hip_ends.jack_points_level(at.turned, RAFTER)),
                col('hip A: side', lambda at: hip_ends.set_back(at, HIP)[0]),
                col('hip B: side', lambda at: hip_ends.set_back(at.turned, HIP)[0]),
            ),
            ('level', 'jack: short to long point', "hip: mark on the center line to its side’s plumb line",
             "hip A at a ridge over A, A’s fascia or a common of B, hip B at one over B, B’s, or of A"),
        ),
    ]  # fmt: skip


def many_sides() -> list[Labels]:
    """Return the tables of many-sided roofs; what the pitch does not change is worked out at one."""
    plans = tuple((str(sides), many_sided(Fraction(7), sides)) for sides in SIDES)
    plan = Labels(
        'sides', 'Many-sided plans', 'sides', plans,
        (
            col('corner', unequal.corner_degrees, degrees),
            col('plate cut', unequal.plate_cut, degrees),
            col('side', lambda at: unequal.side(at, 12), thousandths),
            col('apothem', lambda at: unequal.apothem(at, 12), thousandths),
            col('hip run', lambda at: hip_run(at, 12), thousandths),
        ),
        ('corner inside, in plan', 'plate cut from square', 'side and hip run per foot of apothem', 'apothem per foot of side'),
    )  # fmt: skip
    jacks = Labels(
        'sides-jacks', 'Many sides: jacks', 'sides', plans,
        (
            col('blade', cuts.jack_blade, degrees),
            col('off', lambda at: shortening.jack_at_hip(at, HIP)[0]),
            col('points', lambda at: hip_ends.jack_points_level(at, RAFTER)),
            col('reach', lambda at: hip_ends.jack_reach(at, RAFTER), least),
        ),
        ('blade from square, on the side, over the plumb cut', 'off, hip center line to its side, and points, short to long, level',
         'reach along the blade, at least'),
    )  # fmt: skip
    peak = Labels(
        'sides-peak', 'Many sides: hips at the peak', 'sides', plans,
        (
            col('blade', unequal.peak_blade, degrees),
            col('side', lambda at: hip_ends.peak_set_back(at, HIP)),
            col('reach', lambda at: hip_ends.peak_reach(at, HIP), least),
            col('post', lambda at: unequal.least_post(at, HIP), least),
        ),
        ('blade from square, on the side', "side: level, the point back to each side’s plumb line",
         'reach along the blade, at least', 'post: least across flats for square-cut hips'),
    )  # fmt: skip
    return [plan, jacks, peak, *map(_of_sides, SIDES)]


def _of_sides(sides: int) -> Labels:
    figure = framing_square.figure_against_12
    rows = tuple((label, many_sided(at.rise_a, sides)) for label, at in BY_PITCH)
    return Labels(
        f'{sides}-sides', f'Roofs of {sides} sides', 'in 12', rows,
        (
            col('per foot', lambda at: hip_length(at, 12), thousandths),
            col('hip: side', cuts.hip_plumb_cut, degrees),
            col('jacks 16', lambda at: jack_difference(at, 16)),
            col('jack: 12 &', lambda at: figure(cuts.jack_cheek(at))),
            col('peak: 12 &', lambda at: figure(unequal.peak_cheek(at))),
            col('backing', cuts.backing, degrees),
            col('drop', lambda at: cuts.drop_plumb(at, HIP)),
        ),
        ('hip per foot of apothem', 'its plumb cut on the side, from square', 'jacks along the slope',
         '12 &: the square, top edge, hip left square, marked along the 12', 'backing of each face, from the square top', 'drop plumb'),
    )  # fmt: skip


def finding_a_pitch() -> list[Labels]:
    """Return the tables that tell a pitch from degrees, a slope or a level."""
    return [
        Labels(
            'degrees-to-pitch', 'Degrees to pitch', 'degrees', tuple((str(n), n) for n in range(1, 79)),
            (
                col('rise', setting_out.rise_of_degrees, thousandths),
                col('to a part', setting_out.rise_of_degrees),
                col('half a degree more', lambda n: setting_out.rise_of_degrees(n + Fraction(1, 2)), thousandths),
            ),
            ('inches of rise per foot of level run',),
        ),
        Labels(
            'pitch-to-degrees', 'Pitch to degrees, and on a level', 'in 12', HALF_PITCHES,
            (
                col('degrees', cuts.plumb_cut, degrees),
                col('slope of a foot', lambda at: common_length(at, 12), thousandths),
                col('24 in level', lambda at: setting_out.level_gap(at, 24)),
                col('48 in level', lambda at: setting_out.level_gap(at, 48)),
            ),
            ('degrees from level', 'slope: inches along it per foot of level run', "plumb, level’s underside to the roof"),
        ),
    ]  # fmt: skip
