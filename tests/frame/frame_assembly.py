"""A whole roof of solids, sawn and stood by its printed figures alone."""

from __future__ import annotations

from functools import cached_property, partial

import numpy as np
from assembly import Assembly, Lies, Touch, plane, point
from boards import Board, Member, flat
from frame_boards import sawn
from frame_joints import lies_of, touches_of
from frame_kinds import laid_out
from frame_level_boards import level_board, stud, valley_board
from frame_placed import Placed, along_eave, block, joined, leaning, post, stood, trimmed
from frame_printed import Printed, Sort, StudSort
from frame_slopes import Corner, Lay, Slope
from manifold3d import Manifold
from reading import Place, Reading

FAR, DEEP, WALL = 60.0, 16.0, 4.0
TALL = (0.0, 400.0)
PLATE = 3.5
"""Of plates, their depth, in: anything would do."""


class Roof:
    """How one roof is put together from what is printed of it."""

    def __init__(self, printed: Printed, by_heel: bool = False) -> None:
        self.printed, self.by_heel = printed, by_heel
        self.asked = printed.asked
        self.lay: Lay = laid_out(self.asked)
        self.told: dict[str, dict[str, Place]] = {}
        """By sort and by what is told of its board, the figure that nothing else is made by."""
        self.checks: tuple[list[Touch], list[Lies]] | None = None

    def __call__(self, read: Reading) -> Assembly:
        members = {
            **self._fixed,
            **self._planes(read),
            **self._upper(read),
            **self._levels(read),
            **self._stood(read),
            **self._studs(read),
        }
        if self.checks is None:
            self.checks = touches_of(self, members), []
            self.checks = self.checks[0], lies_of(self, members, self.checks[0])
        return Assembly(members, *self.checks)

    def standing(self):
        """Return every member's key with its sort, its slope's name and where it starts on the plan."""
        for sort in self.printed.sorts:
            for n, (slope, start) in enumerate(sort.places):
                yield f'{sort.page} {n}', sort, slope, start

    def corner(self, start) -> Corner:
        """Return the line of a hip or valley that starts near a point of the plan."""
        return min(self.lay.corners, key=lambda one: np.hypot(*(start - one.start)))

    @property
    def laid_on(self):
        """Return how thick sheathing and boards are that a wing's roof is laid on; None where none is."""
        if getattr(self.asked.kind, 'valleys', '') != 'blind':
            return None
        return self.asked.kind.sheathing_in + self.asked.kind.board_in

    # What stands there before rafters do, and the planes that they are to lie in -----------------------------------

    def above(self, read: Reading) -> float:
        return read.value(Place('heights', '', 'above_plate'))

    def _planes(self, read: Reading) -> dict:
        made = {
            f'roof {name}': read.member(f'roof {name}', partial(self._plane, read, slope))
            for name, slope in self.lay.slopes.items()
        }
        at, _ = self.lay.peak
        meet = Place('heights', '', 'planes_meet')
        made['peak'] = read.member('peak', lambda: point((*at, read.value(meet))))
        height = Place('heights', '', 'tail_top')
        plates = [one.plate for one in self.lay.slopes.values() if one.plate]
        if plates:
            other = Place('heights', '', 'other_plates')
            made['other plates'] = read.member(
                'other plates', lambda: Member(Manifold(), closings={'height': plates[0] - read.value(other)})
            )
        if self.laid_on:
            main, thick = self.lay.slopes['front'], float(self.laid_on)
            over = thick * np.hypot(1, main.rise)
            made['laid on'] = read.member(
                'laid on', lambda: plane(main.normal, main.at(0, 0, self.above(read) + over))
            )
        made['eaves'] = read.member('eaves', lambda: plane((0, 0, 1), (0, 0, read.value(height))))
        made |= {
            f'fascia {name}': read.member(f'fascia {name}', partial(self._leaning, read, slope))
            for name, slope in self.lay.slopes.items()
            if self._leans(slope)
        }
        return made

    def _plane(self, read: Reading, slope: Slope):
        return plane(slope.normal, slope.at(0, 0, slope.plate + slope.lift + self.above(read)))

    def _leans(self, slope: Slope) -> bool:
        """Return whether a slope's fascia stands square to it; over a half-hip's gable it is plumb."""
        return self.asked.tail == 'square' and slope.plates != () and (slope.eave_as_main or slope.plate <= 0)

    def _leaning(self, read: Reading, slope: Slope):
        """Return the fascia on square tails: its back's upper edge in the slope's plane, as far out as was asked; at an inside corner up
        to the back of the other one."""
        blocks = []
        for low, high in slope.eaves or ((-FAR, slope.length + FAR),):
            inner = [end for end in (low, high) if 0 < end < slope.length and self._beside(slope, end)]
            more = (low - DEEP * (low in inner), high + DEEP * (high in inner))
            made = leaning(slope, more, self._eave(read, slope), DEEP)
            for end in inner:
                other = self.lay.slopes[self._beside(slope, end)]
                made = trimmed(made, 'mitered', flat(other.up, self._eave(read, other)))
            blocks.append(made)
        return joined(blocks)

    def _eave(self, read: Reading, slope: Slope) -> np.ndarray:
        """Return a point of the line where a slope's tails end above."""
        height = slope.plate + slope.lift + self.above(read) - slope.overhang * slope.rise
        return slope.at(0, -slope.overhang, height)

    def _beside(self, slope: Slope, end: float) -> str:
        """Return the slope whose eave a slope's own one comes to, so far along, at an inside corner; '' where there is none."""
        inside = [one for one in self.lay.corners if one.inside and slope.name in (one.right, one.left)]
        if not inside:
            return ''
        one = min(inside, key=lambda one: abs(slope.placed(one.start)[0] - end))
        return one.left if one.right == slope.name else one.right

    @cached_property
    def _fixed(self) -> dict:
        made = {}
        for slope in self.lay.slopes.values():
            if slope.plates == ():
                continue
            level = slope.plate - slope.overhang * slope.rise
            eaves = slope.eaves or ((-FAR, slope.length + FAR),)
            tall = level - 2 * DEEP, level + DEEP + 6
            out = -slope.overhang
            plates, seat = slope.plates or ((0, slope.length),), float(self.asked.seat_in)
            made[f'plate {slope.name}'] = along_eave(
                slope, plates, (0, seat), (slope.plate - PLATE, slope.plate)
            )
            if not self._leans(slope):
                made[f'fascia {slope.name}'] = along_eave(slope, eaves, (out - 1, out), tall)
        return made

    def _upper(self, read: Reading) -> dict:
        """Return what rafters stand against that is no board of the roof: a wall, a ledger or beam on it, a post."""
        across = getattr(self.asked.kind, 'post_across_flats_in', None)
        if across:
            return {'post': post(float(across), self.asked.kind.sides, TALL)}
        if not self.lay.wall:
            return {}
        start, end = np.array(self.lay.wall[0]), np.array(self.lay.wall[1])
        way = (end - start) / np.hypot(*(end - start))
        long = (-FAR, np.hypot(*(end - start)) + FAR)
        upper = str(getattr(self.asked.kind, 'upper', 'wall'))
        if upper == 'wall':
            return {'wall': block(start, way, long, (0, WALL), TALL)}
        thick = float(self.asked.kind.thickness_in)
        return {upper: read.member(upper, partial(self._bearing, read, start, way, long, thick, upper))}

    def _bearing(self, read: Reading, start, way, long, thick: float, upper: str):
        """Return a ledger or beam: its outer edge in the plane, or, where rafters run over it, at its printed height."""
        (slope,) = self.lay.slopes.values()
        if upper == 'over-beam':
            top = read.value(
                Place('heights', '', 'beam_top')
            )  # it ends at the gables, under the flush rafters
            return block(start, way, (0, slope.length), (-thick, 0), (top - DEEP, top))
        top = self.above(read) + slope.rise * slope.top
        return block(start, way, long, (0, max(thick, 1.0)), (top - DEEP, top))

    # Level boards -----------------------------------------------------------------------------------------------------

    def _levels(self, read: Reading) -> dict:
        make = {'valley_board': valley_board}
        return {
            one.mark: read.member(one.mark, partial(make.get(one.level, level_board), self, read, one))
            for one in self.printed.levels
            if one.mark in self.lay.ridges or one.level in make
        }

    # Members --------------------------------------------------------------------------------------------------------

    def _stood(self, read: Reading) -> dict:
        made = {}
        for sort in self.printed.sorts:
            for n, (slope, start) in enumerate(sort.places):
                key = f'{sort.page} {n}'
                stand = self._in_corner if sort.corner else self._on_slope
                made[key] = read.member(key, partial(stand, read, sort, n, slope, start))
        return made

    def _board(self, read: Reading, sort: Sort) -> Board:
        told = self.told.setdefault(sort.page, {})
        return read.member(f'sawn {sort.page}', lambda: sawn(read, sort, self.by_heel, told))

    def _in_corner(self, read: Reading, sort: Sort, n: int, _: str, start) -> Placed:
        board, corner = self._board(read, sort), self.corner(start)
        if sort.mouth:
            placed = stood(board, (*corner.start, corner.plate), corner.way, 'seat', 'stand')
        else:  # an upper hip, from where the planes meet, and down by what it is told to be dropped
            drop = Place('checks', 'upper_hip_top', 'drop')
            under = read.value(drop) if drop in self.printed.known else 0.0
            along = (self.lay.peak[0][1] - corner.start[1]) / corner.way[1] * np.array(corner.way)
            high = read.value(Place('heights', '', 'planes_meet'))
            placed = stood(board, (*(corner.start + along), high - under), corner.way, 'plumb', 'center')
        placed.closings = board.closings if n == 0 else {}
        return placed

    def _on_slope(self, read: Reading, sort: Sort, n: int, name: str, start) -> Placed:
        """Stand a rafter by its near edge; what has no seat by its plumb line at the plate, or at the ridge."""
        board, slope = self._board(read, sort), self.lay.slopes[name]
        center, told = self._center(read, sort, n, slope, start)
        if sort.mouth:
            placed = stood(board, slope.at(center, 0, slope.plate), slope.inward, 'seat', 'stand')
        elif 'plate' in sort.lines:
            plate = slope.plate + slope.lift + self.above(read)
            placed = stood(board, slope.at(center, 0, plate), slope.inward, 'plumb', 'zero')
        else:
            placed = stood(
                board, self._peak(read, sort, slope, center, start), slope.inward, 'plumb', 'center'
            )
        placed.closings = told | (board.closings if n == 0 else {})
        return placed

    def _peak(self, read: Reading, sort: Sort, slope: Slope, center: float, start) -> np.ndarray:
        """Return where the center line of what stops a member above lies in its plane: the ridge, or a hip or valley over it."""
        ridges = ('ridge', 'mate', '')
        inward = slope.top if sort.head.stop in ridges else self._met(slope, center, start)
        height = slope.plate + slope.lift + self.above(read) + slope.rise * inward
        if sort.head.stop in ridges and slope.name in self.lay.peak[1]:
            height = read.value(Place('heights', '', 'planes_meet'))
        return slope.at(center, inward, height)

    def _met(self, slope: Slope, center: float, start) -> float:
        """Return how far inward the line of a hip or valley crosses a place along, above where a member starts."""
        found = []
        for corner in (one for one in self.lay.corners if slope.name in (one.right, one.left)):
            (x, y), (right, up) = (
                slope.placed(corner.start),
                slope.placed(np.array(slope.origin) + corner.way),
            )
            if abs(right) > 1e-9 and (center - x) / right > 0:
                found.append(y + up * (center - x) / right)
        foot = slope.placed(start)[1]
        return min(one for one in found if one > foot + 0.5)

    def _center(
        self, read: Reading, sort: Sort, n: int, slope: Slope, start
    ) -> tuple[float, dict[str, float]]:
        """Return where a member stands along, by its near edge; a barge, which has no such mark, as far out as the roof."""
        if sort.barge:
            out = float(self.asked.gable_overhang_in) - sort.thick / 2
            return (-out if slope.placed(start)[0] < slope.length / 2 else slope.length + out), {}
        center = read.value(Place(sort.page, 'stands', 'near_edge', str(n))) + sort.thick / 2
        place = Place(sort.page, 'stands', 'center', str(n))
        self.told.setdefault(sort.page, {})[f'center {n}'] = place
        return center, {f'center {n}': center - read.value(place)}

    # Gable studs ------------------------------------------------------------------------------------------------------

    def _studs(self, read: Reading) -> dict:
        made = {}
        for one in self.printed.studs:
            for n, (slope, end) in enumerate(self.stud_places(one)):
                key = f'{one.mark} {n}'
                make = partial(stud, read, one, self.lay.slopes[slope], end, n)
                made[key] = read.member(key, make)
        return made

    def stud_places(self, one: StudSort) -> list[tuple[str, str]]:
        """Return under which slopes, and at which of their ends, studs of a mark stand."""
        return [(name, end) for name in one.slopes for end in self.lay.slopes[name].gables]
