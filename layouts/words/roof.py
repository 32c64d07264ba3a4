"""An answer about a roof in words: from which line its figures are measured, its names, and what it says by name."""

from __future__ import annotations

from collections.abc import Iterable

from layouts.words.fields import label
from layouts.words.say import N_, say
from tablegen.messages import Message

MESSAGES = {
    'roof.length': N_(
        'common: along the slope, plate line to ridge center line; hip or valley: along its own, on its center line, '
        'corner of the plates to ridge center line; rise: plumb, plate line to ridge center line; nothing is taken off'
    ),
    'roof.length.side': N_(
        'run: level; common: along the slope; rise: plumb; all plate line to ridge center line'
    ),
    'roof.length.many_sided': N_(
        'to the axis in the middle, nothing taken off; common: in the middle of a side, along the slope from the plate '
        'line; hip: along its own on its center line, from the corner of the plates; rise: plumb'
    ),
    'roof.length.to_wall': N_(
        "rafter: along the slope, plate line to the wall's face, nothing taken off; rise: plumb, between the same two"
    ),
    'roof.length.to_ledger': N_(
        "rafter: along the slope, plate line to the ledger's face, nothing taken off; rise: plumb, between the same two"
    ),
    'roof.cut': N_(
        'on the side of the board, from the line square across it; the level cut is square to the plumb cut'
    ),
    'roof.square': N_(
        "on the board's top edge, in inches; the line along the body is level, the line along the tongue is plumb; a "
        'figure to the nearest 1/16; where the tongue is too short for the rise both figures are halved'
    ),
    'roof.level_and_along': N_(
        "level: in plan, along the member's own center line; along: the same on its top edge"
    ),
    'roof.shortening': N_(
        "level: in plan, along the member's own center line, from the center line of what it meets to its face; along: "
        'the same on its top edge; hip or valley at ridge: one cheek, on the side of a ridge over this side; a cripple '
        'between hip and valley: as a jack at each'
    ),
    'roof.shortening.many_sided': N_(
        "jack at hip: from the hip's center line to its face; hip at least post: from the axis to the face of the "
        'smallest post on which all hips find room, cut plumb and square; on a wider post half of its width across flats'
    ),
    'roof.end_common': N_(
        "an end common meets the ridge's end, and just what the ridge runs past its theoretical end comes off. Between "
        'commons: each hip has a double cheek and stands in the corner of the last side common and the end common; the '
        'ridge runs half a common past. Hips on ridge: each hip has one cheek, on its side of the ridge; the ridge runs '
        'past as far as their cheeks bear, and its sides and those of an end common of its thickness are one plane; a '
        'thicker end common is clipped to both hips, from clip back, level, with the cheek of a jack'
    ),
    'roof.sawn': N_(
        'along the top edge, what is taken off for ridge and commons being off, each rounded once; commons: from the '
        'plate line; hips and valleys: from the corner of the plates, to the plumb line where a cheek starts: between '
        'commons or ridges two cheeks make a point on the center line, and the side against the common or ridge of this '
        'side starts further down; at a ridge over this side one cheek runs from a long point on one side to a short '
        'point on the other'
    ),
    'roof.jack': N_(
        'along the slope, on the top edge; jack n stands n spaces from the corner of the plates, on center; difference '
        'and line length: to the center line of what they meet'
    ),
    'roof.jack.hip': N_(
        'long and short point: to the two plumb lines of its cheek. A hip jack: from the plate line, its long point '
        'away from the corner'
    ),
    'roof.jack.hip_and_valley': N_(
        'long and short point: to the two plumb lines of its cheek. A hip jack: from the plate line, its long point '
        "away from the corner. A valley jack: line length from the ridge's center line, points from its square cut at "
        'the ridge, the long one towards the corner'
    ),
    'roof.seat.common': N_(
        'seat: level, from the outside of plate inwards; heel, height above plate and plumb depth, top edge to '
        'underside: plumb, at the outside of plate; notch depth and stock left over it: square to the edge; longest '
        'seats: rounded down; geometry only, not strength'
    ),
    'roof.seat.hip': N_(
        "on the hip's center line, at the outer corner of the plates; height above plate, heel and plumb depth: plumb; "
        'seat: level along the hip, from that corner inwards; notch depth, stock left and least depth, which just '
        'reaches the plate: square to the edge'
    ),
    'roof.seat.dropped': N_('the drop is off already, nothing more is taken off'),
    'roof.seat.backed': N_('before any backing'),
    'roof.seat.valley': N_(
        "on the valley's center line; height above plate and plumb depth: plumb, over the inside corner of the plates; "
        'heel: plumb, heel back outwards of that corner, towards the tail, level, where the sides meet the outer faces '
        'of the plates; seat: level, from that heel inwards; notch depth, stock left and least depth: square to the '
        'edge; its top is square and not dropped: jacks stand above its edges by the drop'
    ),
    'roof.seat.old_rule': N_(
        "an old shortcut, wrong: it gives the hip 17/12 of the common's seat; low or high: how far its top then stands "
        'under or over where it should, plumb'
    ),
    'roof.seat.of_two': N_(
        'plates at one height; height above plate: plumb, the same on both sides; the hip, not slid, is dropped by the '
        'greater of the two drops'
    ),
    'roof.tail': N_(
        'overhang: level, square to the eave, outside of plate to tail end; common and jack: along the top edge, plate '
        'line to tail end'
    ),
    'roof.tail.rafter': N_(
        'overhang: level, square to the eave, outside of plate to tail end; rafter: along the top edge, plate line to '
        'tail end'
    ),
    'roof.tail.hip_valley': N_(
        'hip and valley: along the top edge, corner of the plates to the point on the center line where the eave lines '
        'meet; hip side and valley side: to the plumb line where the cheek to the fascia of this side starts, short of '
        'that point on a hip, past it on a valley'
    ),
    'roof.tail.hip': N_(
        'hip: along the top edge, corner of the plates to the point on the center line where the eave lines meet; hip '
        'side: to the plumb lines where the two cheeks to the fascias start'
    ),
    'roof.tail.cuts': N_(
        'fall and plumb cuts, top edge to underside: plumb; square cut: where its lower corner stands, inset level, '
        'below plumb'
    ),
    'roof.soffit': N_(
        "face: plumb, from the top edge down; level cut: from the tail's end to the underside; below or above plate: "
        "plumb, from the plate's top to that cut"
    ),
    'roof.cheek': N_(
        'hip or valley at ridge: one cheek over the whole thickness, on the side of a ridge over this side; between '
        'commons or ridges, and at the tail between two fascias: two cheeks, this one on the side towards this roof '
        'plane; point to side: level and along, from the mark on the center line to the plumb line where this cheek '
        "starts on the side: towards the tail from the ridge's end, towards the ridge from a hip's tail, outwards from "
        "a valley's tail, which is hollow"
    ),
    'roof.cheek.faces': N_(
        'top: on the top edge, from the line square across it; top figure: held against {base} on the square, the line '
        'marked along the {base}; top held: the same on body & tongue, marked along the body, both halved where the tongue '
        'is too short; side: the plumb cut, on the side of the board, from the line square across it, and the tilt of '
        'the blade from square, the shoe on that side'
    ),
    'roof.cheek.many_sided': N_(
        'hip at peak: both cheeks, where all hips meet without a post; hip tail: both cheeks, to the fascias; point to '
        'side: level and along, from the point on the center line to the plumb line where a cheek starts on the side, '
        'towards the ridge'
    ),
    'roof.cheek.in_the_plane': N_('its top edge lies in the roof plane'),
    'roof.cheek.cripples': N_(
        'so cut are both ends of a cripple between hip and valley, and the lower end of a valley jack'
    ),
    'roof.cheek.square_top': N_('its top is left square to the sides; a backed top has another line'),
    'roof.cheek.past_scale': N_(
        "the tilt is past a saw's scale, 45 degrees: mark top and sides and cut to the lines with a hand saw; a wheel "
        'saw only if its blade reaches so far (blade reach, along the blade): cut the end plumb and square past the '
        'long point, set the shoe on that end, tilt the blade by end blade tilt and follow the plumb line on the side'
    ),
    'roof.cheek.backed': N_(
        'top: on the backed face towards this side, from the line square across the hip; top figure: held against {base} '
        'on the square, the line marked along the {base}; top held: the same on body & tongue, along the body; the saw as '
        'for a hip that is not backed'
    ),
    'roof.backing': N_(
        'bevel: from the square top, in a section square to the hip, each side of its center line; depth down side: '
        "on the hip's side, square to its edge, from the top edge to where the backed face ends"
    ),
    'roof.drop': N_(
        'how far the square top of a hip lies under the line where the roof planes meet; two ways to measure one '
        'lowering; the height above plate and the heel of a dropped hip have it already: nothing more is taken off'
    ),
    'roof.drop.greater': N_(
        'the hip, on its line, is dropped by the greater of the two drops; its edge towards the other side then lies '
        'so far under that roof plane, plumb: fill the gap, back that edge, or slide the hip'
    ),
    'roof.trim': N_(
        "miter: on the board's face, from the line square across it; bevel: blade from square to that face"
    ),
    'roof.sheathing': N_(
        'from eave: on the face of the sheet, from its edge along the eave to the hip; plumb bevel: blade from square '
        'to the face, for a plumb edge'
    ),
    'roof.ridge': N_(
        "heights: plumb over the plate's top, of the line where the roof planes meet and of the square top of the "
        'ridge, which sits down under it; past end: level, what each end of the ridge of a hip roof runs past its '
        'theoretical end, where its center line and those of the hips meet: hips between commons, or hips on the ridge'
    ),
    'roof.ridge.hip_roof': N_(
        'level: center lines from where the hips of one end meet to where those of the other do, both ends alike; '
        'sawn: what to cut, hips between commons or hips on the ridge'
    ),
    'roof.gable_stud': N_(
        "difference: plumb, per space on center; top cut: on the stud's side, from the line square across it"
    ),
    'roof.area': N_('roof over level plan, any unit'),
    'roof.two_pitches': N_(
        'side A is the pitch and run asked for, side B the other; their ridges and plates are at one height; a ridge '
        'over A runs along eave A'
    ),
    'roof.hip_valley': N_(
        'plan: level, from the eave to the center line; length: along its slope on the center line, corner of the '
        'plates to the ridge center line, nothing taken off; a valley has the same'
    ),
    'roof.double_cheek': N_(
        'aside: level, square to the hip between commons, from its center line to where its two cheeks meet; past half '
        'of its thickness it has one cheek only'
    ),
    'roof.slide': N_(
        'instead of the greater drop: the square-topped hip moved aside, level, square to its length, then dropped '
        'once, plumb, both edges lying in their planes; jacks and hip become longer or shorter by so much, level and '
        "along the top edge; a slid hip misses the plates' corner: its bird's mouth is not given"
    ),
    'roof.eaves': N_(
        'overhangs that end at one height with the plates at one height are those of the sides; raise: plumb, of one '
        'plate, where both overhangs are that of A instead'
    ),
    'roof.many_sided': N_('apothem: level, the middle of the plan to the outside of the middle of a plate'),
    'roof.plan': N_(
        'level, outside of plates; side: corner to corner; plate miter: on top of a plate, from the line square across '
        'it'
    ),
    'roof.peak': N_(
        'point: along the hip, from the axis to where the hip is full width, both cheeks cut; least post: on which '
        'that many square-cut hips find room side by side; each is shortened by half of the post'
    ),
    'roof.shed.to_wall': N_(
        "off: what comes off the run to the wall's face, level, and off the length, along the top edge; sawn: along "
        'the top edge, plate line to the plumb cut at the upper end, rounded once; top at upper end: of the rafter '
        "there, plumb over the plate's top; no ridge, hip or jack"
    ),
    'roof.shed.to_ledger': N_(
        "off: what comes off the run to the ledger's face, level, and off the length, along the top edge; sawn: along "
        'the top edge, plate line to the plumb cut at the upper end, rounded once; top at upper end: of the rafter '
        "there, plumb over the plate's top; no ridge, hip or jack"
    ),
    'roof.pitch_found': N_(
        'rise per {base} in of level run; angle from level; off by: the measured rise less the nearest half pitch'
    ),
    'roof.rectangle': N_(
        'all to the same corners, outside to outside; square when BOTH diagonals measure this'
    ),
    'roof.rectangle_check': N_(
        'push: how far the opposite side is moved along its own length, away from the end of the longer diagonal, '
        'until both diagonals are equal'
    ),
    'roof.brace': N_(
        'legs from their inner corner to the long points of the brace; length between the long points; cuts on the '
        "brace's side, from square across"
    ),
    'roof.said.too_shallow': N_('none: this stock is too shallow to reach the plate'),
    'roof.said.cut_through': N_('none: its notch would cut through this stock'),
    'roof.said.nothing_left': N_('none: nothing is left of it'),
    'roof.said.no_longer_than_face': N_('none: the plumb cut is no longer than the face'),
    'roof.said.past_the_plate': N_('none: it would run in past the outside of plate'),
    'roof.said.flatter': N_('flatter than 1/4 in {base}'),
    'roof.said.within_a_quarter': N_('not past a quarter of the depth'),
    'roof.said.past_a_quarter': N_('past a quarter of the depth: a mark to look at, local code decides'),
    'roof.said.past_a_third': N_('past a third of the depth: a mark to look at, local code decides'),
    'roof.said.second_is_longer': N_('the second diagonal is the longer'),
    'roof.said.first_is_longer': N_('the first diagonal is the longer'),
}


def datum_words(names: Iterable[str]) -> str:
    """Return from which line figures are measured, clause by clause."""
    return '; '.join(say(Message(name)) for name in names)


def name_words(name: str) -> str:
    """Return what an answer says by name."""
    said = f'roof.said.{name}'
    return say(Message(said)) if said in MESSAGES else label(name)
