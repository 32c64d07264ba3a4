"""The words of a pattern's pages, at their head and foot: what is shown, where it lies on a board, how it is used.

They are measured before they are set, so they stand here and not in a template.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from layouts.words.caution import caution_text
from layouts.words.drawings import ENDS
from layouts.words.frame import HANDS, MEMBERS, in_rows, with_hand
from layouts.words.lists import capital, pitches
from layouts.words.patterns import figure_text, plate_of
from layouts.words.say import N_, _, say
from tablegen.frame.framed import Framed
from tablegen.numbers import text
from tablegen.roof.cautions import DEFERS
from tablegen.roof.cheeks import OneCheek
from tablegen.roof.member import Hand, Kind, Member, Stop
from tablegen.roof.pattern import Face, Part, Pattern, Piece

PARTS = {
    Part.HEAD: N_('upper end'),
    Part.MOUTH: N_('bird’s mouth'),
    Part.TAIL: N_('tail'),
    Part.MOUTH_AND_TAIL: N_('bird’s mouth and tail'),
}
FOOT = N_('lower end')
"""What the tail is called where it is none."""
UPPER_ENDS = {
    **dict.fromkeys((Stop.RIDGE, Stop.RIDGES, Stop.COMMONS, Stop.MATE), ENDS['ridge']),
    **dict.fromkeys((Stop.LEDGER, Stop.WALL), ENDS['wall']),
    Stop.HIP: ENDS['hip'],
}
UPPER_END, LOWER_END = N_('UPPER END'), N_('LOWER END')
"""What stands at the left and right of a page, where it is none of those, and no tail."""
TITLE, MARKED, PIECE = N_('{member}, {pitch}, {stock}'), N_('{mark}, {title}'), N_('{title}: {part}')
ALL_OF_THEM, OF_HAND = N_('{title}. {facts}'), N_('{marks} {hand}')
SIZES = N_('For a board {thick} × {deep} in: measure yours.')
SEATED, OVERHUNG = N_('Seat {seat} in, level. {sizes}'), N_('Overhang {overhang} in, level. {sizes}')
SIDE_UP = N_(
    'The upper end at the left, the lower one at the right, the top edge up. Heavy lines are sawn along their middle; X is waste.'
)
FLAT_UP = N_(
    'The upper end at the left, the lower one at the right. Heavy lines are sawn along their middle; X is waste.'
)

PRINT = N_("""\
Print at 100 %, actual size, never fitted to the page: by a rule both bars are 100 mm to one tick and 4 in to the other, \
give or take 0.3 mm, 1/64 in. A bar 1/64 in out puts a foot of the pattern 3/64 in out.""")
JOIN = N_("""\
Cut the page of the lower number along its dashed line, lay it on the next so that their marks meet, letter on letter, \
and tape it.""")
SQUARE = N_("""\
These cuts are square across: one side is enough. Glue it on plywood, its top edge along a straight edge; saw on the \
heavy lines and the bottom edge, and trace that on the boards.""")
WRAP = N_("""\
Fold it back sharply along both fold lines and lay it round the board, its middle on the top edge, its upper end up the \
roof. Mark the heavy lines on all three faces; left and right are of one who looks up the roof.""")
LONG_POINT = N_('The long point is on the {hand} side.')
PAIR = N_('--long-side {other} prints its pair, of the other hand.')
LAID = N_('The foot is cut level on both sides, its blade tilted {bevel}, to lie on the other roof.')
TO_PLATE = N_('From the cut to the {plate}, along the center of the top edge: {length} in.')
TO_TAIL = N_('From the {plate} to the tail’s cut, along the center of the top edge: {length} in.')
TO_FOOT = N_('From the upper cut to the lower one, along the center of the top edge: {length} in.')
AS_LISTED = N_('How far apart its cuts and plate line lie on a board: by its mark, in the list at the front.')
NO_MOUTH = N_(
    'No bird’s mouth: its stock does not reach the plate, or the seat would cut it through or take half of its run.'
)
DROPPED = N_('Dropped, not backed: the top stays square.')
BACKED = N_("""\
Mark and cut it while its top is square, then back it: from the center of the top down to the dashed lines on the sides, \
{left} in under the left edge of the top ({left_bevel}) and {right} in under the right one ({right_bevel}).""")
NOT_STRENGTH = N_('Geometry, not strength. {defers}')


def title_of(member: Member, hand: Hand | None = None) -> str:
    """Return what a pattern is of, in a line: its mark, if it has one, with its hand before it."""
    called = _(MEMBERS[member.kind])
    title = _(TITLE).format(
        member=called if member.name else capital(called),
        pitch=pitches(member.pitch, member.other_pitch),
        stock=member.stock.name,
    )
    return _(MARKED).format(mark=with_hand(member.name, hand), title=title) if member.name else title


def head_of(title: str, whole: Pattern, piece: Piece) -> str:
    """Return a title with what a piece shows."""
    return _(PIECE).format(title=title, part=part_of(whole, piece))


def marks_of(framed: Sequence[Framed], all_hands: Mapping[str, int]) -> str:
    """Return the marks of members, with their hand where not both are meant.

    Given:
        all_hands  how many hands there are of every mark of the roof
    """
    hands: dict[str, list[Hand | None]] = {}
    for one in framed:
        hands.setdefault(one.member.name, []).append(one.hand)
    by_hand: dict[Hand | None, list[str]] = {}
    for mark, some in hands.items():
        by_hand.setdefault(None if len(some) == all_hands[mark] else some[0], []).append(mark)
    return '; '.join(
        _(OF_HAND).format(marks=in_rows(marks), hand=_(HANDS[hand])) if hand else in_rows(marks)
        for hand, marks in by_hand.items()
    )


def kinds_of(wholes: Sequence[Pattern]) -> str:
    """Return what several members are, of one pitch and stock."""
    kinds = dict.fromkeys(_(MEMBERS[one.member.kind]) for one in wholes)
    member = wholes[0].member
    return _(TITLE).format(
        member=capital(', '.join(kinds)),
        pitch=pitches(member.pitch, member.other_pitch),
        stock=member.stock.name,
    )


def part_of(whole: Pattern, piece: Piece) -> str:
    """Return what a piece shows."""
    foot = piece.part is Part.TAIL and not whole.member.kind.stands_on_plate
    return _(FOOT if foot else PARTS[piece.part])


def facts_of(whole: Pattern, piece: Piece) -> list[str]:
    """Return what board a piece is of, and how it lies."""
    member = whole.member
    sizes = _(SIZES).format(
        thick=text.rational(member.thickness_in), deep=text.rational(member.stock.depth_in)
    )
    if piece.part in (Part.TAIL, Part.MOUTH_AND_TAIL) and member.kind.stands_on_plate and not member.tail.off:
        sizes = _(OVERHUNG).format(overhang=whole.overhang.text, sizes=sizes)
    if piece.part in (Part.MOUTH, Part.MOUTH_AND_TAIL) and member.mouth:
        sizes = _(SEATED).format(seat=figure_text(member.mouth.seat), sizes=sizes)
    return [sizes, _(FLAT_UP if Face.TOP in piece.faces else SIDE_UP)]


def lengths_of(whole: Pattern, piece: Piece, run_known: bool) -> list[str]:
    """Return where a piece lies on its board.

    Given:
        run_known  whether a length that the run makes is wanted
    """
    plate = plate_of(whole.member)
    if whole.head_to_plate is None or whole.plate_to_tail is None:
        none = [_(NO_MOUTH)] if whole.member.kind in (Kind.HIP, Kind.VALLEY) else []
        return none + ([_(TO_FOOT).format(length=whole.head_to_foot.text)] if run_known else [])
    said = []
    if piece.part is not Part.TAIL and run_known:
        said.append(_(TO_PLATE).format(plate=plate, length=whole.head_to_plate.text))
    if piece.part in (Part.TAIL, Part.MOUTH_AND_TAIL) and whole.plate_to_tail.sign:
        said.append(_(TO_TAIL).format(plate=plate, length=whole.plate_to_tail.text))
    return said


def tops_of(whole: Pattern) -> list[str]:
    """Return what becomes of a hip's top; nothing of another member."""
    member = whole.member
    if member.kind is not Kind.HIP:
        return []
    if not member.backs:
        return [_(DROPPED)]
    left, right = whole.backing[Face.LEFT].text, whole.backing[Face.RIGHT].text
    bevels = {'left_bevel': member.backs.left.text, 'right_bevel': member.backs.right.text}
    return [_(BACKED).format(left=left, right=right, **bevels)]


def ends_of(wholes: Sequence[Pattern]) -> tuple[str, str]:
    """Return what stands at the left and at the right of every page of some members' piece."""
    member = wholes[0].member
    stop = member.head.off.stop if member.head.off else None
    upper = UPPER_ENDS.get(stop, UPPER_END) if stop else UPPER_END
    tails = all(one.member.kind.stands_on_plate for one in wholes)
    return _(upper), _(ENDS['tail'] if tails else LOWER_END)


def sentences_of(whole: Pattern, piece: Piece, joined: bool) -> list[str]:
    """Return how a piece is used: what stands at the foot of every page of it, before what is to be looked out for.

    Given:
        joined  whether it has more than one page
    """
    member = whole.member
    said = [_(PRINT)]
    if joined:
        said.append(_(JOIN))
    said.append(_(WRAP if Face.TOP in piece.faces else SQUARE))
    end = member.tail if piece.part is Part.TAIL else member.head
    if end.bevel:
        said.append(_(LAID).format(bevel=end.bevel.text))
    if Face.TOP in piece.faces and (isinstance(end.cut, OneCheek) or end.bevel):
        hand = end.long or Hand.RIGHT
        said.append(_(LONG_POINT).format(hand=_(HANDS[hand])))
        said += [] if member.name else [_(PAIR).format(other=hand.other)]
    return said


def cautions_of(members: Iterable[Member]) -> list[str]:
    """Return what is to be looked out for."""
    called = dict.fromkeys(caution_text(one) for member in members for one in member.cautions)
    return [_(NOT_STRENGTH).format(defers=say(DEFERS)), *called]
