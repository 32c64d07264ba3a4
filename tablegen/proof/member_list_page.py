"""The pages of all members of a roof as they stand: groups of members with their heads and cuts, and what was asked for."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import groupby

from msgspec import Struct, field

from tablegen.proof.names import MemberListNames
from tablegen.proof.page import Line, Page, Phrase, close, phrase_of, under
from tablegen.proof.worked_lines import MARGIN

TITLE, FIGURES = 1.3, 1.1
"""Titles of groups, and figures, are set larger than so many times the words at the foot."""
KEY = re.compile(r'; (?=[a-z_.-]+ = )')


class Group(Struct):
    """What stands under one title."""

    page: int
    title: str
    said: str = ''
    heads: tuple[str, ...] = ()
    rows: list[tuple[str, tuple[str, ...]]] = field(default_factory=list)
    """Mark, and what stands under each head."""


class Listed(Struct):
    """All that is listed of a roof."""

    groups: list[Group] = field(default_factory=list)
    pages: set[int] = field(default_factory=set)
    asked: list[str] = field(default_factory=list)
    """The lines of what was asked for; none where they are not told."""


def read_list(page: Page, names: MemberListNames) -> tuple[str, list[Group], list[str]]:
    """Return what the roof is called, the groups of a page, and what was asked for."""
    edge = page.lines[0][0].left
    first = page.lines[1]
    name = close([word for word in first if word.bold]).removesuffix(':')
    lines = page.lines[2:]
    place = next((n for n, line in enumerate(lines) if close(line).startswith(names.asked)), len(lines))
    asked = ' '.join(map(close, lines[place:])).removeprefix(names.asked).strip()
    return name, list(_groups(page, edge, lines[:place])), KEY.split(asked) if asked else []


def _groups(page: Page, edge: float, lines: Sequence[Line]) -> Iterator[Group]:
    group: Group | None = None
    heads: list[Phrase] = []
    for line in lines:
        size, bold = max(word.size for word in line), all(word.bold for word in line)
        at_edge = abs(line[0].left - edge) < MARGIN
        if bold and size > TITLE * page.notes_size:
            if group:
                yield group
            group, heads = Group(page.number, close(line)), []
        elif group is None:
            continue
        elif bold and size < FIGURES * page.notes_size:
            heads = [phrase_of(list(cell)) for _run, cell in groupby(line, key=lambda word: word.run)]
            group.heads = tuple(head.text for head in heads)
        elif size > FIGURES * page.notes_size and heads:
            mark = [word for word in line if word.run == line[0].run]
            group.rows.append((close(mark), tuple(under(heads, line[len(mark) :]))))
        elif at_edge and not heads:
            group.said = f'{group.said} {close(line)}'.strip()
        else:
            break  # cautions
    if group:
        yield group
