"""The list of reference tables, in the order of the work."""

from __future__ import annotations

from tablegen.groups import GROUPS, HOUSE_GROUPS
from tablegen.settings import Settings
from tablegen.tables import (
    cheeks,
    finding_pitch,
    gable,
    hip,
    hip_seat,
    jacks,
    longest_seat,
    many_sided,
    ridge,
    seat,
    setting_out,
    tail,
    trim,
    unequal,
    unequal_ends,
)
from tablegen.tables.former import Table

__all__ = ['GROUPS', 'HOUSE_GROUPS', 'MODULES', 'tables']
MODULES = (
    setting_out,
    ridge,
    seat,
    hip_seat,
    longest_seat,
    tail,
    hip,
    jacks,
    cheeks,
    trim,
    gable,
    unequal,
    unequal_ends,
    many_sided,
    finding_pitch,
)


def tables(settings: Settings) -> list[Table]:
    """Return every table, in order; rows are made when a table's function is called with the settings."""
    return [table for module in MODULES for table in module.listed(settings)]
