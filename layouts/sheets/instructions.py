"""The sheet that is printed first: how to print, cut, fold and staple the rest."""

from __future__ import annotations

from pathlib import Path

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings.folding import cutting, flipping, folding, stapling
from layouts.html.page_html import document_html, environment
from layouts.pages.book import Plan
from layouts.paper.longer import size_for
from layouts.paper.page import Index
from layouts.paper.typeface import font_address
from layouts.pdf.documents import Job
from layouts.sheets.fold import PAPERS_MM
from layouts.words.say import _, n_, told
from tablegen.numbers import text
from tablegen.numbers.units import INCHES

PER = INCHES.part
MM_IN_A_PART = 25.4 / PER
"""A page is measured by tape, to a sixteenth of an inch."""
PAPER_NAMES = {'letter': 'Letter', 'a4': 'A4'}


class Guide(Struct, frozen=True):
    """What the sheet says."""

    title: str
    made_of: str
    """Its pages, sheets and sections."""
    up: int
    sections: tuple[tuple[int, int, int, int], ...]
    """Number, first page, last page and sheets of each section."""
    page: str
    """Width and height of a page, as it must measure on the printed sheet."""
    blank: bool
    """Whether any section's last sheet has an empty lower half."""
    flip: Markup
    cut: Markup
    fold: Markup
    staple: Markup


def instructions_job(planned: Plan, folder: Path) -> Job:
    """Return the one-page document of instructions, on the printer's paper."""
    settings, index, up = planned.settings, planned.index, planned.trim.up
    per_sheet = 2 * up
    sections = tuple(
        (place, first, first + count - 1, -(-count // per_sheet))
        for place, (first, count) in enumerate(index.sections, 1)
    )
    guide = Guide(
        settings.title,
        _made_of(index, sum(section[3] for section in sections), PAPER_NAMES[settings.paper]),
        up,
        sections,
        _size(planned.trim.width_mm, planned.trim.height_mm),
        up == 4 and any(count % per_sheet for _, count in index.sections),
        flipping(up),
        cutting(),
        folding(),
        stapling(),
    )
    width, height = PAPERS_MM[settings.paper]
    css = f"""
@font-face {{ font-family: "Open Sans"; src: url("{font_address()}"); }}
@page {{ size: {width}mm {height}mm; margin: 16mm 18mm; }}
html {{ font-size: 10pt; }}
body {{ margin: 0; font-family: "Open Sans"; font-variation-settings: "wdth" 88, "wght" 500; font-weight: 500;
  font-size: 1.1rem; line-height: 1.55rem; color: #000; }}
h1 {{ margin: 0 0 1rem; padding-top: .6rem; border-top: .4rem solid #000; font-size: 2.6rem; line-height: 2.8rem;
  font-weight: 800; font-variation-settings: "wdth" 76, "wght" 800; }}
b {{ font-weight: 700; font-variation-settings: "wdth" 80, "wght" 720; }}
p {{ margin: 0 0 .6rem; }}
table {{ width: 100%; border-collapse: collapse; }}
td {{ vertical-align: top; padding: .7rem 0; border-bottom: .05rem solid #000; }}
td.k {{ width: 2rem; font-size: 1.8rem; line-height: 1.9rem; font-weight: 800; font-variation-settings: "wdth" 76, "wght" 800; }}
td.d {{ width: 15rem; }}
"""
    told()
    body = environment().get_template('instructions.html').render(it=guide)
    size = size_for(told())
    css += f'html {{ font-size: {size / 10}pt; }}'
    return Job(document_html([body], settings.title), css, 1, folder / 'instructions.pdf')


def _made_of(index: Index, sheets: int, paper: str) -> str:
    sections = len(index.sections)
    if sections == 1:
        return n_(
            '{pages} pages on {sheets} sheet of {paper} paper after this one.',
            '{pages} pages on {sheets} sheets of {paper} paper after this one.',
            sheets,
        ).format(pages=index.total, sheets=sheets, paper=paper)
    return n_(
        '{pages} pages on {sheets} sheet of {paper} paper after this one, in {sections} sections.',
        '{pages} pages on {sheets} sheets of {paper} paper after this one, in {sections} sections.',
        sheets,
    ).format(pages=index.total, sheets=sheets, paper=paper, sections=sections)


def _size(width_mm: float, height_mm: float) -> str:
    parts = (round(length / MM_IN_A_PART) for length in (width_mm, height_mm))
    wide, high = (text.mixed(count, PER) for count in parts)
    return _('{width} mm wide and {height} mm high (near {wide} by {high} in)').format(
        width=f'{width_mm:g}', height=f'{height_mm:g}', wide=wide, high=high
    )
