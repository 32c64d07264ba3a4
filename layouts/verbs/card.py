"""card: a card for the toolbox, to cut and laminate."""

from __future__ import annotations

import argparse
from typing import TextIO

from layouts.cards.formats import FORMATS, USUAL
from layouts.verbs.options import (
    Subparsers,
    add_folder,
    add_pitches,
    add_steep,
    add_verb,
    folder_of,
    with_options,
)
from layouts.verbs.settings_file import add_settings_file, settings_from
from layouts.words.say import N_, _

NOTES = N_("""\
Several pitches make a card of all pitches, a row each, and how to use it; one
pitch makes a card of its runs. What fits the size is chosen, and said.""")
EXAMPLES = (
    'rafterbook card',
    'rafterbook card --size index --pitches "3 to 12" --out my-card',
    'rafterbook card my-book.toml --size half-letter --pitches 6',
)


def add(subparsers: Subparsers) -> None:
    """Declare the verb."""
    parser = add_verb(
        subparsers, 'card', _('make a card for the toolbox, to cut and laminate'), run, EXAMPLES, _(NOTES)
    )
    add_settings_file(parser)
    sizes = _('{sizes} ({pocket}; for large print {large})').format(sizes=', '.join(FORMATS), **USUAL)
    parser.add_argument('--size', metavar='SIZE', help=sizes)
    add_pitches(parser)
    add_folder(parser)
    add_steep(parser)


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Make the card and say what is on it."""
    folder = folder_of(args)
    settings = with_options(settings_from(args.settings), args)
    from layouts.build import build_cards

    size = USUAL[settings.trim] if args.size is None else args.size
    made = build_cards(settings, size, folder)
    print(f'{made.path}: {made.said[0]}', *made.said[1:], sep='\n', file=out)
    print(_('made in {seconds:.1f} s').format(seconds=made.seconds), file=err)
    return 0
