"""Every row of the tables of unequal pitches, many sides, found pitches and setting out, against mpmath: each printed figure is the nearest one.

The relations are written out again here in plain trigonometry, so that a table that reads the wrong function, the
wrong side or the wrong thickness is found. That the relations themselves hold is shown against planes elsewhere.
"""

from fractions import Fraction

import pytest
from mpmath import atan, cos, degrees, mpf, pi, radians, sin, sqrt, tan
from printed import T, angles_of, are_nearest, is_least, is_nearest, rows_of, slope_of

from layouts.words.say import say
from tablegen.tables import many_sided, setting_out


def _corners(rows):
    """Return each row with its slopes, both plan angles and the hip's angle."""
    for row in rows:
        ma, mb = slope_of(row.a), slope_of(row.b)
        assert ma < mb
        a = atan(mb / ma)
        yield row, ma, mb, a, pi / 2 - a, atan(ma * sin(a))


def test_hips_of_two_pitches():
    for row, ma, mb, a, b, h in _corners(rows_of('unequal-hips')):
        are_nearest((row.plan_from_eave_a, row.plumb_cut), (degrees(a), degrees(h)))
        is_nearest(row.per_foot_of_run_a, 12 / sin(a) / cos(h))
        differences = (row.jack_difference_a, row.jack_difference_b)
        are_nearest(differences, (16 * tan(a) / cos(atan(ma)), 16 * tan(b) / cos(atan(mb))))


def test_cheeks_of_two_pitches():
    for row, ma, mb, a, b, h in _corners(rows_of('unequal-cheeks')):
        are_nearest((row.jack_a_blade, row.jack_b_blade), (degrees(a), degrees(b)))
        jacks = (12 * cos(atan(ma)) / tan(a), 12 * cos(atan(mb)) / tan(b))
        are_nearest((row.jack_a_12_and, row.jack_b_12_and), jacks)
        are_nearest((row.hip_a_12_and, row.hip_b_12_and), (12 * tan(a) * cos(h), 12 * tan(b) * cos(h)))
        for reach in (row.jack_a_reach, row.hip_b_reach):
            is_least(reach, T / cos(a))


def test_backing_drops_and_eaves_of_two_pitches():
    for row, ma, mb, a, b, h in _corners(rows_of('unequal-fit')):
        bevels = (degrees(atan(ma * cos(a) * cos(h))), degrees(atan(mb * cos(b) * cos(h))))
        are_nearest((row.backing_a, row.backing_b), bevels)
        low, high = T / 2 * ma * cos(a), T / 2 * mb * cos(b)
        assert low < high
        are_nearest((row.drop_a, row.drop_b, row.gap_a), (low, high, high - low))
        is_nearest(row.overhang_b, 12 * ma / mb)


def test_slid_hips():
    """Towards eave A: jacks of A end sooner, by the slide over cos a, those of B later, by the slide over cos b."""
    for row, ma, mb, a, b, h in _corners(rows_of('unequal-slide')):
        slide = T / 2 * sin(a - b)
        are_nearest((row.slide, row.drop_once_slid), (slide, T * tan(h) / (tan(a) + tan(b))))
        shorter, longer = slide / cos(a), slide / cos(b)
        are_nearest((row.jacks_a_shorter_level, row.jacks_b_longer_level), (shorter, longer))
        are_nearest(
            (row.jacks_a_shorter_along, row.jacks_b_longer_along),
            (shorter / cos(atan(ma)), longer / cos(atan(mb))),
        )
        is_nearest(row.hip_longer_at_ridge_a, slide / tan(a))


def test_shortening_at_two_pitches():
    for row, _, _, a, b, _ in _corners(rows_of('unequal-shortening')):
        are_nearest((row.hip_at_ridge_a, row.hip_at_ridge_b), (T / 2 / sin(a), T / 2 / sin(b)))
        are_nearest((row.jack_a, row.jack_b), (T / 2 / cos(a), T / 2 / cos(b)))
        is_nearest(row.hip_between_commons, max(T / 2 / cos(a), T / 2 / cos(b)))
        is_nearest(row.point_aside_to_b, T / 2 * (sin(a) - cos(a)))


def test_where_cheeks_start_at_two_pitches():
    for row, _, _, a, b, _ in _corners(rows_of('unequal-points')):
        jacks = (row.jack_a_short_to_long_point, row.jack_b_short_to_long_point)
        are_nearest(jacks, (T * tan(a), T * tan(b)))
        are_nearest((row.hip_a_set_back, row.hip_b_set_back), (T / 2 / tan(a), T / 2 / tan(b)))


def test_numbers_of_sides():
    for row in rows_of('sides'):
        p = pi / row.sides
        are_nearest((row.corner, row.plate_miter), (180 - degrees(2 * p), degrees(p)))
        are_nearest((row.side, row.apothem, row.hip_run), (24 * tan(p), 6 / tan(p), 12 / cos(p)))


def test_jacks_and_peaks_of_numbers_of_sides():
    """The hip stands at p from square across a jack's side, and so do its neighbors' half-way planes at the peak."""
    for jack, peak in zip(rows_of('sides-jacks'), rows_of('sides-peak'), strict=True):
        p = pi / jack.sides
        are_nearest((jack.blade, peak.blade), (90 - degrees(p), 90 - degrees(p)))
        are_nearest((jack.off_level, jack.short_to_long_point_level), (T / 2 / sin(p), T / tan(p)))
        is_nearest(peak.set_back_level, T / 2 / tan(p))
        for figure, least in (
            (jack.reach, T / sin(p)), (peak.reach, T / 2 / sin(p)), (peak.least_post, T / tan(p))
        ):  # fmt: skip
            is_least(figure, least)


@pytest.mark.parametrize('sides', many_sided.SIDES)
def test_many_sided_roofs(sides):
    p = pi / sides
    for row in rows_of(f'{sides}-sides'):
        m, theta, _ = angles_of(row)
        h = atan(m * cos(p))
        are_nearest((row.hip_per_foot, row.hip_plumb_cut), (12 * sqrt(1 / cos(p) ** 2 + m * m), degrees(h)))
        are_nearest(
            (row.jack_difference, row.jack_12_and), (16 / tan(p) / cos(theta), 12 * cos(theta) * tan(p))
        )
        is_nearest(row.peak_12_and, 12 * tan(p) * cos(h))
        are_nearest(
            (row.backing_bevel, row.drop_plumb), (degrees(atan(m * sin(p) * cos(h))), T / 2 * m * sin(p))
        )


def test_degrees_to_pitch():
    for row in rows_of('degrees-to-pitch'):
        rise = 12 * tan(radians(row.degrees))
        are_nearest((row.rise, row.rise_part), (rise, rise))
        is_nearest(row.half_rise, 12 * tan(radians(row.degrees + mpf(1) / 2)))


def test_half_pitches_to_degrees():
    assert [row.pitch.rise_in for row in rows_of('pitch-to-degrees')] == [
        Fraction(n, 2) for n in range(1, 49)
    ]
    for row in rows_of('pitch-to-degrees'):
        m, theta, _ = angles_of(row)
        are_nearest((row.slope, row.slope_per_foot), (degrees(theta), 12 / cos(theta)))
        are_nearest(row.gap_on_level, (24 * m, 48 * m))


@pytest.mark.parametrize('page', range(len(setting_out.WIDTHS_FT)))
def test_diagonals(page):
    for row in rows_of(f'diagonals-{page + 1}'):
        for width, figure in zip(setting_out.WIDTHS_FT[page], row.diagonal_width, strict=True):
            assert (figure is None) == (width > row.length_ft)
            if figure is not None:
                is_nearest(figure, 12 * sqrt(mpf(width) ** 2 + mpf(row.length_ft) ** 2))


def test_triangles_and_their_multiples():
    for row in rows_of('whole-triangles'):
        assert row.short**2 + row.long**2 == row.diagonal**2
        for k, written in zip((2, 3, 4, 5), row.times, strict=True):
            assert say(written) == '-'.join(str(k * side) for side in (row.short, row.long, row.diagonal))


def test_braces():
    for row in rows_of('braces'):
        leg = mpf(row.leg.numerator)
        is_nearest(row.equal_legs, leg * sqrt(2))
        are_nearest(
            row.other_leg, [sqrt(leg**2 + mpf(int(other)) ** 2) for other in setting_out.OTHER_LEGS_IN]
        )
        are_nearest(
            row.cut_other_leg, [degrees(atan(leg / int(other))) for other in setting_out.OTHER_LEGS_IN]
        )
