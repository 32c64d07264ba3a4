"""What a frame prints: every figure of it by where it stands, as text, and what has no figure: stops, hands, stock.

This is all that the assembly knows of the code under test: no exact value and no line of its plan passes here.
"""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
from msgspec import Struct
from msgspec.structs import replace
from reading import Figure, Place, mixed

from tablegen.frame.frame import Frame
from tablegen.frame.framed import Framed
from tablegen.frame.gable_ends import STUD, Stud
from tablegen.numbers import figure as figures
from tablegen.roof.cheeks import OneCheek, TwoCheeks
from tablegen.roof.member import Kind, Line

MISREAD_IN, MISREAD_DEGREES = 3 / 16, 1.0
"""What a figure is misread by, to see that it matters: what rounding explains where four figures meet is up to 1/8 in."""
COARSE = {'seat': 3 / 8, 'from_plate': 3 / 8}
"""By name, what shows no earlier, in: a seat's and a stud's level place, where the slope makes less of it."""
UNREAD = ('pitch', 'slope', 'stock', 'hold', 'cautions', 'marks', 'run_in', 'overhang_in')
"""What of a member is no figure to saw by, or is read by itself."""


class EndOf(Struct, frozen=True):
    """How one end is cut, as it is told beside its figures."""

    stop: str
    cheeks: int
    long: int
    """The side with the long point: 1 left, -1 right, 0 where none has."""
    hollow: bool
    unlike: bool
    blunt: bool
    laid: bool
    """Whether it is a foot cut level that lies on a sloping roof."""
    square: bool
    """Whether it is a tail at fascias square to the roof."""
    clipped: float
    """Of a blunt end, by how much the board is thicker than what it stands against."""


class Sort(Struct, frozen=True):
    """All members under one mark and hand."""

    page: str
    kind: str
    corner: bool
    thick: float
    depth: float
    lines: tuple[str, ...]
    head: EndOf
    tail: EndOf
    mouth: bool
    barge: bool
    flush: bool
    """Whether its tail is cut off at the plate line; cut there to a valley it is not."""
    places: tuple[tuple[str, np.ndarray], ...]
    """Of each that stands: the name of its slope, and, of hips and valleys, near which corner of the plan it starts."""


class LevelSort(Struct, frozen=True):
    """A ridge or purlin."""

    mark: str
    level: str
    thick: float
    depth: float
    cheeks: int
    """At its end."""
    tilted: bool
    """Whether that is cut at an angle."""


class StudSort(Struct, frozen=True):
    """Gable studs alike."""

    mark: str
    count: int
    slopes: tuple[str, ...]
    thick: float
    depth: float


class Printed:
    """One frame as it is printed; figures by their place."""

    def __init__(self, made: Frame) -> None:
        self.asked = made.asked
        self.known: dict[Place, Figure] = {}
        self.sorts = [self._sort(one) for one in made.members]
        self.levels = [self._level(board, made) for board in made.levels]
        self.studs = [self._stud(one) for one in made.studs]
        for name, one in _walk('', made.heights):
            self.known[Place('heights', '', name)] = _figure(one)
        for check in made.checks:
            if check.name == 'upper_hip_top':
                self.known[Place('checks', check.name, 'drop')] = _figure(check.figures['drop'])

    def figure(self, place: Place) -> Figure:
        """Return the figure at a place."""
        found = self.known[place]
        return replace(found, step=COARSE.get(place.name, found.step))

    def _sort(self, framed: Framed) -> Sort:
        board = framed.member
        page = f'{board.name} {framed.hand}' if framed.hand else board.name
        for mark in board.marks:
            self.known[Place(page, 'marks', mark.line)] = _figure(mark.at)
        for name, one in _walk('', board):
            self.known[Place(page, *_split(name))] = _figure(one)
        for n, standing in enumerate(framed.standing):
            for name in ('center', 'near_edge'):
                if one := getattr(standing, name):
                    self.known[Place(page, 'stands', name, str(n))] = _figure(one)
        marks = {mark.line: mark.at.text for mark in board.marks}
        return Sort(
            page,
            board.kind,
            board.kind.in_corner,
            float(board.thickness_in),
            float(board.stock.depth_in),
            tuple(mark.line.value for mark in board.marks),
            _end(board.head, board),
            _end(board.tail, board),
            board.mouth is not None,
            board.kind in (Kind.BARGE, Kind.UPPER_BARGE),
            not board.tail.off and marks.get(Line.TAIL, '') == marks.get(Line.PLATE),
            tuple((one.slope, np.array([float(x) for x in one.start])) for one in framed.standing),
        )

    def _level(self, board, made: Frame) -> LevelSort:
        length = figures.length_figure(board.length_in, made.asked.measure)
        if board.mark in (level.mark for level in made.plan.levels):
            self.known[Place(board.mark, '', 'length')] = _figure(length)
        if board.end_tilt:
            self.known[Place(board.mark, '', 'end_tilt')] = _figure(board.end_tilt)
        size = float(board.thickness_in), float(board.depth_in)
        return LevelSort(board.mark, board.level, *size, board.end_cheeks, board.end_tilt is not None)

    def _stud(self, stud: Stud) -> StudSort:
        for name, one in _walk('', stud):
            self.known[Place(stud.mark, '', name)] = _figure(one)
        return StudSort(stud.mark, stud.count, stud.slopes, float(STUD.thickness_in), float(STUD.depth_in))


def _split(name: str) -> tuple[str, str]:
    section, _, last = name.rpartition('.')
    return section, last


def _walk(name: str, record) -> Iterator[tuple[str, figures.Figure]]:
    """Return every figure of a record with the names that lead to it."""
    for own in record.__struct_fields__:
        value = getattr(record, own)
        path = f'{name}.{own}' if name else own
        if isinstance(value, figures.Figure):
            yield path, value
        elif isinstance(value, Struct) and own not in UNREAD:
            yield from _walk(path, value)


def _end(end, board) -> EndOf:
    cheeks = {OneCheek: 1, TwoCheeks: 2}.get(type(end.cut), 0)
    stop, against = (end.off.stop, end.off.thickness_in) if end.off else ('', 0)
    clipped = float(board.thickness_in - against)
    return EndOf(
        stop,
        cheeks,
        _side(end.long),
        end.hollow,
        end.other is not None,
        end.blunt,
        end.bevel is not None,
        end.square,
        clipped,
    )


def _side(hand) -> int:
    return {'left': 1, 'right': -1}.get(hand, 0)


def _figure(printed: figures.Figure) -> Figure:
    """Return a figure as it is read: its text, and how far its rounding can have moved it; one rounded up by half as much less."""
    half, text = 1 / (2 * printed.per), printed.text
    if printed.unit == figures.DEGREE:
        return Figure(float(text.removesuffix('°').replace('−', '-')), half, MISREAD_DEGREES)
    value = mixed(text) if '.' not in text else float(text.replace('−', '-'))
    return Figure(value - (half if printed.way == figures.UP else 0), half, MISREAD_IN)
