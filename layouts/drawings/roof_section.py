"""Half of a roof cut through, to scale: its ridge at the left, level lengths under it, heights over the main plates beside it."""

from __future__ import annotations

from collections.abc import Iterator

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings import svg
from layouts.paper.typeface import advance_em
from layouts.words.drawings import ROOF_SECTION

LEFT, RIGHT = 96.0, 168.0
"""For the heights at the ridge, and for those at the tail."""
ABOVE, BELOW, COLUMN = 40.0, 58.0, 24.0
"""Over the ridge, under the plates, and between two heights."""
PLATE_IN = 3.5, 3.0
"""A plate is drawn so wide, and so deep."""
SIZE, SMALL, LEAST = 12.2, 9.5, 8.0
TRIANGLE = 44.0


class SectionLeg(Struct, frozen=True):
    """A stretch of the top edges, inches."""

    slope: float
    run: float
    words: svg.Words
    """Of the run."""
    base: str
    """What its pitch stands over, '' for degrees."""
    rise: str


class SectionInk(Struct, frozen=True):
    """What is drawn of half a roof; heights over the main plates, inches."""

    legs: tuple[SectionLeg, ...]
    """From the plate up."""
    depth: float
    overhang: float
    set_in: float
    """Of the tail's lower corner, level: 0 where it is cut plumb."""
    seat: float
    plate: float
    above_plate: float
    """Over its own plate."""
    upper: tuple[float, float, float, float] | None
    """A ridge, ledger or beam: from where to where it is, level from the end of the run outwards; its top and underside."""
    upper_in: float
    """What comes off the rafter at its upper end, level."""
    overhang_words: svg.Words
    above_words: svg.Words
    tail_words: svg.Words
    plate_words: svg.Words
    heights: tuple[tuple[float, svg.Words, str], ...]
    """At the ridge, the lowest first: its words, and its figure where these find no room."""

    @property
    def run(self) -> float:
        return sum(leg.run for leg in self.legs)

    @property
    def meet(self) -> float:
        return self.plate + self.above_plate + sum(leg.run * leg.slope for leg in self.legs)

    @property
    def tail_top(self) -> float:
        return self.plate + self.above_plate - self.overhang * self.legs[0].slope


class _Sheet(Struct, frozen=True):
    """Where it lies on the drawing: inches from the ridge center line to the right, and up from the main plates' top."""

    units: float
    datum: float

    def at(self, x: float, up: float) -> svg.Point:
        return LEFT + x * self.units, self.datum - up * self.units


def section_drawing(ink: SectionInk, width: float, height: float) -> Markup:
    """Return half of a roof within so many units."""
    low = min(0.0, ink.tail_top - ink.depth * 1.3, ink.plate - PLATE_IN[1])
    units = min(
        (width - LEFT - RIGHT) / (ink.run + ink.overhang), (height - ABOVE - BELOW) / (ink.meet - low)
    )
    sheet = _Sheet(units, ABOVE + ink.meet * units)
    foot = sheet.at(0, low)[1] + 14
    shapes = [
        *_wood(ink, sheet),
        *_levels(ink, sheet, foot),
        *_heights(ink, sheet),
        *_triangles(ink, sheet),
    ]
    return svg.drawing(width, foot + 2 * COLUMN, ROOF_SECTION['title'], shapes)


def _wood(ink: SectionInk, sheet: _Sheet) -> Iterator[str]:
    """Return the rafters, the plate and the ridge."""
    lower = ink.legs[0]
    plumb = ink.depth / cos_of(lower.slope)
    heel = plumb - ink.above_plate
    height, x = ink.plate + ink.above_plate, ink.run
    top = [(x + ink.overhang, ink.tail_top), (x, height)]
    bottom = [(x + ink.overhang - ink.set_in, ink.tail_top - plumb + ink.set_in * lower.slope)]
    if heel > 0:
        bottom += [(x, ink.plate - heel), (x, ink.plate), (x - ink.seat, ink.plate)]
    for place, leg in enumerate(ink.legs):
        last = place == len(ink.legs) - 1
        end = x - leg.run + (ink.upper_in if last else 0.0)
        height += leg.slope * (x - end)
        top.append((end, height))
        deep = ink.depth / cos_of(leg.slope)
        bottom.append((end, height - deep))
        x = end
    yield svg.shape([sheet.at(*one) for one in top + bottom[::-1]], 1.1)
    wide, deep = min(PLATE_IN[0], ink.seat), PLATE_IN[1]
    plate = [(ink.run, ink.plate), (ink.run - wide, ink.plate)]
    plate += [(x, ink.plate - deep) for x, _ in reversed(plate)]
    block = [sheet.at(*one) for one in plate]
    yield svg.hatch(block, 4)
    yield svg.shape(block, 1.1)
    if ink.upper:
        start, stop, upper_top, under = ink.upper
        board = [(start, upper_top), (stop, upper_top), (stop, under), (start, under)]
        yield svg.shape([sheet.at(*one) for one in board], 1.1, '#fff')
    low, high = sheet.at(0, min(0.0, ink.plate)), sheet.at(0, ink.meet)
    yield svg.line((low[0], low[1] + 6), (high[0], high[1] - 8), svg.HAIR, '8 2 2 2')
    for leg in ink.legs[:-1]:
        at = sheet.at(ink.run - leg.run, 0)
        up = sheet.at(0, ink.plate + ink.above_plate + leg.run * leg.slope)[1]
        yield svg.line(at, (at[0], up - 8), svg.HAIR, '8 2 2 2')


def _levels(ink: SectionInk, sheet: _Sheet, foot: float) -> Iterator[str]:
    """Return the line of the main plates' top, and the level lengths under the roof."""
    yield svg.line(
        (8, sheet.datum), (sheet.at(ink.run + ink.overhang, 0)[0] + 21, sheet.datum), svg.HAIR, '5 3'
    )
    x = ink.run
    ends = [(x, x + ink.overhang, ink.overhang_words)] if ink.overhang else []
    for leg in ink.legs:
        ends.append((x - leg.run, x, leg.words))
        x -= leg.run
    y = foot + COLUMN - 6
    for start, stop, words in ends:
        a, b = sheet.at(start, 0)[0], sheet.at(stop, 0)[0]
        fits = start == ink.run or _fitting(words, b - a - 4) > LEAST
        over = 12 if fits else 3  # words that are wider than their arrow stand over its ends
        yield from (svg.line((one, y - over), (one, y + 3), svg.HAIR) for one in (a, b))
        yield svg.arrow((a, y), (b, y), both=True)
        if start == ink.run:
            yield svg.text(words, (b + 5, y + 4), SIZE, 'start', 700)
        else:
            size = _fitting(words, b - a - 4) if fits else SIZE
            yield svg.text(words, ((a + b) / 2, y - 4), size, 'middle', 700)


def _heights(ink: SectionInk, sheet: _Sheet) -> Iterator[str]:
    """Return the heights at the ridge and at the tail."""
    room = min(height for height, *_ in ink.heights) * sheet.units - 8
    for column, (height, words, figure) in enumerate(ink.heights):
        said = words if _fitting(words, room) > LEAST else figure
        x = LEFT - 20 - COLUMN * column
        top = sheet.at(0, height)
        yield svg.line((x - 3, top[1]), (LEFT - 2, top[1]), svg.HAIR)
        yield svg.arrow((x, sheet.datum), (x, top[1]), both=True)
        yield svg.text(said, (x - 4, sheet.datum - 4), _fitting(said, room), 'start', 700, 90)
    right = sheet.at(ink.run + ink.overhang, 0)[0]
    a, b = sheet.at(ink.run, ink.plate), sheet.at(ink.run, ink.plate + ink.above_plate)
    x = right + 18
    yield svg.line(b, (x + 3, b[1]), svg.HAIR)
    if ink.plate:
        yield svg.line(a, (x + 3, a[1]), svg.HAIR, '5 3')
        yield svg.text(ink.plate_words, (x + 6, a[1] + SIZE + 1), SMALL, 'start', 700)
    yield svg.arrow((x, a[1]), (x, b[1]), both=True)
    yield svg.text(
        ink.above_words, (x + 6, (a[1] + b[1]) / 2 + 3), _fitting(ink.above_words, RIGHT - 26), 'start', 700
    )
    corner = sheet.at(ink.run + ink.overhang, ink.tail_top)
    tail = (right + 30, max(corner[1], a[1]) + 26)
    yield svg.arrow((tail[0], tail[1] - 2), corner)
    yield svg.text(
        ink.tail_words, (tail[0] + 2, tail[1] + 4), _fitting(ink.tail_words, RIGHT - 34), 'start', 700
    )


def _triangles(ink: SectionInk, sheet: _Sheet) -> Iterator[str]:
    """Return the pitch of each stretch: 12 level, its rise plumb."""
    x, height = ink.run, ink.plate + ink.above_plate
    for leg in ink.legs:
        middle = sheet.at(x - leg.run / 2, height + leg.slope * leg.run / 2)
        wide = min(TRIANGLE, 60 / max(leg.slope, 0.1))
        lift = 16.0
        left, right = middle[0] - wide / 2, middle[0] + wide / 2
        top, low = middle[1] - lift - wide * leg.slope / 2, middle[1] - lift + wide * leg.slope / 2
        yield svg.shape([(left, top), (right, top), (right, low)], svg.LINE)
        if leg.base:
            yield svg.text(leg.base, ((left + right) / 2, top - 3), SMALL, 'middle', 700)
        yield svg.text(leg.rise, (right + 4, (top + low) / 2 + 3), SMALL, 'start', 700)
        x, height = x - leg.run, height + leg.slope * leg.run


def _fitting(words: svg.Words, room: float) -> float:
    """Return the size in which words have room."""
    told = words if isinstance(words, str) else words[0].format(**words[1])
    return round(min(SIZE, room / advance_em(told, svg.WIDTH, 700)), 2)


def cos_of(slope: float) -> float:
    """Return the cosine of a slope's angle."""
    return float((1 + slope**2) ** -0.5)
