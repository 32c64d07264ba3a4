"""What a pitch has but once, member by member: common rafter, hip and valley, jacks, of the book's own stock.

Corners are regular: eaves at 90 degrees, one pitch on both sides. Cuts on the SIDE are degrees from the line square
across it; cheeks on the TOP edge, from the line square across that. Lengths are inches to the smallest part: LEVEL in
plan, PLUMB, SQUARE to the member's edge, or ALONG its top edge, as each says.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from tablegen.geometry import backing, common, corner, seat, shortening, tail
from tablegen.geometry.cheeks import Cheek, hip_at_ridge
from tablegen.geometry.cheeks import jack as jack_cheek
from tablegen.geometry.pitch import Pitch
from tablegen.geometry.stepping import Hold, common_hold, hip_hold
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import Figure
from tablegen.numbers.units import Stock
from tablegen.roof.cautions import Caution, seat_cautions, too_thin_for_a_tail
from tablegen.settings import Settings
from tablegen.tables.finish import deg, mark, unit

FOOT = Fraction(12)
SHALLOW, THROUGH = 'shallow', 'through'
"""Stock that does not reach the plate; a notch that would cut the member, or its common, through."""


@dataclass(frozen=True, slots=True)
class OneWayAndAnother:
    """One distance between two plumb lines, measured two ways."""

    level: Figure
    """in, LEVEL, in plan in the member's own direction."""
    along: Figure
    """in, ALONG its top edge."""


@dataclass(frozen=True, slots=True)
class CheekCut:
    """A plumb cut on the skew, on the two faces where it is marked."""

    top: Figure
    """deg, on the TOP edge, from the line square across it."""
    top_figure: Figure
    """in, on the square against 12 for that line; marked along the 12."""
    side: Figure
    """deg, on the SIDE, from the line square across it: the member's plumb cut, which the saw follows."""
    blade: Figure
    """deg, tilt of the blade from square, the saw's shoe on that side."""


@dataclass(frozen=True, slots=True)
class Mouth:
    """A bird's mouth."""

    stock: Stock
    height: Figure
    """in, height above plate: PLUMB over the plate line, or over the corner on the center line, plate to top edge."""
    heel: Figure
    """in, PLUMB, from the seat to the underside."""
    seat: Figure
    """in, LEVEL along the member, from the heel inwards."""
    notch: Figure
    """in, SQUARE to the edge, from the underside to the notch's corner."""
    left: Figure
    """in, SQUARE to the edge, wood left over the notch, to the top edge."""
    marks: int
    """How many of geometry.seat.MARKS the notch passes: 0, a quarter of the depth, a third."""
    thin: bool
    """Whether too little is left under a tail."""
    cautions: tuple[Caution, ...]
    """What the seat and its notch call for on a rafter with a tail."""


@dataclass(frozen=True, slots=True)
class NoMouth:
    """Why a member has no bird's mouth."""

    stock: Stock
    why: str
    """SHALLOW or THROUGH."""


@dataclass(frozen=True, slots=True)
class CommonValues:
    """The common rafter of one pitch."""

    plumb_cut: Figure
    """deg, on the SIDE, from square across."""
    level_cut: Figure
    """deg, on the SIDE, from square across: the seat's line."""
    hold: Hold
    """For one step: level along the body, plumb along the tongue."""
    per_foot: Figure
    """in, ALONG the top edge, per foot of level run, to thousandths."""
    per_foot_part: Figure
    """The same to the smallest part."""
    at_ridge: OneWayAndAnother
    """Off the line length: ridge center line to its face."""
    mouth: Mouth | NoMouth
    """Of the set stock on the set seat."""
    tail_per_foot: Figure
    """in, ALONG the top edge, plate line to tail end, per 12 in of level overhang."""


@dataclass(frozen=True, slots=True)
class HipValues:
    """The hip and the valley of a regular corner at one pitch."""

    plumb_cut: Figure
    """deg, on the SIDE, from square across."""
    level_cut: Figure
    """deg, on the SIDE, from square across."""
    hold: Hold
    """For one step: level along the body (√288, 17 on the square), plumb along the tongue."""
    per_foot: Figure
    """in, ALONG the top edge, per foot of level run of the COMMON, to thousandths."""
    per_foot_part: Figure
    at_ridge: OneWayAndAnother
    """Off the line length of a hip or valley with one cheek: ridge center line to its side, on the center line."""
    between_commons: OneWayAndAnother
    """Off the line length of a hip with two cheeks: to the corner of two commons, on the center line."""
    cheek: CheekCut
    """Against the side of a ridge or of a common, the top left square. Each of two cheeks is this cut."""
    points: OneWayAndAnother
    """One cheek: from its short point to its long point."""
    set_back: OneWayAndAnother
    """Two cheeks: from the point, on the center line, back to where the plumb line of each side starts."""
    tail_per_foot: Figure
    """in, ALONG the top edge, corner of the plates to the corner of the eaves, per 12 in of COMMON overhang."""
    drop: Figure
    """in, PLUMB, of a hip left square: already taken off dropped.height."""
    backing_bevel: Figure
    """deg, of each face of a backed hip, from its square top."""
    dropped: Mouth | NoMouth
    """Hip left square; height and heel on its center line at the corner."""
    valley: Mouth | NoMouth
    """Height on its center line over the inside corner, the commons' own; heel valley_back outwards of that."""
    valley_back: Figure
    """in, LEVEL along the valley, from the inside corner outwards to its heel."""


@dataclass(frozen=True, slots=True)
class JackValues:
    """Jacks of a regular corner at one pitch. Plumb cut, hold, tail and bird's mouth are the common's."""

    cheek: CheekCut
    """Against a hip or valley."""
    differences: tuple[Figure, ...]
    """in, ALONG the top edge: one jack longer than the next, one a spacing."""
    at_hip: OneWayAndAnother
    """Off the line length: center line of hip or valley to its side, on the jack's center line."""
    points: OneWayAndAnother
    """From short point to long point; half of it each side of the center line."""


@dataclass(frozen=True, slots=True)
class Members:
    """All of one pitch."""

    pitch: Pitch
    common: CommonValues
    hip: HipValues
    jack: JackValues


def members(pitch: Pitch, settings: Settings) -> Members:
    """Return what a pitch has but once, of the book's own stock and thicknesses."""
    return Members(pitch, _common(pitch, settings), _hip(pitch, settings), _jack(pitch, settings))


def _common(pitch: Pitch, settings: Settings) -> CommonValues:
    slope = pitch.slope
    plumb, per_foot = common.slope_angle(slope), common.line_length(FOOT, slope)
    return CommonValues(
        deg(plumb),
        deg(plumb.complement()),
        common_hold(slope),
        unit(per_foot),
        mark(per_foot, settings),
        _two_ways(shortening.at_ridge(settings.ridge_thickness), slope, settings),
        _mouth(
            settings.rafters,
            seat.height_above_plate(settings.rafters.depth_in, settings.seat, slope),
            seat.heel(settings.seat, slope),
            settings.seat,
            slope,
            settings,
        ),
        mark(tail.common_tail(FOOT, slope), settings),
    )


def _hip(pitch: Pitch, settings: Settings) -> HipValues:
    slope, at = pitch.slope, pitch.corner
    own = at.hip_slope
    thickness = settings.hip_thickness
    plumb, per_foot = corner.hip_angle(at), corner.hip_length(FOOT, at)
    height = seat.height_above_plate(settings.rafters.depth_in, settings.seat, slope)
    dropped_height = seat.hip_height_above_plate(height, backing.drop_plumb(thickness, at))
    dropped_heel = seat.hip_heel(settings.hips.depth_in, dropped_height, at)
    valley_heel = seat.valley_heel(settings.valleys.depth_in, height, thickness, at)
    dropped = _mouth(
        settings.hips, dropped_height, dropped_heel, seat.hip_seat(dropped_heel, at), own, settings
    )
    valley = _mouth(settings.valleys, height, valley_heel, seat.valley_seat(valley_heel, at), own, settings)
    if seat.stock_left(settings.rafters.depth_in, settings.seat, slope) <= 0:
        dropped, valley = NoMouth(settings.hips, THROUGH), NoMouth(settings.valleys, THROUGH)

    def two_ways(level: Exact) -> OneWayAndAnother:
        return _two_ways(level, own, settings)

    return HipValues(
        deg(plumb),
        deg(plumb.complement()),
        hip_hold(at),
        unit(per_foot),
        mark(per_foot, settings),
        two_ways(shortening.hip_at_ridge(settings.ridge_thickness, at)),
        two_ways(shortening.hip_between_commons(settings.rafter_thickness, at)),
        _cheek(hip_at_ridge(at), settings),
        two_ways(shortening.hip_point_to_point(thickness, at)),
        two_ways(shortening.set_back_at_common(thickness, at)),
        mark(tail.hip_tail(FOOT, at), settings),
        mark(backing.drop_plumb(thickness, at), settings),
        deg(backing.bevel(at)),
        dropped,
        valley,
        mark(seat.valley_heel_back(thickness, at), settings),
    )


def _jack(pitch: Pitch, settings: Settings) -> JackValues:
    slope, at = pitch.slope, pitch.corner
    return JackValues(
        _cheek(jack_cheek(at), settings),
        tuple(mark(corner.jack_difference(one, at), settings) for one in settings.spacings),
        _two_ways(shortening.jack_at_hip(settings.hip_thickness, at), slope, settings),
        _two_ways(shortening.point_to_point(settings.rafter_thickness, at), slope, settings),
    )


def _two_ways(level: Exact, slope: Exact, settings: Settings) -> OneWayAndAnother:
    return OneWayAndAnother(mark(level, settings), mark(shortening.along(level, slope), settings))


def _cheek(cut: Cheek, settings: Settings) -> CheekCut:
    return CheekCut(deg(cut.top_from_square()), mark(cut.figure(), settings), deg(cut.saw), deg(cut.blade))


def _mouth(
    stock: Stock, height: Exact, heel: Exact, seat_in: Exact | Fraction, slope: Exact, settings: Settings
) -> Mouth | NoMouth:
    """Return the bird's mouth of a member from its exact measures; slope is the member's own."""
    if heel <= 0:
        return NoMouth(stock, SHALLOW)
    left = seat.stock_left(stock.depth_in, seat_in, slope)
    if left <= 0:
        return NoMouth(stock, THROUGH)
    return Mouth(
        stock,
        mark(height, settings),
        mark(heel, settings),
        mark(seat_in, settings),
        mark(seat.notch_depth(seat_in, slope), settings),
        mark(left, settings),
        seat.marks_passed(stock.depth_in, seat_in, slope),
        too_thin_for_a_tail(left),
        seat_cautions(stock.depth_in, seat_in, FOOT, slope),
    )
