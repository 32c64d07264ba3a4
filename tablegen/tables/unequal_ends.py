"""Two pitches meeting at a square corner: what comes off members, where their cuts start, and what a slid hip changes."""

from __future__ import annotations

from tablegen.geometry import backing, shortening
from tablegen.numbers.exact import Exact
from tablegen.settings import Settings
from tablegen.tables.columns import Make
from tablegen.tables.pairs import Pair, pair_table
from tablegen.tables.table import Table


def listed(settings: Settings) -> list[Table[Pair]]:
    """Return the tables of a slid hip, of level deductions, and of where cheeks start."""
    return [_slide(settings), _shortening(settings), _points(settings)]


def _slide(settings: Settings) -> Table[Pair]:
    """Return what changes with a square-topped hip slid towards eave A, so that one drop serves both planes."""
    make, hip = Make[Pair](settings), settings.hip_thickness

    def shorter(it: Pair) -> Exact:
        return -backing.slid_jack(hip, it.at)

    def longer(it: Pair) -> Exact:
        return backing.slid_jack(hip, it.back)

    columns = (
        make.length('slide', lambda it: backing.slide(hip, it.at), 'slide'),
        make.length('drop_once_slid', lambda it: backing.drop_when_slid(hip, it.at), 'slide'),
        make.length('jacks_a_shorter_level', shorter, 'slid_jacks'),
        make.length(
            'jacks_a_shorter_along', lambda it: shortening.along(shorter(it), it.a.slope), 'slid_jacks'
        ),
        make.length('jacks_b_longer_level', longer, 'slid_jacks'),
        make.length(
            'jacks_b_longer_along', lambda it: shortening.along(longer(it), it.b.slope), 'slid_jacks'
        ),
        make.length('hip_longer_at_ridge_a', lambda it: backing.slid_hip_at_ridge(hip, it.at), 'slid_hip'),
    )
    return pair_table('unequal-slide', columns, settings, hip=hip)


def _shortening(settings: Settings) -> Table[Pair]:
    make = Make[Pair](settings)
    ridge, hip, rafter = settings.ridge_thickness, settings.hip_thickness, settings.rafter_thickness
    columns = (
        make.length('hip_at_ridge_a', lambda it: shortening.hip_at_ridge(ridge, it.at), 'to_its_face'),
        make.length('hip_at_ridge_b', lambda it: shortening.hip_at_ridge(ridge, it.back), 'to_its_face'),
        make.length(
            'hip_between_commons', lambda it: shortening.hip_between_commons(rafter, it.at), 'to_its_face'
        ),
        make.length(
            'point_aside_to_b', lambda it: shortening.double_cheek_aside(rafter, rafter, it.at), 'point_aside'
        ),
        make.length('jack_a', lambda it: shortening.jack_at_hip(hip, it.at), 'to_its_face'),
        make.length('jack_b', lambda it: shortening.jack_at_hip(hip, it.back), 'to_its_face'),
    )
    return pair_table('unequal-shortening', columns, settings, 'level', ridge=ridge, hip=hip, rafter=rafter)


def _points(settings: Settings) -> Table[Pair]:
    make, hip, rafter = Make[Pair](settings), settings.hip_thickness, settings.rafter_thickness
    columns = (
        make.length(
            'jack_a_short_to_long_point',
            lambda it: shortening.point_to_point(rafter, it.at),
            'jack_points_of_both',
        ),
        make.length(
            'jack_b_short_to_long_point',
            lambda it: shortening.point_to_point(rafter, it.back),
            'jack_points_of_both',
        ),
        make.length('hip_a_set_back', lambda it: shortening.set_back_at_ridge(hip, it.at), 'sides_of_both'),
        make.length('hip_b_set_back', lambda it: shortening.set_back_at_ridge(hip, it.back), 'sides_of_both'),
    )
    return pair_table('unequal-points', columns, settings, 'level_each', rafter=rafter, hip=hip)
