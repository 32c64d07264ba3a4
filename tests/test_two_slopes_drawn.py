"""A roof of two slopes by its ink: each rafter at its pitch and over its run, called by its mark."""

from __future__ import annotations

from math import atan, cos

import pytest
from drawn import direction, near, to_stretch
from inked import Inked, inked

from layouts.drawings import svg
from layouts.drawings.two_slopes import Slope, two_slopes
from layouts.words.drawings import TWO_SLOPES

UNIT = 0.06
"""Units: what two points may differ by where both were written to hundredths."""
DEPTH, OUT = 7.25, 8.0
SALTBOXES = [((0.75, 60), (5 / 12, 108)), ((2 / 3, 60), (1 / 3, 120)), ((5 / 6, 36), (1 / 4, 120))]
GAMBRELS = [
    ((4 / 3, 36), (5 / 12, 60)),
    ((2 / 3, 36), (1 / 3, 60)),
    ((11 / 12, 36), (1 / 2, 60)),
    ((4 / 3, 84), (5 / 12, 24)),
]


def drawn(slopes, meet: bool) -> Inked:
    marks = ('C1', 'C2') if meet else ('LR', 'UR')
    each = [
        Slope(slope, run, mark, f'{run // 12} ft') for (slope, run), mark in zip(slopes, marks, strict=True)
    ]
    return inked(two_slopes(tuple(each), meet, DEPTH, OUT, TWO_SLOPES))


@pytest.mark.parametrize(
    ('slopes', 'meet'), [*((one, True) for one in SALTBOXES), *((one, False) for one in GAMBRELS)]
)
def test_rafters_lie_at_their_pitches_over_their_runs(slopes, meet):
    drawing = drawn(slopes, meet)
    bands = [one.points for one in drawing.drawn.outlines(svg.HEAVY)]
    first, second = bands[:2]
    runs = [drawing.dimension(f'{run // 12} ft') for _, run in slopes]
    units = runs[0].length / slopes[0][1]
    tops = [band[:2] for band in (first, second)]

    assert len(bands) == (2 if meet else 4)
    assert drawing.collisions() == []
    assert near(runs[1].length / slopes[1][1], units, 0.002)
    assert all(near(direction(*one.ends) % 180, 0, 0.1) for one in runs)
    assert near(max(x for x, _ in runs[0].ends), min(x for x, _ in runs[1].ends), UNIT)
    for (slope, _), (low, high), deep in zip(slopes, tops, (first, second), strict=True):
        assert near(abs((high[1] - low[1]) / (high[0] - low[0])), slope, 0.01)
        assert near(deep[3][1] - deep[0][1], DEPTH / cos(atan(slope)) * units, UNIT)
    assert near(abs(runs[0].ends[0][0] - tops[0][0][0]), OUT * units, UNIT) or near(
        abs(runs[0].ends[1][0] - tops[0][0][0]), OUT * units, UNIT
    )
    for mark, own, other in zip(('C1', 'C2') if meet else ('LR', 'UR'), tops, reversed(tops), strict=True):
        at = drawing.label(mark).at
        assert to_stretch(at, *own) < to_stretch(at, *other)
