"""A drawing beside words: what room it leaves to their lines, and what stands under it."""

from __future__ import annotations

from collections.abc import Callable

from msgspec import Struct

from layouts.quick.layers import Room
from layouts.quick.lines import Line
from layouts.quick.looks import Look
from layouts.quick.refusal import NotPlain


class Beside(Struct):
    """A drawing at the right of what follows it; px from the page's upper left."""

    x: float
    top: float
    bottom: float

    def rooms(self, look: Look, room: Room) -> Callable[[int], float]:
        """Return how wide each of the lines of a block is, told by their number.

        Errors:
            NotPlain if they are not simply broken, from the left
        """
        if look.white_space != 'normal' or look.align != 'start':
            raise NotPlain('lines_beside_a_drawing')
        y, height = room.next, look.height

        def wide(number: int) -> float:
            above = y + number * height
            met = self.top < above < self.bottom or self.top < above + height < self.bottom
            within = self.top >= above and self.bottom <= above + height
            return self.x - room.x if met or within else room.width

        return wide

    def refuse_uneven(self, lines: list[Line], look: Look) -> None:
        """Refuse lines that are higher than was reckoned with."""
        if any((line.above, line.below) != (look.baseline, look.height - look.baseline) for line in lines):
            raise NotPlain('lines_of_several_heights_beside_a_drawing')
