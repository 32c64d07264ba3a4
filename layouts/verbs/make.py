"""make: the booklet and its sheets."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TextIO

from layouts.verbs.options import Subparsers, add_verb
from layouts.verbs.settings_file import add_settings_file, settings_from
from layouts.words.say import _, n_

OUTPUT = 'output'


def add(subparsers: Subparsers) -> None:
    """Declare the verb."""
    parser = add_verb(
        subparsers,
        'make',
        _('make the booklet, its sheets for the printer, and a card'),
        run,
        ['rafterbook make', 'rafterbook make my-book.toml --out my-book', 'rafterbook make --plan'],
    )
    add_settings_file(parser)
    where = _('where the files go (default: {folder})').format(folder=OUTPUT)
    parser.add_argument('--out', default=OUTPUT, metavar='DIR', help=where)
    parser.add_argument(
        '--plan', action='store_true', help=_('say how many pages and sheets, and make nothing')
    )


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Make the files and say what they are."""
    settings = settings_from(args.settings)
    from layouts.build import build, sheet_count
    from layouts.pages.book import plan
    from layouts.pdf.progress import Progress

    if args.plan:
        planned = plan(settings)
        sections = _sections(len(planned.index.sections))
        said = _('{pages} pages in {sections}, {sheets} sheets of paper')
        print(
            said.format(pages=planned.index.total, sections=sections, sheets=sheet_count(planned)), file=out
        )
        return 0
    progress = Progress(err)
    try:
        made = build(settings, Path(args.out), progress)
    finally:
        progress.done()  # a fault is not told behind half a bar
    booklet = _('{file}: {pages} pages in {sections}, {figures:,} figures in its pitches’ tables')
    sections = _sections(made.sections)
    print(
        booklet.format(file=made.booklet, pages=made.pages, sections=sections, figures=made.figures), file=out
    )
    sheets = _('{file}: {sheets} sheets of paper, the first says how to fold the rest')
    print(sheets.format(file=made.sheets, sheets=made.sheets_of_paper), file=out)
    print(f'{made.card.path}: {made.card.said[0]}', file=out)
    print(_('made in {seconds:.1f} s').format(seconds=made.seconds), file=err)
    return 0


def _sections(count: int) -> str:
    return n_('{count} section', '{count} sections', count).format(count=count)
