"""The letters of a finished page as a renderer of other people's making places them: text in the file's order, and ink."""

from __future__ import annotations

import ctypes
import re
from collections.abc import Iterator, Sequence
from pathlib import Path

import pypdfium2
import pypdfium2.raw as pdfium
from msgspec import Struct

MM = 25.4 / 72
SAME_LINE_MM, TOGETHER_MM = 0.15, 0.12
"""How far bases of one line may differ, and letters of one word stand apart, by their advances."""
TABLE_FONT = b'Table'
DOTS, GRAY, NEAR_MM = 2.0, 200, 2.5
"""Dots to a millimeter; darker than which is ink; how far from a line its space reaches."""
WHOLE, FRACTION = re.compile(r'[+−]?\d[\d.,]*[°″′†‡§]*'), re.compile(r'\d+/\d+[″†‡§]*')


class Run(Struct):
    """Letters without a gap; mm, from the lower left corner of the page."""

    text: str
    left: float
    right: float
    """Of its ink."""
    begins: float
    ends: float
    """Of its advances."""
    base: float
    heights: list[tuple[str, float]]
    """Every letter and the height of its ink."""
    in_table: bool
    """Whether it is set in the font of tables."""

    @property
    def is_number(self) -> bool:
        return bool(WHOLE.fullmatch(self.text) or FRACTION.fullmatch(self.text))


class InkedPage:
    """A page of a PDF."""

    foot = 7.5
    """Below it stands the page's number, mm."""

    def __init__(self, page: pypdfium2.PdfPage):
        text = page.get_textpage()
        self.text: str = text.get_text_range().replace('\r\n', '\n')
        self.runs = list(_runs(text))
        self.page = page

    def filled(self, left: float, top: float, foot: float) -> float:
        """Return how much of its height has ink, or has some near; its margins at either side, top and foot are left out, mm."""
        dots = self.page.render(scale=DOTS * MM, grayscale=True).to_numpy()
        edge = round(left * DOTS)
        inked = (dots[round(top * DOTS) : -round(foot * DOTS), edge:-edge] < GRAY).any(axis=1)
        near = round(NEAR_MM * DOTS)
        spread = [inked[max(0, place - near) : place + near + 1].any() for place in range(len(inked))]
        return sum(spread) / len(spread)

    def lines(self) -> list[list[Run]]:
        """Return its runs by the line they stand on, from the top, each from the left."""
        found: list[list[Run]] = []
        for run in sorted(self.runs, key=lambda run: -run.base):
            if found and found[-1][0].base - run.base < SAME_LINE_MM:
                found[-1].append(run)
            else:
                found.append([run])
        return [sorted(line, key=lambda run: run.begins) for line in found]

    def is_row(self, runs: Sequence[Run]) -> bool:
        """Return whether some runs are of a table's row: in its font, or numbers all; and above the page's own."""
        of_table = runs[0].in_table or all(run.is_number for run in runs)
        return of_table and runs[0].base > self.foot

    def after(self, run: Run) -> Run:
        """Return the run that is read next; the last one is read by itself."""
        place = next(place for place, one in enumerate(self.runs) if one is run)
        return self.runs[min(place + 1, len(self.runs) - 1)]


def inked_pages(pdf: Path) -> list[InkedPage]:
    """Return every page of a file."""
    document = pypdfium2.PdfDocument(pdf)
    return [InkedPage(page) for page in document]


def is_mixed(pair: tuple[Run, Run]) -> bool:
    """Return whether two neighbors are a whole number and its fraction."""
    return (
        pair[0].text.isdigit()
        and bool(FRACTION.fullmatch(pair[1].text))
        and pair[1].begins - pair[0].ends < 1.2 * TOGETHER_MM * 6
    )


def _runs(text: pypdfium2.PdfTextPage) -> Iterator[Run]:
    run: Run | None = None
    left, right, foot, top, x, base = (ctypes.c_double() for _ in range(6))
    box = pdfium.FS_RECTF()
    for place in range(text.count_chars()):
        letter = chr(pdfium.FPDFText_GetUnicode(text.raw, place))
        pdfium.FPDFText_GetCharBox(text.raw, place, left, right, foot, top)
        if letter.isspace() or right.value <= left.value:
            run = None
            continue
        pdfium.FPDFText_GetLooseCharBox(text.raw, place, box)
        pdfium.FPDFText_GetCharOrigin(text.raw, place, x, base)
        height = (top.value - foot.value) * MM
        begins, on = box.left * MM, base.value * MM
        if run and abs(run.base - on) < SAME_LINE_MM and -2 * TOGETHER_MM < begins - run.ends < TOGETHER_MM:
            run.text += letter
            run.right, run.ends = right.value * MM, box.right * MM
            run.heights.append((letter, height))
        else:
            run = Run(
                letter,
                left.value * MM,
                right.value * MM,
                begins,
                box.right * MM,
                on,
                [(letter, height)],
                _in_table(text, place),
            )
            yield run


def _in_table(text: pypdfium2.PdfTextPage, place: int) -> bool:
    name, flags = ctypes.create_string_buffer(80), ctypes.c_int()
    pdfium.FPDFText_GetFontInfo(text.raw, place, name, len(name), flags)
    return TABLE_FONT in name.value


def least(heights: Sequence[tuple[str, float]]) -> float:
    """Return the least height of a digit's ink."""
    return min(height for letter, height in heights if letter.isdigit())
