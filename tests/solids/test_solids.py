"""Roofs of solids cut from the printed pages alone: they close within the rounding, and no figure may be misread.

The pages are the skewed book's, read back from its finished PDF by title, section, name and head. What a carpenter sets or
measures himself is in hands.py: run, spacing, the sizes of the stock (PS 20). Everything else is geometry: where a solid's
faces are.
"""

from __future__ import annotations

import ast
from pathlib import Path

import pytest
from each import some
from every_assembly import HIP_ENDS, PAIRS, SHEDS, TWO_PITCHES, VALLEYS
from names import (
    CHEEKS,
    COMMON,
    CORNER,
    CORNER_MOUTH,
    DROPPED,
    HEEL,
    HEIGHT,
    JACKS,
    MOUTH,
    NOTCH,
    OFF,
    ON_SIDE,
    TWO,
    VALLEY,
    WOOD,
)  # fmt: skip
from reading import Place
from skewed import PITCHES

BOTH = tuple(PITCHES)
EVERY = [(name, pitch) for name in (*HIP_ENDS, *VALLEYS, *SHEDS) for pitch in BOTH]
EVERY += [(name, BOTH[0]) for name in TWO_PITCHES]  # their tables hold pitches of their own
ONE_PITCH_EACH = [(name, BOTH[place % 2]) for place, name in enumerate((*HIP_ENDS, *VALLEYS, *SHEDS))]
ONE_PITCH_EACH += [(name, BOTH[0]) for name in TWO_PITCHES]


@pytest.mark.parametrize(('name', 'pitch'), some(EVERY, 3))
def test_it_closes(built, name, pitch):
    """Faces touch, tops lie in the roof planes, and a board's own figures agree: within the rounding of what was read."""
    assert built(name, pitch).open() == []


@pytest.mark.parametrize(('name', 'pitch'), some(EVERY, 3))
def test_no_member_passes_into_another(built, name, pitch):
    made = built(name, pitch)
    assert made.assembly.passing(made.allowed) == []


@pytest.mark.parametrize(
    ('name', 'pitch'),
    [
        *ONE_PITCH_EACH,
        *(pytest.param(*one, marks=pytest.mark.thorough) for one in EVERY if one not in ONE_PITCH_EACH),
    ],
)
def test_faces_bear(built, name, pitch):
    made = built(name, pitch)
    assert made.assembly.bare(made.allowed) == []


@pytest.mark.parametrize('pitch', BOTH)
@pytest.mark.parametrize('name', some([*HIP_ENDS, *VALLEYS, *SHEDS]))
def test_no_figure_may_be_misread(built, name, pitch):
    """Read 1/8 in or a degree too great or too small, a corner's seat 3/8 in, any figure keeps the roof from closing."""
    assert built(name, pitch).unfelt() == []


@pytest.mark.parametrize('pair', PAIRS)
def test_no_figure_of_two_pitches_may_be_misread(built, pair):
    """In one roof or another; where a mark is a sum of four figures, one of them alone may drown in the rounding."""
    roofs = [built(name, BOTH[0]) for name in TWO_PITCHES if name.startswith(f'{pair},')]
    steps = {
        (place, way * one.step) for roof in roofs for place, one in roof.read.used.items() for way in (1, -1)
    }
    felt = set()
    for roof in roofs:
        mine = {(place, way * one.step) for place, one in roof.read.used.items() for way in (1, -1)}
        felt |= mine - set(roof.unfelt())
    assert steps - felt == set()


# One figure read for another ---------------------------------------------------------------------------------------

EXCHANGED = {
    'height and heel of a common': ('hip between commons, dropped, marks', (COMMON, MOUTH, HEIGHT), (COMMON, MOUTH, HEEL)),
    'its notch and the wood left': ('hip between commons, dropped, marks', (COMMON, MOUTH, NOTCH), (COMMON, MOUTH, WOOD)),
    'its plumb and level cut': (
        'shed, wall, marks', (COMMON, '', f'Plumb cut, {ON_SIDE}'), (COMMON, '', f'Level cut, {ON_SIDE}')
    ),
    'heel and seat of a dropped hip': (
        'hip between commons, dropped, saw', (CORNER, CORNER_MOUTH, DROPPED, 'heel, plumb'),
        (CORNER, CORNER_MOUTH, DROPPED, 'seat, level'),
    ),
    'heel and seat of a backed hip': (
        'hip between commons, backed, saw', ('Hip seats, 2×8', '', '', 'backed heel'),
        ('Hip seats, 2×8', '', '', 'backed seat'),
    ),
    'heel and seat of a valley': (
        'valley, two ridges, saw', (CORNER, CORNER_MOUTH, VALLEY, 'heel, plumb'),
        (CORNER, CORNER_MOUTH, VALLEY, 'seat, level'),
    ),
    'height and heel of a valley': (
        'valley, one ridge, marks', (CORNER, CORNER_MOUTH, VALLEY, 'height, plumb'),
        (CORNER, CORNER_MOUTH, VALLEY, 'heel, plumb'),
    ),
    'long and short point': (
        'hip on the ridge, dropped, saw', (JACKS, '', '1', '24 in: long'), (JACKS, '', '1', '24 in: short')
    ),
    'what comes off a hip and off a jack': (
        'hip between commons, dropped, square', (CORNER, OFF, TWO, 'along top'),
        ('Shortening of jacks at a hip or valley', '', '', '3 1/2'),
    ),
    'the cheek of a jack and of a hip': (
        'hip on the ridge, dropped, marks', (CORNER, CHEEKS, 'Jack', 'top edge, angle'),
        (CORNER, CHEEKS, 'Hip, valley', 'top edge, angle'),
    ),
    'theirs on the square': (
        'hip on the ridge, dropped, square', (CORNER, CHEEKS, 'Jack', 'top edge, along the 12', 1),
        (CORNER, CHEEKS, 'Hip, valley', 'top edge, along the 12', 1),
    ),
    'their sides': (
        'valley, two ridges, saw', (CORNER, CHEEKS, 'Jack', 'side, plumb'), (CORNER, CHEEKS, 'Hip, valley', 'side, plumb')
    ),
    'tails of commons and of hips': (
        'hip on the ridge, backed, marks', ('Tails of commons and hip jacks', '', '', '12'),
        ('Tails of hips and valleys', '', '', '12'),
    ),
    'backing and a hip’s plumb cut': (
        'hip on the ridge, backed, marks', (CORNER, '', 'Backing, each face, from the square top'),
        (CORNER, '', f'Plumb cut, {ON_SIDE}'),
    ),
    'drops of both sides': (
        '8 12, ridge over A, dropped, blade', ('Two pitches: backing, drop and eaves', '', '8 12', 'drop B'),
        ('Two pitches: backing, drop and eaves', '', '8 12', 'gap A'),
    ),
    'backing of both sides': (
        '8 12, ridge over A, backed, square', ('Two pitches: backing, drop and eaves', '', '8 12', 'backing A'),
        ('Two pitches: backing, drop and eaves', '', '8 12', 'backing B'),
    ),
}  # fmt: skip
"""An assembly, and two places of one; '' where a row's name is the pitch."""


@pytest.mark.parametrize('pitch', BOTH)
@pytest.mark.parametrize('what', EXCHANGED)
def test_figures_read_for_one_another_keep_it_from_closing(built, what, pitch):
    name, *places = EXCHANGED[what]
    one, two = (Place(page, section, row or pitch, *rest) for page, section, row, *rest in places)

    assert built(name, pitch).exchanged(one, two) != []


# What is read ------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize('pitch', BOTH)
def test_every_figure_of_the_opening_by_member_and_of_the_jacks_is_sawn_by(built, pages, pitch):
    read = {
        (place.page, place.section, place.name, place.head)
        for name in (*HIP_ENDS, *VALLEYS, *SHEDS)
        for place in built(name, pitch).read.used
    }
    both = {(title, *names) for title, page in pages(pitch).openings.items() for names in page.found}
    jacks = {
        (JACKS, '', label, head)
        for part in pages(pitch).grids[JACKS].parts
        for label, cells in part.rows
        for head, cell in zip(part.heads, cells, strict=True)
        if cell and int(label) * float(head.split()[0]) < 40  # those further on would stand under the ridge
    }
    assert both - read == set()
    assert jacks - read == set()


def test_nothing_is_reckoned_by_the_code_under_test():
    """The book is made by a fixture; here stand its pages, geometry and what a carpenter measures."""
    found = set()
    for path in Path(__file__).parent.glob('*.py'):
        for node in ast.walk(ast.parse(path.read_text('utf-8'))):
            if isinstance(node, ast.Import):
                found |= {name.name.partition('.')[0] for name in node.names}
            if isinstance(node, ast.ImportFrom):
                found.add(node.module.partition('.')[0])
    assert found & {'tablegen', 'layouts', 'oracle', 'labels', 'importlib'} == set()
