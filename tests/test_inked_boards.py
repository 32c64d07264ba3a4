"""Boards to mark by their ink: what each arrow spans, and which figure stands at it."""

from __future__ import annotations

from math import sqrt

import pytest
from complete import read_complete
from drawn import distance, near
from inked import drawings_on, inked
from oracle.rounding import part
from skewed import HIP, RAFTER, RIDGE, SEAT
from test_board_drawings import BOARDS, RISES, flat, mouth, steep
from worked_books import book_of
from worked_pages import worked_page

from layouts.drawings import svg
from layouts.drawings.marked_board import marked_board
from layouts.pages.book import plan
from tablegen.settings import read_settings


@RISES
def test_distances_run_along_the_top_edge_from_the_first_line(rise):
    marks = steep(rise)
    drawing = inked(marked_board(marks, ('HEEL', 'SEAT'), 'board'))
    feet = {number: drawing.label(str(number)).at[0] for number in (1, 3, 4)}

    for word, number in (('LENGTH', 3), ('WHOLE', 4)):
        span = drawing.dimension(word)
        assert near(span.direction, 0)
        assert [x for x, _ in span.ends] == pytest.approx([feet[1], feet[number]], abs=4)
    assert drawing.collisions() == []


@BOARDS
def test_seat_and_heel_are_spanned_along_their_own_lines(marks):
    drawing = inked(marked_board(marks, ('HEEL', 'SEAT'), 'board'))
    toe, corner, foot = mouth(drawing.drawn)

    for word, a, b in (('SEAT', toe, corner), ('HEEL', corner, foot)):
        span = drawing.dimension(word)
        assert near(span.length, distance(a, b), 0.1)
        assert max(distance(span.ends[0], min(a, b)), distance(span.ends[1], max(a, b))) < 5
    assert drawing.collisions() == []


ENDS = {
    'example_hip_board': (('long point', 'the cut', 'short point'), ('tail, both', 'tail’s point', 'tail, both')),
    'example_jacks_board': (('long point', 'the cut', 'short point'), ('tail cut', 'tail cut', 'tail cut')),
    'example_valley_board': (('both cheeks', 'the point', 'both cheeks'), ('tail, both', 'tail’s hollow', 'tail, both')),
}  # fmt: skip
"""Of each cut across the top edge: the marks at its far end, on the center, at its near end."""


BOTH = pytest.mark.parametrize('edition', ['skewed', 'openings'])


@BOTH
@pytest.mark.parametrize('template', ENDS)
def test_each_end_of_a_cut_stands_under_the_number_of_its_mark(edition, template, request):
    """In a book where long point, center and short point are far apart, and the long point lies before the first line."""
    skewed = book_of(edition, request)
    (number,) = skewed.numbers(template)
    page = worked_page(number, skewed.words(number), skewed.rem)
    names = sorted(page.numbers, key=page.numbers.get)
    (drawing,) = drawings_on(skewed.made.pages[number - 1])
    leaders = [one.points for one in drawing.drawn.outlines(svg.HAIR) if len(one.points) == 3]
    at = {name: _led(drawing.label(str(place)).at, leaders) for place, name in enumerate(names, 1)}
    across = sorted(
        (one.points for one in drawing.drawn.outlines(svg.HEAVY) if flat(one)), key=lambda line: line[0][0]
    )

    for points, wanted in zip(across, ENDS[template], strict=True):
        found = [next(x for name, x in at.items() if name.startswith(words)) for words in wanted]
        assert [x for x, _ in points] == pytest.approx(found, abs=0.05)


def test_the_stores_hip_is_dashed_as_it_is_cut_between_commons(skewed):
    """Two cheeks at 45° in plan, to a point that is off by half of a common's diagonal: √2/2 of its thickness, level."""
    (number,) = skewed.numbers('example_hip_board')
    page = worked_page(number, skewed.words(number), skewed.rem)
    (drawing,) = drawings_on(skewed.made.pages[number - 1])
    leaders = [one.points for one in drawing.drawn.outlines(svg.HAIR) if len(one.points) == 3]
    zero, short = (
        _led(drawing.label(str(place)).at, leaders)
        for place, name in enumerate(sorted(page.numbers, key=page.numbers.get), 1)
        if name.startswith(('ridge center', 'short point'))
    )
    along = sqrt(1 + 25 / 288)  # of a level inch, at 5 in 12
    inch = (short - zero) / (along * (float(RIDGE) / sqrt(2) + float(HIP) / 2))
    far, near_side = sorted(one.points for one in drawing.drawn.lines(svg.LINE, dashed=True))

    tip = along * float(RAFTER) / sqrt(2)
    side = tip + along * float(HIP) / 2
    for line in (far, near_side):
        xs = sorted((x - zero) / inch for x, _y in line)
        assert xs == pytest.approx([tip, side], abs=0.03)
    assert {round(y, 1) for _x, y in far} != {round(y, 1) for _x, y in near_side}


def _led(label, leaders) -> float:
    """Return where the line from a number ends."""
    return min(leaders, key=lambda line: abs(line[0][0] - label[0]))[-1][0]


SAID_ON = {
    'skewed': {'hip': 'hip_mouth', 'valley': 'valley_mouth', 'porch': 'porch_table', **dict.fromkeys(('store', 'jacks'), 'store_table')},
    'openings': {'hip': 'hip_opening', 'valley': 'valley_opening', 'porch': 'porch_board', **dict.fromkeys(('store', 'jacks'), 'store_board')},
}  # fmt: skip
"""The page on which the bird's mouth of an example's board is told."""


@BOTH
@pytest.mark.parametrize('example', ['store', 'hip', 'valley', 'porch', 'jacks'])
def test_the_figures_of_a_board_are_those_of_its_marks_and_its_birds_mouth(edition, example, request):
    skewed = book_of(edition, request)
    (number,) = skewed.numbers(f'example_{example}_board')
    marks = worked_page(number, skewed.words(number), skewed.rem).marks
    (drawing,) = drawings_on(skewed.made.pages[number - 1])
    (told,) = skewed.numbers(f'example_{SAID_ON[edition][example]}')
    steps, corner = worked_page(told, skewed.words(told), skewed.rem), example in ('hip', 'valley')
    (heel,) = [one.figure for one in steps.steps if one.words.startswith('Heel')]
    seat = steps.step('Seat: level').figure if corner else part(SEAT)
    plate = next(figure for name, figure in marks.items() if name.startswith(('plate line', 'corner of', 'inside corner')))  # fmt: skip
    tail = next(figure for name, figure in marks.items() if name in ('tail cut', 'tail’s point', 'tail’s hollow, on the center'))  # fmt: skip

    shown = {plate, tail} if (edition, example) != ('openings', 'hip') else set()  # its steps stand beside it

    assert {one.word for one in drawing.dimensions} == {heel, seat} | shown
    toe, corner, foot = mouth(drawing.drawn)
    assert near(drawing.dimension(seat).length, distance(toe, corner), 0.1)
    assert near(drawing.dimension(heel).length, distance(corner, foot), 0.1)
    assert not shown or drawing.dimension(plate).length < drawing.dimension(tail).length


BOOKS = (
    'pitches = [4, 6]',
    'pitches = [5, "7 1/2"]\nstock.ridge = 0.75\nstock.hip = 3.5\nstock.rafter = 1.75\nstock.hips = "2x10"\nstock.valleys = "2x12"',
    'pitches = [24]\nstock.rafters = "2x12"\nstock.hips = "2x8"',
    'pitches = [6, 12]\nsmallest_part = "1/64"\nlengths = "feet-inches"\nstock.rafters = "2x4"',
    'pitches = [1]\njacks.spacings = ["2 in"]',
    'pitches = [18]\nstock.hip = 5.5\nstock.seat = "5 1/2"\nruns = {to = "40 in"}',
)


@pytest.mark.parametrize(
    'settings', [*map(read_complete, BOOKS), *(read_settings(one, '') for one in BOOKS[1::2])]
)
def test_no_word_of_an_examples_board_lies_on_another_or_on_a_line(settings):
    planned = plan(settings)
    boards = [
        place
        for place, draft in enumerate(planned.drafts)
        if draft.template.startswith('example_') and draft.template.endswith('board')
    ]
    found = {place: [one.collisions() for one in drawings_on(planned.pages()[place])] for place in boards}

    on_one_page = any(
        draft.template == 'example_store_opening' for draft in planned.drafts
    )  # the store's board is drawn on page 6
    assert len(boards) == 5 - on_one_page
    assert found == {place: [[]] for place in boards}
