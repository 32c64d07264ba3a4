"""Cards of one pitch: its runs by the inch where the card is wide enough, else by the foot with inches to add."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from layouts.cards.faces import Cell, Face, Row, TableFace, Title, cell_of
from layouts.cards.fitting import GROUP, foot_lines, fullest_foot, most_rows, table_face
from layouts.cards.formats import Format
from layouts.cards.titles import fitted_title, pitch_title
from layouts.words.cards import (
    BY_FOOT,
    CAUTION,
    GRID_HEAD,
    ODD_HEAD,
    RUN_HEAD,
    RUN_STEPS,
    TABLES,
    TO_ADD,
    run_head,
    values_lines,
)
from layouts.words.say import _
from tablegen.errors import BookError
from tablegen.messages import message
from tablegen.numbers import text
from tablegen.numbers.units import INCHES
from tablegen.settings import Runs, Settings
from tablegen.tables.runs import SQUARES, cells_of_foot, offsets_of_foot, part_runs, run_lengths
from tablegen.tables.values import Values, members_of

FOOT = INCHES.unit_run
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
        first, last, step = map(text.run, (settings.runs.first, settings.runs.last, settings.runs.step))
        said = _('{pitch}, runs {first} to {last} by {step}: common on the front, hip and valley on the back')
        pitch = settings.pitches[0].text
        return lying, [sides], [said.format(pitch=pitch, first=first, last=last, step=step)]
    front, longest = _by_the_foot(settings, form)
    back, least = _odd_inches(settings, form)
    by_the_foot = _('{pitch}, runs 1 ft to {last} ft by the foot on the front: common, hip and valley, rise')
    odd = (
        _('on the back what the odd inches and parts to {part} add')
        if least
        else _('on the back what the odd inches add')
    )
    told = [by_the_foot.format(pitch=settings.pitches[0].text, last=longest), odd.format(part=least)]
    if longest < int(settings.runs.last // FOOT):
        told.append(_('no room for: runs over {last} ft').format(last=longest))
    return form, [(front, back)], told


def _by_the_inch(settings: Settings, form: Format) -> tuple[TableFace, TableFace] | None:
    """Return both sides with feet down and inches across, or None where that is no grid or does not stand."""
    offsets = offsets_of_foot(settings.runs)
    if offsets is None or not FEWEST_TO_THE_FOOT <= len(offsets) <= INCHES.unit_run:
        return None
    pitch = settings.pitches[0]
    feet = sorted({int(run // FOOT) for run in settings.runs})
    foot = foot_lines(f'{_values(settings)[0]} {_(CAUTION)}', form)
    heads = [tuple(map(_, GRID_HEAD)), *(('', text.rational(offset)) for offset in offsets)]
    sides = []
    for name, title in TABLES.items():
        runs = list(settings.runs)
        figures = dict(zip(runs, run_lengths(name, runs, pitch, settings.measure), strict=True))
        rows = [
            Row(str(foot), tuple(cell_of(figure) for figure in cells_of_foot(figures, foot, offsets)))
            for foot in feet
        ]
        words = fitted_title(form, pitch_title([pitch]), title)
        sides.append(
            table_face(form, words, heads, rows, foot, range(GROUP - feet[0] % GROUP, len(rows), GROUP))
        )
    front, back = sides
    return (front, back) if front and back else None


def _by_the_foot(settings: Settings, form: Format) -> tuple[TableFace, int]:
    """Return the front, and the longest run on it in feet."""
    pitch = settings.pitches[0]
    caution = _(CAUTION)
    longest = max(1, int(settings.runs.last // FOOT))
    foot = fullest_foot(
        form, min(longest, LEAST_FEET), *(f'{line} {caution}' for line in _values(settings)), caution
    )
    last = min(longest, most_rows(form, foot))
    rows = _rows(settings, [INCHES.unit_run * feet for feet in range(1, last + 1)])
    labels = [Row(str(feet), row) for feet, row in enumerate(rows, 1)]
    title = fitted_title(form, pitch_title([pitch]), BY_FOOT)
    return _standing(settings, form, title, RUN_HEAD, labels, foot, None), last


def _odd_inches(settings: Settings, form: Format) -> tuple[TableFace, str]:
    """Return the back, and the least part of an inch on it besides whole inches, '' where there is none."""
    pitch, part = settings.pitches[0], text.mixed(1, settings.measure.per)
    steps = [_(step).format(part=part) for step in RUN_STEPS]
    words = [' '.join([*steps[:kept], _(CAUTION)]) for kept in range(len(steps), -1, -1)]
    foot = fullest_foot(form, LEAST_FEET, *words)
    small = part_runs(Runs(INCHES.unit_run, INCHES.unit_run, INCHES.unit_run), PER)
    inches = [run for run in small if run.denominator == 1]
    most = most_rows(form, foot) - len(inches)
    parts = next(
        (
            some
            for per in reversed([per for per in INCHES.parts if per <= PER])
            if len(some := [run for run in small if run < 1 and per % run.denominator == 0]) <= most
        ),
        [],
    )
    runs = inches + parts
    rows = [Row(text.rational(run), row) for run, row in zip(runs, _rows(settings, runs), strict=True)]
    title = fitted_title(form, pitch_title([pitch]), TO_ADD)
    face = _standing(settings, form, title, ODD_HEAD, rows, foot, [len(inches)] if parts else [])
    return face, text.rational(min(parts)) if parts else ''


def _values(settings: Settings) -> tuple[str, str]:
    return values_lines(Values(settings), members_of(settings.pitches[0], settings))


def _rows(settings: Settings, runs: Sequence[Fraction]) -> list[tuple[Cell, ...]]:
    columns = [run_lengths(name, runs, settings.pitches[0], settings.measure) for name in SQUARES]
    return [tuple(map(cell_of, row)) for row in zip(*columns, strict=True)]


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
        form,
        title,
        [tuple(map(_, head)), *(run_head(table, settings.measure) for table in SQUARES)],
        rows,
        foot,
        breaks,
    )
    if face is None:
        of = f'{title.figure} {title.unit}'.rstrip()
        small = message('making.too_small', name=form.name, pitch=of)
        raise BookError('--size', small, '', message('making.larger_or_shorter'))
    return face
