"""check length: a length that was read, against the exact one."""

from __future__ import annotations

import argparse
from typing import TextIO

from layouts.told.check_data import length_data
from layouts.verbs.checks import options
from layouts.verbs.options import Subparsers, choice
from layouts.words.checks import length_lines
from tablegen.checking.members import MEMBERS
from tablegen.checking.reading import check_length
from tablegen.checking.written import written
from tablegen.errors import BookError
from tablegen.numbers.figure import Measure
from tablegen.settings import smallest_part
from tablegen.written.lengths import length

EXAMPLES = (
    'rafterbook check length --pitch 6 --run 1ft --reads "13 3/8" --total-run 12ft',
    'rafterbook check length --pitch 8 --of hip-valley --run 1ft --reads 18.78',
)
READS = 'as it was read: 13 3/8 says eighths, 13 6/16 sixteenths, 13.38 hundredths'


def add(checks: Subparsers) -> None:
    """Declare the check."""
    parser = options.add_check(
        checks, 'length', 'judge a length that was read against the exact one', run, EXAMPLES
    )
    options.add_pitch(parser)
    parser.add_argument('--of', metavar='WHAT', default='common', help=f'{", ".join(MEMBERS)} (common)')
    parser.add_argument('--run', dest='run_', metavar='RUN', help='level run of the common rafter')
    parser.add_argument('--spacing', metavar='LENGTH', help='of jacks on center, with --of jack-difference')
    parser.add_argument('--reads', required=True, metavar='LENGTH', help=READS)
    parser.add_argument('--total-run', metavar='RUN', help='the whole run, in which the error is made again')
    parser.add_argument('--nearest', default='1/16', metavar='PART', help='smallest part of your book (1/16)')
    options.add_within(parser, 'the reading')
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
    options.put(form, out, length_lines(check), length_data(check))
    return options.status(check.verdict)


def _level(kind: str, args: argparse.Namespace) -> tuple[str, str]:
    """Return the option that gives the level run of a kind of length, and what it says."""
    given = {'--run': args.run_, '--spacing': args.spacing}
    option, refused = ('--spacing', '--run') if kind == 'jack-difference' else ('--run', '--spacing')
    if given[option] is None or given[refused] is not None:
        said = 'is missing' if given[option] is None else f'stands for {kind}, and {refused} does not'
        raise BookError(option, said, f'{option} with --of {kind}, and no {refused}')
    return option, given[option]
