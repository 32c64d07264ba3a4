"""The proof-reader on patterns: a good one has nothing that differs, and what is planted in its ink or words is found."""

from __future__ import annotations

import random
import re
from collections.abc import Callable
from functools import partial
from math import cos, radians, sin

import pytest
from asking import ask
from msgspec.structs import replace

from layouts.patterns.proof_names import pattern_names
from layouts.pdf.read_back import pages_of
from tablegen.proof.found import Found
from tablegen.proof.ink import Ink, Stroke
from tablegen.proof.page import Page
from tablegen.proof.pattern_page import MM
from tablegen.proof.patterns import read_pattern

ASKED = {
    'common': ('7', '--stock', '2x6', '--seat', '3', '--overhang', '12 in'),
    'jack': ('8', '--member', 'hip-jack', '--stock', '2x6', '--long-side', 'left'),
}
MORE = {
    'hip': ('8', '--member', 'hip', '--hip-stock', '2x10', '--paper', 'a4'),
    'valley': ('5', '--member', 'valley', '--stock', '2x6'),
    'shed': ('4', '--member', 'shed', '--ledger-thickness', '1 1/2', '--run', '8 ft'),
    'degrees': ('30 deg', '--nearest', '1/32'),
}
SAWN, MARK = 0.45, 6.4
"""Width of what is sawn, and reach of a register mark's cross, mm."""
Change = Callable[[Ink, int], Ink]


@pytest.fixture(scope='module')
def made(tmp_path_factory):
    folder = tmp_path_factory.mktemp('patterns')
    for name, words in ASKED.items():
        assert ask('pattern', *words, '--out', str(folder / f'{name}.pdf'))[0] == 0
    return folder


def planted(pdf, change: Change) -> Found:
    """Return what is found where the ink of pages was changed, each told by its number."""
    copy = []
    for page in pages_of(pdf):
        ink = change(page.ink, page.number)
        copy.append(Page(page.number, page.words, page.links, partial(lambda one: one, ink)))
    found = read_pattern(copy, pattern_names())
    assert found
    return found


def said(number: int, begins: str, one: str, other: str) -> Change:
    """Put other words into a line of a page."""

    def change(ink: Ink, at: int) -> Ink:
        if at != number:
            return ink
        assert any(it.text.startswith(begins) and one in it.text for it in ink.said)
        words = (
            replace(it, text=it.text.replace(one, other)) if it.text.startswith(begins) else it
            for it in ink.said
        )
        return replace(ink, said=tuple(words))

    return change


def drawn(number: int, which: Callable[[Stroke], bool], move: Callable[[Stroke], tuple]) -> Change:
    """Draw some strokes of a page otherwise."""

    def change(ink: Ink, at: int) -> Ink:
        if at != number:
            return ink
        assert any(map(which, ink.strokes))
        return replace(
            ink,
            strokes=tuple(replace(one, points=move(one)) if which(one) else one for one in ink.strokes),
        )

    return change


def sawn(one: Stroke) -> bool:
    return abs(one.width / MM - SAWN) < 0.01


def turned(degrees: float, one: Stroke) -> tuple:
    """Turn a stroke about its start."""
    (x, y), (u, v) = one.points
    turn = radians(degrees)
    across, up = u - x, v - y
    return (x, y), (x + across * cos(turn) - up * sin(turn), y + across * sin(turn) + up * cos(turn))


def moved(right: float, up: float, one: Stroke) -> tuple:
    return tuple((x + right * MM, y + up * MM) for x, y in one.points)


def is_bar(one: Stroke) -> bool:
    return abs(one.long / MM - 101.6) < 0.1 and one.points[0][1] == one.points[1][1]


def is_tick(one: Stroke) -> bool:
    return abs(one.long / MM - 0.9) < 0.05 and abs(one.points[0][0] - one.points[1][0]) < 0.01


def is_cross(one: Stroke) -> bool:
    return abs(one.long / MM - MARK) < 0.05 and not one.dashed


def is_shared(one: Stroke) -> bool:
    """Whether a stroke is one of the top edge, which runs over a joint."""
    return abs(one.width / MM - 0.3) < 0.01


PLANTED = {
    'a seat': ('common', said(2, 'seat', '3 in', '4 in'), 2),
    'a heel': ('common', said(2, 'heel', '1 3/4', '1 1/4'), 2),
    'a height': ('common', said(2, 'plate line', '4 5/8', '4 3/8'), 2),
    'names swapped': ('common', said(2, 'seat: 3 in, level', 'seat: 3 in, level', 'heel: 1 3/4 in, plumb'), 2),
    'a tail': ('common', said(2, 'From the plate', '13 7/8', '13 1/8'), 2),
    'a board': ('common', said(1, 'For a board', '5 1/2', '7 1/4'), 1),
    'a pitch': ('common', said(1, 'Common, 7', '7 in 12', '8 in 12'), 1),
    'a page': ('common', said(3, 'page 3', '3 of 3', '2 of 3'), 3),
    'a page to lay it on': ('common', said(2, 'cut here', 'page 3', 'page 1'), 2),
    'an angle': ('common', drawn(1, sawn, partial(turned, 0.5)), 1),
    'a level cut': ('common', drawn(2, sawn, partial(turned, 0.4)), 2),
    'a bar': ('common', drawn(1, is_tick, partial(moved, -1.0, 0.0)), 1),
    'a mark': ('common', drawn(3, is_cross, partial(moved, 0.0, 2.0)), 3),
    'a lap': ('common', drawn(3, is_shared, partial(moved, 0.0, 0.5)), 3),
    'a cheek': ('jack', drawn(2, sawn, partial(moved, 0.6, 0.0)), 2),
    'a hip’s line': ('jack', drawn(2, sawn, partial(turned, 0.5)), 2),
}  # fmt: skip


def test_nothing_differs_in_good_patterns_and_every_page_is_read(made):
    for name, count in (('common', 3), ('jack', 6)):
        status, told, remarks = ask('proof', str(made / f'{name}.pdf'))
        lines = told.splitlines()
        assert (status, remarks, len(lines)) == (0, '', 2), told
        assert re.fullmatch(rf'\d+ figures read on pages 1–{count}: 0 differ', lines[0])


@pytest.mark.parametrize('name', PLANTED)
def test_a_planted_error_is_found(made, name):
    pattern, change, number = PLANTED[name]
    found = planted(made / f'{pattern}.pdf', change)

    near = {number - 1, number, number + 1}
    assert near & {fault.page for fault in found.faults}, found.faults


@pytest.mark.thorough
@pytest.mark.parametrize('name', [*ASKED, *MORE])
def test_whatever_is_sawn_is_missed_where_it_is_moved(name, tmp_path):
    pdf = tmp_path / 'pattern.pdf'
    assert ask('pattern', *(ASKED | MORE)[name], '--out', str(pdf))[0] == 0
    status, told, _ = ask('proof', str(pdf))
    assert (status, ': 0 differ' in told) == (0, True), told
    pages = pages_of(pdf)
    for seed in range(8):
        chosen = random.Random(seed)
        page = chosen.choice([one for one in pages if any(map(sawn, one.ink.strokes))])
        stroke = chosen.choice([one for one in page.ink.strokes if sawn(one)])
        found = planted(pdf, drawn(page.number, lambda one, it=stroke: one == it, partial(turned, 0.6)))
        assert found.faults, (page.number, stroke)


@pytest.mark.thorough
@pytest.mark.parametrize('kind', ['gable', 'hip', 'half-hip', 'wing', 'many-sided', 'bay', 'gambrel'])
def test_patterns_of_a_whole_roof(kind, tmp_path):
    file, pdf = tmp_path / 'roof.toml', tmp_path / 'pattern.pdf'
    file.write_text(ask('roof', '--starter', kind)[1], 'utf-8')
    assert ask('pattern', '--roof', str(file), '--out', str(pdf))[0] == 0
    status, told, _ = ask('proof', str(pdf))

    assert (status, ': 0 differ' in told) == (0, True), told
