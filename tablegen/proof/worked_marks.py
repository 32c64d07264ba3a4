"""Reading the marks of a worked example's board, and the table of its jacks."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from decimal import Decimal

from msgspec import Struct, field

from tablegen.proof import worked_boards as build
from tablegen.proof.digits import nearest
from tablegen.proof.found import Fault, Found
from tablegen.proof.names import Example, ExampleNames
from tablegen.proof.page import Page
from tablegen.proof.places import Places
from tablegen.proof.roof import corner
from tablegen.proof.roof_boards import place_of
from tablegen.proof.stated import Stated
from tablegen.proof.timber import Timber
from tablegen.proof.worked_figures import jack_row, lacks_first_jack
from tablegen.proof.worked_lines import Marked, Worked
from tablegen.proof.worked_member import Answers
from tablegen.proof.worked_roof import Form, Roof, stated_sizes, station
from tablegen.proof.worked_slopes import both_slopes

NUMBERED = {'zero': ('line', ''), 'plate': ('plate', '')}
"""Marks that are named by their numbers."""
UPPER, FIRST_MARKS = ('line', 'head'), 2
"""The upper end of a board, and how many marks are there at least."""
ENDS = ({'line', 'plate'}, {'head', 'tail'})
Numbers = Mapping[int, tuple[str, str]]


class State(Struct):
    """What goes on from page to page."""

    book: Stated
    names: ExampleNames
    places: Places
    found: Found
    numbers: Numbers = field(default_factory=dict)
    """Where on the board the numbers of its marks are."""
    pending: list[Callable[[Numbers], None]] = field(default_factory=list)
    """What is to be held against them once they are read."""
    at_end: list[Callable[[], None]] = field(default_factory=list)
    """What is to be looked up once all pages are read."""

    def begin(self) -> None:
        """Begin another member."""
        self.numbers = {}
        self.pending.clear()

    def know(self, numbers: Numbers) -> None:
        """Take the numbers of a board's marks, and hold against them what waits for them."""
        self.numbers = numbers
        for one in self.pending:
            one(numbers)
        self.pending.clear()


class Beside:
    """What one page has besides sentences.

    Given:
        mark  what its rafter is called, where its title says it
        lead  what its roof is called, '' for the garden store
    """

    def __init__(
        self,
        state: State,
        page: Page,
        title: str,
        example: Example,
        worked: Worked,
        roof: Roof,
        mark: str,
        lead: str,
    ):
        self.state, self.page, self.title, self.example, self.worked = state, page, title, example, worked
        self.roof, self.mark, self.lead, self.found, self.form = (
            roof,
            mark,
            lead,
            state.found,
            Form(state.book),
        )
        self.sizes = stated_sizes(state.book)
        self.known: tuple[object, Answers] = (None, {})

    def _fault(self, kind: str, row: str, head: str = '', printed: str = '') -> None:
        self.found.faults.append(Fault(kind, self.page.number, row, head, printed, ''))

    def _figure(self, row: str, head: str, printed: str, *right: str) -> None:
        self.found.figure(self.page.number, row, head, printed, *right)

    def _marks(self) -> None:
        names = {name for name, _where in self.example.marks}
        for mark in [one for one in self.worked.marks if one.name not in names]:
            self._fault('words', f'{self.title}, {mark.number}, {mark.name}')
            self.worked.marks.remove(mark)
        where = {mark.number: self._where(mark) for mark in self.worked.marks}
        numbers = {_number(number): one for number, one in where.items()}
        board = self._board()
        if board is None:
            self.found.strange.append((self.page.number, self.title))
            return
        out = heel_out(self.roof)
        for mark in self.worked.marks:
            value = place(board, where[mark.number], out)
            self._figure(
                f'{self.title}, {mark.number}',
                mark.name,
                mark.figure.replace('− ', '−'),
                *self.form.length(value),
            )
        order = [place(board, numbers[n], out) for n in sorted(numbers)]
        told = {end for end, _across in numbers.values()}
        if (
            order != sorted(order)
            or not all(some <= told for some in ENDS)
            or len(numbers) < len(self.worked.marks)
        ):
            self._fault('gap', self.title)
        self.state.know(numbers)
        if self.page.is_drawn and not self.state.book.translated:
            self._drawn_board(board, numbers)

    def _drawn_board(self, board: Timber, numbers: Numbers) -> None:
        """Read what its drawing tells."""

    def _board(self) -> Timber | None:
        """Return the board whose marks are shown; None where too little is told of its roof."""
        try:
            return boards_of(self.roof)[self.mark if self.mark in self.roof.words.values() else '']
        except (LookupError, ValueError, ArithmeticError):
            return None

    def _where(self, mark: Marked) -> tuple[str, str]:
        """Return where a mark is; a purlin stands above one rafter and below the other, and is called alike."""
        found = [where for name, where in self.example.marks if name == mark.name]
        upper = [one for one in found if one[0] in UPPER]
        return (upper or found)[0] if int(mark.number) <= FIRST_MARKS else found[-1]

    def _number(self, row: str, head: str, name: str, printed: str, numbers: Numbers) -> None:
        """Hold the number of a mark against what that mark is."""
        if name in NUMBERED:
            right = [str(n) for n, where in numbers.items() if where == NUMBERED[name]]
        else:
            cut = sorted(n for n, (end, _across) in numbers.items() if end in ('head', 'tail'))
            right = [str(cut[0] if name == 'mark-first' else cut[-1])] if cut else []
        self._figure(row, head, printed, *(right or ['']))

    def _apart(self, row: str, head: str, printed: str, numbers: Numbers) -> None:
        """Hold what the first and the last mark are apart against both as they are printed."""
        board = self._board()
        cut = [where for _n, where in sorted(numbers.items()) if where[0] in ('head', 'tail')]
        if board is None or not cut:
            return
        first, last = (nearest(place(board, where), self.form.per) for where in (cut[0], cut[-1]))
        self._figure(
            row, head, printed.removesuffix(' in'), *self.form.length(Decimal(last - first) / self.form.per)
        )

    def _rows(self) -> None:
        """Read the table of jacks."""
        kinds = dict(self.example.heads)
        if not set(self.worked.heads) <= set(kinds):
            self._fault('pitch', self.title)
            return
        columns = [kinds[head] for head in self.worked.heads][-len(self.worked.rows[0][1]) :]
        for label, cells in self.worked.rows:
            try:
                right = jack_row(self.roof, label)
            except (LookupError, ValueError, ArithmeticError):
                self.found.strange.append((self.page.number, f'{label} {" ".join(cells)}'))
                continue
            for of, head, printed in zip(columns, self.worked.heads[-len(columns) :], cells, strict=False):
                self._figure(f'{self.title}, {label}', head, printed, *right.get(of, ('',)))
        labels = [int(label) for label in self.roof.jacks if label.isdigit()]
        if labels and labels != list(range(labels[0], labels[0] + len(labels))):
            self._fault('gap', f'{self.title}, {labels}')
        if labels and 'spacing' in self.roof.given and lacks_first_jack(self.roof):
            self._fault('gap', f'{self.title}, {self.roof.jacks[0]}')


def _number(words: str) -> int:
    digits = re.search(r'\d+$', words)
    return int(digits[0]) if digits else 0


def boards_of(roof: Roof) -> dict[str, Timber]:
    """Return the boards whose marks are shown, by what they are called; '' where it is one."""
    roof.settle()
    slope = roof.pitches['pitch'].slope if 'pitch' in roof.pitches else Decimal(1)
    at = corner(slope, roof.boards)
    match roof.kind:
        case 'common' | 'shed':
            return {'': build.rafter(slope, roof.given, roof.boards)}
        case 'hip':
            return {'': build.hip(at, roof.given, roof.stop)}
        case 'valley':
            return {'': build.valley(at, roof.given)}
        case 'jacks':
            return {'': build.jack(at, station(roof, roof.jacks[-1]), roof.given['overhang'])}
    return dict(zip((roof.words['first'], roof.words['second']), both_slopes(roof), strict=True))


def place(board: Timber, where: tuple[str, str], heel: Decimal = Decimal(0)) -> Decimal:
    """Return how far a mark is from the line that all are told from, along the top edge.

    Given:
        heel  how far out of the plates' corner a valley's heel stands, level
    """
    assert board.center
    line = board.to(board.center) or Decimal(0)
    match where[0]:
        case 'line':
            return Decimal(0)
        case 'heel':
            return line + heel / board.flat
    return line - place_of(board, where)


def heel_out(roof: Roof) -> Decimal:
    """Return how far a valley's heel stands out of the plates' corner, level."""
    if roof.kind != 'valley':
        return Decimal(0)
    return corner(roof.pitches['pitch'].slope, roof.boards).valley_out()
