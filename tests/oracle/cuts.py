"""Cuts: the angles that cut planes make on the faces of members, cut from the side or marked on the top edge."""

from fifty_digits import mp, mpf

from oracle.planes import LEVEL, ORIGIN, along, cross, cut_readings, dihedral, line_angle, meet, plane

RIGHT = mp.pi / 2
FAR = 100
"""Where the ridge or the common that is met stands: the angle does not depend on it."""
THICK = mpf(3) / 2
"""Thickness of a member whose angles do not depend on it, in."""


def _across(member):
    """Return the line square across a member's side."""
    return cross(member.left.normal, member.direction())


def plumb_cut(place):
    """Common, on its side: from the line square across to the plumb line of the ridge's face."""
    return cut_readings(place.rafter(0, THICK), place.across_a(FAR)).saw


def level_cut(place):
    """Common, on its side: from the line square across to a level line."""
    member = place.rafter(0, THICK)
    return line_angle(along(LEVEL, member.left), _across(member))


def hip_plumb_cut(place):
    """Hip or valley, on its side: from the line square across to a plumb line."""
    return cut_readings(place.hip_board(THICK), place.across_a(FAR)).saw


def hip_level_cut(place):
    """Hip or valley, on its side: from the line square across to a level line."""
    member = place.hip_board(THICK)
    return line_angle(along(LEVEL, member.left), _across(member))


def jack_cheek(place):
    """Jack of A, on its top edge: from the line square across to the line of the hip's side."""
    return RIGHT - cut_readings(place.rafter(97, THICK), place.hip_side(THICK)).top_from_edge


def jack_blade(place):
    """Jack of A, the saw's shoe on its side: the blade's tilt out of square that puts it in the hip's side."""
    return cut_readings(place.rafter(97, THICK), place.hip_side(THICK)).blade


def jack_saw(place):
    """Jack of A, on its side: from the line square across to the line of the hip's side."""
    return cut_readings(place.rafter(97, THICK), place.hip_side(THICK)).saw


def hip_cheek(place):
    """Hip, on its square top: from the line square across to the line of a ridge over A."""
    return RIGHT - cut_readings(place.hip_board(THICK), place.across_a(FAR)).top_from_edge


def hip_saw(place):
    """Hip, on its side: from the line square across to the line of a ridge over A."""
    return cut_readings(place.hip_board(THICK), place.across_a(FAR)).saw


def hip_blade(place):
    """Hip, the saw's shoe on its side: the blade's tilt out of square that puts it in a ridge over A."""
    return cut_readings(place.hip_board(THICK), place.across_a(FAR)).blade


def hip_cheek_at_common(place):
    """Hip, on its square top: from the line square across to the line of a common of A."""
    return RIGHT - cut_readings(place.hip_board(THICK), place.along_a(FAR)).top_from_edge


def hip_blade_at_common(place):
    """Hip, the saw's shoe on its side: the blade's tilt that puts it in the side of a common of A."""
    return cut_readings(place.hip_board(THICK), place.along_a(FAR)).blade


def backed_cheek_at_ridge(place):
    """Backed hip, on its face that lies in plane A: from the line square across the hip's edge to a ridge over A."""
    return RIGHT - cut_readings(place.hip_board(THICK), place.across_a(FAR), place.roof.a).top_from_edge


def backed_cheek_at_common(place):
    """Backed hip, on its face that lies in plane A: from the line square across its edge to a common of A."""
    return RIGHT - cut_readings(place.hip_board(THICK), place.along_a(FAR), place.roof.a).top_from_edge


def backing(place):
    """Hip: between its square top and plane A, in a section square to the hip."""
    return dihedral(place.hip_board(THICK).top, place.roof.a)


def _edge(place, thickness):
    """Return a point of the hip's top edge towards A, and the point of plane A plumb below it."""
    board = place.hip_board(thickness)
    station = plane(ORIGIN, place.hip_level)
    return meet(board.right, board.top, station), meet(board.right, place.roof.a, station)


def drop_plumb(place, thickness):
    """Hip, its square top's center on the line of the planes: from its top edge towards A down to plane A, plumb."""
    here, below = _edge(place, thickness)
    return here[2] - below[2]


def drop_square(place, thickness):
    """Hip: how far its square top goes down for that edge to touch plane A, measured square to the hip's edge."""
    _, below = _edge(place, thickness)
    return -place.hip_board(thickness).top.height(below)


def is_past_scale(blade):
    """Return whether a blade's tilt is more than a saw has, 45 degrees."""
    return blade > mp.pi / 4 + mpf(10) ** -30
