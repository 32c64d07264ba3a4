"""A figure of a frame misread, or one of its rules broken: the roof does not go together any more."""

from __future__ import annotations

from functools import cache

import pytest
from each import some
from frame_assembly import Roof
from frame_printed import Printed
from frame_roofs import FIXED
from frame_together import Together
from msgspec.structs import replace
from reading import Place, Reading
from test_frame_together import built, put_together

from tablegen.frame.frame import frame

MISREAD = (
    'hip on the ridge, dropped', 'hip between commons, backed', 'hip of two pitches', 'wing, lower ridge', 'wing laid on', 'half-hip', 'gambrel',
    'eight sides around a post', 'shed over a beam', 'ell, lower ridge, two pitches', 'ell at a gable', 'hip of two pitches, square tails', 'wing, square tails',
)  # fmt: skip
NOT_SAWN_BY = {
    'depth': 'of the stock, which is measured',
    'least_depth': 'what stock would do',
    'longest_seat_for_a_quarter': 'a limit',
    'longest_seat_for_a_third': 'a limit',
    'notch_share_of_depth': 'a share',
}
AT_A_VALLEYS_TAIL = 'tail.off'
"""From where the valley's center line crosses a tail, which is no mark of a board with a plate line."""


@pytest.mark.parametrize('name', some(MISREAD))
def test_no_figure_may_be_misread(name):
    """By 3/16 in or a degree, too great or too small; level places of seats and studs by 3/8 in."""
    assert built(name).unfelt() == []


@pytest.mark.parametrize('name', MISREAD)
def test_every_figure_is_sawn_by_or_held_against_the_board(name):
    made = built(name)
    left = {
        place
        for place in set(made.read.pages.known) - set(made.read.used)
        if place.name not in NOT_SAWN_BY and place.section != AT_A_VALLEYS_TAIL
    }
    planed = {place.page for place in made.read.pages.known if place.section == 'backs'}
    flush = {sort.page for sort in made.build.printed.sorts if sort.flush}
    gone = {
        place
        for place in left
        if (place.name == 'stick' and place.page in planed | flush)
        or (place.name == 'overall' and place.page in planed)
    }  # where wood that the lengths over all begin at is planed or notched away
    assert left - gone == set()


@cache
def kinds_of(name: str) -> dict[str, str]:
    """Return the first page of a roof's members by kind."""
    found: dict[str, str] = {}
    for sort in built(name).build.printed.sorts:
        found.setdefault(sort.kind, sort.page)
    return found


EXCHANGED = {
    'plumb and level cut': ('gambrel', ('lower_rafter', 'cut', 'plumb'), ('lower_rafter', 'cut', 'level')),
    'long and short point of a jack': ('hip on the ridge, dropped', ('hip_jack', 'marks', 'long'), ('hip_jack', 'marks', 'short')),
    'long and short point of a hip': ('hip on the ridge, dropped', ('hip', 'marks', 'long'), ('hip', 'marks', 'short')),
    'the two cheeks of a hip of two pitches': ('hip of two pitches', ('hip', 'marks', 'side'), ('hip', 'marks', 'side_right')),
    'the two blades of it': (
        'hip of two pitches', ('hip', 'head.cut', 'side_blade_tilt'), ('hip', 'head.other', 'side_blade_tilt')
    ),
    'the leaning cheeks of a square tail': (
        'hip of two pitches, square tails', ('hip', 'tail.cut', 'side_leaning'), ('hip', 'tail.other', 'side_leaning')
    ),
    'the two cheeks of its tail': ('hip of two pitches', ('hip', 'marks', 'tail_side'), ('hip', 'marks', 'tail_right')),
    'heights of common and hip: the drop': (
        'hip on the ridge, dropped', ('common', 'mouth', 'height_above_plate'), ('hip', 'mouth', 'height_above_plate')
    ),
    'a valley’s plate line and heel': ('wing, lower ridge', ('valley', 'marks', 'plate'), ('valley', 'marks', 'heel')),
    'a cripple’s two long points': ('wing, lower ridge', ('cripple', 'marks', 'foot_long'), ('cripple', 'marks', 'foot_short')),
    'a jack’s level and plumb length off': (
        'wing, lower ridge', ('cripple', 'head.off', 'level'), ('cripple', 'head.off', 'along')
    ),
    'a stud’s longer and shorter edge': ('gambrel', ('GS1', '', 'long'), ('GS1', '', 'short')),
    'center and near edge: the X on the wrong side': (
        'gambrel', ('lower_rafter', 'stands', 'center', '1'), ('lower_rafter', 'stands', 'near_edge', '1')
    ),
    'top and bottom of the ridge': ('half-hip', ('heights', '', 'ridge_top'), ('heights', '', 'ridge_bottom')),
}  # fmt: skip
"""A roof, and two places of it by the kind of member."""


@pytest.mark.parametrize('what', EXCHANGED)
def test_figures_read_for_one_another(what):
    name, *places = EXCHANGED[what]
    one, two = (Place(kinds_of(name).get(kind, kind), *rest) for kind, *rest in places)
    assert built(name).exchanged(one, two) != []


def test_a_ridge_deducted_along_the_edge_and_not_level():
    """Half of the ridge is taken off level: along the edge it is longer, and a rafter cut by the level length is too long."""
    made = built('half-hip')
    steep = put_together(replace(FIXED['gable'], pitch=FIXED['gambrel'].pitch))
    assert steep.faults() == []
    level, along = (steep.read.used[Place('C', 'head.off', way)].value for way in ('level', 'along'))
    assert steep.open(steep.misread({Place('C', 'marks', 'cut'): level - along})) != []
    assert made.faults() == []


def test_hands_exchanged():
    """A jack, a hip and a valley each stand only on their own hand."""
    for name in ('hip on the ridge, dropped', 'wing, lower ridge'):
        printed = Printed(frame(FIXED[name]))
        for n, sort in enumerate(printed.sorts):
            if sort.head.long:
                printed.sorts[n] = replace(sort, head=replace(sort.head, long=-sort.head.long))
                assert Together(Roof(printed), Reading(printed)).bare() != [], (name, sort.page)
                printed.sorts[n] = sort
                break


def test_a_rafter_left_out_and_one_too_many():
    from frame_bays import wide_bays

    printed = Printed(frame(FIXED['hip between commons, dropped']))
    (n, jack), *_ = [(n, sort) for n, sort in enumerate(printed.sorts) if sort.kind == 'hip_jack']
    printed.sorts[n] = replace(jack, places=jack.places[1:])
    assert wide_bays(Together(Roof(printed), Reading(printed))) != []
    printed.sorts[n] = replace(jack, places=(*jack.places, jack.places[0]))
    printed.known |= {
        Place(jack.page, 'stands', name, str(len(jack.places))): printed.known[
            Place(jack.page, 'stands', name, '0')
        ]
        for name in ('center', 'near_edge')
    }
    assert Together(Roof(printed), Reading(printed)).passing() != []
