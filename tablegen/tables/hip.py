"""Hips and valleys of regular corners: backing, and drops by thickness, plumb and square to the edge."""

from __future__ import annotations

from tablegen.geometry import backing, corner
from tablegen.geometry.pitch import Pitch
from tablegen.messages import message
from tablegen.numbers.units import INCHES
from tablegen.settings import Settings
from tablegen.tables.columns import THICKNESSES_IN, Make, by_pitch, each
from tablegen.tables.table import Table


def listed(settings: Settings) -> list[Table[Pitch]]:
    """Return the tables of this group."""
    make, thick = Make[Pitch](settings), settings.hip_thickness
    dropped, span = (message('note.dropped'),), message('table.span.thickness_of_hip')
    return [
        by_pitch(
            settings,
            'hips',
            'hips',
            (
                make.degrees('plumb_cut', lambda it: corner.hip_angle(it.corner), 'cuts_on_side'),
                make.degrees(
                    'level_cut', lambda it: corner.hip_angle(it.corner).complement(), 'cuts_on_side'
                ),
                make.decimal(
                    'per_foot',
                    lambda it: corner.hip_length(INCHES.unit_run, it.corner),
                    'per_foot_of_common_run',
                ),
                make.degrees('backing_bevel', lambda it: backing.bevel(it.corner), 'backing'),
                make.length('drop_plumb', lambda it: backing.drop_plumb(thick, it.corner), 'drop_both_ways'),
                make.length(
                    'drop_square_to_edge', lambda it: backing.drop_square(thick, it.corner), 'drop_both_ways'
                ),
            ),
            notes=(message('note.hips', hip=thick),),
        ),
        by_pitch(
            settings,
            'hips',
            'drop-plumb',
            each(make.length, 'drop', THICKNESSES_IN, lambda it, one: backing.drop_plumb(one, it.corner)),
            datum=message('datum.drop_plumb'),
            notes=dropped,
            span=span,
        ),
        by_pitch(
            settings,
            'hips',
            'drop-square',
            each(make.length, 'drop', THICKNESSES_IN, lambda it, one: backing.drop_square(one, it.corner)),
            datum=message('datum.drop_square'),
            notes=dropped,
            span=span,
        ),
    ]
