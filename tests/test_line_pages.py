"""An existing roof's pitch, and which line each arm of the square gives: read as printed, each figure worked out in space."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from drawn import direction, distance, near
from inked import drawings_on
from mpmath import mpf, sqrt
from oracle import cuts, framing_square
from oracle.corner import corner, hip_run, rise
from oracle.rounding import degrees, part
from pages_alone import printed

from layouts.drawings import svg
from layouts.pages.book import plan
from tablegen.settings import read_settings

PITCHES = {'7 1/2 in 12': Fraction(15, 2), '20 in 12': Fraction(20)}
"""One between the book's usual ones, and one at which the tongue is too short."""


@pytest.fixture(scope='module', params=PITCHES)
def pages(request, tmp_path_factory):
    """Return a pitch's name, its corner, and words and drawings of both pages."""
    written = f'pitches = [{float(PITCHES[request.param])}]'
    planned = plan(read_settings(written, ''))
    words = printed(written, 'existing', 'arms', folder=tmp_path_factory.mktemp('lines'))
    drawings = [drawings_on(planned.pages()[planned.index[key] - 1])[0] for key in ('existing', 'arms')]
    return request.param, corner(PITCHES[request.param]), words, drawings, planned.index


def test_a_level_tells_the_rise_in_twelve(pages):
    _, _, (words, _), (level, _), index = pages
    at, name = corner(6), '6 in 12'
    gap = part(rise(at, 12))

    assert f'12 in from there measure plumb down to it: {gap} in is {name}.' in words
    span = level.dimension(f'{gap} in')
    assert near(abs(span.direction), 90)
    (box,) = [one.points for one in level.drawn.outlines(svg.LINE) if len(one.points) == 5]
    assert near(span.length / distance(box[0], box[1]), float(rise(at, 12)) / 12, 0.01)
    assert re.findall(r'[Pp]age (\d+)', words) == [str(index['glance'])] * 2 + [str(index['how-to'] + 1)]


def test_a_pitch_between_two_has_its_hold_and_its_exact_foot(pages):
    _, _, (words, _), _, _ = pages
    foot = sqrt(mpf(12) ** 2 + mpf('5.25') ** 2)

    assert 'for 5 1/4 in 12 hold 12 on the body, 5 1/4 on the tongue' in words
    assert f'√(144 + {mpf("5.25") ** 2}) = {float(foot):.3f} in' in words


def test_each_arm_gives_its_line(pages):
    name, at, (_, words), (_, faces), _ = pages
    top, saw = cuts.jack_cheek(at), cuts.plumb_cut(at)
    common, hip, cheek = (
        framing_square.arms(12, rise(at, 12)),
        framing_square.arms(hip_run(at, 12), rise(at, 12)),
        framing_square.fitted(12, framing_square.figure_against_12(top)),
    )

    def held(figures) -> str:
        return ' & '.join(map(part, figures))

    assert (
        f'body & along the at {name} tongue body along the tongue' in words
    )  # heads of two lines, line by line
    assert f'common, jack {held(common)} level: seat plumb: ridge, heel, tail' in words
    assert f'hip, valley {held(hip)} level: seat plumb: ridge, heel, tail' in words
    assert f'jack’s cheek, on top {held(cheek)} the cheek' in words
    lines = faces.drawn.lines(svg.HEAVY)
    upper, lower = sorted(lines, key=lambda line: min(y for _, y in line.points))
    for line, angle in ((upper, top), (lower, saw)):
        label = faces.label(degrees(angle))
        assert near(abs(90 - abs(direction(*line.points))), float(angle) * 180 / 3.14159265, 0.2)
        assert label.at[1] < upper.points[0][1] if line is upper else label.at[1] > lower.points[0][1]
