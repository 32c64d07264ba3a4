"""Boards with all their marks, against members and faces in space, nothing rounded."""

from fractions import Fraction

import pytest
from fifty_digits import mp, mpf
from near import NEAR, gap
from oracle import hip_ends, sawn, seats, tails
from oracle.corner import common_length, corner, hip_length, hip_run, jack_length, jack_to_points

from tablegen.geometry.pitch import pitch_of_rise
from tablegen.numbers.figure import Measure
from tablegen.roof import framing
from tablegen.roof.member import Kind, Line, Stop, inches_of
from tablegen.roof.members import Members
from tablegen.roof.plane import Plane
from tablegen.roof.question import Boards
from tablegen.roof.side import side
from tablegen.written.stocks import stock

RUN, OUT = Fraction(1073, 8), Fraction(57, 4)
RIDGE, HIP, COMMON, VALLEY, LEDGER = map(Fraction, ('3/4', '7/2', '7/4', '5/2', '9/4'))
BOARDS = Boards(
    stock=stock('2×8'), hip_stock=stock('2×10'), valley_stock=stock('2×12'), overhang_in=OUT,
    ridge_in=RIDGE, hip_in=HIP, rafter_in=COMMON, valley_in=VALLEY,
)  # fmt: skip
DEPTH = {'2×8': mpf(29) / 4, '2×10': mpf(37) / 4, '2×12': mpf(45) / 4}
"""Dressed, as the lumber standard has them: PS 20."""
RISES = pytest.mark.parametrize('rise', [Fraction(3), Fraction(6), Fraction(15, 2), Fraction(12)], ids=str)


def plane(rise):
    return Plane(Members(side(pitch_of_rise(rise), BOARDS)), RUN, Measure(64))


def agree(member, places, top):
    """Hold the marks, the length over all and the stick against places from the center line, of the first point's."""
    for line, model in places.items():
        assert gap(member.at(line), model) < NEAR, line
    assert {mark.line for mark in member.marks} == set(places)
    cut = [place for line, place in places.items() if line != Line.CENTER]
    assert gap(inches_of(member.overall), max(cut) - min(cut)) < NEAR
    depth = DEPTH[member.stock.name]
    lean = mp.sqrt(top**2 - depth**2)  # along the edge, of a plumb line across the stock
    assert gap(inches_of(member.stick), max(cut) - min(cut) + lean) < NEAR


def of_hip(place, thickness, start):
    """Return marks that every hip has, and a function that tells where a plumb plane cuts its center or a side."""
    whole = hip_length(place, RUN)

    def at(line, cut):
        return whole - sawn.to_cut(place, thickness, line, cut)[1]

    out = sawn.towards_tail(place, thickness, sawn.RIGHT, sawn.fascia(place, OUT))
    return {
        Line.CENTER: 0,
        Line.PLATE: whole,
        Line.TAIL: whole + tails.hip_tail(place, OUT),
        Line.TAIL_SIDE: whole + out,
    } | start(at)


@RISES
def test_commons_and_shed_rafters(rise):
    at, of = corner(rise), plane(rise)
    ends = {Line.PLATE: common_length(at, RUN), Line.TAIL: common_length(at, RUN + OUT)}
    top = tails.plumb_cut_length(at, DEPTH['2×8'])
    half = common_length(at, mpf(RIDGE.numerator) / RIDGE.denominator / 2)
    ledger = hip_ends.shed_on_ledger(at, LEDGER) * common_length(at, 1)

    agree(framing.common('C1', of), {Line.CENTER: 0, Line.CUT: half, **ends}, top)
    agree(framing.shed_rafter('R1', of, LEDGER), {Line.CENTER: 0, Line.CUT: ledger, **ends}, top)


@RISES
def test_a_hip_jack_from_the_hips_center_line(rise):
    at, run = corner(rise), Fraction(96, 5) * 3
    line, (short, long) = jack_length(at, run), jack_to_points(at, run, HIP, COMMON)
    tail = line + tails.common_tail(at, OUT)
    places = {
        Line.CENTER: 0,
        Line.LONG: line - long,
        Line.SHORT: line - short,
        Line.PLATE: line,
        Line.TAIL: tail,
    }
    places[Line.CUT] = (places[Line.LONG] + places[Line.SHORT]) / 2

    agree(framing.hip_jack('J3', plane(rise), run), places, tails.plumb_cut_length(at, DEPTH['2×8']))


@RISES
def test_a_hip_against_the_ridge(rise):
    """Its side towards the ridge's own plane, away from the hipped end, is the longer one."""
    place = corner(rise)
    face = sawn.ridge_face(place, RUN, RIDGE)
    lines = {Line.CUT: sawn.CENTER, Line.LONG: sawn.RIGHT, Line.SHORT: sawn.LEFT}
    places = of_hip(place, HIP, lambda at: {line: at(which, face) for line, which in lines.items()})

    agree(framing.hip('H1', plane(rise)), places, tails.hip_plumb_cut_length(place, DEPTH['2×10']))


@RISES
def test_a_hip_between_commons(rise):
    """Its point in the corner of two commons, its sides at each one's face."""
    place = corner(rise)
    face = sawn.common_face(place, RUN, COMMON)
    places = of_hip(
        place, HIP, lambda at: {Line.POINT: at(sawn.CENTER, face), Line.SIDE: at(sawn.RIGHT, face)}
    )
    member = framing.hip('H1', plane(rise), Stop.COMMONS)

    agree(member, places, tails.hip_plumb_cut_length(place, DEPTH['2×10']))
    assert [(off.stop, off.thickness_in) for off in member.deductions] == [(Stop.COMMONS, COMMON)]


@RISES
def test_a_valley_between_two_ridges(rise):
    """Its sides run out past the center's mark at the tail, and its heel stands outwards of the inside corner."""
    place = corner(rise)
    face = sawn.ridge_face(place, RUN, RIDGE)
    places = of_hip(
        place, VALLEY, lambda at: {Line.POINT: at(sawn.CENTER, face), Line.SIDE: at(sawn.LEFT, face)}
    )
    back = hip_ends.set_back(place, VALLEY)[1]
    places[Line.TAIL_SIDE] = places[Line.TAIL] + back
    places[Line.HEEL] = places[Line.PLATE] + seats.valley_back(place, VALLEY) * hip_length(
        place, 1
    ) / hip_run(place, 1)
    member = framing.valley('V1', plane(rise))

    assert member.kind is Kind.VALLEY
    agree(member, places, tails.hip_plumb_cut_length(place, DEPTH['2×12']))
