"""Setting out: diagonals of rectangles by the foot, whole triangles, braces."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from functools import partial

from tablegen.geometry import setting_out
from tablegen.numbers.exact import exact
from tablegen.numbers.figure import Figure
from tablegen.settings import Settings
from tablegen.tables.finish import deg, inches, part
from tablegen.tables.former import Table

WIDTHS_FT = ((4, 6, 8, 10, 12, 14), (16, 18, 20, 22, 24, 26), (28, 30, 32, 34, 36, 40))
"""Widths of one page's columns, ft."""
LENGTHS_FT = tuple(range(4, 30)), tuple(range(16, 42)), tuple(range(28, 54))
"""Lengths of the rows of the same page, ft."""
LONGEST_TRIANGLE = 41
BRACE_LEGS_IN = tuple(range(12, 97, 6))
OTHER_LEGS_IN = (12, 18, 24, 30, 36, 48)


@dataclass(frozen=True, slots=True)
class DiagonalRow:
    """Diagonals of the rectangles of one length."""

    length_ft: int
    diagonal_width: tuple[Figure | None, ...]
    """in, outside corner to opposite outside corner, one a width; None where the width is the longer side."""


@dataclass(frozen=True, slots=True)
class TriangleRow:
    """A right triangle with whole sides, in any unit, and its multiples."""

    short: int
    long: int
    diagonal: int
    times: tuple[str, ...]
    """'6-8-10', the same by 2, 3, 4 and 5."""


@dataclass(frozen=True, slots=True)
class BraceRow:
    """Braces from a post or plate, the first leg given."""

    leg_in: int
    equal_legs: Figure
    """in, long point to long point, both legs this long, each measured from the inner corner to a long point."""
    other_leg: tuple[Figure, ...]
    """in, the same with the other leg as in OTHER_LEGS_IN."""
    cut_other_leg: tuple[Figure, ...]
    """deg, on the brace's side from square, where it meets the FIRST leg; on the other leg 90 less this."""


def diagonal_rows(settings: Settings, page: int) -> list[DiagonalRow]:
    """Return the rows of one page, numbered from 0 like WIDTHS_FT."""
    return [
        DiagonalRow(
            length,
            tuple(
                part(setting_out.diagonal(Fraction(12 * length), Fraction(12 * width)), settings)
                if width <= length
                else None
                for width in WIDTHS_FT[page]
            ),
        )
        for length in LENGTHS_FT[page]
    ]


def triangle_rows() -> list[TriangleRow]:
    """Return the whole triangles up to a diagonal of 41."""
    return [
        TriangleRow(a, b, c, tuple(f'{k * a}-{k * b}-{k * c}' for k in (2, 3, 4, 5)))
        for a, b, c in setting_out.whole_triangles(LONGEST_TRIANGLE)
    ]


def brace_rows(settings: Settings) -> list[BraceRow]:
    """Return braces for legs of 12 to 96 in by 6."""
    rows = []
    for leg in BRACE_LEGS_IN:
        others = [Fraction(other) for other in OTHER_LEGS_IN]
        own = Fraction(leg)
        rows.append(
            BraceRow(
                leg,
                part(setting_out.diagonal(own, own), settings),
                tuple(part(setting_out.diagonal(own, other), settings) for other in others),
                tuple(deg(setting_out.brace_cut(own, other)) for other in others),
            )
        )
    return rows


def three_four_five(settings: Settings, most: int = 12) -> list[tuple[Figure, Figure, Figure]]:
    """Return 3-4-5 by 1 to so many feet, in: the two legs and the diagonal."""

    def of(k: int, side: int) -> Figure:
        return part(exact(12 * k * side), settings)

    return [(of(k, 3), of(k, 4), of(k, 5)) for k in range(1, most + 1)]


def listed(settings: Settings) -> list[Table]:
    """Return the tables of this group."""
    found = [
        Table(
            'set-out',
            f'diagonals-{page + 1}',
            f'Diagonals of rectangles, {widths[0]} to {widths[-1]} ft wide',
            ('ft', *(str(width) for width in widths)),
            f'{inches(settings)}, outside corner to opposite outside corner; sides in feet',
            partial(diagonal_rows, page=page),
            'ft',
        )
        for page, widths in enumerate(WIDTHS_FT)
    ]
    others = tuple(str(other) for other in OTHER_LEGS_IN)
    return [
        *found,
        Table(
            'set-out',
            'whole-triangles',
            'Triangles that are square',
            ('short', 'long', 'diagonal', '× 2', '× 3', '× 4', '× 5'),
            'any unit, both legs and the diagonal measured in the same one',
            lambda settings: triangle_rows(),
            '',
        ),
        Table(
            'set-out',
            'braces',
            'Braces',
            ('leg', 'equal', *others, *(f'cut {other}' for other in others)),
            f"{inches(settings)}, between the long points; legs from the inner corner to those; cut on the brace's side, "
            'from square, where it meets the first leg',
            brace_rows,
        ),
    ]
