"""A roof put together: how far anything is off and what rounding explains, what runs into what, what nothing stops."""

from __future__ import annotations

from fractions import Fraction
from functools import cached_property

import numpy as np
from assembly import FLOAT, LIFT, Built, Off, Touch
from boards import NEAR
from frame_boards import FOOT, HEAD
from frame_joints import ends_of
from frame_placed import Placed

from tablegen.frame.asked import Wing

LEAST_BORNE, LEAST_OF_A_HIP, LEAST_OF_A_TAIL, LEAST_OF_A_STUD = 0.4, 0.05, 0.3, 0.3
"""Share of a face that bears: what an end is cut to need not be as deep; a hip's seat is over a corner of plates; a valley's square
tail is deeper than the fascias of two pitches that meet at it; a stud is wider than its rafter is thick."""
STUD_IN = Fraction(3, 2)
BESIDE_A_CORNER = 6.0
"""Where a valley or a wing's wall may take a tail's end away: so much more than an overhang along from an inside corner, in."""
SMALL_ANGLE = 0.01
"""What is rounded finer than this is an angle, which may lean a board one way or the other."""
FIRST_OF_TWO = {line for lines in (HEAD[2], FOOT[2]) for line in lines[1:]}
"""Marks of two unlike cheeks: the one that the center line meets first is told, so either may move what is told of it one way only."""
FIXED = ('plate', 'fascia', 'wall', 'ledger', 'against-beam', 'over-beam', 'post')
"""What is no member, and lies in one another where it is simplified."""


class Together(Built):
    """A roof put together."""

    def _allowed(self) -> dict[str, Off]:
        """Return what rounding can move each check by; a figure that one closing alone is held against moves that one."""
        total = np.full((len(self.offs), 3), FLOAT)
        only_told = set()
        for name, member in self.assembly.members.items():
            told = self.build.told.get(name.rpartition(' ')[0], {})
            for what in set(member.closings) & set(told):
                only_told.add(told[what])
                total[self._rows[f'{name}: {what}'], :2] += self.read.used[told[what]].half
        for place, figure in self.read.used.items():
            if figure.half and place not in only_told:
                ways = (1, -1) if figure.half < SMALL_ANGLE or place.name in FIRST_OF_TWO else (1,)
                self._add(total, place, *(way * figure.half for way in ways))
        return self._by_check(total)

    def faults(self) -> list[str]:
        """Return everything that keeps the roof from going together."""
        return [*self.open(), *self.bare(), *self.passing(), *self.gables()]

    def gables(self) -> list[str]:
        """Return the gables without studs, and those with another number of barge rafters than the overhang asks for."""
        lay, asked, barges = self.build.lay, self.build.asked, []
        for _, sort, name, start in self.build.standing():
            if sort.barge:
                slope = lay.slopes[name]
                barges.append((name, 'left' if slope.placed(start)[0] < slope.length / 2 else 'right'))
        studded = {name for one in self.build.printed.studs for name in one.slopes}
        ends = [(name, end) for name, slope in lay.slopes.items() for end in slope.gables]
        wanted = ends if asked.gable_overhang_in else []
        found = [] if sorted(barges) == sorted(wanted) else [f'barges stand outside of {barges}']
        # The second space's stud stands where the ridge, 1 1/2 in as it too, leaves it room.
        ridge_in = asked.ridge.thickness_in if asked.ridge else 0
        room = 2 * asked.spacing_in + (ridge_in + STUD_IN) / 2
        high = {name for name, end in ends if lay.slopes[name].gable_top(end) > room}
        return [*found, *(f'{name}: no studs' for name in sorted(high - studded))]

    @cached_property
    def _rounding(self) -> dict[str, float]:
        """Return by member the most that rounding may put a face of it off."""
        most: dict[str, float] = {}
        for check in (*self.assembly.touches, *self.assembly.lies):
            for name in check.names:
                most[name] = max(most.get(name, 0.0), *self.allowed[str(check)])
        return most

    def passing(self) -> list[str]:
        """Return the pairs where one member is deeper in another than the rounding of what both touch by."""
        solid = {key: one for key, one in self.assembly.members.items() if not one.solid.is_empty()}
        names = list(solid)
        bounds = np.array([solid[name].solid.bounding_box() for name in names])
        found = []
        for n, one in enumerate(names):
            others = bounds[n + 1 :]
            apart = np.any((others[:, :3] > bounds[n, 3:]) | (others[:, 3:] < bounds[n, :3]), axis=1)
            for two in (names[n + 1 + m] for m in np.flatnonzero(~apart)):
                if (one.startswith(FIXED) and two.startswith(FIXED)) or self._let_in(one, two):
                    continue
                may = self._may_be_moved(one, two)
                shared = self._behind_touches(one, two, solid[one].solid ^ solid[two].solid, may)
                if shared.volume() < 1e-6:
                    continue
                places = np.asarray(shared.to_mesh64().vert_properties)[:, :3]
                normals = [face.normal for name in (one, two) for face in solid[name].faces.values()]
                deep = min(np.ptp(places @ normal) for normal in normals)
                if deep > may:
                    found.append(f'{one} in {two}: {deep:.3f} in, rounding {may:.3f}')
        return found

    def _may_be_moved(self, one: str, two: str) -> float:
        """Return how far rounding may put a member into another: what touches a third and not one another, as hips about a
        middle do, may each be off that the other's way."""
        each = self._rounding.get(one, 0.0), self._rounding.get(two, 0.0)
        return (
            sum(each) if two not in self._beside[one] and self._beside[one] & self._beside[two] else max(each)
        )

    @cached_property
    def _beside(self) -> dict[str, set[str]]:
        """Return by member what corners' boards it touches."""
        found: dict[str, set[str]] = {name: set() for name in self.assembly.members}
        for touch in self.assembly.touches:
            for name, other in (touch.names, reversed(touch.names)):
                if other in self._sorts and self._sorts[other][0].corner:
                    found[name].add(other)
        return found

    def _let_in(self, one: str, two: str) -> bool:
        """Return whether one is a plate that is let in under the other: raised over the main ones, where a rafter of a main slope runs on
        past its end; or at an inside corner, where the valley carries that rafter so near.
        """
        fixed, other = (one, two) if one.startswith(FIXED) else (two, one)
        if not fixed.startswith(('plate', 'fascia')) or other not in self._sorts:
            return False
        sort, slope = self._sorts[other]
        if fixed.startswith('fascia'):  # the main one stops at a wing's rafters that are laid on its roof
            return bool(self.build.laid_on) and fixed == 'fascia front' and slope.startswith('wing')
        raised = self.build.lay.slopes[fixed.removeprefix('plate ')].plate > 0
        any_raised = any(one.plate > 0 for one in self.build.lay.slopes.values())
        over = (raised and slope in ('front', 'back')) or (any_raised and sort.corner)
        return over or sort.tail.stop == 'valley'

    @cached_property
    def _sorts(self):
        return {key: (sort, slope) for key, sort, slope, _ in self.build.standing()}

    def _behind_touches(self, one: str, two: str, shared, may: float):
        """Return what two members share but for what rounding puts behind the faces by which they touch."""
        for touch in self._touches.get(frozenset((one, two)), ()):
            face = self.assembly.members[touch.two].faces[touch.on]
            shared = shared.trim_by_plane(tuple(-face.normal), -float(face.normal @ face.point) + may)
        return shared

    @cached_property
    def _by_face(self) -> dict[tuple[str, str], list[Touch]]:
        found: dict[tuple[str, str], list[Touch]] = {}
        for touch in self.assembly.touches:
            found.setdefault((touch.one, touch.face), []).append(touch)
        return found

    @cached_property
    def _touches(self) -> dict[frozenset[str], list[Touch]]:
        found: dict[frozenset[str], list[Touch]] = {}
        for touch in self.assembly.touches:
            found.setdefault(frozenset(touch.names), []).append(touch)
        return found

    def bare(self) -> list[str]:
        """Return the ends that nothing stops, or too little of whose face bears; and seats off their plates."""
        found = []
        for key, sort, _, _ in self.build.standing():
            one = self.assembly.members[key]
            free = self._free(key, sort, one)
            ends = [face for face in ends_of(one) if face not in free]
            faces = {face: self._least(sort, face) for face in ends}
            if sort.mouth:
                faces['seat'] = LEAST_OF_A_HIP if sort.corner else LEAST_BORNE
                if not (sort.corner or sort.flush):
                    faces['heel'] = LEAST_BORNE
            found += self._too_little(key, faces)
        for one in self.build.printed.studs:
            if len(self.build.stud_places(one)) != one.count:
                found.append(f'{one.mark}: {one.count} are told, {len(self.build.stud_places(one))} stand')
            for n in range(len(self.build.stud_places(one))):
                found += self._too_little(f'{one.mark} {n}', {'cut': LEAST_OF_A_STUD})
        return found

    def _least(self, sort, face: str) -> float:
        """Return what share of a cut end bears at least: of an end common's less where the ridge that it ends at is the thinner."""
        if sort.kind == 'valley' and sort.tail.square and face.startswith('lower'):
            return LEAST_OF_A_TAIL
        at_end = sort.kind == 'end_common' and face.startswith('upper') and self.build.asked.ridge
        return LEAST_BORNE * min(
            1.0, float(self.build.asked.ridge.thickness_in) / sort.thick if at_end else 1.0
        )

    def _too_little(self, key: str, faces: dict[str, float]) -> list[str]:
        found = []
        for face, least in faces.items():
            touches = self._by_face.get((key, face), [])
            share = sum(self._borne(touch) for touch in touches)
            if share < least:
                found.append(f'{key} ({face}): {share:.2f} of it on {[touch.two for touch in touches]}')
        return found

    def _free(self, key: str, sort, one: Placed) -> tuple[str, ...]:
        """Return the ends that nothing is to stop: a barge's at a half-hip's eave, a tail short of the fascia at a valley or wing."""
        free = ['lower'] if sort.tail.laid else []
        if getattr(self.build.asked.kind, 'upper', '') == 'over-beam':
            free.append('upper')
        if sort.barge and not sort.head.stop and self.build.asked.ridge:
            free.append('upper')
        if not sort.corner and isinstance(self.build.asked.kind, Wing) and self._is_short(key, sort, one):
            free.append('lower')
        return tuple(free)

    def _is_short(self, key: str, sort, one: Placed) -> bool:
        """Return whether a tail ends before its fascia at an inside corner, or at the plate under a roof that is laid on."""
        if sort.tail.stop or 'tail' not in sort.lines:
            return False
        slope, lay = self.build.lay.slopes[self._sorts[key][1]], self.build.lay
        if any(touch.two == f'fascia {slope.name}' for touch in self._by_face.get((key, 'lower'), ())):
            return False
        if sort.flush:
            return True
        inside = [corner.start for corner in lay.corners if corner.inside]
        if self.build.laid_on:
            wing = lay.slopes['wing_right']
            inside += [lay.slopes['wing_left'].origin, wing.at(wing.length, 0)[:2]]
        along = slope.placed(one.points['zero'][:2])[0]
        near = max(one.overhang for one in lay.slopes.values()) + BESIDE_A_CORNER
        return any(abs(x - along) < near for x, y in map(slope.placed, inside) if abs(y) < 1)

    def _borne(self, touch: Touch) -> float:
        """Return the share of a face that lies on another."""
        one, two = self.assembly.members[touch.one], self.assembly.members[touch.two]
        into = -LIFT * two.faces[touch.on].normal
        off, allowed = self.offs[str(touch)], max(self.allowed[str(touch)])
        room = max(LIFT - max(off[1], 0.0), LIFT / 4)
        bears = (one.solid.translate(tuple(into)) ^ two.solid).volume()
        return bears / room / max(_area(one, touch.face), 1e-9) if allowed < LIFT else 0.0


def _area(member, face: str) -> float:
    mesh = member.solid.to_mesh64()
    places = np.asarray(mesh.vert_properties)[:, :3][np.asarray(mesh.tri_verts)]
    on = places[np.all(abs(member.faces[face].height(places)) < NEAR, axis=1)]
    return float(np.sum(np.linalg.norm(np.cross(on[:, 1] - on[:, 0], on[:, 2] - on[:, 0]), axis=1)) / 2)
