"""check length: a length that was read, against the exact one."""

from __future__ import annotations

import argparse
from typing import TextIO

from layouts.verbs.checks import options
from layouts.verbs.options import Subparsers, choice
from layouts.words.checks import length_lines
from layouts.words.say import N_, _
from tablegen.checking.members import MEMBERS
from tablegen.checking.reading import check_length
from tablegen.checking.written import written
from tablegen.errors import BookError
from tablegen.numbers.figure import Measure
from tablegen.numbers.units import INCHES
from tablegen.written.keys import smallest_part
from tablegen.written.lengths import length

EXAMPLES = (
    'rafterbook check length --pitch 6 --run 1ft --reads "13 3/8" --total-run 12ft',
    'rafterbook check length --pitch 8 --of hip-valley --run 1ft --reads 18.78',
)
READS = N_('as it was read: 13 3/8 says eighths, 13 6/16 sixteenths, 13.38 hundredths')


def add(checks: Subparsers) -> None:
    """Declare the check."""
    parser = options.add_check(
        checks, 'length', _('judge a length that was read against the exact one'), run, EXAMPLES
    )
    options.add_pitch(parser)
    parser.add_argument('--of', metavar='WHAT', default='common', help=f'{", ".join(MEMBERS)} (common)')
    parser.add_argument('--run', dest='run_', metavar='LENGTH', help=_('level run of the common rafter'))
    parser.add_argument(
        '--spacing', metavar='LENGTH', help=_('of jacks on center, with --of jack-difference')
    )
    parser.add_argument('--reads', required=True, metavar='LENGTH', help=_(READS))
    parser.add_argument(
        '--total-run', metavar='LENGTH', help=_('the whole run, in which the error is made again')
    )
    usual = f'1/{INCHES.part}'
    smallest = _('smallest part of your book ({usual})').format(usual=usual)
    parser.add_argument('--nearest', default=usual, metavar='PART', help=smallest)
    options.add_within(parser, _('what the reading may be off by (half of its finest part)'))
    options.add_tape(parser)
    options.add_format(parser)


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Judge the reading."""
    form = options.format_of(args)
    kind = choice(args.of, '--of', tuple(MEMBERS))
    option, given = _level(kind, args)
    check = check_length(
        kind,
        options.pitch_of(args),
        length(given, option),
        written(args.reads, '--reads'),
        Measure(smallest_part(args.nearest, '--nearest')),
        options.optional(args.total_run, '--total-run'),
        options.optional(args.within, '--within'),
        args.tape,
    )
    return options.tell(form, out, 'length', check, length_lines(check))


def _level(kind: str, args: argparse.Namespace) -> tuple[str, str]:
    """Return the option that gives the level run of a kind of length, and what it says."""
    given = {'--run': args.run_, '--spacing': args.spacing}
    option, refused = ('--spacing', '--run') if kind == 'jack-difference' else ('--run', '--spacing')
    if given[option] is None or given[refused] is not None:
        said = _('stands for {kind}, and {refused} does not').format(kind=kind, refused=refused)
        allowed = _('{option} with --of {kind}, and no {refused}')
        raise BookError(
            option,
            _('is missing') if given[option] is None else said,
            allowed.format(option=option, kind=kind, refused=refused),
        )
    return option, given[option]
