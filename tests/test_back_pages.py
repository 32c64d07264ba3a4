"""The pages after the tables, and what is said once more: every figure worked out again, every page turned to."""

from __future__ import annotations

import re

import pytest
from check_support import authority, real, rounded
from mpmath import atan, degrees, mpf, sqrt
from pages_alone import LENGTHS, inches, printed
from printed_words import told

from layouts.html.page_html import pages_html
from layouts.pages.book import plan
from tablegen.numbers import text
from tablegen.settings import read_settings

NAMES = {'common': 'common', 'hip-valley': 'hip, valley', 'rise': 'rise'}


@pytest.mark.parametrize('table', LENGTHS)
def test_the_sum_is_one_of_the_books_tables_and_a_part_off(tmp_path, table):
    """Two figures as they are rounded, their sum, and the true length rounded once."""
    printed(f'pitches = [4, 9]\nparts = ["{table}"]', 'numbers', folder=tmp_path)
    lines = told('pdftotext', '-layout', tmp_path / 'pages.pdf', '-').splitlines()
    rows = dict(re.split(r'\s{3,}', line.strip()) for line in lines if re.search(r'\S\s{3,}\S.* in$', line))
    runs = [label.partition(', run ')[2] for label in rows if ', run ' in label]
    name, length = NAMES[table], LENGTHS[table][1]

    def sixteenths(run) -> int:
        return rounded(length(real(run), 4), 16)

    each = [sixteenths(inches(run)) for run in runs]
    once = sixteenths(sum(map(inches, runs)))
    assert abs(sum(each) - once) == 1
    assert rows == {
        f'{name}, run {runs[0]}': f'{text.mixed(each[0], 16)} in',
        f'{name}, run {runs[1]}': f'{text.mixed(each[1], 16)} in',
        'sum': f'{text.mixed(sum(each), 16)} in',
        'true, rounded once': f'{text.mixed(once, 16)} in',
    }


def test_seventeen_is_too_long_by_what_is_said(tmp_path):
    """Twelve steps at 8 in 12, of √(17² + 8²) and of √(288 + 8²)."""
    (words,) = printed('pitches = [4]\nparts = ["values"]', 'rounded', folder=tmp_path)
    over = 12 * (sqrt(mpf(289 + 64)) - sqrt(mpf(288 + 64)))

    assert f'by {text.decimal(rounded(over, 1000), 3)} in over twelve steps at 8 in 12' in words
    assert f'√288, {text.decimal(rounded(sqrt(mpf(288)), 1000), 3)} in' in words
    assert 'At 4 in 12' not in words
    assert not re.search(r'page \d', words)


def test_the_page_of_drift_is_named_and_is_there(small_book):
    words = ' '.join(small_book.lines[small_book.planned.index['numbers'] - 1])
    number = int(re.search(r'page\s+(\d+)', words)[1])

    assert 'What the steps add up to' in ' '.join(small_book.lines[number - 1])


def test_differences_of_sources_are_told_as_the_sources_print_them(small_book):
    words = ' '.join(' '.join(small_book.lines[small_book.planned.index['checked'] - 1]).split())
    (hip,) = [row for row in authority('griffith-1916-fig60.toml') if row['printed'] == '24.72']
    (angle,) = [row for row in authority('griffith-1916-examples.toml') if row['printed'] == '25 deg 19 min']
    rise = hip['given']['rise_per_ft']
    exact = text.decimal(rounded(sqrt(mpf(288 + rise**2)), 1000), 3)
    minutes = rounded(60 * degrees(atan(mpf(angle['given']['blade']) / angle['given']['tongue'])), 1)

    assert f'{hip["printed"]} in for a foot of hip at {rise} in 12, where {exact} is exact' in words
    assert f'25° 19′ for {minutes // 60}° {minutes % 60}′' in words


CLOSING = ('level, from the outside of the plate to the ridge center line', 'level, toward the tail')


@pytest.mark.parametrize(
    ('part', 'hips', 'cheeks'), [('rise', False, False), ('values', True, True), ('hip-valley', True, False)]
)
def test_what_is_said_once_more_is_of_what_the_book_has(part, hips, cheeks):
    planned = plan(read_settings(f'pitches = [6]\nparts = ["{part}"]', ''))
    words = ' '.join(re.sub(r'<[^>]*>', '', pages_html([planned.pages()[-1]], '')).split())

    assert all(said in words for said in CLOSING)
    assert ('Figures of hips go by the common’s run' in words) == hips
    assert ('Cheeks on the top edge: from square across' in words) == cheeks
