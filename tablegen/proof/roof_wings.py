"""A roof with a wing square to its front as planes: two valleys, or the wing's roof laid on the main one."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

from msgspec import Struct

from tablegen.proof.digits import SLACK, real
from tablegen.proof.roof_corners import HALF, center_of, commons_head, hip, line_of, stop_of, valley
from tablegen.proof.roof_kinds import diagonals, gable, hipped, ridge_past, single
from tablegen.proof.roof_slopes import EAST, LEVEL, NORTH, SOUTH, WEST, ZERO, Slope, bounded, run_of, slope_of
from tablegen.proof.roof_stated import THICK, Asked
from tablegen.proof.roof_stops import Region, Stop
from tablegen.proof.roof_whole import Corner, Level, Roof, rakes_of
from tablegen.proof.space import Plane, angle, meet
from tablegen.proof.timber import End, past


class Joined(Struct):
    """A wing and the roof that it stands on."""

    asked: Asked
    roof: Roof
    left: Slope
    right: Slope
    """The wing's."""

    @property
    def front(self) -> Slope:
        return self.roof.slopes[0]

    @property
    def start(self) -> Decimal:
        """Return where the wing begins along the front."""
        return real(self.asked.inches('wing.from_left'))

    @property
    def half(self) -> Decimal:
        """Return the run of its slopes."""
        return real(self.asked.inches('wing.width')) / 2

    @property
    def out(self) -> Decimal:
        return real(self.asked.inches('wing.out'))

    @property
    def middle(self) -> Decimal:
        return self.start + self.half

    @property
    def reach(self) -> Decimal:
        """Return how far inward of the front's plate line its ridge comes to the front."""
        return self.half * self.left.rise / self.front.rise

    @property
    def top(self) -> Decimal:
        """Return how far along the front its left valley goes on to the main ridge."""
        return self.start + run_of(self.front) * self.half / self.reach

    @property
    def level_ridges(self) -> bool:
        return abs(self.reach - run_of(self.front)) < SLACK

    @property
    def unlike(self) -> bool:
        """Return whether it has another pitch."""
        return abs(self.left.rise - self.front.rise) > SLACK

    @property
    def blind(self) -> bool:
        return self.asked.word('wing.valleys') == 'blind'

    @property
    def ridge(self) -> Plane:
        """Return its ridge's center."""
        return self.left.line(self.half)


def winged(asked: Asked) -> Roof:
    """Return a roof with a wing on its front."""
    of = joined(asked)
    front = of.front
    edges = front.edges
    lines = center_of(front, of.left), center_of(of.right, front)
    if of.blind:
        front.beside = [(front.eave_ends[0][0], lines[0]), (lines[1], front.eave_ends[0][1])]
        _laid_on(of)
        front.edges = [front.eave, front.crosswise(of.start), front.line(ZERO), front.crosswise(of.start + 2 * of.half), *edges]  # fmt: skip
    else:
        _with_valleys(of, _long_is_left(of))
        front.edges = [front.eave, *lines, *edges]
    wing_ridge(of, wing_end(of))
    return of.roof


def joined(asked: Asked) -> Joined:
    """Return the wing's sides beside a roof without it."""
    ends = int(asked.told.get('wing.main_ends', 0))
    flush = 'wing.pitch' if is_flush(asked) else ''
    roof = hipped(asked, ends, flush) if ends else gable(asked)
    front = roof.slopes[0]
    start, out, wide = (real(asked.inches(f'wing.{key}')) for key in ('from_left', 'out', 'width'))
    left = slope_of(asked, 'wing_left', (start, ZERO, ZERO), (SOUTH, EAST), out, 'wing.pitch')
    right = slope_of(asked, 'wing_right', (start + wide, -out, ZERO), (NORTH, WEST), out, 'wing.pitch')
    for one in (left, right):
        one.overhang = front.overhang * front.rise / one.rise
        one.stops.append(Stop('ridge', one.line(wide / 2), asked.ridge))
    left.ends, right.ends = (False, True), (True, False)
    roof.measured |= diagonals(asked, 'wing_diagonals', ('wing.width', 'wing.out'))
    roof.slopes += [left, right]
    return Joined(asked, roof, left, right)


def is_flush(asked: Asked) -> bool:
    """Return whether it is flush with a hipped end of the main roof."""
    ends, start = int(asked.told.get('wing.main_ends', 0)), asked.inches('wing.from_left')
    at_right = ends > 1 and start == asked.inches('length') - asked.inches('wing.width')
    return at_right or (ends > 0 and not start)


def _long_is_left(of: Joined) -> bool:
    """Return whether the left valley is the one that goes on to the main ridge: where that has room, whole rafters beside it."""
    start, last = ZERO, of.front.length
    for stop in of.front.stops:
        if stop.edge == 'hip':
            at = of.front.place_of(stop.center, of.front.line(run_of(of.front)))
            start, last = (at, last) if at < of.front.length / 2 else (start, at)
    return start + 2 * HALF - SLACK <= of.top <= last - 2 * HALF + SLACK


def _laid_on(of: Joined) -> None:
    """Let the wing's rafters stand on the main roof's sheathing."""
    asked, front = of.asked, of.front
    stops, long = front.stops, of.start + 2 * of.half
    front.regions = [
        Region(stops, end=of.start),
        Region(stops, start=of.start, end=long, eaves=False),
        Region(stops, start=long),
    ]
    boards = asked.inches('wing.valley_boards', Fraction(3, 4))
    thick = real(asked.inches('wing.sheathing', Fraction(1, 2)) + boards)
    of.roof.laid = front.top.moved(thick if front.top.normal[2] > 0 else -thick)
    for one, start, end in ((of.left, -of.reach, ZERO), (of.right, of.out, of.out + of.reach)):
        center = center_of(front, one)
        one.regions[0].lower.append(
            Stop('board', center, Fraction(0), start=start, end=end, lies_on=of.roof.laid)
        )


def _with_valleys(of: Joined, long_left: bool) -> None:
    """Cut the front to both valleys, the longer one and the shorter one on it."""
    front, left, right = of.front, of.left, of.right
    last, run = of.start + 2 * of.half, run_of(front)
    top = of.top if long_left else of.start + last - of.top
    centers = center_of(front, left), center_of(right, front)
    upper = front.stops
    if long_left:
        longer, shorter = centers
        under = Stop('valley', longer, THICK, start=of.middle, end=top)
        front.regions = [
            Region(upper, [Stop('valley', longer, THICK, start=of.start, end=top)], end=top),
            Region(
                [under, *upper], [Stop('valley', shorter, THICK, start=of.middle, end=last)], start=of.middle
            ),
        ]
    else:
        shorter, longer = centers
        under = Stop('valley', longer, THICK, start=top, end=of.middle)
        front.regions = [
            Region(upper, [Stop('valley', longer, THICK, start=top, end=last)], start=top),
            Region(
                [under, *upper],
                [Stop('valley', shorter, THICK, start=of.start, end=of.middle)],
                end=of.middle,
            ),
        ]
    for one, center, start, end in (
        (left, centers[0], -of.reach, ZERO),
        (right, centers[1], of.out, of.out + of.reach),
    ):
        one.regions[0].lower.append(Stop('valley', center, THICK, start=start, end=end))
    for is_left, pair in ((True, (front, left)), (False, (right, front))):
        of.roof.corners.append(one_valley(of, pair, is_left == long_left, longer, run))


def one_valley(of: Joined, pair: tuple[Slope, Slope], is_longer: bool, longer: Plane, run: Decimal) -> Corner:
    """Return one of two valleys: in the corner of two ridges, against the main one, or on the side of the longer."""
    foot, ridge = line_of(*pair)[1], of.front.line(run)
    face = past(ridge, of.asked.ridge, foot)
    if of.level_ridges:
        head, center = End((face, past(of.ridge, of.asked.ridge, foot)), thick=of.asked.ridge), ridge
    elif is_longer:
        head, center = End((face,), thick=of.asked.ridge), ridge
    else:
        head, center = End((past(longer, THICK, foot),), thick=THICK), longer
    return valley(of.asked, pair, of.front, head, center, of.unlike)


def wing_ridge(of: Joined, begins: Decimal) -> None:
    """Add the wing's ridge: from its gable or hips to the main ridge, into the corner of the valleys, or to the sheathing.

    Given:
        begins  how far out of the front
    """
    asked, inside = of.asked, of.left.on_plate(of.left.length)
    face: Plane | None = of.roof.laid
    if face:
        down = ZERO if asked.word('ridge.top') == 'beveled' else real(asked.ridge) / 2 * of.left.rise
        top = of.left.on_plate(ZERO, of.half)[2] - down
        end = meet(face, of.ridge, LEVEL.moved(top))[1]
    elif of.level_ridges:
        end = of.reach - real(asked.ridge) / 2
    else:
        face = past(center_of(of.front, of.left), THICK, inside)
        end = meet(face, of.ridge, LEVEL)[1]
    front = of.left.length - of.out
    ends = of.left.on_plate(front + begins, of.half), of.left.on_plate(front - end, of.half)
    of.roof.levels['R2'] = Level(*ends, tilt=angle(face.normal, NORTH) if face else None)


def wing_end(of: Joined) -> Decimal:
    """End the wing at a gable or a hipped end; return how far out its ridge begins."""
    asked, left, right = of.asked, of.left, of.right
    out = real(asked.inches('overhang.gable'))
    valleys = center_of(of.front, left), center_of(right, of.front)
    if asked.word('wing.end') != 'hip':
        bounded(left, left.crosswise(left.length + out), of.ridge, valleys[0])
        bounded(right, valleys[1], of.ridge, right.crosswise(-out))
        of.roof.rakes += rakes_of(left, [1], of.half, real(asked.ridge) / 2)
        of.roof.rakes += rakes_of(right, [-1], of.half, real(asked.ridge) / 2)
        return of.out + out
    origin = (of.start, -of.out, ZERO)
    end = slope_of(asked, 'wing_front', origin, (EAST, NORTH), 2 * of.half, 'wing.pitch')
    end.overhang = left.overhang
    for pair, main in (((left, end), left), ((end, right), right)):
        foot = line_of(*pair)[1]
        head = commons_head(main, end, (of.half, of.half), foot)
        if single(asked):
            head = End((past(of.ridge, asked.ridge, foot),), thick=asked.ridge)
        of.roof.corners.append(hip(asked, pair, main, head, of.ridge))
        for slope in pair:
            slope.stops.append(stop_of('hip', *pair))
    past_end = ridge_past(asked, end, left)
    clips = tuple(past(stop.center, THICK, end.on_plate(of.half)) for stop in end.stops)
    clips = clips if single(asked) and 0 < asked.ridge < THICK else ()
    end.stops.append(Stop('end', end.line(of.half), asked.ridge, past_end, clips=clips))
    hips = [stop.center for stop in end.stops[:2]]
    bounded(left, hips[0], of.ridge, valleys[0])
    bounded(right, valleys[1], of.ridge, hips[1])
    bounded(end, hips[1], hips[0])
    of.roof.slopes.append(end)
    return of.out - of.half + past_end
