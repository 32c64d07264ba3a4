"""The words of cards: they are measured before they are set, so they stand here and not in a template."""

from __future__ import annotations

from tablegen.numbers import text
from tablegen.numbers.figure import Measure
from tablegen.tables.runs import PitchValues

CAUTION = 'Geometry, not strength: code and a licensed designer decide.'
ALL_PITCHES = 'Degrees: from square across'
USE = 'How to use it'
RUN_HEAD = ('run', 'ft')
ODD_HEAD = ('run', 'in')
TABLES = {
    'common': ('Common rafter', 'along the top edge, plate line to ridge center line'),
    'hip-valley': ('Hip or valley', 'along the top edge, corner of the plates to ridge center line'),
}
BY_FOOT = 'Lengths by the foot of run: plate line to ridge center line'
TO_ADD = 'Odd inches of run, to add'
RUN_COLUMNS = {'common': 'common', 'hip-valley': 'hip, valley', 'rise': 'rise'}

STEPS = (
    'Run: level, outside of plate to ridge center line. A shed’s: to the wall or to the ledger’s face.',
    'Length, along the top edge = run in feet × common per ft. Then half the ridge comes off, level; '
    'all of a ledger, where the run goes to the wall.',
    'Hip, valley: the common’s run in feet × hip per ft.',
    'Jack 1 is one difference long, jack 2 is two: from the corner, to the hip’s center line.',
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


def run_head(table: str, measure: Measure) -> tuple[str, str]:
    """Return the head of a column of lengths by run: the unit with it, where its figures do not have theirs."""
    name = RUN_COLUMNS[table]
    return (name, 'inches') if measure.style == text.INCHES else ('', name)


def values_lines(values: PitchValues) -> tuple[str, str]:
    """Return the cuts of one pitch in a line, and in a shorter one."""
    full = (
        f'From square, on the side: plumb cut {values.plumb_cut.text}, hip {values.hip_plumb_cut.text}; '
        f'on the top edge: cheek of jacks {values.jack_cheek.text}, hip {values.hip_cheek.text}. '
        f'Backing: tilt {values.backing_bevel.text}. '
        f'Per foot of run {values.common_per_foot.text} in, hip {values.hip_per_foot.text} in.'
    )
    short = (
        f'From square: side {values.plumb_cut.text}, hip {values.hip_plumb_cut.text}; top edge, cheek of '
        f'jacks {values.jack_cheek.text}, hip {values.hip_cheek.text}. Backing {values.backing_bevel.text}.'
    )
    return full, short
