"""The ridge: how high it stands and how long it is."""

from __future__ import annotations

from fractions import Fraction

from tablegen.geometry.corner import Corner, run_b
from tablegen.numbers.exact import Exact, exact


def top_of_planes(run_in: Exact | Fraction, height_in: Exact, slope: Exact) -> Exact:
    """Return the height of the two roof planes' meeting line, in, PLUMB over the plate's top.

    Given:
        run_in     level, plate line to ridge center line, in
        height_in  height above plate of the rafters, in

    Source: the rise over the whole run, and what stands above the plate.
    """
    return slope * run_in + height_in


def sits_down(ridge_thickness_in: Fraction, slope: Exact) -> Exact:
    """Return how far a square-topped ridge is set below that line, in, PLUMB, so its edges meet the planes.

    Source: its edges stand half its thickness from the center line, where the planes are m times that lower.
    """
    return ridge_thickness_in / 2 * slope


def top_of_ridge(run_in: Fraction, height_in: Exact, ridge_thickness_in: Fraction, slope: Exact) -> Exact:
    """Return the height of the ridge board's top, in, PLUMB over the plate's top.

    Source: top_of_planes less sits_down.
    """
    return top_of_planes(run_in, height_in, slope) - sits_down(ridge_thickness_in, slope)


def hip_ridge_length(plate_length_in: Fraction, run_a_in: Fraction, at: Corner) -> Exact:
    """Return the ridge of a hip roof, in, between the points where its center line and the hips' meet.

    Given:
        plate_length_in  outside of plates, along the ridge; both ends alike, square corners
        run_a_in         level run of the main roof A, whose eaves run along plate_length_in; B is the end

    Source: each end comes in by B's run, which rises as high as A's.
    """
    return plate_length_in - 2 * run_b(run_a_in, at)


def end_past_commons(common_thickness_in: Fraction) -> Exact:
    """Return what is added to EACH end of that ridge where the hips stop between commons.

    Returned:
        in, level, from the theoretical end to the sawn end, flush with the outer faces of the last pair of
        side commons, centered on the theoretical end. The end common butts against it, shortened by just so
        much, and each hip stands in the corner of the last side common and the end common, cut to a point.

    Notes:
        1. Where end_over_plane is above 0, plane the ridge's end off to the end's plane.

    Source: half the thickness of those commons stands past their center line.
    """
    return exact(common_thickness_in / 2)


def end_past_hips(ridge_thickness_in: Fraction, hip_thickness_in: Fraction, at: Corner) -> Exact:
    """Return what is added to EACH end of that ridge where the hips are framed against its sides.

    Returned:
        in, level, from the theoretical end to where the outer edge of a hip's cheek ends on the ridge's side,
        so that the whole cheek bears; the ridge runs parallel to eave A. Each hip has ONE cheek, on its side of
        the ridge. The end common butts against the ridge's end, shortened by just so much: it is no thicker than
        the ridge, or it is clipped to both hips (shortening.end_common_clip)

    Notes:
        1. Such an end stands over the end's plane by end_over_plane: plane it off.

    Source: the hip's center line meets the side half the ridge away at t/2 · cot a past the end, and its
    outer face half the hip's thickness further over sin a. Regular: half the ridge and 0.707 of the hip.
    """
    return ridge_thickness_in / 2 / at.plan_a.tan() + hip_thickness_in / 2 / at.plan_a.sine()


def end_over_plane(past_end_in: Exact, ridge_thickness_in: Fraction, at: Corner) -> Exact:
    """Return how far the square top of that ridge stands over plane B, the end's, at its sawn end.

    Given:
        past_end_in  what the ridge runs past its theoretical end, in

    Returned:
        in, PLUMB; 0 where the end's plane clears it

    Source: out there plane B has fallen by past · mB under the line of the planes, the ridge sits down t/2 · mA.
    """
    return max(exact(0), past_end_in * at.slope_b - sits_down(ridge_thickness_in, at.slope_a))
