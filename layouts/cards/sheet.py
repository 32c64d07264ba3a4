"""The sheet of cards: how many go on the printer's paper, and where each lies, front and back."""

from __future__ import annotations

from collections.abc import Sequence

from msgspec import Struct

from layouts.cards.formats import SEAL_MM, Format
from layouts.sheets.fold import FIT_MM, PAPERS_MM
from layouts.sheets.strips import UNPRINTABLE_MM
from tablegen.errors import BookError
from tablegen.messages import message

GAP_MM = 2 * SEAL_MM
"""Between cards, so that the borders of their film do not overlap."""
LABEL_MM = 6.0
"""Kept free above the cards for a line of small type, the strip that printers leave white included."""


class CardSheet(Struct, frozen=True):
    """How cards lie on a sheet; mm from its lower left corner."""

    paper: str
    card_mm: tuple[float, float]
    sheet_mm: tuple[float, float]
    """Of the paper as it is printed, upright or laid across."""
    columns: int
    rows: int

    @property
    def up(self) -> int:
        """Return how many cards a sheet holds."""
        return self.columns * self.rows

    @property
    def flip(self) -> str:
        """Return the edge over which the printer turns the sheet: it always turns about its upright center line."""
        return 'long' if self.sheet_mm[0] < self.sheet_mm[1] else 'short'

    @property
    def margins_mm(self) -> tuple[float, float]:
        """Return what is left of the paper at each side, and above and below."""
        (width, height), (card_width, card_height) = self.sheet_mm, self.card_mm
        return _margin(width, self.columns, card_width), _margin(height, self.rows, card_height)

    @property
    def label_margins_mm(self) -> tuple[float, float]:
        """Return what a label has beside and above the cards and the borders of their film."""
        side, above = self.margins_mm
        return side - SEAL_MM, above - SEAL_MM

    @property
    def label_end_mm(self) -> float:
        """Return where a label may end."""
        return self.sheet_mm[0] - UNPRINTABLE_MM

    def corner_mm(self, column: int, row: int) -> tuple[float, float]:
        """Return the lower left corner of a card, rows counted from the top."""
        side, foot = self.margins_mm
        return (
            side + column * (self.card_mm[0] + GAP_MM),
            foot + (self.rows - 1 - row) * (self.card_mm[1] + GAP_MM),
        )


def card_sheet(form: Format, paper: str) -> CardSheet:
    """Return the sheet that holds most cards, with room for marks; a card as big as the paper lies alone.

    Errors:
        BookError for a card that the paper cannot hold
    """
    width, height = PAPERS_MM[paper]
    card = (form.width_mm, form.height_mm)
    found = [
        CardSheet(paper, card, sheet, *_counts(card, sheet)) for sheet in ((width, height), (height, width))
    ]
    best = max(found, key=lambda one: one.up)
    if best.up:
        return best
    for sheet in ((width, height), (height, width)):
        if all(side <= whole + FIT_MM for side, whole in zip(card, sheet, strict=True)):
            return CardSheet(paper, card, sheet, 1, 1)
    raise BookError(
        '--size',
        message('making.bigger_than_paper', name=form.name, paper=paper),
        '',
        message('making.smaller_card'),
    )


def placed(cards: int, sheet: CardSheet) -> list[list[tuple[int, int, int]]]:
    """Return for each sheet which card lies where on its front: card, column, row.

    Notes:
        1. Fewer cards than places: the whole set is repeated as often as it fits.
    """
    copies = max(1, sheet.up // cards)
    order = [card for _ in range(copies) for card in range(cards)]
    return [
        [(card, *_place(place, sheet.columns)) for place, card in enumerate(order[at : at + sheet.up])]
        for at in range(0, len(order), sheet.up)
    ]


def _place(place: int, columns: int) -> tuple[int, int]:
    """Return column and row of a place, counted along the rows."""
    row, column = divmod(place, columns)
    return column, row


def _counts(card: Sequence[float], sheet: Sequence[float]) -> tuple[int, int]:
    """Return columns and rows with the borders of their film, and with room for a label above."""
    columns = (sheet[0] + FIT_MM) // (card[0] + GAP_MM)
    rows = (sheet[1] - 2 * (LABEL_MM - SEAL_MM) + FIT_MM) // (card[1] + GAP_MM)
    return int(columns), int(rows)


def _margin(whole: float, count: int, card: float) -> float:
    """Return what so many cards and the gaps between them leave free at each end."""
    return (whole - count * card - (count - 1) * GAP_MM) / 2
