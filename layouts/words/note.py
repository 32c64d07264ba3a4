"""Notes at the feet of the tables: what their figures were worked out for, limits, and what is done with them."""

from __future__ import annotations

from layouts.words.say import N_

MESSAGES = {
    'note.whole_triangles': N_('Longer legs find square more surely: use the largest multiple that fits.'),
    'note.shortening_level': N_(
        'A valley jack at the ridge takes the common’s. Mark these square to the plumb line; on the edge itself measure '
        'what the tables along the top edge say.'
    ),
    'note.ridge_ends': N_(
        'An end common thicker than the ridge is clipped to both hips: each side starts half of the difference back, '
        'level, blade at 45°.'
    ),
    'note.notches_and_dashes': N_(
        '† past a quarter of the depth, ‡ past a third, § under {least} in left, too little under a tail; local code '
        'decides. –: the seat would be longer than the stock is deep, or leave less than half.'
    ),
    'note.thin_and_dashes': N_(
        '§ under {least} in left, too little under a tail; local code decides. –: the seat would be longer than the stock '
        'is deep, or leave less than half.'
    ),
    'note.any_notch': N_(
        '§ under {least} in left, too little under a tail; local code decides. Of this stock any seat leaves less; of '
        'deeper stock see “Stock left”.'
    ),
    'note.hip_seats': N_('Hips {hip} in thick. The drop is in the dropped ones already.'),
    'note.valley_seats': N_('Valleys {hip} in thick, not dropped: mark these as they stand.'),
    'note.old_rule': N_(
        'Hips {hip} in thick, of the rafters’ stock. Minus: too high. –: the seat would be longer than the stock is deep, '
        'or leave less than half.'
    ),
    'note.long_tail': N_('More than {most} in out, notched at the plate: ask a designer ({source}).'),
    'note.tail_hip': N_(
        'Two cheeks, as a hip’s at the ridge; each side’s plumb line starts half of the hip’s own thickness back from the '
        'point, level, a valley’s as far out.'
    ),
    'note.hips': N_('Drop for a hip {hip} in thick; a dropped hip’s tabled seat has it already.'),
    'note.dropped': N_('A dropped hip’s tabled height, heel and seat have it already.'),
    'note.jacks': N_(
        'Hip {hip} in, ridge {ridge} in, rafter {rafter} in thick. Points: half each side of the center line’s mark.'
    ),
    'note.backed_cheeks': N_('Where the figure is past 16, the end of the tongue, halve both.'),
    'note.set_backs': N_(
        'One cheek: one side so far up from the mark, the other so far down. Two to a point: both sides back. A '
        'valley’s tail is hollow: both sides out.'
    ),
    'note.trim': N_('Sheathing: where the figure is past 16, the end of the tongue, halve both.'),
    'note.unequal_cheeks': N_(
        'Rafter {rafter} in, hip {hip} in thick. Blades past 45°: by hand, to the lines on side and top. Figures past 16, '
        'the end of the tongue: halve both; past 32 take a quarter of both.'
    ),
    'note.unequal_fit': N_(
        'Hip {hip} in thick, dropped by drop B: its edge towards A lies gap A under plane A.'
    ),
    'note.unequal_slide': N_(
        'Hip {hip} in thick. Its center line misses the plates’ corner and the eaves’ by the slide.'
    ),
    'note.unequal_shortening': N_(
        'Ridge {ridge} in, hip {hip} in, rafter {rafter} in thick. Commons: to the face of A’s; on that cheek, further up, '
        'stands the point.'
    ),
    'note.unequal_points': N_(
        'Rafter {rafter} in, hip {hip} in thick. Jack: half each side of the center line. Along the edge: over the '
        'cosine of the member’s plumb cut.'
    ),
    'note.sides_jacks': N_(
        'Hip {hip} in, rafter {rafter} in thick. Past 45°: by hand; with a circular saw only where its blade has the reach.'
    ),
    'note.sides_peak': N_('Hip {hip} in thick; the reach is through half of it.'),
    'note.drop_for': N_('Drop for a hip {hip} in thick.'),
}
