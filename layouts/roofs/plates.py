"""The layout of plates: along each from its left end, where every rafter's near side is, and how far the next one stands."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from msgspec import Struct
from msgspec.structs import replace

from layouts.paper.typeface import advance_em
from layouts.roofs.lines import marked
from layouts.told.blocks import in_inches
from layouts.words.lists import joined
from layouts.words.marking import slope_name
from layouts.words.say import _
from tablegen.frame.frame import Frame
from tablegen.frame.framed import Standing
from tablegen.frame.plan import ROUND_OFF_IN, Level, LevelBoard, Point, Slope
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import Figure, length_figure
from tablegen.roof.member import Kind, inches_of

FEW = 8
"""Places that stand in one column."""
SIZE, PART, MARK = 13.4, 0.9, 11.5
"""Of the figures of a table, of their fractions as a share of that, and of marks."""
FIGURES, MARKS = (86, 600), (76, 800)
"""How wide and how heavy they are."""
GAP, BETWEEN = 6.0, 15.0
"""After a cell, and after a column of places."""


class Place(Struct, frozen=True):
    """One rafter on its plate."""

    mark: str
    near: Figure
    """Where the line is drawn; the X stands on its right."""
    center: Figure
    bay: Figure | None
    """From the center of the one before; None of the first."""
    odd: bool
    """Whether that is not the usual spacing."""
    off_plate: bool
    """Whether it stands on no plate: on a ridge, a purlin or a valley."""
    on_board: Figure | None
    """Where the line is drawn on the ridge or ledger that its upper end stands on, from that one's left end; None where there is none."""


class PlateLayout(Struct, frozen=True):
    """Plates laid out alike."""

    slopes: str
    length: str
    board: str
    """The mark of the ridge or ledger that its rafters' upper ends stand on, '' where there is none."""
    columns: tuple[tuple[Place, ...], ...]
    bays: str
    """How wide those are that are not the spacing."""
    before: bool
    """Whether one stands before the left end, over a valley."""


def plate_layouts(frame: Frame, width: float) -> list[PlateLayout]:
    """Return the layouts of all plates, within so many units."""
    found: dict[tuple[object, ...], tuple[list[str], PlateLayout]] = {}
    for slope in frame.plan.slopes:
        board = _board(frame, slope)
        rows = sorted(
            (
                (
                    inches_of(standing.center),
                    marked(framed),
                    standing.near_edge,
                    standing.center,
                    framed.member.kind,
                    _on_board(board, slope, standing),
                )
                for framed in frame.members
                for standing in framed.standing
                if standing.slope == slope.name and standing.center and standing.near_edge
            ),
            key=lambda one: float(one[0]),
        )
        if not rows:
            continue
        places = tuple(_places(frame, rows))
        key = (
            tuple((one.mark, one.near.text, one.on_board and one.on_board.text) for one in places),
            length_figure(slope.length_in, frame.asked.measure).text,
        )
        layout = PlateLayout(
            '',
            in_inches(length_figure(slope.length_in, frame.asked.measure)),
            board.mark if board else '',
            _columns(places, width),
            _bays(places),
            float(rows[0][0]) < 0,
        )
        found.setdefault(key, ([], layout))[0].append(slope_name(slope.name))
    return [replace(one, slopes=joined(names)) for names, one in found.values()]


def _board(frame: Frame, slope: Slope) -> LevelBoard | None:
    """Return the ridge or ledger that a slope's rafters run up to, if they do."""
    there = (
        one
        for one in frame.levels
        if one.level is Level.LEDGER or (one.level is Level.RIDGE and slope.run_to(one.mark) is not None)
    )
    return next(there, None)


def _on_board(board: LevelBoard | None, slope: Slope, standing: Standing) -> Exact | None:
    """Return how far from the left end of such a board, seen as the plate is, a rafter's near side stands on it."""
    if board is None or standing.center is None or standing.near_edge is None:
        return None
    places = [_place(slope, point) for point in (board.start, board.end, standing.end)]
    (first, inward), (last, _inward), (_along, up) = (
        sorted(places[:2], key=lambda one: float(one[0])) + places[2:]
    )
    beside = board.level is Level.LEDGER  # which every rafter of the slope stands against
    if not beside and abs(float(up) - float(inward)) > ROUND_OFF_IN:
        return None
    at = inches_of(standing.near_edge) - first
    return at if at < last - first and inches_of(standing.center) > first else None


def _place(slope: Slope, point: Point) -> Point:
    """Return how far along a slope's plate line and inward of it a point of the plan is."""
    (x, y), (left, low), (right, up) = point, slope.origin, slope.along
    return (x - left) * right + (y - low) * up, (y - low) * right - (x - left) * up


def _places(
    frame: Frame, rows: Sequence[tuple[Exact, str, Figure, Figure, Kind, Exact | None]]
) -> list[Place]:
    asked, found = frame.asked, []
    before: Exact | None = None
    for at, mark, near, center, kind, on_board in rows:
        bay = None if before is None or at == before else at - before
        odd = bay is not None and bay != asked.spacing_in
        told = None if bay is None else length_figure(bay, asked.measure)
        on = None if on_board is None else length_figure(on_board, asked.measure)
        found.append(Place(mark, near, center, told, odd, not kind.stands_on_plate, on))
        before = at
    return found


def _columns(places: tuple[Place, ...], width: float) -> tuple[tuple[Place, ...], ...]:
    """Return many places in two columns, where their figures have room side by side."""
    half = -(-len(places) // 2)
    halves = places[:half], places[half:]
    return halves if len(places) > FEW and sum(map(_wide, halves)) <= width + BETWEEN else (places,)


def _wide(places: tuple[Place, ...]) -> float:
    """Return how wide the table of some places is."""
    figures = zip(*((one.near, one.center, one.bay, one.on_board) for one in places), strict=True)
    cells = [[_long(figure.text) for figure in column if figure] for column in figures]
    cells.append([MARK * advance_em(f'({one.mark})', *MARKS) for one in places])
    crosses = SIZE * 2 * advance_em(' X', *FIGURES)
    return sum(max(column, default=0.0) + GAP for column in cells) + crosses + BETWEEN


def _long(text: str) -> float:
    """Return how long a figure is, its fraction in smaller type."""
    whole, _space, part = text.rpartition(' ') if '/' in text else (text, '', '')
    return SIZE * advance_em(whole, *FIGURES) + SIZE * PART * advance_em(f' {part}' if part else '', *FIGURES)


def _bays(places: tuple[Place, ...]) -> str:
    odd = [(one, before) for before, one in pairwise(places) if one.odd and one.bay]
    return '; '.join(
        _('{before} to {mark}: {bay}').format(before=before.mark, mark=one.mark, bay=in_inches(one.bay))
        for one, before in odd
        if one.bay
    )
