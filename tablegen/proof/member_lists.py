"""Reading the lists of all members of a reader's own roofs: worked out anew, by planes and points, from what was asked for."""

from __future__ import annotations

import re

from msgspec import Struct, field
from msgspec.structs import replace

from tablegen.proof.found import Found
from tablegen.proof.listed_boards import UNPLACED, Boards, Near, Standing, Where
from tablegen.proof.listed_places import from_gables
from tablegen.proof.member_cuts import CutReader
from tablegen.proof.member_list_page import Group, Listed, read_list
from tablegen.proof.names import MemberListNames
from tablegen.proof.page import Page
from tablegen.proof.roof_boards import CORNERS
from tablegen.proof.roof_level_boards import Left, left_of, missed, read_boards, read_studs
from tablegen.proof.roof_names import RoofNames
from tablegen.proof.roof_reading import Reading, Stood, total
from tablegen.proof.roof_sheets import roof_of
from tablegen.proof.roof_stated import THICKNESS, Unstated, asked
from tablegen.proof.roof_whole import Roof
from tablegen.proof.sheet_lines import Row, Table
from tablegen.proof.stated import Stated
from tablegen.proof.worked_roof import Form

MARK, SERIES = 'mark', re.compile(r'([A-Z]+)(\d*)')


class ListsReader:
    """Reads the lists of all roofs."""

    def __init__(self, names: MemberListNames, book: Stated):
        self.names, self.book, self.found = names, book, Found()
        self.listed: dict[str, Listed] = {}
        """By what each roof is called."""

    def page(self, page: Page) -> None:
        """Read a page, if it is of one."""
        title = next(iter(page.phrases), None)
        if title and title.text == self.names.title and page.folio and len(page.lines) > 1:
            name, groups, lines = read_list(page, self.names)
            listed = self.listed.setdefault(name, Listed())
            listed.pages.add(page.number)
            listed.groups += groups
            listed.asked += lines

    def end(self) -> None:
        """Work every roof out, of which is told what was asked for."""
        of_book = [f'smallest_part = "1/{self.book.per}"', f'lengths = "{"feet-" * self.book.in_feet}inches"']
        if self.book.boards:
            of_book.append(f'{THICKNESS} = "{self.book.boards.rafter} in"')
        for name, listed in self.listed.items():
            if not listed.asked or not listed.groups or self.book.translated:
                continue
            try:
                roof = roof_of(asked([*listed.asked, *of_book]))
            except (Unstated, KeyError):
                self.found.strange.append((listed.groups[-1].page, self.names.asked))
                continue
            try:
                ListReader(name, listed, roof, self.names, self.book, self.found).read()
            except (LookupError, ValueError, ArithmeticError):
                self.found.strange.append((listed.groups[-1].page, name))


class Member(Struct):
    """All that is listed under one mark."""

    mark: str
    page: int
    kind: str
    group: Group
    number: str = ''
    by_hand: bool = False
    marks: dict[Where, tuple[str, str]] = field(default_factory=dict)
    """Head and figure, by where each is."""


class ListReader(CutReader):
    """One roof's list."""

    def __init__(
        self, name: str, listed: Listed, roof: Roof, names: MemberListNames, book: Stated, found: Found
    ):
        super().__init__(name, names, Form(book), found)
        self.listed, self.roof = listed, roof
        self.boards = Boards(roof, names.hands, book.per)
        self.members: list[Member] = []
        self.uncounted: list[str] = []
        """Marks of which it is not known how many there should be."""
        self.it = Reading(roof.asked, roof, _sheet_names(names), found)

    def read(self) -> None:
        """Read all of it."""
        self.found.read |= self.listed.pages
        kept = {self.names.boards, self.names.level_ends, self.names.studs}
        for group in self.listed.groups:
            if group.title not in kept:
                self._members(group)
        standing = [self._near(member) for member in self.members]
        for member, near in zip(self.members, standing, strict=True):
            self._row(member, near)
        for group in self.listed.groups:
            if group.said and group.title not in kept:
                there = zip(self.members, standing, strict=True)
                those = (near.standing for member, near in there if member.group is group and near)
                self.said(group, next(those, None))
        self._all()
        self._others()
        if self.uncounted:
            words = f'{self.name}, {self.names.number}: {", ".join(self.uncounted)}'
            self.found.strange.append((self.listed.groups[0].page, words))

    # Members --------------------------------------------------------------------------------------------------

    def _members(self, group: Group) -> None:
        """Take down the members of a group; one whose marks are too many has several rows."""
        kind, stock, pitch = [*group.title.rsplit(', ', 2), '', ''][:3]
        if kind not in self.names.kinds:
            self._fault('pitch', group.page, group.title)
            return
        of = self.names.kinds[kind]
        key = {'hip': 'stock.hips', 'upper_hip': 'stock.hips', 'valley': 'stock.valleys'}.get(
            of, 'stock.rafters'
        )
        self._figure(group.page, group.title, '', stock, self.roof.asked.word(key))
        self._figure(group.page, group.title, '', pitch, *self._pitches(of))
        for mark, cells in group.rows:
            marks, number = dict[Where, tuple[str, str]](), ('', '')
            for head, printed in zip(group.heads, cells, strict=True):
                if head in (self.names.number, self.names.by_hand):
                    number = head, printed
                elif head in self.names.marks:
                    marks |= {self.names.marks[head]: (head, printed)} if printed else {}
                else:
                    self._fault('pitch', group.page, f'{group.title}, {head}')
            before = [one for one in self.members if one.mark == mark and one.number == number[1]]
            if (
                before
                and before[-1].group.title == group.title
                and not before[-1].marks.keys() & marks.keys()
            ):
                before[-1].marks |= marks  # they go on
            else:
                by_hand = number[0] == self.names.by_hand
                self.members.append(Member(mark, group.page, of, group, number[1], by_hand, marks))

    def _pitches(self, kind: str) -> list[str]:
        """Return how the pitches of a kind may be told: of a slope, or of both at a corner, in any order."""
        slopes = {one.name: one.pitch for one in self.roof.slopes}
        if kind not in CORNERS:
            return list(dict.fromkeys(slopes.values()))
        sides = [[slopes[name] for name in one.sides] for one in self.roof.corners if one.kind == kind]
        orders = (order for both in sides for order in (both, both[::-1]))
        return [self.it.pitches(list(dict.fromkeys(order))) for order in orders]

    def _near(self, member: Member) -> Near | None:
        """Return the boards that a row may be of: of the hands that it counts."""
        hand, counts = member.mark.partition(' ')[2], member.number.split(' + ')
        hands = [hand] if hand else ['', *self.names.hands]
        if member.by_hand and len(counts) > 1:
            hands = [one for one, count in zip(self.names.hands, counts, strict=False) if count != '0']
        return self.boards.alike(member.kind, _told_at(member), hands)

    def _row(self, member: Member, near: Near | None) -> None:
        if near is None and member.kind in UNPLACED:
            self.uncounted.append(member.mark)
            told_at = ', '.join(f'{head} {printed}' for head, printed in member.marks.values())
            self.found.strange.append((member.page, f'{self.name}, {member.mark}: {told_at}'))
            return
        near = near or self.boards.nearest_to(member.kind, _told_at(member))
        for where, (head, printed) in member.marks.items():
            self._length(member.page, member.mark, head, printed, *(near.spans[where] if near else ()))
        if near is None:
            self._fault('gap', member.page, member.mark)
            return
        self._ends(member, near.standing)
        count = self.boards.standing(member.kind, list(member.marks), near.standing)
        if count is None:
            self.uncounted.append(member.mark)
            return
        hand = member.mark.partition(' ')[2]
        each = ' + '.join(str(count[one]) for one in self.names.hands)
        right = str(count[hand]) if hand else each if member.by_hand else str(sum(count.values()))
        if self._cut_otherwise(member) and total(member.number) < sum(count.values()):
            right = member.number
        self._figure(member.page, member.mark, self.names.number, member.number, right)

    def _cut_otherwise(self, member: Member) -> bool:
        """Return whether another row is of the same kind and length, and differs in its cuts."""
        others = (one for one in self.members if one is not member and one.kind == member.kind)
        return any(member.marks.items() <= one.marks.items() for one in others)

    def _all(self) -> None:
        """See that as many members of each kind are in the list as the roof has, and that no mark of a series is left out."""
        page = self.listed.groups[0].page
        for kind in self.names.kinds.values():
            there = self.boards.count(kind)
            if (
                there is not None
                and sum(total(one.number) for one in self.members if one.kind == kind) != there
            ):
                self._fault('gap', page, f'{kind}: {there}')
        series: dict[str, set[int]] = {}
        for group in self.listed.groups:
            for mark, _cells in group.rows:
                for found in SERIES.finditer(mark):
                    series.setdefault(found[1], set()).add(int(found[2] or 1))
        for name, numbers in series.items():
            if len(numbers) < max(numbers):
                lacking = sorted(set(range(1, max(numbers))) - numbers)
                self._fault('gap', page, f'{name}{lacking[0]}')

    def _ends(self, member: Member, one: Standing) -> None:
        """See that the marks reach from the one end of a board to the other, and have the plate that it stands on."""
        there = {end for end, _across in member.marks}
        wanted = {'head', 'tail'} | ({'plate'} if one.board.height is not None else set())
        if wanted - there:
            self._fault('gap', member.page, f'{member.mark}, {" ".join(sorted(wanted - there))}')

    # Level boards and studs -------------------------------------------------------------------------------------

    def _others(self) -> None:
        """Read level boards, their ends, and studs, as on the sheets of a roof."""
        self._stand()
        left = left_of(self.it)
        left.levels = {mark: replace(level, tilt=None) for mark, level in left.levels.items()}
        skipped = self._lookouts(left) if self.roof.corners else set[str]()
        for group in self.listed.groups:
            rows = [Row(group.page, ('', mark, *cells)) for mark, cells in group.rows if mark not in skipped]
            table = Table((MARK, *group.heads), rows)
            if group.title == self.names.boards:
                read_boards(table, left, self.it)
            elif group.title == self.names.level_ends:
                heads = (self.names.heads['of-ends'], *group.heads)
                read_boards(Table(heads, table.rows), left, self.it)
            elif group.title == self.names.studs:
                read_studs(table, self.it)
        missed(left, self.listed.groups[-1].page, self.it)

    def _lookouts(self, left: Left) -> set[str]:
        """Leave lookouts where it is not known which rafters they run to; return their marks."""
        left.lookouts.clear()
        called = {words for words, level in self.names.levels.items() if level == 'lookout'}
        marks = [mark for group in self.listed.groups for mark, cells in group.rows if called & set(cells)]
        self.uncounted += marks
        return set(marks)

    def _stand(self) -> None:
        """Take down where rafters stand beside the gables."""
        for slope in self.roof.slopes:
            for along in from_gables(slope, self.roof.asked):
                self.it.stood.setdefault(slope.name, []).append(Stood(slope, along, along, ''))


def _told_at(member: Member) -> dict[Where, str]:
    """Return the figure of each mark."""
    return {where: printed for where, (_head, printed) in member.marks.items()}


def _sheet_names(names: MemberListNames) -> RoofNames:
    """Return the words of level boards and studs as the sheets of a roof have them."""
    none: dict[str, str] = {}
    return RoofNames(
        none, {MARK: MARK, **names.heads}, none, names.kinds, {}, none, none, {'and': names.both_told}, names.hands, '', (),
        names.levels, names.level_cuts, names.both, '', none,
    )  # fmt: skip
