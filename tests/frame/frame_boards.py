"""Any member of a frame, sawn by the figures under its mark: every mark from one edge, the cheeks by a tilted blade.

What is printed besides (the other marks, the line on the top edge, the points, the rest of the bird's mouth, the lengths over
all) is measured on the board as it is sawn, and told with it.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from math import asin, atan2, cos, degrees, radians, sin
from types import SimpleNamespace

import numpy as np
from boards import LEFT, RIGHT, Board, Cheek, Flat, Lines, flat, stock
from frame_printed import EndOf, Sort
from members import mouthed
from reading import Place, Reading

MOUTH = {
    'height': 'height_above_plate', 'heel': 'heel', 'seat': 'seat', 'notch': 'notch_depth', 'left': 'stock_left',
}  # fmt: skip
HEAD = {1: ('long', 'cut', 'short'), 2: ('point', 'side', 'side_right')}
FOOT = {1: ('foot_long', 'foot_cut', 'foot_short'), 2: ('tail', 'tail_side', 'tail_right')}
TAIL_OF_ONE = ('tail_long', 'tail', 'tail_short')
SIDES = {'left': LEFT, 'right': RIGHT}


@dataclass
class Sheet:
    """What is printed of one sort of member, as it is read."""

    read: Reading
    sort: Sort
    told: dict[str, Place]
    """By what is told of a board, the figure that nothing but this is held against."""

    def value(self, section: str, name: str) -> float:
        return self.read.value(Place(self.sort.page, section, name))

    def tell(self, name: str, measured: float, section: str, key: str) -> dict[str, float]:
        """Return how far what is measured on the board is off what is printed."""
        self.told[name] = Place(self.sort.page, section, key)
        return {name: measured - self.value(section, key)}

    def tell_mark(self, name: str, measured: float, line: str) -> dict[str, float]:
        """Return how far a line on the board is off its printed mark."""
        self.told[name] = Place(self.sort.page, 'marks', line)
        return {name: measured - self.at(line)}

    def has(self, section: str, name: str) -> bool:
        return Place(self.sort.page, section, name) in self.read.pages.known

    def zero(self) -> str:
        """Return the mark that the board is turned by: the plate line's, or else that of what stops it above."""
        return 'plate' if 'plate' in self.sort.lines else 'center'

    def at(self, line: str) -> float:
        """Return where a mark is, uphill of the zero mark."""
        return self.value('marks', self.zero()) - self.value('marks', line)


def sawn(read: Reading, sort: Sort, by_heel: bool, told: dict[str, Place]) -> Board:
    """Return the board of a sort.

    Given:
        told     takes the figures that only what is told of the board is held against
        by_heel  whether its bird's mouth is cut by heel and seat, or else by its height
    """
    sheet = Sheet(read, sort, told)
    board = read.member(f'sawn above {sort.page}', lambda: _upper(_body(sheet, by_heel), sheet))
    board = _over_all(_lower(board, sheet), sheet)
    return board.marked(center=np.array([sheet.at('center'), 0, 0]), zero=np.zeros(3))


def _body(sheet: Sheet, by_heel: bool) -> Board:
    """Return the board with its bird's mouths and its backs; like what is sawn above, made again only for a figure of its own."""
    return sheet.read.member(f'body of {sheet.sort.page}', lambda: _backed(_mouthed(sheet, by_heel), sheet))


def _mouthed(sheet: Sheet, by_heel: bool) -> Board:
    sort, told = sheet.sort, sheet.told
    lines = Lines(radians(sheet.value('cut', 'plumb')), radians(sheet.value('cut', 'level')))
    board = stock(lines, sort.thick, sort.depth)
    if not sort.mouth:
        square = degrees(lines.plumb) + sheet.value('cut', 'level') - 90
        told['level'] = Place(sort.page, 'cut', 'level')
        return board.told(level=square)
    printed = {name: sheet.value('mouth', key) for name, key in MOUTH.items()}
    out = sheet.value('mouth', 'heel_back') if sheet.has('mouth', 'heel_back') else 0.0
    board = mouthed(board, SimpleNamespace(by_heel=by_heel), printed, out)
    if 'heel' in sort.lines:
        board = board.told(**sheet.tell_mark('heel mark', -out / cos(lines.plumb), 'heel'))
    own = ('heel', 'seat') if by_heel else ('height',)
    told |= {name: Place(sort.page, 'mouth', key) for name, key in MOUTH.items() if name not in own}
    if 'upper_plate' in sort.lines:
        board = _over_beam(board, sheet, by_heel)
    depth = sort.depth / lines.up()[2]
    return board.told(**sheet.tell('plumb depth', depth, 'mouth', 'plumb_depth'))


def _backed(board: Board, sheet: Sheet) -> Board:
    for words, side in SIDES.items():
        if sheet.has('backs', words):
            bevel = radians(sheet.value('backs', words))
            board = board.sawn(f'top {words}', flat((0, side * np.sin(bevel), np.cos(bevel)), (0, 0, 0)))
    return board


def _over_beam(board: Board, sheet: Sheet, by_heel: bool) -> Board:
    """Cut a second bird's mouth by its own figures, its heel at a mark farther up, and measure the others."""
    printed = {name: sheet.value('upper_mouth', key) for name, key in MOUTH.items()}
    line, up = np.array([sheet.at('upper_plate'), 0.0, 0.0]), board.lines.up()
    down = board.depth / up[2] - printed['heel'] if by_heel else printed['height']
    twice = board._mouth(line - down * up, line, printed['seat'] if by_heel else None)
    sizes = twice.mouth() | {'height': -twice.points['corner'][2] / up[2]}
    told = {}
    for name, key in MOUTH.items():
        if name not in (('heel', 'seat') if by_heel else ('height',)):
            told |= sheet.tell(f'upper {name}', sizes[name], 'upper_mouth', key)
    if by_heel:
        end = twice.points['corner'] + printed['seat'] * board.lines.uphill()
        told |= {'upper seat to underside': twice.faces['under'].height(end) / up[2]}
    told |= sheet.tell('upper plumb depth', board.depth / up[2], 'upper_mouth', 'plumb_depth')
    upper = {f'upper_{face}': twice.faces[face] for face in ('seat', 'heel')}
    return replace(twice, faces={**board.faces, **upper}, points=board.points).told(**told)


def _upper(board: Board, sheet: Sheet) -> Board:
    end = sheet.sort.head
    if not end.cheeks:
        board = board.plumb_cut('upper', sheet.at('cut'))
        return _off_told(board, sheet, 'head', end, sheet.at('cut'))
    if end.cheeks == 1:
        return _one(board, sheet, 'head', HEAD[1], end.long, 1)
    return _two(board, sheet, 'head', HEAD[2], end, 1)


def _lower(board: Board, sheet: Sheet) -> Board:
    end, lines = sheet.sort.tail, sheet.sort.lines
    if end.laid:
        return _laid(board, sheet, end.long)
    if 'foot_cut' in lines and not end.cheeks:
        board = board.plumb_cut('lower', sheet.at('foot_cut'), upper=False)
        return _off_told(board, sheet, 'tail', end, sheet.at('foot_cut'))
    if end.cheeks == 1:
        return _one(board, sheet, 'tail', FOOT[1] if 'foot_cut' in lines else TAIL_OF_ONE, end.long, -1)
    if end.cheeks == 2:
        return _two(board, sheet, 'tail', FOOT[2], end, -1)
    if end.square:
        return _square(board, sheet)
    return board.plumb_cut('lower', sheet.at('tail'), upper=False)


def _square(board: Board, sheet: Sheet) -> Board:
    """Saw a tail square to the top edge, and measure where its lower corner comes."""
    board = board.sawn('lower', flat((-1, 0, 0), (sheet.at('tail'), 0, 0)))
    in_of, under = board.depth * sin(board.lines.plumb), board.depth * cos(board.lines.plumb)
    told = sheet.tell('lower set in', in_of, 'tail.lower', 'set_in')
    return board.told(**told, **sheet.tell('lower below', under, 'tail.lower', 'below'))


def _laid(board: Board, sheet: Sheet, long: int) -> Board:
    """Saw a foot along a level line from its mark on the top edge, the blade tilted: one side runs down the farther."""
    at, bevel = sheet.at('foot_cut'), radians(sheet.value('tail', 'bevel'))
    normal = -np.cos(bevel) * board.lines.over() - long * np.sin(bevel) * np.array([0.0, 1.0, 0.0])
    board = board.sawn('lower', flat(normal, (at, 0, 0)))
    starts = [board.starts('lower', side) for side in (long, -long)]
    told = sheet.tell_mark('tail long', starts[0], 'foot_long') | sheet.tell_mark(
        'tail short', starts[1], 'foot_short'
    )
    told |= _apart_told(board, sheet, 'tail.back', abs(starts[0] - starts[1]) / 2)
    return _off_told(board.told(**told), sheet, 'tail', None, at)


def _blade(sheet: Sheet, section: str) -> Cheek:
    """Return how a cheek is sawn: along its line on the side where it leaves it, plumb or leaning the other way from square."""
    leans = sheet.has(section, 'side_leaning')
    line = -sheet.value(section, 'side_leaning') if leans else sheet.value(section, 'side_plumb')
    return Cheek(radians(line), blade=radians(sheet.value(section, 'side_blade_tilt')))


def _one(board: Board, sheet: Sheet, end: str, marks: tuple[str, str, str], side: int, way: int) -> Board:
    """Saw one cheek from its long point's plumb line, on that side; measure where it crosses the rest of the board."""
    long, cut, short = marks
    name = 'upper' if way > 0 else 'lower'
    start = sheet.at(long)
    plane = board.cheek(start, way * side, _blade(sheet, f'{end}.cut'), start=side, upper=way > 0)
    board = board.sawn(name, plane)
    middle, other = plane.crosses((0, 0, 0), (1, 0, 0))[0], board.starts(name, -side)
    told = sheet.tell_mark(f'{end} short', other, short)
    if cut in sheet.sort.lines:
        told |= sheet.tell_mark(f'{end} cut', middle, cut)
    told |= _apart_told(board, sheet, f'{end}.back', abs(other - start) / 2)
    if sheet.has(f'{end}.cut.long_to_short_point', 'along'):
        told |= _apart_told(board, sheet, f'{end}.cut.long_to_short_point', abs(other - start))
    told |= _lines_told(plane, sheet, f'{end}.cut', board.thick)
    return _off_told(board.told(**told), sheet, end, None, middle)


def _two(board: Board, sheet: Sheet, end: str, marks: tuple[str, str, str], how: EndOf, way: int) -> Board:
    """Saw two cheeks, each from the plumb line where it leaves its side; measure where the first crosses the center."""
    point, left_line, right_line = marks
    name = 'upper' if way > 0 else 'lower'
    planes, told, starts = {}, {}, {}
    for words, side in SIDES.items():
        right = how.unlike and side == RIGHT
        section = f'{end}.other' if right else f'{end}.cut'
        start = sheet.at(right_line if right else left_line)
        longer = -way * side if not how.hollow else way * side
        plane = board.cheek(start, longer, _blade(sheet, section), start=side, upper=way > 0)
        planes[f'{name} {words}'] = plane
        starts.setdefault(section, start)
        crossed_in = board.thick / 2 if not how.blunt else how.clipped / 2
        told |= _lines_told(plane, sheet, section, crossed_in)
    crossed = {words: plane.crosses((0, 0, 0), (1, 0, 0))[0] for words, plane in planes.items()}
    if how.blunt:
        middle = sheet.at('cut')
        board = board.plumb_cut(name, middle)
        crossed = dict.fromkeys(crossed, middle)
    else:
        middle = min(crossed.values()) if way > 0 or how.hollow else max(crossed.values())
        # the center line meets one of two unlike cheeks first; at plumb fascias and in a valley's corner both lie on one point
        marked = {name: middle} if how.unlike and (way > 0 or how.square) and not how.hollow else crossed
        for words, at in marked.items():
            told |= sheet.tell_mark(f'{words} point', at, point)
    if sheet.has(f'{end}.tip', 'along'):
        told |= _apart_told(board, sheet, f'{end}.tip', way * (_meet(*planes.values()) - middle))
    out = -way if how.hollow else way
    for at, (section, start) in zip(crossed.values(), starts.items(), strict=False):
        told |= _apart_told(
            board, sheet, f'{end}.other_back' if 'other' in section else f'{end}.back', out * (middle - start)
        )
        told |= _apart_told(board, sheet, f'{section}.point_to_side', out * (at - start))
    if how.hollow:
        board = board.hollowed(planes)
    else:
        for words, plane in planes.items():
            board = board.sawn(words, plane)
    board = _off_told(board.told(**told), sheet, end, how, middle)
    return board if how.blunt else board.marked(**{name: np.array([middle, 0, 0])})


def _meet(one: Flat, two: Flat) -> float:
    """Return where two cuts meet on the top, along the board."""
    normals = np.array([one.normal[:2], two.normal[:2]])
    return np.linalg.solve(normals, [one.normal @ one.point, two.normal @ two.point])[0]


def _apart_told(board: Board, sheet: Sheet, section: str, along: float) -> dict[str, float]:
    return {
        **sheet.tell(f'{section} along', along, section, 'along'),
        **sheet.tell(f'{section} level', board.level_of(along), section, 'level'),
    }


def _lines_told(plane, sheet: Sheet, section: str, crossed: float) -> dict[str, float]:
    """Tell the line of a cheek on the top edge, by its angle, and on the square; and past the saw's scale from the end.

    Given:
        crossed  thickness that the cheek crosses
    """
    tangent = abs(plane.normal[1] / plane.normal[0])
    tilt = asin(min(1.0, abs(plane.normal[1])))
    told = sheet.tell(f'{section} top', degrees(atan2(tangent, 1)), section, 'top_from_square')
    told |= sheet.tell(f'{section} on 12', 12 / tangent, section, 'top_figure_on_12')
    if sheet.has(section, 'end_blade_tilt'):
        told |= sheet.tell(f'{section} from end', 90 - degrees(tilt), section, 'end_blade_tilt')
        told |= sheet.tell(f'{section} reach', crossed / np.cos(tilt), section, 'blade_reach')
    return told


def _off_told(board: Board, sheet: Sheet, end: str, how: EndOf | None, cut: float) -> Board:
    """Tell what comes off, from the center line of what stops it to the cut, along the edge and level."""
    section = f'{end}.off'
    if end == 'tail' and 'foot' in sheet.sort.lines and not sheet.has(section, 'along'):
        return board.told(**sheet.tell_mark('foot', cut, 'foot'))
    if not sheet.has(section, 'along') or (end == 'tail' and 'foot' not in sheet.sort.lines):
        return board
    off = abs(sheet.at('center' if end == 'head' else 'foot') - cut)
    return board.told(**_apart_told(board, sheet, section, off))


def _over_all(board: Board, sheet: Sheet) -> Board:
    """Tell the length over all on the top edge and the shortest board that holds it; a backed top has lost its arrises."""
    if 'top left' in board.faces:
        return board
    told = sheet.tell('overall', np.ptp(board.corners('top')[:, 0]), '', 'overall')
    if not sheet.sort.flush:  # there the bird's mouth takes the tail's lower corner away
        told |= sheet.tell('stick', np.ptp(board._corners[:, 0]), '', 'stick')
    return board.told(**told)
