"""Gable studs and roof areas by pitch."""

from __future__ import annotations

from tablegen.geometry import common, gable
from tablegen.geometry.pitch import Pitch
from tablegen.numbers.figure import RATIO
from tablegen.settings import Settings
from tablegen.tables.columns import Make, by_pitch, each
from tablegen.tables.table import Table

OF_PLAN = 100
"""Of level plan, in any unit, that the second figure of roof area is told for."""


def listed(settings: Settings) -> list[Table[Pitch]]:
    """Return the table of gable studs and areas."""
    make = Make[Pitch](settings)
    columns = (
        *each(
            make.length,
            'stud_difference',
            settings.spacings,
            lambda it, one: common.rise(one, it.slope),
            'stud_difference',
        ),
        make.degrees('top_cut', lambda it: common.slope_angle(it.slope), 'stud_top_cut'),
        make.decimal('area_factor', lambda it: gable.area_factor(it.slope), 'area', unit=RATIO),
        make.decimal(
            'area_over_100_of_plan',
            lambda it: OF_PLAN * gable.area_factor(it.slope),
            'area',
            places=1,
            unit=RATIO,
        ),
    )
    return [by_pitch(settings, 'gable', 'gable-and-area', columns)]
