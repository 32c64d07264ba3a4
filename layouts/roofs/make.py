"""Making a roof's sheets: from its frame to one PDF, written only once it is whole."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence
from fractions import Fraction
from importlib.resources import files
from pathlib import Path

from msgspec import Struct

from layouts.html.page_html import document_html, environment
from layouts.paper.trim import PAPERS_MM, POINTS_PER_MM
from layouts.paper.typeface import font_address
from layouts.pdf.documents import Job, typeset
from layouts.pdf.new_file import NewFile
from layouts.pdf.written import Written
from layouts.roofs.groups import groups_of
from layouts.roofs.lists import checks_said, lists_of
from layouts.roofs.marking import MarkingSheet, key_of, marking_sheet
from layouts.roofs.one_page import numbered, pages_of
from layouts.roofs.plan_drawing import PlanDrawing, plan_drawing
from layouts.roofs.plates import plate_layouts
from layouts.roofs.section_sheet import section_sheets
from layouts.told.blocks import DEFERS, in_inches
from layouts.words.frame import OF_PLATES
from layouts.words.lists import joined, pitches
from layouts.words.marking import slope_name
from layouts.words.say import _
from tablegen.frame.buying import Buying
from tablegen.frame.frame import Frame
from tablegen.frame.roof_keys import kind_of
from tablegen.frame.sections import exact_of, sections_of
from tablegen.numbers import text
from tablegen.numbers.figure import length_figure
from tablegen.roof.figures import size

SIDE_MM, TOP_MM, FOOT_MM = 12.0, 11.0, 17.0
"""Margins; the foot holds what defers to the code, and the page's number."""
PLAN_SHARE = 0.8
"""Of a page's height that the plan may take."""
CLOSER = 3
"""Ways to set a marking sheet, each closer than the one before."""
LISTS = 'lists'
"""The key of what follows the marking sheets."""


class PlanSheet(Struct, frozen=True):
    """The plan with what is asked for and what is on the other sheets."""

    name: str
    kind: str
    pitch: str
    sizes: str
    spacing: str
    overhang: str
    nearest: str
    slopes: tuple[str, ...]
    """Where they differ: what each is, its pitch, its overhang and how far its plate stands over the main ones."""
    drawing: PlanDrawing
    setting_out: tuple[str, ...]
    """What its plates should measure."""
    marking: tuple[MarkingSheet, ...]


def write_roof(frame: Frame, buy: Buying, paper: str, folder: Path) -> tuple[Path, int]:
    """Write a roof's sheets into a folder, and return the file and its pages.

    Notes:
        1. Same input, same bytes.
        2. Marking sheets that take several pages are set once more, their lines closer; those that still do without the clauses of their
           cautions, and where that helps as little they say on each page which it is.
    """
    title = frame.asked.name or _('{kind} roof').format(kind=kind_of(frame.asked))
    plan = _drawn(frame, paper)
    style, job_out = _style(paper, title), folder / 'pages.pdf'

    def pages_set(marking: Sequence[MarkingSheet], more: str = '') -> dict[str, int]:
        html = document_html(roof_bodies(frame, buy, paper, marking, plan), title)
        typeset([Job(html, style + more, None, job_out)])
        return pages_of(job_out, marking, LISTS)

    marking = marking_sheets(frame, paper)
    pages = pages_set(marking)
    over = [_over(pages)]
    while over[-1] and len(over) < CLOSER:
        marking = marking_sheets(frame, paper, *over)
        pages = pages_set(marking)
        over.append(_over(pages))
    if more := numbered(marking, pages):
        pages_set(marking, more)
    out = folder / 'roof.pdf'
    file = NewFile.of(Written(job_out))
    file.write(out, title)
    return out, len(file.pages)


def _over(pages: Mapping[str, int]) -> set[str]:
    """Return the keys of sheets that take several pages."""
    return {key for key, number in pages.items() if number > 1}


def marking_sheets(
    frame: Frame, paper: str, tight: Collection[str] = (), bare: Collection[str] = ()
) -> tuple[MarkingSheet, ...]:
    """Return a sheet for each way members are cut.

    Given:
        tight  keys of those whose lines stand closer
        bare   of those whose cautions' clauses stand in the lists
    """
    width, _height = room(paper)
    return tuple(
        marking_sheet(group, frame, width, key_of(group) in tight, key_of(group) in bare)
        for group in groups_of(frame.members)
    )


def _drawn(frame: Frame, paper: str) -> PlanDrawing:
    width, height = room(paper)
    return plan_drawing(frame, width, height * PLAN_SHARE)


def roof_bodies(
    frame: Frame,
    buy: Buying,
    paper: str,
    marking: Sequence[MarkingSheet] | None = None,
    drawing: PlanDrawing | None = None,
) -> list[str]:
    """Return the HTML of each sheet: the plan, sections, plates, marking sheets, the usual ones where none are given, lists."""
    width, height = room(paper)
    marking = marking_sheets(frame, paper) if marking is None else marking
    plan = PlanSheet(
        frame.asked.name,
        kind_of(frame.asked),
        pitches(frame.asked.pitch, frame.asked.other_pitch),
        _sizes(frame),
        text.run(frame.asked.spacing_in),
        text.run(frame.asked.overhang_in),
        text.rational(Fraction(1, frame.asked.measure.per)),
        tuple(_slopes(frame)),
        drawing or _drawn(frame, paper),
        tuple(said for name, said in checks_said(frame) if name in OF_PLATES),
        tuple(marking),
    )
    keyed = list(zip((one.key for one in marking), groups_of(frame.members), strict=True))
    told = [
        ('plan', plan),
        ('section', section_sheets(frame, width, height)),
        ('plates', plate_layouts(frame, width)),
        *(('marking', one) for one in marking),
        ('lists', lists_of(frame, buy, keyed)),
    ]
    templates = environment()
    return [templates.get_template(f'roof_{name}.html').render(it=it) for name, it in told]


def room(paper: str) -> tuple[float, float]:
    """Return the width and height of what is printed on a page, in points."""
    width, height = PAPERS_MM[paper]
    return (width - 2 * SIDE_MM) * POINTS_PER_MM, (height - TOP_MM - FOOT_MM) * POINTS_PER_MM


def _slopes(frame: Frame) -> Iterator[str]:
    found = sections_of(frame.asked, frame.plan)
    for one in found if len(found) > 1 else ():
        words = _('{slopes}: {pitch}, overhang {overhang}')
        if one.plate.count > 0:
            words = _('{slopes}: {pitch}, overhang {overhang}, plates {plate} over the main ones, plumb')
        elif one.plate.count:
            words = _('{slopes}: {pitch}, overhang {overhang}, plates {plate} under the main ones, plumb')
        yield words.format(
            slopes=joined([slope_name(name) for name in one.slopes]),
            pitch=pitches(*(leg.pitch for leg in one.legs)),
            overhang=in_inches(one.overhang),
            plate=in_inches(length_figure(size(exact_of(one.plate)), frame.asked.measure)),
        )


def _sizes(frame: Frame) -> str:
    asked = frame.asked
    if not asked.width_in:
        return ''
    words = _('{width} wide, {length} long')
    return words.format(width=text.run(asked.width_in), length=text.run(asked.length_in))


def _style(paper: str, title: str) -> str:
    width, height = PAPERS_MM[paper]
    number = _('page {page} of {pages}').format(page='" counter(page) "', pages='" counter(pages) "')
    quoted = title.replace('\\', '\\\\').replace('"', '\\"')
    sizes = f"""
@font-face {{ font-family: "Open Sans"; src: url("{font_address()}"); }}
@page {{ size: {width}mm {height}mm; margin: {TOP_MM}mm {SIDE_MM}mm {FOOT_MM}mm;
  @bottom-left {{ content: "{quoted}. {_(DEFERS)}"; width: 80%; }}
  @bottom-right {{ content: "{number}"; width: 20%; }} }}
"""
    return sizes + files('layouts.html').joinpath('styles/roof.css').read_text('utf-8')
