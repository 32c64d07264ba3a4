"""Figures of the drawn roof as the pages of its drawings say them."""

from __future__ import annotations

from layouts.words.say import N_, _
from tablegen.geometry.corner import Corner
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import length_figure
from tablegen.roof.readings import Group, Reading
from tablegen.roof.roof import RoofQuestion

WAYS = {
    'low': N_('{length} low'),
    'high': N_('{length} high'),
    'below': N_('{length} below'),
    'above': N_('{length} above'),
}
"""A length and which way it is off, by the first word of its name."""


def way(group: Group, *keys: str) -> str:
    """Return the one of some lengths that a group has, with its way, which its name begins with: '3/8 in low'."""
    (reading,) = [value for value in group.values if value.key in [f'{key}_in' for key in keys]]
    assert isinstance(reading, Reading)
    return _(WAYS[reading.key.partition('_')[0]]).format(length=reading.text)


def regular(ask: RoofQuestion) -> Corner:
    """Return the corner of a roof of one pitch."""
    return ask.pitch.corner


def inches_if_any(length: Exact, ask: RoofQuestion) -> str:
    """Return a length, '' where it is rounded to nothing."""
    return inches(length, ask) if length_figure(length, ask.measure).count else ''


def inches(length: Exact, ask: RoofQuestion) -> str:
    """Return a length with its unit."""
    return f'{length_figure(length, ask.measure).text} in'


def number(reading: Reading) -> float:
    """Return a reading for ink."""
    return float(reading.data)
