"""Reading what a marking sheet says of a board's cuts, its bird's mouth, its steps and what comes off it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from decimal import Decimal
from fractions import Fraction
from itertools import permutations

from tablegen.proof.digits import FOOT_IN, SLACK, nearest, read, real
from tablegen.proof.roof_boards import (
    BARGES,
    CORNERS,
    Boards,
    barges_of,
    corners_of,
    square_of,
    steps_between,
    steps_of,
)
from tablegen.proof.roof_ends import Ends
from tablegen.proof.roof_plates import slopes_named
from tablegen.proof.roof_reading import Reading
from tablegen.proof.sentences import before, told
from tablegen.proof.timber import End, Timber

Said = tuple[int, str, str]


class _Facts(Ends):
    """The facts of one sheet."""

    numbers: Mapping[int, tuple[str, str]]
    """What the numbers of its marks are."""

    def seat(self, page: int, name: str, words: str) -> None:
        found = self.places(page, name, 'seat', words)
        self.degrees(page, self.row(name), 'seat', found, 'level', self.board.level_cut)
        self.degrees(page, self.row(name), 'seat', found, 'plumb', self.board.plumb_cut)

    def square(self, page: int, name: str, words: str) -> None:
        """Read how the square is held."""
        body, tongue, step = square_of(self.board, self.boards.runs[0][1])
        whole = step == str(FOOT_IN)
        found = self.places(page, name, 'held' if whole else 'halved', words)
        head = self.sentences['held']
        for place, right in (('held', f'{body} & {tongue}'), ('tongue', tongue), ('body', body)):
            self.it.figure(page, self.row(name), before(head, place), found.get(place, ''), right)
        if not whole:
            self.it.figure(page, self.row(name), before(self.sentences['halved'], 'run'), found.get('run', ''), f'{step} in', step)  # fmt: skip

    def steps(self, page: int, name: str, words: str, tail: bool, single: bool) -> None:
        """Read how a board or its tail is stepped off, and to where."""
        if not (tail or single):
            self._stop(page, name, self.places(page, name, 'stepped-by-table', words), tail)
            return
        runs = self.boards.runs
        if tail:
            runs = [(_overhang(board) / runs[0][1], runs[0][1]) for board in self.boards.found]
        each = steps_between(self.board, runs)
        whole = [one for one in each if one[1] < SLACK]
        if whole and told(self.sentences['stepped'], words) is None:
            found = self.places(page, name, 'stepped-whole', words)
            self._stop(page, name, found, tail)
            self.it.figure(page, self.row(name), '', found.get('count', ''), *(str(one[0]) for one in whole))
            return
        found = self.places(page, name, 'stepped', words)
        self._stop(page, name, found, tail)
        counts = list(dict.fromkeys(str(one[0]) for one in each))
        self.it.figure(page, self.row(name), '', found.get('count', ''), *counts)
        there = [one for one in each if str(one[0]) == found.get('count')] or each
        for n, place in enumerate(('body', 'tongue')):
            self.it.length(page, self.row(name), place, found.get(place, ''), *(one[1:][n] for one in there))

    def _stop(self, page: int, name: str, found: dict[str, str], tail: bool) -> None:
        """Hold where steps begin and end against the numbers of the marks there; what stops a board below has none."""
        at = {where: self.sentences['mark'].format(number=number) for number, where in self.numbers.items()}
        plate, stopped = at.get(('plate', 'center'), self.sentences['stopped']), self.sentences['stopped']
        stop = at.get(('tail', 'center'), '') if tail and not self.board.tail.line else stopped
        self.it.figure(page, self.row(name), '', found.get('stop', ''), stop if tail else plate)
        if tail:
            self.it.figure(page, self.row(name), '', found.get('start', ''), plate)

    def drift(self, page: int, name: str, words: str) -> None:
        """Read how far from its mark the last step ends with the square held as it is read."""
        run, far = self.boards.runs[0]
        body, tongue, step = (read(one) or Fraction(0) for one in square_of(self.board, far))
        whole, _body, _tongue = steps_of(self.board, run, far)
        exact = real(step) * far / self.board.flat
        off = whole * (real(body * body + tongue * tongue).sqrt() - exact)
        found = self.places(page, name, 'drift-long' if off > 0 else 'drift-short', words)
        self.it.length(page, self.row(name), '', found.get('length', ''), abs(off))

    def mouth(self, page: int, name: str, words: str, sentence: str) -> None:
        """Read the bird's mouth, or that on a beam, which is as high over it and seated alike."""
        it, board = self.it, self.board
        if board.height is None:
            it.strange(page, f'{name} {words}')
            return
        heel, seat, notch, left = board.mouth(board.height)
        if board.out:
            found = self.places(page, name, 'mouth-out', words)
            it.length(page, self.row(name), before(self.sentences['mouth-out'], 'out'), found.get('out', ''), board.out)  # fmt: skip
            words = found.get('mouth', '')
        found = self.places(page, name, sentence, words)
        values = {'height': board.height, 'heel': heel, 'seat': seat, 'notch': notch, 'left': left}
        for place, value in values.items():
            it.length(
                page, self.row(name), before(self.sentences[sentence], place), found.get(place, ''), value
            )

    def off(self, page: int, name: str, words: str, end: End, at: Decimal) -> None:
        """Read what comes off at an end: from the line of what stops it to the point of its center.

        Given:
            at  along from that line
        """
        it = self.it
        found = self.places(page, name, 'off', words)
        for place, value in (('along', at), ('level', at * self.board.flat)):
            it.length(page, self.row(name), before(self.sentences['off'], place), found.get(place, ''), value)
        thick = found.get('stop', '').rpartition(', ')[2].partition(' in ')[0]
        if end.thick and read(thick) is not None:
            it.length(page, self.row(name), '', thick, real(end.thick))

    def backs(self, page: int, name: str, words: str) -> None:
        """Read how a hip comes into both slopes."""
        corner, it = self.boards.corner, self.it
        assert corner
        if corner.backs:
            found = self.places(page, name, 'backed', words)
            for place, value in zip(('left', 'right'), corner.backs, strict=True):
                it.degrees(page, self.row(name), place, found.get(place, ''), value)
            return
        gap = max(corner.drops) - min(corner.drops)
        sentence = self.sentences['dropped']
        if nearest(gap, it.asked.per):
            flatter = {
                it.names.slopes[one.sides[0 if one.drops[0] < one.drops[1] else 1]]
                for mark in self.marks
                for one in corners_of(mark, it, self.hand)
            }
            rows = (it.row(some, 'or') for some in permutations(flatter))
            sentence = self.sentences['dropped-gap']
            sentence = sentence.replace('{slope}', next((one for one in rows if one in words), ''))
        there = told(sentence, words)
        if there is None:
            it.strange(page, f'{name} {words}')
        for place, value in (('drop', max(corner.drops)), ('gap', gap)):
            if f'{{{place}}}' in sentence:
                it.length(page, self.row(name), place, (there or {}).get(place, ''), value)

    def stands(self, page: int, name: str, words: str) -> None:
        """Read how many stand on each slope or at each corner."""
        it, right = self.it, self._standing()
        for one in words.split('; '):
            place, _colon, count = one.rpartition(': ')
            key = frozenset(slope.name for slope in slopes_named(place, it))
            it.figure(page, self.row(name), place, count, str(right.pop(key, '')))
        if right:
            it.missing(page, self.row(name))

    def _standing(self) -> Counter[frozenset[str]]:
        """Return how many of the sheet's members there are, by the slopes that each is on or between."""
        it, right = self.it, Counter[frozenset[str]]()
        for mark in self.marks:
            if self.boards.kind in CORNERS:
                right.update(one.slopes for one in corners_of(mark, it, self.hand))
            elif self.boards.kind in BARGES:
                right.update(frozenset({slope}) for slope, _board in barges_of(mark, it))
            else:
                right.update(frozenset({stood.slope.name}) for stood in it.stood.get(mark, []))
        return right


def _overhang(board: Timber) -> Decimal:
    """Return how far level a board's tail goes, to what stops it where something does."""
    along = board.to(board.tail.line) if board.tail.line else None
    return -(along or board.at(board.tail, Decimal(0), False)) * board.flat


def read_facts(
    page: int,
    title: str,
    facts: Sequence[Said],
    marks: Sequence[str],
    boards: Boards,
    single: bool,
    hand: str,
    numbers: Mapping[int, tuple[str, str]],
    it: Reading,
) -> None:
    """Read them all.

    Given:
        numbers  what the numbers of the board's marks are
        hand  of all of them, '' where they are of both or of none
    """
    one, there, board = _Facts(title, boards, marks, hand, it), set(), boards.one
    one.numbers = numbers
    line = board.to(board.center) if board.center else None
    above = (line or Decimal(0)) - board.at(board.head)
    below = board.at(board.tail, Decimal(0), False) - (board.to(board.tail.line) or Decimal(0)) if board.tail.line else Decimal(0)  # fmt: skip
    for at, name, words in facts:
        what = it.names.facts.get(name)
        there.add(what)
        match what:
            case 'both':
                one.end(at, name, words, board.head, False)
                one.end(at, name, words, board.tail, True)
            case 'head':
                one.end(at, name, words, board.head, False)
            case 'tail':
                one.end(at, name, words, board.tail, True)
            case 'past':
                one.by_hand(at, name, words)
            case 'seat':
                one.seat(at, name, words)
            case 'square':
                one.square(at, name, words)
            case 'steps' | 'tail-steps':
                one.steps(at, name, words, what == 'tail-steps', single)
            case 'drift':
                one.drift(at, name, words)
            case 'top':
                one.backs(at, name, words)
            case 'mouth' | 'on-beam':
                one.mouth(at, name, words, what)
            case 'off':
                one.off(at, name, words, board.head, above)
            case 'off-below':
                one.off(at, name, words, board.tail, below)
            case 'stands':
                one.stands(at, name, words)
    wanted = {'square', 'stands', 'steps'}
    if board.height is not None and board.seats:
        wanted |= {'seat', 'mouth'}
    if board.head.line and board.height is not None:
        wanted.add('on-beam')
    if boards.kind in CORNERS[:2]:
        wanted.add('top')
    wanted |= {name for name, off in (('off', above), ('off-below', below)) if off > SLACK}
    if not wanted <= there or not ({'both'} <= there or {'head', 'tail'} <= there):
        it.missing(page, title)
