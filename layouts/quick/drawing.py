"""A page as it is drawn on the typesetter's own stream, among the pages that it has set itself."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from types import SimpleNamespace
from typing import Any

from msgspec.structs import replace

from layouts.quick.blocks import Blocks
from layouts.quick.layers import Inked, Layer, turned
from layouts.quick.looks import CORNERS, SIDES, Look
from layouts.quick.refusal import NotPlain
from layouts.quick.shapes import Shapes


class QuickPage:
    """As much of a page as the typesetter asks of one that it writes."""

    def __init__(
        self,
        size: tuple[float, float],
        anchors: dict[str, tuple[float, float, float, float]],
        layer: Layer,
        blocks: Blocks,
        images: Images,
    ):
        self.width, self.height = size
        self.anchors = anchors
        self.bleed = dict.fromkeys(('top', 'right', 'bottom', 'left'), 0)
        self.bookmarks: list[object] = []
        self.forms: dict[object, list[object]] = {None: []}
        order = {one: place for place, one in enumerate(blocks.looks)}
        self.links = [
            (
                'external',
                one.more.attributes['href'],
                (one.x, one.y, one.x + one.width, one.y + one.height),
                SimpleNamespace(),
            )
            for one in sorted(_links(layer), key=lambda link: order[link.more])
        ]
        self._layer, self._images = layer, images

    def paint(self, stream: Any, scale: float = 1) -> None:
        """Draw the page."""
        with stream.stacked():
            stream.transform(a=scale, d=scale)
            self._draw(self._layer, stream)
        stream.stream[:] = [b'\n'.join(stream.stream)]  # as it is written, but sooner

    def _draw(self, layer: Layer, stream: Any) -> None:
        if layer.turn:
            with stream.stacked():
                stream.transform(*turned(layer.turn))
                self._draw_inks(layer, stream)
        else:
            self._draw_inks(layer, stream)

    def _draw_inks(self, layer: Layer, stream: Any) -> None:
        for one in layer.grounds:
            if one.what == 'ground':
                self._images.draw_ground(one, stream)
            else:
                _draw_rule(one, stream)
        for one in layer.ink:
            if one.what == 'words':
                self._draw_words(one, stream)
            elif one.what == 'box':
                self._draw(one.more, stream)
            else:
                self._images.draw(one, stream)
        for inner in layer.over:
            self._draw(inner, stream)

    def _draw_words(self, one: Inked, stream: Any) -> None:
        look: Look
        look, text = one.more
        if not text.strip():
            return
        cut = look.cut
        if look.underline:
            _draw_rule(cut.underline(one.x, one.y, text.rstrip(' '), look.color), stream)
        shown = cut.shown(text, stream, look.tab)
        font, size = cut.known(stream)
        # A color that the stream has is not set again.
        if look.drawn_in != (stream._current_color, stream._current_alpha):
            stream.set_color(look.color)
            look.drawn_in = stream._current_color, stream._current_alpha
        stream.begin_text()
        stream.stream.append(b'1 0 0 -1 %f %f Tm' % (one.x, one.y))
        stream.set_font_size(font.hash, size)
        stream.stream.append(f'[<{shown}>] TJ'.replace('<>', ' ').encode())
        stream.end_text()


class Images:
    """Drawings and grounds, each drawn once and its operators kept."""

    def __init__(self, read: Any, shapes: Shapes):
        self._read, self._shapes = read, shapes
        self._drawn: dict[tuple[object, ...], list[Any]] = {}

    def draw_ground(self, one: Inked, stream: Any) -> None:
        """Draw an element's ground and borders, which stand on many pages in one place."""
        colors = stream._current_color, stream._current_color_stroke
        alphas = stream._current_alpha, stream._current_alpha_stroke
        key = id(one.more), one.x, one.y, one.width, one.height, *colors, *alphas
        if key not in self._drawn:
            begins = len(stream.stream)
            _draw_ground(one, stream)
            self._drawn[key] = stream.stream[begins:]
        else:
            stream.stream.extend(self._drawn[key])
            stream.push_state()  # of which is left what is left of each that was drawn
            stream.pop_state()

    def draw(self, one: Inked, stream: Any) -> None:
        """Draw an image at its place."""
        element, (top, right, bottom, left) = one.more
        address = element.attributes['src']
        with stream.stacked():
            _clip(
                replace(
                    one,
                    x=one.x - left,
                    y=one.y - top,
                    width=left + one.width + right,
                    height=top + one.height + bottom,
                ),
                stream,
            )
            stream.set_alpha(1)
            stream.transform(e=one.x, f=one.y)
            key = address, one.width, one.height
            if key not in self._drawn:
                begins = len(stream.stream)
                with stream.stacked():
                    try:
                        self._shapes.draw(address, one.width, one.height, stream)
                    except NotPlain:
                        self._read(address).draw(stream, one.width, one.height, None)
                self._drawn[key] = stream.stream[begins:]
            else:
                stream.stream.extend(self._drawn[key])


@contextmanager
def quick_drawings() -> Iterator[None]:
    """Have drawings of plain shapes drawn the quick way for a while, on pages of the typesetter's own too."""
    from weasyprint.images import SVGImage

    plain = SVGImage.draw
    known: dict[int, Shapes] = {}

    def draw(image: Any, stream: Any, width: float, height: float, style: Any) -> None:
        fonts = image._svg.font_config
        try:
            known.setdefault(id(fonts), Shapes(fonts)).draw(image._base_url, width, height, stream)
        except NotPlain:
            plain(image, stream, width, height, style)

    SVGImage.draw = draw
    try:
        yield
    finally:
        SVGImage.draw = plain


def _links(layer: Layer) -> list[Inked]:
    boxes = (one.more for one in layer.ink if one.what == 'box')
    return [*layer.links, *(one for inner in (*boxes, *layer.over) for one in _links(inner))]


def _clip(one: Inked, stream: Any) -> None:
    stream.rectangle(one.x, one.y, one.width, one.height)
    stream.clip()
    stream.end()


def _draw_rule(one: Inked, stream: Any) -> None:
    """Draw a border that cells share."""
    width, color = one.more
    stream.push_state()
    stream.push_state()
    stream.set_color(color, stroke=True)
    stream.set_line_width(width)
    stream.move_to(one.x, one.y)
    stream.line_to(one.x + one.width, one.y + one.height)
    stream.stroke()
    stream.pop_state()
    stream.pop_state()


def _draw_ground(one: Inked, stream: Any) -> None:
    """Draw an element's ground and borders, with the typesetter's own operators."""
    look: Look = one.more
    if look.background.alpha:
        with stream.stacked():
            if look.rounded:
                from weasyprint.draw.border import rounded_box

                rounded_box(stream, _box(one).rounded_border_box())
                stream.clip()
                stream.end()
            else:
                _clip(one, stream)
            with stream.stacked():
                stream.set_color(look.background)
                _clip(one, stream)
                stream.rectangle(one.x, one.y, one.width, one.height)
                stream.fill()
    if any(look.border):
        from weasyprint.draw.border import draw_border

        draw_border(stream, _box(one))


def _box(one: Inked) -> Any:
    """Return a ground as the typesetter's own box."""
    from weasyprint.formatting_structure.boxes import BlockBox

    look: Look = one.more
    box = BlockBox('div', look.style, None, [])
    box.position_x, box.position_y = one.x, one.y
    for side, width in zip(SIDES, look.border, strict=True):
        setattr(box, f'border_{side}_width', width)
        setattr(box, f'margin_{side}', 0)
        setattr(box, f'padding_{side}', 0)
    box.width = one.width - look.border[1] - look.border[3]
    box.height = one.height - look.border[0] - look.border[2]
    for corner in CORNERS:
        setattr(box, f'border_{corner}_radius', (look.rounded, look.rounded))
    return box
