"""The words of cards: they are measured before they are set, so they stand here and not in a template."""

from __future__ import annotations

from typing import NamedTuple

from layouts.words.say import N_, _, say
from tablegen.numbers import text
from tablegen.numbers.figure import Measure
from tablegen.roof.members import Members
from tablegen.tables.runs import head_of
from tablegen.tables.values import Values, text_of


class ColumnWords(NamedTuple):
    """What a column of a card of all pitches is called, and what it says on both sides."""

    name: str
    """Where the program tells what is on a card."""
    head: str
    """In three lines; a hyphen at the end of one is none where the head is read."""
    meaning: str
    narrow: str = ''
    """The head where there is little room; '' for the same."""
    said: str = ''
    """The head as it is read, where that is not as it stands."""


PLUMB = ColumnWords(
    N_('plumb cut'),
    N_('plumb,\ncommon\nside'),
    N_('plumb cut of commons and jacks, on the side'),
    N_('plumb,\ncom.\nside'),
)
LEVEL = ColumnWords(
    N_('level cut'),
    N_('level,\ncommon\nside'),
    N_('their level cut, on the side: the seat'),
    N_('level,\ncom.\nside'),
)
HIP_PLUMB = ColumnWords(
    N_('plumb cut of the hip'), N_('plumb,\nhip\nside'), N_('plumb cut of hip and valley, on the side')
)
COMMON = ColumnWords(
    N_('common per foot'),
    N_('common\ninches\nper ft'),
    N_('a common’s length, along the top edge, in a foot of run'),
    N_('com.\ninches\nper ft'),
)
HIP = ColumnWords(
    N_('hip per foot'), N_('hip\ninches\nper ft'), N_('hip’s or valley’s, in a foot of the common’s run')
)
JACKS = ColumnWords(
    N_('jacks at {spacing}'),
    N_('jacks\ninches\nat {spacing}'),
    N_('each longer than the last, along the top edge, so far apart on center'),
    said=N_('jacks inches'),
)
CHEEK = ColumnWords(N_('cheek of jacks'), N_('cheek,\njack\ntop'), N_('across the jack’s top edge'))
HIP_CHEEK = ColumnWords(
    N_('cheek of the hip'), N_('cheek,\nhip\ntop'), N_('across the hip’s top edge, left square')
)
BACKING = ColumnWords(
    N_('backing'), N_('back-\ning\ntilt'), N_('the blade’s tilt for each side of a hip’s top')
)
DROP = ColumnWords(
    N_('drop of the hip'),
    N_('hip\ndrop\ninches'),
    N_('plumb, for a hip {hip} in thick, its top left square'),
)
CAUTION = N_('Geometry, not strength: code and a licensed designer decide.')
ALL_PITCHES = (N_('Degrees'), N_('from square across'))
USE = N_('How to use it')
CUT_SIZE = N_('100 %: card {wide} × {high} mm')
"""In the margin: what to measure, for a sheet of cards has no other bar."""
GRID_HEAD = (N_('ft'), N_('in'))
RUN_HEAD = (N_('run'), N_('ft'))
ODD_HEAD = (N_('run'), N_('in'))
TABLES = {
    'common': (N_('Common rafter'), N_('along the top edge, plate line to ridge center line')),
    'hip-valley': (N_('Hip or valley'), N_('along the top edge, corner of the plates to ridge center line')),
}
BY_FOOT = (N_('Lengths by the foot of run'), N_('plate line to ridge center line'))
TO_ADD = (N_('Odd inches of run, to add'), '')

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
    name = say(head_of(table))
    return (name, _('inches')) if measure.style == text.INCHES else ('', name)


def values_lines(of: Values, it: Members) -> tuple[str, str]:
    """Return the cuts of one pitch in a line, and in a shorter one."""
    columns = {
        'plumb': of.common_plumb_cut,
        'hip_plumb': of.hip_plumb_cut,
        'cheek': of.jack_cheek_top,
        'hip_cheek': of.hip_cheek_top,
        'tilt': of.hip_backing,
        'common': of.common_per_foot,
        'hip': of.hip_per_foot,
    }
    figures = {name: text_of(column, it) for name, column in columns.items()}
    full, short = values_sentences()
    return full.format(**figures), short.format(**figures)


def values_sentences() -> tuple[str, str]:
    """Return what is said of the cuts of one pitch, with places for its figures, and the shorter of it."""
    full = _(
        'From square, on the side: plumb cut {plumb}, hip {hip_plumb}; on the top edge: cheek of jacks {cheek}, hip '
        '{hip_cheek}. Backing: tilt {tilt}. Per foot of run {common} in, hip {hip} in.'
    )
    short = _(
        'From square: side {plumb}, hip {hip_plumb}; top edge, cheek of jacks {cheek}, hip {hip_cheek}. Backing {tilt}.'
    )
    return full, short
