"""diagonal: what makes a rectangle of plates square, and how far out two measured diagonals are."""

from __future__ import annotations

import argparse
from typing import TextIO

from layouts.told.walk import told_as
from layouts.verbs import options
from layouts.verbs.options import FORMATS, Subparsers
from layouts.words.say import N_, _
from tablegen.errors import BookError
from tablegen.roof.layout import rectangle, rectangle_check
from tablegen.settings import Settings
from tablegen.written.lengths import length

EXAMPLES = (
    'rafterbook diagonal "24 ft" "16 ft"',
    'rafterbook diagonal "24 ft" "16 ft" --reads "28 ft 10 1/2" "28 ft 9"',
)
NOTES = N_("""\
Sides and diagonals run outside to outside, to the same corners. --reads
takes the two diagonals of a layout whose opposite sides are equal.""")


def add(subparsers: Subparsers) -> None:
    """Declare the verb."""
    parser = options.add_verb(
        subparsers, 'diagonal', _('lay a rectangle out square by its diagonals'), run, EXAMPLES, _(NOTES)
    )
    parser.add_argument('length', metavar='LENGTH', help=_('one side'))
    parser.add_argument('width', metavar='WIDTH', help=_('the side square to it'))
    parser.add_argument('--reads', metavar='LENGTH', nargs=2, help=_('both diagonals, as read'))
    options.add_format(parser)
    options.add_reading(parser)


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Print the diagonal, and what two measured ones say."""
    form = options.choice(args.format, '--format', FORMATS)
    measure = options.with_options(Settings(), args).measure
    long, wide = options.above_zero(args.length, 'LENGTH'), options.above_zero(args.width, 'WIDTH')
    found: dict[str, object] = {'rectangle': rectangle(long, wide, measure)}
    if args.reads:
        one, other = (length(written, '--reads') for written in args.reads)
        if not all(abs(long - wide) < measured < long + wide for measured in (one, other)):
            raise BookError(
                '--reads',
                _('no such layout has these diagonals'),
                _('between the difference and the sum of its sides'),
            )
        found['rectangle_check'] = rectangle_check(long, wide, one, other, measure)
    out.write(told_as(form, found))
    return 0
