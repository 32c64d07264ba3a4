"""What a marking sheet says of its cuts, each a name and a sentence: the saw's settings, the square, the bird's mouth, steps, what comes off."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from msgspec import Struct

from layouts.roofs.groups import lines_on
from layouts.told.blocks import in_inches
from layouts.words.frame import HANDS
from layouts.words.lists import either
from layouts.words.marking import LAST_COMMONS, RIDGE_END, STOPS, slope_name
from layouts.words.patterns import center_name
from layouts.words.say import N_, _
from tablegen.frame.asked import Asked
from tablegen.frame.plan import Slope
from tablegen.geometry.backing import gap_when_dropped
from tablegen.geometry.stepping import Steps, held_drift, steps
from tablegen.numbers import text
from tablegen.numbers.exact import sign
from tablegen.numbers.figure import Measure, length_figure
from tablegen.roof.cheeks import CheekCut, OneCheek
from tablegen.roof.figures import size
from tablegen.roof.member import Deduction, End, Kind, Line, Member, Stop, inches_of, known
from tablegen.roof.seat import Mouth, greater_drop

SQUARE_ACROSS = N_('plumb on the side, {plumb} from square across; blade square, 0°')
CHEEK = N_(
    'plumb on the side, {plumb} from square across, blade tilted {tilt}; on the top edge {top} from square across, square held {held}, marked '
    'along the body'
)
LEANING = N_(
    'on the side {line} from square across, its lower end towards the ridge, blade tilted {tilt}; on the top edge {top} from square '
    'across, square held {held}, marked along the body'
)
LEANING_PAST = N_(
    'on the side {line} from square across, its lower end towards the ridge; tilt {tilt}, past 45°; on the top edge {top} from square '
    'across, square held {held}, marked along the body'
)
PAST = N_(
    'plumb on the side, {plumb} from square across; tilt {tilt}, past 45°; on the top edge {top} from square across, square held '
    '{held}, marked along the body'
)
BY_HAND = N_(
    'a hand saw, to the lines on the top edge and both sides. A circular saw only from the end, cut off plumb and square past '
    'the long point first, tilted {other}, and only where its blade reaches {reach}'
)
BY_HAND_LEANING = N_(
    'a hand saw, to the lines on the top edge and both sides. A circular saw only from the end, cut off along such a line and square past '
    'the long point first, tilted {other}, and only where its blade reaches {reach}'
)
MOUTH = N_(
    'height above plate {height}, heel {heel}, both plumb; seat {seat}, level; notch {notch} and wood left {left}, square to the edge'
)
ON_BEAM = N_(
    'a second bird’s mouth, its heel at the face of the beam: height above the beam {height}, heel {heel}, both plumb; seat {seat}, '
    'level; notch {notch} and wood left {left}, square to the edge'
)
HELD = N_('held {held}: mark plumb along the tongue ({tongue}), level along the body ({body})')
HALVED = N_('{square}; a step is {run} of common run')
STEPPED = N_('from {start}: {count} whole, then {body} on the body & {tongue} on the tongue, to {stop}')
DROPPED = N_('dropped {drop}, plumb, on its center: its top stays square')
DROPPED_GAP = N_(
    'dropped {drop}, plumb, on its center: its top stays square, its edge towards the {slope} {gap} low'
)
DRIFT_LONG = N_('{length} past {stop}, with the square held so: tape the marks')
DRIFT_SHORT = N_('{length} short of {stop}, with the square held so: tape the marks')
STEPPED_WHOLE = N_('from {start}: {count} whole, to {stop}')
STEPPED_BY_TABLE = N_('from {start}, to {stop}: the whole ones, then body & tongue, are in the table')
STOPPED = N_('the center line of what stops it below')
MARK = N_('mark {number}')


FACED = (Stop.RIDGE, Stop.LEDGER, Stop.HIP, Stop.VALLEY, Stop.PURLIN, Stop.POST)


class Fact(Struct, frozen=True):
    """A name and what is said of it."""

    name: str
    text: str


def cuts_of(member: Member) -> Iterator[Fact]:
    """Return how each cut of a member is sawn."""
    lower = _('Tail') if member.kind.stands_on_plate else _('Lower end')
    ends = _end_words(member, member.head), _end_words(member, member.tail)
    if ends[0] == ends[1]:
        yield Fact(_('Both ends'), ends[0])
    else:
        yield Fact(_('Upper end'), ends[0])
        yield Fact(lower, ends[1])
    head = member.head
    if head.other and head.off and head.off.stop is Stop.WALL and head.long:
        yield Fact(
            _('Wall'),
            _('the {hand} cheek lies against it, the other against the next hip').format(
                hand=_(HANDS[head.long])
            ),
        )
    yield from _past_scale(member)
    if member.mouth is not None:
        seat = _('level, {level} from square across; heel plumb, {plumb}; stop the saw short of the corner')
        yield Fact(_('Seat'), seat.format(level=member.cut.level.text, plumb=member.cut.plumb.text))


def _end_words(member: Member, end: End) -> str:
    if end.bevel:
        words = _(
            'level on the side, {level} from square across; blade tilted {tilt}, to lie on the other roof'
        )
        return words.format(level=member.cut.level.text, tilt=end.bevel.text)
    square = _(SQUARE_ACROSS).format(plumb=member.cut.plumb.text)
    if end.cut is None:
        if end.lower is None:
            return square
        words = _(
            'square to the top edge, through its mark; blade square, 0°; the lower corner then stands {level} inwards of the mark, level, and '
            '{plumb} under it, plumb'
        )
        return words.format(level=in_inches(end.lower.set_in), plumb=in_inches(end.lower.below))
    if end.other is None:
        told = _cheek(end.cut)
        if end.blunt:
            return _('{square}; then both corners off: {cheek}').format(square=square, cheek=told)
        if isinstance(end.cut, OneCheek):
            return told
        words = (
            _('two hollow cheeks, from each side: {cheek}')
            if end.hollow
            else _('two cheeks to a point, from each side: {cheek}')
        )
        return words.format(cheek=told)
    return _('left cheek {left}; right cheek {right}').format(left=_cheek(end.cut), right=_cheek(end.other))


def _cheek(cut: CheekCut) -> str:
    values = {
        'plumb': cut.side_line.text,
        'line': cut.side_line.text,
        'tilt': cut.side_blade_tilt.text,
        'top': cut.top_from_square.text,
        'held': cut.top_held,
    }
    words = (LEANING, LEANING_PAST) if cut.side_leaning else (CHEEK, PAST)
    return _(words[not cut.within_saw_scale]).format(**values)


def _past_scale(member: Member) -> Iterator[Fact]:
    """Return how cheeks are sawn that ask for more tilt than a saw has: of both ends once where they are sawn alike."""
    ways = [
        sorted({_by_hand(cut) for cut in (end.cut, end.other) if cut and not cut.within_saw_scale})
        for end in (member.head, member.tail)
    ]
    if all(ways) and ways[0] != ways[1]:
        names = _('Past 45° above'), _('Past 45° below')
        return (Fact(name, way) for name, some in zip(names, ways, strict=True) for way in some)
    return (Fact(_('Past 45°'), way) for way in ways[0] or ways[1])


def _by_hand(cut: CheekCut) -> str:
    words = _(BY_HAND_LEANING if cut.side_leaning else BY_HAND)
    return words.format(other=known(cut.end_blade_tilt).text, reach=in_inches(known(cut.blade_reach)))


def facts_of(
    member: Member, asked: Asked, single: bool, plate: int, beside: Sequence[Slope]
) -> Iterator[Fact]:
    """Return what else a marking sheet says of its members.

    Given:
        beside  the slopes that a hip or valley lies between
        single  whether it is of one mark, whose steps are told here and not in a table
        plate   the number of the plate line's mark, 0 for none
    """
    hold, measure = member.hold, asked.measure
    words = _(HELD).format(held=hold.text, tongue=hold.tongue.text, body=hold.body.text)
    if hold.holds > 1:
        words = _(HALVED).format(square=words, run=hold.run_text)
    yield Fact(_('Square'), words)
    yield Fact(_('Steps'), _steps(member, plate, measure, single))
    yield from _drift(member, single, plate, measure)
    to_the_eaves = not member.tail.set_in_in.terms  # else steps would go past the tail's mark
    if member.kind.stands_on_plate and member.overhang_in.terms and plate and to_the_eaves:
        stepped = steps(member.overhang_in, hold)
        yield Fact(
            _('Tail’s steps'),
            _stepped(
                stepped, measure, _stop(plate), _stop(0 if member.tail.off else _number(member, Line.TAIL))
            ),
        )
    if top := _hip_top(member, beside):
        yield Fact(_('Top edge'), top)
    mouth = member.mouth
    if mouth is not None:
        told = _(MOUTH).format(**_sizes_of(mouth))
        if mouth.heel_back:
            back = _('{mouth}; the heel stands {out} outwards of the inside corner, level')
            told = back.format(mouth=told, out=in_inches(mouth.heel_back))
        yield Fact(_('Bird’s mouth'), told)
    if member.upper_mouth is not None:
        yield Fact(_('On the beam'), _(ON_BEAM).format(**_sizes_of(member.upper_mouth)))
    for name, end in ((_('Comes off above'), member.head), (_('Comes off below'), member.tail)):
        if end.off and end.off.along.count:
            yield Fact(name, _deduction(end.off, member.kind))


def _sizes_of(mouth: Mouth) -> dict[str, str]:
    return {
        'height': mouth.height_above_plate.text,
        'heel': known(mouth.heel).text,
        'seat': known(mouth.seat).text,
        'notch': known(mouth.notch_depth).text,
        'left': known(mouth.stock_left).text,
    }


def _steps(member: Member, plate: int, measure: Measure, single: bool) -> str:
    start = _('line c, the {line}').format(line=center_name(member))
    begins = [place for place, line in enumerate(lines_on(member), 1) if not member.at(line).terms]
    if begins:
        start = _stop(begins[0])
    if not single:
        return _(STEPPED_BY_TABLE).format(start=start, stop=_stop(plate))
    return _stepped(steps(member.run_in, member.hold), measure, start, _stop(plate))


def _number(member: Member, line: Line) -> int:
    return lines_on(member).index(line) + 1


def _drift(member: Member, single: bool, plate: int, measure: Measure) -> Iterator[Fact]:
    """Return how far from its mark the last step ends, where the square's figures are not exact and a tape shows it."""
    off = held_drift(steps(member.run_in, member.hold), member.hold)
    length = length_figure(size(off), measure)
    if length.count:
        stop = _stop(plate)
        if not single:
            stop = _('{stop} on {mark}').format(stop=stop, mark=member.name)
        words = _(DRIFT_LONG if sign(off) > 0 else DRIFT_SHORT)
        yield Fact(_('Steps’ error'), words.format(length=in_inches(length), stop=stop))


def _stop(number: int) -> str:
    """Return what steps begin or end at: a mark, without a number the line of what stops the board below."""
    return _(MARK).format(number=number) if number else _(STOPPED)


def _stepped(stepped: Steps, measure: Measure, start: str, stop: str) -> str:
    words = STEPPED if stepped.left_run_in.terms else STEPPED_WHOLE
    body, tongue = (length_figure(one, measure).text for one in (stepped.left_level_in, stepped.left_rise_in))
    return _(words).format(start=start, count=stepped.whole, body=body, tongue=tongue, stop=stop)


def _deduction(off: Deduction, kind: Kind) -> str:
    words, stop = _('{along} along the top edge, {level} level: up to the {stop}'), STOPS[off.stop]
    at_end = kind is Kind.END_COMMON and off.stop is Stop.RIDGE
    if at_end and 2 * inches_of(off.level) != off.thickness_in:
        stop = RIDGE_END if off.thickness_in else LAST_COMMONS
    elif off.thickness_in and off.stop in FACED:
        words = _('{along} along the top edge, {level} level: up to the face of the {stop}, {thick} thick')
    elif off.thickness_in:
        words = _('{along} along the top edge, {level} level: up to the {stop}, {thick} thick')
    return words.format(
        along=in_inches(off.along),
        level=in_inches(off.level),
        stop=_(stop),
        thick=text.in_units(off.thickness_in),
    )


def _hip_top(member: Member, beside: Sequence[Slope]) -> str:
    """Return how a hip comes into both planes; '' of another member."""
    if member.kind not in (Kind.HIP, Kind.UPPER_HIP):
        return ''
    if member.backs is None:
        side = beside[-1].members.side  # the end's: a wing's sides have the corner of its valleys
        drop = in_inches(side.length(greater_drop(side)))
        gaps: dict[str, list[str]] = {}
        for slope in beside:
            at = side.at if slope.members.side.slope == side.slope else side.at.turned()
            gap = side.length(gap_when_dropped(side.boards.hip_in, at))
            if gap.count:
                gaps.setdefault(in_inches(gap), []).append(slope_name(slope.name))
        for told, slopes in gaps.items():
            return _(DROPPED_GAP).format(drop=drop, gap=told, slope=either(slopes))
        return _(DROPPED).format(drop=drop)
    words = _(
        'backed: from the center line of its top {left} down to the left side and {right} to the right, from the square top'
    )
    return words.format(left=member.backs.left.text, right=member.backs.right.text)
