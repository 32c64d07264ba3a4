"""Which other document of this program a PDF is, and what is found in it: the sheets of a card or of a roof, a pattern."""

from __future__ import annotations

from collections.abc import Sequence

from layouts.patterns.proof_names import pattern_names
from layouts.roofs.proof_names import roof_names
from layouts.words.proof_cards import card_names
from layouts.words.say import N_, _
from tablegen.proof.cards import read_card
from tablegen.proof.found import Found
from tablegen.proof.page import Page
from tablegen.proof.patterns import read_pattern
from tablegen.proof.roof_sheets import read_roof

NOT_OF_CARDS = N_('not read: what the words of a card say; whether a word stands clear of the hole')
NOT_OF_ROOFS = N_(
    'not read: the plan’s drawing and those of boards, cautions; whether a plan to buy is the least'
)

NOT_OF_PATTERNS = N_('not read: whether words, crosses and arrows of a pattern stand where they belong')


def other_document(pages: Sequence[Page]) -> tuple[Found, str] | None:
    """Return what is found in what is no booklet, and what of it is not read; None where it is none of these."""
    if found := read_card(pages, card_names()):
        return found, _(NOT_OF_CARDS)
    if found := read_roof(pages, roof_names()):
        return found, _(NOT_OF_ROOFS)
    if found := read_pattern(pages, pattern_names()):
        return found, _(NOT_OF_PATTERNS)
    return None
