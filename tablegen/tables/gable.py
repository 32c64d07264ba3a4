"""Gable studs and roof areas by pitch."""

from __future__ import annotations

from dataclasses import dataclass

from tablegen.geometry import common, gable
from tablegen.geometry.pitch import Pitch
from tablegen.numbers import text
from tablegen.numbers.figure import RATIO, Figure, decimal_figure
from tablegen.settings import Settings
from tablegen.tables.finish import deg, mark
from tablegen.tables.former import Table


@dataclass(frozen=True, slots=True)
class GableRow:
    """One pitch."""

    pitch: Pitch
    stud_difference: tuple[Figure, ...]
    """in, PLUMB, neighboring studs on the same side of each, one a set spacing."""
    top_cut: Figure
    """deg, the cut on the stud's side, from square."""
    area_factor: Figure
    """Roof area over level plan area, any unit, to thousandths."""
    area_over_100_of_plan: Figure
    """Roof area over 100 of plan area, to tenths."""


def gable_rows(settings: Settings) -> list[GableRow]:
    """Return one row a pitch."""
    return [
        GableRow(
            pitch,
            tuple(mark(gable.stud_difference(one, pitch.slope), settings) for one in settings.spacings),
            deg(common.slope_angle(pitch.slope)),
            decimal_figure(gable.area_factor(pitch.slope), 3, RATIO),
            decimal_figure(100 * gable.area_factor(pitch.slope), 1, RATIO),
        )
        for pitch in settings.pitches
    ]


def listed(settings: Settings) -> list[Table]:
    """Return the tables of this group."""
    spacings = tuple(text.rational(one) for one in settings.spacings)
    return [
        Table(
            'gable',
            'gable-and-area',
            'Gable studs and roof area',
            ('pitch', *spacings, 'top cut', 'area', 'of 100'),
            "inches, plumb, per space on center; top cut on the stud's side, from square; roof area over level plan area",
            gable_rows,
        ),
    ]
