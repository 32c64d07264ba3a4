"""Every row of every reference table, against mpmath: each printed figure is the nearest one.

The relations are written out again here in plain trigonometry, so that a table that reads the wrong function, the
wrong side or the wrong thickness is found. That the relations themselves hold is shown against planes elsewhere.
"""

from dataclasses import fields, replace
from fractions import Fraction
from itertools import pairwise

import pytest
from mpmath import acos, asin, atan, cos, degrees, mpf, pi, radians, sin, sqrt, tan

from tablegen.figures import Figure, Measure
from tablegen.geometry.seat import MARKS
from tablegen.lumber import SIZES, THICKNESSES_IN, stock
from tablegen.pitch import Pitch, pitch
from tablegen.reference import (
    cheeks,
    finding_pitch,
    gable,
    hip,
    jacks,
    many_sided,
    ridge,
    seat,
    setting_out,
    tail,
    trim,
    unequal,
)
from tablegen.reference.finish import cells
from tablegen.settings import Settings

BOOK = Settings()
T = mpf(3) / 2
THICK = [mpf(t.numerator) / t.denominator for t in ridge.COLUMN_THICKNESSES_IN]
DEPTHS = [mpf(size.depth_in.numerator) / size.depth_in.denominator for size in SIZES]
SEAT = mpf(7) / 2


def _is(figure, expected):
    """A figure is the whole count of its parts that is nearest to a number; ties may round either way here."""
    assert abs(mpf(figure.count) / figure.per - expected) <= mpf(1) / (2 * figure.per) + mpf('1e-15')


def _are(figures, expected):
    for figure, number in zip(figures, expected, strict=True):
        _is(figure, number)


def _m(row_pitch):
    return mpf(row_pitch.rise_in.numerator) / row_pitch.rise_in.denominator / 12


def _angles(row):
    """The slope, its angle, and the angle of the regular hip."""
    m = _m(row.pitch)
    return m, atan(m), atan(m / sqrt(2))


def test_shortening_level():
    rows = ridge.level_rows(BOOK)
    assert [row.thickness_in for row in rows] == list(THICKNESSES_IN)
    for row in rows:
        t = mpf(row.thickness_in.numerator) / row.thickness_in.denominator
        _are((row.common, row.hip, row.past_end_between_commons), (t / 2, t / sqrt(2), t / 2))


def test_shortening_along_the_edge():
    for common, jack, at_hip in zip(
        ridge.common_rows(BOOK), ridge.jack_rows(BOOK), ridge.hip_rows(BOOK), strict=True
    ):
        _, theta, h = _angles(common)
        _are(common.along, [t / 2 / cos(theta) for t in THICK])
        _are(jack.along, [t / sqrt(2) / cos(theta) for t in THICK])
        _are(at_hip.along, [t / sqrt(2) / cos(h) for t in THICK])


def test_ridges():
    for row in ridge.ridge_rows(BOOK):
        _are(row.sits_down, [t / 2 * _m(row.pitch) for t in THICK])
    _is(ridge.past_end_with_hips(BOOK), T / 2 + T / sqrt(2))


def test_seats():
    for row in seat.seat_rows(BOOK, Fraction(7, 2)):
        m, theta, _ = _angles(row)
        _is(row.heel, SEAT * m)
        for figure, depth in zip(row.heights, DEPTHS, strict=True):
            if figure is None:
                assert depth <= SEAT * sin(theta)
            else:
                _is(figure, depth / cos(theta) - SEAT * m)


def test_notches():
    for row in seat.notch_rows(BOOK, Fraction(7, 2)):
        _, theta, _ = _angles(row)
        notch = SEAT * sin(theta)
        _is(row.notch, notch)
        for figure, passed, depth in zip(row.left, row.marks, DEPTHS, strict=True):
            assert passed == (notch > depth / 4) + (notch > depth / 3)
            assert figure is not None
            _is(figure, depth - notch)


def test_a_notch_through_the_stock_is_left_out():
    """A seat of 5½ in on a 2×4: at 12 in 12 its notch is 3.89 in."""
    (row,) = seat.notch_rows(replace(BOOK, pitches=(pitch('12'),)), Fraction(11, 2))

    assert row.left[0] is None
    assert row.left[1] is not None
    assert cells(row)['left_1'] == ''


def test_longest_seats():
    for share in MARKS:
        for row in seat.longest_seat_rows(BOOK, share):
            _, theta, _ = _angles(row)
            _are(row.seats, [depth * share.numerator / share.denominator / sin(theta) for depth in DEPTHS])


@pytest.mark.parametrize('size', [stock('2×8'), stock('2×12')], ids=['2×8', '2×12'])
def test_hip_seats(size):
    """A short seat on deep stock at a steep pitch is where a hip of the same stock ends above the plate."""
    none = 0
    rows = [(wide, row) for wide in seat.SEATS_IN for row in seat.hip_seat_rows(BOOK, wide, size)]
    for wide, row in rows:
        m, theta, h = _angles(row)
        level = mpf(wide.numerator) / wide.denominator
        depth, slope = mpf(size.depth_in.numerator) / size.depth_in.denominator, m / sqrt(2)
        common = depth / cos(theta) - level * m
        dropped = common - T / 2 * slope
        _is(row.common_height, common)
        _is(row.dropped_height, dropped)
        _is(row.shortcut_low, dropped - (depth / cos(h) - sqrt(2) * level * slope))
        for figure, height, back in (
            (row.dropped_seat, dropped, 0),
            (row.backed_seat, common, 0),
            (row.valley_seat, common, T / 2),
        ):
            reach = (depth / cos(h) - height) / slope - back
            if figure is None:
                none += 1
                assert reach <= 0
            else:
                _is(figure, reach)
    assert none > 0


def test_a_seat_that_cuts_through_leaves_the_hips_row_empty():
    row = seat.hip_seat_rows(replace(BOOK, pitches=(pitch('24'),)), Fraction(11, 2), stock('2×4'))[0]

    assert [getattr(row, field.name) for field in fields(row)][1:] == [None] * 6


def test_tails():
    outs = [mpf(out.numerator) / out.denominator for out in tail.PROJECTIONS_IN]
    tables = (
        tail.common_rows(BOOK),
        tail.hip_rows(BOOK),
        tail.fall_rows(BOOK),
        tail.plumb_cut_rows(BOOK),
        tail.square_cut_rows(BOOK),
    )
    for common, at_hip, fall, plumb, square in zip(*tables, strict=True):
        m, theta, _ = _angles(common)
        _are(common.lengths, [out / cos(theta) for out in outs])
        _are(at_hip.lengths, [out * sqrt(2 + m * m) for out in outs])
        _are(fall.falls, [out * m for out in outs])
        _are(plumb.lengths, [depth / cos(theta) for depth in DEPTHS])
        _are(square.lengths, [depth * sin(theta) for depth in DEPTHS])


def test_hips():
    for row, plumb, square in zip(
        hip.hip_rows(BOOK), hip.drop_plumb_rows(BOOK), hip.drop_square_rows(BOOK), strict=True
    ):
        m, _, h = _angles(row)
        bevel = atan(m / sqrt(2 + m * m))
        _are((row.plumb_cut, row.level_cut), (degrees(h), 90 - degrees(h)))
        _is(row.per_foot, 12 * sqrt(2 + m * m))
        _is(row.backing_bevel, degrees(bevel))
        _are((row.drop_plumb, row.drop_square), (T / 2 * m / sqrt(2), T / 2 * tan(bevel)))
        _are(plumb.drops, [t / 2 * m / sqrt(2) for t in THICK])
        _are(square.drops, [t / 2 * tan(bevel) for t in THICK])


def test_jacks():
    spacings = [mpf(12), mpf(16), mpf(96) / 5, mpf(24)]
    for row in jacks.take_rows(BOOK):
        _, theta, _ = _angles(row)
        _are(row.differences, [spacing / cos(theta) for spacing in spacings])
        _are(
            (row.at_hip, row.at_ridge, row.point_to_point),
            (T / sqrt(2) / cos(theta), T / 2 / cos(theta), T / cos(theta)),
        )


def test_cheeks():
    for row in cheeks.cheek_rows(BOOK):
        _, theta, h = _angles(row)
        _are((row.jack_saw, row.hip_saw), (degrees(theta), degrees(h)))
        _are((row.jack_top, row.hip_top), (degrees(atan(1 / cos(theta))), degrees(atan(1 / cos(h)))))
        _are((row.jack_figure, row.hip_figure), (12 * cos(theta), 12 * cos(h)))
    for row in cheeks.backed_cheek_rows(BOOK):
        _, theta, _ = _angles(row)
        _are((row.at_ridge, row.at_common), (degrees(atan(1 / cos(theta))), degrees(atan(cos(theta)))))
        _are((row.at_ridge_figure, row.at_common_figure), (12 / cos(theta), 12 * cos(theta)))


def test_trim():
    for row in trim.trim_rows(BOOK):
        _, theta, _ = _angles(row)
        _are(
            (row.square_mitre, row.square_bevel),
            (degrees(atan(sin(theta))), degrees(asin(cos(theta) / sqrt(2)))),
        )
        _are(
            (row.plane_mitre, row.plane_bevel),
            (degrees(atan(cos(theta))), degrees(asin(sin(theta) / sqrt(2)))),
        )
        _are((row.sheathing, row.sheathing_figure), (degrees(atan(1 / cos(theta))), 12 / cos(theta)))


def test_gables():
    spacings = [mpf(12), mpf(16), mpf(96) / 5, mpf(24)]
    for row in gable.gable_rows(BOOK):
        m, theta, _ = _angles(row)
        _are(row.stud_differences, [spacing * m for spacing in spacings])
        _are(
            (row.stud_top, row.area_factor, row.area_of_a_square),
            (degrees(theta), 1 / cos(theta), 100 / cos(theta)),
        )


def test_unequal_pairs():
    tables = (
        unequal.hip_rows(BOOK),
        unequal.cheek_rows(BOOK),
        unequal.fit_rows(BOOK),
        unequal.shortening_rows(BOOK),
    )
    for run, cheek, fit, short in zip(*tables, strict=True):
        ma, mb = _m(run.a), _m(run.b)
        assert ma < mb
        a = atan(mb / ma)
        b, h, ta, tb = pi / 2 - a, atan(ma * sin(a)), atan(ma), atan(mb)
        _are((run.plan_a, run.slope), (degrees(a), degrees(h)))
        _is(run.per_foot_a, 12 / sin(a) / cos(h))
        _are((run.difference_a, run.difference_b), (16 * tan(a) / cos(ta), 16 * tan(b) / cos(tb)))
        _are((cheek.blade_a, cheek.blade_b), (degrees(a), degrees(b)))
        _are((cheek.jack_a, cheek.jack_b), (12 * cos(ta) / tan(a), 12 * cos(tb) / tan(b)))
        _are((cheek.hip_over_a, cheek.hip_over_b), (12 * tan(a) * cos(h), 12 * tan(b) * cos(h)))
        _are(
            (fit.backing_a, fit.backing_b),
            (degrees(atan(ma * cos(a) * cos(h))), degrees(atan(mb * cos(b) * cos(h)))),
        )
        _are((fit.drop_a, fit.drop_b), (T / 2 * ma * cos(a), T / 2 * mb * cos(b)))
        _are((fit.slide, fit.slid_drop), (T / 2 * sin(a - b), T * tan(h) / (tan(a) + tan(b))))
        _is(fit.projection_b, 12 * ma / mb)
        _are((short.hip_over_a, short.hip_over_b), (T / 2 / sin(a), T / 2 / sin(b)))
        _are((short.jack_a, short.jack_b), (T / 2 / cos(a), T / 2 / cos(b)))
        _is(short.hip_between, max(T / 2 / cos(a), T / 2 / cos(b)))


def test_numbers_of_sides():
    for row in many_sided.sides_rows(BOOK):
        p = pi / row.sides
        _are((row.corner, row.plate_mitre), (180 - degrees(2 * p), degrees(p)))
        _are((row.side, row.apothem, row.hip_run), (24 * tan(p), 6 / tan(p), 12 / cos(p)))
        _are((row.jack_blade, row.peak_blade), (90 - degrees(p), 90 - degrees(p)))
        _is(row.least_post, T / tan(p))


@pytest.mark.parametrize('sides', many_sided.SIDES)
def test_many_sided_roofs(sides):
    p = pi / sides
    for row in many_sided.pitch_rows(BOOK, sides):
        m, theta, _ = _angles(row)
        h = atan(m * cos(p))
        _are((row.hip_per_foot, row.hip_slope), (12 * sqrt(1 / cos(p) ** 2 + m * m), degrees(h)))
        _are((row.jack_difference, row.jack_figure), (16 / tan(p) / cos(theta), 12 * cos(theta) * tan(p)))
        _is(row.peak_figure, 12 * tan(p) * cos(h))
        _are((row.backing_bevel, row.drop), (degrees(atan(m * sin(p) * cos(h))), T / 2 * m * sin(p)))


def test_degrees_to_pitch():
    for row in finding_pitch.degree_rows(BOOK):
        rise = 12 * tan(radians(row.degrees))
        _are((row.rise, row.rise_part), (rise, rise))
        _is(row.half_rise, 12 * tan(radians(row.degrees + mpf(1) / 2)))


def test_half_pitches_to_degrees():
    assert [row.pitch.rise_in for row in finding_pitch.half_pitch_rows(BOOK)] == [
        Fraction(n, 2) for n in range(1, 49)
    ]
    for row in finding_pitch.half_pitch_rows(BOOK):
        m, theta, _ = _angles(row)
        _are((row.degrees, row.slope_per_foot), (degrees(theta), 12 / cos(theta)))
        _are(row.gaps, (24 * m, 48 * m))


@pytest.mark.parametrize('page', range(len(setting_out.WIDTHS_FT)))
def test_diagonals(page):
    for row in setting_out.diagonal_rows(BOOK, page):
        for width, figure in zip(setting_out.WIDTHS_FT[page], row.diagonals, strict=True):
            assert (figure is None) == (width > row.length_ft)
            if figure is not None:
                _is(figure, 12 * sqrt(mpf(width) ** 2 + mpf(row.length_ft) ** 2))


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
        _is(row.equal, leg * sqrt(2))
        _are(row.unequal, [sqrt(leg**2 + mpf(other) ** 2) for other in setting_out.OTHER_LEGS_IN])
        _are(row.cuts, [degrees(atan(leg / other)) for other in setting_out.OTHER_LEGS_IN])


def _longest_seats(settings):
    return seat.longest_seat_rows(settings, MARKS[0])


ALL_BY_PITCH = (
    ridge.common_rows,
    ridge.jack_rows,
    ridge.hip_rows,
    ridge.ridge_rows,
    _longest_seats,
    tail.common_rows,
    tail.hip_rows,
    tail.fall_rows,
    tail.plumb_cut_rows,
    tail.square_cut_rows,
    hip.hip_rows,
    hip.drop_plumb_rows,
    hip.drop_square_rows,
    jacks.take_rows,
    cheeks.cheek_rows,
    cheeks.backed_cheek_rows,
    trim.trim_rows,
    gable.gable_rows,
)


@pytest.mark.parametrize('table', ALL_BY_PITCH)
def test_columns_run_one_way(table):
    """A misplaced figure breaks the run of its column: each only grows, or only shrinks, with the pitch."""
    rows = [_figures(row) for row in table(BOOK)]
    assert len(rows) == len(BOOK.pitches)
    for column in zip(*rows, strict=True):
        steps = [high - low for low, high in pairwise(column)]
        assert all(step >= 0 for step in steps) or all(step <= 0 for step in steps)


def _figures(row):
    values = [getattr(row, field.name) for field in fields(row)]
    flat = [one for value in values for one in (value if isinstance(value, tuple) else (value,))]
    return [one.count for one in flat if isinstance(one, Figure)]


def test_a_table_fits_a_page():
    """At most 26 rows, and no more than seven figures beside the pitch."""
    for table in ALL_BY_PITCH:
        rows = table(BOOK)
        assert len(rows) <= 26
        assert 1 <= len(_figures(rows[0])) <= 7


def test_cells_are_the_finished_text():
    row = hip.hip_rows(replace(BOOK, pitches=(pitch('8'),)))[0]

    assert cells(row) == {
        'pitch': '8 in 12',
        'plumb_cut': '25.24°',
        'level_cut': '64.76°',
        'per_foot': '18.762',
        'backing_bevel': '23.09°',
        'drop_plumb': '3/8',
        'drop_square': '5/16',
    }


def test_small_lengths_stay_in_inches_in_a_book_of_feet():
    """A deduction is read from the tape's inches; a diagonal is as long as the roof."""
    feet = replace(BOOK, measure=Measure(16, 'feet-inches'))

    assert tail.common_rows(feet)[7].lengths[-1].text == '28 7/8'
    assert setting_out.diagonal_rows(feet, 0)[0].diagonals[0].text == '5′ 7 7/8″'


def test_pitches_in_degrees_have_rows():
    rows = cheeks.cheek_rows(replace(BOOK, pitches=(pitch('26.565 deg'), pitch('30 deg'))))

    assert [row.jack_saw.text for row in rows] == ['26.57°', '30.00°']
    assert isinstance(rows[0].pitch, Pitch)
    _is(rows[1].jack_figure, 12 * cos(pi / 6))
    _is(rows[1].hip_saw, degrees(acos(1 / sqrt(1 + tan(pi / 6) ** 2 / 2))))
