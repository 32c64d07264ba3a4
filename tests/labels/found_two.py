"""What `find` tells of a corner of two pitches."""

from __future__ import annotations

from fifty_digits import mp, mpf, real
from oracle import cuts, hip_ends, sawn, seats, tails, unequal
from oracle.corner import common_length, hip_length, hip_plan_angle, hip_run, rise, run_of_b
from oracle.planes import LEVEL, meet
from oracle.rounding import decimal

from labels.expected import DEPTHS
from labels.found import (
    asked,
    backing,
    drop,
    heights,
    held,
    jacks,
    miters,
    plumb_and_level,
    sawn_lengths,
    shortened,
)
from labels.found_cheeks import cheeks
from labels.found_seats import common_seat, height_of_commons, hip_seat, hip_tails, tail, valley_seat
from labels.told import (
    DATA_PLACES,
    HIP,
    HIPS,
    OVERHANG,
    RAFTER,
    RAFTERS,
    RUN,
    SEAT,
    VALLEYS,
    Told,
    grouped,
    inches,
    inside,
    level_and_along,
    turns,
)


def hip_of_two(at) -> Told:
    """Return the hip or valley of two pitches."""
    own = hip_run(at, RUN)
    return {
        **turns(plan_from_eave_a=hip_plan_angle(at), plan_from_eave_b=hip_plan_angle(at.turned)),
        **inches(
            length=hip_length(at, RUN),
            length_per_foot_of_run_a=hip_length(at, 12),
            own_run=own,
            rise_per_foot_of_own_run=12 * rise(at, RUN) / own,
        ),
    }


def double_cheek(at) -> Told:
    """Return where the two cheeks of a hip between commons meet."""
    aside = hip_ends.point_aside(at, RAFTER, RAFTER)
    return {**inches(aside=abs(aside)), 'point': f'towards_side_{"b" if aside > 0 else "a"}'}


def side(at, pitch: str, run, seat, height, overhang) -> Told:
    """Return one side of a corner of two pitches, as side A."""
    groups = {
        'seat': inside('common', common_seat(at, seat)),
        'tail': {**tail(at, height, overhang), **hip_tails(at, overhang)},
        'sawn': sawn_lengths(at, run),
        'length': inches(run=run, common=common_length(at, run), rise=rise(at, run)),
        'cut': plumb_and_level('common', cuts.plumb_cut(at), cuts.level_cut(at)),
        'shortening': shortened(at),
        'jack': jacks(at, run),
        'cheek': cheeks(at, run),
        'backing': backing(at),
        'drop': drop(at),
        'trim': miters(at),
    }
    return {'pitch': f'{pitch} in 12'} | grouped(groups)


def slid(at) -> Told:
    """Return what sliding the hip changes, A being the steeper side: the hip goes towards B."""
    flat = at.turned  # the hip goes towards the flatter side's eave
    ways = {
        'jacks_of_a': ('longer', hip_ends.slid_jack_longer(flat, HIP)),
        'jacks_of_b': ('shorter', hip_ends.slid_jack_shorter(flat, HIP)),
        'hip_at_ridge_over_a': ('shorter', _hip_slid(at, flat, at.across_a(RUN))),
        'hip_at_ridge_over_b': ('longer', _hip_slid(at, flat, sawn.ridge_face_b(at, RUN, 0))),
    }
    told = {
        **inches(aside=unequal.slide(flat, HIP), drop_plumb=unequal.slid_drop(flat, HIP)),
        'way': 'towards_eave_b',
    }
    for name, (become, both) in ways.items():
        told |= inside(name, {'become': become, **level_and_along(by=both)})
    return told


def _hip_slid(at, flat, ridge):
    """Return how much a hip's center line gains or loses at a ridge when it is slid: level, and along its edge."""
    moved = at.hip_center.moved(unequal.slide(flat, HIP))  # towards eave B, on the left
    here, there = (at.along_hip(meet(cut, ridge, LEVEL)) for cut in (at.hip_center, moved))
    level = abs(there - here)
    return level, level / mp.cos(cuts.hip_plumb_cut(at))


def seats_of_two(at) -> Told:
    """Return seats of the hips and valleys of two pitches that stand at one height above plate."""
    height = height_of_commons(at)
    return {
        **inside('hip_dropped', hip_seat(at, height, HIPS, HIP)),
        **inside('hip_backed', hip_seat(at, height, HIPS)),
        **inside('valley', valley_seat(at, height, VALLEYS)),
    }


def eaves(at) -> Told:
    """Return the eaves of two pitches: one plate raised, so that equal overhangs end at one height."""
    falls = [tails.fall(one, OVERHANG) for one in (at, at.turned)]
    return {
        **inches(raise_for_equal_overhangs=abs(falls[0] - falls[1])),
        'raised': f'plate_{"a" if falls[0] > falls[1] else "b"}',
    }


def two_pitches(at, pitches: tuple[str, str]) -> Told:
    """Return everything about a corner of two pitches, the steeper asked for first."""
    square = {
        **inside('side_a', held(mpf(12), rise(at, 12))),
        **inside('side_b', held(mpf(12), rise(at.turned, 12))),
        **inside('hip_valley', held(hip_run(at, 12), rise(at, 12))),
    }
    drops = [cuts.drop_plumb(one, HIP) for one in (at, at.turned)]
    height = height_of_commons(at)
    seat_b = seats.seat_of_height(at.turned, real(DEPTHS[RAFTERS]), height)
    overhang_b = tails.matching_overhang(at, OVERHANG)
    groups = {
        '': {'corner.degrees': decimal(at.degrees, DATA_PLACES)},
        'hip_valley': hip_of_two(at),
        'cut': plumb_and_level('hip_valley', cuts.hip_plumb_cut(at), cuts.hip_level_cut(at)),
        'square': square,
        'double_cheek': double_cheek(at),
        'side_a': side(at, pitches[0], RUN, SEAT, height, OVERHANG),
        'side_b': side(at.turned, pitches[1], run_of_b(at, RUN), seat_b, height, overhang_b),
        'drop': {
            **inches(plumb=max(drops), gap_plumb=abs(drops[0] - drops[1])),
            'gap_on': f'side_{"ab"[drops[0] > drops[1]]}',
        },
        'slide': slid(at),
        'seat': seats_of_two(at),
        'eaves': eaves(at),
        'ridge': heights(at),
    }
    return asked(at, pitches[0]) | inside('two_pitches', grouped(groups))
