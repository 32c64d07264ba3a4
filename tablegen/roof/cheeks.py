"""Cheeks: each with its line on the top edge, from square across, and the saw's two settings on the side."""

from __future__ import annotations

from fractions import Fraction
from functools import cached_property
from typing import ClassVar, NamedTuple

from msgspec import Struct

from tablegen.geometry import cheeks, shortening, tail
from tablegen.geometry.cheeks import Cheek, figure_against_12
from tablegen.geometry.stepping import RUN_PER_STEP, hold
from tablegen.numbers import text
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import degree_figure
from tablegen.roof.figures import Degrees, Length, TwoWays
from tablegen.roof.side import Side

PAST_SCALE, LEANING = 'roof.cheek.past_scale', 'roof.cheek.leaning'
SQUARE_TOP = ('roof.cheek.square_top',)
IN_THE_PLANE = ('roof.cheek.in_the_plane',)
JACK_TOP = (*IN_THE_PLANE, 'roof.cheek.cripples')


class OnTop(NamedTuple):
    """A line on the top edge."""

    from_square: Degrees
    figure_on_12: Length
    held: str


class CheekCut(Struct, frozen=True):
    """One cheek."""

    datum: tuple[str, ...]
    top_from_square: Degrees
    """On the top edge, from the line square across it."""
    top_figure_on_12: Length
    """Held against 12 on the square for that line, which is marked along the 12."""
    top_held: str
    """The same, body and tongue."""
    side_plumb: Degrees | None
    """On the side, from the line square across it: the member's plumb cut, which the saw follows."""
    side_leaning: Degrees | None
    """In its place, at a fascia that stands square to the roof: the saw's line, its lower end towards the ridge."""
    side_blade_tilt: Degrees
    """From square, the saw's shoe on that side."""
    within_saw_scale: bool
    end_blade_tilt: Degrees | None
    """Past the saw's scale, from a squared end."""
    blade_reach: Length | None

    @property
    def side_line(self) -> Degrees:
        """Return the line on the side that the saw follows, from the line square across it."""
        line = self.side_plumb or self.side_leaning
        assert line
        return line


class OneCheek(CheekCut, frozen=True):
    """A cheek over the whole thickness."""

    long_to_short_point: TwoWays


class TwoCheeks(CheekCut, frozen=True):
    """One of two cheeks that meet in a point on the center line."""

    point_to_side: TwoWays


class BackedHip(Struct, frozen=True):
    """The lines of a hip's cuts on its backed face."""

    datum: ClassVar = ('roof.cheek.backed',)
    at_ridge_top_from_square: Degrees
    at_ridge_top_figure_on_12: Length
    at_ridge_top_held: str
    at_common_top_from_square: Degrees
    at_common_top_figure_on_12: Length
    at_common_top_held: str


class Cheeks(Struct, frozen=True):
    """The cheeks of one side: its jacks, and hips and valleys where they meet what stands on it."""

    datum: ClassVar = ('roof.cheek',)
    jack: OneCheek
    hip_at_ridge: OneCheek
    valley_at_ridge: OneCheek
    hip_between_commons: TwoCheeks
    valley_between_ridges: TwoCheeks
    hip_tail: TwoCheeks
    valley_tail: TwoCheeks
    backed_hip: BackedHip


Cut = tuple[
    tuple[str, ...],
    Degrees,
    Length,
    str,
    Degrees | None,
    Degrees | None,
    Degrees,
    bool,
    Degrees | None,
    Length | None,
]


def cut_of(side: Side, cut: Cheek, top: tuple[str, ...], crossed_in: Fraction) -> Cut:
    """Return what a cheek is marked and sawn by, in the order of CheekCut.

    Given:
        top         what its top is
        crossed_in  the thickness that it crosses: half of the board's for each of two cheeks to a point
    """
    within = cut.within_scale()
    return (
        (*top, *((LEANING,) if cut.leaning else ()), *(() if within else (PAST_SCALE,))),
        *on_top(side, cut.top),
        None if cut.leaning else degree_figure(cut.saw),
        degree_figure(cut.saw) if cut.leaning else None,
        degree_figure(cut.blade),
        within,
        None if within else degree_figure(cut.from_end()),
        None if within else side.length(cut.reach(crossed_in)),
    )


def jack_cheek(side: Side, top: tuple[str, ...] = JACK_TOP) -> OneCheek:
    """Return the cheek of a jack or cripple of this side."""
    return jack_cheek_against(side, side.at.plan_a, top)


def jack_cheek_against(side: Side, plan: Angle, top: tuple[str, ...] = JACK_TOP) -> OneCheek:
    """Return the cheek of a jack of this side against what stands at an angle in plan to its eave."""
    thick = side.boards.rafter_in
    points = side.both(shortening.points_apart(thick, plan), side.slope)
    return OneCheek(*cut_of(side, cheeks.jack_against(plan, side.slope), top, thick), points)


class CheeksOf:
    """The cheeks of a side, each made when asked for."""

    def __init__(self, side: Side):
        self.side, self.at = side, side.at
        self.hip_in, self.valley_in = side.boards.hip_in, side.boards.valley_thickness_in

    jack_top = cached_property(lambda of: on_top(of.side, cheeks.jack(of.at).top))
    """Of the jack's cheek, its line on the top alone."""
    hip_top = cached_property(lambda of: on_top(of.side, of.at_ridge.top))
    """Of the hip's and the valley's at a ridge."""
    at_ridge = cached_property(lambda of: cheeks.hip_at_ridge(of.at))
    jack = cached_property(lambda of: jack_cheek(of.side))
    hip_at_ridge = cached_property(lambda of: one_cheek(of.side, of.at_ridge, of.hip_in))
    valley_at_ridge = cached_property(lambda of: one_cheek(of.side, of.at_ridge, of.valley_in))
    hip_tail = cached_property(lambda of: tail_cheeks(of.side, of.hip_in))
    valley_tail = cached_property(lambda of: tail_cheeks(of.side, of.valley_in))

    @cached_property
    def hip_between_commons(self) -> TwoCheeks:
        back = shortening.set_back_at_common(self.hip_in, self.at)
        return two_cheeks(self.side, cheeks.hip_at_common(self.at), self.hip_in, back)

    @cached_property
    def valley_between_ridges(self) -> TwoCheeks:
        return two_cheeks(self.side, self.at_ridge, self.valley_in, _back(self.side, self.valley_in))


def cheeks_of(side: Side) -> Cheeks:
    """Return the cheeks of a side."""
    of = CheeksOf(side)
    return Cheeks(
        jack=of.jack,
        hip_at_ridge=of.hip_at_ridge,
        valley_at_ridge=of.valley_at_ridge,
        hip_between_commons=of.hip_between_commons,
        valley_between_ridges=of.valley_between_ridges,
        hip_tail=of.hip_tail,
        valley_tail=of.valley_tail,
        backed_hip=BackedHip(
            *on_top(side, cheeks.backed_at_ridge(of.at)), *on_top(side, cheeks.backed_at_common(of.at))
        ),
    )


def one_cheek(side: Side, cut: Cheek, thickness_in: Fraction, points_in: Exact | None = None) -> OneCheek:
    """Return the cheek of a square-topped hip or valley over its whole thickness.

    Given:
        points_in  level, from its long to its short point; None at a ridge over this side
    """
    level = shortening.hip_point_to_point(thickness_in, side.at) if points_in is None else points_in
    points = side.both(level, side.at.hip_slope)
    return OneCheek(*cut_of(side, cut, SQUARE_TOP, thickness_in), points)


def two_cheeks(side: Side, cut: Cheek, thickness_in: Fraction, back_in: Exact) -> TwoCheeks:
    """Return one of two cheeks of a square-topped hip or valley; from their point it lies so far back, level."""
    points = side.both(back_in, side.at.hip_slope)
    return TwoCheeks(*cut_of(side, cut, SQUARE_TOP, thickness_in / 2), points)


def tail_cheeks(side: Side, thickness_in: Fraction) -> TwoCheeks:
    """Return the cheek at the tail of a hip or valley, to this side's fascia."""
    return two_cheeks(side, cheeks.hip_at_ridge(side.at), thickness_in, _back(side, thickness_in))


def square_tail_cheeks(side: Side, thickness_in: Fraction) -> TwoCheeks:
    """Return the same to a fascia that stands square to this side's slope."""
    back = tail.square_set_back(thickness_in, side.at)
    return two_cheeks(side, cheeks.hip_at_square_fascia(side.at), thickness_in, back)


def _back(side: Side, thickness_in: Fraction) -> Exact:
    return shortening.set_back_at_ridge(thickness_in, side.at)


def on_top(side: Side, from_square: Angle) -> OnTop:
    """Return a line on the top: its angle, its figure against 12, and how the square is held for it.

    The square is held '12 & 10', or '6 & 12 3/8' where the figure is past the tongue's end.
    """
    figure_in = figure_against_12(from_square)
    halved = hold(RUN_PER_STEP, figure_in).holds
    figure = side.on_square(figure_in)
    held = figure if halved == 1 else side.on_square(figure_in / halved)
    body = text.rational(Fraction(RUN_PER_STEP, halved))
    return OnTop(degree_figure(from_square), figure, f'{body} & {held.text}')
