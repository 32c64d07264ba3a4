"""The options of find: which kind of roof they ask about, and which of them mean nothing there."""

from __future__ import annotations

import argparse

from layouts.told.find_answer import SHED_SHOWN, SHOWN
from layouts.verbs import boards, options
from layouts.words.say import N_, _
from tablegen.errors import BookError, meant
from tablegen.roof.names import Against

REGULAR, CORNER, MANY_SIDED, SHED = 'regular', 'corner', 'many-sided', 'shed'

NO_USE = {
    REGULAR: N_('a roof of one pitch with square corners has no use for it'),
    CORNER: N_('a corner of two pitches has no use for it'),
    MANY_SIDED: N_('a many-sided roof has no use for it'),
    SHED: N_('a shed has no use for it'),
}
ASKS_ABOUT = {
    CORNER: N_('asks about a corner of two pitches, {other} does not'),
    MANY_SIDED: N_('asks about a many-sided roof, {other} does not'),
    SHED: N_('asks about a shed, {other} does not'),
}
OPTIONS = boards.OPTIONS | {
    'plate-length': ('LENGTH', N_('of a hip roof, outside to outside, for its ridge')),
    'corner': ('DEGREES', N_('plan angle of that corner (default 90)')),
    'sides': ('NUMBER', N_('of a regular many-sided roof')),
    'shed': ('AGAINST', N_('of a shed: wall, for rafters against it, or ledger, for rafters on one')),
    'run-to': ('FACE', N_('where RUN ends on a ledger: wall (default) or ledger')),
}
"""Options with a value, each with what it is."""
ORDER = (
    *('stock', 'hip-stock', 'valley-stock', 'seat', 'overhang', 'plate-length'),
    *('ridge-thickness', 'hip-thickness', 'valley-thickness', 'rafter-thickness'),
    *('corner', 'sides', 'shed', 'ledger-thickness', 'run-to'),
)
"""As help lists them; --with, which begins those of a corner, stands before its own."""
WITHOUT_A_LEDGER = N_('leave {option} out, or give --shed ledger')
UNUSED = {
    REGULAR: ('ledger_thickness', 'run_to'),
    CORNER: ('ledger_thickness', 'run_to'),
    MANY_SIDED: (
        'plate_length',
        'ridge_thickness',
        'valley_thickness',
        'valley_stock',
        'ledger_thickness',
        'run_to',
    ),
    SHED: (
        'plate_length',
        'ridge_thickness',
        'hip_thickness',
        'valley_thickness',
        'rafter_thickness',
        'hip_stock',
        'valley_stock',
    ),
}
"""Options that change nothing in an answer about a kind of roof: they are refused, never passed over."""


def declare(parser: argparse.ArgumentParser) -> None:
    """Declare the arguments."""
    parser.add_argument('pitch', metavar='PITCH', help=_('rise of the roof'))
    parser.add_argument('level_run', metavar='RUN', help=_('level run, outside of plate to center of ridge'))
    options.add_format(parser)
    parser.add_argument('--all', action='store_true', help=_('every value, each with its line'))
    shown = _('these only: {names}').format(names=', '.join(SHOWN))
    parser.add_argument('--show', metavar='NAMES', action='append', help=shown)
    options.add_reading(parser)
    spacing = _('a spacing of jacks; give it once for each')
    parser.add_argument('--spacing', metavar='LENGTH', action='append', help=spacing)
    for name in ORDER:
        metavar, words = OPTIONS[name]
        if name == 'corner':
            other = _("the other side's pitch at a corner")
            parser.add_argument('--with', metavar='PITCH', dest='other', help=other)
        parser.add_argument(f'--{name}', metavar=metavar, help=_(words))
    options.add_steep(parser)


def kind_of(args: argparse.Namespace) -> str:
    """Return which kind of roof is asked about."""
    kinds = {
        CORNER: '--with' if args.other is not None else '--corner' if args.corner is not None else '',
        MANY_SIDED: '--sides' if args.sides is not None else '',
        SHED: '--shed' if args.shed is not None else '',
    }
    given = [(kind, option) for kind, option in kinds.items() if option]
    if len(given) > 1:
        first, last = given[0][1], given[-1][1]
        problem = _(ASKS_ABOUT[given[-1][0]]).format(other=first)
        raise BookError(last, problem, '', _('leave {last} or {first} out').format(last=last, first=first))
    return given[0][0] if given else REGULAR


def refuse_what_is_not_used(args: argparse.Namespace, kind: str) -> None:
    """Refuse an option that would change nothing.

    Errors:
        BookError naming it
    """
    unused = list(UNUSED[kind])
    if kind == SHED and options.choice(args.shed, '--shed', tuple(Against)) != Against.LEDGER:
        unused += ['ledger_thickness', 'run_to']
        if args.ledger_thickness is not None or args.run_to is not None:
            option = '--ledger-thickness' if args.ledger_thickness is not None else '--run-to'
            raise BookError(option, _('is of a ledger'), '', _(WITHOUT_A_LEDGER).format(option=option))
    for name in unused:
        if getattr(args, name) is not None:
            option = f'--{name.replace("_", "-")}'
            of_ledger = name in ('ledger_thickness', 'run_to')
            leave = _(WITHOUT_A_LEDGER) if of_ledger else _('leave {option} out')
            raise BookError(option, _(NO_USE[kind]), '', leave.format(option=option))


def picked_groups(args: argparse.Namespace, kind: str) -> list[str]:
    """Return the groups of an answer that --show names; [] for those that are usual."""
    names = [name.strip() for names in args.show or () for name in names.split(',')]
    allowed = SHED_SHOWN if kind == SHED else SHOWN
    if names and kind in (CORNER, MANY_SIDED):
        problem = _('picks from a square corner of one pitch')
        raise BookError('--show', problem, '', _('leave it out, or give --all'))
    if names and args.all:
        problem = _('picks, and --all shows everything')
        raise BookError('--show', problem, '', _('leave one of the two out'))
    for name in names:
        if name not in allowed and name in SHOWN:
            raise BookError('--show', _("a shed has no '{name}'").format(name=name), ', '.join(allowed))
        if name not in allowed:
            problem, advice = _("'{name}' is unknown"), meant(name, allowed, _('--all shows everything'))
            raise BookError('--show', problem.format(name=name), ', '.join(allowed), advice)
    return names
