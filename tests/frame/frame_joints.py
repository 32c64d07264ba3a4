"""What is to be true of a roof put together: what members stand on, and what each cut end lies on, found where it is."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from assembly import Lies, Off, Touch
from boards import Flat
from reading import HALF_PART

NEAR_END = 0.15
"""A face within so much of an end's cut may be what it is cut to, in."""
LEAN = 0.002
"""What the rounding of its angles adds to where a tail ends, in."""
BESIDE = 0.1
"""Faces in one plane by which a cut lies are off by no more than this of one another, in."""
OPPOSED = -0.995
"""Cosine between the outward directions of two faces that meet, at most."""
ENDS = ('upper', 'lower')


@dataclass(frozen=True)
class Under(Lies):
    """Corners of one member that may lie under a face of another, not over it."""

    def off(self, members: dict) -> Off:
        _, high, _ = super().off(members)
        return 0.0, max(0.0, high), 0.0


@dataclass(frozen=True)
class Clear(Lies):
    """Corners of one member that may stand off a face of another, not in it."""

    def off(self, members: dict) -> Off:
        low, _, _ = super().off(members)
        return min(0.0, low), 0.0, 0.0


def touches_of(roof, members: dict) -> list[Touch]:
    """Return what every member stands on, and for every cut end each face that it lies on."""
    found = []
    for key, sort, slope, start in roof.standing():
        if sort.corner and sort.mouth:
            corner = roof.corner(start)
            found += [
                Touch(key, 'seat', f'plate {name}', 'top', 0)
                for name in (corner.right, corner.left)
                if roof.lay.slopes[name].plate == corner.plate
            ]
        elif sort.mouth:
            found.append(Touch(key, 'seat', f'plate {slope}', 'top', 0))
            if not sort.flush:
                found.append(Touch(key, 'heel', f'plate {slope}', 'right', 0))
        if 'upper_seat' in members[key].faces:
            found += [
                Touch(key, f'upper_{face}', 'over-beam', on, 0)
                for face, on in (('seat', 'top'), ('heel', 'right'))
            ]
        for face in ends_of(members[key]):
            near = _at_fascia(roof, sort, slope)
            met = _met(key, face, members, near)
            if sort.flush and face == 'lower':  # at the plate line: what stands beside it may be anywhere
                met = [one for one in met if one[0].startswith('fascia')]
            found += [Touch(key, face, *one, 0) for one in met]
    for one in roof.printed.studs:
        for n in range(len(roof.stud_places(one))):
            found += [
                Touch(f'{one.mark} {n}', 'cut', *met, 0) for met in _met(f'{one.mark} {n}', 'cut', members)
            ]
    for one in roof.printed.levels:
        if one.cheeks:
            for face in ('upper left', 'upper right'):
                found += [Touch(one.mark, face, *met, 0) for met in _met(one.mark, face, members)]
    return found


def ends_of(member) -> list[str]:
    """Return the cut faces of a member's two ends."""
    return [
        face for face in member.faces if face.split()[0] in ENDS and face not in ('upper_seat', 'upper_heel')
    ]


def _at_fascia(roof, sort, slope: str) -> float:
    """Return how far off its fascia rounding may put a tail; one that ends farther before it is cut short of a valley.

    Source: half a part of both its marks; where it is square also of the height that it stands at and of the fascia's, along it.
    """
    if sort.corner or sort.tail.stop:
        return NEAR_END
    rise = roof.lay.slopes[slope].rise
    sine = rise / np.hypot(1, rise)
    return 2 * HALF_PART * (1 + sine if sort.tail.square else np.sqrt(1 - sine**2)) + LEAN


def _met(key: str, face: str, members: dict, near_fascia: float = NEAR_END) -> list[tuple[str, str]]:
    """Return every face that the face of a cut end lies on, or nearly."""
    one = members[key]
    corners, normal = one.corners(face), one.faces[face].normal
    low, high = corners.min(axis=0) - NEAR_END, corners.max(axis=0) + NEAR_END
    found = []
    for name, other in members.items():
        if name == key or other.solid.is_empty():
            continue
        bounds = np.array(other.solid.bounding_box())
        if np.any(bounds[:3] > high) or np.any(bounds[3:] < low):
            continue
        for on, plane_of in other.faces.items():
            off = max(abs(plane_of.height(corners)))
            near = near_fascia if name.startswith('fascia') else NEAR_END
            if off < near and plane_of.normal @ normal < OPPOSED and _meets(one, other, plane_of):
                found.append((off, name, on))
    nearest = min((off for off, _, _ in found), default=0.0)
    return [(name, on) for off, name, on in found if off < nearest + BESIDE]


def _meets(one, other, plane_of: Flat) -> bool:
    return (one.solid.translate(tuple(-NEAR_END * plane_of.normal)) ^ other.solid).volume() > 1e-3


def lies_of(roof, members: dict, touches: list[Touch]) -> list[Lies]:
    """Return which edges lie in which planes."""
    at_fascia = {(touch.one, touch.two) for touch in touches if touch.face == 'lower'}
    found = [Lies('peak', ('mark',), f'roof {name}', 'face') for name in roof.lay.peak[1]]
    for key, sort, slope, start in roof.standing():
        if sort.corner:
            found += _of_corner(roof, members, key, roof.corner(start))
            continue
        found.append(Lies(key, ('top',), f'roof {slope}', 'face'))
        if sort.tail.laid:
            found.append(Lies(key, ('lower',), 'laid on', 'face'))
        if (key, f'fascia {slope}') in at_fascia and roof.lay.slopes[slope].eave_as_main:
            found.append(Lies(key, ('top', 'lower'), 'eaves', 'face'))
    found += [
        Lies(one.mark, ('lower',), 'laid on', 'face')
        for one in roof.printed.levels
        if one.tilted and not one.cheeks
    ]
    return found + _of_ridges(roof)


def _of_corner(roof, members: dict, key: str, corner) -> list[Lies]:
    """Return how a hip's or valley's top lies: a dropped hip's edges in the steeper plane, and under the other; a valley's center,
    and its heel at the plate that it runs along the more."""
    faces = {'left': corner.left, 'right': corner.right}
    if corner.inside:
        marks = [
            Lies(key, (mark,), f'roof {name}', 'face')
            for name in faces.values()
            for mark in ('zero', 'lower')
        ]
        beside = {side: abs(np.dot(corner.way, roof.lay.slopes[name].along)) for side, name in faces.items()}
        heels = [
            (Lies if beside[side] > max(beside.values()) - 1e-9 else Clear)(
                key, ('heel', side), f'plate {name}', 'right'
            )
            for side, name in faces.items()
        ]
        return marks + heels
    if 'top left' in members[key].faces:
        return [Lies(key, (f'top {side}',), f'roof {name}', 'face') for side, name in faces.items()]
    rises = {side: roof.lay.slopes[name].rise for side, name in faces.items()}
    steeper = max(rises.values())
    return [
        (Lies if rises[side] == steeper else Under)(key, ('top', side), f'roof {name}', 'face')
        for side, name in faces.items()
    ]


def _of_ridges(roof) -> list[Lies]:
    """Return how ridges' upper edges lie: flush in the steeper plane, and under the other."""
    found = []
    for one in roof.printed.levels:
        if one.level != 'ridge' or roof.asked.ridge.top != 'flush':
            continue
        names = dict(zip(('right', 'left'), roof.lay.ridges[one.mark].sides, strict=False))
        steepest = max(roof.lay.slopes[name].rise for name in names.values())
        for face, name in names.items():
            check = Lies if roof.lay.slopes[name].rise == steepest else Under
            found.append(check(one.mark, ('top', face), f'roof {name}', 'face'))
    return found
