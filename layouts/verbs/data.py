"""data: every row of a table of the book for other programs."""

from __future__ import annotations

import argparse
import csv
import json
from collections.abc import Iterable, Iterator
from typing import Any, TextIO

from layouts.told import table_data
from layouts.verbs import options
from layouts.verbs.options import Subparsers
from layouts.verbs.settings_file import add_settings_file, settings_from
from layouts.words.say import N_, _
from tablegen.errors import BookError, meant
from tablegen.settings import Settings
from tablegen.tables.jack_lengths import JACK_LENGTHS
from tablegen.tables.runs import RUNS, run_table
from tablegen.tables.table import Table

FORMATS = ('csv', 'jsonl')
OF_RUNS = (RUNS, JACK_LENGTHS)
"""Tables that go as far as the runs do."""
NOTES = N_("""\
A row of the runs holds the pitch, the level run of the common rafter and the
lengths over it. --tables lists all tables, --table prints one. A figure is told
exact, to nine decimals, and as the book prints it: in CSV as NAME_inches or
NAME_degrees and NAME_text, in JSON as an object. Marks beside figures are
NAME_marks. Without SETTINGS.toml the book's own pitches and runs are taken; -
reads the settings from standard input.""")
EXAMPLES = (
    'rafterbook data --pitches 6 --runs "1 ft to 24 ft by 1 ft"',
    'rafterbook data --format jsonl --pitches "4 to 12 by 1/2" --nearest 1/8',
    'rafterbook data --tables',
    'rafterbook data --table hips --pitches "4 to 12" --format jsonl',
)


def add(subparsers: Subparsers) -> None:
    """Declare the verb."""
    parser = options.add_verb(
        subparsers, 'data', _('print every row of a table as CSV or JSON lines'), run, EXAMPLES, _(NOTES)
    )
    add_settings_file(parser)
    options.add_format(parser, FORMATS)
    options.add_pitches(parser)
    options.add_runs(parser)
    parser.add_argument('--table', metavar='NAME', help=_('a table instead of the runs'))
    parser.add_argument('--tables', action='store_true', help=_('the list of tables'))
    options.add_reading(parser)
    options.add_steep(parser)


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Print the rows as they are computed."""
    form = options.choice(args.format, '--format', FORMATS)
    settings = options.with_options(settings_from(args.settings), args)
    if args.tables and args.table is not None:
        raise BookError('--tables', _('does not go with --table'), '', _('leave one of the two out'))
    name = RUNS if args.table is None else args.table
    if name in OF_RUNS and not args.tables:
        options.with_sound_runs(settings)
    elif args.runs is not None:
        raise BookError('--runs', _('a reference table has no runs'), '', _('leave --runs out'))
    if args.tables:
        listed = list(map(table_data.listed, _tables(settings)))
        _write(table_data.csv_list(listed), listed, form, out)
    else:
        table = _named(name, settings)
        _write(table_data.csv_rows(table), table_data.json_rows(table), form, out)
    return 0


def _tables(settings: Settings) -> list[Table[Any]]:
    """Return every table of the book, those on the square last."""
    from tablegen.checking.book_rows import square_tables  # the runs need not wait for the others
    from tablegen.numbers.figure import Measure
    from tablegen.tables.tables import every_table

    return [*every_table(settings), *square_tables(Measure(settings.measure.per))]


def _named(name: str, settings: Settings) -> Table[Any]:
    if name == RUNS:
        return run_table(settings)
    known = {table.key: table for table in _tables(settings)}
    if name not in known:
        advice = meant(name, list(known), _('rafterbook data --tables lists them'))
        raise BookError('--table', _('{name} is no table').format(name=repr(name)), '', advice)
    return known[name]


def _write(lines: Iterator[list[str]], objects: Iterable[object], form: str, out: TextIO) -> None:
    """Write what was asked for, as lines of CSV or of JSON, each as it is made."""
    if form == 'csv':
        csv.writer(out, lineterminator='\n').writerows(lines)
        return
    encoded = json.JSONEncoder(ensure_ascii=False).encode
    for one in objects:
        out.write(encoded(one) + '\n')
