"""pitch: finds a roof's pitch from what can be measured on it."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from fractions import Fraction
from typing import TextIO

from layouts.told.walk import told_as
from layouts.verbs import options
from layouts.verbs.options import FORMATS, Subparsers
from layouts.words.say import N_, _
from tablegen.errors import BookError
from tablegen.geometry import finding_pitch
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import Measure
from tablegen.roof.layout import pitch_found
from tablegen.settings import Settings
from tablegen.written.degrees import degrees
from tablegen.written.lengths import length

MEASURED = {
    'rise': N_('plumb rise'),
    'run': N_('level run under that rise or length'),
    'length': N_('length along the slope'),
    'level': N_('length of a level held level'),
    'gap': N_("plumb from the level's free end to the roof"),
}
WAYS: dict[frozenset[str], Callable[[Fraction, Fraction], Exact]] = {
    frozenset(('rise', 'run')): finding_pitch.from_rise_and_run,
    frozenset(('level', 'gap')): finding_pitch.from_level_and_tape,
    frozenset(('length', 'run')): finding_pitch.from_length_and_run,
    frozenset(('length', 'rise')): finding_pitch.from_length_and_rise,
}
"""What two measures give a pitch, and how; each function takes them in this order."""
ORDER = ('length', 'rise', 'level', 'run', 'gap')
ALLOWED = N_(
    '--rise and --run, --level and --gap, --length and --run, --length and --rise, or --degrees alone'
)
NOTES = N_("""\
Give two measures between the same two plumb lines, or degrees. --level is how
much of a level, one end on the roof and held level, lies over it; --gap is
plumb from its underside down to the roof at the far end.""")
EXAMPLES = (
    'rafterbook pitch --rise 52 --run "8 ft"',
    'rafterbook pitch --level 24 --gap "13 1/4"',
    'rafterbook pitch --length "14 ft 5 in" --run "12 ft"',
    'rafterbook pitch --degrees 30 --format json',
)


def add(subparsers: Subparsers) -> None:
    """Declare the verb."""
    summary = _("find a roof's pitch from what is measured on it")
    parser = options.add_verb(subparsers, 'pitch', summary, run, EXAMPLES, _(NOTES))
    for name, said in MEASURED.items():
        parser.add_argument(f'--{name}', metavar='LENGTH', dest=f'measured_{name}', help=_(said))
    parser.add_argument('--degrees', metavar='NUMBER', help=_('slope from level'))
    options.add_format(parser)
    options.add_nearest(parser)


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Print the pitch that was measured."""
    form = options.choice(args.format, '--format', FORMATS)
    measure = options.with_options(Settings(), args).measure
    found = pitch_found(_slope(args), Measure(measure.per))
    out.write(told_as(form, {'pitch_found': found}))
    return 0


def _slope(args: argparse.Namespace) -> Exact:
    written = {name: getattr(args, f'measured_{name}') for name in MEASURED}
    given = {name: value for name, value in written.items() if value is not None}
    if args.degrees is not None and not given:
        return finding_pitch.from_degrees(degrees(args.degrees, '--degrees', 90))
    if args.degrees is not None or frozenset(given) not in WAYS:
        raise BookError('pitch', _('these measures do not make a pitch'), _(ALLOWED))
    first, second = (length(given[name], f'--{name}') for name in ORDER if name in given)
    return WAYS[frozenset(given)](first, second)
