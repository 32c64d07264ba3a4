"""The first pages of a roof's patterns: its members by their marks, on which pages each one's cuts are, and how far apart they lie."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings import svg
from layouts.paper.typeface import advance_em
from layouts.patterns.page import (
    BAR_INK,
    BAR_MM,
    FACT,
    FACT_LEADING,
    SAFE_MM,
    STRONG,
    TITLE,
    TITLE_LEADING,
    WEIGHT,
    Laid,
    bars,
    foot_of,
    head_and_foot,
    head_mm,
)  # fmt: skip
from layouts.patterns.shown import Shared
from layouts.patterns.typed import Typed, high_mm, line_at, set_in
from layouts.sheets.fold import PAPERS_MM
from layouts.words import pattern_list as words
from layouts.words.patterns import PAGE
from layouts.words.say import _
from tablegen.frame.frame import Frame
from tablegen.frame.framed import Framed
from tablegen.roof.pattern import Part, pattern_of

ROW, ROW_MM, HEAD_ROWS = 2.9, 4.4, 2
"""Size of a row's type and its height, mm; lines of the heads."""
AIR_MM = 2.0
"""Between columns."""
PARTS = ((Part.HEAD,), (Part.MOUTH, Part.MOUTH_AND_TAIL), (Part.TAIL, Part.MOUTH_AND_TAIL))
"""Of the columns that say pages."""


class List(Struct, frozen=True):
    """All rows, cut into pages."""

    head: tuple[Typed, ...]
    foot: tuple[Typed, ...]
    size: tuple[float, float]
    rows: tuple[Framed, ...]
    a_page: int

    @property
    def pages(self) -> int:
        return -(-len(self.rows) // self.a_page)


def list_of(frame: Frame, paper: str) -> List:
    """Return the list of a roof's members as it lies on pages."""
    size = PAPERS_MM[paper]
    wide = size[0] - 2 * SAFE_MM
    said = [(words.title_of(frame), TITLE, STRONG, TITLE * TITLE_LEADING)]
    said += [(one, FACT, WEIGHT, FACT * FACT_LEADING) for one in words.facts_of(frame)]
    head = tuple(
        line
        for one, type_mm, weight, after in said
        for line in set_in(one, wide - BAR_MM, type_mm, weight, after)
    )
    foot = foot_of(words.sentences_of(frame), wide)
    room = size[1] - 2 * SAFE_MM - head_mm(head) - BAR_MM - high_mm(foot)
    return List(head, foot, size, frame.members, int(room / ROW_MM) - HEAD_ROWS - 1)


def list_pages(of: List, shared: Sequence[Shared], pieces: Sequence[Laid]) -> list[Markup]:
    """Return the drawing of each page of a list.

    Given:
        shared, pieces  what is printed, with whom it is of, and where it lies
    """
    pages = pieces[-1].last
    heads, rows = words.heads(), [tuple(_cells(one, shared, pieces)) for one in of.rows]
    widths = [
        max(advance_em(line, svg.WIDTH, STRONG) * ROW for line in (*head.split('\n'), *cells))
        for head, *cells in zip(heads, *rows, strict=True)
    ]
    shares = [wide + AIR_MM for wide in widths]
    room = of.size[0] - 2 * SAFE_MM - 2 * BAR_MM
    scale = min(1.0, room / sum(shares))
    lefts = [SAFE_MM + sum(shares[:place]) * scale for place in range(len(shares))]
    return [
        _page(of, page + 1, pages, heads, rows[page * of.a_page :][: of.a_page], lefts, ROW * scale)
        for page in range(of.pages)
    ]


def _page(
    of: List,
    number: int,
    pages: int,
    heads: Sequence[str],
    rows: Sequence[Sequence[str]],
    lefts: Sequence[float],
    size: float,
) -> Markup:
    right = of.size[0] - SAFE_MM - 2 * BAR_MM
    page = _(PAGE).format(page=number, pages=pages)
    shapes = [svg.text(page, (right, SAFE_MM + TITLE), FACT * 1.1, 'end', STRONG)]
    lines = []
    y = SAFE_MM + high_mm(of.head) + FACT * FACT_LEADING
    for left, head in zip(lefts, heads, strict=True):
        named = head.split('\n')
        lines += [
            line_at(line, (left, y + (place + 0.7) * ROW_MM), size, STRONG)
            for place, line in enumerate(named, HEAD_ROWS - len(named))
        ]
    y += HEAD_ROWS * ROW_MM
    for place, cells in enumerate(rows):
        shapes.append(svg.line((SAFE_MM, y), (right, y), BAR_INK if place == 0 else BAR_INK / 3))
        lines += [
            line_at(cell, (left, y + 0.7 * ROW_MM), size, WEIGHT if column else STRONG)
            for column, (left, cell) in enumerate(zip(lefts, cells, strict=True))
            if cell
        ]
        y += ROW_MM
    shapes += bars(of.size, head_mm(of.head), of.foot)
    drawing = svg.drawing(*of.size, of.head[0].words, shapes)
    return Markup().join([drawing, head_and_foot(of.size, of.head, of.foot), *lines])


def _cells(framed: Framed, shared: Sequence[Shared], pieces: Sequence[Laid]) -> Iterator[str]:
    """Return a member's row: what it is, on which pages each part of it is, and how far apart they lie."""
    whole = pattern_of(framed.member)
    yield from words.member_cells(framed)
    own = [
        (one.shown.flat.piece.part, laid)
        for one, laid in zip(shared, pieces, strict=True)
        if any(it is framed for it in one.of)
    ]
    for parts in PARTS:
        yield next((words.pages_said(laid.first, laid.last) for part, laid in own if part in parts), '')
    yield from words.length_cells(whole)
