"""The ridge: how high it stands, and how long that of a hip roof is."""

from __future__ import annotations

from tablegen.errors import BookError
from tablegen.geometry import ridge
from tablegen.numbers import text
from tablegen.numbers.exact import Exact, sign
from tablegen.roof.readings import Group, Reading, at_least, length
from tablegen.roof.side import Side


def ridge_of(side: Side) -> Group:
    """Return the height of a ridge over this side, and what each end of a hip roof's ridge is lengthened by.

    Errors:
        BookError for a plate length that is no hip roof's, or at a corner that is not square
    """
    ask, slope, measure = side.ask, side.slope, side.ask.measure
    down = ridge.sits_down(ask.ridge_in, slope)
    top = slope * side.run_in + side.height_in
    if ask.plate_length_in is not None and not side.square:
        raise BookError(
            'plate length', 'is for a hip roof with square corners', '', 'leave it or --corner out'
        )
    return Group(
        'ridge',
        (
            length('top_of_planes', top, measure),
            length('sits_down', down, measure),
            length('top_of_ridge', top - down, measure),
            *(_ends(side) if side.square else ()),
        ),
        "heights: plumb over the plate's top, of the line where the roof planes meet and of the square top of the ridge, "
        'which sits down under it; past end: level, what each end of the ridge of a hip roof runs past its theoretical '
        'end, where its center line and those of the hips meet: hips between commons, or hips on the ridge',
    )


def _ends(side: Side) -> tuple[Reading | Group, ...]:
    ask, measure = side.ask, side.ask.measure
    ends = (ridge.end_past_commons(ask.rafter_in), ridge.end_past_hips(ask.ridge_in, ask.hip_in, side.at))
    return (
        length('past_end_between_commons', ends[0], measure),
        length('past_end_hips_on_ridge', ends[1], measure),
        *_hip_roof(side, ends),
    )


def _hip_roof(side: Side, ends: tuple[Exact, Exact]) -> tuple[Group, ...]:
    ask = side.ask
    if ask.plate_length_in is None:
        return ()
    ends_take = 2 * (side.slope * side.run_in / side.at.slope_b)
    bare = ask.plate_length_in - ends_take
    if sign(bare) < 0:
        raise BookError(
            'plate length',
            f'{text.rational(ask.plate_length_in)} in is less than twice the run of the ends: the hips meet before it',
            f'{at_least("", ends_take, ask.measure).text} or more',
        )
    return (
        Group(
            'hip_roof',
            (
                length('plate_length', ask.plate_length_in, ask.measure),
                length('center_lines', bare, ask.measure),
                length('sawn_between_commons', bare + 2 * ends[0], ask.measure),
                length('sawn_hips_on_ridge', bare + 2 * ends[1], ask.measure),
            ),
            'level: center lines from where the hips of one end meet to where those of the other do, both ends alike; '
            'sawn: what to cut, hips between commons or hips on the ridge',
        ),
    )
