"""Marks: hairlines that say where to cut, fold and staple, a bar to measure, and small type that names the sheet."""

from __future__ import annotations

from functools import cache

from msgspec import Struct

from layouts.sheets.fold import FIT_MM, POINTS_PER_MM, Panel, SheetLayout, SheetSide
from layouts.sheets.letters import Letter, letter, units
from layouts.sheets.strips import UNPRINTABLE_MM, Strip, bar, bar_strip, label_strip
from layouts.words.say import N_, _
from layouts.words.sheets import BETWEEN, FACES, LOWER_BLANK, SECTION, SHEET

HAIRLINE_PT = 0.3
TICK_MM = 3.0
LABEL_PT, LEAST_LABEL_PT = 6.0, 4.5
BAR_WORDS = (N_('upper tick 100 mm, lower tick 4 in'), N_('at 100 %, give or take 1 mm, 1/32 in'))
"""Before and after the bar. Paper out by more moves the outer edges of an opening by a millimeter each: common practice,
no source; a print fitted to the paper is out by 3 mm and more."""
LAP_MM = 0.3


class Line(Struct, frozen=True):
    """One straight mark; points from the lower left corner of the sheet."""

    x0: float
    y0: float
    x1: float
    y1: float
    dashed: bool = False


def line_mm(x0: float, y0: float, x1: float, y1: float, dashed: bool = False) -> Line:
    """Return a mark between two points in millimeters."""
    return Line(POINTS_PER_MM * x0, POINTS_PER_MM * y0, POINTS_PER_MM * x1, POINTS_PER_MM * y1, dashed)


def sheet_label(side: SheetSide) -> str:
    """Return the words in the margin: 'section 1 of 3 · sheet 2 of 9 · front'."""
    words = []
    if side.sections > 1:
        words.append(_(SECTION).format(section=side.section, sections=side.sections))
    words.append(_(SHEET).format(sheet=side.sheet, sheets=side.sheets))
    words.append(_(FACES[side.face]))
    if side.lower_blank:
        words.append(_(LOWER_BLANK))
    return BETWEEN.join(words)


def mark_lines(layout: SheetLayout, side: SheetSide) -> list[Line]:
    """Return the cut, fold and staple marks of a side.

    Given:
        layout   how pages lie on the sheet
        side     the side, for the staples: only the outermost half-sheet shows them, on its outside

    Returned:
        cut marks in line with the trim's edges and with the middle cut, from the block to the paper's edge;
        a dashed fold mark above and below the spine; ticks on the spine at 1/4 and 3/4 of its length.

    Notes:
        1. No mark is drawn inside a page. Where pages fill the paper to its edge there is no margin and
           so no cut mark; short dashes at both ends of the spine, on the line between the pages, mark the fold.
        2. The middle cut falls on a mark only if there is more than one row.
    """
    width, height = layout.sheet_mm
    beside, above = layout.margins_mm
    spine, left, right, foot, top = width / 2, beside, width - beside, above, height - above
    lines: list[tuple[float, float, float, float, bool]] = []
    if above > FIT_MM:
        for x, dashed in ((left, False), (spine, True), (right, False)):
            lines += [(x, top, x, height, dashed), (x, foot, x, 0.0, dashed)]
    else:
        near, far = UNPRINTABLE_MM, UNPRINTABLE_MM + TICK_MM
        lines += [(spine, height - far, spine, height - near, True), (spine, far, spine, near, True)]
    if beside > FIT_MM:
        for row in range(layout.rows + 1):
            y = top - row * layout.trim_height_mm
            lines += [(left, y, 0.0, y, False), (right, y, width, y, False)]
    if side.face == 'front' and side.sheet == 1:
        for quarter in (1, 3):
            y = top - layout.trim_height_mm * quarter / 4
            lines.append((spine, y - TICK_MM / 2, spine, y + TICK_MM / 2, False))
    return [line_mm(*line) for line in lines]


def draw_tab(layout: SheetLayout, panel: Panel, below_top_mm: float, height_mm: float) -> str:
    """Return what goes on of a page's tab from its outer edge to the edge of the paper, as PDF operators.

    Notes:
        It begins a little inside the page, lest a white seam show between two edges that only meet.
    """
    left, foot = layout.corner_mm(panel.column, panel.row)
    inner = left + panel.shift_mm + (layout.trim_width_mm - LAP_MM if panel.column else LAP_MM)
    outer = panel.column * layout.sheet_mm[0]
    y = foot + layout.trim_height_mm - below_top_mm - height_mm
    box = (min(inner, outer), y, abs(outer - inner), height_mm)
    return 'q 0 g ' + ' '.join(f'{POINTS_PER_MM * length:.3f}' for length in box) + ' re f Q\n'


def draw_lines(lines: list[Line]) -> str:
    """Return the drawing of marks, as PDF operators."""
    drawn = [f'0 G {HAIRLINE_PT} w 0 J']
    for dashed, pattern in ((False, '[] 0 d'), (True, '[1.5 1] 0 d')):
        drawn.append(pattern)
        drawn += [
            f'{line.x0:.3f} {line.y0:.3f} m {line.x1:.3f} {line.y1:.3f} l S'
            for line in lines
            if line.dashed == dashed
        ]
    return 'q\n' + '\n'.join(drawn) + '\nQ\n'


def side_words(layout: SheetLayout, label: str) -> tuple[str, frozenset[Letter]]:
    """Return the drawing of a side's bar and of all its small type, and the letters that it needs."""
    lines, before, after = bar(bar_strip(layout))
    said = [
        draw_label(label_strip(layout), label),
        draw_label(before, _(BAR_WORDS[0]), to_end=True),
        draw_label(after, _(BAR_WORDS[1])),
    ]
    drawn = [draw_lines([line_mm(*line) for line in lines]), *(words for words, _letters in said)]
    return ''.join(drawn), frozenset().union(*(letters for _words, letters in said))


@cache
def draw_label(strip: Strip, text: str, to_end: bool = False) -> tuple[str, frozenset[Letter]]:
    """Return the drawing of one line of small type in a strip, and the letters it needs.

    Given:
        to_end  whether it stands at the end of the strip, not at its start

    Returned:
        PDF operators that draw each letter as a form named /glyph-NAME, and those letters; nothing at all where
        the strip is too low for letters.

    Notes:
        1. Letters are outlines, so that no second font enters the file; the text itself goes along for
           readers as ActualText (ISO 32000-1, 14.9.4).
        2. A text too long or too high for its place is set smaller.
    """
    letters = [letter(character) for character in text]
    boxes = [one.box for one in letters if one.box]
    if not boxes:
        return '', frozenset()
    low, high = min(box[1] for box in boxes), max(box[3] for box in boxes)
    highest = min(LABEL_PT, POINTS_PER_MM * strip.high * units() / (high - low))
    if highest < LEAST_LABEL_PT:
        return '', frozenset()
    wide = sum(one.advance for one in letters)
    scale = min(highest / units(), POINTS_PER_MM * strip.long / wide)
    start = strip.long - wide * scale / POINTS_PER_MM if to_end else 0.0
    base = strip.high / 2 - (low + high) / 2 * scale / POINTS_PER_MM
    hidden = text.encode('utf-16-be').hex()
    drawn = [f'/Span <</ActualText <feff{hidden}>>> BDC q 0 g', strip.matrix(start, base, scale)]
    for one in letters:
        form = f'/glyph-{one.name} Do ' if one.box else ''
        drawn.append(f'{form}1 0 0 1 {one.advance:.0f} 0 cm')
    return '\n'.join(drawn) + '\nQ EMC\n', frozenset(one for one in letters if one.box)
