"""Members as they are sawn: from the plate line or the plates' corner to the plumb lines where saw cuts start."""

from fifty_digits import mpf

from oracle.planes import (
    LEVEL,
    ORIGIN,
    UP,
    Plane,
    along,
    cross,
    dot,
    level,
    line_angle,
    meet,
    plane,
    size,
    sub,
    unit,
)

RIGHT, CENTER, LEFT = 'right', 'center', 'left'
"""Of a hip or valley seen uphill. A hip's right side looks at A; of a valley the left one does."""


def _line(board, side):
    return getattr(board, side), board.top


def _here(place):
    """Return the plumb plane through the plates' corner, square to the hip in plan: lengths begin there."""
    return plane(ORIGIN, place.hip_level)


def to_cut(place, thickness, side, cut):
    """Hip or valley: plates' corner to where a side, or the center line, meets a plumb plane: level, and along the top."""
    board = place.hip_board(thickness)
    start, end = (meet(*_line(board, side), at) for at in (_here(place), cut))
    return size(level(sub(end, start))), size(sub(end, start))


def ridge_face(place, run, ridge):
    """Return the face of a ridge over A that looks at A, its center over a run of A."""
    return place.across_a(mpf(run) - mpf(ridge) / 2)


def common_face(place, run, common):
    """Return the side, towards the corner, of a common of A that stands where the hip's line ends over a run of A."""
    end = place.on_hip(place.across_a(run))
    return Plane(place.roof.eave_a, dot(end, place.roof.eave_a) - mpf(common) / 2)


def ridge_face_b(place, run, ridge):
    """Return the face of a ridge over B that looks at B, at the same end of the hip."""
    end = place.on_hip(place.across_a(run))
    return Plane(place.roof.in_b, dot(end, place.roof.in_b) - mpf(ridge) / 2)


def common_face_b(place, run, common):
    """Return the side, towards the corner, of a common of B at the same end."""
    end = place.on_hip(place.across_a(run))
    return Plane(place.roof.eave_b, dot(end, place.roof.eave_b) - mpf(common) / 2)


def fascia(place, overhang):
    """Return the plumb plane of A's tail ends."""
    return place.across_a(-mpf(overhang))


def fascia_b(place, overhang):
    """Return that of B's tail ends over another overhang."""
    return Plane(place.roof.in_b, -mpf(overhang))


def cheek(place, thickness, sides, cut):
    """Hip or valley: between where a plumb cut starts on one of its lines and on another: level, and along the top edge."""
    one, other = (to_cut(place, thickness, side, cut) for side in sides)
    return abs(one[0] - other[0]), abs(one[1] - other[1])


def towards_tail(place, thickness, side, cut):
    """Hip's or valley's tail: plates' corner out to where a side, or the center line, meets a fascia, along the top."""
    return to_cut(place, thickness, side, cut)[1]


def reach(place, thickness, sides, cut):
    """Hip or valley: the width of a cheek in plan between two of its lines: what a blade has to reach through."""
    board = place.hip_board(thickness)
    ends = [meet(getattr(board, side), cut, LEVEL) for side in sides]
    return size(sub(*ends))


def end_clip(place, ridge, common, hip):
    """End common of A thicker than the ridge over B it meets: how far back from the ridge's end it is clipped, level.

    The hip's far side leaves the ridge's face at the ridge's end; the common's side stands further out and meets it
    further down.
    """
    end = place.on_hip(place.across_a(100))
    far = place.hip_board(hip).right  # the side away from B
    faces = [Plane(place.roof.in_b, dot(end, place.roof.in_b) + mpf(t) / 2) for t in (ridge, common)]
    mirrored = [Plane(face.normal, 2 * dot(end, face.normal) - face.offset) for face in faces]
    points = [meet(far, face, LEVEL) for face in mirrored]
    return abs(dot(sub(*points), place.roof.in_a))


def past_end_over_b(place, ridge, hip):
    """Ridge over B: where the hips' lines meet on its center line to where their far sides leave its faces, level."""
    end, board = place.on_hip(place.across_a(100)), place.hip_board(hip)
    face = Plane(place.roof.in_b, dot(end, place.roof.in_b) - mpf(ridge) / 2)
    reached = [dot(meet(face, side, LEVEL), place.roof.in_a) for side in (board.left, board.right)]
    return dot(end, place.roof.in_a) - min(reached)


# Jacks -------------------------------------------------------------------------------------------------------


def _up(place, point):
    """Return how far up plane A a point is, along its slope."""
    return dot(point, unit(cross(place.roof.a.normal, place.roof.eave_a)))


def hip_jack(place, distance, hip, rafter):
    """Hip jack of A: plate line to the hip's center line, and to its long and its short point, along the top edge."""
    board, side = place.rafter(distance, rafter), place.hip_board(hip).right
    foot = _up(place, meet(board.center, board.top, place.across_a(0)))
    line = _up(place, meet(board.center, board.top, place.hip_center)) - foot
    points = [_up(place, meet(edge, board.top, side)) - foot for edge in (board.left, board.right)]
    return line, max(points, key=abs), min(points, key=abs)


def valley_jack(place, distance, run, valley, rafter, ridge):
    """Valley jack of A: ridge's center line to the valley's; its ridge cut to its long and short point, along the top."""
    board, side = place.rafter(distance, rafter), place.hip_board(valley).left
    head, cut = (
        _up(place, meet(board.center, board.top, at))
        for at in (place.across_a(run), ridge_face(place, run, ridge))
    )
    line = head - _up(place, meet(board.center, board.top, place.hip_center))
    points = [cut - _up(place, meet(edge, board.top, side)) for edge in (board.left, board.right)]
    return line, max(points), min(points)


# Boards along an eave that turn a corner of two pitches --------------------------------------------------------


def mirror(place, face_a, face_b):
    """Return the plane that each of two boards' faces is the other's image in: their cut."""
    return plane(ORIGIN, sub(face_a.normal, face_b.normal))


def standing_plumb(place):
    """Return the faces of boards along both eaves that stand plumb."""
    return Plane(place.roof.in_a, mpf(0)), Plane(place.roof.in_b, mpf(0))


def square_to_slope(place):
    """Return the faces of boards along both eaves that stand square to their slopes."""
    up_b = unit(cross(place.roof.eave_b, place.roof.b.normal))
    return plane(ORIGIN, unit(cross(place.roof.a.normal, place.roof.eave_a))), plane(ORIGIN, up_b)


def in_the_planes(place):
    """Return the faces of boards along both eaves that lie in the roof planes."""
    return place.roof.a, place.roof.b


def miter(place, faces):
    """On A's board: from the line square across to the line where the two faces meet."""
    return line_angle(along(*faces), cross(faces[0].normal, place.roof.eave_a))


def rise_over(place, height):
    """Return plane A raised over the plates."""
    return place.roof.a.lifted(mpf(height))


def soffit(place, depth, height, overhang, face):
    """Tail with a level cut so far, plumb, below its top edge at the end: that cut's length in to the underside, and how
    far, plumb, it lies below the plates' tops."""
    top = rise_over(place, height)
    end = meet(top, fascia(place, overhang), place.along_a(0))
    cut = Plane(UP, end[2] - mpf(face))
    inner = meet(cut, top.moved(-mpf(depth)), place.along_a(0))
    return dot(inner, place.roof.in_a) - dot(end, place.roof.in_a), -cut.offset


def square_cut(place, depth):
    """Common's tail cut square: its lower corner in from the upper one's plumb line, level; and below it, plumb."""
    edge = along(place.roof.a, place.along_a(0))
    lower = meet(plane(ORIGIN, edge), place.roof.a.moved(-mpf(depth)), place.along_a(0))
    return size(level(lower)), abs(lower[2])
