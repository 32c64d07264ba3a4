"""The notes at the foot of a table, whole: what its figures were worked out for, limits, and what is done with them."""

from __future__ import annotations

TOO_THIN = '§ under 3 1/2 in left, too little under a tail; local code decides.'
"""IRC 2024 R802.7.1.1, and from 2012 on from memory; authorities/residential-code.toml."""
MARKED = f'† past a quarter of the depth, ‡ past a third, {TOO_THIN}'
"""A quarter: IRC 2006 and 2009 R802.7.1; a third: common practice, no source."""
DASHED = '—: the seat would be longer than the stock is deep, or leave less than half.'
NO_SEAT = f'{TOO_THIN} Of this stock any seat leaves less; of deeper stock see “Stock left”.'
DROP = 'Drop for a hip 3 1/2 in thick.'
DROPPED = 'A dropped hip’s tabled height, heel and seat have it already.'
RAFTER_AND_HIP = 'Rafter 1 3/4 in, hip 3 1/2 in thick.'
HIP_AND_RAFTER = 'Hip 3 1/2 in, rafter 1 3/4 in thick.'
BY_HAND = 'ast 45°: by hand'
TONGUE = 'the figure is past 16, the end of the tongue, halve both'
"""A tongue is 16 in long (common practice, no source)."""
SIZES = ('2x10-with-2x8', '2x12-with-2x8', '2x6', '2x8', '2x10', '2x12')
NOTES: dict[str, tuple[str, ...]] = {
    'whole-triangles': ('Longer legs find square more surely: use the largest multiple that fits.',),
    'shortening-level': (
        'A valley jack at the ridge takes the common’s.',
        'Mark these square to the plumb line; on the edge itself measure what the tables along the top edge say.',
    ),
    'rafters-needed': (
        'Rafters 1 3/4 in thick. Twice as many for a gable roof; doubled or trimmed openings want more.',
    ),
    'ridge-ends': (
        'An end common thicker than the ridge is clipped to both hips: each side starts half of the difference back, level',
        'blade at 45°',
    ),
    **{
        f'{kind}-{seat}': (MARKED, DASHED)
        for kind in ('height', 'stock-left')
        for seat in ('1-1-2', '3-1-2', '5-1-2')
    },
    **{
        f'hip-seat-{size}': ('Hips 3 1/2 in thick. The drop is in the dropped ones already.', MARKED, DASHED)
        for size in SIZES
    },
    **{
        f'valley-seat-{size}': (
            'Valleys 3 1/2 in thick, not dropped: mark these as they stand.',
            MARKED,
            DASHED,
        )
        for size in SIZES
    },
    'old-rule': ('Hips 3 1/2 in thick, of the rafters’ stock. Minus: too high.', DASHED),
    'longest-seat-quarter': (TOO_THIN, DASHED),
    'longest-seat-third': (TOO_THIN, DASHED),
    'tail-plumb-cut': (NO_SEAT,),
    'tail-square-cut': (NO_SEAT,),
    'tail-common': ('More than 24 in out, notched at the plate: ask a designer',),
    'tail-hip': (
        'Two cheeks, as a hip’s at the ridge; each side’s plumb line starts half of the hip’s own thickness back from the '
        'point, level, a valley’s as far out.',
    ),
    'drop-plumb': (DROPPED,),
    'drop-square': (DROPPED,),
    'hips': (DROP.rstrip('.'), 'a dropped hip’s tabled seat has it already.'),
    'jacks': (
        'Hip 3 1/2 in, ridge 3/4 in, rafter 1 3/4 in thick.',
        'Points: half each side of the center line’s mark.',
    ),
    'backed-cheeks': (TONGUE,),
    'set-backs': (
        'One cheek: one side so far up from the mark, the other so far down.',
        'Two to a point: both sides back.',
        'A valley’s tail is hollow: both sides out.',
    ),
    'trim': (f'Sheathing: where {TONGUE}',),
    'unequal-cheeks': (
        RAFTER_AND_HIP,
        f'Blades p{BY_HAND}, to the lines on side and top.',
        'Figures past 16, the end of the tongue: halve both; past 32 take a quarter of both.',
    ),
    'unequal-fit': ('Hip 3 1/2 in thick, dropped by drop B: its edge towards A lies gap A under plane A.',),
    'unequal-slide': (
        'Hip 3 1/2 in thick. Its center line misses the plates’ corner and the eaves’ by the slide.',
    ),
    'unequal-shortening': (
        'Ridge 3/4 in, hip 3 1/2 in, rafter 1 3/4 in thick.',
        'Commons: to the face of A’s; on that cheek, further up, stands the point.',
    ),
    'unequal-points': (
        RAFTER_AND_HIP,
        'Jack: half each side of the center line.',
        'Along the edge: over the cosine of the member’s plumb cut.',
    ),
    'sides-jacks': (HIP_AND_RAFTER, f'P{BY_HAND}; with a circular saw only where its blade has the reach.'),
    'sides-peak': ('Hip 3 1/2 in thick; the reach is through half of it.',),
    **{f'{sides}-sides': (DROP,) for sides in (5, 6, 8, 10, 12)},
}
"""By table: what must stand there, and nothing else that bears on a cut."""
CLAUSE = r'\(IRC [^)]*\)'
"""Clauses of the code are proven by themselves."""
