"""Every row of the tables of regular corners, against mpmath: each printed figure is the nearest one.

The relations are written out again here in plain trigonometry, so that a table that reads the wrong function, the
wrong side or the wrong thickness is found. That the relations themselves hold is shown against planes elsewhere.
"""

from fractions import Fraction

from mpmath import asin, atan, cos, degrees, mpf, sin, sqrt, tan
from msgspec.structs import replace
from printed import BOOK, DEPTHS, THICK, T, angles_of, are_nearest, is_nearest, rows_of, slope_of

from tablegen.numbers.units import INCHES
from tablegen.tables import seat, seat_hips, tail
from tablegen.tables.columns import THICKNESSES_IN
from tablegen.written.pitches import pitch
from tablegen.written.stocks import stock


def test_shortening_level():
    rows = rows_of('shortening-level')
    assert [row.thickness for row in rows] == list(INCHES.thicknesses)
    for row in rows:
        t = mpf(row.thickness.numerator) / row.thickness.denominator
        are_nearest(
            (row.common, row.shed_on_ledger, row.hip_or_jack, row.end_common), (t / 2, t, t / sqrt(2), t / 2)
        )


def test_end_commons_with_hips_on_the_ridge():
    """Half the ridge, and half of the hip's 45-degree thickness."""
    rows = rows_of('ridge-ends')
    assert [row.ridge for row in rows] == list(THICKNESSES_IN)
    for row, own in zip(rows, THICK, strict=True):
        are_nearest(row.end_common_with_hip, [own / 2 + hip / sqrt(2) for hip in THICK])


def test_shortening_along_the_edge():
    for common, jack, at_hip in zip(
        rows_of('shortening-common'), rows_of('shortening-jack'), rows_of('shortening-hip'), strict=True
    ):
        _, theta, h = angles_of(common)
        are_nearest(common.off_along_edge, [t / 2 / cos(theta) for t in THICK])
        are_nearest(jack.off_along_edge, [t / sqrt(2) / cos(theta) for t in THICK])
        are_nearest(at_hip.off_along_edge, [t / sqrt(2) / cos(h) for t in THICK])


def test_ridges():
    for row in rows_of('ridge-sits-down'):
        are_nearest(row.sits_down, [t / 2 * slope_of(row.pitch) for t in THICK])


def test_a_notch_that_leaves_less_than_half_is_left_out():
    """A seat of 3½ in on a 2×4: at 8 in 12 its notch is 1.94 in, at 6 in 12 1.57 in: past a third, and too thin."""
    eight, six = rows_of('stock-left-3-1-2', replace(BOOK, pitches=(pitch('8'), pitch('6'))))

    assert (eight.left_2x4, eight.marks['left_2x4']) == (None, ())
    assert six.left_2x4.text == '1 15/16'
    assert six.marks['left_2x4'] == ('past_a_third', 'thin')


def test_the_settings_own_sizes_and_seat_have_tables():
    own = replace(BOOK, rafters=stock('2×8'), hips=stock('2×10'), valleys=stock('2×12'), seat=Fraction(11, 4))
    keys = [table.key for table in (*seat.listed(own), *seat_hips.listed(own))]

    assert 'height-2-3-4' in keys
    assert keys[8:10] == ['hip-seat-2x10-with-2x8', 'valley-seat-2x12-with-2x8']
    assert len(keys) == len(set(keys)) == 8 + 2 + 8 + 1


def test_tails():
    outs = [mpf(out.numerator) / out.denominator for out in tail.OVERHANGS_IN]
    tables = (
        rows_of('tail-common'),
        rows_of('tail-hip'),
        rows_of('tail-fall'),
        rows_of('tail-plumb-cut'),
        rows_of('tail-square-cut'),
    )
    for common, at_hip, fall, plumb, square in zip(*tables, strict=True):
        m, theta, _ = angles_of(common)
        are_nearest(common.tail_overhang, [out / cos(theta) for out in outs])
        are_nearest(at_hip.tail_overhang, [out * sqrt(2 + m * m) for out in outs])
        are_nearest(fall.fall_overhang, [out * m for out in outs])
        are_nearest(plumb.plumb_cut, [depth / cos(theta) for depth in DEPTHS])
        are_nearest(square.lower_corner_set_in, [depth * sin(theta) for depth in DEPTHS])


def test_hips():
    for row, plumb, square in zip(
        rows_of('hips'), rows_of('drop-plumb'), rows_of('drop-square'), strict=True
    ):
        m, _, h = angles_of(row)
        bevel = atan(m / sqrt(2 + m * m))
        are_nearest((row.plumb_cut, row.level_cut), (degrees(h), 90 - degrees(h)))
        is_nearest(row.per_foot, 12 * sqrt(2 + m * m))
        is_nearest(row.backing_bevel, degrees(bevel))
        are_nearest((row.drop_plumb, row.drop_square_to_edge), (T / 2 * m / sqrt(2), T / 2 * tan(bevel)))
        are_nearest(plumb.drop, [t / 2 * m / sqrt(2) for t in THICK])
        are_nearest(square.drop, [t / 2 * tan(bevel) for t in THICK])


def test_jacks():
    spacings = [mpf(12), mpf(16), mpf(96) / 5, mpf(24)]
    for row in rows_of('jacks'):
        _, theta, _ = angles_of(row)
        are_nearest(row.difference, [spacing / cos(theta) for spacing in spacings])
        are_nearest(
            (row.off_at_hip_or_valley, row.off_at_ridge, row.short_to_long_point),
            (T / sqrt(2) / cos(theta), T / 2 / cos(theta), T / cos(theta)),
        )


def test_cheeks():
    for row in rows_of('cheeks'):
        _, theta, h = angles_of(row)
        are_nearest((row.jack_side, row.hip_side), (degrees(theta), degrees(h)))
        are_nearest((row.jack_top, row.hip_top), (degrees(atan(1 / cos(theta))), degrees(atan(1 / cos(h)))))
        are_nearest((row.jack_top_12_and, row.hip_top_12_and), (12 * cos(theta), 12 * cos(h)))
    for row in rows_of('backed-cheeks'):
        _, theta, _ = angles_of(row)
        are_nearest(
            (row.at_ridge_top, row.at_common_top), (degrees(atan(cos(theta))), degrees(atan(1 / cos(theta))))
        )
        are_nearest((row.at_ridge_top_12_and, row.at_common_top_12_and), (12 / cos(theta), 12 * cos(theta)))


def test_where_a_hips_sides_are_cut():
    """At 45 degrees in plan half of the hip's thickness back, level."""
    for row in rows_of('set-backs'):
        _, _, h = angles_of(row)
        are_nearest(row.set_back, [t / 2 / cos(h) for t in THICK])


def test_trim():
    for row in rows_of('trim'):
        _, theta, _ = angles_of(row)
        are_nearest(
            (row.square_to_slope_miter, row.square_to_slope_bevel),
            (degrees(atan(sin(theta))), degrees(asin(cos(theta) / sqrt(2)))),
        )
        are_nearest(
            (row.in_roof_plane_miter, row.in_roof_plane_bevel),
            (degrees(atan(cos(theta))), degrees(asin(sin(theta) / sqrt(2)))),
        )
        are_nearest(
            (row.sheathing_from_eave, row.sheathing_up_for_12_along),
            (degrees(atan(1 / cos(theta))), 12 / cos(theta)),
        )


def test_gables():
    spacings = [mpf(12), mpf(16), mpf(96) / 5, mpf(24)]
    for row in rows_of('gable-and-area'):
        m, theta, _ = angles_of(row)
        are_nearest(row.stud_difference, [spacing * m for spacing in spacings])
        are_nearest(
            (row.top_cut, row.area_factor, row.area_over_100_of_plan),
            (degrees(theta), 1 / cos(theta), 100 / cos(theta)),
        )
