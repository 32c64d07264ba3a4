"""check turn-over: the square itself, turned over on a straight edge."""

from __future__ import annotations

import argparse
from typing import TextIO

from layouts.verbs.checks import options
from layouts.verbs.options import Subparsers
from layouts.words.checks import turn_over_lines
from layouts.words.say import _
from tablegen.checking.corner import turn_over
from tablegen.checking.written import written
from tablegen.geometry.stepping import TONGUE_REACH
from tablegen.written.lengths import length

EXAMPLES = ('rafterbook check turn-over --gap 1/16 --over "16 in"',)


def add(checks: Subparsers) -> None:
    """Declare the check."""
    summary = _('judge a square by turning it over on a straight edge')
    parser = options.add_check(checks, 'turn-over', summary, run, EXAMPLES)
    parser.add_argument('--gap', required=True, metavar='LENGTH', help=_('between the two lines'))
    far = _('how far from their point ({reach} in, the tongue)').format(reach=TONGUE_REACH)
    parser.add_argument('--over', default=str(TONGUE_REACH), metavar='LENGTH', help=far)
    options.add_within(parser, _('what the gap may be off by (half of its finest part)'))
    options.add_format(parser)


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Judge the square."""
    form = options.format_of(args)
    within = options.optional(args.within, '--within')
    check = turn_over(written(args.gap, '--gap'), length(args.over, '--over'), within)
    return options.tell(form, out, 'turn-over', check, turn_over_lines(check))
