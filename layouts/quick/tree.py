"""A page's HTML as a tree of elements, as far as its templates are written plainly."""

from __future__ import annotations

import re
from html import unescape

from msgspec import Struct, field

from layouts.quick.refusal import NotPlain

VOID = frozenset(('img', 'br', 'col'))
PARTS = re.compile(r'<(/?)([a-z][a-z0-9]*)((?:\s+[a-z-]+(?:="[^"]*")?)*)\s*/?>|([^<]+)')
ATTRIBUTE = re.compile(r'([a-z-]+)(?:="([^"]*)")?')


class Element(Struct, eq=False):
    """An element; what stands in it are elements and strings."""

    tag: str
    attributes: dict[str, str]
    within: list[Element | str] = field(default_factory=list)

    @property
    def elements(self) -> list[Element]:
        """Return the elements in it."""
        return [one for one in self.within if isinstance(one, Element)]


def read(html: str) -> Element:
    """Return the one element of which some HTML consists.

    Errors:
        NotPlain where an element is not closed, or closed out of turn
    """
    top = Element('', {})
    path, end = [top], 0
    for found in PARTS.finditer(html):
        if found.start() != end:
            raise NotPlain(f'markup_{html[end : found.start()]!r}')
        end = found.end()
        closes, tag, attributes, words = found.groups()
        if words is not None:
            if path[-1].tag == 'pre' and not path[-1].within:
                words = words.removeprefix('\n')
            path[-1].within.append(unescape(words) if '&' in words else words)
        elif not closes:
            if tag == 'tr' and path[-1].tag == 'table':  # whose rows are in a body, said or not
                path[-1].within.append(Element('tbody', {}))
                path.append(path[-1].elements[-1])
            told = {name: unescape(value) for name, value in ATTRIBUTE.findall(attributes)}
            one = Element(tag, told)
            path[-1].within.append(one)
            if tag not in VOID:
                path.append(one)
        elif tag == 'table' and [one.tag for one in path[-2:]] == ['table', 'tbody']:
            del path[-2:]
        elif len(path) > 1 and path[-1].tag == tag:
            path.pop()
        else:
            raise NotPlain(f'</{tag}>')
    (one,) = top.elements
    if len(path) > 1 or end != len(html):
        raise NotPlain('markup')
    return one
