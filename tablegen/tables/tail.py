"""Tails by overhang, and the cuts at their ends by stock."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import ClassVar

from tablegen.geometry import tail
from tablegen.geometry.pitch import Pitch
from tablegen.numbers import text
from tablegen.numbers.figure import Figure
from tablegen.numbers.units import INCHES
from tablegen.roof.cautions import LEAST_STOCK_UNDER_A_TAIL_IN
from tablegen.settings import Settings
from tablegen.tables.finish import parts
from tablegen.tables.former import Table
from tablegen.tables.seat import SIZE_HEADS, THIN_HEADS

OVERHANGS_IN = tuple(map(Fraction, (1, 6, 12, 16, 18, 20, 24)))
"""in, level, square to the eave; lengths for others add up from these, 1 in for every inch over."""
OUT_HEADS = tuple(text.rational(out) for out in OVERHANGS_IN)
NEVER_NOTCHED = tuple(int(size.depth_in <= LEAST_STOCK_UNDER_A_TAIL_IN) for size in INCHES.stocks)
"""Sizes of which any notch leaves less than the code asks for under a tail."""
THIN_SAID = '; marks: thin: 1 where any notch leaves under 3 1/2 in'


@dataclass(frozen=True, slots=True)
class TailRow:
    """Tails of one kind of rafter at one pitch."""

    pitch: Pitch
    tail_overhang: tuple[Figure, ...]
    """in, along the top edge, plate line (hip: corner of the plates, on its center line) to the plumb line of the
    tail's end, where a hip has its point, OVERHANGS_IN of the COMMON in turn."""


@dataclass(frozen=True, slots=True)
class PlumbTailCutRow:
    """The plumb end of a common's tail at one pitch."""

    MARKED: ClassVar[tuple[str, ...]] = ('plumb_cut',)
    pitch: Pitch
    plumb_cut: tuple[Figure, ...]
    """in, PLUMB, top edge to underside, one figure a size of lumber.INCHES.stocks."""
    thin: tuple[int, ...]
    """One a size: 1 where any notch at all leaves less stock than the code asks for under a tail, else 0."""


@dataclass(frozen=True, slots=True)
class SquareTailCutRow:
    """The square end of a common's tail at one pitch."""

    MARKED: ClassVar[tuple[str, ...]] = ('lower_corner_in',)
    pitch: Pitch
    lower_corner_in: tuple[Figure, ...]
    """in, LEVEL, from the upper corner of a SQUARE cut in to the plumb line of its lower corner, one a size."""
    thin: tuple[int, ...]
    """As in PlumbTailCutRow."""


@dataclass(frozen=True, slots=True)
class FallRow:
    """How far a tail falls at one pitch."""

    pitch: Pitch
    fall_overhang: tuple[Figure, ...]
    """in, PLUMB, top edge at the plate line to top edge at the tail's end, OVERHANGS_IN in turn."""


def common_rows(settings: Settings) -> list[TailRow]:
    """Return the tails of commons and jacks."""
    return [
        TailRow(pitch, parts([tail.common_tail(out, pitch.slope) for out in OVERHANGS_IN], settings))
        for pitch in settings.pitches
    ]


def hip_rows(settings: Settings) -> list[TailRow]:
    """Return the tails of regular hips and valleys for the commons' overhangs."""
    return [
        TailRow(
            pitch,
            parts(
                [tail.hip_tail(out, pitch.corner) for out in OVERHANGS_IN],
                settings,
            ),
        )
        for pitch in settings.pitches
    ]


def fall_rows(settings: Settings) -> list[FallRow]:
    """Return the falls of tails."""
    return [
        FallRow(pitch, parts([tail.fall(out, pitch.slope) for out in OVERHANGS_IN], settings))
        for pitch in settings.pitches
    ]


def plumb_cut_rows(settings: Settings) -> list[PlumbTailCutRow]:
    """Return how long plumb tail cuts are, by stock."""
    return [
        PlumbTailCutRow(
            pitch,
            parts([tail.plumb_cut_length(size.depth_in, pitch.slope) for size in INCHES.stocks], settings),
            NEVER_NOTCHED,
        )
        for pitch in settings.pitches
    ]


def square_cut_rows(settings: Settings) -> list[SquareTailCutRow]:
    """Return how far square tail cuts set the lower corner in, by stock."""
    return [
        SquareTailCutRow(
            pitch,
            parts([tail.square_cut_set_in(size.depth_in, pitch.slope) for size in INCHES.stocks], settings),
            NEVER_NOTCHED,
        )
        for pitch in settings.pitches
    ]


def listed(settings: Settings) -> list[Table]:
    """Return the tables of this group."""
    by_out = ('pitch', *OUT_HEADS)
    return [
        Table(
            'tail',
            'tail-common',
            'Tails of commons and hip jacks',
            by_out,
            'inches along the top edge, plate line to tail end, by the level overhang',
            common_rows,
        ),
        Table(
            'tail',
            'tail-hip',
            'Tails of hips and valleys',
            by_out,
            'inches along the top edge on its center line, corner of the plates to where the eave lines meet: to a '
            "hip's point, a valley's hollow; by the level overhang of the commons",
            hip_rows,
        ),
        Table(
            'tail',
            'tail-fall',
            'Fall of tails',
            by_out,
            'inches, plumb, top edge at the plate line to top edge at the end',
            fall_rows,
        ),
        Table(
            'tail',
            'tail-plumb-cut',
            'Plumb tail cuts',
            ('pitch', *SIZE_HEADS, *THIN_HEADS),
            f'inches, plumb, top edge to underside{THIN_SAID}',
            plumb_cut_rows,
        ),
        Table(
            'tail',
            'tail-square-cut',
            'Square tail cuts, lower corner set in',
            ('pitch', *SIZE_HEADS, *THIN_HEADS),
            f'inches, level, upper corner of the cut to the plumb line of the lower one{THIN_SAID}',
            square_cut_rows,
        ),
    ]
