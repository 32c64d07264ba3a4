"""Short words of the worked examples: titles, marks on a board, and how a place in the book is said."""

from __future__ import annotations

from layouts.words.say import N_
from tablegen.roof.member import Kind, Line

PLACES = {
    'title': N_('“{}”'),
    'row': N_('row {}'),
    'rows': N_('rows {} to {}'),
    'add': N_('at the foot, for {}'),
    'column': N_('under {}'),
    'head': N_('“{}”'),
    'and': N_(' and '),
    'jack': N_('{}: line, long, short'),
}
LEVEL, ALONG = N_('level'), N_('along top')
ANGLE, PLUMB = N_('top edge, angle'), N_('side, plumb')
SIDES, BETWEEN, RIDGE = (
    N_('Hip, two cheeks: point back'),
    N_('Hip between commons'),
    N_('Hip or valley, ridge'),
)
OPENING_ROWS = {
    'plumb_cut': (N_('Plumb cut'), ''),
    'level_cut': (N_('Level cut'), ''),
    'ridge_level': (N_('At a ridge'), LEVEL),
    'ridge_along': (N_('At a ridge'), ALONG),
    'height': (N_('Height above plate'), ''),
    'heel': (N_('Heel'), ''),
    'notch': (N_('Notch'), ''),
    'left': (N_('Wood left over the notch'), ''),
    'hip_level': (RIDGE, LEVEL),
    'hip_along': (RIDGE, ALONG),
    'between_level': (BETWEEN, LEVEL),
    'between_along': (BETWEEN, ALONG),
    'side_level': (SIDES, LEVEL),
    'side_along': (SIDES, ALONG),
    'hip_top': (N_('Hip, valley'), ANGLE),
    'hip_side': (N_('Hip, valley'), PLUMB),
    'drop': (N_('Drop'), ''),
    'backing': (N_('Backing'), ''),
    'dropped_height': (N_('Dropped hip'), N_('height, plumb')),
    'dropped_heel': (N_('Dropped hip'), N_('heel, plumb')),
    'dropped_seat': (N_('Dropped hip'), N_('seat, level')),
    'dropped_left': (N_('Dropped hip'), N_('wood left, square')),
    'valley_height': (N_('Valley'), N_('height, plumb')),
    'valley_heel': (N_('Valley'), N_('heel, plumb')),
    'valley_seat': (N_('Valley'), N_('seat, level')),
    'valley_left': (N_('Valley'), N_('wood left, square')),
    'valley_out': (N_('Valley’s heel'), ''),
    'jack_level': (N_('Jack at a hip or valley'), LEVEL),
    'jack_along': (N_('Jack at a hip or valley'), ALONG),
    'jack_top': (N_('Jack'), ANGLE),
    'jack_side': (N_('Jack'), PLUMB),
    'jack_points': (N_('Jack: short to long point'), ALONG),
}
"""How a row of a pitch's opening by member begins, and what its column is headed, '' for a row of one figure."""
COMMON_MARKS = {
    Line.CENTER: N_('ridge center line'),
    Line.CUT: N_('ridge cut'),
    Line.PLATE: N_('plate line: heel'),
    Line.TAIL: N_('tail cut'),
}
HIP_MARKS = {
    Line.CENTER: N_('ridge center line'),
    Line.LONG: N_('long point, far side'),
    Line.CUT: N_('the cut, on the center of the top'),
    Line.SHORT: N_('short point, near side'),
    Line.PLATE: N_('corner of the plates: heel'),
    Line.TAIL_SIDE: N_('tail, both sides'),
    Line.TAIL: N_('tail’s point, on the center'),
}
JACK_MARKS = {
    Line.CENTER: N_('hip center line'),
    Line.PLATE: N_('plate line: heel'),
    Line.TAIL: N_('tail cut'),
}
MARKS: dict[Kind, dict[Line, str]] = {
    Kind.COMMON: COMMON_MARKS,
    Kind.SHED_RAFTER: COMMON_MARKS | {Line.CENTER: N_('face of the wall'), Line.CUT: N_('cut at the ledger')},
    Kind.HIP: HIP_MARKS,
    Kind.HIP_JACK: HIP_MARKS | JACK_MARKS,
    Kind.VALLEY: {
        Line.CENTER: N_('where the ridges’ center lines meet'),
        Line.POINT: N_('the point, on the center of the top'),
        Line.SIDE: N_('both cheeks, on the sides'),
        Line.PLATE: N_('inside corner of the plates'),
        Line.HEEL: N_('heel of the bird’s mouth'),
        Line.TAIL: N_('tail’s hollow, on the center'),
        Line.TAIL_SIDE: N_('tail, both sides'),
    },
}
"""What each numbered mark of a board is, by what the board is."""
BOARD_TITLE = N_('The board with its marks')
