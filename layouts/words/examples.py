"""Short words of the worked examples: titles, marks on a board, and how a place in the book is said."""

from __future__ import annotations

from layouts.words.say import N_
from tablegen.roof.member import Kind, Line

PLACES = {
    'title': N_('“{}”'),
    'row': N_('row {}'),
    'rows': N_('rows {}'),
    'to': N_('rows {} to {}'),
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
    'valley_off_level': (RIDGE, LEVEL),
    'valley_off_along': (RIDGE, ALONG),
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
SHEET_RIDGE, FROM_SQUARE, ON_12 = N_('Off for a ridge {ridge}'), N_('from square'), N_('square {base} &')
ALONG_TOP, HIP_VALLEY = N_('along top'), N_('Hip, valley')
SHEET_ROWS = {
    **dict.fromkeys(('plumb_cut', 'jack_side', 'hip_side'), ('', N_('Plumb cut'), '')),
    'level_cut': ('', N_('Level cut'), ''),
    **dict.fromkeys(('body', 'hip_body'), ('', N_('body: level'), '')),
    **dict.fromkeys(('tongue', 'hip_tongue'), ('', N_('tongue: plumb'), '')),
    'exact_foot': ('', N_('exact foot'), ''),
    'ridge_level': (SHEET_RIDGE, N_('level'), ''),
    'ridge_along': (SHEET_RIDGE, N_('along the top'), ''),
    'height': ('', '{rafters}', N_('over plate')),
    'heel': ('', N_('heel'), ''),
    'drop': ('', N_('Drop, plumb; hip {thick}'), ''),
    **{
        f'{name}_{way}': ('', row, head)
        for name, row in (
            ('hip', N_('Hip at ridge, one cheek')),
            ('between', N_('Hip at commons, two')),
            ('valley_off', N_('Valley, one or two')),
            ('jack', N_('Jack at a hip')),
        )
        for way, head in (('level', LEVEL), ('along', ALONG_TOP))
    },
    **{
        f'{name}_{way}': ('', row, head)
        for name, row in (('jack', N_('Jack')), ('hip', HIP_VALLEY))
        for way, head in (('top', FROM_SQUARE), ('on_12', ON_12))
    },
    **{
        f'{name}_{figure}': ('', row, figure)
        for name, row in (('dropped', N_('Hip, dropped')), ('valley', N_('Valley')))
        for figure in (N_('height'), N_('heel'), N_('seat'))
    },
    'valley_out': ('', N_('Valley’s heel: out, level'), ''),
    'difference': ('', '{spacing}', N_('longer by')),
}
"""Of what stands on the one opening of a pitch: the title over it, '' where its row's name stands once, what its row is called, its column's head or ''."""
LENGTHS = {'common': N_('common'), 'hip-valley': N_('hip, valley'), 'rise': N_('rise')}
"""Heads of the lengths of an opening."""
COMMON_MARKS = {
    Line.CENTER: N_('ridge center line'),
    Line.CUT: N_('ridge cut'),
    Line.PLATE: N_('plate line: heel'),
    Line.TAIL: N_('tail cut'),
}
HIP_MARKS = {
    Line.CENTER: N_('ridge center line'),
    Line.POINT: N_('the point, on the center of the top'),
    Line.SIDE: N_('both cheeks, on the sides'),
    Line.LONG: N_('long point, far side'),
    Line.CUT: N_('the cut, on the center'),
    Line.SHORT: N_('short point, near side'),
    Line.PLATE: N_('corner of plates: heel'),
    Line.TAIL_SIDE: N_('tail, both sides'),
    Line.TAIL: N_('tail’s point'),
}
JACK_MARKS = {
    Line.CENTER: N_('hip center line'),
    Line.PLATE: N_('plate line: heel'),
    Line.TAIL: N_('tail cut'),
}
MARKS: dict[Kind, dict[Line, str]] = {
    Kind.COMMON: COMMON_MARKS,
    Kind.SHED_RAFTER: COMMON_MARKS | {Line.CENTER: N_('face of the wall'), Line.CUT: N_('cut at the ledger')},
    Kind.LOWER_RAFTER: COMMON_MARKS
    | {Line.CENTER: N_('purlin center line'), Line.CUT: N_('cut at the purlin')},
    Kind.UPPER_RAFTER: COMMON_MARKS
    | {Line.FOOT_CUT: N_('cut at the purlin'), Line.FOOT: N_('purlin center line')},
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
