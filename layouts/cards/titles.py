"""The title of a face: the big figure beside the hole, as big as its strip lets it be."""

from __future__ import annotations

from collections.abc import Sequence

from layouts.cards.faces import Title
from layouts.cards.formats import Format
from layouts.cards.measures import BOLD, HEAVY, width_pt
from tablegen.geometry.pitch import Pitch
from tablegen.numbers.units import INCHES

MOST_NAMED = 4
"""Pitches that are named one by one; of more, the first and the last."""
UNIT_EM = 0.42
"""Size of the unit beside the figure."""


def pitch_title(pitches: Sequence[Pitch]) -> tuple[str, str]:
    """Return the big figure of some pitches, and its unit."""
    names = [pitch.short for pitch in pitches]
    unit = '' if any(name.endswith('°') for name in names) else INCHES.over_base
    return (', '.join(names) if len(names) <= MOST_NAMED else f'{names[0]}–{names[-1]}'), unit


def fitted_title(form: Format, figure: tuple[str, str], what: str) -> Title:
    """Return a title whose words under the figure are cut at the colon where they are too long."""
    short = what.partition(':')[0] if width_pt(what, form.note_pt, BOLD) > form.title_pt else what
    return Title(*figure, short)


def figure_size(form: Format, title: Title) -> float:
    """Return the size of the big figure, in points."""
    wide = width_pt(title.figure, 1, HEAVY) + (
        width_pt(f' {title.unit}', UNIT_EM, HEAVY) if title.unit else 0
    )
    return round(min(form.figure_pt, form.title_pt / wide), 2)
