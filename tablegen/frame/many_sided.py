"""Regular roofs of many sides, whole or half of one against a wall: hips to a peak, jacks between them."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from msgspec import Struct
from msgspec.structs import replace

from tablegen.errors import BookError
from tablegen.frame import limits
from tablegen.frame.asked import MIDDLES, Asked, Bay, ManySided
from tablegen.frame.plan import EAST, SOUTH, ZERO, CornerBoard, Edge, Plan, Point, Reach, Region, Slope
from tablegen.frame.stations import Places, from_corner, mirrored, straddling
from tablegen.frame.wood import at_corner, boards_of, top_of
from tablegen.geometry import many_sided
from tablegen.messages import message
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, exact, one_term
from tablegen.roof.framing import hip
from tablegen.roof.member import Hand
from tablegen.roof.members import Members
from tablegen.roof.side import side
from tablegen.roof.stopped import peak_end, post_end

HALF = 2


class Round(Struct, frozen=True):
    """A regular roof, before its sides are laid around its middle."""

    asked: Asked
    sides: int
    apothem_in: Exact
    members: Members
    lean: Point = EAST
    """The direction of its first side's plate on the plan, one inch of it."""

    @property
    def side_in(self) -> Exact:
        """Return the length of one side of the plates."""
        return 2 * self.apothem_in * self.half_central.tan()

    @property
    def post_in(self) -> Fraction:
        """Return how thick the post at the peak is, across flats; 0 where there is none."""
        kind = self.asked.kind
        return (kind.post_across_flats_in if isinstance(kind, ManySided) else None) or Fraction(0)

    @property
    def half_central(self) -> Angle:
        """Return half of the angle at the middle over one side."""
        return many_sided.half_central(self.sides)

    @property
    def rate(self) -> Exact:
        """Return how far a hip runs inward per inch along a side."""
        return self.members.side.at.plan_a.tan()

    def turned(self, steps: int, point: Point) -> Point:
        """Return a point turned about the middle by so many sides, to the left."""
        tangent = self.half_central.tan()
        square = tangent.squared()
        cosine, sine = exact((1 - square) / (1 + square)), 2 * tangent / (1 + square)
        for _ in range(steps):
            x, y = point
            point = (one_term(x * cosine - y * sine), one_term(x * sine + y * cosine))
        (x, y), (right, up) = point, self.lean
        return one_term(x * right - y * up), one_term(x * up + y * right)


def rounded(asked: Asked) -> Plan:
    """Return the plan of a regular roof of many sides.

    Errors:
        BookError for a post that the hips do not find room around
    """
    kind = asked.kind
    assert isinstance(kind, ManySided)
    of = _round(asked, kind)
    slopes = tuple(_slope(of, place, f'side_{place + 1}', place, _whole(of)) for place in range(of.sides))
    hips = tuple(_hip(of, place, kind.post_across_flats_in) for place in range(of.sides))
    plates = tuple(_corner(of, place) for place in range(of.sides))
    return Plan(slopes, hips, ridge_run_in=of.apothem_in, plates=plates, edges=_names(slopes))


def bay(asked: Asked) -> Plan:
    """Return the plan of half of such a roof, its peak at a wall that runs through corners or through middles of sides."""
    kind = asked.kind
    assert isinstance(kind, Bay)
    of = _round(asked, kind)
    if kind.wall_through == MIDDLES:
        return _bay_at_middles(replace(of, lean=SOUTH))
    half = of.half_central  # the wall, through two corners, lies level on the plan
    of = replace(of, lean=(half.sine(), -half.cosine()))
    count = of.sides // HALF
    regions = [_whole(of) for _ in range(count)]
    regions[0], regions[-1] = _beside_wall(of, False), _beside_wall(of, True)
    if count == 1:
        raise BookError('bay.sides', message('frame.no_bay'), message('frame.four_sides_or_more'))
    slopes = tuple(
        _slope(of, place, f'side_{place + 1}', place, region) for place, region in enumerate(regions)
    )
    hips = tuple(_hip(of, place, wall=_wall_beside(place, count)) for place in range(1, count))
    return Plan(
        slopes,
        hips,
        ridge_run_in=of.apothem_in,
        plates=tuple(_corner(of, place) for place in range(count + 1)),
        edges=_names(slopes),
    )


def _wall_beside(place: int, count: int) -> Hand | None:
    """Return on which hand of a hip, between so many sides, the wall is next; None where another hip is on both."""
    return Hand.LEFT if place == 1 else Hand.RIGHT if place == count - 1 else None


def _bay_at_middles(of: Round) -> Plan:
    count, half = of.sides // HALF, of.side_in / HALF
    slopes = [_slope(of, 0, 'side_1', 0, _half_side(of, False), half)]
    slopes += [_slope(of, place, f'side_{place + 1}', place, _whole(of)) for place in range(1, count)]
    slopes.append(_slope(of, count, f'side_{count + 1}', count, _half_side(of, True)))
    hips = tuple(_hip(of, place) for place in range(1, count + 1))
    first, last = slopes[0].on_plan(ZERO, ZERO), slopes[-1].on_plan(half, ZERO)
    plates = (first, *(_corner(of, place) for place in range(1, count + 1)), last)
    return Plan(tuple(slopes), hips, ridge_run_in=of.apothem_in, plates=plates, edges=_names(slopes))


def _round(asked: Asked, kind: ManySided | Bay) -> Round:
    at = many_sided.regular_corner(asked.pitch.slope, kind.sides)
    if kind.across_flats_in is not None:
        apothem = exact(kind.across_flats_in / HALF)
    else:
        assert kind.side_in is not None
        apothem = many_sided.apothem_from_side(kind.side_in, kind.sides)
    return Round(asked, kind.sides, apothem, Members(side(asked.pitch, boards_of(asked), at)))


def _names(slopes: Sequence[Slope]) -> tuple[str, ...]:
    return tuple(slope.name for slope in slopes)


def _corner(of: Round, place: int) -> Point:
    """Return the left corner of a side, from the middle."""
    return of.turned(place, (-of.side_in / HALF, -of.apothem_in))


def _slope(
    of: Round, turn: int, name: str, place: int, region: Region, starts_in: Exact | None = None
) -> Slope:
    start = ZERO if starts_in is None else starts_in
    origin = of.turned(place, (start - of.side_in / HALF, -of.apothem_in))
    long = region.lower[0].end_in
    along = of.turned(turn, EAST)
    return Slope(name, of.members, long, origin, along, (region,), ZERO, top_of(of.members.side))


def _hips(of: Round, left: bool = True, right: bool = True) -> tuple[Reach, Reach]:
    """Return what bounds a side above: hips, or at an end against the wall the wall."""
    half, thick = of.side_in / HALF, of.asked.hips.thickness_in
    edges = [(Edge.HIP, thick) if one else (Edge.WALL, Fraction(0)) for one in (left, right)]
    (one, thick_one), (two, thick_two) = edges
    return (
        Reach(one, 'H', ZERO, half, ZERO, of.rate, thick_one),
        Reach(two, 'H', half, of.side_in, of.apothem_in, -of.rate, thick_two),
    )


def _places(of: Round) -> Places:
    """Return where a side's jacks stand: alike from both corners, none in its middle, where the hips leave no room."""
    asked, half = of.asked, of.side_in / HALF
    if asked.first_in is None:
        return straddling(of.side_in, asked.spacing_in)
    thick = exact(asked.rafters.thickness_in)
    clear = thick + of.post_in  # a post's corners reach less far aside than it is thick
    jacks = from_corner(half, clear, asked.spacing_in, asked.first_in)
    last = jacks[-1] if jacks else exact(0)
    if 2 * (half - last) > asked.spacing_in:  # one on each side of the middle, no wider apart than the others
        jacks = (*jacks, max(min(half - asked.spacing_in / 2, half - clear), last + thick))
    return (*jacks, *mirrored(jacks, of.side_in))


def _whole(of: Round) -> Region:
    return Region((Reach(Edge.PLATE, '', ZERO, of.side_in, ZERO),), _hips(of), _places(of))


def _beside_wall(of: Round, at_right: bool) -> Region:
    """Return a whole side of which one corner stands at the wall, which cuts its jacks there as a hip would."""
    upper = _hips(of, left=at_right, right=not at_right)
    return Region((Reach(Edge.PLATE, '', ZERO, of.side_in, ZERO),), upper, _places(of))


def _half_side(of: Round, at_right: bool) -> Region:
    """Return half of a side, its first rafter flush with the wall."""
    long, asked = of.side_in / HALF, of.asked
    half = exact(asked.rafters.thickness_in / HALF)
    places = [half]
    while places[-1] + asked.spacing_in < long:
        places.append(places[-1] + asked.spacing_in)
    one = Reach(Edge.HIP, 'H', ZERO, long, of.apothem_in, -of.rate, asked.hips.thickness_in)
    plate = Reach(Edge.PLATE, '', ZERO, long, ZERO)
    if not at_right:
        return Region((plate,), (one,), tuple(places))
    return Region((plate,), (one.mirrored(long),), mirrored(tuple(places), long))


def _hip(of: Round, place: int, post_in: Fraction | None = None, wall: Hand | None = None) -> CornerBoard:
    """Return the hip at the left corner of a side.

    Given:
        wall  on which hand of it the wall runs in the place of the next hip

    Errors:
        BookError for a post that is too small for square-ended hips
    """
    one, half = of.members.side, of.half_central
    if post_in is not None:
        point = many_sided.peak_point(of.asked.hips.thickness_in, of.sides)
        if post_in < 2 * point:
            least = limits.least(2 * point, of.asked)
            raise BookError(
                'many-sided.post', message('frame.small_post'), message('frame.over', least=least)
            )
        head = post_end(one, post_in)
    elif wall:
        head = peak_end(one, half, wall, Angle(2 * half.tan() / (1 - half.tan().squared())))
    else:
        head = peak_end(one, half)
    member = hip('', at_corner(of.asked, of.apothem_in, of.members, of.members), head=head)
    return CornerBoard(member, _corner(of, place), (ZERO, ZERO), wall)
