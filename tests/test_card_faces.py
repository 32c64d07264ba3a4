"""Cards as they are printed: every figure read back from the PDF, the hole, the edges, the type."""

from __future__ import annotations

import re
import subprocess

import pytest
from card_support import COLUMN, SIZES, ink, lines_of, made, mixed, settings_of, table_of, word_boxes
from check_support import real, rounded
from each import some
from mpmath import sqrt
from msgspec.structs import replace
from pypdf import PdfReader

from layouts.cards.faces import TableFace
from layouts.cards.make import card_work
from layouts.pdf.typeset import set_document
from tablegen.numbers import text
from tablegen.numbers.figure import Measure

HOLE_MM, HOLE_RADIUS_MM, CLEAR_MM = 8.5, 5.5, 1.0
"""Center from the top and the outer edge, radius in the paper, and what is kept free around it."""
CARDS = [(size, pitches) for size in SIZES for pitches in ('', '6')]
CARDS += some([(size, '4,6,8,12') for size in SIZES])
CAUTION = 'Geometry, not strength: code and a licensed designer decide.'


def faces(size, pitches=''):
    work, *_ = made(size, pitches)
    return work.job.out, work.plan


@pytest.mark.parametrize('size', some(SIZES))
@pytest.mark.parametrize(('pitches', 'rises'), [('', range(1, 25)), ('4,6,8,12', (4, 6, 8, 12))])
def test_every_figure_of_all_pitches_stands_under_its_head(size, pitches, rises):
    """What a head names is worked out for the row's pitch; heads are read from the card, and all differ."""
    pdf, plan = faces(size, pitches)
    tables = [table_of(pdf, page) for page, face in enumerate(plan.faces, 1) if isinstance(face, TableFace)]
    found = {label: cells for table in tables for label, cells in table.rows.items()}
    (heads,) = {table.heads for table in tables}

    assert {table.corner for table in tables} == {'in 12'}
    assert {table.what for table in tables} == {'Degrees: from square across'}
    assert len(heads) == len(set(heads)) >= 4
    assert found == {str(rise): tuple(COLUMN[head](real(rise)) for head in heads) for rise in rises}


def test_pitches_in_degrees_have_no_rise_at_their_head():
    pdf, _ = faces('a6', '6,30 deg,45 deg')
    table = table_of(pdf, 1)

    assert table.corner == 'pitch'
    assert list(table.rows) == ['6', '30°', '45°']


@pytest.mark.parametrize('size', ['a6', 'letter'])
def test_the_back_says_what_each_head_of_the_front_means(size):
    """Each by its own words; of angles on which face, of lengths along what or over what."""
    pdf, _ = faces(size)
    heads = table_of(pdf, 1).heads
    lines = lines_of(pdf, 2)
    for head in heads:
        (line,) = [
            line for line in lines if line.startswith(head.replace('- ', '').partition(' at ')[0] + ' ')
        ]
        for word in [word for word in FACES if word in head.split()]:
            assert FACES[word] in line


FACES = {'side': 'on the side', 'top': 'top edge', 'inches': 'in', 'tilt': 'tilt'}
"""A word of a head, and what its explanation says of it."""


@pytest.mark.parametrize('size', ['half-letter', 'letter'])
def test_every_run_by_the_inch_stands_under_its_inches(size):
    pdf, _ = faces(size, '6')
    found = [table_of(pdf, page) for page in (1, 2)]
    assert [table.what.partition(':')[0] for table in found] == ['Common rafter', 'Hip or valley']
    for table, per_inch in zip(found, (sqrt(180) / 12, sqrt(324) / 12), strict=True):
        assert table.corner == 'ft in'
        assert table.heads == tuple(map(str, range(12)))
        for feet in range(25):
            runs = [12 * feet + inch for inch in range(12)]
            wanted = tuple(mixed(run * per_inch) if 1 <= run <= 288 else '' for run in runs)
            assert table.rows[str(feet)] == wanted


HEADS_OF_RUNS = ('common inches', 'hip, valley inches', 'rise inches')


@pytest.mark.parametrize(('size', 'last'), [('id-1', 13), ('index', 24), ('a6', 24)])
def test_every_run_by_the_foot_and_every_odd_inch_stands_under_its_head(size, last):
    pdf, _ = faces(size, '6')
    by_foot, odd = table_of(pdf, 1), table_of(pdf, 2)

    def row(run) -> tuple[str, ...]:
        return tuple(mixed(run * length) for length in (sqrt(180) / 12, sqrt(324) / 12, real('1/2')))

    assert (by_foot.corner, odd.corner) == ('run ft', 'run in')
    assert by_foot.heads == odd.heads == HEADS_OF_RUNS
    assert by_foot.rows == {str(feet): row(12 * feet) for feet in range(1, last + 1)}
    assert [label for label in odd.rows if '/' not in label] == list(map(str, range(1, 12)))
    assert odd.rows == {label: row(real(label)) for label in odd.rows}


def test_the_cuts_of_one_pitch_are_told_by_name_at_its_foot():
    words = ' '.join(lines_of(faces('a6', '6')[0], 1))
    named = {
        'on the side: plumb cut': COLUMN['plumb, common side'],
        f'{COLUMN["plumb, common side"](real(6))}, hip': COLUMN['plumb, hip side'],
        'on the top edge: cheek of jacks': COLUMN['cheek, jack top'],
        f'{COLUMN["cheek, jack top"](real(6))}, hip': COLUMN['cheek, hip top'],
        'Backing: tilt': COLUMN['back- ing tilt'],
        'Per foot of run': COLUMN['common inches per ft'],
        'in, hip': COLUMN['hip inches per ft'],
    }
    for name, figure in named.items():
        assert f'{name} {figure(real(6))}' in words


@pytest.mark.parametrize('style', ['inches', 'feet-inches'])
def test_the_example_is_worked_with_the_cards_own_figure(tmp_path, style):
    settings = replace(settings_of('4,6'), measure=Measure(16, style))
    work = card_work(settings, 'letter', tmp_path)
    set_document(work.job)
    words = ' '.join(lines_of(work.job.out, 2))
    said = text.length(rounded(real('12.5') * real('13.416'), 16), 16, style).text

    assert f'6 in 12, run 12 ft 6 in: 12.5 × 13.416 = 167.700 in, near {said}' in words.replace('\u00a0', ' ')


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
