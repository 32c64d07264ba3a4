"""Reading how the members of a list are cut: what is said of a group, held against a board of it."""

from __future__ import annotations

import re
from collections.abc import Mapping
from decimal import Decimal

from tablegen.proof.digits import SLACK, decimals, nearest, written
from tablegen.proof.found import Fault, Found
from tablegen.proof.listed_boards import Standing
from tablegen.proof.member_list_page import Group
from tablegen.proof.names import MemberListNames
from tablegen.proof.roof_boards import square_of
from tablegen.proof.sentences import told
from tablegen.proof.space import Plane
from tablegen.proof.worked_roof import Form

SENTENCE = re.compile(r'(?<=\.) (?=\D)')


class CutReader:
    """Reads what is said of the groups of one list."""

    def __init__(self, name: str, names: MemberListNames, form: Form, found: Found):
        self.name, self.names, self.form, self.found = name, names, form, found

    def said(self, group: Group, one: Standing | None) -> None:
        """Read how the members of a group are cut."""
        if one is None:
            return
        cheeks: dict[str, int] = dict.fromkeys(self.names.ends, 0)
        for sentence in SENTENCE.split(group.said):
            if found := told(self.names.cut, sentence):
                body, tongue, _run = square_of(one.board, one.far)
                self._degrees(group, 'plumb', found['plumb'], one.board.plumb_cut)
                self._degrees(group, 'level', found['level'], one.board.level_cut)
                self._figure(
                    group.page,
                    group.title,
                    self.names.cut.partition(';')[2].partition('{')[0].strip(),
                    found['held'],
                    f'{body} & {tongue}',
                )
            elif found := told(self.names.cheek, sentence):
                cheeks[found['end']] = cheeks.get(found['end'], 0) + 1
                self._cheek(group, one, found)
            elif found := told(self.names.mouth, sentence):
                self._mouth(group, one, found)
            else:
                self._fault('words', group.page, f'{group.title}, {sentence}')
        for name, end in zip(self.names.ends, (one.board.head, one.board.tail), strict=True):
            skewed = [face for face in end.faces if abs(one.board.tilt(face)) > SLACK]
            if bool(skewed) is not bool(cheeks[name]) and not end.leans:
                self._fault('gap', group.page, f'{group.title}, {name}')

    def _cheek(self, group: Group, one: Standing, found: Mapping[str, str]) -> None:
        end = one.board.head if found['end'] == self.names.ends[0] else one.board.tail
        each = [self._cheek_told(one, face) for face in end.faces if abs(one.board.tilt(face)) > SLACK]
        printed = tuple(found[name] for name in ('top', 'held', 'side', 'blade'))
        near = max(
            each,
            key=lambda right: sum(a == b for a, b in zip(right, printed, strict=True)),
            default=('',) * 4,
        )
        for name, was, right in zip(('top', 'held', 'side', 'blade'), printed, near, strict=True):
            self._figure(group.page, f'{group.title}, {found["end"]}', name, was, right)

    def _cheek_told(self, one: Standing, face: Plane) -> tuple[str, ...]:
        board = one.board
        body, tongue = (written(side, self.form.per) for side in board.held(face))
        top, side, blade = (
            f'{decimals(value, 2)}°' for value in (board.cheek(face), board.side_line(face), board.tilt(face))
        )
        return top, f'{body} & {tongue}', side, blade

    def _mouth(self, group: Group, one: Standing, found: Mapping[str, str]) -> None:
        height = one.board.height
        values = (
            dict(zip(('heel', 'seat'), one.board.mouth(height), strict=False)) if height is not None else {}
        )
        for name, printed in found.items():
            value = height if name == 'height' else values.get(name)
            self._length(group.page, group.title, name, printed, *([] if value is None else [value]))

    def _figure(self, page: int, row: str, head: str, printed: str, *right: str) -> None:
        self.found.figure(page, f'{self.name}, {row}', head, printed, *(right or ['']))

    def _length(self, page: int, row: str, head: str, printed: str, *values: Decimal) -> None:
        per = self.form.per
        counts = [nearest(one, per) for one in values]
        between = range(min(counts), max(counts) + 1) if counts else ()
        ways = [way for count in between for way in self.form.length(Decimal(count) / per)]
        self._figure(page, row, head, printed.replace('− ', '−'), *ways)

    def _degrees(self, group: Group, head: str, printed: str, value: Decimal) -> None:
        self._figure(group.page, group.title, head, printed, f'{decimals(value, 2)}°')

    def _fault(self, kind: str, page: int, row: str) -> None:
        self.found.faults.append(Fault(kind, page, f'{self.name}, {row}', '', '', ''))
