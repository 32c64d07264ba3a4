"""What a reference table is: its place in the book, its heads, the lines it is measured from, and its rows."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from tablegen.settings import Settings


@dataclass(frozen=True, slots=True)
class Table:
    """One table of one or more pages."""

    group: str
    """One of tables.GROUPS."""
    key: str
    """Plain name, for data files and page anchors; no two alike."""
    title: str
    heads: tuple[str, ...]
    """Head of each cell of a row, in the order of finish.cells(), the pitch or other stub first."""
    line: str
    """From where to where, on which face."""
    rows: Callable[[Settings], list]
