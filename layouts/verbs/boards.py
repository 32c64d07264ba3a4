"""The boards of a roof as options: what each says, how it is read, and which of a question's boards it gives."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from typing import Any

from layouts.verbs import options
from layouts.words.say import N_, _
from tablegen.written.lengths import length
from tablegen.written.stocks import stock

OPTIONS = {
    'stock': ('SIZE', N_('of rafters: 2x4 to 2x12 (default 2x8)')),
    'hip-stock': ('SIZE', N_('of the hips (default the rafters’)')),
    'valley-stock': ('SIZE', N_('of the valleys (default the rafters’)')),
    'seat': ('LENGTH', N_("level seat of the bird's mouth (default 3 1/2 in)")),
    'overhang': ('LENGTH', N_('of the tail, level (default 12 in)')),
    'ridge-thickness': ('LENGTH', N_('of the ridge (default 1 1/2 in)')),
    'hip-thickness': ('LENGTH', N_('of the hip (default 1 1/2 in)')),
    'valley-thickness': ('LENGTH', N_('of the valley (default the hip’s)')),
    'rafter-thickness': ('LENGTH', N_('of the rafter (default 1 1/2 in)')),
    'ledger-thickness': ('LENGTH', N_('of a shed’s ledger (default 1 1/2 in)')),
}
READ: dict[str, tuple[str, Callable[[str, str], Any]]] = {
    'stock': ('stock', stock),
    'hip_stock': ('hip_stock', stock),
    'valley_stock': ('valley_stock', stock),
    'seat': ('seat_in', length),
    'overhang': ('overhang_in', length),
    'ridge_thickness': ('ridge_in', options.thickness),
    'hip_thickness': ('hip_in', options.thickness),
    'valley_thickness': ('valley_in', options.thickness),
    'rafter_thickness': ('rafter_in', options.thickness),
}
"""What of a question's boards an option gives, and how it is read."""


def add_boards(parser: argparse.ArgumentParser) -> None:
    """Declare all of them."""
    for name, (metavar, words) in OPTIONS.items():
        parser.add_argument(f'--{name}', metavar=metavar, help=_(words))


def boards_given(args: argparse.Namespace) -> dict[str, Any]:
    """Return the boards that are given, by the name of their field.

    Errors:
        BookError that names the option
    """
    return {
        field: read(written, f'--{name.replace("_", "-")}')
        for name, (field, read) in READ.items()
        if (written := getattr(args, name)) is not None
    }
