"""The cautions that a roof's numbers call for, each with the members that call for it and its clause."""

from __future__ import annotations

from collections.abc import Iterable

from tablegen.geometry import tail
from tablegen.numbers.exact import sign
from tablegen.numbers.units import Stock
from tablegen.roof import cautions, seat
from tablegen.roof.cautions import Caution
from tablegen.roof.readings import Rows, words
from tablegen.roof.seat import Mouth
from tablegen.roof.side import Side

Called = tuple[str, Caution]
"""Who calls for a caution, and which."""


def cautions_of(side: Side, with_valley: bool = True) -> Rows:
    """Return the cautions of a corner whose two sides are alike; none may be called for."""
    return listed([*pitch('roof', side), *common('commons', side), *_hips(side, with_valley)])


def shed_cautions(side: Side) -> Rows:
    """Return the cautions of a shed, which has no ridge, hip or valley."""
    found = [(of, cautions.LOW_SHED if one is cautions.LOW_SLOPE else one) for of, one in pitch('roof', side)]
    return listed([*found, *common('rafters', side)])


def corner_cautions(a: Side, b: Side) -> Rows:
    """Return the cautions of two pitches at a corner: of either side, and of the hip and valley between them."""
    own = [
        called
        for name, side in (('A', a), ('B', b))
        for called in (*pitch(f'side {name}', side), *common(f'commons of {name}', side))
    ]
    return listed([*own, *_hips(a, True)])


def pitch(of: str, side: Side) -> list[Called]:
    """Return what the pitch alone calls for."""
    return [(of, one) for one in cautions.pitch_cautions(side.slope)]


def common(of: str, side: Side) -> list[Called]:
    """Return what the bird's mouth and the tail of commons call for."""
    if sign(side.seat_in) <= 0:
        return []
    depth = side.ask.stock.depth_in
    found = cautions.seat_cautions(depth, side.seat_in, side.overhang_in, side.slope)
    return [(of, one) for one in found]


def _hips(side: Side, with_valley: bool) -> list[Called]:
    ask = side.ask
    found = [
        *_mouth('hips dropped', seat.dropped_hip(side), side),
        *_mouth('hips backed', seat.backed_hip(side), side),
        *_depth('hips', ask.hips, side),
    ]
    if with_valley:
        found += [*_mouth('valleys', seat.valley(side), side), *_depth('valleys', ask.valleys, side)]
    return found


def _mouth(of: str, mouth: Mouth, side: Side) -> list[Called]:
    if mouth.fault:
        return []
    found = [
        *cautions.notch_cautions(mouth.stock.depth_in, mouth.notch_in, side.overhang_in),
        *cautions.bearing_cautions(mouth.seat_in),
    ]
    return [(of, one) for one in found]


def _depth(of: str, stock: Stock, side: Side) -> list[Called]:
    cut_end = tail.plumb_cut_length(side.ask.stock.depth_in, side.slope)
    return [(of, cautions.SHALLOW_HIP)] if cut_end > stock.depth_in else []


def listed(called: Iterable[Called]) -> Rows:
    """Return cautions as rows, one caution once, with everyone who calls for it."""
    found: dict[Caution, list[str]] = {}
    for of, one in called:
        found.setdefault(one, []).append(of)
    return Rows(
        'caution',
        tuple(
            (
                words('name', one.key),
                words('of', ', '.join(dict.fromkeys(members))),
                words('text', one.text),
                words('source', one.source),
            )
            for one, members in found.items()
        ),
    )
