"""check square: what a square should carry, and what its own figures say."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from io import TextIOWrapper
from typing import TextIO

from layouts.told.check_data import blank_rows, judged_rows
from layouts.told.table_data import csv_rows, json_rows
from layouts.verbs.checks import options
from layouts.verbs.checks.options import CSV, JSON, TEXT
from layouts.verbs.options import Subparsers
from layouts.verbs.settings_file import encoding_of, no_text, standard_input, unreadable
from layouts.words.say import N_, _, say
from layouts.words.square import figure_lines, judged_lines
from tablegen.checking.square_figures import RISES, USUAL_RISES, engraved_table
from tablegen.checking.square_file import RISES_ALLOWED, TEMPLATE, read_square
from tablegen.checking.square_judging import judge_square
from tablegen.errors import BookError
from tablegen.messages import message
from tablegen.written.numbers import NoNumber, number
from tablegen.written.ranges import split_range

EXAMPLES = (
    'rafterbook check square',
    'rafterbook check square --blank > myscale.csv',
    'rafterbook check square --reads myscale.csv',
)
NOTES = N_('Fill in what yours shows; a cell may stay empty.')
FORMATS = (TEXT, CSV, JSON)
STANDARD_INPUT = '-'
MOST_CHARACTERS = 64_000


def add(checks: Subparsers) -> None:
    """Declare the check."""
    summary = _('print what a square should carry, or judge what yours shows')
    parser = options.add_check(checks, 'square', summary, run, EXAMPLES, _(NOTES))
    parser.add_argument(
        '--pitches', metavar='LIST', help=_("such as '2 to 18' (the usual) or 4,6,8; 1 to 24")
    )
    parser.add_argument(
        '--reads', metavar='FILE', help=_("a CSV of what the square shows; '-' is standard input")
    )
    parser.add_argument('--blank', action='store_true', help=_('print such a CSV to fill in'))
    options.add_format(parser, FORMATS)


def run(args: argparse.Namespace, out: TextIO, err: TextIO) -> int:
    """Print the figures, or judge those of a file."""
    form = options.format_of(args, FORMATS)
    return _print(args, form, out) if args.reads is None else _judge(args, form, out)


def _print(args: argparse.Namespace, form: str, out: TextIO) -> int:
    carried = engraved_table(_rises(args.pitches))
    if args.blank and form == JSON:
        raise BookError('--blank', _('is a CSV to fill in'), '', _('leave out --format json'))
    if form == CSV or args.blank:
        options.put_rows(out, blank_rows(carried) if args.blank else csv_rows(carried))
    else:
        figures = {'check': 'square', 'rows': list(json_rows(carried))}
        options.put(form, out, figure_lines(carried), figures)
    return options.ALL_RIGHT


def _judge(args: argparse.Namespace, form: str, out: TextIO) -> int:
    for option, given in (('--pitches', args.pitches is not None), ('--blank', args.blank)):
        if given:
            leave = _('leave out {option}').format(option=option)
            raise BookError(option, _('does not go with --reads'), '', leave)
    check = judge_square(read_square(_content(args.reads), args.reads))
    if form == CSV:
        options.put_rows(out, judged_rows(check))
        return options.status(check.verdict)
    return options.tell(form, out, 'square', check, judged_lines(check))


def _rises(given: str | None) -> Sequence[int]:
    if given is None:
        return USUAL_RISES
    allowed = _("'2 to 18' or 4,6,8: {rises}").format(rises=say(RISES_ALLOWED))
    refusal = BookError('--pitches', message('square.off_the_table', written=given), allowed)
    read = split_range(given)
    words = [read.first, read.last] if read else given.split(',')
    try:
        numbers = [number(word.strip()) for word in words]
    except NoNumber:
        raise refusal from None
    if any(one not in RISES for one in numbers) or (read and (read.step or numbers[0] > numbers[1])):
        raise refusal
    whole = [int(one) for one in numbers]
    return range(whole[0], whole[1] + 1) if read else sorted(set(whole))


def _content(path: str) -> str:
    allowed = _('a CSV file of what the square shows')
    try:
        if path == STANDARD_INPUT:
            content = standard_input().read(MOST_CHARACTERS + 1)
        else:
            with open(path, 'rb') as raw, TextIOWrapper(raw, encoding_of(raw.peek(2)), newline='') as file:
                content = file.read(MOST_CHARACTERS + 1)
    except UnicodeDecodeError as fault:
        raise BookError(path, no_text(fault), allowed) from None
    except (OSError, ValueError) as fault:  # ValueError: a zero byte in the name
        raise BookError(path, unreadable(fault), allowed, TEMPLATE) from None
    if len(content) > MOST_CHARACTERS:
        most = _('up to {most:,} characters').format(most=MOST_CHARACTERS)
        raise BookError(path, _('is too long'), most)
    return content
