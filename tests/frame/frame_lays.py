"""How roofs on a rectangle of plates lie: sheds, gables of one pitch or two, gambrels, hip roofs, half-hips.

The left front corner of the framing is the origin, the front's plate along x.
"""

from __future__ import annotations

from frame_slopes import BOTH, Lay, Ridge, Slope, band, corner, named
from msgspec.structs import replace

from tablegen.frame.asked import (
    Asked,
    Eaves,
    HalfHip,
    Saltbox,
    Upper,
)

FAR = 60.0
"""What a fascia runs past its slope, in."""


def sizes_of(asked: Asked) -> tuple[float, float, float, float]:
    """Return width, length, the main slope's rise over run, its overhang."""
    return (
        float(asked.width_in),
        float(asked.length_in),
        float(asked.pitch.rise) / 12,
        float(asked.overhang_in),
    )


def leant(asked: Asked) -> Lay:
    wide, long, rise, out = sizes_of(asked)
    face = wide - float(asked.kind.thickness_in) if asked.kind.upper == Upper.LEDGER else wide
    slope = Slope('front', (0, 0), (1, 0), long, rise, band(long, 0, face), out, gables=BOTH)
    return Lay(named(slope), (), {}, ((0, wide), ('front',)), ((0, face), (long, face)))


def gabled(asked: Asked) -> Lay:
    """A saltbox's planes start at one height above plates of two heights and meet: run · m − (W − run) · m' = − below."""
    wide, long, rise, out = sizes_of(asked)
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


def broken(asked: Asked) -> Lay:
    wide, long, rise, out = sizes_of(asked)
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


def hipped(asked: Asked) -> Lay:
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
    wide, long, rise, out = sizes_of(asked)
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
