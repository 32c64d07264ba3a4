"""How elements look: the typesetter's own cascade, asked once for every place in a page's tree."""

from __future__ import annotations

import re
from collections.abc import Callable, Collection, Iterator
from typing import Any

from layouts.quick.cascade import Said
from layouts.quick.faces import UNITS
from layouts.quick.refusal import NotPlain
from layouts.quick.tree import Element
from layouts.quick.words import Cut, Cuts

PLACED = frozenset(('left', 'right', 'top', 'bottom', 'width', 'height', 'margin-left', 'margin-top'))
"""What a style attribute may say that no element inherits: it is read apart, so that looks are few."""
DECLARED = re.compile(r'([a-z-]+):\s*([^;]+);?\s*')
MEASURE = re.compile(r'(-?[\d.]+)(rem|em|mm|pt)')
PX = {'mm': 96 / 25.4, 'pt': 96 / 72}
SIDES = ('top', 'right', 'bottom', 'left')
CORNERS = ('top_left', 'top_right', 'bottom_right', 'bottom_left')
MARGINS, PADDINGS = (tuple(f'{kind}_{side}' for side in SIDES) for kind in ('margin', 'padding'))
BORDERS = tuple(tuple(f'border_{side}_{what}' for what in ('width', 'style', 'color')) for side in SIDES)
ROUNDED = tuple(f'border_{corner}_radius' for corner in CORNERS)
ASKED = (
    *('background_color', 'background_image', 'transform', 'vertical_align', 'color', 'lang', 'line_height'),
    *('tab_size', 'text_align_all', 'text_align_last', 'text_indent', 'white_space'),
    *(f'font_{name}' for name in ('size', 'family', 'weight', 'style', 'stretch', 'variation_settings')),
)
"""Asked of every style; where nothing says one of them, it is the parent's, or what it is at first."""
NUMBERED = frozenset(('td', 'th'))
"""Elements that selectors ask for by their number."""
AFTER = frozenset(('div', 'section', 'tr', 'td', 'th'))
"""Elements that selectors ask for by the one before."""
FAR = 5
"""Of those that stand so far from the first in their parent selectors ask but for odd ones, even ones and the last."""
HANDLED = frozenset(
    (
        *('display', 'position', 'font_size', 'font_family', 'font_weight', 'font_style', 'font_stretch'),
        *('font_variation_settings', 'line_height', 'white_space', 'tab_size', 'text_indent', 'color'),
        *('background_color', 'background_image', 'text_align_all', 'text_align_last', 'vertical_align'),
        *('text_decoration_line', 'transform', 'transform_origin', 'width', 'height', *SIDES),
        *('border_collapse', 'table_layout', 'box_sizing', 'list_style_type', 'float', 'page'),
        *(*MARGINS, *PADDINGS, *(name for names in BORDERS for name in names), *ROUNDED),
    )
)
OF_NO_MATTER = frozenset(
    (
        *('break_after', 'break_before', 'break_inside', 'orphans', 'widows', 'overflow', 'overflow_wrap'),
        *('bookmark_level', 'bookmark_label', 'bookmark_state', 'anchor', 'lang', 'link', 'string_set'),
        *('border_spacing', 'counter_reset'),
        *('unicode_bidi', 'hyphens', 'image_orientation', 'footnote_display', 'quotes'),
        *(f'text_decoration_{what}' for what in ('color', 'style', 'thickness')),
        *(f'background_{what}' for what in ('attachment', 'clip', 'origin', 'position', 'repeat', 'size')),
    )
)
"""To a page that is whole, whose lines fit, and which has no images as grounds."""


class Look:
    """One computed style, with what layout asks for as plain values; lengths in CSS pixels."""

    def __init__(self, style: Any, cuts: Cuts):
        self.style = style
        odd = style.cascaded.keys() - HANDLED - OF_NO_MATTER
        if odd:
            raise NotPlain(', '.join(f'{name} {style.cascaded[name][0]}' for name in sorted(odd)))
        if style['background_image'] != (('none', None),):
            raise NotPlain('background_image')
        self.display, self.position, self.float = style['display'], style['position'], style['float']
        self.font_size: float = style['font_size']
        self.white_space, self.tab_size = style['white_space'], style['tab_size']
        self.indent = length(style['text_indent'])
        self.color, self.background = style['color'], style['background_color']
        self.align = self._align()
        self.vertical_align = style['vertical_align']
        self.underline = style['text_decoration_line'] != 'none'
        self.transform = style['transform']
        self.margin = tuple([length(self._own(name, 0)) for name in MARGINS])
        self.spaced = None in self.margin or any(self.margin)
        self.outside = tuple([margin or 0.0 for margin in self.margin])
        self.padding = tuple([length(self._own(name, 0)) or 0.0 for name in PADDINGS])
        self.border = tuple([self._border(*names) for names in BORDERS])
        rounded = {length(one) for name in ROUNDED for one in self._own(name, (0,))}
        if len(rounded) > 1 or (any(rounded) and any(self.border)):
            raise NotPlain('corners')
        self.around = tuple([border + own for border, own in zip(self.border, self.padding, strict=True)])
        self.seen = self.background.alpha or any(self.border)
        self.drawn_in: object = None
        """What a stream has of a color once it has this one."""
        self.rounded = rounded.pop()
        """How large the quarters of a circle at its corners are."""
        self.cut = cuts.of(style)
        self.height = self._high(self.cut)
        self.baseline = self.cut.above + (self.height - self.cut.high) / 2
        tab = style['tab_size']
        self.tab = 0 if isinstance(tab, int) else int(tab.value) * UNITS
        self.bullet = ''
        if 'list-item' in self.display:
            if style['list_style_type'] != 'disc' or style['list_style_position'] != 'outside':
                raise NotPlain(f'list_{style["list_style_type"]}')
            self.display, self.bullet = ('block', 'flow'), '• '
        self.place = {
            name: self._own(name, 'auto') for name in ('left', 'right', 'top', 'bottom', 'width', 'height')
        }

    def _own(self, name: str, unsaid: object) -> Any:
        """Return a property that is not inherited."""
        return self.style[name] if name in self.style.cascaded else unsaid

    def _border(self, width: str, style: str, color: str) -> float:
        if style not in self.style.cascaded:
            return 0.0
        wide = float(self.style[width])
        if wide and (self.style[style] != 'solid' or self.style[color].alpha != 1):
            raise NotPlain('border')
        return wide

    def _high(self, cut: Cut) -> float:
        """Return how high a line is at least, px."""
        said = self.style['line_height']
        if said == 'normal':
            return cut.high
        return float(said * self.font_size if isinstance(said, float) else said.value)

    def _align(self) -> str:
        align, last = self.style['text_align_all'], self.style['text_align_last']
        if align == 'justify' or last not in ('auto', align):
            raise NotPlain(f'text-align_{align}_{last}')
        return str({'left': 'start', 'right': 'end'}.get(align, align))


class Looks:
    """The looks of all elements of a document's pages."""

    def __init__(self, cascade: Callable[[Element, Collection[Element]], dict[Element, Said]], body: Any):
        """Begin with none.

        Given:
            cascade  tells what the style sheet says of some elements of a page
            body     computed style of the body
        """
        self._cascade, self._body, self._cuts = cascade, body, Cuts()
        self._rules: dict[object, tuple[int, int, Said]] = {}
        self._said: dict[object, int] = {}
        """By all that the style sheet says of an element: its number."""
        self._numbers: dict[int, int] = {}
        """The same, by where it lies: the cascade has one for all of which the same rules are true."""
        self._looks: dict[object, Look] = {}
        self._splits: dict[str, tuple[str, tuple[tuple[str, str], ...]]] = {}
        self._places: dict[tuple[str, float], dict[str, float]] = {}

    def of(self, page: Element) -> dict[Element, tuple[Look, dict[str, float]]]:
        """Return the look of every element of a page, and what its own style attribute says of its place, px."""
        found: dict[Element, tuple[Look, dict[str, float]]] = {}
        if not self._add(page, 0, (), self._body, found):
            new: dict[object, tuple[int, Element]] = {}
            self._find(page, 0, (), new)
            rules = self._cascade(page, {one for _number, one in new.values()})
            for key, (number, one) in new.items():
                self._rules[key] = number, self._number(rules[one]), rules[one]
            found.clear()
            self._add(page, 0, (), self._body, found)
        return found

    def _number(self, rules: Said) -> int:
        """Return the number of what rules say, the same for all that say the same."""
        number = self._numbers.get(id(rules))
        if number is None:
            said = frozenset((name, id(value)) for name, (value, _weight) in rules.items())
            number = self._numbers[id(rules)] = self._said.setdefault(said, len(self._said))
        return number

    def _find(
        self, one: Element, above: int, beside: tuple[object, ...], new: dict[object, tuple[int, Element]]
    ) -> None:
        """Find the first element at every place for which no rule is known."""
        key = (above, one.tag, one.attributes.get('class'), beside)
        known = self._rules.get(key) or new.get(key)
        if known is None:
            known = new[key] = len(self._rules) + len(new) + 1, one
        for child, place in _places(one) if one.elements else ():
            self._find(child, known[0], place, new)

    def _add(
        self,
        one: Element,
        above: int,
        beside: tuple[object, ...],
        parent: Any,
        found: dict[Element, tuple[Look, dict[str, float]]],
    ) -> bool:
        known = self._rules.get((above, one.tag, one.attributes.get('class'), beside))
        if known is None:
            return False
        number, rules, cascaded = known
        said = one.attributes.get('style', '')
        inherited, placed = (self._splits.get(said) or self._split(said)) if said else ('', ())
        key = id(parent), rules, inherited
        look = self._looks.get(key)
        if look is None:
            look = self._looks[key] = Look(_computed(cascaded, parent, inherited), self._cuts)
            self._looks[id(look.style)] = look  # which keeps the style, and its id, alive
        found[one] = look, self._at(said, placed, look) if placed else {}
        for child, place in _places(one) if one.elements else ():
            if not self._add(child, number, place, look.style, found):
                return False
        return True

    def _split(self, said: str) -> tuple[str, tuple[tuple[str, str], ...]]:
        """Return what a style attribute says of looks, and what of places."""
        declared = DECLARED.findall(said)
        looks = ';'.join([f'{name}:{value}' for name, value in declared if not _placed(name, value)])
        places = tuple([(name, value) for name, value in declared if _placed(name, value)])
        self._splits[said] = looks, places
        return looks, places

    def _at(self, said: str, placed: tuple[tuple[str, str], ...], look: Look) -> dict[str, float]:
        """Return what is said of places, px: the same for all that say it in a size of type; nobody changes it."""
        key = said, look.font_size
        if key not in self._places:
            self._places[key] = {name: self._px(value, look) for name, value in placed}
        return self._places[key]

    def _px(self, value: str, look: Look) -> float:
        if value == '0':
            return 0.0
        found = MEASURE.fullmatch(value)
        if not found:
            raise NotPlain(value)
        number, unit = float(found[1]), found[2]
        ems = {'rem': self._body.root_style['font_size'], 'em': look.font_size}
        return float(number * ems.get(unit, PX.get(unit, 0)))


def _placed(name: str, value: str) -> bool:
    return name in PLACED and not value.endswith('%')


def said(look: Look, placed: dict[str, float], name: str, whole: float | None) -> float | None:
    """Return a length that a look or its style attribute says, px, of which a share is a share of the whole; None for auto."""
    if name in placed:
        return placed[name]
    value = look.place[name]
    if value == 'auto':
        return None
    if value.unit == '%' and whole is not None:
        return float(value.value) * whole / 100
    if value.unit != 'px':
        raise NotPlain(f'{name}_{value}')
    return float(value.value)


def length(value: Any) -> float | None:
    """Return a computed length, px; None for auto.

    Errors:
        NotPlain for a share of something else
    """
    if value == 'auto':
        return None
    if isinstance(value, (int, float)):
        return float(value)
    if getattr(value, 'unit', None) != 'px':
        raise NotPlain(f'length_{value}')
    return float(value.value)


def _computed(rules: Said, parent: Any, said: str) -> Any:
    """Return a computed style under a parent, with what a style attribute says as well."""
    from weasyprint.css import tinycss2
    from weasyprint.css.properties import INHERITED, INITIAL_NOT_COMPUTED, INITIAL_VALUES
    from weasyprint.css.validation import preprocess_declarations

    cascaded = dict(rules)
    if said:
        for name, value, _important in preprocess_declarations(None, tinycss2.parse_blocks_contents(said)):
            cascaded[name] = value, (3, 0, (1, 0, 0))
    style = type(parent)(
        parent, cascaded, None, parent.root_style, None, parent.font_config, parent.initial_page_sizes
    )
    for name in ASKED:
        if name not in cascaded:
            if name in INHERITED:
                style[name] = parent[name]
            elif name not in INITIAL_NOT_COMPUTED:
                style[name] = INITIAL_VALUES[name]
    return style


def _places(one: Element) -> Iterator[tuple[Element, tuple[object, ...]]]:
    """Return the elements in one, with all that a selector may ask of where they stand among one another."""
    before: tuple[object, ...] = ()
    last = len(one.elements) - 1
    for place, child in enumerate(one.elements):
        tag, number = child.tag, 1 if place else 0
        if tag in NUMBERED:
            number = place if place < FAR else FAR + place % 2
        yield child, (number, place == last, before if tag in AFTER else ())
        before = tag, child.attributes.get('class')
