"""Sheets of cards: how many go on, backs mirrored behind fronts, lines to cut, holes, marks."""

from __future__ import annotations

import subprocess
from collections import Counter

import pytest
from card_support import MM, SIZES, made, settings_of, word_boxes
from pypdf import PdfReader
from pypdf.generic import ContentStream

from layouts.cards.formats import FORMATS
from layouts.cards.make import card_work, finish_cards
from layouts.cards.sheet import card_sheet, placed
from layouts.pdf.typeset import set_document
from layouts.words.error import error_line
from tablegen.errors import BookError

PAPERS_MM = {'letter': (215.9, 279.4), 'a4': (210, 297)}


def boxes_of(page):
    """Return the boxes of all closed outlines on a side, and whether they are dashed; mm."""
    found, points, dashed = [], [], False
    for operands, operator in ContentStream(page['/Contents'], page.pdf).operations:
        if operator == b'd':
            dashed = bool(operands[0])
        elif operator in (b'm', b'l', b'c'):
            points.append(tuple(float(value) / MM for value in operands[-2:]))
        elif operator == b'h':
            across, up = zip(*points, strict=True)
            found.append((min(across), min(up), max(across), max(up), dashed))
        elif operator in (b'S', b'f'):
            points = []
    return found


def faces_of(page):
    """Return where each face lies on a side: its number, left and foot in mm."""
    found, matrix = [], None
    for operands, operator in ContentStream(page['/Contents'], page.pdf).operations:
        if operator == b'cm':
            matrix = [float(value) for value in operands]
        elif operator == b'Do' and operands[0].startswith('/face-'):
            found.append((int(operands[0].removeprefix('/face-')), matrix[4] / MM, matrix[5] / MM))
    return found


def sized(boxes, width, height, dashed):
    return [
        box
        for box in boxes
        if (box[2] - box[0], box[3] - box[1], box[4]) == pytest.approx((width, height, dashed), abs=0.02)
    ]


@pytest.mark.parametrize(('size', 'pitches'), [*((size, '') for size in SIZES), ('id-1', '1 to 24 by 1/2')])
def test_each_back_lies_mirrored_behind_its_front(size, pitches):
    """The last has two cards by turns, so that a back behind the wrong front would show."""
    work, pdf, _ = made(size, pitches)
    front, back = PdfReader(pdf).pages
    width = float(front.mediabox.width) / MM
    behind = sorted((face - 1, width - x - work.plan.form.width_mm, y) for face, x, y in faces_of(back))

    assert sorted(faces_of(front)) == [pytest.approx(place, abs=0.01) for place in behind]
    assert len(behind) == work.sheet.up


@pytest.mark.parametrize('size', SIZES)
def test_the_edge_to_flip_on_is_the_upright_one(size):
    reader = PdfReader(made(size, '')[1])
    box = reader.pages[0].mediabox
    preferences = reader.trailer['/Root']['/ViewerPreferences']

    assert preferences['/Duplex'] == (
        '/DuplexFlipLongEdge' if box.height > box.width else '/DuplexFlipShortEdge'
    )
    assert preferences['/PrintScaling'] == '/None'


@pytest.mark.parametrize('size', SIZES[:4])
def test_each_card_has_its_cut_line_film_border_and_holes(size):
    work, pdf, _ = made(size, '')
    width, height = work.sheet.card_mm
    for place, page in enumerate(PdfReader(pdf).pages):
        boxes = boxes_of(page)
        cuts = sized(boxes, width, height, False)
        assert sorted(box[:2] for box in cuts) == [
            pytest.approx(spot, abs=0.01) for spot in sorted((x, y) for _, x, y in faces_of(page))
        ]
        assert len(sized(boxes, width + 6, height + 6, True)) == work.sheet.up
        for across, dashed in ((11, False), (5, True)):
            holes = sized(boxes, across, across, dashed)
            centers = sorted(((box[0] + box[2]) / 2, (box[1] + box[3]) / 2) for box in holes)
            inside = 8.5 if place else width - 8.5
            assert centers == [
                pytest.approx(spot, abs=0.01)
                for spot in sorted((box[0] + inside, box[3] - 8.5) for box in cuts)
            ]


def test_a_card_that_fills_the_paper_has_holes_and_nothing_to_cut():
    _, pdf, _ = made('letter', '')
    for page in PdfReader(pdf).pages:
        assert sorted(round(box[2] - box[0]) for box in boxes_of(page)) == [5, 11]


@pytest.mark.parametrize('paper', PAPERS_MM)
@pytest.mark.parametrize('size', SIZES[:4])
@pytest.mark.parametrize('turned', [False, True])
def test_films_neither_overlap_nor_leave_the_paper(size, paper, turned):
    form = FORMATS[size].turned() if turned else FORMATS[size]
    sheet = card_sheet(form, paper)
    width, height = sheet.sheet_mm
    corners = [sheet.corner_mm(column, row) for column in range(sheet.columns) for row in range(sheet.rows)]

    assert sorted(sheet.sheet_mm) == sorted(PAPERS_MM[paper])
    for x, y in corners:
        assert x - 3 >= -0.06
        assert x + form.width_mm + 3 <= width + 0.06
        assert y >= 6
        assert y + form.height_mm + 6 <= height
    for place, (x, y) in enumerate(corners):
        for other_x, other_y in corners[:place]:
            apart = abs(x - other_x) >= form.width_mm + 5.99, abs(y - other_y) >= form.height_mm + 5.99
            assert any(apart)


@pytest.mark.parametrize(
    ('size', 'up'), [('id-1', 8), ('index', 4), ('a6', 2), ('half-letter', 1), ('letter', 1)]
)
def test_how_many_go_on_letter(size, up):
    assert card_sheet(FORMATS[size], 'letter').up == up


def test_a_card_bigger_than_the_paper_is_refused():
    with pytest.raises(BookError) as caught:
        card_sheet(FORMATS['letter'], 'a4')
    assert error_line(caught.value) == (
        "--size: 'letter' is bigger than a4 paper; next: take a smaller card, or set paper = 'letter'"
    )


@pytest.mark.parametrize(
    ('cards', 'sheets'),
    [
        (1, [[0, 0, 0, 0]]),
        (2, [[0, 1, 0, 1]]),
        (3, [[0, 1, 2]]),
        (5, [[0, 1, 2, 3], [4]]),
    ],
)
def test_a_set_is_repeated_as_often_as_it_fits(cards, sheets):
    found = placed(cards, card_sheet(FORMATS['index'], 'letter'))

    assert [[card for card, *_ in one] for one in found] == sheets
    assert [place[1:] for place in found[0]] == [(0, 0), (1, 0), (0, 1), (1, 1)][: len(found[0])]


@pytest.mark.parametrize('size', SIZES)
def test_every_word_of_a_face_is_on_its_sheet_once_for_each_card(size):
    work, pdf, _ = made(size, '')
    for page in (1, 2):
        on_face = Counter(word for *_, word in word_boxes(work.job.out, page))
        on_sheet = Counter(word for *_, word in word_boxes(pdf, page))
        assert on_face
        assert all(on_sheet[word] >= count * work.sheet.up for word, count in on_face.items())


@pytest.mark.parametrize('size', SIZES)
def test_the_file_is_sound(size):
    done = subprocess.run(['qpdf', '--check', made(size, '')[1]], capture_output=True, text=True, check=False)

    assert done.returncode == 0, done.stdout + done.stderr


def test_same_settings_same_bytes(tmp_path):
    _, pdf, _ = made('index', '4,6,8,12')
    work = card_work(settings_of('4,6,8,12'), 'index', tmp_path)
    set_document(work.job)
    finish_cards(work, tmp_path / 'again.pdf')

    assert pdf.read_bytes() == (tmp_path / 'again.pdf').read_bytes()


def test_the_margin_says_what_to_do():
    _, pdf, _ = made('a6', '')
    labels = [
        operands[1]['/ActualText']
        for page in PdfReader(pdf).pages
        for operands, operator in ContentStream(page['/Contents'], page.pdf).operations
        if operator == b'BDC'
    ]
    doing = 'flip on the short edge · 100 %: card 105 × 148 mm · cut, round, punch on the solid lines · laminate, 111 × 154 mm'

    assert labels == [f'sheet 1 of 1 · front · {doing}', f'sheet 1 of 1 · back · {doing}']
