"""The faces of cards: a row a pitch, or the runs of one pitch."""

from __future__ import annotations

from fractions import Fraction

from oracle import cuts
from oracle.corner import common_length, hip_length, jack_difference
from oracle.rounding import decimal, degrees, part
from skewed import HIP, LONGEST_FT, SPACINGS

from labels.expected import BY_PITCH, Labels, by, col
from labels.hips_to_gables import thousandths
from labels.pitch_pages import RUNS, of_run

LENGTHS = dict(
    zip(('common inches', 'hip, valley inches', 'rise inches'), (runs.length for runs in RUNS), strict=True)
)
MEANINGS = {
    'plumb, com. side': 'plumb cut of commons and jacks, on the side',
    'level, com. side': 'level cut, on the side: the seat',
    'plumb, hip side': 'plumb cut of hip and valley, on the side',
    'com. inches per ft': 'common’s length, along the top edge, in a foot of run',
    'hip inches per ft': 'hip’s or valley’s, in a foot of the common’s run',
    'jacks inches': 'each longer than the last, along the top edge, so far apart on center',
    'cheek, jack top': 'across the jack’s top edge',
    'cheek, hip top': 'across the hip’s top edge, left square',
    'backing tilt': 'tilt for each side of a hip’s top',
    'hip drop inches': 'plumb, for a hip 3 1/2 in thick',
}
"""What the back of a card says of a column: words that must stand beside its name."""


def all_pitches() -> Labels:
    """Return the face of several pitches."""
    jacks = {f'jacks inches at {said}': on for said, on in SPACINGS.items()}
    return Labels(
        'card', 'Degrees: from square across', 'in 12', BY_PITCH,
        (
            col('plumb, com. side', cuts.plumb_cut, degrees),
            col('level, com. side', cuts.level_cut, degrees),
            col('plumb, hip side', cuts.hip_plumb_cut, degrees),
            col('com. inches per ft', lambda at: common_length(at, 12), thousandths),
            col('hip inches per ft', lambda at: hip_length(at, 12), thousandths),
            *by(jacks, jack_difference),
            col('cheek, jack top', cuts.jack_cheek, degrees),
            col('cheek, hip top', cuts.hip_cheek, degrees),
            col('backing tilt', cuts.backing, degrees),
            col('hip drop inches', lambda at: cuts.drop_plumb(at, HIP)),
        ),
        (),
    )  # fmt: skip


def of_inches(at, title: str, length) -> Labels:
    """Return a face of every inch: feet down, inches across."""
    feet = tuple((str(number), 12 * number) for number in range(LONGEST_FT + 1))
    inches = {str(number): number for number in range(12)}
    return Labels(
        '', title, 'ft in', feet, by(inches, lambda foot, inch: of_run(length, at, foot + inch), str), ()
    )


def of_feet(at) -> Labels:
    """Return the face of runs by the foot."""
    feet = tuple((str(number), 12 * number) for number in range(1, LONGEST_FT + 1))
    return Labels('', 'Lengths by the foot of run', 'run ft', feet, _lengths(at), ())


def to_add(at, finest: int) -> Labels:
    """Return the face of odd inches, and of parts of an inch to the finest."""
    parts = [Fraction(n, finest) for n in range(1, finest)]
    odd = tuple((part(run), run) for run in (*map(Fraction, range(1, 12)), *parts))
    return Labels('', 'Odd inches of run, to add', 'run in', odd, _lengths(at), ())


def _lengths(at):
    return by(LENGTHS, lambda run, length: length(at, run))


def line_of_cuts(at) -> str:
    """Return what the foot of a pitch's card says."""
    return (
        f'From square, on the side: plumb cut {degrees(cuts.plumb_cut(at))}, hip {degrees(cuts.hip_plumb_cut(at))}; '
        f'on the top edge: cheek of jacks {degrees(cuts.jack_cheek(at))}, hip {degrees(cuts.hip_cheek(at))}. '
        f'Backing: tilt {degrees(cuts.backing(at))}. '
        f'Per foot of run {thousandths(common_length(at, 12))} in, hip {thousandths(hip_length(at, 12))} in.'
    )


def parts_of_an_inch() -> dict[str, str]:
    """Return each sixteenth in thousandths."""
    return {part(Fraction(n, 16)): decimal(Fraction(n, 16), 3) for n in range(1, 17)}
