"""What is measured on a building before a length is looked up: half of it in section, and a shed at its wall."""

from __future__ import annotations

from math import atan, degrees

from markupsafe import Markup

from layouts.drawings import svg
from layouts.drawings.rafter_side import PLUMB_LINE, RafterSide, block, placed, wood

WIDTH = 241.0
GABLE = {'run': 98.0, 'tail': 13.0, 'depth': 7.5, 'seat': 4.6, 'ridge': 2.4}
"""Units: drawn as they are. The plates of both drawings are as wide."""
SHED = {'run': 150.0, 'tail': 16.0, 'depth': 7.5, 'seat': 4.6}
LEDGER, SHED_WALL = 5.0, 9.0
"""Thickness of the ledger, and of what is shown of the wall that it is on; units."""
OUT, WALL_HEIGHT = 10.0, 31.0
"""Units from the top edge up to the line length; height of the gable's walls."""
SIZE = 8.5


def measured_gable(slope: float, words: dict[str, str]) -> Markup:
    """Return a building in section, the rafter right of the ridge drawn heavy, with width, run, rise and line length.

    words: by 'title', 'width', 'run', 'rise', 'length', 'ridge_line', 'plate_line', 'plate'
    """
    side = RafterSide(slope, **GABLE)
    center, top = WIDTH / 2, 25.0 + OUT

    def at(x: float, y: float) -> svg.Point:
        return center + x, top + side.upper(0) - y

    left, right = (at(x, 0)[0] for x in (-side.run, side.run))
    high, low = (at(0, side.upper(x))[1] for x in (0.0, side.run))
    run, floor = at(0, -16)[1], at(0, -WALL_HEIGHT)[1]
    width = floor + 12
    across = [svg.shape(placed(at, [(-x, y) for x, y in side.outline()]), svg.LINE, '#fff')]
    across += [
        svg.shape(placed(at, [(-x, y) for x, y in plate]), svg.LINE, '#fff') for plate in side.plates()
    ]
    across += [
        svg.path(placed(at, [(-x, y) for x, y in one]), svg.LINE) for one in side.wall(WALL_HEIGHT - 3)
    ]
    middle = center + side.run * 0.5, (high + low) / 2 - OUT
    return svg.drawing(
        WIDTH,
        width + 3,
        words['title'],
        [
            *across,
            *wood(side, at, svg.HEAVY, (1.5, '#fff'), 0.0, WALL_HEIGHT - 3),
            svg.line((center, high - OUT - 5), (center, run + 3), svg.HAIR, PLUMB_LINE),
            svg.line((right, low - OUT - 8), (right, low), svg.HAIR, PLUMB_LINE),
            svg.text(words['ridge_line'], (center, high - OUT - 8), 8, 'middle'),
            svg.arrow((center, high - OUT), (right, low - OUT), both=True),
            svg.text(
                words['length'], (middle[0] + 2, middle[1] - 3.5), SIZE, 'middle', 700, -degrees(atan(slope))
            ),
            svg.line((right, low), (center - 9, low), svg.HAIR),
            svg.line((center, high), (center - 9, high), svg.HAIR),
            svg.arrow((center - 6, high), (center - 6, low), both=True),
            svg.text(words['rise'], (center - 9, low - 10), SIZE, 'end', 700),
            svg.arrow((center, run), (right, run), both=True, width=svg.LINE),
            svg.text(words['run'], ((center + right) / 2, run - 3), SIZE, 'middle', 700),
            svg.text(words['plate'], (left + 18, run - 3), 8),
            svg.arrow((left + 16.5, run - 6), (left + side.seat, at(0, -1.5)[1])),
            svg.text(words['plate_line'], (WIDTH - 1, low - OUT - 11), 8, 'end'),
            *(svg.line((x, floor), (x, width + 3), svg.HAIR) for x in (left, right)),
            svg.arrow((left, width), (right, width), both=True),
            svg.text(words['width'], (center, width - 3), 8, 'middle'),
        ],
    )


def measured_shed(slope: float, words: dict[str, str]) -> Markup:
    """Return a shed rafter at its ledger, with its run to the wall and its run to the ledger's face.

    words: by 'title', 'wall', 'ledger', 'to_wall', 'to_ledger'
    """
    side = RafterSide(slope, ridge=2 * LEDGER, **SHED)
    edge, top = 44.0, 10.0

    def at(x: float, y: float) -> svg.Point:
        return edge + x, top + side.upper(0) - y

    plate = at(side.run, 0)[0]
    face = at(LEDGER, 0)[0]
    first, second = at(0, -15)[1], at(0, -27)[1]
    ledger = block(0, LEDGER, side.lower(LEDGER) - 2, side.upper(LEDGER))
    wall = placed(at, block(-SHED_WALL, 0, -29, side.upper(0) + 8))
    return svg.drawing(
        WIDTH,
        second + 3,
        words['title'],
        [
            svg.hatch(wall, 4),
            svg.line(wall[1], wall[2]),
            svg.shape(placed(at, side.outline()), svg.HEAVY, '#fff'),
            svg.shape(placed(at, ledger), svg.LINE, '#fff'),
            *(
                svg.shape(placed(at, one), svg.LINE, '#fff') + svg.hatch(placed(at, one), 2.6)
                for one in side.plates()
            ),
            *(svg.path(placed(at, one), svg.LINE) for one in side.wall(6)),
            svg.line((face, at(0, ledger[2][1])[1]), (face, first + 2), svg.HAIR),
            svg.line((plate, at(0, -9)[1]), (plate, second + 2), svg.HAIR),
            svg.arrow((face, first), (plate, first), both=True),
            svg.text(words['to_ledger'], ((face + plate) / 2, first - 3), 8, 'middle'),
            svg.arrow((edge, second), (plate, second), both=True),
            svg.text(words['to_wall'], ((face + plate) / 2, second - 3), 8, 'middle'),
            svg.text(words['wall'], (wall[0][0] - 4, wall[0][1] + 12), 8, 'end'),
            svg.text(words['ledger'], (face + 32, top), 8),
            svg.arrow((face + 30.5, top - 2), (at(LEDGER / 2, 0)[0], at(0, side.upper(LEDGER) - 2)[1])),
        ],
    )
