"""Reading what stands over a roof's plan, and the heights of its sections, told and drawn."""

from __future__ import annotations

from decimal import Decimal

from tablegen.proof.digits import real
from tablegen.proof.page import Page, close
from tablegen.proof.roof_plates import slopes_named
from tablegen.proof.roof_reading import Reading, run_told
from tablegen.proof.roof_slopes import Slope, run_of
from tablegen.proof.sentences import told, told_within
from tablegen.proof.sheet_lines import Sheet


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
