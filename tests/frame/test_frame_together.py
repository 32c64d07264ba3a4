"""Whole roofs of solids, sawn and stood by the printed figures of a frame alone: they go together, whatever the roof.

Joints close and tops lie in their planes within what the rounding of the figures explains; no member passes into another; every
end and seat bears; every slope has a rafter in every bay; eaves are level and ridges as high as told.
"""

from __future__ import annotations

import ast
import sys
from fractions import Fraction as F
from functools import cache
from pathlib import Path
from random import randrange

import pytest
from each import some
from frame_assembly import Roof
from frame_bays import wide_bays
from frame_drawn import drawn
from frame_kinds import KINDS
from frame_printed import Printed
from frame_roofs import FIXED
from frame_together import Together
from msgspec.structs import replace
from reading import Reading

from tablegen.errors import BookError
from tablegen.frame.asked import Asked, TailCut
from tablegen.frame.frame import frame

MOST, DRAWN_OUT = 3 / 16, ('seat', 'on 12')
"""No joint is let off by more, however many figures meet in it, in: but for what a flat slope draws out."""
ONCE_OPEN = (110, 165, 193, 201, 229, 9292, 30291, 37554, 50115, 384878, 733243)
"""Random roofs that did not go together once, or whose rounding was not all told."""
SOME, MANY = (*range(78, 97), *ONCE_OPEN), 300


def put_together(asked, by_heel: bool = False) -> Together:
    printed = Printed(frame(asked))
    return Together(Roof(printed, by_heel), Reading(printed))


@cache
def built(name: str) -> Together:
    """Return a fixed roof; every other one has its bird's mouths cut by heel and seat, not by their height."""
    return put_together(FIXED[name], by_heel=list(FIXED).index(name) % 2 == 1)


def goes_together(made: Together) -> list[str]:
    let_off = [
        f'{key}: up to {max(most):.3f}'
        for key, most in made.allowed.items()
        if max(most) > MOST and not key.endswith(DRAWN_OUT)
    ]
    return [*made.faults(), *wide_bays(made), *let_off]


@pytest.mark.parametrize('name', some(list(FIXED)))
def test_a_roof_of_every_kind_goes_together(name):
    assert goes_together(built(name)) == []


def printed_of(asked: Asked) -> tuple[Asked, Printed]:
    """Return what is printed of a roof; tails too short to be cut square are cut plumb."""
    try:
        return asked, Printed(frame(asked))
    except BookError as fault:
        if fault.place != 'cuts.tails':
            raise
    return printed_of(replace(asked, tail=TailCut.PLUMB))


def any_roof_goes_together(number: int) -> None:
    """Frame and try one; the number says which it is, in a fault too."""
    asked, printed = printed_of(drawn(number))
    if all(sort.mouth for sort in printed.sorts if 'plate' in sort.lines and not (sort.barge or sort.flush)):
        made = Together(Roof(printed, by_heel=number % 2 == 1), Reading(printed))
        assert goes_together(made) == [], (number, asked)


@pytest.mark.parametrize('number', SOME)
def test_any_roof_goes_together(number):
    any_roof_goes_together(number)


def test_any_roof_is_of_any_kind():
    assert {type(drawn(number).kind) for number in SOME} == set(KINDS)


@pytest.mark.thorough
def test_many_roofs_go_together():
    first = randrange(10**6)
    sys.stdout.write(f'drawn from {first} on\n')
    for number in range(first, first + MANY):
        any_roof_goes_together(number)


def test_rafters_meet_in_pairs_over_a_ridge_of_any_hip_roof():
    """Over against one another on both main slopes, so that they can be nailed through and stand without a ridge board too."""
    for name in ('hip between commons, dropped', 'hip on the ridge, dropped', 'gable', 'saltbox'):
        places = {'front': [], 'back': []}
        made = built(name)
        long = made.build.lay.slopes['front'].length
        for key, sort, slope, _ in made.build.standing():
            if slope in places and 'common' in sort.kind:
                along = made.assembly.members[key].points['zero'][0]
                places[slope].append(round(along * 16) / 16)
        assert sorted(places['front']) == pytest.approx(sorted(places['back']), abs=1 / 8), (name, long)


@pytest.mark.parametrize('name', some(list(FIXED)))
def test_a_member_s_hand_is_the_side_of_its_long_point(name):
    """As the answer says: of its head's, or else of its lower end's."""
    for one in built(name).build.printed.sorts:
        hand, long = one.page.partition(' ')[2], one.head.long or one.tail.long
        assert not long or hand == {1: 'left', -1: 'right'}[long], one.page


ALONG = {
    # from barge to barge; eaves of hip roofs out to both other fascias' outer faces; of six sides as the apothem grows
    'gable': ({'F': [170 + 24] * 2}, {'fascia_in': F(3, 4)}),
    'hip between commons, dropped': ({'F': [122 + 25.5] * 2 + [200 + 25.5] * 2}, {'fascia_in': F(3, 4)}),
    'hip of two pitches': ({'F': [144 + 25.5] * 2 + [220 + 17.5] * 2}, {'fascia_in': F(3, 4)}),
    'six sides': ({'F': [144 / 3**0.5 * (72 + 12.75) / 72] * 6}, {'fascia_in': F(3, 4)}),
    # at an inside corner from the back: 40 − 12 and 210 − 160 − 12 along the front, 60 − 12 along the wing's sides
    'wing, one ridge height': ({'F': [28, 38, 48, 48, 210]}, {'fascia_in': F(3, 4)}),
    # over a gable from hip to hip, 8 in out: the eave lies 30 in up the rake, 45 in from the plate line
    'half-hip': ({'F': [144 - 2 * (45 - 8)] * 2 + [150 + 16] * 2}, {'fascia_in': F(3, 4)}),
    # up to a foot blocks from the gable's rafter to the barge; past it back to the near side of the next rafter, 24 in on
    # center at the left, at the right past the one beside it to that at 144: on each of four rakes one at the foot and three up 81 5/8 in
    'gable, its blocks': ({'LO': [12 - 1.5] * 16}, {}),
    'gable, its lookouts': ({'LO': [24 - 0.75 + 20 - 1.5] * 8 + [170 - 144 - 0.75 + 20 - 1.5] * 8}, {'gable_overhang_in': F(20)}),
}  # fmt: skip
"""Roofs of FIXED, the level boards that they should have by mark, by hand, and what else is asked of them."""


@pytest.mark.parametrize('name', ALONG)
def test_fascias_and_lookouts_are_as_long_as_their_eaves_and_rakes(name):
    boards, more = ALONG[name]
    made = frame(replace(FIXED[name.partition(', its')[0]], **more))
    for mark, lengths in boards.items():
        told = [
            float(one.length_in)
            for one in made.levels
            if one.mark.startswith(mark)
            for _ in range(one.number)
        ]
        assert sorted(told) == pytest.approx(lengths)


def test_nothing_but_what_is_asked_and_printed_is_known_to_the_assembly():
    """One module reads a frame's figures; the rest knows what was asked for, which a builder sets himself."""
    here, found = Path(__file__).parent, set()
    for path in here.glob('frame_*.py'):
        if path.stem in ('frame_printed', 'frame_roofs', 'frame_drawn'):
            continue
        for node in ast.walk(ast.parse(path.read_text('utf-8'))):
            if isinstance(node, ast.ImportFrom) and node.module.startswith(('tablegen', 'layouts')):
                found.add(node.module)
    assert found == {'tablegen.frame.asked'}
