"""What brings a hip into the two roof planes, and boards that follow them: backing, drop, trim."""

from __future__ import annotations

from tablegen.geometry import backing, trim
from tablegen.geometry.corner import Corner
from tablegen.geometry.trim import Miter
from tablegen.roof.readings import Group, degrees, length
from tablegen.roof.side import Side


def backing_of(side: Side) -> Group:
    """Return the backing bevel of the hip's face towards this side."""
    depth = backing.drop_square(side.ask.hip_in, side.at)
    return Group(
        'backing',
        (degrees('bevel', backing.bevel(side.at)), length('depth_down_side', depth, side.ask.measure)),
        'bevel: from the square top, in a section square to the hip, each side of its center line; depth down side: '
        "on the hip's side, square to its edge, from the top edge to where the backed face ends",
    )


def drop_of(side: Side) -> Group:
    """Return the drop of a square-topped hip for this side."""
    thick, at, measure = side.ask.hip_in, side.at, side.ask.measure
    return Group(
        'drop',
        (
            length('plumb', backing.drop_plumb(thick, at), measure),
            length('square_to_edge', backing.drop_square(thick, at), measure),
            length('hip_thickness', thick, measure),
        ),
        'how far the square top of a hip lies under the line where the roof planes meet; two ways to measure one '
        'lowering; the height above plate and the heel of a dropped hip have it already: nothing more is taken off',
    )


def _miter(key: str, cut: Miter) -> Group:
    return Group(key, (degrees('miter', cut.miter), degrees('bevel', cut.bevel)))


def trim_of(at: Corner) -> Group:
    """Return the compound miters of boards on side A and the cut of sheathing."""
    return Group(
        'trim',
        (
            _miter('standing_plumb', trim.standing_plumb(at)),
            _miter('square_to_slope', trim.square_to_slope(at)),
            _miter('in_the_roof_plane', trim.in_the_plane(at)),
            Group(
                'sheathing',
                (
                    degrees('from_eave', trim.sheathing_from_eave(at)),
                    degrees('plumb_bevel', trim.sheathing_plumb_bevel(at)),
                ),
                'from eave: on the face of the sheet, from its edge along the eave to the hip; plumb bevel: blade from '
                'square to the face, for a plumb edge',
            ),
        ),
        "miter: on the board's face, from the line square across it; bevel: blade from square to that face",
    )
