"""What a pattern should show, from a member as `roof` tells it: cuts as planes in space, by angles and marks, on the board's faces.

A point of a board is (along its top edge towards the tail, across from its left side, down square to that edge), in. No line of the
pattern's own code is known here: blade tilts turn the plane of a cut about its plumb line on the side, a seat is level.
"""

from __future__ import annotations

from functools import cached_property
from itertools import pairwise

from fifty_digits import mp, mpf
from msgspec import Struct
from oracle.boards import LEFT, RIGHT, TOP
from oracle.planes import Plane, add, cross, meet, plane, scaled

ACROSS = (mpf(0), mpf(1), mpf(0))
HEAD = {'one': 'cut', 'two': ('side', 'side_right')}
TAIL = {'one': 'tail', 'two': ('tail_side', 'tail_right')}
FOOT = {'one': 'foot_cut', 'two': ()}
PIECES = {
    'head': ('head', 'beam'),
    'mouth': ('plate',),
    'tail': ('tail',),
    'mouth_and_tail': ('plate', 'tail'),
}
"""What is sawn of each."""


class Told(Struct, frozen=True, dict=True):
    """A member as it is told in JSON, and its board's thickness."""

    said: dict
    thick: mpf

    def inches(self, *names: str) -> mpf:
        return mpf(self._find(names)['inches'])

    def radians(self, *names: str) -> mpf:
        return mp.radians(mpf(self._find(names)['degrees']))

    def _find(self, names):
        found = self.said
        for name in names:
            found = found[name]
        return found

    @cached_property
    def marks(self) -> dict[str, mpf]:
        return {mark['line']: mpf(mark['at']['inches']) for mark in self.said['marks']}

    @cached_property
    def depth(self) -> mpf:
        """Dressed, as PS 20 has them."""
        nominal = int(self.said['stock'].partition('×')[2])
        return mpf(nominal) - (mpf('0.5') if nominal < 8 else mpf('0.75'))

    @cached_property
    def plumb(self):
        """Return the direction that is plumb: its angle on the side is from the line square across."""
        lean = self.radians('cut', 'plumb')
        return (mp.sin(lean), mpf(0), mp.cos(lean))

    @cached_property
    def level(self):
        """Return the level direction along the board, towards its tail."""
        lean = self.radians('cut', 'plumb')
        return (mp.cos(lean), mpf(0), -mp.sin(lean))

    @cached_property
    def faces(self) -> dict[str, Plane]:
        sides = {LEFT: mpf(0), RIGHT: self.thick}
        return {
            TOP: plane((mpf(0),) * 3, (mpf(0), mpf(0), mpf(1))),
            **{name: plane((mpf(0), y, mpf(0)), ACROSS) for name, y in sides.items()},
        }

    def tilted(self, point, tilt, lean=None) -> Plane:
        """Return a plane through a point whose line on the sides leans so, plumb where nothing is told.

        Square to that line, on a side, it comes nearer the tail by the tilt, to the right.
        """
        lean = self.radians('cut', 'plumb') if lean is None else lean
        down, on = (mp.sin(lean), mpf(0), mp.cos(lean)), (mp.cos(lean), mpf(0), -mp.sin(lean))
        aside = add(scaled(ACROSS, mp.cos(tilt)), scaled(on, mp.sin(tilt)))
        return plane(point, cross(down, aside))

    def cheek(self, end: str, name: str) -> tuple:
        """Return the blade's tilt for a cheek, and how the saw's line on the side leans; None where it is plumb."""
        leaning = 'side_leaning' in self.said[end][name]
        lean = -self.radians(end, name, 'side_leaning') if leaning else None
        return self.radians(end, name, 'side_blade_tilt'), lean

    def at_top(self, along, across) -> tuple:
        return (along, across, mpf(0))

    def planes(self, end: str) -> list[Plane]:
        """Return the planes of an end's cut, from the left."""
        told = self.said[end]
        lines = HEAD if end == 'head' else TAIL if 'tail' in self.marks else FOOT
        uphill = 1 if end == 'head' else -1
        if told.get('bevel'):
            return [self._laid(told)]
        cheeks = [told[name] for name in ('cheek', 'other_cheek') if told.get(name)]
        middle = self.at_top(self.marks.get(lines['one'], self.marks.get('point', mpf(0))), self.thick / 2)
        if not cheeks:
            return [self.tilted(middle, mpf(0), mpf(0) if told.get('square') else None)]
        cheeks = [self.cheek(end, name) for name in ('cheek', 'other_cheek')[: len(cheeks)]]
        if not {*lines['two']} & {*self.marks}:
            hand = -1 if told.get('long', 'right') == 'right' else 1
            ((tilt, lean),) = cheeks
            return [self.tilted(middle, hand * uphill * tilt, lean)]
        pointed = -uphill if told.get('hollow') else uphill
        left, right = (self.marks.get(name, self.marks[lines['two'][0]]) for name in lines['two'])
        (first, first_lean), (last, last_lean) = cheeks[0], cheeks[-1]
        outer = (
            self.tilted(self.at_top(left, mpf(0)), -pointed * first, first_lean),
            self.tilted(self.at_top(right, self.thick), pointed * last, last_lean),
        )
        blunt = lines['one'] in self.marks and end == 'head'
        return [outer[0], self.tilted(middle, mpf(0)), outer[1]] if blunt else [*outer]

    def _laid(self, told) -> Plane:
        """Return the plane of a foot on another roof: level along the board, and tilted from square to its long side."""
        tilt = mp.radians(mpf(told['bevel']['degrees'])) * (1 if told['long'] == 'left' else -1)
        aside = add(scaled(ACROSS, mp.cos(tilt)), scaled(self.plumb, -mp.sin(tilt)))
        return plane(self.at_top(self.marks['foot_cut'], self.thick / 2), cross(self.level, aside))

    def crossed(self, planes: list[Plane]) -> list:
        """Return the lines of a cut on the three faces."""
        top, under = self.faces[TOP], self.faces[TOP].moved(self.depth)
        found = [
            (side, *(self._on(side, meet(self.faces[side], cut, edge)) for edge in (top, under)))
            for side, cut in ((LEFT, planes[0]), (RIGHT, planes[-1]))
        ]
        points = [meet(self.faces[LEFT], planes[0], top)]
        points += [meet(a, b, top) for a, b in pairwise(planes)]
        points.append(meet(self.faces[RIGHT], planes[-1], top))
        return found + [(TOP, *(self._on(TOP, one) for one in pair)) for pair in pairwise(points)]

    def _on(self, face: str, point) -> tuple:
        return (point[0], point[1] if face == TOP else point[2])

    def mouth(self, over: str, heel: str) -> list:
        """Return seat and heel on the left side: what stands there is so far under the top edge, plumb."""
        if over not in self.marks or not self.said.get('mouth'):
            return []
        side, under = self.faces[LEFT], self.faces[TOP].moved(self.depth)
        high = self.inches('mouth', 'height_above_plate')
        seat = plane(
            add(self.at_top(self.marks[over], mpf(0)), scaled(self.plumb, high)), cross(self.level, ACROSS)
        )
        back = self.tilted(self.at_top(self.marks.get(heel, self.marks[over]), mpf(0)), mpf(0))
        toe, corner, foot = (meet(side, *pair) for pair in ((seat, under), (seat, back), (back, under)))
        return [
            (LEFT, self._on(LEFT, toe), self._on(LEFT, corner)),
            (LEFT, self._on(LEFT, corner), self._on(LEFT, foot)),
        ]

    def sawn(self, part: str) -> list:
        """Return all that is sawn of a piece."""
        found = {
            'head': lambda: self.crossed(self.planes('head')),
            'tail': lambda: self.crossed(self.planes('tail')),
            'plate': lambda: self.mouth('plate', 'heel'),
            'beam': lambda: self.mouth('upper_plate', 'upper_plate'),
        }
        return [line for name in PIECES[part] for line in found[name]()]

    def wrapped(self, part: str) -> bool:
        """Return whether a piece is folded round the board: where a cut in it is not square across."""
        ends = [name for name in ('head', 'tail') if name in PIECES[part]]
        return any(self.said[end].get('cheek') or self.said[end].get('bevel') for end in ends)

    def stopped(self, end: str, along: mpf) -> list:
        """Return the center line of what stops an end: parallel to a cut in one plane, else square across where center lines meet."""
        cuts = self.planes(end)
        middle = self.at_top(along, self.thick / 2)
        one = plane(middle, cuts[0].normal) if len(cuts) == 1 else self.tilted(middle, mpf(0))
        return self.crossed([one])

    def datums(self, part: str) -> list:
        """Return what nothing is sawn along: the lines over what a bird's mouth stands on, where a backing comes out, whence one measures."""
        found, sawn = [], self.sawn(part)
        for name, over in (('plate', 'plate'), ('beam', 'upper_plate')):
            if name in PIECES[part] and over in self.marks and self.said.get('mouth'):
                top = self.at_top(self.marks[over], mpf(0))
                foot = add(top, scaled(self.plumb, self.inches('mouth', 'height_above_plate')))
                found.append((LEFT, self._on(LEFT, top), self._on(LEFT, foot)))
        for end, line in (('head', 'center'), ('tail', 'foot')):
            if end in PIECES[part] and line in self.marks and not self.said[end].get('bevel'):
                found += self.stopped(end, self.marks[line])
        for side in (LEFT, RIGHT) if self.said.get('backs') else ():
            down = self.thick / 2 * mp.tan(self.radians('backs', side))
            found += [(side, *((along, down) for along, _ in ends)) for face, *ends in sawn if face == side]
        if self.wrapped(part):
            mark = (
                next(one for one in ('cut', 'point') if one in self.marks)
                if part == 'head'
                else 'tail'
                if 'tail' in self.marks
                else 'foot_cut'
            )
            found.append((TOP, *(((self.marks[mark], self.thick / 2),) * 2)))
        return found
