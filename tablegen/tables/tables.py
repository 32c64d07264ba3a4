"""The list of tables. Whatever module of this room lists tables is in it: nothing else has to name it."""

from __future__ import annotations

from functools import cache
from importlib import import_module
from pkgutil import iter_modules
from typing import Any

import tablegen.tables
from tablegen.groups import GROUPS
from tablegen.settings import Settings
from tablegen.tables.jack_lengths import jack_table
from tablegen.tables.runs import run_table
from tablegen.tables.table import Table
from tablegen.tables.values import values_table


@cache
def _modules() -> list[Any]:
    """Return the modules that list tables, by name."""
    names = sorted(one.name for one in iter_modules(tablegen.tables.__path__))
    modules = [import_module(f'tablegen.tables.{name}') for name in names]
    return [one for one in modules if hasattr(one, 'listed')]


def every_table(settings: Settings) -> list[Table[Any]]:
    """Return the tables of the pitches: runs, jacks and values; then the reference tables."""
    return [run_table(settings), jack_table(settings), values_table(settings), *tables(settings)]


def table_of(key: str, settings: Settings) -> Table[Any] | None:
    """Return the reference table of a key, None for none; no more of the others is made than those before it."""
    return next((one for module in _modules() for one in module.listed(settings) if one.key == key), None)


def tables(settings: Settings) -> list[Table[Any]]:
    """Return every reference table, by group in the order of the work, those of a group in the order of its modules' names.

    Notes:
        1. Rows are made when they are asked for.
    """
    found: list[Table[Any]] = [table for module in _modules() for table in module.listed(settings)]
    return sorted(found, key=lambda table: GROUPS.index(table.group))
