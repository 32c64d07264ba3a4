"""make: the booklet and its sheets."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING, TextIO

from layouts.verbs.book_options import add_book
from layouts.verbs.opening import OPTION, opener, show
from layouts.verbs.options import Subparsers, add_folder, add_verb, folder_of, with_options, with_sound_runs
from layouts.verbs.settings_file import STANDARD_INPUT, add_settings_file, settings_from, with_roof_files
from layouts.words.say import N_, _, n_, speaking
from tablegen.errors import BookError
from tablegen.settings import EDITIONS, Settings

if TYPE_CHECKING:
    from tablegen.proof.found import Found

NOTES = N_("""\
Options go over the settings file, and that over the usual settings. What no
option says, such as spacings of jacks, lumber and the parts of the book, the
file says.""")
OTHER = {
    'compact': N_('what the compact edition would be: --edition compact'),
    'complete': N_('what the complete edition would be: --edition complete'),
}
"""How another edition is asked for: to count it takes as long again, the complete one longer."""
EXAMPLES = (
    'rafterbook make',
    'rafterbook make --pitches "4 to 12" --owner "Garden store" --open',
    'rafterbook make my-book.toml --paper a4 --out my-book',
    'rafterbook make --roof my-roof.toml --out my-book',
    'rafterbook make --plan',
)


def add(subparsers: Subparsers) -> None:
    """Declare the verb."""
    summary = _('make the booklet, its sheets for the printer, and a card')
    parser = add_verb(subparsers, 'make', summary, run, EXAMPLES, _(NOTES))
    add_settings_file(parser)
    add_book(parser)
    words = _('a roof file, whose roof is worked through in the book; may be given several times')
    parser.add_argument('--roof', metavar='ROOF.toml', action='append', help=words)
    add_folder(parser)
    parser.add_argument(
        '--plan', action='store_true', help=_('say how many pages and sheets, and make nothing')
    )
    parser.add_argument('--ask', action='store_true', help=_('ask for pitches, paper and name'))
    parser.add_argument(
        '--tagged', action='store_true', help=_('tag the booklet for screen readers, which takes longer')
    )
    parser.add_argument(
        '--fresh', action='store_true', help=_('set every page anew, and keep none for the next time')
    )
    parser.add_argument(
        '--no-proof',
        action='store_true',
        help=_(
            'leave out reading the book back, each figure worked out once more, before it is put in place'
        ),
    )
    parser.add_argument('--open', action='store_true', help=_('show the booklet when it is made'))


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Make the files, say what they are and how they are printed."""
    _refuse_what_cannot_be_done(args)
    folder = folder_of(args)
    settings = with_sound_runs(with_options(settings_from(args.settings), args))
    if args.roof:
        settings = with_roof_files(settings, args.roof)
    if args.ask:
        from layouts.verbs.questions import answered

        settings = answered(settings, err)
    try:
        return _tell_plan(settings, out) if args.plan else _make(settings, folder, args, out, err)
    except BookError as fault:
        runs = args.runs is not None and str(fault.place).startswith('runs.')
        raise fault.at('--runs') if runs else fault from None


def _make(settings: Settings, folder: Path, args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    from layouts.pdf.documents import setter
    from layouts.pdf.leaving import clearing
    from layouts.pdf.workers import crew

    # They load the typesetter while this process loads all else and plans.
    with speaking(settings.language), crew(setter) as setters:
        from layouts.build import build
        from layouts.pdf.kept import Kept, user_folder
        from layouts.pdf.progress import Progress

        progress = Progress(err)
        kept = None if args.fresh else Kept(user_folder())
        with clearing(progress.done):  # nothing is told behind half a bar
            made = build(settings, folder, progress, args.tagged, kept, not args.no_proof, setters)
    from layouts.paper.trim import trim_of

    print(_('made in {seconds:.1f} s').format(seconds=made.seconds), file=err)
    booklet = _('{file}: {pages} pages in {sections}, {figures:,} figures in its pitches’ tables')
    sections = _sections(made.sections)
    print(
        booklet.format(file=made.booklet, pages=made.pages, sections=sections, figures=made.figures), file=out
    )
    sheets = _('{file}: {sheets} sheets of paper, the first says how to fold the rest')
    print(sheets.format(file=made.sheets, sheets=made.sheets_of_paper), file=out)
    print(f'{made.card.path}: {made.card.said[0]}', file=out)
    if not args.no_proof:
        print(_proven(made.found), file=out)
    print(_how_to_print(trim_of(settings).up).format(file=made.sheets.name), file=out)
    if args.open:
        show(made.booklet)
    return 0


def _proven(found: Found | None) -> str:
    if found is None:
        return _('proof: none, since the settings on its last pages cannot be read back')
    said = _(
        'proof: {figures:,} figures worked out once more by other means, {links} links followed, {sheets} sheets folded; '
        'nothing differs'
    )
    return said.format(figures=found.figures, links=found.links, sheets=found.sheets)


def _refuse_what_cannot_be_done(args: argparse.Namespace) -> None:
    """Refuse it before anything is asked or made; so is showing the book on a machine that shows nothing."""
    if args.open and args.plan:
        raise BookError(OPTION, _('does not go with --plan'), '', _('leave one of the two out'))
    if args.ask and args.settings == STANDARD_INPUT:
        problem = _('reads answers where the settings are read')
        raise BookError('--ask', problem, '', _('give the settings as a file'))
    if args.open:
        opener()


def _tell_plan(settings: Settings, out: TextIO) -> int:
    """Say what the settings come to, and how the other edition is asked for."""
    print(_planned(settings), file=out)
    if settings.parts in EDITIONS.values():
        for name, parts in EDITIONS.items():
            if parts != settings.parts:
                print(_(OTHER[name]), file=out)
    return 0


def _planned(settings: Settings) -> str:
    from layouts.pages.book import plan
    from layouts.sheets.counted import sheet_count

    planned = plan(settings)
    count = len(planned.index.sections)
    said = _('{pages} pages in {sections}, {sheets} sheets of paper, {staplings}')
    return said.format(
        pages=planned.index.total,
        sections=_sections(count),
        sheets=sheet_count(planned),
        staplings=n_('folded and stapled once', 'folded and stapled {count} times', count).format(
            count=count
        ),
    )


def _how_to_print(pages_on_a_side: int) -> str:
    """Return how the sheets are printed: four pages a side stand upright on the paper, two lie across it."""
    if pages_on_a_side == 2:
        return _(
            'to print: {file} on both sides, flip on the short edge, at 100 % (“actual size”); '
            'then fold and staple as its first sheet shows'
        )
    return _(
        'to print: {file} on both sides, flip on the long edge, at 100 % (“actual size”); '
        'then cut, fold and staple as its first sheet shows'
    )


def _sections(count: int) -> str:
    return n_('{count} section', '{count} sections', count).format(count=count)
