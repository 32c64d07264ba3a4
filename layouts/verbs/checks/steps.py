"""check steps: a member stepped off, and where its last mark falls."""

from __future__ import annotations

import argparse
from typing import TextIO

from layouts.told.check_data import steps_data
from layouts.verbs.checks import options
from layouts.verbs.options import Subparsers, choice
from layouts.words.checks import steps_lines
from tablegen.checking.members import STEPPED
from tablegen.checking.steps import check_steps, mark_rows
from tablegen.checking.written import written
from tablegen.geometry.stepping import SQUARE
from tablegen.written.lengths import length

EXAMPLES = ('rafterbook check steps --pitch 6 --run "13 ft 5 in" --step "13 3/8"',)


def add(checks: Subparsers) -> None:
    """Declare the check."""
    summary = 'count the steps of a rafter and judge where they end'
    parser = options.add_check(checks, 'steps', summary, run, EXAMPLES)
    options.add_pitch(parser)
    parser.add_argument('--of', metavar='WHAT', default='common', help=f'{", ".join(STEPPED)} (common)')
    parser.add_argument(
        '--run', dest='run_', required=True, metavar='RUN', help='level run of the common rafter'
    )
    parser.add_argument('--step', metavar='LENGTH', help='the step as it was set, to be judged')
    parser.add_argument('--stay-within', metavar='LENGTH', help='what the end may be off by (1/8 in)')
    parser.add_argument('--marks', action='store_true', help='list where the mark of each step goes')
    options.add_format(parser)


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Count the steps and judge their end."""
    form = options.format_of(args)
    kind = choice(args.of, '--of', STEPPED)
    chosen = options.pitch_of(args)
    set_to = None if args.step is None else written(args.step, '--step')
    within = options.optional(args.stay_within, '--stay-within')
    check = check_steps(kind, chosen, length(args.run_, '--run'), set_to, within)
    marks = mark_rows(kind, chosen, check.whole, SQUARE, set_to) if args.marks else ()
    options.put(form, out, steps_lines(check, marks), steps_data(check, marks))
    return options.status(check.verdict)
