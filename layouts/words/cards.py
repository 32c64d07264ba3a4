"""The words of cards: they are measured before they are set, so they stand here and not in a template."""

from __future__ import annotations

from layouts.words.say import N_, _
from tablegen.numbers import text
from tablegen.numbers.figure import Measure
from tablegen.tables.pitch_values import PitchValues

CAUTION = N_('Geometry, not strength: code and a licensed designer decide.')
ALL_PITCHES = N_('Degrees: from square across')
USE = N_('How to use it')
RUN_HEAD = (N_('run'), N_('ft'))
ODD_HEAD = (N_('run'), N_('in'))
TABLES = {
    'common': (N_('Common rafter'), N_('along the top edge, plate line to ridge center line')),
    'hip-valley': (N_('Hip or valley'), N_('along the top edge, corner of the plates to ridge center line')),
}
BY_FOOT = N_('Lengths by the foot of run: plate line to ridge center line')
TO_ADD = N_('Odd inches of run, to add')
RUN_COLUMNS = {'common': N_('common'), 'hip-valley': N_('hip, valley'), 'rise': N_('rise')}

STEPS = (
    N_('Run: level, outside of plate to ridge center line. A shed’s: to the wall or to the ledger’s face.'),
    N_(
        'Length, along the top edge = run in feet × common per ft. Then half the ridge comes off, level; '
        'all of a ledger, where the run goes to the wall.'
    ),
    N_('Hip, valley: the common’s run in feet × hip per ft.'),
    N_('Jack 1 is one difference long, jack 2 is two: from the corner, to the hip’s center line.'),
)
EXAMPLE = N_('{pitch}, run {run}: {feet} × {unit} = {length} in, near {rounded}.')
ON_SITE = (
    N_('Measure the building and the lumber, not the drawing.'),
    N_('Cut one pair, try it, then cut the rest.'),
)
RUN_STEPS = (
    N_('Take the whole feet from the other side and add the odd inches here, then the odd part.'),
    N_('Each figure is rounded by itself: a sum of two may be {part} in off.'),
    N_('Half the ridge’s thickness comes off level.'),
)
MEANINGS_HEAD, PARTS_HEAD, EXAMPLE_HEAD, SITE_HEAD = (
    N_('The columns'),
    N_('Parts of an inch'),
    N_('Example'),
    N_('Before you cut'),
)


def run_head(table: str, measure: Measure) -> tuple[str, str]:
    """Return the head of a column of lengths by run: the unit with it, where its figures do not have theirs."""
    name = _(RUN_COLUMNS[table])
    return (name, _('inches')) if measure.style == text.INCHES else ('', name)


def values_lines(values: PitchValues) -> tuple[str, str]:
    """Return the cuts of one pitch in a line, and in a shorter one."""
    figures = {
        'plumb': values.plumb_cut.text,
        'hip_plumb': values.hip_plumb_cut.text,
        'cheek': values.jack_cheek.text,
        'hip_cheek': values.hip_cheek.text,
        'tilt': values.backing_bevel.text,
        'common': values.common_per_foot.text,
        'hip': values.hip_per_foot.text,
    }
    full = _(
        'From square, on the side: plumb cut {plumb}, hip {hip_plumb}; on the top edge: cheek of jacks {cheek}, hip '
        '{hip_cheek}. Backing: tilt {tilt}. Per foot of run {common} in, hip {hip} in.'
    )
    short = _(
        'From square: side {plumb}, hip {hip_plumb}; top edge, cheek of jacks {cheek}, hip {hip_cheek}. Backing {tilt}.'
    )
    return full.format(**figures), short.format(**figures)
