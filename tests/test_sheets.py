"""Sheets: small booklets are laid out, and the file is read back with a reader of its drawing of our own."""

from __future__ import annotations

from functools import cache
from importlib.resources import files
from itertools import pairwise

import pytest
from fontTools.pens.boundsPen import BoundsPen
from fontTools.ttLib import TTFont
from msgspec import Struct, field
from pydyf import PDF
from pypdf import PdfReader, PdfWriter
from pypdf.generic import (
    ArrayObject,
    ContentStream,
    DecodedStreamObject,
    DictionaryObject,
    NameObject,
    RectangleObject,
)

from layouts.sheets.sheets import SheetLayout, impose

MM = 72 / 25.4
POCKET_LETTER = SheetLayout('letter', 100, 133, 4)
POCKET_A4 = SheetLayout('a4', 100, 133, 4)
HALF_LETTER = SheetLayout('letter', 139.7, 215.9, 2)
A5 = SheetLayout('a4', 148.5, 210, 2)
WITH_MARGIN = SheetLayout('letter', 120, 190, 2)
LAYOUTS = [POCKET_LETTER, POCKET_A4, HALF_LETTER, A5, WITH_MARGIN]
LABELLED = [POCKET_LETTER, POCKET_A4, WITH_MARGIN]
FILLED = [HALF_LETTER, A5]
"""Pages as big as half of the paper: the words and the bar lie along the fold."""
BAR_WORDS = ['upper tick 100 mm, lower tick 4 in', 'at 100 %, give or take 1 mm, 1/32 in']
TWO_SECTIONS = [(0, 12), (12, 8)]


@pytest.fixture
def make_booklet(tmp_path):
    """Return a function that writes a booklet whose pages say their own number."""

    def make(pages, width_mm, height_mm, name='booklet.pdf', word='page'):
        writer = PdfWriter()
        font = writer._add_object(
            DictionaryObject(
                {
                    NameObject('/Type'): NameObject('/Font'),
                    NameObject('/Subtype'): NameObject('/Type1'),
                    NameObject('/BaseFont'): NameObject('/Helvetica'),
                }
            )
        )
        fonts = DictionaryObject({NameObject('/F'): font})
        resources = writer._add_object(DictionaryObject({NameObject('/Font'): fonts}))
        for number in range(1, pages + 1):
            page = writer.add_blank_page(width_mm * MM, height_mm * MM)
            page[NameObject('/Contents')] = writer._add_object(
                stream(f'BT /F 12 Tf 30 40 Td ({word} {number}) Tj ET').flate_encode()
            )
            page[NameObject('/Resources')] = resources
        path = tmp_path / name
        writer.write(path)
        return path

    return make


@pytest.fixture
def sheets(make_booklet, tmp_path):
    """Return a function that lays a booklet out and gives the reader of the result and the count."""

    def make(layout, sections, **options):
        pages = sum(pages for _, pages in sections)
        booklet = make_booklet(pages, layout.trim_width_mm, layout.trim_height_mm)
        out = tmp_path / 'sheets.pdf'
        count = impose(booklet, sections, layout, out, **options)
        return PdfReader(out, strict=True), count

    return make


def stream(text):
    contents = DecodedStreamObject()
    contents.set_data(text.encode())
    return contents


# A reader of the drawing, which knows nothing of how it was made ----------------------------------------


class Drawing(Struct):
    """What is drawn on one side; mm from the lower left corner of the sheet."""

    width: float
    height: float
    pages: list = field(default_factory=list)
    """(window, x of the page's left edge, y of its lower edge, text)"""
    lines: list = field(default_factory=list)
    """((x0, y0), (x1, y1), dashed, width)"""
    labels: list = field(default_factory=list)
    spelled: list = field(default_factory=list)
    """For each label the boxes around the control points of its letters."""

    @property
    def letters(self) -> list:
        return [letter for letters in self.spelled for letter in letters]

    @property
    def bar(self) -> list:
        """The bar of 4 in and what meets it at a right angle, but for the fold's dashes."""
        (long,) = [line for line in self.lines if distance(*line[:2]) == pytest.approx(101.6, abs=0.01)]
        ticks = [line for line in self.lines if line is not long and not line[2] and meet(line, long)]
        return [long, *ticks]

    @property
    def marks(self) -> list:
        """Lines but the bar's."""
        bar = self.bar if self.lines else []
        return [line for line in self.lines if not any(line is one for one in bar)]


def distance(a, b):
    return ((a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2) ** 0.5


def meet(line, other):
    """Whether one of a line's ends, or its middle, lies on another."""
    (x0, y0), (x1, y1) = line[:2]
    a, b = other[:2]
    points = [(x0, y0), (x1, y1), ((x0 + x1) / 2, (y0 + y1) / 2)]
    return any(distance(a, point) + distance(point, b) < distance(a, b) + 0.001 for point in points)


def times(inner, outer):
    a, b, c, d, e, f = inner
    k, m, n, o, p, q = outer
    return (
        a * k + b * n, a * m + b * o, c * k + d * n, c * m + d * o, e * k + f * n + p, e * m + f * o + q
    )  # fmt: skip


def moved(matrix, x, y):
    a, b, c, d, e, f = matrix
    return (a * x + c * y + e) / MM, (b * x + d * y + f) / MM


def read_side(page):
    """Return the drawing of a side, by the operators that it may use; any other fails."""
    reader = page.pdf
    drawing = Drawing(float(page.mediabox.width) / MM, float(page.mediabox.height) / MM)
    state, saved = {'matrix': (1, 0, 0, 1, 0, 0), 'window': None, 'dash': [], 'width': 1.0}, []
    box = start = end = None
    for operands, operator in ContentStream(page['/Contents'], reader).operations:
        numbers = [float(value) for value in operands if isinstance(value, (int, float))]
        match operator:
            case b'q':
                saved.append(dict(state))
            case b'Q':
                state = saved.pop()
            case b'cm':
                state['matrix'] = times(numbers, state['matrix'])
            case b're':
                x, y, width, height = numbers
                box = (*moved(state['matrix'], x, y), *moved(state['matrix'], x + width, y + height))
            case b'W':
                state['window'] = box
            case b'w':
                state['width'] = numbers[0]
            case b'd':
                state['dash'] = operands[0]
            case b'm':
                start = moved(state['matrix'], *numbers)
            case b'l':
                end = moved(state['matrix'], *numbers)
            case b'S':
                drawing.lines.append((start, end, bool(state['dash']), state['width']))
            case b'BDC':
                drawing.labels.append(operands[1]['/ActualText'])
                drawing.spelled.append([])
            case b'Do':
                form = page['/Resources']['/XObject'][operands[0]].get_object()
                read_form(page, form, state, drawing)
            case _:
                assert operator in (b'n', b'G', b'g', b'J', b'EMC')
    assert saved == []
    return drawing


def read_form(page, form, state, drawing):
    left, low = float(form['/BBox'][0]), float(form['/BBox'][1])
    if '/Resources' in form:
        text = page.extract_xform_text(form).strip()
        drawing.pages.append((state['window'], *moved(state['matrix'], left, low), text))
        return
    points = [moved(state['matrix'], x, y) for x, y in control_points(form.get_data())]
    across, up = zip(*points, strict=True)
    drawing.spelled[-1].append((min(across), min(up), max(across), max(up)))


@cache
def control_points(data):
    """Return the points of an outline of straight lines and curves."""
    points, numbers = [], []
    for word in data.decode().split():
        if word in ('m', 'l', 'c'):
            points += zip(numbers[::2], numbers[1::2], strict=True)
            numbers = []
        elif word not in ('h', 'f'):
            numbers.append(float(word))
    return points


def cells(layout):
    """Return the trims of a side by (column, row): abutting, in the middle of the paper."""
    paper = {'letter': (215.9, 279.4), 'a4': (210, 297)}[layout.paper]
    width, height = paper if layout.up == 4 else paper[::-1]
    rows = layout.up // 2
    return {
        (column, row): (
            width / 2 + (column - 1) * layout.trim_width_mm,
            height / 2 + (rows / 2 - row - 1) * layout.trim_height_mm,
            width / 2 + column * layout.trim_width_mm,
            height / 2 + (rows / 2 - row) * layout.trim_height_mm,
        )
        for column in (0, 1)
        for row in range(rows)
    }


def texts_by_cell(layout, drawing):
    """Return the text that shows in each cell of a side."""
    found = {}
    for cell, box in cells(layout).items():
        shown = [text for window, _, _, text in drawing.pages if window == pytest.approx(box, abs=0.01)]
        if shown:
            (found[cell],) = shown
    assert len(found) == len(drawing.pages)
    return found


def overlap(box, other, slack=0.01):
    return (
        box[0] < other[2] - slack
        and other[0] < box[2] - slack
        and box[1] < other[3] - slack
        and other[1] < box[3] - slack
    )


def line_box(line):
    (x0, y0), (x1, y1), _, _ = line
    return min(x0, x1), min(y0, y1), max(x0, x1), max(y0, y1)


# Order and place ----------------------------------------------------------------------------------------


@pytest.mark.parametrize('layout', LAYOUTS)
def test_the_printed_and_folded_file_reads_in_order(sheets, layout):
    """Turned about its upright center line, cut, nested and folded, the text itself is in order."""
    reader, _ = sheets(layout, TWO_SECTIONS)
    sides = [texts_by_cell(layout, read_side(page)) for page in reader.pages]
    leaves = list(zip(sides[::2], sides[1::2], strict=True))
    sheets_of_first = -(-12 // (2 * layout.up))
    read = []
    for pile in (leaves[:sheets_of_first], leaves[sheets_of_first:]):
        halves = [(front, back, row) for row in range(layout.up // 2) for front, back in pile]
        halves = [half for half in halves if (0, half[2]) in half[0]]
        read += [text for front, back, row in halves for text in (front[1, row], back[0, row])]
        read += [text for front, back, row in reversed(halves) for text in (back[1, row], front[0, row])]
    assert [f'page {number}' for number in range(1, 21)] == read


@pytest.mark.parametrize('layout', LAYOUTS)
def test_the_edge_to_flip_on_is_the_upright_one(sheets, layout):
    """The file asks its viewer for the flip that turns the paper about an upright line, and for actual size."""
    reader, _ = sheets(layout, [(0, 8)])
    preferences = reader.trailer['/Root']['/ViewerPreferences']
    upright_is_long = reader.pages[0].mediabox.height > reader.pages[0].mediabox.width
    assert ('/DuplexFlipLongEdge' if upright_is_long else '/DuplexFlipShortEdge') == preferences['/Duplex']
    assert preferences['/PrintScaling'] == '/None'


@pytest.mark.parametrize('layout', LAYOUTS)
def test_each_back_lies_mirrored_behind_its_front(sheets, layout):
    """Pages 2n−1 and 2n are the two faces of one leaf, shift and all."""
    reader, _ = sheets(layout, TWO_SECTIONS)
    drawings = [read_side(page) for page in reader.pages]
    matched = 0
    for front, back in zip(drawings[::2], drawings[1::2], strict=True):
        behind = {text: (x, y) for _, x, y, text in back.pages}
        for _, x, y, text in front.pages:
            number = int(text.split()[1])
            mate = number + 1 if number % 2 else number - 1
            back_x, back_y = behind[f'page {mate}']
            assert (back_x, back_y) == pytest.approx((front.width - x - layout.trim_width_mm, y), abs=0.001)
            matched += 1
    assert matched == 10


@pytest.mark.parametrize('layout', LAYOUTS)
def test_inner_pages_are_shifted_towards_the_spine(sheets, layout):
    reader, _ = sheets(layout, [(0, 24)])
    seen = 0
    for page in reader.pages:
        drawing = read_side(page)
        for window, x, y, text in drawing.pages:
            number = int(text.split()[1])
            depth = min(number - 1, 24 - number) // 2
            shift = 0.1 * depth if window[0] < drawing.width / 2 - 1 else -0.1 * depth
            assert (x - window[0], y - window[1]) == pytest.approx((shift, 0), abs=0.001)
            seen += 1
    assert seen == 24


def test_a_page_is_placed_by_its_trim(make_booklet, tmp_path):
    """A page with a bleed lies with its trim box on the panel, and shows nothing outside of it."""
    writer = PdfWriter(clone_from=make_booklet(4, 110, 143))
    for page in writer.pages:
        page.trimbox = RectangleObject([5 * MM, 5 * MM, 105 * MM, 138 * MM])
    writer.write(tmp_path / 'bleed.pdf')
    impose(tmp_path / 'bleed.pdf', [(0, 4)], POCKET_A4, tmp_path / 'sheets.pdf')
    front = PdfReader(tmp_path / 'sheets.pdf').pages[0]
    for window, x, y, _ in read_side(front).pages:
        assert (x, y) == pytest.approx(window[:2], abs=0.001)
    forms = [form.get_object() for name, form in front['/Resources']['/XObject'].items() if 'page' in name]
    assert [pytest.approx([float(edge) / MM for edge in form['/BBox']]) for form in forms] == [
        [5, 5, 105, 138]
    ] * 2


# Marks and labels ---------------------------------------------------------------------------------------


@pytest.mark.parametrize('layout', LAYOUTS)
def test_no_mark_lies_in_a_trim(sheets, layout):
    reader, _ = sheets(layout, TWO_SECTIONS)
    for page in reader.pages:
        drawing = read_side(page)
        for trim in cells(layout).values():
            assert not [line for line in drawing.marks if overlap(line_box(line), trim)]


@pytest.mark.parametrize('layout', LAYOUTS)
def test_words_and_bar_lie_in_the_margins_or_out_of_sight_in_the_fold(sheets, layout):
    """In the fold, from 1 to 7 mm left of it: a page of large print has 12.5 mm there, 2 mm less at most by creep."""
    reader, _ = sheets(layout, TWO_SECTIONS)
    for page in reader.pages:
        drawing = read_side(page)
        boxes = [*drawing.letters, *map(line_box, drawing.bar)]
        for box in boxes:
            if layout in FILLED:
                assert drawing.width / 2 - 7 < box[0] <= box[2] < drawing.width / 2 - 1
                assert 4.5 < box[1] <= box[3] < drawing.height - 4.5
            else:
                assert not [trim for trim in cells(layout).values() if overlap(box, trim)]


@pytest.mark.parametrize('layout', LAYOUTS)
def test_a_bar_of_two_stated_lengths_is_on_every_side(sheets, layout):
    """4 in long; ticks across its start, one at 100 mm on the words' upper side, one at its end on their lower."""
    reader, _ = sheets(layout, TWO_SECTIONS)
    for page in reader.pages:
        drawing = read_side(page)
        (start, end, *_), *ticks = drawing.bar
        along = [(b - a) / 101.6 for a, b in zip(start, end, strict=True)]
        up = (-along[1], along[0])
        found = sorted(
            tuple(
                sum((point - origin) * way for point, origin, way in zip(tip, start, ways, strict=True))
                for ways in (along, up)
                for tip in tick[:2]
            )
            for tick in ticks
        )
        said = [
            pytest.approx(one, abs=0.01)
            for one in ((0, 0, -0.9, 0.9), (100, 100, 0, 0.9), (101.6, 101.6, 0, -0.9))
        ]
        assert found == said
        assert drawing.labels[1:] == BAR_WORDS
        before, after = drawing.spelled[1:]
        axis = 1 if layout in FILLED else 0
        assert max(letter[2 + axis] for letter in before) == pytest.approx(start[axis] - 1.5, abs=0.2)
        assert min(letter[axis] for letter in after) == pytest.approx(end[axis] + 1.5, abs=0.2)


@pytest.mark.parametrize('layout', LABELLED)
def test_cut_marks_point_at_the_corners_and_at_the_middle_cut(sheets, layout):
    """Solid lines that begin at the block's edge and leave it: two at each corner, one at each end of a cut."""
    reader, _ = sheets(layout, [(0, 8)])
    boxes = cells(layout).values()
    left, foot = min(box[0] for box in boxes), min(box[1] for box in boxes)
    right, top = max(box[2] for box in boxes), max(box[3] for box in boxes)
    expected = [(x, y) for x in (left, right) for y in (foot, top) for _ in 'xy']
    if layout.up == 4:
        expected += [(left, (foot + top) / 2), (right, (foot + top) / 2)]
    for page in reader.pages:
        drawing = read_side(page)
        cuts = [line[0] for line in drawing.marks if not line[2] and abs(line[0][0] - drawing.width / 2) > 1]
        assert sorted(cuts) == [pytest.approx(point, abs=0.01) for point in sorted(expected)]


@pytest.mark.parametrize('layout', LAYOUTS)
def test_a_dashed_mark_at_both_ends_of_the_spine_shows_the_fold(sheets, layout):
    reader, _ = sheets(layout, TWO_SECTIONS)
    for page in reader.pages:
        drawing = read_side(page)
        upper, lower = (line for line in drawing.lines if line[2])
        assert [drawing.width / 2] * 4 == pytest.approx(
            [x for line in (upper, lower) for x, _ in line[:2]], abs=0.01
        )
        assert drawing.height - upper[0][1] == pytest.approx(lower[0][1], abs=0.01)
        assert upper[0][1] < upper[1][1]


@pytest.mark.parametrize('layout', LAYOUTS)
def test_only_the_outside_of_a_section_shows_where_to_staple(sheets, layout):
    """Ticks of 3 mm on the spine of the outermost half-sheet, round 1/4 and 3/4 of its length."""
    reader, _ = sheets(layout, TWO_SECTIONS)
    _, foot, _, top = cells(layout)[0, 0]
    tall = top - foot
    expected = [
        (foot + tall * 3 / 4 - 1.5, foot + tall * 3 / 4 + 1.5),
        (foot + tall / 4 - 1.5, foot + tall / 4 + 1.5),
    ]
    sections = []
    for page in reader.pages:
        drawing = read_side(page)
        ticks = [
            (line[0][1], line[1][1])
            for line in drawing.marks
            if not line[2] and abs(line[0][0] - drawing.width / 2) < 0.01
        ]
        if ticks:
            assert sorted(expected) == [pytest.approx(tick, abs=0.01) for tick in sorted(ticks)]
            sections.append({text for *_, text in drawing.pages})
    assert [{'page 1', 'page 12'}, {'page 13', 'page 20'}] == [
        {text for text in section if text in ('page 1', 'page 12', 'page 13', 'page 20')}
        for section in sections
    ]


@pytest.mark.parametrize('layout', LAYOUTS)
def test_marks_are_hairlines_that_print(sheets, layout):
    reader, _ = sheets(layout, [(0, 4)])
    widths = {line[3] for page in reader.pages for line in read_side(page).lines}
    assert all(0.25 <= width <= 0.5 for width in widths)
    assert widths


@pytest.mark.parametrize('layout', LAYOUTS)
def test_every_side_is_labelled(sheets, layout):
    reader, count = sheets(layout, TWO_SECTIONS)
    expected = []
    for section, (pages, of) in enumerate(zip((12, 8), count.sections, strict=True), 1):
        for sheet in range(1, of + 1):
            blank = ' · lower half blank' if layout.up == 4 and sheet == of and pages % 8 else ''
            for face in ('front', 'back'):
                expected.append([f'section {section} of 2 · sheet {sheet} of {of} · {face}{blank}'])
    assert expected == [read_side(page).labels[:1] for page in reader.pages]


def test_one_section_is_not_counted(sheets):
    reader, _ = sheets(POCKET_A4, [(0, 8)])
    assert read_side(reader.pages[0]).labels[:1] == ['sheet 1 of 1 · front']


def test_words_may_be_given(sheets):
    reader, _ = sheets(POCKET_A4, [(0, 8)], labels=lambda side: f'Blatt {side.sheet}, {side.face}')
    assert read_side(reader.pages[1]).labels[:1] == ['Blatt 1, back']


@pytest.mark.parametrize('layout', LAYOUTS)
@pytest.mark.parametrize(
    'words', ['Éßgp sheet 1 of 9 · front', 'a long line of words ' * 20, 'sheet 1 · front']
)
def test_letters_stay_where_a_printer_prints_and_clear_of_the_marks(sheets, layout, words):
    reader, _ = sheets(layout, [(0, 4)], labels=lambda side: words)
    drawing = read_side(reader.pages[0])
    way = 1 if layout in FILLED else 0
    assert len(words.replace(' ', '')) == len(drawing.spelled[0])
    assert all(
        after[way] > (before[way] + before[2 + way]) / 2 for before, after in pairwise(drawing.spelled[0])
    )
    for letter in drawing.letters:
        assert min(letter[0], letter[1]) >= 4.5
        assert letter[2] <= drawing.width - 4.5
        assert letter[3] <= drawing.height - 4.49
        assert not [line for line in drawing.lines if overlap(letter, line_box(line), slack=0)]


def test_letters_are_six_points_of_the_font(sheets):
    """Measured again in the font file: the outline of l, at the size the label is meant to have."""
    font = TTFont(files('fontpkg_open_sans').joinpath('files', 'OpenSans[wdth,wght].ttf'))
    pen = BoundsPen(font.getGlyphSet())
    font.getGlyphSet()['l'].draw(pen)
    expected = (pen.bounds[3] - pen.bounds[1]) * 6 / font['head'].unitsPerEm / MM
    reader, _ = sheets(POCKET_LETTER, [(0, 4)], labels=lambda side: 'lll')
    heights = [letter[3] - letter[1] for letter in read_side(reader.pages[0]).spelled[0]]
    assert [expected] * 3 == pytest.approx(heights, rel=0.005)


@pytest.mark.parametrize('layout', FILLED)
def test_pages_to_the_papers_edge_have_marks_on_the_spine_alone(sheets, layout):
    reader, _ = sheets(layout, [(0, 8)])
    for page in reader.pages:
        drawing = read_side(page)
        assert {round(drawing.width / 2, 2)} == {round(x, 2) for line in drawing.marks for x, _ in line[:2]}


# The file -----------------------------------------------------------------------------------------------


@pytest.mark.parametrize('layout', LAYOUTS)
def test_sheets_have_the_papers_size(sheets, layout):
    reader, _ = sheets(layout, [(0, 8)])
    size = {'letter': (612, 792), 'a4': (595.276, 841.89)}[layout.paper]
    sizes = {(float(page.mediabox.width), float(page.mediabox.height)) for page in reader.pages}
    assert {size if layout.up == 4 else size[::-1]} == sizes


@pytest.mark.parametrize(('layout', 'expected'), [(POCKET_LETTER, (2, 1)), (HALF_LETTER, (3, 2))])
def test_paper_is_counted(sheets, layout, expected):
    reader, count = sheets(layout, TWO_SECTIONS)
    assert expected == count.sections
    assert sum(expected) == count.total
    assert 2 * sum(expected) == len(reader.pages)


@pytest.mark.parametrize('sizes', [(215.9, 279.4), (279.4, 215.9)])
def test_instructions_are_the_first_sheet_and_have_an_empty_back(sheets, make_booklet, sizes):
    instructions = make_booklet(1, *sizes, name='instructions.pdf')
    reader, count = sheets(POCKET_LETTER, [(0, 8)], instructions=instructions)
    assert (count.instructions, count.total) == (1, 2)
    drawings = [read_side(page) for page in reader.pages]
    ((window, x, y, text),) = drawings[0].pages
    assert (None, pytest.approx(0), pytest.approx(0), 'page 1') == (window, x, y, text)
    assert sizes == pytest.approx((drawings[0].width, drawings[0].height), abs=0.01)
    assert (drawings[0].width, drawings[0].height) == (drawings[1].width, drawings[1].height)
    assert (drawings[1].pages, drawings[1].lines, drawings[1].letters) == ([], [], [])
    assert drawings[2].labels[:1] == ['sheet 1 of 1 · front']


def test_resources_are_kept_once_and_no_font_is_added(sheets):
    reader, _ = sheets(POCKET_LETTER, [(0, 64)])
    objects = [reader.get_object(number) for number in range(1, len(reader.xref[0]) + 1)]
    fonts = [found for found in objects if isinstance(found, dict) and found.get('/Type') == '/Font']
    assert [font['/BaseFont'] for font in fonts] == ['/Helvetica']
    resources = [found for found in objects if isinstance(found, dict) and '/Font' in found]
    assert len(resources) == 1


def test_data_of_pages_is_taken_over_as_it_is(make_booklet, tmp_path):
    booklet = make_booklet(4, 100, 133)
    impose(booklet, [(0, 4)], POCKET_A4, tmp_path / 'sheets.pdf')
    packed = {page['/Contents'].get_object()._data for page in PdfReader(booklet).pages}
    forms = [
        form.get_object()._data
        for page in PdfReader(tmp_path / 'sheets.pdf').pages
        for name, form in page['/Resources']['/XObject'].items()
        if name.startswith('/page')
    ]
    assert packed == set(forms)


def test_pages_that_are_not_packed_are_taken_too(make_booklet, tmp_path):
    writer = PdfWriter(clone_from=make_booklet(4, 100, 133))
    writer.pages[1][NameObject('/Contents')] = writer._add_object(stream('BT /F 12 Tf (unpacked) Tj ET'))
    writer.write(tmp_path / 'odd.pdf')
    impose(tmp_path / 'odd.pdf', [(0, 4)], POCKET_A4, tmp_path / 'sheets.pdf')
    _front, back = (
        texts_by_cell(POCKET_A4, read_side(page)) for page in PdfReader(tmp_path / 'sheets.pdf').pages
    )
    assert back == {(0, 0): 'unpacked', (1, 0): 'page 3'}


@pytest.mark.parametrize('parts', [0, 2])
def test_a_page_in_several_parts_or_without_any_is_refused(make_booklet, tmp_path, parts):
    writer = PdfWriter(clone_from=make_booklet(4, 100, 133))
    drawn = [writer._add_object(stream('0 0 m')) for _part in range(parts)]
    writer.pages[2][NameObject('/Contents')] = ArrayObject(drawn)
    writer.write(tmp_path / 'odd.pdf')
    with pytest.raises(ValueError, match=f'page 3 is drawn in {parts} parts, not 1'):
        impose(tmp_path / 'odd.pdf', [(0, 4)], POCKET_A4, tmp_path / 'sheets.pdf')


def test_a_page_keeps_the_way_in_which_it_blends(make_booklet, tmp_path):
    writer = PdfWriter(clone_from=make_booklet(4, 100, 133))
    group = DictionaryObject({NameObject('/S'): NameObject('/Transparency')})
    writer.pages[0][NameObject('/Group')] = group
    writer.write(tmp_path / 'blended.pdf')
    impose(tmp_path / 'blended.pdf', [(0, 4)], POCKET_A4, tmp_path / 'sheets.pdf')
    forms = PdfReader(tmp_path / 'sheets.pdf').pages[0]['/Resources']['/XObject']
    assert forms['/page-0']['/Group'] == group
    assert '/Group' not in forms['/page-3']


def test_two_runs_give_the_same_bytes_and_no_date(make_booklet, tmp_path):
    booklet = make_booklet(20, 100, 133)
    outs = [tmp_path / 'one.pdf', tmp_path / 'two.pdf']
    for out in outs:
        impose(booklet, TWO_SECTIONS, POCKET_LETTER, out)
    assert outs[0].read_bytes() == outs[1].read_bytes()
    assert b'Date' not in outs[0].read_bytes()
    assert '/ID' in PdfReader(outs[0]).trailer


def test_another_booklet_has_another_identifier(make_booklet, tmp_path):
    identifiers = set()
    for word in ('page', 'leaf'):
        booklet = make_booklet(4, 100, 133, word=word)
        impose(booklet, [(0, 4)], POCKET_LETTER, tmp_path / 'sheets.pdf')
        identifiers.add(PdfReader(tmp_path / 'sheets.pdf').trailer['/ID'][0])
    assert len(identifiers) == 2


def test_a_file_that_fails_to_be_written_leaves_the_old_one(make_booklet, tmp_path, monkeypatch):
    out = tmp_path / 'sheets.pdf'
    out.write_bytes(b'old')

    def fail(self, stream, **_options):
        stream.write(b'%PDF half')
        raise OSError('disk full')

    booklet = make_booklet(4, 100, 133)
    monkeypatch.setattr(PDF, 'write', fail)
    with pytest.raises(OSError, match='disk full'):
        impose(booklet, [(0, 4)], POCKET_A4, out)
    assert out.read_bytes() == b'old'
    assert {'booklet.pdf', 'sheets.pdf'} == {path.name for path in tmp_path.iterdir()}


@pytest.mark.parametrize(
    ('pages', 'size', 'sections', 'message'),
    [
        (8, (100, 133), [(0, 4)], r'8 pages, but sections are \[\(0, 4\)\]'),
        (4, (100, 133), [(0, 8)], r'4 pages, but sections are \[\(0, 8\)\]'),
        (4, (100, 134), [(0, 4)], r'page 1 is 100.00 × 134.00 mm, not 100.00 × 133.00 mm'),
    ],
)
def test_a_booklet_that_does_not_belong_is_refused(make_booklet, tmp_path, pages, size, sections, message):
    booklet = make_booklet(pages, *size)
    with pytest.raises(ValueError, match=message):
        impose(booklet, sections, POCKET_A4, tmp_path / 'sheets.pdf')
    assert not (tmp_path / 'sheets.pdf').exists()


def test_a_turned_page_is_refused(make_booklet, tmp_path):
    writer = PdfWriter(clone_from=make_booklet(4, 100, 133))
    writer.pages[2].rotate(180)
    writer.write(tmp_path / 'turned.pdf')
    with pytest.raises(ValueError, match='page 3 is turned by 180°'):
        impose(tmp_path / 'turned.pdf', [(0, 4)], POCKET_A4, tmp_path / 'sheets.pdf')


@pytest.mark.parametrize(
    ('pages', 'size', 'message'),
    [
        (2, (210, 297), '2 pages of instructions, not 1'),
        (1, (100, 133), 'page 1 is 100.00 × 133.00 mm, not 210.00'),
    ],
)
def test_other_instructions_are_refused(sheets, make_booklet, pages, size, message):
    instructions = make_booklet(pages, *size, name='instructions.pdf')
    with pytest.raises(ValueError, match=message):
        sheets(POCKET_A4, [(0, 4)], instructions=instructions)
