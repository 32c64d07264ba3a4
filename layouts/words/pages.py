"""The book's short words, as its English has them: heads, names and labels that code puts in place."""

from __future__ import annotations

from layouts.words.messages import tables_of
from layouts.words.say import N_, _

_ALL = tables_of('page')
WORDS = _ALL['head']
"""Heads of pages, by the name under which a page is looked for."""
GROUP_HEADS, GROUP_SAYS = _ALL['group'], _ALL['group_says']
"""Heads of the groups of reference tables, and what a group is about."""
WANTS = _ALL['want']
"""What a reader may want to do, after 'I want to'."""
INSIDE, FIRST_SECTION = _ALL['inside'], _ALL['first_section']
"""What a section holds, for its cover; what stands in the first alone, for the covers of later ones."""
FOUND, LENGTHS = _ALL['found'], _ALL['lengths']
"""What a figure of a table is, and from where to where it is measured; how lengths read."""
TABS = _ALL['tab']
"""Words of the thumb tabs of parts that have no number and no letter, from the upper one down."""
ALL_MEMBERS = 'all-members'
"""The name of the page of all members of a roof of the reader's own."""
OUTLINE = _ALL['outline']
"""What stands in the outline beside the heads of pages."""
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
        (N_('backing:\nblade tilt'), (N_('each\nface'),)),
    ),
}
"""What stands over columns, and their heads below it, in lines; None for one column a spacing."""
GLANCE_BELOW = {'glance-right': N_('Cheeks: blade at 45° on the plumb line, at any pitch.')}
"""What stands under a page."""
AT_A_SPACING = N_('at\n{spacing} in')


def heading(key: str) -> str:
    """Return the head of a page."""
    return _(WORDS[key])
