"""What the style sheet says of elements: the typesetter's own selectors and their order, each asked as seldom as can be.

Contract: what is said of an element is what the typesetter's selectors say where they are all asked of it. One that is false or
true of all elements of a name and class is asked once for all of them, one that looks at what these stand in once for all that
stand in the same: an element that does not know its place among others cannot tell a selector, which is then asked anew.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterator
from math import inf
from typing import Any
from xml.etree import ElementTree

from layouts.quick.refusal import NotPlain
from layouts.quick.tree import Element

Said = dict[str, tuple[Any, Any]]
"""Names of properties, each with its value and the weight of what says it."""
Rule = tuple[tuple[int, Any, int], Callable[[Any], bool], str | None, Any]
"""Its place in the order of all rules, its selector, what it puts before or after an element, and what it says."""


class Named:
    """An element as selectors see it that know its name and attributes alone."""

    __slots__ = ('classes', 'etree_element', 'id', 'local_name')
    in_html_document, namespace_url = True, ''

    def __init__(self, one: Element):
        self.local_name = one.tag
        attributes = {name: said for name, said in one.attributes.items() if name != 'style'}
        self.etree_element = ElementTree.Element(one.tag, attributes)
        self.classes, self.id = set(attributes.get('class', '').split()), attributes.get('id')


class Within(Named):
    """One that knows what it stands in too."""

    __slots__ = ('ancestors', 'asked', 'parent', 'sure')

    def __init__(self, of: Named, parent: Any, rules: tuple[list[Rule], list[Rule]]):
        """Rules are those that are true of its name, and those that look at its place."""
        self.local_name, self.classes, self.id = of.local_name, of.classes, of.id
        self.etree_element = of.etree_element
        self.parent, self.ancestors = parent, (*parent.ancestors, parent)
        sure, self.asked = _told(self, rules[1])
        self.sure = rules[0] + sure
        """Rules that are true of it, and those that look at its place among others."""


class Placed(Named):
    """One that knows its place among others too."""

    __slots__ = ('etree_siblings', 'index', 'parent', 'previous', 'within')

    def __init__(self, of: Within, parent: Any, index: int, siblings: list[Element], previous: Any):
        self.local_name, self.classes, self.id = of.local_name, of.classes, of.id
        self.etree_element, self.within = of.etree_element, of
        self.parent, self.index, self.etree_siblings, self.previous = parent, index, siblings, previous

    @property
    def ancestors(self) -> tuple[Any, ...]:
        """Return all that it stands in, from the outermost on."""
        return (*self.parent.ancestors, self.parent)


class Cascade:
    """Asks a document's style sheets."""

    def __init__(self, whole: Any, sheets: Any):
        """Begin.

        Given:
            whole   a document without pages, as the typesetter has read it
            sheets  that it asks, from the weakest on
        """
        from weasyprint.css import declaration_precedence

        self._sheets, self._precedence = sheets, declaration_precedence
        root = type(whole.wrapper_element).from_html_root(whole.etree_element)
        (self._body,) = (one for one in root.iter_children() if one.local_name == 'body')
        self._named: dict[object, tuple[Named, tuple[list[Rule], list[Rule]]]] = {}
        self._within: dict[object, Within] = {}
        self._said: dict[object, Said] = {}

    def of(self, page: Element, asked: Collection[Element]) -> dict[Element, Said]:
        """Return what is said of some elements of a page, their style attributes left out; where the same rules say it, the same.

        Errors:
            NotPlain where something is put before or after one
        """
        found: dict[Element, Said] = {}
        self._add(page, self._body, self._body, (0, [page], None), asked, found)
        return found

    def _add(
        self,
        one: Element,
        parent: Any,
        above: Any,
        place: tuple[int, list[Element], Any],
        asked: Collection[Element],
        found: dict[Element, Said],
    ) -> Placed:
        key = above, one.tag, one.attributes.get('class')
        within = self._within.get(key)
        if within is None:
            within = self._within[key] = Within(*self._by_name(one, above))
        made, before = Placed(within, parent, *place), None
        if one in asked:
            found[one] = self._said_of(made)
        listed = one.elements
        for index, child in enumerate(listed):
            before = self._add(child, made, within, (index, listed, before), asked, found)
        return made

    def _by_name(self, one: Element, above: Any) -> tuple[Named, Any, tuple[list[Rule], list[Rule]]]:
        key = one.tag, one.attributes.get('class')
        if key not in self._named:
            named = Named(one)
            self._named[key] = named, _told(named, self._rules(named))
        named, rules = self._named[key]
        return named, above, rules

    def _rules(self, one: Named) -> Iterator[Rule]:
        """Return the rules that the typesetter would ask of elements of a name."""
        for number, (sheet, _origin, _specificity) in enumerate(self._sheets):
            matcher = sheet.matcher
            for some in (
                matcher.id_selectors.get(one.id, ()),
                *(matcher.class_selectors.get(name, ()) for name in one.classes),
                matcher.lower_local_name_selectors.get(one.local_name, ()),
                matcher.namespace_selectors.get(one.namespace_url, ()),
                matcher.lang_attr_selectors if 'lang' in one.etree_element.attrib else (),
                matcher.other_selectors,
            ):
                for selector, specificity, order, pseudo, says in some:
                    yield (number, specificity, order), selector, pseudo, says

    def _said_of(self, one: Placed) -> Said:
        true = one.within.sure + [rule for rule in one.within.asked if rule[1](one)]
        true.sort(key=lambda rule: rule[0])
        key = tuple(rule[0] for rule in true)
        if key not in self._said:
            self._said[key] = self._weighed(true, one.local_name)
        return self._said[key]

    def _weighed(self, rules: list[Rule], tag: str) -> Said:
        told: Said = {}
        for (number, specificity, _order), _selector, pseudo, (declarations, layer) in rules:
            if pseudo in ('before', 'after') and tag != 'br':
                raise NotPlain('what_the_style_sheet_puts_before_or_after')
            if pseudo:
                continue
            sheet, origin, sheet_specificity = self._sheets[number]
            level = inf if layer is None else sheet.layers.index(layer)
            for name, values, importance in declarations:
                precedence = self._precedence(origin, importance)
                weight = precedence, level, sheet_specificity or specificity
                if name not in told or told[name][1] <= weight:
                    told[name] = values, weight
        return told


def _told(one: Named, rules: Any) -> tuple[list[Rule], list[Rule]]:
    """Return the rules that are true of an element, and those that ask what it does not know."""
    true, unsure = [], []
    for rule in rules:
        try:
            if rule[1](one):
                true.append(rule)
        except AttributeError:
            unsure.append(rule)
    return true, unsure
