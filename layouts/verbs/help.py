"""help: tells what a verb takes."""

from __future__ import annotations

import argparse
from contextlib import redirect_stdout, suppress
from typing import TextIO

from layouts.verbs import VERBS
from layouts.verbs.options import Subparsers, add_verb
from layouts.verbs.whole import command_parser, no_verb
from layouts.words.say import _

EXAMPLES = ('rafterbook help find', 'rafterbook help check length')


def add(subparsers: Subparsers) -> None:
    """Declare the verb."""
    parser = add_verb(subparsers, 'help', _('tell what a verb takes, with examples'), run, EXAMPLES)
    parser.add_argument('about', nargs='*', metavar='VERB', help=_('the verb; of check also which check'))


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Print the help of a verb, or of the command."""
    verb = args.about[0] if args.about else None
    if verb is not None and verb not in VERBS:
        raise no_verb(verb)
    with redirect_stdout(out), suppress(SystemExit):
        command_parser([verb] if verb else VERBS).parse_args([*args.about, '--help'])
    return 0
