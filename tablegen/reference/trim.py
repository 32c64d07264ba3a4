"""Compound miters of fascia and trim at a square corner of equal pitches, and cuts of sheathing."""

from __future__ import annotations

from dataclasses import dataclass

from tablegen.figures import Figure
from tablegen.geometry import trim
from tablegen.geometry.corner import square_corner
from tablegen.pitch import Pitch
from tablegen.reference.finish import deg, mark
from tablegen.reference.table import Table
from tablegen.settings import Settings


@dataclass(frozen=True, slots=True)
class TrimRow:
    """Miter: on the face, from square across. Bevel: blade from square to the face. A plumb fascia: 0 and 45."""

    pitch: Pitch
    square_miter: Figure
    """deg, board standing square to the slope."""
    square_bevel: Figure
    plane_miter: Figure
    """deg, board lying in the roof plane along the eave."""
    plane_bevel: Figure
    sheathing: Figure
    """deg, on the sheet's face, from the edge along the eave to the hip or valley."""
    sheathing_figure: Figure
    """in, against 12 on the square: 12 along the eave's edge, this up the slope."""


def trim_rows(settings: Settings) -> list[TrimRow]:
    """Return one row a pitch."""
    rows = []
    for pitch in settings.pitches:
        at = square_corner(pitch.slope, pitch.slope)
        standing, lying, sheet = trim.square_to_slope(at), trim.in_the_plane(at), trim.sheathing_from_eave(at)
        rows.append(
            TrimRow(
                pitch,
                deg(standing.miter),
                deg(standing.bevel),
                deg(lying.miter),
                deg(lying.bevel),
                deg(sheet),
                mark(12 * sheet.tangent, settings),
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
            ('pitch', 'square: miter', 'square: bevel', 'flat: miter', 'flat: bevel', 'sheathing', 'on 12'),
            'miter on the face, from square; bevel: blade from square; square: board square to the slope; flat: lying '
            'in the roof plane; sheathing from the edge along the eave; a plumb fascia: 0 and 45',
            trim_rows,
        ),
    ]
