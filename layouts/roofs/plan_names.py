"""The lines of a plan with their names, on the plan itself or on a part of it that is drawn larger."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import dist

from layouts.drawings import svg
from layouts.roofs.lines import Of, PlanLine
from layouts.roofs.names import Line, Names

INK = {
    Of.PLATE: (0.8, '4 2'),
    Of.EAVE: (0.8, ''),
    Of.RAFTER: (0.5, ''),
    Of.CORNER: (1.6, ''),
    Of.LEVEL: (2.2, ''),
    Of.WALL: (2.2, ''),
}
MANY = 10
"""Names without room, past which they stand in two rows."""
SHORT = 36.0
"""Units of a line, to which no arrow is drawn on the plan: what lies about it is as short."""

Placed = tuple[PlanLine, Line]
"""A line of a plan, and where it is drawn."""


def named(
    placed: Sequence[Placed], rows: int, apart: float, frame: Sequence[Line] = ()
) -> tuple[Names, list[Placed]]:
    """Return the names of some lines that stand clear of all of them, and the lines without one: first those of hips and valleys.

    Given:
        rows   of names that follow lines' ends; 0 where none may
        apart  how far rafters stand from one another
        frame  lines that are none of the roof's
    """
    thin, faint = ([line for one, line in placed if one.of is of] for of in (Of.RAFTER, Of.PLATE))
    heavy = [line for one, line in placed if one.of not in (Of.RAFTER, Of.PLATE)]
    names, unnamed = Names([*heavy, *frame], thin, faint, rows, apart), list[Placed]()
    for of in (Of.CORNER, Of.LEVEL, Of.WALL, Of.RAFTER, Of.EAVE):
        for one, line in placed:
            if rows == 1 and len(unnamed) > MANY:
                return names, unnamed
            after, across = of in (Of.CORNER, Of.RAFTER), of in (Of.CORNER, Of.LEVEL)
            if one.of is of and one.mark and not names.put(one.mark, line, after, one.alone, across):
                unnamed.append((one, line))
    return names, unnamed


def by_other_ways(names: Names, unnamed: Sequence[Placed], least: float) -> list[PlanLine]:
    """Name lines that found no room at first: where others give way, else by an arrow; return those that find none.

    Given:
        least  units of a line to which an arrow is drawn
    """
    return [
        one
        for one, line in unnamed
        if not names.put(one.mark, line, False, one.alone, across=True)
        and not (dist(*line) >= least and names.point(one.mark, line))
    ]


def drawn(placed: Sequence[Placed], names: Names) -> Iterator[str]:
    """Return the ink of lines, as far as names leave them, and that of the names."""
    for one, line in placed:
        for piece in names.left_of(line):
            yield svg.line(*piece, *INK[one.of])
    yield from names.shapes
