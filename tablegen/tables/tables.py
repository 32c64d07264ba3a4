"""The list of reference tables, in the order of the work."""

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


def tables(settings: Settings) -> list[Table[Any]]:
    """Return every table, in order; rows are made when they are asked for."""
    return [table for listed in LISTS for table in listed(settings)]
