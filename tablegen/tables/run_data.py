"""The run tables as a data file gives them: a row a run, each number exact until its one rounding."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from tablegen.geometry import common, corner
from tablegen.geometry.pitch import Pitch
from tablegen.numbers import text
from tablegen.numbers.exact import nearest_root
from tablegen.numbers.figure import Figure, decimal_figure, length_of_count
from tablegen.settings import Settings

DATA_PLACES = 9


@dataclass(frozen=True, slots=True)
class DataRow:
    """A row of the run tables as a data file gives it."""

    run: Figure
    common: Figure
    common_part: Figure
    hip_valley: Figure
    hip_valley_part: Figure
    rise: Figure
    rise_part: Figure


def data_rows(pitch: Pitch, settings: Settings) -> Iterator[DataRow]:
    """Return the rows of one pitch over the settings' runs, one at a time."""
    measure, slope_squared = settings.measure, pitch.slope.squared()
    squares = (
        common.line_length_squared(pitch.slope),
        corner.hip_length_squared(pitch.corner),
        slope_squared,
    )
    for run_in in settings.runs:
        row = [decimal_figure(run_in, DATA_PLACES)]
        for square in squares:
            square *= run_in * run_in
            count = nearest_root(square, 10**DATA_PLACES)
            row.append(Figure(count, 10**DATA_PLACES, row[0].unit, text.decimal_parts(count, DATA_PLACES)))
            row.append(length_of_count(nearest_root(square, measure.per), measure))
        yield DataRow(*row)


def plain(figure: Figure) -> str:
    """Return a figure in decimals as data files take it: no degree sign, a hyphen for a minus."""
    return text.plain_decimal(figure.count, len(str(figure.per)) - 1)
