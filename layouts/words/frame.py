"""The members and boards of a whole roof in words: what each is, its marks, and what stands in a row."""

from __future__ import annotations

import re
from collections.abc import Iterable

from layouts.words.say import N_, _
from tablegen.frame.plan import Level
from tablegen.roof.member import Hand, Kind, Line

MEMBERS = {
    Kind.COMMON: N_('common'),
    Kind.END_COMMON: N_('end common'),
    Kind.SHED_RAFTER: N_('rafter'),
    Kind.HIP_JACK: N_('hip jack'),
    Kind.VALLEY_JACK: N_('valley jack'),
    Kind.CRIPPLE: N_('cripple jack'),
    Kind.LOWER_RAFTER: N_('lower rafter'),
    Kind.UPPER_RAFTER: N_('upper rafter'),
    Kind.LAID_JACK: N_('jack on the sheathing'),
    Kind.HIP: N_('hip'),
    Kind.UPPER_HIP: N_('upper hip'),
    Kind.VALLEY: N_('valley'),
    Kind.BARGE: N_('barge rafter'),
    Kind.UPPER_BARGE: N_('upper barge rafter'),
}
LEVELS = {
    Level.RIDGE: N_('ridge'),
    Level.LEDGER: N_('ledger'),
    Level.PURLIN: N_('purlin'),
    Level.FASCIA: N_('fascia'),
    Level.LOOKOUT: N_('lookout'),
    Level.VALLEY_BOARD: N_('valley board'),
}
HANDS = {Hand.LEFT: N_('left'), Hand.RIGHT: N_('right')}
LINES = {
    Line.LONG: N_('long'),
    Line.CUT: N_('cut'),
    Line.SHORT: N_('short'),
    Line.POINT: N_('point'),
    Line.SIDE: N_('side'),
    Line.SIDE_RIGHT: N_('side, right'),
    Line.PLATE: N_('plate'),
    Line.HEEL: N_('heel'),
    Line.TAIL: N_('tail'),
    Line.TAIL_SIDE: N_('tail side'),
    Line.TAIL_RIGHT: N_('tail right'),
    Line.TAIL_LONG: N_('tail long'),
    Line.TAIL_SHORT: N_('tail short'),
    Line.FOOT: N_('foot line'),
    Line.FOOT_LONG: N_('foot long'),
    Line.FOOT_CUT: N_('foot cut'),
    Line.FOOT_SHORT: N_('foot short'),
    Line.UPPER_PLATE: N_('upper plate'),
}
"""The marks of a board but the line that all are measured from."""
OTHER_PLATES, ENDS_PLATES = {'saltbox': N_('top of the back’s plates')}, N_('top of the ends’ plates')
"""Plates that do not stand at the main ones' height, by the kind of roof."""
MEET, AT_WALL = (
    N_('where the planes meet, or a shed’s top edge ends'),
    N_('where the tops, run on, come to the wall'),
)
LEDGER_TOP = N_('top of the ledger, its outer edge in line with the tops')
"""Heights: MEET of a shed without a ledger, AT_WALL of one with it."""
CHECKS = {
    'sides': N_('Every side of the framing is {side}, and its middle {apothem} from the middle of the plan.'),
    'corners': N_('Every corner of the framing is {radius} from the middle of the plan.'),
    'bay_sides': N_(
        'Every side of the framing is {side}, and its middle {apothem} from the middle of the framing along the wall.'
    ),
    'bay_halves': N_(
        'Every side of the framing is {side}, but the two at the wall {half}; a whole side’s middle is {apothem} from the middle of the '
        'framing along the wall.'
    ),
    'bay_corners': N_('Every corner of the framing is {radius} from there.'),
    'bay_hips': N_('Every corner with a hip is {radius} from there.'),
    'bay_wall': N_('Along the wall the framing is {wall}, outside.'),
    'diagonals': N_('Both diagonals of the framing, outside, are {diagonal}.'),
    'wing_diagonals': N_('Both diagonals of the wing’s framing, outside, are {diagonal}.'),
    'raised_plates': N_(
        'The ends’ plates stand {raised} over the others, plumb, top to top. Each hip crosses them {crossed} from the corner of '
        'the framing, level, and stands there: a raised plate stops at the hip, and from there to the corner the wall stays '
        'at the others’ height. What of a plate’s corner or end stands in the way of a hip or a jack is cut off the plate, never off '
        'the rafter.'
    ),
    'upper_hip': N_(
        'The upper hip’s lower cut lies in line with the outer side of the wing’s ridge, against the common there.'
    ),
    'upper_hip_top': N_('Its top stands {drop} under the line where the planes meet, plumb, on its center.'),
    'ridge_height': N_('The ridge’s top stands {height} over the main plates, plumb.'),
    'hips_alike': N_(
        'Hips or valleys that are alike measure alike from the corner of the plates to the ridge.'
    ),
    'to_the_peak': N_('Hips that are alike measure alike from the corner of the plates to the peak.'),
    'cut_two': N_('Cut two of a mark and try them in place before the others.'),
}
"""What is measured before more is cut."""
OF_PLATES = (
    'sides', 'corners', 'bay_sides', 'bay_halves', 'bay_corners', 'bay_hips', 'bay_wall', 'diagonals', 'wing_diagonals',
)  # fmt: skip
"""Those that are measured before anything stands on the plates."""


def in_rows(marks: Iterable[str]) -> str:
    """Return marks in their order, those that follow one another as their first and last: 'C, HJ1–HJ8'."""
    rows: list[list[str]] = []
    for mark in marks:
        if rows and _after(rows[-1][-1]) == mark:
            rows[-1].append(mark)
        else:
            rows.append([mark])
    return ', '.join(f'{row[0]}–{row[-1]}' if len(row) > 2 else ', '.join(row) for row in rows)


def _after(mark: str) -> str:
    """Return the mark after one that ends with a number; '' after another."""
    found = re.fullmatch(r'(\D+)(\d+)', mark)
    return f'{found[1]}{int(found[2]) + 1}' if found else ''


def with_hand(mark: str, hand: Hand | None) -> str:
    """Return a mark with the hand of a member, where it has a mate cut the other way."""
    return _('{mark} {hand}').format(mark=mark, hand=_(HANDS[hand])) if hand else mark
