"""The lengths before anything is taken off, the plumb and level cuts, and how the square is held for them."""

from __future__ import annotations

from tablegen.geometry import corner, shortening
from tablegen.geometry.stepping import RUN_PER_STEP, SQUARE, Hold, common_hold, hold
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, Rational
from tablegen.roof.readings import Group, Reading, degrees, figure, length, words
from tablegen.roof.side import Side

ON_THE_SIDE = (
    'on the side of the board, from the line square across it; the level cut is square to the plumb cut'
)


def lengths_of(side: Side) -> Group:
    """Return the line lengths of a regular corner."""
    measure = side.ask.measure
    return Group(
        'length',
        (
            length('common', shortening.along(side.run_in, side.slope), measure),
            length('hip_valley', side.hip_length_in, measure),
            length('rise', side.run_in * side.slope, measure),
        ),
        'common: along the slope, plate line to ridge center line; hip or valley: along its own, on its center line, '
        'corner of the plates to ridge center line; rise: plumb, plate line to ridge center line; nothing is taken off',
    )


def cuts_of(side: Side, hip: str = 'hip_valley') -> Group:
    """Return the plumb and level cuts of the side's commons and jacks, and of its hip.

    Given:
        hip  what the hip is called
    """
    return Group(
        'cut', (*_both('common', Angle(side.slope)), *_both(hip, corner.hip_angle(side.at))), ON_THE_SIDE
    )


def common_cuts_of(side: Side, name: str = 'common') -> Group:
    """Return the plumb and level cuts of the side's commons and jacks alone, by the name of its rafters."""
    return Group('cut', _both(name, Angle(side.slope)), ON_THE_SIDE)


def hip_cuts_of(side: Side) -> Group:
    """Return the plumb and level cuts of the corner's hip or valley alone."""
    return Group('cut', _both('hip_valley', corner.hip_angle(side.at)), ON_THE_SIDE)


def _both(key: str, plumb: Angle) -> tuple[Reading, Reading]:
    return degrees(f'{key}_plumb', plumb), degrees(f'{key}_level', plumb.complement())


def squares_of(*held: Group) -> Group:
    """Return how the framing square is held for each of some members."""
    return Group(
        'square',
        held,
        "on the board's top edge, in inches; the line along the body is level, the line along the tongue is plumb; a "
        'figure to the nearest 1/16; where the tongue is too short for the rise both figures are halved',
    )


def common_square(side: Side, name: str = 'common') -> Group:
    """Return how the square is held for the side's commons and jacks."""
    return _square(name, common_hold(side.slope))


def hip_square(side: Side, key: str = 'hip_valley') -> Group:
    """Return how the square is held for the corner's hip or valley, per foot of the side's run."""
    return _square(key, hip_hold_of(side))


def hip_hold_of(side: Side) -> Hold:
    """Return how the square is held for the corner's hip or valley."""
    level: Exact | Rational = RUN_PER_STEP / side.at.plan_a.sine()
    return hold(level, RUN_PER_STEP * side.slope)


def _square(key: str, held: Hold) -> Group:
    return Group(
        key,
        (
            words('held', held.text),
            figure('level_on_body', held.body_in, SQUARE),
            figure('plumb_on_tongue', held.tongue_in, SQUARE),
            figure('run_of_step', held.run_in, SQUARE),
        ),
    )
