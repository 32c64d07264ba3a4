"""check corner: how far a corner is out of square, by its diagonal."""

from __future__ import annotations

import argparse
from typing import TextIO

from layouts.told.check_data import corner_data
from layouts.verbs.checks import options
from layouts.verbs.options import Subparsers
from layouts.words.checks import corner_lines
from tablegen.checking.corner import check_corner
from tablegen.checking.written import written
from tablegen.written.lengths import length

EXAMPLES = ('rafterbook check corner --sides "6 ft" "8 ft" --diagonal "10 ft 1/8 in"',)


def add(checks: Subparsers) -> None:
    """Declare the check."""
    parser = options.add_check(checks, 'corner', 'judge a corner by its diagonal', run, EXAMPLES)
    parser.add_argument(
        '--sides', nargs=2, required=True, metavar='LENGTH', help='from the corner along each side'
    )
    parser.add_argument('--diagonal', required=True, metavar='LENGTH', help='between their ends')
    options.add_within(parser, 'the diagonal')
    options.add_tape(parser)
    options.add_format(parser)


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Judge the corner."""
    form = options.format_of(args)
    side, other = (length(one, '--sides') for one in args.sides)
    within = options.optional(args.within, '--within')
    check = check_corner(side, other, written(args.diagonal, '--diagonal'), within, args.tape)
    options.put(form, out, corner_lines(check), corner_data(check))
    return options.status(check.verdict)
