"""pattern: the ends and the bird's mouth of a rafter at full size, to trace or to fold round the board."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING, TextIO

from layouts.verbs import options
from layouts.verbs.boards import add_boards
from layouts.verbs.book_options import WORDS
from layouts.verbs.opening import opener, pdf_named, show
from layouts.verbs.options import OUTPUT, Subparsers
from layouts.verbs.pattern_members import KINDS, USUAL, member_of_pitch, member_of_roof, roof_of
from layouts.words.say import N_, _, n_
from tablegen.errors import BookError
from tablegen.roof.member import Member
from tablegen.roof.pattern import pattern_of
from tablegen.settings import PAPERS, Settings

if TYPE_CHECKING:
    from layouts.patterns.page import Laid
    from tablegen.frame.frame import Frame

NOTES = N_("""\
Prints lines to trace: the upper end, the bird's mouth and the tail, tiled over
pages with marks to join them and bars to measure. An end that is cut on the
skew is a strip to fold round the board. --run only adds how far apart they lie.
--roof takes a whole roof: all its members, each kind of cut once, after a list
of them; or with --member one of them, of a pair the hand that --long-side says.""")
EXAMPLES = (
    'rafterbook pattern 7 --stock 2x6 --seat 3 --overhang "12 in"',
    'rafterbook pattern 8 --member hip --hip-stock 2x10 --paper a4 --out hip.pdf',
    'rafterbook pattern 4 --member shed --ledger-thickness "1 1/2" --run "8 ft"',
    'rafterbook pattern --roof my-roof.toml',
    'rafterbook pattern --roof my-roof.toml --member HJ3 --long-side left',
)
USUAL_OUT = f'{OUTPUT}/pattern.pdf'


def add(subparsers: Subparsers) -> None:
    """Declare the verb."""
    summary = _('print the cuts of a rafter at full size, to trace or to fold round the board')
    parser = options.add_verb(subparsers, 'pattern', summary, run, EXAMPLES, _(NOTES))
    parser.add_argument('pitch', nargs='?', metavar='PITCH', help=_('rise of the roof'))
    parser.add_argument('--roof', metavar='ROOF.toml', help=_('a roof file, in place of pitch and boards'))
    kinds = _('{kinds} (default {usual}); of a roof file a mark of its cut list (default all)')
    named = kinds.format(kinds=', '.join(KINDS), usual=USUAL)
    parser.add_argument('--member', metavar='MEMBER', help=named)
    add_boards(parser)
    long = _('side of the long point, looking up the roof, of one cheek: right (default) or left')
    parser.add_argument('--long-side', metavar='SIDE', help=long)
    parser.add_argument(
        '--run', dest='run_', metavar='LENGTH', help=_('level run of the common, or of the jack itself')
    )
    paper, words = WORDS['paper']
    parser.add_argument('--paper', metavar=paper, help=_(words).format(papers=', '.join(PAPERS)))
    options.add_nearest(parser)
    options.add_steep(parser)
    words = _('write it into this file (default {file})').format(file=USUAL_OUT)
    parser.add_argument('--out', metavar='FILE', default=USUAL_OUT, help=words)
    parser.add_argument('--open', action='store_true', help=_('show it when it is made'))


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Write the pattern, say what is on which page and what to look out for."""
    settings = options.with_options(Settings(), args)
    if args.roof is None and args.pitch is None:
        raise BookError('PITCH', _('is missing'), '', _('give it, or a roof file with --roof'))
    file = pdf_named(args.out, '--out')
    framed = None if args.roof is None else roof_of(args)
    if framed and args.member is None:
        return _all_of_roof(framed, args, file, settings.paper, out)
    if framed:
        one = member_of_roof(framed, args)
        member, hand = one.member, one.hand
    else:
        member, hand = member_of_pitch(args, settings), None
    if args.open:
        opener()
    from layouts.build import build_pattern

    run_known = args.run_ is not None or args.roof is not None
    pieces = build_pattern(pattern_of(member), settings.paper, file, run_known, hand)
    _tell([member], file, settings.paper, pieces, out)
    if args.open:
        show(file)
    return 0


def _all_of_roof(framed: Frame, args: argparse.Namespace, file: Path, paper: str, out: TextIO) -> int:
    if args.long_side is not None:
        problem = _('all members are printed, of both hands')
        raise BookError('--long-side', problem, '', _('give --member too, or leave it out'))
    if args.open:
        opener()
    from layouts.build import build_patterns

    pieces = build_patterns(framed, paper, file)
    _tell([one.member for one in framed.members], file, paper, pieces, out)
    if args.open:
        show(file)
    return 0


def _tell(members: list[Member], file: Path, paper: str, pieces: list[Laid], out: TextIO) -> None:
    from layouts.patterns.make import told
    from layouts.words.pattern_pages import cautions_of

    pages = pieces[-1].last
    made = n_('{file}: {count} page, {paper} paper', '{file}: {count} pages, {paper} paper', pages)
    lines = told(pieces, len(members) > 1)
    print(made.format(file=file, count=pages, paper=paper), *lines, sep='\n', file=out)
    print(_('print at 100 %, actual size, and hold a rule against both bars before you trace'), file=out)
    print(*cautions_of(members), sep='\n', file=out)
