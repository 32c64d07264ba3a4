"""Which of a book's pitches are low, in words."""

from __future__ import annotations

from tablegen.numbers.exact import exact
from tablegen.numbers.units import INCHES
from tablegen.roof import cautions
from tablegen.settings import Settings


def low_pitches(settings: Settings) -> tuple[str, ...]:
    """Return the book's pitches under 3 in 12."""
    return tuple(
        one.short for one in settings.pitches if one.slope * INCHES.base < exact(cautions.LOW_RISE_IN)
    )
