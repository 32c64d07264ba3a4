"""A hip roof's end: plates, ridge, commons, a hip with its jacks, the end common, fascias.

Plates with their outer corner at the origin, A's along x and B's along y, tops at z = 0. The ridge stands over A's
run and ends where the end common of B meets it.
"""

from __future__ import annotations

from dataclasses import replace

from assembly import Assembly, Lies, Touch, plane
from boards import LEFT, RIGHT, box
from hand import OVERHANG, RAFTER, RIDGE, SET_SEAT, Hand
from members import common, end_common, hip, hip_jack
from numpy import array
from reading import Reading

A, B = (0, 1), (1, 0)
"""Uphill, in plan."""
FAR, RIDGE_DEEP = 150, 14
BETWEEN, ON_RIDGE = 'between commons', 'on the ridge'


def hip_end(read: Reading, work: type[Hand], hips: str, backed: bool, spacings: tuple[str, str]) -> Assembly:
    """Return the assembly.

    Given:
        hips      BETWEEN commons, with two cheeks, or ON_RIDGE, with one
        spacings  of the jacks of A and of B, as the book heads them
    """
    hand = work(read)
    run, one = hand.run, hips == ON_RIDGE
    pitch = read.pages.slope

    def stood_hip():
        return hip(hand, 1 if one else 2, backed).stood((0, 0, 0), (1, 1))

    members = {
        'plate a': box((0, 0, -3.5), (FAR, SET_SEAT, 0)),
        'plate b': box((0, SET_SEAT, -3.5), (SET_SEAT, run + 20, 0)),
        'fascia a': box((-OVERHANG - 1, -OVERHANG - 1, -16), (FAR, -OVERHANG, 12)),
        'fascia b': box((-OVERHANG - 1, -OVERHANG, -16), (-OVERHANG, run + 20, 12)),
        'roof a': read.member('roof a', lambda: plane((0, -pitch, 1), (0, 0, hand.mouth()['height']))),
        'roof b': read.member('roof b', lambda: plane((-pitch, 0, 1), (0, 0, hand.mouth()['height']))),
        'ridge': read.member('ridge', lambda: _ridge(hand, hips)),
        'common a': read.member(
            'common a',
            lambda: common(hand, hand.off_ridge()).stood((run + (RAFTER + 12 if one else 0), 0, 0), A),
        ),
        'end common': read.member('end common', lambda: end_common(hand, hips).stood((0, run, 0), B)),
        'hip': read.member('hip', stood_hip),
    }
    touches, lies = _of_hip(one, backed)
    if one:
        members['far hip'] = read.member('far hip', lambda: read.member('hip', stood_hip).mirrored(1, run))
    for side, spacing in zip('ab', spacings, strict=True):
        for number in range(1, int((run - 6) / float(spacing)) + 1):
            key = f'jack {side}{number}'
            members[key] = read.member(key, lambda s=side, at=spacing, n=number: _jack(hand, s, at, n))
            touches += [Touch(key, 'upper', 'hip', 'right' if side == 'a' else 'left'), *_on_plate(key, side)]
            lies.append(Lies(key, ('top',), f'roof {side}', 'face'))
    return Assembly(members, touches, lies)


def _jack(hand: Hand, side: str, spacing: str, number: int):
    """So many spaces from the corner; the side away from it is A's right one, uphill, and B's left one."""
    along = number * float(spacing)
    if side == 'a':
        return hip_jack(hand, spacing, number, RIGHT).stood((along, 0, 0), A)
    return hip_jack(hand, spacing, number, LEFT).stood((0, along, 0), B)


def _ridge(hand: Hand, hips: str):
    """Its top flush with the commons' edges, its end past the theoretical one."""
    top = hand.rise(hand.run) + hand.mouth()['height'] - hand.sits_down()
    low = (hand.run - hand.past_end(hips), hand.run - RIDGE / 2, top - RIDGE_DEEP)
    ridge = box(low, (FAR, hand.run + RIDGE / 2, top))
    return replace(ridge, points={'peak': array([FAR, hand.run, top + hand.sits_down()])})


def _on_plate(key: str, side: str) -> list[Touch]:
    normal = 'y-' if side == 'a' else 'x-'
    return [
        Touch(key, 'seat', f'plate {side}', 'z+'),
        Touch(key, 'heel', f'plate {side}', normal),
        Touch(key, 'lower', f'fascia {side}', 'y+' if side == 'a' else 'x+'),
    ]


def _of_hip(one: bool, backed: bool) -> tuple[list[Touch], list[Lies]]:
    """Return what hip, commons and ridge touch and lie in."""
    touches = [
        *_on_plate('common a', 'a'),
        *_on_plate('end common', 'b'),
        Touch('common a', 'upper', 'ridge', 'y-'),
        Touch('end common', 'upper', 'ridge', 'x-', 0.3),
        Touch('hip', 'seat', 'plate a', 'z+', 0.02),
        Touch('hip', 'seat', 'plate b', 'z+', 0),
        Touch('hip', 'lower right', 'fascia a', 'y+'),
        Touch('hip', 'lower left', 'fascia b', 'x+'),
    ]
    lies = [
        Lies('common a', ('top',), 'roof a', 'face'),
        Lies('end common', ('top',), 'roof b', 'face'),
        Lies('common a', ('top', 'upper'), 'ridge', 'z+'),
        Lies('ridge', ('z+', 'y-'), 'roof a', 'face'),
        Lies('ridge', ('peak',), 'roof a', 'face'),
    ]
    if one:
        touches += [
            Touch('hip', 'upper', 'ridge', 'y-'),
            Touch('far hip', 'upper', 'ridge', 'y+'),
            Touch('end common', 'clip right', 'hip', 'left', 0.5),
            Touch('end common', 'clip left', 'far hip', 'left', 0.5),
        ]
        lies.append(Lies('ridge', ('x-', 'y-'), 'hip', 'left'))
    else:
        touches += [
            Touch('hip', 'upper right', 'common a', 'left', 0.5),
            Touch('hip', 'upper left', 'end common', 'right', 0.5),
            Touch('end common', 'upper', 'common a', 'left', 0.2),
        ]
    if backed:
        lies += [Lies('hip', ('top right',), 'roof a', 'face'), Lies('hip', ('top left',), 'roof b', 'face')]
    else:
        lies += [
            Lies('hip', ('top', 'right'), 'roof a', 'face'),
            Lies('hip', ('top', 'left'), 'roof b', 'face'),
        ]
    return touches, lies
