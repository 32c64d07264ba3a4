"""Regular many-sided roofs: what the number of sides decides, and what the pitch adds."""

from __future__ import annotations

from typing import Any, NamedTuple

from tablegen.geometry import backing, cheeks, corner, many_sided, shortening
from tablegen.geometry.corner import Corner
from tablegen.geometry.pitch import Pitch
from tablegen.messages import message
from tablegen.numbers.exact import exact
from tablegen.numbers.figure import UP
from tablegen.numbers.units import INCHES
from tablegen.settings import Settings
from tablegen.tables.columns import Make
from tablegen.tables.table import Column, Table

SIDES = (5, 6, 8, 10, 12)
ANY_SLOPE = exact(1)
"""Level lengths and blades on the side are the same at every pitch."""


class At(NamedTuple):
    """A pitch and the corner between two neighboring sides that have it."""

    pitch: Pitch
    at: Corner


def listed(settings: Settings) -> list[Table[Any]]:
    """Return the tables of this group."""
    plans, jacks, peak = _plans(settings), _jacks(settings), _peak(settings)
    return [plans, jacks, peak, *(_of_sides(settings, sides) for sides in SIDES)]


def _plans(settings: Settings) -> Table[int]:
    foot, make = INCHES.unit_run, Make[int](settings)
    columns = (
        make.degrees('corner', many_sided.plan_corner_degrees, 'corner_in_plan'),
        make.degrees('plate_miter', many_sided.half_central, 'plate_miter'),
        make.decimal('side', lambda n: many_sided.side_from_apothem(foot, n), 'side_and_hip_run'),
        make.decimal('apothem', lambda n: many_sided.apothem_from_side(foot, n), 'apothem'),
        make.decimal('hip_run', lambda n: many_sided.radius_from_apothem(foot, n), 'side_and_hip_run'),
    )
    return _by_sides(settings, 'sides', columns)


def _jacks(settings: Settings) -> Table[int]:
    make, hip, rafter = Make[int](settings), settings.hip_thickness, settings.rafter_thickness
    columns = (
        make.degrees('blade', lambda n: cheeks.jack(_corner(n)).blade, 'blade_over_plumb_cut'),
        make.length('off_level', lambda n: shortening.jack_at_hip(hip, _corner(n)), 'off_and_points_level'),
        make.length(
            'short_to_long_point_level',
            lambda n: shortening.point_to_point(rafter, _corner(n)),
            'off_and_points_level',
        ),
        make.length('reach', lambda n: cheeks.jack(_corner(n)).reach(rafter), 'reach_least', way=UP),
    )
    return _by_sides(settings, 'sides-jacks', columns, hip=hip, rafter=rafter)


def _peak(settings: Settings) -> Table[int]:
    """Return hips at the peak: two cheeks to a point, or square-cut against a center post."""
    make, hip = Make[int](settings), settings.hip_thickness
    columns = (
        make.degrees('blade', lambda n: many_sided.peak_cheek(ANY_SLOPE, n).blade, 'blade_on_side'),
        make.length('set_back_level', lambda n: many_sided.peak_point(hip, n), 'peak_side'),
        make.length(
            'reach', lambda n: many_sided.peak_cheek(ANY_SLOPE, n).reach(hip / 2), 'reach_least', way=UP
        ),
        make.length('least_post', lambda n: 2 * many_sided.peak_point(hip, n), 'least_post', way=UP),
    )
    return _by_sides(settings, 'sides-peak', columns, hip=hip)


def _by_sides(settings: Settings, key: str, columns: tuple[Column[int], ...], **notes: object) -> Table[int]:
    """Return a table with a row a number of sides, and with one note, in which some thicknesses stand, if any are given."""
    make, note = Make[int](settings), message(f'note.{key.replace("-", "_")}', **notes)
    named = (make.count('sides', lambda n: n), *columns)
    return make.table('many-sided', key, lambda: SIDES, named, *([note] if notes else []))


def _corner(sides: int) -> Corner:
    return many_sided.regular_corner(ANY_SLOPE, sides)


def _of_sides(settings: Settings, sides: int) -> Table[At]:
    """Return a row a pitch of roofs with a number of sides."""
    make, hip, foot, spacing = Make[At](settings), settings.hip_thickness, INCHES.unit_run, INCHES.spacing
    columns = (
        make.pitch(lambda it: it.pitch),
        make.decimal(
            'hip_per_foot',
            lambda it: corner.hip_length(foot, it.at),
            'per_foot_of_apothem',
        ),
        make.degrees('hip_plumb_cut', lambda it: corner.hip_angle(it.at), 'its_plumb_cut'),
        make.length(
            'jack_difference',
            lambda it: corner.jack_difference(spacing, it.at),
            'jacks_along_slope',
            message('head.jacks_at', number=spacing),
        ),
        make.length('jack_12_and', lambda it: cheeks.jack(it.at).figure(), 'top_edge_12'),
        make.length(
            'peak_12_and', lambda it: many_sided.peak_cheek(it.pitch.slope, sides).figure(), 'top_edge_12'
        ),
        make.degrees('backing_bevel', lambda it: backing.bevel(it.at), 'backing'),
        make.length('drop_plumb', lambda it: backing.drop_plumb(hip, it.at), 'drop', message('head.drop')),
    )
    return make.table(
        'many-sided',
        f'{sides}-sides',
        lambda: (At(one, many_sided.regular_corner(one.slope, sides)) for one in settings.pitches),
        columns,
        message('note.drop_for', hip=hip),
        title=message('table.of_sides', sides=sides),
    )
