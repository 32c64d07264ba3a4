"""The tables of a pitch as rows with names: runs with their lengths, jacks with theirs by spacing."""

from collections.abc import Iterable, Iterator
from fractions import Fraction

from msgspec import Struct
from msgspec.structs import replace

from tablegen.geometry.pitch import Pitch
from tablegen.numbers.figure import Figure, Measure
from tablegen.settings import Settings
from tablegen.tables.jack_lengths import jack_table
from tablegen.tables.runs import run_table
from tablegen.tables.values import values_table


class RunRow(Struct, frozen=True):
    run_in: Fraction
    common: Figure
    hip_valley: Figure
    rise: Figure


class JackRow(Struct, frozen=True):
    """A jack by its number; each length one a spacing, None for none."""

    number: int
    lengths: tuple[Figure | None, ...]
    long_points: tuple[Figure | None, ...]
    short_points: tuple[Figure | None, ...]


def run_rows(pitch: Pitch, runs: Iterable[Fraction], measure: Measure) -> Iterator[RunRow]:
    """Return the rows of the table of runs at one pitch, by the names of its columns."""
    table = run_table(Settings(measure=measure), [pitch], runs)
    names = [column.key.replace('run', 'run_in') for column in table.columns]
    for row in table.rows():
        named = dict(zip(names, row.cells, strict=True))
        assert named.pop('pitch') == pitch
        yield RunRow(**named)


def run_row(pitch: Pitch, run_in: Fraction, measure: Measure) -> RunRow:
    return next(run_rows(pitch, [run_in], measure))


def jack_rows(pitch: Pitch, settings: Settings) -> list[JackRow]:
    """Return the rows of the table of jacks at one pitch, by the names of its columns."""
    table = jack_table(replace(settings, pitches=(pitch,)))
    assert [column.key.partition('_')[0] for column in table.columns[2:]] == ['line', 'long', 'short'] * len(
        settings.spacings
    )
    return [
        JackRow(row.cells[1], *zip(*zip(*[iter(row.cells[2:])] * 3, strict=True), strict=True))
        for row in table.rows()
    ]


def values_of(pitch: Pitch, settings: Settings) -> dict[str, Figure]:
    """Return what a pitch has but once, by the names of the columns."""
    table = values_table(replace(settings, pitches=(pitch,)))
    (row,) = table.rows()
    return dict(zip((column.key for column in table.columns), row.cells, strict=True))
