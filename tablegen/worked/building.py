"""The building of the worked examples: a garden store, hipped at one end, with a wing and a porch, one pitch on all but the porch."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from tablegen.exact import Exact
from tablegen.geometry.corner import Corner, square_corner
from tablegen.pitch import Pitch
from tablegen.settings import Settings

STORE_RISE, PORCH_RISE = Fraction(6), Fraction(4)
"""Inches per foot that are wanted; the book's nearest are taken."""
STORE_WIDTH_IN = Fraction(134)
"""Outside to outside of the plates; the wing is as wide, so that its ridge and the store's meet at one height."""
PORCH_RUN_IN = Fraction(429, 8)
"""Outside of the porch's plate to the store's wall."""
STORE_OVERHANG_IN, PORCH_OVERHANG_IN = Fraction(8), Fraction(6)
SPACING_IN = Fraction(16)
"""Of the jacks, where the book has it."""


@dataclass(frozen=True, slots=True)
class Store:
    """The store's roof."""

    pitch: Pitch
    at: Corner
    """Its hips' and valleys' corner: square, one pitch on both sides."""
    run_in: Fraction
    overhang_in: Fraction

    @property
    def width_in(self) -> Fraction:
        return 2 * self.run_in


def garden_store(settings: Settings) -> Store | None:
    """Return the store: 11 ft 2 in wide, 6 in 12 or the book's nearest pitch; None where the book's runs are too short."""
    run = reachable(STORE_WIDTH_IN / 2, settings)
    if run <= STORE_OVERHANG_IN:
        return None
    pitch = nearest_pitch(settings, STORE_RISE)
    return Store(pitch, square_corner(pitch.slope, pitch.slope), run, STORE_OVERHANG_IN)


def nearest_pitch(settings: Settings, rise_in: Fraction) -> Pitch:
    """Return the book's pitch nearest to a rise per foot."""
    return min(settings.pitches, key=lambda one: _distance(one.rise, rise_in))


def _distance(rise: Exact, wanted: Fraction) -> Exact:
    return rise - wanted if rise >= wanted else wanted - rise


def reachable(run_in: Fraction, settings: Settings) -> Fraction:
    """Return the run, or the longest tabled one with room for an overhang where the book ends before it."""
    return run_in if run_in + 12 <= settings.runs.last else settings.runs.last - settings.runs.last % 1 - 12
