"""The book's short words: heads, names and labels that code puts in place. Prose stands in the templates."""

from __future__ import annotations

WORDS = {
    'cautions': 'Before you cut',
    'contents': 'Contents',
    'how-to': 'How to find a length',
    'order': 'From stick to rafter',
    'words': 'The words',
    'words-corner': 'Hips, valleys, jacks',
    'square': 'Is your square true?',
    'stepping': 'Step off, then measure',
    'engraved': 'What a square should carry',
    'drift': 'What the steps add up to',
    'glance': 'All pitches at a glance',
    'glance-right': 'Jacks, cheeks, backing',
    'examples': 'Worked examples',
    'numbers': 'How numbers are rounded',
    'checked': 'How they were checked',
    'made': 'How this copy was made',
    'closing': 'Once more, before the saw',
    'notes': 'Notes',
    'after-the-length': 'After the length',
    'care': 'Where care is due',
}
"""Heads of pages, by the name under which a page is looked for."""
GLANCE_HEADS: dict[str, tuple[tuple[tuple[str, ...], tuple[tuple[str, str], ...] | None], ...]] = {
    'glance': (
        (
            ('on the side, from square across',),
            (
                ('plumb,', 'common'),
                ('level,', 'common'),
                ('plumb,', 'hip, valley'),
                ('level,', 'hip, valley'),
            ),
        ),
        (
            ('along the top edge, inches', 'in a foot of common run'),
            (('', 'common'), ('', 'hip, valley')),
        ),
    ),
    'glance-right': (
        (('each jack longer than the last, inches', 'along the top edge; spaced on center'), None),
        (('cheek, top edge', 'from square'), (('', 'jack'), ('hip, not', 'backed'))),
        (('back-', 'ing'), (('blade', 'tilt'),)),
    ),
}
"""What stands over columns, and their heads below it; None for one column a spacing."""
GROUP_HEADS = {
    'set-out': 'Setting out',
    'ridge': 'At the ridge',
    'seat': 'Seats',
    'tail': 'Tails',
    'hips': 'Hips, valleys',
    'jack-deductions': 'Jacks',
    'cheeks': 'Cheek cuts',
    'trim': 'Trim',
    'gable': 'Gables, areas',
    'unequal': 'Two pitches',
    'many-sided': 'Many sides',
    'find-pitch': 'Finding a pitch',
}
"""Heads of the groups of reference tables."""
GROUP_SAYS = {
    'set-out': 'diagonals, 3-4-5, braces',
    'ridge': 'shortening, ridge heights and ends',
    'seat': 'bird’s mouths, heights above plate',
    'tail': 'overhangs, tail cuts, soffits',
    'hips': 'cuts, backing, drop',
    'jack-deductions': 'differences, deductions, points',
    'cheeks': 'on the side, on the top, on the square',
    'trim': 'miters of fascia, sheathing',
    'gable': 'studs, roof areas',
    'unequal': 'two pitches at a corner',
    'many-sided': 'five to twelve sides',
    'find-pitch': 'degrees, level and tape',
}
"""What a group is about, beside its head."""
INSIDE = {
    'common': 'common rafters',
    'hip-valley': 'hips and valleys',
    'rise': 'rises',
    'jacks': 'jacks',
    'values': 'cuts',
    'glance': 'all pitches at a glance',
    'examples': 'worked examples',
    'groups': 'reference tables',
}
"""What a section holds, for its cover."""
FIRST_SECTION = {'how-to': 'how to find a length', 'words': 'the words', 'cautions': 'the cautions'}
"""What stands in the first section alone, for the covers of later ones."""
FOUND: dict[str, tuple[str, str]] = {
    'common': (
        'line length of the common rafter',
        'along its top edge, from the plate line to the ridge center line',
    ),
    'hip-valley': (
        'line length of the hip or valley',
        'along its top edge, from the corner of the plates to the ridge center line; the run is the common’s',
    ),
    'rise': (
        'rise',
        'plumb: so much higher does the line length end at the ridge center line than it begins at the plate line',
    ),
}
"""What a figure of a table is, and from where to where it is measured."""
LENGTHS = {'inches': 'inches', 'feet-inches': 'feet and inches'}
"""How lengths read."""
ENDS = {'ridge': 'RIDGE', 'wall': 'WALL', 'hip': 'HIP', 'tail': 'TAIL', 'top_edge': 'top edge'}
"""Words at the ends of a drawn board, and at its top edge."""
SQUARE_DRAWING = {'body': 'body', 'tongue': 'tongue', 'plumb': 'plumb', 'level': 'level'}
TURN_OVER_DRAWING = {
    'title': 'A square held against a straight edge, then turned over at the same point',
    'first': 'first line',
    'second': 'line turned over',
    'gap': 'gap',
    'over': '16 in',
}
GAUGES_DRAWING = {
    'title': 'A square with a gauge on each arm, stepped along the top edge of a board from ridge to tail',
    'gauge': 'gauge',
    'first': 'ridge center line',
}
RAFTER_DRAWING = {
    'title': 'A common rafter on its plate and ridge',
    'ridge': 'ridge',
    'ridge_line': 'ridge center line',
    'plate': 'plate',
    'plate_line': 'plate line',
    'top_edge': 'top edge, crown up',
    'line_length': 'line length',
    'run': 'run',
    'rise': 'rise',
    'overhang': 'overhang',
    'plumb_cut': 'plumb cut',
    'seat': 'seat',
    'heel': 'heel',
    'height_above_plate': 'height above plate',
    'tail': 'tail',
}
CORNER_DRAWING = {
    'title': 'A hip corner and a wing, seen from above',
    'ridge': 'ridge',
    'hip': 'hip',
    'valley': 'valley',
    'common': 'common',
    'end_common': 'end common',
    'hip_jack': 'hip jack',
    'valley_jack': 'valley jack',
    'plate': 'plate',
    'run': 'common run',
    'spacing': 'spacing, on center',
}
ROOF_DRAWINGS: dict[str, dict[str, str]] = {
    'set-out': {
        'title': 'A rectangle with equal diagonals, a 3-4-5 corner, and a brace between two legs',
        'three': '3',
        'four': '4',
        'five': '5',
        'diagonals': 'both diagonals equal',
        'leg': 'leg',
        'brace': 'brace',
    },
    'ridge': {
        'title': 'A common at a ridge, a hip at a ridge and a jack at a hip, seen from above',
        'common': 'common, ridge',
        'hip': 'hip, ridge',
        'jack': 'jack, hip',
    },
    'ridge-end': {
        'title': 'The end of a hip roof’s ridge, seen from above: hips between commons, and hips on the ridge',
        'between': 'hips between commons',
        'on_ridge': 'hips on the ridge',
    },
    'seat': {
        'title': 'A bird’s mouth on its plate',
        'height': 'height above plate',
        'seat': 'seat',
        'heel': 'heel',
        'notch': 'notch, square',
        'left': 'stock left',
    },
    'hip-seat': {
        'title': 'The seat of a dropped hip over the corner of the plates',
        'height': 'height above plate',
        'seat': 'seat',
        'heel': 'heel',
        'notch': '',
        'left': '',
        'drop': 'roof planes’ line',
    },
    'valley-heel': {
        'title': 'A valley over the inside corner of the plates, seen from above: its heel out, and its seat',
        'out': 'heel out',
        'seat': 'seat',
        'corner': 'inside corner',
    },
    'tail': {
        'title': 'A tail with its cuts',
        'overhang': 'overhang',
        'fall': 'fall',
        'plumb': 'plumb cut',
        'square': 'square cut',
        'soffit': 'soffit cut',
        'tail': 'tail',
    },
    'hips': {
        'title': 'A backed hip and a dropped hip, cut square across',
        'backed': 'backed',
        'dropped': 'left square, dropped',
    },
    'jacks': {
        'title': 'A jack against a hip, seen from above',
        'long': 'long point',
        'short': 'short point',
        'off': 'off, level:',
        'hip': 'hip center line',
        'corner': 'corner',
    },
    'hip-ends': {
        'title': 'Ends of hips and valleys from above: one cheek, two cheeks to a point, and hollow',
        'one': 'one cheek',
        'point': 'two cheeks',
        'tail_point': 'hip’s tail',
        'hollow': 'valley’s tail',
    },
    'cheeks': {
        'title': 'A jack’s cheek on its top edge and on its side',
        'top': 'top edge',
        'side': 'side',
    },
    'hip-cheeks': {
        'title': 'A hip’s cheek on its square top and on its side',
        'top': 'square top',
        'side': 'side',
    },
    'trim': {
        'title': 'Boards at an eave: plumb, square to the slope, flat on it',
        'standing_plumb': 'plumb',
        'square_to_slope': 'square to the slope',
        'in_the_roof_plane': 'flat on the slope',
        'miter': 'miter',
        'bevel': 'bevel',
    },
    'gable': {'title': 'Studs under a gable rafter, its ridge at the left'},
    'unequal': {
        'title': 'The corner of two pitches, seen from above',
        'a': 'eave A',
        'b': 'eave B',
        'half': '45°',
        'out_a': 'overhang A',
        'out_b': 'overhang B',
    },
    'many-sided': {
        'title': 'A roof of eight sides, seen from above',
        'apothem': 'apothem',
        'side': 'side',
        'hip': 'hip',
        'jack': 'jack',
        'corner': 'corner of the plates',
    },
    'find-pitch': {'title': 'A level and a tape on a roof', 'level': '24 in level, held level'},
}
"""Words of the drawings of reference groups."""
