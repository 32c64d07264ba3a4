"""The drawings of a roof's sheets by their ink: plan, boards and section to scale, each name where it belongs."""

from __future__ import annotations

import re
from itertools import pairwise

import pytest
from inked import Inked, inked
from mpmath import cos, mpf, pi, tan
from roof_files import roof
from test_roof_sheets import HALF, SLOPE, STEEP, WIDE
from test_roof_verb import sixteenths

from layouts.drawings.svg import HEAVY
from layouts.roofs.make import roof_bodies
from tablegen.frame.frame import frame
from tablegen.frame.pieces import to_buy
from tablegen.roof.member import Hand


def drawings(sheet: int) -> list[Inked]:
    """Return the drawings of one sheet of a hip roof."""
    framed = frame(roof('hip', **WIDE))
    return [
        inked(image)
        for image in re.findall('<img[^>]*>', roof_bodies(framed, to_buy(framed), 'letter')[sheet])
    ]


def feet(inches: mpf) -> str:
    """Return a length in feet and inches, to the nearest sixteenth."""
    odd = sixteenths(mpf(inches) % 12)
    return f'{int(inches // 12)} ft' + (f' {odd} in' if odd != '0' else '')


def test_the_plan_is_to_scale_and_names_every_board():
    (plan,) = drawings(0)
    units = plan.dimension('36 ft').length / 432

    assert plan.dimension('24 ft').length == pytest.approx(288 * units, abs=0.1)
    assert plan.dimension('R, sawn: 12 ft 1 1/2 in').length == pytest.approx(145.5 * units, abs=0.1)
    assert plan.dimension('first: 1 ft 4 in').length == pytest.approx(16 * units, abs=0.1)
    assert plan.dimension('then 1 ft 4 in on center').length == pytest.approx(16 * units, abs=0.1)
    named = [one.text for one in plan.labels]
    assert [named.count(mark) for mark in ('C', 'E', 'H', 'R', 'HJ1 L', 'HJ8 R')] == [20, 2, 4, 1, 4, 4]


def test_a_name_in_its_line_is_never_the_next_one_s():
    """Source: rafters a space apart; two names between two lines would leave it to guess which line each is of."""
    wing = {'width': '16 ft', 'out': '10 ft', 'from_left': '10 ft'}
    framed = frame(roof('wing', width='24 ft', length='36 ft', **{f'wing.{k}': v for k, v in wing.items()}))
    image, *_detail = re.findall('<img[^>]*>', roof_bodies(framed, to_buy(framed), 'letter')[0])
    plan = inked(image)
    space = plan.dimension('36 ft').length / 27

    rows = (
        ([f'VJ{n} L' for n in (7, 9, 11)] + ['C1 L'], 1),
        ([f'VJ{n} R' for n in (13, 14, 15)] + ['C3 R'], 0),
    )
    for marks, axis in rows:
        places = [plan.label(mark).at[axis] for mark in marks]
        assert [b - a for a, b in pairwise(places)] == [pytest.approx(space, abs=0.2)] * 3, marks
    hands = {one.text for one in plan.labels if one.text.startswith('V') and one.text[1] in '12'}
    assert hands == {'V1', 'V2 R'}, (
        'at one pitch the shorter valley is cut square to the longer: it has no long point'
    )


@pytest.mark.parametrize('through', ['corners', 'middles'])
def test_a_bay_s_plan_tells_its_first_jack_and_their_spacing(through):
    """Source: on eight sides, 9 ft across their flats, jacks stand half a space from the middle of each, and a space apart."""
    framed = frame(roof('bay', **{'bay.wall_through': through}))
    (image,) = re.findall('<img[^>]*>', roof_bodies(framed, to_buy(framed), 'letter')[0])
    plan = inked(image)
    across = 108 if through == 'middles' else 108 / cos(pi / 8)
    units, first = plan.dimension(feet(across)).length / float(across), 54 * tan(pi / 8) - 8

    assert plan.dimension(f'first: {feet(first)}').length == pytest.approx(float(first) * units, abs=0.1)
    assert plan.dimension('then 1 ft 4 in on center').length == pytest.approx(16 * units, abs=0.1)


def test_jacks_have_their_hands_on_the_plan():
    """Source: up the front, a hip at the left runs away to the right: there the jack's right side is the longer one."""
    (plan,) = drawings(0)
    middle = plan.label('R').at[0]
    for mark, far_left in (('HJ1 R', True), ('HJ1 L', False)):
        front = max(
            (one for one in plan.labels if one.text == mark and one.turn == 90), key=lambda one: one.at[1]
        )
        assert (front.at[0] < middle) is far_left, mark


def test_the_long_point_is_drawn_on_its_hand():
    """Source: the ridge at the left, the top edge up and folded away, the side to you is the left one: below its top edge."""
    (board,) = drawings(4)
    for name, is_lower in (('left', True), ('right', False)):
        level = board.label(name).at[1]
        cheeks = [
            stroke.points
            for stroke in board.drawn.strokes
            if len(stroke.points) == 2
            and stroke.width == HEAVY
            and abs(sum(y for _, y in stroke.points) / 2 - level) < 8
        ]
        long, short = sorted(min(cheeks, key=lambda points: points[0][0]))
        assert (long[1] > short[1]) is is_lower, name


def test_a_section_is_to_scale():
    (section,) = drawings(1)
    units = section.dimension('run 144').length / 144

    above = mpf('6.3725')
    for word, inches in {
        'overhang 16': 16,
        'height above plate 6 3/8': above,
        'planes meet 90 3/8': above + 84,
        'top of the ridge 89 15/16': above + 84 - HALF * SLOPE,
        'underside of the ridge 80 11/16': above + 84 - HALF * SLOPE - mpf('9.25'),
    }.items():
        assert section.dimension(word).length == pytest.approx(float(inches) * units, abs=0.3), word
    assert 'tail’s upper corner −3' in [word for word, _ in section.pointers]


def test_a_marked_board_measures_from_both_ends():
    board = drawings(3)[0]
    whole, plate, tail = (
        board.dimension(sixteenths(level * STEEP)).ends for level in (160 - HALF, 144 - HALF, mpf(16))
    )

    assert (whole[0][0], plate[1][0], whole[1][0]) == (plate[0][0], tail[0][0], tail[1][0])
    for word in ('1', '2', '3'):
        at = {'1': whole[0], '2': plate[1], '3': whole[1]}[word][0]
        assert board.label(word).at[0] == pytest.approx(at, abs=6)


@pytest.mark.parametrize('from_left', [96, 0])
def test_boards_too_short_for_their_marks_have_them_where_the_plan_is_drawn_larger(from_left):
    """Source: at one pitch a valley runs at 45 degrees from the wing's corner to the ridge, 12 ft in."""
    framed = frame(roof('wing', **{'wing.from_left': f'{from_left} in'}))
    (sheet, *_rest) = roof_bodies(framed, to_buy(framed), 'letter')
    plan, detail = map(inked, re.findall('<img[^>]*>', sheet))
    (scale,) = re.findall(r'Framed by dots on the plan, here 1 : (\d+)', sheet)
    units, there = 72 / int(scale), [one.text for one in (*plan.labels, *detail.labels)]

    hands = {None: '', Hand.LEFT: ' L', Hand.RIGHT: ' R'}
    marks = {f'{one.member.name}{hands[one.hand]}' for one in framed.members}
    assert marks - set(there) == set()
    assert 'VJ1 L' not in [one.text for one in plan.labels]
    assert plan.collisions() == []
    assert detail.collisions() == []
    at = detail.label('VJ3 L').at[0], detail.label('VJ5 L').at[0]
    assert at[0] - at[1] == pytest.approx(16 * units, abs=0.1)
    level = (
        one.points
        for one in detail.drawn.strokes
        if one.width == 2.2 and one.points[0][1] == one.points[1][1]
    )
    ridge, tip = next(level)[0][1], detail.pointed('VJ1 L')
    to_valley = from_left + 144 - (detail_left(plan, detail, units) + tip[0] / units)
    assert 0 < (tip[1] - ridge) / units < to_valley


def detail_left(plan: Inked, detail: Inked, units: float) -> float:
    """Return the inches of the detail's left edge from the framing's left end, by a rafter that both name; those stand 16 in apart."""
    long = plan.dimension('36 ft')
    away = (plan.label('VJ7 L').at[0] - long.ends[0][0]) * 432 / long.length
    return round(away / 16) * 16 - detail.label('VJ7 L').at[0] / units


def test_where_the_first_rafters_stand_is_told_beside_a_plan_that_fills_the_page():
    """Source: 600 mm are 23 5/8 in, to the sixteenth."""
    framed = frame(roof('gable', width='7000 mm', length='9 m', spacing='600 mm'))
    (image,) = re.findall('<img[^>]*>', roof_bodies(framed, to_buy(framed), 'letter')[0])
    plan = inked(image)

    assert plan.collisions() == []
    assert plan.label('first: 1 ft 11 5/8 in; then 1 ft 11 5/8 in on center')


def test_a_sheet_draws_both_hands_where_each_mark_has_but_one():
    """Source: of an L at the left the wing's jacks end at its one valley on their right side, the main roof's on their left: long points
    left and right. Seen from below, the point that goes on to the foot is on the hand that the row is called by.
    """
    ell = {'pitch': 8, 'wing.width': '12 ft', 'wing.from_left': 0, 'wing.main_ends': 2, 'wing.end': 'hip'}
    framed = frame(roof('wing', **ell))
    (sheet,) = [one for one in roof_bodies(framed, to_buy(framed), 'letter') if re.search('<h1>VJ1–', one)]
    board = inked(*re.findall('<img[^>]*>', sheet))

    for name, is_lower in (('left', True), ('right', False)):
        level = board.label(name).at[1]
        cheeks = [
            one.points
            for one in board.drawn.strokes
            if len(one.points) == 2
            and one.width == HEAVY
            and abs(sum(y for _, y in one.points) / 2 - level) < 8
            and one.points[0][0] != one.points[1][0]
        ]
        ((_near, short), (_far, long)) = sorted(max(cheeks, key=lambda points: points[0][0]))
        assert (long > short) is is_lower, name


def test_a_short_run_s_words_keep_clear_of_its_ends_and_an_end_common_tells_what_it_meets():
    """Source: with no ridge board the end common stands against the last side commons, half of whose 1 1/2 in comes off, level."""
    framed = frame(roof('half-hip', **{'half-hip.gable_rise': '4 ft', 'ridge.board': False}))
    bodies = roof_bodies(framed, to_buy(framed), 'letter')
    (sheet,) = [one for one in bodies if '<h1>E<' in one]

    for image in re.findall('<img[^>]*>', bodies[1]):
        assert inked(image).collisions() == []
    assert '3/4 in level: up to the face of the last side commons' in sheet.replace('\u00a0', ' ')
