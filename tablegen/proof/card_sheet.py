"""Holding the ink of a card's sheets against what the margin tells, and backs against their fronts."""

from __future__ import annotations

from collections.abc import Sequence

from tablegen.proof.found import Fault, Found
from tablegen.proof.page import Page
from tablegen.proof.sentences import told_within

MM, TRUE_MM = 72 / 25.4, 0.05
"""Points; and how far a line may be off, mm."""
LEAST_MM = 25
"""Wide and high that a card is, and no hole."""


def read_sheets(pages: Sequence[Page], cut_size: str, found: Found) -> None:
    """Read the sheets.

    Given:
        cut_size  what says in the margin how wide and high a card is
    """
    for page in pages:
        _sizes(page, cut_size, found)
    for front, back in zip(pages[::2], pages[1::2], strict=False):
        _backs(front, back, found)


def _sizes(page: Page, cut_size: str, found: Found) -> None:
    """Hold the line that is cut along against the size that the margin tells, and against where each face lies."""
    sizes = [one for label in page.ink.labels if (one := told_within(cut_size, label))]
    cuts = [stroke.box for stroke in page.ink.strokes if len(stroke.points) > 2 and not stroke.dashed]
    for piece in page.ink.pieces:
        box = piece.left, piece.low, piece.right, piece.high
        filled = all(
            abs(a - b) < MM for a, b in zip((box[2] - box[0], box[3] - box[1]), page.ink.size, strict=True)
        )
        if filled:
            continue
        if not any(all(abs(a - b) < TRUE_MM * MM for a, b in zip(box, cut, strict=True)) for cut in cuts):
            found.faults.append(Fault('ink', page.number, piece.name, '', '', _across(box)))
    if not sizes:
        return
    for row, (low, high) in (('wide', (0, 2)), ('high', (1, 3))):
        printed = sizes[0][row]
        for box in cuts:
            drawn = (box[high] - box[low]) / MM
            if drawn > LEAST_MM:
                found.figure(page.number, cut_size, row, printed, f'{round(drawn, 2):g}')


def _across(box: tuple[float, float, float, float]) -> str:
    return ' × '.join(f'{(b - a) / MM:.1f}' for a, b in ((box[0], box[2]), (box[1], box[3]))) + ' mm'


def _backs(front: Page, back: Page, found: Found) -> None:
    """See that a back lies behind every front, the sheet turned about its upright middle."""
    wide = front.ink.size[0]
    there = [(piece.left, piece.low) for piece in back.ink.pieces]
    for piece in front.ink.pieces:
        behind = wide - piece.right, piece.low
        if not any(abs(behind[0] - x) < MM / 4 and abs(behind[1] - y) < MM / 4 for x, y in there):
            found.faults.append(Fault('back', back.number, piece.name, '', '', ''))
