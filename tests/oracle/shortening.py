"""What comes off a line length for the thickness of what is met: center line to face, level or along the top edge."""

from fifty_digits import mpf

from oracle.planes import LEVEL, Plane, dot, level, meet, size, sub

RIDGE = 100
"""Run of the ridge's center in A; what comes off does not depend on it."""


def _both(start, end):
    """Return the distance of two points level, and along the line through them."""
    return size(level(sub(end, start))), size(sub(end, start))


def common_at_ridge(place, thickness):
    """Common: ridge's center line to its face, on the common's center line; level, and along the top edge."""
    return _both(*(meet(place.roof.a, place.along_a(0), cut) for cut in _ridge(place, thickness)))


def hip_at_ridge(place, thickness):
    """Hip or valley: ridge's center line to its face over A, on the hip's center line; level, and along its edge."""
    return _both(*(place.on_hip(cut) for cut in _ridge(place, thickness)))


def hip_at_common(place, thickness):
    """Hip: center line of a common of A to that one's side, on the hip's center line; level, and along its edge."""
    center = place.along_a(RIDGE)
    return _both(*(place.on_hip(cut) for cut in (center, center.moved(-mpf(thickness) / 2))))


def hip_between_commons(place, thickness):
    """Hip: the point where its line meets center lines of a common of A and of one of B, to the face met first."""
    end = place.on_hip(place.along_a(RIDGE))
    of_b = Plane(place.roof.eave_b, dot(place.roof.eave_b, end))
    faces = [center.moved(-mpf(thickness) / 2) for center in (place.along_a(RIDGE), of_b)]
    return max((_both(end, place.on_hip(face)) for face in faces), key=lambda both: both[0])


def jack_at_hip(place, thickness):
    """Jack of A: the hip's or valley's center line to its side, on the jack's center line; level, and along its edge."""
    cuts = place.hip_center, place.hip_side(thickness)
    return _both(*(meet(place.roof.a, place.along_a(97), cut) for cut in cuts))


def _ridge(place, thickness):
    return place.across_a(RIDGE), place.across_a(mpf(RIDGE) - mpf(thickness) / 2)


# The ridge of a regular hip roof -----------------------------------------------------------------------------


def past_end_between_commons(place, thickness):
    """Ridge: from the hips' meeting point on its center line to the far faces of side commons centered there, level."""
    end = place.on_hip(place.across_a(RIDGE))
    return place.along_a(dot(end, place.roof.eave_a) - mpf(thickness) / 2).height(end)


def past_end_between_hips(place, ridge, hip):
    """Ridge: from the same point to where a hip that bears on its side leaves it with its far side, level."""
    end, board, face = place.on_hip(place.across_a(RIDGE)), place.hip_board(hip), _ridge(place, ridge)[1]
    reached = [dot(meet(face, side, LEVEL), place.roof.eave_a) for side in (board.left, board.right)]
    return dot(end, place.roof.eave_a) - min(reached)


def sits_down(place, thickness):
    """Ridge, its top edges on the roof planes: from the line where the planes meet down to its square top, plumb."""
    center, face = (meet(place.roof.a, place.along_a(0), cut) for cut in _ridge(place, thickness))
    return center[2] - face[2]
