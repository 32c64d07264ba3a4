"""An inside corner: plates, ridges, a valley with its jacks, commons, fascias.

Plates with their inside corner at the origin, the building where x or y is above 0, tops at z = 0. Plane A rises with
y over the plate along x, plane B with x over the plate along y. Both ridges end where the valley does.
"""

from __future__ import annotations

from dataclasses import replace
from functools import cache

from assembly import Assembly, Lies, Touch, plane
from boards import LEFT, RIGHT, Member, box
from hand import OVERHANG, RIDGE, SET_SEAT, Hand
from hip_end import A, B
from members import common, valley, valley_jack
from reading import Reading

FAR, RIDGE_DEEP = -60, 15
AXIS, FACE = {'a': 'y', 'b': 'x'}, {'a': 'left', 'b': 'right'}
"""By side: the axis square to its plate; the valley's side, uphill, that looks at it."""
TWO_RIDGES, ONE_RIDGE = 'two ridges', 'one ridge'


def valley_corner(read: Reading, work: type[Hand], ridges: str, spacings: tuple[str, str]) -> Assembly:
    """Return the assembly.

    Given:
        ridges    ONE_RIDGE, over A alone: the valley has one cheek, and there are no jacks of B; else two to a point
        spacings  of the jacks of A and of B, as the book heads them
    """
    hand, two = work(read), ridges == TWO_RIDGES
    members = {
        'plate a': box((FAR, 0, -3.5), (SET_SEAT, SET_SEAT, 0)),
        'plate b': box((0, FAR, -3.5), (SET_SEAT, 0, 0)),
        'fascia a': _mitered((FAR, -OVERHANG - 1, -20), (-OVERHANG, -OVERHANG, 12), 1),
        'fascia b': _mitered((-OVERHANG - 1, FAR, -20), (-OVERHANG, -OVERHANG, 12), -1),
        'valley': _valley(read, hand, two),
    }
    touches, lies = _of_valley(two), []
    for side, spacing in zip('ab' if two else 'a', spacings, strict=True):
        _planes(members, read, hand, side, two)
        _in_planes(touches, lies, side)
        members[f'ridge {side}'] = read.member(f'ridge {side}', lambda s=side: _ridge(hand, s, two))
        members[f'common {side}'] = read.member(f'common {side}', lambda s=side: _common(hand, s))
        for number in range(1, int((hand.run - 6) / float(spacing)) + 1):
            key = f'jack {side}{number}'
            members[key] = read.member(key, lambda s=side, at=spacing, n=number: _jack(hand, s, at, n))
            touches += [
                Touch(key, 'upper', f'ridge {side}', f'{AXIS[side]}-'),
                Touch(key, 'lower', 'valley', FACE[side]),
            ]
            lies.append(Lies(key, ('top',), f'roof {side}', 'face'))
    return Assembly(members, touches, lies)


def _valley(read: Reading, hand: Hand, two: bool) -> Member:
    return read.member('valley', lambda: valley(hand, 2 if two else 1).stood((0, 0, 0), (1, 1)))


def _planes(members, read: Reading, hand: Hand, side: str, two: bool) -> None:
    """Add a side's roof plane, and the one that is lower by the drop, from the valley's center line."""
    normal = (0, -read.pages.slope, 1) if side == 'a' else (-read.pages.slope, 0, 1)
    members[f'roof {side}'] = read.member(
        f'roof {side}', lambda: plane(normal, (0, 0, hand.mouth()['height']))
    )
    members[f'edge {side}'] = read.member(
        f'edge {side}',
        lambda: plane(normal, _valley(read, hand, two).points['lower'] - (0, 0, hand.drop())),
    )


def _in_planes(touches: list[Touch], lies: list[Lies], side: str) -> None:
    """Add what touches and lies where on a side: its common, its ridge, the valley's marks, heel and edge."""
    common, axis = f'common {side}', AXIS[side]
    touches += [
        Touch(common, 'seat', f'plate {side}', 'z+'),
        Touch(common, 'heel', f'plate {side}', f'{axis}-'),
        Touch(common, 'lower', f'fascia {side}', f'{axis}+'),
        Touch(common, 'upper', f'ridge {side}', f'{axis}-'),
    ]
    lies += [
        Lies(common, ('top',), f'roof {side}', 'face'),
        Lies(f'ridge {side}', ('z+', f'{axis}-'), f'roof {side}', 'face'),
        Lies('valley', ('upper',), f'roof {side}', 'face'),
        Lies('valley', ('lower',), f'roof {side}', 'face'),
        Lies('valley', ('heel', FACE[side]), f'plate {side}', f'{axis}-'),
        Lies('valley', ('top', FACE[side]), f'edge {side}', 'face'),
    ]


@cache
def _mitered(low, high, way: int):
    """Return a fascia, its end cut along the line of the valley."""
    board = box(low, high)
    return replace(board, solid=board.solid.trim_by_plane((-way, way, 0), 0))


def _at(side: str, along: float, inwards: float, high: float = 0):
    """Return a point by how far it is along a side's plate from the corner, and inwards of it."""
    return (along, inwards, high) if side == 'a' else (inwards, along, high)


def _top(hand: Hand) -> float:
    return _peak(hand) - hand.sits_down()


def _peak(hand: Hand) -> float:
    return hand.rise(hand.run) + hand.mouth()['height']


def _ridge(hand: Hand, side: str, two: bool):
    """Its face looks at its side; over A it goes on past the valley."""
    run, half, top = hand.run, RIDGE / 2, _top(hand)
    end = (run + half if two else run + 40) if side == 'a' else run - half
    return box(_at(side, FAR, run - half, top - RIDGE_DEEP), _at(side, end, run + half, top))


def _common(hand: Hand, side: str) -> Member:
    """The first one past the corner."""
    return common(hand, hand.off_ridge()).stood(_at(side, -16, 0), A if side == 'a' else B)


def _jack(hand: Hand, side: str, spacing: str, number: int):
    """Its mark where the planes meet over the ridge, its center so many spaces from where the valley's line ends."""
    board = valley_jack(hand, spacing, number, LEFT if side == 'a' else RIGHT)
    place = _at(side, hand.run - number * float(spacing), hand.run, _peak(hand))
    return board.stood(place, A if side == 'a' else B, by='plumb', mark='ridge')


def _of_valley(two: bool) -> list[Touch]:
    upper = [Touch('valley', 'upper', 'ridge a', 'y-', 0.4)]
    if two:
        upper = [
            Touch('valley', 'upper left', 'ridge a', 'y-', 0.4),
            Touch('valley', 'upper right', 'ridge b', 'x-', 0.4),
        ]
    return [
        *upper,
        Touch('valley', 'seat', 'plate a', 'z+', 0.05),
        Touch('valley', 'seat', 'plate b', 'z+', 0),
        Touch('valley', 'lower left', 'fascia a', 'y+'),
        Touch('valley', 'lower right', 'fascia b', 'x+'),
    ]
