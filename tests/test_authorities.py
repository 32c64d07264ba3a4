"""Printed sources: every row is checked at its printed precision, listed as differing, or said to be no quantity."""

import re
from collections import Counter
from fractions import Fraction
from pathlib import Path

import pytest
from authority_differences import CUT, DIFFERENCES, MISPRINT, PRODUCT, reason_holds
from authority_examples import NOT_COMPUTED, example_readings
from authority_tables import FOLDER, TABLES, all_ids, in_degrees, load, mixed, rows, table_readings

from tablegen.geometry import corner
from tablegen.numbers import text
from tablegen.numbers.angles import Angle, degrees_count
from tablegen.numbers.exact import Exact, nearest
from tablegen.written.pitches import pitch

TOP = Path(__file__).resolve().parent.parent
ROWS_IN = {
    'army-en0069.toml': 16,
    'engraved-figures.toml': 34,
    'griffith-1916-examples.toml': 15,
    'griffith-1916-fig49.toml': 126,
    'griffith-1916-fig60.toml': 74,
    'navedtra-14044.toml': 24,
}
WORKS = {
    'army-en0069.toml': r'Subcourse EN0069|Subcourse EN5156',
    'engraved-figures.toml': r'customary engraved figures, no document at hand',
    'griffith-1916-examples.toml': r'"Carpentry", Manual Arts Press, Peoria, 1916',
    'griffith-1916-fig49.toml': r'"Carpentry", Manual Arts Press, Peoria, 1916.*Fig\. 49',
    'griffith-1916-fig60.toml': r'"Carpentry", Manual Arts Press, Peoria, 1916.*Fig\. 60',
    'navedtra-14044.toml': r'NAVEDTRA 14044 \(US Navy, 1990s\)',
}
PLACE = re.compile(r'\bp\. \d|\bsec\. \d|\bFig\. \d|\bAppendix [IV]|\blesson \d|\bch\. \d|Gutenberg eBook \d')
READINGS = [*table_readings(), *example_readings()]
LISTED = {(one.row, one.theirs): one for one in DIFFERENCES}


def our_text(ours: Exact | Angle) -> str:
    if isinstance(ours, Angle):
        return text.degree_parts(degrees_count(ours, 2), 2).text
    return text.decimal(nearest(ours, 1000), 3)


@pytest.mark.parametrize('reading', READINGS, ids=lambda one: f'{one.row} {one.piece}')
def test_a_printed_value_is_ours_to_half_its_last_place_or_is_listed(reading):
    """Neither is there room for a listed difference that has gone, nor for one that is not listed."""
    listed = LISTED.get((reading.row, reading.piece))

    assert reading.agrees() == (listed is None)
    assert listed is None or our_text(reading.ours) == listed.ours


@pytest.mark.parametrize('difference', DIFFERENCES, ids=lambda one: f'{one.row} {one.theirs}')
def test_a_difference_is_real_and_its_reason_holds(difference):
    (reading,) = (one for one in READINGS if (one.row, one.piece) == (difference.row, difference.theirs))
    steps = Fraction(nearest(in_degrees(reading.ours), 10**12), 10**12) / reading.step

    assert reading.theirs != nearest(steps, 1) * reading.step
    assert reason_holds(difference.why, reading.theirs, steps, reading.step)
    if difference.why.startswith(PRODUCT):
        first, second = difference.product
        slack = reading.step if 'cut off' in difference.why else reading.step / 2
        assert abs(mixed(first) * mixed(second) - reading.theirs) <= slack
    if difference.why.startswith(MISPRINT):
        assert rows()[difference.row]['note'].startswith('MISPRINT')


def test_every_row_is_checked_listed_or_no_quantity():
    read = {reading.row for reading in READINGS}

    assert read | set(NOT_COMPUTED) == set(rows())
    assert not read & set(NOT_COMPUTED)
    assert {row for row, _ in LISTED} <= read


def test_nothing_is_read_or_listed_twice():
    assert max(Counter((reading.row, reading.piece) for reading in READINGS).values()) == 1
    assert len(LISTED) == len(DIFFERENCES)


def test_enough_rows_were_found():
    files = load()

    assert {name: len(file['value']) for name, file in files.items()} == ROWS_IN
    assert len(rows()) == sum(ROWS_IN.values())
    assert len(table_readings()) == 234
    assert {row['quantity'] for row in rows().values()} >= set(TABLES)


def test_a_row_that_its_file_calls_wrong_or_coarse_is_listed():
    """A status never widens anything: rounding, off, misprint and the like stand on the list."""
    marked = {row['id'] for row in rows().values() if row['status'] not in ('ok', 'fact')}

    assert marked
    assert marked <= {one.row for one in DIFFERENCES}


def test_a_fact_is_no_quantity():
    assert {row['id'] for row in rows().values() if row['status'] == 'fact'} <= set(NOT_COMPUTED)


@pytest.mark.parametrize('reading', READINGS, ids=lambda one: f'{one.row} {one.piece}')
def test_what_is_compared_stands_in_the_row(reading):
    """The piece is in the printed text, and in a table its value is the one that the file gives for it."""
    row = rows()[reading.row]

    assert reading.piece in row['printed']
    if row['quantity'] in TABLES:
        assert abs(reading.theirs - row['value']) <= Fraction(1, 200_000)


@pytest.mark.parametrize('name', ROWS_IN)
def test_every_row_cites_its_work_and_the_place_in_it(name):
    file = load()[name]

    assert file['title']
    assert file['part']
    for row in file['value']:
        assert re.search(WORKS[name], row['source'])
        assert PLACE.search(row['source']) or row.get('from_memory')


def test_every_file_and_row_that_is_cited_exists():
    """Sources, tests and papers of the project are read for the names of authority files and the ids of rows."""
    cited_files, cited_rows = set(), set()
    for folder in ('tablegen', 'layouts', 'tests', '.'):
        pattern = '*' if folder == '.' else '**/*'
        for path in TOP.joinpath(folder).glob(pattern):
            if path.suffix in ('.py', '.md', '.html') and path.is_file():
                words = path.read_text('utf-8')
                cited_files |= set(
                    re.findall(
                        r'\b(?:army|engraved|griffith|hb44|navedtra|ps20|residential)[a-z0-9-]*\.toml', words
                    )
                )
                cited_rows |= set(re.findall(r"'(\d-(?:table|example|special|code|accuracy)-\d{3})'", words))

    assert cited_files == {path.name for path in FOLDER.iterdir()}
    assert len(cited_rows) > 50
    assert cited_rows <= all_ids()


def test_no_hip_length_of_fig60_was_worked_with_17():
    """The table is low where it is off, and 17 in place of √288 would make it high; so 17 is no reason for it."""
    for difference in DIFFERENCES:
        row = rows()[difference.row]
        if row['quantity'] == 'length of hip/valley per foot of run of common rafter':
            rise = row['given']['rise_per_ft']
            with_17 = corner.hip_length(Fraction(12), pitch(rise).corner).squared() - 288 + 17**2
            assert mixed(difference.theirs) ** 2 < with_17 - 1


def test_a_wrong_value_would_be_refused():
    """The comparison itself: half a last place passes, the least beyond it does not."""
    reading = next(one for one in READINGS if one.row == '1-table-100')
    beyond = [reading.theirs + side * Fraction(n, 1000) for side in (1, -1) for n in (0, 10)]

    assert [type(reading)(reading.row, '', one, reading.ours, reading.step).agrees() for one in beyond] == [
        True,
        False,
        True,
        False,
    ]
    assert reason_holds(CUT, Fraction(1743, 100), Fraction(17435, 10), Fraction(1, 100))
    assert not reason_holds(CUT, Fraction(1744, 100), Fraction(17435, 10), Fraction(1, 100))
    assert not reason_holds('', Fraction(0), Fraction(0), Fraction(1))
    assert reason_holds(PRODUCT, Fraction(0), Fraction(0), Fraction(1))
