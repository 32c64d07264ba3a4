"""A gable or hip roof with a wing square to its front: two valleys, or the wing's roof laid on the main one."""

from __future__ import annotations

from fractions import Fraction

from msgspec.structs import replace

from tablegen.errors import BookError
from tablegen.frame import limits
from tablegen.frame.asked import Asked, Gable, Hip, HipHead, Wing
from tablegen.frame.ells import ell
from tablegen.frame.gables import gable
from tablegen.frame.hips import hipped
from tablegen.frame.joined import Joined
from tablegen.frame.plan import (
    ZERO,
    Edge,
    Plan,
    Point,
    Reach,
    Region,
    Slope,
)
from tablegen.frame.stations import clear_between, clear_of
from tablegen.frame.turned import turned
from tablegen.frame.wing_parts import (
    cut,
    level_boards,
    turned_over,
    valleys,
    wing_ends,
    wing_hips,
    wing_slopes,
    within,
)
from tablegen.frame.wood import ridge_in, two_pitches
from tablegen.geometry import shortening
from tablegen.messages import message
from tablegen.numbers import text
from tablegen.numbers.exact import Exact, exact, sign


def winged(asked: Asked) -> Plan:
    """Return the plan of a main roof with a wing on its front.

    Errors:
        BookError for a wing that is higher than the main roof, or whose valleys do not end on the main ridge
    """
    kind = asked.kind
    assert isinstance(kind, Wing)
    if asked.ridge is None:  # not every rafter has a mate over against it
        raise BookError('ridge.board', message('frame.no_ridge_for_a_wing'), 'true')
    at_right = kind.main_ends > 1 and kind.from_left_in == asked.length_in - kind.width_in
    flush = at_right or (not kind.from_left_in and kind.main_ends > 0)
    base = (
        hipped(replace(asked, kind=Hip(kind.main_ends, kind.pitch if flush else None)))
        if kind.main_ends
        else gable(replace(asked, kind=Gable()))
    )
    main, own = two_pitches(asked, kind.pitch or asked.pitch)
    of = Joined(asked, kind, base, main, own)
    if of.reach_in > base.ridge_run_in:
        widest = limits.greatest(of.level_width_in, asked)
        raise BookError(
            'wing.width', message('frame.wing_over_the_ridge'), message('frame.up_to', most=widest)
        )
    _checked_place(of)
    _checked_out(of)
    if at_right:
        at_left = replace(of, wing=replace(kind, from_left_in=Fraction(0)))
        return turned(ell(at_left), asked.length_in)
    if flush:
        return ell(of)
    long_left = _long_valley_is_left(of)
    front = base.slopes[0]
    seen_front = front if long_left else turned_over(front)
    seen = (
        of
        if long_left
        else replace(of, wing=replace(kind, from_left_in=asked.length_in - kind.width_in - kind.from_left_in))
    )
    cut = _main_front(seen, seen_front)
    slopes = (cut if long_left else turned_over(cut), *base.slopes[1:], *wing_slopes(of))
    corners = (*base.corners, *valleys(of, long_left), *wing_hips(of))
    return replace(
        base,
        slopes=slopes,
        corners=corners,
        levels=(*base.levels, *level_boards(of)),
        plates=_outline(of),
        edges=_edges(of),
        lift_in=of.lift_in,
    )


def _checked_place(of: Joined) -> None:
    """Refuse a wing that stands neither on the front, clear of its ends by the overhang, nor flush with one of them.

    Errors:
        BookError for that, for one so wide that no overhang is left on the front, and for one that cannot be flush
    """
    asked, kind = of.asked, of.wing
    start, last, out = kind.from_left_in, asked.length_in - kind.width_in, asked.overhang_in
    if last < out:
        widest = message('frame.up_to', most=text.in_units(asked.length_in - out))
        raise BookError('wing.width', message('frame.no_front_left'), widest)
    flush = not start, start == last
    if all(flush) or not (out <= start or flush[0]) or not (start <= last - out or flush[1]):
        raise BookError(
            'wing.from_left',
            message('frame.wing_past_the_front', from_left=text.in_units(start)),
            message('error.between', least=text.in_units(out), most=text.in_units(last - out)),
            message('frame.or_flush'),
        )
    if not any(flush):
        return
    if of.blind:
        raise BookError('wing.valleys', message('frame.flush_laid_on'), 'both')
    if asked.gable_overhang_in < (own := least_gable_overhang(asked, kind)):
        least = message('frame.over', least=limits.least(own, asked))
        raise BookError('overhang.gable', message('frame.gable_over_the_eave'), least)


def least_gable_overhang(asked: Asked, kind: Wing) -> Exact:
    """Return how far the gables stand out at least: at an end that a wing is flush with as far as its eaves, else not at all."""
    at_left = not kind.from_left_in and not kind.main_ends
    at_right = kind.from_left_in == asked.length_in - kind.width_in and kind.main_ends < 2
    return two_pitches(asked, kind.pitch or asked.pitch)[1].side.overhang_in if at_left or at_right else ZERO


def _checked_out(of: Joined) -> None:
    """Refuse a wing that stands out too little.

    Errors:
        BookError for one within the main eaves, or whose hipped end leaves no ridge before the main roof, or no room at the inside
            corner for the commons that its hips are cut to
    """
    asked, kind = of.asked, of.wing
    if kind.out_in <= asked.overhang_in:
        more = message('roof_file.more_than', least=text.in_units(asked.overhang_in))
        raise BookError('wing.out', message('frame.wing_within_the_eaves'), more)
    if kind.hipped:
        shortest = wing_ends(of).first_common_in - of.reach_in + of.shortest_jack_in(of.at.plan_b) * of.rate
        if kind.out_in < shortest:
            allowed = message('frame.over', least=limits.least(shortest, asked))
            raise BookError('wing.out', message('frame.no_wing_ridge'), allowed)
        place, near = wing_ends(of).first_common_in, of.beside_on_wing_in
        if asked.hip_head is HipHead.BETWEEN and -near < kind.out_in - place < near:
            allowed = message('frame.over', least=limits.least(place + near, asked))
            raise BookError('wing.out', message('frame.common_on_the_valley'), allowed)


def _long_valley_is_left(of: Joined) -> bool:
    """Return whether the longer valley is the left one, both ending on the main ridge.

    Errors:
        BookError where neither can be
    """
    bounds = next(reach for reach in of.base.slopes[0].regions[0].upper if not sign(reach.rate))
    room = of.main.side.boards.rafter_in
    for left, place in ((True, of.top_in), (False, of.left_in + of.right_in - of.top_in)):
        if bounds.start_in + room <= place <= bounds.end_in - room or of.blind:
            return left
    raise BookError(
        'wing.from_left', message('frame.valley_past_the_ridge'), message('frame.nearer_the_middle')
    )


def _main_front(of: Joined, front: Slope) -> Slope:
    """Return the main front with the wing on it: over the longer valley, and under and beyond it."""
    (whole,) = front.regions
    plate, long = whole.lower[0], front.length_in
    left, right, top = of.left_in, of.right_in, of.top_in
    if of.blind:
        beside = exact(of.asked.rafters.thickness_in / 2)  # a tail so near would run into the wing's wall
        places = clear_of(clear_of(whole.stations, left, beside), right, beside)
        parts = ((ZERO, left, True), (left, right, False), (right, long, True))
        regions = tuple(
            replace(
                whole,
                lower=(plate.part(start, end),),
                stations=within(places, start, end),
                tails=tails,
            )
            for start, end, tails in parts
        )
        return replace(front, regions=regions)
    thick, middle = of.asked.valleys.thickness_in, left + of.half_in
    longer = Reach(Edge.VALLEY, 'V', left, top, ZERO, of.rate, thick)
    shorter = Reach(Edge.VALLEY, 'V', middle, right, of.reach_in, -of.rate, thick)
    half = exact(of.asked.rafters.thickness_in / 2)
    at_ridge = thick / 2 / of.at.plan_a.sine() - shortening.set_back_at_ridge(ridge_in(of.asked), of.at)
    places = whole.stations
    for inside in (left, right):
        if 0 < inside < long:  # at a gable that the wing is flush with, its rafter is cut to the valley
            places = of.clear_of_corner(places, inside)
    line = top + at_ridge  # there the longer valley's side comes to the ridge's
    if not of.level_ridges:  # else nothing stands between two valleys that end together
        places = clear_between(
            places,
            top - of.shortest_jack_in(of.at.plan_a) / of.rate,
            line + half,
            of.asked.rafters.thickness_in,
        )
    above = Region(
        (plate.part(ZERO, left), longer),
        cut(whole.upper, ZERO, top),
        within(places, ZERO, top),
    )
    under = longer.part(middle, top)
    below = Region(
        (shorter, plate.part(right, long)),
        (*((under,) if middle < top else ()), *cut(whole.upper, top, long)),
        within(places, middle, long),
    )
    return replace(front, regions=(above, below))


def _outline(of: Joined) -> tuple[Point, ...]:
    (a, b, c, d), out = of.base.plates, exact(of.wing.out_in)
    return (a, (of.left_in, ZERO), (of.left_in, -out), (of.right_in, -out), (of.right_in, ZERO), b, c, d)


def _edges(of: Joined) -> tuple[str, ...]:
    front, right, back, left = of.base.edges
    return (
        front,
        'wing_left',
        'wing_front' if of.wing.hipped else '',
        'wing_right',
        front,
        right,
        back,
        left,
    )
