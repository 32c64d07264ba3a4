"""What an answer says by name and not by figure; the words are the reader's language's."""

from __future__ import annotations

from enum import StrEnum


class Why(StrEnum):
    """Why there is no such length."""

    TOO_SHALLOW = 'too_shallow'
    """The stock does not reach the plate."""
    CUT_THROUGH = 'cut_through'
    """Its notch would cut through the stock."""
    NOTHING_LEFT = 'nothing_left'
    """More comes off than the board is long."""
    NO_LONGER_THAN_FACE = 'no_longer_than_face'
    """The plumb cut of a tail is all face."""
    PAST_THE_PLATE = 'past_the_plate'
    """A level cut would run in past the outside of plate."""
    FLATTER = 'flatter'
    """No pitch is so flat."""


class Mark(StrEnum):
    """How many of geometry.seat.MARKS a notch is past."""

    WITHIN_A_QUARTER = 'within_a_quarter'
    PAST_A_QUARTER = 'past_a_quarter'
    PAST_A_THIRD = 'past_a_third'


class Against(StrEnum):
    """What a shed's rafters stand against."""

    WALL = 'wall'
    LEDGER = 'ledger'


class Point(StrEnum):
    """Where the point of a double cheek lies."""

    A = 'towards_side_a'
    CENTER = 'on_the_center_line'
    B = 'towards_side_b'


class Gap(StrEnum):
    """Under which plane a dropped hip's edge leaves a gap."""

    A = 'side_a'
    NEITHER = 'neither_side'
    B = 'side_b'


class Slid(StrEnum):
    """Which way a hip is slid."""

    A = 'towards_eave_a'
    NOT = 'not_needed'
    B = 'towards_eave_b'


class Raised(StrEnum):
    """Which plate is raised."""

    A = 'plate_a'
    NEITHER = 'neither_plate'
    B = 'plate_b'


class Become(StrEnum):
    """How a member's length changes."""

    SHORTER = 'shorter'
    SAME = 'as_they_were'
    LONGER = 'longer'


class Longer(StrEnum):
    """Which of two diagonals is the longer."""

    SECOND = 'second_is_longer'
    NEITHER = 'square'
    FIRST = 'first_is_longer'
