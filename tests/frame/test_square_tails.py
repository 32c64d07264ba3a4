"""Square tails: their fascias' lengths by three planes in space, and tails too short for such a cut refused; tests/frame assembles them."""

from __future__ import annotations

from fractions import Fraction as F

import numpy as np
import pytest
from frame_roofs import FIXED
from msgspec.structs import replace
from roof_files import roof

from layouts.words.error import error_lines
from tablegen.errors import BookError
from tablegen.frame.frame import frame
from tablegen.roof.member import Hand, Kind
from tablegen.roof.pattern import Face, Name, pattern_of

THICK, DEEP = 0.75, 5.5
"""Of the fascia; its depth is the usual face of a tail."""


def long_point(own: float, other: float, inside: bool) -> float:
    """Return how far out of the other eave a fascia's long point lies, its tails' upper corners at 0.

    Source: y out of its own eave, x out of the other, z up. A fascia's back is the plane square to its slope through its eave, its
    outer face as far out as it is thick; its edges are square to both, in the roof plane and so deep under that.
    """
    out = 0.0 if inside else THICK
    root, across = np.hypot(1, own), np.hypot(1, other)
    faces = [
        ([0, 1, -own], out * root),  # its own face
        ([1, 0, -other], out * across),  # the other's
        ([0, own, 1], -DEEP * root if inside else 0.0),  # its lower edge, or its upper one
    ]
    return float(np.linalg.solve([plane for plane, _ in faces], [far for _, far in faces])[0])


SEVEN, SIX, NINE = 7 / 12, 6 / 12, 9 / 12
FASCIAS = {
    'hip, square tails, dropped': [122 + 24 + 2 * long_point(SEVEN, SEVEN, False)] * 2
    + [200 + 24 + 2 * long_point(SEVEN, SEVEN, False)] * 2,
    'hip of two pitches, square tails': [144 + 32 + 2 * long_point(NINE, SIX, False)] * 2
    + [220 + 2 * 16 * 6 / 9 + 2 * long_point(SIX, NINE, False)] * 2,
    # a wing of 7 in 12 on a main roof of 6: 60 in on from the left end, its own overhang 12 · 6/7
    'wing, square tails': [220.0]
    + [60 - (72 / 7 + long_point(SIX, SEVEN, True)), 220 - 156 - (72 / 7 + long_point(SIX, SEVEN, True))]
    + [60 - (12 + long_point(SEVEN, SIX, True))] * 2,
}  # fmt: skip


@pytest.mark.parametrize('name', FASCIAS)
def test_fascias_on_square_tails_are_as_long_as_their_miters_ask(name):
    made = frame(replace(FIXED[name], fascia_in=F(3, 4)))

    assert sorted(float(one.length_in) for one in made.levels if one.level == 'fascia') == pytest.approx(
        sorted(FASCIAS[name])
    )


def on_the_side(own: float, other: float, depth: float) -> float:
    """Return how far down along a hip the line of its own eave's fascia on that side ends from where it begins, at the bottom edge.

    Source: y out of its own eave, x out of the other, z up; a hip falls as both planes do, and its sides are plumb.
    """
    down = np.array([1 / other, 1 / own, -1.0])
    side = np.cross(down, [0, 0, 1])
    line = np.cross([0, 1, -own], side)
    along = down / np.linalg.norm(down)
    under = np.cross(side, along) / np.linalg.norm(side)
    return float(line @ along / (line @ under) * depth * -np.sign(under[2]))


def test_a_pattern_has_the_leaning_lines_of_a_square_tail_on_its_own_sides():
    """Of a hip of 6 and 9 in 12, on whose hands the two slopes lie in turn; of a common square across."""
    for one in frame(FIXED['hip of two pitches, square tails']).members:
        strokes = {
            stroke.face: float(stroke.end.along - stroke.start.along)
            for piece in pattern_of(one.member).pieces
            for stroke in piece.strokes
            if stroke.name is Name.TAIL and stroke.face is not Face.TOP
        }
        if one.member.kind is not Kind.HIP:
            assert list(strokes.values()) in ([0.0], [0.0, 0.0]), one.member.name
            continue
        depth = float(one.member.stock.depth_in)
        wanted = [on_the_side(SIX, NINE, depth), on_the_side(NINE, SIX, depth)]
        got = [strokes[Face.LEFT], strokes[Face.RIGHT]]
        assert got == pytest.approx(wanted if one.hand is Hand.LEFT else wanted[::-1]), one.hand


@pytest.mark.parametrize(
    ('kind', 'out', 'line'),
    [
        # 2×8 at 7 in 12: the cut comes down 7 1/4 · sin 30.26° = 3.653 in farther in, and so much along 1.158 times as long
        ('gable', '3 in', 'tails 1 in longer along the top edge, or more'),
        ('gable', '0', 'tails 4 1/4 in longer along the top edge, or more'),
    ],
)
def test_a_square_tail_that_would_be_cut_into_its_mouth_is_refused(kind, out, line):
    asked = roof(kind, f'cuts.tails = "square"\noverhang.eave = "{out}"\nsmallest_part = "1/4"')

    with pytest.raises(BookError) as caught:
        frame(asked)
    assert error_lines(caught.value) == [
        f'cuts.tails: cut square to the top edge, the tail of C would be cut into its bird’s mouth; allowed: {line}; '
        'next: a longer overhang, or plumb tails'
    ]
