"""Reading a roof's lists of members, boards and studs, and what is measured before more is cut."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Sequence
from decimal import Decimal

from tablegen.proof.digits import decimals, nearest, real
from tablegen.proof.page import close
from tablegen.proof.roof import UP
from tablegen.proof.roof_boards import BARGES, CORNERS, barges_of, boards_of, corners_of, hand_of, kind_of
from tablegen.proof.roof_heights import heights_of
from tablegen.proof.roof_reading import Reading, plain, total, value_of
from tablegen.proof.roof_slopes import Slope
from tablegen.proof.roof_stated import THICK
from tablegen.proof.sentences import before, told, told_within
from tablegen.proof.sheet_lines import Sheet, Table, tables_in
from tablegen.proof.space import angle

LENGTH = re.compile(r'(?<=[\d″]) (?=\D).*')
"""What is said after a length of how an end is sawn."""


def members_told(sheet: Sheet, it: Reading) -> None:
    """Take down what each mark is, from the list of members."""
    name = it.names.heads
    for heading, lines in sheet.parts():
        for table in tables_in(lines) if not heading else ():
            for row in table.rows:
                cells = dict(zip(table.heads, row.cells[1:], strict=True))
                mark = cells.get(name['mark'], '')
                it.kinds[mark] = cells.get(name['kind'], '')
                it.overalls[mark] = plain(cells.get(name['overall'], ''))
                if set(it.names.hands) & set(cells.get(name['number'], '').replace(',', ' ').split()):
                    it.handed.add(mark)


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
    name = it.names.heads
    for row in table.rows:
        it.found.read.add(row.page)
        cells = dict(zip(table.heads, row.cells[1:], strict=True))
        mark = cells.get(name['mark'], '')
        number = cells.get(name['number'], '')
        it.counts[mark] = it.counts.get(mark, 0) + total(number)
        it.sticks[mark] = _read_length(cells.get(name['cut-from'], ''))
        if it.roof is None:
            continue
        boards = boards_of(mark, it)
        if boards is None:
            it.strange(row.page, ' '.join(row.cells))
            continue
        stock = {'hip': 'hips', 'upper_hip': 'hips', 'valley': 'valleys'}.get(boards.kind, 'rafters')
        it.figure(row.page, mark, name['number'], number, *_count(mark, boards.kind, it))
        it.figure(row.page, mark, name['stock'], cells.get(name['stock'], ''), it.asked.word(f'stock.{stock}'))  # fmt: skip
        for head, values, up in (
            (name['cut-from'], boards.each(lambda one: one.stick), True),
            (name['overall'], boards.each(lambda one: one.overall), False),
        ):
            it.length(row.page, mark, head, cells.get(head, ''), *values, up=up)
        _all_alike(row.page, mark, boards.kind, it)
    for mark in it.stood:
        if mark not in it.counts:
            it.missing(table.rows[0].page, mark)
    if it.roof:
        _all_corners(table, it)


def _all_alike(page: int, mark: str, kind: str, it: Reading) -> None:
    """Hold all rafters of a mark, wherever they stand, against how long they are told to be."""
    depth = it.asked.depth('stock.rafters')
    for slope, low, high in {(one.slope.name, one.low, one.high): (one.slope, one.low, one.high) for one in it.stood.get(mark, [])}.values():  # fmt: skip
        values = [slope.rafter(place, depth, kind).overall for place in sorted({low, high})]
        row = f'{mark}, {it.names.slopes[slope.name]}'
        it.length(page, row, it.names.heads['overall'], it.overalls[mark], *values)


def _all_corners(table: Table, it: Reading) -> None:
    """See that there are as many hips, valleys and barge rafters in the list as the roof has."""
    assert it.roof
    there = Counter(one.kind for one in it.roof.corners)
    there.update(kind for _slope, kind, _board in it.roof.barges())
    for kind, count in there.items():
        if count != sum(it.counts[mark] for mark in it.counts if kind_of(mark, it) == kind):
            it.missing(table.rows[-1].page, it.names.kind(kind))


def _read_length(words: str) -> list[Decimal]:
    value = value_of(words)
    return [] if value is None else [value]


def _count(mark: str, kind: str, it: Reading) -> list[str]:
    """Return how many of a mark there are, of each hand; where hands have rows of their own, any of them."""
    if kind in BARGES:
        return _counted([hand_of(board, it) for _slope, board in barges_of(mark, it)], it)
    if kind in CORNERS:
        hands = ['' if one.hand is None else it.names.hands[one.hand] for one in corners_of(mark, it)]
        return _counted(hands, it)
    letters = {hand[0].upper(): hand for hand in it.names.hands}
    hands = [letters.get(one.hand, '') for one in it.stood[mark]]
    return _counted(hands, it)[:1] if '' not in hands else [str(len(hands))]


def _counted(hands: Sequence[str], it: Reading) -> list[str]:
    each = [f'{hands.count(hand)} {hand}' for hand in it.names.hands if hand in hands]
    return [', '.join(each), *each, *([str(hands.count(''))] if '' in hands else [])]


def _boards(table: Table, it: Reading) -> None:
    name = it.names.heads
    left = {mark: list(level.lengths) for mark, level in it.roof.levels.items()} if it.roof else {}
    for row in table.rows:
        cells = dict(zip(table.heads, row.cells[1:], strict=False))
        sawn = cells.get(name['sawn'], '')
        mark, printed = cells.get(name['mark'], ''), LENGTH.sub('', sawn)
        it.counts[mark] = it.counts.get(mark, 0) + total(cells.get(name['number'], ''))
        told_length = _read_length(printed)
        it.sticks.setdefault(mark, []).extend(told_length)
        if it.roof is None:
            continue
        if mark not in left:
            it.strange(row.page, ' '.join(row.cells))
            continue
        level = it.roof.levels[mark]
        near = min(
            left[mark], key=lambda one: abs(one - (told_length or [Decimal(0)])[0]), default=Decimal(0)
        )
        if near in left[mark]:
            left[mark].remove(near)
        it.sticks[mark][len(it.sticks[mark]) - len(told_length) :] = [it.rounded_up(near)] * len(told_length)
        it.length(row.page, mark, name['sawn'], printed, near)
        it.figure(row.page, mark, name['number'], cells.get(name['number'], ''), str(level.number))
        if level.tilt is not None:
            sentence = next(
                (one for one in it.names.level_ends if told(one, sawn.removeprefix(printed).strip())), ''
            )
            found = told(sentence, sawn.removeprefix(printed).strip()) if sentence else None
            it.degrees(row.page, mark, sentence, found['tilt'] if found else '', level.tilt)
    for mark, lengths in left.items():
        if lengths:
            it.missing(table.rows[-1].page, mark)


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
        slope, at, count = _under(place, cells.get(name['top-cut'], ''), it)
        if slope is None:
            it.figure(row.page, mark, name['from-plate'], place, '')
            continue
        under = slope.above - real(it.asked.depth('stock.rafters')) * (1 + slope.rise**2).sqrt()
        long, short = (under + (at + side) * slope.rise for side in (half, -half))
        it.sticks[mark] = [it.rounded_up(long)]
        for head, value in ((name['from-plate'], at), (name['long'], long), (name['short'], short)):
            it.length(row.page, mark, head, cells.get(head, ''), value)
        it.degrees(row.page, mark, name['top-cut'], cells.get(name['top-cut'], ''), plumb_cut(slope))
        it.figure(row.page, mark, name['number'], cells.get(name['number'], ''), str(count))


def plumb_cut(slope: Slope) -> Decimal:
    """Return the angle of a slope's plumb cut from square across."""
    return angle(slope.top.normal, UP)


def _under(printed: str, top_cut: str, it: Reading) -> tuple[Slope | None, Decimal, int]:
    """Return what slope a stud is under that stands so far from the plate, where exactly, and how many such there are."""
    assert it.roof
    spacing, half = real(it.asked.inches('spacing')), real(THICK) / 2
    told_at = _read_length(printed)
    if not told_at:
        return None, Decimal(0), 0
    whole = Decimal(nearest(told_at[0] / spacing, 1)) * spacing
    at = whole if plain(printed) in map(plain, it.told(whole)) else told_at[0]
    part = Decimal(1) / it.asked.per
    there = [
        rake.slope
        for rake in it.roof.rakes
        if rake.foot + half - part <= at <= rake.top - half + part
        and f'{decimals(plumb_cut(rake.slope), 2)}°' == top_cut
    ]
    return (there[0], at, len(there)) if there else (None, at, 0)


def read_checks(sheet: Sheet, it: Reading) -> None:
    """Read what is measured before more is cut."""
    assert it.roof
    words = ' '.join(close(line) for _page, line in sheet.lines)
    right = dict(it.roof.measured)
    ridge = heights_of(it.roof.slopes[0], it).get('ridge-top')
    if ridge is not None:
        right['ridge-height'] = {'height': ridge[0]}
    for name, places in right.items():
        sentence = it.names.sentences[name]
        found = told_within(sentence, words) or {}
        for place, value in places.items():
            it.length(sheet.lines[-1][0] if sheet.lines else sheet.page, before(sentence, place), '', found.get(place, ''), value)  # fmt: skip
