"""The lines of the marking sheets by which a proof-reader holds what they cite against what is read there."""

from __future__ import annotations

from layouts.words.pages import heading
from layouts.words.say import N_, _
from tablegen.proof.marking_sheets import DRAWN, LENGTHS
from tablegen.proof.names import MarkingNames, Where

LEFT, RIGHT, NO_GLANCE = 0, 1, -1
NOWHERE: Where = (LEFT, (), NO_GLANCE)
COMMON: dict[str, Where] = {
    N_('Width'): NOWHERE,
    N_('Run, level'): NOWHERE,
    N_('Length of 2, along the top edge'): (LEFT, (LENGTHS,), NO_GLANCE),
    N_('Together'): NOWHERE,
    N_('Tail, along the top edge'): (LEFT, ('tail-',), NO_GLANCE),
    N_('Off, level'): (LEFT, ('common-at-ridge-level',), NO_GLANCE),
    N_('Square, on the edge'): (LEFT, (DRAWN,), NO_GLANCE),
    N_('Cuts on the side, from square'): (LEFT, ('common-plumb-cut',), 0),
    N_('Height above plate, plumb'): (LEFT, ('height-',), NO_GLANCE),
    N_('Seat, level; heel, plumb'): (LEFT, ('heel',), NO_GLANCE),
    N_('Cut two, try, mark PATTERN'): NOWHERE,
}
HIP: dict[str, Where] = {
    N_('Length, along top edge'): (RIGHT, (LENGTHS,), NO_GLANCE),
    N_('Together; tail'): (RIGHT, ('hip-tail-',), NO_GLANCE),
    N_('Off, level'): (RIGHT, ('hip-at-ridge-level', 'hip-between-commons-level'), NO_GLANCE),
    N_('Square, on the edge'): (RIGHT, (DRAWN,), NO_GLANCE),
    N_('Cuts on the side, from square'): (RIGHT, ('hip-plumb-cut',), 0),
    N_('Cheek on the square top'): (RIGHT, ('hip-cheek-top', 'hip-cheek-top-12-and'), 1),
    N_('Drop (in 19 already) or backing'): (RIGHT, ('hip-drop',), NO_GLANCE),
    N_('Hip, dropped'): (RIGHT, ('dropped-hip-height', 'dropped-hip-heel', 'dropped-hip-seat'), NO_GLANCE),
    N_('Valley; its heel out, level'): (
        RIGHT,
        ('valley-height', 'valley-heel', 'valley-seat', 'valley-heel-out'),
        NO_GLANCE,
    ),
    N_('Jacks: spacing; each longer by'): (RIGHT, ('jacks-',), NO_GLANCE),
    N_('Jack: off, level; cheek, as 17'): (RIGHT, ('jack-at-hip-level', 'jack-cheek-top'), NO_GLANCE),
    N_('Jacks, to the hip’s center line'): (LEFT, (LENGTHS,), NO_GLANCE),
}
"""Side, figures and glance of each line."""


def marking_names() -> MarkingNames:
    """Return them in the language in use."""
    common, hip = (tuple((_(name), where) for name, where in some.items()) for some in (COMMON, HIP))
    sides = (_(words).partition('{')[0] for words in (N_('left page: {row}'), N_('right page: {row}')))
    left, right = sides
    return MarkingNames(
        (heading('marking-sheet'), heading('marking-sheet-right')),
        (common, hip),
        (left, right),
        _('ft, in, parts of an inch'),
        _('drawing'),
        _('p. {page}').partition('{')[0].strip(),
    )
