"""What a proof-reader hands back: what was read, and what is not as it should be."""

from __future__ import annotations

from msgspec import Struct, field


class Fault(Struct, frozen=True):
    """One thing that differs."""

    kind: str
    """'figure', 'link', 'entry', 'folio', 'opening', 'pitch'."""
    page: int
    """In the file, from 1."""
    row: str
    head: str
    printed: str
    """'' where nothing is found."""
    right: str


class Found(Struct):
    """The whole of it."""

    figures: int = 0
    links: int = 0
    folios: int = 0
    read: set[int] = field(default_factory=set)
    """Pages whose figures were read."""
    pages: int = 0
    sheets: int = 0
    sections: int = 0
    """Of the sheets that were folded."""
    strange: list[tuple[int, str]] = field(default_factory=list)
    """Lines with figures on a page that was read, which no name is known for: the page, and its words."""
    faults: list[Fault] = field(default_factory=list)

    def figure(self, page: int, row: str, head: str, printed: str, *right: str) -> None:
        """Take down a figure and what it should be, in any of the ways in which it may be told."""
        self.figures += 1
        if printed not in right:
            self.faults.append(Fault('figure', page, row, head, printed, right[0]))

    def add(self, other: Found) -> None:
        """Take what was found elsewhere in the same pages behind what was found here."""
        for name in self.__struct_fields__:
            mine, more = getattr(self, name), getattr(other, name)
            setattr(self, name, mine | more if isinstance(mine, set) else mine + more)

    @property
    def unread(self) -> list[int]:
        """Return the pages whose figures were not read."""
        return [number for number in range(1, self.pages + 1) if number not in self.read]
