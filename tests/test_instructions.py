"""The sheet of instructions, read from its PDF and followed with paper: turned, cut, laid, folded, it is a book."""

from __future__ import annotations

import re
from functools import cache

import pytest
from drawn import read
from printed_words import told
from pypdf import PdfReader

from layouts.drawings.folding import cutting, flipping, folding, stapling
from layouts.pages.book import plan
from layouts.pdf.typeset import set_document
from layouts.sheets.counted import sheet_layout
from layouts.sheets.fold import sheet_sides
from layouts.sheets.instructions import instructions_job
from layouts.sheets.marks import BAR_WORDS
from tablegen.settings import read_settings

EDITIONS = [(trim, paper) for trim in ('pocket', 'large') for paper in ('letter', 'a4')]
PAPERS = {'Letter': (215.9, 279.4), 'A4': (210.0, 297.0)}
"""Width and height in mm: US Letter is 8 1/2 by 11 in; A4 by ISO 216."""
BOOK = 'pitches = "4 to 15"\nparts = ["values", "common", "hip-valley", "rise"]\n'
LEFT, RIGHT = 0, 1


@pytest.fixture(scope='module')
def sheet(tmp_path_factory):
    """Return a function that gives a book's plan and the words of its sheet of instructions."""

    @cache
    def make(trim: str, paper: str, written: str = BOOK):
        planned = plan(read_settings(f'{written}trim = "{trim}"\npaper = "{paper}"', ''))
        job = instructions_job(planned, tmp_path_factory.mktemp('instructions'))
        set_document(job)
        size = PdfReader(job.out).pages[0].mediabox
        return planned, ' '.join(told('pdftotext', job.out, '-').split()), size

    return make


def sections_said(words: str) -> list[tuple[int, ...]]:
    """Return number, first page, last page and sheets of every section."""
    found = re.findall(r'section (\d+), pages (\d+) to (\d+), (\d+) sheets?\b', words)
    return [tuple(map(int, one)) for one in found]


@pytest.mark.parametrize(('trim', 'paper'), EDITIONS)
def test_the_paper_counts_are_those_of_the_sheets(sheet, trim, paper):
    planned, words, size = sheet(trim, paper)
    pages, sheets, name = re.search(r': (\d+) pages on (\d+) sheets of (\w+) paper', words).groups()
    bounds = [(first - 1, count) for first, count in planned.index.sections]
    sides = sheet_sides(bounds, planned.trim.up)
    each = [{side.sheet for side in sides if side.section == n} for n in range(1, len(bounds) + 1)]

    assert len(bounds) > 1
    assert (int(pages), int(sheets)) == (len(planned.drafts), len(sides) // 2)
    assert f'in {len(bounds)} sections' in words
    assert sections_said(words) == [
        (n, first + 1, first + count, len(each[n - 1])) for n, (first, count) in enumerate(bounds, 1)
    ]
    assert (float(size.width), float(size.height)) == pytest.approx(
        [side * 72 / 25.4 for side in PAPERS[name]], abs=0.01
    )
    assert name.lower() == paper


@pytest.mark.parametrize(('trim', 'paper'), EDITIONS)
def test_a_page_measures_what_it_says(sheet, trim, paper):
    """Between its fold and its cuts; in inches to a sixteenth."""
    planned, words, _ = sheet(trim, paper)
    layout = sheet_layout(planned)
    wide, high = map(float, re.search(r'measure ([\d.]+) mm wide and ([\d.]+) mm high', words).groups())
    inches = re.search(r'\(near (\S+(?: \S+)?) by (\S+(?: \S+)?) in\)', words).groups()

    assert (wide, high) == (layout.trim_width_mm, layout.trim_height_mm)
    for millimeters, said in zip((wide, high), inches, strict=True):
        whole, _, part = said.partition(' ')
        numerator, _, denominator = part.partition('/')
        true = millimeters / 25.4
        assert abs(int(whole) + (int(numerator) / int(denominator) if part else 0) - true) <= 1 / 32


@pytest.mark.parametrize(('trim', 'paper'), EDITIONS)
def test_the_bar_is_told_with_its_lengths_place_and_tolerance(sheet, trim, paper):
    """In the words that stand at the bar too; 1/32 in is no more than the millimeter beside it."""
    _, words, _ = sheet(trim, paper)
    place, metric, inches, within, part = re.search(
        r'the bar (?:at|along) its (\w+) must be (\d+) mm long to the upper tick and (\d+) in to the lower, '
        r'give or take (\d) mm or 1/(\d+) in',
        words,
    ).groups()

    assert place == ('foot' if trim == 'pocket' else 'fold')
    assert (
        f'upper tick {metric} mm, lower tick {inches} in',
        f'at 100 %, give or take {within} mm, 1/{part} in',
    ) == BAR_WORDS
    assert 25.4 / int(part) <= int(within)


@pytest.mark.parametrize(('trim', 'paper'), EDITIONS)
def test_turned_over_the_edge_it_names_and_folded_it_reads_in_order(sheet, trim, paper):
    planned, words, _ = sheet(trim, paper)
    edge = re.search(r'flip on the (\w+) edge', words)[1]
    layout = sheet_layout(planned)
    bounds = [(first - 1, count) for first, count in planned.index.sections]
    sides = sheet_sides(bounds, planned.trim.up)
    assert upright_behind(layout.sheet_mm, edge)
    for section, (first, count) in enumerate(bounds, 1):
        mine = [side for side in sides if side.section == section]
        pile = [laid(*pair, layout, edge) for pair in zip(mine[::2], mine[1::2], strict=True)]
        assert folded(pile, planned.trim.up) == list(range(first, first + count))
    assert ('inside the upper' in words) == (planned.trim.up == 4)


def upright_behind(sheet_mm: tuple[float, float], edge: str) -> bool:
    """Return whether a page of the back stands upright behind its front, once the sheet is turned."""
    return axis(sheet_mm, edge) == 'upright'


def axis(sheet_mm: tuple[float, float], edge: str) -> str:
    """Return how the line lies about which a sheet is turned: it is parallel to the edge that is named."""
    upright_is_long = sheet_mm[1] > sheet_mm[0]
    return 'upright' if (edge == 'long') == upright_is_long else 'level'


def laid(front, back, layout, edge) -> dict:
    """Return for each place on a front its page and the page behind it."""
    rows = layout.up // 2

    def behind(column: int, row: int) -> tuple[int, int]:
        return (1 - column, row) if axis(layout.sheet_mm, edge) == 'upright' else (column, rows - 1 - row)

    shown = {(panel.column, panel.row): panel.page for panel in front.panels}
    hidden = {(panel.column, panel.row): panel.page for panel in back.panels}
    places = [(column, row) for column in (LEFT, RIGHT) for row in range(rows)]
    return {place: (shown.get(place), hidden.get(behind(*place))) for place in places}


def folded(pile: list[dict], up: int) -> list[int]:
    """Return the pages as a reader turns them, the lower pile inside the upper, the first page outside."""
    nested = [
        half for row in range(up // 2) for half in ((sheet[LEFT, row], sheet[RIGHT, row]) for sheet in pile)
    ]
    leaves = [right for _, right in nested] + [(back, front) for (front, back), _ in reversed(nested)]
    return [page for leaf in leaves for page in leaf if page is not None]


@pytest.mark.parametrize(('up', 'edge'), [(4, 'long'), (2, 'short')])
def test_the_drawing_blackens_the_edge_that_is_named(up, edge):
    """Of the sheet's outline the heavy line lies along a long or a short side, and the dashes are the fold."""
    drawing = read(str(flipping(up)))
    (outline,) = [stroke for stroke in drawing.strokes if stroke.fill == '#fff']
    (heavy,) = [stroke for stroke in drawing.strokes if stroke.width >= 2]
    across, down = zip(*outline.points, strict=True)
    sides = sorted((max(across) - min(across), max(down) - min(down)))

    assert heavy.length == pytest.approx(sides[1] if edge == 'long' else sides[0])
    assert abs(heavy.direction) == pytest.approx(90)


def test_the_printer_is_asked_for_the_edge_that_is_named(small_book):
    words = ' '.join(told('pdftotext', '-l', '1', small_book.built.sheets, '-').split())
    asked = PdfReader(small_book.built.sheets).root_object['/ViewerPreferences']

    assert re.search(r'flip on the (\w+) edge', words)[1].capitalize() in asked['/Duplex']
    assert asked['/Duplex'] == '/DuplexFlipLongEdge'
    assert small_book.built.sheets_of_paper == 1 + int(re.search(r'on (\d+) sheets', words)[1])


def test_an_empty_lower_half_is_spoken_of_where_there_is_one(sheet):
    seen = set()
    for rises in ('[6]', '[4, 6]', '[4, 6, 8, 10]'):
        planned, words, _ = sheet('pocket', 'letter', f'pitches = {rises}\nparts = ["values"]\n')
        sides = sheet_sides([(first - 1, count) for first, count in planned.index.sections], 4)
        blank = any(side.lower_blank for side in sides)

        assert ('empty lower half' in words) == blank
        seen.add(blank)
    assert seen == {True, False}


def test_one_section_is_not_told_to_be_sorted_among_others(sheet):
    _, words, _ = sheet('large', 'a4', 'pitches = [6]\nparts = ["values"]\n')

    assert 'sections' not in words
    assert 'pile goes' not in words


def test_the_lower_pile_is_drawn_going_inside_the_upper():
    """As the words say: A is above the cut, B below it, and B goes inside A."""
    drawing = read(str(cutting()))
    (cut,) = [stroke for stroke in drawing.strokes if stroke.dashed and len(stroke.points) == 2]
    (_, a), (_, b) = drawing.words['A'], drawing.words['B']

    assert a < cut.points[0][1] < b
    assert 'B inside A' in drawing.words


def test_staples_are_drawn_a_quarter_of_the_spine_from_its_ends():
    drawing = read(str(stapling()))
    (spine,) = [stroke.points for stroke in drawing.strokes if stroke.width == 2]
    staples = [stroke.points for stroke in drawing.strokes if stroke.width == 4]
    top, foot = sorted(y for _, y in spine)

    middles = sorted(sum(y for _, y in staple) / 2 for staple in staples)
    assert middles == pytest.approx([top + (foot - top) / 4, top + 3 * (foot - top) / 4])
    assert {x for staple in staples for x, _ in staple} == {spine[0][0]}


def test_the_first_page_is_drawn_outside_the_fold():
    """At the right of the fold, as the first page of a book that lies with its spine at the left."""
    drawing = read(str(folding()))
    (fold,) = [stroke.points for stroke in drawing.strokes if stroke.dashed]

    assert drawing.words['1'][0] > fold[0][0]


def test_each_step_has_its_own_drawing(tmp_path):
    planned = plan(read_settings(BOOK, ''))
    rows = re.findall(
        r'<b>(\w+)</b>.*?<td class="d">(.*?)</td>', instructions_job(planned, tmp_path).html, re.S
    )
    titles = {word: re.search(r'alt="([^"]*)"', cell)[1] for word, cell in rows if 'alt=' in cell}
    told = {'Print': 'sheet turns', 'Cut': 'cut in two', 'Fold': 'folded', 'Staple': 'staples'}

    assert titles.keys() == told.keys()
    assert [word for word in told if told[word] not in titles[word]] == []
