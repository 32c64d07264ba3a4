"""The columns that a card of all pitches may have, and which of them go on first."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

from tablegen.numbers import text
from tablegen.numbers.figure import Figure
from tablegen.numbers.units import INCHES
from tablegen.settings import Settings
from tablegen.tables.pitch_values import PitchValues

FIRST_SPACINGS = (INCHES.spacing, INCHES.spacings[-1])
"""Spacings of jacks that are wanted before others (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Column:
    """One column."""

    name: str
    """What it is called where the program says what is on a card."""
    head: tuple[str, str, str]
    """What it is of, and on which face or in which unit: three lines."""
    meaning: str
    figure: Callable[[PitchValues], Figure]

    @property
    def said(self) -> str:
        """Return the head as it is read, without the spacing, so that all jacks share one meaning."""
        return ' '.join(self.head).replace('- ', '').partition(' at ')[0]

    def shortened(self) -> Column:
        """Return the column with a narrower head."""
        first, second, third = ('com.' if line == 'common' else line for line in self.head)
        return replace(self, head=(first, second, third))


def columns(settings: Settings) -> tuple[list[Column], list[Column]]:
    """Return all columns in the order they stand in, and in the order in which they are wanted."""
    jacks = {
        spacing: Column(
            f'jacks at {text.rational(spacing)}',
            ('jacks', 'inches', f'at {text.rational(spacing)}'),
            'each longer than the last, along the top edge, so far apart on center',
            _difference(place),
        )
        for place, spacing in enumerate(settings.spacings)
    }
    plumb = Column(
        'plumb cut',
        ('plumb,', 'common', 'side'),
        'plumb cut of commons and jacks, on the side',
        lambda values: values.plumb_cut,
    )
    level = Column(
        'level cut',
        ('level,', 'common', 'side'),
        'their level cut, on the side: the seat',
        lambda values: values.level_cut,
    )
    hip_plumb = Column(
        'plumb cut of the hip',
        ('plumb,', 'hip', 'side'),
        'plumb cut of hip and valley, on the side',
        lambda values: values.hip_plumb_cut,
    )
    common = Column(
        'common per foot',
        ('common', 'inches', 'per ft'),
        'a common’s length, along the top edge, in a foot of run',
        lambda values: values.common_per_foot,
    )
    hip = Column(
        'hip per foot',
        ('hip', 'inches', 'per ft'),
        'hip’s or valley’s, in a foot of the common’s run',
        lambda values: values.hip_per_foot,
    )
    side_jack = Column(
        'cheek of jacks',
        ('cheek,', 'jack', 'top'),
        'across the jack’s top edge',
        lambda values: values.jack_cheek,
    )
    side_hip = Column(
        'cheek of the hip',
        ('cheek,', 'hip', 'top'),
        'across the hip’s top edge, left square',
        lambda values: values.hip_cheek,
    )
    backing = Column(
        'backing',
        ('back-', 'ing', 'tilt'),
        'the blade’s tilt for each side of a hip’s top',
        lambda values: values.backing_bevel,
    )
    drop = Column(
        'drop of the hip',
        ('hip', 'drop', 'inches'),
        f'plumb, for a hip {text.rational(settings.hip_thickness)} in thick, its top left square',
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


def _difference(place: int) -> Callable[[PitchValues], Figure]:
    """Return what finds the difference of jacks at one of the spacings."""
    return lambda values: values.jack_differences[place]
