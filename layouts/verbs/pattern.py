"""pattern: the ends and the bird's mouth of a rafter at full size, to trace or to fold round the board."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from dataclasses import dataclass, replace
from fractions import Fraction
from pathlib import Path
from typing import TYPE_CHECKING, TextIO

from layouts.verbs import options
from layouts.verbs.boards import OPTIONS, add_boards, boards_given
from layouts.verbs.book_options import WORDS
from layouts.verbs.opening import opener, show
from layouts.verbs.options import OUTPUT, Subparsers
from layouts.words.say import N_, _, n_
from tablegen.errors import BookError
from tablegen.geometry import seat, tail
from tablegen.messages import message
from tablegen.numbers.figure import Measure
from tablegen.numbers.units import INCHES
from tablegen.roof import framing
from tablegen.roof.ends import crossings
from tablegen.roof.member import Hand, Line, Member, Stop
from tablegen.roof.member import Kind as MemberKind
from tablegen.roof.members import Members
from tablegen.roof.pattern import Pattern, pattern_of
from tablegen.roof.plane import Plane
from tablegen.roof.question import Boards
from tablegen.roof.side import side
from tablegen.settings import PAPERS, Settings
from tablegen.written.pitches import pitch

if TYPE_CHECKING:
    from layouts.patterns.page import Laid

NOTES = N_("""\
Prints lines to trace: the upper end, the bird's mouth and the tail, tiled over
pages with marks to join them and bars to measure. An end that is cut on the
skew is a strip to fold round the board. --run only adds how far apart they lie.""")
EXAMPLES = (
    'rafterbook pattern 7 --stock 2x6 --seat 3 --overhang "12 in"',
    'rafterbook pattern 8 --member hip --hip-stock 2x10 --paper a4 --out hip.pdf',
    'rafterbook pattern 4 --member shed --ledger-thickness "1 1/2" --run "8 ft"',
)
USUAL_OUT = f'{OUTPUT}/pattern.pdf'
LONG_RUN_IN = 100 * INCHES.unit_run
"""Of a pattern whose run is not said: no line of it depends on the run."""


@dataclass(frozen=True, slots=True)
class Kind:
    """A kind of member that can be asked for."""

    make: Callable[[Plane, Fraction], Member]
    """From its plane and a ledger's thickness."""
    uses: tuple[str, ...]
    """Options, besides those of every member, that change its pattern."""


KINDS = {
    'common': Kind(lambda of, _ledger: framing.common('', of), ('rafter_thickness', 'ridge_thickness')),
    'shed': Kind(
        lambda of, ledger: framing.shed_rafter('', of, ledger), ('rafter_thickness', 'ledger_thickness')
    ),
    'hip-jack': Kind(
        lambda of, _ledger: framing.hip_jack('', of, of.run_in),
        ('hip_thickness', 'rafter_thickness', 'long_side'),
    ),
    'hip': Kind(
        lambda of, _ledger: framing.hip('', of),
        ('hip_stock', 'hip_thickness', 'ridge_thickness', 'long_side'),
    ),
    'hip-between-commons': Kind(
        lambda of, _ledger: framing.hip('', of, Stop.COMMONS),
        ('hip_stock', 'hip_thickness', 'rafter_thickness'),
    ),
    'valley': Kind(
        lambda of, _ledger: framing.valley('', of),
        ('valley_stock', 'hip_thickness', 'valley_thickness', 'ridge_thickness'),
    ),
}
FOR_ALL = ('stock', 'seat', 'overhang')


def add(subparsers: Subparsers) -> None:
    """Declare the verb."""
    summary = _('print the cuts of a rafter at full size, to trace or to fold round the board')
    parser = options.add_verb(subparsers, 'pattern', summary, run, EXAMPLES, _(NOTES))
    parser.add_argument('pitch', metavar='PITCH', help=_('rise of the roof'))
    kinds = _('{kinds} (default {usual})').format(kinds=', '.join(KINDS), usual=next(iter(KINDS)))
    parser.add_argument('--member', metavar='MEMBER', default='common', help=kinds)
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
    member = _member(args, settings)
    file = Path(args.out)
    if file.suffix.lower() != '.pdf':
        raise BookError('--out', _("'{file}' is no PDF").format(file=file), _('a name that ends in .pdf'))
    if args.open:
        opener()
    from layouts.build import build_pattern

    whole = pattern_of(member)
    pieces = build_pattern(whole, settings.paper, file, run_known=args.run_ is not None)
    _tell(whole, file, settings, pieces, out)
    if args.open:
        show(file)
    return 0


def _tell(whole: Pattern, file: Path, settings: Settings, pieces: list[Laid], out: TextIO) -> None:
    from layouts.patterns.make import told
    from layouts.words.patterns import cautions_of

    pages = pieces[-1].last
    made = n_('{file}: {count} page, {paper} paper', '{file}: {count} pages, {paper} paper', pages)
    print(made.format(file=file, count=pages, paper=settings.paper), *told(whole, pieces), sep='\n', file=out)
    print(_('print at 100 %, actual size, and hold a rule against both bars before you trace'), file=out)
    print(*cautions_of(whole), sep='\n', file=out)


def _member(args: argparse.Namespace, settings: Settings) -> Member:
    """Return the member that is asked for.

    Errors:
        BookError for an option that changes nothing in it, or a board that cannot be
    """
    kind = KINDS[options.choice(args.member, '--member', tuple(KINDS))]
    _refuse_what_is_not_used(args, kind)
    roof = pitch(args.pitch, 'PITCH', settings.steep)
    run_in = LONG_RUN_IN if args.run_ is None else options.above_zero(args.run_, '--run')
    boards = replace(Boards(measure=Measure(settings.measure.per)), **boards_given(args))
    if args.overhang is None:
        boards = replace(boards, overhang_in=min(boards.overhang_in, run_in))
    seat.checked_seat(boards.stock.depth_in, boards.seat_in, roof.slope)
    tail.checked_overhang(boards.overhang_in, run_in)
    ledger = Settings().ridge_thickness
    if args.ledger_thickness is not None:
        ledger = options.thickness(args.ledger_thickness, '--ledger-thickness')
    plane = Plane(Members(side(roof, boards)), run_in, Measure(settings.measure.per))
    member = kind.make(plane, ledger)
    return _checked(_handed(member, args.long_side), args)


def _handed(member: Member, written: str | None) -> Member:
    if written is None:
        return member
    hand = Hand(options.choice(written, '--long-side', tuple(Hand)))
    return replace(member, head=replace(member.head, long=hand))


def _checked(member: Member, args: argparse.Namespace) -> Member:
    """Refuse a member of which nothing is left, or that has no bird's mouth."""
    if crossings(member)[0].center >= member.at(Line.PLATE):
        problem = message('error.nothing_left', run=f"'{args.run_}'")
        raise BookError('--run', problem, '', message('error.longer_run'))
    if member.mouth is None:
        option = '--valley-stock' if member.kind is MemberKind.VALLEY else '--hip-stock'
        raise BookError(
            option, message('error.no_mouth', stock=member.stock.name), '', message('error.see_seats')
        )
    return member


def _refuse_what_is_not_used(args: argparse.Namespace, kind: Kind) -> None:
    """Refuse an option that would change nothing.

    Errors:
        BookError naming it
    """
    for option in (*OPTIONS, 'long-side'):
        name = option.replace('-', '_')
        if getattr(args, name) is not None and name not in (*FOR_ALL, *kind.uses):
            problem = _('a pattern of {member} has no use for it').format(member=args.member)
            raise BookError(f'--{option}', problem, '', _('leave {option} out').format(option=f'--{option}'))
