"""What `find` tells a program of a regular corner and of a shed: every key with the figure that belongs there."""

from __future__ import annotations

from fifty_digits import mp, mpf, real
from oracle import cuts, framing_square, sawn, shortening, trim
from oracle.corner import common_length, hip_length, hip_run, jack_length, rise
from oracle.planes import dihedral, dot
from oracle.rounding import decimal, part
from oracle.sawn import CENTER, LEFT, RIGHT

from labels.found_cheeks import cheeks
from labels.found_seats import all_seats, height_of_commons, hip_tails, tail
from labels.told import (
    DATA_PLACES,
    HIP,
    PLATE,
    RAFTER,
    RAFTERS,
    RIDGE,
    RUN,
    SPACINGS,
    VALLEY,
    Told,
    grouped,
    inches,
    inside,
    length,
    level_and_along,
    spaced,
    turns,
)

SQUARE = 90
"""degrees: at other corners no ridge ends against a common."""


def lengths(at) -> Told:
    return inches(common=common_length(at, RUN), hip_valley=hip_length(at, RUN), rise=rise(at, RUN))


def plumb_and_level(name: str, plumb, level) -> Told:
    return inside(name, turns(plumb=plumb, level=level))


def held(run, up) -> Told:
    """Return a hold of the square: body level, tongue plumb, and the run of its step."""
    body, tongue = framing_square.arms(run, up)
    step = mpf(12) * body / run
    return {
        'held': f'{part(body)} & {part(tongue)}',
        **inches(level_on_body=body, plumb_on_tongue=tongue, run_of_step=step),
    }


def shortened(at) -> Told:
    """Return what comes off on side A."""
    ridge = shortening.common_at_ridge(at, RIDGE)
    return {
        **level_and_along(
            common_at_ridge=ridge,
            hip_valley_at_ridge=shortening.hip_at_ridge(at, RIDGE),
            hip_between_commons=shortening.hip_between_commons(at, RAFTER),
            valley_between_ridges=max(shortening.hip_at_ridge(one, RIDGE) for one in (at, at.turned)),
            jack_at_hip=shortening.jack_at_hip(at, HIP),
            jack_at_valley=shortening.jack_at_hip(at, VALLEY),
            valley_jack_at_ridge=ridge,
        ),
        **(inside('end_common', end_common(at)) if at.degrees == SQUARE else {}),
    }


def _along(at, level):
    return level, level / mp.cos(cuts.plumb_cut(at))


def end_common(at) -> Told:
    """Return what comes off an end common of A, in both arrangements."""
    between, on_ridge = real(RAFTER) / 2, sawn.past_end_over_b(at, RIDGE, HIP)
    return {
        **level_and_along(between_commons=_along(at, between), hips_on_ridge=_along(at, on_ridge)),
        **inches(clip=sawn.end_clip(at, RIDGE, RAFTER, HIP)),
    }


def commons_sawn(at, run) -> dict[str, object]:
    """Return the lengths of commons as sawn, by name."""
    whole = common_length(at, run)
    common = {'common': whole - shortening.common_at_ridge(at, RIDGE)[1]}
    if at.degrees != SQUARE:
        return common
    return common | {
        'end_common_between_commons': whole - _along(at, real(RAFTER) / 2)[1],
        'end_common_hips_on_ridge': whole - _along(at, sawn.past_end_over_b(at, RIDGE, HIP))[1],
    }


def sawn_lengths(at, run=RUN) -> Told:
    """Return members as sawn, of side A and at what stands on it."""
    ridge, common = sawn.ridge_face(at, run, RIDGE), sawn.common_face(at, run, RAFTER)

    def to(thickness, side, cut):
        return sawn.to_cut(at, thickness, side, cut)[1]

    def to_first(thickness, cuts):
        return min(to(thickness, CENTER, cut) for cut in cuts)

    return inches(
        **commons_sawn(at, run),
        hip_between_commons_point=to_first(HIP, (common, sawn.common_face_b(at, run, RAFTER))),
        hip_between_commons_side=to(HIP, RIGHT, common),
        hip_at_ridge_long_point=to(HIP, RIGHT, ridge),
        hip_at_ridge_short_point=to(HIP, LEFT, ridge),
        valley_between_ridges_point=to_first(VALLEY, (ridge, sawn.ridge_face_b(at, run, RIDGE))),
        valley_between_ridges_side=to(VALLEY, LEFT, ridge),
        valley_at_ridge_long_point=to(VALLEY, RIGHT, ridge),
        valley_at_ridge_short_point=to(VALLEY, LEFT, ridge),
    )


def jacks(at, run, valleys: bool = True) -> Told:
    """Return jacks of A by spacing and number: as far as the run goes."""
    told: Told = {}
    for place, (said, on) in enumerate(SPACINGS.items()):
        told |= inside(f'difference.{place}', {**spaced(said, on), **inches(difference=jack_length(at, on))})
    rows: dict[str, list[Told]] = {'hip_jacks': [], 'valley_jacks': []}
    for said, on in SPACINGS.items():
        number = 1
        while jack_length(at, on * number) < common_length(at, run):
            both = {'hip_jacks': sawn.hip_jack(at, on * number, HIP, RAFTER)}
            if valleys:
                both['valley_jacks'] = sawn.valley_jack(at, on * number, run, VALLEY, RAFTER, RIDGE)
            for name, (line, long, short) in both.items():
                if short > 0:  # else there is no wood left between its cuts
                    points = inches(line_length=line, long_point=long, short_point=short)
                    rows[name].append({**spaced(said, on), 'number': number, **points})
            number += 1
    for name, found in rows.items():
        for place, row in enumerate(found):
            told |= inside(f'{name}.{place}', row)
    return told


def backing(at) -> Told:
    return {**turns(bevel=cuts.backing(at)), **inches(depth_down_side=cuts.drop_square(at, HIP))}


def drop(at) -> Told:
    return inches(plumb=cuts.drop_plumb(at, HIP), square_to_edge=cuts.drop_square(at, HIP), hip_thickness=HIP)


def miters(at) -> Told:
    """Return the cuts of trim along eave A."""
    told: Told = {}
    for name, faces in (
        ('standing_plumb', sawn.standing_plumb(at)),
        ('square_to_slope', sawn.square_to_slope(at)),
        ('in_the_roof_plane', sawn.in_the_planes(at)),
    ):
        cut = sawn.mirror(at, *faces)
        told |= inside(name, turns(miter=sawn.miter(at, faces), bevel=mp.pi / 2 - dihedral(cut, faces[0])))
    sheathing = turns(from_eave=trim.sheathing(at), plumb_bevel=trim.bevel(at, at.roof.a))
    return told | inside('sheathing', sheathing)


def heights(at) -> Told:
    """Return how high a ridge over A stands, and how far it runs past its theoretical ends."""
    top, down = rise(at, RUN) + height_of_commons(at), shortening.sits_down(at, RIDGE)
    told = inches(top_of_planes=top, sits_down=down, top_of_ridge=top - down)
    if at.degrees != SQUARE:
        return told
    on_ridge = shortening.past_end_between_hips(at, RIDGE, HIP)
    return told | inches(past_end_between_commons=real(RAFTER) / 2, past_end_hips_on_ridge=on_ridge)


def hip_roof(at) -> Told:
    """Return the ridge of a hip roof whose plates are so long, both ends alike."""
    end = dot(at.on_hip(at.across_a(RUN)), at.roof.eave_a)
    lines = real(PLATE) - 2 * end
    return inches(
        plate_length=PLATE,
        center_lines=lines,
        sawn_between_commons=lines + 2 * real(RAFTER) / 2,
        sawn_hips_on_ridge=lines + 2 * shortening.past_end_between_hips(at, RIDGE, HIP),
    )


def gable(at) -> Told:
    told: Told = {}
    for place, (said, on) in enumerate(SPACINGS.items()):
        told |= inside(
            f'difference.{place}', {**spaced(said, on), **inches(difference=trim.stud_difference(at, on))}
        )
    return {**told, **turns(top_cut=trim.stud_top(at))}


def asked(at, pitch: str) -> Told:
    return {
        'pitch': f'{pitch} in 12',
        **inches(rise_per_foot=rise(at, 12)),
        **length('run', decimal(RUN, DATA_PLACES), '10 ft 5 in'),
        **length('nearest', '0.062500000', '1/16'),
        'rafters': RAFTERS,
    }


def regular(at, pitch: str) -> Told:
    """Return everything about a regular corner."""
    square = {
        **inside('common', held(mpf(12), rise(at, 12))),
        **inside('hip_valley', held(hip_run(at, 12), rise(at, 12))),
    }
    cut = {
        **plumb_and_level('common', cuts.plumb_cut(at), cuts.level_cut(at)),
        **plumb_and_level('hip_valley', cuts.hip_plumb_cut(at), cuts.hip_level_cut(at)),
    }
    groups = {
        'length': lengths(at),
        'cut': cut,
        'square': square,
        'shortening': shortened(at),
        'sawn': sawn_lengths(at),
        'jack': jacks(at, RUN),
        'seat': all_seats(at),
        'tail': {**tail(at, height_of_commons(at)), **hip_tails(at)},
        'cheek': cheeks(at, RUN),
        'backing': backing(at),
        'drop': drop(at),
        'trim': miters(at),
        'ridge': {**heights(at), **inside('hip_roof', hip_roof(at))},
        'gable_stud': gable(at),
        'area': {'roof_per_plan': decimal(trim.area_factor(at), DATA_PLACES)},
    }
    return asked(at, pitch) | grouped(groups)
