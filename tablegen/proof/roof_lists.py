"""Reading a roof's lists of members, boards and studs, and what is measured before more is cut."""

from __future__ import annotations

import re
from decimal import Decimal
from fractions import Fraction

from tablegen.proof.digits import nearest, real
from tablegen.proof.page import close
from tablegen.proof.roof_boards import kind_of, timber_of
from tablegen.proof.roof_heights import heights_of
from tablegen.proof.roof_reading import Reading, plain, total, value_of
from tablegen.proof.roof_slopes import MAIN, Slope, gables, ridge_past
from tablegen.proof.roof_stated import THICK
from tablegen.proof.sentences import told, told_within
from tablegen.proof.sheet_lines import Sheet, Table, tables_in
from tablegen.proof.space import dot, meet

LENGTH = re.compile(r'(?<=[\d″]) (?=\D).*')
"""What is said after a length of how an end is sawn."""


def members_told(sheet: Sheet, it: Reading) -> None:
    """Take down what each mark is, from the list of members."""
    name = it.names.heads
    for heading, lines in sheet.parts():
        for table in tables_in(lines) if not heading else ():
            for row in table.rows:
                cells = dict(zip(table.heads, row.cells[1:], strict=True))
                it.kinds[cells.get(name['mark'], '')] = cells.get(name['kind'], '')


def read_lists(sheet: Sheet, it: Reading) -> None:
    """Read the lists of members, level boards and studs."""
    it.found.read |= sheet.pages
    for heading, lines in sheet.parts():
        for table in tables_in(lines):
            if not heading:
                _members(table, it)
            elif heading == it.names.titles['boards']:
                _boards(table, it)
            elif told(it.names.titles['studs'], heading):
                _studs(table, it)


def _members(table: Table, it: Reading) -> None:
    name, square = it.names.heads, it.asked.square
    for row in table.rows:
        it.found.read.add(row.page)
        cells = dict(zip(table.heads, row.cells[1:], strict=True))
        mark = cells.get(name['mark'], '')
        number = cells.get(name['number'], '')
        it.counts[mark] = it.counts.get(mark, 0) + total(number)
        it.sticks[mark] = _read_length(cells.get(name['cut-from'], ''))
        if it.roof is None:
            continue
        board = timber_of(mark, it)
        if board is None:
            it.strange(row.page, ' '.join(row.cells))
            continue
        is_hip = kind_of(mark, it) == 'hip'
        it.figure(row.page, mark, name['number'], number, *_count(mark, is_hip, it))
        it.figure(row.page, mark, name['stock'], cells.get(name['stock'], ''), it.asked.word('stock.hips' if is_hip else 'stock.rafters'))  # fmt: skip
        it.length(
            row.page,
            mark,
            name['cut-from'],
            cells.get(name['cut-from'], ''),
            board.stick(square),
            up=True,
        )
        it.length(row.page, mark, name['overall'], cells.get(name['overall'], ''), board.overall)
    for mark in it.stood:
        if mark not in it.counts:
            it.missing(table.rows[0].page, mark)


def _read_length(words: str) -> list[Decimal]:
    value = value_of(words)
    return [] if value is None else [value]


def _count(mark: str, is_hip: bool, it: Reading) -> list[str]:
    """Return how many of a mark there are, of each hand; where hands have rows of their own, any of them."""
    assert it.roof
    if is_hip:
        count = len(it.roof.hips)
        if not _handed(it):
            return [str(count)]
        each = [f'{count // 2} {hand}' for hand in it.names.hands]
        return [', '.join(each), *each]
    if kind_of(mark, it) == 'barge':
        return [str(2 * gables(it.roof))]
    stood = it.stood[mark]
    hands = [one.hand for one in stood]
    if not any(hands):
        return [str(len(stood))]
    letters = {hand: hand[0].upper() for hand in it.names.hands}
    return [', '.join(f'{hands.count(letter)} {hand}' for hand, letter in letters.items() if letter in hands)]


def _handed(it: Reading) -> bool:
    """Return whether a hip of one hand cannot stand for one of the other."""
    return it.asked.word('cuts.hip_heads') == 'single' or it.asked.slope('hip.end_pitch') != it.asked.slope()


def _boards(table: Table, it: Reading) -> None:
    name = it.names.heads
    for row in table.rows:
        cells = dict(zip(table.heads, row.cells[1:], strict=False))
        mark, printed = cells.get(name['mark'], ''), LENGTH.sub('', cells.get(name['sawn'], ''))
        it.counts[mark] = it.counts.get(mark, 0) + total(cells.get(name['number'], ''))
        told_length = _read_length(printed)
        it.sticks.setdefault(mark, []).extend(told_length)
        if it.roof is None:
            continue
        right = [] if mark != 'R' else [one for one in [ridge_length(it)] if one is not None]
        right += fascia_lengths(it) if mark == 'F' else []
        if not right:
            it.strange(row.page, ' '.join(row.cells))
            continue
        near = [one for one in right if told_length and abs(one - told_length[0]) < 1]
        it.sticks[mark][len(it.sticks[mark]) - len(told_length) :] = map(
            it.rounded_up, near[:1] or told_length
        )
        it.figure(
            row.page, mark, name['sawn'], printed, *(one for length in right for one in it.told(length))
        )


def ridge_length(it: Reading) -> Decimal | None:
    """Return how long the ridge is sawn; None where that is not worked out."""
    assert it.roof
    roof, out = it.roof, real(it.asked.inches('overhang.gable'))
    if it.asked.word('kind') == 'shed':
        return None
    start, end = roof.ends
    named = {one.name: one for one in roof.slopes}
    main = named['front']
    past = [ridge_past(it.asked, named[key], main) if key in named else out for key in ('left', 'right')]
    return end - start + past[0] + past[1]


def fascia_lengths(it: Reading) -> list[Decimal]:
    """Return how long fascias are: to where their outer faces' upper edges meet the next one's outer face, or over the barge
    rafters at a gable.
    """
    assert it.roof
    thick, out = real(it.asked.inches('overhang.fascia')), real(it.asked.inches('overhang.gable'))
    named, found = {one.name: one for one in it.roof.slopes}, []
    for slope in it.roof.slopes:
        ends = {
            dot(slope.along, meet(slope.tail.moved(-thick), slope.top, named[key].tail.moved(-thick)))
            for key in (('left', 'right') if slope.name in MAIN else MAIN)
            if key in named
        }
        plate = dot(slope.along, slope.origin)
        if len(ends) < 2:  # the other end is a gable
            ends |= {plate - out, plate + slope.length + out} if not ends else set()
            ends |= (
                {plate + slope.length + out if min(ends) < plate else plate - out} if len(ends) < 2 else set()
            )
        found.append(max(ends) - min(ends))
    return found


def _studs(table: Table, it: Reading) -> None:
    """Read gable studs: their upper ends are at the rafters' underside, on both of their sides."""
    name, half = it.names.heads, real(THICK) / 2
    for row in table.rows:
        cells = dict(zip(table.heads, row.cells[1:], strict=True))
        mark, place = cells.get(name['mark'], ''), cells.get(name['from-plate'], '')
        it.counts[mark] = total(cells.get(name['number'], ''))
        it.sticks[mark] = _read_length(cells.get(name['long'], ''))
        if it.roof is None:
            continue
        slope = _slope_of_stud(cells.get(name['top-cut'], ''), it)
        at = _stud_place(place, slope, it)
        under = slope.above - real(it.asked.depth('stock.rafters')) * (1 + slope.rise**2).sqrt()
        it.sticks[mark] = [it.rounded_up(under + (at + half) * slope.rise)]
        it.length(row.page, mark, name['from-plate'], place, at)
        it.length(row.page, mark, name['long'], cells.get(name['long'], ''), under + (at + half) * slope.rise)
        it.length(
            row.page, mark, name['short'], cells.get(name['short'], ''), under + (at - half) * slope.rise
        )
        it.degrees(row.page, mark, name['top-cut'], cells.get(name['top-cut'], ''), slope.rafter(slope.length / 2, Fraction(1)).plumb_cut)  # fmt: skip
        alike = [one for one in it.roof.slopes if one.name in ('front', 'back') and one.rise == slope.rise]
        it.figure(
            row.page, mark, name['number'], cells.get(name['number'], ''), str(gables(it.roof) * len(alike))
        )


def _slope_of_stud(top_cut: str, it: Reading) -> Slope:
    assert it.roof
    mains = [one for one in it.roof.slopes if one.name in ('front', 'back')]
    for one in mains:
        cut = one.rafter(one.length / 2, Fraction(1)).plumb_cut
        if top_cut == f'{nearest(cut, 100) / 100:.2f}°':
            return one
    return mains[0]


def _stud_place(printed: str, slope: Slope, it: Reading) -> Decimal:
    """Return where a stud stands that is printed so: a whole number of spaces inward, or beside the ridge's own post."""
    spacing = real(it.asked.inches('spacing'))
    told_at = _read_length(printed)
    at = told_at[0] if told_at else Decimal(0)
    whole = Decimal(nearest(at / spacing, 1)) * spacing
    return whole if plain(printed) in map(plain, it.told(whole)) else at


def read_checks(sheet: Sheet, it: Reading) -> None:
    """Read what is measured before more is cut."""
    assert it.roof
    words = ' '.join(close(line) for _page, line in sheet.lines)
    wide, long = real(it.asked.inches('width')), real(it.asked.inches('length'))
    right = {'diagonals': ('diagonal', (wide * wide + long * long).sqrt())}
    ridge = heights_of(it.roof.slopes[0], it).get('ridge-top')
    if ridge is not None:
        right['ridge-height'] = ('height', ridge)
    for name, (place, value) in right.items():
        sentence = it.names.sentences[name]
        found = told_within(sentence, words)
        it.length(sheet.lines[-1][0] if sheet.lines else sheet.page, sentence.partition(' {')[0], '', found[place] if found else '', value)  # fmt: skip
