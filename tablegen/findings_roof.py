"""Everything that one pitch, one run and one size of stock say about a roof with regular corners."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from tablegen import text
from tablegen.cautions import DEFERS, pitch_cautions, seat_cautions
from tablegen.errors import BookError
from tablegen.exact import Exact
from tablegen.figures import Measure
from tablegen.findings_parts import backing_of, cheeks_of, drop_of, shortening_of, trim_of
from tablegen.geometry import backing, common, gable, ridge, seat, tail
from tablegen.geometry.corner import SQUARE, Corner, square_corner
from tablegen.lumber import Stock, stock
from tablegen.pitch import Pitch
from tablegen.readings import Group, Reading, at_least, at_most, degrees, length, ratio, words

MARKS_SAID = (
    'not past a quarter of the depth',
    'past a quarter of the depth: a mark to look at, local code decides',
    'past a third of the depth: a mark to look at, local code decides',
)


@dataclass(frozen=True, slots=True)
class RoofQuestion:
    """What is asked; lengths in inches."""

    pitch: Pitch
    run_in: Fraction
    """Level, outside of plate to ridge center line; the apothem of a many-sided roof."""
    stock: Stock = stock('2×8')
    """Of commons, jacks and hip alike."""
    seat_in: Fraction = Fraction(7, 2)
    """Level length of the common's seat: the width of a nominal 4 in plate."""
    overhang_in: Fraction = Fraction(12)
    """Level, outside of plate to the tail's end, of the common."""
    plate_length_in: Fraction | None = None
    """Outside of plates along the ridge of a hip roof, for the ridge's length; None where that is not asked."""
    tail_face_in: Fraction = Fraction(11, 2)
    """Plumb cut left above a level soffit cut: a nominal 6 in fascia."""
    ridge_in: Fraction = Fraction(3, 2)
    """Thickness."""
    hip_in: Fraction = Fraction(3, 2)
    rafter_in: Fraction = Fraction(3, 2)
    spacings: tuple[Fraction, ...] = (Fraction(12), Fraction(16), Fraction(96, 5), Fraction(24))
    measure: Measure = Measure()


def roof_findings(ask: RoofQuestion) -> tuple[Group, ...]:
    """Return shortening, seat, tail, cheek, backing, drop, trim, ridge, gable, caution and area, in this order.

    Errors:
        BookError for a seat that cuts through the stock, or an overhang that cannot be
    """
    at = square_corner(ask.pitch.slope, ask.pitch.slope)
    return (
        shortening_of(at, ask.ridge_in, ask.hip_in, ask.rafter_in, ask.measure),
        seat_of(ask, at),
        tail_of(ask, at),
        cheeks_of(at, ask.measure),
        backing_of(at, ask.hip_in, ask.measure),
        drop_of(at, ask.hip_in, ask.measure),
        trim_of(at),
        ridge_of(ask, at),
        gable_of(ask),
        caution_of(ask),
        Group(
            'area',
            (ratio('roof_per_plan', gable.area_factor(ask.pitch.slope)),),
            'roof over level plan, any unit',
        ),
    )


def seat_of(ask: RoofQuestion, at: Corner) -> Group:
    """Return the bird's mouth of the common, and of a dropped and a backed hip on one height above plate.

    The old shortcut's error is told at a square corner only: nobody takes it elsewhere.
    """
    slope, depth, measure = ask.pitch.slope, ask.stock.depth_in, ask.measure
    seat.checked_seat(depth, ask.seat_in, slope)
    height = seat.height_above_plate(depth, ask.seat_in, slope)
    notch = seat.notch_depth(ask.seat_in, slope)
    dropped = seat.hip_height_above_plate(height, backing.drop_plumb(ask.hip_in, at))
    return Group(
        'seat',
        (
            words('stock', ask.stock.name),
            length('depth', depth, measure),
            length('seat', ask.seat_in, measure),
            length('heel', seat.heel(ask.seat_in, slope), measure),
            length('height_above_plate', height, measure),
            length('notch_depth', notch, measure),
            length('stock_left', depth - notch, measure),
            ratio('notch_share_of_depth', notch / depth),
            words('mark', MARKS_SAID[seat.marks_passed(depth, ask.seat_in, slope)]),
            at_most('longest_seat_at_a_quarter', seat.longest_seat(depth, seat.MARKS[0], slope), measure),
            at_most('longest_seat_at_a_third', seat.longest_seat(depth, seat.MARKS[1], slope), measure),
            hip_seat_of('hip_dropped', ask, at, dropped),
            hip_seat_of('hip_backed', ask, at, height),
            valley_seat_of(ask, at, height),
            *((_shortcut(ask, at, dropped, height),) if at.half_tangent == SQUARE else ()),
        ),
        'seat: level, from the outside of plate inwards; heel and height above plate: plumb, at the outside of '
        'plate; notch and stock left: square to the edge; longest seats: rounded down; geometry only, not strength',
    )


def hip_seat_of(key: str, ask: RoofQuestion, at: Corner, height: Exact) -> Group:
    """Return the bird's mouth of a hip that stands so high above the plate on its center line."""
    heel = seat.hip_heel(ask.stock.depth_in, height, at)
    reaches = heel > 0
    cuts: tuple[Reading, ...] = (
        (length('heel', heel, ask.measure), length('seat', seat.hip_seat(heel, at), ask.measure))
        if reaches
        else (words('seat', 'none: this stock is too shallow to reach the plate'),)
    )
    return Group(
        key,
        (
            length('height_above_plate', height, ask.measure),
            *cuts,
            at_least('least_depth', seat.hip_least_depth(height, at), ask.measure),
        ),
        "on the hip's center line, at the corner of the plates; seat level along the hip; least depth of stock, "
        'square to its edge, that reaches the plate',
    )


def valley_seat_of(ask: RoofQuestion, at: Corner, height: Exact) -> Group:
    """Return the bird's mouth of a valley, which is not dropped, at an inside corner of the plates."""
    heel = seat.valley_heel(ask.stock.depth_in, height, ask.hip_in, at)
    cuts: tuple[Reading, ...] = (
        (
            length('heel', heel, ask.measure),
            length('seat', seat.valley_seat(heel, at), ask.measure),
            length('heel_back', seat.valley_heel_back(ask.hip_in, at), ask.measure),
        )
        if heel > 0
        else (words('seat', 'none: this stock is too shallow to reach the plate'),)
    )
    least = at_least('least_depth', seat.valley_least_depth(height, ask.hip_in, at), ask.measure)
    return Group(
        'valley',
        (length('height_above_plate', height, ask.measure), *cuts, least),
        "on the valley's center line, height above plate over the inside corner of the plates; heel: plumb, heel_back "
        'outwards of that corner, towards the tail, level, where the sides meet the outer faces of the plates; seat: '
        'level, from that heel inwards; least depth of stock, square to its edge, that reaches the plate; its top is '
        'square and not dropped, so jacks stand above its edges by the drop',
    )


def _shortcut(ask: RoofQuestion, at: Corner, dropped: Exact, backed: Exact) -> Group:
    """Return what a seat of 17/12 of the common's does to a hip's height."""
    height = seat.shortcut_hip_height(ask.stock.depth_in, ask.seat_in, at)
    return Group(
        'hip_by_17_over_12',
        (
            length('height_above_plate', height, ask.measure),
            length('low_if_dropped', dropped - height, ask.measure),
            length('low_if_backed', backed - height, ask.measure),
        ),
        "an old shortcut, wrong: it gives the hip 17/12 of the common's seat; low: how far its top then stands under "
        'where it should',
    )


def tail_of(ask: RoofQuestion, at: Corner) -> Group:
    """Return the tails of common and hip and the three cuts at the end of one."""
    slope, depth, measure = ask.pitch.slope, ask.stock.depth_in, ask.measure
    tail.checked_overhang(ask.overhang_in, ask.run_in)
    height = seat.height_above_plate(depth, ask.seat_in, slope)
    under = tail.soffit_cut(depth, ask.tail_face_in, slope)
    below = tail.soffit_below_plate(height, ask.overhang_in, ask.tail_face_in, slope)
    if under <= 0:
        soffit = (words('level_cut', 'none: the plumb cut is no longer than the face'),)
    elif under > ask.overhang_in:
        soffit = (words('level_cut', 'none: it would run in past the outside of plate'),)
    else:
        soffit = (length('level_cut', under, measure), length('below_plate', below, measure))
    return Group(
        'tail',
        (
            length('overhang', ask.overhang_in, measure),
            length('common', tail.common_tail(ask.overhang_in, slope), measure),
            length('hip', tail.hip_tail(ask.overhang_in, at), measure),
            length('fall', tail.fall(ask.overhang_in, slope), measure),
            length('plumb_cut', tail.plumb_cut_length(depth, slope), measure),
            length('square_cut_inset', tail.square_cut_set_in(depth, slope), measure),
            length('square_cut_below', tail.square_cut_lower(depth, slope), measure),
            Group(
                'soffit',
                (length('face', ask.tail_face_in, measure), *soffit),
                "face: plumb, from the top edge down; level cut: from the tail's end to the underside; below plate: "
                "plumb, from the plate's top",
            ),
        ),
        'overhang level, square to the eave, outside of plate to tail end; common and hip: along the top edge, '
        'plate line to tail end; fall: plumb; square cut: where its lower corner stands, level and plumb',
    )


def ridge_of(ask: RoofQuestion, at: Corner) -> Group:
    """Return the height of the ridge and what each end of a hip roof's ridge is lengthened by."""
    slope, measure = ask.pitch.slope, ask.measure
    height = seat.height_above_plate(ask.stock.depth_in, ask.seat_in, slope)
    ends = (ridge.end_past_commons(ask.rafter_in), ridge.end_past_hips(ask.ridge_in, ask.hip_in, at))
    return Group(
        'ridge',
        (
            length('rise', common.rise(ask.run_in, slope), measure),
            length('top_of_planes', ridge.top_of_planes(ask.run_in, height, slope), measure),
            length('sits_down', ridge.sits_down(ask.ridge_in, slope), measure),
            length('top_of_ridge', ridge.top_of_ridge(ask.run_in, height, ask.ridge_in, slope), measure),
            length('past_end_between_commons', ends[0], measure),
            length('past_end_with_hips_on_it', ends[1], measure),
            *_hip_roof_ridge(ask, ends),
        ),
        "heights plumb over the plate's top; past end: level, added to each end of a hip roof's ridge, whose center "
        "lines measure the plates' length less their width",
    )


def _hip_roof_ridge(ask: RoofQuestion, ends: tuple[Exact, Exact]) -> tuple[Group, ...]:
    if ask.plate_length_in is None:
        return ()
    if ask.plate_length_in < 2 * ask.run_in:
        raise BookError(
            'plate length',
            f'{text.rational(ask.plate_length_in)} in is less than the width, twice the run: the hips meet before it',
            f'{text.rational(2 * ask.run_in)} in or more',
        )
    bare = ridge.hip_ridge_length(ask.plate_length_in, 2 * ask.run_in)
    return (
        Group(
            'hip_roof',
            (
                length('plate_length', ask.plate_length_in, ask.measure),
                length('center_lines', bare, ask.measure),
                length('sawn_between_commons', bare + 2 * ends[0], ask.measure),
                length('sawn_with_hips_on_it', bare + 2 * ends[1], ask.measure),
            ),
            'level: center lines from where the hips of one end meet to where those of the other do; sawn: what to cut',
        ),
    )


def gable_of(ask: RoofQuestion) -> Group:
    """Return the difference of gable studs at each spacing and the cut on their tops."""
    slope = ask.pitch.slope
    differences = tuple(
        length(text.rational(one).replace(' ', '_'), gable.stud_difference(one, slope), ask.measure)
        for one in ask.spacings
    )
    return Group(
        'gable_stud',
        (
            Group('difference', differences, 'plumb, per space on center'),
            degrees('top_cut', common.slope_angle(slope)),
        ),
        "top cut: on the stud's side, from square",
    )


def caution_of(ask: RoofQuestion) -> Group:
    """Return the cautions that these numbers call for, each with its source; none may be called for."""
    slope = ask.pitch.slope
    found = pitch_cautions(slope) + seat_cautions(ask.stock.depth_in, ask.seat_in, ask.overhang_in, slope)
    return Group('caution', tuple(words(one.key, f'{one.text} ({one.source})') for one in found), DEFERS)
