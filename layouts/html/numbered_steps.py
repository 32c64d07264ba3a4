"""Numbers of steps: a table of them is filled by macros, none of which knows which step it tells."""

from __future__ import annotations

import re
from itertools import count

TABLE = re.compile(r'<table class="steps counted.*?</table>', re.DOTALL)
UNNUMBERED = '<td class="k"></td>'


def with_numbered_steps(html: str) -> str:
    """Return HTML in which the steps of every counted table have their numbers, each table's from 1."""
    return TABLE.sub(_numbered, html)


def _numbered(table: re.Match[str]) -> str:
    numbers = count(1)
    return re.sub(UNNUMBERED, lambda _cell: f'<td class="k">{next(numbers)}</td>', table[0])
