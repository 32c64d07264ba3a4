"""What every carpenter does alike who works from the book: what he sets, measures, and where he finds a figure."""

from __future__ import annotations

from boards import Off
from names import (
    COMMON,
    CORNER,
    CORNER_MOUTH,
    HEEL,
    HEIGHT,
    LINES,
    MOUTH,
    MOUTH_HEADS,
    NOTCH,
    ODD,
    OFF,
    WOOD,
)  # fmt: skip
from reading import Place, Reading

RIDGE, HIP, RAFTER = 3 / 4, 7 / 2, 7 / 4
"""in, thicknesses: the skewed book is made for these."""
DEPTHS = {'2×8': 29 / 4, '2×10': 37 / 4, '2×12': 45 / 4}
"""in, dressed, dry. Source: Voluntary Product Standard PS 20, American Softwood Lumber Standard."""
OVERHANG = 12
SET_SEAT = 3.5
"""in, the commons' seat: set, as wide as the plates."""


class Hand:
    """One of them."""

    name = ''
    run = 48
    """in."""

    def __init__(self, read: Reading) -> None:
        self.read, self.pitch = read, read.pages.pitch

    def table(self, title: str, head: str, label: str = '', section: str = '') -> float:
        return self.read.value(Place(title, section, label or self.pitch, head))

    def common(self, name: str, section: str = '', head: str = '', part: int = 0) -> float:
        return self.read.value(Place(COMMON, section, name, head, part))

    def corner(self, name: str, section: str = '', head: str = '', part: int = 0) -> float:
        return self.read.value(Place(CORNER, section, name, head, part))

    def angle(self, *place) -> float:
        return self.read.angle(Place(*place))

    def off(self, name: str, level: bool, page: str = CORNER) -> Off:
        return Off(self.read.value(Place(page, OFF, name, 'level' if level else 'along top')), level)

    def of_run(self, title: str, run: float) -> float:
        """Return a figure of a table of runs; sixteenths are added, as its foot says."""
        feet, inches = divmod(int(run), 12)
        value = self.read.value(Place(title, '', str(feet), f'{inches} in'))
        odd = run - int(run)
        return value + (self.read.value(Place(title, '', 'add', ODD[odd])) if odd else 0.0)

    def rise(self, run: float) -> float:
        return self.of_run('Rise, inches', run)

    def mouth(self) -> dict[str, float]:
        """Return the commons' bird's mouth as it is printed."""
        return {
            'height': self.common(HEIGHT, MOUTH),
            'heel': self.common(HEEL, MOUTH),
            'seat': SET_SEAT,
            'notch': self.common(NOTCH, MOUTH),
            'left': self.common(WOOD, MOUTH),
        }

    def corner_mouth(self, name: str, *without: str) -> dict[str, float]:
        """Return that of a hip or valley."""
        return {
            key: self.corner(name, CORNER_MOUTH, head)
            for key, head in MOUTH_HEADS.items()
            if key not in without
        }

    def heel_out(self) -> float:
        return self.corner('Valley’s heel, level, outwards of the inside corner')

    def drop(self) -> float:
        return self.corner('Drop, plumb: already in the dropped hip’s figures')

    def apart(self, name: str, level: bool) -> float:
        """Return how far apart the plumb lines of a cheek are."""
        return self.corner(name, LINES, 'level' if level else 'along top')
