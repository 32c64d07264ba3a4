"""How close lines of the page of both rafters stand, and how much of the cautions it has, by the lines that all takes."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from itertools import groupby
from math import ceil

from msgspec import Struct

from layouts.pages.example_care import NOTE_REM, told_first
from layouts.pages.example_places import Place
from layouts.paper.longer import CUTS, lines_in
from layouts.paper.typeface import advance_em
from tablegen.examples.records import Length, SlopesExample
from tablegen.numbers import text
from tablegen.roof.cautions import Caution

MOST_LINES = 2
"""Lines that cautions may take."""
PLACE_REM, NUMBER_REM, BESIDE_REM, SPARE_REM = 0.7, 1.1, 13.7, 0.5
"""Size of what is said of places; width of a step's number, and of the drawing that words stand beside; height kept free."""
HEADS_REM, ENDS = 1.1, 0.985
"""Height of the heads over the figures; and of a line's width, what words fill that are broken at spaces: numbers keep together."""
TOGETHER = re.compile(r'(?<=[\d′″&]) (?=[\d&]|in\b|ft\b)|(?<=\bin) (?=\d)')
"""A space within a number, a pitch or the figures of a square: no line ends there."""
BEFORE_REM = 0.5
"""Free before a column of figures."""
LOOK, DEFERS = 'Look again.', 'Clauses: page 9. Local code and a licensed designer decide.'
OF_BOTH = ' Overhang {overhang}; ridge {ridge} in thick; rafters {rafters}, seat {seat}.'
ALIKE = {
    'off': 'Ridge cut: half of it, {a.head.off.level.text} level.',
    'cuts': 'Plumb cut; square {a.hold.text}, {b.hold.text}.',
}
SALTBOX = (
    {
        'run': 'Run: {width} × {rises[1]} ÷ ({rises[0]} + {rises[1]}); the rest.',
        'rise': 'Rise, alike: they meet.',
        'length': 'Plate line.',
        'whole': 'Tail cut.',
        'height': 'Height above plate, {a.name}’s on both.',
        'heel': 'Heel; seat {a.mouth.seat.text}, {b.name}’s {b.mouth.seat.text}.',
    }
    | ALIKE,
    '{roof}, {width} wide, outside to outside of the plates. Front {a.name} {a.pitch.text}, back {b.name} {b.pitch.text}.',
    'Plate line and cuts along the top edge, from the ridge center line.',
)
GAMBREL = (
    {
        'run': 'Run: to the purlin; the rest of {half}.',
        'rise': 'Rise; together {page.rise.direct.text}.',
        'length': 'Plate line; purlin’s center line.',
        'whole': 'Tail cut.',
        'purlin': 'Purlin cut: half of it, {a.head.off.level.text} level; {b.name}’s, {length} less {b.tail.off.along.text}.',
        'mouth': 'Height above plate; heel {a.mouth.heel.text}.',
    }
    | ALIKE,
    '{roof}, {width} wide. Lower {a.name} {a.pitch.text}, upper {b.name} {b.pitch.text}, on a purlin {rafter} in thick, '
    'its center line {run} inside the plate line.',
    'Lines and cuts along the top edge: {a.name}’s from the purlin’s, {b.name}’s from the ridge’s center line.',
)
"""What the page says of both forms, counted in English: the steps, and what stands above and below them."""


class Setting(Struct, frozen=True):
    """How close lines stand; heights in rem, as the style sheet has them."""

    kind: str
    """Class of the page."""
    head: float
    row: float
    """What a step takes beside its lines."""
    text: float
    figure: float
    """Sizes of words and of figures."""
    line: float
    place: float
    note: float
    """Heights of lines of steps, of places and of what stands above and below them."""
    after: float
    """What stands free after a note."""


SETTINGS = (
    Setting('', 2.69, 0.07, 0.8, 0.96, 1.03, 0.9, 1.0, 0.38),
    Setting('dense', 2.34, 0.07, 0.76, 0.9, 0.97, 0.84, 0.94, 0.12),
    Setting('dense densest', 2.24, 0.03, 0.72, 0.9, 0.9, 0.77, 0.86, 0.08),
)
"""From the usual to the closest."""


class Told(Struct, frozen=True):
    """What the page says, counted in English: longer words are set as much smaller as they are longer."""

    steps: Mapping[str, str]
    """Words of each step, by the name of its places."""
    at: Mapping[str, Sequence[Place]]
    unit: bool
    """Whether lengths are in inches: what is added up stands in the step's own cell then, else before its places."""
    added: Mapping[str, str]
    """What is added up at a step, '' for nothing."""
    intro: str
    along: str
    figures: Sequence[str]
    """What stands in the columns of figures, about."""
    drawn: float
    """Height of the drawing, rem."""

    def height(self, one: Setting, wide: float, cautions: str) -> float:
        """Return how high the page's words stand in one setting, rem."""
        notes = [self.along] + ([f'{LOOK} {cautions} {DEFERS}'] if cautions else [])
        told = sum(_lines(note, NOTE_REM, wide) * one.note + one.after for note in notes)
        widest = max(advance_em(figure, *CUTS['bold']) for figure in self.figures)
        cell = wide - NUMBER_REM - 2 * (widest * one.figure + BEFORE_REM)
        rows = sum(self._row(name, one, wide, cell) for name in self.steps)
        return one.head + self._intro(one, wide) + HEADS_REM + rows + told

    def _intro(self, one: Setting, wide: float) -> float:
        beside = _lines(self.intro, NOTE_REM, wide - BESIDE_REM)
        most = ceil(self.drawn / one.note)
        under = ceil(max(beside - most, 0) * (wide - BESIDE_REM) / wide)
        return max(self.drawn, (min(beside, most) + under) * one.note + one.after)

    def _row(self, name: str, one: Setting, wide: float, cell: float) -> float:
        words, added = self.steps[name], self.added.get(name, '')
        high = _lines(f'{words} {added}' if self.unit else words, one.text, cell) * one.line + one.row
        if places := self.at.get(name):
            high += _lines(said(places), PLACE_REM, wide - NUMBER_REM) * one.place
            if added and not self.unit:
                high += _lines(added, one.text, wide - NUMBER_REM) * one.line
        return high


def setting_and_cautions(told: Told, called: Sequence[Caution], wide: float, high: float) -> tuple[str, str]:
    """Return the class of the setting that has room, and the cautions: closer before shorter.

    Given:
        wide, high  the page's room, rem
    """
    tries = [(one, most) for most in range(MOST_LINES, 0, -1) for one in SETTINGS]
    for one, most in tries:
        cautions = told_first(called, wide, most)
        if told.height(one, wide, cautions) <= high - SPARE_REM:
            break
    return one.kind, cautions


def said(places: Sequence[Place]) -> str:
    """Return, about, what is said of where figures stand: a page is said once."""
    told = []
    for page, some in groupby(places, key=lambda one: (one.page, one.other)):
        on_it = list(some)
        pages = 'pages {} and {},'.format(*page) if page[1] else f'page {page[0]},'
        rows = '; '.join(', '.join(filter(None, (one.table, one.row, one.column))) for one in on_it)
        told.append(f'{pages} {rows}')
    return '; '.join(told)


def sum_of(*lengths: Length | None) -> str:
    """Return what is said of lengths that are added up."""
    told = []
    for one in lengths:
        if one and len(one.readings) > 1:
            end = f', in sum {one.total.text}; rounded once {one.direct.text}'
            told.append(
                ' + '.join(figure.text for figure in one.readings)
                + (end if one.total.text != one.direct.text else '')
                + '.'
            )
    return ' '.join(told)


def _lines(words: str, size: float, width: float) -> int:
    return lines_in(TOGETHER.sub('\u00a0', words), size, width * ENDS)


def told_of(
    page: SlopesExample,
    at: Mapping[str, Sequence[Place]],
    words: Mapping[str, object],
    drawn: float,
    unit: bool,
) -> Told:
    """Return what the page of both rafters says, about as its template has it.

    Given:
        words   what is said of the roof
        drawn   height of the drawing, rem
        unit    whether lengths are in inches
    """
    one, other = page.rafters
    steps, intro, along = SALTBOX if page.meets else GAMBREL
    if not page.meets and not one.roof.overhang_in:
        steps = {name: step for name, step in steps.items() if name != 'whole'}
    about = {
        'a': one.member,
        'b': other.member,
        'run': text.run(one.roof.run_in),
        'page': page,
        'unit': ' in' if unit else '',
        **words,
    }
    return Told(
        {name: step.format(**about) for name, step in steps.items()},
        at,
        unit,
        {
            'rise': sum_of(*page.rises),
            'length': sum_of(one.length, other.length),
            'whole': sum_of(one.whole, other.whole if page.meets else None),
            'purlin': sum_of(one.ledger, other.ledger),
        },
        f'{intro}{OF_BOTH}'.format(**about),
        f'{along} Boards of {{a.stick.text}}{{unit}} and {{b.stick.text}}{{unit}} or more.'.format(**about),
        [mark.at.text for rafter in page.rafters for mark in rafter.member.marks],
        drawn,
    )
