"""Formats of cards: how big the paper and its film are, where the hole is, what is left for figures."""

from __future__ import annotations

from msgspec import Struct
from msgspec.structs import replace

from layouts.sheets.fold import POINTS_PER_MM
from tablegen.errors import BookError
from tablegen.messages import message

FILM_HOLE_MM, PAPER_HOLE_MM = 5.0, 11.0
"""The hole through the film, and the wider one in the paper under it, so that film seals to film around it."""
HOLE_CENTER_MM = 8.5
"""From the top edge and from the outer edge of the paper."""
CLEAR_MM = 1.0
"""Kept free of ink around the hole in the paper."""
RULE_PT = 2.4
"""The rule over a title."""
SEAL_MM = 3.0
"""Least border of film around the paper: 3 mm, 5 outdoors."""


class Format(Struct, frozen=True):
    """One format of card, upright or turned; of the paper itself, in mm, before it is laminated."""

    name: str
    width_mm: float
    height_mm: float
    corner_mm: float
    """Radius of its corners."""
    film_mm: tuple[float, float]
    """Pouch it goes into, narrow side first."""
    inset_mm: float
    """Ink keeps so far from the edge."""
    type_pt: float
    """Type aimed at in tables: columns are taken as long as they stand in it."""
    note_pt: float
    figure_pt: float
    """Type of notes, and of the big figure in the strip."""

    @property
    def strip_mm(self) -> float:
        """Return the height of the strip at the top that holds title and hole."""
        title = (RULE_PT + self.figure_pt + self.note_pt * 1.24 + 2.5) / POINTS_PER_MM
        hole = HOLE_CENTER_MM + PAPER_HOLE_MM / 2 + CLEAR_MM
        return round(max(hole, self.inset_mm + title), 2)

    @property
    def inner_pt(self) -> float:
        """Return the width for figures."""
        return (self.width_mm - 2 * self.inset_mm) * POINTS_PER_MM

    @property
    def title_pt(self) -> float:
        """Return the width for the title, beside the hole."""
        hole = HOLE_CENTER_MM + PAPER_HOLE_MM / 2 + CLEAR_MM
        return (self.width_mm - self.inset_mm - hole) * POINTS_PER_MM

    @property
    def body_pt(self) -> float:
        """Return the height between strip and lower inset."""
        return (self.height_mm - self.strip_mm - self.inset_mm) * POINTS_PER_MM

    def turned(self) -> Format:
        """Return the same card lying on its long side."""
        return replace(self, width_mm=self.height_mm, height_mm=self.width_mm)


FORMATS = {
    found.name: found
    for found in (
        # ISO/IEC 7810 ID-1; the other pouches are common practice, their corners our own choice
        Format('id-1', 53.98, 85.60, 3.18, (59.98, 91.60), 3.5, 8.0, 7.5, 20.0),
        Format('index', 76.2, 127.0, 4.0, (88.9, 139.7), 4.0, 8.0, 7.5, 22.0),
        Format('a6', 105.0, 148.0, 5.0, (111.0, 154.0), 4.5, 8.2, 8.0, 24.0),
        Format('half-letter', 139.7, 215.9, 5.0, (152.4, 228.6), 5.0, 10.5, 9.5, 30.0),
        Format('letter', 215.9, 279.4, 6.0, (228.6, 292.1), 7.0, 13.0, 11.5, 40.0),
    )
}
"""By name, the smallest first."""
USUAL = {'pocket': 'a6', 'large': 'half-letter'}
"""Format of the card beside a booklet, by the trim of its pages."""


def format_named(name: str, place: str = '--size') -> Format:
    """Return the format of a name.

    Errors:
        BookError naming those known
    """
    if name not in FORMATS:
        raise BookError(place, message('making.no_size', name=name), ', '.join(FORMATS))
    return FORMATS[name]
