"""Sheets: the pages of the finished booklet laid out on the printer's paper, with marks and margin labels."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from pathlib import Path
from types import MappingProxyType

from msgspec import Struct

from layouts.pdf.new_file import NewFile
from layouts.pdf.written import Page, Written
from layouts.sheets.fold import PAPERS_MM, POINTS_PER_MM, SheetLayout, SheetSide, sheet_sides
from layouts.sheets.marks import draw_lines, draw_tab, mark_lines, sheet_label, side_words
from layouts.sheets.sheet_forms import Form, add_sheet, letter_forms, page_form
from layouts.words.say import _


class SheetCount(Struct, frozen=True):
    """How much paper a booklet takes."""

    sections: tuple[int, ...]
    """Sheets of each section."""
    instructions: int
    """Sheets of instructions before them: 1 or 0."""

    @property
    def total(self) -> int:
        """Return the number of sheets to put into the printer."""
        return sum(self.sections) + self.instructions


def impose(
    booklet: Path,
    sections: Sequence[tuple[int, int]],
    layout: SheetLayout,
    out: Path,
    title: str = '',
    tabs: Mapping[int, tuple[float, float]] = MappingProxyType({}),
    instructions: Path | None = None,
    labels: Callable[[SheetSide], str] = sheet_label,
    pages: Sequence[Page] | None = None,
) -> SheetCount:
    """Write the sheets of a booklet, ready for a two-sided printer.

    Given:
        booklet        PDF of pages in reading order, all of the layout's trim size
        sections       place of the first page, from 0, and number of pages of each section
        layout         paper, trim, and pages on a side
        out            PDF to write
        title          of the book
        tabs           by a page's place, from 0: how far below the trim's top its tab begins, and its height, mm; it is
                       drawn on to the paper's edge, so that a book that is not trimmed has it there
        instructions   PDF of one page of the paper's size, either way round: becomes the first sheet
        labels         gives the words in the margin of a side
        pages          the booklet's, where they need not be read

    Returned:
        the sheets used

    Errors:
        ValueError where the booklet, its sections and the layout do not belong together.

    Notes:
        1. Flip on the LONG edge with 4 pages a side, on the SHORT edge with 2; print at actual size. Both are
           written into the file as the viewer's first choice. The fold module tells the order.
        2. Where pages fill the paper to its edge there is no mark but those on the spine; words and bar lie along it.
        3. Pages become forms with their data as they are, so fonts are shared and nothing is packed anew.
           Links and other annotations stay behind: paper has none.
        4. Same input, same bytes. A file of that name is replaced only once the new one is complete.
    """
    pages = Written(booklet).pages if pages is None else pages
    sides = sheet_sides(sections, layout.up)
    if sum(count for _, count in sections) != len(pages):
        raise ValueError(f'{booklet}: {len(pages)} pages, but sections are {list(sections)}')
    trim = (layout.trim_width_mm, layout.trim_height_mm)
    file = NewFile()
    if instructions is not None:
        _add_instructions(file, instructions, layout)
    forms = [page_form(file, page, number, trim, booklet) for number, page in enumerate(pages, 1)]
    for side in sides:
        drawn, named = _side(file, layout, side, labels(side), tabs, forms)
        add_sheet(file, layout.sheet_mm, drawn, named)
    asked = {
        'Duplex': '/DuplexFlipLongEdge' if layout.up == 4 else '/DuplexFlipShortEdge',
        'PrintScaling': '/None',
    }
    named_as = _('{title}: sheets to print').format(title=title)
    file.write(out, named_as, preferences=asked)
    counts = {side.section: side.sheets for side in sides}
    return SheetCount(tuple(counts.values()), int(instructions is not None))


def _side(
    file: NewFile,
    layout: SheetLayout,
    side: SheetSide,
    label: str,
    tabs: Mapping[int, tuple[float, float]],
    forms: Sequence[Form],
) -> tuple[bytes, dict[str, bytes]]:
    """Return the drawing of a side and the forms it names.

    Notes:
        Marks come last: those on the spine lie on the line between two pages, whose ground would cover them.
    """
    words, letters = side_words(layout, label)
    named = letter_forms(file, letters)
    drawn = []
    width, height = (POINTS_PER_MM * length for length in (layout.trim_width_mm, layout.trim_height_mm))
    for panel in side.panels:
        form = forms[panel.page]
        left, foot = (POINTS_PER_MM * length for length in layout.corner_mm(panel.column, panel.row))
        x = left + POINTS_PER_MM * panel.shift_mm - form.left
        y = foot - form.low
        # A shifted page must not reach over the spine, so its own panel is its window.
        window = f'{left:.3f} {foot:.3f} {width:.3f} {height:.3f} re W n'
        drawn.append(f'q {window} 1 0 0 1 {x:.3f} {y:.3f} cm /page-{panel.page} Do Q\n')
        named[f'page-{panel.page}'] = form.name
        if panel.page in tabs:
            drawn.append(draw_tab(layout, panel, *tabs[panel.page]))
    drawn += [draw_lines(mark_lines(layout, side)), words]
    return ''.join(drawn).encode('ascii'), named


def _add_instructions(file: NewFile, instructions: Path, layout: SheetLayout) -> None:
    """Add the one page of instructions and an empty back, so that the next sheet begins on a front."""
    pages = Written(instructions).pages
    if len(pages) != 1:
        raise ValueError(f'{instructions}: {len(pages)} pages of instructions, not 1')
    size = PAPERS_MM[layout.paper]
    left, low, right, high = pages[0].trim
    if right - left > high - low:
        size = size[::-1]
    form = page_form(file, pages[0], 1, size, instructions)
    drawn = f'q 1 0 0 1 {-left:.3f} {-low:.3f} cm /instructions Do Q\n'
    add_sheet(file, size, drawn.encode('ascii'), {'instructions': form.name})
    add_sheet(file, size, b'', {})
