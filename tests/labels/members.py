"""The opening of a pitch by member: common rafter; hip, valley, jacks. By section, name and column head."""

from __future__ import annotations

from oracle import cuts, framing_square, hip_ends, seats, shortening, tails
from oracle.corner import common_length, hip_length, hip_run, jack_difference, jack_points, rise
from oracle.rounding import Printed, degrees, part
from skewed import HIP, HIPS, RAFTER, RAFTERS, RIDGE, SEAT, SPACINGS, VALLEYS

from labels.expected import DEPTHS
from labels.hips_to_gables import thousandths

Named = dict[tuple[str, str, str], str]
ON_SIDE = 'on the side, from square across'
OFF = 'Off the length, center line to face'
CHEEKS = 'Cheeks, from square across'
LINES = 'Between the plumb lines of a cheek'
CORNER = 'Bird’s mouth, on the center line'
SHARES = ((1 / 3, '‡'), (1 / 4, '†'))
"""Shares of the depth past which a notch is marked, the deeper first."""
LEAST_LEFT = 3.5
"""in, under a tail: IRC 2024 R802.7.1.1."""


def _wood(depth, left) -> str:
    """Return the wood left over a notch, and its marks."""
    mark = next((mark for share, mark in SHARES if depth - left > depth * share), '')
    return part(left) + mark + '§' * (left < LEAST_LEFT)


def _two_ways(section: str, name: str, level, along) -> Named:
    return {(section, name, 'level'): part(level), (section, name, 'along top'): part(along)}


def _alone(section: str, figures: dict[str, str]) -> Named:
    return {(section, name, ''): figure for name, figure in figures.items()}


def common(at) -> Named:
    """Return what the page of the common rafter says."""
    body, tongue = map(part, framing_square.arms(12, rise(at, 12)))
    depth, mouth = DEPTHS[RAFTERS], f'Bird’s mouth of a {RAFTERS}, seat {part(SEAT)} in, level'
    return {
        **_alone('', {
            f'Plumb cut, {ON_SIDE}': degrees(cuts.plumb_cut(at)),
            f'Level cut, {ON_SIDE}': degrees(cuts.level_cut(at)),
            f'Square: level along the {body}, plumb along the {tongue}': f'{body} & {tongue}',
            'Per foot of run, along the top edge': thousandths(common_length(at, 12)),
            'Per foot of run, along the top edge: to the nearest 1/16': part(common_length(at, 12)),
            'Tail per 12 in of overhang, along the top edge': part(tails.common_tail(at, 12)),
        }),
        **_two_ways(
            OFF, f'At a ridge {part(RIDGE)} in thick: half of it', *shortening.common_at_ridge(at, RIDGE)
        ),
        **_alone(mouth, {
            'Height above plate, plumb over the plate line': part(seats.height_above_plate(at, depth, SEAT)),
            'Heel, plumb, at the outside of the plate': part(seats.heel(at, SEAT)),
            'Notch, square to the edge': part(seats.notch(at, SEAT)),
            'Wood left over the notch, square to the edge': _wood(depth, seats.left(at, depth, SEAT)),
        }),
    }  # fmt: skip


def hip_and_jacks(at) -> Named:
    """Return what the page of hip, valley and jacks says."""
    body, tongue = map(part, framing_square.arms(hip_run(at, 12), rise(at, 12)))
    ridge, hip, rafter = map(part, (RIDGE, HIP, RAFTER))
    back = hip_ends.set_back(at, HIP)
    jack = hip_ends.jack_points_level(at, RAFTER), jack_points(at, HIP, RAFTER)
    return {
        **_alone('', {
            f'Plumb cut, {ON_SIDE}': degrees(cuts.hip_plumb_cut(at)),
            f'Level cut, {ON_SIDE}': degrees(cuts.hip_level_cut(at)),
            f'Square: level along the {body} (√288), plumb along the {tongue}': f'{body} & {tongue}',
            'Per foot of COMMON run, along the top edge': thousandths(hip_length(at, 12)),
            'Per foot of COMMON run, along the top edge: to the nearest 1/16': part(hip_length(at, 12)),
            'Tail per 12 in of COMMON overhang, along top edge': part(tails.hip_tail(at, 12)),
            'Backing, each face, from the square top': degrees(cuts.backing(at)),
            'Drop, plumb: already in the dropped hip’s figures': part(cuts.drop_plumb(at, HIP)),
            'Valley’s heel, level, outwards of the inside corner': part(seats.valley_back(at, HIP)),
        }),
        **_two_ways(OFF, f'Hip or valley, ridge {ridge} in: one cheek', *shortening.hip_at_ridge(at, RIDGE)),
        **_two_ways(
            OFF, f'Hip between commons {rafter} in: two cheeks', *shortening.hip_between_commons(at, RAFTER)
        ),
        **_two_ways(OFF, f'Jack at a hip or valley {hip} in thick', *shortening.jack_at_hip(at, HIP)),
        **_cheek('Hip, valley', cuts.hip_cheek(at), cuts.hip_saw(at), cuts.hip_blade(at)),
        **_cheek('Jack', cuts.jack_cheek(at), cuts.jack_saw(at), cuts.jack_blade(at)),
        **_two_ways(LINES, 'Hip, one cheek: short to long point', *(2 * one for one in back)),
        **_two_ways(LINES, 'Hip, two cheeks: point back to each side’s line', *back),
        **_two_ways(LINES, 'Jack: short to long point', *jack),
        **_mouths(at),
        **{
            ('Jacks, on center', 'Longer by, along top', f'{name} in'): part(jack_difference(at, spacing))
            for name, spacing in SPACINGS.items()
        },
    }  # fmt: skip


def _cheek(name: str, top, side, blade) -> Named:
    figure = part(framing_square.figure_against_12(top))
    return {
        (CHEEKS, name, 'top edge, angle'): degrees(top),
        (CHEEKS, name, 'top edge, along the 12'): Printed(f'12 & {figure}', figure.exact),
        (CHEEKS, name, 'side, plumb'): degrees(side),
        (CHEEKS, name, 'blade, tilt'): degrees(blade),
    }


def _mouths(at) -> Named:
    """Return both bird's mouths at the corner, tops held by the commons' height above plate."""
    height = seats.height_above_plate(at, DEPTHS[RAFTERS], SEAT)
    hips, valleys = (at, height, DEPTHS[HIPS], HIP), (at, height, DEPTHS[VALLEYS], HIP)
    return {
        **_mouth(
            f'Dropped hip, {HIPS}', at, DEPTHS[HIPS], seats.hip_height(at, height, HIP), seats.hip_heel(*hips),
            seats.hip_seat(*hips),
        ),
        **_mouth(
            f'Valley, {VALLEYS}', at, DEPTHS[VALLEYS], height, seats.valley_heel(*valleys),
            seats.valley_seat(*valleys),
        ),
    }  # fmt: skip


def _mouth(name: str, at, depth, height, heel, seat) -> Named:
    """Return one of them; its wood left is the depth less what a heel takes square to the edge."""
    plumb = tails.hip_plumb_cut_length(at, depth)  # along a plumb line the whole depth is so long
    return {
        (CORNER, name, 'height, plumb'): part(height),
        (CORNER, name, 'heel, plumb'): part(heel),
        (CORNER, name, 'seat, level'): part(seat),
        (CORNER, name, 'wood left, square'): _wood(depth, depth - depth * heel / plumb),
    }
