"""Where the figures of hips and valleys stand in the book: off, cheeks, bird's mouths.

The opening by member of their pitch first; where it is left out, the reference tables.
"""

from __future__ import annotations

from tablegen.examples.records import CheekCut, Deduction, Mouth, Sources, Stands
from tablegen.examples.sources import in_opening, in_table
from tablegen.geometry.pitch import Pitch
from tablegen.settings import Settings
from tablegen.tables.hip_seat import key_of
from tablegen.tables.members import members


def off_stands(off: Deduction, pitch: Pitch, settings: Settings) -> Sources:
    """Return where a deduction stands, level and along."""
    name, values = 'between' if off.reason == 'between' else 'hip', members(pitch, settings)
    found = in_opening(f'{name}_level', off.level, values, settings)
    found += in_opening(f'{name}_along', off.along, values, settings)
    if found:
        return found
    thick = off.thickness_in
    along = 'shortening-hip', pitch, 'off_along_edge', off.along, settings, thick
    return in_table('shortening-level', thick, 'hip_or_jack', off.level, settings) + in_table(*along)


def side_stands(cheek: CheekCut, pitch: Pitch, settings: Settings) -> Sources:
    """Return where it stands how far from the center's mark the sides are cut."""
    values = members(pitch, settings)
    found = in_opening('side_level', cheek.side_level, values, settings)
    found += in_opening('side_along', cheek.side_along, values, settings)
    return found or in_table(
        'set-backs', pitch, 'set_back', cheek.side_along, settings, settings.hip_thickness
    )


def cut_stands(cheek: CheekCut, pitch: Pitch, settings: Settings) -> Stands:
    """Return where a cheek's angles stand, on the side and on the top edge."""
    values = members(pitch, settings)
    return {
        'side': in_opening('hip_side', cheek.plumb, values, settings)
        or in_table('cheeks', pitch, 'hip_side', cheek.plumb, settings),
        'top': in_opening('hip_top', cheek.top, values, settings)
        or in_table('cheeks', pitch, 'hip_top', cheek.top, settings),
    }


def mouth_stands(way: str, cut: Mouth | None, pitch: Pitch, settings: Settings) -> Stands:
    """Return where height, heel, seat and wood left stand, by 'way_height' and so on.

    Given:
        way  'dropped', 'backed' or 'valley'
    """
    if cut is None:
        return {}
    figures = {'height': cut.height, 'heel': cut.heel, 'seat': cut.seat, 'left': cut.left}
    values, found = members(pitch, settings), {}
    for name, figure in figures.items():
        here = in_opening(f'{way}_{name}', figure, values, settings) if way != 'backed' else ()
        found[f'{way}_{name}'] = here or _in_seats(way, name, cut, pitch, settings)
    if way == 'valley':
        out = in_opening('valley_out', cut.out, values, settings)
        found['valley_out'] = out or _in_seats(way, 'heel_out', cut, pitch, settings)
    return found


def _in_seats(way: str, name: str, cut: Mouth, pitch: Pitch, settings: Settings) -> Sources:
    """Return where a figure stands in the table of hips' or valleys' bird's mouths of the book's own stock."""
    if name == 'left':
        return ()
    member, own = ('valley', settings.valleys) if way == 'valley' else ('hip', settings.hips)
    field = name if way == 'valley' else f'{way}_{name}'
    figure = cut.out if name == 'heel_out' else getattr(cut, name)
    return in_table(key_of(member, settings.rafters, own), pitch, field, figure, settings)
