"""The run tables as one: a row for every pitch and run."""

from __future__ import annotations

from collections.abc import Iterator

from tablegen.geometry.pitch import Pitch
from tablegen.messages import message
from tablegen.settings import Settings
from tablegen.tables.columns import Make
from tablegen.tables.runs import RunRow, run_rows
from tablegen.tables.table import Column, Table

RUNS = 'runs'
"""Its name among the tables."""
Run = tuple[Pitch, RunRow]


def run_table(settings: Settings) -> Table[Run]:
    """Return the table of every run of every pitch."""
    make = Make[Run](settings)

    def subjects() -> Iterator[Run]:
        for pitch in settings.pitches:
            for row in run_rows(pitch, settings.runs, settings.measure):
                yield pitch, row

    return Table(
        RUNS,
        RUNS,
        message('table.runs'),
        (
            make.pitch(lambda it: it[0]),
            make.given('run', lambda it: it[1].run_in),
            Column('common', message('head.common'), lambda it: it[1].common, message('datum.common')),
            Column(
                'hip_valley',
                message('head.hip_valley'),
                lambda it: it[1].hip_valley,
                message('datum.hip_valley'),
            ),
            Column('rise', message('head.rise'), lambda it: it[1].rise, message('datum.rise')),
        ),
        subjects,
        2,
    )
