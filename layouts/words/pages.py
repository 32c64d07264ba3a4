"""The book's short words: heads, names and labels that code puts in place. Prose stands in the templates."""

from __future__ import annotations

from layouts.words.say import N_, _

WORDS = {
    'cautions': N_('Before you cut'),
    'contents': N_('Contents'),
    'how-to': N_('How to find a length'),
    'order': N_('From stick to rafter'),
    'words': N_('The words'),
    'words-corner': N_('Hips, valleys, jacks'),
    'square': N_('Is your square true?'),
    'stepping': N_('Step off, then measure'),
    'engraved': N_('What a square should carry'),
    'drift': N_('What the steps add up to'),
    'glance': N_('All pitches at a glance'),
    'glance-right': N_('Jacks, cheeks, backing'),
    'examples': N_('Worked examples'),
    'numbers': N_('How numbers are rounded'),
    'checked': N_('How they were checked'),
    'made': N_('How this copy was made'),
    'closing': N_('Once more, before the saw'),
    'notes': N_('Notes'),
    'after-the-length': N_('After the length'),
    'care': N_('Where care is due'),
}
"""Heads of pages, by the name under which a page is looked for."""


def heading(key: str) -> str:
    """Return the head of a page."""
    return _(WORDS[key])


GLANCE_HEADS: dict[str, tuple[tuple[str, tuple[str, ...] | None], ...]] = {
    'glance': (
        (
            N_('on the side, from square across'),
            (
                N_('plumb,\ncommon'),
                N_('level,\ncommon'),
                N_('plumb,\nhip, valley'),
                N_('level,\nhip, valley'),
            ),
        ),
        (N_('along the top edge, inches\nin a foot of common run'), (N_('common'), N_('hip, valley'))),
    ),
    'glance-right': (
        (N_('each jack longer than the last, inches\nalong the top edge; spaced on center'), None),
        (N_('cheek, top edge\nfrom square'), (N_('jack'), N_('hip, not\nbacked'))),
        (N_('back-\ning'), (N_('blade\ntilt'),)),
    ),
}
"""What stands over columns, and their heads below it, in lines; None for one column a spacing."""
AT_A_SPACING = N_('at\n{spacing} in')
GROUP_HEADS = {
    'set-out': N_('Setting out'),
    'ridge': N_('At the ridge'),
    'seat': N_('Seats'),
    'tail': N_('Tails'),
    'hips': N_('Hips, valleys'),
    'jack-deductions': N_('Jacks'),
    'cheeks': N_('Cheek cuts'),
    'trim': N_('Trim'),
    'gable': N_('Gables, areas'),
    'unequal': N_('Two pitches'),
    'many-sided': N_('Many sides'),
    'find-pitch': N_('Finding a pitch'),
}
"""Heads of the groups of reference tables."""
GROUP_SAYS = {
    'set-out': N_('diagonals, 3-4-5, braces'),
    'ridge': N_('shortening, ridge heights and ends'),
    'seat': N_('bird’s mouths, heights above plate'),
    'tail': N_('overhangs, tail cuts, soffits'),
    'hips': N_('cuts, backing, drop'),
    'jack-deductions': N_('differences, deductions, points'),
    'cheeks': N_('on the side, on the top, on the square'),
    'trim': N_('miters of fascia, sheathing'),
    'gable': N_('studs, roof areas'),
    'unequal': N_('two pitches at a corner'),
    'many-sided': N_('five to twelve sides'),
    'find-pitch': N_('degrees, level and tape'),
}
"""What a group is about, beside its head."""
INSIDE = {
    'common': N_('common rafters'),
    'hip-valley': N_('hips and valleys'),
    'rise': N_('rises'),
    'jacks': N_('jacks'),
    'values': N_('cuts'),
    'glance': N_('all pitches at a glance'),
    'examples': N_('worked examples'),
    'groups': N_('reference tables {letters}'),
}
"""What a section holds, for its cover."""
FIRST_SECTION = {
    'how-to': N_('how to find a length'),
    'words': N_('the words'),
    'cautions': N_('the cautions'),
}
"""What stands in the first section alone, for the covers of later ones."""
FOUND = {
    'common': N_(
        'The line length of the common rafter is <b>{length}</b>, along its top edge, from the plate line to the ridge '
        'center line.'
    ),
    'hip-valley': N_(
        'The line length of the hip or valley is <b>{length}</b>, along its top edge, from the corner of the plates to the '
        'ridge center line; the run is the common’s.'
    ),
    'rise': N_(
        'The rise is <b>{length}</b>, plumb: so much higher does the line length end at the ridge center line than it begins '
        'at the plate line.'
    ),
}
"""What a figure of a table is, and from where to where it is measured."""
LENGTHS = {'inches': N_('inches'), 'feet-inches': N_('feet and inches')}
"""How lengths read."""
