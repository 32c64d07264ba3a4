"""How roofs with a wing lie: on two valleys, laid on the main roof, or flush with its end as an L."""

from __future__ import annotations

from math import sqrt

from frame_lays import FAR, gabled, hip_ends, sizes_of
from frame_slopes import Corner, Lay, Ridge, Slope, corner
from msgspec.structs import replace

from tablegen.frame.asked import Asked, Gable, HipHead, Valleys


def winged(asked: Asked) -> Lay:
    """Return a roof with a wing: both planes of a valley rise alike, so it runs inward of the main one by the wing's pitch over its own."""
    wing, (_, long, rise, out) = asked.kind, sizes_of(asked)
    if wing.main_ends and not wing.from_left_in:
        return _ell(asked)
    if wing.main_ends == 2 and wing.from_left_in == asked.length_in - wing.width_in:
        return _turned(_ell(asked), long)
    if wing.main_ends:
        base = hip_ends(asked, rise, wing.main_ends, 0.0, out, False)
    else:
        base = gabled(replace(asked, kind=Gable()))
    own = float(wing.pitch.rise) / 12 if wing.pitch else rise
    left, half, stands = float(wing.from_left_in), float(wing.width_in) / 2, float(wing.out_in)
    right, rate, aside = left + 2 * half, own / rise, out * rise / own
    reach, seat = half * rate, float(asked.seat_in)
    blind = wing.valleys == Valleys.BLIND
    cut_out = ((left, 0.0), (left + half, reach), (right, 0.0))
    front = base.slopes['front']
    start, *rest = front.outline
    tip, sloped = (stands - half, half) if wing.hipped else (stands, half), wing.hipped
    flank = ((0.0, 0.0), (stands, 0.0), tip, (-reach, half))
    if blind:  # it lies over the main rafters by so much, and begins as much farther out
        over = float(wing.sheathing_in + wing.board_in) * sqrt(1 + rise**2)
        flank = (*flank[:3], (-reach + over / rise, half), (0.0, over / own))
    mirrored = tuple((stands - x, y) for x, y in flank)
    slopes = {
        **base.slopes,
        'front': replace(front, eaves=((-FAR, left), (right, long + FAR))) if blind else replace(
            front, outline=(start, *cut_out, *rest), plates=((0, left + seat), (right - seat, long)),
            eaves=((-FAR, left - aside), (right + aside, long + FAR)),
        ),
        'wing_left': Slope(
            'wing_left', (left, 0), (0, -1), stands, own, flank, aside, eaves=((out, stands + FAR),),
            gables=() if sloped else ('right',),
        ),
        'wing_right': Slope(
            'wing_right', (right, -stands), (0, 1), stands, own, mirrored, aside, eaves=((-FAR, stands - out),),
            gables=() if sloped else ('left',),
        ),
    }  # fmt: skip
    corners = [*base.corners]
    if not blind:
        corners += [
            corner((left, 0), (1, rate), 'wing_left', 'front', inside=True),
            corner((right, 0), (-1, rate), 'front', 'wing_right', inside=True),
        ]
    end = -stands - (0.0 if sloped else float(asked.gable_overhang_in))
    ridges = {**base.ridges, 'R2': Ridge((left + half, end), (0, -1), False, ('wing_left', 'wing_right'))}
    lay = Lay(slopes, tuple(corners), ridges, base.peak)
    past = _past(asked)
    return _wing_hips(lay, left, half, stands, own, aside, past) if sloped else lay


def _past(asked: Asked) -> float:
    """Return what a ridge runs past where its hips' center lines meet, at a regular corner: to the outer faces of the last commons, or
    to where the outer edge of a hip leaves its side.
    """
    if asked.hip_head == HipHead.BETWEEN:
        return float(asked.rafters.thickness_in) / 2
    return float(asked.ridge.thickness_in) / 2 + float(asked.hips.thickness_in) / 2 * sqrt(2)


def _ell(asked: Asked) -> Lay:
    """Return an L: the main left end and the wing's left slope are one, and one hip stands at the outer corner.

    A lower ridge ends where it, the valley and the hip over the inside corner meet; from there on that hip's line bounds the front.
    """
    wing, (wide, long, rise, out) = asked.kind, sizes_of(asked)
    own = float(wing.pitch.rise) / 12 if wing.pitch else rise
    rate, aside, width = own / rise, out * rise / own, float(wing.width_in)
    base = hip_ends(asked, own, wing.main_ends, 0.0, aside, False)
    stands, half, seat, run = float(wing.out_in), width / 2, float(asked.seat_in), wide / 2
    reach, end, peak = half * rate, float(wing.out_in) + wide, run / rate
    level = abs(reach - run) < 1e-9
    (_, _, *rest), left = base.slopes['front'].outline, base.slopes['left']
    front = ((width, 0.0), (long, 0.0), *(rest[:-1] if level else rest), (half, reach))
    inner = ((wide - reach, half),) if level else ((wide - reach, half), (run, peak))
    slopes = {
        **base.slopes,
        'front': replace(
            base.slopes['front'],
            outline=front,
            plates=((width - seat, long),),
            eaves=((width + aside, long + FAR),),
        ),
        'left': replace(
            left, length=end, plates=None, outline=((0.0, 0.0), (end, 0.0), (end, half), *inner), gables=('right',)
        ),
        'wing_right': Slope(
            'wing_right', (width, -stands), (0, 1), stands, own, ((0.0, 0.0), (stands, 0.0), (stands + reach, half), (0.0, half)),
            aside, eaves=((-FAR, stands - out),), gables=('left',),
        ),
    }  # fmt: skip
    corners = [one for one in base.corners if one.start != (0, 0)]
    if not level:
        corners.append(corner((half, reach), (1, rate), 'front', 'left'))
    corners.append(corner((width, 0), (-1, rate), 'front', 'wing_right', inside=True))
    outer = -stands - float(asked.gable_overhang_in)
    ridges = {**base.ridges, 'R2': Ridge((half, outer), (0, -1), False, ('left', 'wing_right'))}
    lay = Lay(slopes, tuple(corners), ridges, base.peak)
    if not wing.hipped:
        return lay
    start = end - half
    cut_off = {
        'left': replace(slopes['left'], outline=((0.0, 0.0), (end, 0.0), (start, half), *inner), gables=()),
        'wing_right': replace(
            slopes['wing_right'],
            outline=((0.0, 0.0), (stands, 0.0), (stands + reach, half), (half, half)),
            gables=(),
        ),
    }
    lay = replace(lay, slopes={**slopes, **cut_off})
    return _wing_hips(lay, 0.0, half, stands, own, aside, _past(asked), left='left')


OTHER = {'left': 'right', 'right': 'left', 'wing_left': 'wing_right', 'wing_right': 'wing_left'}


def _turned(lay: Lay, long: float) -> Lay:
    """Return a roof seen in a mirror that stands square to its main ridge."""

    def ends(slope: Slope, pairs):
        return pairs and tuple((slope.length - end, slope.length - start) for start, end in reversed(pairs))

    slopes = {}
    for one in lay.slopes.values():
        name, (x, y, _) = OTHER.get(one.name, one.name), one.at(one.length, 0)
        slopes[name] = replace(
            one,
            name=name,
            origin=(long - x, y),
            along=(one.along[0], -one.along[1]),
            outline=tuple((one.length - x, y) for x, y in one.outline),
            plates=ends(one, one.plates),
            eaves=ends(one, one.eaves),
            gables=tuple(OTHER[end] for end in one.gables),
        )
    corners = tuple(
        Corner(
            (long - one.start[0], one.start[1]), (-one.way[0], one.way[1]),
            OTHER.get(one.left, one.left), OTHER.get(one.right, one.right), one.plate, one.inside,
        )
        for one in lay.corners
    )  # fmt: skip
    ridges = {
        mark: replace(
            one,
            at=(long - one.at[0], one.at[1]),
            way=(-one.way[0], one.way[1]),
            sides=tuple(OTHER.get(side, side) for side in reversed(one.sides)),
        )
        for mark, one in lay.ridges.items()
    }
    (x, y), sides = lay.peak
    return Lay(slopes, corners, ridges, ((long - x, y), sides))


def _wing_hips(
    lay: Lay,
    at: float,
    half: float,
    stands: float,
    own: float,
    out: float,
    past: float,
    left: str = 'wing_left',
) -> Lay:
    triangle = ((0.0, 0.0), (2 * half, 0.0), (half, half))
    end = Slope('wing_front', (at, -stands), (1, 0), 2 * half, own, triangle, out)
    hips: list[Corner] = [
        corner((at, -stands), (1, 1), 'wing_front', left),
        corner((at + 2 * half, -stands), (-1, 1), 'wing_right', 'wing_front'),
    ]
    ridge = replace(lay.ridges['R2'], at=(at + half, half - stands - past))
    return replace(
        lay,
        slopes={**lay.slopes, 'wing_front': end},
        corners=(*lay.corners, *hips),
        ridges={**lay.ridges, 'R2': ridge},
    )
