"""A board in space in its own coordinates: what planes draw on its faces, along its edge and square to it."""

from itertools import pairwise

from fifty_digits import mpf

from oracle.planes import along, dot, meet, sub

LEFT, TOP, RIGHT = 'left', 'top', 'right'
"""Sides as one sees them who looks up the roof."""


class Board:
    """A board in space and what cuts it; its own coordinates are along its edge from a plumb plane, and down from its top."""

    def __init__(self, member, start, depth, thick, top=None):
        self.faces = {LEFT: member.left, RIGHT: member.right}
        self.center, self.top, self.depth, self.thick = member.center, top or member.top, depth, thick
        self.uphill = along(member.center, member.top)
        if self.uphill[2] < 0:
            self.uphill = tuple(-one for one in self.uphill)
        self.start = meet(self.center, self.top, start)

    def at(self, side, cut, under):
        """Return where a cut meets a side and another plane, on that side: along, and down from the top edge."""
        point = meet(self.faces[side], under, cut)
        return -dot(sub(point, self.start), self.uphill), -self.top.height(point)

    def plumb(self, side, cut):
        """Return a cut's line over a side."""
        return side, self.at(side, cut, self.top), self.at(side, cut, self.top.moved(-self.depth))

    def over_top(self, cuts):
        """Return the line of one cut, or of one to either side of the center, over the top edge from the left."""
        at = [self.at(side, cut, self.top)[0] for side, cut in zip((LEFT, RIGHT), cuts, strict=True)]
        points = [(at[0], mpf(0)), (at[1], self.thick)]
        if cuts[0] != cuts[1]:
            point = meet(self.top, *cuts)
            across = self.faces[LEFT].height(point)
            points.insert(1, (-dot(sub(point, self.start), self.uphill), abs(across)))
        return [(TOP, *pair) for pair in pairwise(points)]

    def crossed(self, left, right):
        return [self.plumb(LEFT, left), self.plumb(RIGHT, right), *self.over_top((left, right))]

    def mouth(self, heel, plates_top):
        """Return seat and heel on the left side."""
        under = self.top.moved(-self.depth)
        corner_at = self.at(LEFT, heel, plates_top)
        return [
            (LEFT, self.at(LEFT, plates_top, under), corner_at),
            (LEFT, corner_at, self.at(LEFT, heel, under)),
        ]
