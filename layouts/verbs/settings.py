"""settings: prints a commented settings file to start from."""

from __future__ import annotations

import argparse
from typing import TextIO

from layouts.verbs.options import Subparsers, add_verb
from layouts.words.say import _
from layouts.words.starter import starter


def add(subparsers: Subparsers) -> None:
    """Declare the verb."""
    add_verb(
        subparsers,
        'settings',
        _('print a settings file to start from, every key explained'),
        run,
        ['rafterbook settings > my-book.toml'],
    )


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Print the starter file."""
    out.write(starter())
    return 0
