"""Hips and valleys of regular corners: backing, and drops by thickness, plumb and square to the edge."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from tablegen.geometry import backing, corner
from tablegen.geometry.corner import Corner
from tablegen.geometry.pitch import Pitch
from tablegen.messages import message
from tablegen.numbers.exact import Exact
from tablegen.numbers.units import INCHES
from tablegen.settings import Settings
from tablegen.tables.columns import THICKNESSES_IN, Make, by_pitch, each
from tablegen.tables.table import Table


def listed(settings: Settings) -> list[Table[Pitch]]:
    """Return the tables of this group."""
    make, thick = Make[Pitch](settings), settings.hip_thickness
    own = (
        make.degrees('plumb_cut', lambda it: corner.hip_angle(it.corner), 'cuts_on_side'),
        make.degrees('level_cut', lambda it: corner.hip_angle(it.corner).complement(), 'cuts_on_side'),
        make.decimal(
            'per_foot', lambda it: corner.hip_length(INCHES.unit_run, it.corner), 'per_foot_of_common_run'
        ),
        make.degrees('backing_bevel', lambda it: backing.bevel(it.corner), 'backing'),
        make.length('drop_plumb', lambda it: backing.drop_plumb(thick, it.corner), 'drop_both_ways'),
        make.length(
            'drop_square_to_edge', lambda it: backing.drop_square(thick, it.corner), 'drop_both_ways'
        ),
    )
    return [
        by_pitch(settings, 'hips', 'hips', own, message('note.hips', hip=thick)),
        _drops(settings, 'plumb', backing.drop_plumb),
        _drops(settings, 'square', backing.drop_square),
    ]


def _drops(settings: Settings, way: str, of: Callable[[Fraction, Corner], Exact]) -> Table[Pitch]:
    """Return drops by the hip's thickness, 'plumb', or 'square' to its edge."""
    columns = each(
        Make[Pitch](settings).length, 'drop', THICKNESSES_IN, lambda it, thick: of(thick, it.corner)
    )
    note, datum = message('note.dropped'), f'drop_{way}'
    return by_pitch(settings, 'hips', f'drop-{way}', columns, note, datum=datum, span='thickness_of_hip')
