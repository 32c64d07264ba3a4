"""Members as each hand saws them, every mark from what was read; and what a board's own figures must agree in.

A board's closings are lengths that are printed and that its sawn shape has as well, measured on it: what it has, less
what is printed.
"""

from __future__ import annotations

from boards import LEFT, RIGHT, Board, Cheek, Flat, Off, bevel_by_depth, flat, stock
from hand import DEPTHS, HIP, OVERHANG, RAFTER, Hand
from names import HIP_VALLEY, JACK, JACK_LINES, ONE_LINES, TWO_LINES
from numpy import array, cos, sin, zeros


def mouthed(board: Board, hand: Hand, printed: dict[str, float], out: float = 0.0) -> Board:
    """Return a board with its bird's mouth, cut as the hand cuts it, and how far the other figures are off."""
    if hand.by_heel:
        board = board.notched(printed['heel'], printed['seat'], out)
        end = board.points['corner'] + printed['seat'] * board.lines.uphill()
        board = board.told(seat_to_underside=board.faces['under'].height(end) / board.lines.up()[2])
        own = ('heel', 'seat')
    else:
        board, own = board.seated(printed['height'], out), ('height',)
    sawn = board.mouth()
    return board.told(**{name: sawn[name] - printed[name] for name in printed if name not in own})


def rafter(hand: Hand) -> Board:
    """A common's or a hip jack's lower end: bird's mouth and plumb tail."""

    def made():
        board = mouthed(stock(hand.common_lines(), RAFTER, DEPTHS['2×8']), hand, hand.mouth())
        return board.plumb_cut('lower', -hand.common_tail(), upper=False)

    return hand.read.member('rafter as sawn', made)


def common(hand: Hand, off: Off) -> Board:
    """A common against what comes off at its upper end."""
    board = rafter(hand)
    end = hand.common_length(hand.run) - off.along(board.lines)
    tail = board.corners('lower') @ board.lines.up()
    fall = hand.common_tail() * board.lines.over()[0]
    return board.plumb_cut('upper', end).told(
        plumb_tail_cut=max(tail) - min(tail) - hand.table('Plumb tail cuts', '2×8'),
        fall=fall - hand.table('Fall of tails', str(OVERHANG)),
    )


def end_common(hand: Hand, hips: str) -> Board:
    """The common that meets the ridge's end: what the ridge runs past comes off it, level."""
    board = rafter(hand)
    off = Off(hand.past_end(hips), True).along(board.lines)
    end = hand.common_length(hand.run) - off
    board = board.plumb_cut('upper', end)
    if hips == 'between commons':
        return board
    back = Off(hand.clip_back(), True)
    how = Cheek(board.lines.plumb, blade=hand.clip_blade(), back=back)
    for side, name in ((LEFT, 'left'), (RIGHT, 'right')):
        board = board.sawn(f'clip {name}', board.cheek(end, -side, how, start=side))
    return board


# Jacks ---------------------------------------------------------------------------------------------------------


def hip_jack(hand: Hand, spacing: str, number: int, longer: int) -> Board:
    """A hip jack: its long point is on the side away from the corner, which is given."""
    board = rafter(hand)
    cut = _jack_cheek(board, hand, spacing, number, longer)
    return _points_told(board.sawn('upper', cut), hand, spacing, number, longer, 'upper')


def _jack_cheek(board, hand, spacing, number, longer, upper=True) -> Flat:
    """Return the cheek's plane, from the plate line up or from the ridge's center line down."""
    how, way = hand.cheek(JACK, JACK_LINES), 1 if upper else -1
    if how.top is None:  # the saw follows the plumb line through the long point
        return board.cheek(way * hand.jack_point(spacing, number, 'long'), way * longer, how, longer, upper)
    mark = hand.jack_line(spacing, number) - hand.off_jack(valley=not upper).along(board.lines)
    return board.cheek(way * mark, way * longer, how, upper=upper)


def _points_told(board, hand, spacing, number, longer, cut) -> Board:
    """Tell what the cheek's points are off; with the saw also where its short point falls."""
    long, short = (abs(board.starts(cut, side)) for side in (longer, -longer))
    between = abs(long - short)
    told = {
        'points_along': between - hand.apart(JACK_LINES, False),
        'points_level': board.level_of(between) - hand.apart(JACK_LINES, True),
    }
    if hand.by_heel:
        told['short_point'] = short - hand.jack_point(spacing, number, 'short')
    return board.told(**told)


def valley_jack(hand: Hand, spacing: str, number: int, longer: int) -> Board:
    """A valley jack, numbered and measured from the ridge's center line, which its mark x = 0 is on.

    Its long point is towards the corner, on the side that is given: that side reaches further downhill.
    """
    board = stock(hand.common_lines(), RAFTER, DEPTHS['2×8'])
    board = board.plumb_cut('upper', -hand.off_ridge().along(board.lines)).marked(ridge=zeros(3))
    cut = _jack_cheek(board, hand, spacing, number, longer, upper=False)
    return _points_told(board.sawn('lower', cut), hand, spacing, number, longer, 'lower')


# Hips and valleys -------------------------------------------------------------------------------------------------


def hip(hand: Hand, cheeks: int, backed: bool) -> Board:
    """A hip up A's left-hand side: one cheek on a ridge over A, or two between commons; two cheeks on its tail."""
    depth = DEPTHS['2×8'] if backed else DEPTHS['2×10']
    board = stock(hand.hip_lines(), HIP, depth)
    board = mouthed(board, hand, hand.backed_mouth() if backed else hand.dropped_mouth())
    if backed:
        board = _backed(board, hand)
    mark = hand.hip_length(hand.run) - hand.off_hip(cheeks).along(board.lines)
    board = _hip_tail(board, hand)
    lines = TWO_LINES if cheeks == 2 else ONE_LINES
    if backed:
        how, top = hand.backed_cheek('ridge' if cheeks == 1 else 'common'), board.faces['top right'].normal
        left = board.faces['top left'].normal
    else:
        how, top, left = hand.cheek(HIP_VALLEY, lines), None, None
    sides = {RIGHT: 'upper right', LEFT: 'upper left'} if cheeks == 2 else {RIGHT: 'upper'}
    for side, name in sides.items():
        longer = RIGHT if cheeks == 1 else -side
        cut = board.cheek(mark, longer, how, start=side, top=left if side == LEFT else top)
        board = board.sawn(name, cut)
    return _set_backs_told(board.marked(upper=array([mark, 0, 0])), hand, tuple(sides.values()), cheeks)


def _set_backs_told(board, hand, cuts, cheeks) -> Board:
    """Tell what the plumb lines of the cheeks are off, and whether they meet at the mark."""
    told, mark = {}, board.points['upper'][0]
    for cut in cuts:
        starts = [board.starts(cut, side) for side in (LEFT, RIGHT)]
        apart = abs(starts[0] - starts[1]) * (0.5 if cheeks == 2 else 1)
        name = {1: ONE_LINES, 2: TWO_LINES}[cheeks]
        key = cut.replace(' ', '_')
        told[f'{key}_along'] = apart - hand.apart(name, False)
        told[f'{key}_level'] = board.level_of(apart) - hand.apart(name, True)
        told[f'{key}_at_mark'] = board.faces[cut].crosses((0, 0, 0), (1, 0, 0))[0] - mark
    return board.told(**told)


def _backed(board: Board, hand: Hand) -> Board:
    bevel = bevel_by_depth(hand.drop_square(), HIP) if hand.by_heel else hand.bevel()
    for side, name in ((RIGHT, 'top right'), (LEFT, 'top left')):
        board = board.sawn(name, flat((0, side * sin(bevel), cos(bevel)), (0, 0, 0)))
    return board


def _hip_tail(board: Board, hand: Hand) -> Board:
    """Two cheeks to a point, to meet both fascias, by the set-backs of a hip at two commons."""
    end, how = -hand.hip_tail(), hand.cheek(HIP_VALLEY, TWO_LINES)
    for side, name in ((RIGHT, 'lower right'), (LEFT, 'lower left')):
        board = board.sawn(name, board.cheek(end, side, how, start=side, upper=False))
    return board.marked(lower=array([end, 0, 0]))


def valley(hand: Hand, cheeks: int) -> Board:
    """A valley in the corner of two ridges, or with one cheek on a ridge over A; its tail hollow."""
    board = stock(hand.hip_lines(), HIP, DEPTHS['2×12'])
    board = mouthed(board, hand, hand.valley_mouth(), hand.heel_out())
    mark = hand.hip_length(hand.run) - hand.off_hip(1).along(board.lines)
    how, end = hand.cheek(HIP_VALLEY, TWO_LINES), -hand.hip_tail()
    cuts = {
        name: board.cheek(end, -side, how, start=side, upper=False)
        for side, name in ((RIGHT, 'lower right'), (LEFT, 'lower left'))
    }
    board = board.hollowed(cuts)
    sides = {RIGHT: 'upper right', LEFT: 'upper left'} if cheeks == 2 else {RIGHT: 'upper'}
    for side, name in sides.items():
        board = board.sawn(name, board.cheek(mark, RIGHT if cheeks == 1 else -side, how, start=side))
    tail = board.corners('left', 'lower left') @ board.lines.up()
    board = board.told(plumb_depth=max(tail) - min(tail) - hand.valley_plumb_depth())
    return board.marked(upper=array([mark, 0, 0]), lower=array([end, 0, 0]))


# A shed -----------------------------------------------------------------------------------------------------------


WALL, ON_WALL, TO_LEDGER = 'wall', 'ledger on the wall', 'to the ledger'
"""What a shed's rafter stands against, and how far its run goes: to a bare wall; to the wall behind; to a ledger's face."""


def shed_rafter(hand: Hand, against: str, run: float) -> Board:
    """A shed's rafter: all of a ledger comes off a run that goes to the wall, level; else nothing does."""
    board = rafter(hand) if not hand.by_heel else _square_tailed(hand)
    end = hand.counted_length(int(run) // 12) if against == WALL else hand.common_length(run)
    if against == ON_WALL:
        end -= Off(hand.ledger_off(), True).along(board.lines)
    return board.plumb_cut('upper', end)


def _square_tailed(hand: Hand) -> Board:
    """A rafter's lower end, its tail cut square to the edge."""
    board = mouthed(stock(hand.common_lines(), RAFTER, DEPTHS['2×8']), hand, hand.mouth())
    end = -hand.common_tail()
    board = board.sawn('lower', flat((-1, 0, 0), (end, 0, 0)))
    corner = board.corners('lower', 'under')[0]
    set_in = (corner - array([end, 0, 0])) @ board.lines.uphill()
    return board.told(lower_corner=set_in - hand.table('Square tail cuts, lower corner set in', '2×8'))
