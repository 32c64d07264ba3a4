"""The pairs of pitches whose corners have tables."""

from __future__ import annotations

from fractions import Fraction
from itertools import combinations

from tablegen.geometry.corner import Corner, square_corner
from tablegen.geometry.pitch import Pitch, pitch_of_rise

Pairs = tuple[tuple[Pitch, Pitch], ...]
PAIRS: Pairs = tuple(
    (pitch_of_rise(Fraction(flat)), pitch_of_rise(Fraction(steep)))
    for flat, steep in combinations((4, 5, 6, 8, 9, 10, 12), 2)
)
"""Pairs of common pitches, flatter first."""


def corners(pairs: Pairs) -> list[tuple[Pitch, Pitch, Corner]]:
    """Return each pair with its square corner, seen from the first pitch's side."""
    return [(a, b, square_corner(a.slope, b.slope)) for a, b in pairs]
