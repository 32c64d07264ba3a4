"""Groups B to D: shortening, seats, tails."""

from __future__ import annotations

from fractions import Fraction

from oracle import hip_ends, seats, shortening, tails
from oracle.corner import corner
from oracle.rounding import limit, part
from skewed import HIP

from labels.expected import BY_PITCH, DEPTHS, THICKNESSES, Labels, by, col

ANY = corner(Fraction(9))
ALL_THICKNESSES = {
    **THICKNESSES, '2': Fraction(2), '3': Fraction(3), '4': Fraction(4), '4 1/2': Fraction(9, 2),
}  # fmt: skip
LEVEL_ROWS = tuple(sorted(ALL_THICKNESSES.items(), key=lambda named: named[1]))
OVERHANGS = {str(out): Fraction(out) for out in (1, 6, 12, 16, 18, 20, 24)}
SEATS = {'1 1/2': Fraction(3, 2), '3 1/2': Fraction(7, 2), '5 1/2': Fraction(11, 2)}
COMMON_SEAT = SEATS['3 1/2']
MARKED = ('', '†', '‡')


def ridge() -> list[Labels]:
    """Return the tables of shortening."""
    along = ('along the top edge', "center line's plumb line to the face's")
    return [
        Labels(
            'shortening-level', 'Shortening, level, any pitch', 'thickness', LEVEL_ROWS,
            (
                col('common', lambda t: shortening.common_at_ridge(ANY, t)[0]),
                col('shed, ledger', lambda t: hip_ends.shed_on_ledger(ANY, t)),
                col('hip, jack', lambda t: shortening.hip_at_ridge(ANY, t)[0]),
                col('end common', lambda t: shortening.past_end_between_commons(ANY, t)),
            ),
            (
                'level', 'center line to face', 'common at a ridge: half', 'shed on a ledger: all, wall to face',
                'hip at a ridge or between commons, jack at a hip: half of the 45-degree thickness',
                "end common: a ridge's theoretical end to its sawn end, hips between commons",
            ),
        ),
        Labels(
            'ridge-ends', 'End common, hips on the ridge', 'ridge', tuple(THICKNESSES.items()),
            by(THICKNESSES, lambda own, hip: shortening.past_end_between_hips(ANY, own, hip)),
            ("level, a ridge's theoretical end to its sawn end", 'each hip with one cheek on its side of the ridge',
             'what the ridge runs past, and what comes off the end common'), 'thickness of the hips, in',
        ),
        Labels(
            'shortening-common', 'Shortening of commons at a ridge', 'in 12', BY_PITCH,
            by(THICKNESSES, lambda at, t: shortening.common_at_ridge(at, t)[1]), along,
            'thickness of the ridge, in',
        ),
        Labels(
            'shortening-hip', 'Shortening of hips and valleys', 'in 12', BY_PITCH,
            by(THICKNESSES, lambda at, t: shortening.hip_at_ridge(at, t)[1]), along,
            'thickness of the ridge, or of the commons, in',
        ),
        Labels(
            'shortening-jack', 'Shortening of jacks at a hip or valley', 'in 12', BY_PITCH,
            by(THICKNESSES, lambda at, t: shortening.jack_at_hip(at, t)[1]), along,
            'thickness of the hip or valley, in',
        ),
        Labels(
            'ridge-sits-down', 'How far a ridge sits down', 'in 12', BY_PITCH,
            by(THICKNESSES, shortening.sits_down), ('plumb', "where the roof planes meet to the ridge's square top"),
            'thickness of the ridge, in',
        ),
    ]  # fmt: skip


def _left(seat: Fraction):
    """Return how the stock left is printed: with a mark past a quarter, and past a third, of the depth."""

    def cell(at, depth) -> str:
        deep = seats.notch(at, seat)
        return part(depth - deep) + MARKED[(deep > depth / 4) + (deep > depth / 3)]

    return cell


def _height(at, depth, seat):
    return seats.height_above_plate(at, depth, seat)


def seat() -> list[Labels]:
    """Return the tables of bird's mouths."""
    found = []
    for said, wide in SEATS.items():
        found += [
            Labels(
                f'height-{said.replace(" ", "-").replace("/", "-")}', f'Height above plate, seat {said} in', 'in 12',
                BY_PITCH,
                (
                    col('heel', lambda at, wide=wide: seats.heel(at, wide)),
                    *by(DEPTHS, lambda at, depth, wide=wide: _height(at, depth, wide)),
                ),
                ('plumb', 'heel, seat to underside at the outside of plate', "plate's top to top edge there"),
            ),
            Labels(
                f'stock-left-{said.replace(" ", "-").replace("/", "-")}', f'Stock left, seat {said} in', 'in 12',
                BY_PITCH,
                (
                    col('notch', lambda at, wide=wide: seats.notch(at, wide)),
                    *by(DEPTHS, _left(wide), str),
                ),
                ('square to the edge', "notch, underside to the notch's corner", 'from there to the top edge'),
            ),
        ]  # fmt: skip
    return [*found, *map(_hip_seat, ('2×6', '2×8', '2×10', '2×12')), *_longest()]


def _hip_seat(name: str) -> Labels:
    depth = DEPTHS[name]

    def low_by(at):
        dropped = seats.hip_height(at, _height(at, depth, COMMON_SEAT), HIP)
        return dropped - seats.height_of_seat(at, depth, COMMON_SEAT * Fraction(17, 12))

    return Labels(
        f'hip-seat-{name.replace("×", "x")}', f'Hip and valley seats, {name}', 'in 12', BY_PITCH,
        (
            col('common height', lambda at: _height(at, depth, COMMON_SEAT)),
            col('dropped height', lambda at: seats.hip_height(at, _height(at, depth, COMMON_SEAT), HIP)),
            col('dropped', lambda at: seats.hip_seat(at, _height(at, depth, COMMON_SEAT), depth, HIP)),
            col('backed', lambda at: seats.hip_seat(at, _height(at, depth, COMMON_SEAT), depth)),
            col('valley', lambda at: seats.valley_seat(at, _height(at, depth, COMMON_SEAT), depth, HIP)),
            col('17/12 low by', low_by),
        ),
        ('for a common seat of 3 1/2', 'heights plumb', "over the plates' corner", 'seats level'),
    )  # fmt: skip


def _longest() -> list[Labels]:
    return [
        Labels(
            f'longest-seat-{word}', f'Seats whose notch is a {word} of the depth', 'in 12', BY_PITCH,
            by(DEPTHS, lambda at, depth, share=share: seats.longest(at, depth, share), limit),
            ('level', 'outside of plate inwards'),
        )
        for word, share in (('quarter', Fraction(1, 4)), ('third', Fraction(1, 3)))
    ]  # fmt: skip


def tail() -> list[Labels]:
    """Return the tables of tails."""
    return [
        Labels('tail-common', 'Tails of commons and hip jacks', 'in 12', BY_PITCH, by(OVERHANGS, tails.common_tail),
               ('along the top edge', 'plate line to tail end', 'by the level overhang'), 'overhang, in, level'),
        Labels('tail-hip', 'Tails of hips and valleys', 'in 12', BY_PITCH, by(OVERHANGS, tails.hip_tail),
               ('along the top edge on its center line', 'corner of the plates to where the eave lines meet',
                'level overhang of the commons'), 'overhang of the commons, in, level'),
        Labels('tail-fall', 'Fall of tails', 'in 12', BY_PITCH, by(OVERHANGS, tails.fall),
               ('plumb', 'top edge at the plate line to top edge at the end'), 'overhang, in, level'),
        Labels('tail-plumb-cut', 'Plumb tail cuts', 'in 12', BY_PITCH, by(DEPTHS, tails.plumb_cut_length),
               ('plumb', 'top edge to underside')),
        Labels('tail-square-cut', 'Square tail cuts, lower corner set in', 'in 12', BY_PITCH,
               by(DEPTHS, tails.square_cut_set_in),
               ('level', 'upper corner of the cut to the plumb line of the lower one')),
    ]  # fmt: skip
