"""Shortening at ridges, hips and valleys, by thickness and by pitch; the ends of hip roofs' ridges."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from tablegen.geometry import ridge, shortening
from tablegen.geometry.pitch import Pitch, pitch_of_rise
from tablegen.messages import message
from tablegen.numbers.exact import Exact
from tablegen.numbers.units import INCHES
from tablegen.settings import Settings
from tablegen.tables.columns import THICKNESSES_IN, Make, by_pitch, each, spanned
from tablegen.tables.table import Needs, Table

ANY = pitch_of_rise(Fraction(INCHES.base)).corner
"""Level deductions of a regular corner are the same at every pitch."""


def listed(settings: Settings) -> list[Table[Fraction] | Table[Pitch]]:
    """Return the tables of this group."""
    return [_level(settings), _ends(settings), *_by_pitch(settings)]


def _level(settings: Settings) -> Table[Fraction]:
    """Return deductions of a regular corner for one thickness of what is met; the same at every pitch."""
    make = Make[Fraction](settings)
    columns = (
        make.given('thickness', lambda thick: thick),
        make.length('common', shortening.at_ridge, 'common_at_ridge'),
        make.length('shed_on_ledger', shortening.at_ledger, 'shed_on_ledger'),
        make.length('hip_or_jack', lambda thick: shortening.hip_at_ridge(thick, ANY), 'hip_or_jack'),
        make.length('end_common', ridge.end_past_commons, 'end_common'),
    )
    note, level = message('note.shortening_level'), 'shortening_level'
    return make.table('ridge', 'shortening-level', lambda: INCHES.thicknesses, columns, note, datum=level)


def _ends(settings: Settings) -> Table[Fraction]:
    """Return what ridges run past their ends, and end commons are shortened by, where hips bear on their sides."""
    make, needs = Make[Fraction](settings), Needs(span=spanned('thickness_of_hips'))

    def end_common(own: Fraction, hip: Fraction) -> Exact:
        return ridge.end_past_hips(own, hip, ANY)

    columns = (
        make.given('ridge', lambda thick: thick),
        *each(make.length, 'end_common_with_hip', THICKNESSES_IN, end_common),
    )
    note, rows = message('note.ridge_ends'), lambda: THICKNESSES_IN
    return make.table('ridge', 'ridge-ends', rows, columns, note, datum='ridge_ends', needs=needs)


def _by_pitch(settings: Settings) -> list[Table[Pitch]]:
    def by_thickness(
        key: str, span: str, column: str, of: Callable[[Pitch, Fraction], Exact]
    ) -> Table[Pitch]:
        columns = each(Make[Pitch](settings).length, column, THICKNESSES_IN, of)
        return by_pitch(settings, 'ridge', key, columns, datum=column, span=f'thickness_of_{span}')

    return [
        by_thickness('shortening-common', 'ridge', 'off_along_edge', _common),
        by_thickness('shortening-hip', 'ridge_or_commons', 'off_along_edge', _hip),
        by_thickness('shortening-jack', 'hip_or_valley', 'off_along_edge', _jack),
        by_thickness(
            'ridge-sits-down', 'ridge', 'sits_down', lambda it, thick: ridge.sits_down(thick, it.slope)
        ),
    ]


def _common(it: Pitch, ridge_in: Fraction) -> Exact:
    """Return what comes off a common, or a valley jack, at a ridge."""
    return shortening.along(shortening.at_ridge(ridge_in), it.slope)


def _hip(it: Pitch, met_in: Fraction) -> Exact:
    """Return what comes off a regular hip or valley at a ridge, or between commons, along the hip."""
    return shortening.along(shortening.hip_at_ridge(met_in, it.corner), it.corner.hip_slope)


def _jack(it: Pitch, hip_in: Fraction) -> Exact:
    """Return what comes off a jack at a regular hip or valley, on the jack's center line."""
    return shortening.along(shortening.jack_at_hip(hip_in, it.corner), it.slope)
