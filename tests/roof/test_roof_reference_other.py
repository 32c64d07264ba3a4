"""Every row of the tables of unequal pitches, many sides, found pitches and setting out, against mpmath: each printed figure is the nearest one.

The relations are written out again here in plain trigonometry, so that a table that reads the wrong function, the
wrong side or the wrong thickness is found. That the relations themselves hold is shown against planes elsewhere.
"""

from fractions import Fraction

import pytest
from mpmath import atan, cos, degrees, mpf, pi, radians, sin, sqrt, tan
from printed import BOOK, T, angles_of, are_nearest, is_nearest, slope_of

from tablegen.reference import finding_pitch, many_sided, setting_out, unequal


def test_unequal_pairs():
    tables = (
        unequal.hip_rows(BOOK),
        unequal.cheek_rows(BOOK),
        unequal.fit_rows(BOOK),
        unequal.shortening_rows(BOOK),
    )
    for run, cheek, fit, short in zip(*tables, strict=True):
        ma, mb = slope_of(run.a), slope_of(run.b)
        assert ma < mb
        a = atan(mb / ma)
        b, h, ta, tb = pi / 2 - a, atan(ma * sin(a)), atan(ma), atan(mb)
        are_nearest((run.plan_a, run.slope), (degrees(a), degrees(h)))
        is_nearest(run.per_foot_a, 12 / sin(a) / cos(h))
        are_nearest((run.difference_a, run.difference_b), (16 * tan(a) / cos(ta), 16 * tan(b) / cos(tb)))
        are_nearest((cheek.blade_a, cheek.blade_b), (degrees(a), degrees(b)))
        are_nearest((cheek.jack_a, cheek.jack_b), (12 * cos(ta) / tan(a), 12 * cos(tb) / tan(b)))
        are_nearest((cheek.hip_over_a, cheek.hip_over_b), (12 * tan(a) * cos(h), 12 * tan(b) * cos(h)))
        are_nearest(
            (fit.backing_a, fit.backing_b),
            (degrees(atan(ma * cos(a) * cos(h))), degrees(atan(mb * cos(b) * cos(h)))),
        )
        are_nearest((fit.drop_a, fit.drop_b), (T / 2 * ma * cos(a), T / 2 * mb * cos(b)))
        are_nearest((fit.slide, fit.slid_drop), (T / 2 * sin(a - b), T * tan(h) / (tan(a) + tan(b))))
        is_nearest(fit.overhang_b, 12 * ma / mb)
        are_nearest((short.hip_over_a, short.hip_over_b), (T / 2 / sin(a), T / 2 / sin(b)))
        are_nearest((short.jack_a, short.jack_b), (T / 2 / cos(a), T / 2 / cos(b)))
        is_nearest(short.hip_between, max(T / 2 / cos(a), T / 2 / cos(b)))


def test_numbers_of_sides():
    for row in many_sided.sides_rows(BOOK):
        p = pi / row.sides
        are_nearest((row.corner, row.plate_miter), (180 - degrees(2 * p), degrees(p)))
        are_nearest((row.side, row.apothem, row.hip_run), (24 * tan(p), 6 / tan(p), 12 / cos(p)))
        are_nearest((row.jack_blade, row.peak_blade), (90 - degrees(p), 90 - degrees(p)))
        is_nearest(row.least_post, T / tan(p))


@pytest.mark.parametrize('sides', many_sided.SIDES)
def test_many_sided_roofs(sides):
    p = pi / sides
    for row in many_sided.pitch_rows(BOOK, sides):
        m, theta, _ = angles_of(row)
        h = atan(m * cos(p))
        are_nearest((row.hip_per_foot, row.hip_slope), (12 * sqrt(1 / cos(p) ** 2 + m * m), degrees(h)))
        are_nearest(
            (row.jack_difference, row.jack_figure), (16 / tan(p) / cos(theta), 12 * cos(theta) * tan(p))
        )
        is_nearest(row.peak_figure, 12 * tan(p) * cos(h))
        are_nearest((row.backing_bevel, row.drop), (degrees(atan(m * sin(p) * cos(h))), T / 2 * m * sin(p)))


def test_degrees_to_pitch():
    for row in finding_pitch.degree_rows(BOOK):
        rise = 12 * tan(radians(row.degrees))
        are_nearest((row.rise, row.rise_part), (rise, rise))
        is_nearest(row.half_rise, 12 * tan(radians(row.degrees + mpf(1) / 2)))


def test_half_pitches_to_degrees():
    assert [row.pitch.rise_in for row in finding_pitch.half_pitch_rows(BOOK)] == [
        Fraction(n, 2) for n in range(1, 49)
    ]
    for row in finding_pitch.half_pitch_rows(BOOK):
        m, theta, _ = angles_of(row)
        are_nearest((row.degrees, row.slope_per_foot), (degrees(theta), 12 / cos(theta)))
        are_nearest(row.gaps, (24 * m, 48 * m))


@pytest.mark.parametrize('page', range(len(setting_out.WIDTHS_FT)))
def test_diagonals(page):
    for row in setting_out.diagonal_rows(BOOK, page):
        for width, figure in zip(setting_out.WIDTHS_FT[page], row.diagonals, strict=True):
            assert (figure is None) == (width > row.length_ft)
            if figure is not None:
                is_nearest(figure, 12 * sqrt(mpf(width) ** 2 + mpf(row.length_ft) ** 2))


def test_triangles_and_their_multiples():
    for row in setting_out.triangle_rows():
        assert row.short**2 + row.long**2 == row.diagonal**2
        for k, written in zip((2, 3, 4, 5), row.multiples, strict=True):
            assert written == '-'.join(str(k * side) for side in (row.short, row.long, row.diagonal))
    for k, triple in enumerate(setting_out.three_four_five(BOOK), 1):
        assert [figure.count for figure in triple] == [16 * 12 * k * side for side in (3, 4, 5)]


def test_braces():
    for row in setting_out.brace_rows(BOOK):
        leg = mpf(row.leg_in)
        is_nearest(row.equal, leg * sqrt(2))
        are_nearest(row.unequal, [sqrt(leg**2 + mpf(other) ** 2) for other in setting_out.OTHER_LEGS_IN])
        are_nearest(row.cuts, [degrees(atan(leg / other)) for other in setting_out.OTHER_LEGS_IN])
