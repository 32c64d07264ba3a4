"""A page's HTML as a tree of elements, as far as its templates are written plainly."""

from __future__ import annotations

import re
from functools import cache
from html import unescape

from msgspec import Struct, field

from layouts.quick.refusal import NotPlain

VOID = frozenset(('img', 'br', 'col'))
PARTS = re.compile(r'<(/?)([a-z][a-z0-9]*)((?:\s+[a-z-]+(?:="[^"]*")?)*)\s*/?>|([^<]+)')
ATTRIBUTE = re.compile(r'([a-z-]+)(?:="([^"]*)")?')


LONG = 120
"""So many letters of attributes hold a drawing, and are seldom met again."""


class Element(Struct, eq=False):
    """An element; what stands in it are elements and strings."""

    tag: str
    attributes: dict[str, str]
    within: list[Element | str] = field(default_factory=list)
    elements: list[Element] = field(default_factory=list)
    """The elements in it."""

    def add(self, one: Element) -> None:
        """Put an element at its end."""
        self.within.append(one)
        self.elements.append(one)


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
        last = path[-1]
        if words is not None:
            if last.tag == 'pre' and not last.within:
                words = words.removeprefix('\n')
            last.within.append(unescape(words) if '&' in words else words)
        elif not closes:
            if tag == 'tr' and last.tag == 'table':  # whose rows are in a body, said or not
                last.add(Element('tbody', {}))
                last = last.elements[-1]
                path.append(last)
            one = Element(tag, _told(attributes) if len(attributes) < LONG else _attributes(attributes))
            last.add(one)
            if tag not in VOID:
                path.append(one)
        elif tag == 'table' and [one.tag for one in path[-2:]] == ['table', 'tbody']:
            del path[-2:]
        elif len(path) > 1 and last.tag == tag:
            path.pop()
        else:
            raise NotPlain(f'</{tag}>')
    (one,) = top.elements
    if len(path) > 1 or end != len(html):
        raise NotPlain('markup')
    return one


def _attributes(told: str) -> dict[str, str]:
    """Return what attributes say."""
    found = dict(ATTRIBUTE.findall(told))
    return {name: unescape(value) for name, value in found.items()} if '&' in told else found


@cache
def _told(attributes: str) -> dict[str, str]:
    """Return the same for many elements, of which none changes it."""
    return _attributes(attributes)
