"""Roofs with straight ridges as planes: sheds, gables, saltboxes and gambrels; hip roofs and half-hips."""

from __future__ import annotations

from decimal import Decimal

from tablegen.proof.digits import real
from tablegen.proof.roof_corners import HALF, center_of, commons_head, hip, line_of, stop_of
from tablegen.proof.roof_slopes import EAST, LEVEL, NORTH, SOUTH, WEST, ZERO, Slope, bounded, run_of, slope_of
from tablegen.proof.roof_stated import THICK, Asked
from tablegen.proof.roof_stops import Stop
from tablegen.proof.roof_whole import Level, Rake, Roof, rakes_of
from tablegen.proof.space import Plane, dot, meet, vector
from tablegen.proof.timber import End, past

BOTH_ENDS = (-1, 1)


def shed(asked: Asked) -> Roof:
    """Return a shed."""
    upper, thick = asked.word('shed.upper', 'wall'), asked.inches('shed.thickness')
    wide, out = real(asked.inches('width')), real(asked.inches('overhang.gable'))
    front = slope_of(asked, 'front', vector(0, 0, 0), (EAST, NORTH), asked.inches('length'))
    off = real(thick) if upper == 'ledger' else ZERO
    near = front.line(wide - real(thick)) if upper == 'over-beam' else None
    front.stops.append(Stop('wall', front.line(wide), thick, off, over=near))
    bounded(front, front.crosswise(front.length + out), front.line(wide), front.crosswise(-out))
    beside = {'ledger': real(thick), 'over-beam': real(thick)}
    rakes = list(rakes_of(front, BOTH_ENDS, wide, beside.get(upper, ZERO)))
    roof = Roof(asked, [front], rakes=rakes, measured=diagonals(asked))
    if upper == 'ledger':
        roof.levels['LG'] = between_gables(front, wide - off / 2, out)
    return roof


def diagonals(asked: Asked, name: str = 'diagonals', keys: tuple[str, str] = ('width', 'length')) -> dict[str, dict[str, Decimal]]:  # fmt: skip
    """Return the diagonal of a rectangle of plates."""
    one, other = (real(asked.inches(key)) for key in keys)
    return {name: {'diagonal': (one * one + other * other).sqrt()}}


def two_sides(asked: Asked) -> tuple[Slope, Slope]:
    """Return front and back up to the ridge."""
    long, wide = asked.inches('length'), real(asked.inches('width'))
    back_key = 'saltbox.back_pitch' if asked.word('kind') == 'saltbox' else ''
    below = real(asked.inches('saltbox.back_plate_below'))
    front = slope_of(asked, 'front', vector(0, 0, 0), (EAST, NORTH), long)
    back = slope_of(asked, 'back', (real(long), wide, -below), (WEST, SOUTH), long, back_key)
    ridge = meet(front.top, back.top, Plane(EAST, ZERO))
    for one in (front, back):
        run = abs(dot(one.inward, ridge) - dot(one.inward, one.origin))
        one.stops.append(Stop('ridge', one.line(run), asked.ridge))
    return front, back


def gable(asked: Asked) -> Roof:
    """Return a gable roof or a saltbox."""
    sides, out = two_sides(asked), real(asked.inches('overhang.gable'))
    rakes: list[Rake] = []
    for one in sides:
        gable_bounds(one, out)
        rakes += rakes_of(one, BOTH_ENDS, run_of(one), real(asked.ridge) / 2)
    levels = {'R': between_gables(sides[0], run_of(sides[0]), out)} if asked.ridge else {}
    return Roof(asked, list(sides), rakes=rakes, levels=levels, measured=diagonals(asked))


def between_gables(slope: Slope, inward: Decimal, out: Decimal) -> Level:
    """Return a board along a slope from gable to gable, out to the barge rafters."""
    return Level(slope.on_plate(-out, inward), slope.on_plate(slope.length + out, inward))


def gable_bounds(one: Slope, out: Decimal) -> None:
    """Bound a slope by its rakes and its ridge."""
    bounded(one, one.crosswise(one.length + out), one.stops[0].center, one.crosswise(-out))


def gambrel(asked: Asked) -> Roof:
    """Return a gambrel: its upper slopes go on from where the lower ones end, at their purlins."""
    sides, out = two_sides(asked), real(asked.inches('overhang.gable'))
    half, at = real(asked.inches('width')) / 2, real(asked.inches('gambrel.break'))
    aside = real(asked.thick) / 2
    slopes: list[Slope] = []
    rakes: list[Rake] = []
    levels: dict[str, Level] = {}
    for number, lower in enumerate(sides, 1):
        upper = slope_of(
            asked, f'{lower.name}_upper', lower.origin, (lower.along, lower.inward), lower.length,
            'gambrel.upper_pitch',
        )  # fmt: skip
        upper.above = lower.above + at * (lower.rise - upper.rise)
        purlin = Stop('purlin', lower.line(at), asked.thick)
        upper.stops.append(Stop('ridge', lower.line(half), asked.ridge))
        lower.stops[:], upper.regions[0].lower[:] = [purlin], [purlin]
        gable_bounds(lower, out)
        upper.edges = [purlin.center, *_rest(upper, out)]
        rakes += rakes_of(lower, BOTH_ENDS, at, aside)
        rakes += rakes_of(upper, BOTH_ENDS, half, real(asked.ridge) / 2, at, aside)
        slopes += [lower, upper]
        levels[f'P{number}'] = between_gables(lower, at, out)
    if asked.ridge:
        levels['R'] = between_gables(sides[0], half, out)
    return Roof(asked, slopes, rakes=rakes, levels=levels, measured=diagonals(asked))


def _rest(one: Slope, out: Decimal) -> list[Plane]:
    gable_bounds(one, out)
    return one.edges[1:]


def hipped(asked: Asked, number: int = 0, pitch: str = 'hip.end_pitch') -> Roof:
    """Return a hip roof, hipped at both ends or at the left one.

    Given:
        number, pitch  how many ends, and under which key their pitch stands, where a hip roof's own do not say it
    """
    front, back = two_sides(asked)
    wide, number = asked.inches('width'), number or int(asked.told.get('hip.ends', 2))
    ends = [slope_of(asked, 'left', (ZERO, real(wide), ZERO), (SOUTH, EAST), wide, pitch)]
    if number > 1:
        ends.append(slope_of(asked, 'right', (front.length, ZERO, ZERO), (NORTH, WEST), wide, pitch))
    measured = diagonals(asked)
    for one in ends:  # eaves of one height: the steeper overhang is the shorter, or its plate the higher
        if asked.word('hip.eaves') == 'equal':
            x, y, z = one.origin
            up = one.overhang * (one.rise - front.rise)
            one.origin = x, y, z + up
            if up:
                measured['raised_plates'] = {'raised': up, 'crossed': up / front.rise}
        else:
            one.overhang = one.overhang * front.rise / one.rise
    return with_ends(asked, (front, back), ends, measured)


def half_hipped(asked: Asked) -> Roof:
    """Return a gable roof whose two ends are hipped at the top."""
    front, back = two_sides(asked)
    wide, up = real(asked.inches('width')), real(asked.inches('half-hip.gable_rise'))
    into, ends = up / front.rise, []
    for name, x, y, ways in (
        ('left', ZERO, wide - into, (SOUTH, EAST)),
        ('right', front.length, into, (NORTH, WEST)),
    ):
        one = slope_of(asked, name, (x, y, up), ways, wide - 2 * into, 'half-hip.end_pitch')
        one.overhang, one.square = real(asked.inches('overhang.gable')), False
        ends.append(one)
    return with_ends(asked, (front, back), ends, diagonals(asked), over_gable=True)


def with_ends(
    asked: Asked,
    mains: tuple[Slope, Slope],
    ends: list[Slope],
    measured: dict[str, dict[str, Decimal]],
    over_gable: bool = False,
) -> Roof:
    """Return a roof of two main slopes and the sloping ends of them, the left one first."""
    front, back = mains
    out = real(asked.inches('overhang.gable'))
    left, right = ends[0], ends[1] if len(ends) > 1 else None
    pairs = [(left, front), (back, left)]
    if right:
        pairs[1:1] = [(front, right), (right, back)]
    for one, other in pairs:
        for slope in (one, other):
            slope.stops.append(stop_of('hip', one, other))
    runs = {slope.name: run_to_ridge(slope, front) for slope in (front, back, *ends)}
    corners = []
    for one, other in pairs:
        main, end = (one, other) if one in mains else (other, one)
        foot = line_of(one, other)[1]
        ridge = main.line(runs[main.name])
        head = commons_head(main, end, (runs[main.name], runs[end.name]), foot)
        if single(asked):
            head = End((past(ridge, asked.ridge, foot),), thick=asked.ridge)
        tail = End((end.tail,)) if over_gable else None
        corners.append(hip(asked, (one, other), main, head, ridge, tail))
    for one in ends:
        clips: tuple[Plane, ...] = ()
        if single(asked) and 0 < asked.ridge < THICK:
            inside = one.on_plate(one.length / 2)
            clips = tuple(past(stop.center, THICK, inside) for stop in one.stops if stop.edge == 'hip')
        one.stops.append(Stop('end', one.line(runs[one.name]), asked.ridge, ridge_past(asked, one, front), clips=clips))  # fmt: skip
    roof = Roof(asked, [front, back, *ends], corners, measured=measured)
    _bound(roof, mains, (left, right), out, over_gable)
    start, last = runs[left.name], front.length - (runs[right.name] if right else ZERO)
    past_ends = ridge_past(asked, left, front), ridge_past(asked, right, front) if right else out
    if asked.ridge:
        run = runs[front.name]
        roof.levels['R'] = Level(front.on_plate(start - past_ends[0], run), front.on_plate(last + past_ends[1], run))  # fmt: skip
    return roof


def single(asked: Asked) -> bool:
    """Return whether hips have one cheek each, on the ridge's side."""
    return asked.word('cuts.hip_heads') == 'single'


def run_to_ridge(slope: Slope, front: Slope) -> Decimal:
    """Return how far inward the line is where a slope's hips meet, or its ridge."""
    if any(stop.edge == 'ridge' for stop in slope.stops):
        return run_of(slope)
    top = meet(slope.top, front.top, front.stops[0].center)
    return abs(dot(slope.inward, top) - dot(slope.inward, slope.origin))


def _bound(
    roof: Roof, mains: tuple[Slope, Slope], ends: tuple[Slope, Slope | None], out: Decimal, over_gable: bool
) -> None:
    """Bound all slopes in plan, and say where their rakes are."""
    left, right = ends
    for main in mains:
        first, last = (left, right) if main.name == 'front' else (right, left)
        sides: list[list[Plane]] = []
        for end, place, way in ((last, main.length, 1), (first, ZERO, -1)):
            rake = main.crosswise(place + way * out)
            hips = [center_of(main, end)] if end else []
            sides.append(hips if hips and not over_gable else [rake, *hips][::way])
            if not end:
                roof.rakes += rakes_of(main, [way], run_of(main), real(roof.asked.ridge) / 2)
            elif over_gable:
                top = main.inward_of(hips[0], place) or ZERO
                face = main.inward_of(hips[0].moved(HALF), place) or ZERO
                roof.rakes += rakes_of(main, [way], top, abs(face - top))
        bounded(main, *sides[0], main.stops[0].center, *sides[1])
    for end in (left, right):
        if end:
            hips = [stop.center for stop in end.stops if stop.edge == 'hip']
            bounded(end, *sorted(hips, key=end.on_eave, reverse=True))


def ridge_past(asked: Asked, end: Slope, main: Slope) -> Decimal:
    """Return how far a ridge runs past the point where the center lines meet: to the outer faces of the last side commons, or
    of single hips until the whole of their cheeks bears on it.
    """
    if not single(asked) or not asked.ridge:
        return HALF
    center, ridge = center_of(main, end), main.line(run_of(main))
    outer = past(ridge, asked.ridge, line_of(main, end)[1])
    inward = [dot(end.inward, meet(center.moved(side), outer, LEVEL)) for side in (HALF, -HALF)]
    return dot(end.inward, meet(center, ridge, LEVEL)) - min(inward)
