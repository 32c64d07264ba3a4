"""data: every row of a table, the run tables' or a reference table's, for other programs."""

from __future__ import annotations

import argparse
import csv
import json
from typing import Any, TextIO

from layouts.told import table_data
from layouts.verbs import options
from layouts.verbs.options import Subparsers
from layouts.verbs.settings_file import settings_from
from layouts.words.say import _
from tablegen.errors import BookError, meant
from tablegen.settings import Settings
from tablegen.tables.runs import RUNS, run_table
from tablegen.tables.table import Table
from tablegen.tables.tables import tables

FORMATS = ('csv', 'jsonl')
NOTES = """\
A row of the run tables holds the pitch, the level run of the common rafter and
the lengths over it; --tables lists the reference tables, --table prints one. A
figure is told exact, to nine decimals, and as the book prints it: in CSV as
NAME_inches or NAME_degrees and NAME_text, in JSON as an object. Marks beside
figures are NAME_marks. Without SETTINGS.toml the book's own pitches and runs
are taken; - reads the settings from standard input."""
EXAMPLES = (
    'rafterbook data --pitches 6 --runs "1 ft to 24 ft by 1 ft"',
    'rafterbook data --format jsonl --pitches "4 to 12 by 1/2" --nearest 1/8',
    'rafterbook data --tables',
    'rafterbook data --table hips --pitches "4 to 12" --format jsonl',
)


def add(subparsers: Subparsers) -> None:
    """Declare the verb."""
    parser = options.add_verb(
        subparsers, 'data', 'print every row of the run tables as CSV or JSON lines', run, EXAMPLES, NOTES
    )
    parser.add_argument('settings', metavar='SETTINGS.toml', nargs='?', help='settings of a book')
    parser.add_argument('--format', metavar='FORMAT', default='csv', help='csv (default) or jsonl')
    parser.add_argument('--pitches', metavar='LIST', help='such as 6, "4,6,8" or "4 to 12 by 1/2"')
    parser.add_argument('--runs', metavar='RANGE', help='such as "4 ft" or "1 in to 24 ft by 1 in"')
    parser.add_argument('--table', metavar='NAME', help='a reference table instead of the run tables')
    parser.add_argument('--tables', action='store_true', help='the list of reference tables')
    options.add_reading(parser)
    options.add_steep(parser)


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Print the rows as they are computed."""
    form = options.choice(args.format, '--format', FORMATS)
    settings = options.with_reading(settings_from(args.settings), args)
    if args.pitches is not None:
        settings = options.with_pitches(settings, args.pitches)
    if args.tables and args.table is not None:
        raise BookError('--tables', _('does not go with --table'), '', _('leave one of the two out'))
    if not args.tables and args.table in (None, RUNS):
        _write_rows(run_table(options.with_runs(settings, args.runs)), form, out)
        return 0
    if args.runs is not None:
        raise BookError('--runs', _('a reference table has no runs'), '', _('leave --runs out'))
    if args.tables:
        _write_list(settings, form, out)
    else:
        _write_rows(_named(args.table, settings), form, out)
    return 0


def _named(name: str, settings: Settings) -> Table[Any]:
    known = {table.key: table for table in tables(settings)}
    if name not in known:
        advice = meant(name, list(known), _('rafterbook data --tables lists them'))
        raise BookError('--table', _('{name} is no reference table').format(name=repr(name)), '', advice)
    return known[name]


def _write_rows(table: Table[Any], form: str, out: TextIO) -> None:
    """Write a table's rows as they are computed."""
    if form == 'csv':
        csv.writer(out, lineterminator='\n').writerows(table_data.csv_rows(table))
        return
    for row in table_data.json_rows(table):
        out.write(_line(row))


def _write_list(settings: Settings, form: str, out: TextIO) -> None:
    """Write what there is of reference tables; in CSV the names and heads of their columns each in one cell."""
    listed = map(table_data.listed, tables(settings))
    if form == 'csv':
        csv.writer(out, lineterminator='\n').writerows(table_data.csv_list(listed))
        return
    for table in listed:
        out.write(_line(table))


def _line(told: object) -> str:
    return json.dumps(told, ensure_ascii=False) + '\n'
