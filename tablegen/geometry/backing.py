"""Backing, dropping and sliding: what brings a square-topped hip into the two roof planes.

Valleys are not dropped: their jacks are held up by the same amount.
"""

from __future__ import annotations

from fractions import Fraction

from tablegen.geometry.corner import Corner, hip_angle
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact


def bevel(at: Corner) -> Angle:
    """Return the backing bevel of the hip's face towards A.

    Returned:
        angle from the square top, in the section square to the hip's length

    Source: in that section plane A falls, over a level inch away from the center line, by mA cos a plumb,
    which is mA cos a · cos H square to the hip's edge: tan β = mA cos a cos H. Regular: r/Lh.
    """
    return Angle(at.slope_a * at.plan_a.cosine() * hip_angle(at).cosine())


def drop_plumb(thickness_in: Fraction, at: Corner) -> Exact:
    """Return how far a square-topped hip is lowered for plane A, in, measured PLUMB.

    Given:
        thickness_in  of the hip, in; the hip centered on the line of the corner

    Returned:
        from the top at the center line before, to the top after; its edge towards A then lies in plane A

    Source: the edge stands t/2 from the center line in plan, t/2 · cos a nearer to eave A, so plane A is
    mA times that lower there.
    """
    return thickness_in / 2 * at.slope_a * at.plan_a.cosine()


def drop_square(thickness_in: Fraction, at: Corner) -> Exact:
    """Return that same lowering in, measured SQUARE to the hip's edge: a shorter line than the plumb drop.

    Also how far a backed face goes down the side of the hip, square to its edge: t/2 · tan β.

    Source: a plumb length times cos H.
    """
    return drop_plumb(thickness_in, at) * hip_angle(at).cosine()


def slide(thickness_in: Fraction, at: Corner) -> Exact:
    """Return how far the hip is moved sideways so that one drop serves both planes.

    Returned:
        in, level, square to the hip in plan; above 0 towards eave A, below 0 towards eave B: always towards
        the lower pitch. The hip's center line then misses the corner of the plates by that much.

    Source: with the hip moved by e towards A its edges stand t/2 + e and t/2 − e from the corner's line, and
    the planes are equally low there if (t/2 + e) mA cos a = (t/2 − e) mB cos b. With mA sin a = mB sin b
    that is e = t/2 · (tan a − tan b)/(tan a + tan b) = t/2 · sin(a − b)/sin C.
    """
    apart = at.plan_a.sine() * at.plan_b.cosine() - at.plan_a.cosine() * at.plan_b.sine()
    return thickness_in / 2 * apart / at.sine


def drop_when_slid(thickness_in: Fraction, at: Corner) -> Exact:
    """Return the one plumb drop, in, of a hip moved by slide(), the same for both edges.

    Source: t tan H / (tan a + tan b), from the same equation; tan a + tan b = sin C / (cos a cos b).
    """
    return thickness_in * at.hip_slope * at.plan_a.cosine() * at.plan_b.cosine() / at.sine


def gap_when_dropped(thickness_in: Fraction, at: Corner) -> Exact:
    """Return how far the hip's edge towards A lies UNDER plane A once the hip is dropped by the greater drop.

    Returned:
        in, PLUMB; 0 on the side that has the greater drop, the steeper one at a square corner

    Source: the difference of the two drops.
    """
    own = drop_plumb(thickness_in, at)
    return max(own, drop_plumb(thickness_in, at.turned())) - own


def slid_jack(thickness_in: Fraction, at: Corner) -> Exact:
    """Return what sliding the hip adds to the jacks of side A.

    Given:
        thickness_in  of the hip, in

    Returned:
        in, level along the jack; below 0 where they become shorter: on the side of the lower pitch, towards which
        the hip slides; the jacks of the other side, of the corner turned, become longer

    Source: the hip's line has moved by the slide, square to itself; the jack crosses it at 90 − a: over cos a.
    """
    return -slide(thickness_in, at) / at.plan_a.cosine()


def slid_hip_at_ridge(thickness_in: Fraction, at: Corner) -> Exact:
    """Return what sliding the hip adds to its own length at a ridge that runs parallel to eave A.

    Returned:
        in, level along the hip, on its center line; below 0 where it becomes shorter

    Source: moved towards eave A, it meets the ridge's side later by the slide over tan a.
    """
    return slide(thickness_in, at) / at.plan_a.tan()
