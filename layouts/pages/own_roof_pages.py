"""All members of a roof of the reader's own: its cut list, each by its mark, with every mark along its top edge."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from pathlib import PurePath

from msgspec import Struct
from msgspec.structs import replace

from layouts.pages.part_tabs import part_tab
from layouts.paper.longer import CUTS, lines_in
from layouts.paper.page import Draft, Index, Maker
from layouts.paper.trim import Trim, trim_of
from layouts.paper.typeface import advance_em
from layouts.words.board_ends import HEADS, board_sentences, end_rows
from layouts.words.caution import caution_text
from layouts.words.frame import HANDS, LEVELS, LINES, MEMBERS, in_rows, with_hand
from layouts.words.lists import capital, pitches
from layouts.words.pages import ALL_MEMBERS, heading
from layouts.words.proof_members import ASKED, CHEEK, CUT, ENDS, MOUTH
from layouts.words.say import N_, _, say
from tablegen.examples.own_roof import OwnRoof
from tablegen.frame.asked_lines import asked_lines
from tablegen.frame.cut_list import CutList, CutMember, Warned, cut_list
from tablegen.numbers.figure import Figure
from tablegen.roof import cautions
from tablegen.roof.member import Line
from tablegen.settings import Settings

HEAD_REM, NOTE_REM, CELL_REM = 0.75, 0.75, 0.84
"""Sizes of type: heads of columns, small print, figures."""
APART_REM = 0.6
"""Between columns, at least."""
TOP_REM, TITLE_REM, HEADS_REM, ROW_REM, LINE_REM, NOTE_APART_REM = 2.75, 1.72, 1.1, 1.15, 1.02, 0.4
"""Heights: a page's head, a group's title, the heads of its columns, a row, a line of small print, and what is about it."""
KEPT_TOGETHER = '\u00a0'
"""A space at which no line is broken."""
FEWEST_ROWS, AFTER_LINES = 3, 2
"""Rows of a group that stand together; lines that end the last page."""
MARKS_ARE = N_(
    'marks run along the top edge, on its center, from the center line of what stops the member at its upper end (at a '
    'ledger, the face of the wall). Plate: the plate line or the corner of the plates. Left and right: by the side of the '
    'long point, seen from the lower end up; saw them in pairs.'
)
LEFT_OUT = ('buy.', 'name = ', 'smallest_part = ', 'lengths = ')
NONE = ' = "0 in"'


class Group(Struct, frozen=True):
    """Members or boards that have the same heads."""

    title: str
    said: str
    """Cuts and cheeks, in a line or two."""
    heads: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    """A mark, and what stands under each head."""

    def over_rem(self, wide_rem: float) -> float:
        """Return how much of a page that is so wide it takes over its rows."""
        return TITLE_REM + _note_rem(self.said, wide_rem) + HEADS_REM

    def parted(self, count: int) -> tuple[Group, Group]:
        """Return its first few rows, and the others."""
        return replace(self, rows=self.rows[:count]), replace(self, said='', rows=self.rows[count:])


class MembersPage(Struct, frozen=True):
    """A page of the cut list."""

    roof: str
    said: str
    """What marks are, on the first page; '' on the others."""
    groups: tuple[Group, ...]
    cautions: str
    """After the last group."""
    asked: tuple[str, ...]
    """The words of what was asked for, where there is room; none on the other pages."""
    care_page: int
    defers: str


def keys_of(place: int) -> str:
    """Return what the names of the pages of a book's roof end with: nothing for the first."""
    return f':{place + 1}' if place else ''


def called(settings: Settings) -> list[str]:
    """Return what a book's own roofs are called: each as its file where it has no name, and that too where two have one name."""
    files = [PurePath(file).stem for file in settings.roofs or ()]
    names = [asked.name or file for file, asked in zip(files, settings.own_roofs, strict=True)]
    if len({*zip(names, files, strict=True)}) < len(files):
        files = [str(place) for place, _file in enumerate(files, 1)]
    return [
        name if names.count(name) == 1 else f'{name} ({file})'
        for name, file in zip(names, files, strict=True)
    ]


def members_drafts(roof: OwnRoof, name: str, keys: str, settings: Settings) -> list[Draft]:
    """Return the pages of a roof's cut list, the cautions after its last group; keys is what their names end with."""
    found, trim = cut_list(roof.frame, None), trim_of(settings)
    said, told = _(MARKS_ARE), ' '.join(_told_caution(one) for one in found.caution)
    pages, room = _packed(_groups(found, trim.text_width / 10), (f'{name}: {said}', name, told), trim)
    asked, wide = ' '.join(_asked(roof)), trim.text_width / 10
    shown = asked if _note_rem(f'{_(ASKED)} {asked}', wide) <= room else ''
    return [
        Draft(
            'own_members',
            _maker(
                name,
                '' if place else said,
                tuple(groups),
                told if groups is pages[-1] else '',
                shown if groups is pages[-1] else '',
            ),
            '',
            heading(ALL_MEMBERS),
            part_tab('examples', trim),
            () if place else (f'{ALL_MEMBERS}{keys}',),
        )
        for place, groups in enumerate(pages)
    ]


def _asked(roof: OwnRoof) -> Iterator[str]:
    """Yield the lines of what was asked for, but for what is bought, what it is called and how its lengths read."""
    kept = [
        line
        for line in asked_lines(roof.frame.asked)
        if not line.startswith(LEFT_OUT) and not line.endswith(NONE)
    ]
    yield from (f'{line};' for line in kept[:-1])
    yield kept[-1]


def _maker(roof: str, said: str, groups: tuple[Group, ...], told: str, asked: str) -> Maker:
    def make(index: Index) -> MembersPage:
        care = next((index[name] for name in ('care', 'cautions') if name in index), 0)
        return MembersPage(roof, said, groups, told, tuple(asked.split()), care, say(cautions.DEFERS))

    return make


def _told_caution(one: Warned) -> str:
    words = caution_text(one.caution)
    return f'{in_rows(one.of)}: {words}' if one.of else words


def _note_rem(words: str, wide_rem: float) -> float:
    """Return how much of a page that is so wide small print takes."""
    return LINE_REM * lines_in(words, NOTE_REM, wide_rem) + NOTE_APART_REM if words else 0.0


def _packed(
    groups: Iterable[Group], around: tuple[str, str, str], trim: Trim
) -> tuple[list[list[Group]], float]:
    """Return groups by page, and how much is left of the last; one that is too long for what is left of a page goes on on the next.

    Given:
        around  what is said over the first of them, over those of later pages, and after the last
    """
    wide = trim.text_width / 10
    room, later = (trim.text_height / 10 - TOP_REM - _note_rem(words, wide) for words in around[:2])
    pages: list[list[Group]] = [[]]
    for group in groups:
        while group.rows:
            over = group.over_rem(wide)
            if room < over + ROW_REM * min(FEWEST_ROWS, len(group.rows)):
                pages.append([])
                room = later
            first, group = group.parted(max(1, int((room - over) // ROW_REM)))
            pages[-1].append(first)
            room -= over + ROW_REM * len(first.rows)
    after = _note_rem(around[-1], wide) + AFTER_LINES * LINE_REM
    return (pages, room - after) if after <= room else ([*pages, []], later - after)


def _groups(found: CutList, wide_rem: float) -> Iterator[Group]:
    alike: dict[tuple[str, ...], list[CutMember]] = {}
    for one in found.members:
        alike.setdefault((one.kind, one.stock, one.pitch.text, *_cheeks(one), *_mouth(one)), []).append(one)
    for members in alike.values():
        yield from _of_kind(members, wide_rem)
    boards: tuple[tuple[str, ...], ...] = tuple(
        (one.mark, str(one.number), _(LEVELS[one.kind]), one.stock, one.length.text) for one in found.boards
    )
    yield Group(_('Level boards'), '', (_('number'), _('kind'), _('stock'), _('sawn length')), boards)
    mitered = ' '.join(board_sentences([one.kind for one in found.boards if one.ends], found.roof.spacing))
    yield Group(_(HEADS[0]), mitered, tuple(map(_, HEADS[1:])), tuple(end_rows(found.boards)))
    said = _(
        'Level from the plate line to the center; plumb from the plate’s top; the top cut from square across.'
    )
    studs = tuple(
        (one.mark, str(one.count), one.from_plate.text, one.long.text, one.short.text, one.top_cut.text)
        for one in found.studs
    )
    heads = (_('number'), _('from plate line'), _('long'), _('short'), _('top cut'))
    yield Group(_('Gable studs'), said, heads, studs)


def _of_kind(members: Sequence[CutMember], wide_rem: float) -> Iterator[Group]:
    """Return members of one kind that are cut alike, their marks as many in a row as a page is wide."""
    one, by_mark = members[0], dict[str, list[CutMember]]()
    for member in members:
        by_mark.setdefault(member.mark, []).append(member)
    there = {mark.line for member in members for mark in member.marks}
    order = [mark.line for mark in one.marks]
    lines = sorted(there & LINES.keys(), key=lambda line: order.index(line) if line in order else len(order))
    title = capital(f'{_(MEMBERS[one.kind])}, {one.stock}, {pitches(one.pitch, one.other_pitch)}')
    said = _(CUT).format(plumb=one.cut.plumb.text, level=one.cut.level.text, held=_kept(one.held.held))
    number = _('left + right') if any(member.hand for member in members) else _('number')
    words = ' '.join((said, *_cheeks(one), *_mouth(one)))
    while lines:
        count = len(lines)
        while True:
            heads = (number, *(_(LINES[line]) for line in lines[:count]))
            rows = tuple(row for alike in by_mark.values() for row in _rows(alike, lines[:count]))
            if count == 1 or _wide_rem(heads, rows) <= wide_rem:
                break
            parts = -(-len(lines) // count) + 1
            count = min(count - 1, -(-len(lines) // parts))
        yield Group(title, words, heads, rows)
        lines, words = lines[count:], ''


def _wide_rem(heads: Sequence[str], rows: Sequence[Sequence[str]]) -> float:
    """Return how wide a group is: every column as its widest cell or its head."""
    columns = zip(('', *heads), *rows, strict=True)
    return sum(
        APART_REM
        + max(
            advance_em(head, *CUTS['bold']) * HEAD_REM,
            *(advance_em(cell, *CUTS['figures']) * CELL_REM for cell in cells),
        )
        for head, *cells in columns
    )


def _rows(alike: Sequence[CutMember], lines: Sequence[Line]) -> Iterator[tuple[str, ...]]:
    """Return the rows of one mark: one row where the marks of both hands of a pair are alike."""
    told: dict[tuple[str, ...], list[CutMember]] = {}
    for one in alike:
        at = {mark.line: mark.at.text for mark in one.marks}
        told.setdefault(tuple(at.get(line, '') for line in lines), []).append(one)
    for cells, some in told.items():
        mark = some[0].mark if len(told) == 1 else with_hand(some[0].mark, some[0].hand)
        yield mark, _count(some) if len(told) == 1 else str(some[0].number), *cells


def _count(hands: Sequence[CutMember]) -> str:
    """Return how many there are of a mark: of the left hand and of the right, where it has two."""
    if not any(one.hand for one in hands):
        return str(sum(one.number for one in hands))
    return ' + '.join(str(sum(one.number for one in hands if one.hand is hand)) for hand in HANDS)


def _cheeks(one: CutMember) -> list[str]:
    """Return the cheeks at both ends of a member, in words."""
    words = _(CHEEK)
    return [
        words.format(
            end=_(name), top=cheek.top_from_square.text, held=_kept(cheek.top_held),
            side=cheek.side_line.text, blade=cheek.side_blade_tilt.text,
        )
        for name, end in zip(ENDS, (one.head, one.tail), strict=True)
        for cheek in (end.cheek, end.other_cheek)
        if cheek
    ]  # fmt: skip


def _mouth(one: CutMember) -> list[str]:
    """Return the bird's mouth of a member, in words."""
    mouth = one.mouth
    if mouth is None or not isinstance(mouth.seat, Figure) or not isinstance(mouth.heel, Figure):
        return []
    words = _(MOUTH)
    height = mouth.height_above_plate.text
    return [words.format(seat=mouth.seat.text, heel=mouth.heel.text, height=height)]


def _kept(held: str) -> str:
    return held.replace(' ', KEPT_TOGETHER)
