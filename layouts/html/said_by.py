"""What a template says, sentence by sentence as the catalogue of a language has them, and whether it says it in any case."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

TEMPLATES = Path(__file__).parent / 'templates'
TAG = re.compile(r'{%-?\s*(\w+)\s*(.*?)-?%}', re.DOTALL)
PLACE = re.compile(r'{{ *(\w+) *}}')
OPENS, CLOSES = {'if', 'for', 'macro'}, {'endif', 'endfor', 'endmacro'}
"""Within these words stand in some cases only."""


def said_by(template: str, always: bool = True) -> Iterator[tuple[str, bool]]:
    """Yield the sentences of a template and of those that it includes, %(names)s for their places; with each whether it stands on every
    page of the template.

    Given:
        always  whether the template itself is on every page
    """
    source = (TEMPLATES / template).read_text('utf-8')
    deep, begun = 0, 0
    for tag in TAG.finditer(source):
        name, rest = tag[1], tag[2].strip()
        deep += (name in OPENS) - (name in CLOSES)
        if name == 'include':
            yield from said_by(rest.strip('"'), always and not deep)
        elif name == 'trans':
            begun = tag.end()
        elif name == 'endtrans':
            yield PLACE.sub(r'%(\1)s', ' '.join(source[begun : tag.start()].split())), always and not deep
