"""Heads of what a pitch has but once, as its opening has them; what each column is of, and how it is measured."""

from __future__ import annotations

from layouts.words.say import N_

MESSAGES = {
    'values.common': N_('common rafter'),
    'values.hip': N_('hip or valley'),
    'values.dropped_hip': N_('dropped hip'),
    'values.valley': N_('valley'),
    'values.jack': N_('jack'),
    'values.of': N_('{member}'),
    'values.level': N_('{member}, level'),
    'values.along': N_('{member}, along the top edge'),
    'values.plumb_cut': N_('Plumb cut, on the side, from square across'),
    'values.level_cut': N_('Level cut, on the side, from square across'),
    'values.body': N_('Square: level along the body'),
    'values.tongue': N_('Square: plumb along the tongue'),
    'values.per_foot': N_('Per foot of run, along the top edge'),
    'values.hip_per_foot': N_('Per foot of COMMON run, along the top edge'),
    'values.per_foot_part': N_('to the nearest {part}'),
    'values.tail_per_foot': N_('Tail per {base} in of overhang, along the top edge'),
    'values.hip_tail_per_foot': N_('Tail per {base} in of COMMON overhang, along top edge'),
    'values.backing': N_('Backing, each face, from the square top'),
    'values.drop': N_('Drop, plumb: already in the dropped hip’s figures'),
    'values.heel_out': N_('Valley’s heel, level, outwards of the inside corner'),
    'values.common_at_ridge': N_('At a ridge {ridge} in thick: half of it'),
    'values.hip_at_ridge': N_('Hip or valley, ridge {ridge} in: one cheek'),
    'values.hip_between_commons': N_('Hip between commons {rafter} in: two cheeks'),
    'values.jack_at_hip': N_('Jack at a hip or valley {hip} in thick'),
    'values.cheek_top': N_('Cheek on the top edge, from square across'),
    'values.cheek_top_12_and': N_(
        'Cheek on the top edge, against {base} on the square, marked along the {base}'
    ),
    'values.cheek_side': N_('Cheek on the side: plumb cut, from square across'),
    'values.cheek_blade': N_('Cheek on the side: tilt of the blade'),
    'values.hip_points': N_('Hip, one cheek: short to long point'),
    'values.hip_set_back': N_('Hip, two cheeks: point back to each side’s line'),
    'values.jack_points': N_('Jack: short to long point'),
    'values.common_height': N_('Height above plate, plumb over the plate line'),
    'values.common_heel': N_('Heel, plumb, at the outside of the plate'),
    'values.common_notch': N_('Notch, square to the edge'),
    'values.common_left': N_('Wood left over the notch, square to the edge'),
    'values.mouth_height': N_('Bird’s mouth on the center line: height above plate, plumb'),
    'values.mouth_heel': N_('Bird’s mouth on the center line: heel, plumb'),
    'values.mouth_seat': N_('Bird’s mouth: seat, level, from the heel inwards'),
    'values.mouth_left': N_('Bird’s mouth: wood left over the notch, square to the edge'),
    'values.why': N_('why there is no bird’s mouth'),
    'values.too_shallow': N_('too shallow to reach the plate'),
    'values.cut_through': N_('cut through by the seat'),
    'values.difference': N_('Longer by, along the top edge, at {spacing} in on center'),
}
