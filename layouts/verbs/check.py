"""check: judges a reading, a square's own figures, stepping off, a corner, the square turned over."""

from __future__ import annotations

import argparse
from typing import Protocol, TextIO

from layouts.verbs.checks import corner, length, square, steps, turn_over
from layouts.verbs.checks.options import STATUS
from layouts.verbs.options import Subparsers, add_verb
from layouts.words.say import N_, _


class Check(Protocol):
    """A check's module: it declares its arguments, and answers."""

    def add(self, checks: Subparsers) -> None:
        """Declare the check."""

    def run(self, args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
        """Make the check and return the exit status."""


CHECKS: dict[str, Check] = {
    'length': length,
    'square': square,
    'steps': steps,
    'corner': corner,
    'turn-over': turn_over,
}
NOTES = N_('Each check has its own help: rafterbook check length --help')
EXAMPLES = (
    'rafterbook check length --pitch 6 --run "1 ft" --reads "13 3/8"',
    'rafterbook check square',
    *steps.EXAMPLES,
    *corner.EXAMPLES,
    *turn_over.EXAMPLES,
)


def add(subparsers: Subparsers) -> None:
    """Declare the verb and its checks."""
    summary = _('check the tool in your hand: a reading, a square, steps, a corner')
    parser = add_verb(subparsers, 'check', summary, run, EXAMPLES, f'{_(STATUS)}\n{_(NOTES)}')
    checks = parser.add_subparsers(dest='check', metavar='CHECK', required=True)
    for module in CHECKS.values():
        module.add(checks)


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Make the check that was asked for."""
    return CHECKS[args.check].run(args, out, err)
