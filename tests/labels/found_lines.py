"""What `find` prints: in each block, under each head, beside each label, the figure that belongs there by its key."""

from __future__ import annotations

import re

from fifty_digits import mpf
from oracle.rounding import MINUS, decimal

from labels.told import Told

Rows = dict[str, tuple[str, ...]]
Blocks = dict[tuple[str, ...], Rows]
"""A block's heads, its title first, then labels with the key of each figure."""
LENGTHS = ('Lengths', 'measure', 'exact in', 'rounded')
CUTS = ('Cuts on the side, from square across', 'plumb', 'level', 'body & tongue')
CHEEKS = ('Cheeks', 'top from square', 'along the body', 'side plumb', 'blade')
OFF = ('Off, center line of what is met to its face', 'level', 'along')
MOUTHS = ('Bird’s mouths', 'seat', 'heel', 'height', 'depth', 'notch', 'left')
TAILS = ('Tails, 16 in out from the plate, level', 'along')
POINTS = ('Points, along the board', 'level', 'along')
SIDES = ('The sides', 'A', 'B')
SPACINGS = ('12', '16', '19.2', '24')


def _length(key: str) -> tuple[str, ...]:
    return f'measure {key}', f'exact {key}', f'rounded {key}'


def _cut(name: str, cuts: str, held: str) -> Rows:
    return {name: (f'angle {cuts}.plumb', f'angle {cuts}.level', f'{held}.held')}


def _cheek(key: str) -> tuple[str, ...]:
    return (
        f'angle {key}.top_from_square',
        f'{key}.top_held',
        f'angle {key}.side_plumb',
        f'angle {key}.side_blade_tilt',
    )


def _both(key: str) -> tuple[str, ...]:
    return f'measure {key}.level', f'measure {key}.along'


def _mouth(key: str) -> tuple[str, ...]:
    names = ('seat', 'heel', 'height_above_plate', 'plumb_depth', 'notch_depth', 'stock_left')
    return tuple(f'measure {key}.{name}' for name in names)


def _jacks(key: str, of: str = '') -> Rows:
    return {
        f'jack difference{of}, {on} in on center': _length(f'{key}.difference.{place}.difference')
        for place, on in enumerate(SPACINGS)
    }


REGULAR: Blocks = {
    LENGTHS: {
        'common, plate line to ridge center': _length('length.common'),
        'hip/valley, plate corner to ridge center': _length('length.hip_valley'),
        'rise, plumb, plate line to ridge center': _length('length.rise'),
        **_jacks('jack'),
    },
    CUTS: {
        **_cut('common, jack', 'cut.common', 'square.common'),
        **_cut('hip/valley', 'cut.hip_valley', 'square.hip_valley'),
    },
    CHEEKS: {
        'jack at a hip/valley': _cheek('cheek.jack'),
        'hip/valley, every cheek': _cheek('cheek.hip_at_ridge'),
    },
    OFF: {
        'common at a ridge': _both('shortening.common_at_ridge'),
        'hip/valley at a ridge, one cheek': _both('shortening.hip_valley_at_ridge'),
        'hip between commons, to its point': _both('shortening.hip_between_commons'),
        'jack at a hip, on its center line': _both('shortening.jack_at_hip'),
        'jack at a valley, on its center line': _both('shortening.jack_at_valley'),
        'end common, hips between commons': _both('shortening.end_common.between_commons'),
        'end common, hips on the ridge': _both('shortening.end_common.hips_on_ridge'),
    },
    MOUTHS: {
        'common 2×8': _mouth('seat.common'),
        'hip dropped 2×10': _mouth('seat.hip_dropped'),
        'hip backed 2×10': _mouth('seat.hip_backed'),
        'valley 2×12': _mouth('seat.valley'),
    },
    TAILS: {
        'common and jack, plate line to tail end': ('measure tail.common_and_jack',),
        'hip/valley, plate corner to its point': ('measure tail.hip_valley',),
        'hip, plate corner to each side’s line': ('measure tail.hip_side',),
        'valley, plate corner to each side’s line': ('measure tail.valley_side',),
    },
    POINTS: {
        'jack, long to short point': _both('cheek.jack.long_to_short_point'),
        'hip at a ridge, long to short point': _both('cheek.hip_at_ridge.long_to_short_point'),
        'hip between commons, point back to its sides': _both('cheek.hip_between_commons.point_to_side'),
        'hip tail, point back to its sides': _both('cheek.hip_tail.point_to_side'),
    },
    ('Ridge, plates 372 in long', 'level'): {
        'between the points where the hips meet it': ('measure ridge.hip_roof.center_lines',),
        'sawn, hips between commons': ('measure ridge.hip_roof.sawn_between_commons',),
        'sawn, hips on the ridge': ('measure ridge.hip_roof.sawn_hips_on_ridge',),
    },
}


def _of_both(key: str, angle: bool = False) -> tuple[str, ...]:
    return tuple(f'{"angle" if angle else "measure"} side_{side}.{key}' for side in 'ab')


TWO_PITCHES: Blocks = {
    LENGTHS: {
        'rise, plumb, plate line to ridge center': _length('side_a.length.rise'),
        'hip/valley, plate corner to ridge center': _length('hip_valley.length'),
        'hip/valley per foot of run of A': _length('hip_valley.length_per_foot_of_run_a'),
        'common of A, plate line to ridge center': _length('side_a.length.common'),
        **_jacks('side_a.jack', ' of A'),
        'common of B, plate line to ridge center': _length('side_b.length.common'),
        **_jacks('side_b.jack', ' of B'),
    },
    CUTS: {
        **_cut('common, jack of A', 'side_a.cut.common', 'square.side_a'),
        **_cut('common, jack of B', 'side_b.cut.common', 'square.side_b'),
        **_cut('hip/valley', 'cut.hip_valley', 'square.hip_valley'),
    },
    CHEEKS: {
        'jack of A': _cheek('side_a.cheek.jack'),
        'jack of B': _cheek('side_b.cheek.jack'),
        'hip/valley, ridge over A': _cheek('side_a.cheek.hip_at_ridge'),
        'hip/valley, ridge over B': _cheek('side_b.cheek.hip_at_ridge'),
        'hip at commons, side A': _cheek('side_a.cheek.hip_between_commons'),
        'hip at commons, side B': _cheek('side_b.cheek.hip_between_commons'),
    },
    SIDES: {
        'pitch': ('side_a.pitch', 'side_b.pitch'),
        'run of the commons, level': _of_both('length.run'),
        'off a common at a ridge, level': _of_both('shortening.common_at_ridge.level'),
        'off the hip at a ridge over it, level': _of_both('shortening.hip_valley_at_ridge.level'),
        'off a jack at the hip, level': _of_both('shortening.jack_at_hip.level'),
        'off an end common, hips at commons, level': _of_both('shortening.end_common.between_commons.level'),
        'off an end common, hips on the ridge, level': _of_both('shortening.end_common.hips_on_ridge.level'),
        'tail of a common, along': _of_both('tail.common_and_jack'),
        'overhang, for eaves that meet': _of_both('tail.overhang'),
        'backing, from the square top': _of_both('backing.bevel', angle=True),
        'drop that it asks for, plumb': _of_both('drop.plumb'),
    },
    MOUTHS: {
        'common of A 2×8': _mouth('side_a.seat.common'),
        'common of B 2×8': _mouth('side_b.seat.common'),
        'hip dropped 2×10': _mouth('seat.hip_dropped'),
        'hip backed 2×10': _mouth('seat.hip_backed'),
        'valley 2×12': _mouth('seat.valley'),
    },
}
MANY_SIDES: Blocks = {
    LENGTHS: {
        'side of the plates, corner to corner': _length('plan.side'),
        'middle of the plan to a corner': _length('plan.middle_to_corner'),
        'hip, plate corner to the axis': _length('length.hip'),
        'hip per foot of run': _length('length.hip_per_foot_of_apothem'),
        'common, middle of a side to the axis': _length('length.common'),
        **_jacks('jack'),
    },
    CUTS: {
        **_cut('common, jack', 'cut.common', 'square.common'),
        **_cut('hip', 'cut.hip', 'square.hip'),
    },
    CHEEKS: {
        'jack at a hip': _cheek('cheek.jack'),
        'hip at the peak, both': _cheek('cheek.hip_at_peak'),
        'hip tail, both': _cheek('cheek.hip_tail'),
    },
    ('Off, and points, along the board', 'level', 'along'): {
        'off a jack at the hip': _both('shortening.jack_at_hip'),
        'off a hip, smallest post': _both('shortening.hip_at_least_post'),
        'jack, long to short point': _both('cheek.jack.long_to_short_point'),
        'hip tail, point back to its sides': _both('cheek.hip_tail.point_to_side'),
    },
    TAILS: {
        'common and jack, plate line to tail end': ('measure tail.common_and_jack',),
        'hip, plate corner to its point': ('measure tail.hip',),
    },
    MOUTHS: {
        'common 2×8': _mouth('seat.common'),
        'hip dropped 2×10': _mouth('seat.hip_dropped'),
        'hip backed 2×10': _mouth('seat.hip_backed'),
    },
}
SHED: Blocks = {
    LENGTHS: {
        'rafter, plate line to the wall': _length('length.rafter'),
        'rise, plumb, between the same two': _length('length.rise'),
        'rafter as sawn, plate line to its upper end': _length('shed.sawn'),
        'its top there, plumb over the plate’s top': _length('shed.top_at_upper_end'),
    },
    CUTS: _cut('rafter', 'cut.rafter', 'square.rafter'),
    ('Off', 'level', 'along'): {'off the rafter at the ledger': _both('shed.off')},
    ('Bird’s mouth', *MOUTHS[1:]): {'rafter 2×8': _mouth('seat.rafter')},
    ('Tail, 16 in out from the plate, level', 'along'): {'plate line to tail end': ('measure tail.rafter',)},
}


WORDS = {'side_b': 'side B', 'side_a': 'side A', 'towards_eave_b': 'towards eave B'}
"""What is said of what a program is told by name, where it is not the same."""
SENTENCES = {
    'regular': (
        'Held <square.common.held>: mark plumb along the tongue (<measure square.common.plumb_on_tongue>), level along '
        'the body (<measure square.common.level_on_body>).',
        'Held <square.hip_valley.held>: mark plumb along the tongue (<measure square.hip_valley.plumb_on_tongue>), level '
        'along the body (<measure square.hip_valley.level_on_body>).',
        'The valley’s heel stands <measure seat.valley.heel_back> in outwards of the inside corner.',
        'Hip: backed <angle backing.bevel> each side, from its square top; or dropped <measure drop.plumb> in, plumb',
    ),
    'two pitches': (
        'The hip in plan: <angle hip_valley.plan_from_eave_a> from eave A, <angle hip_valley.plan_from_eave_b> from eave B.',
        'The valley’s heel stands <measure seat.valley.heel_back> in outwards of the inside corner.',
        'Past a saw’s scale: jack of B; hip/valley, ridge over A; hip at commons, side B: by hand saw',
        'Drop the hip <measure drop.plumb> in, plumb, which its bird’s mouth has already; on <drop.gap_on> it then lies '
        '<measure drop.gap_plumb> in under the roof plane.',
        'Or slide it <measure slide.aside> in <slide.way> and drop it <measure slide.drop_plumb> in: jacks of A '
        '<slide.jacks_of_a.become> by <measure slide.jacks_of_a.by.level> in, jacks of B <slide.jacks_of_b.become> by '
        '<measure slide.jacks_of_b.by.level> in, level.',
    ),
    'eight sides': (
        'Plates: ends cut <angle plan.plate_miter> from square. Smallest center post '
        '<measure peak.least_post_across_flats> in across flats.',
        'Hip: backed <angle backing.bevel> each side, from its square top; or dropped <measure drop.plumb> in, plumb',
        'Past a saw’s scale: jack at a hip; hip at the peak, both: by hand saw',
    ),
}
"""Words with figures in them, each figure by its key."""


def sentence(words: str, told: Told, group: str = '') -> str:
    """Return words with their figures."""
    return re.sub('<(.*?)>', lambda named: figure(named[1], told, group), words)


def figure(wanted: str, told: Told, group: str = '') -> str:
    """Return a figure as a line has it: 'measure KEY', 'exact KEY', 'rounded KEY', 'angle KEY', or a word's own key."""
    how, space, key = wanted.rpartition(' ')
    key = f'{group}{key}'
    if not space:
        return WORDS.get(str(told[key]), str(told[key]))
    if how == 'angle':
        return f'{decimal(mpf(told[f"{key}.degrees"]), 2)}°'
    measure, exact = str(told[f'{key}.text']), mpf(told[f'{key}.inches'])
    if how == 'measure':
        return measure
    if how == 'exact':
        return decimal(exact, 4)
    left = sum(mpf(part.split('/')[0]) / mpf((*part.split('/'), '1')[1]) for part in measure.split()) - exact
    shown = decimal(abs(left), 4)
    return 'none' if abs(left) < mpf(10) ** -8 else ('+' if left > 0 else MINUS) + shown
