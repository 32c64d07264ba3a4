"""Tails: from the plate line to the plumb line of the end, and the cuts there."""

from fifty_digits import mpf

from oracle.planes import ORIGIN, along, dot, level, meet, plane, size, sub


def _out(place, overhang):
    return place.across_a(-mpf(overhang))


def common_tail(place, overhang):
    """Common: from the plumb line over the plate line to the plumb line of the tail's end, along the top edge."""
    return size(meet(place.roof.a, place.along_a(0), _out(place, overhang)))


def hip_tail(place, overhang):
    """Hip or valley: from the plates' corner to the plumb line of the end over A's overhang, along its top's center."""
    return size(place.on_hip(_out(place, overhang)))


def fall(place, overhang):
    """Common: from the top edge at the plate line down to the top edge at the tail's end, plumb."""
    return -meet(place.roof.a, place.along_a(0), _out(place, overhang))[2]


def plumb_cut_length(place, depth):
    """Common: along a plumb cut, from the top edge down to the underside."""
    plumb = place.along_a(0), place.across_a(0)
    return size(sub(meet(place.roof.a, *plumb), meet(place.roof.a.moved(-mpf(depth)), *plumb)))


def square_cut_set_in(place, depth):
    """Common, its end cut square: from its upper corner in to the plumb line of its lower corner, level."""
    edge = along(place.roof.a, place.along_a(0))
    lower = meet(plane(ORIGIN, edge), place.roof.a.moved(-mpf(depth)), place.along_a(0))
    return size(level(lower))


def hip_plumb_cut_length(place, depth):
    """Hip or valley: along a plumb cut, from the middle of its square top down to its underside."""
    top = place.hip_board(mpf(3) / 2).top
    plumb = place.hip_center, plane(ORIGIN, place.hip_level)
    return size(sub(meet(top, *plumb), meet(top.moved(-mpf(depth)), *plumb)))


def matching_overhang(place, overhang):
    """Two pitches, plates at one height: B's level overhang that ends at the height where A's ends."""
    end = place.on_hip(_out(place, overhang))
    return -dot(end, place.roof.in_b)
