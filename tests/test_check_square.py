"""A square's own figures: what should stand there, and what a file of them is judged to say."""

from fractions import Fraction

import pytest
from check_support import authority, changed, near, real, rounded, square
from hypothesis import given, settings
from hypothesis import strategies as st
from mpmath import floor, sqrt

from tablegen.checking.square_figures import KEYS, LINES, RISES, engraved_table
from tablegen.checking.square_file import HEADER, ShownRow
from tablegen.checking.square_judging import Convention, Fit, judge_square
from tablegen.checking.written import written

ORACLE = {
    'common': lambda r: sqrt(144 + r * r),
    'hip_valley': lambda r: sqrt(288 + r * r),
    'jack_16': lambda r: 16 * sqrt(144 + r * r) / 12,
    'jack_24': lambda r: 24 * sqrt(144 + r * r) / 12,
    'jack_cheek': lambda r: 144 / sqrt(144 + r * r),
    'hip_cheek': lambda r: 12 * sqrt(288) / sqrt(288 + r * r),
}
OLD_SQUARE = """rise,common,hip_valley,jack_16,jack_24,jack_cheek,hip_cheek
8,14.42,18.78,19.23,28.84,10,10 7/8
17,20.81,24.04,27.74,41.62,6 15/16,8 1/2
18,21.63,24.75,28.84,43.27,6 11/16,8 1/4
"""
"""Hip lengths with 17 for √288: 18.78 at 8, 24.04 at 17, 24.75 at 18 (common practice, no source)."""


def cell(rise, column, shown):
    """Return one figure judged by itself."""
    cells = tuple(written(shown, 'cell') if key == column else None for key in KEYS)
    return judge_square([ShownRow(rise, cells)]).cells[0]


@pytest.mark.parametrize('column', LINES, ids=lambda column: column.key)
def test_every_figure_against_mpmath(column):
    rows = [row.cells for row in engraved_table().rows()]
    place = 1 + KEYS.index(column.key)

    assert [rise for rise, *_ in rows] == list(range(1, 25))
    for row in rows:
        figure = row[place]
        assert (rounded(ORACLE[column.key](real(row[0])), column.per), column.per) == (
            figure.count,
            figure.per,
        )


def test_the_customary_engraved_cheeks():
    """Common practice, no source; from memory, as the file says.

    One row differs: at 10 in 12 the file has 9 1/4 for jacks and calls it right, but 144/√244 is 9.2186,
    nearer to 9 3/16; 9 1/4 is the nearest eighth.
    """
    judged = {}
    for row in authority('engraved-figures.toml'):
        column = 'jack_cheek' if 'jacks' in row['quantity'] else 'hip_cheek'
        judged[row['given']['rise_per_ft'], column] = (row['status'], cell_of(row, column).verdict)
    differs = {
        key: pair
        for key, pair in judged.items()
        if pair not in {('ok', Fit.RIGHT), ('rounding', Fit.COARSER)}
    }

    assert len(judged) == 34
    assert differs == {(10, 'jack_cheek'): ('ok', Fit.COARSER)}
    assert judged[10, 'hip_cheek'] == ('rounding', Fit.COARSER)


def cell_of(row, column):
    return cell(row['given']['rise_per_ft'], column, row['printed'])


PRINTED = {
    'length of common or jack rafter per foot of run': 'common',
    'length of common rafter per foot run': 'common',
    'length of hip/valley per foot of run of common rafter': 'hip_valley',
    'length of hip/valley per foot run of common': 'hip_valley',
    'difference in length of jacks, 16 in. centres': 'jack_16',
    'difference in length of jacks, 16 in centres': 'jack_16',
    'difference in length of jacks, 24 in. centres': 'jack_24',
    'side cut of jacks (figure under the rise, used with 12)': 'jack_cheek',
}


@pytest.mark.parametrize(
    ('source', 'count', 'rounded_otherwise', 'wrong'),
    [
        # Griffith, Carpentry, 1916, Fig. 60: at 14 in 12 the hip is just 22 in, printed 21.99
        (
            'griffith-1916-fig60.toml',
            18,
            {(15, 'hip_valley'), (13, 'hip_valley'), (10, 'hip_valley'), (4, 'hip_valley')},
            {(18, 'hip_valley'), (17, 'hip_valley'), (16, 'hip_valley'), (14, 'hip_valley')},
        ),
        # NAVEDTRA 14044, ch. 2, pp. 2-12 to 2-33
        ('navedtra-14044.toml', 6, set(), set()),
    ],
)
def test_published_unit_lengths_are_judged_as_their_rows_say(source, count, rounded_otherwise, wrong):
    cells = [
        cell_of(row, PRINTED[row['quantity']])
        for row in authority(source)
        if row['quantity'] in PRINTED and row['given'].get('rise_per_ft') in RISES
    ]

    assert len(cells) == count
    assert {
        (one.rise, one.column) for one in cells if one.verdict in (Fit.CUT_OFF, Fit.COARSER)
    } == rounded_otherwise
    assert {(one.rise, one.column) for one in cells if one.verdict == Fit.WRONG} == wrong


def test_jack_differences_of_1916_in_eighths():
    """Griffith, Carpentry, 1916, Fig. 49, feet and inches to the eighth; four of 34 are no nearest part."""
    odd, count = {}, 0
    for row in authority('griffith-1916-fig49.toml'):
        column = PRINTED.get(row['quantity'], '')
        if column.startswith('jack_') and row['given']['rise_per_ft'] in RISES:
            feet, _, inches = row['printed'].rpartition('-')
            found = cell(
                row['given']['rise_per_ft'], column, f'{feet} ft {inches} in' if feet else f'{inches} in'
            )
            count += 1
            if found.verdict not in (Fit.RIGHT, Fit.COARSER):
                odd[found.rise, found.column] = (found.verdict, row['status'])

    assert count == 34
    assert odd == {
        (16, 'jack_16'): (Fit.WRONG, 'rounding'),  # 26 3/4 printed, 26.667 exact: 26 5/8
        (15, 'jack_24'): (Fit.WRONG, 'rounding'),  # 38 1/2 printed, 38.419 exact: 38 3/8
        (2, 'jack_16'): (Fit.CUT_OFF, 'ok'),  # 16 3/16 printed, 16.221 exact: 16 1/4
        (2, 'jack_24'): (Fit.CUT_OFF, 'rounding'),  # 24 1/4 printed, 24.331 exact: 24 3/8
    }


@pytest.mark.parametrize(
    ('rise', 'column', 'shown', 'verdict'),
    [
        (6, 'common', '13.42', Fit.RIGHT),
        (6, 'common', '13.416', Fit.RIGHT),  # finer than engraved, and right there
        (6, 'common', '13.41', Fit.CUT_OFF),
        (6, 'common', '13.4', Fit.COARSER),
        (6, 'common', '13 7/16', Fit.COARSER),
        (6, 'common', '13 3/8', Fit.COARSER),
        (12, 'common', '16 15/16', Fit.CUT_OFF),  # √288 is nearer to 17
        (12, 'common', '16 3/4', Fit.WRONG),
        (8, 'common', '14 5/12', Fit.COARSER),  # the twelfths scale: US Army EN0069, lesson 2
        (6, 'common', '13.43', Fit.WRONG),
        (6, 'common', '13 1/2', Fit.WRONG),
        (6, 'common', '14.42', Fit.WRONG),
        (5, 'common', '13', Fit.RIGHT),
        (8, 'hip_valley', '18.76', Fit.RIGHT),
        (8, 'hip_valley', '18.79', Fit.SEVENTEEN),
        (8, 'hip_valley', '18.78', Fit.SEVENTEEN),
        (8, 'hip_valley', '18.77', Fit.WRONG),
        (9, 'hip_valley', '19.20', Fit.CUT_OFF),
        (8, 'common', '18.78', Fit.WRONG),  # 17 has no part in a common rafter
        (8, 'jack_cheek', '9.98', Fit.RIGHT),
        (8, 'jack_cheek', '9.9', Fit.CUT_OFF),
        (8, 'hip_cheek', '10 7/8', Fit.RIGHT),
        (10, 'hip_cheek', '10 3/8', Fit.COARSER),
    ],
)
def test_each_way_that_a_figure_comes_about(rise, column, shown, verdict):
    assert cell(rise, column, shown).verdict == verdict


def test_cutting_off_and_seventeen_are_never_the_same_hundredth():
    """√(289 + r²) passes √(288 + r²) by over 0.016 in at any rise to 24: so a hip's hundredth always tells."""
    for rise in RISES:
        true, old = ORACLE['hip_valley'](real(rise)), sqrt(289 + real(rise) ** 2)
        assert floor(100 * old) > rounded(true, 100)


def test_a_wrong_figure_that_belongs_to_another_rise_is_traced():
    assert cell(17, 'jack_cheek', '7 3/16').belongs_to_rise == 16
    assert cell(17, 'jack_cheek', '7 1/8').belongs_to_rise is None


def test_an_old_square_is_told_from_a_misprinted_one():
    old = square(OLD_SQUARE)
    misprinted = square(
        changed(
            OLD_SQUARE, a=('18.78', '18.67'), b=('24.04', '24.02'), c=('24.75', '24.74'), d=('21.63', '21.36')
        )
    )

    assert (old.hip_convention, old.misprints) == (Fit.SEVENTEEN, ())
    assert (old.counts[Fit.SEVENTEEN], old.counts[Fit.RIGHT], old.counts[Fit.WRONG]) == (3, 15, 0)
    assert misprinted.hip_convention == Convention.ROOT_288
    assert [(one.rise, one.column) for one in misprinted.misprints] == [(8, 'hip_valley'), (18, 'common')]
    assert (old.verdict, misprinted.verdict) == ('wrong', 'wrong')


def test_a_misprint_on_an_old_square_is_found_too():
    found = square(changed(OLD_SQUARE, a=('24.04', '24.40')))

    assert found.hip_convention == Fit.SEVENTEEN
    assert [(one.rise, one.column, one.verdict) for one in found.misprints] == [(17, 'hip_valley', Fit.WRONG)]


def test_one_figure_of_the_other_convention_is_a_misprint():
    found = square(changed(OLD_SQUARE, a=('24.04', '24.02')))

    assert found.hip_convention == Fit.SEVENTEEN
    assert [(one.rise, one.verdict, one.follows) for one in found.misprints] == [
        (17, Fit.RIGHT, Convention.ROOT_288)
    ]


def test_a_draw_between_the_conventions_goes_to_the_true_one():
    found = square(f'{",".join(HEADER)}\n8,,18.78,,,,\n17,,24.02,,,,\n')

    assert found.hip_convention == Convention.ROOT_288
    assert [one.rise for one in found.misprints] == [8]


def test_a_square_without_hip_figures_tells_no_convention():
    assert square(f'{",".join(HEADER)}\n8,14.42,,,,,\n').hip_convention == Convention.NOT_SHOWN


def test_a_file_from_a_spreadsheet_may_begin_with_a_byte_order_mark():
    assert square(f'\ufeff{OLD_SQUARE}').counts[Fit.SEVENTEEN] == 3


def cells_of(rises):
    return [row.cells for row in engraved_table(sorted(rises)).rows()]


@settings(max_examples=40, deadline=None)
@given(st.sets(st.sampled_from(RISES), min_size=1))
def test_a_square_with_the_right_figures_is_right(rises):
    lines = [','.join(HEADER)]
    lines += [','.join([str(rise), *(one.text for one in figures)]) for rise, *figures in cells_of(rises)]
    found = square('\n'.join(lines))

    assert (found.verdict, found.misprints, found.counts[Fit.RIGHT]) == ('right', (), 6 * len(rises))
    assert found.hip_convention == Convention.ROOT_288


@settings(max_examples=40, deadline=None)
@given(st.sets(st.sampled_from(RISES), min_size=1), st.booleans())
def test_hip_lengths_with_seventeen_are_known_whether_rounded_or_cut_off(rises, cut):
    lines = [','.join(HEADER)]
    for rise in sorted(rises):
        old = 100 * sqrt(289 + real(rise) ** 2)
        count = int(floor(old)) if cut else rounded(old / 100, 100)
        lines.append(f'{rise},,{count // 100}.{count % 100:02},,,,')
    found = square('\n'.join(lines))

    assert (found.hip_convention, found.misprints, found.counts[Fit.SEVENTEEN]) == (
        Fit.SEVENTEEN,
        (),
        len(rises),
    )


def test_the_difference_is_from_the_exact_length():
    found = cell(8, 'hip_valley', '18.78')

    assert near(found.difference, real('18.78') - sqrt(352))
    assert found.shown.inches == Fraction('18.78')
