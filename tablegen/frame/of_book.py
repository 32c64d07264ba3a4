"""A book of roofs of the reader's own: it is of their lumber, so that what they are framed with stands on its pages."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from msgspec.structs import replace

from tablegen.errors import BookError
from tablegen.frame.asked import Asked
from tablegen.frame.frame import frame
from tablegen.messages import message
from tablegen.numbers import text
from tablegen.numbers.units import Stock
from tablegen.roof.member import Kind
from tablegen.settings import Settings

KEYS = {
    'ridge_thickness': 'stock.ridge',
    'hip_thickness': 'stock.hip',
    'rafter_thickness': 'stock.rafter',
    'rafters': 'stock.rafters',
    'hips': 'stock.hips',
    'valleys': 'stock.valleys',
    'seat': 'stock.seat',
}
"""Fields of a book's settings that a roof has a say in, and their keys."""


def with_roofs(settings: Settings, roofs: Sequence[tuple[str, Asked]]) -> Settings:
    """Return the settings of a book of some roofs, their lumber in place of its own.

    Given:
        roofs  what each file is called, and what it asks

    Errors:
        BookError for sizes that no roof has, and for roofs whose lumber is not one: a book has one of each
    """
    said: dict[str, Any] = {}
    for file, asked in roofs:
        for field, value in _lumber(asked, file).items():
            if said.setdefault(field, value) != value:
                problem = message(
                    'setting.two_lumbers', file=file, value=_told(value), other=_told(said[field])
                )
                raise BookError(KEYS[field], problem, '', message('setting.roof_each'))
    names, asked_for = zip(*roofs, strict=True)
    return replace(settings, roofs=names, own_roofs=asked_for, **said)


def _lumber(asked: Asked, file: str) -> dict[str, Any]:
    """Return the settings' fields by what a roof is framed with; none of what it does not have."""
    try:
        kinds = {one.member.kind for one in frame(asked).members}
    except BookError as fault:
        raise fault.at(f'{file}: {fault.place}') from None
    found: dict[str, Any] = {
        'rafters': asked.rafters,
        'rafter_thickness': asked.rafters.thickness_in,
        'seat': asked.seat_in,
    }
    if asked.ridge:
        found['ridge_thickness'] = asked.ridge.thickness_in
    if Kind.HIP in kinds:
        found |= {'hips': asked.hips, 'hip_thickness': asked.hips.thickness_in}
    if Kind.VALLEY in kinds:
        found |= {'valleys': asked.valleys, 'hip_thickness': asked.valleys.thickness_in}
    return found


def _told(value: Any) -> str:
    return value.name if isinstance(value, Stock) else text.run(value)
