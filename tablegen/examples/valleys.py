"""The valley of the store's wing, which is as wide as the store: between two ridges of one height."""

from __future__ import annotations

from dataclasses import dataclass

from tablegen.examples import parts
from tablegen.examples.building import Store, garden_store
from tablegen.examples.commons import height_of_commons
from tablegen.examples.hip_sources import cut_stands, mouth_stands, off_stands, side_stands
from tablegen.examples.records import CheekCut, Deduction, Mark, Member, Mouth, Stands
from tablegen.examples.sources import read_length
from tablegen.geometry import cheeks, corner, seat, shortening
from tablegen.geometry import tail as tails
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import Figure, Measure
from tablegen.settings import Settings


@dataclass(frozen=True, slots=True)
class ValleyExample:
    """A whole valley, whose upper end stands in the corner of the store's ridge and the wing's."""

    member: Member
    cheek: CheekCut
    """Each of two, to a point, at the ridges."""
    tail_cheek: CheekCut
    """Each of two, hollow: its sides reach out past the center line."""
    stands_over: Figure
    """in, plumb: how far its jacks stand over its square edges; a valley is not dropped."""
    least_depth: Figure
    """in, square to its edge, rounded up: the stock that just reaches the plate."""


def wing_valley(settings: Settings) -> ValleyExample | None:
    """Return the valley; None where the book ends before it."""
    roof = garden_store(settings)
    if roof is None:
        return None
    at, thick, depth = roof.at, settings.hip_thickness, settings.valleys.depth_in
    height = height_of_commons(roof.pitch, settings)
    heel, out = seat.valley_heel(depth, height, thick, at), seat.valley_heel_back(thick, at)
    own = corner.hip_run(roof.run_in, at)
    mouth = parts.mouth(depth, height, heel, at.hip_slope, roof.overhang_in, settings, out, own)
    side = shortening.set_back_at_ridge(thick, at)
    cut = cheeks.hip_at_ridge(at)
    cheek = parts.cheek_cut(cut, side, at.hip_slope, True, settings)
    member = _member(roof, cheek, mouth, settings)
    if member is None:
        return None
    back = tails.hip_tail_set_back(thick, at)
    return ValleyExample(
        member,
        cheek,
        parts.cheek_cut(cheeks.hip_at_fascia(at), back, at.hip_slope, True, settings),
        parts.inches(side * at.hip_slope, settings),
        parts.at_least(seat.valley_least_depth(height, thick, at), Measure(settings.measure.per)),
    )


def _member(roof: Store, cheek: CheekCut, mouth: Mouth | None, settings: Settings) -> Member | None:
    runs = roof.run_in, roof.run_in + roof.overhang_in
    read, to_tail = (read_length('hip-valley', one, roof.pitch, settings) for one in runs)
    if read is None or to_tail is None:
        return None
    slope, ridge_in = roof.at.hip_slope, settings.ridge_thickness
    level = shortening.valley_between_ridges(ridge_in, ridge_in, roof.at)
    off = parts.deduction('corner', ridge_in, level, slope, settings)
    marks, overall = _marks(roof, settings)
    return Member(
        'valley',
        roof.pitch,
        settings.valleys,
        settings.hip_thickness,
        roof.run_in,
        roof.overhang_in,
        read[0],
        to_tail[0],
        off,
        mouth,
        marks,
        *parts.stick(overall, settings.valleys.depth_in, slope, settings),
        parts.hip_step_off(roof.run_in, roof.overhang_in, roof.pitch, settings),
        mouth.cautions if mouth else (),
        {'length': read[1], 'whole': to_tail[1], **_stands(roof, off, cheek, mouth, settings)},
    )


def _marks(roof: Store, settings: Settings) -> tuple[tuple[Mark, ...], Exact]:
    """Return the valley's marks, and its length from its upper point to the long points of its tail."""
    at, thick = roof.at, settings.hip_thickness
    off, half, out, back = (
        shortening.along(one, at.hip_slope)
        for one in (
            shortening.valley_between_ridges(settings.ridge_thickness, settings.ridge_thickness, at),
            shortening.set_back_at_ridge(thick, at),
            seat.valley_heel_back(thick, at),
            tails.hip_tail_set_back(thick, at),
        )
    )
    plate, tail = (corner.hip_length(one, at) for one in (roof.run_in, roof.run_in + roof.overhang_in))
    marks = parts.marks(
        settings,
        center=0,
        point=off,
        side=off + half,
        plate=plate,
        heel=plate + out,
        tail=tail,
        tail_side=tail + back,
    )
    return marks, tail + back - off


def _stands(roof: Store, off: Deduction, cheek: CheekCut, mouth: Mouth | None, settings: Settings) -> Stands:
    pitch = roof.pitch
    return {
        'off': off_stands(off, pitch, settings),
        'sides': side_stands(cheek, pitch, settings),
        **cut_stands(cheek, pitch, settings),
        **mouth_stands('valley', mouth, pitch, settings),
    }
