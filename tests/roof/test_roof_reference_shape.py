"""The shape of reference tables: columns that run one way, pages that hold them, cells for data files."""

import re
from dataclasses import fields, replace
from itertools import pairwise

import pytest
from mpmath import acos, cos, degrees, pi, sqrt, tan
from printed import BOOK, is_nearest

from tablegen.geometry.pitch import Pitch
from tablegen.geometry.seat import MARKS
from tablegen.numbers.figure import Figure, Measure
from tablegen.tables import (
    cheeks,
    finding_pitch,
    gable,
    hip,
    hip_seat,
    jacks,
    longest_seat,
    many_sided,
    ridge,
    seat,
    setting_out,
    tables,
    tail,
    trim,
    unequal,
    unequal_ends,
)
from tablegen.tables.data_columns import table_data
from tablegen.tables.finish import cells
from tablegen.written.pitches import pitch


def _longest_seats(settings):
    return longest_seat.longest_seat_rows(settings, MARKS[0])


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
    cheeks.set_back_rows,
    trim.trim_rows,
    gable.gable_rows,
)

EVERY = tables.tables(BOOK)


@pytest.mark.parametrize('table', ALL_BY_PITCH)
def test_columns_run_one_way(table):
    """A misplaced figure breaks the run of its column: each only grows, or only shrinks, with the pitch."""
    rows = [_cells(row) for row in table(BOOK)]
    assert len(rows) == len(BOOK.pitches)
    for cells_ in zip(*rows, strict=True):
        column = [one.count for one in cells_ if one is not None]
        steps = [high - low for low, high in pairwise(column)]
        assert all(step >= 0 for step in steps) or all(step <= 0 for step in steps)


def _cells(row):
    """Figures of a row, None where there is none."""
    values = [getattr(row, field.name) for field in fields(row)]
    flat = [one for value in values for one in (value if isinstance(value, tuple) else (value,))]
    return [one for one in flat if one is None or isinstance(one, Figure)]


def test_a_table_fits_a_page():
    """At most 26 rows, and no more than seven figures beside the pitch."""
    for table in ALL_BY_PITCH:
        rows = table(BOOK)
        assert len(rows) <= 26
        assert 1 <= len(_cells(rows[0])) <= 7


def test_cells_are_the_finished_text():
    row = hip.hip_rows(replace(BOOK, pitches=(pitch('8'),)))[0]

    assert cells(row) == {
        'pitch': '8 in 12',
        'plumb_cut': '25.24°',
        'level_cut': '64.76°',
        'per_foot': '18.762',
        'backing_bevel': '23.09°',
        'drop_plumb': '3/8',
        'drop_square_to_edge': '5/16',
    }


@pytest.mark.parametrize('table', EVERY, ids=lambda table: table.key)
def test_no_two_columns_of_a_table_bear_one_name(table):
    """On the page, and in data."""
    names = next(table_data(table.rows(BOOK), table.names()))

    assert len(set(table.heads)) == len(table.heads)
    assert len(set(names)) == len(names)
    assert not [name for name in names if re.search(r'_\d+_(inches|degrees)$', name)]  # numbered


@pytest.mark.parametrize(
    ('key', 'names'),
    [
        ('drop-plumb', {'drop_3_4_in_inches', 'drop_1_1_2_in_inches', 'drop_1_1_2_in_text'}),
        ('diagonals-2', {'diagonal_width_18_ft_text'}),
        ('jacks', {'difference_19_2_in_text', 'off_at_ridge_inches'}),
        ('tail-plumb-cut', {'plumb_cut_2x10_inches'}),
        ('ridge-ends', {'end_common_with_hip_3_1_2_in_inches'}),
        ('braces', {'other_leg_36_in_text', 'cut_other_leg_36_in_degrees'}),
        ('whole-triangles', {'times_2'}),
        ('pitch-to-degrees', {'gap_24_in_level_inches'}),
    ],
)
def test_a_column_of_data_says_what_it_is_for(key, names):
    table = next(one for one in EVERY if one.key == key)

    assert names <= set(next(table_data(table.rows(BOOK), table.names())))


def test_small_lengths_stay_in_inches_in_a_book_of_feet():
    """A deduction is read from the tape's inches; a diagonal is as long as the roof."""
    feet = replace(BOOK, measure=Measure(16, 'feet-inches'))

    assert tail.common_rows(feet)[7].tail_overhang[-1].text == '28 7/8'
    assert setting_out.diagonal_rows(feet, 0)[0].diagonal_width[0].text == '5′ 7 7/8″'


def test_pitches_in_degrees_have_rows():
    rows = cheeks.cheek_rows(replace(BOOK, pitches=(pitch('26.565 deg'), pitch('30 deg'))))

    assert [row.jack_side.text for row in rows] == ['26.57°', '30.00°']
    assert isinstance(rows[0].pitch, Pitch)
    is_nearest(rows[1].jack_top_12_and, 12 * cos(pi / 6))
    is_nearest(rows[1].hip_side, degrees(acos(1 / sqrt(1 + tan(pi / 6) ** 2 / 2))))


@pytest.mark.parametrize('table', EVERY, ids=lambda table: table.key)
def test_a_table_has_a_head_for_each_cell(table):
    rows = table.rows(BOOK)

    assert rows
    assert all(len(cells(row)) == len(table.heads) for row in rows)
    assert table.title
    assert table.line


def test_every_group_has_tables_and_they_stand_together():
    groups = [table.group for table in EVERY]

    assert tuple(dict.fromkeys(groups)) == tables.GROUPS
    assert groups == sorted(groups, key=tables.GROUPS.index)
    assert set(tables.HOUSE_GROUPS) < set(tables.GROUPS)


def test_no_two_tables_have_one_name():
    assert len({table.key for table in EVERY}) == len({table.title for table in EVERY}) == len(EVERY)
    assert all(re.fullmatch(r'[a-z0-9-]+', table.key) for table in EVERY)


def test_every_module_of_tables_is_listed():
    """Each function that returns rows is some table's."""
    listed = {getattr(table.rows, 'func', table.rows) for table in EVERY}
    modules = {
        cheeks,
        finding_pitch,
        gable,
        hip,
        hip_seat,
        jacks,
        longest_seat,
        many_sided,
        ridge,
        seat,
        setting_out,
        tail,
        trim,
        unequal,
        unequal_ends,
    }
    made = {
        function
        for module in modules
        for name, function in vars(module).items()
        if name.endswith('_rows') and not name.startswith('_')
    }

    assert made - listed == {setting_out.triangle_rows}  # it needs no settings: a table wraps it
