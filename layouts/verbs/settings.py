"""settings: prints a commented settings file to start from."""

from __future__ import annotations

from layouts.verbs.options import add_verb
from tablegen.settings import starter


def add(subparsers) -> None:
    """Declare the verb."""
    add_verb(
        subparsers,
        'settings',
        'print a settings file to start from, every key explained',
        run,
        ['rafterbook settings > my-book.toml'],
    )


def run(args, out, err) -> int:
    """Print the starter file."""
    out.write(starter())
    return 0
