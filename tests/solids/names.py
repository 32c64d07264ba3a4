"""Printed names: titles of pages and tables, sections, rows. A figure is looked for under these and nothing else."""

COMMON, CORNER = 'Common rafter', 'Hip, valley, jacks'
RUNS = {
    'Common rafter, inches': 'Common rafter',
    'Hip or valley, inches': 'Hip or valley',
    'Rise, inches': 'Rise',
}
"""Titles of the tables of runs, and how those of their right-hand pages begin."""
JACKS = 'Jacks, from the corner'
RIDGE_END = 'The end of a hip roof’s ridge'
BY_RIDGE, BY_HIP, BY_OVERHANG = (
    'thickness of the ridge, in', 'thickness of the hip, in', 'overhang, in, level',
)  # fmt: skip
TABLES = {
    'Shortening, level, any pitch': ('thickness', ''),
    'End common, hips on the ridge': ('ridge', 'thickness of the hips, in'),
    'Shortening of commons at a ridge': ('in 12', BY_RIDGE),
    'Shortening of hips and valleys': ('in 12', 'thickness of the ridge, or of the commons, in'),
    'Shortening of jacks at a hip or valley': ('in 12', 'thickness of the hip or valley, in'),
    'How far a ridge sits down': ('in 12', BY_RIDGE),
    'Tails of commons and hip jacks': ('in 12', BY_OVERHANG),
    'Tails of hips and valleys': ('in 12', 'overhang of the commons, in, level'),
    'Fall of tails': ('in 12', BY_OVERHANG),
    'Drops, plumb': ('in 12', BY_HIP),
    'Drops, square to the edge': ('in 12', BY_HIP),
    'Set-backs of hips and valleys': ('in 12', 'thickness of the hip or valley itself, in'),
    'Two pitches: the hip and its jacks': ('A B', ''),
    'Two pitches: cheek cuts': ('A B', ''),
    'Two pitches: backing, drop and eaves': ('A B', ''),
    'Two pitches: shortening, level': ('A B', ''),
    'Two pitches: where cheeks start': ('A B', ''),
    'Two pitches: a slid hip': ('A B', ''),
    'Pitch to degrees, and on a level': ('in 12', ''),
}
"""Reference tables: what stands at the head of their labels, and over several heads; 'in 12' and nothing if not here."""
HOLE = '…'
"""In a name: what stands there is the figure."""

# Sections and rows of the opening by member ----------------------------------------------------------------------

OFF, CHEEKS, LINES = (
    'Off the length, center line to face',
    'Cheeks, from square across',
    'Between the plumb lines of a cheek',
)
MOUTH = 'Bird’s mouth of a 2×8, seat 3 1/2 in, level'
CORNER_MOUTH = 'Bird’s mouth, on the center line'
ON_SIDE = 'on the side, from square across'
DROPPED, VALLEY = 'Dropped hip, 2×10', 'Valley, 2×12'
HEIGHT, HEEL = 'Height above plate, plumb over the plate line', 'Heel, plumb, at the outside of the plate'
NOTCH, WOOD = 'Notch, square to the edge', 'Wood left over the notch, square to the edge'
MOUTH_HEADS = {
    'height': 'height, plumb',
    'heel': 'heel, plumb',
    'seat': 'seat, level',
    'left': 'wood left, square',
}
FOOT, COMMON_FOOT = 'Per foot of run, along the top edge', 'Per foot of COMMON run, along the top edge'
NEAREST = ': to the nearest 1/16'
JACK, HIP_VALLEY = 'Jack', 'Hip, valley'
ODD = {n / 16: text for n, text in ((1, '1/16'), (2, '1/8'), (4, '1/4'), (8, '1/2'), (12, '3/4'))}
ONE, TWO, AT_JACK = (
    'Hip or valley, ridge 3/4 in: one cheek',
    'Hip between commons 1 3/4 in: two cheeks',
    'Jack at a hip or valley 3 1/2 in thick',
)
AT_RIDGE = 'At a ridge 3/4 in thick: half of it'
ONE_LINES, TWO_LINES, JACK_LINES = (
    'Hip, one cheek: short to long point',
    'Hip, two cheeks: point back to each side’s line',
    'Jack: short to long point',
)
