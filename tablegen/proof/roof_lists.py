"""Reading a roof's lists of members, boards and studs, and what is measured before more is cut."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from tablegen.proof.page import close
from tablegen.proof.roof_boards import BARGES, CORNERS, barges_of, boards_of, corners_of, hand_of, kind_of
from tablegen.proof.roof_heights import heights_of
from tablegen.proof.roof_level_boards import left_of, missed, read_boards, read_studs
from tablegen.proof.roof_reading import Reading, lengths_of, plain, total
from tablegen.proof.sentences import before, told, told_within
from tablegen.proof.sheet_lines import Sheet, Table, tables_in


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
    left = left_of(it)
    for heading, lines in sheet.parts():
        for table in tables_in(lines):
            if not heading:
                _members(table, it)
            elif heading == it.names.titles['boards']:
                read_boards(table, left, it)
            elif told(it.names.titles['studs'], heading):
                read_studs(table, it)
    for mark in it.stood:
        if mark not in it.counts:
            it.missing(sheet.page, mark)
    missed(left, sheet.page, it)
    _all_corners(sheet.page, it)


def _members(table: Table, it: Reading) -> None:
    name = it.names.heads
    for row in table.rows:
        it.found.read.add(row.page)
        cells = dict(zip(table.heads, row.cells[1:], strict=True))
        mark = cells.get(name['mark'], '')
        number = cells.get(name['number'], '')
        it.counts[mark] = it.counts.get(mark, 0) + total(number)
        it.sticks[mark] = lengths_of(cells.get(name['cut-from'], ''))
        boards = boards_of(mark, it)
        if boards is None:
            it.strange(row.page, ' '.join(row.cells))
            continue
        it.figure(row.page, mark, name['number'], number, *_count(mark, boards.kind, it))
        it.figure(row.page, mark, name['stock'], cells.get(name['stock'], ''), it.asked.word(boards.stock))  # fmt: skip
        for head, values, up in (
            (name['cut-from'], boards.each(lambda one: one.stick), True),
            (name['overall'], boards.each(lambda one: one.overall), False),
        ):
            it.length(row.page, mark, head, cells.get(head, ''), *values, up=up)
        _all_alike(row.page, mark, boards.kind, it)


def _all_alike(page: int, mark: str, kind: str, it: Reading) -> None:
    """Hold all rafters of a mark, wherever they stand, against how long they are told to be."""
    depth = it.asked.depth('stock.rafters')
    for slope, low, high in {(one.slope.name, one.low, one.high): (one.slope, one.low, one.high) for one in it.stood.get(mark, [])}.values():  # fmt: skip
        values = [slope.rafter(place, depth, kind).overall for place in sorted({low, high})]
        row = f'{mark}, {it.names.slopes[slope.name]}'
        it.length(page, row, it.names.heads['overall'], it.overalls[mark], *values)


def _all_corners(page: int, it: Reading) -> None:
    """See that there are as many hips, valleys and barge rafters in the list as the roof has."""
    there = Counter(one.kind for one in it.roof.corners)
    there.update(kind for _slope, kind, _board in it.roof.barges())
    for kind, count in there.items():
        if count != sum(it.counts[mark] for mark in it.counts if kind_of(mark, it) == kind):
            it.missing(page, it.names.kind(kind))


def _count(mark: str, kind: str, it: Reading) -> list[str]:
    """Return how many of a mark there are, of each hand; where hands have rows of their own, any of them."""
    if kind in BARGES:
        return _counted([hand_of(board, it.names.hands) for _slope, board in barges_of(mark, it)], it)
    if kind in CORNERS:
        hands = ['' if one.hand is None else it.names.hands[one.hand] for one in corners_of(mark, it)]
        return _counted(hands, it)
    letters = {hand[0].upper(): hand for hand in it.names.hands}
    hands = [letters.get(one.hand, '') for one in it.stood[mark]]
    return _counted(hands, it)[:1] if '' not in hands else [str(len(hands))]


def _counted(hands: Sequence[str], it: Reading) -> list[str]:
    each = [f'{hands.count(hand)} {hand}' for hand in it.names.hands if hand in hands]
    return [', '.join(each), *each, *([str(hands.count(''))] if '' in hands else [])]


def read_checks(sheet: Sheet, it: Reading) -> None:
    """Read what is measured before more is cut."""
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
