"""Rectangles, triangles that are square, braces, and finding a pitch with a level and a tape."""

from math import gcd

from fifty_digits import mp, mpf

from oracle.planes import cross, dot, line_angle, meet, size, sub


def diagonal(one, other):
    """From corner to opposite corner of a rectangle, or from end to end of a brace between two square legs."""
    return size(sub((mpf(one), mpf(0), mpf(0)), (mpf(0), mpf(other), mpf(0))))


def brace_cut(leg, other):
    """On a brace's side, where it meets the first leg: from the line square across to that leg."""
    brace = sub((mpf(leg), mpf(0), mpf(0)), (mpf(0), mpf(other), mpf(0)))
    return line_angle(cross(brace, (0, 0, 1)), (mpf(1), mpf(0), mpf(0)))


def whole_triangles(longest):
    """Return the right triangles of whole sides without a common part, the longest side at most so long."""
    return [
        (a, b, c)
        for a in range(1, longest)
        for b in range(a, longest)
        for c in range(b, longest + 1)
        if a * a + b * b == c * c and gcd(a, b) == 1
    ]


def rise_of_degrees(degrees):
    """The rise of a line so many degrees from level over a foot of level run."""
    turn = mp.radians(mpf(degrees))
    along = (mp.cos(turn), mpf(0), mp.sin(turn))
    return 12 * along[2] / along[0]


def level_gap(place, long):
    """A level that lies on the roof at its upper end: from its free end's underside down to the roof, plumb."""
    upper, lower = (meet(place.roof.a, place.along_a(0), place.across_a(y)) for y in (mpf(long), mpf(0)))
    return dot(sub(upper, lower), (0, 0, 1))
