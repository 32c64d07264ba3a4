"""What `find` tells of a regular many-sided roof, and of a shed."""

from __future__ import annotations

from fractions import Fraction

from fifty_digits import mp, mpf, real
from oracle import cuts, hip_ends, sawn, shortening, tails, trim, unequal
from oracle.corner import common_length, hip_length, hip_run, rise
from oracle.rounding import decimal
from oracle.sawn import CENTER, RIGHT

from labels.expected import DEPTHS
from labels.found import asked, backing, drop, gable, held, jacks, miters, plumb_and_level
from labels.found_cheeks import cheek, of_hip, of_jack, past_scale
from labels.found_seats import common_seat, height_of_commons, hip_seat, tail
from labels.told import (
    DATA_PLACES,
    HIP,
    HIPS,
    OVERHANG,
    RUN,
    Told,
    at_least,
    grouped,
    inches,
    inside,
    level_and_along,
    turns,
)  # fmt: skip


def _along_hip(at, level):
    return level, level / mp.cos(cuts.hip_plumb_cut(at))


def _peak(at) -> Told:
    blade = unequal.peak_blade(at)
    return {
        **cheek(unequal.peak_cheek(at), cuts.hip_saw(at), blade),
        **past_scale(blade, hip_ends.peak_reach(at, HIP)),
    }


def many_sides(at, pitch: str, sides: int) -> Told:
    """Return everything about a roof of so many sides, the run asked for being from its middle to a side's."""
    post, height = unequal.least_post(at, HIP), height_of_commons(at)
    fascia = sawn.fascia(at, OVERHANG)
    groups = {
        'plan': {
            'sides': sides,
            **turns(corner=unequal.corner_degrees(at)),
            **turns(plate_miter=unequal.plate_cut(at)),
            **inches(apothem=RUN, side=unequal.side(at, RUN), middle_to_corner=hip_run(at, RUN)),
        },
        'length': inches(
            common=common_length(at, RUN),
            hip=hip_length(at, RUN),
            hip_per_foot_of_apothem=hip_length(at, 12),
            rise=rise(at, RUN),
        ),
        'cut': {
            **plumb_and_level('common', cuts.plumb_cut(at), cuts.level_cut(at)),
            **plumb_and_level('hip', cuts.hip_plumb_cut(at), cuts.hip_level_cut(at)),
        },
        'square': {
            **inside('common', held(mpf(12), rise(at, 12))),
            **inside('hip', held(hip_run(at, 12), rise(at, 12))),
        },
        'shortening': level_and_along(
            jack_at_hip=shortening.jack_at_hip(at, HIP), hip_at_least_post=_along_hip(at, post / 2)
        ),
        'jack': jacks(at, RUN, valleys=False),
        'seat': {
            **inside('common', common_seat(at)),
            **inside('hip_dropped', hip_seat(at, height, HIPS, HIP)),
            **inside('hip_backed', hip_seat(at, height, HIPS)),
        },
        'tail': {
            **tail(at, height),
            **inches(
                hip=sawn.towards_tail(at, HIP, CENTER, fascia),
                hip_side=sawn.towards_tail(at, HIP, RIGHT, fascia),
                hip_plumb_cut=tails.hip_plumb_cut_length(at, real(DEPTHS[HIPS])),
            ),
        },
        'cheek': {
            **inside('jack', of_jack(at)),
            **inside('hip_at_peak', _peak(at)),
            **inside('hip_tail', of_hip(at, HIP, (CENTER, RIGHT), fascia)),
        },
        'peak': {
            **level_and_along(point=_along_hip(at, hip_ends.peak_set_back(at, HIP))),
            **at_least(least_post_across_flats=post),
        },
        'backing': backing(at),
        'drop': drop(at),
        'trim': miters(at),
    }
    return asked(at, pitch) | inside('many_sided', grouped(groups))


def shed(at, pitch: str, ledger=None, to_face: bool = False) -> Told:
    """Return everything about a shed against a wall, or on a ledger so thick, its run to the wall or the ledger's face."""
    off = (mpf(0), mpf(0))
    if ledger is not None and not to_face:
        level = hip_ends.shed_on_ledger(at, ledger)
        off = level, level / mp.cos(cuts.plumb_cut(at))
    told = {
        'against': 'wall' if ledger is None else 'ledger',
        'run_to': 'ledger' if to_face else 'wall',
        **({} if ledger is None else inches(ledger_thickness=ledger)),
        **level_and_along(off=off),
        **inches(
            sawn=common_length(at, RUN) - off[1],
            top_at_upper_end=rise(at, RUN - off[0] if off[0] else Fraction(RUN)) + height_of_commons(at),
        ),
    }
    groups = {
        'length': inches(rafter=common_length(at, RUN), rise=rise(at, RUN)),
        'cut': plumb_and_level('rafter', cuts.plumb_cut(at), cuts.level_cut(at)),
        'square': inside('rafter', held(mpf(12), rise(at, 12))),
        'shed': told,
        'seat': inside('rafter', common_seat(at)),
        'tail': {
            key.replace('common_and_jack', 'rafter').replace('common_', 'rafter_'): value
            for key, value in tail(at, height_of_commons(at)).items()
        },
        'gable_stud': gable(at),
        'area': {'roof_per_plan': decimal(trim.area_factor(at), DATA_PLACES)},
    }
    return asked(at, pitch) | grouped(groups)
