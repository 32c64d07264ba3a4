"""The roofs of two slopes as their pages should print them: a figure of each rafter a step, every mark of both boards."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from msgspec import Struct
from oracle import cuts, seats, shortening, tails
from oracle.corner import common_length, corner, rise
from oracle.rounding import degrees, part

from labels.example_roof import feet, stepped
from labels.expected import DEPTHS

OUT, BREAK, HALF = Fraction(8), Fraction(36), Fraction(96)
"""Overhang of both; the workshop's purlin, level from the plate line, and half of its width."""
SALTBOX, GAMBREL = 'A saltbox: the woodshed', 'A gambrel: the workshop'


class Slopes(Struct, frozen=True):
    """Rises of the woodshed's front and back, its front's run, and rises of the workshop's slopes."""

    front: Fraction
    back: Fraction
    front_run: Fraction
    lower: Fraction
    upper: Fraction

    @property
    def back_run(self) -> Fraction:
        """Both rise to one ridge."""
        return self.front_run * self.front / self.back


STANDARD = Slopes(Fraction(9), Fraction(5), Fraction(60), Fraction(16), Fraction(5))
"""Of a book that has their pitches."""
SMALL = Slopes(Fraction(8), Fraction(4), Fraction(60), Fraction(8), Fraction(4))
"""Of one of 4, 6 and 8 in 12."""


def tables(roof, of: Slopes) -> dict[str, dict[str, str]]:
    """Return the figures of both rafters by the title of their page and words of each step."""
    return {SALTBOX: _saltbox(roof, of), GAMBREL: _gambrel(roof, of)}


def _each(figure: Callable, *of) -> str:
    return ' '.join(part(figure(*one)) for one in of)


def _square(*rises: Fraction) -> str:
    return ', '.join(f'12 & {part(one)}' for one in rises)


def _plumb(*rises: Fraction) -> str:
    return ' '.join(degrees(cuts.plumb_cut(corner(one))) for one in rises)


def _saltbox(roof, of: Slopes) -> dict[str, str]:
    front, back, depth = corner(of.front), corner(of.back), DEPTHS[roof.rafters]
    runs = (front, of.front_run), (back, of.back_run)
    width = of.front_run + of.back_run
    height = seats.height_above_plate(front, depth, roof.seat)
    seat = seats.seat_of_height(back, depth, height)
    level = shortening.common_at_ridge(front, roof.ridge)[0]
    return {
        f'Run: {feet(width)} × {part(of.back)} ÷ ({part(of.front)} + {part(of.back)}); the rest': f'{feet(of.front_run)} {feet(of.back_run)}',
        'Rise, alike: they meet': _each(rise, *runs),
        'Plate line.': _each(common_length, *runs),
        'Tail cut.': _each(lambda at, run: common_length(at, run + OUT), *runs),
        f'Ridge cut: half of it, {part(level)} level': _each(
            lambda at: shortening.common_at_ridge(at, roof.ridge)[1], (front,), (back,)
        ),
        'Height above plate, C1’s on both': f'{part(height)} {part(height)}',
        f'Heel; seat {part(roof.seat)}, C2’s {part(seat)}': _each(
            seats.heel, (front, roof.seat), (back, seat)
        ),
        f'Plumb cut; square {_square(of.front, of.back)}': _plumb(of.front, of.back),
    }  # fmt: skip


def _gambrel(roof, of: Slopes) -> dict[str, str]:
    lower, upper, depth = corner(of.lower), corner(of.upper), DEPTHS[roof.rafters]
    runs = (lower, BREAK), (upper, HALF - BREAK)
    off, other = (shortening.common_at_ridge(at, roof.rafter) for at in (lower, upper))
    ridge = shortening.common_at_ridge(upper, roof.ridge)
    length = common_length(upper, HALF - BREAK)
    return {
        f'Run: to the purlin; the rest of {feet(HALF)}': f'{feet(BREAK)} {feet(HALF - BREAK)}',
        f'Rise; together {part(rise(lower, BREAK) + rise(upper, HALF - BREAK))}': _each(rise, *runs),
        'Plate line; purlin’s center line': _each(common_length, *runs),
        'Tail cut.': part(common_length(lower, BREAK + OUT)),
        f'Ridge cut: half of it, {part(ridge[0])} level': part(ridge[1]),
        f'Purlin cut: half of it, {part(off[0])} level; UR’s, {part(length)} less {part(other[1])}': (
            f'{part(off[1])} {part(length - other[1])}'
        ),
        f'Height above plate; heel {part(seats.heel(lower, roof.seat))}': part(
            seats.height_above_plate(lower, depth, roof.seat)
        ),
        f'Plumb cut; square {_square(of.lower, of.upper)}': _plumb(of.lower, of.upper),
    }


def boards(roof, of: Slopes) -> dict[str, dict[str, str]]:
    """Return the steps with the square by the titles of the boards' pages."""
    front, back, lower, upper = map(corner, (of.front, of.back, of.lower, of.upper))
    off, purlin = roof.ridge / 2, roof.rafter / 2
    above = stepped(upper, HALF - BREAK, OUT, off, hip=False)
    above = {words: figure for words, figure in above.items() if not words.startswith('Then the tail')}
    return {
        'A saltbox: marks of C1': stepped(front, of.front_run, OUT, off, hip=False),
        'A saltbox: marks of C2': stepped(back, of.back_run, OUT, off, hip=False),
        'A gambrel: marks of LR': stepped(lower, BREAK, OUT, purlin, hip=False),
        'A gambrel: marks of UR': above | {'off too, back towards the ridge, level': part(purlin)},
    }


def marks(roof, of: Slopes) -> dict[str, dict[str, str]]:
    """Return the distance of every mark of the four boards."""
    found = {}
    for mark, rises, run in (('C1', of.front, of.front_run), ('C2', of.back, of.back_run)):
        at = corner(rises)
        found[f'A saltbox: marks of {mark}'] = {
            'ridge center line': '0',
            'ridge cut': part(shortening.common_at_ridge(at, roof.ridge)[1]),
            'plate line: heel': part(common_length(at, run)),
            'tail cut': part(common_length(at, run) + tails.common_tail(at, OUT)),
        }
    lower, upper, high = corner(of.lower), corner(of.upper), HALF - BREAK
    found['A gambrel: marks of LR'] = {
        'purlin center line': '0',
        'cut at the purlin': part(shortening.common_at_ridge(lower, roof.rafter)[1]),
        'plate line: heel': part(common_length(lower, BREAK)),
        'tail cut': part(common_length(lower, BREAK) + tails.common_tail(lower, OUT)),
    }
    found['A gambrel: marks of UR'] = {
        'ridge center line': '0',
        'ridge cut': part(shortening.common_at_ridge(upper, roof.ridge)[1]),
        'cut at the purlin': part(
            common_length(upper, high) - shortening.common_at_ridge(upper, roof.rafter)[1]
        ),
        'purlin center line': part(common_length(upper, high)),
    }
    return found
