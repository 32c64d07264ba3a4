"""data: every row of the run tables, or of a reference table, for other programs."""

from __future__ import annotations

import argparse
import csv
import json
from collections.abc import Iterator
from itertools import chain
from typing import TextIO

from layouts.verbs import options
from layouts.verbs.options import Subparsers
from layouts.verbs.settings_file import settings_from
from layouts.words.say import _
from tablegen.errors import BookError, meant
from tablegen.settings import Settings
from tablegen.tables.data_columns import table_data
from tablegen.tables.run_data import data_rows, plain
from tablegen.tables.tables import tables

FORMATS = ('csv', 'jsonl')
FIELDS = (
    'pitch',
    'run_inches',
    'common_inches',
    'common_text',
    'hip_valley_inches',
    'hip_valley_text',
    'rise_inches',
    'rise_text',
)
NOTES = """\
A row holds the pitch, the level run of the common rafter and the lengths over
it, in inches to nine decimals and as the book prints them. Without
SETTINGS.toml the book's own pitches and runs are taken; - reads the settings
from standard input. --tables lists the reference tables; --table prints one:
lengths as printed, and their value in decimals."""
EXAMPLES = (
    'rafterbook data --pitches 6 --runs "1 ft to 24 ft by 1 ft"',
    'rafterbook data --format jsonl --pitches "4 to 12 by 1/2" --nearest 1/8',
    'rafterbook data --tables',
    'rafterbook data --table hips --pitches "4 to 12" --format jsonl',
)
LIST_FIELDS = ('table', 'group', 'title', 'heads', 'measured')


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
    if args.tables or args.table is not None:
        if args.tables and args.table is not None:
            raise BookError('--tables', _('does not go with --table'), '', _('leave one of the two out'))
        if args.runs is not None:
            raise BookError('--runs', 'a reference table has no runs', '', 'leave --runs out')
        lines = table_list(settings) if args.tables else _data_of(args.table, settings)
        _write(lines, form, out)
        return 0
    settings = options.with_runs(settings, args.runs)
    _write(chain([FIELDS], rows(settings)), form, out)
    return 0


def table_list(settings: Settings) -> Iterator[tuple[str, ...]]:
    """Return the names of the reference tables' columns, then a row for each table."""
    yield LIST_FIELDS
    for table in tables(settings):
        yield table.key, table.group, table.title, ' | '.join(table.heads), table.line


def _data_of(name: str, settings: Settings) -> Iterator[tuple[str, ...]]:
    known = {table.key: table for table in tables(settings)}
    if name not in known:
        advice = meant(name, list(known), 'rafterbook data --tables lists them')
        raise BookError('--table', f"'{name}' is no reference table", '', advice)
    return table_data(known[name].rows(settings), known[name].names())


def _write(lines: Iterator[tuple[str, ...]], form: str, out: TextIO) -> None:
    """Write the names of the columns, then rows, as they come."""
    if form == 'csv':
        csv.writer(out, lineterminator='\n').writerows(lines)
        return
    names = next(lines)
    for row in lines:
        out.write(json.dumps(dict(zip(names, row, strict=True))) + '\n')


def rows(settings: Settings) -> Iterator[tuple[str, ...]]:
    """Return every row as text, in the order of FIELDS, one at a time."""
    for pitch in settings.pitches:
        for row in data_rows(pitch, settings):
            yield (
                pitch.text,
                plain(row.run),
                plain(row.common),
                row.common_part.text,
                plain(row.hip_valley),
                row.hip_valley_part.text,
                plain(row.rise),
                row.rise_part.text,
            )
