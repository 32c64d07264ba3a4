"""What comes off the line lengths, and what is left of them: to the faces where members meet, rounded once."""

from __future__ import annotations

from tablegen.geometry import ridge, shortening
from tablegen.numbers.exact import Exact
from tablegen.roof.readings import Group, Reading, board, length
from tablegen.roof.side import Side

LEVEL_AND_ALONG = (
    "level: in plan, along the member's own center line, from the center line of what it meets to its face; along: the "
    'same on its top edge'
)
ARRANGEMENTS = (
    "an end common meets the ridge's end, and just what the ridge runs past its theoretical end comes off. Between "
    'commons: each hip has a double cheek and stands in the corner of the last side common and the end common; the '
    'ridge runs half a common past. Hips on ridge: each hip has one cheek, on its side of the ridge; the ridge runs '
    'past as far as their cheeks bear, and its sides and those of an end common of its thickness are one plane; a '
    'thicker end common is clipped to both hips, from clip back, level, with the cheek of a jack'
)


def shortening_of(side: Side) -> Group:
    """Return what comes off members of this side, and off the hip or valley at what stands on it."""
    ask, at, own, hip = side.ask, side.at, side.slope, side.at.hip_slope
    valley_jack = shortening.jack_at_hip(ask.valley_thickness_in, at)
    return Group(
        'shortening',
        (
            *side.both('common_at_ridge', shortening.at_ridge(ask.ridge_in), own),
            *side.both('hip_valley_at_ridge', shortening.hip_at_ridge(ask.ridge_in, at), hip),
            *side.both('hip_between_commons', shortening.hip_between_commons(ask.rafter_in, at), hip),
            *side.both('valley_between_ridges', _between_ridges(side), hip),
            *side.both('jack_at_hip', shortening.jack_at_hip(ask.hip_in, at), own),
            *side.both('jack_at_valley', valley_jack, own),
            *side.both('valley_jack_at_ridge', shortening.at_ridge(ask.ridge_in), own),
            *((end_common_of(side),) if side.square else ()),
        ),
        f'{LEVEL_AND_ALONG}; hip or valley at ridge: one cheek, on the side of a ridge over this side; a cripple between '
        'hip and valley: as a jack at each',
    )


def end_common_of(side: Side) -> Group:
    """Return what comes off an end common of this side, the ridge running over the other one."""
    ask, own, other = side.ask, side.slope, side.at.turned()
    past = (ridge.end_past_commons(ask.rafter_in), ridge.end_past_hips(ask.ridge_in, ask.hip_in, other))
    clip = shortening.end_common_clip(ask.rafter_in, ask.ridge_in, other)
    return Group(
        'end_common',
        (
            *side.both('between_commons', shortening.end_common(past[0]), own),
            *side.both('hips_on_ridge', shortening.end_common(past[1]), own),
            length('clip', clip, ask.measure),
        ),
        ARRANGEMENTS,
    )


def sawn_of(side: Side) -> Group:
    """Return the lengths to the faces, of a corner whose two sides are alike."""
    ask, at, measure = side.ask, side.at, side.ask.measure
    at_ridge, commons = shortening.hip_at_ridge(ask.ridge_in, at), shortening.hip_at_common(ask.rafter_in, at)
    at_common = shortening.set_back_at_common(ask.hip_in, at)
    back, valley_back = (
        shortening.set_back_at_ridge(thick, at) for thick in (ask.hip_in, ask.valley_thickness_in)
    )
    return Group(
        'sawn',
        (
            board('common', common_less(side, shortening.at_ridge(ask.ridge_in)), measure),
            *end_commons_sawn(side),
            board('hip_between_commons_point', hip_less(side, commons), measure),
            board('hip_between_commons_sides', hip_less(side, commons + at_common), measure),
            board('hip_at_ridge_long_point', hip_less(side, at_ridge - back), measure),
            board('hip_at_ridge_short_point', hip_less(side, at_ridge + back), measure),
            board('valley_between_ridges_point', hip_less(side, _between_ridges(side)), measure),
            board(
                'valley_between_ridges_sides', hip_less(side, _between_ridges(side) + valley_back), measure
            ),
            board('valley_at_ridge_long_point', hip_less(side, at_ridge - valley_back), measure),
            board('valley_at_ridge_short_point', hip_less(side, at_ridge + valley_back), measure),
        ),
        'along the top edge, what is taken off for ridge and commons being off, each rounded once; commons: from the '
        'plate line; hips and valleys: from the corner of the plates, to the plumb line where a side’s cheek starts: '
        'between commons or ridges two cheeks make a point on the center line, and both sides start further down; at a '
        'ridge one cheek runs from a long point on one side to a short point on the other',
    )


def end_commons_sawn(side: Side) -> tuple[Reading, ...]:
    """Return the lengths of an end common of this side to the ridge's end, in both arrangements; square corners only."""
    if not side.square:
        return ()
    ask = side.ask
    hips = ridge.end_past_hips(ask.ridge_in, ask.hip_in, side.at.turned())
    commons = ridge.end_past_commons(ask.rafter_in)
    return (
        board('end_common_between_commons', common_less(side, commons), ask.measure),
        board('end_common_hips_on_ridge', common_less(side, hips), ask.measure),
    )


def common_less(side: Side, level_in: Exact) -> Exact:
    """Return a common's length along its edge with so much taken off its run, level."""
    return shortening.along(side.run_in - level_in, side.slope)


def hip_less(side: Side, level_in: Exact) -> Exact:
    """Return the hip's or valley's length along its edge with so much taken off its own run, level."""
    return shortening.along(side.run_in / side.at.plan_a.sine() - level_in, side.at.hip_slope)


def _between_ridges(side: Side) -> Exact:
    return shortening.valley_between_ridges(side.ask.ridge_in, side.ask.ridge_in, side.at)
