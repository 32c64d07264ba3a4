"""What brings a hip into the two roof planes, and what follows them: backing, drop, trim, gable studs, area."""

from __future__ import annotations

from typing import ClassVar

from msgspec import Struct

from tablegen.geometry import backing, common, gable, trim
from tablegen.numbers.figure import degree_figure
from tablegen.roof.figures import Degrees, Length, Ratio, given, ratio
from tablegen.roof.jacks import Difference
from tablegen.roof.side import Side


class Backing(Struct, frozen=True):
    """The backing of the hip's face towards a side."""

    datum: ClassVar = ('roof.backing',)
    bevel: Degrees
    depth_down_side: Length


class Drop(Struct, frozen=True):
    """The drop of a square-topped hip for a side."""

    datum: ClassVar = ('roof.drop',)
    plumb: Length
    square_to_edge: Length
    hip_thickness: Length


class Miter(Struct, frozen=True):
    """One end of one board."""

    miter: Degrees
    bevel: Degrees


class Sheathing(Struct, frozen=True):
    """Sheathing cut along a hip or valley."""

    datum: ClassVar = ('roof.sheathing',)
    from_eave: Degrees
    plumb_bevel: Degrees


class Trim(Struct, frozen=True):
    """The compound miters of boards on a side, and the cut of sheathing."""

    datum: ClassVar = ('roof.trim',)
    standing_plumb: Miter
    square_to_slope: Miter
    in_the_roof_plane: Miter
    sheathing: Sheathing


class GableStuds(Struct, frozen=True):
    """Studs under a slope."""

    datum: ClassVar = ('roof.gable_stud',)
    difference: tuple[Difference, ...]
    top_cut: Degrees


class Area(Struct, frozen=True):
    """How much roof lies over level plan."""

    datum: ClassVar = ('roof.area',)
    roof_per_plan: Ratio


def backing_of(side: Side) -> Backing:
    """Return the backing of the hip's face towards this side."""
    depth = backing.drop_square(side.boards.hip_in, side.at)
    return Backing(degree_figure(backing.bevel(side.at)), side.length(depth))


def drop_of(side: Side) -> Drop:
    """Return the drop of a square-topped hip for this side."""
    thick, at = side.boards.hip_in, side.at
    plumb, square = backing.drop_plumb(thick, at), backing.drop_square(thick, at)
    return Drop(side.length(plumb), side.length(square), side.length(thick))


def trim_of(side: Side) -> Trim:
    """Return the cuts of boards and sheathing on this side."""
    at = side.at
    return Trim(
        _miter(trim.standing_plumb(at)),
        _miter(trim.square_to_slope(at)),
        _miter(trim.in_the_plane(at)),
        Sheathing(degree_figure(trim.sheathing_from_eave(at)), degree_figure(trim.sheathing_plumb_bevel(at))),
    )


def _miter(cut: trim.Miter) -> Miter:
    return Miter(degree_figure(cut.miter), degree_figure(cut.bevel))


def gable_of(side: Side) -> GableStuds:
    """Return the difference of gable studs at each spacing and the cut on their tops."""
    rows = (Difference(given(one), side.length(common.rise(one, side.slope))) for one in side.boards.spacings)
    return GableStuds(tuple(rows), degree_figure(common.slope_angle(side.slope)))


def area_of(side: Side) -> Area:
    """Return how much roof lies over level plan."""
    return Area(ratio(gable.area_factor(side.slope)))
