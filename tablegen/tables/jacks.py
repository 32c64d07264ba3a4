"""Jacks of regular corners: differences, deductions, long point to short point."""

from __future__ import annotations

from tablegen.geometry import corner, shortening
from tablegen.geometry.pitch import Pitch
from tablegen.messages import message
from tablegen.settings import Settings
from tablegen.tables.columns import Make, by_pitch, each
from tablegen.tables.table import Table


def listed(settings: Settings) -> list[Table[Pitch]]:
    """Return the table of jacks for the set thicknesses; half of the points lies each side of the center line."""
    make = Make[Pitch](settings)
    ridge, hip, rafter = settings.ridge_thickness, settings.hip_thickness, settings.rafter_thickness
    columns = (
        *each(
            make.length,
            'difference',
            settings.spacings,
            lambda it, one: corner.jack_difference(one, it.corner),
            'jack_difference',
        ),
        make.length(
            'off_at_hip_or_valley',
            lambda it: shortening.along(shortening.jack_at_hip(hip, it.corner), it.slope),
            'jack_off',
        ),
        make.length(
            'off_at_ridge', lambda it: shortening.along(shortening.at_ridge(ridge), it.slope), 'jack_off'
        ),
        make.length(
            'short_to_long_point',
            lambda it: shortening.along(shortening.point_to_point(rafter, it.corner), it.slope),
            'jack_points',
        ),
    )
    note = message('note.jacks', hip=hip, ridge=ridge, rafter=rafter)
    return [by_pitch(settings, 'jack-deductions', 'jacks', columns, note, datum='along_edge')]
