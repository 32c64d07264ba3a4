"""Reading the two pages of a pitch's opening: lengths by their runs, and the rows beside them under their titles."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from fractions import Fraction

from tablegen.proof.digits import FOOT_IN, named, written
from tablegen.proof.drawn import labels
from tablegen.proof.figures import figures, length
from tablegen.proof.found import Fault, Found
from tablegen.proof.names import Names, Side
from tablegen.proof.page import SAME_LINE, Page, Phrase, before, close, lines_of, under
from tablegen.proof.places import Kept
from tablegen.proof.roof import corner
from tablegen.proof.rows import NOTES, RowsReader
from tablegen.proof.said_prose import LIMITS
from tablegen.proof.stated import Pitch, Stated, called, pitch_of
from tablegen.proof.word import Word

LOW, LOW_RISE_IN = 'rise', 'low_slope-rise'
LOW_RISE = f'caution-{LOW_RISE_IN}'
"""The place of the caution of low slopes that has their limit, and its names."""
ARMS = ('tongue', 'body')
EDGE = 0.4
"""How far left of a title words beside the lengths begin, a share of its size."""


def side_of(page: Page, names: Names) -> int | None:
    """Return which side of an opening a page is, 0 left, 1 right; None for any other page."""
    if not page.named(names.exact_foot):
        return None
    return next((n for n, side in enumerate(names.sides) if page.named(side.title)), None)


class OpeningReader:
    """Reads every opening there is."""

    def __init__(self, names: Names, book: Stated):
        self.names, self.book, self.found = names, book, Kept()
        self.there: dict[tuple[Pitch, int], int] = {}
        """The page of each side of a pitch's opening."""
        told = (one for page in names.said for one in page.sentences if (LOW, LOW_RISE) in one.places)
        self.low = next((one.words.partition(' (')[0] for one in told), '').replace(
            f'{{{LOW}}}', LIMITS[LOW_RISE_IN]
        )
        """What must be said where a roof is low."""

    def page(self, page: Page) -> None:
        """Read a page, if it is a side of one."""
        side = side_of(page, self.names) if self.book.boards else None
        if side is None:
            return
        pitch = pitch_of(page.pitch)
        if (
            pitch is None
            or (pitch, side) in self.there
            or (self.book.pitches and pitch not in self.book.pitches)
        ):
            self.found.faults.append(Fault('pitch', page.number, '', '', page.pitch, ''))
            return
        self.there[pitch, side] = page.number
        self.found.read.add(page.number)
        self.found.pitches[page.number] = pitch
        _Reader(page, self.names, self.names.sides[side], self.book, self.found, pitch).read()
        if side:
            self._cautions(page, pitch)

    def _cautions(self, page: Page, pitch: Pitch) -> None:
        """See that a low roof's caution stands there whole."""
        is_low = pitch.slope * FOOT_IN < int(LIMITS[LOW_RISE_IN]) and not self.book.translated
        if is_low and self.low not in ' '.join(map(close, page.lines)):
            self.found.faults.append(Fault('words', page.number, f'{called(pitch)}: {self.low}', '', '', ''))

    def end(self) -> None:
        """Say which side is not there, or not beside the other."""
        there = self.there
        for pitch, side in ((pitch, side) for pitch in self.book.pitches if there for side in (0, 1)):
            number = there.get((pitch, side), 0)
            if not number or (side and number != there.get((pitch, 0), 0) + 1):
                title = self.names.sides[side].title
                self.found.faults.append(Fault('opening', number, called(pitch), title, '', ''))


class _Reader:
    """One page, and where what stands beside its lengths begins."""

    def __init__(self, page: Page, names: Names, side: Side, book: Stated, found: Found, pitch: Pitch):
        assert book.boards is not None
        self.page, self.names, self.side, self.book = page, names, side, book
        self.at = corner(pitch.slope, book.boards)
        self.right = figures(self.at, book)
        titles = [title for rows in side.rows if rows.title for title in page.named(rows.title)]
        self.edge = min((title.left - EDGE * title.size for title in titles), default=0.0)
        beside = lines_of([word for word in page.body if word.left >= self.edge])
        self.beside = RowsReader(page, beside, self.edge, called(pitch), self.right, found)
        self._figure = self.beside.figure

    def read(self) -> None:
        """Read all of it."""
        self._lengths()
        name, beside = self.side.lengths[0][1], self.beside
        whole = self.right['step'] == f'{FOOT_IN} in'
        body = self.side.body if whole else self.names.body
        for label, key in ((body, f'{name}-body'), (self.names.tongue, f'{name}-tongue')):
            told = [(line, one) for line in beside.lines if (one := before(line, label)) is not None]
            beside.known |= {id(line) for line, _figure in told}
            self._figure(label, '', told[0][1] if len(told) == 1 else '', self.right[key])
            if key.endswith('body') and told and self.page.is_drawn and not self.book.translated:
                self._drawn(told[0][0][0].base, name)
        if not whole:
            beside.sentence(self.names.step, {'run': 'step'})
        beside.read(self.side.rows)
        lengths = self.page.named(self.names.foot)
        beside.strange(self.page.notes_size * NOTES, max((head.base for head in lengths), default=0.0) - 1)

    def _drawn(self, low: float, name: str) -> None:
        """Read the figures of the square that is drawn above them: the tongue's stands left of the body's."""
        title = self.page.named(self.side.title)[0]
        pitch = max(self.page.body, key=lambda word: word.size)
        inside = (self.edge, low + title.size / 2, float('inf'), pitch.base - 1)
        there = sorted(labels(self.page, inside), key=lambda one: one.left)
        told = [one.text for one in there if any(map(str.isdigit, one.text))]
        for place, arm in enumerate(ARMS):
            printed = told[place] if len(told) == len(ARMS) else ''
            self._figure(self.names.marking.drawing, arm, printed, self.right[f'{name}-{arm}'])

    def _is_figure(self, word: Word) -> bool:
        return word.size > self.page.notes_size * NOTES

    # Lengths ----------------------------------------------------------------------------------------------

    def _lengths(self) -> None:
        heads = self._heads()
        words = [word for word in self.page.body if not self.edge or word.left < self.edge]
        table = [word for word in words if heads and word.base < heads[0].base - 1 and self._is_figure(word)]
        cells = [under(heads, line) for line in lines_of([word for word in table if not word.bold])]
        count = 1 + len(self.side.lengths)
        blocks: tuple[tuple[str, int, Sequence[Fraction | int], int], ...] = (
            (self.names.foot, 0, range(1, self.book.feet + 1), FOOT_IN),
            (self.names.inch, count, range(1, FOOT_IN), 1),
            (self.names.inch, count, self.book.parts, 1),
        )
        for unit, first, runs, inches in blocks:
            for run in runs:
                name = named(Fraction(run))
                rows = [row for row in cells if row[first : first + 1] == [name]]
                for place, (head, kind) in enumerate(self.side.lengths, first + 1):
                    printed = rows[0][place] if len(rows) == 1 and place < len(rows[0]) else ''
                    value = length(self.at, kind, run * inches)
                    self._figure(f'{name} {unit}', head, printed, *self._told(value))
        self._exact_foot(heads[1:count])

    def _told(self, inches: Decimal) -> list[str]:
        """Return the ways in which a length may be told: in a book of feet and inches, small ones in inches too."""
        if not self.book.in_feet:
            return [written(inches, self.book.per)]
        return [written(inches, self.book.per, True), f'{written(inches, self.book.per)}″']

    def _heads(self) -> list[Phrase]:
        """Return the heads of both blocks, their runs' first; none where they are not all there once, in order."""
        wanted = [head for head, _kind in self.side.lengths]
        wanted = [self.names.foot, *wanted, self.names.inch, *wanted]
        for top in self.page.named(self.names.foot):
            line = [
                phrase
                for phrase in self.page.phrases
                if abs(phrase.base - top.base) < SAME_LINE * top.size
                and (not self.edge or phrase.left < self.edge)
            ]
            line.sort(key=lambda phrase: phrase.left)
            if len(line) == len(wanted) and all(
                not phrase.text or phrase.text == head for phrase, head in zip(line, wanted, strict=True)
            ):
                return line
        return []

    def _exact_foot(self, heads: Sequence[Phrase]) -> None:
        (title,) = self.page.named(self.names.exact_foot)[:1]
        end = (heads[-1].right if heads else self.edge) + title.size
        below = [
            word
            for word in self.page.body
            if not word.bold and word.left < end and word.base < title.base - 1
        ]
        line = next(iter(lines_of(below)), [])
        told = [word.text for word in line if word.run == line[0].run and self._is_figure(word)]
        for place, (head, kind) in enumerate(self.side.lengths):
            printed = told[place] if len(told) == len(self.side.lengths) else ''
            self._figure(self.names.exact_foot, head, printed, self.right[f'{kind}-exact-foot'])
