"""The shape of reference tables: columns that run one way, pages that hold them, names and words."""

import re
from fractions import Fraction
from itertools import pairwise

import pytest
from mpmath import acos, cos, degrees, pi, sqrt, tan
from msgspec import Struct
from msgspec.structs import replace
from printed import BOOK, is_nearest, rows_of

from layouts.words.datum import datum_of
from layouts.words.messages import words_of
from layouts.words.say import say
from tablegen.geometry.pitch import Pitch
from tablegen.groups import GROUPS, HOUSE_GROUPS
from tablegen.messages import Message
from tablegen.numbers.figure import Figure, Measure
from tablegen.tables.table import MARKS, Kind
from tablegen.tables.tables import every_table, tables
from tablegen.written.pitches import pitch
from tablegen.written.stocks import stock

EVERY = tables(BOOK)
HOUSE = [one for one in EVERY if one.group in HOUSE_GROUPS]
ONE_WAY = [
    one for one in HOUSE if one.stubs == 1 and one.columns[0].kind == Kind.PITCH and one.group != 'seat'
]
KINDS = {
    Kind.PITCH: Pitch,
    Kind.LENGTH: (Figure, Fraction),
    Kind.DECIMAL: Figure,
    Kind.DEGREES: Figure,
    Kind.COUNT: int,
    Kind.WORD: Message,
}


def key_of(table):
    return table.key


@pytest.mark.parametrize('table', [*ONE_WAY, *(one for one in EVERY if 'longest' in one.key)], ids=key_of)
def test_columns_run_one_way(table):
    """A misplaced figure breaks the run of its column: each only grows, or only shrinks, with the pitch."""
    for cells in list(zip(*(row.cells for row in table.rows()), strict=True))[1:]:
        column = [one.count for one in cells if one is not None]
        steps = [high - low for low, high in pairwise(column)]
        assert all(step >= 0 for step in steps) or all(step <= 0 for step in steps)


@pytest.mark.parametrize('table', ONE_WAY, ids=key_of)
def test_a_table_fits_a_page(table):
    """No more than seven figures beside the pitch."""
    assert 1 < len(table.columns) <= 8


@pytest.mark.parametrize('table', EVERY, ids=key_of)
def test_cells_are_what_their_columns_say(table):
    """Of the column's kind and unit, marks by name, and only beside a figure."""
    rows = list(table.rows())

    assert rows
    for row in rows:
        for column, cell, marks in zip(table.columns, row.cells, row.marks, strict=True):
            assert cell is None or isinstance(cell, KINDS[column.kind])
            assert not isinstance(cell, Figure) or cell.unit == column.unit
            assert not isinstance(cell, Figure) or (cell.parts.decimals == '') == (column.kind == Kind.LENGTH)
            assert set(marks) <= set(MARKS if column.marks and cell is not None else ())


@pytest.mark.parametrize('table', EVERY, ids=key_of)
def test_a_table_says_what_it_is(table):
    """Title, heads and notes have words; every figure says from where to where it is; no two columns bear one name."""
    heads, keys = [say(column.head) for column in table.columns], [column.key for column in table.columns]

    assert len(set(heads)) == len(set(keys)) == len(table.columns)
    assert not [key for key in keys if not re.fullmatch(r'[a-z][a-z0-9]*(_[a-z0-9]+)*', key)]
    assert all(map(say, (table.title, *table.notes)))
    assert all(
        datum_of(table, [column]).strip(',;: ') == datum_of(table, [column]) != ''
        for column in table.columns[table.stubs :]
    )


@pytest.mark.parametrize(
    ('key', 'names'),
    [
        ('drop-plumb', {'drop_3_4_in', 'drop_1_1_2_in'}),
        ('diagonals-2', {'diagonal_width_18_ft'}),
        ('jacks', {'difference_19_2_in', 'off_at_ridge'}),
        ('height-3-1-2', {'height_2x8'}),
        ('tail-plumb-cut', {'plumb_cut_2x10'}),
        ('ridge-ends', {'end_common_with_hip_3_1_2_in'}),
        ('braces', {'other_leg_36_in', 'cut_other_leg_36_in'}),
        ('whole-triangles', {'times_2'}),
        ('pitch-to-degrees', {'gap_on_level_24_in'}),
    ],
)
def test_a_column_says_what_it_is_for(key, names):
    table = next(one for one in EVERY if one.key == key)

    assert names <= {column.key for column in table.columns}


def test_spacings_in_metric_are_named_so():
    """400 mm is 15.748 in, on no tape."""
    metric = replace(BOOK, spacings=(Fraction(400) / Fraction(254, 10),))
    table = next(one for one in tables(metric) if one.key == 'jacks')

    assert table.columns[1].key == 'difference_400_mm'


def test_one_cell_is_looked_up_by_its_names():
    """Source: t/2 · 8/√288 = 0.354, the nearest sixteenth 3/8."""
    table = next(one for one in EVERY if one.key == 'drop-plumb')

    assert table.cell('drop_1_1_2_in', pitch('8')).text == '3/8'
    assert table.cell('drop_1_1_2_in', pitch('7 1/2')) is None
    with pytest.raises(KeyError, match='drop_2_in'):
        table.cell('drop_2_in', pitch('8'))


def test_small_lengths_stay_in_inches_in_a_book_of_feet():
    """A deduction is read from the tape's inches; a diagonal is as long as the roof."""
    feet = replace(BOOK, measure=Measure(16, 'feet-inches'))

    assert rows_of('tail-common', feet)[7].tail_overhang[-1].text == '28 7/8'
    assert rows_of('diagonals-1', feet)[0].diagonal_width[0].text == '5′ 7 7/8″'


def test_pitches_in_degrees_have_rows():
    rows = rows_of('cheeks', replace(BOOK, pitches=(pitch('26.565 deg'), pitch('30 deg'))))

    assert [row.jack_side.text for row in rows] == ['26.57°', '30.00°']
    is_nearest(rows[1].jack_top_12_and, 12 * cos(pi / 6))
    is_nearest(rows[1].hip_side, degrees(acos(1 / sqrt(1 + tan(pi / 6) ** 2 / 2))))


def test_every_group_has_tables_and_they_stand_together():
    groups = [table.group for table in EVERY]

    assert tuple(dict.fromkeys(groups)) == GROUPS
    assert groups == sorted(groups, key=GROUPS.index)
    assert set(HOUSE_GROUPS) < set(GROUPS)


def test_every_word_of_the_catalogue_is_some_tables():
    """Over books in inches, in feet, and of pitches in degrees."""
    feet = replace(BOOK, measure=Measure(16, 'feet-inches'), hips=stock('2×10'))
    degrees_ = replace(BOOK, pitches=(pitch('30 deg'),))
    used = {
        name
        for settings in (BOOK, feet, degrees_)
        for table in every_table(settings)
        for name in names_in(
            [table, *(row.cells for row in table.rows() if table.key not in ('runs', 'jack-lengths'))]
        )
    }

    known = {f'{room}.{name}' for room in ('datum', 'head', 'note', 'table') for name in words_of(room)}
    assert known - used == {'table.part'}


def names_in(found):
    """Return the names of all messages in a record, and in what it holds."""
    if isinstance(found, Message):
        yield found.name
        found = [value for _, value in found.values]
    elif isinstance(found, Struct) and not isinstance(found, (Figure, Pitch)):
        found = [getattr(found, name) for name in found.__struct_fields__]
    for one in found if isinstance(found, (list, tuple)) else ():
        yield from names_in(one)


def test_no_two_tables_have_one_name():
    assert len({table.key for table in EVERY}) == len({say(table.title) for table in EVERY}) == len(EVERY)
    assert all(re.fullmatch(r'[a-z0-9-]+', table.key) for table in EVERY)
