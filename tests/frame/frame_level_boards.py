"""Ridges, purlins, boards on a roof and gable studs, as blocks: by their printed lengths and heights."""

from __future__ import annotations

from dataclasses import replace
from math import cos, hypot, radians, sin, tan

import numpy as np
from boards import Member, flat
from frame_placed import block, trimmed
from frame_printed import LevelSort, StudSort
from frame_slopes import Ridge, Slope
from manifold3d import Manifold
from reading import Place, Reading


def valley_board(roof, read: Reading, one: LevelSort) -> Member:
    """Return a board on the main roof as its length alone: up the valley's line, from the plates to the wing's ridge."""
    wing, main = roof.lay.slopes['wing_left'], roof.lay.slopes['front']
    reach = wing.top * wing.rise / main.rise
    long = hypot(wing.top, reach, reach * main.rise)
    told = {'length': long - read.value(Place(one.mark, '', 'length'))}
    return Member(Manifold(), closings=told)


def level_board(roof, read: Reading, one: LevelSort):
    """Return a ridge or purlin by its printed length and heights."""
    place, half, told = roof.lay.ridges[one.mark], one.thick / 2, {}
    long = read.value(Place(one.mark, '', 'length'))
    ends = (-long / 2, long / 2) if place.by_middle else (-long, 0)
    if one.level == 'ridge':
        of = 'ridge' if one.mark == 'R' else 'second'
        top, under = (read.value(Place('heights', '', f'{of}_{end}')) for end in ('top', 'bottom'))
        if of == 'second':
            slope = min((roof.lay.slopes[side] for side in place.sides), key=lambda one: one.top)
            told = {
                'meet': roof.above(read)
                + slope.rise * slope.top
                - read.value(Place('heights', '', 'second_meet'))
            }
    else:
        top = read.value(Place('heights', '', 'purlin_top'))
        under = top - one.depth
        run = min(place.at[1], float(roof.asked.width_in) - place.at[1])
        told = {'flush': top - roof.above(read) - roof.lay.slopes['front'].rise * (run - half)}
    made = block(
        place.at, np.array(place.way), ends, (-half, half), (under, top), depth=top - under - one.depth
    )
    made = replace(made, closings=made.closings | told)
    if place.by_middle and all(corner.inside for corner in roof.lay.corners):  # from barge to barge
        out = float(roof.asked.length_in + 2 * roof.asked.gable_overhang_in)
        made = replace(made, closings=made.closings | {'length': long - out})
    if one.level == 'ridge' and roof.asked.ridge.top == 'beveled':
        for side in place.sides:
            slope = roof.lay.slopes[side]
            lies = slope.at(0, 0, slope.plate + slope.lift + roof.above(read))
            made = trimmed(made, f'bevel {side}', flat(slope.normal, lies))
    if one.cheeks:
        return _pointed(made, read, one, place, ends[0])
    if one.tilted:  # from the board's square end, along the main roof
        tilt, way = radians(read.value(Place(one.mark, '', 'end_tilt'))), np.array(place.way)
        corner = (*(np.array(place.at) + ends[0] * way), top)
        made = trimmed(made, 'lower', flat((*(-cos(tilt) * way), -sin(tilt)), corner))
    return made


def _pointed(made, read: Reading, one: LevelSort, place: Ridge, start: float):
    """Cut the end that lies between two valleys to a point, the blade tilted as it is printed."""
    tilt, way = radians(read.value(Place(one.mark, '', 'end_tilt'))), np.array(place.way)
    tip, left = np.array(place.at) + start * way, np.array([-way[1], way[0]])
    for name, side in (('upper left', 1), ('upper right', -1)):
        normal = -cos(tilt) * way + side * sin(tilt) * left
        made = trimmed(made, name, flat((*normal, 0), (*tip, 0)))
    return made


def stud(read: Reading, one: StudSort, slope: Slope, end: str, n: int):
    """Return a stud on the gable's plate, its broad side to the gable's outer face, the longer edge uphill."""
    place, long, short, cut = (
        read.value(Place(one.mark, '', name)) for name in ('from_plate', 'long', 'short', 'top_cut')
    )
    half, deep = one.thick / 2, one.depth
    ends = (0, deep) if end == 'left' else (slope.length - deep, slope.length)
    way = np.array(slope.along)
    told = {} if n else {'short': long - 2 * half * tan(radians(cut)) - short}
    tall = slope.plate, slope.plate + long + 1
    made = block(slope.origin, way, ends, (place - half, place + half), tall, **told)
    normal = -sin(radians(cut)) * slope.inward
    upper = flat((*normal, cos(radians(cut))), slope.at(0, place + half, slope.plate + long))
    return trimmed(made, 'cut', upper)
