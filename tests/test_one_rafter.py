"""One rafter, start to finish: its figures against a model in space, its places followed."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from complete import COMPLETE
from drawn import near
from each import some
from headed import lines, said
from oracle import cuts, framing_square, seats, shortening, tails
from oracle.corner import common_length, corner, rise
from oracle.rounding import degrees, part
from printed_words import words_of

from layouts.html.page_html import pages_html, style
from layouts.pages.book import plan
from layouts.pdf.documents import Job
from layouts.pdf.typeset import set_document
from tablegen.settings import read_settings

RUN, OVERHANG = 67, 8
"""Half of 11 ft 2 in, and the store's overhang, in (a case of our own)."""
COMPACT = 'edition = "compact"\n'
BOOKS = {
    'compact': (COMPACT, 6, Fraction(3, 2)),
    'odd': (f'{COMPACT}pitches = ["7 1/2", 9]\nstock = {{ridge = "3/4", rafters = "2x6", seat = "2 1/2"}}', Fraction(15, 2), Fraction(3, 4)),
    'halved': (f'{COMPACT}pitches = [20]', 20, Fraction(3, 2)),
    'fine': (f'{COMPACT}pitches = [5]\nsmallest_part = "1/64"\ntrim = "large"', 5, Fraction(3, 2)),
    'complete': (f'{COMPLETE}pitches = [4, 6]', 6, Fraction(3, 2)),
    'tables alone': ('parts = ["how-to", "common", "rise", "ridge", "seat"]\npitches = [6]', 6, Fraction(3, 2)),
    'short': (f'{COMPLETE}pitches = [6]\nruns = {{to = "9 in"}}', 6, Fraction(3, 2)),
}  # fmt: skip
DISC_REM = 0.78
"""Type of the numbers of steps; those on the drawing are smaller."""
DEPTHS = {'2×8': Fraction(29, 4), '2×6': Fraction(11, 2)}


@pytest.fixture(scope='module', params=BOOKS)
def told(request, tmp_path_factory):
    """Return the steps of a book by number, what is drawn left out, and the settings."""
    written, rise_in, ridge = BOOKS[request.param]
    planned = plan(read_settings(written, ''))
    first = planned.index['one-rafter']
    assert first % 2 == 0
    assert planned.index['seat-cut-try'] == first + 1
    words = typeset(planned, [first, first + 1], tmp_path_factory.mktemp('one'))
    steps = {number: step for page in words for number, step in steps_of(page, planned.trim).items()}
    return request.param, planned, steps, rise_in, ridge


def typeset(planned, numbers, folder):
    """Return the words of some pages, set by themselves."""
    pages = [planned.pages()[number - 1] for number in numbers]
    out = folder / 'pages.pdf'
    set_document(Job(pages_html(pages, 'pages'), style(planned.trim), len(pages), out))
    return words_of(out)


def steps_of(words, trim) -> dict[int, tuple[str, str, str]]:
    """Return words, figure and place of each step by its number, from below the drawing."""
    rem = 10 * trim.unit_pt * 25.4 / 72
    found: dict[int, list] = {}
    edge = min(trim.inner_mm, trim.outer_mm) + 1.2 * rem
    words = [word for word in words if word.base < trim.height_mm - trim.foot_mm]
    discs = [word for word in words if word.left < edge and near(word.size, DISC_REM * rem, 0.01 * rem)]
    for word in sorted(words, key=lambda one: (one.base, one.left)):
        above = [disc for disc in discs if disc.base < word.base + 0.25 * rem]
        if above and word not in discs:
            found.setdefault(int(max(above, key=lambda disc: disc.base).text), []).append(word)
    return {number: parted(some, rem) for number, some in found.items()}


def parted(words, rem) -> tuple[str, str, str]:
    right = max(word.right for word in words)
    figures = [word for word in words if word.size > 0.9 * rem]
    places = [word for word in words if word.size < 0.72 * rem]
    others = [word for word in words if word not in figures and word not in places]
    assert not figures or max(word.right for word in figures) > right - 4
    return tuple(' '.join(said(line) for line in lines(some)) for some in (others, figures, places))


def test_each_figure_is_its_steps(told):
    """Worked out in space from run, overhang, ridge, stock and seat."""
    _name, planned, steps, rise_in, ridge = told
    at, settings = corner(Fraction(rise_in)), planned.settings
    depth, seat, per = DEPTHS[settings.rafters.name], settings.seat, settings.measure.per
    expected = {
        3: part(common_length(at, RUN), per),
        4: part(tails.common_tail(at, OVERHANG), per),
        5: part(shortening.common_at_ridge(at, ridge)[0], per),
        6: part(seats.height_above_plate(at, depth, seat), per),
        7: part(seats.heel(at, seat), per),
        9: degrees(cuts.plumb_cut(at)),
    }
    body, tongue = map(part, framing_square.arms(12, rise(at, 12)))

    assert list(steps) == list(range(1, 11))
    assert {number: steps[number][1] for number in expected} == expected
    assert f'{body} of the body (long arm) and {tongue} of the tongue (short) at the top edge' in steps[2][0]
    assert f'level, {part(seat, per)} long' in steps[7][0]


STEPS = {
    1: ('the crown: it goes up', 'ridge end at your left'),
    2: ('Along the tongue is plumb, along the body level',),
    3: ('From the ridge line along the top edge', 'Draw it plumb'),
    4: ('On from the plate line along the top edge',),
    5: ('from the ridge line toward the tail: level', 'never along the edge'),
    6: ('Down the plate line from the top edge',),
    7: ('to the bottom edge', 'till the body meets corner 6', 'Draw along it: level'),
    8: ('before 5, past 4, in the notch', 'comes out of the waste'),
    9: ('only to corner 6', 'from square across'),
    10: ('Cut two', 'piece of ridge between', 'Write PATTERN on the better'),
}
"""What decides whether a rafter fits, by the step in which it is said."""


def test_the_steps_say_from_where_and_which_way(told):
    steps = told[2]
    for number, wanted in STEPS.items():
        for words in wanted:
            assert words in steps[number][0], number


def test_each_place_has_its_figure(told, tmp_path):
    """Turned to: the page cited has the row that is named, and the step's figure in it."""
    name, planned, steps, *_ = told
    cited = {
        number: re.findall(r'p\. (\d+), (.*?)(?= p\. |$)', place) for number, (_w, _f, place) in steps.items()
    }
    assert {number for number, places in cited.items() if places} == CITED[name]
    numbers = sorted({int(page) for places in cited.values() for page, _row in places})
    pages = dict(zip(numbers, typeset(planned, numbers, tmp_path), strict=True)) if numbers else {}
    for number, places in cited.items():
        for page, row in places:
            told_lines = [said(line) for line in lines(pages[int(page)])]
            follow(told_lines, row, steps[number], planned.drafts[int(page) - 1].template)


CITED = {
    **{name: {2, 3, 4, 5, 6, 7, 9} for name in ('compact', 'odd', 'halved', 'fine')},
    'complete': {2, 3, 4, 5, 6, 7, 9},
    'tables alone': {3, 4, 5, 6, 7},
    'short': {2, 4, 5, 6, 7, 9},
}
"""Steps whose figure has a place: a book with neither openings nor members has no cuts, short runs do not reach the length."""


def follow(page, row, step, template):
    """Hold a place against the lines of its page."""
    words, figure, _ = step
    figure = figure.removeprefix('heel ')
    if row == 'drawing':
        assert template in ('opening', 'values')
    elif match := re.fullmatch(r'(ft|in|parts of an inch)(?: and .*)?', row):
        assert match[1] in ' '.join(page)
        readings = re.findall(r'([\d /]+?) \((?:(\d+) ft|([\d /]+) in)\)', words)
        assert len(readings) == len(row.split(' and '))
        for read, feet, odd in readings:
            assert any(f' {feet or odd} {read.strip()} ' in f' {line} ' for line in page), row
    elif match := re.fullmatch(r'row (.*), (?:under )?(.*)', row):
        label = match[1].removesuffix(' ft')
        assert any(line.startswith(f'{label} ') and f' {figure} ' in f'{line} ' for line in page), row
    else:
        *over, label = re.sub(r'[“”]', '', row).split(', ') if not row.startswith('Overhang') else row.split()
        label = label.removeprefix('under ')
        if template == 'opening' and over:
            begins = next(place for place, line in enumerate(page) if over[0] in line)
            page = page[begins + 1 : begins + 16]
        if template == 'opening' and row.startswith('Off'):
            begins = next(place for place, line in enumerate(page) if row in line)
            page, label = page[begins + 1 : begins + 4], 'level'
        if template == 'values':
            label = over[0] if over else label
        if template == 'ref_table':
            page, label = (
                page[next(n for n, line in enumerate(page) if row.strip('“”') in line) :],
                '1 1/2' if 'any pitch' in row else '6',
            )
        found = [line for line in page if re.search(rf'(^| ){re.escape(label.removeprefix("row "))}[ ,].*(?<![\d/]){re.escape(figure)}(?![\d/])', line)]  # fmt: skip
        assert found, (row, figure, page)


RUN_STEPS = ('3 in', '5 in', '25 mm', '1 ft')
WIDE = 'stock.ridge = "5 1/2"\nstock.hip = "5 1/2"\nstock.rafters = "2x12"\nstock.seat = "5 1/2"\nsmallest_part = "1/32"'


@pytest.mark.parametrize('step', some(RUN_STEPS))
def test_it_keeps_to_its_opening_whatever_step_runs_have(step, tmp_path):
    """Where lengths stand in a table of runs and in what is added, both places are told on a page of deep boards too."""
    written = f'{COMPLETE}pitches = [9]\nruns = {{to = "11 ft", by = "{step}"}}\n{WIDE}'
    planned = plan(read_settings(written, ''))
    first = planned.index['one-rafter']

    assert len(typeset(planned, [first, first + 1], tmp_path)) == 2  # a page that runs over is refused


def test_places_on_one_page_are_told_together_and_each_has_its_figure(tmp_path):
    """5 ft 7 in by a table of every third inch: 5 ft 6 in under its row and head, an inch at the foot."""
    planned = plan(read_settings(f'{COMPLETE}pitches = [6]\nruns = {{to = "11 ft", by = "3 in"}}', ''))
    first = planned.index['one-rafter']
    left, _right = typeset(planned, [first, first + 1], tmp_path)
    _words, figure, place = steps_of(left, planned.trim)[3]
    told = ' '.join(' '.join((_words, place)).split())
    page = int(re.search(r'p\. (\d+), row 5 ft, under 6 in; at the foot, for 1\b', told)[1])
    (cells,) = [[said(line) for line in lines(one)] for one in typeset(planned, [page], tmp_path)]

    heads = next(line for line in cells if '6 in' in line or ' 6 ' in line)
    row = next(line for line in cells if re.match(r'5 \d', line))
    assert heads, cells
    in_table = part(66 * common_length(corner(6), 1))
    assert in_table in row
    added = [line for line in cells if line.startswith(('for', 'add'))]
    assert any(' 1 ' in f'{line} ' for line in added[::2])
    assert part(common_length(corner(6), 1)) in ' '.join(added[1::2])
    assert figure == part(67 * common_length(corner(6), 1))
