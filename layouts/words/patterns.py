"""The words in a pattern's drawing: what each line is, faces, joints; they are measured before they are set, so they stand here."""

from __future__ import annotations

from layouts.words.say import N_, _
from tablegen.roof.cheeks import TwoCheeks
from tablegen.roof.member import Kind, Member, Stop
from tablegen.roof.pattern import Face, Name, Pattern

CENTERS = {
    Stop.RIDGE: N_('ridge center line'),
    Stop.COMMONS: N_('ridge center line'),
    Stop.LEDGER: N_('face of the wall'),
    Stop.HIP: N_('hip center line'),
    Stop.VALLEY: N_('valley center line'),
    Stop.PURLIN: N_('purlin center line'),
    Stop.RIDGES: N_('where the ridges’ center lines meet'),
    Stop.WALL: N_('face of the wall'),
    Stop.BEAM: N_('face of the beam'),
    Stop.POST: N_('center of the post'),
}
"""What a board's marks are measured from; the ridge center line where none is named."""
CENTER, PEAK = CENTERS[Stop.RIDGE], N_('center of the peak')
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
    Stop.POST: N_('plumb cut at the post'),
}
HEAD, FOOT_CUT = N_('upper plumb cut'), N_('lower plumb cut')
PEAK_CUT, LEVEL_CUT = N_('plumb cut at the peak'), N_('lower level cut')
PLATES = {Kind.HIP: N_('corner of the plates'), Kind.VALLEY: N_('inside corner of the plates')}
PLATE, RAISED_PLATE = N_('plate line'), N_('raised plate’s line')
ABOVE = N_('{line}: {length} in, plumb, seat to top edge')
LEVEL, PLUMB = N_('{line}: {length} in, level'), N_('{line}: {length} in, plumb')
OTHERS = {
    Name.BEAM: CENTERS[Stop.BEAM],
    Name.HEEL: N_('heel'),
    Name.SEAT: N_('seat'),
    Name.TAIL: N_('tail plumb cut'),
    'top_edge': N_('top edge'),
    'bottom_edge': N_('bottom edge'),
    'fold': N_('fold: edge of the top'),
    'middle': N_('center of the top edge'),
    'backing': N_('edge of the backing'),
}
SQUARE_TAIL = N_('tail cut, to a fascia square to the roof')
ON_TOP = {
    Name.HEAD: N_('cheek, top edge'),
    Name.TAIL: N_('lower cheek, top edge'),
}
BLUNT_ON_TOP, LEVEL_ON_TOP = N_('upper cut, top edge'), N_('lower cut, top edge')
SHORT = {Name.HEAD: N_('cut'), Name.TAIL: N_('cut'), 'middle': N_('center')}
"""What lines of the top edge are called where they are short."""
FACES = {
    Face.LEFT: N_('LEFT SIDE'),
    Face.TOP: N_('TOP EDGE'),
    Face.RIGHT: N_('RIGHT SIDE'),
}
WASTE = N_('waste')
LAY_ON, LIES_HERE = N_('cut here, lay it on page {page}'), N_('page {page} is laid here')
TO_PAGE, PAGE = N_('to page {page}'), N_('page {page} of {pages}')


def plate_of(member: Member) -> str:
    """Return what the line over the plate is called."""
    return _(RAISED_PLATE if member.on_raised_plate else PLATES.get(member.kind, PLATE))


def figure_text(figure: object) -> str:
    """Return a figure as it is printed; '' for none."""
    return str(getattr(figure, 'text', ''))


def center_name(member: Member) -> str:
    """Return what the line is that a member's marks are measured from."""
    stop = member.head.off.stop if member.head.off else None
    if _at_peak(member):
        return _(PEAK)
    return _(CENTERS.get(stop, CENTER)) if stop else _(CENTER)


def line_names(whole: Pattern, name: str, face: Face) -> list[str]:
    """Return what a line of a piece is called, in full and, where it may find no room so, in less."""
    mouth = whole.member.mouth
    plain = _line_name(whole.member, name, face)
    lengths = {
        Name.PLATE: (ABOVE, mouth.height_above_plate),
        Name.BEAM: (ABOVE, mouth.height_above_plate),
        Name.SEAT: (LEVEL, mouth.seat),
        Name.HEEL: (PLUMB, mouth.heel),
    } if mouth else {}  # fmt: skip
    if name in lengths:
        words, length = lengths[Name(name)]
        return [_(words).format(line=plain, length=figure_text(length)), plain]
    short = SHORT.get(name) if face is Face.TOP else None
    return [plain, _(short)] if short else [plain]


def _line_name(member: Member, name: str, face: Face) -> str:
    if face is Face.TOP and name in ON_TOP:
        blunt, level = member.head.blunt and name == Name.HEAD, member.tail.bevel and name == Name.TAIL
        return _(BLUNT_ON_TOP if blunt else LEVEL_ON_TOP if level else ON_TOP[Name(name)])
    match name:
        case Name.CENTER:
            return center_name(member)
        case Name.HEAD:
            return _(_head_cut(member, face))
        case Name.PLATE:
            return plate_of(member)
        case Name.FOOT:
            off = member.tail.off
            return _(CENTERS.get(off.stop, CENTER) if off else CENTER)
        case Name.TAIL if member.tail.square:
            return _(SQUARE_TAIL)
        case Name.TAIL if not member.kind.stands_on_plate:
            return _(LEVEL_CUT if member.tail.bevel else FOOT_CUT)
        case _:
            return _(OTHERS[name])


def _head_cut(member: Member, face: Face) -> str:
    if _at_peak(member):  # of a bay's hip beside the wall that stands on one hand of it
        at_wall = member.head.long and member.head.long.value == face.value
        return HEADS[Stop.WALL] if at_wall else PEAK_CUT
    return HEADS.get(member.head.off.stop, HEAD) if member.head.off else HEAD


def _at_peak(member: Member) -> bool:
    """Return whether a hip comes to the point where others do."""
    stop = member.head.off.stop if member.head.off else Stop.WALL
    return stop is Stop.WALL and isinstance(member.head.cut, TwoCheeks)
