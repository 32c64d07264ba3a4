"""The area that is sheathed: the planes of a roof as inequalities in space, their polygons clipped from its outline in plan."""

from __future__ import annotations

from math import hypot

import pytest
from roof_files import HOUSE, roof

from tablegen.frame.area import area_in2
from tablegen.frame.frame import frame
from tablegen.frame.roof_file import read_roof

Plane = tuple[float, float, float]
"""Of a height z = a x + b y + c."""
WIDE, LONG, M = 288, 432, 7 / 12


def clipped(polygon: list[tuple[float, float]], plane: Plane, other: Plane) -> list[tuple[float, float]]:
    """Return the part of a polygon where a plane is no higher than another one."""
    a, b, c = (theirs - ours for ours, theirs in zip(plane, other, strict=True))
    over = [a * x + b * y + c for x, y in polygon]
    found = []
    for place, (x, y) in enumerate(polygon):
        before, here = over[place - 1], over[place]
        if before * here < 0:
            (u, v), share = polygon[place - 1], before / (before - here)
            found.append((u + share * (x - u), v + share * (y - v)))
        if here >= 0:
            found.append((x, y))
    return found


def area(polygon: list[tuple[float, float]]) -> float:
    return (
        abs(sum(x * v - u * y for (u, v), (x, y) in zip(polygon, polygon[1:] + polygon[:1], strict=True))) / 2
    )


def lowest_of(planes: list[Plane], outline: tuple[float, float, float, float]) -> float:
    """Return the area of a roof that is everywhere the lowest of some planes, over a rectangle in plan."""
    left, front, right, back = outline
    total = 0.0
    for plane in planes:
        polygon = [(left, front), (right, front), (right, back), (left, back)]
        for other in planes:
            polygon = clipped(polygon, plane, other) if other is not plane else polygon
        total += area(polygon) * hypot(1, hypot(plane[0], plane[1]))
    return total


def both(m: float, other: float) -> list[Plane]:
    """Return the planes of front and back over their plates."""
    return [(0, m, 0), (0, -other, other * WIDE)]


def ends(m: float, up: float = 0) -> list[Plane]:
    """Return the planes of the left and right end, over plates that stand so high."""
    return [(m, 0, up), (-m, 0, m * LONG + up)]


ROOFS = {
    'gable': ('overhang.gable = 8', both(M, M), (-8, -12, LONG + 8, WIDE + 12)),
    'shed': ('', [(0, M, 0)], (0, -12, LONG, WIDE)),
    'saltbox': ('overhang.gable = 8', both(M, 4 / 12), (-8, -12, LONG + 8, WIDE + 12)),
    'hip': ('', both(M, M) + ends(M), (-12, -12, LONG + 12, WIDE + 12)),
    # eaves of one height: the steeper end comes out less
    'hip of two pitches': ('hip.end_pitch = 9', both(M, M) + ends(9 / 12), (-12 * 7 / 9, -12, LONG + 12 * 7 / 9, WIDE + 12)),
    'hip at one end': ('hip.ends = 1\noverhang.gable = 8', both(M, M) + ends(M)[:1], (-12, -12, LONG + 8, WIDE + 12)),
    # eaves and overhangs of one height: the steeper ends' plates are raised by what they rise more over the overhang
    'hip of raised ends': ('hip.end_pitch = 9\nhip.eaves = "equal"', both(M, M) + ends(9 / 12, 12 * (9 / 12 - M)),
                           (-12, -12, LONG + 12, WIDE + 12)),
    'hip at one raised end': ('hip.ends = 1\nhip.end_pitch = 9\nhip.eaves = "equal"\noverhang.gable = 8',
                              both(M, M) + ends(9 / 12, 12 * (9 / 12 - M))[:1], (-12, -12, LONG + 8, WIDE + 12)),
    'half-hip': ('overhang.gable = 8', both(M, M) + ends(M, 36), (-8, -12, LONG + 8, WIDE + 12)),
    'gambrel': ('overhang.gable = 8', [*both(M, M), (0, 4 / 12, 72 * (M - 4 / 12)), (0, -4 / 12, WIDE * 4 / 12 + 72 * (M - 4 / 12))],
                (-8, -12, LONG + 8, WIDE + 12)),
}  # fmt: skip


@pytest.mark.parametrize('name', ROOFS)
def test_a_roof_is_as_large_as_its_planes(name):
    more, planes, outline = ROOFS[name]
    asked = roof(name.partition(' of ')[0].partition(' at ')[0], more)

    found = float(area_in2(frame(asked).plan, asked.gable_overhang_in))

    assert found == pytest.approx(lowest_of(planes, outline), abs=1e-6)


@pytest.mark.parametrize(
    ('wing', 'gable', 'plan_in2'),
    [
        # of one pitch all planes are stretched alike: the outline of main eaves and barges, and of the wing's
        ('width = 192, out = 120, from_left = 48', 8, 312 * 448 + 216 * (120 - 12 + 8)),
        ('width = 192, out = 120, from_left = 48, end = "hip"', 8, 312 * 448 + 216 * 120),
        ('width = 192, out = 120, from_left = 48, end = "hip", main_ends = 2', 0, 312 * 456 + 216 * 120),
        (
            'width = 288, out = 300, from_left = 0, main_ends = 1',
            8,
            312 * (12 + 432 + 8) + 312 * (300 - 12 + 8),
        ),
        (
            'width = 192, out = 120, from_left = 0, main_ends = 1',
            8,
            312 * (12 + 432 + 8) + 216 * (120 - 12 + 8),
        ),
        ('width = 192, out = 120, from_left = 0', 12, 312 * (12 + 432 + 12) + 216 * 120),
        ('width = 192, out = 120, from_left = 240', 20, 312 * (20 + 432 + 20) + 216 * (120 - 12 + 20)),
    ],
)
def test_a_roof_with_a_wing_of_its_pitch_is_as_large_as_its_outline(wing, gable, plan_in2):
    barge = f'overhang.gable = {gable}' if gable else ''
    asked = read_roof(f'kind = "wing"\n{HOUSE}wing = {{{wing}}}\n{barge}', '')

    found = float(area_in2(frame(asked).plan, asked.gable_overhang_in))

    assert found == pytest.approx(plan_in2 * hypot(1, M), abs=1e-6)


def test_a_roof_that_is_laid_on_the_main_one_lies_over_its_sheathing():
    """The main roof is sheathed all over but for its tails under the wing, the wing as far as 45 degrees in plan from its corners;
    boards and sheathing under it take little off."""
    asked = read_roof(
        f'kind = "wing"\n{HOUSE}wing = {{width = 192, out = 120, from_left = 48, valleys = "blind"}}', ''
    )
    main, wing = 312 * 432 - 192 * 12, 216 * 120 + 192 * 96 / 2

    found = float(area_in2(frame(asked).plan, asked.gable_overhang_in))

    assert found == pytest.approx((main + wing) * hypot(1, M), rel=0.005)
