"""What a reference table is: its place in the book, its heads, the lines it is measured from, and its rows."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import Field, dataclass
from typing import Any, ClassVar, Protocol

from tablegen.settings import Settings


class Record(Protocol):
    """A row of a table: a dataclass whose fields are its stubs and figures, a tuple of like figures being one field."""

    __dataclass_fields__: ClassVar[dict[str, Field[Any]]]


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
    rows: Callable[[Settings], Sequence[Record]]
    unit: str = 'in'
    """Of a number that stands alone as the head of one of several like figures: a thickness, an overhang, a width."""

    def names(self) -> tuple[str, ...]:
        """Return the plain name of each head, as a data file joins it to a field of several figures: 1_1_2_in, 2x8."""
        return tuple(_name(head, self.unit) for head in self.heads)


def _name(head: str, unit: str) -> str:
    """Return a head in letters, digits and underscores; of a number after a word the number: 'cut 12' is 12_in."""
    number = re.fullmatch(r'(?:\D*\s)?(\d[\d ./]*)( mm)?', head)
    said, named = (number[1], number[2] or f' {unit}') if number else (head, '')
    return re.sub(r'[^a-z0-9]+', '_', f'{said}{named}'.lower().replace('×', 'x')).strip('_')
