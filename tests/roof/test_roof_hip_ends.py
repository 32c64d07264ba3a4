"""Ends of hips, valleys and end commons: single and double cheeks, tails, slid hips, against members in space."""

from fractions import Fraction

import pytest
from corners import CORNERS, per_foot
from fifty_digits import real
from mpmath import mp, mpf
from msgspec.structs import replace
from near import NEAR, gap, number
from oracle.planes import (
    Plane,
    add,
    along,
    cross,
    dot,
    level,
    line_angle,
    meet,
    member,
    scaled,
    size,
    sub,
    unit,
)

from tablegen.geometry import backing, cheeks, ridge, shortening
from tablegen.geometry.corner import square_corner
from tablegen.numbers.exact import exact, root

SQUARE = [case for case in CORNERS if case.degrees == 90]
NAMES = [case.name for case in SQUARE]
HIP, OUT = Fraction(7, 2), Fraction(149, 8)
RIDGES_AND_COMMONS = [
    (Fraction(3, 2), Fraction(3, 2)),
    (Fraction(3, 4), Fraction(3, 2)),
    (Fraction(5, 2), Fraction(3, 2)),
]


def _along_plan(roof):
    """The level direction of the hip, uphill."""
    return unit(level(roof.hip()))


def _end(roof, run):
    """The ridge's theoretical end."""
    return meet(roof.a, roof.b, Plane(roof.in_a, real(run)))


@pytest.mark.parametrize('square_case', SQUARE, ids=NAMES)
@pytest.mark.parametrize(('ridge_in', 'common_in'), RIDGES_AND_COMMONS)
def test_an_end_common_between_two_single_cheeks(square_case, run, ridge_in, common_in):
    """The ridge is sawn where the hip's outer side leaves its face; the common's side runs into the hip's side."""
    case, roof = square_case, square_case.roof
    hip = roof.hip_member(real(HIP))
    end = dot(roof.eave_a, _end(roof, run))

    def leaves(thickness):
        return dot(roof.eave_a, meet(hip.left, hip.top, Plane(roof.in_a, real(run) - real(thickness) / 2)))

    past = ridge.end_past_hips(ridge_in, HIP, case.at)
    sawn = leaves(ridge_in)
    clipped = max(mpf(0), sawn - leaves(common_in))
    assert gap(past, end - sawn) < NEAR
    assert gap(shortening.end_common_clip(common_in, ridge_in, case.at), clipped) < NEAR
    assert (clipped > 0) == (common_in > ridge_in)


def test_an_end_common_of_the_ridges_thickness_has_no_corner_for_a_double_cheek(case, run, thickness):
    """Its sides and the ridge's are one plane: no hip's point finds a corner there."""
    roof = case.roof
    beyond = member(_end(roof, run), roof.eave_a, real(thickness), roof.b)
    face = Plane(roof.in_a, real(run) - real(thickness) / 2)

    assert line_angle(beyond.right.normal, face.normal) < NEAR
    assert abs(face.height(meet(beyond.right, roof.a, roof.b))) < NEAR


@pytest.mark.parametrize('square_case', SQUARE, ids=NAMES)
@pytest.mark.parametrize('past', [Fraction(1, 4), Fraction(7, 8), Fraction(57, 16)])
def test_how_far_the_ridges_end_stands_over_the_ends_plane(square_case, run, past):
    """The ridge's top edges lie in the two side planes; its end is past the line of the planes of both ends."""
    case, roof = square_case, square_case.roof
    half = real(Fraction(3, 4))
    end = dot(roof.eave_a, _end(roof, run)) - real(past)
    edge = meet(roof.a, Plane(roof.in_a, real(run) - half), Plane(roof.eave_a, end))
    over = edge[2] - meet(roof.b, Plane(roof.in_a, real(run)), Plane(roof.eave_a, end))[2]

    assert gap(ridge.end_over_plane(exact(past), Fraction(3, 2), case.at), max(mpf(0), over)) < NEAR


@pytest.mark.parametrize('rise', range(1, 25))
def test_the_two_arrangements_of_a_regular_end(rise):
    """Ridge, hip and commons of 3/4, 3 1/2 and 1 3/4: half a common, 0.875; or 0.375 + 3.5/√2 = 2.8499."""
    at = square_corner(per_foot(rise), per_foot(rise))

    assert ridge.end_past_commons(Fraction(7, 4)) == Fraction(7, 8)
    past = ridge.end_past_hips(Fraction(3, 4), HIP, at)
    assert past == Fraction(3, 8) + HIP / root(2)
    assert shortening.end_common_clip(Fraction(7, 4), Fraction(3, 4), at) == Fraction(1, 2)


def test_a_shed_on_a_ledger(case, run, thickness):
    """The ledger stands on the rafter's side of the wall."""
    roof = case.roof
    rafter = member(scaled(roof.eave_a, mpf(7)), roof.in_a, mpf(1), roof.a)
    wall = Plane(roof.in_a, real(run))
    flat = size(level(sub(rafter.end(wall), rafter.end(wall.moved(-real(thickness))))))

    assert gap(shortening.at_ledger(thickness), flat) < NEAR


def test_the_plumb_lines_of_a_hips_sides(case, run, thickness):
    """Where the two sides are cut, along the hip from the mark on its center line."""
    roof = case.roof
    board, way = roof.hip_member(real(thickness)), _along_plan(roof)
    for face, ours in (
        (Plane(roof.in_a, real(run)), shortening.set_back_at_ridge(thickness, case.at)),
        (Plane(roof.eave_a, mpf(100)), shortening.set_back_at_common(thickness, case.at)),
    ):
        left, middle, right = (
            dot(way, meet(side, board.top, face)) for side in (board.left, board.center, board.right)
        )
        assert gap(ours, abs(left - middle)) < NEAR
        assert gap(ours, abs(right - middle)) < NEAR


def test_a_double_cheek_between_commons(case, run):
    """The hip's point stands in the corner of the last side common and the end common."""
    roof, end = case.roof, _end(case.roof, run)
    of_a, of_b = Fraction(7, 4), Fraction(5, 4)
    face_a = Plane(roof.eave_a, dot(roof.eave_a, end) - real(of_a) / 2)
    face_b = Plane(roof.eave_b, dot(roof.eave_b, end) - real(of_b) / 2)
    board = roof.hip_member(real(HIP))
    corner = meet(face_a, face_b, board.top)
    ours = shortening.double_cheek_aside(of_a, of_b, case.at)

    assert gap(ours, board.center.height(corner)) < NEAR  # the normal is on the left: side B
    for side, face, other, back in (
        (board.right, face_a, face_b, real(HIP) / 2 + number(ours)),
        (board.left, face_b, face_a, real(HIP) / 2 - number(ours)),
    ):
        if back <= 0:
            continue
        at = case.at if side is board.right else case.at.turned()
        started = dot(_along_plan(roof), sub(corner, meet(side, board.top, face)))
        share = back / (real(HIP) / 2)
        assert abs(started - number(shortening.set_back_at_common(HIP, at)) * share) < NEAR
        assert other.height(meet(side, board.top, face)) < NEAR  # before the other common's face


def test_a_valley_between_two_ridges(case, run, thickness):
    roof, end = case.roof, _end(case.roof, run)
    board = roof.hip_member(mpf(1))
    main = board.end(Plane(roof.in_a, dot(roof.in_a, end) - real(thickness) / 2))
    wing = board.end(Plane(roof.in_b, dot(roof.in_b, end) - real(Fraction(7, 4)) / 2))
    first = max(size(level(sub(end, one))) for one in (main, wing))

    assert gap(shortening.valley_between_ridges(thickness, Fraction(7, 4), case.at), first) < NEAR


def test_a_hips_tail(case, thickness):
    """Both fascias stand along the eaves: on each side the hip ends at its own one, before the other."""
    roof = case.roof
    board, way = roof.hip_member(real(thickness)), _along_plan(roof)
    fascia_a = Plane(roof.in_a, -real(OUT))
    point = meet(roof.a, roof.b, fascia_a)
    fascia_b = Plane(roof.in_b, dot(roof.in_b, point))
    for side, own, other, at in (
        (board.right, fascia_a, fascia_b, case.at),
        (board.left, fascia_b, fascia_a, case.at.turned()),
    ):
        started = dot(way, sub(meet(side, board.top, own), point))
        assert gap(shortening.set_back_at_ridge(thickness, at), started) < NEAR
        assert other.height(meet(side, board.top, own)) > 0
        cut = cheeks.hip_at_ridge(at)
        assert gap(cut.blade, mp.pi / 2 - line_angle(own.normal, side.normal)) < NEAR
        square_across = cross(side.normal, board.direction())
        assert gap(cut.saw, line_angle(along(own, side), square_across)) < NEAR
        assert gap(cut.top, line_angle(along(own, board.top), side.normal)) < NEAR


def test_a_valleys_tail_is_hollow(case, thickness):
    """Plane A lies on the other side of a valley: there its side reaches A's eave line past the center's end."""
    roof = case.roof
    board, way = roof.hip_member(real(thickness)), _along_plan(roof)
    fascia_a = Plane(roof.in_a, -real(OUT))
    point = meet(roof.a, roof.b, fascia_a)
    reached = dot(way, sub(meet(board.left, board.top, fascia_a), point))

    assert gap(shortening.set_back_at_ridge(thickness, case.at), -reached) < NEAR


def test_the_gap_over_a_hip_dropped_by_the_greater_drop(case, thickness):
    roof = case.roof
    board = roof.hip_member(real(thickness))
    drops = [number(backing.drop_plumb(thickness, at)) for at in (case.at, case.at.turned())]
    low = board.top.lifted(-max(drops))
    for side, roof_plane, at in ((board.right, roof.a, case.at), (board.left, roof.b, case.at.turned())):
        across = Plane(_along_plan(roof), mpf(50))
        under = meet(side, roof_plane, across)[2] - meet(side, low, across)[2]
        assert gap(backing.gap_when_dropped(thickness, at), under) < NEAR
    if case.degrees == 90 and case.at.slope_a != case.at.slope_b:
        flatter = case.at if number(case.at.slope_a) < number(case.at.slope_b) else case.at.turned()
        assert number(backing.gap_when_dropped(thickness, flatter)) > 0


def test_a_slid_hip_changes_the_jacks_of_both_sides(case, thickness):
    """Moved towards eave A, jacks of A end sooner and jacks of B later."""
    roof = case.roof
    board = roof.hip_member(real(thickness))
    moved = board.center.moved(-number(backing.slide(thickness, case.at)))
    for eave, into, top, at in (
        (roof.eave_a, roof.in_a, roof.a, case.at),
        (roof.eave_b, roof.in_b, roof.b, case.at.turned()),
    ):
        jack = member(scaled(eave, mpf(61)), into, mpf(1), top)
        longer = dot(into, sub(jack.end(moved), jack.end(board.center)))
        assert gap(backing.slid_jack(thickness, at), longer) < NEAR


def test_a_slid_hip_at_the_ridge(case, run, thickness):
    roof, way = case.roof, _along_plan(case.roof)
    board = roof.hip_member(real(thickness))
    moved = replace(board, center=board.center.moved(-number(backing.slide(thickness, case.at))))
    face = Plane(roof.in_a, real(run))
    longer = dot(way, sub(moved.end(face), board.end(face)))

    assert gap(backing.slid_hip_at_ridge(thickness, case.at), longer) < NEAR


def test_which_jacks_become_shorter():
    """6 and 12 in 12, 1½ in hip: slide 0.45 in towards the flatter side; tan a = 2, so 0.45·√5 and 0.45·√5/2."""
    at = square_corner(per_foot(6), per_foot(12))

    assert backing.slide(Fraction(3, 2), at) == Fraction(9, 20)
    assert backing.slid_jack(Fraction(3, 2), at) == -Fraction(9, 20) * root(5)
    assert backing.slid_jack(Fraction(3, 2), at.turned()) == Fraction(9, 40) * root(5)
    assert backing.gap_when_dropped(Fraction(3, 2), at.turned()) == exact(0)


def test_how_far_a_blade_must_reach(case, thickness):
    """In plan the cut is the long side of a triangle: the board's thickness, and long point to short point."""
    across = real(thickness)
    jack = mp.sqrt(across**2 + number(shortening.point_to_point(thickness, case.at)) ** 2)
    hip = mp.sqrt(across**2 + number(shortening.hip_point_to_point(thickness, case.at)) ** 2)

    assert gap(cheeks.jack(case.at).reach(thickness), jack) < NEAR
    assert gap(cheeks.hip_at_ridge(case.at).reach(thickness), hip) < NEAR


def test_lines_on_a_backed_hip_from_square_across(case, run):
    """On the backed face towards A, from the line in it that is square to the hip's length."""
    roof = case.roof
    across = cross(roof.a.normal, roof.hip())
    at_ridge = along(Plane(roof.in_a, real(run)), roof.a)
    at_common = along(Plane(roof.eave_a, mpf(100)), roof.a)

    assert gap(cheeks.backed_at_ridge(case.at), line_angle(at_ridge, across)) < NEAR
    assert gap(cheeks.backed_at_common(case.at), line_angle(at_common, across)) < NEAR
    assert size(add(at_ridge, at_common)) > 0
