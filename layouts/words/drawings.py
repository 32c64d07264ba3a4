"""The words of drawings: they are said where a drawing places them, no wider than their English (layouts/drawings/svg.py)."""

from __future__ import annotations

from layouts.words.say import N_

ENDS = {
    'ridge': N_('RIDGE'),
    'wall': N_('WALL'),
    'hip': N_('HIP'),
    'tail': N_('TAIL'),
    'top_edge': N_('top edge'),
}
"""Words at the ends of a drawn board, and at its top edge."""
SQUARE_DRAWING = {'body': N_('body'), 'tongue': N_('tongue'), 'plumb': N_('plumb'), 'level': N_('level')}
TURN_OVER_DRAWING = {
    'title': N_('A square held against a straight edge, then turned over at the same point'),
    'first': N_('first line'),
    'second': N_('line turned over'),
    'gap': N_('gap'),
    'over': N_('16 in'),
}
GAUGES_DRAWING = {
    'title': N_(
        'A square with a gauge on each arm, stepped along the top edge of a board from ridge to tail'
    ),
    'gauge': N_('gauge'),
    'first': N_('ridge center line'),
}
RAFTER_DRAWING = {
    'title': N_('A common rafter on its plate and ridge'),
    'ridge': N_('ridge'),
    'ridge_line': N_('ridge center line'),
    'plate': N_('plate'),
    'plate_line': N_('plate line'),
    'top_edge': N_('top edge, crown up'),
    'line_length': N_('line length'),
    'run': N_('run'),
    'rise': N_('rise'),
    'overhang': N_('overhang'),
    'plumb_cut': N_('plumb cut'),
    'seat': N_('seat'),
    'heel': N_('heel'),
    'height_above_plate': N_('height above plate'),
    'tail': N_('tail'),
}
CORNER_DRAWING = {
    'title': N_('A hip corner and a wing, seen from above'),
    'ridge': N_('ridge'),
    'hip': N_('hip'),
    'valley': N_('valley'),
    'common': N_('common'),
    'end_common': N_('end common'),
    'hip_jack': N_('hip jack'),
    'valley_jack': N_('valley jack'),
    'plate': N_('plate'),
    'run': N_('common run'),
    'spacing': N_('spacing, on center'),
}
ROOF_DRAWINGS: dict[str, dict[str, str]] = {
    'set-out': {
        'title': N_('A rectangle with equal diagonals, a 3-4-5 corner, and a brace between two legs'),
        'three': '3',
        'four': '4',
        'five': '5',
        'diagonals': N_('both diagonals equal'),
        'leg': N_('leg'),
        'brace': N_('brace'),
    },
    'ridge': {
        'title': N_('A common at a ridge, a hip at a ridge and a jack at a hip, seen from above'),
        'common': N_('common, ridge'),
        'hip': N_('hip, ridge'),
        'jack': N_('jack, hip'),
    },
    'ridge-end': {
        'title': N_(
            'The end of a hip roof’s ridge, seen from above: hips between commons, and hips on the ridge'
        ),
        'between': N_('hips between commons'),
        'on_ridge': N_('hips on the ridge'),
    },
    'seat': {
        'title': N_('A bird’s mouth on its plate'),
        'height': N_('height above plate'),
        'seat': N_('seat'),
        'heel': N_('heel'),
        'notch': N_('notch, square'),
        'left': N_('stock left'),
    },
    'hip-seat': {
        'title': N_('The seat of a dropped hip over the corner of the plates'),
        'height': N_('height above plate'),
        'seat': N_('seat'),
        'heel': N_('heel'),
        'notch': '',
        'left': '',
        'drop': N_('roof planes’ line'),
    },
    'valley-heel': {
        'title': N_(
            'A valley over the inside corner of the plates, seen from above: its heel out, and its seat'
        ),
        'out': N_('heel out'),
        'seat': N_('seat'),
        'corner': N_('inside corner'),
    },
    'tail': {
        'title': N_('A tail with its cuts'),
        'overhang': N_('overhang'),
        'fall': N_('fall'),
        'plumb': N_('plumb cut'),
        'square': N_('square cut'),
        'soffit': N_('soffit cut'),
        'tail': N_('tail'),
    },
    'hips': {
        'title': N_('A backed hip and a dropped hip, cut square across'),
        'backed': N_('backed'),
        'dropped': N_('left square, dropped'),
    },
    'jacks': {
        'title': N_('A jack against a hip, seen from above'),
        'long': N_('long point'),
        'short': N_('short point'),
        'off': N_('off, level: {length}'),
        'hip': N_('hip center line'),
        'corner': N_('corner'),
    },
    'hip-ends': {
        'title': N_('Ends of hips and valleys from above: one cheek, two cheeks to a point, and hollow'),
        'one': N_('one cheek'),
        'point': N_('two cheeks'),
        'tail_point': N_('hip’s tail'),
        'hollow': N_('valley’s tail'),
    },
    'cheeks': {
        'title': N_('A jack’s cheek on its top edge and on its side'),
        'top': N_('top edge'),
        'side': N_('side'),
    },
    'hip-cheeks': {
        'title': N_('A hip’s cheek on its square top and on its side'),
        'top': N_('square top'),
        'side': N_('side'),
    },
    'trim': {
        'title': N_('Boards at an eave: plumb, square to the slope, flat on it'),
        'standing_plumb': N_('plumb'),
        'square_to_slope': N_('square to the slope'),
        'in_the_roof_plane': N_('flat on the slope'),
        'miter': N_('miter {angle}'),
        'bevel': N_('bevel {angle}'),
    },
    'gable': {'title': N_('Studs under a gable rafter, its ridge at the left')},
    'unequal': {
        'title': N_('The corner of two pitches, seen from above'),
        'a': N_('eave A'),
        'b': N_('eave B'),
        'half': '45°',
        'out_a': N_('overhang A'),
        'out_b': N_('overhang B'),
    },
    'many-sided': {
        'title': N_('A roof of eight sides, seen from above'),
        'apothem': N_('apothem'),
        'side': N_('side'),
        'hip': N_('hip'),
        'jack': N_('jack'),
        'corner': N_('corner of the plates'),
    },
    'find-pitch': {'title': N_('A level and a tape on a roof'), 'level': N_('24 in level, held level')},
}
"""Words of the drawings of reference groups."""
