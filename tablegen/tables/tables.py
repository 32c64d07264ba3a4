"""The list of tables, in the order of the work."""

from __future__ import annotations

from typing import Any

from tablegen.settings import Settings
from tablegen.tables import (
    cheeks,
    finding_pitch,
    gable,
    hip,
    hip_seat,
    jacks,
    many_sided,
    ridge,
    seat,
    setting_out,
    tail,
    trim,
    unequal,
    unequal_ends,
)
from tablegen.tables.jack_lengths import jack_table
from tablegen.tables.runs import run_table
from tablegen.tables.table import Table

LISTS = (
    setting_out.listed,
    ridge.listed,
    seat.listed,
    hip_seat.listed,
    seat.longest,
    tail.listed,
    hip.listed,
    jacks.listed,
    cheeks.listed,
    trim.listed,
    gable.listed,
    unequal.listed,
    unequal_ends.listed,
    many_sided.listed,
    finding_pitch.listed,
)


def every_table(settings: Settings) -> list[Table[Any]]:
    """Return the tables of the pitches' runs and jacks, then the reference tables."""
    return [run_table(settings), jack_table(settings), *tables(settings)]


def tables(settings: Settings) -> list[Table[Any]]:
    """Return every reference table, in order; rows are made when they are asked for."""
    return [table for listed in LISTS for table in listed(settings)]
