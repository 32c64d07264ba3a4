"""find: the lengths, cuts and deductions of one run at one pitch, for a person or for a program."""

from __future__ import annotations

import argparse
from fractions import Fraction
from typing import TextIO

from msgspec.structs import replace

from layouts.told.find_answer import find_json, find_text
from layouts.verbs import options
from layouts.verbs.boards import boards_given
from layouts.verbs.find_options import declare, kind_of, picked_groups, refuse_what_is_not_used
from layouts.verbs.options import FORMATS, Subparsers
from layouts.words.say import N_, _
from tablegen.errors import BookError
from tablegen.geometry.pitch import Pitch
from tablegen.roof.names import Against
from tablegen.roof.question import SQUARE_DEGREES, Kind, ManySided, Regular, RoofQuestion, Shed, TwoPitches
from tablegen.settings import Settings
from tablegen.written.degrees import degrees
from tablegen.written.lengths import ALLOWED, length
from tablegen.written.pitches import pitch

NOTES = N_("""\
PITCH is 6, 6/12, 6 in 12, 6:12, 7.5, 7 1/2 or 26.565 deg. RUN is the level run
of the common rafter: 4 ft, 4' 7 1/2", 55.5 in, 55 1/2 (inches), 1.4 m. Put
quotes round what has spaces. --with and --corner answer for a corner of two
pitches, RUN being that of PITCH's side; --sides for a many-sided roof, RUN from
the middle of the plan to the middle of a side; --shed for a roof of one slope,
RUN to the wall or to the ledger's face. JSON carries everything.""")
EXAMPLES = (
    'rafterbook find 6 "4 ft"',
    'rafterbook find "7 1/2" "13 ft 5 in" --nearest 1/8 --spacing "16 in"',
    'rafterbook find 8 "10 ft" --hip-stock 2x10 --seat "5 1/2" --show seat,tail',
    'rafterbook find 8 "10 ft" --with 12',
    'rafterbook find 8 "10 ft" --sides 8 --all',
    'rafterbook find 4 "8 ft" --shed ledger --ledger-thickness "1 1/2"',
    'rafterbook find 8 "10 ft" --format json',
)


def add(subparsers: Subparsers) -> None:
    """Declare the verb."""
    summary = _('look up the lengths and cuts of one run at one pitch')
    declare(options.add_verb(subparsers, 'find', summary, run, EXAMPLES, _(NOTES)))


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Print what is known of the run."""
    form = options.choice(args.format, '--format', FORMATS)
    kind = kind_of(args)
    refuse_what_is_not_used(args, kind)
    picked = picked_groups(args, kind)
    settings = options.with_options(Settings(), args)
    roof = pitch(args.pitch, 'PITCH', settings.steep)
    run_in = length(args.level_run, 'RUN')
    if not run_in:
        problem = _("'{run}' is 0, and a run of 0 has no rafter").format(run=args.level_run)
        raise BookError('RUN', problem, ALLOWED)
    ask = RoofQuestion(roof, run_in, _kind(args, roof), spacings=settings.spacings, measure=settings.measure)
    ask = _with_boards(args, ask)
    try:
        out.write(find_json(ask, picked) if form == 'json' else find_text(ask, args.all, picked))
    except BookError as fault:
        raise fault.at('--with') if fault.place == 'corner' and args.corner is None else fault from None
    return 0


def _kind(args: argparse.Namespace, own: Pitch) -> Kind:
    """Return the kind of roof that is asked about."""
    if args.other is not None or args.corner is not None:
        other = own if args.other is None else pitch(args.other, '--with', args.steep)
        plan = SQUARE_DEGREES if args.corner is None else degrees(args.corner, '--corner', 180)
        return TwoPitches(other, plan)
    if args.sides is not None:
        if not args.sides.isascii() or not args.sides.isdigit() or len(args.sides) > 4:
            problem = _("'{sides}' is no number of sides").format(sides=args.sides)
            raise BookError('--sides', problem, _('a whole number such as 5, 6, 8, 12'))
        return ManySided(int(args.sides))
    if args.shed is None:
        return Regular()
    ledger = Settings().ridge_thickness
    if args.ledger_thickness is not None:
        ledger = options.thickness(args.ledger_thickness, '--ledger-thickness')
    run_to = Against(options.choice(args.run_to or Against.WALL, '--run-to', tuple(Against)))
    against = Against(args.shed)
    return Shed(against, ledger if against is Against.LEDGER else Fraction(0), run_to)


def _with_boards(args: argparse.Namespace, ask: RoofQuestion) -> RoofQuestion:
    """Return the question with the boards that are given, and what is usual where nothing is said."""
    given = boards_given(args)
    if args.plate_length is not None:
        given['plate_length_in'] = length(args.plate_length, '--plate-length')
    return replace(ask, **{'overhang_in': min(ask.overhang_in, ask.run_in)} | given)
