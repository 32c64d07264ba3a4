"""The drawings of the words by their ink: every name at what it names, every arrow between what it measures."""

from __future__ import annotations

from itertools import pairwise
from math import atan, degrees

import pytest
from drawn import Point, direction, distance, near
from inked import Inked, inked, inside, to_stretch

from layouts.drawings import svg
from layouts.drawings.corner import CornerLabels, labelled_corner
from layouts.drawings.rafter import RafterLabels, labelled_rafter
from layouts.words.drawings import CORNER_DRAWING, RAFTER_DRAWING

SLOPES = pytest.mark.parametrize('slope', [0.42, 0.45, 0.5])
UNIT = 0.06
"""Units: what two points may differ by where both were written to hundredths."""


def one_point(a: Point, b: Point, within: float = UNIT) -> bool:
    return distance(a, b) < within


def words_page(slope: float) -> tuple[Inked, dict[str, Point], float, float]:
    """Return the drawing, the corners of its rafter by name, and where the plate line and ridge line stand."""
    drawing = inked(labelled_rafter(slope, RafterLabels(**RAFTER_DRAWING)))
    rafter = drawing.drawn.outlines(svg.HEAVY)[0].points
    names = ('tail_top', 'ridge_top', 'ridge_foot', 'toe', 'corner', 'foot', 'tail_foot')
    ridge_line, plate_line = sorted(
        line.points[0][0]
        for line in drawing.drawn.lines(svg.HAIR, dashed=True)
        if near(abs(line.direction), 90)
    )
    return drawing, dict(zip(names, rafter, strict=False)), plate_line, ridge_line


@SLOPES
def test_run_overhang_rise_and_line_length_span_what_they_name(slope):
    drawing, at, plate_line, ridge_line = words_page(slope)
    run, overhang, rise, length = (
        drawing.dimension(name) for name in ('run', 'overhang', 'rise', 'line length')
    )
    top_at_plate = at['tail_top'][1] - slope * (at['tail_top'][0] - plate_line)
    top_at_ridge = at['tail_top'][1] - slope * (at['tail_top'][0] - ridge_line)

    assert near(at['corner'][0], plate_line)
    assert [end[0] for end in run.ends] == pytest.approx([ridge_line, plate_line], abs=UNIT)
    assert near(run.direction, 0)
    assert [end[0] for end in overhang.ends] == pytest.approx([plate_line, at['tail_top'][0]], abs=UNIT)
    assert near(overhang.direction, 0)
    assert [end[1] for end in rise.ends] == pytest.approx([top_at_ridge, top_at_plate], abs=UNIT)
    assert near(abs(rise.direction), 90)
    assert [end[0] for end in length.ends] == pytest.approx([ridge_line, plate_line], abs=UNIT)
    assert near(-length.direction, degrees(atan(slope)), 0.1)
    assert near(rise.length / run.length, slope, 0.002)


@SLOPES
def test_height_above_plate_seat_and_heel_stand_at_the_birds_mouth(slope):
    drawing, at, plate_line, _ = words_page(slope)
    height = drawing.dimension('height above plate')
    top_at_plate = at['tail_top'][1] - slope * (at['tail_top'][0] - plate_line)

    assert one_point(height.ends[1], at['corner']) != one_point(height.ends[0], at['corner'])
    assert sorted(end[1] for end in height.ends) == pytest.approx([top_at_plate, at['corner'][1]], abs=UNIT)
    assert {end[0] for end in height.ends} == {plate_line}
    assert to_stretch(drawing.pointed('seat'), at['toe'], at['corner']) < UNIT
    assert to_stretch(drawing.pointed('heel'), at['corner'], at['foot']) < UNIT
    assert near(at['toe'][1], at['corner'][1])
    assert near(at['foot'][0], at['corner'][0])


@SLOPES
def test_cut_ridge_plate_and_lines_are_named_where_they_are(slope):
    drawing, at, plate_line, ridge_line = words_page(slope)
    blocks = [
        stroke.points[:4]
        for stroke in drawing.drawn.outlines(svg.LINE)
        if len(stroke.points) == 5 and stroke.fill == '#fff'
    ]
    (ridge,) = [box for box in blocks if min(x for x, _ in box) < ridge_line < max(x for x, _ in box)]
    plates = [box for box in blocks if box is not ridge]

    assert to_stretch(drawing.pointed('plumb cut'), at['ridge_top'], at['ridge_foot']) < UNIT
    assert inside(drawing.pointed('ridge'), list(ridge))
    assert min(to_stretch(drawing.pointed('plate'), *side) for box in plates for side in pairwise(box)) < UNIT
    assert {max(x for x, _ in box) for box in plates} == {plate_line}
    for name, line in (('plate line', plate_line), ('ridge center line', ridge_line)):
        box = drawing.label(name).corners()
        top = min(
            y for stroke in drawing.drawn.lines(svg.HAIR, dashed=True) for x, y in stroke.points if x == line
        )
        assert min(x for x, _ in box) - 1 <= line <= max(x for x, _ in box) + 1
        assert 0 < top - max(y for _, y in box) < 8
    rafter = [at[name] for name in ('tail_top', 'ridge_top', 'ridge_foot', 'foot', 'tail_foot')]
    for name in ('tail', 'top edge, crown up'):
        assert all(inside(corner, rafter) for corner in drawing.label(name).corners())
    assert min(x for x, _ in drawing.label('tail').corners()) > plate_line
    edge = at['ridge_top'], at['tail_top']
    assert drawing.label('top edge, crown up').away(*edge) < drawing.label('top edge, crown up').away(
        at['ridge_foot'], at['foot']
    )


def test_each_member_of_a_corner_is_named_where_it_lies():
    """By thickness and direction, and by which members it ends at: hips and valleys 45°, jacks between two lines."""
    drawing = inked(labelled_corner(CornerLabels(**CORNER_DRAWING)))
    members = [stroke.points[:4] for stroke in drawing.drawn.outlines(svg.HAIR) if len(stroke.points) == 5]
    left = min(x for member in members for x, _ in member)

    def named(name: str) -> tuple[Point, ...]:
        tip = drawing.pointed(name)
        touched = [
            member
            for member in members
            if inside(tip, list(member))
            or min(to_stretch(tip, *s) for s in pairwise((*member, member[0]))) < 0.5
        ]
        member = touched[-1]  # the one that lies on top
        return member

    def way(member) -> int:
        return round(direction(member[0], member[1])) % 180

    def thick(member) -> float:
        return round(distance(member[1], member[2]))

    hip, valley, ridge = named('hip'), named('valley'), named('ridge')
    common_, hip_jack = named('common'), named('hip jack')
    end_common, valley_jack = named('end common'), named('valley jack')
    assert (way(hip), way(ridge), way(common_), way(hip_jack)) == (135, 0, 90, 90)
    assert (way(valley) % 90, way(end_common), way(valley_jack)) == (45, 0, 0)
    assert {thick(hip), thick(valley), thick(ridge)} == {5}
    assert min(x for x, _ in hip) == left
    assert min(x for x, _ in valley) > max(x for x, _ in hip)
    assert distance(hip_jack[0], hip_jack[1]) < distance(common_[0], common_[1])
    assert min(x for x, _ in valley_jack) > min(x for x, _ in valley)
    middle_of_ridge = sum(y for _, y in ridge) / 4
    assert near(sum(y for _, y in end_common) / 4, middle_of_ridge)
    assert near(max(x for x, _ in end_common), min(x for x, _ in ridge), 1)

    run = drawing.dimension('common run')
    assert sorted(end[1] for end in run.ends) == pytest.approx(
        [min(y for _, y in common_), middle_of_ridge], abs=0.1
    )
    spacing = drawing.dimension('spacing, on center')
    centers = {round((member[0][0] + member[3][0]) / 2, 1) for member in members if way(member) == 90}
    assert {round(end[0], 1) for end in spacing.ends} <= centers
    assert len([x for x in centers if spacing.ends[0][0] + 0.1 < x < spacing.ends[1][0] - 0.1]) == 0
