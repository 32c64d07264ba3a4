"""The words of drawings: labels with a figure in them, and figures that stand beside a label."""

from __future__ import annotations

import re
from collections.abc import Sequence
from math import hypot

from msgspec.structs import replace

from tablegen.proof.page import Page, Phrase, close, lines_of, phrase_of
from tablegen.proof.sentences import told
from tablegen.proof.worked_lines import cells_of

FIGURE = re.compile(r'(?:\d+′ ?)?(?:\d+ )?\d+(?:/\d+)?″?|\d+′|\d+\.\d+°')
SLACK = 0.5
"""Points by which figures of one kind differ in size at most."""
NEAR = 20.0
"""Points that a figure stands from its label at most."""
Inside = tuple[float, float, float, float]
"""Left, lower, right and upper bounds."""
ALL: Inside = (0.0, 0.0, float('inf'), float('inf'))


def labels(page: Page, inside: Inside = ALL) -> list[Phrase]:
    """Return what stands together in a line, the words of drawings with those beside them, some letters of which are placed by themselves."""
    left, low, right, high = inside
    words = (
        word for word in (*page.body, *page.drawn) if low < word.base < high and left < word.left < right
    )
    cells = (cell for line in lines_of(list(words)) for cell in cells_of(line))
    return [replace(phrase_of(cell), text=close(cell)) for cell in cells]


def labelled(found: Sequence[Phrase], sentence: str) -> list[str]:
    """Return the figures of labels that read so, from left to right."""
    there = [(one.left, said['figure']) for one in found if (said := told(sentence, one.text))]
    return [figure for _left, figure in sorted(there) if FIGURE.fullmatch(figure)]


def beside(found: Sequence[Phrase], label: str) -> str:
    """Return the figure that stands close before a label, or the nearest one to it of those in the largest type; '' where none does."""
    here = labelled(found, f'{{figure}} {label}')
    if here:
        return here[0]
    at = next((one for one in found if one.text == label), None)
    figures = [one for one in found if FIGURE.fullmatch(one.text)]
    if at is None or not figures:
        return ''
    large = max(one.size for one in figures) - SLACK
    one = min((one for one in figures if one.size > large), key=lambda one: _apart(one, at))
    return one.text if _apart(one, at) < NEAR else ''


def level_with(found: Sequence[Phrase], label: str) -> str:
    """Return the angle that stands at about the height of a label; '' where there is none."""
    at = next((one for one in found if one.text == label), None)
    angles = [one for one in found if one.text.endswith('°') and FIGURE.fullmatch(one.text)]
    return min(angles, key=lambda one: abs(one.base - at.base)).text if at and angles else ''


def _apart(one: Phrase, other: Phrase) -> float:
    aside = max(one.left - other.right, other.left - one.right, 0.0)
    return hypot(aside, one.base - other.base)
