"""A corner of two pitches: commons and jacks of both sides, a hip dropped, backed or slid, fascias; from tables alone.

Plates as at a hip roof's end; A is the flatter side. Rafters stand at one height above plate, which is set; how long the
commons are comes from the table of pitches. No rise is tabled, so the ridge is as high as it needs to be.
"""

from __future__ import annotations

from dataclasses import replace
from math import cos, pi, radians, sin, sqrt

from assembly import Assembly, Lies, Touch, plane, point
from boards import LEFT, RIGHT, Board, Cheek, Lines, Member, Off, box, flat, from_square, stock
from hand import DEPTHS, HIP, OVERHANG, RAFTER, RIDGE, SET_SEAT
from numpy import array
from reading import Place, Reading

RUN, HEIGHT, SPACING, FAR = 72.0, 6.0, 16, 150
"""in: run of A, height above plate, both set."""
DROPPED, BACKED, SLID = 'dropped', 'backed', 'slid'
RIDGE_A, RIDGE_B, BETWEEN = 'ridge over A', 'ridge over B', 'between commons'
FIT, SHORT, STARTS, CUTS, SLIDE = (
    'Two pitches: backing, drop and eaves',
    'Two pitches: shortening, level',
    'Two pitches: where cheeks start',
    'Two pitches: cheek cuts',
    'Two pitches: a slid hip',
)
A, B = 'A', 'B'
OTHER, LONGER = {A: B, B: A}, {A: RIGHT, B: LEFT}
"""The side of a hip that looks at A is its right one, uphill."""


class Pair:
    """A carpenter who reads the tables of two pitches."""

    def __init__(self, read: Reading, label: str, by_blade: bool) -> None:
        self.read, self.label, self.by_blade = read, label, by_blade
        self.pitch = dict(zip((A, B), label.split(), strict=True))
        rises = {side: float(pitch) / 12 for side, pitch in self.pitch.items()}
        self.slope, self.run = rises, {A: RUN, B: RUN * rises[A] / rises[B]}

    def value(self, title: str, head: str) -> float:
        return self.read.value(Place(title, '', self.label, head))

    def lines(self, side: str) -> Lines:
        degrees = self._of_pitch(side, 'degrees')
        return Lines(radians(degrees), pi / 2 - radians(degrees))

    def _of_pitch(self, side: str, head: str) -> float:
        return self.read.value(Place('Pitch to degrees, and on a level', '', self.pitch[side], head))

    def along(self, side: str, level: float) -> float:
        return self._of_pitch(side, 'slope of a foot') * level / 12

    def overhang(self, side: str) -> float:
        return OVERHANG if side == A else self.value(FIT, 'eave B')

    def hip_lines(self) -> Lines:
        plumb = radians(self.value('Two pitches: the hip and its jacks', 'plumb cut'))
        return Lines(plumb, pi / 2 - plumb)

    def hip_along(self, level_of_a: float) -> float:
        return self.value('Two pitches: the hip and its jacks', 'per foot') * level_of_a / 12

    def uphill(self) -> tuple[float, float]:
        plan = radians(self.value('Two pitches: the hip and its jacks', 'plan'))
        return cos(plan), sin(plan)

    def jack_cheek(self, side: str, lines: Lines) -> Cheek:
        if not self.by_blade:
            return Cheek(lines.plumb, top=from_square(self.value(CUTS, f'jack {side}: 12 &')))
        back = Off(self.value(STARTS, f'jack {side}: points') / 2, True)
        return Cheek(lines.plumb, blade=radians(self.value(CUTS, f'jack {side}: blade')), back=back)

    def hip_cheek(self, side: str, lines: Lines) -> Cheek:
        """Return the hip's cheek at a ridge over a side, at its fascia, or at a common of the other side."""
        if not self.by_blade:
            return Cheek(lines.plumb, top=from_square(self.value(CUTS, f'hip {side}: 12 &')))
        back = Off(self.value(STARTS, f'hip {side}: side'), True)
        return Cheek(lines.plumb, blade=radians(self.value(CUTS, f'jack {OTHER[side]}: blade')), back=back)


def _rafter(pair: Pair, side: str) -> Board:
    board = stock(pair.lines(side), RAFTER, DEPTHS['2×8']).seated(HEIGHT)
    return board.plumb_cut('lower', -pair.along(side, pair.overhang(side)), upper=False)


def _common(pair: Pair, side: str, off: float) -> Board:
    board = _rafter(pair, side)
    return board.plumb_cut('upper', pair.along(side, pair.run[side]) - Off(off, True).along(board.lines))


def _jack(pair: Pair, side: str, number: int, fit: str) -> Board:
    board = _rafter(pair, side)
    mark = number * pair.value('Two pitches: the hip and its jacks', f'jacks {side}')
    mark -= Off(pair.value(SHORT, f'jack {side}'), True).along(board.lines)
    if fit == SLID:
        way, head = (-1, 'A less') if side == A else (1, 'B more')
        mark += way * (
            Off(pair.value(SLIDE, f'{head}: level'), True).along(board.lines)
            if pair.by_blade
            else pair.value(SLIDE, f'{head}: along')
        )
    how = pair.jack_cheek(side, board.lines)
    board = board.sawn('upper', board.cheek(mark, LONGER[side], how, start=LONGER[side]))
    return board.told(at_mark=board.faces['upper'].crosses((0, 0, 0), (1, 0, 0))[0] - mark)


def _hip(pair: Pair, against: str, fit: str) -> Board:
    board = stock(pair.hip_lines(), HIP, DEPTHS['2×10'])
    drop = {DROPPED: (FIT, 'drop B'), SLID: (SLIDE, 'its drop')}
    board = board.seated(HEIGHT - (pair.value(*drop[fit]) if fit in drop else 0))
    if fit == BACKED:
        for side in (A, B):
            bevel = radians(pair.value(FIT, f'backing {side}'))
            board = board.sawn(f'top {side}', flat((0, LONGER[side] * sin(bevel), cos(bevel)), (0, 0, 0)))
    length = pair.hip_along(RUN)
    if against == BETWEEN:
        return _two_cheeks(_tail(board, pair, fit), pair, length)
    side = A if against == RIDGE_A else B
    if fit == SLID:
        length += Off(pair.value(SLIDE, 'hip: more'), True).along(board.lines)
    mark = length - Off(pair.value(SHORT, f'hip: ridge {side}'), True).along(board.lines)
    cut = board.cheek(mark, LONGER[side], pair.hip_cheek(side, board.lines), start=LONGER[side])
    board = _tail(board, pair, fit).sawn('upper', cut)
    return board.told(at_mark=board.faces['upper'].crosses((0, 0, 0), (1, 0, 0))[0] - mark)


def _stood_hip(pair: Pair, against: str, fit: str) -> Member:
    """Over the plates' corner, or slid from there towards eave A, square to the hip."""
    along, over = pair.uphill()
    slide = pair.value(SLIDE, 'slide') if fit == SLID else 0.0
    return _hip(pair, against, fit).stood((over * slide, -along * slide, 0), (along, over))


def _two_cheeks(board: Board, pair: Pair, length: float) -> Board:
    """Against the common of A through the mark on the center line; from the point on that cheek, aside, against B's."""
    mark = length - Off(pair.value(SHORT, 'hip: commons'), True).along(board.lines)
    point = array([mark, 0.0, 0.0])
    for side in (A, B):
        how = pair.hip_cheek(OTHER[side], board.lines)
        if how.top is None:  # the saw follows the plumb line through the point
            how = replace(how, back=None)
        cut = flat(board.cheek(mark, -LONGER[side], how).normal, point)
        board = board.sawn(f'upper {side}', cut)
        aside = pair.value(SHORT, 'aside to B')
        point = cut.crosses((0, LONGER[B] * aside, 0), (1, 0, 0))
    return board


def _tail(board: Board, pair: Pair, fit: str) -> Board:
    """Two cheeks to a point where the eaves meet; a slid hip's is cut to fit, nothing is tabled for it."""
    end = -pair.hip_along(OVERHANG)
    if fit == SLID:
        return board.plumb_cut('lower', end + 6, upper=False)
    for side in (A, B):
        how = pair.hip_cheek(side, board.lines)
        cut = board.cheek(end, LONGER[side], how, start=LONGER[side], upper=False)
        board = board.sawn(f'lower {side}', cut)
    return board


def two_pitches(read: Reading, label: str, by_blade: bool, against: str, fit: str) -> Assembly:
    """Return the assembly of a pair of pitches, as the tables label it."""
    pair = Pair(read, label, by_blade)
    members = {
        'plate A': box((0, 0, -3.5), (FAR, SET_SEAT, 0)),
        'plate B': box((0, SET_SEAT, -3.5), (SET_SEAT, FAR, 0)),
        'fascia A': read.member('fascia A', lambda: _fascia(pair, A)),
        'fascia B': read.member('fascia B', lambda: _fascia(pair, B)),
        'roof A': plane((0, -pair.slope[A], 1), (0, 0, HEIGHT)),
        'roof B': plane((-pair.slope[B], 0, 1), (0, 0, HEIGHT)),
        'hip': read.member('hip', lambda: _stood_hip(pair, against, fit)),
    }
    touches, lies = [], []
    for side, place, uphill in ((A, lambda x: (x, 0, 0), (0, 1)), (B, lambda y: (0, y, 0), (1, 0))):
        for number in range(1, int((pair.run[OTHER[side]] - 8) / SPACING) + 1):
            key = f'jack {side}{number}'
            stands = place(number * SPACING)
            members[key] = read.member(
                key, lambda s=side, n=number, at=stands, up=uphill: _jack(pair, s, n, fit).stood(at, up)
            )
            touches += [Touch(key, 'upper', 'hip', 'right' if side == A else 'left'), *_on_plate(key, side)]
            lies.append(Lies(key, ('top',), f'roof {side}', 'face'))
    _against(members, touches, pair, read, against)
    _fitted(members, touches, lies, pair, read, fit)
    return Assembly(members, touches, lies)


def _on_plate(key: str, side: str) -> list[Touch]:
    axis = 'y' if side == A else 'x'
    return [
        Touch(key, 'seat', f'plate {side}', 'z+', 0.3),  # the steeper one's is shorter than the plate is wide
        Touch(key, 'heel', f'plate {side}', f'{axis}-'),
        Touch(key, 'lower', f'fascia {side}', f'{axis}+'),
    ]


def _fascia(pair: Pair, side: str):
    out, other = pair.overhang(side), pair.overhang(OTHER[side])
    if side == A:
        return box((-other - 1, -out - 1, -20), (FAR, -out, 12))
    return box((-out - 1, -other, -20), (-out, FAR, 12))


def _against(members, touches, pair, read, against) -> None:
    """Add the ridge, or the two commons, that the hip stands against."""
    run_a, run_b = pair.run[A], pair.run[B]
    if against == BETWEEN:
        half = RAFTER / 2
        members['common A'] = read.member(
            'common A', lambda: _common(pair, A, 0).stood((run_b, 0, 0), (0, 1))
        )
        members['common B'] = read.member(
            'common B', lambda: _common(pair, B, half).stood((0, run_a, 0), (1, 0))
        )
        touches += [
            Touch('hip', 'upper A', 'common A', 'left', 0.4),
            Touch('hip', 'upper B', 'common B', 'right', 0.4),
            Touch('common B', 'upper', 'common A', 'left', 0.25),
            *_on_plate('common A', A),
            *_on_plate('common B', B),
        ]
    elif against == RIDGE_A:
        members['ridge'] = box((run_b - 8, run_a - RIDGE / 2, 10), (FAR, run_a + RIDGE / 2, 60))
        touches.append(Touch('hip', 'upper', 'ridge', 'y-'))
    else:
        members['ridge'] = box((run_b - RIDGE / 2, run_a - 8, 10), (run_b + RIDGE / 2, FAR, 60))
        touches.append(Touch('hip', 'upper', 'ridge', 'x-'))


def _fitted(members, touches, lies, pair, read, fit) -> None:
    """Add how the hip's top lies in the planes, and how its tail meets the fascias."""
    if fit != SLID:
        touches += [Touch('hip', 'lower A', 'fascia A', 'y+'), Touch('hip', 'lower B', 'fascia B', 'x+')]
    if fit == BACKED:
        lies += [Lies('hip', (f'top {side}',), f'roof {side}', 'face') for side in (A, B)]
        return
    lies.append(Lies('hip', ('top', 'left'), 'roof B', 'face'))
    if fit == SLID:
        lies.append(Lies('hip', ('top', 'right'), 'roof A', 'face'))
        _slid_marks(members, lies, pair, read)
        return
    members['gap A'] = read.member(
        'gap A', lambda: plane((0, -pair.slope[A], 1), array([0, 0, HEIGHT - pair.value(FIT, 'gap A')]))
    )
    lies.append(Lies('hip', ('top', 'right'), 'gap A', 'face'))


def _slid_marks(members, lies, pair: Pair, read) -> None:
    """Add marks on the sides of a hip that is not slid, moved as the jacks and the hip's end are: on the slid one's."""
    for side, face in ((A, 'right'), (B, 'left')):
        members[f'moved {side}'] = read.member(f'moved {side}', lambda s=side: _moved(pair, s))
        lies.append(Lies(f'moved {side}', ('mark',), 'hip', face))
    members['end'] = read.member('end', lambda: _slid_end(pair))
    members['over A'] = plane((0, 1, 0), (0, pair.run[A], 0))
    lies.append(Lies('end', ('mark',), 'over A', 'face'))


def _moved(pair: Pair, side: str) -> Member:
    along, over = pair.uphill()
    head, slope = ('A less', -pair.slope[A]) if side == A else ('B more', pair.slope[B])
    if pair.by_blade:
        level = pair.value(SLIDE, f'{head}: level')
    else:
        level = pair.value(SLIDE, f'{head}: along') / sqrt(1 + slope**2)
    half = -LONGER[side] * HIP / 2  # the side that looks at A is on the right
    mark = array([over * half, -along * half, 0]) + 20 * array([along, over, 0])
    return point(mark + (array([0, -level, 0]) if side == A else array([level, 0, 0])))


def _slid_end(pair: Pair) -> Member:
    """Where the slid hip's center line is to be over A's run: its own length on, and what it is longer by."""
    along, over = pair.uphill()
    slide, more = pair.value(SLIDE, 'slide'), pair.value(SLIDE, 'hip: more')
    return point(array([over * slide, -along * slide, 0]) + (RUN / over + more) * array([along, over, 0]))
