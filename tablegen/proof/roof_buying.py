"""Reading what is bought for a roof: what is cut from each board goes into it, kerfs with it, and all pieces are cut."""

from __future__ import annotations

from collections import Counter
from decimal import Decimal
from fractions import Fraction
from math import ceil

from tablegen.proof.digits import SLACK, decimals, real
from tablegen.proof.page import Line, close
from tablegen.proof.roof_reading import Reading, plain, run_told
from tablegen.proof.roof_stated import Unstated, inches_of
from tablegen.proof.sentences import told, told_within
from tablegen.proof.sheet_lines import Row, Sheet, tables_in

SHEET_FT2, BOARD_FOOT = 4 * 8, 12
"""Square feet of a sheet; inches of a foot, and square inches of a board foot's face a foot long."""
SAME = ' × '


def read_buying(sheet: Sheet, it: Reading) -> None:
    """Read it."""
    it.found.read |= sheet.pages
    cut: Counter[str] = Counter()
    feet = Fraction(0)
    lines = list(sheet.lines)
    for heading, some in _sizes(sheet, it):
        stock, boards = heading
        rows = [row for table in tables_in(some) for row in table.rows]
        bought: Counter[Fraction] = Counter()
        for row in rows:
            it.found.read.add(row.page)
            number, long = _board(row, cut, it)
            bought[long] += number
        feet += _bought(some[0][0] if some else sheet.page, stock, boards, bought, it)
    for mark, count in it.counts.items():
        it.figure(sheet.page, mark, it.names.heads['pieces'], str(cut[mark]), str(count))
    words = ' '.join(close(line) for _page, line in lines)
    found = told_within(it.names.sentences['feet'], words) or {}
    it.figure(lines[-1][0] if lines else sheet.page, '', it.names.sentences['feet'].partition(':')[0], found.get('feet', ''), decimals(real(feet), 1))  # fmt: skip
    _sheathing(sheet, words, it)


def _sizes(sheet: Sheet, it: Reading) -> list[tuple[tuple[str, dict[str, str]], list[tuple[int, Line]]]]:
    """Return what stands under each size that is bought."""
    found: list[tuple[tuple[str, dict[str, str]], list[tuple[int, Line]]]] = []
    for heading, lines in sheet.parts():
        told_words = told(it.names.sentences['buy'], heading)
        if told_words:
            found.append(((told_words['stock'], told_words), lines))
    return found


def _board(row: Row, cut: Counter[str], it: Reading) -> tuple[int, Fraction]:
    """Read the boards of one row: how many, how long; take down what is cut from them."""
    number, length, left, pieces = row.cells[1:5]
    count = int(number) if number.isdigit() else 0
    try:
        long = inches_of(length)
    except Unstated:
        it.figure(row.page, pieces, it.names.heads['length'], length, '')
        return count, Fraction(0)
    sums, number_cut = {Decimal(0)}, 0
    for mark, times, part in _pieces(pieces, it):
        lengths = (it.sticks.get(mark) or [Decimal(0)]) if part is None else [part[1]]
        for _piece in range(times):
            sums = {whole + one for whole in sums for one in lengths}
        number_cut += times
        cut[mark] += times * count * (part is None or part[0] == 1)
    kerf = real(it.asked.inches('buy.kerf'))
    overs = [_left(real(long) - whole, kerf, number_cut) for whole in sums]
    right = [one for over in overs for one in it.told(over)]
    it.figure(row.page, pieces, it.names.heads['left'], left, *right)
    if long not in it.asked.lengths:
        it.figure(row.page, pieces, it.names.heads['length'], length, '')
    return count, long


def _left(whole: Decimal, kerf: Decimal, pieces: int) -> Decimal:
    """Return what is left of a board: a kerf goes with every piece but one that ends at the board's end."""
    over = whole - kerf * pieces
    return Decimal(0) if -kerf - SLACK <= over < 0 else over


def _pieces(words: str, it: Reading) -> list[tuple[str, int, tuple[int, Decimal] | None]]:
    """Return the mark and the number of each piece, and of a part of one which part it is and how long."""
    found: list[tuple[str, int, tuple[int, Decimal] | None]] = []
    told_words = words.split(', ')
    while told_words:
        one = told_words.pop(0)
        part = told(it.names.sentences['part'], f'{one}, {told_words[0]}') if told_words else None
        if part is None or not part['part'].isdigit():
            found.append((*_times(one), None))
            continue
        told_words.pop(0)
        found.append((*_times(part['mark']), (int(part['part']), real(inches_of(plain(part['length']))))))
    return found


def _times(words: str) -> tuple[str, int]:
    number, times, mark = words.partition(SAME)
    return (mark, int(number)) if times and number.isdigit() else (words, 1)


def _bought(
    page: int, stock: str, told_words: dict[str, str], bought: Counter[Fraction], it: Reading
) -> Fraction:
    """Hold what is bought of a size against what is cut; return its board feet, by nominal size."""
    row = f'{stock}'
    counts = [
        it.names.sentences['a-board'].format(number=bought[one], length=run_told(one))
        for one in sorted(bought, reverse=True)
    ]
    it.figure(page, row, '', told_words['boards'], ', '.join(counts))
    together = sum((long * count for long, count in bought.items()), Fraction(0))
    it.figure(page, row, '', told_words['together'], run_told(together))
    thick, _times_sign, deep = stock.partition('×')
    if not (thick.isdigit() and deep.isdigit()):
        return Fraction(0)
    return together / BOARD_FOOT * int(thick) * int(deep) / BOARD_FOOT


def _sheathing(sheet: Sheet, words: str, it: Reading) -> None:
    sentence = it.names.sentences['sheathing']
    found = told_within(sentence, words) or {}
    page = sheet.lines[-1][0] if sheet.lines else sheet.page
    area = roof_area(it) / BOARD_FOOT**2
    share = Fraction(it.asked.word('buy.allowance').removesuffix('%').strip() or 0) / 100
    more = area * (1 + real(share))
    head = sentence.partition(':')[0]
    for place, right in (
        ('area', decimals(area, 1)),
        ('more', decimals(more, 1)),
        ('sheets', str(ceil(more / SHEET_FT2 - SLACK))),
    ):
        it.figure(page, head, '', found.get(place, '').replace(',', ''), right)


def roof_area(it: Reading) -> Decimal:
    """Return the square inches of all slopes out to the eaves and barge rafters: each in plan, as much larger as it is steep."""
    return sum((one.in_plan * (1 + one.rise**2).sqrt() for one in it.roof.slopes), Decimal(0))
