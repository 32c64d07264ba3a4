"""make: the booklet and its sheets."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TextIO

from layouts.verbs.options import Subparsers, add_verb
from layouts.verbs.settings_file import settings_from

OUTPUT = 'output'


def add(subparsers: Subparsers) -> None:
    """Declare the verb."""
    parser = add_verb(
        subparsers,
        'make',
        'make the booklet, its sheets for the printer, and a card',
        run,
        ['rafterbook make', 'rafterbook make my-book.toml --out my-book', 'rafterbook make --plan'],
    )
    parser.add_argument(
        'settings', nargs='?', metavar='SETTINGS.toml', help="settings file; '-' is standard input"
    )
    parser.add_argument(
        '--out', default=OUTPUT, metavar='DIR', help=f'where the files go (default: {OUTPUT})'
    )
    parser.add_argument('--plan', action='store_true', help='say how many pages and sheets, and make nothing')


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Make the files and say what they are."""
    settings = settings_from(args.settings)
    from layouts.build import build, sheet_count
    from layouts.pages.book import plan
    from layouts.pdf.progress import Progress

    if args.plan:
        planned = plan(settings)
        sections = _sections(len(planned.index.sections))
        print(f'{planned.index.total} pages in {sections}, {sheet_count(planned)} sheets of paper', file=out)
        return 0
    progress = Progress(err)
    try:
        made = build(settings, Path(args.out), progress)
    finally:
        progress.done()  # a fault is not told behind half a bar
    print(
        f'{made.booklet}: {made.pages} pages in {_sections(made.sections)}, {made.figures:,} figures in its pitches’ tables',
        file=out,
    )
    print(
        f'{made.sheets}: {made.sheets_of_paper} sheets of paper, the first says how to fold the rest',
        file=out,
    )
    print(f'{made.card.path}: {made.card.said[0]}', file=out)
    print(f'made in {made.seconds:.1f} s', file=err)
    return 0


def _sections(count: int) -> str:
    return f'{count} section' + ('s' if count > 1 else '')
