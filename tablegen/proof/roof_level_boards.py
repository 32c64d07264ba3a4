"""Reading a roof's lists of level boards and of the studs under its gables."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Sequence
from decimal import Decimal

from msgspec import Struct, field

from tablegen.proof.digits import decimals, nearest, real
from tablegen.proof.roof import UP
from tablegen.proof.roof_eaves import Cut, Laid, fascias, lookouts, valley_boards
from tablegen.proof.roof_plates import slopes_named
from tablegen.proof.roof_reading import Reading, lengths_of, marks_of, plain, total
from tablegen.proof.roof_slopes import Slope
from tablegen.proof.roof_stated import THICK
from tablegen.proof.roof_whole import Level
from tablegen.proof.sentences import told
from tablegen.proof.sheet_lines import Row, Table
from tablegen.proof.space import angle

LENGTH = re.compile(r'(?<=[\d″]) (?=\D).*')
"""What is said after a length of how an end is sawn."""


class Left(Struct):
    """What of the level boards was not read yet."""

    levels: dict[str, Level]
    laid: list[Laid]
    lookouts: Counter[Decimal]
    taken: Counter[str] = field(default_factory=Counter)
    """How many of a kind were read."""
    sorts: dict[str, list[Laid]] = field(default_factory=dict)
    """What the fascias and valley boards of a mark may be that was read: those as long as it."""
    cuts: Counter[str] = field(default_factory=Counter)
    """How many of its ends were told."""


def left_of(it: Reading) -> Left:
    """Return what a roof has."""
    places: dict[str, list[Decimal]] = {}
    for some in it.stood.values():
        for one in some:
            places.setdefault(one.slope.name, []).append(one.low)
    return Left(dict(it.roof.levels), [*fascias(it.roof), *valley_boards(it.roof)], lookouts(it.roof, places))


def missed(left: Left, page: int, it: Reading) -> None:
    """Take down what is in none of the lists."""
    marks = [*left.levels, *map(str, left.lookouts)]
    marks += [
        mark for mark, sorts in left.sorts.items() if left.cuts[mark] not in {len(one.ends) for one in sorts}
    ]
    there = Counter(one.kind for one in left.laid)
    marks += [kind for kind in there if there[kind] != left.taken[kind]]
    for mark in marks:
        it.missing(page, mark)


def read_boards(table: Table, left: Left, it: Reading) -> None:
    """Read how long ridges, purlins, fascias and lookouts are, how many of them there are, and how their ends are sawn."""
    name = it.names.heads
    if name['of-ends'] in table.heads:
        _ends(table, left, it)
        return
    for row in table.rows:
        cells = dict(zip(table.heads, row.cells[1:], strict=False))
        sawn, number = cells.get(name['sawn'], ''), cells.get(name['number'], '')
        mark, printed = cells.get(name['mark'], ''), LENGTH.sub('', sawn)
        it.counts[mark] = it.counts.get(mark, 0) + total(number)
        it.sticks.setdefault(mark, []).extend(lengths_of(printed))
        match it.names.levels.get(cells.get(name['kind'], '')):
            case 'lookout':
                lengths, counts = _lookouts(printed, left, it)
            case 'fascia' | 'valley_board' as kind:
                lengths, counts = _laid(kind, mark, printed, number, left, it)
            case _ if level := left.levels.pop(mark, None):
                lengths, counts = [level.length], ['1']
                if level.tilt is not None:
                    _tilt(row.page, mark, sawn.removeprefix(printed).strip(), level.tilt, it)
            case _:
                it.strange(row.page, ' '.join(row.cells))
                continue
        it.length(row.page, mark, name['sawn'], printed, *(lengths or [Decimal(0)]))
        it.figure(row.page, mark, name['number'], number, *(counts or ['']))
        it.sticks[mark] = [it.rounded_up(one) for one in lengths] or it.sticks[mark]


def _lookouts(printed: str, left: Left, it: Reading) -> tuple[list[Decimal], list[str]]:
    """Return how long lookouts are that are told so, and how many there are."""
    near = [long for long in left.lookouts if plain(printed) in map(plain, it.told(long))]
    return near[:1], [str(sum(left.lookouts.pop(one) for one in near))]


def _laid(
    kind: str, mark: str, printed: str, number: str, left: Left, it: Reading
) -> tuple[list[Decimal], list[str]]:
    """Return the same of fascias or valley boards: of those as long, of whose ends are alike."""
    near = [
        one for one in left.laid if one.kind == kind and plain(printed) in map(plain, it.told(one.length))
    ]
    left.sorts[mark], left.taken[kind] = near, left.taken[kind] + total(number)
    sorts = Counter(tuple(_told(cut) for cut in one.ends) for one in near)
    return [one.length for one in near[:1]], [str(count) for count in sorts.values()]


def _told(cut: Cut) -> str:
    return f'{cut.hand} {cut.what} {decimals(cut.miter, 2)} {decimals(cut.blade, 2)}'


def _tilt(page: int, mark: str, words: str, value: Decimal, it: Reading) -> None:
    sentence = next((one for one in it.names.level_ends if told(one, words)), '')
    found = told(sentence, words) if sentence else None
    it.degrees(page, mark, sentence, found['tilt'] if found else '', value)


def _ends(table: Table, left: Left, it: Reading) -> None:
    """Read how ends are sawn that are not square."""
    name = it.names.heads
    left_hand, right_hand = it.names.hands
    hands: dict[str, set[int | None]] = {
        left_hand: {0},
        right_hand: {1},
        it.names.both: {0, 1},
        '': {None},
    }
    for row in table.rows:
        cells = dict(zip(table.heads, row.cells[1:], strict=False))
        what, end = it.names.level_cuts.get(cells.get(name['cut'], '')), cells.get(name['end'], '')
        for mark in marks_of(cells.get(name['of-ends'], '')):
            there = [cut for sort in left.sorts.get(mark, []) for cut in sort.ends]
            there = [cut for cut in there if cut.what == what and cut.hand in hands.get(end, set())]
            left.cuts[mark] += len(hands.get(end, set()))
            for head, values in (
                ('miter', [one.miter for one in there]),
                ('blade', [one.blade for one in there]),
            ):
                right = [f'{decimals(one, 2)}°' for one in values]
                it.figure(row.page, f'{mark}, {cells.get(name["cut"], "")}', name[head], cells.get(name[head], ''), *(right or ['']))  # fmt: skip


def read_studs(table: Table, it: Reading) -> None:
    """Read gable studs: their upper ends are at the rafters' underside, on both of their sides."""
    name, half = it.names.heads, real(THICK) / 2
    for row in table.rows:
        cells = dict(zip(table.heads, row.cells[1:], strict=True))
        mark, place = cells.get(name['mark'], ''), cells.get(name['from-plate'], '')
        it.counts[mark] = total(cells.get(name['number'], ''))
        it.sticks[mark] = lengths_of(cells.get(name['long'], ''))
        slopes, at = _under(place, cells.get(name['top-cut'], ''), it)
        if not slopes:
            it.figure(row.page, mark, name['from-plate'], place, '')
            continue
        slope = slopes[0]
        if 'under' in name:  # a book's list has no room for it
            _stand_under(row, mark, slopes, cells.get(name['under'], ''), it)
        under = slope.above - real(it.asked.depth('stock.rafters')) * (1 + slope.rise**2).sqrt()
        long, short = (under + (at + side) * slope.rise for side in (half, -half))
        it.sticks[mark] = [it.rounded_up(long)]
        for head, value in ((name['from-plate'], at), (name['long'], long), (name['short'], short)):
            it.length(row.page, mark, head, cells.get(head, ''), value)
        it.degrees(row.page, mark, name['top-cut'], cells.get(name['top-cut'], ''), plumb_cut(slope))
        it.figure(row.page, mark, name['number'], cells.get(name['number'], ''), str(len(slopes)))


def _stand_under(row: Row, mark: str, slopes: Sequence[Slope], said: str, it: Reading) -> None:
    """Hold the slopes that studs are told to stand under against theirs."""
    names = dict.fromkeys(one.name for one in slopes)
    there = {one.name for one in slopes_named(said, it)} == names.keys()
    right = said if there else it.row(it.names.slopes[one] for one in names)
    it.figure(row.page, mark, it.names.heads['under'], said, right)


def plumb_cut(slope: Slope) -> Decimal:
    """Return the angle of a slope's plumb cut from square across."""
    return angle(slope.top.normal, UP)


def _under(printed: str, top_cut: str, it: Reading) -> tuple[list[Slope], Decimal]:
    """Return the slope of each stud that stands so far from the plate, and where exactly."""
    spacing, half = real(it.asked.inches('spacing')), real(THICK) / 2
    told_at = lengths_of(printed)
    if not told_at:
        return [], Decimal(0)
    whole = Decimal(nearest(told_at[0] / spacing, 1)) * spacing
    at = whole if plain(printed) in map(plain, it.told(whole)) else told_at[0]
    part = Decimal(1) / it.asked.per
    there = [
        rake.slope
        for rake in it.roof.rakes
        if rake.foot + half - part <= at <= rake.top - half + part
        and f'{decimals(plumb_cut(rake.slope), 2)}°' == top_cut
    ]
    return there, at
