"""The two openings on checking the tool: is the square true, stepping off, the engraved figures, the drift."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import TypeVar

from markupsafe import Markup

from layouts.drawings.gauges import gauges_on_board
from layouts.drawings.turn_over import turned_over
from layouts.paper.page import Draft
from layouts.words.drawings import GAUGES_DRAWING, TURN_OVER_DRAWING
from layouts.words.pages import heading
from tablegen.checking.book_rows import (
    DIAGONAL_EXCESS,
    STEP_COUNTS,
    DiagonalRow,
    DriftRow,
    diagonal_rows,
    drift_rows,
    turn_over_rows,
)
from tablegen.checking.corner import TurnOver
from tablegen.checking.square_figures import RISES, SquareRow, engraved_rows
from tablegen.checking.steps import StepMark, mark_rows
from tablegen.examples import nearest_pitch
from tablegen.geometry import common
from tablegen.geometry.pitch import pitch_of_rise
from tablegen.geometry.stepping import Hold, common_hold
from tablegen.numbers import text
from tablegen.numbers.figure import Figure, Measure, length_figure
from tablegen.settings import Settings

Row = TypeVar('Row')
GROUP = 6
"""Rows between rules."""
MARKS_SHOWN = 12
DIAGONAL_PER = 32
"""Parts of an inch for diagonals: with sixteenths their rounding would hide the error looked for."""


@dataclass(frozen=True, slots=True)
class TrueSquarePage:
    """The turn-over test, and diagonals between a square's own marks."""

    picture: Markup
    gaps: tuple[TurnOver, ...]
    diagonals: tuple[DiagonalRow, ...]
    excess: str
    part: str
    """To which the diagonals that are no whole inches are told."""


@dataclass(frozen=True, slots=True)
class SteppingPage:
    """How gauges are set and steps counted, and where the marks go at one pitch."""

    picture: Markup
    pitch: str
    hold: Hold
    step: Figure
    columns: tuple[tuple[StepMark, ...], ...]


@dataclass(frozen=True, slots=True)
class EngravedPage:
    """What a square's table should carry, in groups of rises."""

    groups: tuple[tuple[SquareRow, ...], ...]


@dataclass(frozen=True, slots=True)
class DriftPage:
    """What rounded steps add up to, in the same groups of rises."""

    counts: tuple[int, ...]
    part: str
    groups: tuple[tuple[DriftRow, ...], ...]


def square_drafts(settings: Settings) -> list[Draft]:
    """Return the four pages, to begin on the left of an opening."""
    in_inches = Measure(settings.measure.per)  # a square is read in inches, however lengths read
    return [
        Draft(
            'true_square',
            lambda index: _true_square(Measure(max(in_inches.per, DIAGONAL_PER))),
            'square',
            heading('square'),
        ),
        Draft('step_off', lambda index: _stepping(settings, in_inches), 'stepping', heading('stepping')),
        Draft(
            'engraved', lambda index: EngravedPage(_grouped(engraved_rows())), 'engraved', heading('engraved')
        ),
        Draft('drift', lambda index: _drift(in_inches), 'drift', heading('drift')),
    ]


def _true_square(measure: Measure) -> TrueSquarePage:
    return TrueSquarePage(
        turned_over(TURN_OVER_DRAWING),
        turn_over_rows(),
        diagonal_rows(measure),
        text.rational(DIAGONAL_EXCESS),
        text.mixed(1, measure.per),
    )


def _stepping(settings: Settings, measure: Measure) -> SteppingPage:
    pitch = nearest_pitch(settings, Fraction(6))
    held = common_hold(pitch.slope)
    marks = mark_rows('common', pitch, MARKS_SHOWN, measure)
    half = MARKS_SHOWN // 2
    return SteppingPage(
        gauges_on_board(held, GAUGES_DRAWING),
        pitch.text,
        held,
        length_figure(common.line_length(held.run_in, pitch.slope), measure),
        (marks[:half], marks[half:]),
    )


def _drift(measure: Measure) -> DriftPage:
    rows = drift_rows((pitch_of_rise(Fraction(rise)) for rise in RISES), measure)
    return DriftPage(STEP_COUNTS, text.mixed(1, measure.per), _grouped(rows))


def _grouped(rows: tuple[Row, ...]) -> tuple[tuple[Row, ...], ...]:
    return tuple(rows[at : at + GROUP] for at in range(0, len(rows), GROUP))
