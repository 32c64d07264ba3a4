"""Miters of fascia and trim at a square corner of equal pitches, and cuts of sheathing."""

from __future__ import annotations

from tablegen.geometry import trim
from tablegen.geometry.pitch import Pitch
from tablegen.messages import message
from tablegen.numbers.units import INCHES
from tablegen.settings import Settings
from tablegen.tables.columns import Make, by_pitch
from tablegen.tables.table import Table


def listed(settings: Settings) -> list[Table[Pitch]]:
    """Return the table of trim: miters on the face, from square across; bevels, the blade from square to the face."""
    make = Make[Pitch](settings)
    columns = (
        make.degrees(
            'square_to_slope_miter', lambda it: trim.square_to_slope(it.corner).miter, 'trim_square'
        ),
        make.degrees(
            'square_to_slope_bevel', lambda it: trim.square_to_slope(it.corner).bevel, 'trim_square'
        ),
        make.degrees('in_roof_plane_miter', lambda it: trim.in_the_plane(it.corner).miter, 'trim_flat'),
        make.degrees('in_roof_plane_bevel', lambda it: trim.in_the_plane(it.corner).bevel, 'trim_flat'),
        make.degrees('sheathing_from_eave', lambda it: trim.sheathing_from_eave(it.corner), 'sheathing'),
        make.length(
            'sheathing_up_for_12_along',
            lambda it: INCHES.base * trim.sheathing_from_eave(it.corner).tan(),
            'sheathing',
        ),
    )
    return [by_pitch(settings, 'trim', 'trim', columns, message('note.trim'), datum='trim')]
