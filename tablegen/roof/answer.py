"""The answer about one roof, whichever its kind: one frozen record, of records, of figures."""

from __future__ import annotations

from msgspec import Struct

from tablegen.geometry import seat, tail
from tablegen.geometry.many_sided import regular_corner
from tablegen.numbers.exact import exact
from tablegen.roof.called import Called, cautions_of, corner_cautions
from tablegen.roof.cheeks import Cheeks
from tablegen.roof.corner import CornerOfTwo, corner_of_two, one_side
from tablegen.roof.jacks import Jacks
from tablegen.roof.lengths import Cuts, Lengths, Squares, common_held, hip_cut, hip_held, lengths_of
from tablegen.roof.planes import Area, Backing, Drop, GableStuds, Trim, area_of, gable_of
from tablegen.roof.question import ManySided, Regular, RoofQuestion, Shed, TwoPitches
from tablegen.roof.ridge import Ridge, ridge_of
from tablegen.roof.seat import Seats, seats_of
from tablegen.roof.shed import ShedRoof, shed_roof
from tablegen.roof.shortening import Sawn, Shortening
from tablegen.roof.side import Side, side, sides
from tablegen.roof.sides import ManySides, many_sides
from tablegen.roof.tail import Tail


class RegularRoof(Struct, frozen=True):
    """All about a roof of one pitch with square corners: the corner whose two sides agree."""

    length: Lengths
    cut: Cuts
    square: Squares
    shortening: Shortening
    sawn: Sawn
    jack: Jacks
    seat: Seats
    tail: Tail
    cheek: Cheeks
    backing: Backing
    drop: Drop
    trim: Trim
    ridge: Ridge
    gable_stud: GableStuds
    area: Area
    caution: tuple[Called, ...]


class CornerRoof(Struct, frozen=True):
    """A corner of two pitches, with its cautions."""

    two_pitches: CornerOfTwo
    caution: tuple[Called, ...]


class ManySidedRoof(Struct, frozen=True):
    """A roof of many sides, with its cautions."""

    many_sided: ManySides
    caution: tuple[Called, ...]


Answer = RegularRoof | CornerRoof | ManySidedRoof | ShedRoof


def answer(ask: RoofQuestion, listed: bool = True) -> Answer:
    """Return everything that is found of a roof.

    Given:
        listed  whether each jack is told, or their differences only

    Errors:
        BookError for a seat that cuts through the stock, an overhang, a corner or a plate length that cannot be
    """
    match ask.roof:
        case Regular():
            return regular(ask, listed)
        case TwoPitches():
            return two_pitches(ask, listed)
        case ManySided():
            return many_sided(ask, listed)
        case Shed() as shed:
            return shed_roof(_side(ask), shed, ask.run_in)


def regular(ask: RoofQuestion, listed: bool = True) -> RegularRoof:
    """Return the answer about a roof of one pitch with square corners."""
    own = _side(ask)
    of_side = one_side(own, exact(ask.run_in), listed)
    return RegularRoof(
        lengths_of(own, ask.run_in),
        Cuts(of_side.cut.common, hip_cut(own)),
        Squares(common_held(own), hip_held(own)),
        of_side.shortening,
        of_side.sawn,
        of_side.jack,
        seats_of(own),
        of_side.tail,
        of_side.cheek,
        of_side.backing,
        of_side.drop,
        of_side.trim,
        ridge_of(own, ask.run_in, ask.plate_length_in),
        gable_of(own),
        area_of(own),
        cautions_of(own),
    )


def two_pitches(ask: RoofQuestion, listed: bool = True) -> CornerRoof:
    """Return the answer about a corner of two pitches."""
    assert isinstance(ask.roof, TwoPitches)
    _check(ask)
    a, b = sides(ask.pitch, ask, ask.roof.other, ask.roof.corner_degrees)
    return CornerRoof(corner_of_two(a, b, ask.roof.corner_degrees, ask, listed), corner_cautions(a, b))


def many_sided(ask: RoofQuestion, listed: bool = True) -> ManySidedRoof:
    """Return the answer about a roof of many sides."""
    assert isinstance(ask.roof, ManySided)
    number = ask.roof.sides
    corner = regular_corner(ask.pitch.slope, number)
    _check(ask)
    one = side(ask.pitch, ask, corner)
    return ManySidedRoof(many_sides(one, number, ask.run_in, listed), cautions_of(one, with_valley=False))


def _side(ask: RoofQuestion) -> Side:
    _check(ask)
    return side(ask.pitch, ask)


def _check(ask: RoofQuestion) -> None:
    """Refuse boards that cannot be on such a roof."""
    seat.checked_seat(ask.stock.depth_in, ask.seat_in, ask.pitch.slope)
    tail.checked_overhang(ask.overhang_in, ask.run_in)
