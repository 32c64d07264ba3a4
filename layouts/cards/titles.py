"""The title of a face: the big figure beside the hole, as big as its strip lets it be."""

from __future__ import annotations

from collections.abc import Sequence

from layouts.cards.faces import Title
from layouts.cards.formats import Format
from layouts.cards.measures import BOLD, HEAVY, width_pt
from layouts.words.say import _
from tablegen.geometry.pitch import Pitch

MOST_NAMED = 4
"""Pitches that are named one by one; of more, the first and the last."""
UNIT_EM = 0.42
"""Size of the unit beside the figure."""


def pitch_title(pitches: Sequence[Pitch]) -> tuple[str, str]:
    """Return the big figure of some pitches, and its unit."""
    names = [pitch.short for pitch in pitches]
    unit = pitches[0].unit if all(pitch.unit for pitch in pitches) else ''
    return (', '.join(names) if len(names) <= MOST_NAMED else f'{names[0]}–{names[-1]}'), unit


def fitted_title(form: Format, figure: tuple[str, str], words: tuple[str, str]) -> Title:
    """Return a title under whose figure a name stands and, where there is room for it, a line that says more."""
    name, line = (_(one) if one else '' for one in words)
    whole = _('{name}: {line}').format(name=name, line=line) if line else name
    return Title(*figure, name if width_pt(whole, form.note_pt, BOLD) > form.title_pt else whole)


def figure_size(form: Format, title: Title) -> float:
    """Return the size of the big figure, in points."""
    wide = width_pt(title.figure, 1, HEAVY) + (
        width_pt(f' {title.unit}', UNIT_EM, HEAVY) if title.unit else 0
    )
    return round(min(form.figure_pt, form.title_pt / wide), 2)
