"""What `roof` tells a person of how its members are cut: plumb and level, cheeks, square tails, backings, bird's mouths."""

from __future__ import annotations

from collections.abc import Callable, Hashable, Iterable, Iterator, Sequence

from layouts.told.blocks import (
    CHEEKS_ARE,
    Block,
    cheeks_block,
    cuts_block,
    mouths_block,
    paragraph,
)
from layouts.told.columns import LEFT, MIXED, columns
from layouts.words.frame import HANDS, in_rows, with_hand
from layouts.words.say import N_, _
from tablegen.frame.cut_list import CutList, CutMember
from tablegen.frame.roof_keys import HALF_HIP
from tablegen.roof.cheeks import CheekCut
from tablegen.roof.member import Hand
from tablegen.roof.seat import Mouth

UPPER = N_('{marks}, upper end'), N_('{marks}, upper left'), N_('{marks}, upper right')
LOWER = N_('{marks}, lower end'), N_('{marks}, lower left'), N_('{marks}, lower right')
"""Of cheeks that are alike, or of one; of the left one of two that are not; of the right one."""
UNLIKE = N_('Left and right cheeks are those of a left member; of a right one they change places.')
LEANING_ARE = N_(
    'Cheeks that lean, at a fascia square to the roof: as the others, but on the side degrees past the line square across: the '
    'line’s lower end lies towards the ridge.'
)
SQUARE_TAILS = N_(
    'Square tails: sawn square to the top edge, blade square. The overhang goes to the upper corner of that cut, which stands farthest '
    'out; the lower corner so far in of it and under it. The fascia lies flat on the tails and leans as they do, the upper edge of its '
    'back along their upper corners.'
)
PLUMB_OVER_GABLES = N_(
    'Over a half-hip’s gables tails and fascia stay plumb, the fascia in one plane with the barge rafters.'
)
LAID = N_(
    '{marks}, lower end: level on the side, {level} from square across, blade tilted {bevel}, to lie on the other roof.'
)
BACKED = N_(
    'Back {marks}: from the center line of its top, {left} down to the left side and {right} to the right, from the square top.'
)
ON_A_BEAM = N_(
    'On the beam: the second bird’s mouth, its heel at the beam’s outer face, the mark upper plate; its height is over the beam’s top.'
)


def cuts_blocks(found: CutList) -> Iterator[Block]:
    """Return how the members of a roof are cut."""
    yield cuts_block(
        [
            (marks, one.cut, one.held)
            for marks, one in _alike(found.members, lambda one: (one.cut.plumb.text, one.held.held))
        ]
    )
    cheeks = list(_cheeks(found.members))
    for leaning, words in ((False, CHEEKS_ARE), (True, LEANING_ARE)):
        if some := [one for one in cheeks if (one[1].side_leaning is not None) is leaning]:
            yield cheeks_block(some, _('--format json'), leaning)
            yield paragraph(_(words))
    if any(one.hand and (one.head.other_cheek or one.tail.other_cheek) for one in found.members):
        yield paragraph(_(UNLIKE))
    yield from _square_tails(found)
    laid = [one for one in found.members if one.tail.bevel]
    for marks, one in _alike(laid, lambda one: (one.cut.level.text, str(one.tail.bevel))):
        assert one.tail.bevel
        yield paragraph(_(LAID).format(marks=marks, level=one.cut.level.text, bevel=one.tail.bevel.text))
    for marks, one in _alike([one for one in found.members if one.backs], _backs_key):
        yield paragraph(_backed(marks, one))
    mouths = [one for one in found.members if one.mouth]
    if mouths:
        told = [(marks, one.mouth) for marks, one in _alike(mouths, _mouth_key) if one.mouth]
        upper = [
            (_('{marks}, on the beam').format(marks=one.mark), one.upper_mouth)
            for one in mouths
            if one.upper_mouth
        ]
        yield mouths_block([*told, *upper])
        if upper:
            yield paragraph(_(ON_A_BEAM))


def _alike(members: Iterable[CutMember], key: Callable[[CutMember], Hashable]) -> list[tuple[str, CutMember]]:
    """Return one member of each that are alike, with the marks of all of them."""
    found: dict[Hashable, list[CutMember]] = {}
    for one in members:
        found.setdefault(key(one), []).append(one)
    return [(in_rows(dict.fromkeys(one.mark for one in some)), some[0]) for some in found.values()]


def _backs_key(one: CutMember) -> Hashable:
    assert one.backs
    left, right = one.backs.left.text, one.backs.right.text
    return left, right, one.hand if left != right else None


def _backed(marks: str, one: CutMember) -> str:
    """Return how a hip's top is planed; the two hands of a pair are told apart where their sides are not alike."""
    assert one.backs
    left, right = one.backs.left.text, one.backs.right.text
    if one.hand and left != right:
        marks = f'{marks} {_(HANDS[one.hand])}'
    return _(BACKED).format(marks=marks, left=left, right=right)


def _mouth_key(one: CutMember) -> Hashable:
    mouth = one.mouth
    assert isinstance(mouth, Mouth)
    return mouth.stock, str(mouth.seat), mouth.height_above_plate.text, str(mouth.heel), str(mouth.heel_back)


def _cheeks(members: Sequence[CutMember]) -> Iterator[tuple[str, CheekCut]]:
    """Return the cheeks of all members, those alike in one row, by which end they are at; of two that are not alike by their side too,
    of a pair those of the left one."""
    found: dict[Hashable, tuple[str, CheekCut, dict[str, None]]] = {}
    lefts = {one.mark for one in members if one.hand is Hand.LEFT}
    for one in members:
        for end, words in ((one.head, UPPER), (one.tail, LOWER)):
            unlike = end.other_cheek is not None
            if unlike and one.hand is Hand.RIGHT and one.mark in lefts:
                continue
            mark = with_hand(one.mark, one.hand) if unlike else one.mark
            for cheek, said in zip(
                (end.cheek, end.other_cheek), words[1:] if unlike else words[:1], strict=False
            ):
                if cheek is not None:
                    key = said, cheek.top_from_square.text, cheek.side_line.text, cheek.side_blade_tilt.text
                    found.setdefault(key, (said, cheek, {}))[2][mark] = None
    return ((_(said).format(marks=in_rows(marks)), cheek) for said, cheek, marks in found.values())


def _square_tails(of: CutList) -> Iterator[Block]:
    """Return where the lower corner of tails is that are cut square to the top edge."""
    found: dict[tuple[str, str], dict[str, None]] = {}
    for one in of.members:
        if lower := one.tail.lower:
            found.setdefault((lower.set_in.text, lower.below.text), {})[one.mark] = None
    if found:
        heads = (_('Square tails, the lower corner'), _('level, in'), _('plumb, under'))
        yield columns(
            [heads, *((in_rows(marks), *sizes) for sizes, marks in found.items())], (LEFT, MIXED, MIXED)
        )
        plumb = (_(PLUMB_OVER_GABLES),) if of.roof.kind == HALF_HIP else ()
        yield paragraph(_(SQUARE_TAILS), *plumb)
