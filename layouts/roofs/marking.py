"""Marking sheets: a board with its marks by number, how far each is from both ends, how every cut is sawn, boxes to tick."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings.cut_board import CENTER_NAME, LOW, MOST_HIGH, cut_board
from layouts.roofs.board_ink import board_ink
from layouts.roofs.cuts import Fact, cuts_of, facts_of
from layouts.roofs.groups import Group, Marked, all_alike, hands_of, lines_on
from layouts.told.blocks import in_inches
from layouts.words.caution import caution_source, caution_text
from layouts.words.drawings import CUT_BOARD
from layouts.words.frame import HANDS, MEMBERS, in_rows, with_hand
from layouts.words.lists import capital, joined, pitches
from layouts.words.marking import ends_of, line_name, slope_name
from layouts.words.patterns import center_name
from layouts.words.say import _
from tablegen.frame.frame import Frame
from tablegen.frame.framed import Framed, Standing
from tablegen.frame.plan import Plan, Slope
from tablegen.geometry.stepping import steps
from tablegen.numbers.exact import exact
from tablegen.numbers.figure import Figure, Measure, length_figure
from tablegen.roof.figures import size
from tablegen.roof.member import Hand, Kind, Line
from tablegen.roof.taped import Taped, points_of, taped

ABREAST = 10
"""Boxes that stand side by side in a row of members."""
MANY = 13
"""From so many members of one sheet on their rows stand closer."""


class MarkRow(Struct, frozen=True):
    """One mark of the board."""

    number: str
    name: str
    from_upper: Figure | str
    """Words where there is no one figure."""
    from_lower: Figure | str


class MemberRow(Struct, frozen=True):
    """One member of several on a sheet."""

    mark: str
    boxes: tuple[int, ...]
    """By hand."""
    abreast: int
    """How many boxes of a hand stand side by side."""
    figures: tuple[Figure, ...]
    stepped: str


class MarkingSheet(Struct, frozen=True):
    """One sheet."""

    key: str
    tight: bool
    bare: bool
    marks: str
    """In rows: 'HJ1–HJ8'."""
    named: str
    """The same, with the one hand of all of them where another sheet has the other."""
    kind: str
    pitch: str
    stock: str
    boxes: tuple[tuple[str, int], ...]
    """How many there are of each hand or mark, by its name; '' where there is but one."""
    image: Markup
    rows: tuple[MarkRow, ...]
    heads: tuple[str, ...]
    """Of the members' table; empty where the sheet is of one mark."""
    members: tuple[MemberRow, ...]
    many: bool
    """Whether those are so many that their rows stand closer."""
    cut_from: Figure | None
    overall: Figure | None
    facts: tuple[Fact, ...]
    stands: str
    cautions: tuple[str, ...]


def marking_sheet(
    group: Group, frame: Frame, width: float, tight: bool = False, bare: bool = False
) -> MarkingSheet:
    """Return the sheet of a group.

    Given:
        tight  whether its lines stand close and its drawing is low, so that it is one page
        bare   whether its cautions' clauses stand in the lists
    """
    asked = frame.asked
    lead, single = group[-1].lead.member, all_alike(group)
    marks = in_rows(one.name for one in group)
    hands, beside = hands_of(group), _beside(group[-1].lead, frame.plan)
    same = _the_same(group, asked.measure)
    varying = [line for line in lines_on(lead) if not all(same[line])]
    return MarkingSheet(
        key=key_of(group),
        tight=tight,
        bare=bare,
        marks=marks,
        named=with_hand(marks, hands[0]) if len(hands) == 1 else marks,
        kind=joined(list(dict.fromkeys(_(MEMBERS[one.lead.member.kind]) for one in group))),
        pitch=pitches(lead.pitch, lead.other_pitch),
        stock=lead.stock.name,
        boxes=tuple(_boxes(group)),
        image=cut_board(
            board_ink(group, asked), CUT_BOARD['title'], ends_of(lead), width, LOW if tight else MOST_HIGH
        ),
        rows=tuple(_mark_rows(group, same, asked.measure)),
        heads=() if single else tuple(_heads(lead_lines(group), varying, same, hands)),
        members=()
        if single
        else tuple(_member_row(one, varying, same, hands, asked.measure) for one in group),
        many=len(group) >= MANY,
        cut_from=lead.stick if single else None,
        overall=lead.overall if single else None,
        facts=(*cuts_of(lead), *facts_of(lead, asked, single, _last_number(group), beside)),
        stands=_stands(group, frame.plan),
        cautions=tuple(_cautions(group, frame, clauses=not bare)),
    )


def key_of(group: Group) -> str:
    """Return what leads to the sheet of a group."""
    return f'mark-{group[0].name}-{hands_of(group)[0] or ""}'


def _beside(framed: Framed, plan: Plan) -> list[Slope]:
    """Return the slopes that a hip or valley lies between; none of another member."""
    if not framed.member.kind.in_corner:
        return []
    names = {name for one in framed.standing for name in plan.between(one.start, one.end)}
    return [slope for slope in plan.slopes if slope.name in names]


def _boxes(group: Group) -> Iterator[tuple[str, int]]:
    for one in group:
        for framed in one.hands:
            yield (
                with_hand(one.name, framed.hand)
                if len(group) > 1
                else _(HANDS[framed.hand])
                if framed.hand
                else '',
                framed.count,
            )


def lead_lines(group: Group) -> list[Line]:
    """Return the numbered marks of a sheet."""
    return lines_on(group[-1].lead.member)


def _last_number(group: Group) -> int:
    """Return the number of the mark that steps end at, 0 where it is none of them."""
    lines = lead_lines(group)
    return lines.index(Line.PLATE) + 1 if Line.PLATE in lines else 0


def _the_same(group: Group, measure: Measure) -> dict[Line, tuple[Taped | None, Taped | None]]:
    """Return each mark's figures from the upper end and from the lower one, None where members have not the same."""
    tapes = [{each.line: each for each in taped(one.lead.member, measure)} for one in group]
    found = {}
    for line in lead_lines(group):
        all_of = [tape[line] for tape in tapes]
        upper = all_of[0] if len({one.from_upper.count for one in all_of}) == 1 else None
        lower = all_of[0] if len({one.from_lower.count for one in all_of}) == 1 else None
        found[line] = (upper, lower)
    return found


def _mark_rows(
    group: Group,
    same: dict[Line, tuple[Taped | None, Taped | None]],
    measure: Measure,
) -> Iterator[MarkRow]:
    member, pair = group[-1].lead.member, len(hands_of(group)) > 1
    first = points_of(member)[0]
    if member.head.off and member.head.off.along.count:
        before = length_figure(first, measure)
        words = (
            _('{length} before the board begins')
            if before.count > 0
            else _('{length} on from the first point')
        )
        told = words.format(length=in_inches(length_figure(size(first), measure)))
        yield MarkRow(CENTER_NAME, capital(center_name(member)), told, '')
    if member.head.tip:
        tip = _('where the two cheeks meet, aside of the center')
        yield MarkRow('', capital(tip), length_figure(exact(0), measure), member.overall)
    below = _('table below')
    for number, line in enumerate(lead_lines(group), 1):
        upper, lower = same[line]
        yield MarkRow(
            str(number),
            capital(line_name(member, line, pair)),
            upper.from_upper if upper else below,
            lower.from_lower if lower else below,
        )
    if member.tail.tip:
        tip = _('where the tail’s two cheeks meet, aside of the center')
        yield MarkRow('', capital(tip), member.overall, length_figure(exact(0), measure))


def _heads(
    lines: Sequence[Line],
    varying: Sequence[Line],
    same: dict[Line, tuple[Taped | None, Taped | None]],
    hands: Sequence[Hand | None],
) -> Iterator[str]:
    yield _('mark')
    yield from (_(HANDS[hand]) if hand else _('number') for hand in hands)
    yield from (_('cut from'), _('overall'))
    for line in varying:
        number = lines.index(line) + 1
        if not same[line][0] and number != len(lines):
            yield _('{number} from the first point').format(number=number)
        if not same[line][1] and number != 1:
            yield _('{number} from the last point').format(number=number)
    yield _('steps, then body & tongue')


def _member_row(
    one: Marked,
    varying: Sequence[Line],
    same: dict[Line, tuple[Taped | None, Taped | None]],
    hands: Sequence[Hand | None],
    measure: Measure,
) -> MemberRow:
    member = one.lead.member
    lines = lines_on(member)
    tapes = {each.line: each for each in taped(member, measure)}
    figures = [member.stick, member.overall]
    for line in varying:
        if not same[line][0] and line != lines[-1]:
            figures.append(tapes[line].from_upper)
        if not same[line][1] and line != lines[0]:
            figures.append(tapes[line].from_lower)
    stepped = steps(member.run_in, member.hold)
    odd = [length_figure(length, measure).text for length in (stepped.left_level_in, stepped.left_rise_in)]
    said = f'{stepped.whole}'
    if stepped.left_run_in.terms:
        said = _('{whole}, {body} & {tongue}').format(whole=stepped.whole, body=odd[0], tongue=odd[1])
    return MemberRow(
        member.name, tuple(one.count_of(hand) for hand in hands), ABREAST // len(hands), tuple(figures), said
    )


def _stands(group: Group, plan: Plan) -> str:
    """Return how many of a sheet's members stand on each slope, or at each corner."""
    found = Counter(
        _place(framed, standing, plan)
        for one in group
        for framed in one.hands
        for standing in framed.standing
    )
    return '; '.join(_('{place}: {count}').format(place=name, count=count) for name, count in found.items())


def _place(framed: Framed, standing: Standing, plan: Plan) -> str:
    if standing.slope:
        return slope_name(standing.slope)
    words = _('inside corner of {slopes}') if framed.member.kind is Kind.VALLEY else _('corner of {slopes}')
    return words.format(
        slopes=joined([slope_name(name) for name in plan.between(standing.start, standing.end)])
    )


def _cautions(group: Group, frame: Frame, clauses: bool) -> Iterator[str]:
    """Return what any of a sheet's members calls for, with its clause or without."""
    marks = {one.name for one in group}
    for one in frame.concerns:
        if marks & set(one.marks):
            told = {'text': caution_text(one.caution), 'source': caution_source(one.caution)}
            yield _('{text} ({source})').format(**told) if clauses else told['text']
