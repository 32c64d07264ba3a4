"""Folding a book's sheets: which page lies behind which, cut, stacked and folded, read leaf by leaf; the marks that say where.

What is known: the paper was turned about its upright middle, so that behind a front's left half is the right half of the
back; the lower half goes inside the upper; a section is folded with its fronts outside.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from functools import cached_property
from itertools import groupby, pairwise
from typing import NamedTuple

from msgspec import Struct

from tablegen.proof.found import Fault, Found
from tablegen.proof.ink import Ink, Piece, Stroke
from tablegen.proof.names import SheetNames
from tablegen.proof.page import Page
from tablegen.proof.sentences import told
from tablegen.proof.word import Unread, Word

NEAR, MOST_SHIFT = 0.6, 8.5
"""Points: how far off its place a mark or a word may be; how far towards the fold a page is pushed at most, 3 mm."""
LEAST_PAGE, FOLD_MARK = 0.4, 25.0
"""Share of the paper that a page takes at least, each way; points from the paper's edge within which the fold is marked where pages reach that edge."""
MM, INCH = 72 / 25.4, 72.0
BAR = 4 * INCH, 100 * MM
"""The two lengths of the bar."""


Leaf = tuple[Piece | None, Piece | None]
"""What stands on a front, and what behind it."""


class Half(NamedTuple):
    """A half-sheet as it comes out of the printer, its front up."""

    left: Leaf
    right: Leaf


class Side(Struct, dict=True):
    """One side of a sheet and what its margin says of it."""

    place: int
    """In the file, from 1."""
    ink: Ink
    section: int = 0
    sheet: int = 0
    is_front: bool = True
    lower_blank: bool = False
    known: bool = False
    """Whether its margin says all of that."""

    @cached_property
    def pages(self) -> list[Piece]:
        """Return the pages that lie on it: what is placed whole and takes nearly half of the paper each way."""
        across, up = (LEAST_PAGE * long for long in self.ink.size)
        return [one for one in self.ink.pieces if one.right - one.left > across and one.high - one.low > up]

    @property
    def middle(self) -> tuple[float, float]:
        """Return the middle of the paper."""
        return self.ink.size[0] / 2, self.ink.size[1] / 2

    def at(self, left: bool, upper: bool, rows: int) -> Piece | None:
        """Return the page that lies in a half of the paper, or in a quarter where there are two rows."""
        x, y = self.middle
        for piece in self.pages:
            over = (piece.left + piece.right) / 2, (piece.low + piece.high) / 2
            if (over[0] < x) == left and (rows == 1 or (over[1] > y) == upper):
                return piece
        return None


class Folder(Struct, dict=True):
    """Folds the sheets of one book."""

    pages: Sequence[Page]
    names: SheetNames
    found: Found

    @cached_property
    def by_words(self) -> Mapping[tuple[str, ...], list[Page]]:
        """Return pages by their words, which are asked for where a page is not in its place."""
        known: dict[tuple[str, ...], list[Page]] = {}
        for page in self.pages:
            known.setdefault(_texts(page.words), []).append(page)
            page.forget()
        return known

    def fold(self, sheets: Iterable[Ink]) -> None:
        """Fold all sheets past those that bear no page, and turn the leaves."""
        sides = [self._side(place, ink) for place, ink in enumerate(sheets, 1)]
        first = next((n for n, side in enumerate(sides) if side.sheet), len(sides))
        sides = sides[first:]
        if first % 2 or len(sides) % 2 or not sides:
            self._fault('pairs', first + 1, '', '', str(first + len(sides)), '')
            return
        for side in sides:
            self._marks(side, sides[0])
        at = 0
        for number, some in enumerate(self._sections(sides), 1):
            halves = half_sheets(some)
            self._shifts(some[0], halves)
            for piece in turned(halves):
                at += 1
                self._turned(number, at, piece)
            self.found.sections += 1
        self.found.sheets = len(sides) // 2
        if at != len(self.pages):
            self._fault('count', 0, '', '', str(at), str(len(self.pages)))

    def _side(self, place: int, ink: Ink) -> Side:
        side = Side(place, ink)
        for label in ink.labels:
            parts = label.split(self.names.between)
            sections = [one for part in parts if (one := told(self.names.section, part))]
            sheets = [one for part in parts if (one := told(self.names.sheet, part))]
            if not sheets:
                continue
            side.section = int(sections[0]['section']) if sections else 1
            side.sheet = int(sheets[0]['sheet'])
            side.is_front, side.lower_blank = self.names.front in parts, self.names.lower_blank in parts
            side.known = side.is_front != (self.names.back in parts)
        return side

    def _sections(self, sides: Sequence[Side]) -> Iterator[list[Side]]:
        """Yield the sides of each section, and hold what each says of itself against where it lies."""
        for section, some in enumerate(
            (list(group) for _n, group in groupby(sides, lambda side: side.section)), 1
        ):
            for n, side in enumerate(some):
                wanted = (section, n // 2 + 1, n % 2 == 0, True)
                if (side.section, side.sheet, side.is_front, side.known) != wanted:
                    self._fault(
                        'label', side.place, '', '', ' | '.join(side.ink.labels), f'{section}, {n // 2 + 1}'
                    )
            if len(some) % 2:
                self._fault('pairs', some[0].place, '', '', str(len(some)), '')
                some = some[:-1]
            yield some

    def _turned(self, section: int, at: int, piece: Piece | None) -> None:
        """Hold a page that is turned to against the page of the booklet in its place."""
        right = self.pages[at - 1] if at <= len(self.pages) else None
        if piece is None or right is None or not self._is(piece, right):
            other = (
                next(
                    (one for one in self.by_words.get(_texts(piece.words), []) if self._is(piece, one)), None
                )
                if piece
                else None
            )
            self._fault(
                'turned',
                section,
                str(at),
                '',
                str(other.number) if other else '',
                str(right.number) if right else '',
            )

    def _is(self, piece: Piece, page: Page) -> bool:
        """Return whether a page that is placed on a sheet is one of the booklet's, word for word and in their places."""
        if isinstance(piece.given, Unread) and piece.given.is_like(page.given):
            return True
        there, wanted = piece.words, page.words
        page.forget()
        return len(there) == len(wanted) and all(
            one.text == word.text
            and abs(one.left - piece.left - word.left) < NEAR
            and abs(one.base - piece.low - word.base) < NEAR
            for one, word in zip(there, wanted, strict=True)
        )

    # Where pages and marks lie --------------------------------------------------------------------------------

    def _shifts(self, side: Side, halves: Sequence[Half]) -> None:
        """See that pages are pushed towards the fold, those of inner leaves no less than those of outer ones."""
        middle, pushed = side.middle[0], []
        for half in halves:
            (front, behind), (other, back) = half
            pushed += [piece.right - middle for piece in (front, back) if piece]
            pushed += [middle - piece.left for piece in (behind, other) if piece]
        ordered = all(later > one - NEAR for one, later in pairwise(pushed))
        if not ordered or any(not -NEAR < one < MOST_SHIFT for one in pushed):
            self._fault('shift', side.place, '', '', '', '')

    def _marks(self, side: Side, first: Side) -> None:
        """See that fold, cuts and staples are marked where pages end, and that the bar is as long as it says."""
        piece = first.pages[0]
        wide, high = piece.right - piece.left, piece.high - piece.low
        (x, y), (right, top) = side.middle, side.ink.size
        rows = 1 if right > top else 2
        above, beside = y - rows * high / 2, x - wide
        lines = side.ink.strokes
        if not all(
            any(one.dashed and _spans(one, x, x, *ends) for one in lines)
            for ends in _beyond(max(above, FOLD_MARK), top)
        ):
            self._fault('fold', side.place, '', '', '', '')
        cuts = []
        if above > 1:
            cuts += [(edge, edge, *ends) for edge in (x - wide, x + wide) for ends in _beyond(above, top)]
        if beside > 1:
            edges = [above + n * high for n in range(rows + 1)]
            cuts += [(*ends, edge, edge) for edge in edges for ends in _beyond(beside, right)]
        if not all(any(not one.dashed and _reaches(one, cut) for one in lines) for cut in cuts):
            self._fault('cut', side.place, '', '', '', '')
        spine = top - above
        wanted = [spine - high / 4, spine - high * 3 / 4] if side.is_front and side.sheet == 1 else []
        ticks = sorted(
            (one for one in lines if not one.dashed and _spans(one, x, x, above, spine)),
            key=lambda one: -one.box[3],
        )
        middles = [(one.box[1] + one.box[3]) / 2 for one in ticks]
        if len(middles) != len(wanted) or any(
            abs(a - b) > NEAR for a, b in zip(middles, wanted, strict=True)
        ):
            self._fault('staple', side.place, '', '', '', '')
        self._bar(side)
        below = [one for one in side.pages if one.high < y + NEAR]
        if rows == 2 and side.lower_blank == bool(below):
            self._fault('label', side.place, '', '', ' | '.join(side.ink.labels), '')

    def _bar(self, side: Side) -> None:
        long, short = BAR
        for bar in side.ink.strokes:
            start = bar.points[0]
            ends = [end for one in side.ink.strokes if one is not bar for end in one.points]
            far = [abs(end[0] - start[0]) + abs(end[1] - start[1]) for end in ends]
            if abs(bar.long - long) < NEAR and any(abs(one - short) < NEAR for one in far):
                return
        self._fault('bar', side.place, '', '', '', '')

    def _fault(self, what: str, place: int, row: str, head: str, printed: str, right: str) -> None:
        self.found.faults.append(Fault(f'sheet-{what}', place, row, head, printed, right))


def half_sheets(sides: Sequence[Side]) -> list[Half]:
    """Return the half-sheets of a section, the outermost first: cut across, the lower pile inside; blank ones fall out."""
    rows = 1 if sides[0].ink.size[0] > sides[0].ink.size[1] else 2
    halves = [
        Half(
            (front.at(True, upper, rows), back.at(False, upper, rows)),
            (front.at(False, upper, rows), back.at(True, upper, rows)),
        )
        for upper in (True, False)[:rows]
        for front, back in zip(sides[::2], sides[1::2], strict=True)
    ]
    return [half for half in halves if any(any(leaf) for leaf in half)]


def turned(halves: Sequence[Half]) -> Iterator[Piece | None]:
    """Yield pages as they lie upon each other in the folded section, fronts outside, from its first page down."""
    count = 4 * len(halves)
    lies: dict[int, Piece | None] = {}
    for nest, half in enumerate(halves):
        lies[2 * nest], lies[2 * nest + 1] = half.right
        lies[count - 1 - 2 * nest], lies[count - 2 - 2 * nest] = half.left
    return (lies[depth] for depth in sorted(lies))


def _beyond(margin: float, end: float) -> tuple[tuple[float, float], tuple[float, float]]:
    """Return both margins of the paper along one of its edges."""
    return (0.0, margin), (end - margin, end)


def _spans(line: Stroke, left: float, right: float, low: float, high: float) -> bool:
    """Return whether a line lies within bounds."""
    x, y, u, v = line.box
    return left - NEAR < x and u < right + NEAR and low - NEAR < y and v < high + NEAR


def _reaches(line: Stroke, bounds: tuple[float, float, float, float]) -> bool:
    """Return whether a line reaches from bound to bound."""
    x, y, u, v = line.box
    left, right, low, high = bounds
    return max(abs(x - left), abs(u - right), abs(y - low), abs(v - high)) < NEAR


def _texts(words: Sequence[Word]) -> tuple[str, ...]:
    return tuple(word.text for word in words)
