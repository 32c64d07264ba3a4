"""Figures of the drawn roof as the pages of its drawings say them."""

from __future__ import annotations

from tablegen.geometry.corner import Corner
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import Figure, length_figure
from tablegen.roof.names import Why
from tablegen.roof.question import RoofQuestion


def either(*ways: tuple[str, Figure | None]) -> str:
    """Return the one of two lengths that there is, in the words that say which way it is off: '3/8 in low'."""
    return next(words.format(length=told(one)) for words, one in ways if one)


def regular(ask: RoofQuestion) -> Corner:
    """Return the corner of a roof of one pitch."""
    return ask.pitch.corner


def inches_if_any(length: Exact, ask: RoofQuestion) -> str:
    """Return a length, '' where it is rounded to nothing."""
    return inches(length, ask) if length_figure(length, ask.measure).count else ''


def inches(length: Exact, ask: RoofQuestion) -> str:
    """Return a length with its unit."""
    return f'{length_figure(length, ask.measure).text} in'


def told(length: Figure | Why | None) -> str:
    """Return a length, which the drawn roof has, with its unit."""
    assert isinstance(length, Figure)
    return f'{length.text} in'


def number(figure: Figure | Why | None) -> float:
    """Return a figure, which the drawn roof has, for ink."""
    assert isinstance(figure, Figure)
    return float(figure.decimal)
