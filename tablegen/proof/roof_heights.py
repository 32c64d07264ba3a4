"""Reading what stands over a roof's plan, and the heights of its sections, told and drawn."""

from __future__ import annotations

from decimal import Decimal

from tablegen.proof.digits import SLACK, nearest, real
from tablegen.proof.page import Page, close
from tablegen.proof.roof_plates import slopes_named
from tablegen.proof.roof_reading import Reading, run_told
from tablegen.proof.roof_slopes import Slope, run_of
from tablegen.proof.roof_stops import Stop
from tablegen.proof.sentences import told, told_within
from tablegen.proof.sheet_lines import Sheet


def read_plan(sheet: Sheet, it: Reading) -> None:
    """Hold what stands over the plan against the lines of what was asked for."""
    it.found.read |= sheet.pages
    asked, sentences = it.asked, it.names.sentences
    words = sheet.more.split(', ')
    it.figure(sheet.page, '', sentences['title'].partition(' {')[2].partition('}')[0], words[1] if len(words) > 1 else '', it.pitches(asked.pitches))  # fmt: skip
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
    values: dict[int, list[dict[str, list[Decimal]]]] = {}
    for heading, lines in sheet.parts():
        slopes = slopes_named(heading.rpartition(':')[0], it)
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
                it.length(page, heading, name, words.removeprefix(name), right[key][0])
            elif name:
                it.strange(page, words)
        if not right.keys() - {'run', 'overhang'} <= there:
            it.missing(lines[0][0], heading)
    for page, some in values.items():
        it.found.read.add(page)
        _drawn(pages[page], some, it)


def heights_of(slope: Slope, it: Reading) -> dict[str, list[Decimal]]:
    """Return what stands plumb over the main plates, and the runs that are drawn beside it."""
    legs = [slope, *(one for one in it.roof.slopes if one.name == f'{slope.name}_upper')]
    run, base, leg = run_of(slope), slope.origin[2], legs[-1]
    meet = leg.on_plate(Decimal(0), run_of(leg))[2]
    found = {
        'above': slope.above,
        'meet': meet,
        'tail': base + slope.above - slope.overhang * slope.rise,
        'overhang': slope.overhang,
    }
    if nearest(base, it.asked.per):
        found['plate'] = base
    upper = [stop.edge for region in leg.regions for stop in region.upper]
    if it.asked.ridge and {'ridge', 'end'} & set(upper):
        found['ridge-top'] = ridge_top(leg, meet, it)
        found['ridge-bottom'] = found['ridge-top'] - real(it.asked.inches('ridge.depth'))
    if len(legs) > 1:
        found['purlin-top'] = slope.on_plate(Decimal(0), run - real(it.asked.thick) / 2)[2]
    if it.asked.word('shed.upper') == 'over-beam':  # its seat is the plate's, so far up
        found['beam-top'] = (run - real(it.asked.inches('shed.thickness'))) * slope.rise
    if it.asked.word('shed.upper') == 'ledger':
        found['ledger-top'] = slope.on_plate(Decimal(0), run - real(it.asked.inches('shed.thickness')))[2]
    runs = [run] if len(legs) == 1 else [run, run_of(leg) - run]
    return {key: [value] for key, value in found.items()} | {'run': runs}


def ridge_top(slope: Slope, meet: Decimal, it: Reading) -> Decimal:
    """Return how high a ridge's top is: where its edges lie in the steeper slope beside it, or where that meets the other."""
    if it.asked.word('ridge.top') == 'beveled':
        return meet
    own = [stop.center for stop in _ridges(slope) if abs((slope.inward_of(stop.center, Decimal(0)) or 0) - run_of(slope)) < SLACK]  # fmt: skip
    ridges = own or [stop.center for stop in _ridges(it.roof.slopes[0])]
    if not own and slope.name == 'wing_front':
        ridges = [stop.center for stop in _ridges(it.roof.slope('wing_right'))]
    beside = [one for one in it.roof.slopes if any(ridges[0].is_like(stop.center) for stop in _ridges(one))]
    return meet - real(it.asked.ridge) / 2 * max(one.rise for one in beside)


def _ridges(slope: Slope) -> list[Stop]:
    return [stop for region in slope.regions for stop in region.upper if stop.edge == 'ridge']


def _drawn(page: Page, some: list[dict[str, list[Decimal]]], it: Reading) -> None:
    keys = {'run': 'run', 'overhang': 'overhang', 'above_plate': 'above', 'ridge_top': 'ridge-top', 'ridge_bottom': 'ridge-bottom', 'meet': 'meet', 'peak': 'meet', 'tail': 'tail', 'raised': 'plate', 'ledger_top': 'ledger-top', 'beam_top': 'beam-top', 'at_wall': 'meet'}  # fmt: skip
    for said in page.ink.said:
        for name, sentence in it.names.drawn.items():
            found = told(sentence, said.text)
            if found:
                values = [one for each in some for one in each.get(keys[name], [])]
                right = [one for value in values for one in it.told(value)]
                if right:
                    it.figure(page.number, '', sentence.partition(' {')[0], found['length'], *right)
