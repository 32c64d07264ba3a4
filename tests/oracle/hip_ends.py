"""Where the ends of hips, valleys, jacks and end commons are cut, and what a slid or dropped hip changes."""

from fifty_digits import mp, mpf

from oracle.cuts import drop_plumb
from oracle.planes import LEVEL, Plane, cross, dot, level, meet, plane, size, sub, unit
from oracle.unequal import slide

RUN = 100
"""Run of the ridge's center in A; nothing here depends on it."""


def shed_on_ledger(place, thickness):
    """Shed's rafter: the wall that its run goes to, to the face of the ledger on that wall; level."""
    ends = [meet(place.roof.a, place.along_a(0), place.across_a(RUN - back)) for back in (0, mpf(thickness))]
    return size(level(sub(*ends)))


def _started(place, thickness, face):
    """Return from the center line's mark to the plumb line of a side, against a plumb face: level, and along the edge."""
    board = place.hip_board(thickness)
    mark, corner = meet(board.center, board.top, face), meet(board.right, board.top, face)
    across = plane(corner, board.direction())
    foot = meet(board.right, board.top, plane(mark, board.direction()))
    assert abs(across.height(corner)) < mpf(10) ** -30
    return size(level(sub(corner, foot))), size(sub(corner, foot))


def set_back(place, thickness):
    """Hip or valley against a ridge over A, A's fascia or a common of B: mark on its center line to its side's line."""
    return _started(place, thickness, place.across_a(RUN))


def peak_set_back(place, thickness):
    """Hip at the peak of a many-sided roof: its point on the axis back to the plumb line of each side; level."""
    axis = place.on_hip(place.across_a(RUN))
    return _started(place, thickness, place.along_a(dot(axis, place.roof.eave_a)))[0]


def jack_points_level(place, thickness):
    """Jack of A: short to long point of its cheek, level."""
    board, side = place.rafter(97, thickness), place.hip_side(1)
    ends = [dot(meet(face, board.top, side), place.roof.in_a) for face in (board.left, board.right)]
    return abs(ends[0] - ends[1])


def jack_reach(place, thickness):
    """Jack of A: the width of its cheek in plan, which a blade must reach through."""
    board, side = place.rafter(97, thickness), place.hip_side(1)
    return size(sub(*(meet(face, side, LEVEL) for face in (board.left, board.right))))


def hip_reach(place, thickness):
    """Hip with one cheek against a ridge over A: the width of that cheek in plan."""
    board, face = place.hip_board(thickness), place.across_a(RUN)
    return size(sub(*(meet(side, face, LEVEL) for side in (board.left, board.right))))


def peak_reach(place, thickness):
    """Hip at the peak: the width of one of its two cheeks in plan."""
    axis, board = place.on_hip(place.across_a(RUN)), place.hip_board(thickness)
    face = place.along_a(dot(axis, place.roof.eave_a))
    return size(sub(*(meet(side, face, LEVEL) for side in (board.center, board.right))))


def point_aside(place, of_a, of_b):
    """Hip between a common of A and one of B: its center line to the corner of those two, level, square; B's side."""
    end = place.on_hip(place.across_a(RUN))
    faces = [
        Plane(eave, dot(eave, end) - mpf(thick) / 2)
        for eave, thick in ((place.roof.eave_a, of_a), (place.roof.eave_b, of_b))
    ]
    return place.hip_center.height(meet(*faces, LEVEL))


def gap_under_a(place, thickness):
    """Hip dropped until BOTH its edges are in or under the planes: from its edge towards A up to plane A, plumb."""
    return drop_plumb(place.turned, thickness) - drop_plumb(place, thickness)


def _moved(place, thickness):
    return place.hip_center.moved(-slide(place, thickness))


def slid_jack_shorter(place, thickness):
    """Jack of A against a hip slid towards eave A: what it loses, level, and along its edge."""
    ends = [
        meet(place.roof.a, place.along_a(61), cut) for cut in (place.hip_center, _moved(place, thickness))
    ]
    return size(level(sub(*ends))), size(sub(*ends))


def slid_jack_longer(place, thickness):
    """Jack of B against that hip: what it gains, level, and along its edge."""
    across = Plane(place.roof.eave_b, mpf(61))
    ends = [meet(place.roof.b, across, cut) for cut in (place.hip_center, _moved(place, thickness))]
    return size(level(sub(*ends))), size(sub(*ends))


def slid_hip_longer(place, thickness):
    """That hip at a ridge over A: how much further its center line goes, level."""
    here, there = (
        dot(meet(cut, place.across_a(RUN), LEVEL), place.hip_level)
        for cut in (place.hip_center, _moved(place, thickness))
    )
    return there - here


def hip_cheek_at_fascia(place):
    """Hip's tail, square top: from the line square across to the line of A's fascia."""
    board = place.hip_board(1)
    fascia = unit(cross(place.across_a(-12).normal, board.top.normal))
    return abs(mp.pi / 2 - mp.acos(abs(dot(fascia, board.direction()))))
