"""A wing and the main front that it stands on, before either is framed: what its valleys have to do with both."""

from __future__ import annotations

from fractions import Fraction

from msgspec import Struct

from tablegen.frame.asked import Asked, Valleys, Wing
from tablegen.frame.plan import ZERO, Plan
from tablegen.frame.stations import Places, clear_of
from tablegen.frame.wood import ridge_in
from tablegen.geometry import shortening
from tablegen.geometry.corner import Corner
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, exact
from tablegen.roof.members import Members


class Joined(Struct, frozen=True):
    """A wing and the main front that it stands on; along the front from its left end."""

    asked: Asked
    wing: Wing
    base: Plan
    main: Members
    own: Members
    """Of the wing's slopes."""

    @property
    def at(self) -> Corner:
        """Return the corner of main slope and wing, seen from the main slope."""
        return self.main.side.at

    @property
    def half_in(self) -> Exact:
        """Return the run of the wing's slopes."""
        return exact(self.wing.width_in / 2)

    @property
    def left_in(self) -> Exact:
        return exact(self.wing.from_left_in)

    @property
    def right_in(self) -> Exact:
        return exact(self.wing.from_left_in + self.wing.width_in)

    @property
    def rate(self) -> Exact:
        """Return how far a valley runs inward of the main slope per inch along it."""
        return self.at.plan_a.tan()

    @property
    def reach_in(self) -> Exact:
        """Return how far inward of the main plate line the wing's ridge reaches: one height on both."""
        return self.half_in * self.rate

    @property
    def level_ridges(self) -> bool:
        """Return whether both ridges stand at one height."""
        return self.reach_in == self.base.ridge_run_in

    @property
    def level_width_in(self) -> Exact:
        """Return how wide a wing is whose ridge stands as high as the main one."""
        return 2 * self.base.ridge_run_in / self.rate

    @property
    def top_in(self) -> Exact:
        """Return where the longer valley reaches the main ridge, along, if it is the left one."""
        return self.left_in + self.base.ridge_run_in / self.rate

    @property
    def blind(self) -> bool:
        return self.wing.valleys is Valleys.BLIND

    @property
    def lift_in(self) -> Exact:
        """Return how high over the main rafters' tops the wing's rafters are laid, PLUMB: sheathing and boards."""
        return shortening.along(self.wing.sheathing_in + self.wing.board_in, self.main.side.slope)

    @property
    def ridge_in(self) -> Fraction:
        return ridge_in(self.asked)

    @property
    def half_rafter_in(self) -> Exact:
        return exact(self.asked.rafters.thickness_in / 2)

    @property
    def passed_in(self) -> Exact:
        """Return how far inward of the main plate line the hip's line over its valley passes the far side of the wing's ridge."""
        return self.reach_in - self.ridge_in / 2 * self.rate

    @property
    def hip_beside_in(self) -> Exact:
        """Return how far inward that hip's outer side passes it."""
        return self.passed_in + shortening.jack_at(self.asked.hips.thickness_in, self.at.plan_a)

    def clear_of_corner(self, places: Places, corner_in: Exact) -> Places:
        """Return places along the main front that leave room for the valley at an inside corner of the plates."""
        return clear_of(places, corner_in, self.beside_in, self.asked.rafters.thickness_in)

    def clear_on_wing(self, places: Places) -> Places:
        """Return the same along the wing's slope, whose inside corner is at 0: where it is laid on, none half on the main roof."""
        return clear_of(places, ZERO, self.beside_on_wing_in)

    @property
    def beside_on_wing_in(self) -> Exact:
        """Return how far from its inside corner a rafter of the wing stands clear of the valley or of the main roof."""
        return self.half_rafter_in if self.blind else self._beside(self.at.plan_b)

    @property
    def beside_in(self) -> Exact:
        """Return how far from an inside corner of the plates a rafter of the main front stands clear of the valley."""
        return self._beside(self.at.plan_a)

    def shortest_jack_in(self, plan: Angle) -> Exact:
        """Return the run of a valley jack, from center line to center line, whose shorter side is as long as it is thick, level.

        Given:
            plan  of its eave to the valley
        """
        thick = self.asked.rafters.thickness_in
        off = self.ridge_in / 2 + shortening.jack_at(self.asked.valleys.thickness_in, plan)
        return off + shortening.points_apart(thick, plan) / 2 + thick

    def _beside(self, plan: Angle) -> Exact:
        half = self.asked.rafters.thickness_in / 2
        return half + self.asked.valleys.thickness_in / 2 / plan.sine()
