"""Reading the drawings of worked examples: one rafter over two pages, and the boards with their marks, seats and heels."""

from __future__ import annotations

from collections.abc import Sequence

from tablegen.proof.drawn import FIGURE, SLACK, beside, labelled, labels
from tablegen.proof.page import Phrase
from tablegen.proof.timber import Timber
from tablegen.proof.worked_cited import Citer
from tablegen.proof.worked_marks import Numbers, place

STEPS = 6.0
"""Points that a step's number stands from the edge at most; a drawing stands over all of them."""


class Drawn(Citer):
    """The drawing of one page."""

    def _labels(self) -> list[Phrase]:
        """Return the labels over the first step, or the first mark."""
        title, *lines = self.page.lines
        first = (line[0] for line in lines if line[0].left < title[0].left + STEPS and line[0].bold)
        steps = [word.base for word in first if word.text.isdigit()]
        return labels(self.page, (0.0, max(steps, default=0.0) + 1, float('inf'), title[0].base - 1))

    def _drawn_rafter(self) -> None:
        """Read what its labels tell on either page, and the square's figures beside theirs."""
        found, names = self._labels(), self.state.names
        for label, name in names.drawn:
            for printed in labelled(found, label):
                self._figure(self.title, label, printed, *self._right(name))
        for label, name in names.arms:
            if any(one.text.endswith(label) for one in found):
                self._figure(self.title, label, beside(found, label), *self._right(name))

    def _drawn_board(self, board: Timber, numbers: Numbers) -> None:
        """Read how far the plate line and the tail are from mark 1, the seat and, right of it, the heel; marks count from the left."""
        figures = [one for one in self._labels() if FIGURE.fullmatch(one.text)]
        small = min((one.size for one in figures), default=0.0) + SLACK / 2
        marks = [int(one.text) for one in sorted(figures, key=lambda one: one.left) if one.size < small]
        if marks != sorted(marks):
            self._fault('gap', f'{self.title}, {" ".join(map(str, marks))}')
        large = sorted((one for one in figures if one.size > small), key=lambda one: (one.base, one.left))
        while large and (pair := [one for one in large if abs(one.base - large[0].base) < SLACK])[1:]:
            for name, one in zip(('mouth-seat', 'heel'), pair, strict=False):
                self._figure(self.title, name, one.text, *self._right(name))
            large = [one for one in large if one not in pair]
        self._lengths(large, board, numbers)

    def _lengths(self, found: Sequence[Phrase], board: Timber, numbers: Numbers) -> None:
        """Read lengths over the board from the lowest up: to the plate line, then to the tail; one alone may be to either."""
        where = {end: (end, across) for end, across in numbers.values() if across in ('', 'center')}
        ends = [end for end in ('plate', 'tail') if end in where]
        for n, one in enumerate(found):
            some = ends if len(found) == 1 else ends[n : n + 1]
            right = [way for end in some for way in self.form.length(place(board, where[end]))]
            self._figure(self.title, ' '.join(some), one.text, *(right or ['']))

    def _right(self, name: str) -> tuple[str, ...]:
        raise NotImplementedError
