"""A book in which no two columns agree but those that must: every thickness, size and pitch differs from every other."""

from __future__ import annotations

from fractions import Fraction
from functools import cached_property

from headed import REM_MM, body, sections
from made_books import MadeBook
from msgspec import Struct

from layouts.paper.page import page_side
from tablegen.settings import BOOK_PARTS

RIDGE, HIP, RAFTER = Fraction(3, 4), Fraction(7, 2), Fraction(7, 4)
SEAT = Fraction(7, 2)
RAFTERS, HIPS, VALLEYS = '2×8', '2×10', '2×12'
PITCHES = {'5': Fraction(5), '7 1/2': Fraction(15, 2)}
SPACINGS = {'12': Fraction(12), '16': Fraction(16), '19.2': Fraction(96, 5), '24': Fraction(24)}
LONGEST_FT = 4
SKEWED = f"""
title = "Skewed"
pitches = [5, "7 1/2"]
parts = {list(BOOK_PARTS)}
runs = {{to = "{LONGEST_FT} ft"}}
[stock]
ridge = "3/4"
hip = "3 1/2"
rafter = "1 3/4"
rafters = "2x8"
hips = "2x10"
valleys = "2x12"
seat = "3 1/2"
"""


class SkewedBook(Struct, dict=True):
    """The book, read back."""

    made: MadeBook

    @property
    def rem(self) -> float:
        return REM_MM * self.made.planned.trim.unit_pt

    def words(self, number: int):
        """Return the words of a page without its tab and folio."""
        (_, side), trim = self.kinds[number - 1], self.made.planned.trim
        left, right = (trim.outer_mm, trim.inner_mm) if side == 'left' else (trim.inner_mm, trim.outer_mm)
        return body(self.made.words[number - 1], left, trim.width_mm - right, trim.height_mm - trim.foot_mm)

    def numbers(self, *templates: str) -> list[int]:
        """Return the numbers of the pages of some kinds."""
        return [number for number, (template, _) in enumerate(self.kinds, 1) if template in templates]

    @cached_property
    def kinds(self) -> list[tuple[str, str]]:
        """Template and side of every page."""
        drafts = enumerate(self.made.planned.drafts, 1)
        return [(draft.template, page_side(number)) for number, draft in drafts]

    @cached_property
    def titled(self) -> dict[str, list[tuple[int, list]]]:
        """Return the reference tables as printed, by title: page, and the lines below."""
        found: dict[str, list] = {}
        for number in self.numbers('ref_table'):
            for title, below in sections(self.words(number), self.rem):
                name, comma, which = title.rpartition(', ')
                whole = name if comma and ' of ' in which and which[0].isdigit() else title
                found.setdefault(whole, []).append((number, below))
        return found
