"""Short words of the reference tables: what their heads have in common, and the notes at their feet."""

from __future__ import annotations

from tablegen import cautions
from tablegen.exact import exact
from tablegen.reference.ridge import past_end_with_hips
from tablegen.settings import Settings
from tablegen.text import rational

SPANS = {
    'diagonals-1': 'width, ft',
    'diagonals-2': 'width, ft',
    'diagonals-3': 'width, ft',
    'shortening-common': 'thickness of the ridge, in',
    'shortening-hip': 'thickness of the ridge, or of the commons, in',
    'shortening-jack': 'thickness of the hip or valley, in',
    'ridge-sits-down': 'thickness of the ridge, in',
    'tail-common': 'overhang, in, level',
    'tail-hip': 'overhang of the commons, in, level',
    'tail-fall': 'overhang, in, level',
    'drop-plumb': 'thickness of the hip, in',
    'drop-square': 'thickness of the hip, in',
}
"""What stands above a table's heads."""
NOTCH = '† past a quarter of the depth, ‡ past a third: look again; local code decides.'
SHALLOW = '–: this stock does not reach the plate. Minus: the shortcut ends too high.'
NOTES = {
    'shortening-level': (
        'A valley jack at the ridge takes the common’s. Measure level: square to the plumb line, never along the edge.',
        'Where hips bear on the sides of the ridge ({ridge} in, hips {hip} in), each end runs {past} in past.',
    ),
    'tail-common': (
        f'More than 24 in out, notched at the plate: ask a designer ({cautions.LONG_TAIL.source}).',
    ),
    'hips': ('Drop for a hip {hip} in thick.',),
    'jacks': (
        'Hip {hip} in, ridge {ridge} in, rafter {rafter} in thick. Points: half each side of the center.',
    ),
    'unequal-fit': ('Hip {hip} in thick. A dropped hip takes the greater drop.',),
    'unequal-shortening': ('Ridge {ridge} in, hip {hip} in, rafter {rafter} in thick.',),
    'sides': ('Post: for hips {hip} in thick. Blades past 45°: from a squared end, at 90° less the blade.',),
    'whole-triangles': ('Longer legs find square more surely: use the largest multiple that fits.',),
}


def notes(key: str, settings: Settings) -> tuple[str, ...]:
    """Return the notes at the foot of a table."""
    if key.startswith('stock-left'):
        return (NOTCH,)
    if key.startswith('hip-seat'):
        return (f'For hips and valleys {rational(settings.hip_thickness)} in thick. {SHALLOW}',)
    if key.endswith('-sides'):
        return (f'Drop for a hip {rational(settings.hip_thickness)} in thick.',)
    values = {
        'ridge': rational(settings.ridge_thickness),
        'hip': rational(settings.hip_thickness),
        'rafter': rational(settings.rafter_thickness),
        'past': past_end_with_hips(settings).text,
    }
    return tuple(note.format(**values) for note in NOTES.get(key, ()))


def low_pitches(settings: Settings) -> tuple[str, ...]:
    """Return the book's pitches under 3 in 12."""
    return tuple(one.short for one in settings.pitches if one.slope * 12 < exact(cautions.LOW_RISE_IN))


def span(names: tuple[str, ...]) -> str:
    """Return pitches in a few words: '9 to 24', '1 and 2', '' for none."""
    return f'{names[0]} to {names[-1]}' if len(names) > 2 else ' and '.join(names)
