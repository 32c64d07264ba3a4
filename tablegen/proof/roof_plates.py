"""Reading the layout of plates: where every rafter stands, what it comes to there, and how far it is from the one before."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal

from tablegen.proof.digits import SLACK, real
from tablegen.proof.roof_boards import hand_of
from tablegen.proof.roof_reading import Reading, Stood, plain, value_of
from tablegen.proof.roof_slopes import Slope
from tablegen.proof.roof_stated import THICK, Asked
from tablegen.proof.roof_stops import Way
from tablegen.proof.sentences import told, told_within
from tablegen.proof.sheet_lines import Row, Sheet, tables_in
from tablegen.proof.space import dot

HALF = real(THICK) / 2
BOARDS = ('ridge', 'wall')
"""What rafters stand on above, on which their places may be laid out."""


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
        bays, unsure = _rafters(slopes, rows, it)
        words = ' '.join(' '.join(word.text for word in line) for _page, line in lines)
        printed = told_within(it.names.sentences['bays'], words)
        if bays or printed:
            said = _tidy(printed['bays']).split('; ') if printed else []
            said = [one for one in said if one not in unsure]
            it.figure(page, heading, it.names.sentences['bays'].partition(':')[0], '; '.join(said), '; '.join(bays))  # fmt: skip


def slopes_named(words: str, it: Reading) -> list[Slope]:
    """Return the slopes that words name, in the order of the roof."""
    there = set()
    for name in sorted(it.names.slopes, key=lambda one: -len(it.names.slopes[one])):
        told_name = it.names.slopes[name]
        if told_name in words:  # a longer name may have a shorter one in it
            words = words.replace(told_name, '')
            there.add(name)
    return [slope for slope in it.roof.slopes if slope.name in there or words == it.names.every_side]


def _tidy(words: str) -> str:
    return words.replace(' ;', ';').replace(' :', ':').strip()


def _in_one_column(rows: Sequence[Row], heads: Sequence[str], it: Reading) -> list[Row]:
    """Return the rows of bays that stand side by side one under another, each with the mark of the ridge that its last cell is of."""
    name = it.names.heads
    wanted = (name['mark'], name['near'], name['center'], name['bay'])
    found = []
    for start in range(len(heads) - len(wanted) + 1):
        end = start + len(wanted)
        if tuple(heads[start:end]) != wanted:
            continue
        ridge = (told(name['on-ridge'], heads[end]) or {}).get('mark', '') if end < len(heads) else ''
        for row in rows:
            cells = row.cells[start + 1 : end + 1]
            if any(cells):
                found.append(Row(row.page, (*cells, row.cells[end + 1] if ridge else '', ridge)))
    return found


def _rafters(slopes: Sequence[Slope], rows: Sequence[Row], it: Reading) -> tuple[list[str], set[str]]:
    """Hold every rafter against what stands there; return the bays that are not the spacing, and those that may be no other."""
    slope, heads, spacing = slopes[0], it.names.heads, real(it.asked.inches('spacing'))
    part = Decimal(1) / it.asked.per
    before, name_before, center_before = None, '', ''
    odd: list[str] = []
    unsure: set[str] = set()
    for row in rows:
        words, near, center, bay, _on, _ridge = row.cells
        mark, _blank, hand = words.strip('()').partition(' ')
        kind = it.names.kinds.get(it.kinds.get(mark, ''), '')
        there = [one for one in _between(center, slope, it) if list(slope.ways(one))]
        if not there:
            it.figure(row.page, words, heads['center'], center, '')
            continue
        between = there[0], there[-1]
        there = [one for one in there if any(way.kind == kind for way in slope.ways(one))] or there
        it.length(row.page, words, heads['near'], near.removesuffix(' X'), *(one - HALF for one in between))
        _on_ridge(row, slope, slope.way(there[0], kind), between, it)
        for one in slopes:
            it.stood.setdefault(mark, []).append(Stood(one, there[0], there[-1], hand))
        _stands(row.page, words, mark, hand, slope, there[0], it)
        if before is None:
            first = real(it.asked.inches('first', it.asked.inches('spacing')))
            if slope.ends[0] and between[0] > max(_first(slope, first, spacing), spacing) + _beside_hip(
                slope
            ):
                it.missing(row.page, words)
        elif bay or center != center_before:
            bays = between[0] - before[1], between[1] - before[0]
            it.length(row.page, words, heads['bay'], bay, *bays)
            if bays[0] > spacing + part:
                it.missing(row.page, words)
            a_bay = it.names.sentences['a-bay'].format(before=name_before, mark=words.strip('()'), bay=f'{plain(bay)}″' if it.asked.in_feet else f'{bay} in')  # fmt: skip
            if plain(bay) not in map(plain, it.told(spacing)):
                odd.append(a_bay)
            elif bays[0] < bays[1]:
                unsure.add(a_bay)
        before, name_before, center_before = between, words.strip('()'), center
    last = _first(slope, slope.length - spacing, -spacing)
    if before is not None and slope.ends[1] and last - before[1] > _beside_hip(slope):
        it.missing(rows[-1].page, name_before)
    return odd, unsure


def _first(slope: Slope, start: Decimal, step: Decimal) -> Decimal:
    """Return the first of some places, a step apart, where a rafter has a plate: a raised one is crossed by its hips aside of its ends."""
    places = (start + number * step for number in range(int(slope.length / abs(step)) + 1))
    return next((one for one in places if any(slope.ways(one))), start)


def _on_ridge(row: Row, slope: Slope, way: Way, between: tuple[Decimal, Decimal], it: Reading) -> None:
    """Read where a rafter stands on the ridge that it goes up to, from that one's left end."""
    printed, mark, to = row.cells[-2].removesuffix(' X'), row.cells[-1], way.to
    level = it.roof.levels.get(mark)
    if level is None:
        if printed or mark or (to.edge in BOARDS and it.roof.levels):
            it.figure(row.page, row.cells[0], it.names.heads['on-ridge'], printed, '')
        return
    ends = sorted(
        dot(slope.along, point) - dot(slope.along, slope.origin) for point in (level.start, level.end)
    )
    there = to.edge in BOARDS and between[1] - HALF < ends[1] and between[1] > ends[0]
    head = it.names.heads['on-ridge'].format(mark=mark)
    if there:
        it.length(row.page, row.cells[0], head, printed, *(one - HALF - ends[0] for one in between))
    else:
        it.figure(row.page, row.cells[0], head, printed, '')


def _beside_hip(slope: Slope) -> Decimal:
    """Return how much wider than the spacing the bay at a plate's end may be: at a hip there may be no room for a board."""
    return 3 * HALF if any(stop.edge == 'hip' for region in slope.regions for stop in region.upper) else SLACK


def _stands(page: int, row: str, mark: str, hand: str, slope: Slope, along: Decimal, it: Reading) -> None:
    """Hold what a mark is against what a rafter there comes to, and its hand against its longer side."""
    kind = it.names.kinds.get(it.kinds.get(mark, ''), '')
    there = [it.names.kind(one.kind) for one in slope.ways(along)]
    it.figure(page, row, it.names.heads['kind'], it.kinds.get(mark, ''), *there)
    board = slope.rafter(along, it.asked.depth('stock.rafters'), kind)
    it.figure(page, row, it.names.heads['mark'], hand, hand_of(board, it.names.hands)[:1].upper())


def _between(printed: str, slope: Slope, it: Reading) -> list[Decimal]:
    """Return where a center may stand that is printed so: where the spacing makes one, at that; none for what is no length."""
    value = value_of(printed)
    if value is None:
        return []
    half = Decimal(1) / it.asked.per / 2
    for place in usual_places(slope, it.asked):
        if abs(place - value) <= half and plain(printed) in map(plain, it.told(place)):
            return [place]
    return [value - half, value, value + half]


def usual_places(slope: Slope, asked: Asked) -> Iterator[Decimal]:
    """Yield where rafters stand by the spacing: from either end, from a gable's own rafter, and half a space from the middle."""
    spacing, long = real(asked.inches('spacing')), slope.length
    count = int(long / spacing) + 2
    for start in (
        Decimal(0),
        real(asked.inches('first')),
        real(asked.thick) / 2,
        long / 2,
        long / 2 + spacing / 2,
    ):
        for number in range(count):
            yield start + number * spacing
            yield long - start - number * spacing
