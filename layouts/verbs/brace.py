"""brace: the length and the cuts of a brace between two legs square to each other."""

from __future__ import annotations

import argparse
from typing import TextIO

from layouts.told.walk import told_as
from layouts.verbs import options
from layouts.verbs.options import FORMATS, Subparsers
from layouts.words.say import _
from tablegen.roof.layout import brace
from tablegen.settings import Settings

EXAMPLES = ('rafterbook brace "3 ft" "3 ft"', 'rafterbook brace "3 ft" "2 ft" --format json')


def add(subparsers: Subparsers) -> None:
    """Declare the verb."""
    parser = options.add_verb(
        subparsers, 'brace', _('length and cuts of a brace between two legs'), run, EXAMPLES
    )
    parser.add_argument('leg', metavar='LEG', help=_("inner corner to the brace's long point, along one leg"))
    parser.add_argument('other', metavar='LEG', help=_('the same along the leg square to it'))
    options.add_format(parser)
    options.add_reading(parser)


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Print the brace."""
    form = options.choice(args.format, '--format', FORMATS)
    measure = options.with_options(Settings(), args).measure
    found = brace(options.above_zero(args.leg, 'LEG'), options.above_zero(args.other, 'LEG'), measure)
    out.write(told_as(form, {'brace': found}))
    return 0
