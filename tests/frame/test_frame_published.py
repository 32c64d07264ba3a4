"""Published worked examples, their roofs asked for whole: the marks that a frame prints are the answers that they print.

Every answer is the row of tests/authorities/ that its id names, with its source there; how coarse it may be is its last printed
place, and half of the sixteenth that the frame prints.
"""

from __future__ import annotations

import tomllib
from collections.abc import Callable
from functools import cache
from math import atan2, cos, degrees, radians
from pathlib import Path

import pytest
from frame_printed import Printed
from frame_roofs import F, asked
from reading import Place

from tablegen.frame.asked import Gable, Hip, HipTop, Wing
from tablegen.frame.frame import frame
from tablegen.numbers.units import Stock

AUTHORITIES = Path(__file__).parents[1] / 'authorities'
NAVY, ARMY, PRESS = 'navedtra-14044', 'army-en0069', 'griffith-1916-examples'
OLD_HIP = Stock('2×8', F(13, 8), F(29, 4))
"""A 2 in hip as it was dressed in 1916: from memory."""

ROOFS = {
    'gable of 16 ft, 7 in 12': asked(Gable(), 7, 192, 240),
    'gable of 20 ft 8 in, 13 in 12': asked(Gable(), 13, 248, 240),
    'gable of 25 ft, 6 in 12': asked(Gable(), 6, 300, 300, spacing_in=F(24), gable_overhang_in=F(0)),
    'gable of 28 ft, 8 in 12': asked(Gable(), 8, 336, 300),
    'gable of 20 ft, 8 in 12': asked(Gable(), 8, 240, 300),
    'hip roof of 30 ft, 8 in 12': asked(Hip(2), 8, 360, 480, spacing_in=F(16)),
    'hip roof of 25 ft, 12 in 12': asked(Hip(2), 12, 300, 420, spacing_in=F(24), hips=OLD_HIP),
    'backed hip roof of 25 ft, 12 in 12': asked(
        Hip(2), 12, 300, 420, spacing_in=F(24), hips=OLD_HIP, hip_top=HipTop.BACKED
    ),
    'wing of 30 ft, 9 in 12': asked(Wing(F(360), F(120), F(100)), 9, 432, 600, spacing_in=F(24)),
}
Get = Callable[['Frame'], float]


class Frame:
    """The printed figures of one roof."""

    def __init__(self, name: str) -> None:
        self.printed = Printed(frame(ROOFS[name]))

    def of(self, page: str, section: str, name: str) -> float:
        return self.printed.figure(Place(page, section, name)).value

    def line(self, page: str) -> float:
        """Return a member's line length: from the center line of what stops it to its plate line."""
        return self.of(page, 'marks', 'plate')

    def level(self, page: str) -> float:
        return self.line(page) * cos(radians(self.of(page, 'cut', 'plumb')))


@cache
def framed(name: str) -> Frame:
    return Frame(name)


ANSWERS: list[tuple[str, str, float, float, str, Get]] = [
    (NAVY, '2-example-001', 111.125, 1 / 16, 'gable of 16 ft, 7 in 12', lambda it: it.line('C')),
    (NAVY, '2-example-004', 0.75, 1 / 16, 'gable of 16 ft, 7 in 12', lambda it: it.of('C', 'head.off', 'level')),
    (ARMY, '2-example-026', 182.79, 31 / 3 / 100, 'gable of 20 ft 8 in, 13 in 12', lambda it: it.line('C')),
    (ARMY, '2-example-023', 144.16667, 10 / 12, 'gable of 20 ft, 8 in 12', lambda it: it.line('C')),
    (PRESS, '2-example-034', 167.75, 25 / 2 / 100, 'gable of 25 ft, 6 in 12', lambda it: it.line('C')),
    (PRESS, '2-example-035', 201.88, 14 / 100, 'gable of 28 ft, 8 in 12', lambda it: it.line('C')),
    (
        NAVY, '3-special-174', 12, 1 / 100, 'gable of 25 ft, 6 in 12',
        lambda it: it.of('GS2', '', 'long') - it.of('GS1', '', 'long'),
    ),
    (NAVY, '2-example-009', 21.21 * 12, 12 / 100, 'hip roof of 30 ft, 8 in 12', lambda it: it.level('H')),
    (
        NAVY, '2-example-010', 10 * 12, 1 / 100, 'hip roof of 30 ft, 8 in 12',
        lambda it: it.of('heights', '', 'planes_meet') - it.of('heights', '', 'above_plate'),
    ),
    (NAVY, '2-example-011', 23.45 * 12, 12 / 100, 'hip roof of 30 ft, 8 in 12', lambda it: it.line('H')),
    (NAVY, '2-example-017', 19.23, 1 / 100, 'hip roof of 30 ft, 8 in 12', lambda it: it.line('HJ1 left')),
    (NAVY, '2-example-018', 38.46, 1 / 50, 'hip roof of 30 ft, 8 in 12', lambda it: it.line('HJ2 right')),
    (
        NAVY, '1-table-227', 10, 1 / 16, 'hip roof of 30 ft, 8 in 12',
        lambda it: it.of('HJ1 left', 'head.cut', 'top_figure_on_12'),
    ),
    (NAVY, '2-example-014', 21.21 * 12, 12 / 100, 'wing of 30 ft, 9 in 12', lambda it: it.level('V1')),
    (NAVY, '2-example-016', 288.15, 15 / 100, 'wing of 30 ft, 9 in 12', lambda it: it.line('V1')),
    (PRESS, '2-example-036', 212.12, 25 / 2 / 100, 'hip roof of 25 ft, 12 in 12', lambda it: it.line('C')),
    (PRESS, '2-example-037', 259.75, 25 / 2 / 100, 'hip roof of 25 ft, 12 in 12', lambda it: it.line('H')),
    (
        PRESS, '2-example-038', 34, 1 / 8, 'hip roof of 25 ft, 12 in 12',
        lambda it: it.line('HJ2 left') - it.line('HJ1 left'),
    ),
    (
        PRESS, '2-example-039', 9 / 16, 1 / 16, 'hip roof of 25 ft, 12 in 12',
        lambda it: it.of('C', 'mouth', 'height_above_plate') - it.of('H', 'mouth', 'height_above_plate'),
    ),
    (
        PRESS, '2-example-040', degrees(atan2(12, 20.8125)), 0.1, 'backed hip roof of 25 ft, 12 in 12',
        lambda it: it.of('H', 'backs', 'left'),
    ),
]  # fmt: skip
"""A source, its row, what it prints in inches or degrees, its last place (that of a unit length as often as it was taken), the roof,
and where the frame prints it."""


ROUNDED = {
    **dict.fromkeys(('3-special-174', '2-example-010', '2-example-038', '2-example-039'), 1 / 16),
    '2-example-040': 0.005,
}
"""What the frame's own rounding may add, other than half of a sixteenth: of two figures that are subtracted, of degrees."""


@pytest.mark.parametrize('answer', ANSWERS, ids=lambda one: f'{one[0]} {one[1]}')
def test_a_frame_prints_the_published_answer(answer):
    source, row, value, place, roof, get = answer
    rows = {
        one['id']: one for one in tomllib.loads((AUTHORITIES / f'{source}.toml').read_text('utf-8'))['value']
    }
    printed = float(rows[row]['value'])

    told_in_feet = rows[row]['unit'] == 'ft'
    assert value == pytest.approx(printed * (12 if told_in_feet else 1)) or row in (
        '2-example-026',
        '2-example-040',
    )
    assert abs(get(framed(roof)) - value) <= place / 2 + ROUNDED.get(row, 1 / 32)


def test_hip_roofs_have_as_many_jacks_as_their_corners_have_spaces():
    """A corner's commons stand 15 ft, 180 in, from it: eleven whole spaces of 16 in before them, on both sides of four corners."""
    sorts = framed('hip roof of 30 ft, 8 in 12').printed.sorts
    jacks = [sort for sort in sorts if sort.kind == 'hip_jack']
    assert (len({sort.page.split()[0] for sort in jacks}), sum(len(sort.places) for sort in jacks)) == (
        11,
        88,
    )
    assert sum(len(sort.places) for sort in sorts if sort.kind == 'hip') == 4
    assert sum(len(sort.places) for sort in sorts if sort.kind == 'end_common') == 2
    # from 180 in to 300 in: both, and between them one every 16 in
    assert sum(len(sort.places) for sort in sorts if sort.kind == 'common') == 2 * 9
