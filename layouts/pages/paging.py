"""Paging: blocks of drafts numbered and cut into sections that fold."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import overload

from msgspec import Struct
from msgspec.structs import replace

from layouts.paper.page import MOST_IN_A_SECTION, Block, Draft, Index, Page, page_side

MOST_IN_A_BLOCK = MOST_IN_A_SECTION - 4
"""Pages, an even number, that a section holds beside its cover, its closing page and what fills it up."""


class Furniture(Struct, frozen=True):
    """Pages that paging adds by itself."""

    notes: Draft
    closing: Draft
    """Last page of every section but the last."""
    last: Draft
    """Last page of the book."""
    section_cover: Callable[[int, int, Sequence[str]], Draft]
    """Cover of a later section: its number, how many there are, the pitches in it."""


MOST_LATER = 10
"""Pages by which a cut may be put off, that a book is of no more sections than will hold it."""


def lay_out(blocks: Sequence[Block], furniture: Furniture) -> tuple[list[Draft], Index]:
    """Return all drafts in reading order and where they are.

    Notes:
        1. A book of at most 80 pages is one section. A longer one is cut between blocks into as few
           sections as will hold it, as even as they go; every later one has a cover of its own. A block
           too long for any section is itself cut, between two openings.
        2. Every section is filled with note pages to a multiple of 4 and ends with the closing page.
    """
    blocks = [piece for block in blocks for piece in _foldable(block)]
    wanted = 1
    while True:
        ways = (_cut(blocks, wanted, furniture, later) for later in range(MOST_LATER))
        sections = next((one for one in ways if _fold(one)), _cut(blocks, wanted, furniture))
        if _fold(sections) or len(sections) == len(blocks):
            break
        wanted += 1
    drafts: list[Draft] = []
    bounds: list[tuple[int, int]] = []
    for section in sections:
        bounds.append((len(drafts) + 1, len(section)))
        drafts += section
    pages: dict[str, int] = {}
    for number, draft in enumerate(drafts, 1):
        for key in (draft.key, *draft.also):
            if key:
                pages.setdefault(key, number)
    return drafts, Index(pages, len(drafts), tuple(bounds))


class Pages(Sequence[Page]):
    """The pages of a book; the contents of each are made when it is taken."""

    def __init__(self, drafts: Sequence[Draft], numbered: Index):
        self.drafts = drafts
        self.numbered = numbered

    def __len__(self) -> int:
        return len(self.drafts)

    @overload
    def __getitem__(self, place: int) -> Page: ...

    @overload
    def __getitem__(self, place: slice) -> list[Page]: ...

    def __getitem__(self, place: int | slice) -> Page | list[Page]:
        if isinstance(place, slice):
            return [self[one] for one in range(*place.indices(len(self)))]
        draft, number = self.drafts[place], range(1, len(self) + 1)[place]
        return Page(
            number, page_side(number), draft.template, draft.head, draft.tab, draft.make(self.numbered)
        )


def _foldable(block: Block) -> list[Block]:
    """Return a block in as few pieces as a section can hold."""
    drafts = block.drafts
    if len(drafts) <= MOST_IN_A_BLOCK:
        return [block]
    size = -(-len(drafts) // -(-len(drafts) // MOST_IN_A_BLOCK))
    size += size % 2
    return [replace(block, drafts=drafts[at : at + size]) for at in range(0, len(drafts), size)]


def _fold(sections: Sequence[Sequence[Draft]]) -> bool:
    return all(len(section) <= MOST_IN_A_SECTION for section in sections)


def _cut(blocks: Sequence[Block], wanted: int, furniture: Furniture, later: int = 0) -> list[list[Draft]]:
    """Return the sections of a cut into so many, each as near to an even share as blocks allow.

    Given:
        later  pages by which each cut is put off: the last section has then so much less
    """
    share = sum(len(block.drafts) for block in blocks) / wanted
    groups: list[list[Block]] = [[]]
    used = 0
    for block in blocks:
        ahead = used + len(block.drafts) / 2
        if groups[-1] and ahead > (share + later) * len(groups) and len(groups) < wanted:
            groups.append([])
        groups[-1].append(block)
        used += len(block.drafts)
    return [_section(group, place, len(groups), furniture) for place, group in enumerate(groups, 1)]


def _section(blocks: Sequence[Block], place: int, count: int, furniture: Furniture) -> list[Draft]:
    drafts: list[Draft] = []
    if place > 1:
        names = dict.fromkeys(name for block in blocks for name in block.pitches)
        drafts.append(furniture.section_cover(place, count, list(names)))
    for block in blocks:
        if block.opens_left and len(drafts) % 2 == 0:
            drafts.append(furniture.notes)
        drafts += block.drafts
    while (len(drafts) + 1) % 4:
        drafts.append(furniture.notes)
    return [*drafts, furniture.last if place == count else furniture.closing]
