"""Words that must stand beside the figures that `find` tells: from where to where, on which face, by group."""

from __future__ import annotations

SQUARED = "on the board's face, from the line square across it"
PLATES = 'corner of the plates'
SEAT = ('square to the edge', 'plumb')
WORDS: dict[str, tuple[str, ...]] = {
    'length': ('along the slope', 'plate line to ridge center line', 'rise: plumb'),
    'cut': ('on the side of the board, from the line square across it',),
    'square': ('along the body is level', 'along the tongue is plumb', 'both figures are halved'),
    'shortening': ('level: in plan', 'center line', 'along: the same on its top edge'),
    'end_common': (
        'Between commons: each hip has a double cheek', 'the ridge runs half a common past',
        'Hips on ridge: each hip has one cheek', 'from clip back, level',
    ),
    'sawn': ('along the top edge', 'commons: from the plate line', f'from the {PLATES}'),
    'jack': (
        'along the slope, on the top edge', f'spaces from the {PLATES}', 'its long point away from the corner',
    ),
    'common': ('level, from the outside of plate inwards', 'plumb, at the outside of plate', 'rounded down', *SEAT),
    'rafter': ('level, from the outside of plate inwards', 'plumb, at the outside of plate', 'rounded down', *SEAT),
    'hip_dropped': ('at the outer corner of the plates', 'from that corner inwards', 'the drop is off already', *SEAT),
    'hip_backed': ('at the outer corner of the plates', 'from that corner inwards', 'before any backing', *SEAT),
    'valley': ('outwards of that corner, towards the tail', 'level, from that heel inwards', 'not dropped', *SEAT),
    'hip_by_17_over_12': ('wrong', "17/12 of the common's seat", 'plumb'),
    'soffit': ('plumb, from the top edge down', "from the tail's end to the underside", "from the plate's top"),
    'tail': (
        'overhang: level, square to the eave, outside of plate to tail end', 'plate line to tail end',
        'inset level, below plumb',
    ),
    'jack cheek': ('its top edge lies in the roof plane',),
    'hip cheek': ('left square to the sides',),
    'backed_hip': ('on the backed face', 'from the line square across', 'along the 12'),
    'cheek': ('point to side: level and along', 'to the plumb line where'),
    'backing': ('bevel: from the square top', "on the hip's side, square to its edge"),
    'drop': ('the square top of a hip lies under the line where the roof planes meet', 'already'),
    'sheathing': ('from its edge along the eave to the hip', 'blade from square to the face'),
    'trim': (SQUARED, 'bevel: blade from square to that face'),
    'hip_roof': ('level', 'from where the hips of one end meet to where those of the other do'),
    'ridge': ("plumb over the plate's top", 'past end: level', 'past its theoretical end'),
    'gable_stud': ('difference: plumb', "top cut: on the stud's side, from the line square across it"),
    'area': ('roof over level plan',),
    'hip_valley': ('plan: level, from the eave', f'{PLATES} to the ridge center line'),
    'slide': ('level, square to its length', 'plumb', 'level and along the top edge', 'misses the plates'),
    'seat': ('plates at one height', 'from the outside of plate inwards', 'the greater of the two drops'),
    'eaves': ('level, square to their eaves', 'end at one height', 'plumb, of one plate'),
    'plan': ('level, outside of plates', 'from the line square across it'),
    'peak': ('from the axis to where the hip is full width', 'square-cut hips'),
    'shed': ('off the run to the', 'level, and off the length, along the top edge', "plumb over the plate's top"),
    'two_pitches': ('side A is the pitch and run asked for', 'a ridge over A runs along eave A'),
    'many_sided': ('the middle of the plan to the outside of the middle of a plate',),
}  # fmt: skip
OTHERS = {
    'two_pitches.side_a.length': ('run: level', 'common: along the slope', 'rise: plumb'),
    'two_pitches.side_b.length': ('run: level', 'common: along the slope', 'rise: plumb'),
    'two_pitches.sawn': (
        'along the top edge',
        'where the cheek towards that side starts',
        'level, square to the hip',
    ),
    'two_pitches.drop': ('the greater of the two drops', 'plumb'),
    'many_sided.length': (
        'to the axis in the middle',
        'from the plate line',
        f'from the {PLATES}',
        'rise: plumb',
    ),
    'many_sided.cheek': ('on the top edge, from the line square across it', 'on the side of the board'),
}
"""Groups of a name that mean something else there."""
SHED_LENGTH = ('along the slope', "plate line to the {face}'s face", 'rise: plumb')


def words_of(path: str, told: dict[str, object]) -> tuple[str, ...] | None:
    """Return the words that a group's sentence must hold, by the group's whole key; None where nothing is known of it."""
    if path == 'length' and 'shed.against' in told:
        return tuple(words.format(face=told['shed.run_to']) for words in SHED_LENGTH)
    above, _, name = path.rpartition('.')
    if above.rpartition('.')[2] == 'cheek' and name != 'backed_hip':
        name = 'jack cheek' if name == 'jack' else 'hip cheek'
    return OTHERS.get(path, WORDS.get(name))
