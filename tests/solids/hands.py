"""Three ways of working from one book: what each carpenter reads, and where, for every mark and cut.

MARKS    lengths from the tables of runs, what comes off along the top edge, every line by its angle, bird's mouths by the
         height down from the top edge
SAW      lengths by the foot, what comes off level, the blade tilted over the plumb line of a side, bird's mouths by heel
         and seat
SQUARE   the square held, feet counted to the nearest part, jacks by their difference, reference tables before the opening

A carpenter sets the run, the spacings and the overhang himself, and measures the stock that he bought.
"""

from __future__ import annotations

from dataclasses import replace

from boards import Cheek, Lines, Off, from_square, held
from hand import OVERHANG, SET_SEAT, Hand
from names import (
    AT_JACK,
    AT_RIDGE,
    CHEEKS,
    COMMON,
    COMMON_FOOT,
    CORNER,
    DROPPED,
    FOOT,
    HIP_VALLEY,
    HOLE,
    JACK_LINES,
    JACKS,
    NEAREST,
    ON_SIDE,
    ONE,
    ONE_LINES,
    RIDGE_END,
    TWO,
    TWO_LINES,
    VALLEY,
)  # fmt: skip
from reading import Place


class Marks(Hand):
    """To marked lines."""

    name, run, by_heel = 'marks', 47, False

    def common_lines(self) -> Lines:
        return Lines(*(self.angle(COMMON, '', f'{cut} cut, {ON_SIDE}') for cut in ('Plumb', 'Level')))

    def hip_lines(self) -> Lines:
        return Lines(*(self.angle(CORNER, '', f'{cut} cut, {ON_SIDE}') for cut in ('Plumb', 'Level')))

    def common_length(self, run: float) -> float:
        return self.of_run('Common rafter, inches', run)

    def hip_length(self, run: float) -> float:
        return self.of_run('Hip or valley, inches', run)

    def jack_line(self, spacing: str, number: int) -> float:
        return self.table(JACKS, f'{spacing} in: line', str(number))

    def off_ridge(self) -> Off:
        return self.off(AT_RIDGE, False, COMMON)

    def off_hip(self, cheeks: int) -> Off:
        return self.off({1: ONE, 2: TWO}[cheeks], False)

    def off_jack(self, valley: bool = False) -> Off:
        return self.off(AT_JACK, False)

    def cheek(self, member: str, back: str) -> Cheek:
        plumb = self.angle(CORNER, CHEEKS, member, 'side, plumb')
        return Cheek(plumb, top=self.angle(CORNER, CHEEKS, member, 'top edge, angle'))

    def backed_cheek(self, against: str) -> Cheek:
        plumb = self.angle(CORNER, CHEEKS, HIP_VALLEY, 'side, plumb')
        return Cheek(plumb, top=self.angle('Cheek cuts of backed hips', '', self.pitch, f'{against}: top'))

    def bevel(self) -> float:
        return self.angle(CORNER, '', 'Backing, each face, from the square top')

    def common_tail(self) -> float:
        return self.table('Tails of commons and hip jacks', str(OVERHANG))

    def hip_tail(self) -> float:
        return self.table('Tails of hips and valleys', str(OVERHANG))

    def jack_point(self, spacing: str, number: int, which: str) -> float:
        return self.table(JACKS, f'{spacing} in: {which}', str(number))

    def dropped_mouth(self) -> dict[str, float]:
        return self.corner_mouth(DROPPED)

    def backed_mouth(self) -> dict[str, float]:
        """Return that of a backed 2×8: of the 2×10 the book gives heel and seat where it leaves enough wood only."""
        return {name: self.table('Hip seats, 2×8', f'backed {name}') for name in ('height', 'heel', 'seat')}

    def valley_mouth(self) -> dict[str, float]:
        return self.corner_mouth(VALLEY)

    def valley_plumb_depth(self) -> float:
        return self.table('Valley seats, 2×12 with 2×8 rafters', 'plumb depth')

    def drop_square(self) -> float:
        return self.table('Drops, square to the edge', '3 1/2')

    def counted_length(self, feet: int) -> float:
        """Return a common's length over whole feet of run."""
        return self.common_length(12 * feet)

    def ledger_off(self) -> float:
        return self.table('Shortening, level, any pitch', 'shed, ledger', '1 1/2')

    def clip_back(self) -> float:
        return self.read.value(Place(RIDGE_END, '', f'each side from {HOLE} in back'))

    def clip_blade(self) -> float:
        return self.angle(RIDGE_END, '', f'level, blade at {HOLE}')

    def past_end(self, hips: str) -> float:
        """Return what a ridge runs past its theoretical end, with hips between commons or on the ridge."""
        if hips == 'between commons':
            return self.read.value(Place(RIDGE_END, '', 'hips between commons'))
        return self.table('End common, hips on the ridge', '3 1/2', '3/4')

    def sits_down(self) -> float:
        return self.table('How far a ridge sits down', '3/4')


class Saw(Marks):
    """With the blade tilted."""

    name, run, by_heel = 'saw', 46, True

    def common_lines(self) -> Lines:
        plumb = self.angle('Common rafter, inches', '', f'plumb cut {HOLE}')
        return Lines(plumb, self.angle(COMMON, '', f'Level cut, {ON_SIDE}'))

    def hip_lines(self) -> Lines:
        plumb = self.angle('Hip or valley, inches', '', f'plumb cut {HOLE}')
        return Lines(plumb, self.angle('Hips and valleys', '', self.pitch, 'level cut'))

    def common_length(self, run: float) -> float:
        return self.common(FOOT) * run / 12

    def hip_length(self, run: float) -> float:
        return self.corner(COMMON_FOOT) * run / 12

    def rise(self, run: float) -> float:
        return self.read.value(Place('Rise, inches', '', f'Rise, {HOLE} in per foot')) * run / 12

    def off_ridge(self) -> Off:
        return self.off(AT_RIDGE, True, COMMON)

    def off_hip(self, cheeks: int) -> Off:
        return self.off({1: ONE, 2: TWO}[cheeks], True)

    def cheek(self, member: str, back: str) -> Cheek:
        how = Cheek(
            self.angle(CORNER, CHEEKS, member, 'side, plumb'),
            blade=self.angle(CORNER, CHEEKS, member, 'blade, tilt'),
        )
        if back == JACK_LINES:  # it begins at the long point
            return how
        return replace(how, back=Off(self.apart(back, True) / (1 if back == TWO_LINES else 2), True))

    def backed_cheek(self, against: str) -> Cheek:
        return self.cheek(HIP_VALLEY, TWO_LINES if against == 'common' else ONE_LINES)

    def common_tail(self) -> float:
        return self.common('Tail per 12 in of overhang, along the top edge') * OVERHANG / 12

    def hip_tail(self) -> float:
        return self.corner('Tail per 12 in of COMMON overhang, along top edge') * OVERHANG / 12


class Square(Marks):
    """With the square, from the reference tables."""

    name, run, by_heel = 'square', 48, False

    def common_lines(self) -> Lines:
        name = f'Square: level along the 12, plumb along the {self.pitch}'
        return held(self.common(name, part=0), self.common(name, part=1))

    def hip_lines(self) -> Lines:
        name = f'Square: level along the 17 (√288), plumb along the {self.pitch}'
        return held(self.corner(name, part=0), self.corner(name, part=1))

    def counted_length(self, feet: int) -> float:
        return feet * self.common(FOOT + NEAREST)

    def jack_line(self, spacing: str, number: int) -> float:
        return number * self.corner('Longer by, along top', 'Jacks, on center', f'{spacing} in')

    def off_ridge(self) -> Off:
        return Off(self.table('Shortening of commons at a ridge', '3/4'), False)

    def off_hip(self, cheeks: int) -> Off:
        if cheeks == 2:  # of 1 3/4 in there is no column
            return self.off(TWO, False)
        return Off(self.table('Shortening of hips and valleys', '3/4'), False)

    def off_jack(self, valley: bool = False) -> Off:
        if valley:
            return self.off(AT_JACK, True)
        return Off(self.table('Shortening of jacks at a hip or valley', '3 1/2'), False)

    def drop(self) -> float:
        return self.table('Drops, plumb', '3 1/2')

    def apart(self, name: str, level: bool) -> float:
        if name == TWO_LINES and not level:
            return self.table('Set-backs of hips and valleys', '3 1/2')
        return super().apart(name, level)

    def cheek(self, member: str, back: str) -> Cheek:
        lines = self.hip_lines() if member == HIP_VALLEY else self.common_lines()
        figure = self.corner(member, CHEEKS, 'top edge, along the 12', part=1)
        return Cheek(lines.plumb, top=from_square(figure))

    def backed_cheek(self, against: str) -> Cheek:
        figure = self.table('Cheek cuts of backed hips', f'{against}: 12 &')
        return Cheek(self.hip_lines().plumb, top=from_square(figure))

    def mouth(self) -> dict[str, float]:
        high, left = 'Height above plate, seat 3 1/2 in', 'Stock left, seat 3 1/2 in'
        return {
            'height': self.table(high, '2×8'), 'heel': self.table(high, 'heel'), 'seat': SET_SEAT,
            'notch': self.table(left, 'notch'), 'left': self.table(left, '2×8'),
        }  # fmt: skip

    def dropped_mouth(self) -> dict[str, float]:
        height = self.table('Height above plate, seat 3 1/2 in', '2×8') - self.drop()
        return {'height': height, **self.corner_mouth(DROPPED, 'height')}

    def common_tail(self) -> float:
        return self.common(FOOT + NEAREST) * OVERHANG / 12

    def hip_tail(self) -> float:
        return self.corner(COMMON_FOOT + NEAREST) * OVERHANG / 12
