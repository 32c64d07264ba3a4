"""The member whose pattern is asked for: one of a pitch and its boards, or one of a whole roof by its mark."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from fractions import Fraction
from typing import TYPE_CHECKING

from msgspec import Struct
from msgspec.structs import replace

from layouts.verbs import options
from layouts.verbs.boards import OPTIONS, boards_given
from layouts.verbs.settings_file import A_ROOF, START_A_ROOF, written_in
from layouts.words.say import _
from tablegen.errors import BookError, meant
from tablegen.geometry import seat, tail
from tablegen.messages import message
from tablegen.numbers.figure import Measure
from tablegen.numbers.units import INCHES
from tablegen.roof import framing
from tablegen.roof.ends import crossings
from tablegen.roof.member import Hand, Line, Member, Stop
from tablegen.roof.member import Kind as MemberKind
from tablegen.roof.members import Members
from tablegen.roof.plane import Plane
from tablegen.roof.question import Boards
from tablegen.roof.side import side
from tablegen.settings import Settings
from tablegen.written.pitches import pitch

if TYPE_CHECKING:
    from tablegen.frame.frame import Frame
    from tablegen.frame.framed import Framed

LONG_RUN_IN = 100 * INCHES.unit_run
"""Of a pattern whose run is not said: no line of it depends on the run."""


class Kind(Struct, frozen=True):
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
USUAL = next(iter(KINDS))


def member_of_pitch(args: argparse.Namespace, settings: Settings) -> Member:
    """Return the member that is asked for.

    Errors:
        BookError for an option that changes nothing in it, or a board that cannot be
    """
    kind = KINDS[options.choice(args.member or USUAL, '--member', tuple(KINDS))]
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
            problem = _('a pattern of {member} has no use for it').format(member=args.member or USUAL)
            raise BookError(f'--{option}', problem, '', _('leave {option} out').format(option=f'--{option}'))


def roof_of(args: argparse.Namespace) -> Frame:
    """Return the whole roof of a roof file.

    Errors:
        BookError for an option that the file says
    """
    for name in ('pitch', 'run_', *(option.replace('-', '_') for option in OPTIONS)):
        if getattr(args, name) is not None:
            option = 'PITCH' if name == 'pitch' else f'--{name.strip("_").replace("_", "-")}'
            raise BookError(
                option, _('the roof file says it'), '', _('leave {option} out').format(option=option)
            )
    from tablegen.frame.frame import frame
    from tablegen.frame.roof_file import read_roof

    over = {'smallest_part': args.nearest} if args.nearest else {}
    return frame(read_roof(written_in(args.roof, _(A_ROOF), _(START_A_ROOF)), args.roof, over))


def member_of_roof(framed: Frame, args: argparse.Namespace) -> Framed:
    """Return the member that bears a mark of a roof's cut list; of a pair that of the hand that is asked for.

    Errors:
        BookError for a mark that is no member's
    """
    marks = tuple(dict.fromkeys(one.member.name for one in framed.members))
    of_mark = {one.hand: one for one in framed.members if one.member.name == args.member}
    if args.member in {*(one.mark for one in framed.levels), *(one.mark for one in framed.studs)}:
        needless = _('{mark} needs no pattern: it is level or stands plumb').format(mark=args.member)
        words = _('rafterbook roof {file} tells its length and how its ends are sawn')
        raise BookError('--member', needless, marks, words.format(file=args.roof))
    if not of_mark:
        problem = message('error.unknown', value=f"'{args.member}'")
        raise BookError('--member', problem, marks, meant(args.member, marks, ''))
    if args.long_side is None:
        return of_mark.get(Hand.RIGHT) or next(iter(of_mark.values()))
    hand = Hand(options.choice(args.long_side, '--long-side', tuple(Hand)))
    if hand not in of_mark:
        raise BookError('--long-side', _('the roof has none of that hand'), '', _('leave it out'))
    return of_mark[hand]
