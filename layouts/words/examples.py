"""Short words of the worked examples: titles, marks on a board, and how a place in the book is said."""

from __future__ import annotations

PLACES = {
    'title': '“{}”',
    'row': 'row {}',
    'rows': 'rows {} to {}',
    'add': 'at the foot, for {}',
    'column': 'under {}',
    'head': '“{}”',
    'and': ' and ',
    'jack': '{}: line, long, short',
}
LEVEL, ALONG = 'level', 'along top'
ANGLE, PLUMB = 'top edge, angle', 'side, plumb'
SIDES, BETWEEN, RIDGE = 'Hip, two cheeks: point back', 'Hip between commons', 'Hip or valley, ridge'
OPENING_ROWS = {
    'plumb_cut': ('Plumb cut', ''),
    'level_cut': ('Level cut', ''),
    'ridge_level': ('At a ridge', LEVEL),
    'ridge_along': ('At a ridge', ALONG),
    'height': ('Height above plate', ''),
    'heel': ('Heel', ''),
    'notch': ('Notch', ''),
    'left': ('Wood left over the notch', ''),
    'hip_level': (RIDGE, LEVEL),
    'hip_along': (RIDGE, ALONG),
    'between_level': (BETWEEN, LEVEL),
    'between_along': (BETWEEN, ALONG),
    'side_level': (SIDES, LEVEL),
    'side_along': (SIDES, ALONG),
    'hip_top': ('Hip, valley', ANGLE),
    'hip_side': ('Hip, valley', PLUMB),
    'drop': ('Drop', ''),
    'backing': ('Backing', ''),
    'dropped_height': ('Dropped hip', 'height, plumb'),
    'dropped_heel': ('Dropped hip', 'heel, plumb'),
    'dropped_seat': ('Dropped hip', 'seat, level'),
    'dropped_left': ('Dropped hip', 'wood left, square'),
    'valley_height': ('Valley', 'height, plumb'),
    'valley_heel': ('Valley', 'heel, plumb'),
    'valley_seat': ('Valley', 'seat, level'),
    'valley_left': ('Valley', 'wood left, square'),
    'valley_out': ('Valley’s heel', ''),
    'jack_level': ('Jack at a hip or valley', LEVEL),
    'jack_along': ('Jack at a hip or valley', ALONG),
    'jack_top': ('Jack', ANGLE),
    'jack_side': ('Jack', PLUMB),
    'jack_points': ('Jack: short to long point', ALONG),
}
"""How a row of a pitch's opening by member begins, and what its column is headed, '' for a row of one figure."""
COMMON_MARKS = {
    'center': 'ridge center line',
    'cut': 'ridge cut',
    'plate': 'plate line: heel',
    'tail': 'tail cut',
}
HIP_MARKS = {
    'center': 'ridge center line',
    'long': 'long point, far side',
    'cut': 'the cut, on the center of the top',
    'short': 'short point, near side',
    'plate': 'corner of the plates: heel',
    'tail_side': 'tail, both sides',
    'tail': 'tail’s point, on the center',
}
MARKS = {
    'store': COMMON_MARKS,
    'porch': COMMON_MARKS | {'center': 'face of the wall', 'cut': 'cut at the ledger'},
    'hip': HIP_MARKS,
    'jacks': HIP_MARKS | {'center': 'hip center line', 'plate': 'plate line: heel', 'tail': 'tail cut'},
    'valley': {
        'center': 'where the ridges’ center lines meet',
        'point': 'the point, on the center of the top',
        'side': 'both cheeks, on the sides',
        'plate': 'inside corner of the plates',
        'heel': 'heel of the bird’s mouth',
        'tail': 'tail’s hollow, on the center',
        'tail_side': 'tail, both sides',
    },
}
"""What each numbered mark of a board is, by example."""
BOARD_TITLE = 'The board with its marks'
