"""Groups B and D: shortening, tails."""

from __future__ import annotations

from fractions import Fraction

from oracle import hip_ends, shortening, tails
from oracle.corner import corner
from oracle.rounding import part

from labels.expected import BY_PITCH, DEPTHS, THICKNESSES, Labels, by, col
from labels.seats import LEAST_LEFT

ANY = corner(Fraction(9))
ALL_THICKNESSES = {
    **THICKNESSES, '2': Fraction(2), '3': Fraction(3), '4': Fraction(4), '4 1/2': Fraction(9, 2),
}  # fmt: skip
LEVEL_ROWS = tuple(sorted(ALL_THICKNESSES.items(), key=lambda named: named[1]))
OVERHANGS = {str(out): Fraction(out) for out in (1, 6, 12, 16, 18, 20, 24)}


def ridge() -> list[Labels]:
    """Return the tables of shortening."""
    along = (
        'along the top edge',
        'center line’s plumb line to the face’s',
        'by the thickness of what is met',
    )
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
                'level, center line to face, by the thickness of what is met', 'common at a ridge: half',
                'shed on a ledger: all, wall to face',
                'hip at a ridge or between commons, jack at a hip: half of the 45-degree thickness',
                "end common: a ridge’s theoretical end to its sawn end, hips between commons, by those",
            ),
        ),
        Labels(
            'ridge-ends', 'End common, hips on the ridge', 'ridge', tuple(THICKNESSES.items()),
            by(THICKNESSES, lambda own, hip: shortening.past_end_between_hips(ANY, own, hip)),
            ("level, a ridge’s theoretical end to its sawn end", 'each hip with one cheek on its side of the ridge',
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
            by(THICKNESSES, shortening.sits_down), ('plumb', "where the roof planes meet to the ridge’s square top"),
            'thickness of the ridge, in',
        ),
    ]  # fmt: skip


def _marked(figure):
    """Return a tail's cell with the mark of stock that no notch leaves 3 1/2 in of."""
    return lambda at, depth: part(figure(at, depth)) + '§' * (depth <= LEAST_LEFT)


def tail() -> list[Labels]:
    """Return the tables of tails."""
    return [
        Labels('tail-common', 'Tails of commons and hip jacks', 'in 12', BY_PITCH, by(OVERHANGS, tails.common_tail),
               ('along the top edge', 'plate line to tail end', 'by the level overhang'), 'overhang, in, level'),
        Labels('tail-hip', 'Tails of hips and valleys', 'in 12', BY_PITCH, by(OVERHANGS, tails.hip_tail),
               ('along the top edge on its center line', 'corner of the plates to where the eave lines meet',
                "to a hip’s point, a valley’s hollow; by the level overhang of the commons"), 'overhang of the commons, in, level'),
        Labels('tail-fall', 'Fall of tails', 'in 12', BY_PITCH, by(OVERHANGS, tails.fall),
               ('plumb', 'top edge at the plate line to top edge at the end'), 'overhang, in, level'),
        Labels('tail-plumb-cut', 'Plumb tail cuts', 'in 12', BY_PITCH, by(DEPTHS, _marked(tails.plumb_cut_length), str),
               ('plumb', 'top edge to underside')),
        Labels('tail-square-cut', 'Square tail cuts, lower corner set in', 'in 12', BY_PITCH,
               by(DEPTHS, _marked(tails.square_cut_set_in), str),
               ('level', 'upper corner of the cut to the plumb line of the lower one')),
    ]  # fmt: skip
