"""Reading the layout of plates: where every rafter stands, what it comes to there, and how far it is from the one before."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal
from fractions import Fraction

from tablegen.proof.digits import SLACK, real
from tablegen.proof.roof_reading import Reading, Stood, plain, value_of
from tablegen.proof.roof_slopes import HIP_JACK, LEVEL, Slope, run_of
from tablegen.proof.roof_stated import THICK
from tablegen.proof.sentences import told, told_within
from tablegen.proof.sheet_lines import Row, Sheet, tables_in
from tablegen.proof.space import Plane, dot, meet

HALF = real(THICK) / 2


def read_plates(sheet: Sheet, it: Reading) -> None:
    """Read it, and take down where what stands."""
    for heading, lines in sheet.parts():
        slopes = slopes_named(heading, it)
        if not slopes:
            continue
        page = lines[0][0] if lines else sheet.page
        found = told(f'{{slopes}}: {it.names.sentences["plate-line"]}', heading)
        it.length(page, heading, '', found['length'] if found else '', slopes[0].length)
        rows = [row for table in tables_in(lines) for row in _in_one_column(table.rows, table.heads, it)]
        bays = _rafters(slopes, rows, it)
        words = ' '.join(' '.join(word.text for word in line) for _page, line in lines)
        printed = told_within(it.names.sentences['bays'], words)
        if bays or printed:
            it.figure(page, heading, it.names.sentences['bays'].partition(':')[0], _tidy(printed['bays']) if printed else '', '; '.join(bays))  # fmt: skip


def slopes_named(words: str, it: Reading) -> list[Slope]:
    """Return the slopes that words name, in the order of the roof."""
    assert it.roof
    return [slope for slope in it.roof.slopes if it.names.slopes[slope.name] in words]


def _tidy(words: str) -> str:
    return words.replace(' ;', ';').replace(' :', ':').strip()


def _in_one_column(rows: Sequence[Row], heads: Sequence[str], it: Reading) -> list[Row]:
    """Return the rows of bays that stand side by side one under another."""
    name = it.names.heads
    wanted = (name['mark'], name['near'], name['center'], name['bay'])
    found = []
    for start in range(len(heads) - len(wanted) + 1):
        if tuple(heads[start : start + len(wanted)]) == wanted:
            found += [Row(row.page, row.cells[start + 1 : start + 1 + len(wanted)]) for row in rows]
    return [row for row in found if any(row.cells)]


def _rafters(slopes: Sequence[Slope], rows: Sequence[Row], it: Reading) -> list[str]:
    """Hold every rafter against what stands there; return the bays that are not the spacing."""
    slope, heads, spacing = slopes[0], it.names.heads, real(it.asked.inches('spacing'))
    before, name_before, odd = None, '', []
    for row in rows:
        words, near, center, bay = row.cells
        mark, _blank, hand = words.strip('()').partition(' ')
        along = _exact(center, slope, it)
        if along is None:
            it.figure(row.page, words, heads['center'], center, '')
            continue
        it.length(row.page, words, heads['near'], near.removesuffix(' X'), along - HALF)
        for one in slopes:
            it.stood.setdefault(mark, []).append(Stood(one, along, hand))
        _stands(row.page, words, mark, hand, slope, along, it)
        if before is None:
            first = real(it.asked.inches('first', it.asked.inches('spacing')))
            if along > max(first, spacing) + _beside_hip(slope):
                it.missing(row.page, words)
        else:
            it.length(row.page, words, heads['bay'], bay, along - before)
            if along - before > spacing + Decimal(1) / it.asked.per:
                it.missing(row.page, words)
            if abs(along - before - spacing) > SLACK:
                told = it.names.sentences['a-bay']
                odd.append(told.format(before=name_before, mark=words, bay=it.in_words(along - before)))
        before, name_before = along, words
    if before is not None and slope.length - before > spacing + _beside_hip(slope):
        it.missing(rows[-1].page, name_before)
    return odd


def _beside_hip(slope: Slope) -> Decimal:
    """Return how much wider than the spacing the bay at a plate's end may be: at a hip there may be no room for a board."""
    return 3 * HALF if any(stop.kind == HIP_JACK for stop in slope.stops) else SLACK


def _stands(page: int, row: str, mark: str, hand: str, slope: Slope, along: Decimal, it: Reading) -> None:
    """Hold what a mark is against what a rafter there comes to, and its hand against its longer side."""
    stop, _run = slope.stop_at(along)
    kind = it.kinds.get(mark, '')
    told = next((words for words, one in it.names.kinds.items() if one == stop.kind), stop.kind)
    it.figure(page, row, it.names.heads['kind'], kind, told)
    if stop.kind == HIP_JACK:
        board = slope.rafter(along, it.asked.depth('stock.rafters'))
        longer = board.at(board.head, HALF) > board.at(board.head, -HALF)
        it.figure(page, row, it.names.heads['mark'], hand, it.names.hands[0 if longer else 1][0].upper())


def _exact(printed: str, slope: Slope, it: Reading) -> Decimal | None:
    """Return where a center stands that is printed so: a place that the spacing makes, else the one that is printed."""
    value = value_of(printed)
    if value is None:
        return None
    near = Decimal(1) / it.asked.per
    for place in _places(slope, it):
        if abs(place - value) < near and plain(printed) in map(plain, it.told(place)):
            return place
    return value


def _places(slope: Slope, it: Reading) -> Iterator[Decimal]:
    """Yield where rafters may stand: spaces from either end, from the ridge's ends, and flush with gables."""
    assert it.roof
    spacing, long = real(it.asked.inches('spacing')), slope.length
    starts = {Decimal(0), real(it.asked.inches('first', Fraction(0))), *corner_places(slope, it)}
    count = int(long / spacing) + 2
    for start in starts:
        for number in range(-count, count + 1):
            for place in (start + number * spacing, long - start - number * spacing):
                if 0 < place < long:
                    yield place
    yield from (HALF, long - HALF)


def corner_places(slope: Slope, it: Reading) -> list[Decimal]:
    """Return where along a slope its hips reach the ridge, and where the first common clears a single hip's cheek."""
    found = []
    for stop in slope.stops:
        if stop.kind != HIP_JACK:
            continue
        ridge = slope.line(run_of(slope))
        for face in (ridge, ridge.moved(-real(it.asked.ridge) / 2)):
            for side in (Decimal(0), HALF, -HALF):
                place = _crossing(slope, stop.center.moved(side), face)
                found += [place, place + HALF, place - HALF]
    return found


def _crossing(slope: Slope, one: Plane, other: Plane) -> Decimal:
    """Return where along a slope two plumb planes cross."""
    return dot(slope.along, meet(one, other, LEVEL)) - dot(slope.along, slope.origin)
