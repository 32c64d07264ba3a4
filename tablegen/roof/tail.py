"""Tails: of commons, jacks, hips and valleys, and the cuts at their ends."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from tablegen.geometry import shortening, tail
from tablegen.numbers.exact import Exact, sign
from tablegen.roof.readings import Group, Reading, board, length, words
from tablegen.roof.side import Side


def tail_of(side: Side) -> Group:
    """Return the tails at a corner whose two sides are alike."""
    return Group(
        'tail',
        (
            *_common(side),
            *hip_tails(side),
            length(
                'hip_plumb_cut',
                tail.plumb_cut_length(side.ask.hips.depth_in, side.at.hip_slope),
                side.ask.measure,
            ),
            _soffit(side),
        ),
        'overhang: level, square to the eave, outside of plate to tail end; common and jack: along the top edge, plate '
        'line to tail end; hip and valley: along the top edge, corner of the plates to the point on the center line where '
        'the eave lines meet; sides: to the plumb lines where the two cheeks to the fascias start, short of that point on '
        'a hip, past it on a valley; fall and plumb cuts, top edge to underside: plumb; square cut: where its lower corner '
        'stands, inset level, below plumb',
    )


def common_tail_of(side: Side) -> Group:
    """Return the tails of the side's commons and jacks alone."""
    return Group(
        'tail',
        (*_common(side), _soffit(side)),
        'overhang: level, square to the eave, outside of plate to tail end; common and jack: along the top edge, plate '
        'line to tail end; fall and plumb cut, top edge to underside: plumb; square cut: where its lower corner stands, '
        'inset level, below plumb',
    )


def shed_tail_of(side: Side) -> Group:
    """Return the tail of a shed's rafters."""
    common = common_tail_of(side)
    values = tuple(
        replace(one, key=one.key.replace('common_and_jack', 'rafter').replace('common', 'rafter'))
        if isinstance(one, Reading)
        else one
        for one in common.values
    )
    return Group(common.key, values, common.from_line.replace('common and jack', 'rafter'))


def hip_tails(side: Side, with_valley: bool = True) -> tuple[Reading, ...]:
    """Return the tails of hip and valley to their point, and of their sides towards this side."""
    at, measure = side.at, side.ask.measure
    level = side.overhang_in / at.plan_a.sine()

    def along(key: str, inches: Exact | Fraction) -> Reading:
        made = length if key in ('hip', 'hip_valley') else board
        return made(key, shortening.along(inches, at.hip_slope), measure)

    hip = along('hip_sides', level - tail.hip_tail_set_back(side.ask.hip_in, at))
    if not with_valley:
        return along('hip', level), hip
    valley = along('valley_sides', level + tail.hip_tail_set_back(side.ask.valley_thickness_in, at))
    return along('hip_valley', level), hip, valley


def _common(side: Side) -> tuple[Reading, ...]:
    slope, depth, measure = side.slope, side.ask.stock.depth_in, side.ask.measure
    return (
        length('overhang', side.overhang_in, measure),
        length('common_and_jack', tail.common_tail(side.overhang_in, slope), measure),
        length('fall', side.overhang_in * slope, measure),
        length('common_plumb_cut', tail.plumb_cut_length(depth, slope), measure),
        length('square_cut_inset', tail.square_cut_set_in(depth, slope), measure),
        length('square_cut_below', tail.square_cut_lower(depth, slope), measure),
    )


def _soffit(side: Side) -> Group:
    face, slope, measure = side.ask.tail_face_in, side.slope, side.ask.measure
    under = tail.soffit_cut(side.ask.stock.depth_in, face, slope)
    below = side.overhang_in * slope + face - side.height_in
    cut: tuple[Reading, ...]
    if under <= 0:
        cut = (words('level_cut', 'none: the plumb cut is no longer than the face'),)
    elif under > side.overhang_in:
        cut = (words('level_cut', 'none: it would run in past the outside of plate'),)
    else:
        over = sign(below) < 0
        stands = length('above_plate' if over else 'below_plate', -below if over else below, measure)
        cut = (length('level_cut', under, measure), stands)
    return Group(
        'soffit',
        (length('face', face, measure), *cut),
        "face: plumb, from the top edge down; level cut: from the tail's end to the underside; below or above plate: "
        "plumb, from the plate's top to that cut",
    )
