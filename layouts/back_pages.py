"""The pages after the tables: rounding, what the numbers were checked against, the settings of this copy."""

from __future__ import annotations

import itertools
from dataclasses import dataclass
from fractions import Fraction

from layouts.pages import Block, Draft, Index
from layouts.words import WORDS
from tablegen import lookup, text
from tablegen.exact import exact, nearest, root
from tablegen.geometry import hip
from tablegen.settings import Settings
from tablegen.worked import nearest_pitch


@dataclass(frozen=True, slots=True)
class NumbersPage:
    """How the numbers are rounded, with the book's own case of a sum that is a part off."""

    part: str
    half_part: str
    places: int
    sum_pitch: str
    sum_readings: tuple[tuple[str, str], ...]
    sum_total: str
    sum_exact: str
    seventeen_over: str
    """What 17 in place of √288 adds over twelve steps at 8 in 12, in."""


@dataclass(frozen=True, slots=True)
class MadePage:
    """The settings that made this copy."""

    lines: tuple[tuple[str, str], ...]
    pages: int
    sections: int
    figures: str


def back_block(settings: Settings, figures: int) -> Block:
    """Return the last pages; figures is how many are printed in the tables."""
    drafts = (
        Draft('numbers', lambda index: _numbers(settings), 'numbers', WORDS['numbers']),
        Draft('checked', lambda index: None, 'checked', WORDS['checked']),
        Draft('made', lambda index: _made(settings, index, figures), 'made', WORDS['made']),
    )
    return Block(drafts)


def _numbers(settings: Settings) -> NumbersPage:
    pitch = nearest_pitch(settings, Fraction(4))
    found = next(
        (
            one
            for sixteenths in range(16 * 24, 16 * 96)
            if (one := lookup.look_up('common', Fraction(sixteenths, 16), pitch, settings)) is not None
            and len(one.readings) == 2
            and one.total != one.direct
        ),
        None,
    )
    slope = Fraction(8, 12)
    squared = 17 * 17 + Fraction(64)
    over = 12 * (root(squared) - hip.line_length(Fraction(12), exact(slope)))
    readings = tuple((text.run(r.run_in), r.figure.text) for r in found.readings) if found else ()
    return NumbersPage(
        text.mixed(1, settings.measure.per),
        text.mixed(1, 2 * settings.measure.per),
        2,
        pitch.text,
        readings,
        found.total.text if found else '',
        found.direct.text if found else '',
        text.decimal(nearest(over, 1000), 3),
    )


def _made(settings: Settings, index: Index, figures: int) -> MadePage:
    measure = settings.measure
    lines = [
        ('title', settings.title),
        ('owner', settings.owner or '–'),
        ('lengths', measure.style),
        ('smallest_part', text.mixed(1, measure.per)),
        ('pitches', _pitches(settings)),
        (
            'runs',
            f'{text.run(settings.runs.first)} to {text.run(settings.runs.last)} by {text.run(settings.runs.step)}',
        ),
        ('jacks', ', '.join(f'{text.rational(spacing)} in' for spacing in settings.spacings)),
        ('ridge', f'{text.rational(settings.ridge_thickness)} in'),
        ('hip', f'{text.rational(settings.hip_thickness)} in'),
        ('rafter', f'{text.rational(settings.rafter_thickness)} in'),
        (
            'sizes',
            f'rafters {settings.rafters.name}, hips {settings.hips.name}, valleys {settings.valleys.name}',
        ),
        ('seat', f'{text.rational(settings.seat)} in'),
        ('paper', settings.paper),
        ('trim', settings.trim),
        ('parts', ', '.join(settings.parts)),
    ]
    return MadePage(tuple(lines), index.total, len(index.sections), f'{figures:,}')


def _pitches(settings: Settings) -> str:
    names = [pitch.short for pitch in settings.pitches]
    rises = [pitch.rise_in for pitch in settings.pitches]
    steps = {b - a for a, b in itertools.pairwise(rises)} if None not in rises else {None, 0}
    if len(names) > 2 and len(steps) == 1:
        step = steps.pop()
        return f'{names[0]} to {names[-1]}' + (f' by {text.rational(step)}' if step != 1 else '')
    return ', '.join(names)
