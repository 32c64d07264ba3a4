"""The boards that a row of a list of members may be, by the lines that are told of it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from decimal import Decimal
from functools import cached_property
from itertools import pairwise

from msgspec import Struct

from tablegen.proof.digits import SLACK, nearest, real
from tablegen.proof.listed_places import from_gables
from tablegen.proof.roof_boards import BARGES, CORNERS, hand_of, place_of
from tablegen.proof.roof_plates import usual_places
from tablegen.proof.roof_reading import value_of
from tablegen.proof.roof_slopes import Slope
from tablegen.proof.roof_whole import Corner, Roof
from tablegen.proof.space import dot
from tablegen.proof.timber import Timber

Where = tuple[str, str]
PLACES = 50
"""Decimals to which places along a plate are told from one another."""
UNPLACED = ('cripple', 'laid_jack')
"""Kinds that may stand where neither the spacing nor what is beside them on a slope tells it."""
CLOSE = Decimal('0.5')
"""in, between boards that are looked at where no spacing makes a place."""


class Standing(Struct, frozen=True):
    """A board where it may stand."""

    board: Timber
    hand: str
    """'' for one that has none."""
    slope: Slope | None = None
    along: Decimal = Decimal(0)
    corner: Corner | None = None

    def at(self, where: Where) -> Decimal:
        """Return how far a mark is from the line that all are told from, along the top edge."""
        assert self.board.center
        line = self.board.to(self.board.center)
        return (line or Decimal(0)) - place_of(self.board, where)

    @property
    def far(self) -> Decimal:
        """Return how far level it goes for an inch of the run of commons."""
        if self.corner is None:
            return Decimal(1)
        return self.at(('plate', '')) * self.board.flat / self.corner.run


class Near(Struct, frozen=True):
    """A board that a row may be of."""

    standing: Standing
    spans: Mapping[Where, tuple[Decimal, Decimal]]
    """Between what each mark is: two where the board's place is known from another mark as that is printed."""


class Boards(Struct, frozen=True, dict=True):
    """All boards of a roof."""

    roof: Roof
    hands: tuple[str, str]
    per: int

    def of_kind(self, kind: str) -> list[Standing]:
        """Return all that may be of a kind."""
        if kind not in self._kinds:
            self._kinds[kind] = list(self._of_kind(kind))
        return self._kinds[kind]

    @cached_property
    def _kinds(self) -> dict[str, list[Standing]]:
        return {}

    def _of_kind(self, kind: str) -> Iterator[Standing]:
        if kind in CORNERS:
            for one in self.roof.corners:
                if one.kind == kind:
                    hand = '' if one.hand is None else self.hands[one.hand]
                    yield Standing(one.board, hand, corner=one)
            return
        yield from (
            Standing(board, hand_of(board, self.hands), slope)
            for slope, what, board in self.roof.barges()
            if what == kind
        )
        for slope in self.roof.slopes:
            for along in self._places[slope.name]:
                if any(way.kind == kind for way in slope.ways(along)):
                    yield self._standing(slope, along, kind)

    def _standing(self, slope: Slope, along: Decimal, kind: str) -> Standing:
        board = slope.rafter(along, self.roof.asked.depth('stock.rafters'), kind)
        return Standing(board, hand_of(board, self.hands), slope, along)

    @cached_property
    def _places(self) -> dict[str, list[Decimal]]:
        """Return where rafters may stand by the spacing along each slope, beyond its plate too, as far as the slope goes."""
        spacing, found = real(self.roof.asked.inches('spacing')), {}
        for slope in self.roof.slopes:
            start = dot(slope.along, slope.origin)
            ends = [dot(slope.along, corner) - start for corner in slope.corners]
            first, last = min(ends), max(ends)
            odd = {place % spacing for place in usual_places(slope, self.roof.asked)}
            count = int((last - first) / spacing) + 2
            places = [one + (int(first / spacing) - 1 + n) * spacing for one in odd for n in range(count)]
            places += () if self.roof.corners else from_gables(slope, self.roof.asked)
            found[slope.name] = sorted({round(place, PLACES) for place in places if first <= place <= last})
        return found

    def alike(self, kind: str, told: Mapping[Where, str], hands: Sequence[str]) -> Near | None:
        """Return the board of a kind and of some hands whose marks read as they are told, or what stands where no spacing makes a
        place; None where there is none.
        """
        counts = {
            where: value * self.per for where, words in told.items() if (value := value_of(words)) is not None
        }
        there = [one for one in self.of_kind(kind) if one.hand in hands]
        for one in there:
            if self._is_cut(one, told) and all(
                nearest(one.at(where), self.per) == count for where, count in counts.items()
            ):
                return Near(one, {where: (one.at(where), one.at(where)) for where in told})
        if not counts or kind in CORNERS + BARGES:
            return None
        return self._between(kind, there, counts) or self._between(kind, self._closely(kind, hands), counts)

    def _between(self, kind: str, there: Sequence[Standing], counts: Mapping[Where, Decimal]) -> Near | None:
        """Return what stands at the place at which a mark that tells it is as it is told, give or take half a part."""
        space, half = real(self.roof.asked.inches('spacing')), 1 / (2 * Decimal(self.per))
        for one, other in pairwise(there):
            told_apart = [where for where in counts if abs(one.at(where) - other.at(where)) > SLACK]
            if one.slope is None or one.slope is not other.slope or not told_apart:
                continue
            longest = max(told_apart, key=lambda where: counts[where])
            rate = (other.along - one.along) / (other.at(longest) - one.at(longest))
            told_at = one.along + rate * (counts[longest] / self.per - one.at(longest))
            if not one.along - space < told_at < other.along + space:
                continue
            places = (told_at + side * abs(rate) * half for side in (0, -1, 1))
            there_too = (place for place in places if any(way.kind == kind for way in one.slope.ways(place)))
            place = next(there_too, None)
            if place is None or not self._is_cut(found := self._standing(one.slope, place, kind), counts):
                continue
            far = 2 * abs(rate) * half / (other.along - one.along)
            spans = {}
            for where in counts:
                value, reach = found.at(where), abs(far * (other.at(where) - one.at(where)))
                spans[where] = value - reach, value + reach
            if all(
                nearest(low, self.per) <= counts[where] <= nearest(high, self.per)
                for where, (low, high) in spans.items()
            ):
                return Near(found, spans)
        return None

    def _is_cut(self, one: Standing, told: Mapping[Where, str] | Mapping[Where, Decimal]) -> bool:
        """Return whether the ends of a board have cheeks where more of an end is told than its center, and no others."""
        for name, end in (('head', one.board.head), ('tail', one.board.tail)):
            across = {across for at, across in told if at == name} - {'center'}
            skewed = any(abs(one.board.tilt(face)) > SLACK for face in end.faces)
            if skewed is not bool(across) and not end.leans:
                return False
        return True

    def _closely(self, kind: str, hands: Sequence[str]) -> list[Standing]:
        """Return boards of a kind all along every slope, close to one another: what is cut at a valley's tail stands by no spacing."""
        if kind not in self._close:
            self._close[kind] = [
                self._standing(slope, along, kind)
                for slope in self.roof.slopes
                for n in range(int((self._places[slope.name][-1] - self._places[slope.name][0]) / CLOSE) + 1)
                for along in [self._places[slope.name][0] + n * CLOSE]
                if any(way.kind == kind for way in slope.ways(along))
            ]
        return [one for one in self._close[kind] if one.hand in hands]

    @cached_property
    def _close(self) -> dict[str, list[Standing]]:
        return {}

    def nearest_to(self, kind: str, told: Mapping[Where, str]) -> Near | None:
        """Return the board of a kind whose marks are nearest to what is told; None where there is none of the kind."""
        values = {where: value for where, words in told.items() if (value := value_of(words)) is not None}
        most = len(values) // 2 + 1
        one = min(
            self.of_kind(kind),
            key=lambda one: sorted(abs(one.at(where) - value) for where, value in values.items())[:most],
            default=None,
        )
        return Near(one, {where: (one.at(where), one.at(where)) for where in told}) if one else None

    def standing(self, kind: str, marks: Sequence[Where], like: Standing) -> Counter[str] | None:
        """Return how many of each hand there are whose marks are those of one; None where the places of rafters are not told."""
        wanted = [nearest(like.at(where), self.per) for where in marks]
        if kind not in CORNERS + BARGES and self.roof.corners:
            return None
        there = self.of_kind(kind) if kind in CORNERS + BARGES else self._on_plates(kind)
        return Counter(
            one.hand for one in there if [nearest(one.at(where), self.per) for where in marks] == wanted
        )

    def count(self, kind: str) -> int | None:
        """Return how many there are of a kind; None where the places of rafters are not told."""
        if kind in CORNERS + BARGES:
            return len(self.of_kind(kind))
        return None if self.roof.corners else len(self._on_plates(kind))

    def _on_plates(self, kind: str) -> list[Standing]:
        """Return the rafters from gable to gable that have wood between their ends on both sides."""
        return [
            found
            for slope in self.roof.slopes
            for along in from_gables(slope, self.roof.asked)
            if any(way.kind == kind for way in slope.ways(along))
            and (found := self._standing(slope, along, kind)).board.is_wood
        ]
