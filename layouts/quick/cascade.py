"""What the style sheet says of elements: the typesetter's own selectors and their order, asked of some elements alone."""

from __future__ import annotations

from collections.abc import Collection
from math import inf
from typing import Any
from xml.etree import ElementTree

from layouts.quick.refusal import NotPlain
from layouts.quick.tree import Element

Said = dict[str, tuple[Any, Any]]
"""Names of properties, each with its value and the weight of what says it."""


class Cascade:
    """Asks a document's style sheets."""

    def __init__(self, whole: Any, sheets: Any):
        """Begin.

        Given:
            whole   a document without pages, as the typesetter has read it
            sheets  that it asks, from the weakest on
        """
        from weasyprint.css import declaration_precedence

        self._whole, self._sheets, self._precedence = whole, sheets, declaration_precedence
        self._body = whole.etree_element.find('body')

    def of(self, page: Element, asked: Collection[Element]) -> dict[Element, Said]:
        """Return what is said of some elements of a page, their style attributes left out.

        Errors:
            NotPlain where something is put before or after one
        """
        self._body[:] = [_theirs(page)]
        root = type(self._whole.wrapper_element).from_html_root(self._whole.etree_element)
        (body,) = (one for one in root.iter_children() if one.local_name == 'body')
        found: dict[Element, Said] = {}
        self._add(page, next(body.iter_children()), asked, found)
        return found

    def _add(self, one: Element, theirs: Any, asked: Collection[Element], found: dict[Element, Said]) -> None:
        if one in asked:
            found[one] = self._said(theirs)
        for child, other in zip(one.elements, theirs.iter_children(), strict=True):
            self._add(child, other, asked, found)

    def _said(self, theirs: Any) -> Said:
        told: Said = {}
        for sheet, origin, sheet_specificity in self._sheets:
            for specificity, _order, pseudo, (declarations, layer) in sheet.matcher.match(theirs):
                if pseudo in ('before', 'after') and theirs.local_name != 'br':
                    raise NotPlain('what_the_style_sheet_puts_before_or_after')
                if pseudo:
                    continue
                level = inf if layer is None else sheet.layers.index(layer)
                for name, values, importance in declarations:
                    precedence = self._precedence(origin, importance)
                    weight = precedence, level, sheet_specificity or specificity
                    if name not in told or told[name][1] <= weight:
                        told[name] = values, weight
        return told


def _theirs(one: Element) -> ElementTree.Element:
    """Return an element as selectors ask it."""
    made = ElementTree.Element(
        one.tag, {name: said for name, said in one.attributes.items() if name != 'style'}
    )
    last = None
    for child in one.within:
        if isinstance(child, Element):
            last = _theirs(child)
            made.append(last)
        elif last is None:
            made.text = child
        else:
            last.tail = child
    return made
