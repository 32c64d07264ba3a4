"""The layout of plates: along each from its left end, where every rafter's near side is, and how far the next one stands."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from layouts.roofs.lines import marked
from layouts.told.blocks import in_inches
from layouts.words.lists import joined
from layouts.words.marking import slope_name
from layouts.words.say import _
from tablegen.frame.frame import Frame
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import Figure, length_figure
from tablegen.roof.member import Kind, inches_of


@dataclass(frozen=True, slots=True)
class Place:
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


@dataclass(frozen=True, slots=True)
class PlateLayout:
    """Plates laid out alike."""

    slopes: str
    length: str
    columns: tuple[tuple[Place, ...], ...]
    bays: str
    """How wide those are that are not the spacing."""
    before: bool
    """Whether one stands before the left end, over a valley."""


def plate_layouts(frame: Frame) -> list[PlateLayout]:
    """Return the layouts of all plates."""
    found: dict[tuple[object, ...], tuple[list[str], PlateLayout]] = {}
    for slope in frame.plan.slopes:
        rows = sorted(
            (
                (
                    inches_of(standing.center),
                    marked(framed),
                    standing.near_edge,
                    standing.center,
                    framed.member.kind,
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
            tuple((one.mark, one.near.text) for one in places),
            length_figure(slope.length_in, frame.asked.measure).text,
        )
        layout = PlateLayout(
            '',
            in_inches(length_figure(slope.length_in, frame.asked.measure)),
            _columns(places),
            _bays(places),
            float(rows[0][0]) < 0,
        )
        found.setdefault(key, ([], layout))[0].append(slope_name(slope.name))
    return [
        PlateLayout(joined(names), one.length, one.columns, one.bays, one.before)
        for names, one in found.values()
    ]


def _places(frame: Frame, rows: Sequence[tuple[Exact, str, Figure, Figure, Kind]]) -> list[Place]:
    asked, found = frame.asked, []
    before: Exact | None = None
    for at, mark, near, center, kind in rows:
        bay = None if before is None or at == before else at - before
        odd = bay is not None and bay != asked.spacing_in
        told = None if bay is None else length_figure(bay, asked.measure)
        found.append(Place(mark, near, center, told, odd, not kind.stands_on_plate))
        before = at
    return found


def _columns(places: tuple[Place, ...]) -> tuple[tuple[Place, ...], ...]:
    half = -(-len(places) // 2)
    return (places[:half], places[half:]) if len(places) > 8 else (places,)


def _bays(places: tuple[Place, ...]) -> str:
    odd = [(one, before) for before, one in pairwise(places) if one.odd and one.bay]
    return '; '.join(
        _('{before} to {mark}: {bay}').format(before=before.mark, mark=one.mark, bay=in_inches(one.bay))
        for one, before in odd
        if one.bay
    )
