"""The columns that a card of all pitches may have, and which of them go on first."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction

from tablegen import text
from tablegen.figures import Figure
from tablegen.rows import PitchValues
from tablegen.settings import Settings

FIRST_SPACINGS = (Fraction(16), Fraction(24))
"""Spacings of jacks that are wanted before others (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Column:
    """One column."""

    name: str
    """What it is called where the program says what is on a card."""
    head: tuple[str, str]
    """Two lines."""
    meaning: str
    figure: Callable[[PitchValues], Figure]


def columns(settings: Settings) -> tuple[list[Column], list[Column]]:
    """Return all columns in the order they stand in, and in the order in which they are wanted."""
    jacks = {
        spacing: Column(
            f'jacks at {text.rational(spacing)}',
            ('jacks', f'at {text.rational(spacing)}'),
            f'one jack longer than the next, {text.rational(spacing)} in on center',
            lambda values, place=place: values.jack_differences[place],
        )
        for place, spacing in enumerate(settings.spacings)
    }
    plumb = Column(
        'plumb cut', ('plumb', 'cut'), 'common, from square across the side', lambda values: values.plumb_cut
    )
    level = Column('level cut', ('level', 'cut'), 'common, the seat', lambda values: values.level_cut)
    hip_plumb = Column(
        'plumb cut of the hip',
        ('plumb', 'hip'),
        'plumb cut of hip and valley',
        lambda values: values.hip_plumb_cut,
    )
    common = Column(
        'common per foot',
        ('com.', 'per ft'),
        'common’s length in a foot of run',
        lambda values: values.common_per_foot,
    )
    hip = Column(
        'hip per foot',
        ('hip', 'per ft'),
        'hip’s or valley’s, by the common’s run',
        lambda values: values.hip_per_foot,
    )
    side_jack = Column(
        'cheek of jacks',
        ('cheek', 'jack'),
        'across its top edge, from square',
        lambda values: values.jack_cheek,
    )
    side_hip = Column(
        'cheek of the hip',
        ('cheek', 'hip'),
        'across its square top, from square',
        lambda values: values.hip_cheek,
    )
    backing = Column(
        'backing', ('back-', 'ing'), 'bevel of each side of a hip’s top', lambda values: values.backing_bevel
    )
    drop = Column(
        'drop of the hip',
        ('hip', 'drop'),
        f'plumb, for a hip {text.rational(settings.hip_thickness)} in thick with no backing',
        lambda values: values.hip_drop,
    )
    stand = [plumb, level, hip_plumb, common, hip, *jacks.values(), side_jack, side_hip, backing, drop]
    first = [jacks[spacing] for spacing in FIRST_SPACINGS if spacing in jacks] or list(jacks.values())[:1]
    rest = [column for column in jacks.values() if column not in first]
    wanted = [
        plumb,
        common,
        hip,
        *first[:1],
        side_jack,
        side_hip,
        *first[1:],
        hip_plumb,
        backing,
        drop,
        *rest,
        level,
    ]
    return stand, wanted
