"""Reading a roof's plan, sections, lists of members, boards and studs, and what is measured before more is cut."""

from __future__ import annotations

import re
from decimal import Decimal
from fractions import Fraction

from tablegen.proof.digits import nearest, real
from tablegen.proof.page import Page, close
from tablegen.proof.roof_boards import kind_of, timber_of
from tablegen.proof.roof_plates import slopes_named
from tablegen.proof.roof_reading import Reading, plain, run_told, total, value_of
from tablegen.proof.roof_slopes import MAIN, Slope, gables, ridge_past, run_of
from tablegen.proof.roof_stated import THICK
from tablegen.proof.sentences import told, told_within
from tablegen.proof.sheet_lines import Sheet, Table, tables_in

LENGTH = re.compile(r'(?<=[\d″]) (?=\D).*')
"""What is said after a length of how an end is sawn."""


def read_plan(sheet: Sheet, it: Reading) -> None:
    """Hold what stands over the plan against the lines of what was asked for."""
    it.found.read |= sheet.pages
    asked, sentences = it.asked, it.names.sentences
    words = sheet.more.split(', ')
    pitch = asked.word('pitch')
    it.figure(sheet.page, '', sentences['title'].partition(' {')[2].partition('}')[0], words[1] if len(words) > 1 else '', pitch, pitch.removesuffix(' deg') + '°')  # fmt: skip
    sizes = told(sentences['sizes'], ', '.join(words[2:]))
    for key in ('width', 'length') if 'width' in asked.told else ():
        it.figure(sheet.page, '', key, sizes[key] if sizes else '', run_told(asked.inches(key)))
    lines = ' '.join(close(line) for _page, line in sheet.lines)
    found = told_within(sentences['spacing'], lines) or {}
    for key, right in (('spacing', 'spacing'), ('overhang', 'overhang.eave')):
        it.figure(sheet.page, '', key, found.get(key, ''), run_told(asked.inches(right)))
    it.figure(sheet.page, '', 'part', found.get('part', ''), f'1/{asked.per}')


def read_sections(sheet: Sheet, pages: dict[int, Page], it: Reading) -> None:
    """Read the heights of every slope, and the lengths that are drawn."""
    values: dict[int, list[dict[str, Decimal]]] = {}
    for heading, lines in sheet.parts():
        slopes = slopes_named(heading, it)
        if not slopes or not lines:
            continue
        right, there = heights_of(slopes[0], it), set()
        values.setdefault(lines[0][0], []).append(right)
        for page, line in lines:
            words = close(line)
            name = next((one for one in it.names.heights if words.startswith(f'{one} ')), None)
            key = it.names.heights[name] if name else ''
            if name and key in right:
                there.add(key)
                it.length(page, heading, name, words.removeprefix(name), right[key])
            elif name:
                it.strange(page, words)
        if not {'above', 'meet', 'tail'} <= there:
            it.missing(lines[0][0], heading)
    for page, some in values.items():
        it.found.read.add(page)
        _drawn(pages[page], some, it)


def heights_of(slope: Slope, it: Reading) -> dict[str, Decimal]:
    """Return what stands plumb over the main plates."""
    assert it.roof
    run, base = run_of(slope), slope.origin[2]
    meet = base + slope.above + run * slope.rise
    found = {
        'above': slope.above,
        'meet': meet,
        'tail': base + slope.above - slope.overhang * slope.rise,
        'run': run,
        'overhang': slope.overhang,
    }
    if base:
        found['plate'] = base
    if it.asked.ridge and it.asked.word('kind') != 'shed':
        steeper = max(one.rise for one in it.roof.slopes if one.name in ('front', 'back'))
        down = Decimal(0) if it.asked.word('ridge.top') == 'beveled' else real(it.asked.ridge) / 2 * steeper
        found['ridge-top'] = meet - down
        found['ridge-bottom'] = meet - down - real(it.asked.inches('ridge.depth'))
    return found


def _drawn(page: Page, some: list[dict[str, Decimal]], it: Reading) -> None:
    keys = {'run': 'run', 'overhang': 'overhang', 'above_plate': 'above', 'ridge_top': 'ridge-top', 'ridge_bottom': 'ridge-bottom', 'meet': 'meet', 'tail': 'tail'}  # fmt: skip
    for said in page.ink.said:
        for name, sentence in it.names.drawn.items():
            found = told(sentence, said.text)
            if found:
                right = [
                    one for values in some if keys[name] in values for one in it.told(values[keys[name]])
                ]
                if right:
                    it.figure(page.number, '', sentence.partition(' {')[0], found['length'], *right)


# Lists ------------------------------------------------------------------------------------------------------


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
    name, square = it.names.heads, it.asked.word('cuts.tails') == 'square'
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
            board.stick(square and not is_hip),
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
        it.sticks[mark] = _read_length(printed)
        if it.roof is None:
            continue
        right = [] if mark != 'R' else [one for one in [ridge_length(it)] if one is not None]
        right += fascia_lengths(it) if mark == 'F' else []
        if not right:
            it.strange(row.page, ' '.join(row.cells))
            continue
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
    """Return how long fascias are: to the points of their outer faces at a hipped end, over the barge rafters at a gable."""
    assert it.roof
    thick, out = real(it.asked.inches('overhang.fascia')), real(it.asked.inches('overhang.gable'))
    named, found = {one.name: one for one in it.roof.slopes}, []
    for slope in it.roof.slopes:
        others = ('left', 'right') if slope.name in MAIN else ('front', 'back')
        found.append(
            slope.length + sum(named[one].overhang + thick if one in named else out for one in others)
        )
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
