"""The plan of a card: what fits, whatever the pitches; nothing runs out of its place."""

from __future__ import annotations

from fractions import Fraction

import pytest
from card_support import SIZES, settings_of
from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace

from layouts.cards.faces import TableFace
from layouts.cards.fitting import foot_height, head_size
from layouts.cards.formats import FORMATS
from layouts.cards.measures import BOLD, LINE, width_pt, wrapped
from layouts.cards.plan import plan_cards
from layouts.cards.titles import figure_size
from layouts.words.error import error_line
from tablegen.errors import BookError
from tablegen.geometry.pitch import pitch_of_rise
from tablegen.numbers.figure import Measure
from tablegen.settings import Runs, Settings
from tablegen.written.pitches import pitch

PITCHES = st.lists(
    st.integers(1, 24 * 16).map(lambda sixteenths: Fraction(sixteenths, 16)),
    min_size=1,
    max_size=60,
    unique=True,
).map(lambda rises: tuple(map(pitch_of_rise, sorted(rises))))
BOOKS = st.fixed_dictionaries(
    {
        'owner': st.text(st.sampled_from('W mi'), max_size=48),
        'pitches': PITCHES,
        'measure': st.builds(
            Measure, st.sampled_from((2, 8, 16, 64)), st.sampled_from(('inches', 'feet-inches'))
        ),
        'runs': st.sampled_from(
            (Runs(), Runs(last=Fraction(600)), Runs(Fraction(5), Fraction(30), Fraction(5)))
        ),
    }
).map(lambda given: Settings(**given))


def heights(face, form):
    """Return the height that a face's contents take, between strip and foot."""
    if isinstance(face, TableFace):
        rows = sum(map(len, face.groups))
        return rows * face.line + len(face.heads[0]) * 1.12 * face.head_size
    return face.line * (sum(len(block.rows) + bool(block.head) for block in face.blocks))


@settings(max_examples=20)
@given(BOOKS, st.sampled_from(SIZES))
def test_whatever_is_asked_stands_in_its_place(book, size):
    """On the smallest card three lengths of a steep pitch in feet and inches may be too wide: refused, not squeezed."""
    plan, advice = None, ''
    try:
        plan = plan_cards(book, size)
    except BookError as fault:
        advice = fault.next_step
    if plan is None:
        assert (size, len(book.pitches), book.measure.style) == ('id-1', 1, 'feet-inches')
        assert advice == 'take a larger card or shorter runs'
        return
    form = plan.form
    for face in plan.faces:
        assert face.size >= 7.5
        assert face.line >= 9.3 - 0.001
        assert heights(face, form) <= form.body_pt - foot_height(form, face.foot)
        assert all(width_pt(line, form.note_pt) <= form.inner_pt for line in face.foot)
        assert width_pt(face.title.what, form.note_pt, BOLD) <= form.title_pt
        assert 8 <= figure_size(form, face.title) <= form.figure_pt
        if isinstance(face, TableFace):
            assert sum(face.widths) <= form.inner_pt + 0.01
            assert face.head_size == head_size(face.size) >= 7.5
        else:
            rows = [(block, row) for block in face.blocks if not block.figures for row in block.rows]
            assert all(
                width_pt(row[-1], face.size) + block.name_width <= form.inner_pt for block, row in rows
            )


@settings(max_examples=12)
@given(PITCHES.filter(lambda pitches: len(pitches) > 1), st.sampled_from(SIZES))
def test_every_pitch_is_on_a_card_once_and_in_order(pitches, size):
    plan = plan_cards(replace(Settings(), pitches=pitches), size)
    labels = [
        row.label
        for face in plan.faces
        if isinstance(face, TableFace)
        for rows in face.groups
        for row in rows
    ]

    assert labels == [pitch.short for pitch in pitches]
    assert all(len(card) == 2 for card in plan.cards)


@pytest.mark.parametrize(
    ('size', 'pitches', 'said'),
    [
        ('id-1', '', '24 pitches, 1–24 in 12, on both sides'),
        ('a6', '', '24 pitches, 1–24 in 12, on the front and how to use it'),
        ('id-1', '4,6,8,12', '4 pitches, 4, 6, 8, 12 in 12, on the front and how to use it'),
        ('id-1', '1 to 24 by 1/2', '47 pitches, 1–24 in 12, on 2 cards'),
        (
            'half-letter',
            '6',
            '6 in 12, runs 1 in to 24 ft by 1 in: common on the front, hip and valley on the back',
        ),
        ('index', '6', '6 in 12, runs 1 ft to 24 ft by the foot on the front: common, hip and valley, rise'),
    ],
)
def test_what_is_on_a_card_is_said(size, pitches, said):
    assert plan_cards(settings_of(pitches), size).said[0] == said


def test_what_has_no_room_is_said():
    said = plan_cards(settings_of(''), 'index').said

    assert said[1:] == (
        'columns: plumb cut, common per foot, hip per foot, jacks at 16, cheek of jacks, cheek of the hip',
        'no room for: level cut, plumb cut of the hip, jacks at 12, jacks at 19.2, jacks at 24, backing, '
        'drop of the hip',
    )
    assert plan_cards(settings_of('6'), 'id-1').said[-1] == 'no room for: runs over 13 ft'


def test_a_letter_card_has_room_for_every_column():
    assert not [line for line in plan_cards(settings_of(''), 'letter').said if line.startswith('no room')]


def test_pitches_with_endless_names_are_refused():
    names = ('26.56505117712345678901234 deg', '30.12345678901234567890 deg')
    with pytest.raises(BookError) as caught:
        plan_cards(replace(Settings(), pitches=tuple(map(pitch, names))), 'index')
    assert (
        error_line(caught.value)
        == "--size: 'index' is too narrow for these pitches; next: take a larger card"
    )


def test_an_unknown_size_is_refused():
    with pytest.raises(BookError) as caught:
        plan_cards(Settings(), 'b5')
    assert error_line(caught.value) == (
        "--size: 'b5' is no size of card; allowed: id-1, index, a6, half-letter, letter"
    )


@pytest.mark.parametrize(
    ('size', 'paper_mm', 'corner_mm', 'film_mm'),
    [
        ('id-1', (53.98, 85.60), 3.18, (59.98, 91.60)),  # ISO/IEC 7810; 3 mm of film on each side
        ('index', (76.2, 127.0), 4.0, (88.9, 139.7)),  # 3 × 5 in; pouches: common practice, no source
        ('a6', (105.0, 148.0), 5.0, (111.0, 154.0)),  # ISO 216
        ('half-letter', (139.7, 215.9), 5.0, (152.4, 228.6)),  # 5 1/2 × 8 1/2 in
        ('letter', (215.9, 279.4), 6.0, (228.6, 292.1)),  # 8 1/2 × 11 in
    ],
)
def test_sizes_of_paper_and_film(size, paper_mm, corner_mm, film_mm):
    form = FORMATS[size]

    assert ((form.width_mm, form.height_mm), form.corner_mm, form.film_mm) == (paper_mm, corner_mm, film_mm)
    assert all(film - paper >= 6 for film, paper in zip(film_mm, paper_mm, strict=True))


@given(st.lists(st.text('abc \u00a0', min_size=1, max_size=12), min_size=1, max_size=12).map(' '.join))
def test_words_are_broken_at_spaces_alone(words):
    lines = wrapped(words, 60, 8)

    assert ' '.join(lines).split(' ') == words.split(' ')
    assert all(width_pt(line, 8) <= 60 or ' ' not in line for line in lines)


def test_lines_of_figures_are_a_quarter_taller_than_their_type():
    assert pytest.approx(9.3 / 7.5) == LINE


@pytest.mark.parametrize(
    ('owner', 'what', 'foot'),
    [
        ('Bank Row', 'Bank Row', 'Geometry, not strength:'),
        ('WWWWW ' * 7 + 'WWWWW', '', 'WWWWW WWWWW'),
        ('W' * 48, '', 'Geometry, not strength:'),
    ],
)
def test_an_owner_s_name_keeps_out_of_the_hole(owner, what, foot):
    """A long one goes to the foot; one that nothing can break is left off."""
    book = replace(settings_of('4,6'), owner=owner)
    back = plan_cards(book, 'id-1').faces[1]

    assert back.title.what == what
    assert ' '.join(back.foot).startswith(foot)
