"""Group C: bird's mouths of commons, hips and valleys, with the marks beside their figures and where a dash stands."""

from __future__ import annotations

from fractions import Fraction

from fifty_digits import mp, mpf
from msgspec import Struct
from oracle import seats, tails
from oracle.rounding import limit, part
from skewed import HIP, HIPS, RAFTERS, VALLEYS

from labels.expected import BY_PITCH, DEPTHS, Labels, by, col

SEATS = {'1 1/2': Fraction(3, 2), '3 1/2': Fraction(7, 2), '5 1/2': Fraction(11, 2)}
COMMON = '3 1/2'
COMMON_SEAT = SEATS[COMMON]
TABLED = ('2×6', '2×8', '2×10', '2×12')
LEAST_LEFT = Fraction(7, 2)
"""in over a notch with a tail: IRC 2024 R802.7.1.1, and from 2012 on from memory; authorities/residential-code.toml."""
DASH = '—'


def dashed(depth, seat, left) -> bool:
    """Return whether a dash stands: the seat longer than the stock is deep, or less than half of the stock left."""
    return not 0 < seat <= depth or 2 * left < depth


def marks(depth, left) -> str:
    """Return the marks of a notch: past a quarter of the depth, past a third; too little left under a tail."""
    notch = depth - left
    return ('', '†', '‡')[(notch > mpf(depth) / 4) + (notch > mpf(depth) / 3)] + '§' * (left < LEAST_LEFT)


class Sizes(Struct, frozen=True):
    """What a book's seats are worked out for."""

    rows: tuple
    """Labels and corners."""
    thickness: Fraction
    """Of hips and valleys."""
    rafters: str
    hips: str
    valleys: str


SKEWED = Sizes(BY_PITCH, HIP, RAFTERS, HIPS, VALLEYS)


def seat(sizes: Sizes = SKEWED) -> list[Labels]:
    """Return the tables of bird's mouths."""
    own = [(sizes.rafters, sizes.hips, sizes.valleys)]
    alike = [(name, name, name) for name in TABLED]
    members = []
    for rafters, hips, valleys in [*([] if own[0] in alike else own), *alike]:
        members += [_hips(sizes, rafters, hips), _valleys(sizes, rafters, valleys)]
    return [*_commons(sizes), *members, _old_rule(sizes), *_longest(sizes)]


def _commons(sizes: Sizes) -> list[Labels]:
    found = []
    for said, wide in SEATS.items():
        key = said.replace(' ', '-').replace('/', '-')

        def cell(at, depth, figure, wide=wide):
            left = seats.left(at, depth, wide)
            return DASH if dashed(depth, wide, left) else part(figure) + marks(depth, left)

        def height(at, depth, wide=wide, cell=cell):
            return cell(at, depth, seats.height_above_plate(at, depth, wide))

        def left(at, depth, wide=wide, cell=cell):
            return cell(at, depth, seats.left(at, depth, wide))

        heel, notch = (
            (lambda at, wide=wide: seats.heel(at, wide)),
            (lambda at, wide=wide: seats.notch(at, wide)),
        )
        found += [
            Labels(
                f'height-{key}', f'Height above plate, seat {said} in', 'in 12', sizes.rows,
                (col('heel', heel), *by(DEPTHS, height, str)),
                ('plumb: heel, seat to underside at the outside of plate', "by stock: height, plate’s top to top edge there"),
            ),
            Labels(
                f'stock-left-{key}', f'Stock left, seat {said} in', 'in 12', sizes.rows,
                (col('notch', notch), *by(DEPTHS, left, str)),
                ("square to the edge: notch, underside to the notch’s corner", 'by stock: left, from there to the top edge'),
            ),
        ]  # fmt: skip
    return found


def _height(at, depth):
    """Return the commons' height above plate, None where their own bird's mouth is dashed."""
    if dashed(depth, COMMON_SEAT, seats.left(at, depth, COMMON_SEAT)):
        return None
    return seats.height_above_plate(at, depth, COMMON_SEAT)


def _titled(member: str, rafters: str, own: str) -> tuple[str, str]:
    said = own if own == rafters else f'{own} with {rafters}'
    key = f'{member.lower()}-seat-{said.replace("×", "x").replace(" ", "-")}'
    return key, f'{member} seats, {said}' + ' rafters' * (own != rafters)


def _member(rafters: str, own: str, heel_of, seat_of):
    """Return the cells of a hip or valley: height, heel, and seat with its marks."""
    depth, stock = DEPTHS[rafters], DEPTHS[own]

    def with_height(figure):
        def cell(at) -> str:
            height = _height(at, depth)
            return DASH if height is None else figure(at, height)

        return cell

    def notched(figure):
        def cell(at, height) -> str:
            heel, level = heel_of(at, height, stock), seat_of(at, height, stock)
            left = stock - heel * level / mp.sqrt(
                heel**2 + level**2
            )  # the corner's height over the underside
            return DASH if dashed(stock, level, left) else figure(heel, level, left)

        return with_height(cell)

    return (
        with_height,
        notched(lambda heel, level, left: part(heel)),
        notched(lambda heel, level, left: part(level) + marks(stock, left)),
    )


def _hips(sizes: Sizes, rafters: str, own: str) -> Labels:
    key, title = _titled('Hip', rafters, own)
    columns = []
    for way, thickness in (('dropped', sizes.thickness), ('backed', 0)):
        with_height, heel, level = _member(
            rafters,
            own,
            lambda at, height, stock, thickness=thickness: seats.hip_heel(at, height, stock, thickness),
            lambda at, height, stock, thickness=thickness: seats.hip_seat(at, height, stock, thickness),
        )
        high = with_height(
            lambda at, height, thickness=thickness: part(seats.hip_height(at, height, thickness))
        )
        columns += [
            col(f'{way} height', high, str),
            col(f'{way} heel', heel, str),
            col(f'{way} seat', level, str),
        ]
    says = (
        f'common’s seat {COMMON}',
        'on the center line: height above plate and heel plumb, at the plates’ corner',
        'seat level, from there inwards',
    )
    return Labels(key, title, 'in 12', sizes.rows, tuple(columns), says)


def _valleys(sizes: Sizes, rafters: str, own: str) -> Labels:
    key, title = _titled('Valley', rafters, own)
    with_height, heel, level = _member(
        rafters,
        own,
        lambda at, height, stock: seats.valley_heel(at, height, stock, sizes.thickness),
        lambda at, height, stock: seats.valley_seat(at, height, stock, sizes.thickness),
    )
    columns = (
        col('plumb depth', lambda at: tails.hip_plumb_cut_length(at, DEPTHS[own])),
        col('height', with_height(lambda at, height: part(height)), str),
        col('heel', heel, str),
        col('seat', level, str),
        col('heel out', lambda at: seats.valley_back(at, sizes.thickness)),
    )
    says = (
        f'common’s seat {COMMON}',
        'plumb: depth, height over the inside corner, heel',
        'level: heel out, outwards of it, seat, from heel inwards',
    )
    return Labels(key, title, 'in 12', sizes.rows, columns, says)


def _old_rule(sizes: Sizes) -> Labels:
    def low(at, depth) -> str:
        height = _height(at, depth)
        if height is None:
            return DASH
        right = seats.hip_height(at, height, sizes.thickness)
        return part(right - seats.height_of_seat(at, depth, COMMON_SEAT * Fraction(17, 12)))

    return Labels(
        'old-rule', '17/12 low by: what the old rule costs', 'in 12', sizes.rows,
        by({name: DEPTHS[name] for name in TABLED}, low, str),
        ('plumb', f"how far a dropped hip on a seat of 17/12 of the common’s, {COMMON}, stands too low; by stock"),
    )  # fmt: skip


def _longest(sizes: Sizes) -> list[Labels]:
    def longest(share):
        def cell(at, depth) -> str:
            wide, left = seats.longest(at, depth, share), depth * (1 - share)
            return DASH if dashed(depth, wide, left) else limit(wide) + '§' * (left < LEAST_LEFT)

        return cell

    return [
        Labels(
            f'longest-seat-{word}', f'Longest seats, notch a {word} of the depth', 'in 12', sizes.rows,
            by(DEPTHS, longest(share), str), ('level', 'outside of plate inwards', 'rounded down; by stock'),
        )
        for word, share in (('quarter', Fraction(1, 4)), ('third', Fraction(1, 3)))
    ]  # fmt: skip
