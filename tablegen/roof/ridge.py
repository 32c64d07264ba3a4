"""The ridge: how high it stands, and how long that of a hip roof is."""

from __future__ import annotations

from fractions import Fraction
from typing import ClassVar

from msgspec import Struct

from tablegen.errors import BookError
from tablegen.geometry import corner, ridge
from tablegen.geometry.corner import Corner
from tablegen.messages import message
from tablegen.numbers.exact import Exact, sign
from tablegen.numbers.figure import Measure, length_rounded_up
from tablegen.roof.figures import Length
from tablegen.roof.question import Boards
from tablegen.roof.side import Side


class HipRoofRidge(Struct, frozen=True):
    """The ridge of a hip roof whose plates are so long, both ends alike."""

    datum: ClassVar = ('roof.ridge.hip_roof',)
    plate_length: Length
    center_lines: Length
    sawn_between_commons: Length
    sawn_hips_on_ridge: Length


class Ridge(Struct, frozen=True):
    """A ridge over one side, and its ends where the corners are square."""

    datum: ClassVar = ('roof.ridge',)
    top_of_planes: Length
    sits_down: Length
    top_of_ridge: Length
    past_end_between_commons: Length | None
    past_end_hips_on_ridge: Length | None
    hip_roof: HipRoofRidge | None
    """None where the plates' length was not asked about."""


def ridge_of(side: Side, run_in: Fraction, plate_length_in: Fraction | None) -> Ridge:
    """Return the ridge over a side of such a run.

    Errors:
        BookError for a plate length that is no hip roof's, or at a corner that is not square
    """
    slope = side.slope
    if plate_length_in is not None and not side.square:
        raise BookError(
            'plate_length',
            message('error.no_square_corners'),
            '',
            message('error.leave_it_or_the_corner_out'),
        )
    top = ridge.top_of_planes(run_in, side.height_in, slope)
    sits_down = ridge.sits_down(side.boards.ridge_in, slope)
    between, on_ridge = past_ends(side.boards, side.at)
    return Ridge(
        side.length(top),
        side.length(sits_down),
        side.length(ridge.top_of_ridge(run_in, side.height_in, side.boards.ridge_in, slope)),
        side.length(between) if side.square else None,
        side.length(on_ridge) if side.square else None,
        None if plate_length_in is None else _hip_roof(side, run_in, plate_length_in),
    )


def past_ends(boards: Boards, at: Corner) -> tuple[Exact, Exact]:
    """Return what a ridge over A runs past its theoretical end, in: between commons, and with hips on it."""
    on_ridge = ridge.end_past_hips(boards.ridge_in, boards.hip_in, at)
    return ridge.end_past_commons(boards.rafter_in), on_ridge


def _hip_roof(side: Side, run_in: Fraction, plate_length_in: Fraction) -> HipRoofRidge:
    bare = ridge.hip_ridge_length(plate_length_in, run_in, side.at)
    if sign(bare) < 0:
        least = length_rounded_up(2 * corner.run_b(run_in, side.at), Measure(side.boards.measure.per))
        raise BookError(
            'plate_length',
            message('error.hips_meet', length=plate_length_in),
            message('error.inches_or_more', least=least),
        )
    between, on_ridge = past_ends(side.boards, side.at)
    return HipRoofRidge(
        side.length(plate_length_in),
        side.length(bare),
        side.length(bare + 2 * between),
        side.length(bare + 2 * on_ridge),
    )
