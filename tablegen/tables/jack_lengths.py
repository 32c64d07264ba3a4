"""The jacks of a pitch by their number from the corner: line length, long point and short point at each spacing."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from fractions import Fraction
from functools import partial

from msgspec import Struct

from tablegen.geometry import corner, shortening
from tablegen.geometry.pitch import Pitch
from tablegen.messages import message
from tablegen.numbers.exact import Exact, exact, sign
from tablegen.settings import Settings
from tablegen.tables.columns import Make, each
from tablegen.tables.table import Column, Table

JACK_LENGTHS = 'jack-lengths'
"""Name of the table, in data."""
STUBS = 2
"""Columns that name a row: pitch and number."""


class Jack(Struct, frozen=True):
    """One jack from the corner, at every spacing.

    A hip jack is measured from the plate line. A valley jack n spaces from its valley's ridge end is as long: from the
    ridge center line.
    """

    pitch: Pitch
    number: int
    lines: dict[Fraction, Exact]
    """Its line length, in, by spacing, those alone at which the runs have so many."""
    to_long: Exact
    """What comes off to its long point at the hip or valley, in, along the top edge."""
    to_short: Exact


def jack_table(settings: Settings) -> Table[Jack]:
    """Return the table of jacks as far as the runs go, each spacing to its own last one; each length is rounded once."""
    last, make = settings.runs.last, Make[Jack](settings)
    counts = {spacing: int(last // spacing) for spacing in settings.spacings}
    length_of = partial(make.length, measure=settings.measure)

    def subjects() -> Iterator[Jack]:
        for pitch in settings.pitches:
            at = pitch.corner
            off = shortening.along(shortening.jack_at_hip(settings.hip_thickness, at), pitch.slope)
            half = shortening.along(shortening.point_to_point(settings.rafter_thickness, at), pitch.slope) / 2
            to_long, to_short = off - half, off + half
            differences = [(spacing, corner.jack_difference(spacing, at)) for spacing in settings.spacings]
            for number in range(1, most_jacks(settings) + 1):
                lines = {spacing: number * one for spacing, one in differences if number <= counts[spacing]}
                yield Jack(pitch, number, lines, to_long, to_short)

    def lengths(key: str, less: Callable[[Jack], Exact]) -> tuple[Column[Jack], ...]:
        def length(it: Jack, spacing: Fraction) -> Exact | None:
            if spacing not in it.lines:
                return None
            found = it.lines[spacing] - less(it)
            return found if sign(found) > 0 else None

        return each(length_of, key, settings.spacings, length, f'jack_{key}', f'jack_{key}')

    lines = lengths('line', lambda it: exact(0))
    long_points = lengths('long_point', lambda it: it.to_long)
    short_points = lengths('short_point', lambda it: it.to_short)
    by_spacing = zip(lines, long_points, short_points, strict=True)
    columns = (
        make.pitch(lambda it: it.pitch),
        make.count('number', lambda it: it.number, head=message('head.jack_number')),
        *(column for spacing in by_spacing for column in spacing),
    )
    return make.table('jacks', JACK_LENGTHS, subjects, columns, datum='along_edge', stubs=STUBS)


def most_jacks(settings: Settings) -> int:
    """Return the number of the last jack at the spacing that has most."""
    return int(max(settings.runs.last // spacing for spacing in settings.spacings))
