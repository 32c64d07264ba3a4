"""Patterns of members of any roof: their lines, nothing rounded, against boards and faces in space."""

from __future__ import annotations

from fractions import Fraction

import pytest
from fifty_digits import mpf
from msgspec.structs import replace
from near import NEAR, gap
from oracle import sawn, tails
from oracle.boards import LEFT, RIGHT, TOP, Board
from oracle.corner import corner
from oracle.planes import plane

from tablegen.geometry.pitch import pitch_of_rise
from tablegen.numbers.exact import exact
from tablegen.numbers.figure import Measure, length_figure
from tablegen.roof import framing
from tablegen.roof.member import Line, Mark, Stop
from tablegen.roof.members import Members
from tablegen.roof.pattern import Face, Name, Pattern, Stroke, pattern_of
from tablegen.roof.plane import Plane
from tablegen.roof.question import Boards
from tablegen.roof.side import sides
from tablegen.written.stocks import stock

RUN, OUT = Fraction(123), Fraction(57, 4)
HIP, COMMON = Fraction(7, 2), Fraction(7, 4)
DEPTH = mpf(45) / 4
"""Of a dressed 2×12, as the lumber standard has it: PS 20."""
BOARDS = Boards(stock=stock('2×8'), hip_stock=stock('2×12'), hip_in=HIP, rafter_in=COMMON, overhang_in=OUT)


def strokes_of(pattern: Pattern) -> list[Stroke]:
    return [stroke for piece in pattern.pieces for stroke in piece.strokes]


def agree(pattern, name, lines):
    """Hold the lines of one name against places in space."""
    drawn = [one for one in strokes_of(pattern) if one.name == name]
    assert len(drawn) == len(lines)
    for stroke, (face, *ends) in zip(drawn, lines, strict=True):
        assert stroke.face == face
        for point, (along, across) in zip((stroke.start, stroke.end), ends, strict=True):
            assert gap(point.along, along) < NEAR
            assert gap(point.across, across) < NEAR


@pytest.mark.parametrize(('rise', 'other'), [(8, 12), (6, 5), (Fraction(7, 2), 9)])
def test_a_hip_of_two_pitches_between_commons(rise, other):
    """Its cheeks are not alike: they meet off the center of its top."""
    place = corner(rise, other)
    a, b = map(Members, sides(pitch_of_rise(Fraction(rise)), BOARDS, pitch_of_rise(Fraction(other))))
    pattern = pattern_of(framing.hip('H', Plane(a, RUN, Measure(), other=b), Stop.COMMONS))
    ends = plane(place.on_hip(place.across_a(RUN)), place.hip_level)
    board = Board(place.hip_board(HIP), ends, DEPTH, mpf(7) / 2)
    faces = sawn.common_face_b(place, RUN, COMMON), sawn.common_face(place, RUN, COMMON)
    fascias = sawn.fascia_b(place, tails.matching_overhang(place, OUT)), sawn.fascia(place, OUT)

    agree(pattern, Name.HEAD, board.crossed(*faces))
    agree(pattern, Name.TAIL, board.crossed(*fascias))
    assert {one.face for one in strokes_of(pattern)} == {LEFT, TOP, RIGHT}


def test_a_second_bird_s_mouth_is_the_first_moved_up_to_the_beam():
    a, _b = map(Members, sides(pitch_of_rise(Fraction(4)), BOARDS, pitch_of_rise(Fraction(4))))
    one = framing.shed_rafter('R', Plane(a, RUN, Measure()), Fraction(0))
    beam = length_figure(Fraction(19, 4), Measure())
    pattern = pattern_of(replace(one, marks=(*one.marks, Mark(Line.UPPER_PLATE, beam))))
    seats = [line for line in strokes_of(pattern) if line.name is Name.SEAT and line.face is Face.LEFT]
    moved = exact(Fraction(19, 4)) - one.at(Line.PLATE)

    assert seats[0].start.along == seats[1].start.along + moved
    assert seats[0].end.along == seats[1].end.along + moved
    assert seats[0].end.across == seats[1].end.across
    assert not any(line.name is Name.CENTER for line in strokes_of(pattern))  # it is the cut itself
    assert pattern.pieces[0].last > pattern.pieces[0].first + seats[0].end.along
