"""check corner: how far a corner is out of square, by its diagonal."""

from __future__ import annotations

import argparse
from typing import TextIO

from layouts.verbs.checks import options
from layouts.verbs.options import Subparsers
from layouts.words.checks import corner_lines
from layouts.words.say import _
from tablegen.checking.corner import check_corner
from tablegen.checking.written import written
from tablegen.written.lengths import length

EXAMPLES = ('rafterbook check corner --along "6 ft" "8 ft" --diagonal "10 ft 1/8 in"',)


def add(checks: Subparsers) -> None:
    """Declare the check."""
    parser = options.add_check(checks, 'corner', _('judge a corner by its diagonal'), run, EXAMPLES)
    parser.add_argument(
        '--along', nargs=2, required=True, metavar='LENGTH', help=_('from the corner along each side')
    )
    parser.add_argument('--diagonal', required=True, metavar='LENGTH', help=_('between their ends'))
    options.add_within(parser, _('what the diagonal may be off by (half of its finest part)'))
    options.add_tape(parser)
    options.add_format(parser)


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Judge the corner."""
    form = options.format_of(args)
    side, other = (length(one, '--along') for one in args.along)
    within = options.optional(args.within, '--within')
    check = check_corner(side, other, written(args.diagonal, '--diagonal'), within, args.tape)
    return options.tell(form, out, 'corner', check, corner_lines(check))
