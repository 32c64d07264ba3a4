"""The pages of one pitch, the glance, and what a square should carry."""

from __future__ import annotations

from fractions import Fraction

from msgspec import Struct
from oracle import cuts
from oracle.corner import common_length, hip_length, jack_difference, jack_length, jack_to_points, rise
from oracle.rounding import degrees, part
from skewed import HIP, LONGEST_FT, RAFTER, SPACINGS

from labels.expected import BY_PITCH, Labels, by, col
from labels.hips_to_gables import thousandths


class Runs(Struct, frozen=True):
    """A table of runs at one pitch: what stands at the head of its pages, and the length of a run."""

    left: tuple[str, str]
    """Title of a left-hand page and the words under it."""
    length: object
    right: object
    """The same of a right-hand page, from a corner."""


RUNS = (
    Runs(
        ('Common rafter, inches', 'top edge, plate line to ridge center line'), common_length,
        lambda at: (f'Common rafter, plumb cut {degrees(cuts.plumb_cut(at))}',
                    'along the top edge; take deductions level'),
    ),
    Runs(
        ('Hip or valley, inches', 'by COMMON run; top edge, corner to ridge center'), hip_length,
        lambda at: (f'Hip or valley, plumb cut {degrees(cuts.hip_plumb_cut(at))}',
                    'by COMMON run; take deductions level'),
    ),
    Runs(
        ('Rise, inches', 'plumb, plate line to ridge center line'), rise,
        lambda at: (f'Rise, {thousandths(rise(at, 12))} in per foot of run',
                    'plumb, plate line to ridge center line'),
    ),
)  # fmt: skip
FEET = tuple((str(feet), feet) for feet in range(LONGEST_FT + 1))
INCHES = {f'{inches} in': inches for inches in range(12)}
SMALL = {part(Fraction(n, 16)): Fraction(n, 16) for n in range(1, 16)}
"""Small runs to add."""
JACKS = tuple((str(number), number) for number in range(1, LONGEST_FT + 1))


def of_run(length, at, run) -> str:
    """Return the figure of a run of the book, blank outside it."""
    return part(length(at, run)) if 0 < run <= 12 * LONGEST_FT else ''


def of_jack(at, spacing, number: int) -> dict[str, str]:
    """Return a jack's lengths from the corner by their heads, blank past the longest run."""
    run = spacing * number
    if run > 12 * LONGEST_FT:
        return dict.fromkeys(('line', 'long', 'short'), '')
    short, long = jack_to_points(at, run, HIP, RAFTER)
    return {'line': part(jack_length(at, run)), 'long': part(long), 'short': part(short)}


# All pitches in a row each ---------------------------------------------------------------------------------------


def glance() -> list[Labels]:
    """Return both pages of all pitches at a glance."""
    side, top = 'on the side, from square across', 'along the top edge, inches in a foot of common run'
    jacks = 'each jack longer than the last, inches along the top edge; spaced on center'
    cheek = 'cheek, top edge from square'
    spacings = {f'{jacks}: at {said} in': on for said, on in SPACINGS.items()}
    return [
        Labels(
            'glance_left', 'All pitches at a glance', 'in 12', BY_PITCH,
            (
                col(f'{side}: plumb, common', cuts.plumb_cut, degrees),
                col(f'{side}: level, common', cuts.level_cut, degrees),
                col(f'{side}: plumb, hip, valley', cuts.hip_plumb_cut, degrees),
                col(f'{side}: level, hip, valley', cuts.hip_level_cut, degrees),
                col(f'{top}: common', lambda at: common_length(at, 12), thousandths),
                col(f'{top}: hip, valley', lambda at: hip_length(at, 12), thousandths),
            ),
            (),
        ),
        Labels(
            'glance_right', 'Jacks, cheeks, backing', 'in 12', BY_PITCH,
            (
                *by(spacings, jack_difference),
                col(f'{cheek}: jack', cuts.jack_cheek, degrees),
                col(f'{cheek}: hip, not backed', cuts.hip_cheek, degrees),
                col('backing: blade tilt each face', cuts.backing, degrees),
            ),
            (),
        ),
    ]  # fmt: skip
