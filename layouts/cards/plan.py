"""The plan of a card: what fits its format, chosen from the settings, as records and as words that say so."""

from __future__ import annotations

from msgspec import Struct

from layouts.cards.all_pitches import all_pitches
from layouts.cards.faces import Face
from layouts.cards.formats import Format, format_named
from layouts.cards.one_pitch import one_pitch
from tablegen.settings import Settings


class CardPlan(Struct, frozen=True):
    """Cards of one format, each of two sides."""

    form: Format
    """Upright or turned."""
    cards: tuple[tuple[Face, Face], ...]
    """Front and back."""
    said: tuple[str, ...]
    """What is on them, and what did not fit."""

    @property
    def faces(self) -> list[Face]:
        """Return all sides, front and back by turns."""
        return [face for card in self.cards for face in card]


def plan_cards(settings: Settings, size: str) -> CardPlan:
    """Return the cards of a book's pitches.

    Given:
        settings  its pitches are those of the cards: of several a row each, of one its table of runs
        size      the name of a format

    Errors:
        BookError for a size that is none, or one that cannot hold the pitches
    """
    form = format_named(size)
    form, cards, said = (one_pitch if len(settings.pitches) == 1 else all_pitches)(settings, form)
    return CardPlan(form, tuple(cards), tuple(said))
