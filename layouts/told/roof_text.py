"""What `roof` tells a person: members by their marks, boards, heights, where each stands."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from typing import Any

from layouts.told.blocks import (
    Block,
    in_inches,
    paragraph,
)
from layouts.told.columns import LEFT, MIXED, RIGHT, columns
from layouts.told.roof_cuts import cuts_blocks
from layouts.told.walk import wrapped
from layouts.words.board_ends import HEADS, board_sentences, end_rows, ridge_end
from layouts.words.caution import caution_source, caution_text
from layouts.words.frame import (
    AT_WALL,
    CHECKS,
    ENDS_PLATES,
    HANDS,
    LEDGER_TOP,
    LEVELS,
    LINES,
    MEET,
    MEMBERS,
    OTHER_PLATES,
    in_rows,
    with_hand,
)
from layouts.words.lists import pitches
from layouts.words.marking import under
from layouts.words.say import N_, _
from tablegen.frame.cut_list import CutList, CutMember, OfRoof
from tablegen.numbers import text
from tablegen.roof.member import Kind, Line

MARKS_ARE = N_(
    'Marks run along the top edge, on its center, from the center line of what stops the member at its upper end (at a '
    'ledger, the face of the wall behind). Long, short and side: where a cheek leaves the sides; plate: the plate line or the '
    'corner of the plates, and the heel there, but for a valley; foot: the lower end. Cut from: the shortest board, tip to '
    'tip. Left and right: by the side of the long point, seen from the lower end up; such members are cut in pairs.'
)
PLACES_ARE = N_(
    'Along the plate from its left end, seen from outside, level, to the near side of each: draw the line there, and the '
    'X beyond it. Below 0 lies before that end, over a valley.'
)
KEPT_TOGETHER = '\u00a0'
"""A space at which no line is broken: a figure's fraction stands beside its whole number."""


def head(roof: OfRoof, stocks: Sequence[str]) -> Block:
    """Return what was asked, in two lines."""
    sizes = [text.run(one) for one in (roof.width, roof.length) if one is not None]
    said = _('{kind} roof, {pitch}, {spacing} on center, to the nearest {part} in').format(
        kind=roof.kind,
        pitch=pitches(roof.pitch, roof.other_pitch),
        spacing=text.run(roof.spacing),
        part=text.rational(roof.nearest),
    )
    size = _('{width} wide, {length} long; ').format(width=sizes[0], length=sizes[1]) if sizes else ''
    more = _('overhang {overhang}; stock {stocks}').format(
        overhang=text.run(roof.overhang), stocks=', '.join(stocks)
    )
    return [*([roof.name] if roof.name else []), said, size + more]


def members_blocks(found: CutList) -> Iterator[Block]:
    """Return the members: how many, of what, every mark, and their cuts."""
    rows = []
    unlike = len({one.pitch.text for one in found.members}) > 1
    for mark, alike in _by_mark(found.members):
        one, kind = alike[0], _(MEMBERS[alike[0].kind])
        numbers = [
            f'{each.number} {_(HANDS[each.hand])}' if each.hand else str(each.number) for each in alike
        ]
        named = f'{kind}, {pitches(one.pitch, one.other_pitch)}' if unlike else kind
        rows.append((mark, named, ', '.join(numbers), one.stock, one.cut_from.text))
    heads = (_('Members'), _('kind'), _('number'), _('stock'), _('cut from'))
    yield columns([heads, *rows], (LEFT, LEFT, LEFT, LEFT, MIXED))
    for kind in dict.fromkeys(one.kind for one in found.members):
        yield _marks([one for one in found.members if one.kind is kind], kind)
    yield paragraph(_(MARKS_ARE))
    yield from cuts_blocks(found)


def _by_mark(members: Iterable[CutMember]) -> list[tuple[str, list[CutMember]]]:
    found: dict[str, list[CutMember]] = {}
    for one in members:
        found.setdefault(one.mark, []).append(one)
    return list(found.items())


def _marks(members: Sequence[CutMember], kind: Kind) -> Block:
    """Return where every mark of some members of one kind is; a pair whose marks are alike has one row."""
    rows: dict[tuple[str, ...], str] = {}
    lines = [
        line for line in Line if line in {mark.line for one in members for mark in one.marks} & LINES.keys()
    ]
    lines.sort(key=lambda line: min(_at(one, line) for one in members if _at(one, line)))
    for mark, alike in _by_mark(members):
        told = {tuple(_mark(one, line) for line in lines): one for one in alike}
        for cells, one in told.items():
            rows[(mark, *cells)] = mark if len(told) == 1 else with_hand(mark, one.hand)
    heads = (_('Marks, {members}').format(members=_(MEMBERS[kind])), *(_(LINES[line]) for line in lines))
    return columns(
        [heads, *((name, *cells) for (_m, *cells), name in rows.items())], (LEFT, *(MIXED,) * len(lines))
    )


def _at(one: CutMember, line: Line) -> Any:
    """Return the count of parts at which a member has a mark, from 1 up so that 0 is none."""
    found = [place for place, mark in enumerate(one.marks, 1) if mark.line is line]
    return found[0] if found else 0


def _mark(one: CutMember, line: Line) -> str:
    return next((mark.at.text for mark in one.marks if mark.line is line), '')


def boards_block(found: CutList) -> Block:
    """Return the level boards."""
    if not found.boards:
        return []
    rows = [
        (one.mark, _(LEVELS[one.kind]), str(one.number), one.stock, one.length.text) for one in found.boards
    ]
    heads = (_('Level boards'), _('kind'), _('number'), _('stock'), _('sawn length'))
    ends = list(end_rows(found.boards))
    said = [(one.mark, ridge_end(one.end_cheeks, one.end_tilt)) for one in found.boards]
    return [
        *columns([heads, *rows], (LEFT, LEFT, LEFT, LEFT, MIXED)),
        *(f'  {mark}: {end}' for mark, end in said if end),
        *(columns([tuple(map(_, HEADS)), *ends], (LEFT, LEFT, LEFT, RIGHT, RIGHT, LEFT)) if ends else []),
        *paragraph(*board_sentences([one.kind for one in found.boards], found.roof.spacing)),
    ]


def studs_block(found: CutList) -> Block:
    """Return the studs of the gables."""
    if not found.studs:
        return []
    rows = [
        (
            one.mark,
            str(one.count),
            one.from_plate.text,
            one.long.text,
            one.short.text,
            one.top_cut.text,
            under(one.slopes),
        )
        for one in found.studs
    ]
    heads = (
        _('Gable studs'),
        _('number'),
        _('from plate line'),
        _('long'),
        _('short'),
        _('top cut'),
        _('under'),
    )
    said = _(
        'Under a slope: level from its plate line to the center; plumb from its plate’s top; the top cut from square across.'
    )
    return [*columns([heads, *rows], (LEFT, LEFT, MIXED, MIXED, MIXED, RIGHT, LEFT)), *paragraph(said)]


def heights_block(found: CutList) -> Block:
    """Return heights over the plates."""
    of = found.heights
    named = (
        (_('rafters’ top edge, over the plate line'), of.above_plate),
        (_(AT_WALL if of.ledger_top else MEET), of.planes_meet),
        (_(LEDGER_TOP), of.ledger_top),
        (_('top of the ridge'), of.ridge_top),
        (_('underside of the ridge'), of.ridge_bottom),
        (_('where the planes meet at the wing’s ridge, R2'), of.second_meet),
        (_('top of R2'), of.second_top),
        (_('underside of R2'), of.second_bottom),
        (_(OTHER_PLATES.get(found.roof.kind, ENDS_PLATES)), of.other_plates),
        (_('top of the purlins'), of.purlin_top),
        (_('top of the beam'), of.beam_top),
        (_('upper corner of the tails'), of.tail_top),
    )
    rows = [(name, figure.text) for name, figure in named if figure is not None]
    return columns([(_('Heights, plumb over the plates’ top'), _('inches')), *rows], (LEFT, MIXED))


def checks_block(found: CutList) -> Block:
    """Return what is measured before more is cut."""
    said = [
        _(CHECKS[one.check]).format(**{each.what: in_inches(each.length) for each in one.measures})
        for one in found.checks
    ]
    return [_('Check'), *(line for one in said for line in wrapped(one, '  '))]


def places_block(found: CutList) -> Block:
    """Return where every rafter stands along its plate."""
    slopes: dict[str, list[tuple[int, str]]] = {}
    for one in found.members:
        for place in one.places:
            said = f'{one.mark} {place.near_edge.text}'.replace(' ', KEPT_TOGETHER)
            slopes.setdefault(place.slope, []).append((place.near_edge.count, said))
    alike: dict[str, list[str]] = {}
    for name, places in slopes.items():
        alike.setdefault(', '.join(said for _n, said in sorted(places)), []).append(name)
    lines = [
        line.replace(KEPT_TOGETHER, ' ')
        for places, names in alike.items()
        for line in wrapped(f'{", ".join(names)}: {places}', '  ')
    ]
    return [_('Places'), *lines, *paragraph(_(PLACES_ARE))]


def cautions_block(found: CutList) -> Block:
    """Return the cautions, each with the marks that call for it and its clauses."""
    return [
        line
        for one in found.caution
        for line in paragraph(
            _('Caution, {of}: {text} ({source})').format(
                of=in_rows(one.of) or _('roof'),
                text=caution_text(one.caution),
                source=caution_source(one.caution),
            )
        )
    ]
