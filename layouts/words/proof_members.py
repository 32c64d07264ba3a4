"""The heads and sentences by which a proof-reader finds figures on the pages of all members of a roof."""

from __future__ import annotations

from layouts.words.board_ends import BOTH, CUTS, HEADS
from layouts.words.frame import HANDS, LEVELS, LINES, MEMBERS
from layouts.words.lists import capital
from layouts.words.pages import ALL_MEMBERS, heading
from layouts.words.say import N_, _
from tablegen.proof.names import MemberListNames
from tablegen.roof.member import Hand, Line

AT_LINE = {
    Line.LONG: ('head', 'long'),
    Line.CUT: ('head', 'center'),
    Line.SHORT: ('head', 'short'),
    Line.POINT: ('head', 'center'),
    Line.SIDE: ('head', 'side'),
    Line.SIDE_RIGHT: ('head', 'right'),
    Line.PLATE: ('plate', ''),
    Line.HEEL: ('heel', ''),
    Line.TAIL: ('tail', 'center'),
    Line.TAIL_SIDE: ('tail', 'side'),
    Line.TAIL_RIGHT: ('tail', 'right'),
    Line.TAIL_LONG: ('tail', 'long'),
    Line.TAIL_SHORT: ('tail', 'short'),
    Line.FOOT: ('plate', ''),
    Line.FOOT_LONG: ('tail', 'long'),
    Line.FOOT_CUT: ('tail', 'center'),
    Line.FOOT_SHORT: ('tail', 'short'),
    Line.UPPER_PLATE: ('beam', ''),
}
"""Where on a board each mark is."""
ASKED = N_('Asked for:')
CUT = N_('Plumb {plumb}, level {level}; square {held}.')
CHEEK = N_('Cheek, {end}: {top} on top, {held}; {side} on the side, blade {blade}.')
MOUTH = N_('Bird’s mouth: seat {seat}, heel {heel}, height above plate {height}.')
ENDS = (N_('upper end'), N_('lower end'))


def list_names() -> MemberListNames:
    """Return them in the language in use."""
    upper, lower = map(_, ENDS)
    return MemberListNames(
        heading(ALL_MEMBERS),
        _(ASKED),
        {capital(_(words)): kind.value for kind, words in MEMBERS.items()},
        {_(words): AT_LINE[line] for line, words in LINES.items()},
        _('number'),
        _('left + right'),
        (_(HANDS[Hand.LEFT]), _(HANDS[Hand.RIGHT])),
        _(CUT),
        _(CHEEK),
        _(MOUTH),
        (upper, lower),
        _('Level boards'),
        _(HEADS[0]),
        _('Gable studs'),
        {
            'number': _('number'),
            'kind': _('kind'),
            'stock': _('stock'),
            'sawn': _('sawn length'),
            'from-plate': _('from plate line'),
            'long': _('long'),
            'short': _('short'),
            'top-cut': _('top cut'),
            **dict(zip(('of-ends', 'end', 'cut', 'miter', 'blade', 'long-on'), map(_, HEADS), strict=True)),
        },
        {_(words): level.value for level, words in LEVELS.items()},
        {_(words): cut.value for cut, words in CUTS.items()},
        _(BOTH),
        _('{first} and {last}'),
    )
