"""The options of find: which kind of roof they ask about, and which of them mean nothing there."""

from __future__ import annotations

import argparse

from layouts.told.find_answer import SHED_SHOWN, SHOWN
from layouts.verbs import options
from tablegen.errors import BookError, meant
from tablegen.roof.names import Against

REGULAR, CORNER, MANY_SIDED, SHED = 'regular', 'corner', 'many-sided', 'shed'

KIND_NAMES = {
    REGULAR: 'a roof of one pitch with square corners',
    CORNER: 'a corner of two pitches',
    MANY_SIDED: 'a many-sided roof',
    SHED: 'a shed',
}
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
    parser.add_argument('pitch', metavar='PITCH', help='rise of the roof')
    parser.add_argument('level_run', metavar='RUN', help='level run, outside of plate to center of ridge')
    parser.add_argument('--format', metavar='FORMAT', default='text', help='text (default) or json')
    parser.add_argument('--all', action='store_true', help='every value, each with its line')
    parser.add_argument('--show', metavar='NAMES', action='append', help=f'these only: {", ".join(SHOWN)}')
    options.add_reading(parser)
    parser.add_argument(
        '--spacing', metavar='LENGTH', action='append', help='a spacing of jacks; give it once for each'
    )
    parser.add_argument('--stock', metavar='SIZE', help='of rafters: 2x4 to 2x12 (default 2x8)')
    for part in ('hip', 'valley'):
        parser.add_argument(f'--{part}-stock', metavar='SIZE', help=f'of the {part}s (default the rafters’)')
    parser.add_argument('--seat', metavar='LENGTH', help="level seat of the bird's mouth (default 3 1/2 in)")
    parser.add_argument('--overhang', metavar='LENGTH', help='of the tail, level (default 12 in)')
    parser.add_argument(
        '--plate-length', metavar='LENGTH', help='of a hip roof, outside to outside, for its ridge'
    )
    for part, usual in (
        ('ridge', '1 1/2 in'),
        ('hip', '1 1/2 in'),
        ('valley', 'the hip’s'),
        ('rafter', '1 1/2 in'),
    ):
        parser.add_argument(f'--{part}-thickness', metavar='LENGTH', help=f'of the {part} (default {usual})')
    parser.add_argument('--with', metavar='PITCH', dest='other', help="the other side's pitch at a corner")
    parser.add_argument('--corner', metavar='DEGREES', help='plan angle of that corner (default 90)')
    parser.add_argument('--sides', metavar='NUMBER', help='of a regular many-sided roof')
    parser.add_argument(
        '--shed',
        metavar='AGAINST',
        help='of a shed: wall, for rafters against it, or ledger, for rafters on one',
    )
    parser.add_argument('--ledger-thickness', metavar='LENGTH', help='of a shed’s ledger (default 1 1/2 in)')
    parser.add_argument(
        '--run-to', metavar='FACE', help='where RUN ends on a ledger: wall (default) or ledger'
    )
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
        raise BookError(
            last,
            f'asks about {KIND_NAMES[given[-1][0]]}, {first} does not',
            '',
            f'leave {last} or {first} out',
        )
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
            raise BookError(option, 'is of a ledger', '', f'leave {option} out, or give --shed ledger')
    for name in unused:
        if getattr(args, name) is not None:
            option = f'--{name.replace("_", "-")}'
            ledger = ', or give --shed ledger' if name in ('ledger_thickness', 'run_to') else ''
            raise BookError(
                option, f'{KIND_NAMES[kind]} has no use for it', '', f'leave {option} out{ledger}'
            )


def picked_groups(args: argparse.Namespace, kind: str) -> list[str]:
    """Return the groups of an answer that --show names; [] for those that are usual."""
    names = [name.strip() for names in args.show or () for name in names.split(',')]
    allowed = SHED_SHOWN if kind == SHED else SHOWN
    if names and kind in (CORNER, MANY_SIDED):
        raise BookError(
            '--show', 'picks from a square corner of one pitch', '', 'leave it out, or give --all'
        )
    if names and args.all:
        raise BookError('--show', 'picks, and --all shows everything', '', 'leave one of the two out')
    for name in names:
        if name not in allowed and name in SHOWN:
            raise BookError('--show', f"a shed has no '{name}'", ', '.join(allowed))
        if name not in allowed:
            advice = meant(name, allowed, '--all shows everything')
            raise BookError('--show', f"'{name}' is unknown", ', '.join(allowed), advice)
    return names
