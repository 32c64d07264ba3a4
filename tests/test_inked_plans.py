"""Plans and sections by their ink: setting out, many sides, two pitches, a dropped hip, a jack's deduction."""

from __future__ import annotations

from math import radians, tan

import pytest
from drawn import distance, near, to_stretch
from inked import Inked, Label, inked
from labels.drawn_names import NAMES

from layouts.drawings import svg
from layouts.drawings.corner_plans import polygon_plan, unequal_plan
from layouts.drawings.hip_section import hip_section
from layouts.drawings.plan import jack_points
from layouts.drawings.setting_out import square_layout

UNIT = 0.06
"""Units: what two points may differ by where both were written to hundredths."""


def nearest(label: Label, sides: dict[str, tuple]) -> str:
    return min(sides, key=lambda name: label.away(*sides[name]))


def test_the_sides_of_a_3_4_5_corner_and_a_brace_between_its_legs():
    drawing = inked(square_layout(NAMES['set-out'], 'setting out'))
    (slant,) = [
        line.points for line in drawing.drawn.lines(svg.LINE) if near(distance(*line.points), 60, UNIT)
    ]
    right, top = sorted(slant, key=lambda point: -point[0])
    square = (top[0], right[1])
    sides = {'4': (square, right), '3': (square, top), '5': (right, top)}
    (brace,) = [
        line.points for line in drawing.drawn.strokes if near(line.width, 2.4) and len(line.points) == 2
    ]
    low, far = sorted(brace)
    legs = {'post': ((low[0], far[1]), low), 'beam': ((low[0], far[1]), far)}

    assert near(distance(square, right) / 4, distance(square, top) / 3, UNIT)
    for name in sides:
        assert nearest(drawing.label(name), sides) == name
    assert nearest(drawing.label('brace'), legs | {'brace': brace}) == 'brace'
    assert sorted(nearest(one, legs) for one in drawing.labels if one.text == 'leg') == ['beam', 'post']
    assert {low, far} <= set(drawing.drawn.dots)


@pytest.mark.parametrize('sides', [5, 8, 12])
def test_the_parts_of_a_many_sided_roof(sides):
    """Each pointed at: a line from the middle to a corner, the dashed one to the middle of a side, a hairline."""
    drawing = inked(polygon_plan(sides, NAMES['many-sided'], 'many sides'))
    corners = drawing.drawn.outlines(svg.LINE)[0].points[:sides]
    (hip,) = [line.points for line in drawing.drawn.lines(svg.HEAVY)]
    (apothem,) = [line.points for line in drawing.drawn.lines(svg.LINE, dashed=True)]
    jacks = [line.points for line in drawing.drawn.lines(svg.HAIR)]
    low = sorted(sorted(corners, key=lambda point: -point[1])[:2])
    side = drawing.dimension('side')

    assert to_stretch(drawing.pointed('hip'), *hip) < UNIT
    assert any(distance(hip[1], corner) < UNIT for corner in corners)
    assert to_stretch(drawing.pointed('apothem'), *apothem) < UNIT
    assert near(apothem[1][0], (low[0][0] + low[1][0]) / 2, UNIT)
    assert min(to_stretch(drawing.pointed('jack'), *jack) for jack in jacks) < UNIT
    assert min(distance(drawing.pointed('corner of the plates'), corner) for corner in corners) < UNIT
    assert [end[0] for end in side.ends] == pytest.approx([low[0][0], low[1][0]], abs=UNIT)


@pytest.mark.parametrize('plan', [60.0, 63.43])
def test_overhangs_of_two_pitches_lie_between_their_own_plate_and_eave(plan):
    """Plates and eaves of A run along the foot, those of B up the right; the hip leaves A's at the angle told."""
    names = NAMES['unequal'] | {'plan': 'PLAN'}
    drawing = inked(unequal_plan(plan, names, 'two pitches'))
    plates = [line.points for line in drawing.drawn.lines(svg.LINE)]
    (plate_a,), (plate_b,) = (
        [points for points in plates if near(points[0][axis], points[1][axis])] for axis in (1, 0)
    )
    (eaves,) = [line.points for line in drawing.drawn.outlines(svg.LINE) if len(line.points) == 3]
    (hip,) = [line.points for line in drawing.drawn.strokes if near(line.width, 1.8)]
    corner = max(eaves, key=lambda point: point[0] + point[1])
    out_a, out_b = drawing.dimension('overhang A'), drawing.dimension('overhang B')

    assert sorted(y for _, y in out_a.ends) == pytest.approx([plate_a[0][1], corner[1]], abs=UNIT)
    assert near(out_a.ends[0][0], out_a.ends[1][0])
    assert sorted(x for x, _ in out_b.ends) == pytest.approx([plate_b[0][0], corner[0]], abs=UNIT)
    assert near(out_b.ends[0][1], out_b.ends[1][1])
    sides = {'eave A': plate_a, 'eave B': plate_b}
    assert [nearest(drawing.label(name), sides) for name in sides] == list(sides)
    (x0, y0), (x1, y1) = sorted(hip, key=lambda point: point[1])
    assert near((y1 - y0) / (x1 - x0), tan(radians(plan)), 0.01)
    arc = drawing.drawn.outlines(svg.LINE)[-1].points
    assert min(drawing.label('PLAN').away(point, point) for point in arc) < 30


@pytest.mark.parametrize('bevel', [12.0, 18.43, 30.0])
def test_a_dropped_hips_drop_lies_between_the_planes_line_and_its_square_top(bevel):
    drawing = inked(hip_section(1.5, bevel, ('backed', 'ANGLE', 'dropped', 'DROP'), 'hips'))
    left, right = sorted(drawing.drawn.outlines(svg.HEAVY), key=lambda one: min(x for x, _ in one.points))
    drop = drawing.dimension('DROP')
    peak = min(y for _, y in left.points)
    top = min(y for _, y in right.points)

    assert [y for _, y in drop.ends] == pytest.approx([peak, top], abs=UNIT)
    for name, section in (('backed', left), ('dropped', right)):
        assert near(
            drawing.label(name).at[0], sum(x for x, _ in section.points[1:-1]) / len(section.points[1:-1]), 1
        )
    assert near(len(left.points), len(right.points) + 1)  # the backed one has a ridge
    assert is_left_of(drawing, 'ANGLE', 'DROP')


def is_left_of(drawing: Inked, one: str, other: str) -> bool:
    return drawing.label(one).at[0] < drawing.label(other).at[0]


@pytest.mark.parametrize(('hip', 'rafter'), [(1.5, 1.5), (3.5, 1.75), (0.75, 1.5)])
def test_what_comes_off_a_jack_is_pointed_at_between_the_hips_center_line_and_its_side(hip, rafter):
    drawing = inked(jack_points(hip, rafter, NAMES['jacks'], 'jack'))
    (off,) = [line.points for line in drawing.drawn.strokes if near(line.width, 2.2)]

    assert to_stretch(drawing.pointed(NAMES['jacks']['off']), *off) < UNIT
    center = [
        line for line in drawing.drawn.lines(svg.HAIR, dashed=True) if not near(abs(line.direction), 90)
    ]
    assert to_stretch(drawing.pointed('hip center line'), *center[0].points) < UNIT
