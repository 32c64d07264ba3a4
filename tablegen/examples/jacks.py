"""The hip jacks of the store's hipped end, each from its own run."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from tablegen.checking.amounts import amount
from tablegen.examples import parts
from tablegen.examples.building import SPACING_IN, Store, garden_store
from tablegen.examples.commons import mouth_of_commons
from tablegen.examples.records import CheekCut, Deduction, Mark, Mouth, Sources, Stands
from tablegen.examples.sources import in_jacks, in_opening, in_table
from tablegen.geometry import cheeks, common, corner, shortening
from tablegen.geometry import tail as tails
from tablegen.geometry.pitch import Pitch
from tablegen.numbers.exact import Exact, nearest
from tablegen.numbers.figure import Figure, decimal_figure, length_figure
from tablegen.numbers.units import Stock
from tablegen.roof.cautions import Caution
from tablegen.settings import Settings
from tablegen.tables.members import members

MOST_JACKS = 5
"""Jacks of the example, where they stand so close that there would be no end of them."""


@dataclass(frozen=True, slots=True)
class Jack:
    """One jack; every length along its top edge, worked from its run and rounded once."""

    number: int
    """From the corner."""
    run_in: Fraction
    """Level, plate line to the hip's center line: spaces from the corner, in."""
    line: Figure
    """Plate line to the hip's center line, on the jack's own center line."""
    long: Figure
    short: Figure
    """Plate line to the long point, and to the short point, of the cut against the hip."""
    overall: Figure
    """Long point to the tail's end."""
    source: Sources
    """Where the line length stands."""


@dataclass(frozen=True, slots=True)
class JackExample:
    """The jacks of one side of the hip at one spacing; the other side has the same, left and right changed over."""

    store: Store
    thickness_in: Fraction
    hip_in: Fraction
    """Thickness of the hip."""
    stock: Stock
    spacing_in: Fraction
    jacks: tuple[Jack, ...]
    off: Deduction
    cheek: CheekCut
    points: Figure
    """in, along the top edge, short to long point of every jack."""
    tail: Figure
    """in, along the top edge, plate line to the tail's end: the same on every jack."""
    mouth: Mouth | None
    """The same as the commons'."""
    marks: tuple[Mark, ...]
    """Of the last jack, from the hip's center line."""
    difference: Figure
    """One space more, to the smallest part."""
    hand: Figure
    """The same to thousandths."""
    drift: Figure
    """How far the last jack is off if each is measured a rounded difference on from the one before; + is long."""
    cautions: tuple[Caution, ...]
    stands: Stands

    @property
    def pitch(self) -> Pitch:
        return self.store.pitch

    @property
    def run_in(self) -> Fraction:
        """Return the level run of the commons beside them, in."""
        return self.store.run_in

    @property
    def overhang_in(self) -> Fraction:
        return self.store.overhang_in


def hip_jacks(settings: Settings) -> JackExample | None:
    """Return the jacks at 16 in on center or the book's nearest spacing; None where there is no run or no jack."""
    roof = garden_store(settings)
    if roof is None:
        return None
    place = min(range(len(settings.spacings)), key=lambda i: abs(settings.spacings[i] - SPACING_IN))
    spacing, at = settings.spacings[place], roof.at
    level = shortening.jack_at_hip(settings.hip_thickness, at)
    half = shortening.point_to_point(settings.rafter_thickness, at) / 2
    # from the first that reaches past the hip's side to the last that stands clear of the side common
    numbers = [
        number
        for number in range(1, int((roof.run_in - settings.rafter_thickness) // spacing) + 1)
        if number * spacing * at.plan_a.tan() > level + half
    ][:MOST_JACKS]
    if not numbers:
        return None
    jacks = tuple(_jack(number, place, level, half, roof, settings) for number in numbers)
    off = parts.deduction('hip', settings.hip_thickness, level, roof.pitch.slope, settings)
    cheek = parts.cheek_cut(cheeks.jack(at), half, roof.pitch.slope, False, settings)
    points = shortening.along(2 * half, roof.pitch.slope)
    difference = corner.jack_difference(spacing, at)
    mouth = mouth_of_commons(roof.pitch, roof.overhang_in, settings)
    return JackExample(
        roof,
        settings.rafter_thickness,
        settings.hip_thickness,
        settings.rafters,
        spacing,
        jacks,
        off,
        cheek,
        parts.inches(points, settings),
        parts.inches(tails.common_tail(roof.overhang_in, roof.pitch.slope), settings),
        mouth,
        _marks(jacks[-1], level, half, roof, settings),
        parts.inches(difference, settings),
        decimal_figure(difference, 3),
        amount(_drift(difference, numbers[-1], settings)),
        parts.cautions(roof.pitch, mouth),
        _stands(roof, place, off, cheek, parts.inches(points, settings), settings),
    )


def _jack(number: int, place: int, level: Exact, half: Exact, roof: Store, settings: Settings) -> Jack:
    slope, measure = roof.pitch.slope, settings.measure
    run = number * settings.spacings[place] * roof.at.plan_a.tan()
    line = number * corner.jack_difference(settings.spacings[place], roof.at)
    long, short = (shortening.along(run - level + one, slope) for one in (half, -half))
    tail = tails.common_tail(roof.overhang_in, slope)
    figure = length_figure(line, measure)
    return Jack(
        number,
        number * settings.spacings[place],
        figure,
        length_figure(long, measure),
        length_figure(short, measure),
        length_figure(long + tail, measure),
        in_jacks(number, place, figure, settings),
    )


def _marks(jack: Jack, level: Exact, half: Exact, roof: Store, settings: Settings) -> tuple[Mark, ...]:
    slope = roof.pitch.slope
    return parts.marks(
        settings,
        center=0,
        long=shortening.along(level - half, slope),
        cut=shortening.along(level, slope),
        short=shortening.along(level + half, slope),
        plate=common.line_length(jack.run_in, slope),
        tail=common.line_length(jack.run_in + roof.overhang_in, slope),
    )


def _drift(difference: Exact, count: int, settings: Settings) -> Exact:
    per = settings.measure.per
    return count * (Fraction(nearest(difference, per), per) - difference)


def _stands(
    roof: Store, place: int, off: Deduction, cheek: CheekCut, points: Figure, settings: Settings
) -> Stands:
    pitch, values = roof.pitch, members(roof.pitch, settings)
    thick, spacing = off.thickness_in, settings.spacings[place]
    along = 'shortening-jack', pitch, 'off_along_edge', off.along, settings, thick
    difference = parts.inches(corner.jack_difference(spacing, roof.at), settings)
    opened = in_opening('jack_level', off.level, values, settings)
    opened += in_opening('jack_along', off.along, values, settings)
    return {
        'off': opened
        or in_table('shortening-level', thick, 'hip_or_jack', off.level, settings) + in_table(*along),
        'side': in_opening('jack_side', cheek.plumb, values, settings)
        or in_table('cheeks', pitch, 'jack_side', cheek.plumb, settings),
        'top': in_opening('jack_top', cheek.top, values, settings)
        or in_table('cheeks', pitch, 'jack_top', cheek.top, settings),
        'points': in_opening('jack_points', points, values, settings)
        or in_table('jacks', pitch, 'short_to_long_point', points, settings),
        'difference': in_table('jacks', pitch, 'difference', difference, settings, spacing),
    }
