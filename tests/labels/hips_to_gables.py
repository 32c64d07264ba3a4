"""Groups E to I: hips, jacks, cheek cuts, trim, gables."""

from __future__ import annotations

from oracle import cuts, framing_square, hip_ends, shortening, trim
from oracle.corner import hip_length, jack_difference, jack_points
from oracle.rounding import decimal, degrees
from skewed import HIP, RAFTER, RIDGE, SPACINGS

from labels.expected import BY_PITCH, THICKNESSES, Labels, by, col


def thousandths(number) -> str:
    return decimal(number, 3)


def tenths(number) -> str:
    return decimal(number, 1)


def hips() -> list[Labels]:
    """Return the tables of hips and valleys."""
    return [
        Labels(
            'hips', 'Hips and valleys', 'in 12', BY_PITCH,
            (
                col('plumb cut', cuts.hip_plumb_cut, degrees),
                col('level cut', cuts.hip_level_cut, degrees),
                col('per foot', lambda at: hip_length(at, 12), thousandths),
                col('backing', cuts.backing, degrees),
                col('drop: plumb', lambda at: cuts.drop_plumb(at, HIP)),
                col('drop: square', lambda at: cuts.drop_square(at, HIP)),
            ),
            ('cuts on the side, from square across', 'per foot of common run', 'backing of each face, from the square top',
             'drop plumb, and square to the edge, for the set thickness'),
        ),
        Labels('drop-plumb', 'Drops, plumb', 'in 12', BY_PITCH, by(THICKNESSES, cuts.drop_plumb),
               ('plumb', 'where the planes meet to the square top, by thickness of the hip'), 'thickness of the hip, in'),
        Labels('drop-square', 'Drops, square to the edge', 'in 12', BY_PITCH, by(THICKNESSES, cuts.drop_square),
               ("square to the hip’s edge", 'also how far a backed face goes down its side'), 'thickness of the hip, in'),
    ]  # fmt: skip


def jacks() -> list[Labels]:
    """Return the table of jacks."""
    return [
        Labels(
            'jacks', 'Jacks: differences and deductions', 'in 12', BY_PITCH,
            (
                *by(SPACINGS, jack_difference),
                col('off: hip', lambda at: shortening.jack_at_hip(at, HIP)[1]),
                col('off: ridge', lambda at: shortening.common_at_ridge(at, RIDGE)[1]),
                col('points', lambda at: jack_points(at, HIP, RAFTER)),
            ),
            ('along the top edge', 'difference per space on center', 'off: center line to face, at a hip or valley, and of a valley jack at the ridge',
             'points: short point to long point'),
        )
    ]  # fmt: skip


def cheeks() -> list[Labels]:
    """Return the tables of cheek cuts."""
    figure = framing_square.figure_against_12
    return [
        Labels(
            'cheeks', 'Cheek cuts, blade at 45°', 'in 12', BY_PITCH,
            (
                col('jack: side', cuts.jack_saw, degrees),
                col('jack: top', cuts.jack_cheek, degrees),
                col('jack: 12 &', lambda at: figure(cuts.jack_cheek(at))),
                col('hip: side', cuts.hip_saw, degrees),
                col('hip: top', cuts.hip_cheek, degrees),
                col('hip: 12 &', lambda at: figure(cuts.hip_cheek(at))),
            ),
            ('side: on the side, from square across', 'the blade tilted 45°', "top: on the top edge, from square across, the hip’s left square",
             '12 &: the square for that line, marked along the 12', 'a valley as a hip'),
        ),
        Labels(
            'backed-cheeks', 'Cheek cuts of backed hips', 'in 12', BY_PITCH,
            (
                col('ridge: top', cuts.backed_cheek_at_ridge, degrees),
                col('ridge: 12 &', lambda at: figure(cuts.backed_cheek_at_ridge(at))),
                col('common: top', cuts.backed_cheek_at_common, degrees),
                col('common: 12 &', lambda at: figure(cuts.backed_cheek_at_common(at))),
            ),
            ('top: on the backed face, from square across the hip, against a ridge or a common of that side',
             '12 &: the square for that line, marked along the 12', 'on the side as any hip'),
        ),
        Labels(
            'set-backs', 'Set-backs of hips and valleys', 'in 12', BY_PITCH,
            by(THICKNESSES, lambda at, t: hip_ends.set_back(at, t)[1]),
            ('along the top edge', "mark on the center line to each side’s plumb line: ridge, commons, tail, and a valley",
             'half of short to long point'),
            'thickness of the hip or valley itself, in',
        ),
    ]  # fmt: skip


def rafters_set(length, spacing) -> int:
    """Return how many rafters a carpenter nails up from one end to the other (common practice, no source)."""
    first, last = (0, RAFTER), (length - RAFTER, length)
    nailed, center = [first], spacing
    while center + RAFTER / 2 <= last[0]:
        nailed.append((center - RAFTER / 2, center + RAFTER / 2))
        center += spacing
    return len([*nailed, last])


def trim_and_gables() -> list[Labels]:
    """Return the tables of trim and of gables."""
    return [
        Labels(
            'trim', 'Miters of fascia and trim, and sheathing', 'in 12', BY_PITCH,
            (
                col('square: miter', lambda at: trim.miter(at, trim.standing(at)), degrees),
                col('square: bevel', lambda at: trim.bevel(at, trim.standing(at)), degrees),
                col('flat: miter', lambda at: trim.miter(at, trim.lying(at)), degrees),
                col('flat: bevel', lambda at: trim.bevel(at, trim.lying(at)), degrees),
                col('sheathing', trim.sheathing, degrees),
                col('its 12 &', trim.sheathing_figure),
            ),
            ('miter on the face, from square across', 'bevel: blade from square', 'square: board square to the slope',
             'flat: lying in the roof plane', 'sheathing from the edge along the eave, 12 & along that edge and up the slope',
             'a plumb fascia: 0 and 45'),
        ),
        Labels(
            'gable-and-area', 'Gable studs and roof area', 'in 12', BY_PITCH,
            (
                *by(SPACINGS, trim.stud_difference),
                col('top cut', trim.stud_top, degrees),
                col('area', trim.area_factor, thousandths),
                col('of 100', lambda at: 100 * trim.area_factor(at), tenths),
            ),
            ('plumb', 'per space on center', "top cut on the stud’s side, from square", 'roof area over level plan area'),
        ),
        Labels(
            'rafters-needed', 'Rafters that a roof’s length needs', 'ft',
            tuple((str(feet), 12 * feet) for feet in range(8, 56, 2)),
            by(SPACINGS, rafters_set, str),
            ('rafters on one side, one flush with each end', 'length outer face to outer face of these',
             'on center by marks from one of them'),
        ),
    ]  # fmt: skip
