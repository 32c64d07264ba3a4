"""Compound miters of fascia and trim at a square corner of equal pitches, and cuts of sheathing."""

from __future__ import annotations

from dataclasses import dataclass

from tablegen.geometry import trim
from tablegen.geometry.pitch import Pitch
from tablegen.numbers.figure import Figure
from tablegen.settings import Settings
from tablegen.tables.finish import deg, mark
from tablegen.tables.former import Table


@dataclass(frozen=True, slots=True)
class TrimRow:
    """Miter: on the face, from square across. Bevel: blade from square to the face. A plumb fascia: 0 and 45."""

    pitch: Pitch
    square_to_slope_miter: Figure
    """deg, board standing square to the slope."""
    square_to_slope_bevel: Figure
    in_roof_plane_miter: Figure
    """deg, board lying in the roof plane along the eave."""
    in_roof_plane_bevel: Figure
    sheathing_from_eave: Figure
    """deg, on the sheet's face, from the edge along the eave to the hip or valley."""
    sheathing_up_for_12_along: Figure
    """in, up the slope for 12 along the eave's edge."""


def trim_rows(settings: Settings) -> list[TrimRow]:
    """Return one row a pitch."""
    rows = []
    for pitch in settings.pitches:
        at = pitch.corner
        standing, lying, sheet = trim.square_to_slope(at), trim.in_the_plane(at), trim.sheathing_from_eave(at)
        rows.append(
            TrimRow(
                pitch,
                deg(standing.miter),
                deg(standing.bevel),
                deg(lying.miter),
                deg(lying.bevel),
                deg(sheet),
                mark(12 * sheet.tan(), settings),
            )
        )
    return rows


def listed(settings: Settings) -> list[Table]:
    """Return the tables of this group."""
    return [
        Table(
            'trim',
            'trim',
            'Miters of fascia and trim, and sheathing',
            (
                *('pitch', 'square: miter', 'square: bevel', 'flat: miter', 'flat: bevel'),
                *('sheathing', 'sheathing: 12 &'),
            ),
            'miter on the face, from square across; bevel: blade from square; square: board square to the slope; flat: '
            'lying in the roof plane; sheathing from the edge along the eave, 12 & along that edge and up the slope; a '
            'plumb fascia: 0 and 45',
            trim_rows,
        ),
    ]
