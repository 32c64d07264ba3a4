"""Looking a run up: which lines a reader adds, and that the sum is off by a part at most for each."""

from fractions import Fraction

import pytest
from complete import complete
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace
from strategies import parts, rises, runs
from table_rows import run_row

from tablegen.geometry.pitch import pitch_of_rise
from tablegen.numbers.figure import Measure
from tablegen.settings import Runs, Settings
from tablegen.tables.lookup import addends, look_up
from tablegen.tables.runs import part_runs
from tablegen.written.pitches import pitch

BOOK = complete()
TABLES = ('common', 'hip-valley', 'rise')


def book(first, last, step) -> Settings:
    return complete(runs=Runs(Fraction(first), Fraction(last), Fraction(step)))


@pytest.mark.parametrize(
    ('runs_of_book', 'run', 'expected'),
    [
        ((1, 288, 1), '48', ['48']),
        ((1, 288, 1), '1', ['1']),
        ((1, 288, 1), '288', ['288']),
        ((1, 288, 1), '429/8', ['53', '5/8']),
        ((1, 288, 1), '11/16', ['11/16']),
        ((1, 288, 1), '4623/16', ['288', '15/16']),
        ((1, 288, 1), '289', None),
        ((1, 288, 1), '1/32', None),
        ((1, 288, 1), '96/5', None),
        ((6, 288, 6), '67', ['66', '1']),
        ((6, 288, 6), '1135/16', ['66', '4', '15/16']),
        ((6, 288, 6), '5', ['5']),
        ((6, 288, 6), '85/16', ['5', '5/16']),
        ((6, 288, 6), '4703/16', ['288', '5', '15/16']),
        ((6, 288, 6), '294', None),
        ((1, '21/2', 3), '43/4', ['10', '3/4']),
        ((1, '21/2', 3), '12', ['10', '2']),
        ((1, '21/2', 3), '13', None),
        (('1/2', 20, '1/2'), '73/8', ['9', '1/8']),
        ((12, 288, 24), '35', ['12', None]),
    ],
)
def test_the_lines_to_add(runs_of_book, run, expected):
    """The longest tabled run that is not past it, then whole inches, then sixteenths; None if it cannot be had."""
    found = addends(Fraction(run), book(*runs_of_book))

    if expected and expected[-1] is None:
        assert found is None
    else:
        assert found == (expected and [Fraction(one) for one in expected])


@given(
    st.integers(1, 24).map(Fraction),
    st.integers(1, 48).map(lambda n: Fraction(n, 4)),
    st.integers(1, 60),
    st.integers(0, 15),
    st.integers(1, 200 * 64).map(lambda n: Fraction(n, 64)),
    parts(),
)
def test_every_line_stands_in_the_book_and_they_add_up(first, step, count, past, run, per):
    settings = complete(runs=Runs(first, first + count * step + past * step / 16, step), measure=Measure(per))
    wanted = addends(run, settings)

    if wanted is not None:
        tabled = set(settings.runs)
        small = set(part_runs(settings.runs, settings.measure.per))
        assert sum(wanted) == run
        assert wanted[0] in tabled | small
        assert set(wanted[1:]) <= small
        assert len(wanted) <= (3 if settings.measure.per <= 16 else 4)


@given(st.integers(1, 289 * 64 - 1), parts())
def test_every_run_to_its_smallest_part_can_be_had_from_a_book(count, per):
    """To a sixteenth at least: nothing finer than the book shows, and all that it shows."""
    run, found = Fraction(count, 64), addends(Fraction(count, 64), complete(measure=Measure(per)))

    assert (found is None) == ((run * max(per, 16)).denominator != 1)
    assert found is None or sum(found) == run


@given(st.sampled_from(TABLES), rises(), st.integers(1, 289 * 64 - 1), st.sampled_from([32, 64]))
def test_a_sum_of_three_is_off_by_one_part_at_most(table, rise, count, per):
    """Half a part each, and half for the direct figure, make less than two; of four readings less than three."""
    count -= count % (64 // per)
    for runs_of_book, most in (((1, 288, 1), 1), ((6, 288, 6), 2)):
        settings = replace(book(*runs_of_book), measure=Measure(per))
        found = look_up(table, Fraction(count or 64, 64), pitch_of_rise(rise), settings)

        assert abs(found.total.count - found.direct.count) <= (0 if len(found.readings) == 1 else most)


@given(st.sampled_from(TABLES), rises(), runs().map(lambda run: min(run, Fraction(288))))
def test_a_sum_is_off_by_one_part_at_most(table, rise, run):
    """Each reading is off by half a part at most, and so is the direct figure: hence the book's warning."""
    found = look_up(table, run - run % Fraction(1, 16) + Fraction(1, 16), pitch_of_rise(rise), BOOK)

    assert found.total.count == sum(reading.figure.count for reading in found.readings)
    assert abs(found.total.count - found.direct.count) <= (0 if len(found.readings) == 1 else 1)


def test_a_reading_is_the_figure_of_the_table():
    found = look_up('common', Fraction(429, 8), pitch('4'), BOOK)

    assert [(reading.run_in, reading.added) for reading in found.readings] == [
        (53, False),
        (Fraction(5, 8), True),
    ]
    assert found.readings[0].figure == run_row(pitch('4'), Fraction(53), BOOK.measure).common
    assert [reading.figure.text for reading in found.readings] == ['55 7/8', '11/16']
    assert (found.total.text, found.direct.text) == ('56 9/16', '56 1/2')


@pytest.mark.parametrize(
    ('run', 'added'),
    [
        ('66', [False]),
        ('67', [False, True]),
        ('1135/16', [False, True, True]),
        ('5', [True]),
        ('11/16', [True]),
    ],
)
def test_a_reading_says_whether_it_is_from_the_small_runs(run, added):
    found = look_up('rise', Fraction(run), pitch('6'), book(6, 288, 6))

    assert [reading.added for reading in found.readings] == added


@given(rises(), st.integers(1, 288 * 16))
def test_three_readings_are_still_off_by_one_part_at_most(rise, sixteenths):
    """Four roundings of under half a part make less than two parts, so a whole number of them is at most one."""
    found = look_up('common', Fraction(sixteenths, 16), pitch_of_rise(rise), book(6, 288, 6))

    assert abs(found.total.count - found.direct.count) <= 1


def test_each_table_has_its_own_length():
    row = run_row(pitch('8'), Fraction(75), BOOK.measure)

    totals = [look_up(table, Fraction(75), pitch('8'), BOOK).total for table in TABLES]
    assert totals == [row.common, row.hip_valley, row.rise]


def test_a_run_out_of_reach_is_not_found():
    assert look_up('common', Fraction(300), pitch('6'), BOOK) is None
