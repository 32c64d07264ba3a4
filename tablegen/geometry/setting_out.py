"""Setting out: diagonals that make a rectangle square, whole-number triangles, and braces."""

from __future__ import annotations

from fractions import Fraction
from math import gcd

from tablegen.errors import BookError
from tablegen.messages import message
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, exact, root


def diagonal(length_in: Fraction, width_in: Fraction) -> Exact:
    """Return the diagonal of a square-cornered rectangle, or a brace between two legs, in.

    Given:
        length_in, width_in  in, level or plumb, measured to the same points as the diagonal

    Source: the right triangle.
    """
    return root(length_in * length_in + width_in * width_in)


def brace_cut(leg_in: Fraction, other_leg_in: Fraction) -> Angle:
    """Return the cut of a brace where it meets the FIRST leg, on its side, from the line square across.

    Source: the brace leans from the first leg by atan(other/leg), and its end lies along that leg: the cut is
    the complement of that. Equal legs: 45 degrees.
    """
    return Angle(exact(leg_in / other_leg_in))


def whole_triangles(longest: int) -> list[tuple[int, int, int]]:
    """Return the right triangles with whole sides and no common measure, up to a longest side.

    Returned:
        (short, long, diagonal), shortest diagonal first: (3, 4, 5), (5, 12, 13), (8, 15, 17)…; each multiplies
        by any number: 3-4-5 by 3 is 9-12-15

    Source: Euclid: u² − v², 2uv, u² + v² for coprime u > v of which one is even.
    """
    found = []
    u = 2
    while u * u < longest:
        for v in range(1, u):
            hypotenuse = u * u + v * v
            if (u - v) % 2 and gcd(u, v) == 1 and hypotenuse <= longest:
                legs = sorted((u * u - v * v, 2 * u * v))
                found.append((legs[0], legs[1], hypotenuse))
        u += 1
    return sorted(found, key=lambda sides: (sides[2], sides[0]))


def lean(length_in: Fraction, diagonal_in: Fraction, other_diagonal_in: Fraction) -> Exact:
    """Return how far out of square a four-sided layout with equal opposite sides is.

    Given:
        length_in                       of the side along which it is told, in
        diagonal_in, other_diagonal_in  as measured, in

    Returned:
        in, along that side: how far the opposite side stands past square along its own length, at the end
        that the first diagonal reaches; below 0 if the second is the longer. Pushed back by so much, both
        diagonals are equal.

    Source: for sides p and q at an angle γ the diagonals' squares differ by 4 p q cos γ, and q cos γ is the
    lean: (d1² − d2²) / 4p.
    """
    if length_in <= 0:
        raise BookError('sides', message('error.side_without_length'), message('error.above_zero'))
    return exact((diagonal_in**2 - other_diagonal_in**2) / (4 * length_in))
