"""From where to where the figures of the tables are measured, on which face: of a table as a whole, or of some columns.

What a table says as a whole ends with the mark that joins it to what its columns say.
"""

from __future__ import annotations

from collections.abc import Sequence

from layouts.words.say import say
from tablegen.tables.table import Column, S, Table


def datum_of(table: Table[S], columns: Sequence[Column[S]]) -> str:
    """Return from where to where some columns of a table are measured: what it says as a whole, then each clause once."""
    own = dict.fromkeys(say(column.datum) for column in columns if column.datum)
    whole = [say(table.datum)] if table.datum else []
    return ' '.join([*whole, *(['; '.join(own)] if own else [])]).rstrip(',;:')
