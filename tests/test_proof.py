"""The proof-reader: a good book has nothing that differs, every error that is planted is found, and nothing is shared.

Its own arithmetic is not the book's, nor that of tests/oracle; the three agree on every figure of the openings.
"""

from __future__ import annotations

import random
import re
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest
from asking import ask
from pypdf import PdfReader
from test_rooms import built

from layouts.pdf.read_back import Pdf, pages_of
from layouts.words.proof import names
from tablegen.proof.found import Fault, Found
from tablegen.proof.openings import side_of
from tablegen.proof.page import Page, said
from tablegen.proof.proof import proof
from tablegen.proof.stated import stated
from tablegen.proof.word import Word

BY_RUN, BESIDE, STEEP = (2 + 1) * (24 + 11 + 15 + 1), 4 + 2 + 2 + 2 + 6 + 5 + 5 + 8 + 4 + 6 + 12, 8
"""Figures of an opening: of lengths and exact feet, and beside them; pitches whose steps, on both pages, are told too."""
Planter = Callable[[list[Page]], int]


@pytest.fixture(scope='module')
def read(openings):
    """The pages of the book with every opening."""
    return pages_of(openings.built.booklet)


def with_planted(read, plant: Planter) -> tuple[Found, int]:
    """Return what is found in a copy of the pages in which something was planted, and on which page that was."""
    copy = [Page(page.number, list(page.words), page.links) for page in read]
    place = plant(copy)
    return proof(copy, names), place


def test_nothing_differs_in_a_good_book_and_every_figure_is_read(openings):
    status, told, remarks = ask('proof', str(openings.built.booklet))

    count, first = 25 * (BY_RUN + BESIDE) + 2 * STEEP, openings.planned.index['opening:1 in 12']
    lines = told.splitlines()
    assert (status, remarks) == (0, '')
    assert lines[0] == f'{count:,} figures read on pages {first}–{first + 49}: 0 differ'
    assert lines[1].endswith('amiss: 0')
    assert lines[2:] == [
        f'not read: figures of pages 1–{first - 1}, {first + 50}–{openings.planned.index.total}',
        'not read: drawings, notes and what they count',
    ]


def test_the_pages_at_a_glance_are_read_in_any_edition(small_book):
    pdf = Pdf(PdfReader(small_book.built.booklet))
    index = small_book.planned.index
    wanted = {index['glance'], index['glance'] + 1, index['made']}
    pages = [
        Page(place + 1, pdf.words(place) if place + 1 in wanted else []) for place in range(len(pdf.pages))
    ]
    found = proof(pages, names)

    assert (found.figures, found.faults) == (3 * (6 + 4 + 3), [])
    row = next(line for line in pages[index['glance']].lines if line[0].text == '6')
    pages[index['glance']].words.remove(row[-1])
    pages[index['glance']].words.append(replace(row[-1], text='19.48°'))
    assert [
        (fault.row, fault.head, fault.right)
        for fault in proof([Page(p.number, p.words) for p in pages], names).faults
    ] == [('6', 'each face', row[-1].text)]


# Planted errors -------------------------------------------------------------------------------------------------


def figures_on(pages: list[Page], book) -> list[tuple[Page, Word]]:
    """Return every word with a digit in the tables of the openings: figures, and the runs and sizes that name rows."""
    found = []
    for page in pages:
        if side_of(page, names(book)) is None:
            continue
        top = page.named('ft')[0].base
        for line in page.lines:
            legend = said(line[-4:]).endswith('not left')
            found += [
                (page, word)
                for word in line
                if not word.bold
                and word.base < top
                and word.size > page.notes_size * 1.01
                and any(map(str.isdigit, word.text))
                and '√' not in word.text
                and not (legend and word in line[-4:])
            ]
    return found


def change_a_digit(seed: int) -> Planter:
    def plant(pages: list[Page]) -> int:
        chosen = random.Random(seed)
        page, word = chosen.choice(figures_on(pages, stated(pages)))
        place = chosen.choice([n for n, letter in enumerate(word.text) if letter.isdigit()])
        digit = str((int(word.text[place]) + chosen.randint(1, 9)) % 10)
        page.words[page.words.index(word)] = replace(
            word, text=f'{word.text[:place]}{digit}{word.text[place + 1 :]}'
        )
        _forget(page)
        return page.number

    return plant


def head(page_of: str, side: int, change: dict[str, str]) -> Planter:
    """Change words of heads on a page of a pitch."""

    def plant(pages: list[Page]) -> int:
        page = _page(pages, page_of, side)
        page.words[:] = [
            replace(word, text=change.get(word.text, word.text)) if word.bold else word for word in page.words
        ]
        _forget(page)
        return page.number

    return plant


def row(page_of: str, side: int, begins: str, change: Callable[[list[Word]], list[Word]]) -> Planter:
    """Put other words in place of those of a row."""

    def plant(pages: list[Page]) -> int:
        page = _page(pages, page_of, side)
        runs: dict[int, list[Word]] = {}
        for word in page.words:
            runs.setdefault(word.run, []).append(word)
        (some,) = [words for words in runs.values() if re.match(rf'{begins} \d', said(words))]
        page.words[:] = [word for word in page.words if word not in some] + change(some)
        _forget(page)
        return page.number

    return plant


def swapped(words: list[Word]) -> list[Word]:
    """Return a row in which an angle and the first word of the figure after it have changed places."""
    place = next(n for n, word in enumerate(words) if word.text.endswith('°'))
    one, other = words[place : place + 2]
    words[place : place + 2] = [replace(one, text=other.text), replace(other, text=one.text)]
    return words


def pages_swapped(pages: list[Page]) -> int:
    one, other = (_page(pages, pitch, 0) for pitch in ('6 in 12', '7 in 12'))
    one.words[:], other.words[:] = list(other.words), list(one.words)
    for page in (one, other):
        _forget(page)
    return one.number


def page_missing(pages: list[Page]) -> int:
    page = _page(pages, '9 in 12', 1)
    page.words.clear()
    _forget(page)
    return 0


def cited_wrong(pages: list[Page]) -> int:
    page = next(page for page in pages if page.named('Contents'))
    place = next(
        n for n, word in enumerate(page.words) if word.text == '8' and page.words[n + 2].text == '12'
    )
    number = page.words[place + 3]
    page.words[place + 3] = replace(number, text=str(int(number.text) + 2))
    _forget(page)
    return page.number


PLANTED = {
    'heads of two columns swapped': head('5 in 12', 1, {'heel': 'seat', 'seat': 'heel'}),
    'heads of lengths swapped': head('6 in 12', 0, {'common': 'rise', 'rise': 'common'}),
    'a head changed': head('7 in 12', 0, {'plate': 'wall'}),
    'the thickness of a title changed': head('8 in 12', 0, {'3/4': '1/4'}),
    'two figures of a row swapped': row('9 in 12', 1, 'Hip, valley', swapped),
    'a row missing': row('10 in 12', 1, 'Jack at a hip', lambda words: []),
    'a row of lengths missing': row('11 in 12', 0, '17', lambda words: []),
    'a row twice': row('12 in 12', 0, 'Plumb cut', lambda words: [*words, *(replace(one, base=one.base - 3) for one in words)]),
    'a label changed': row('13 in 12', 1, 'Valley’s heel: out, level', lambda words: [replace(words[0], text='Hip’s'), *words[1:]]),
    'pages out of order': pages_swapped,
    'a page missing': page_missing,
    'a page cited wrong': cited_wrong,
    **{f'a digit changed, {seed}': change_a_digit(seed) for seed in range(10)},
}  # fmt: skip


@pytest.mark.parametrize('planted', PLANTED)
def test_a_planted_error_is_found_where_it_is(read, planted):
    found, page = with_planted(read, PLANTED[planted])

    assert found.faults
    assert page in {fault.page for fault in found.faults}
    if planted.startswith('two figures'):
        assert {(fault.head, fault.page) for fault in found.faults} == {
            ('from square', page),
            ('square 12 &', page),
        }
    if planted.startswith('a row missing'):
        assert [(fault.head, fault.printed) for fault in found.faults] == [('level', ''), ('along top', '')]


@pytest.mark.thorough
@pytest.mark.parametrize('seed', range(10, 210))
def test_a_digit_changed_anywhere_is_found(read, seed):
    found, page = with_planted(read, change_a_digit(seed))
    assert {fault.page for fault in found.faults} == {page}


def _page(pages: list[Page], pitch: str, side: int) -> Page:
    book = names(stated(pages))
    (found,) = [page for page in pages if side_of(page, book) == side and page.pitch == pitch]
    return found


def _forget(page: Page) -> None:
    """Let a page be read anew after its words were changed."""
    for name in ('lines', 'phrases', 'body', 'folio', 'pitch', '_foot', 'notes_size'):
        page.__dict__.pop(name, None)


# What it answers, and what it shares -----------------------------------------------------------------------------


def test_what_differs_is_told_with_page_row_head_printed_and_right(monkeypatch):
    faults = [
        Fault('figure', 28, '6 in 12, 4 ft', 'common', '53 3/4', '53 11/16'),
        Fault('figure', 29, '6 in 12, Backing, each face', '', '', '18.43°'),
        Fault('folio', 30, '', '', '31', '30'),
    ]
    monkeypatch.setattr('layouts.pdf.read_back.pages_of', lambda path: [])
    monkeypatch.setattr(
        'tablegen.proof.proof.proof', lambda *_ignored: Found(figures=2, pages=1, faults=faults)
    )
    status, told, remarks = ask('proof', 'booklet.pdf')

    assert (status, remarks) == (1, '')
    assert told.splitlines() == [
        'page 28, 6 in 12, 4 ft, “common”: printed 53 3/4, right 53 11/16',
        'page 29, 6 in 12, Backing, each face: printed nothing, right 18.43°',
        'page 30 of the file is numbered 31',
        '2 figures read: 2 differ',
        '0 links followed, 0 page numbers read; links, numbers, pages and rows amiss: 1',
        'not read: figures of pages 1',
    ]


@pytest.mark.parametrize('written', [b'', b'no PDF\n', None, 'cut'])
def test_what_is_no_book_is_refused_in_a_line(openings, tmp_path, written):
    booklet = openings.built.booklet
    other = booklet.parent / 'sheets.pdf'
    path = tmp_path / 'booklet.pdf'
    path.write_bytes(
        other.read_bytes()
        if written is None
        else booklet.read_bytes()[:50_000]
        if written == 'cut'
        else written
    )
    status, told, remarks = ask('proof', str(path))

    assert (status, told) == (2, '')
    assert remarks == (
        f'rafterbook: {path}: is no booklet of this program; allowed: a PDF with the page of how the copy was made; '
        'next: give the booklet.pdf that “make” wrote\n'
    )


def test_it_shares_nothing_with_what_made_the_book():
    rooms = built()
    assert rooms['tablegen/proof/'] == set()
    assert {room for room, used in rooms.items() if 'tablegen/proof/' in used} == {
        'layouts/words/',
        'layouts/pdf/',
        'layouts/verbs/',
    }
    for path in (Path(__file__).parent.parent / 'tablegen' / 'proof').glob('*.py'):
        for line in path.read_text('utf-8').splitlines():
            assert not line.startswith(('from tablegen', 'import tablegen')) or line.startswith(
                'from tablegen.proof.'
            ), line
