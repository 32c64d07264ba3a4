"""Rows: every length of the default book against mpmath at 50 digits, and the figures a pitch has once."""

from fractions import Fraction
from functools import cache
from itertools import pairwise

import pytest
from fifty_digits import CLEAR, count_of, mp, mpf, real
from msgspec.structs import replace
from table_rows import jack_rows, run_row, run_rows, values_of

from tablegen.geometry.pitch import pitch_of_rise
from tablegen.numbers import text
from tablegen.numbers.figure import Measure
from tablegen.settings import Runs, Settings
from tablegen.tables.runs import coarse_part, part_runs
from tablegen.written.pitches import pitch

BOOK = Settings()
PER = 16
PITCHES = pytest.mark.parametrize('rise', range(1, 25))


@cache
def rows_of(rise: int) -> list:
    return list(run_rows(pitch_of_rise(Fraction(rise)), BOOK.runs, BOOK.measure))


def lengths(rise: int, run: int) -> tuple[mpf, mpf, mpf]:
    """Return common, hip and rise by the right triangles, in, to 50 digits; whole numbers under the roots."""
    climb = rise * run  # twelfths of an inch, as all that follows
    return (
        mp.sqrt((12 * run) ** 2 + climb**2) / 12,
        mp.sqrt(2 * (12 * run) ** 2 + climb**2) / 12,
        mpf(climb) / 12,
    )


def is_nearest(count: int, length: mpf) -> bool:
    """Return whether no other count of sixteenths is as near, with 20 digits to spare."""
    return abs(PER * length - count) < mpf(1) / 2 - CLEAR


@PITCHES
def test_every_length_of_the_default_book(rise):
    """Common, hip or valley, and rise: 20,736 counts over the 24 pitches, none of them a tie or in doubt."""
    rows = rows_of(rise)

    assert len(rows) * 3 * len(BOOK.pitches) == 20_736
    for run, row in enumerate(rows, 1):
        common, hip_valley, climb = lengths(rise, run)
        assert row.run_in == run
        assert is_nearest(row.common.count, common)
        assert is_nearest(row.hip_valley.count, hip_valley)
        assert is_nearest(row.rise.count, climb)


def test_a_neighboring_count_would_be_refused():
    common = lengths(6, 48)[0]

    assert [is_nearest(count, common) for count in (858, 859, 860)] == [False, True, False]
    assert not is_nearest(0, mpf(1) / 32)
    assert not is_nearest(1, mpf(1) / 32)


@PITCHES
def test_every_text_of_the_default_book(rise):
    for row in rows_of(rise):
        for figure in (row.common, row.hip_valley, row.rise):
            assert (figure.per, figure.unit) == (PER, 'in')
            assert figure.text == text.mixed(figure.count, PER)


@PITCHES
def test_columns_rise_with_the_run(rise):
    for before, after in pairwise(rows_of(rise)):
        assert before.common.count < after.common.count
        assert before.hip_valley.count < after.hip_valley.count
        assert before.rise.count < after.rise.count
        assert after.rise.count < after.common.count < after.hip_valley.count


@PITCHES
def test_lengths_grow_with_the_pitch(rise):
    if rise > 1:
        for flatter, steeper in zip(rows_of(rise - 1), rows_of(rise), strict=True):
            assert flatter.common.count <= steeper.common.count
            assert flatter.hip_valley.count <= steeper.hip_valley.count
            assert flatter.rise.count < steeper.rise.count


def test_rows_of_other_books():
    """Feet and inches in eighths, an odd run, a pitch in degrees: 30° has a length of 2/√3 and a rise of 1/√3."""
    row = run_row(pitch('30 deg'), Fraction(111, 2), Measure(8, 'feet-inches'))

    assert (row.common.count, row.common.text) == (count_of(real(111) / mp.sqrt(3), 8), '5′ 4 1/8″')
    assert row.hip_valley.count == count_of(mp.sqrt(real(7) / 3) * 111 / 2, 8)
    assert row.rise.count == count_of(real(111) / 2 / mp.sqrt(3), 8)


def test_a_half_goes_up_in_a_row():
    """At 9 in 12 a common is 5/4 of its run and the rise 3/4: in halves of an inch, ties."""
    row = run_row(pitch('9'), Fraction(1), Measure(2))

    assert (row.common.text, row.rise.text) == ('1 1/2', '1')


@PITCHES
def test_the_figures_a_pitch_has_once(rise):
    values, m = values_of(pitch_of_rise(Fraction(rise)), BOOK), mpf(rise) / 12
    lc, lh = mp.sqrt(1 + m * m), mp.sqrt(2 + m * m)
    plumb, hip_plumb = mp.degrees(mp.atan(m)), mp.degrees(mp.atan(m / mp.sqrt(2)))
    jack_side, hip_side = mp.degrees(mp.atan(1 / lc)), mp.degrees(mp.atan(mp.sqrt(2) / lh))
    expected = {
        'common_plumb_cut': (plumb, 100),
        'common_level_cut': (90 - plumb, 100),
        'hip_plumb_cut': (hip_plumb, 100),
        'hip_level_cut': (90 - hip_plumb, 100),
        'common_per_foot': (12 * lc, 1000),
        'common_per_foot_part': (12 * lc, PER),
        'hip_per_foot': (12 * lh, 1000),
        'hip_per_foot_part': (12 * lh, PER),
        'jack_cheek_top': (90 - jack_side, 100),
        'jack_cheek_top_12_and': (12 / lc, PER),
        'hip_cheek_top': (90 - hip_side, 100),
        'hip_cheek_top_12_and': (12 * mp.sqrt(2) / lh, PER),
        'hip_backing': (mp.degrees(mp.atan(m / lh)), 100),
        'hip_drop': (mpf(3) / 4 * m / mp.sqrt(2), PER),
        **{
            f'jack_difference_{name}_in': (real(spacing) * lc, PER)
            for name, spacing in zip(('12', '16', '19_2', '24'), BOOK.spacings, strict=True)
        },
    }

    for name, (value, per) in expected.items():
        figure = values[name]
        assert (name, figure.count, figure.per) == (name, count_of(value, per), per)
        assert figure.unit == ('deg' if per == 100 else 'in')


def test_what_is_set_on_a_square_reads_in_inches_however_lengths_read():
    values = values_of(pitch('24'), Settings(measure=Measure(16, text.FEET_INCHES)))

    assert (values['common_per_foot_part'].text, values['hip_per_foot_part'].text) == ('26 13/16', '29 3/8')
    assert [values[f'jack_difference_{name}_in'].text for name in ('12', '16', '19_2', '24')] == [
        '26 13/16', '35 3/4', '42 15/16', '53 11/16',
    ]  # fmt: skip
    assert run_row(pitch('24'), Fraction(12), Measure(16, text.FEET_INCHES)).common.text == '2′ 2 13/16″'


@PITCHES
def test_jacks_from_the_corner(rise):
    rows, lc = jack_rows(pitch_of_rise(Fraction(rise)), BOOK), mp.sqrt(144 + rise * rise) / 12

    assert [row.number for row in rows] == list(range(1, 25))
    for row in rows:
        for spacing, figure in zip(BOOK.spacings, row.lengths, strict=True):
            run = row.number * spacing
            if run > 288:
                assert figure is None
            else:
                assert figure.count == count_of(real(run) * lc, PER)


def test_each_spacing_ends_with_its_own_last_jack():
    rows = jack_rows(pitch('6'), BOOK)

    lasts = [max(row.number for row in rows if row.lengths[place]) for place in range(4)]
    assert lasts == [24, 18, 15, 12]


def test_a_jack_is_not_a_sum_of_rounded_differences():
    """At 6 in 12 and 16 in centers 18 exact differences are 321.99 in; 18 rounded ones would be 321 3/4."""
    rows, difference = jack_rows(pitch('6'), BOOK), values_of(pitch('6'), BOOK)['jack_difference_16_in']

    assert difference.text == '17 7/8'
    assert rows[17].lengths[1].text == '322'
    assert 18 * difference.count != rows[17].lengths[1].count


@PITCHES
def test_points_of_jacks_are_rounded_once(rise):
    """Off the line length: half the hip's 45-degree thickness, and half of the jack's own on either side of that."""
    book = replace(BOOK, hip_thickness=Fraction(7, 2), rafter_thickness=Fraction(7, 4))
    lc = mp.sqrt(144 + rise * rise) / 12
    at_center, half = real(Fraction(7, 2)) / mp.sqrt(2), real(Fraction(7, 8))
    for row in jack_rows(pitch_of_rise(Fraction(rise)), book):
        for place, spacing in enumerate(BOOK.spacings):
            run = real(row.number * spacing)
            for figure, level in (
                (row.lengths[place], run),
                (row.long_points[place], run - at_center + half),
                (row.short_points[place], run - at_center - half),
            ):
                assert (figure and figure.count) == (count_of(level * lc, PER) if run <= 288 else None)


def test_a_jack_whose_edge_the_hip_takes_has_no_short_point():
    (row, *_) = jack_rows(pitch('6'), replace(BOOK, spacings=(Fraction(3, 2),)))

    assert (row.lengths[0].text, row.long_points[0].text, row.short_points[0]) == ('1 11/16', '1 5/16', None)


@pytest.mark.parametrize('per', [2, 8, 16, 32, 64])
@pytest.mark.parametrize(
    ('step', 'whole'),
    [
        (Fraction(1), []),
        (Fraction(1, 2), []),
        (Fraction(3, 2), [1]),
        (Fraction(6), [1, 2, 3, 4, 5]),
        (Fraction(12), list(range(1, 12))),
        (Fraction(24), list(range(1, 12))),
    ],
)
def test_small_runs_to_add(step, whole, per):
    """Sixteenths; a thirty-second with them in a 1/32 book; sixty-fourths and eighths in a 1/64 book."""
    sixteenths = [Fraction(n, 16) for n in range(1, 16)]
    parts = {
        32: [Fraction(1, 32), *sixteenths],
        64: [Fraction(n, 64) for n in range(1, 8)] + [Fraction(n, 8) for n in range(1, 8)],
    }.get(per, sixteenths)

    assert part_runs(Runs(step=step), per) == [part for part in parts if part < step] + whole


@pytest.mark.parametrize('per', [4, 16, 32, 64])
def test_small_runs_reach_every_smallest_part(per):
    """By adding one whole number of inches, one of the coarse parts and one of the finer ones at most."""
    small, parts = part_runs(Runs(step=Fraction(6)), per), max(per, 16)
    fine = [0, *(part for part in small if part < coarse_part(per))]
    coarse = [0, *(part for part in small if coarse_part(per) <= part < 1)]
    whole = [0, *(part for part in small if part >= 1)]

    assert {a + b + c for a in fine for b in coarse for c in whole} == {
        Fraction(n, parts) for n in range(6 * parts)
    }
