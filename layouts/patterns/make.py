"""Making patterns: from what is shown of a member, or of all of a roof, to one PDF at full size, written only once it is whole."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from pathlib import Path

from markupsafe import Markup

from layouts.html.page_html import document_html
from layouts.paper.typeface import font_address
from layouts.patterns import typed
from layouts.patterns.page import STRONG, WEIGHT, Laid, Shown, page_drawing, sheet_for
from layouts.pdf.documents import Job, typeset
from layouts.pdf.new_file import NewFile
from layouts.pdf.written import Written
from layouts.sheets.fold import PAPERS_MM
from layouts.words.say import _
from tablegen.errors import BookError
from tablegen.messages import message

MOST_PAGES = 80
"""Of a piece."""


def laid(shown: Iterable[Shown], paper: str, before: int = 0) -> list[Laid]:
    """Return how pieces lie on pages.

    Given:
        before  pages that come before theirs

    Errors:
        BookError if one takes too many pages
    """
    found: list[Laid] = []
    joints = 0
    for one in shown:
        found.append(Laid(one, sheet_for(one, paper), before + 1, joints))
        count, before, joints = found[-1].last - before, found[-1].last, found[-1].joints
        if count > MOST_PAGES:
            problem = message('making.too_many_sheets', pages=count)
            raise BookError('overhang', problem, message('making.most_pages', most=MOST_PAGES))
    return found


def write_patterns(title: str, first: Sequence[Markup], pieces: list[Laid], paper: str, folder: Path) -> Path:
    """Write pages into a folder, and return the file.

    Given:
        first  drawings of upright pages that come before the pieces

    Notes:
        The viewer is asked for actual size. Same input, same bytes.
    """
    pages = pieces[-1].last
    drawn = [(drawing, True) for drawing in first]
    drawn += [
        (page_drawing(one, page, pages), one.sheet.upright)
        for one in pieces
        for page in range(one.sheet.tiling.count)
    ]
    bodies = [_page(number, *one) for number, one in enumerate(drawn, 1)]
    job = Job(document_html(bodies, title), _style(paper), pages, folder / 'pages.pdf')
    typeset([job])
    out = folder / 'pattern.pdf'
    NewFile.of(Written(job.out)).write(out, title, preferences={'PrintScaling': '/None'})
    return out


def _page(number: int, drawing: Markup, upright: bool) -> str:
    return f'<section id="pattern-{number}" class="{"upright" if upright else "across"}">{drawing}</section>'


def told(pieces: Sequence[Laid], of_roof: bool = False) -> list[str]:
    """Return which pages each piece is on, in lines.

    Given:
        of_roof  whether they are of several members, which are then named too
    """
    return [
        (_('pages {first} to {last}: {part}') if one.last > one.first else _('page {first}: {part}')).format(
            first=one.first, last=one.last, part=one.shown.title if of_roof else one.shown.part
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
section {{ break-after: page; position: relative; }}
section:last-child {{ break-after: auto; }}
img {{ display: block; }}
{typed.style((WEIGHT, STRONG))}
"""
