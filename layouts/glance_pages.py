"""All pitches at a glance: an opening with a row for each pitch."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from layouts.pages import Draft, Index
from layouts.words import WORDS
from tablegen import text
from tablegen.pitch import Pitch
from tablegen.rows import PitchValues, pitch_values
from tablegen.settings import Settings

ROWS = 24
"""Pitches on an opening."""
GROUP = 6
"""Rows between rules."""
IN_TWELVE, ANY_PITCH = ('in', '12'), ('', 'pitch')
"""The head of the pitches, in lines: their number alone, or with its unit where any has another."""


@dataclass(frozen=True, slots=True)
class GlancePage:
    """All pitches, one row each; half of an opening."""

    head: tuple[str, str]
    """Of the pitches, in lines."""
    groups: tuple[tuple[PitchValues, ...], ...]
    spacings: tuple[str, ...]


def glance_drafts(settings: Settings) -> list[Draft]:
    """Return the openings, to begin on the left."""
    drafts = []
    for start in range(0, len(settings.pitches), ROWS):
        make = _maker(settings, settings.pitches[start : start + ROWS])
        for template, key in (('glance_left', 'glance'), ('glance_right', 'glance-right')):
            drafts.append(Draft(template, make, '' if start else key, WORDS[key]))
    return drafts


def pitch_head(pitches: Sequence[Pitch]) -> tuple[str, str]:
    """Return what stands over a column of pitches: one in degrees has its unit with it."""
    return ANY_PITCH if any(pitch.short.endswith('°') for pitch in pitches) else IN_TWELVE


def _maker(settings: Settings, pitches: Sequence[Pitch]) -> Callable[[Index], GlancePage]:
    def make(index: Index) -> GlancePage:
        values = [pitch_values(pitch, settings) for pitch in pitches]
        groups = tuple(tuple(values[at : at + GROUP]) for at in range(0, len(values), GROUP))
        spacings = tuple(text.rational(spacing) for spacing in settings.spacings)
        return GlancePage(pitch_head(settings.pitches), groups, spacings)

    return make
