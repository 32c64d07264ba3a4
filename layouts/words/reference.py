"""Short words of the reference tables: what their heads have in common, and the notes at their feet."""

from __future__ import annotations

from layouts.words.caution import caution_source
from tablegen.numbers.exact import exact
from tablegen.numbers.text import rational
from tablegen.roof import cautions
from tablegen.settings import Settings

SPANS = {
    'diagonals-1': 'width, ft',
    'diagonals-2': 'width, ft',
    'diagonals-3': 'width, ft',
    'ridge-ends': 'thickness of the hips, in',
    'shortening-common': 'thickness of the ridge, in',
    'shortening-hip': 'thickness of the ridge, or of the commons, in',
    'shortening-jack': 'thickness of the hip or valley, in',
    'ridge-sits-down': 'thickness of the ridge, in',
    'tail-common': 'overhang, in, level',
    'tail-hip': 'overhang of the commons, in, level',
    'tail-fall': 'overhang, in, level',
    'drop-plumb': 'thickness of the hip, in',
    'drop-square': 'thickness of the hip, in',
    'set-backs': 'thickness of the hip or valley itself, in',
}
"""What stands above a table's heads."""
NOTCH = '† past a quarter of the depth, ‡ past a third, § under 3 1/2 in left, too little under a tail; local code decides.'
THIN = '§ under 3 1/2 in left, too little under a tail; local code decides.'
NOTCHED = f'{THIN} Of this stock any seat leaves less; of deeper stock see “Stock left”.'
DASH = '–: the seat would be longer than the stock is deep, or leave less than half.'
DROPPED = 'A dropped hip’s tabled height, heel and seat have it already.'
HIP_SEATS = 'Hips {hip} in thick. The drop is in the dropped ones already.'
VALLEY_SEATS = 'Valleys {hip} in thick, not dropped: mark these as they stand.'
OLD_RULE = 'Hips {hip} in thick, of the rafters’ stock. Minus: too high. {dash}'
NOTES = {
    'shortening-level': (
        'A valley jack at the ridge takes the common’s. Mark these square to the plumb line; on the edge itself measure '
        'what the tables along the top edge say.',
    ),
    'ridge-ends': (
        'An end common thicker than the ridge is clipped to both hips: each side starts half of the difference back, '
        'level, blade at 45°.',
    ),
    'tail-common': ('More than 24 in out, notched at the plate: ask a designer ({clause}).',),
    'tail-hip': (
        'Two cheeks, as a hip’s at the ridge; each side’s plumb line starts half of the hip’s own thickness back from the '
        'point, level, a valley’s as far out.',
    ),
    'tail-plumb-cut': (NOTCHED,),
    'tail-square-cut': (NOTCHED,),
    'hips': ('Drop for a hip {hip} in thick; a dropped hip’s tabled seat has it already.',),
    'drop-plumb': (DROPPED,),
    'drop-square': (DROPPED,),
    'jacks': (
        'Hip {hip} in, ridge {ridge} in, rafter {rafter} in thick. Points: half each side of the center line’s mark.',
    ),
    'backed-cheeks': ('Where the figure is past 16, the end of the tongue, halve both.',),
    'set-backs': (
        'One cheek: one side so far up from the mark, the other so far down. Two to a point: both sides back. A '
        'valley’s tail is hollow: both sides out.',
    ),
    'trim': ('Sheathing: where the figure is past 16, the end of the tongue, halve both.',),
    'unequal-cheeks': (
        'Rafter {rafter} in, hip {hip} in thick. Blades past 45°: by hand, to the lines on side and top. Figures past 16, '
        'the end of the tongue: halve both; past 32 take a quarter of both.',
    ),
    'unequal-fit': ('Hip {hip} in thick, dropped by drop B: its edge towards A lies gap A under plane A.',),
    'unequal-slide': (
        'Hip {hip} in thick. Its center line misses the plates’ corner and the eaves’ by the slide.',
    ),
    'unequal-shortening': (
        'Ridge {ridge} in, hip {hip} in, rafter {rafter} in thick. Commons: to the face of A’s; on that cheek, further up, '
        'stands the point.',
    ),
    'unequal-points': (
        'Rafter {rafter} in, hip {hip} in thick. Jack: half each side of the center line. Along the edge: over the '
        'cosine of the member’s plumb cut.',
    ),
    'sides-jacks': (
        'Hip {hip} in, rafter {rafter} in thick. Past 45°: by hand; with a circular saw only where its blade has the reach.',
    ),
    'sides-peak': ('Hip {hip} in thick; the reach is through half of it.',),
    'whole-triangles': ('Longer legs find square more surely: use the largest multiple that fits.',),
}


def notes(key: str, settings: Settings) -> tuple[str, ...]:
    """Return the notes at the foot of a table."""
    if key.startswith(('height', 'stock-left')):
        return (f'{NOTCH} {DASH}',)
    if key.startswith('longest-seat'):
        return (f'{THIN} {DASH}',)
    hip = rational(settings.hip_thickness)
    if key.startswith(('hip-seat', 'valley-seat')):
        own = HIP_SEATS if key.startswith('hip') else VALLEY_SEATS
        return (own.format(hip=hip), f'{NOTCH} {DASH}')
    if key == 'old-rule':
        return (OLD_RULE.format(hip=hip, dash=DASH),)
    if key.endswith('-sides'):
        return (f'Drop for a hip {hip} in thick.',)
    values = {
        'ridge': rational(settings.ridge_thickness),
        'hip': hip,
        'rafter': rational(settings.rafter_thickness),
        'clause': caution_source(cautions.LONG_TAIL),
    }
    return tuple(note.format(**values) for note in NOTES.get(key, ()))


def low_pitches(settings: Settings) -> tuple[str, ...]:
    """Return the book's pitches under 3 in 12."""
    return tuple(one.short for one in settings.pitches if one.slope * 12 < exact(cautions.LOW_RISE_IN))
