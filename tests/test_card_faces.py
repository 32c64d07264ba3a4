"""Cards as they are printed: every figure read back from the PDF, the hole, the edges, the type."""

from __future__ import annotations

import re
import subprocess
from itertools import chain

import pytest
from card_support import COLUMN, SIZES, ink, lines_of, made, mixed, word_boxes
from check_support import real
from mpmath import sqrt
from pypdf import PdfReader

HOLE_MM, HOLE_RADIUS_MM, CLEAR_MM = 8.5, 5.5, 1.0
"""Center from the top and the outer edge, radius in the paper, and what is kept free around it."""
CARDS = [(size, pitches) for size in SIZES for pitches in ('', '6', '4,6,8,12')]
CAUTION = 'Geometry, not strength: code and a licensed designer decide.'


def faces(size, pitches=''):
    work, *_ = made(size, pitches)
    return work.job.out, work.plan


def columns_said(said):
    return next(line for line in said if line.startswith('columns: ')).removeprefix('columns: ').split(', ')


@pytest.mark.parametrize('size', SIZES)
@pytest.mark.parametrize(('pitches', 'rises'), [('', range(1, 25)), ('4,6,8,12', (4, 6, 8, 12))])
def test_every_figure_of_all_pitches_is_read_back(size, pitches, rises):
    pdf, plan = faces(size, pitches)
    names = columns_said(made(size, pitches)[2])
    lines = list(chain.from_iterable(lines_of(pdf, page) for page in range(1, len(plan.faces) + 1)))
    rows = [' '.join([str(rise), *(COLUMN[name](real(rise)) for name in names)]) for rise in rises]

    assert {'plumb cut', 'common per foot', 'hip per foot', 'jacks at 16'} <= set(names)
    assert [row for row in rows if row not in lines] == []


@pytest.mark.parametrize('size', ['half-letter', 'letter'])
def test_every_run_by_the_inch_is_read_back(size):
    pdf, _ = faces(size, '6')
    for page, per_inch in ((1, sqrt(180) / 12), (2, sqrt(324) / 12)):
        lines = lines_of(pdf, page)
        for feet in range(25):
            runs = [run for run in range(12 * feet, 12 * feet + 12) if 1 <= run <= 288]
            assert ' '.join([str(feet), *(mixed(run * per_inch) for run in runs)]) in lines


@pytest.mark.parametrize(('size', 'last'), [('id-1', 12), ('index', 24), ('a6', 24)])
def test_every_run_by_the_foot_and_every_odd_inch_is_read_back(size, last):
    pdf, _ = faces(size, '6')
    common, hip = sqrt(180) / 12, sqrt(324) / 12
    for page, labels in (
        (1, [(str(feet), 12 * feet) for feet in range(1, last + 1)]),
        (2, [(str(n), n) for n in range(1, 12)]),
    ):
        lines = lines_of(pdf, page)
        for label, run in labels:
            assert f'{label} {mixed(run * common)} {mixed(run * hip)} {mixed(real(run) / 2)}' in lines
    assert f'1/2 {mixed(common / 2)} {mixed(hip / 2)} {mixed(real("1/4"))}' in lines_of(pdf, 2)


@pytest.mark.parametrize(('size', 'pitches'), CARDS)
def test_every_side_says_what_geometry_does_not_know(size, pitches):
    pdf, plan = faces(size, pitches)
    for page in range(1, len(plan.faces) + 1):
        assert CAUTION in ' '.join(lines_of(pdf, page))


@pytest.mark.parametrize(('size', 'pitches'), CARDS)
def test_the_hole_meets_no_word(size, pitches):
    pdf, plan = faces(size, pitches)
    for page in range(1, len(plan.faces) + 1):
        x = plan.form.width_mm - HOLE_MM if page % 2 else HOLE_MM
        boxes = word_boxes(pdf, page)
        assert boxes
        for left, top, right, foot, word in boxes:
            away = max(left - x, 0, x - right), max(top - HOLE_MM, 0, HOLE_MM - foot)
            assert away[0] ** 2 + away[1] ** 2 >= HOLE_RADIUS_MM**2, word


@pytest.mark.parametrize(('size', 'pitches'), CARDS)
def test_neither_hole_nor_edge_has_ink(size, pitches):
    """Looked at as a picture: white around the hole's center, and along all four edges."""
    pdf, plan = faces(size, pitches)
    dots = 8
    for page in range(1, len(plan.faces) + 1):
        width, height, picture = ink(pdf, page, dots)
        x, y = (plan.form.width_mm - HOLE_MM if page % 2 else HOLE_MM) * dots, HOLE_MM * dots
        reach = (HOLE_RADIUS_MM + CLEAR_MM) * dots - 2
        for row in range(int(y - reach), int(y + reach)):
            half = int((reach**2 - (row - y) ** 2) ** 0.5)
            assert set(picture[row * width + int(x) - half : row * width + int(x) + half]) <= {255}
        edge = int(3 * dots)
        for row in range(height):
            line = picture[row * width : (row + 1) * width]
            outside = line if row < edge or row >= height - edge else line[:edge] + line[-edge:]
            assert min(outside) == 255
        assert min(picture) == 0


@pytest.mark.parametrize(('size', 'pitches'), CARDS)
def test_no_type_is_below_its_floor(size, pitches):
    """Whole figures and words from 7.5 pt up, fractions from 86 % of that."""
    pdf, _ = faces(size, pitches)
    found = {}
    for page in PdfReader(pdf).pages:

        def note(words, cm, tm, font, size):
            if words.strip():
                found.setdefault(round(abs(size * tm[3] * cm[3]), 2), words)

        page.extract_text(visitor_text=note)

    assert found
    assert min(found) >= 0.86 * 7.5 - 0.01
    assert {'/' in words for size, words in found.items() if size < 7.5 - 0.01} <= {True}


@pytest.mark.parametrize(('size', 'pitches'), CARDS)
def test_only_the_books_typeface_and_nothing_light(size, pitches):
    told = subprocess.run(
        ['pdffonts', made(size, pitches)[1]], capture_output=True, text=True, check=True
    ).stdout
    names = re.findall(r'^[A-Z]{6}\+(\S+)', told, re.MULTILINE)

    assert names
    assert all(name.startswith('Open-Sans') and 'Bold' in name for name in names)
    assert len(names) == len(told.splitlines()) - 2
