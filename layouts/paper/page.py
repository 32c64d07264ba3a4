"""Pages as plain records: what stands where, decided before anything is typeset."""

from __future__ import annotations

from collections.abc import Callable
from typing import Self

from markupsafe import Markup, escape
from msgspec import Struct

from layouts.paper.longer import size_in

MOST_IN_A_SECTION = 80
"""Pages that a home stapler and a fold take: 20 nested leaves of 80 g paper."""


LINK_TO_PAGE = 'page:'
"""What a link to a page begins with, until the booklet is joined."""


class PageNumber(int):
    """The number of a page: placed on another by a template, it is a link to it."""

    def __add__(self, pages: int) -> Self:
        return type(self)(super().__add__(pages))

    def __html__(self) -> str:
        return self.linked(str(int(self)))

    def linked(self, words: str) -> Markup:
        """Return words as a link to the page."""
        return Markup(f'<a href="{LINK_TO_PAGE}{int(self)}">{escape(words)}</a>')


class Tab(Struct, frozen=True):
    """A thumb tab at the edge of a page."""

    text: str
    top_mm: float
    """From the top of the text."""
    height_mm: float
    most_rem: float
    """Greatest size of its letters."""
    room_rem: float = 0
    """Along the edge for letters that read up the page; 0 for those that do not."""

    @property
    def turned(self) -> bool:
        """Return whether its letters read up the page."""
        return self.room_rem > 0

    @property
    def size_rem(self) -> float:
        """Return the size of its letters; measured in the font, so only where the page is made."""
        turned = self.turned and size_in([self.text], [self.room_rem], self.most_rem, 'heavy')
        return round(turned or self.most_rem, 3)


class Index(Struct, frozen=True):
    """Where everything is, once pages are numbered."""

    pages: dict[str, int]
    """First page of everything that has a name, such as 'glance' or 'common:6'."""
    total: int
    sections: tuple[tuple[int, int], ...]
    """First page number and number of pages of each section."""

    def __getitem__(self, key: str) -> PageNumber:
        return PageNumber(self.pages[key])

    def __contains__(self, key: str) -> bool:
        return key in self.pages

    def get(self, key: str, otherwise: int = 0) -> PageNumber:
        """Return where something is, or another number where it is nowhere."""
        return PageNumber(self.pages.get(key, otherwise))


class Entry(Struct, frozen=True):
    """One line of an outline, and those below it."""

    name: str
    page: int
    below: tuple[Entry, ...] = ()


Maker = Callable[[Index], object]
"""Gives a page's contents, a record that its template knows, once all numbers are known."""
Unplaced = tuple[str, Maker]
"""The name of a page's template, and its maker."""


class Draft(Struct, frozen=True):
    """A page whose number is not known yet."""

    template: str
    """Name of the template that sets it."""
    make: Maker
    key: str = ''
    head: str = ''
    """Running head."""
    tab: Tab | None = None
    also: tuple[str, ...] = ()
    """Other names under which the page is looked for."""


class Block(Struct, frozen=True):
    """Drafts that stay together; a block that opens left begins on a left-hand page."""

    drafts: tuple[Draft, ...]
    opens_left: bool = False
    pitches: tuple[str, ...] = ()
    """Names of the pitches in it, for a section's cover."""


class Page(Struct, frozen=True):
    """A page ready to be typeset."""

    number: int
    side: str
    """'left' or 'right'."""
    template: str
    head: str
    tab: Tab | None
    content: object


def page_side(number: int) -> str:
    """Return on which side of an opening a page number lies: odd numbers are on the right."""
    return 'right' if number % 2 else 'left'
