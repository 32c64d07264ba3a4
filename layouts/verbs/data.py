"""data: every row of the run tables, streamed for other programs."""

from __future__ import annotations

import csv
import json
from collections.abc import Iterator

from layouts.verbs import options
from layouts.verbs.settings_file import settings_from
from tablegen.findings import data_rows, plain
from tablegen.settings import Settings

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
from standard input."""
EXAMPLES = (
    'rafterbook data --pitches 6 --runs "1 ft to 24 ft by 1 ft"',
    'rafterbook data --format jsonl --pitches "4 to 12 by 1/2" --nearest 1/8',
)


def add(subparsers) -> None:
    """Declare the verb."""
    parser = options.add_verb(
        subparsers, 'data', 'print every row of the run tables as CSV or JSON lines', run, EXAMPLES, NOTES
    )
    parser.add_argument('settings', metavar='SETTINGS.toml', nargs='?', help='settings of a book')
    parser.add_argument('--format', metavar='FORMAT', default='csv', help='csv (default) or jsonl')
    parser.add_argument('--pitches', metavar='LIST', help='such as 6, "4,6,8" or "4 to 12 by 1/2"')
    parser.add_argument('--runs', metavar='RANGE', help='such as "4 ft" or "1 in to 24 ft by 1 in"')
    options.add_reading(parser)
    options.add_steep(parser)


def run(args, out, err) -> int:
    """Print the rows as they are computed."""
    form = options.choice(args.format, '--format', FORMATS)
    settings = options.with_reading(settings_from(args.settings), args)
    if args.pitches is not None:
        settings = options.with_pitches(settings, args.pitches)
    settings = options.with_runs(settings, args.runs)
    if form == 'csv':
        writer = csv.writer(out, lineterminator='\n')
        writer.writerow(FIELDS)
        writer.writerows(rows(settings))
    else:
        for row in rows(settings):
            out.write(json.dumps(dict(zip(FIELDS, row, strict=True))) + '\n')
    return 0


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
