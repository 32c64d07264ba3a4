"""The proof-reader on cards: a good one has nothing that differs, and what is planted in one is found where it is."""

from __future__ import annotations

import random
import re
from collections.abc import Callable

import pytest
from asking import ask
from card_support import SIZES, made
from msgspec.structs import replace

from layouts.pdf.read_back import pages_of
from layouts.words.proof_cards import card_names
from tablegen.proof.card_face import CardFace
from tablegen.proof.cards import read_card
from tablegen.proof.found import Found
from tablegen.proof.ink import Ink
from tablegen.proof.page import Page
from tablegen.proof.word import Word

ROWS, COLUMNS, PARTS, EXAMPLE = 25, 8, 16, 4
SIZES_PRINTED = 2 * 2 * 2
"""Width and height of two cards on two sides of a sheet, each told once and measured at every card."""
Change = Callable[[list[Word]], list[Word]]


@pytest.fixture(scope='module')
def card(openings):
    """The sheets of an A6 card of all pitches."""
    return openings.built.booklet.parent / 'card.pdf'


@pytest.fixture(scope='module')
def by_the_foot():
    """The sheets of a card of one pitch."""
    return made('a6', '7 1/2')[1]


def planted(pdf, face: int, change: Change, ink: Callable[[Ink], Ink] = lambda ink: ink) -> Found:
    """Return what is found where the words of a face were changed, on all copies of it, or a page's ink."""
    pages = []
    for page in pages_of(pdf):
        pieces = tuple(
            replace(one, given=tuple(change(list(one.words)))) if one.name == f'face-{face}' else one
            for one in page.ink.pieces
        )
        changed = ink(replace(page.ink, pieces=pieces))
        pages.append(Page(page.number, list(page.words), page.links, lambda changed=changed: changed))
    found = read_card(pages, card_names())
    assert found
    return found


def words(change: dict[str, str], where: Callable[[Word], bool] = lambda word: True) -> Change:
    return lambda some: [
        replace(word, text=change.get(word.text, word.text)) if where(word) else word for word in some
    ]


def of_row(label: str, some: list[Word]) -> list[Word]:
    """Return the words of the row that a label begins."""
    first = next(word for word in some if word.text == label and word.size > 9)
    return [word for word in some if abs(word.base - first.base) < 1]


def without_row(label: str) -> Change:
    return lambda some: [word for word in some if word not in of_row(label, some)]


def swapped(label: str, one: str, other: str) -> Change:
    """Let two words of a row change places."""

    def change(some: list[Word]) -> list[Word]:
        row = of_row(label, some)
        exchange = {one: other, other: one}
        return [
            replace(word, text=exchange.get(word.text, word.text)) if word in row else word for word in some
        ]

    return change


def a_digit(seed: int) -> Change:
    """Change a digit of a figure, of a row's label or of a spacing."""

    def change(some: list[Word]) -> list[Word]:
        chosen = random.Random(seed)
        face = CardFace(1, tuple(some))
        low, top = face._rows[-1][0].base - 1, face.lines[1][0].base - 1
        heads = [word for word in some if word.base < top and not re.fullmatch('12', word.text)]
        word = chosen.choice([word for word in heads if word.base > low and re.search(r'\d', word.text)])
        place = chosen.choice([n for n, letter in enumerate(word.text) if letter.isdigit()])
        digit = str((int(word.text[place]) + chosen.randint(1, 9)) % 10)
        text = f'{word.text[:place]}{digit}{word.text[place + 1 :]}'
        return [replace(one, text=text) if one is word else one for one in some]

    return change


def test_nothing_differs_on_a_good_card_and_every_figure_is_read(card):
    status, told, remarks = ask('proof', str(card))

    count = ROWS * COLUMNS + PARTS + EXAMPLE + SIZES_PRINTED
    assert (status, remarks) == (0, '')
    assert told.splitlines() == [
        f'{count} figures read on pages 1–2: 0 differ',
        'not read: what the words of a card say; whether a word stands clear of the hole',
    ]


def test_a_card_of_one_pitch_is_read(by_the_foot):
    """By the foot to 24 ft and 11 inches with the sixteenths, three lengths each; on both sides its seven cuts."""
    status, told, _ = ask('proof', str(by_the_foot))

    count = 3 * (24 + 11 + 15) + 7 + 1 + SIZES_PRINTED
    assert (status, told.splitlines()[0]) == (0, f'{count} figures read on pages 1–2: 0 differ')


PLANTED = {
    'a figure': (0, words({'47.87°': '47.78°'}), [('8 in 12', 'cheek, hip top', '47.78°', '47.87°')]),
    'two columns swapped in a row': (0, swapped('8', '25.24°', '33.69°'), [
        ('8 in 12', 'plumb, common side', '25.24°', '33.69°'), ('8 in 12', 'plumb, hip side', '33.69°', '25.24°'),
    ]),
    'a spacing in a head': (0, words({'24': '19'}, lambda word: word.size < 8), None),
    'a part in thousandths': (1, words({'0.813': '0.831'}), [('Parts of an inch', '13/16', '0.831', '0.813')]),
    'a product': (1, words({'167.700': '167.070'}), [('6 in 12, run 12 ft 6 in', '=', '167.070', '167.700')]),
}  # fmt: skip


@pytest.mark.parametrize('name', PLANTED)
def test_a_planted_error_is_found_where_it_is(card, name):
    face, change, wanted = PLANTED[name]
    found = planted(card, face, change)

    told = [(fault.row, fault.head, fault.printed, fault.right) for fault in found.faults]
    assert {fault.page for fault in found.faults} == {face + 1}
    assert wanted is None or told == wanted


def test_heads_that_changed_places_and_rows_that_are_gone_are_found(card):
    heads = planted(
        card, 0, words({'jack': 'hip', 'hip': 'jack'}, lambda word: word.left > 290 and word.size < 8)
    )
    assert len(heads.faults) == 2 * ROWS
    missing = planted(card, 0, without_row('9'))
    assert [(fault.kind, fault.row) for fault in missing.faults] == [('gap', '8')]
    last = planted(card, 0, without_row('24'))
    assert [(fault.kind, fault.row) for fault in last.faults] == [('gap', '1–24 in 12')]


def test_a_card_drawn_small_or_askew_to_its_back_is_found(card):
    def small(ink: Ink) -> Ink:
        strokes = (
            replace(one, points=tuple((x * 0.99, y * 0.99) for x, y in one.points)) for one in ink.strokes
        )
        return replace(ink, strokes=tuple(strokes))

    found = planted(card, 9, list, small)
    printed = {(fault.head, fault.printed, fault.right) for fault in found.faults if fault.kind == 'figure'}
    assert printed == {('wide', '105', '103.95'), ('high', '148', '146.52')}
    assert 'ink' in {fault.kind for fault in found.faults}

    def aside(ink: Ink) -> Ink:
        pieces = (
            replace(one, left=one.left + 9, right=one.right + 9) if one.name == 'face-1' else one
            for one in ink.pieces
        )
        return replace(ink, pieces=tuple(pieces))

    assert 'back' in {fault.kind for fault in planted(card, 9, list, aside).faults}


@pytest.mark.parametrize('seed', range(4))
def test_a_digit_changed_is_found(card, by_the_foot, seed):
    assert planted(card, 0, a_digit(seed)).faults
    assert planted(by_the_foot, seed % 2, a_digit(seed)).faults


@pytest.mark.thorough
@pytest.mark.parametrize('size', SIZES)
@pytest.mark.parametrize('pitches', ['', '9', '30 deg', '1 to 24 by 1/2', '30 deg,35 deg,7 1/2'])
def test_cards_of_every_size(size, pitches):
    pdf = made(size, pitches)[1]
    status, told, _ = ask('proof', str(pdf))

    assert (status, ': 0 differ' in told) == (0, True), told
    for seed in range(8):
        face = 0 if pitches in ('', '30 deg,35 deg,7 1/2') else seed % 2
        assert planted(pdf, face, a_digit(seed)).faults, seed
