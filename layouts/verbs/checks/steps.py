"""check steps: a member stepped off, and where its last mark falls."""

from __future__ import annotations

import argparse
from typing import TextIO

from layouts.verbs.checks import options
from layouts.verbs.options import Subparsers, choice
from layouts.words.say import _
from layouts.words.steps import steps_lines
from tablegen.checking.members import STEPPED
from tablegen.checking.steps import check_steps
from tablegen.checking.written import written
from tablegen.written.lengths import length

EXAMPLES = ('rafterbook check steps --pitch 6 --run "13 ft 5 in" --step "13 3/8"',)


def add(checks: Subparsers) -> None:
    """Declare the check."""
    summary = _('count the steps of a rafter and judge where they end')
    parser = options.add_check(checks, 'steps', summary, run, EXAMPLES)
    options.add_pitch(parser)
    parser.add_argument('--of', metavar='WHAT', default='common', help=f'{", ".join(STEPPED)} (common)')
    parser.add_argument(
        '--run', dest='run_', required=True, metavar='LENGTH', help=_('level run of the common rafter')
    )
    parser.add_argument('--step', metavar='LENGTH', help=_('the step as it was set, to be judged'))
    parser.add_argument('--within', metavar='LENGTH', help=_('what the end may be off by (1/8 in)'))
    parser.add_argument('--marks', action='store_true', help=_('list where the mark of each step goes'))
    options.add_format(parser)


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Count the steps and judge their end."""
    form = options.format_of(args)
    kind = choice(args.of, '--of', STEPPED)
    chosen = options.pitch_of(args)
    set_to = None if args.step is None else written(args.step, '--step')
    within = options.optional(args.within, '--within')
    check = check_steps(kind, chosen, length(args.run_, '--run'), set_to, within, args.marks)
    return options.tell(form, out, 'steps', check, steps_lines(check))
