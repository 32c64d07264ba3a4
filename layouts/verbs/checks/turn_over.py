"""check turn-over: the square itself, turned over on a straight edge."""

from __future__ import annotations

import argparse
from typing import TextIO

from layouts.told.check_data import turn_over_data
from layouts.verbs.checks import options
from layouts.verbs.options import Subparsers
from layouts.words.checks import turn_over_lines
from tablegen.checking.corner import turn_over
from tablegen.checking.written import written
from tablegen.written.lengths import length

EXAMPLES = ('rafterbook check turn-over --gap 1/16 --over "16 in"',)


def add(checks: Subparsers) -> None:
    """Declare the check."""
    summary = 'judge a square by turning it over on a straight edge'
    parser = options.add_check(checks, 'turn-over', summary, run, EXAMPLES)
    parser.add_argument('--gap', required=True, metavar='LENGTH', help='between the two lines')
    parser.add_argument(
        '--over', default='16 in', metavar='LENGTH', help='how far from their point (16 in, the tongue)'
    )
    options.add_within(parser, 'the gap')
    options.add_format(parser)


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Judge the square."""
    form = options.format_of(args)
    within = options.optional(args.within, '--within')
    check = turn_over(written(args.gap, '--gap'), length(args.over, '--over'), within)
    options.put(form, out, turn_over_lines(check), turn_over_data(check))
    return options.status(check.verdict)
