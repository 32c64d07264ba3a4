"""The opening of a pitch by member, read by the names of its rows and the heads of its columns."""

from __future__ import annotations

import re
from collections.abc import Sequence

from headed import PHRASE_GAP_REM, NotTold, Phrase, phrases, said
from headed_pages import headed
from msgspec import Struct, field
from printed_words import Word

SAME_EDGE_MM = 0.35
"""Figures of a column end on one line, under the end of its head."""
FIRST_ROW = 'Plumb cut,'
"""Above it are drawings; what is written in them is no row."""
SET_IN_REM = 0.1
SMALL_REM = 0.78
"""Rows are larger, and the small print below them is not."""
FIGURE = re.compile(r'(−?[\d./ ]+( & [\d./ ]+)?°?|—)[†‡§]*')


class Members(Struct):
    """A page of names and figures under heads."""

    page: int
    title: str
    line: str
    found: dict[tuple[str, str, str], list[str]] = field(default_factory=dict)
    """By section, name and column head; section '' above the first, head '' where figures have none."""
    notes: str = ''

    def figure(self, section: str, name: str, head: str) -> str:
        """Return the figure of a name in a column."""
        figures = self.found.get((section, name, head), [])
        if len(figures) != 1:
            raise NotTold(
                f'page {self.page}: {len(figures)} figures for "{section}", "{name}", "{head}" among '
                f'{list(self.found)}'
            )
        return figures[0]


def members(page: int, words: Sequence[Word], rem: float) -> Members:
    """Return what a page says.

    Notes:
        1. A name that is set in belongs to the one above it: 'that one: this one'. Right below a section's head it
           says what the columns are, and is read with their heads.
    """
    top = headed(page, words, rem)
    start = next((n for n, line in enumerate(top.below) if said(line).startswith(FIRST_ROW)), None)
    if start is None:
        raise NotTold(f'page {page}: no row "{FIRST_ROW}"')
    rows = [line for line in top.below[start:] if line[0].size / rem > SMALL_REM]
    small = [word for line in top.below[start:] if line[0].size / rem <= SMALL_REM for word in line]
    result = Members(page, top.title, top.line, notes=said(small))
    left = min(line[0].left for line in rows)
    section, above, heads = '', '', {max(word.right for line in rows for word in line): ''}
    for line in rows:
        name, *cells = phrases(line, PHRASE_GAP_REM * rem)
        set_in = name.left > left + SET_IN_REM * rem
        figures = bool(cells) and all(FIGURE.fullmatch(cell.text) for cell in cells)
        if not set_in and not figures:
            section, above = name.text, ''
            heads = {cell.right: cell.text for cell in cells} or {max(heads): ''}
        elif set_in and cells and not figures:
            heads = {edge: f'{heads[edge]}, {_at(cells, edge, page).text}' for edge in heads}
            section = f'{section}, {name.text}'
        else:
            whole = f'{above}: {name.text}' if set_in else name.text
            above = above if set_in else name.text
            for cell in cells or [Phrase('', 0, max(heads))]:
                edge = min(heads, key=lambda edge, cell=cell: abs(edge - cell.right))
                if abs(edge - cell.right) > SAME_EDGE_MM:
                    raise NotTold(f'page {page}, "{whole}": "{cell.text}" stands under no head')
                result.found.setdefault((section, whole, heads[edge]), []).append(cell.text)
    return result


def _at(cells: Sequence[Phrase], edge: float, page: int) -> Phrase:
    here = [cell for cell in cells if abs(cell.right - edge) < SAME_EDGE_MM]
    if len(here) != 1:
        raise NotTold(f'page {page}: heads of two lines that do not stand over each other')
    return here[0]
