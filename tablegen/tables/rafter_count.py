"""Rafters that one side of a roof needs, by its length and their spacing."""

from __future__ import annotations

from fractions import Fraction

from tablegen.messages import message
from tablegen.numbers.units import INCHES
from tablegen.settings import Settings
from tablegen.tables.columns import Make, each
from tablegen.tables.table import Table

LENGTHS_FT = range(8, 56, 2)
"""As many as one page holds."""


def rafters_needed(length_in: Fraction, spacing_in: Fraction, thickness_in: Fraction) -> int:
    """Return how many rafters stand on one side of a roof, the two at its ends among them.

    Given:
        length_in  of the roof's framing, level, outer face to outer face of the end rafters

    Notes:
        1. Rafters between the ends are centered on marks a spacing apart, counted from the outer face of one end rafter; a
           mark whose rafter would meet the other end's is that one's (common practice, no source).
    """
    last_between = length_in - thickness_in * Fraction(
        3, 2
    )  # the mark of a rafter that just touches the end's
    return 2 + max(0, last_between // spacing_in)


def listed(settings: Settings) -> list[Table[int]]:
    """Return the table of rafters by length and spacing."""
    make, thick = Make[int](settings), settings.rafter_thickness
    columns = (
        make.count('length_ft', lambda length: length),
        *each(
            make.count,
            'rafters',
            settings.spacings,
            lambda length, spacing: rafters_needed(Fraction(INCHES.group * length), spacing, thick),
        ),
    )
    note = message('note.rafters_needed', thickness=thick)
    return [make.table('gable', 'rafters-needed', lambda: LENGTHS_FT, columns, note, datum='rafters_needed')]
