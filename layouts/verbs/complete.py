"""complete: what a shell completes the command's words with."""

from __future__ import annotations

import argparse
from typing import Any, TextIO

from layouts.verbs import VERBS
from layouts.verbs.options import Subparsers, add_verb, choice
from layouts.verbs.whole import command_parser
from layouts.words.say import N_, _
from tablegen.numbers import text
from tablegen.numbers.units import INCHES
from tablegen.settings import EDITIONS, PAPERS, TRIMS

SHELLS = ('bash', 'zsh', 'fish')
VALUES = {
    'VERB': VERBS,
    'SHELL': SHELLS,
    'PAPER': PAPERS,
    'TRIM': TRIMS,
    'EDITION': tuple(EDITIONS),
    'STYLE': text.STYLES,
    'PART': INCHES.smallest_parts,
}
"""What an argument may be, by what it is called in usage."""
NOTES = N_("""\
The shell completes by itself: what is printed holds every verb and option, and
is printed again after a new version. In bash it takes effect with
eval "$(rafterbook complete bash)", which may stand in ~/.bashrc; in zsh the
file's folder has to be in fpath.""")
EXAMPLES = (
    'rafterbook complete bash',
    'rafterbook complete zsh > ~/.zfunc/_rafterbook',
    'rafterbook complete fish > ~/.config/fish/completions/rafterbook.fish',
)


def add(subparsers: Subparsers) -> None:
    """Declare the verb."""
    summary = _('print what completes its words in bash, zsh or fish')
    parser = add_verb(subparsers, 'complete', summary, run, EXAMPLES, _(NOTES))
    parser.add_argument('shell', metavar='SHELL', help=', '.join(SHELLS))


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Print the shell's script."""
    shell = choice(args.shell, 'SHELL', SHELLS)
    import shtab  # slower than a look-up

    parser = command_parser(VERBS)
    _say_what_completes(parser, {'DIR': shtab.DIRECTORY, 'FILE': shtab.FILE, 'SETTINGS.toml': shtab.FILE})
    out.write(shtab.complete(parser, shell).rstrip() + '\n')
    return 0


def _say_what_completes(parser: argparse.ArgumentParser, files: dict[str, Any]) -> None:
    """Give every argument its choices, or what finds its files, as the library takes them."""
    for action in parser._actions:
        if isinstance(action, argparse._SubParsersAction):
            for one in action.choices.values():
                _say_what_completes(one, files)
        elif action.metavar in VALUES:
            action.choices = VALUES[str(action.metavar)]
        elif action.metavar in files:
            action.complete = files[str(action.metavar)]  # type: ignore[attr-defined]
