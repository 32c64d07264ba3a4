"""The pages before the tables, read as printed: cautions with their clauses, a length found where it is said to be."""

from __future__ import annotations

import re
import tomllib
from fractions import Fraction
from pathlib import Path

import pytest
from check_support import real, rounded
from inked import drawings_on
from mpmath import mpf, sqrt
from pages_alone import LENGTHS, inches, printed

from layouts.drawings import svg
from layouts.pages.book import plan
from tablegen.numbers import text
from tablegen.settings import read_settings

CODE = Path(__file__).parent / 'authorities' / 'residential-code.toml'
ROWS = {row['id']: row for row in tomllib.loads(CODE.read_text('utf-8'))['value']}
OF_THE_PAGE = {
    '4-code-005': 'Under 3 in 12',
    '4-code-013': 'less than 1 1/2 in of wood or metal',
    '4-code-014': 'on masonry or concrete 3 in',
    '4-code-018': 'more than a quarter of the depth',
    '4-code-021': '4 in nominal',
    '4-code-022': 'Less than 3 1/2 in of stock',
    '4-code-023': 'more than 24 in',
}
"""Facts of the code, and the words in which the page of cautions has each."""


@pytest.fixture(scope='module')
def cautions(small_book) -> str:
    return ' '.join(word.text for word in small_book.words[1])


def items(words: str) -> list[str]:
    return [item.strip() for item in words.split('•')]


@pytest.mark.parametrize('row', OF_THE_PAGE)
def test_a_limit_stands_with_its_clause(cautions, row):
    """Every edition and clause that the source of the fact names, and 'from memory' where it is."""
    (item,) = [item for item in items(cautions) if OF_THE_PAGE[row] in item]
    source = re.sub(r'quoted in \d+', '', ROWS[row]['source'])  # a year of the source's own, no edition
    clauses, editions = re.findall(r'R\d+(?:\.\d+)*', source), re.findall(r'\b20\d\d\b', source)

    assert clauses
    assert {*clauses, *editions} <= set(re.findall(r'R\d+(?:\.\d+)*|\b20\d\d\b', item))
    assert ('from memory' in item) >= ROWS[row].get('from_memory', False)


def test_no_pitch_is_called_safe_and_the_hand_saw_comes_first(small_book, cautions):
    (cheek,) = [item for item in items(cautions) if 'hand saw' in item]
    page = int(re.search(r'page (\d+)', cheek)[1])

    assert 'safe' not in cautions
    assert cheek.index('hand saw') < cheek.index('circular saw')
    assert small_book.pages[page - 1].template == 'ref_past_scale'


def test_without_its_page_the_circular_saw_is_not_spoken_of(tmp_path):
    (words,) = printed('pitches = [6]\nparts = ["values"]', 'cautions', folder=tmp_path)

    assert 'hand saw' in words
    assert not re.search(r'circular saw|page \d', words)


# How to find a length --------------------------------------------------------------------------------------------

BOOK = 'pitches = [8]\nruns = {to = "12 ft"}\n'


@pytest.mark.parametrize('table', LENGTHS)
@pytest.mark.parametrize('style_of_lengths', text.STYLES)
def test_the_length_that_is_looked_up_is_that_of_its_name(tmp_path, table, style_of_lengths):
    written = f'{BOOK}lengths = "{style_of_lengths}"\nparts = ["how-to", "{table}"]'
    (words,) = printed(written, 'reading', folder=tmp_path)
    name, length = LENGTHS[table]
    run = inches(re.search(r'Take 8 in 12 and a run of (.*?)\. Turn', words)[1])
    odd, *steps = re.search(r'For ([\w /]+), add .* facing it: (.*) Each figure', words).groups()

    def figure(one: Fraction) -> str:
        said = text.length(
            rounded(length(mpf(one.numerator) / one.denominator, 8), 16), 16, style_of_lengths
        ).text
        return said if style_of_lengths == 'feet-inches' else f'{said} in'

    assert f'The {name} is {figure(run)}, ' in words
    assert (
        f'{text.run(run)} {figure(run)} {text.run(inches(odd) - run)} {figure(inches(odd) - run)}' in steps[0]
    )
    assert inches(odd) - run == Fraction(5, 16)
    total = rounded(length(real(run), 8), 16) + rounded(length(real(Fraction(5, 16)), 8), 16)
    shown = text.length(total, 16, style_of_lengths).text
    assert f'{odd} {shown}' in steps[0]


def test_the_page_named_has_the_row_and_the_figure(small_book):
    """Turned to, the page has the figure in the row of its feet."""
    number = small_book.planned.index['reading']
    words = ' '.join(' '.join(small_book.lines[number - 1]).split())
    feet, odd, page = re.search(r'a run of (\d+) ft (\d+) in\. Turn to page (\d+)', words).groups()
    figure = text.mixed(rounded((12 * int(feet) + int(odd)) * sqrt(real(180)) / 12, 16), 16)
    lines = [' '.join(line.split()) for line in small_book.lines[int(page) - 1]]

    assert f'is {figure} in' in words
    assert [line for line in lines if line.startswith(f'{feet} ') and f' {figure} ' in f'{line} ']


@pytest.mark.parametrize('style_of_lengths', text.STYLES)
def test_a_length_is_added_up_on_an_opening_and_had_exactly_by_the_exact_foot(tmp_path, style_of_lengths):
    """4 ft 7 3/8 in at 7 in 12: three rows, their sum, and the length of a foot times the run, each worked out again."""
    written = (
        f'edition = "compact"\npitches = [3, 7]\nlengths = "{style_of_lengths}"\nruns = {{to = "12 ft"}}'
    )
    planned = plan(read_settings(written, ''))
    ((words, drawings),) = [
        (printed(written, 'reading', folder=tmp_path)[0], drawings_on(planned.pages()[place]))
        for place, draft in enumerate(planned.drafts)
        if draft.key == 'reading'
    ]
    length = LENGTHS['common'][1]
    runs = {'4 ft': Fraction(48), '7 in': Fraction(7), '3/8 in': Fraction(3, 8)}
    counts = {name: rounded(length(real(run), 7), 16) for name, run in runs.items()}

    def said(count: int) -> str:
        return text.length(count, 16, style_of_lengths).text

    unit = '' if style_of_lengths == 'feet-inches' else ' in'
    assert re.search(r'^Read it, add it up Start 7 in 12, run 4 ft 7 3/8 in: turn to page (\d+) ', words)[
        1
    ] == str(planned.index['opening:7 in 12'])
    for name, count in counts.items():
        assert f'{name} {said(count)}{unit}' in words
    assert f'4 ft 7 3/8 in {said(sum(counts.values()))}{unit} The line length' in words
    foot, run = f'{float(length(real(Fraction(12)), 7)):.4f}', Fraction(443, 8)
    exact = f'{float(run / 12 * Fraction(foot)):.3f}'
    past = f'0.{exact.partition(".")[2]}'
    whole = rounded(length(real(run), 7), 16)
    assert (
        f'55.375 ÷ 12 × {foot} = {exact}. Past whole inches, {past} × 16 is nearest to {whole % 16}: '
        in words
    )
    assert f'is nearest to {whole % 16}: {said(whole)}{unit}.' in words

    (rows,) = drawings
    assert rows.collisions() == []
    framed = [box.points for box in rows.drawn.outlines(svg.HEAVY)]
    inside_of = [
        [
            one
            for one in rows.labels
            if box[0][0] < one.at[0] < box[1][0] and box[0][1] < one.at[1] < box[2][1]
        ]
        for box in framed
    ]
    assert [one.text for (one,) in inside_of] == [said(count) for count in counts.values()]
    for (one,), name in zip(inside_of, ('4', '7', '3/8'), strict=True):
        in_row = [label for label in rows.labels if label.at[1] == one.at[1] and label.at[0] < one.at[0]]
        assert max(in_row, key=lambda label: label.at[0]).text == name
        heads = [label for label in rows.labels if label.at[0] == one.at[0] and label.at[1] < one.at[1]]
        assert not heads or min(heads, key=lambda label: label.at[1]).text == 'common'
