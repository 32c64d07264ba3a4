"""Reading the pages that say a few figures in sentences and rows: an old roof's pitch, the square's arms, how a length is read, whether a square is true."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from decimal import Decimal
from fractions import Fraction
from functools import partial

from tablegen.proof.digits import FOOT_IN, arctangent, decimals, named, nearest, pi, read, real, written
from tablegen.proof.drawn import labelled, labels, level_with
from tablegen.proof.figures import figures, length
from tablegen.proof.found import Fault, Found
from tablegen.proof.names import SaidPage, Sentence
from tablegen.proof.page import Page, close
from tablegen.proof.roof import ANY_BOARDS, Corner, corner
from tablegen.proof.roof_reading import value_of
from tablegen.proof.roof_stated import Unstated, inches_of
from tablegen.proof.said_prose import ADDED, COUNTED, IN_SOME, added, counts, past_ridge, prose_answers
from tablegen.proof.sentences import told_within
from tablegen.proof.stated import Pitch, Stated, called, pitch_of
from tablegen.proof.worked_lines import cells_of
from tablegen.proof.worked_roof import Form

TURNED_OVER_AT, BODY, WALL, EXCESS, FINE = 16, 24, 144, Fraction(1, 32), 32
"""in, where a gap is measured, a square's body, 12 ft of wall, and what a diagonal is too long by; parts of an inch."""
OLD = 'existing'
"""A roof that stands, of whatever pitch."""
MARKS = re.compile(r'(\d+) & (\d+)')
SUM = 'sum-'
"""What begins the name of a length that is looked up, before what it is of."""
Answers = dict[str, tuple[str, ...]]


class SaidReader:
    """Reads all of them."""

    def __init__(self, pages: tuple[SaidPage, ...], book: Stated):
        self.pages, self.book, self.found = {one.title: one for one in pages}, book, Found()
        self.pages_there, self.last = 0, 0
        """How many pages there are, and how many of them end a section."""
        self.at_end: list[Callable[[], None]] = []
        self.form, self.tabled, self.of = Form(book), False, 'common'

    def page(self, page: Page) -> None:
        """Read a page, if it is one."""
        self.pages_there = page.number
        title = next(iter(page.phrases), None)
        kind = self.pages.get(title.text) if title and page.folio else None
        if kind is None:
            return
        self.found.read.add(page.number)
        lines = [close(line) for line in page.lines[1:]]
        said = list(self._said(page, kind, ' '.join(lines)))
        pitches = [told['pitch'] for _one, told in said if 'pitch' in told]
        for printed in pitches:
            self._figure(page, kind.title, '', printed, printed if pitch_of(printed) else '')
        at = pitch_of(pitches[0]) if pitches else None
        if at is not None and (
            not at.number or (kind.kind != OLD and self.book.pitches and at not in self.book.pitches)
        ):
            self._figure(page, kind.title, '', called(at), '')
            at = None
        looked_up = (name for _one, told in said for name in told if name.startswith(SUM))
        self.of = next(looked_up, f'{SUM}common').removeprefix(SUM)
        answers = self._answers(at, {name: word for _one, told in said for name, word in told.items()})
        for sentence, told in said:
            head = sentence.words.partition('{')[0].strip(' ,;:.')
            for name, printed in told.items():
                if name in answers:
                    self._figure(page, kind.title, head, printed, *answers[name])
        self._drawn(page, kind, answers)
        rows = {'square': self._square, 'stepping': self._stepping, 'reading': self._reading}
        rows |= dict.fromkeys(ADDED, self._numbers)
        if kind.kind in COUNTED:
            self._counts(page, kind, ' '.join(lines))
        if kind.kind in rows and (at or kind.kind == 'square'):
            self.tabled = any('tabled' in told for _one, told in said)
            seen = list(rows[kind.kind](page, at))
            if kind.rows and tuple(seen) != kind.rows:
                self._fault(page, 'gap', f'{kind.title}, {"; ".join(sorted(set(kind.rows) ^ set(seen)))}')

    def end(self) -> None:
        """Hold what is counted against what is there."""
        for one in self.at_end:
            one()

    def _figure(self, page: Page, row: str, head: str, printed: str, *right: str) -> None:
        self.found.figure(page.number, row, head, printed, *right)

    def _fault(self, page: Page, kind: str, row: str) -> None:
        if self.book.translated:  # its rows may stand in more lines
            self.found.strange.append((page.number, row))
            return
        self.found.faults.append(Fault(kind, page.number, row, '', '', ''))

    def _said(self, page: Page, kind: SaidPage, words: str) -> Iterator[tuple[Sentence, dict[str, str]]]:
        """Yield the sentences that stand there; of each group one must, of one that is called by a heading where that is."""
        wanted = {one.sets for one in kind.sentences if one.sets} - {IN_SOME}
        wanted -= {name for name in wanted if ' ' in name and not page.named(name)}
        for sentence in kind.sentences:
            told = told_within(sentence.words, words)
            if told is not None:
                wanted.discard(sentence.sets)
                names = dict(sentence.places)
                yield sentence, {names.get(name, name): printed for name, printed in told.items()}
            elif not sentence.sets:
                self._fault(page, 'words', f'{kind.title}: {sentence.words}')
        for group in wanted:
            self._fault(
                page,
                'words',
                f'{kind.title}: {next(one.words for one in kind.sentences if one.sets == group)}',
            )

    # What is right ----------------------------------------------------------------------------------------------

    def _answers(self, at: Pitch | None, told: dict[str, str]) -> Answers:
        found: Answers = prose_answers(self.book.per)
        if self.book.boards:
            found |= past_ridge(self.book.boards, self.form)
        if at is not None:
            found |= self._of_pitch(at, told)
        between = read(told.get('between', ''))
        if between is not None:
            squares = Fraction(FOOT_IN**2), between**2
            found |= {
                'squared': (' + '.join(f'{float(one):g}' for one in squares),),
                'between-foot': (decimals(real(sum(squares, Fraction(0))).sqrt(), 3),),
            }
        return found

    def _of_pitch(self, at: Pitch, told: dict[str, str]) -> Answers:
        boards = self.book.boards or ANY_BOARDS
        known, slope = figures(corner(at.slope, boards), self.book), corner(at.slope, boards)
        held = {name: f'{known[f"{name}-body"]} & {known[f"{name}-tongue"]}' for name in ('common', 'hip')}
        step = self._step(slope)
        found: Answers = {
            'pitch': (called(at),),
            'rise': (named(at.number),),
            'common': (held['common'],),
            'hip': (held['hip'],),
            'cheek': (known['jack-cheek-top-held'],),
            'cheek-top': (known['jack-cheek-top'],),
            'plumb-cut': (known['common-plumb-cut'],),
            'body': (known['common-body'],),
            'tongue': (known['common-tongue'],),
            'step': (written(step, self.book.per),),
            'step-run': (known['step'],),
        }
        run = _inches(told.get('run', ''))
        odd = _inches(told.get('odd-run', '')) or run
        if run is None or odd is None:
            return found
        exact = (
            known[f'{self.of}-exact-foot'],
            known[f'{self.of}-per-foot'],
            f'{Decimal(known[f"{self.of}-exact-foot"]):.4f}',
        )
        foot = told.get('foot', exact[0])
        product = Decimal(decimals(real(odd) / FOOT_IN * Decimal(foot if foot in exact else exact[0]), 3))
        past = product % 1
        return found | {
            'foot': exact,
            'inches': (f'{float(odd):g}',),
            'product': (decimals(product, 3),),
            'past': (decimals(past, 3),),
            'per': (str(self.book.per),),
            'parts': (str(nearest(past, self.book.per)),),
            'length': self._in_prose(length(slope, self.of, run)),
            f'{SUM}{self.of}': self._summed(slope, run, 'tabled' in told),
        }

    def _step(self, slope: Corner) -> Decimal:
        run = value_of(figures(slope, self.book)['step']) or Decimal(FOOT_IN)
        return slope.step_length(run)

    def _in_prose(self, value: Decimal) -> tuple[str, ...]:
        found = self.form.length(value)
        return (*found, *(f'{one} in' for one in found))

    def _summed(
        self, slope: Corner, run: Fraction, tabled: bool, read: Sequence[Fraction] = ()
    ) -> tuple[str, ...]:
        """Return what the runs above it make when each is rounded; else its feet, inches and part, or a tabled run and what is left."""
        rest = run % (self.book.runs.step if tabled else FOOT_IN)
        finer = rest % Fraction(1, self.book.coarse) if tabled else Fraction(0)
        parts = read or (run - rest, Fraction(rest // 1), rest % 1 - finer, finer)
        count = sum(nearest(length(slope, self.of, one), self.book.per) for one in parts)
        return self._in_prose(Decimal(count) / self.book.per)

    # Rows ---------------------------------------------------------------------------------------------------------

    def _drawn(self, page: Page, kind: SaidPage, answers: Answers) -> None:
        """Read the figures in its drawing."""
        is_known = page.is_drawn and not self.book.translated
        found = labels(page) if kind.drawn and is_known else []
        for label, names in kind.drawn if found else ():
            told_there = labelled(found, label) if '{' in label else [level_with(found, label)]
            for n, name in enumerate(names):
                printed = told_there[n] if len(told_there) == len(names) else ''
                if name in answers:
                    self._figure(page, kind.title, label, printed, *answers[name])

    def _counts(self, page: Page, kind: SaidPage, words: str) -> None:
        """Read how many pages and sections the book has; each section ends with what is said once more."""
        self.last += kind.kind == 'closing'
        for place, head, printed in counts(kind, words):
            self.at_end.append(partial(self._count, page.number, kind.title, head, printed, place))

    def _count(self, page: int, row: str, head: str, printed: str, place: int) -> None:
        self.found.figure(page, row, head, printed, f'{(self.pages_there, self.last)[place]:,}')

    def _numbers(self, page: Page, at: Pitch | None) -> Iterator[str]:
        """Read two lengths, their sum, and the length of both runs."""
        assert at
        slope = corner(at.slope, self.book.boards or ANY_BOARDS)
        kind = next(one for one in self.pages.values() if one.kind in ADDED and page.named(one.title))
        for label, printed, value in added(page, kind, slope, self.book.per):
            self._figure(page, label, '', printed, *self._in_prose(value))
            yield label

    def _reading(self, page: Page, at: Pitch | None) -> Iterator[str]:
        """Read the runs that are added and what they make."""
        assert at
        slope = corner(at.slope, self.book.boards or ANY_BOARDS)
        read: list[Fraction] = []
        for line in page.lines:
            cells = [close(cell) for cell in cells_of(line)]
            run = (
                _inches(cells[0])
                if len(cells) == 2 and all(word.bold for word in cells_of(line)[1])
                else None
            )
            if run is not None:
                parts = read if sum(read) == run else []
                read = [] if line[0].bold else [*read, run]
                right = (
                    self._summed(slope, run, self.tabled, parts)
                    if line[0].bold
                    else self._in_prose(length(slope, self.of, run))
                )
                self._figure(page, cells[0], '', cells[1], *right)
                yield cells[0]

    def _stepping(self, page: Page, at: Pitch | None) -> Iterator[str]:
        """Read where the marks of steps go, and how far steps as they are set miss them."""
        assert at
        step = self._step(corner(at.slope, self.book.boards or ANY_BOARDS))
        rounded = Decimal(nearest(step, self.book.per)) / self.book.per
        seen: list[int] = []
        for line in page.lines:
            cells = [close(cell) for cell in cells_of(line)]
            for place in range(0, len(cells) - 2, 3) if line[0].bold and len(cells) % 3 == 0 else ():
                number, mark, off = cells[place : place + 3]
                if number.isdigit():
                    count = int(number)
                    seen.append(count)
                    self._figure(page, number, '', mark, written(step * count, self.book.per))
                    self._figure(page, number, '±', off, *self.form.off((rounded - step) * count))
        yield from map(str, sorted(seen))

    def _square(self, page: Page, _at: Pitch | None) -> Iterator[str]:
        """Read what gaps of the test with the square turned over tell, and diagonals between its own marks."""
        gaps: list[str] = []
        marks: list[str] = []
        for line in page.lines:
            cells = [close(cell) for cell in cells_of(line)]
            if '/' in cells[0] and len(cells) > 3 and cells[1].endswith('°'):
                gaps.append(cells[0])
                self._gap(page, *cells[:4])
            for n, cell in enumerate(cells[:-2]):
                if found := MARKS.fullmatch(cell):
                    marks.append(cell)
                    self._diagonal(page, (int(found[1]), int(found[2])), cells[n + 1], cells[n + 2])
        yield from (*gaps, *marks)

    def _gap(self, page: Page, gap: str, out: str, in_body: str, in_wall: str) -> None:
        far = value_of(gap) or Decimal(0)
        lean = far / 2 / TURNED_OVER_AT
        self._figure(page, gap, '°', out, f'{decimals(arctangent(lean) * 180 / pi(), 3)}°')
        for printed, far_off in ((in_body, BODY), (in_wall, WALL)):
            self._figure(page, gap, f'{far_off} in', printed, decimals(lean * far_off, 3))

    def _diagonal(self, page: Page, marks: tuple[int, int], long: str, out: str) -> None:
        a, b = map(Decimal, marks)
        row, true = f'{a} & {b}', (a * a + b * b).sqrt()
        past = (true + real(EXCESS)) ** 2 - a * a - b * b
        self._figure(page, row, '', long, written(true, max(self.book.per, FINE)))
        self._figure(page, row, f'{BODY} in', out, decimals(past / (2 * a * b) * BODY, 3))


def _inches(words: str) -> Fraction | None:
    try:
        return inches_of(words)
    except Unstated:
        return None
