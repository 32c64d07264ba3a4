"""How roofs on a rectangle of plates lie: sheds, gables of one pitch or two, gambrels, hip roofs, half-hips, wings.

The left front corner of the framing is the origin, the front's plate along x.
"""

from __future__ import annotations

from dataclasses import replace
from math import sqrt

from frame_many_sides import bayed, many_sided
from frame_slopes import BOTH, Corner, Lay, Ridge, Slope, band, corner, named

from tablegen.frame.asked import (
    Asked,
    Bay,
    Eaves,
    Gable,
    Gambrel,
    HalfHip,
    Hip,
    HipHead,
    ManySided,
    Saltbox,
    Shed,
    Upper,
    Valleys,
    Wing,
)

FAR = 60.0
"""What a fascia runs past its slope, in."""


def laid_out(asked: Asked) -> Lay:
    """Return how a roof lies."""
    return {
        Shed: _shed, Gable: _gable, Saltbox: _gable, Gambrel: _gambrel, Hip: _hipped, HalfHip: _hipped, Wing: _winged,
        ManySided: many_sided, Bay: bayed,
    }[type(asked.kind)](asked)  # fmt: skip


def _sizes(asked: Asked) -> tuple[float, float, float, float]:
    """Return width, length, the main slope's rise over run, its overhang."""
    return (
        float(asked.width_in),
        float(asked.length_in),
        float(asked.pitch.rise) / 12,
        float(asked.overhang_in),
    )


def _shed(asked: Asked) -> Lay:
    wide, long, rise, out = _sizes(asked)
    face = wide - float(asked.kind.thickness_in) if asked.kind.upper == Upper.LEDGER else wide
    slope = Slope('front', (0, 0), (1, 0), long, rise, band(long, 0, face), out, gables=BOTH)
    return Lay(named(slope), (), {}, ((0, wide), ('front',)), ((0, face), (long, face)))


def _gable(asked: Asked) -> Lay:
    """A saltbox's planes start at one height above plates of two heights and meet: run · m − (W − run) · m' = − below."""
    wide, long, rise, out = _sizes(asked)
    salt = isinstance(asked.kind, Saltbox)
    other = float(asked.kind.back.rise) / 12 if salt else rise
    below = float(asked.kind.back_plate_below_in) if salt else 0.0
    run = (other * wide - below) / (rise + other)
    front = Slope('front', (0, 0), (1, 0), long, rise, band(long, 0, run), out, gables=BOTH)
    back = Slope(
        'back', (long, wide), (-1, 0), long, other, band(long, 0, wide - run), out, -below, gables=BOTH
    )
    return Lay(
        named(front, replace(back, eave_as_main=not salt)),
        (),
        {'R': Ridge((long / 2, run), sides=('front', 'back'))},
        ((long / 2, run), ('front', 'back')),
    )


def _gambrel(asked: Asked) -> Lay:
    wide, long, rise, out = _sizes(asked)
    upper, level = float(asked.kind.upper.rise) / 12, float(asked.kind.break_in)
    lift, slopes = level * (rise - upper), []
    for name, origin, along in (('front', (0, 0), (1, 0)), ('back', (long, wide), (-1, 0))):
        lower = Slope(name, origin, along, long, rise, band(long, 0, level), out, gables=BOTH)
        over = Slope(
            f'{name}_upper', origin, along, long, upper, band(long, level, wide / 2), lift=lift, plates=()
        )
        slopes += [lower, replace(over, gables=BOTH)]
    ridges = {
        'R': Ridge((long / 2, wide / 2), sides=('front_upper', 'back_upper')),
        'P1': Ridge((long / 2, level)),
        'P2': Ridge((long / 2, wide - level)),
    }
    return Lay(named(*slopes), (), ridges, (ridges['R'].at, ridges['R'].sides))


def _hipped(asked: Asked) -> Lay:
    """Return a hip roof or half-hip."""
    kind, rise = asked.kind, float(asked.pitch.rise) / 12
    half_hip = isinstance(kind, HalfHip)
    end = float(kind.end.rise) / 12 if kind.end else rise
    if half_hip:
        return hip_ends(asked, end, 2, float(kind.gable_rise_in), float(asked.gable_overhang_in), True)
    out = float(asked.overhang_in)
    if kind.eaves == Eaves.EQUAL:  # what the steeper end falls more over one overhang, its plate is raised
        return hip_ends(asked, end, kind.ends, out * (end - rise), out, False)
    return hip_ends(asked, end, kind.ends, 0.0, out * rise / end, False)


def hip_ends(asked: Asked, end: float, ends: int, plate: float, out_end: float, over_gable: bool) -> Lay:
    """Return a roof with sloping ends: a hip rises as both its planes do.

    Given:
        plate       how much higher the ends' plates are: there the hip crosses their line so far in as the main slope takes to
                    rise as much
        over_gable  whether they stand on gables, and are so much shorter
    """
    wide, long, rise, out = _sizes(asked)
    up, run = plate / rise, wide / 2
    end_run = (run - up) * rise / end
    far = long - end_run if ends == 2 else long
    left = ((0.0, up),) if up else ()
    right = ((long, up),) if up and ends == 2 else ()
    front = ((0.0, 0.0), (long, 0.0), *right, (far, run), (end_run, run), *left)
    turned = tuple((long - x, y) for x, y in front)
    start, span = (0.0, wide - 2 * up) if over_gable else (up, wide)
    triangle = ((start, 0.0), (span - start, 0.0), (span / 2, end_run))
    from_corner = up - start
    between = ((start, span - start),)  # a raised plate stops where the hip crosses it
    slopes = [
        Slope('front', (0, 0), (1, 0), long, rise, front, out),
        Slope('back', (long, wide), (-1, 0), long, rise, turned, out),
        Slope('left', (0, wide - from_corner), (0, -1), span, end, triangle, out_end, plate, plates=between),
    ]
    way = (end_run, run - up)
    corners = [
        corner((0, up), way, 'front', 'left', plate),
        corner((0, wide - up), (way[0], -way[1]), 'left', 'back', plate),
    ]
    ridge = Ridge((long + float(asked.gable_overhang_in), run), by_middle=False, sides=('front', 'back'))
    if ends == 2:
        slopes.append(
            Slope('right', (long, from_corner), (0, 1), span, end, triangle, out_end, plate, plates=between)
        )
        corners += [
            corner((long, up), (-way[0], way[1]), 'right', 'front', plate),
            corner((long, wide - up), (-way[0], -way[1]), 'back', 'right', plate),
        ]
        ridge = Ridge((long / 2, run), sides=('front', 'back'))
    slopes = [
        replace(
            one,
            eave_as_main=not over_gable or one.name in ('front', 'back'),
            gables=_gables(one.name, ends, over_gable),
        )
        for one in slopes
    ]
    return Lay(named(*slopes), tuple(corners), {'R': ridge}, (ridge.at, ridge.sides))


def _gables(name: str, ends: int, over_gable: bool) -> tuple[str, ...]:
    if name not in ('front', 'back'):
        return ()
    if over_gable:
        return BOTH
    return () if ends == 2 else ('right',) if name == 'front' else ('left',)


def _winged(asked: Asked) -> Lay:
    """Return a roof with a wing: both planes of a valley rise alike, so it runs inward of the main one by the wing's pitch over its own."""
    wing, (_, long, rise, out) = asked.kind, _sizes(asked)
    if wing.main_ends and not wing.from_left_in:
        return _ell(asked)
    if wing.main_ends:
        base = hip_ends(asked, rise, wing.main_ends, 0.0, out, False)
    else:
        base = _gable(replace(asked, kind=Gable()))
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
    wing, (wide, long, rise, out) = asked.kind, _sizes(asked)
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
