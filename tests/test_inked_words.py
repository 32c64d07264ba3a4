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
from layouts.drawings.run_section import measured_gable, measured_shed
from layouts.words.drawings import CORNER_DRAWING, RAFTER_DRAWING, RUN_DRAWING, SHED_RUN_DRAWING

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
        {
            line.points[0][0]
            for line in drawing.drawn.lines(svg.HAIR, dashed=True)
            if near(abs(line.direction), 90)
        }
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
    assert to_stretch(drawing.pointed('seat cut, level'), at['toe'], at['corner']) < UNIT
    assert to_stretch(drawing.pointed('heel cut,'), at['corner'], at['foot']) < UNIT
    assert to_stretch(drawing.pointed('tail cut,'), at['tail_top'], at['tail_foot']) < UNIT
    plumb = sorted(label.at for label in drawing.labels if label.text == 'plumb')
    named = [drawing.label(name).at for name in ('heel cut,', 'tail cut,')]
    assert [(x, round(y - 8.5, 2)) for x, y in plumb] == [(x, round(y, 2)) for x, y in named]  # under them
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
    assert inside(drawing.pointed('ridge board'), list(ridge))
    assert min(to_stretch(drawing.pointed('plate'), *side) for box in plates for side in pairwise(box)) < UNIT
    assert {max(x for x, _ in box) for box in plates} == {plate_line}
    for name, line in (('plate line', plate_line), ('ridge center line', ridge_line)):
        box = drawing.label(name).corners()
        top = min(
            y for stroke in drawing.drawn.lines(svg.HAIR, dashed=True) for x, y in stroke.points if x == line
        )
        assert min(x for x, _ in box) - 5 <= line <= max(x for x, _ in box) + 1
        assert abs(top - max(y for _, y in box)) < 8
    rafter = [at[name] for name in ('tail_top', 'ridge_top', 'ridge_foot', 'foot', 'tail_foot')]
    for name in ('tail', 'top edge, crown up'):
        assert all(inside(corner, rafter) for corner in drawing.label(name).corners())
    assert min(x for x, _ in drawing.label('tail').corners()) > plate_line
    edge = at['ridge_top'], at['tail_top']
    assert drawing.label('top edge, crown up').away(*edge) < drawing.label('top edge, crown up').away(
        at['ridge_foot'], at['foot']
    )


@SLOPES
def test_no_word_of_the_rafter_meets_a_line_or_another_word(slope):
    assert words_page(slope)[0].collisions() == []


# What is measured before a length is looked up -------------------------------------------------------------------


def test_run_is_half_the_width_and_line_length_lies_over_it():
    """Between the outsides of the plates; the right half is the one that is measured, its rafter drawn heavy."""
    drawing = inked(measured_gable(0.5, RUN_DRAWING))
    rafter = drawing.drawn.outlines(svg.HEAVY)[0].points
    tail_top, ridge_top, corner = rafter[0], rafter[1], rafter[4]
    width, run, rise, length = (
        drawing.dimension(RUN_DRAWING[word]) for word in ('width', 'run', 'rise', 'length')
    )
    (left, _), (right, _) = width.ends
    center = (left + right) / 2

    def top(x: float) -> float:
        return ridge_top[1] + 0.5 * (x - ridge_top[0])

    assert near(width.direction, 0)
    assert near(run.direction, 0)
    assert near(corner[0], right)
    assert [end[0] for end in run.ends] == pytest.approx([center, right], abs=UNIT)
    assert [end[0] for end in length.ends] == pytest.approx([center, right], abs=UNIT)
    assert near(-length.direction, degrees(atan(0.5)), 0.1)
    assert near(-direction(ridge_top, tail_top), degrees(atan(0.5)), 0.1)
    assert sorted(end[1] for end in rise.ends) == pytest.approx([top(center), top(right)], abs=UNIT)
    plates = [one.points for one in drawing.drawn.outlines(svg.LINE) if len(one.points) == 5]
    assert {max(x for x, _ in box) for box in plates} >= {right}
    assert {min(x for x, _ in box) for box in plates} >= {left}
    tip = drawing.pointed(RUN_DRAWING['plate'])
    assert min(to_stretch(tip, *side) for box in plates for side in pairwise(box)) < UNIT
    ridge_line, plate_line = (
        drawing.label(RUN_DRAWING[name]).corners() for name in ('ridge_line', 'plate_line')
    )
    assert near(sum(x for x, _ in ridge_line) / 4, center, 0.5)
    assert min(x for x, _ in plate_line) < right < max(x for x, _ in plate_line)
    assert drawing.collisions() == []


def test_a_sheds_run_goes_to_the_wall_or_to_the_ledgers_face():
    drawing = inked(measured_shed(0.25, SHED_RUN_DRAWING))
    rafter = drawing.drawn.outlines(svg.HEAVY)[0].points
    face, corner = rafter[1][0], rafter[4][0]
    (ledger,) = [
        box.points
        for box in drawing.drawn.outlines(svg.LINE)
        if len(box.points) == 5 and near(max(x for x, _ in box.points), face)
    ]
    wall = min(x for x, _ in ledger)

    to_wall, to_face = (drawing.dimension(SHED_RUN_DRAWING[name]) for name in ('to_wall', 'to_ledger'))
    assert [end[0] for end in to_wall.ends] == pytest.approx([wall, corner], abs=UNIT)
    assert [end[0] for end in to_face.ends] == pytest.approx([face, corner], abs=UNIT)
    assert near(to_wall.direction, 0)
    assert near(to_face.direction, 0)
    assert inside(drawing.pointed(SHED_RUN_DRAWING['ledger']), list(ledger[:4]))
    assert max(x for x, _ in drawing.label(SHED_RUN_DRAWING['wall']).corners()) < wall
    assert drawing.collisions() == []


# A corner from above ---------------------------------------------------------------------------------------------


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
    assert {thick(hip), thick(valley), thick(ridge)} == {4}
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
