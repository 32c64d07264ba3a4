"""Boards as solids, marked and cut as a framer does it: from one edge, by printed numbers only.

A board lies along x, its left side towards y, its top edge at z = 0; x grows uphill. The mark x = 0 on the top
edge is where the plate line's plumb line leaves the board. Every number that a cut is made by has been rounded as
the book prints it: lengths to 1/16 in, angles to 0.01 degree. These are floats: nothing here is printed.
"""

from dataclasses import dataclass
from math import cos, radians, sin

import numpy as np
from manifold3d import Manifold

from tablegen.figures import Measure, degree_figure, length_figure

BOOK = Measure(16)
LENGTH_ERROR = 1 / 32
"""Most that rounding a printed length can move a cut, in."""
ANGLE_ERROR = radians(0.005)
"""Most that rounding a printed angle can turn one, radians."""


def printed(inches):
    """Return a length as the book prints it, in."""
    figure = length_figure(inches, BOOK)
    return figure.count / figure.per


def printed_degrees(angle):
    """Return an angle as the book prints it, in radians."""
    figure = degree_figure(angle, 2)
    return radians(figure.count / figure.per)


@dataclass(frozen=True)
class Stick:
    """A board with the marks that its cuts start from."""

    solid: Manifold
    slope: float
    """Radians: the printed plumb cut, which is also how it lies when its level cut is level."""

    def up(self):
        """Return the plumb direction as marked on the board's side."""
        return np.array([sin(self.slope), 0.0, cos(self.slope)])

    def uphill(self):
        """Return the level direction uphill as marked on the board's side."""
        return np.array([cos(self.slope), 0.0, -sin(self.slope)])

    def kept(self, normal, point):
        """Return the board cut by a plane: the part that the normal points away from is kept."""
        normal = np.asarray(normal, float)
        return Stick(
            self.solid.trim_by_plane(tuple(-normal), -float(normal @ np.asarray(point, float))), self.slope
        )

    def plumb_cut(self, at_x, blade=0.0, point=(0.0, 0.0)):
        """Cut its upper end plumb through the center line's mark at_x.

        blade: tilt of the saw, radians; above 0 keeps the left side longer.
        """
        normal = cos(blade) * self.uphill() + sin(blade) * np.array([0.0, -1.0, 0.0])
        return self.kept(normal, (at_x, point[0], point[1]))

    def lower_cut(self, at_x, blade=0.0):
        """Cut its lower end plumb through the center line's mark at_x; above 0 keeps the left side longer."""
        normal = -cos(blade) * self.uphill() + sin(blade) * np.array([0.0, -1.0, 0.0])
        return self.kept(normal, (at_x, 0.0, 0.0))

    def birds_mouth(self, height):
        """Cut the bird's mouth: height above plate under the mark x = 0."""
        corner = -height * self.up()
        below = self.kept(self.up(), corner)  # what lies under the seat's level
        notch = below.kept(-self.uphill(), corner)
        return Stick(self.solid - notch.solid, self.slope)

    def notched(self, heel, seat, out=0.0):
        """Cut the bird's mouth by heel and seat alone: the heel's plumb line, so far out of the mark x = 0, level;
        the heel measured up it from the underside; from there the seat, level, towards the upper end."""
        depth, line = -self.solid.bounding_box()[2], -out * self.uphill()
        under = line - (depth + line[2]) / self.up()[2] * self.up()
        corner = under + heel * self.up()
        notch = self.kept(self.up(), corner).kept(-self.uphill(), corner)
        notch = notch.kept(self.uphill(), corner + seat * self.uphill())
        return Stick(self.solid - notch.solid, self.slope)

    def placed(self, mark, over, direction):
        """Return the solid set in the world, its level mark lying level.

        mark       a point of the board, board coordinates
        over       where that point goes, world coordinates
        direction  level direction uphill, world
        """
        forward = np.array([direction[0], direction[1], 0.0]) / np.hypot(*direction[:2])
        left = np.array([-forward[1], forward[0], 0.0])
        board = np.column_stack([self.uphill(), [0.0, 1.0, 0.0], self.up()])
        world = np.column_stack([forward, left, [0.0, 0.0, 1.0]])
        turn = world @ board.T
        shift = np.asarray(over, float) - turn @ np.asarray(mark, float)
        return self.solid.transform(np.column_stack([turn, shift]))


def stick(slope, thickness, depth, reach):
    """Return an uncut board that runs from −reach to reach past its mark."""
    box = Manifold.cube((2 * reach, thickness, depth)).translate((-reach, -thickness / 2, -depth))
    return Stick(box, slope)


def box(low, high):
    """Return a box between two corners."""
    return Manifold.cube(tuple(h - g for g, h in zip(low, high, strict=True))).translate(tuple(low))
