"""The words of patterns at full size: they are measured before they are set, so they stand here and not in a template."""

from __future__ import annotations

from layouts.words.caution import caution_text
from layouts.words.drawings import ENDS
from layouts.words.frame import HANDS, MEMBERS
from layouts.words.lists import capital
from layouts.words.say import N_, _, say
from tablegen.numbers import text
from tablegen.roof.cautions import DEFERS
from tablegen.roof.cheeks import OneCheek
from tablegen.roof.member import Hand, Kind, Stop
from tablegen.roof.pattern import Face, Name, Part, Pattern, Piece

PARTS = {
    Part.HEAD: N_('upper end'),
    Part.MOUTH: N_('bird’s mouth'),
    Part.TAIL: N_('tail'),
    Part.MOUTH_AND_TAIL: N_('bird’s mouth and tail'),
}
FOOT = N_('lower end')
"""What the tail is called where it is none."""
CENTERS = {
    Stop.RIDGE: N_('ridge center line'),
    Stop.COMMONS: N_('ridge center line'),
    Stop.LEDGER: N_('face of the wall'),
    Stop.HIP: N_('hip center line'),
    Stop.VALLEY: N_('valley center line'),
    Stop.PURLIN: N_('purlin center line'),
    Stop.RIDGES: N_('where the ridges’ center lines meet'),
}
CENTER = N_('center line of what stops it')
HEADS = {
    Stop.RIDGE: N_('ridge plumb cut'),
    Stop.LEDGER: N_('plumb cut at the ledger'),
    Stop.WALL: N_('plumb cut at the wall'),
    Stop.BEAM: N_('plumb cut at the beam'),
    Stop.HIP: N_('plumb cut at the hip'),
    Stop.VALLEY: N_('plumb cut at the valley'),
    Stop.PURLIN: N_('plumb cut at the purlin'),
    Stop.COMMONS: N_('plumb cut between commons'),
    Stop.RIDGES: N_('plumb cut between ridges'),
}
HEAD, FOOT_CUT = N_('upper plumb cut'), N_('lower plumb cut')
PLATES = {Kind.HIP: N_('corner of the plates'), Kind.VALLEY: N_('inside corner of the plates')}
PLATE = N_('plate line')
ABOVE = N_('{line}: {length} in, plumb, seat to top edge')
LEVEL, PLUMB = N_('{line}: {length} in, level'), N_('{line}: {length} in, plumb')
OTHERS = {
    Name.BEAM: N_('face of the beam'),
    Name.HEEL: N_('heel'),
    Name.SEAT: N_('seat'),
    Name.TAIL: N_('tail plumb cut'),
    'top_edge': N_('top edge'),
    'bottom_edge': N_('bottom edge'),
    'fold': N_('fold: edge of the top'),
}
ON_TOP = {
    Name.HEAD: N_('cheek, top edge'),
    Name.TAIL: N_('lower cheek, top edge'),
}
FACES = {
    Face.LEFT: N_('LEFT SIDE'),
    Face.TOP: N_('TOP EDGE'),
    Face.RIGHT: N_('RIGHT SIDE'),
}
WASTE = N_('waste')
UPPER_ENDS = {
    **dict.fromkeys((Stop.RIDGE, Stop.RIDGES, Stop.COMMONS, Stop.MATE), ENDS['ridge']),
    **dict.fromkeys((Stop.LEDGER, Stop.WALL), ENDS['wall']),
    Stop.HIP: ENDS['hip'],
}
UPPER_END, LOWER_END = N_('UPPER END'), N_('LOWER END')
"""What stands at the left and right of a page, where it is none of those, and no tail."""
LAY_ON, LIES_HERE = N_('cut here, lay it on page {page}'), N_('page {page} is laid here')
TO_PAGE, PAGE = N_('to page {page}'), N_('page {page} of {pages}')

TITLE, MARKED, PIECE = N_('{member}, {pitch}, {stock}'), N_('{mark}, {title}'), N_('{title}: {part}')
WITH_SEAT = N_(
    'Seat {seat} in, overhang {overhang} in, both level. For a board {thick} × {deep} in: measure yours.'
)
WITHOUT_SEAT = N_('For a board {thick} × {deep} in: measure yours.')
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
TO_PLATE = N_('From the cut to the {plate}, along the center of the top edge: {length} in.')
TO_TAIL = N_('From the {plate} to the tail’s cut, along the center of the top edge: {length} in.')
NOT_STRENGTH = N_('Geometry, not strength. {defers}')


def title_of(whole: Pattern) -> str:
    """Return what a pattern is of, in a line: its mark, if it has one, before it."""
    member = whole.member
    called = _(MEMBERS[member.kind])
    title = _(TITLE).format(
        member=called if member.name else capital(called), pitch=member.pitch.text, stock=member.stock.name
    )
    return _(MARKED).format(mark=member.name, title=title) if member.name else title


def head_of(whole: Pattern, piece: Piece) -> str:
    """Return the same with what a piece shows of it."""
    return _(PIECE).format(title=title_of(whole), part=part_of(whole, piece))


def part_of(whole: Pattern, piece: Piece) -> str:
    """Return what a piece shows."""
    foot = piece.part is Part.TAIL and not whole.member.kind.stands_on_plate
    return _(FOOT if foot else PARTS[piece.part])


def facts_of(whole: Pattern, piece: Piece, run_known: bool) -> list[str]:
    """Return what the piece is of, how it lies, and where it lies on the board.

    Given:
        run_known  whether a length that the run makes is wanted
    """
    member = whole.member
    sizes = {
        'overhang': whole.overhang.text,
        'thick': text.rational(member.thickness_in),
        'deep': text.rational(member.stock.depth_in),
    }
    mouth = member.mouth
    facts = (
        _(WITH_SEAT).format(seat=_figure(mouth.seat), **sizes) if mouth else _(WITHOUT_SEAT).format(**sizes)
    )
    plate = _(PLATES.get(member.kind, PLATE))
    lies = _(FLAT_UP if Face.TOP in piece.faces else SIDE_UP)
    if piece.part is Part.HEAD and run_known and whole.head_to_plate:
        return [facts, lies, _(TO_PLATE).format(plate=plate, length=whole.head_to_plate.text)]
    if piece.part in (Part.TAIL, Part.MOUTH_AND_TAIL) and whole.plate_to_tail and whole.plate_to_tail.sign:
        return [facts, lies, _(TO_TAIL).format(plate=plate, length=whole.plate_to_tail.text)]
    return [facts, lies]


def ends_of(whole: Pattern) -> tuple[str, str]:
    """Return what stands at the left and at the right of every page."""
    member = whole.member
    stop = member.head.off.stop if member.head.off else None
    upper = UPPER_ENDS.get(stop, UPPER_END) if stop else UPPER_END
    return _(upper), _(ENDS['tail'] if member.kind.stands_on_plate else LOWER_END)


def _figure(figure: object) -> str:
    return str(getattr(figure, 'text', ''))


def line_names(whole: Pattern, name: str, face: Face) -> list[str]:
    """Return what a line of a piece is called, with its length where it has one, and without."""
    mouth = whole.member.mouth
    plain = _line_name(whole, name, face)
    lengths = {
        Name.PLATE: (ABOVE, mouth.height_above_plate),
        Name.BEAM: (ABOVE, mouth.height_above_plate),
        Name.SEAT: (LEVEL, mouth.seat),
        Name.HEEL: (PLUMB, mouth.heel),
    } if mouth else {}  # fmt: skip
    if name not in lengths:
        return [plain]
    words, length = lengths[Name(name)]
    return [_(words).format(line=plain, length=_figure(length)), plain]


def _line_name(whole: Pattern, name: str, face: Face) -> str:
    member = whole.member
    stop = member.head.off.stop if member.head.off else None
    if face is Face.TOP and name in ON_TOP:
        return _(ON_TOP[Name(name)])
    match name:
        case Name.CENTER:
            return _(CENTERS.get(stop, CENTER) if stop else CENTER)
        case Name.HEAD:
            return _(HEADS.get(stop, HEAD) if stop else HEAD)
        case Name.PLATE:
            return _(PLATES.get(member.kind, PLATE))
        case Name.FOOT:
            off = member.tail.off
            return _(CENTERS.get(off.stop, CENTER) if off else CENTER)
        case Name.TAIL if not member.kind.stands_on_plate:
            return _(FOOT_CUT)
        case _:
            return _(OTHERS[name])


def sentences_of(whole: Pattern, piece: Piece, joined: bool) -> list[str]:
    """Return what stands at the foot of every page of a piece.

    Given:
        joined  whether it has more than one page
    """
    member = whole.member
    said = [_(PRINT)]
    if joined:
        said.append(_(JOIN))
    said.append(_(WRAP if Face.TOP in piece.faces else SQUARE))
    end = member.tail if piece.part is Part.TAIL else member.head
    if Face.TOP in piece.faces and isinstance(end.cut, OneCheek):
        hand = end.long or Hand.RIGHT
        other = Hand.LEFT if hand is Hand.RIGHT else Hand.RIGHT
        said.append(_(LONG_POINT).format(hand=_(HANDS[hand])))
        said += [] if member.name else [_(PAIR).format(other=other)]
    return said + cautions_of(whole)


def cautions_of(whole: Pattern) -> list[str]:
    """Return what is to be looked out for."""
    return [_(NOT_STRENGTH).format(defers=say(DEFERS)), *map(caution_text, whole.member.cautions)]
