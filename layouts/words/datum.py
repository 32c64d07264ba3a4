"""From where to where the figures of the tables are measured, on which face: of a table as a whole, or of some columns.

What a table says as a whole ends with the mark that joins it to what its columns say.
"""

from __future__ import annotations

from collections.abc import Sequence

from layouts.words.say import N_, say
from tablegen.tables.table import Column, S, Table

MESSAGES = {
    'datum.inches': N_('inches'),
    'datum.feet_and_inches': N_('feet and inches'),
    'datum.level': N_('inches, level,'),
    'datum.level_each': N_('inches, level;'),
    # runs
    'datum.common': N_('along the top edge, plate line to ridge center line'),
    'datum.hip_valley': N_('along the top edge, by COMMON run, corner of the plates to ridge center line'),
    'datum.rise': N_('plumb, plate line to ridge center line'),
    # setting out
    'datum.diagonals': N_('{reads}, outside corner to opposite outside corner; sides in feet'),
    'datum.whole_triangles': N_('any unit, both legs and the diagonal measured in the same one'),
    'datum.braces': N_('{reads}, between the long points; legs from the inner corner to those;'),
    'datum.brace_cut': N_("cut on the brace's side, from square, where it meets the first leg"),
    # ridge
    'datum.shortening_level': N_('inches, level, center line to face, by the thickness of what is met;'),
    'datum.common_at_ridge': N_('common at a ridge: half'),
    'datum.shed_on_ledger': N_('shed on a ledger: all, wall to face'),
    'datum.hip_or_jack': N_(
        'hip at a ridge or between commons, jack at a hip: half of the 45-degree thickness'
    ),
    'datum.end_common': N_(
        "end common: a ridge's theoretical end to its sawn end, hips between commons, by those"
    ),
    'datum.ridge_ends': N_(
        "inches, level, a ridge's theoretical end to its sawn end, each hip with one cheek on its side of the ridge: what "
        'the ridge runs past, and what comes off the end common'
    ),
    'datum.off_along_edge': N_(
        "inches along the top edge, center line's plumb line to the face's, by the thickness of what is met"
    ),
    'datum.sits_down': N_("inches, plumb, where the roof planes meet to the ridge's square top"),
    # seats
    'datum.height': N_('inches, plumb:'),
    'datum.common_heel': N_('heel, seat to underside at the outside of plate'),
    'datum.common_height': N_("by stock: height, plate's top to top edge there"),
    'datum.stock_left': N_('inches, square to the edge:'),
    'datum.common_notch': N_("notch, underside to the notch's corner"),
    'datum.common_left': N_('by stock: left, from there to the top edge'),
    'datum.common_seat': N_("inches, common's seat {seat};"),
    'datum.hip_height': N_("on the center line: height above plate and heel plumb, at the plates' corner"),
    'datum.hip_seat': N_('seat level, from there inwards'),
    'datum.valley_plumb': N_('plumb: depth, height over the inside corner, heel'),
    'datum.valley_level': N_('level: heel out, outwards of it, seat, from heel inwards'),
    'datum.old_rule': N_(
        "inches, plumb, how far a dropped hip on a seat of 17/12 of the common's, {seat}, stands too low; by stock"
    ),
    'datum.longest_seat': N_('inches, level, outside of plate inwards, rounded down; by stock'),
    # tails
    'datum.tail_common': N_('inches along the top edge, plate line to tail end, by the level overhang'),
    'datum.tail_hip': N_(
        'inches along the top edge on its center line, corner of the plates to where the eave lines meet: to a '
        "hip's point, a valley's hollow; by the level overhang of the commons"
    ),
    'datum.tail_fall': N_('inches, plumb, top edge at the plate line to top edge at the end'),
    'datum.plumb_tail_cut': N_('inches, plumb, top edge to underside'),
    'datum.square_tail_cut': N_('inches, level, upper corner of the cut to the plumb line of the lower one'),
    # hips
    'datum.cuts_on_side': N_('cuts on the side, from square across'),
    'datum.per_foot_of_common_run': N_('per foot of common run'),
    'datum.backing': N_('backing of each face, from the square top'),
    'datum.drop_both_ways': N_('drop plumb, and square to the edge, for the set thickness'),
    'datum.drop_plumb': N_('inches, plumb, where the planes meet to the square top, by thickness of the hip'),
    'datum.drop_square': N_(
        "inches, square to the hip's edge; also how far a backed face goes down its side"
    ),
    # jacks
    'datum.jack_line': N_('line: from the plate line to the hip’s or valley’s center line, nothing off'),
    'datum.jack_long_point': N_('long: to the long point of its cheek'),
    'datum.jack_short_point': N_('short: to the short point'),
    'datum.along_edge': N_('inches along the top edge:'),
    'datum.jack_difference': N_('difference per space on center'),
    'datum.jack_off': N_('off: center line to face, at a hip or valley, and of a valley jack at the ridge'),
    'datum.jack_points': N_('points: short point to long point'),
    # cheeks
    'datum.cheek_on_side': N_('side: on the side, from square across, the blade tilted 45°'),
    'datum.cheek_on_top': N_("top: on the top edge, from square across, the hip's left square"),
    'datum.cheek_12': N_('{base} &: the square for that line, marked along the {base}; a valley as a hip'),
    'datum.backed_on_top': N_(
        'top: on the backed face, from square across the hip, against a ridge or a common of that side'
    ),
    'datum.backed_12': N_(
        '{base} &: the square for that line, marked along the {base}; on the side as any hip'
    ),
    'datum.set_back': N_(
        "inches along the top edge, mark on the center line to each side's plumb line: ridge, commons, tail, and a valley; "
        'half of short to long point'
    ),
    # trim
    'datum.trim': N_('miter on the face, from square across; bevel: blade from square;'),
    'datum.trim_square': N_('square: board square to the slope'),
    'datum.trim_flat': N_('flat: lying in the roof plane'),
    'datum.sheathing': N_(
        'sheathing from the edge along the eave, {base} & along that edge and up the slope; a plumb fascia: 0 and 45'
    ),
    # gables
    'datum.stud_difference': N_('inches, plumb, per space on center'),
    'datum.stud_top_cut': N_("top cut on the stud's side, from square"),
    'datum.area': N_('roof area over level plan area'),
    # two pitches
    'datum.plan_from_eave_a': N_('plan: in plan, eave A to the hip'),
    'datum.per_foot_of_run_a': N_('per foot of run of A, along the hip'),
    'datum.plumb_cut_of_hip': N_('plumb cut of the hip, on its side, from square across'),
    'datum.jacks_of_both': N_('difference of jacks at {spacing} in, along the slope'),
    'datum.unequal_cheeks': N_(
        'blade: tilt from square, on the side, over the plumb cut; hip A: hip at a ridge over A or a common of B, with the '
        'blade of jack B, hip B that of jack A; {base} &: the square, top edge, marked along the {base}; reach: along the blade, '
        'at least'
    ),
    'datum.backing_of_both': N_('backing from the square top'),
    'datum.drops_plumb': N_('drops plumb'),
    'datum.gap_a': N_('gap A: plumb, between the edge towards A and its plane, the hip dropped by drop B'),
    'datum.overhang_b': N_('eave B: level overhang for {overhang} in on A'),
    'datum.slide': N_('slide level, square to the hip, towards eave A, and the one drop, plumb'),
    'datum.slid_jacks': N_('jacks of A become shorter, jacks of B longer, level and along the edge'),
    'datum.slid_hip': N_('hip: longer, level, at a ridge over A'),
    'datum.to_its_face': N_("along the member's center line, center line of what it meets to its face"),
    'datum.point_aside': N_("aside: square to the hip, to the commons' corner, where its point stands"),
    'datum.jack_points_of_both': N_('jack: short to long point'),
    'datum.sides_of_both': N_(
        "hip: mark on the center line to its side's plumb line, hip A at a ridge over A, A's fascia or a common of B, "
        "hip B at one over B, B's, or of A"
    ),
    # many sides
    'datum.corner_in_plan': N_('corner inside, in plan'),
    'datum.plate_miter': N_('plate cut from square'),
    'datum.side_and_hip_run': N_('side and hip run per foot of apothem'),
    'datum.apothem': N_('apothem per foot of side'),
    'datum.blade_over_plumb_cut': N_('blade from square, on the side, over the plumb cut'),
    'datum.off_and_points_level': N_('off, hip center line to its side, and points, short to long, level'),
    'datum.reach_least': N_('reach along the blade, at least'),
    'datum.blade_on_side': N_('blade from square, on the side'),
    'datum.peak_side': N_("side: level, the point back to each side's plumb line"),
    'datum.least_post': N_('post: least across flats for square-cut hips'),
    'datum.per_foot_of_apothem': N_('hip per foot of apothem'),
    'datum.its_plumb_cut': N_('its plumb cut on the side, from square'),
    'datum.jacks_along_slope': N_('jacks along the slope'),
    'datum.top_edge_12': N_('{base} &: the square, top edge, hip left square, marked along the {base}'),
    'datum.drop': N_('drop plumb'),
    # finding a pitch
    'datum.rise_per_foot': N_('inches of rise per foot of level run'),
    'datum.from_level': N_('degrees from level'),
    'datum.slope_per_foot': N_('slope: inches along it per foot of level run'),
    'datum.under_a_level': N_("plumb, level's underside to the roof"),
}


def datum_of(table: Table[S], columns: Sequence[Column[S]]) -> str:
    """Return from where to where some columns of a table are measured: what it says as a whole, then each clause once."""
    own = dict.fromkeys(say(column.datum) for column in columns if column.datum)
    whole = [say(table.datum)] if table.datum else []
    return ' '.join([*whole, *(['; '.join(own)] if own else [])]).rstrip(',;:')
