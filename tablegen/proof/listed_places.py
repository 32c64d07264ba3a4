"""Where rafters stand on a roof from gable to gable, and on a wing that is laid on it."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from tablegen.proof.digits import real
from tablegen.proof.roof_plates import HALF
from tablegen.proof.roof_slopes import Slope, run_of
from tablegen.proof.roof_stated import Asked

WHOLE = 2 * HALF


def from_gables(slope: Slope, asked: Asked) -> list[Decimal]:
    """Return where rafters stand along a plate from gable to gable: flush with both ends, the others a space apart from the left
    one; what would stand in another stands beside it.

    Notes:
        1. At a line in which a wing's wall stands two stand for one, each beside it.
    """
    if any(stop.edge == 'board' for stop in slope.regions[0].lower):
        return _laid(slope, asked)
    last = slope.length - HALF
    place, found = real(asked.inches('first', asked.inches('spacing'))), [HALF]
    while place < last:
        if place > HALF:
            found.append(min(max(place, 3 * HALF), last - WHOLE))
        place += real(asked.inches('spacing'))
    found.append(last)
    walls = (wall for region in slope.regions if not region.eaves for wall in (region.start, region.end))
    for wall in walls:
        found = found if wall is None else _beside(found, wall)
    return found


def _laid(slope: Slope, asked: Asked) -> list[Decimal]:
    """Return where rafters stand along a wing's slope: from its gable in to its ridge's end, the lower ones on the main roof.

    Notes:
        1. The shortest is as long on its shorter side as it is thick, to where a valley rafter's side would be.
        2. None stands half on the plate and half on the main roof.
    """
    (board,) = (stop for stop in slope.regions[0].lower if stop.edge == 'board')
    assert board.start is not None
    assert board.end is not None
    reach = board.end - board.start
    to, rate = slope.length + reach, reach / run_of(slope)
    beside = real(asked.ridge) / 2 + HALF * (1 + 1 / rate**2).sqrt()
    most = to - (beside + HALF / rate + WHOLE) * rate
    place, found = HALF, list[Decimal]()
    while place < to:
        found.append(min(place, to - WHOLE))
        place += real(asked.inches('spacing'))
    if found[-1] > most:
        found = [*(one for one in found if one < most), most]
        for n in range(len(found) - 2, -1, -1):
            found[n] = min(found[n], found[n + 1] - WHOLE)
    from_gable = _beside(found, slope.length)
    return [slope.length - one for one in from_gable] if slope.ends[1] else from_gable


def _beside(places: Sequence[Decimal], wall: Decimal) -> list[Decimal]:
    """Return places of which none is in a line: two stand beside it for one that was."""
    low, high = wall - HALF, wall + HALF
    there = any(low < one < high for one in places)
    kept = [one for one in places if not low < one < high]
    return sorted(kept + ([low, high] if there else []))
