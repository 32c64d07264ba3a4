"""Boards to mark by their ink: what each arrow spans, and which figure stands at it."""

from __future__ import annotations

import pytest
from drawn import distance, near
from inked import drawings_on, inked
from test_board_drawings import BOARDS, RISES, mouth, steep

from layouts.book import plan
from layouts.drawings.marked_board import marked_board
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


BOOKS = (
    'pitches = [4, 6]',
    'pitches = [5, "7 1/2"]\nstock.ridge = 0.75\nstock.hip = 3.5\nstock.rafter = 1.75\nstock.hips = "2x10"\nstock.valleys = "2x12"',
    'pitches = [24]\nstock.rafters = "2x12"\nstock.hips = "2x8"',
    'pitches = [6, 12]\nsmallest_part = "1/64"\nlengths = "feet-inches"\nstock.rafters = "2x4"',
    'pitches = [1]\njacks.spacings = ["2 in"]',
    'pitches = [18]\nstock.hip = 5.5\nstock.seat = "5 1/2"\nruns = {to = "40 in"}',
)


@pytest.mark.parametrize('written', BOOKS)
def test_no_word_of_an_examples_board_lies_on_another_or_on_a_line(written):
    planned = plan(read_settings(written, ''))
    boards = [
        place
        for place, draft in enumerate(planned.drafts)
        if draft.template.startswith('example_') and draft.template.endswith('board')
    ]
    found = {place: [one.collisions() for one in drawings_on(planned.pages()[place])] for place in boards}

    assert len(boards) == 5
    assert found == {place: [[]] for place in boards}
