"""Reading a pitch's tables by the run, their small runs, and its jacks."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from fractions import Fraction

from tablegen.proof.digits import FOOT_IN, named, read, read_run, written
from tablegen.proof.figures import figures, length
from tablegen.proof.found import Fault
from tablegen.proof.laid import cells_of, laid, stand_under
from tablegen.proof.names import Names, RunTable
from tablegen.proof.page import Page, Phrase
from tablegen.proof.places import Kept
from tablegen.proof.roof import ANY_BOARDS, Corner, corner
from tablegen.proof.sentences import told
from tablegen.proof.stated import Pitch, Stated, called, pitch_of

VALUE, SMALL = '{value}', 'small'


class RunReader:
    """All tables by the run of a book."""

    def __init__(self, names: Names, book: Stated):
        self.names, self.book, self.found = names, book, Kept()
        self.seen: dict[tuple[Pitch, str, str], dict[Fraction, int]] = {}
        """Runs that were read of each pitch and their pages, by what they are a run of: a table's kind, and SMALL or a
        spacing."""

    def page(self, page: Page) -> None:
        """Read a page, if it is of a pitch."""
        pitch = pitch_of(page.pitch)
        if pitch is not None:
            self._page(page, pitch, corner(pitch.slope, self.book.boards or ANY_BOARDS))

    def end(self) -> None:
        """Say what of a pitch is nowhere."""
        for (pitch, kind, more), seen in self.seen.items():
            for run in self._wanted(pitch, kind, more):
                if run not in seen:
                    near = [seen[run + far] for far in (-FOOT_IN, FOOT_IN, -1, 1) if run + far in seen]
                    whole = self.seen.get((pitch, kind, ''), {}).values() if more == SMALL else ()
                    without = [page for page in whole if page not in seen.values()]
                    place = next(iter(near or without or seen.values()), 0)
                    self._missing(place, f'{called(pitch)}, {named(run)}', kind, more)
        for kind, more in dict.fromkeys((kind, more) for _pitch, kind, more in self.seen):
            for pitch in self.book.pitches:
                if (pitch, kind, more) not in self.seen:
                    self._missing(0, called(pitch), kind, more)

    def _missing(self, page: int, row: str, kind: str, more: str) -> None:
        self.found.faults.append(Fault('missing', page, row, f'{kind} {more}'.strip(), '', ''))

    def _of(self, page: Page, pitch: Pitch) -> None:
        self.found.read.add(page.number)
        self.found.pitches[page.number] = pitch

    def _seen(self, pitch: Pitch, kind: str, more: str) -> dict[Fraction, int]:
        return self.seen.setdefault((pitch, kind, more), {})

    def _page(self, page: Page, pitch: Pitch, at: Corner) -> None:
        for title in page.phrases:
            if title.size <= page.notes_size:
                continue
            for table in self.names.tables.run_tables:
                self._table(page, pitch, at, title, table)
            if title.text in self.names.tables.jacks.titles:
                self._jacks(page, pitch, at, title)
            if title.text in self.names.tables.run_list.titles:
                self._list(page, pitch, at, title)

    def _table(self, page: Page, pitch: Pitch, at: Corner, title: Phrase, table: RunTable) -> None:
        if title.text != table.left:
            before, _value, after = table.right.partition(VALUE)
            if not title.text.startswith(before) or not title.text.endswith(after):
                return
            printed = title.text[len(before) : len(title.text) - len(after)]
            right = figures(at, self.book)[table.value]
            self._figure(page, pitch, title.text, '', printed, right)
        self._of(page, pitch)
        small = next((line[0].base for line in page.lines if line[0].text == self.names.tables.small[0]), 0.0)
        found = laid(page, title.base, small, paired=False)
        offsets = [read(self._inches(head.text)) for head in found.heads] if found else []
        if not found or found.corner != self.names.foot or None in offsets or offsets != sorted(set(offsets)):  # type: ignore[type-var]
            self.found.faults.append(Fault('pitch', page.number, title.text, '', '', ''))
            return
        seen = self._seen(pitch, table.kind, '')
        for label, cells in found.rows:
            feet = read(label)
            first = feet * FOOT_IN if feet is not None else None
            for head, offset, printed in zip(found.heads, offsets, cells, strict=True):
                if first is None or offset is None:
                    self._figure(page, pitch, label, head.text, printed, '')
                    continue
                run = first + offset
                self._length(
                    page, pitch, f'{label} {self.names.foot}', head.text, printed, at, table.kind, run, seen
                )
        self._small(page, pitch, at, table)

    def _inches(self, head: str) -> str:
        """Return the number of a head; beside a fraction its unit has no room."""
        found = told(self.names.tables.inches, head)
        return found['number'] if found else head

    def _length(
        self,
        page: Page,
        pitch: Pitch,
        row: str,
        head: str,
        printed: str,
        at: Corner,
        kind: str,
        run: Fraction,
        seen: dict[Fraction, int],
    ) -> None:
        """Read the cell of a run, which is blank where the book has no such run."""
        if run not in self.book.every_run or run in seen:
            if printed:
                self._figure(page, pitch, row, head, printed, '')
            return
        seen[run] = page.number
        self._figure(page, pitch, row, head, printed, *self._told(length(at, kind, run)))

    def _small(self, page: Page, pitch: Pitch, at: Corner, table: RunTable) -> None:
        """Read the small runs below a table and what each adds."""
        named_by, added_by = self.names.tables.small
        seen = self._seen(pitch, table.kind, SMALL)
        for names, figures_ in zip(page.lines, page.lines[1:], strict=False):
            if (names[0].text, figures_[0].text) != (named_by, added_by):
                continue
            heads = list(cells_of(names))
            for head, printed in zip(heads, stand_under(heads, figures_), strict=True):
                run = read(head.text)
                if run is not None:
                    seen[run] = page.number
                    self._figure(
                        page, pitch, named_by, head.text, printed, *self._told(length(at, table.kind, run))
                    )

    def _list(self, page: Page, pitch: Pitch, at: Corner, title: Phrase) -> None:
        found, kinds = laid(page, title.base, paired=False), dict(self.names.tables.run_list.columns)
        self._of(page, pitch)
        if (
            not found
            or found.corner != self.names.tables.run_list.corner
            or not {head.text for head in found.heads} <= set(kinds)
        ):
            self.found.faults.append(Fault('pitch', page.number, title.text, '', '', ''))
            return
        added = title.text == self.names.tables.run_list.titles[1]
        for label, cells in found.rows:
            run = read_run(label)
            for head, printed in zip(found.heads, cells, strict=True):
                if run is None:
                    self._figure(page, pitch, label, head.text, printed, '')
                    continue
                kind = kinds[head.text]
                self._seen(pitch, kind, SMALL if added else '')[run] = page.number
                self._figure(page, pitch, label, head.text, printed, *self._told(length(at, kind, run)))

    def _jacks(self, page: Page, pitch: Pitch, at: Corner, title: Phrase) -> None:
        found, columns = laid(page, title.base, paired=False), dict(self.names.tables.jacks.columns)
        self._of(page, pitch)
        spacings = (
            [self.book.exactly(self._inches(found.group(head))) for head in found.heads] if found else []
        )
        if (
            not found
            or found.corner != self.names.tables.jacks.corner
            or not {head.text for head in found.heads} <= set(columns)
        ):
            self.found.faults.append(Fault('pitch', page.number, title.text, '', '', ''))
            return
        for label, cells in found.rows:
            for head, spacing, printed in zip(found.heads, spacings, cells, strict=True):
                if not spacing or not label.isdigit():
                    self._figure(page, pitch, label, head.text, printed, '')
                    continue
                kind, head_said = columns[head.text], f'{named(spacing)}, {head.text}'
                seen = self._seen(pitch, kind, named(spacing))
                row = f'{self.names.tables.jacks.corner} {label}'
                value = at.jack(int(label), spacing)[kind]
                if int(label) * spacing > self.book.runs.last or value <= 0:
                    if printed:
                        self._figure(page, pitch, row, head_said, printed, '')
                    continue
                seen[Fraction(int(label))] = page.number
                self._figure(page, pitch, row, head_said, printed, *self._told(value))

    def _wanted(self, pitch: Pitch, kind: str, more: str) -> Iterator[Fraction]:
        """Yield the runs, or the numbers of jacks, that there should be."""
        spacing = self.book.exactly(more)
        if spacing:
            at = corner(pitch.slope, self.book.boards or ANY_BOARDS)
            count = int(self.book.runs.last // spacing)
            yield from (Fraction(n) for n in range(1, count + 1) if at.jack(n, spacing)[kind] > 0)
        else:
            yield from self.book.small_runs if more else self.book.every_run

    def _told(self, inches: Decimal) -> list[str]:
        """Return the ways in which a length may be told; in feet and inches a table leaves the inches unmarked."""
        per = self.book.per
        if not self.book.in_feet:
            return [written(inches, per)]
        return [
            written(inches, per, True).removesuffix('″'),
            written(inches, per, True),
            written(inches, per),
        ]

    def _figure(self, page: Page, pitch: Pitch, row: str, head: str, printed: str, *right: str) -> None:
        self.found.figure(page.number, f'{called(pitch)}, {row}', head, printed, *right)
