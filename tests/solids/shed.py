"""A shed: plate, fascia, a wall with or without a ledger, one rafter. Along the plate x, the wall over y = the run."""

from __future__ import annotations

from assembly import Assembly, Lies, Touch, plane
from boards import box
from hand import OVERHANG, SET_SEAT, Hand
from members import ON_WALL, TO_LEDGER, WALL, shed_rafter
from reading import Reading

__all__ = ['ON_WALL', 'TO_LEDGER', 'WALL', 'shed']
LEDGER, LEDGER_DEEP = 1.5, 11.0
RUN, ODD_RUN = 48.0, 46.5
FAR = 20


def shed(read: Reading, work: type[Hand], against: str) -> Assembly:
    """Return the assembly."""
    hand, pitch = work(read), read.pages.slope
    run = ODD_RUN if against == TO_LEDGER else RUN
    wall = run + (LEDGER if against == TO_LEDGER else 0)
    members = {
        'plate': box((-FAR, 0, -3.5), (FAR, SET_SEAT, 0)),
        'fascia': box((-FAR, -OVERHANG - 1, -20), (FAR, -OVERHANG, 12)),
        'wall': box((-FAR, wall, -3.5), (FAR, wall + 4, 80)),
        'roof': read.member('roof', lambda: plane((0, -pitch, 1), (0, 0, hand.mouth()['height']))),
        'rafter': read.member('rafter', lambda: shed_rafter(hand, against, run).stood((0, 0, 0), (0, 1))),
    }
    touches = [Touch('rafter', 'seat', 'plate', 'z+'), Touch('rafter', 'heel', 'plate', 'y-')]
    lies = [Lies('rafter', ('top',), 'roof', 'face')]
    if hand.by_heel:  # its tail is square: the upper corner reaches the fascia
        lies.append(Lies('rafter', ('lower', 'top'), 'fascia', 'y+'))
    else:
        touches.append(Touch('rafter', 'lower', 'fascia', 'y+'))
    if against == WALL:
        touches.append(Touch('rafter', 'upper', 'wall', 'y-'))
    else:
        members['ledger'] = read.member('ledger', lambda: _ledger(hand, wall))
        touches.append(Touch('rafter', 'upper', 'ledger', 'y-'))
        lies += [
            Lies('ledger', ('z+', 'y-'), 'roof', 'face'),
            Lies('rafter', ('top', 'upper'), 'ledger', 'z+'),
        ]
    return Assembly(members, touches, lies)


def _ledger(hand: Hand, wall: float):
    """Its outer upper edge in the roof's plane, over a run to its face."""
    top = hand.rise(wall - LEDGER) + hand.mouth()['height']
    return box((-FAR, wall - LEDGER, top - LEDGER_DEEP), (FAR, wall, top))
