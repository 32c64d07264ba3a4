"""A common rafter on its plates and at its ridge board, seen from the side with the ridge at the left, in inches."""

from __future__ import annotations

from math import atan, cos

from msgspec import Struct

from layouts.drawings import svg

PLATES, PLATE_THICK = 2, 1.5
PLUMB_LINE = '6 1.5 1 1.5'


class RafterSide(Struct, frozen=True):
    """The rafter: points are told from the ridge center line out to the tail, and up from the seat."""

    slope: float
    run: float
    tail: float
    """Overhang."""
    depth: float
    seat: float
    """Also the width of the plates."""
    ridge: float
    """Thickness of the ridge board."""

    @property
    def steep(self) -> float:
        """Return the cosine of the slope."""
        return cos(atan(self.slope))

    @property
    def deep(self) -> float:
        """Return the depth of the board, plumb."""
        return self.depth / self.steep

    @property
    def end(self) -> float:
        """Return how far out the tail's plumb line is."""
        return self.run + self.tail

    def upper(self, out: float) -> float:
        """Return how high the top edge is."""
        return self.deep - self.seat * self.slope + (self.run - out) * self.slope

    def lower(self, out: float) -> float:
        """Return how high the bottom edge is."""
        return self.upper(out) - self.deep

    def outline(self) -> list[svg.Point]:
        """Return the corners: tail, ridge cut from its top, toe, corner and foot of the bird's mouth, tail's foot."""
        face = self.ridge / 2
        edges = [
            (out, edge(out)) for out, edge in ((self.end, self.upper), (face, self.upper), (face, self.lower))
        ]
        mouth = [(self.run - self.seat, 0.0), (self.run, 0.0), (self.run, self.lower(self.run))]
        return [*edges, *mouth, (self.end, self.lower(self.end))]

    def ridge_board(self, below: float) -> list[svg.Point]:
        """Return the ridge board, so much deeper than the rafter's cut."""
        face = self.ridge / 2
        return block(-face, face, self.lower(face) - below, self.upper(face))

    def plates(self) -> list[list[svg.Point]]:
        """Return the plates, the upper one first."""
        inside = self.run - self.seat
        return [block(inside, self.run, -PLATE_THICK * (n + 1), -PLATE_THICK * n) for n in range(PLATES)]

    def wall(self, below: float) -> list[list[svg.Point]]:
        """Return both faces of so much of the wall under the plates."""
        foot = -PLATE_THICK * PLATES
        return [[(out, foot), (out, foot - below)] for out in (self.run - self.seat, self.run)]

    def beyond(self, shown: float) -> list[list[svg.Point]]:
        """Return both edges of what shows of the rafter across the ridge."""
        face = self.ridge / 2
        return [
            [(-face, edge(face)), (-face - shown, edge(face + shown))] for edge in (self.upper, self.lower)
        ]


def block(left: float, right: float, low: float, high: float) -> list[svg.Point]:
    """Return the corners of an upright rectangle."""
    return [(left, high), (right, high), (right, low), (left, low)]


def placed(at: svg.Place, points: list[svg.Point]) -> list[svg.Point]:
    """Return points where they stand in a drawing."""
    return [at(*point) for point in points]


def wood(
    side: RafterSide, at: svg.Place, outline: float, board: tuple[float, str], stub: float, wall: float
) -> list[str]:
    """Return the ink of rafter, ridge board, plates, wall and what shows of the rafter across the ridge.

    Given:
        outline     width of ink round the rafter
        board       how much deeper the ridge board is than the rafter's cut, and its fill; one that is white is hatched
        stub, wall  how much is shown of the rafter across the ridge, and of the wall
    """
    below, fill = board
    lines = [*side.beyond(stub), *side.wall(wall)]
    ridge = placed(at, side.ridge_board(below))
    plates = [placed(at, plate) for plate in side.plates()]
    return [
        *(svg.path(placed(at, one), svg.LINE) for one in lines),
        svg.shape(placed(at, side.outline()), outline, '#fff'),
        svg.shape(ridge, svg.LINE, fill),
        *((svg.hatch(ridge, 2.6),) if fill == '#fff' else ()),
        *(svg.shape(plate, svg.LINE, '#fff') + svg.hatch(plate, 2.6) for plate in plates),
    ]
