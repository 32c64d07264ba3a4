"""The pages of one pitch, the glance, and what a square should carry."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from oracle import cuts, framing_square
from oracle.corner import common_length, hip_length, hip_run, jack_difference, jack_length, rise
from oracle.rounding import degrees, part
from skewed import HIP, LONGEST_FT, SPACINGS

from labels.expected import BY_PITCH, Labels, by, col
from labels.hips_to_gables import thousandths


@dataclass(frozen=True)
class Runs:
    """A table of runs at one pitch: title, the words under it, and the length of a run."""

    title: str
    left: str
    """Under the title on a left-hand page."""
    length: object
    right: object
    """Figures under the title on a right-hand page, from a corner."""


RUNS = (
    Runs(
        'Common rafter', 'inches along the slope, plate line to ridge center', common_length,
        lambda at: f'plumb cut {degrees(cuts.plumb_cut(at))} · {thousandths(common_length(at, 12))} in per foot',
    ),
    Runs(
        'Hip or valley', 'inches along its slope, corner to ridge center', hip_length,
        lambda at: f'plumb cut {degrees(cuts.hip_plumb_cut(at))} · {thousandths(hip_length(at, 12))} in per foot',
    ),
    Runs(
        'Rise', 'inches plumb, plate line to ridge center line', rise,
        lambda at: f'{thousandths(rise(at, 12))} in per foot of run',
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


def of_jack(at, spacing, number: int) -> str:
    """Return a jack's length from the corner, blank past the longest run."""
    return part(jack_length(at, spacing * number)) if spacing * number <= 12 * LONGEST_FT else ''


def _tongue(angle) -> str:
    return f'12 & {part(framing_square.figure_against_12(angle))}'


def _held(run, up) -> str:
    return ' & '.join(map(part, framing_square.arms(run, up)))


def values(at) -> dict[tuple[str, str], str]:
    """Return what the page of cuts and lengths says, by heading and label."""
    jacks = {
        ('Jacks', f'Difference at {said}'): part(jack_difference(at, on)) for said, on in SPACINGS.items()
    }
    return {
        ('Common', 'Plumb cut'): degrees(cuts.plumb_cut(at)),
        ('Common', 'Level cut'): degrees(cuts.level_cut(at)),
        ('Common', 'Per foot of run'): thousandths(common_length(at, 12)),
        ('Common', 'Per foot of run: to the nearest 1/16'): part(common_length(at, 12)),
        ('Common', 'Body & tongue'): _held(12, rise(at, 12)),
        **jacks,
        ('Jacks', 'Cheek, top face'): degrees(cuts.jack_cheek(at)),
        ('Jacks', 'Cheek, top face: on the square'): _tongue(cuts.jack_cheek(at)),
        ('Hip and valley', 'Plumb cut'): degrees(cuts.hip_plumb_cut(at)),
        ('Hip and valley', 'Level cut'): degrees(cuts.hip_level_cut(at)),
        ('Hip and valley', 'Per foot of common run'): thousandths(hip_length(at, 12)),
        ('Hip and valley', 'Per foot of common run: to the nearest 1/16'): part(hip_length(at, 12)),
        ('Hip and valley', 'Body & tongue'): _held(hip_run(at, 12), rise(at, 12)),
        ('Hip and valley', 'Cheek, square top'): degrees(cuts.hip_cheek(at)),
        ('Hip and valley', 'Cheek, square top: on the square'): _tongue(cuts.hip_cheek(at)),
        ('Hip and valley', 'Backing, each side'): degrees(cuts.backing(at)),
        ('Hip and valley', 'Drop, 3 1/2 in hip'): part(cuts.drop_plumb(at, HIP)),
    }  # fmt: skip


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
                col('backing blade tilt', cuts.backing, degrees),
            ),
            (),
        ),
    ]  # fmt: skip
