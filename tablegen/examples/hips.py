"""The hip of the store's hipped end: to the ridge with one cheek, or between commons with two."""

from __future__ import annotations

from dataclasses import dataclass

from tablegen.examples import parts
from tablegen.examples.building import Store, garden_store
from tablegen.examples.commons import height_of_commons, height_stands
from tablegen.examples.hip_sources import cut_stands, mouth_stands, off_stands, side_stands
from tablegen.examples.records import CheekCut, Deduction, Mark, Member, Mouth, Stands
from tablegen.examples.sources import in_opening, in_table, read_length
from tablegen.geometry import backing, cheeks, corner, ridge, seat, shortening
from tablegen.geometry import tail as tails
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import Figure, Measure, degree_figure
from tablegen.settings import Settings
from tablegen.tables.members import members


@dataclass(frozen=True, slots=True)
class RidgeEnd:
    """How far the ridge runs on past the point where the center lines meet, and its end common."""

    past: Figure
    """in, level, theoretical end to sawn end: just what comes off the end common."""
    over: Figure
    """in, plumb, how far its square top then stands over the end's plane, to be planed off; count 0 for nothing."""
    clip: Figure
    """in, level, how far back each side of the end common is clipped to the hips; count 0 for nothing."""


@dataclass(frozen=True, slots=True)
class Arrangement:
    """One of the two ways in which the hip's upper end is framed."""

    off: Deduction
    cheek: CheekCut
    end: RidgeEnd


@dataclass(frozen=True, slots=True)
class HipExample:
    """A whole hip; its member is framed against the ridge, and dropped."""

    member: Member
    at_ridge: Arrangement
    between: Arrangement
    drop: Figure
    """in, plumb: what a hip left square is lowered by; its bird's mouth has it already."""
    backing: Figure
    """deg, each side of a backed hip's top, from square: in place of the drop."""
    commons_height: Figure
    """in, plumb over the plate: of the commons, and of a backed hip."""
    backed: Mouth | None
    """The bird's mouth of a backed hip."""
    least_depth: Figure
    """in, square to its edge, rounded up: the stock that just reaches the plate."""
    tail_cheek: CheekCut
    """Each of two, to a point, against both fascias."""


def store_hip(settings: Settings) -> HipExample | None:
    """Return the hip; None where the book ends before it."""
    roof = garden_store(settings)
    if roof is None:
        return None
    commons_height = height_of_commons(roof.pitch, settings)
    drop = backing.drop_plumb(settings.hip_thickness, roof.at)
    height = seat.hip_height_above_plate(commons_height, drop)
    dropped, backed = (_mouth(one, roof, settings) for one in (height, commons_height))
    at_ridge, between = _against_ridge(roof, settings), _between_commons(roof, settings)
    dropped_by = parts.inches(drop, settings)
    bevel = degree_figure(backing.bevel(roof.at))
    back = tails.hip_tail_set_back(settings.hip_thickness, roof.at)
    tail_cheek = parts.cheek_cut(cheeks.hip_at_fascia(roof.at), back, roof.at.hip_slope, True, settings)
    backed_at = mouth_stands('backed', backed, roof.pitch, settings)
    stands = {
        **_end_stands(roof, at_ridge, between, settings),
        **_top_stands(roof, dropped_by, bevel, backed_at, settings),
        **mouth_stands('dropped', dropped, roof.pitch, settings),
        'tail_sides': side_stands(tail_cheek, roof.pitch, settings),
    }
    member = _member(roof, at_ridge, dropped, stands, settings)
    if member is None:
        return None
    return HipExample(
        member,
        at_ridge,
        between,
        dropped_by,
        bevel,
        parts.inches(commons_height, settings),
        backed,
        parts.at_least(seat.hip_least_depth(height, roof.at), Measure(settings.measure.per)),
        tail_cheek,
    )


def _against_ridge(roof: Store, settings: Settings) -> Arrangement:
    at, ridge_in, thick = roof.at, settings.ridge_thickness, settings.hip_thickness
    past = ridge.end_past_hips(ridge_in, thick, at)
    level, side = shortening.hip_at_ridge(ridge_in, at), shortening.set_back_at_ridge(thick, at)
    clip = shortening.end_common_clip(settings.rafter_thickness, ridge_in, at)
    return Arrangement(
        parts.deduction('ridge', ridge_in, level, at.hip_slope, settings),
        parts.cheek_cut(cheeks.hip_at_ridge(at), side, at.hip_slope, False, settings),
        _ridge_end(past, clip, roof, settings),
    )


def _between_commons(roof: Store, settings: Settings) -> Arrangement:
    at, common_in, thick = roof.at, settings.rafter_thickness, settings.hip_thickness
    level, side = (
        shortening.hip_between_commons(common_in, at),
        shortening.set_back_at_common(thick, at),
    )
    return Arrangement(
        parts.deduction('between', common_in, level, at.hip_slope, settings),
        parts.cheek_cut(cheeks.hip_at_common(at), side, at.hip_slope, True, settings),
        _ridge_end(ridge.end_past_commons(common_in), 0 * level, roof, settings),
    )


def _ridge_end(past: Exact, clip: Exact, roof: Store, settings: Settings) -> RidgeEnd:
    over = ridge.end_over_plane(past, settings.ridge_thickness, roof.at)
    return RidgeEnd(*(parts.inches(one, settings) for one in (shortening.end_common(past), over, clip)))


def _mouth(height: Exact, roof: Store, settings: Settings) -> Mouth | None:
    depth, at = settings.hips.depth_in, roof.at
    heel, own = seat.hip_heel(depth, height, at), corner.hip_run(roof.run_in, at)
    return parts.mouth(depth, height, heel, at.hip_slope, roof.overhang_in, settings, 0, own)


def _member(
    roof: Store, arranged: Arrangement, mouth: Mouth | None, stands: Stands, settings: Settings
) -> Member | None:
    runs = roof.run_in, roof.run_in + roof.overhang_in
    read, to_tail = (read_length('hip-valley', one, roof.pitch, settings) for one in runs)
    if read is None or to_tail is None:
        return None
    marks, overall = _marks(roof, settings)
    return Member(
        'hip',
        roof.pitch,
        settings.hips,
        settings.hip_thickness,
        roof.run_in,
        roof.overhang_in,
        read[0],
        to_tail[0],
        arranged.off,
        mouth,
        marks,
        *parts.stick(overall, settings.hips.depth_in, roof.at.hip_slope, settings),
        parts.hip_step_off(roof.run_in, roof.overhang_in, roof.pitch, settings),
        mouth.cautions if mouth else (),
        {'length': read[1], 'whole': to_tail[1], **stands},
    )


def _marks(roof: Store, settings: Settings) -> tuple[tuple[Mark, ...], Exact]:
    """Return the marks of a hip with one cheek against the ridge, and its length from long point to tail."""
    at, thick = roof.at, settings.hip_thickness
    off, half, back = (
        shortening.along(one, at.hip_slope)
        for one in (
            shortening.hip_at_ridge(settings.ridge_thickness, at),
            shortening.set_back_at_ridge(thick, at),
            tails.hip_tail_set_back(thick, at),
        )
    )
    plate, tail = (corner.hip_length(one, at) for one in (roof.run_in, roof.run_in + roof.overhang_in))
    marks = parts.marks(
        settings,
        center=0,
        long=off - half,
        cut=off,
        short=off + half,
        plate=plate,
        tail_side=tail - back,
        tail=tail,
    )
    return marks, tail - off + half


def _end_stands(roof: Store, at_ridge: Arrangement, between: Arrangement, settings: Settings) -> Stands:
    pitch, hip_in = roof.pitch, settings.hip_thickness
    past = 'ridge-ends', settings.ridge_thickness, 'end_common_with_hip', at_ridge.end.past, settings, hip_in
    end = between.end.past
    return {
        'off': off_stands(at_ridge.off, pitch, settings),
        'between': off_stands(between.off, pitch, settings),
        'sides': side_stands(at_ridge.cheek, pitch, settings),
        'between_sides': side_stands(between.cheek, pitch, settings),
        'past': in_table(*past),
        'between_end': in_table('shortening-level', settings.rafter_thickness, 'end_common', end, settings),
        **cut_stands(at_ridge.cheek, pitch, settings),
    }


def _top_stands(roof: Store, drop: Figure, bevel: Figure, backed: Stands, settings: Settings) -> Stands:
    pitch, values = roof.pitch, members(roof.pitch, settings)
    return {
        'height': height_stands(pitch, settings),
        'drop': in_opening('drop', drop, values, settings)
        or in_table('hips', pitch, 'drop_plumb', drop, settings),
        'backing': (
            in_opening('backing', bevel, values, settings)
            or in_table('hips', pitch, 'backing_bevel', bevel, settings)
        )
        + backed.get('backed_heel', ())
        + backed.get('backed_seat', ()),
    }
