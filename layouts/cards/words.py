"""The words of cards: they are measured before they are set, so they stand here and not in a template."""

from __future__ import annotations

CAUTION = 'Geometry, not strength: code and a licensed designer decide.'
ALL_PITCHES = 'Rafters: degrees, inches'
USE = 'How to use it'
PITCH_HEAD = ('in', '12')
RUN_HEAD = ('run', 'ft')
PART_HEAD = ('add', 'in')
TABLES = {
    'common': ('Common rafter', 'plate line to ridge center'),
    'hip-valley': ('Hip or valley', 'corner to ridge center'),
}
BY_FOOT, TO_ADD = 'Lengths by the foot of run', 'Odd inches, to add'
RUN_COLUMNS = {'common': ('', 'common'), 'hip-valley': ('hip,', 'valley'), 'rise': ('', 'rise')}

STEPS = (
    'Run: level, outside of plate to center of ridge.',
    'Length = run in feet × common per ft. At the ridge half its thickness comes off level.',
    'Hip, valley: the common’s run in feet × hip per ft.',
    'Jack 1 is one difference long, jack 2 is two, from the corner.',
)
EXAMPLE = '{pitch}, run {run}: {feet} × {unit} = {length} in, near {rounded}.'
ON_SITE = (
    'Measure the building and the lumber, not the drawing.',
    'Cut one pair, try it, then cut the rest.',
)
RUN_STEPS = (
    'Take the whole feet from the other side and add the odd inches here, then the odd part.',
    'Each figure is rounded by itself: a sum of two may be {part} in off.',
    'Half the ridge’s thickness comes off level.',
)
MEANINGS_HEAD, PARTS_HEAD, EXAMPLE_HEAD, SITE_HEAD = (
    'The columns',
    'Parts of an inch',
    'Example',
    'Before you cut',
)


def values_line(values) -> str:
    """Return the cuts of one pitch in a line."""
    return (
        f'Plumb cut {values.plumb_cut.text}, hip {values.hip_plumb_cut.text}. Per foot {values.common_per_foot.text}, '
        f'hip {values.hip_per_foot.text}. Cheek jack {values.jack_cheek.text}, hip {values.hip_cheek.text}. '
        f'Backing {values.backing_bevel.text}.'
    )
