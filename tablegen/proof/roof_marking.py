"""Reading the marking sheets: every mark from both ends of the board, its cuts, its bird's mouth, its steps."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from tablegen.proof.digits import SLACK
from tablegen.proof.page import close
from tablegen.proof.roof_boards import Boards, barges_of, boards_of, few_steps, place_of
from tablegen.proof.roof_facts import read_facts
from tablegen.proof.roof_reading import Reading, marks_of
from tablegen.proof.sentences import told, told_within
from tablegen.proof.sheet_lines import Row, Sheet, Table, facts_in, tables_in

Numbers = dict[int, tuple[str, str]]
"""What the numbers of a board's marks are."""


def read_marking(sheet: Sheet, it: Reading) -> None:
    """Read one sheet."""
    marks = marks_of(sheet.title)
    hand = _hand(sheet, it)
    boards = {mark: board for mark in marks if (board := boards_of(mark, it, hand)) is not None}
    if len(boards) < len(marks):
        it.strange(sheet.page, sheet.title)
        return
    it.found.read |= sheet.pages
    _title(sheet, marks, boards[marks[-1]], it)
    lines = sheet.lines
    tables = {table.heads: table for table in tables_in(lines)}
    name = it.names.heads
    rows = next((one for heads, one in tables.items() if name['name'] in heads), None)
    few = next((one for heads, one in tables.items() if name['few-overall'] in heads), None)
    lead = boards[marks[-1]]
    numbers = _marks(sheet, rows, few is not None, lead, it) if rows else {}
    if few:
        _few(few, boards, numbers, it)
        column = few.column(name['mark']) or 0
        there = {row.cells[column + 1] for row in few.rows}
        for mark in boards:
            if mark not in there:
                it.missing(sheet.page, mark)
    else:
        _single(sheet, marks, lead, it)
    read_facts(sheet.page, sheet.title, facts_in(lines), marks, lead, few is None, hand, numbers, it)


def _title(sheet: Sheet, marks: Sequence[str], lead: Boards, it: Reading) -> None:
    """Hold what stands beside the marks against them: what they are, the pitch of their slopes, their stock."""
    names = lead.corner.slopes if lead.corner else {one.slope.name for one in it.stood.get(marks[-1], [])}
    names = names or {name for name, _board in barges_of(marks[-1], it)}
    pitches = dict.fromkeys(one.pitch for one in it.roof.slopes if one.name in names)
    kinds = dict.fromkeys(it.kinds.get(mark, '') for mark in marks)
    stock = it.asked.word(lead.stock)
    right = [f'{it.row(kinds)}, {it.pitches(some)}, {stock}' for some in (list(pitches), list(pitches)[::-1])]
    it.figure(sheet.page, sheet.title, '', sheet.more, *right)


def _hand(sheet: Sheet, it: Reading) -> str:
    """Return the one hand of all boards of a sheet, where it is of one."""
    words = close(sheet.lines[0][1]) if sheet.lines else ''
    there = [hand for hand in it.names.hands if hand in words.split()]
    return there[0] if len(there) == 1 else ''


def _marks(sheet: Sheet, table: Table, varied: bool, board: Boards, it: Reading) -> Numbers:
    """Read the marks of a board; return what each number is."""
    name = it.names.heads
    columns = [table.column(name[one]) for one in ('name', 'first', 'last')]
    numbers: Numbers = {}
    there: list[Decimal] = []
    for row in table.rows:
        told_name, upper, lower = (row.cells[(column or 0) + 1] for column in columns)
        if row.cells[0] == 'c':
            _center(row.page, told_name, upper, board, it)
            continue
        if not row.cells[0].isdigit() and row.cells[0]:
            break  # what is said of the cuts begins
        where = it.names.marks.get(told_name)
        if where is None:
            it.strange(row.page, f'{row.cells[0]} {told_name} {upper} {lower}')
            continue
        there.append(place_of(board.one, where))
        if row.cells[0]:
            numbers[int(row.cells[0])] = where
        for head, printed, tape in ((name['first'], upper, from_first), (name['last'], lower, from_last)):
            if not (varied and printed == it.names.below):
                it.length(row.page, f'{sheet.title}: {told_name}', head, printed, *tape(board, where))
    if sorted(numbers) != list(range(1, len(numbers) + 1)):
        it.missing(sheet.page, sheet.title)
    wanted = {(end, 'center') for end in ('head', 'tail')}
    if board.one.height is not None:
        wanted.add(('plate', 'center'))
    timber = board.one
    ends = timber.reach(timber.head), timber.reach(timber.tail, False)
    reached = (max(there), min(there)) if there else (ends[1], ends[0])
    to_both_ends = all(abs(one - end) < SLACK for one, end in zip(reached, ends, strict=True))
    if not (wanted <= set(numbers.values()) and to_both_ends):
        it.missing(sheet.page, sheet.title)
    return numbers


def _center(page: int, row: str, printed: str, board: Boards, it: Reading) -> None:
    timber = board.one
    assert timber.center
    line = timber.to(timber.center)
    assert line is not None
    off = line - timber.reach(timber.head)
    sentence = it.names.sentences['before' if off > 0 else 'on']
    words = told(sentence, printed)
    it.length(page, row, sentence.partition('}')[2].strip(), words['length'] if words else '', abs(off))


def _single(sheet: Sheet, marks: Sequence[str], board: Boards, it: Reading) -> None:
    """Read how long the board is that one is cut from, and how many there are."""
    for page, line in sheet.lines[:4]:
        found = told_within(it.names.sentences['cut-from'], close(line))
        if found:
            head = it.names.sentences['cut-from'].partition(' {')[0]
            it.length(page, sheet.title, head, found['length'], *board.each(lambda one: one.stick), up=True)
            return
    it.missing(sheet.page, sheet.title)


def _few(table: Table, boards: dict[str, Boards], numbers: Numbers, it: Reading) -> None:
    """Read the table of members that differ in length."""
    name = it.names.heads
    for row in table.rows:
        cells = dict(zip(table.heads, row.cells[1:], strict=True))
        mark = cells.get(name['mark'], '')
        board = boards.get(mark)
        if board is None:
            continue  # what is said of the cuts, or a mark that is then missing
        for head, printed in cells.items():
            if head in (name['mark'], *it.names.hands, name['number']):
                continue
            _cell(row, mark, head, printed, board, numbers, it)


def _cell(row: Row, mark: str, head: str, printed: str, board: Boards, numbers: Numbers, it: Reading) -> None:
    name = it.names.heads
    if head == name['few-cut-from']:
        it.length(row.page, mark, head, printed, *board.each(lambda one: one.stick), up=True)
    elif head == name['few-overall']:
        it.length(row.page, mark, head, printed, *board.each(lambda one: one.overall))
    elif head == name['few-steps']:
        it.figure(row.page, mark, head, printed, *few_steps(board, it))
    else:
        first, last = told(name['few-first'], head), told(name['few-last'], head)
        number = (first or last or {}).get('number', '')
        where = numbers.get(int(number)) if number.isdigit() else None
        if where is None:
            it.strange(row.page, f'{mark} {head} {printed}')
            return
        tape = from_first if first else from_last
        it.length(row.page, mark, head, printed, *tape(board, where))


def from_first(board: Boards, where: tuple[str, str]) -> list[Decimal]:
    """Return how far a mark is from the first point of the board."""
    return board.each(lambda one: one.reach(one.head) - place_of(one, where))


def from_last(board: Boards, where: tuple[str, str]) -> list[Decimal]:
    """Return how far it is from its last point."""
    return board.each(lambda one: place_of(one, where) - one.reach(one.tail, False))
