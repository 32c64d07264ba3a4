"""The parser of the whole command, of one verb's words or of all."""

from __future__ import annotations

from collections.abc import Iterable

from layouts.verbs import VERBS, module_of
from layouts.verbs.parser import Parser, UsageError, see_help
from layouts.words.say import N_, _
from tablegen.errors import meant

NAME = 'rafterbook'
ABOUT = N_('Makes a pocket book of rafter tables, and looks its figures up in a terminal.')


def command_parser(verbs: Iterable[str]) -> Parser:
    """Return the command's parser with some verbs: a look-up need not wait for the others."""
    parser = Parser(prog=NAME, description=_(ABOUT))
    parser.add_argument('--version', action='store_true', help=_('print the version and leave'))
    subparsers = parser.add_subparsers(title=_('verbs'), metavar='VERB', dest='verb')
    for name in verbs:
        module_of(name).add(subparsers)
    return parser


def no_verb(word: str) -> UsageError:
    """Return the error for a word that is no verb."""
    problem = _("'{word}' is no verb").format(word=word)
    return UsageError(NAME, problem, VERBS, meant(word, VERBS, see_help(NAME)))
