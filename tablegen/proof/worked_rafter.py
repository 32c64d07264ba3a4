"""The two pages of one rafter from crown to pattern as steps: their numbers stand in disks, their figures and places at the right."""

from __future__ import annotations

from collections.abc import Sequence

from tablegen.proof.page import Line, Page, close
from tablegen.proof.worked_lines import MARGIN, Told, Worked, cells_of

RIGHT = 6
"""Number of the first step of the right page."""
DISK = 6.0
"""Points that a disk's number stands from the edge at most."""


def rafter_page(page: Page, before: Sequence[str], short: str) -> Worked:
    """Return the steps of one of the two pages.

    Given:
        before  what may stand before a figure, of what it is
        short   what begins a place
    """
    title, *lines = page.lines
    edge = title[0].left
    starts = [
        n for n, line in enumerate(lines) if len(line) > 1 and _disk(line, edge) and len(cells_of(line)) < 5
    ]
    if not starts:
        return Worked()
    indent, found = lines[starts[0]][1].left, Worked()
    found.steps.append(Told('', ' '.join(close(line) for line in _said_first(lines, edge))))
    disks: list[str] = []
    right: list[list[Line]] = []
    for line in lines[starts[0] :]:
        cells = cells_of(line)
        if _disk(line, edge):
            disks.append(line[0].text)
            cells = [cell for cell in (cells[0][1:], *cells[1:]) if cell]
        if cells and abs(cells[0][0].left - indent) < MARGIN:
            placed = cells[0] if cells[0][0].text == short else []
            if placed:
                pass
            elif len(found.steps) == 1 or (
                cells[0][0].bold and not cells[0][0].text.isdigit() and _begins(cells[0])
            ):
                found.steps.append(Told('', close(cells[0])))
                right.append([])
            elif len(found.steps) > 1:
                found.steps[-1].words += f' {close(cells[0])}'
            cells = cells[1:]
            if placed:
                cells = [placed, *cells]
        elif cells and cells[0][0].left < indent:
            found.steps.append(Told('', close(line)))  # what is said below the steps
            right.append([])
            continue
        if right:
            right[-1] += cells
    numbered = found.steps[1 : len(disks) + 1]
    if disks[0] == str(RIGHT) and numbered and not right[0]:  # no seat is cut: its step is left out
        disks = [disks[0], *(str(int(disk) - 1) for disk in disks[1:])]
    for step, disk, beside in zip(numbered, disks, right, strict=False):
        step.number = str(int(disk) - (RIGHT if int(disks[0]) >= RIGHT else 1) + 1)
        _beside(step, beside, before)
    if len(disks) < sum(step.words.partition('.')[0] != step.words for step in numbered):
        found.steps.append(Told('0', ''))
    return found


def _disk(line: Line, edge: float) -> bool:
    return line[0].bold and line[0].text.isdigit() and abs(line[0].left - edge) < DISK


def _begins(words: Line) -> bool:
    """Return whether words begin a step: what is to be done, in bold, with a point behind it."""
    bold = [word for word in words if word.bold]
    return bool(bold) and bold[-1].text.endswith('.')


def _said_first(lines: Sequence[Line], edge: float) -> list[Line]:
    """Return what stands below the title, before the drawing."""
    return [line for line in lines[:2] if abs(line[0].left - edge) < MARGIN and not _disk(line, edge)]


def _beside(step: Told, cells: Sequence[Line], before: Sequence[str]) -> None:
    """Take what stands at the right of a step: its figure, then where that is read."""
    cited: list[str] = []
    for cell in cells:
        bold = [word for word in cell if word.bold]
        plain = close([word for word in cell if not word.bold])
        if bold and any(map(str.isdigit, close(bold))) and plain in ('', *before):
            step.figures = (close(bold),)
        else:
            cited.append(close(cell))
    step.cited = ' '.join(cited)
