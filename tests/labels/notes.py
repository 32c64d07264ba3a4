"""The figures in the notes at the foot of a table: what its own were worked out for, and limits."""

from __future__ import annotations

THIN = '§ under 3 1/2 in left'
"""IRC 2024 R802.7.1.1, and from 2012 on from memory; authorities/residential-code.toml."""
DROP = ('hip 3 1/2 in thick',)
RAFTER_AND_HIP = 'Rafter 1 3/4 in, hip 3 1/2 in thick'
HIP_AND_RAFTER = 'Hip 3 1/2 in, rafter 1 3/4 in thick'
PAST_SCALE = 'Past 45°: by hand'
LONG_TONGUE = 'past 16, the end of the tongue, halve both'
SIZES = ('2x10-with-2x8', '2x12-with-2x8', '2x6', '2x8', '2x10', '2x12')
NOTES: dict[str, tuple[str, ...]] = {
    'ridge-ends': ('blade at 45°',),
    **{
        f'{kind}-{seat}': (THIN,) for kind in ('height', 'stock-left') for seat in ('1-1-2', '3-1-2', '5-1-2')
    },
    **{f'hip-seat-{size}': ('Hips 3 1/2 in thick', THIN) for size in SIZES},
    **{f'valley-seat-{size}': ('Valleys 3 1/2 in thick', THIN) for size in SIZES},
    'old-rule': ('Hips 3 1/2 in thick',),
    'longest-seat-quarter': (THIN,),
    'longest-seat-third': (THIN,),
    'tail-plumb-cut': (THIN,),
    'tail-square-cut': (THIN,),
    'tail-common': ('More than 24 in out',),
    'hips': DROP,
    'jacks': ('Hip 3 1/2 in, ridge 3/4 in, rafter 1 3/4 in thick',),
    'backed-cheeks': (LONG_TONGUE,),
    'trim': (LONG_TONGUE,),
    'unequal-cheeks': (
        RAFTER_AND_HIP,
        'Blades past 45°: by hand',
        'past 16, the end of the tongue: halve both; past 32 take a quarter of both',
    ),
    'unequal-fit': ('Hip 3 1/2 in thick',),
    'unequal-slide': ('Hip 3 1/2 in thick',),
    'unequal-shortening': ('Ridge 3/4 in, hip 3 1/2 in, rafter 1 3/4 in thick',),
    'unequal-points': (RAFTER_AND_HIP,),
    'sides-jacks': (HIP_AND_RAFTER, PAST_SCALE),
    'sides-peak': ('Hip 3 1/2 in thick',),
    **{f'{sides}-sides': DROP for sides in (5, 6, 8, 10, 12)},
}
"""By table, words with figures that must stand there."""
CLAUSE = r'\(IRC [^)]*\)'
"""Clauses of the code are proven by themselves."""
