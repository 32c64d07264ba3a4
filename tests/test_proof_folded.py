"""A book's sheets folded by the proof-reader: a good book comes out page by page; what is planted in sheets is found."""

from __future__ import annotations

import pytest
from msgspec.structs import replace
from pypdf import PdfReader

from layouts.pdf.read_back import Pdf, pages_of, print_of, words_in
from layouts.pdf.typefaces import Typeface
from layouts.words.sheets import sheet_names
from tablegen.proof.folded import Folder
from tablegen.proof.found import Found
from tablegen.proof.ink import Ink, Piece, Stroke

FRONT, BACK, LATER = 2, 3, 4
"""Places of the first sheet's sides and of the next one's front, past the sheet of instructions."""
CUT, FOLD, STAPLE, BAR = 'cut', 'fold', 'staple', 'bar'


@pytest.fixture(scope='module')
def book(small_book):
    """Pages of a book of several sections, and the ink of its sheets."""
    pdf = Pdf(PdfReader(small_book.built.sheets))
    inks = [pdf.ink(place, deep=False) for place in range(len(pdf.pages))]
    return pages_of(small_book.built.booklet), inks


def folded(book, *changed: tuple[int, Ink]) -> Found:
    pages, inks = book
    found, sides = Found(), list(inks)
    for place, ink in changed:
        sides[place] = ink
    Folder(pages, sheet_names(), found).fold(sides)
    return found


def kinds(found: Found) -> set[str]:
    return {fault.kind.removeprefix('sheet-') for fault in found.faults}


def test_the_sheets_fold_into_the_booklet(book, small_book):
    found = folded(book)

    assert found.faults == []
    assert (found.sheets, found.sections) == (len(book[1]) // 2 - 1, small_book.built.sections)


def moved(piece: Piece, far: float) -> Piece:
    words = tuple(replace(word, left=word.left + far, right=word.right + far) for word in piece.words)
    return replace(piece, left=piece.left + far, right=piece.right + far, given=words)


def drawn(ink: Ink, wanted: str) -> list[Stroke]:
    """Return the marks of one kind."""
    x, long = ink.size[0] / 2, {CUT: 0.0, FOLD: 0.0, STAPLE: 0.0, BAR: 4 * 72.0}[wanted]
    upright = [line for line in ink.strokes if line.box[0] == line.box[2]]
    if wanted == BAR:
        return [line for line in ink.strokes if abs(line.long - long) < 0.1]
    if wanted == FOLD:
        return [line for line in ink.strokes if line.dashed]
    if wanted == STAPLE:
        return [line for line in upright if not line.dashed and abs(line.box[0] - x) < 0.1]
    return [line for line in upright if not line.dashed and abs(line.box[0] - x) > 100 and line.long > 10]


@pytest.mark.parametrize('mark', [CUT, FOLD, STAPLE, BAR])
@pytest.mark.parametrize('far', [4.0, None])
def test_a_mark_that_is_moved_or_gone_is_found(book, mark, far):
    ink = book[1][FRONT]
    (gone, *_others) = drawn(ink, mark)
    other = (
        ()
        if far is None
        else (replace(gone, points=((gone.points[0][0] + far, gone.points[0][1] + far), gone.points[1])),)
    )
    found = folded(
        book, (FRONT, replace(ink, strokes=(*(line for line in ink.strokes if line is not gone), *other)))
    )

    assert kinds(found) == {mark}
    assert {fault.page for fault in found.faults} == {FRONT + 1}


def test_pages_that_lie_elsewhere_are_found(book):
    ink, back, later = (book[1][place] for place in (FRONT, BACK, LATER))
    one, other, *rest = ink.pieces
    placed = (replace(one, given=other.words), replace(other, given=one.words))
    assert kinds(folded(book, (FRONT, replace(ink, pieces=(*placed, *rest))))) == {'turned'}
    assert kinds(folded(book, (FRONT, later), (LATER, ink))) == {'turned', 'label'}
    mirrored = tuple(moved(piece, back.size[0] - piece.left - piece.right) for piece in back.pieces)
    assert kinds(folded(book, (BACK, replace(back, pieces=mirrored)))) == {'turned'}
    assert kinds(folded(book, (FRONT, replace(ink, pieces=(moved(one, -4.0), other, *rest))))) == {'shift'}
    assert kinds(folded(book, (FRONT, replace(ink, pieces=(other, *rest))))) == {'turned'}
    assert kinds(folded(book, (BACK, replace(back, labels=ink.labels)))) == {'label', 'staple'}


def test_a_page_of_another_book_is_found(book):
    ink = book[1][FRONT]
    one, *rest = ink.pieces
    word = replace(one.words[0], text='5 1/2')
    found = folded(book, (FRONT, replace(ink, pieces=(replace(one, given=(word, *one.words[1:])), *rest))))

    assert [(fault.kind, fault.printed) for fault in found.faults] == [('sheet-turned', '')]


def test_the_same_bytes_in_a_typeface_that_says_something_else_are_no_page_of_the_booklet():
    written = b'/f 10 Tf\n1 0 0 1 20 30 Tm\n[<0001>] TJ\n'
    faces = [
        {'/f': Typeface(False, {1: letter}, {1: wide}, 0.0)}
        for letter, wide in (('6', 5.0), ('9', 5.0), ('6', 4.0))
    ]

    assert [words_in(written, one)[0].text for one in faces] == ['6', '9', '6']
    assert len({print_of(written, one) for one in faces}) == 3


def test_sheets_whose_sides_do_not_go_together_are_refused(book):
    pages, inks = book
    found = Found()
    Folder(pages, sheet_names(), found).fold(inks[:-1])
    assert 'pairs' in kinds(found)
