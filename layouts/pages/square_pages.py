"""The two openings on checking the tool: is the square true, stepping off, the engraved figures, the drift."""

from __future__ import annotations

from fractions import Fraction

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings.gauges import gauges_on_board
from layouts.drawings.turn_over import turned_over
from layouts.pages.row_pages import Cell, Over, RowsPage, grouped, parted
from layouts.paper.page import Draft, PageNumber
from layouts.words.drawings import GAUGES_DRAWING, TURN_OVER_DRAWING
from layouts.words.pages import heading
from layouts.words.say import _
from layouts.words.square import DRIFT_BELOW, ENGRAVED, ENGRAVED_BELOW, RISE, STEP, STEPS
from tablegen.checking.book_rows import (
    DIAGONAL_EXCESS,
    STEP_COUNTS,
    diagonal_measure,
    drift_table,
    mark_to_mark_table,
    turned_over_table,
)
from tablegen.checking.square_figures import RISES, engraved_table
from tablegen.checking.steps import StepMark, mark_rows
from tablegen.examples import nearest_pitch
from tablegen.geometry import common, seventeen
from tablegen.geometry.pitch import Pitch, pitch_of_rise
from tablegen.geometry.stepping import Hold, common_hold
from tablegen.numbers import text
from tablegen.numbers.figure import Figure, Measure, decimal_figure, length_figure
from tablegen.numbers.units import INCHES
from tablegen.settings import Settings
from tablegen.tables.table import Row

MARKS_A_SIDE = 6
OLD_HIP = 3
"""Place of the old figure of a hip among the columns of the square, its rise the first."""


class TrueSquarePage(Struct, frozen=True):
    """The turn-over test, and diagonals between a square's own marks."""

    picture: Markup
    gaps: tuple[Row, ...]
    diagonals: tuple[Row, ...]
    excess: str
    part: str
    """To which the diagonals that are no whole inches are told."""


class SteppingPage(Struct, frozen=True):
    """How gauges are set and steps counted, and where the marks go at one pitch."""

    picture: Markup
    pitch: str
    hold: Hold
    step: Figure
    columns: tuple[tuple[StepMark, ...], ...]


def square_drafts(settings: Settings) -> list[Draft]:
    """Return the four pages, to begin on the left of an opening."""
    in_inches = Measure(settings.measure.per)  # a square is read in inches, however lengths read
    return [
        Draft('true_square', lambda index: _true_square(in_inches), 'square', heading('square')),
        Draft('step_off', lambda index: _stepping(settings, in_inches), 'stepping', heading('stepping')),
        Draft('engraved', lambda index: _engraved(), 'engraved', heading('engraved')),
        Draft('drift', lambda index: _drift(in_inches, index['stepping']), 'drift', heading('drift')),
    ]


def _true_square(measure: Measure) -> TrueSquarePage:
    return TrueSquarePage(
        turned_over(TURN_OVER_DRAWING),
        tuple(turned_over_table().rows()),
        tuple(mark_to_mark_table(measure).rows()),
        text.rational(DIAGONAL_EXCESS),
        text.mixed(1, diagonal_measure(measure).per),
    )


def _stepping(settings: Settings, measure: Measure) -> SteppingPage:
    pitch = nearest_pitch(settings, Fraction(6))
    held = common_hold(pitch.slope)
    marks = mark_rows('common', pitch, 2 * MARKS_A_SIDE, measure)
    return SteppingPage(
        gauges_on_board(held, GAUGES_DRAWING),
        pitch.text,
        held,
        length_figure(common.line_length(held.run_in, pitch.slope), measure),
        (marks[:MARKS_A_SIDE], marks[MARKS_A_SIDE:]),
    )


def _engraved() -> RowsPage:
    over = [Over((_(RISE),), 1), *(Over((_(name),), len(heads)) for name, heads in ENGRAVED)]
    heads = [(INCHES.over_base,), *((_(head),) for name, heads in ENGRAVED for head in heads)]
    rows = [
        (*map(_cell, row.cells[:OLD_HIP]), _cell(_by_17(rise)), *map(_cell, row.cells[OLD_HIP:]))
        for rise, row in zip(RISES, engraved_table().rows(), strict=True)
    ]
    return RowsPage(
        tuple(heads), grouped(rows), tuple(over), below=_(ENGRAVED_BELOW).format(base=INCHES.base)
    )


def _by_17(rise: int) -> Figure:
    slope = pitch_of_rise(Fraction(rise)).slope
    return decimal_figure(seventeen.hip_length(INCHES.unit_run, slope), 2)


def _drift(measure: Measure, stepping: PageNumber) -> RowsPage:
    heads = [(_(RISE), INCHES.over_base), tuple(map(_, STEP)), *((str(n), _(STEPS)) for n in STEP_COUNTS)]
    rows = [
        (_cell(rise), _cell(step), *((off.signed, '') for off in drifts if isinstance(off, Figure)))
        for rise, step, *drifts in (row.cells for row in drift_table(measure).rows())
    ]
    below = Markup(_(DRIFT_BELOW)).format(part=text.mixed(1, measure.per), base=INCHES.base, page=stepping)
    return RowsPage(tuple(heads), grouped(rows), below=below)


def _cell(cell: object) -> Cell:
    return (
        parted(cell)
        if isinstance(cell, Figure)
        else (cell.short if isinstance(cell, Pitch) else str(cell), '')
    )
