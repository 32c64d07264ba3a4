"""The faces of cards as printed: by head and label, worked out in space."""

from __future__ import annotations

from functools import cache

import pytest
from fifty_digits import mpf
from headed import read
from headed_right import CardFace, card_face
from labels.cards import MEANINGS, all_pitches, line_of_cuts, of_feet, of_inches, parts_of_an_inch, to_add
from labels.expected import BY_PITCH, Labels
from labels.pitch_pages import RUNS
from oracle.corner import common_length
from oracle.rounding import decimal, part
from printed_words import words_of
from skewed import SKEWED

from layouts.build import build_cards
from layouts.verbs.options import with_pitches
from tablegen.settings import read_settings

SIZES_MM = {'a6': (148, 105), 'id-1': (53.98, 85.6), 'half-letter': (228.6, 139.7)}
"""Of the cards as they lie."""
STEEP = BY_PITCH[1][1]


@pytest.fixture(scope='module')
def faces(tmp_path_factory, skewed):
    """Return front and back of a card, by size and pitches."""

    @cache
    def made(size: str, pitches: str = '') -> list[CardFace]:
        if (size, pitches) == ('a6', ''):
            path = skewed.made.built.card.path
        else:
            settings = read_settings(SKEWED, '')
            settings = with_pitches(settings, pitches) if pitches else settings
            path = build_cards(settings, size, tmp_path_factory.mktemp('card')).path
        return [card_face(words, *SIZES_MM[size]) for words in words_of(path)]

    return made


def check(face: CardFace, wanted: Labels) -> str:
    """Hold a face against what it should print, and return what stands below its table."""
    table = face.table(1, wanted.corner, len(wanted.rows))
    assert face.line == wanted.title
    assert table.heads == tuple(column.head for column in wanted.columns)
    assert [label for label, _ in table.rows] == [label for label, _ in wanted.rows]
    wrong = [
        f'"{column.head}" beside {label}: printed {table.cell(column.head, label)}, expected {column.figure(value)}'
        for column in wanted.columns
        for label, value in wanted.rows
        if table.cell(column.head, label) != column.figure(value)
    ]
    assert wrong == []
    return table.notes


def test_a_card_of_several_pitches(faces):
    front, _ = faces('a6')

    assert front.title == '5, 7 1/2 in 12'
    check(front, all_pitches())


def test_a_card_of_a_pitch_by_the_inch(faces):
    both = [
        of_inches(
            STEEP, 'Common rafter: along the top edge, plate line to ridge center line', RUNS[0].length
        ),
        of_inches(
            STEEP,
            'Hip or valley: along the top edge, corner of the plates to ridge center line',
            RUNS[1].length,
        ),
    ]
    for face, wanted in zip(faces('a6', '7 1/2'), both, strict=True):
        assert face.title == '7 1/2 in 12'
        assert line_of_cuts(STEEP) in check(face, wanted)


def test_a_card_of_a_pitch_by_the_foot(faces):
    front, back = faces('id-1', '7 1/2')

    assert front.title == back.title == '7 1/2 in 12'
    assert line_of_cuts(STEEP) in check(front, of_feet(STEEP))
    check(back, to_add(STEEP, 2))


def test_the_back_says_what_each_column_is(faces):
    _, back = faces('a6')
    told = [read(line) for line in back.below]
    for head, meaning in MEANINGS.items():
        assert [line for line in told if line.startswith(f'{head} ') and meaning in line], head


def test_the_back_works_an_example(faces):
    """12 ft 6 in at the book's pitch nearest to 6 in 12: the printed length of a foot, 12.5 times."""
    _, back = faces('half-letter')
    foot = decimal(common_length(BY_PITCH[0][1], 12), 3)
    product = 12.5 * mpf(foot)
    told = f'5 in 12, run 12 ft 6 in: 12.5 × {foot} = {decimal(product, 3)} in, near {part(product)} in.'
    assert told in [read(line) for line in back.below]


def test_the_back_tells_the_parts_of_an_inch(faces):
    _, back = faces('half-letter')
    pairs = {}
    for line in back.below:
        texts = [word.text for word in line]
        if len(texts) % 2 == 0 and all('.' in text for text in texts[1::2]):
            pairs |= dict(zip(texts[::2], texts[1::2], strict=True))
    assert pairs == parts_of_an_inch()
