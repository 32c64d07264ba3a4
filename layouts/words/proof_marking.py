"""The lines of the marking sheets by which a proof-reader holds what they cite against what is read there."""

from __future__ import annotations

from layouts.words.pages import WORDS, heading
from layouts.words.say import N_, _
from tablegen.proof.marking_sheets import DRAWN, LENGTHS, OF_JACKS
from tablegen.proof.names import MarkingNames, Where

LEFT, RIGHT = 0, 1
NOWHERE: Where = (LEFT, (), '')
GLANCE, CHEEKS = WORDS['glance'], WORDS['glance-right']
TAILS, RIDGES, SEATS, HIPS, JACKS = (
    N_('Tails'),
    N_('At the ridge'),
    N_('Seats'),
    N_('Hips: backed or dropped'),
    N_('Jacks at the hip'),
)
"""Titles of the pages that have more of a kind."""
COMMON: dict[str, Where] = {
    N_('Width'): NOWHERE,
    N_('Run, level'): NOWHERE,
    N_('Length of 2, along the top edge'): (LEFT, (LENGTHS,), ''),
    N_('Together'): NOWHERE,
    N_('Tail, along the top edge'): (LEFT, ('tail-',), TAILS),
    N_('Off, level'): (LEFT, ('common-at-ridge-level',), RIDGES),
    N_('Square, on the edge'): (LEFT, (DRAWN,), ''),
    N_('Cuts on the side, from square'): (LEFT, ('common-plumb-cut',), GLANCE),
    N_('Height above plate, plumb'): (LEFT, ('height',), SEATS),
    N_('Seat, level; heel, plumb'): (LEFT, ('heel',), ''),
    N_('Cut two, try, mark PATTERN'): NOWHERE,
}
CORNER: dict[str, Where] = {
    N_('Length, along top edge'): (RIGHT, (LENGTHS,), ''),
    N_('Together; tail'): (RIGHT, ('hip-tail-',), TAILS),
    N_('Off, level'): (RIGHT, ('hip-at-ridge-level', 'hip-between-commons-level'), RIDGES),
    N_('Square, on the edge'): (RIGHT, (DRAWN,), ''),
    N_('Cuts on the side, from square'): (RIGHT, ('hip-plumb-cut',), GLANCE),
    N_('Cheek on the square top'): (RIGHT, ('hip-cheek-top', 'hip-cheek-top-12-and'), CHEEKS),
    N_('Drop (in 19 already) or backing'): (RIGHT, ('hip-drop',), HIPS),
    N_('Hip, dropped'): (RIGHT, ('dropped-hip-height', 'dropped-hip-heel', 'dropped-hip-seat'), SEATS),
    N_('Valley; its heel out, level'): (
        RIGHT,
        ('valley-height', 'valley-heel', 'valley-seat', 'valley-heel-out'),
        SEATS,
    ),
    N_('Jacks: spacing; each longer by'): (RIGHT, ('jacks-',), JACKS),
    N_('Jack: off, level; cheek, as 17'): (RIGHT, ('jack-at-hip-level', 'jack-cheek-top'), ''),
    N_('Jacks, to the hip’s center line'): (LEFT, (OF_JACKS,), ''),
}
"""Side, figures and further page of each line."""


def marking_names() -> MarkingNames:
    """Return them in the language in use."""
    common, hip = (
        tuple((_(name), (side, keys, _(more) if more else '')) for name, (side, keys, more) in some.items())
        for some in (COMMON, CORNER)
    )
    sides = (_(words).partition('{')[0] for words in (N_('left page: {row}'), N_('right page: {row}')))
    left, right = sides
    return MarkingNames(
        (heading('marking-sheet'), heading('marking-sheet-right')),
        (common, hip),
        (left, right),
        (_('opening {opening}, left: {row}'), _('opening {opening}, right: {row}')),
        _('ft, in, parts of an inch'),
        _('ft and in'),
        _('drawing'),
        _('p. {page}').partition('{')[0].strip(),
    )
