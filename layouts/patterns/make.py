"""Making patterns: from a member's pattern to one PDF at full size, written only once it is whole."""

from __future__ import annotations

import hashlib
from pathlib import Path

from pypdf import PdfReader, PdfWriter
from pypdf.generic import NameObject

from layouts.html.page_html import document_html
from layouts.paper.typeface import font_address
from layouts.patterns.flat import folded_flat
from layouts.patterns.page import Laid, page_drawing, sheet_for
from layouts.pdf.typeset import Job, typeset
from layouts.sheets.fold import PAPERS_MM
from layouts.sheets.sheet_forms import identify, write_whole
from layouts.words.patterns import facts_of, part_of, sentences_of, title_of
from layouts.words.say import _
from tablegen.errors import BookError
from tablegen.messages import message
from tablegen.roof.pattern import Pattern

MOST_PAGES = 80


def laid(whole: Pattern, paper: str, run_known: bool) -> list[Laid]:
    """Return how a pattern's pieces lie on pages.

    Given:
        run_known  whether lengths that the run makes are to be told

    Errors:
        BookError if they take too many pages
    """
    found: list[Laid] = []
    first, joints = 1, 0
    for piece in whole.pieces:
        flat = folded_flat(whole, piece)
        alone, joined = (sentences_of(whole, piece, several) for several in (False, True))
        facts = tuple(facts_of(whole, piece, run_known))
        found.append(Laid(flat, sheet_for(flat, paper, len(facts), alone, joined), facts, first, joints))
        first, joints = found[-1].last + 1, found[-1].joints
    if first - 1 > MOST_PAGES:
        problem = message('making.too_many_sheets', pages=first - 1)
        raise BookError('overhang', problem, message('making.most_pages', most=MOST_PAGES))
    return found


def write_pattern(whole: Pattern, pieces: list[Laid], paper: str, folder: Path) -> Path:
    """Write a pattern's pages into a folder, and return the file.

    Notes:
        The viewer is asked for actual size. Same input, same bytes.
    """
    pages = pieces[-1].last
    bodies = [
        f'<div class="{"upright" if one.sheet.upright else "across"}">'
        f'{page_drawing(whole, one, page, pages)}</div>'
        for one in pieces
        for page in range(one.sheet.tiling.count)
    ]
    title = title_of(whole)
    job = Job(document_html(bodies, title), _style(paper), pages, folder / 'pages.pdf')
    typeset([job])
    writer = PdfWriter()
    writer.append(PdfReader(job.out))
    preferences = writer.create_viewer_preferences()
    preferences[NameObject('/PrintScaling')] = NameObject('/None')
    identify(writer, hashlib.sha256(job.out.read_bytes()).digest())
    out = folder / 'pattern.pdf'
    write_whole(writer, title, out)
    return out


def told(whole: Pattern, pieces: list[Laid]) -> list[str]:
    """Return which pages each piece is on, in lines."""
    return [
        (_('pages {first} to {last}: {part}') if one.last > one.first else _('page {first}: {part}')).format(
            first=one.first, last=one.last, part=part_of(whole, one.flat.piece)
        )
        for one in pieces
    ]


def _style(paper: str) -> str:
    width, height = PAPERS_MM[paper]
    return f"""
@font-face {{ font-family: "Open Sans"; src: url("{font_address()}"); }}
@page upright {{ size: {width}mm {height}mm; margin: 0; }}
@page across {{ size: {height}mm {width}mm; margin: 0; }}
html {{ font-size: 10mm; line-height: 0; }}
body {{ margin: 0; }}
.upright {{ page: upright; }}
.across {{ page: across; }}
div {{ break-after: page; }}
div:last-child {{ break-after: auto; }}
img {{ display: block; }}
"""
