"""Cards of one pitch: its runs by the inch where the card is wide enough, else by the foot with inches to add."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from layouts.cards.faces import Cell, Face, Row, TableFace, Title, cell_of
from layouts.cards.fitting import foot_lines, fullest_foot, most_rows, table_face
from layouts.cards.formats import Format
from layouts.cards.titles import fitted_title, pitch_title
from layouts.words.cards import (
    BY_FOOT,
    CAUTION,
    ODD_HEAD,
    RUN_HEAD,
    RUN_STEPS,
    TABLES,
    TO_ADD,
    run_head,
    values_lines,
)
from tablegen.errors import BookError
from tablegen.numbers import text
from tablegen.numbers.units import INCHES
from tablegen.settings import Runs, Settings
from tablegen.tables.pitch_values import pitch_values
from tablegen.tables.runs import SQUARES, cells_of_foot, figures_by_run, offsets_of_foot, part_runs, run_table

PER = INCHES.part
"""Parts of an inch that a card has room to add, at most."""
FEWEST_TO_THE_FOOT = 3
"""Runs to a foot below which a grid of inches is no better than a list of feet."""
LEAST_FEET = 12
"""Feet, or inches with a half, for which words at the foot make room."""


def one_pitch(settings: Settings, form: Format) -> tuple[Format, list[tuple[Face, Face]], list[str]]:
    """Return the format as it lies, the cards, and what is said of them."""
    grids = [(lying, sides) for lying in (form, form.turned()) if (sides := _by_the_inch(settings, lying))]
    if grids:
        lying, sides = max(grids, key=lambda found: min(side.size for side in found[1]))
        runs = f'{text.run(settings.runs.first)} to {text.run(settings.runs.last)} by {text.run(settings.runs.step)}'
        said = [f'{settings.pitches[0].text}, runs {runs}: common on the front, hip and valley on the back']
        return lying, [sides], said
    front, last = _by_the_foot(settings, form)
    back, parts = _odd_inches(settings, form)
    said = [
        f'{settings.pitches[0].text}, runs 1 ft to {last} ft by the foot on the front: common, hip and valley, rise',
        f'on the back what the odd inches{parts} add',
    ]
    longest = int(settings.runs.last // INCHES.unit_run)
    if last < longest:
        said.append(f'no room for: runs over {last} ft')
    return form, [(front, back)], said


def _by_the_inch(settings: Settings, form: Format) -> tuple[TableFace, TableFace] | None:
    """Return both sides with feet down and inches across, or None where that is no grid or does not stand."""
    offsets = offsets_of_foot(settings.runs)
    if offsets is None or not FEWEST_TO_THE_FOOT <= len(offsets) <= INCHES.unit_run:
        return None
    pitch = settings.pitches[0]
    feet = sorted({int(run // INCHES.unit_run) for run in settings.runs})
    values = pitch_values(pitch, settings)
    foot = foot_lines(f'{values_lines(values)[0]} {CAUTION}', form)
    heads = [('ft', 'in'), *(('', text.rational(offset)) for offset in offsets)]
    sides = []
    for name, (title, line) in TABLES.items():
        figures = figures_by_run(run_table(settings), name)
        rows = [
            Row(str(foot), tuple(cell_of(figure) for figure in cells_of_foot(figures, foot, offsets)))
            for foot in feet
        ]
        words = fitted_title(form, pitch_title([pitch]), f'{title}: {line}')
        sides.append(table_face(form, words, heads, rows, foot, range(6 - feet[0] % 6, len(rows), 6)))
    front, back = sides
    return (front, back) if front and back else None


def _by_the_foot(settings: Settings, form: Format) -> tuple[TableFace, int]:
    """Return the front, and the longest run on it in feet."""
    pitch = settings.pitches[0]
    values = pitch_values(pitch, settings)
    longest = max(1, int(settings.runs.last // INCHES.unit_run))
    foot = fullest_foot(
        form, min(longest, LEAST_FEET), *(f'{line} {CAUTION}' for line in values_lines(values)), CAUTION
    )
    last = min(longest, most_rows(form, foot))
    rows = _rows(settings, [INCHES.unit_run * feet for feet in range(1, last + 1)])
    labels = [Row(str(feet), row) for feet, row in enumerate(rows, 1)]
    title = fitted_title(form, pitch_title([pitch]), BY_FOOT)
    return _standing(settings, form, title, RUN_HEAD, labels, foot, None), last


def _odd_inches(settings: Settings, form: Format) -> tuple[TableFace, str]:
    """Return the back, and which parts of an inch are on it besides whole inches, as words."""
    pitch, part = settings.pitches[0], text.mixed(1, settings.measure.per)
    words = [
        ' '.join([*RUN_STEPS[:kept], CAUTION]).format(part=part) for kept in range(len(RUN_STEPS), -1, -1)
    ]
    foot = fullest_foot(form, LEAST_FEET, *words)
    small = part_runs(Runs(INCHES.unit_run, INCHES.unit_run, INCHES.unit_run), PER)
    inches = [run for run in small if run.denominator == 1]
    most = most_rows(form, foot) - len(inches)
    parts = next(
        (
            some
            for per in (16, 8, 4, 2)
            if len(some := [run for run in small if run < 1 and per % run.denominator == 0]) <= most
        ),
        [],
    )
    runs = inches + parts
    rows = [Row(text.rational(run), row) for run, row in zip(runs, _rows(settings, runs), strict=True)]
    title = fitted_title(form, pitch_title([pitch]), TO_ADD)
    face = _standing(settings, form, title, ODD_HEAD, rows, foot, [len(inches)] if parts else [])
    return face, f' and parts to {text.rational(min(parts))}' if parts else ''


def _rows(settings: Settings, runs: Sequence[Fraction]) -> list[tuple[Cell, ...]]:
    columns = [figures_by_run(run_table(settings, runs=runs), name) for name in SQUARES]
    return [tuple(cell_of(column[run]) for column in columns) for run in runs]


def _standing(
    settings: Settings,
    form: Format,
    title: Title,
    head: tuple[str, str],
    rows: Sequence[Row],
    foot: Sequence[str],
    breaks: Sequence[int] | None,
) -> TableFace:
    """Return a face, or an error where even its least type is too wide."""
    face = table_face(
        form, title, [head, *(run_head(table, settings.measure) for table in SQUARES)], rows, foot, breaks
    )
    if face is None:
        said = f"'{form.name}' is too small for the runs of {title.figure} {title.unit}".rstrip()
        raise BookError('--size', said, '', 'take a larger card or shorter runs')
    return face
