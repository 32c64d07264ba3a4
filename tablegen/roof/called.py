"""The cautions that a roof's numbers call for, each with the members that call for it and its clause."""

from __future__ import annotations

from collections.abc import Iterable
from enum import StrEnum

from msgspec import Struct

from tablegen.geometry import tail
from tablegen.numbers.units import Stock
from tablegen.roof import cautions, seat
from tablegen.roof.cautions import Caution
from tablegen.roof.seat import Notch
from tablegen.roof.side import Side


class Of(StrEnum):
    """Who calls for a caution."""

    ROOF = 'roof'
    SIDE_A = 'side_a'
    SIDE_B = 'side_b'
    COMMONS = 'commons'
    COMMONS_OF_A = 'commons_of_a'
    COMMONS_OF_B = 'commons_of_b'
    RAFTERS = 'rafters'
    HIPS = 'hips'
    HIPS_DROPPED = 'hips_dropped'
    HIPS_BACKED = 'hips_backed'
    VALLEYS = 'valleys'


class Called(Struct, frozen=True):
    """A caution, and everyone who calls for it."""

    caution: Caution
    of: tuple[Of, ...]


Calls = list[tuple[Of, Caution]]


def cautions_of(side: Side, with_valley: bool = True) -> tuple[Called, ...]:
    """Return the cautions of a corner whose two sides are alike; none may be called for."""
    return _gathered(
        [
            *_pitch(Of.ROOF, side),
            *_mouth(Of.COMMONS, seat.common_notch(side), side),
            *_hips(side, with_valley),
        ]
    )


def shed_cautions(side: Side) -> tuple[Called, ...]:
    """Return the cautions of a shed, which has no ridge, hip or valley."""
    found = [
        (of, cautions.LOW_SHED if one is cautions.LOW_SLOPE else one) for of, one in _pitch(Of.ROOF, side)
    ]
    return _gathered([*found, *_mouth(Of.RAFTERS, seat.common_notch(side), side)])


def corner_cautions(a: Side, b: Side) -> tuple[Called, ...]:
    """Return the cautions of two pitches at a corner: of either side, and of the hip and valley between them."""
    own = [
        called
        for of, commons, side in (
            (Of.SIDE_A, Of.COMMONS_OF_A, a),
            (Of.SIDE_B, Of.COMMONS_OF_B, b),
        )
        for called in (*_pitch(of, side), *_mouth(commons, seat.common_notch(side), side))
    ]
    return _gathered([*own, *_hips(a, True)])


def _pitch(of: Of, side: Side) -> Calls:
    """Return what the pitch alone calls for."""
    return [(of, one) for one in cautions.pitch_cautions(side.slope)]


def _hips(side: Side, with_valley: bool) -> Calls:
    boards = side.boards
    found = [
        *_mouth(Of.HIPS_DROPPED, seat.dropped_hip(side), side),
        *_mouth(Of.HIPS_BACKED, seat.backed_hip(side), side),
        *_depth(Of.HIPS, boards.hips, side),
    ]
    if with_valley:
        found += [*_mouth(Of.VALLEYS, seat.valley(side), side), *_depth(Of.VALLEYS, boards.valleys, side)]
    return found


def _mouth(of: Of, mouth: Notch, side: Side) -> Calls:
    return [(of, one) for one in mouth.cautions(side.overhang_in)]


def _depth(of: Of, stock: Stock, side: Side) -> Calls:
    cut_end = tail.plumb_cut_length(side.boards.stock.depth_in, side.slope)
    return [(of, cautions.SHALLOW_HIP)] if cut_end > stock.depth_in else []


def _gathered(calls: Iterable[tuple[Of, Caution]]) -> tuple[Called, ...]:
    """Return cautions, one caution once, with everyone who calls for it."""
    found: dict[Caution, list[Of]] = {}
    for of, one in calls:
        found.setdefault(one, []).append(of)
    return tuple(Called(one, tuple(dict.fromkeys(of))) for one, of in found.items())
