"""Proof-reading patterns at full size: bars, angles and lengths by the ink, against what the same pages print; pages laid on one another."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from math import atan, degrees, hypot
from statistics import median

from tablegen.proof.digits import begin, read, real
from tablegen.proof.found import Fault, Found
from tablegen.proof.page import Page
from tablegen.proof.pattern_joints import read_joints
from tablegen.proof.pattern_names import PatternNames
from tablegen.proof.pattern_page import (
    DATUM,
    EDGE,
    MEET_MM,
    SAWN,
    Drawn,
    PatternPage,
    Piece,
    pattern_page,
    pieces_of,
)
from tablegen.proof.sentences import told, told_within

INCH, HALF_SIXTEENTH = 25.4, 1 / 32
TRUE_MM, TRUE_DEGREES, ROUNDED_DEGREES = 0.06, 0.06, 1.0
"""What ink may be off, an angle between two lines that are each so true, and one by a heel and a seat that are rounded."""
BARS = (90.0, 115.0)
TICK = (0.5, 2.5)


def read_pattern(pages: Sequence[Page], names: PatternNames) -> Found | None:
    """Read a pattern; None for what is none."""
    if not any(one.text.startswith(names.prints) for page in pages for one in page.ink.said):
        return None
    begin()
    found = Found(pages=len(pages))
    drawn = [pattern_page(page) for page in pages]
    drawn = [page for page in drawn if any(words.startswith(names.prints) for words in page.words)]
    for page in drawn:
        if any(line.ink in (SAWN, EDGE) for line in page.lines):
            found.read.add(page.number)
        _bars(page, names, found)
        number = next((place for words in page.words if (place := told(names.page, words))), {})
        found.figure(page.number, '', names.page.partition(' {')[0], number.get('page', ''), str(page.number))
        found.figure(page.number, '', names.page.partition('} ')[2].partition(' {')[0], number.get('pages', ''), str(len(pages)))  # fmt: skip
    readers = [_Reader(piece, names, found) for piece in pieces_of(drawn)]
    slopes = [slope for one in readers if one.board[0] in names.corner and (slope := one.slope()) is not None]
    for reader in readers:
        reader.others = slopes
        reader.read()
        read_joints(reader.piece, names, found)
    return found


# Bars -------------------------------------------------------------------------------------------------------


def _bars(page: PatternPage, names: PatternNames, found: Found) -> None:
    """Measure both bars from the tick at their start."""
    for across in (True, False):
        bars = [one for one in page.solid if BARS[0] < one.long < BARS[1] and (one.turn < 1) is across]
        for bar in bars[:1]:
            ticks = [one for one in page.solid if TICK[0] < one.long < TICK[1] and _crosses(bar, one)]
            starts = [one for one in ticks if one.long > 1.5]
            start = bar.off(starts[0].start)[0] if starts else 0.0
            far = sorted(abs(bar.off(one.start)[0] - start) for one in ticks if one not in starts)
            for name, place, unit in zip(names.bar, (0, 1), (1.0, INCH), strict=True):
                drawn = far[place] / unit if place < len(far) else 0.0
                printed = next((words for words in page.words if words == name), '')
                number, _blank, word = name.partition(' ')
                wanted = float(number)
                right = name if abs(drawn - wanted) * unit < TRUE_MM else f'{drawn:.2f} {word}'
                found.figure(page.number, 'bar', name, printed, right)
        if not bars:
            found.figure(page.number, 'bar', names.bar[0], names.bar[0], '')


def _crosses(bar: Drawn, tick: Drawn) -> bool:
    ends = [bar.off(tick.start), bar.off(tick.end)]
    return min(off for _along, off in ends) < 1 and all(-1 < along < bar.long + 1 for along, _off in ends)


# Lines ------------------------------------------------------------------------------------------------------


class _Reader:
    """One piece."""

    def __init__(self, piece: Piece, names: PatternNames, found: Found):
        self.piece, self.names, self.found = piece, names, found
        first = piece.pages[0][0]
        self.page, self.title = first.number, first.title
        self.facts, self.board = first.facts, first.board(names.kinds)
        self.others: list[float] = []
        """Slopes of hips and valleys that heels and seats of the document make."""
        self.labelled = [(line, *self._name(line.words)) for line in piece.lines if line.words]

    def _name(self, words: str) -> tuple[str, str, str]:
        """Return what a line is called, which of the lengths it is told with, and that length."""
        for place, sentence in enumerate(self.names.lengths):
            found = told(sentence, words)
            if found:
                return found['line'], str(place), found['length']
        return words, '', ''

    def read(self) -> None:
        """Read all of it."""
        self._board()
        slopes = self._slopes()
        for line, name, _which, _printed in self.labelled:
            what = self.names.lines.get(name, '')
            if not what and line.ink in (SAWN, DATUM):
                self.found.strange.append((self.page, line.words))
            if what in ('plumb', 'level') and not self._on_top(line):
                self._angle(line, name, what, slopes)
        if not any(self.names.lines.get(name) == 'leaning' for _line, name, *_rest in self.labelled):
            self._unnamed(slopes)
        self._lengths()
        self._seat()
        self._to_tail()
        self._meet()

    def _measured(
        self, row: str, head: str, printed: str, drawn: float, wanted: float, off: float, unit: str
    ) -> None:
        """Take down what is drawn against what is printed."""
        right = printed if abs(drawn - wanted) < off else f'{drawn:.2f}{unit}'
        self.found.figure(self.page, f'{self.title}: {row}' if row else self.title, head, printed, right)

    def slope(self) -> float | None:
        """Return the angle from level of the board's edge as its plumb lines are drawn, where its own heel and seat agree with it
        but for their rounding; None where it has not both.
        """
        lengths = {which: _inches(printed) for _line, _name, which, printed in self.labelled if which}
        if not lengths.get('1') or not lengths.get('2'):
            return None
        told_by = degrees(atan(lengths['2'] / lengths['1']))
        leaning = [
            abs(90 - line.turn)
            for line, name, _which, _printed in self.labelled
            if self.names.lines.get(name) == 'plumb' and not self._on_top(line)
        ]
        drawn = median(leaning) if leaning else told_by
        return drawn if abs(drawn - told_by) < ROUNDED_DEGREES else told_by

    def _slopes(self) -> list[float]:
        """Return the angles from level that its edge may have: by its pitch, and of a hip or valley, whose corner may be of two
        pitches, by heels and seats.
        """
        called, pitch = self.board
        if pitch is None:
            return []
        common = float(pitch.slope)
        if called not in self.names.corner:
            return [degrees(atan(common))]
        regular = degrees(atan(common / 2**0.5))
        return [regular, *(one for one in self.others if abs(one - regular) > ROUNDED_DEGREES)]

    def _angle(self, line: Drawn, name: str, what: str, slopes: list[float]) -> None:
        """Hold a line on a side against the slope: plumb leans off square by it, level lies off the edge by it."""
        drawn = abs(90 - line.turn) if what == 'plumb' else min(line.turn, 180 - line.turn)
        if slopes:
            wanted = min(slopes, key=lambda one: abs(one - drawn))
            right = f'{wanted:.2f}°' if abs(drawn - wanted) < _loose(line) else f'{drawn:.2f}°'
            self.found.figure(self.page, f'{self.title}: {name}', '∠', right, f'{wanted:.2f}°')

    def _unnamed(self, slopes: list[float]) -> None:
        """See that what is sawn on a side without a name, for want of room, is plumb or level all the same."""
        for line in self.piece.lines:
            if line.ink != SAWN or line.words or self._on_top(line) or not slopes:
                continue
            turns = abs(90 - line.turn), min(line.turn, 180 - line.turn)
            if all(abs(turn - one) > _loose(line) for turn in turns for one in slopes):
                self.found.faults.append(Fault('ink', self.page, self.title, '', SAWN, f'{turns[0]:.2f}°'))

    def _on_top(self, line: Drawn) -> bool:
        """Return whether a line is on the top edge of a strip that is folded round the board."""
        folds = [one.start[1] for one in self.piece.lines if one.words == self.names.edges[2]]
        return len(folds) > 1 and all(
            min(folds) - MEET_MM < y < max(folds) + MEET_MM for _x, y in (line.start, line.end)
        )

    def _lengths(self) -> None:
        """Hold every length that is told beside a line against the line, of several in one line the one that comes nearest."""
        told_beside: dict[tuple[str, str], list[Drawn]] = {}
        for line, name, which, printed in self.labelled:
            if which:
                told_beside.setdefault((name, printed), []).append(line)
        for (name, printed), lines in told_beside.items():
            wanted = _inches(printed)
            drawn = min((line.long / INCH for line in lines), key=lambda one: abs(one - wanted))
            off = max(0.5 / _parts(printed), HALF_SIXTEENTH) + TRUE_MM / INCH
            self._measured(name, '', f'{printed} in', drawn, wanted, off, ' in')

    def _board(self) -> None:
        """Hold the depth and thickness of the board, from edge to edge, against those that are printed."""
        sizes = told_within(self.names.sizes, self.facts)
        top, bottom, fold = self.names.edges
        levels = sorted(
            {round(line.start[1], 2) for line in self.piece.lines if line.ink == EDGE and line.turn < 0.01}
        )
        if not sizes or len(levels) < 2:
            return
        thick, deep = _inches(sizes['thick']) * INCH, _inches(sizes['deep']) * INCH
        gaps = [b - a for a, b in pairwise(levels)]
        wanted = {1: [deep], 2: [deep, thick], 3: [deep, thick, deep]}.get(len(gaps), [])
        if len(gaps) == 2 and gaps[0] < gaps[1]:
            wanted = [thick, deep]
        for gap, size in zip(gaps, wanted, strict=False):
            told_size = sizes['thick'] if size == thick else sizes['deep']
            self._measured(f'{top} – {bottom}' if size == deep else fold, '', f'{told_size} in', gap / INCH, size / INCH, TRUE_MM / INCH, ' in')  # fmt: skip

    def _seat(self) -> None:
        """Hold the seat that is told at the head against that of its line."""
        head = told_within(self.names.seated.partition(' {sizes}')[0], self.facts)
        seats = [printed for _line, _name, which, printed in self.labelled if which == '1']
        if head and seats:
            self.found.figure(
                self.page, self.title, self.names.seated.partition(' {')[0], head['seat'], *seats
            )

    def _to_tail(self) -> None:
        """Hold the length from the plate line to the tail, along the top edge, against what is drawn."""
        found = told_within(self.names.to_tail, self.facts)
        top = [line for line in self.piece.lines if line.ink == EDGE and line.words == self.names.edges[0]]
        if not found or not top:
            return
        plates = [line for line, _name, which, _printed in self.labelled if which == '0']
        tails = [line for line in self.piece.lines if line.ink == SAWN and _on(top[0], line) is not None]
        starts = [at for line in plates if (at := _on(top[0], line)) is not None]
        if starts and tails:
            far = max(at for line in tails if (at := _on(top[0], line)) is not None)
            wanted = _inches(found['length'])
            self._measured(found['plate'], '', f'{found["length"]} in', (far - starts[0]) / INCH, wanted, HALF_SIXTEENTH + TRUE_MM / INCH, ' in')  # fmt: skip

    def _meet(self) -> None:
        """See that what is sawn goes on over every fold: a line that ends on one has another that begins there."""
        folds = [line for line in self.piece.lines if line.ink == EDGE and line.words == self.names.edges[2]]
        sawn = [line for line in self.piece.lines if line.ink == SAWN]
        for line in sawn:
            for end in (line.start, line.end):
                on = [fold for fold in folds if fold.off(end)[1] < MEET_MM]
                others = [other for one in sawn if one is not line for other in (one.start, one.end)]
                if on and not any(hypot(end[0] - x, end[1] - y) < MEET_MM for x, y in others):
                    self.found.faults.append(Fault('ink', self.page, self.title, '', line.words or SAWN, f'{end[0]:.1f}, {end[1]:.1f} mm'))  # fmt: skip


def _loose(line: Drawn) -> float:
    """Return how far off an angle may be that is drawn by two points."""
    return TRUE_DEGREES + degrees(atan(TRUE_MM / max(line.long, 1.0)))


def _on(edge: Drawn, line: Drawn) -> float | None:
    """Return where along an edge a line ends on it; None where it does not."""
    for end in (line.start, line.end):
        along, off = edge.off(end)
        if off < MEET_MM:
            return along
    return None


def _inches(words: str) -> float:
    value = read(words)
    return float(real(value)) if value is not None else 0.0


def _parts(words: str) -> int:
    under = words.rpartition('/')[2]
    return int(under) if '/' in words and under.isdigit() else 16
