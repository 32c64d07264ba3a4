"""Bird's mouths: stock laid on plates whose tops are at z = 0, their outer faces plumb under the eaves' lines."""

from fifty_digits import mpf

from oracle.planes import LEVEL, ORIGIN, Plane, dot, meet, plane, scaled, square_top, unit


def _underside(place, seat):
    """Return the underside of a common of A that leaves the plate's top so far inside its outer face."""
    inner = scaled(place.roof.in_a, mpf(seat))
    return Plane(place.roof.a.normal, dot(place.roof.a.normal, inner))


def _top(place, depth, seat):
    return _underside(place, seat).moved(mpf(depth))


def heel(place, seat):
    """Common: from the seat down to its underside at the plate's outer face, plumb."""
    return -meet(_underside(place, seat), place.along_a(0), place.across_a(0))[2]


def height_above_plate(place, depth, seat):
    """Common: from the plate's top to the rafter's top edge over the plate line, plumb."""
    return meet(_top(place, depth, seat), place.along_a(0), place.across_a(0))[2]


def seat_of_height(place, depth, height):
    """Common: the level seat that puts its top edge so high over the plate line, outside of plate inwards."""
    underside = place.roof.a.lifted(mpf(height)).moved(-mpf(depth))
    return dot(meet(underside, LEVEL, place.along_a(0)), place.roof.in_a)


def notch(place, seat):
    """Common: from its underside to the notch's corner, square to the edge."""
    return _underside(place, seat).height(ORIGIN)


def left(place, depth, seat):
    """Common: from the notch's corner to the top edge, square to it."""
    return -_top(place, depth, seat).height(ORIGIN)


def longest(place, depth, share):
    """Common: the level seat whose notch takes that share of the depth, square to the edge."""
    # the underside passes share·depth below the plate's outer upper edge; where it comes up to the plate's top
    underside = place.roof.a.moved(-mpf(depth) * share)
    reached = meet(underside, LEVEL, place.along_a(0))
    return dot(reached, place.roof.in_a)


# Hips and valleys: their tops are held by the commons' height above plate --------------------------------------


def _through(place, height):
    """Return the square top of a hip or valley whose center line is on the commons' planes, raised so high."""
    return square_top((mpf(0), mpf(0), mpf(height)), place.hip)


def _dropped(place, height, thickness):
    """Return the square top lowered until neither of its edges stands over the commons' planes."""
    top = _through(place, height)
    board = place.hip_board(thickness)
    station = plane(ORIGIN, place.hip_level)
    over = []
    for side, roof in ((board.right, place.roof.a), (board.left, place.roof.b)):
        over.append(meet(side, top, station)[2] - meet(side, roof.lifted(mpf(height)), station)[2])
    return top.lifted(-max(over))


def _at_corner(place, top):
    return meet(top, place.hip_center, plane(ORIGIN, place.hip_level))[2]


def hip_height(place, height, thickness=0):
    """Hip: from the plates' top to its top on its center line over the plates' corner, plumb; dropped if it has sides."""
    top = _dropped(place, height, thickness) if thickness else _through(place, height)
    return _at_corner(place, top)


def hip_heel(place, height, depth, thickness=0):
    """Hip, dropped if it has sides, else backed: from its seat down to its underside at the plates' corner, plumb."""
    top = _dropped(place, height, thickness) if thickness else _through(place, height)
    return -_at_corner(place, top.moved(-mpf(depth)))


def hip_seat(place, height, depth, thickness=0):
    """Hip: from the plates' corner inwards to where its underside leaves the plates' top, level along it."""
    top = _dropped(place, height, thickness) if thickness else _through(place, height)
    inner = meet(top.moved(-mpf(depth)), place.hip_center, LEVEL)
    return place.along_hip(inner)


def valley_back(place, thickness):
    """Valley: how far outwards of the inside corner its sides meet the plates' outer faces, level along it."""
    board = place.hip_board(thickness)
    faces = (place.across_a(0), Plane(place.roof.in_b, mpf(0)))
    return max(
        -place.along_hip(meet(side, face, LEVEL)) for side in (board.left, board.right) for face in faces
    )


def _valley(place, height, depth, thickness):
    """Return the point of a valley's underside at its heel, and where the underside leaves the plates' top."""
    underside = _through(place, height).moved(-mpf(depth))
    out = plane(scaled(unit(place.hip_level), -valley_back(place, thickness)), place.hip_level)
    return meet(underside, place.hip_center, out), meet(underside, place.hip_center, LEVEL)


def valley_heel(place, height, depth, thickness):
    """Valley, its heel square and clear of the plates: from its seat down to its underside at the heel, plumb."""
    return -_valley(place, height, depth, thickness)[0][2]


def valley_seat(place, height, depth, thickness):
    """Valley: from its heel, outwards of the inside corner, to where its underside leaves the plates, level along it."""
    outer, inner = _valley(place, height, depth, thickness)
    return place.along_hip(inner) - place.along_hip(outer)


def height_of_seat(place, depth, seat):
    """Hip notched with a level seat of its own from the plates' corner: its top's height there, plumb, center line."""
    inner = scaled(place.hip_level, mpf(seat))
    return _at_corner(place, square_top(inner, place.hip).moved(mpf(depth)))
