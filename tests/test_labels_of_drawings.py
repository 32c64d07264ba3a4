"""Drawings as they stand on the skewed book's pages: what their parts are called, which figure stands at which name."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

import pytest
from drawn import near
from fifty_digits import mpf
from inked import Inked, Label, drawings_on
from labels.drawn_names import NAMES
from labels.in_words import DRAWN, figures
from oracle import cuts, hip_ends, shortening, trim
from oracle.corner import common_length, corner, hip_plan_angle
from oracle.rounding import decimal, degrees, part
from skewed import HIP, PITCHES, RIDGE, SKEWED

from layouts.drawings import svg
from layouts.pages.book import plan
from layouts.words import drawings as words
from layouts.words.drawings import ROOF_DRAWINGS
from tablegen.settings import read_settings

TOLD = figures()


@pytest.fixture(scope='module')
def drawings() -> dict[str, list[Inked]]:
    """Return the drawings of the first page of each kind."""
    planned, found = plan(read_settings(SKEWED, '')), {}
    made = planned.pages()
    for place, draft in enumerate(planned.drafts):
        if draft.template.startswith(('ref_', 'values', 'how_to')) and draft.template not in (
            *found,
            'ref_table',
        ):
            found[draft.template] = drawings_on(made[place])
    return found


def test_parts_are_called_by_their_names():
    told = {key: ROOF_DRAWINGS.get(key) or vars(words)[key.upper()] for key in NAMES}
    assert {
        key: {part: name for part, name in names.items() if part != 'title'} for key, names in told.items()
    } == NAMES
    assert set(ROOF_DRAWINGS) <= set(NAMES)


def beside(drawing: Inked, name: str, others: Sequence[str], axis: int) -> list[str]:
    """Return the labels that stand nearer to a name than to other names, across (0) or up and down (1)."""
    named = {one: drawing.label(one).at[axis] for one in (name, *others)}
    return [
        label.text
        for label in drawing.labels
        if label.text not in named
        and label.text not in NAMES['ends'].values()
        and min(named, key=lambda one: abs(named[one] - label.at[axis])) == name
    ]


def inches(value) -> str:
    return f'{part(value)} in'


def trim_labels(board) -> list[str]:
    return [f'miter {degrees(trim.miter(DRAWN, board))}', f'bevel {degrees(trim.bevel(DRAWN, board))}']


ACROSS, DOWN = 0, 1
FIGURES = {
    ('ref_ridge', ACROSS): {
        'common, ridge': [inches(shortening.common_at_ridge(DRAWN, RIDGE)[0])],
        'hip, ridge': [inches(shortening.hip_at_ridge(DRAWN, RIDGE)[0])],
        'jack, hip': [inches(shortening.jack_at_hip(DRAWN, HIP)[0])],
    },
    ('ref_hips', ACROSS): {
        'backed': [degrees(cuts.backing(DRAWN))],
        'left square, dropped': [inches(cuts.drop_square(DRAWN, HIP))],
    },
    ('ref_cheeks', DOWN): {
        'top edge': [degrees(cuts.jack_cheek(DRAWN))],
        'side': [degrees(cuts.jack_saw(DRAWN))],
    },
    ('ref_past_scale', DOWN): {
        'square top': [degrees(cuts.hip_cheek(DRAWN))],
        'side': [degrees(cuts.hip_saw(DRAWN))],
    },
    ('ref_trim', ACROSS): {
        'plumb': ['miter 0.00°', 'bevel 45.00°'],
        'square to the slope': trim_labels(trim.standing(DRAWN)),
        'flat on the slope': trim_labels(trim.lying(DRAWN)),
    },
}
"""By page, and whether its names stand side by side or one below the other: each name and the figures at it."""


@pytest.mark.parametrize(('template', 'axis'), FIGURES)
def test_a_figure_stands_at_the_name_of_what_it_measures(drawings, template, axis):
    (drawing,), wanted = drawings[template], FIGURES[template, axis]
    found = {name: beside(drawing, name, [one for one in wanted if one != name], axis) for name in wanted}

    assert found == wanted


def test_what_the_ends_of_a_ridge_run_past(drawings):
    (drawing,) = drawings['ref_ridge_end']
    for name, figure in (('hips between commons', TOLD_PAST[0]), ('hips on the ridge', TOLD_PAST[1])):
        assert near(drawing.label(name).at[0], drawing.label(figure).at[0], 0.1)


TOLD_PAST = (
    inches(shortening.past_end_between_commons(DRAWN, mpf(7) / 4)),
    inches(shortening.past_end_between_hips(DRAWN, RIDGE, HIP)),
)


def test_dimensions_have_their_own_figures(drawings):
    """Each read at its arrow: level or plumb, as the figure is."""
    (gable,), (level,), (jack,), (ends,) = (
        drawings[name] for name in ('ref_gable', 'ref_find_pitch', 'ref_jack_deductions', 'ref_hip_ends')
    )

    assert near(gable.dimension('16 in').direction, 0)
    assert near(abs(gable.dimension(inches(16 * mpf(15) / 24)).direction), 90)
    assert gable.label(degrees(cuts.plumb_cut(DRAWN)))
    assert near(abs(level.dimension(f'{TOLD["gap"]} in').direction), 90)
    assert level.label('7 1/2 in 12')
    assert jack.label(f'off, level: {inches(shortening.jack_at_hip(DRAWN, HIP)[0])}')
    assert [one.text for one in ends.labels if one.text[0].isdigit()] == [
        inches(hip_ends.set_back(DRAWN, HIP)[0])
    ] * 8


def test_the_hip_of_two_pitches_stands_at_its_angle(drawings):
    """6 and 12 in 12: in plan from eave A, the flatter pitch's."""
    (drawing,) = drawings['ref_unequal']
    plan_a = degrees(hip_plan_angle(corner(6, 12)))

    assert drawing.label(plan_a).away(drawing.label('eave A').at, drawing.label('eave A').at) < drawing.label(
        plan_a
    ).away(drawing.label('eave B').at, drawing.label('eave B').at)


def test_the_wedge_of_a_pitch_has_run_rise_and_length_at_their_sides(drawings):
    """Of the book's first pitch: 12 along the foot, the rise at the plumb side, a foot's length on the slope."""
    wedge, square = drawings['values']
    rise = next(iter(PITCHES.values()))
    at = corner(rise)
    sides = wedge_sides(wedge)

    for side, figure in (('foot', '12'), ('plumb', str(rise)), ('slope', decimal(common_length(at, 12), 3))):
        label = wedge.label(figure)
        assert min(sides, key=lambda one: label.away(*sides[one])) == side
    assert wedge.label(degrees(cuts.plumb_cut(at)))
    assert held(square) == {'tongue': [str(rise), 'plumb'], 'body': ['12', 'level']}


def wedge_sides(wedge: Inked) -> dict[str, tuple]:
    foot, square_corner, top, _ = wedge.drawn.outlines(svg.HEAVY)[0].points
    return {'foot': (foot, square_corner), 'plumb': (square_corner, top), 'slope': (top, foot)}


def held(square: Inked) -> dict[str, list[str]]:
    """Return what stands at the mark of each arm, by the arm whose name is nearest."""
    arms: dict[str, list[Label]] = {'tongue': [], 'body': []}
    places = {arm: square.label(arm).at for arm in arms}
    for label in square.labels:
        if label.text not in (*arms, 'RIDGE', 'TAIL'):
            arms[min(places, key=lambda arm: abs(places[arm][0] - label.at[0]))].append(label)
    return {
        arm: [one.text for one in sorted(labels, key=lambda one: one.at[1])] for arm, labels in arms.items()
    }


def test_the_figure_that_is_looked_up_is_framed_in_its_row_and_column(drawings):
    """2 ft 1 in at 5 in 12: 25 in of run, in the row of two feet, under one inch."""
    (drawing,) = drawings['how_to']
    frame = drawing.drawn.outlines(svg.HEAVY)[0].points
    (left, top), _, (right, foot), *_ = frame
    (found,) = [one for one in drawing.labels if left < one.at[0] < right and top < one.at[1] < foot]
    (row,) = [label.text for label in drawing.labels if label.at[0] < 10 and near(label.at[1], found.at[1])]
    (head,) = [
        label.text
        for label in drawing.labels
        if label.text.endswith(' in') and near(label.at[0], found.at[0])
    ]

    assert (found.text, row, head) == (part(common_length(corner(5), 25)), '2', '1 in')


def test_birds_mouths_and_tails_are_drawn_to_the_measures_that_are_told(drawings):
    """Seat to heel, out to seat, overhang to fall: each drawn in the ratio of its figures."""
    (common,), (hip, valley), (tail,) = (drawings[name] for name in ('ref_seat', 'ref_hip_seat', 'ref_tail'))
    for drawing, seat, heel in ((common, 'seat', 'heel'), (hip, 'hip_seat', 'hip_heel')):
        toe, corner_at, foot = drawing.drawn.outlines(svg.HEAVY)[0].points
        assert near((corner_at[0] - toe[0]) / (foot[1] - corner_at[1]), of(seat) / of(heel), 0.05)
    for drawing, one, other, names in (
        (valley, 'valley_out', 'valley_seat', ('heel out', 'seat')),
        (tail, 'out', 'fall', ('overhang', 'fall')),
    ):
        spans = [drawing.dimension(name).length for name in names]
        assert near(spans[0] / spans[1], of(one) / of(other), 0.05)


def of(name: str) -> float:
    """Return a figure of the page as a number."""
    return float(sum(map(Fraction, TOLD[name].split())))
