"""check: judges a reading, a square's own figures, stepping off, a corner, the square turned over."""

from __future__ import annotations

import argparse
import csv
import json
import sys
from collections.abc import Sequence

from layouts import check_data, check_words, square_words
from tablegen.checking import corner, reading, square_figures, square_file, square_judging, steps
from tablegen.checking.allowance import RIGHT
from tablegen.checking.members import MEMBERS, STEPPED
from tablegen.checking.written import written
from tablegen.errors import BookError
from tablegen.figures import Measure
from tablegen.lengths import length
from tablegen.pitch import pitch
from tablegen.settings import smallest_part

TEXT, JSON, CSV = 'text', 'json', 'csv'
ALL_RIGHT, NOT_RIGHT, BAD_INPUT = 0, 1, 2
STANDARD_INPUT = '-'
MOST_CHARACTERS = 1_000_000
READS = 'as it was read: 13 3/8 says eighths, 13 6/16 sixteenths, 13.38 hundredths'


def add(subparsers) -> None:
    """Declare the verb and its checks."""
    parser = subparsers.add_parser(
        'check',
        help='check a reading, a square, stepping off, a corner',
        description='Check the tool in your hand. Exit status: 0 right, 1 wrong, 2 bad input.',
        epilog='each check has its own help: rafterbook check length --help',
        formatter_class=argparse.RawDescriptionHelpFormatter,
        allow_abbrev=False,
    )
    parser.set_defaults(run=run)
    checks = parser.add_subparsers(dest='check', metavar='CHECK', required=True)
    _add_length(checks)
    _add_square(checks)
    _add_steps(checks)
    _add_corner(checks)
    _add_turn_over(checks)


def run(args: argparse.Namespace, out, err) -> int:
    """Make one check, write what it finds, return 0 for right, 1 for wrong, 2 for bad input."""
    try:
        return CHECKS[args.check](args, out)
    except BookError as fault:
        for line in fault.lines():
            err.write(f'{line}\n')
        return BAD_INPUT


def _length(args, out) -> int:
    spaced = args.of == 'jack-difference'
    option, given, other = (
        ('--spacing', args.spacing, args.run_) if spaced else ('--run', args.run_, args.spacing)
    )
    if given is None or other is not None:
        refused = '--run' if spaced else '--spacing'
        said = 'is missing' if given is None else f'stands for {args.of}, and {refused} does not'
        raise BookError(option, said, f'{option} with --of {args.of}, and no {refused}')
    check = reading.check_length(
        args.of,
        _pitch(args),
        length(given, option),
        written(args.reads, '--reads'),
        Measure(smallest_part(args.nearest, '--nearest')),
        _optional(args.total_run, '--total-run'),
        _optional(args.within, '--within'),
        args.tape,
    )
    _put(args, out, check_words.length_lines(check), check_data.length_data(check))
    return _status(check.verdict)


def _square(args, out) -> int:
    if args.reads is not None:
        for option, given in (('--rises', args.rises is not None), ('--blank', args.blank)):
            if given:
                raise BookError(option, 'does not go with --reads', '', f'leave out {option}')
        check = square_judging.judge_square(square_file.read_square(_content(args.reads), args.reads))
        if args.format == CSV:
            _put_csv(out, check_data.judged_rows(check))
        else:
            _put(args, out, square_words.judged_lines(check), check_data.judged_data(check))
        return _status(check.verdict)
    rows = square_figures.engraved_rows(_rises(args.rises))
    if args.blank and args.format == JSON:
        raise BookError('--blank', 'is a CSV to fill in', '', 'leave out --format json')
    if args.format == CSV or args.blank:
        _put_csv(out, check_data.figure_rows(rows, args.blank))
    else:
        _put(args, out, square_words.figure_lines(rows), check_data.figures_data(rows))
    return ALL_RIGHT


def _steps(args, out) -> int:
    chosen = _pitch(args)
    set_to = None if args.step is None else written(args.step, '--step')
    within = length(args.stay_within, '--stay-within')
    check = steps.check_steps(args.of, chosen, length(args.run_, '--run'), set_to, within)
    marks = steps.mark_rows(args.of, chosen, check.whole, steps.SQUARE) if args.marks else ()
    _put(args, out, check_words.steps_lines(check, marks), check_data.steps_data(check, marks))
    return _status(check.verdict)


def _corner(args, out) -> int:
    side, other = (length(one, '--sides') for one in args.sides)
    within = _optional(args.within, '--within')
    check = corner.check_corner(side, other, written(args.diagonal, '--diagonal'), within, args.tape)
    _put(args, out, check_words.corner_lines(check), check_data.corner_data(check))
    return _status(check.verdict)


def _turn_over(args, out) -> int:
    within = _optional(args.within, '--within')
    check = corner.turn_over(written(args.gap, '--gap'), length(args.over, '--over'), within)
    _put(args, out, check_words.turn_over_lines(check), check_data.turn_over_data(check))
    return _status(check.verdict)


CHECKS = {
    'length': _length,
    'square': _square,
    'steps': _steps,
    'corner': _corner,
    'turn-over': _turn_over,
}


def _add_length(checks) -> None:
    parser = _check(
        checks,
        'length',
        'judge a length that was read against the exact one',
        [
            'rafterbook check length --pitch 6 --run "1 ft" --reads "13 3/8" \\\n    --total-run "12 ft"',
            'rafterbook check length --pitch 8 --of jack-difference \\\n    --spacing "16 in" --reads 19.23',
        ],
    )
    _add_pitch(parser)
    parser.add_argument('--of', choices=tuple(MEMBERS), default='common', help='what was read (common)')
    parser.add_argument('--run', dest='run_', metavar='RUN', help='level run of the common rafter')
    parser.add_argument('--spacing', help='of jacks on centre, with --of jack-difference')
    parser.add_argument('--reads', required=True, metavar='LENGTH', help=READS)
    parser.add_argument('--total-run', metavar='RUN', help='the whole run, in which the error is made again')
    parser.add_argument('--nearest', default='1/16', metavar='PART', help='smallest part of your book (1/16)')
    _add_within(parser, 'the reading')
    _add_tape(parser)
    _add_format(parser)


def _add_square(checks) -> None:
    parser = _check(
        checks,
        'square',
        'print what a square should carry, or judge what yours shows',
        [
            'rafterbook check square',
            'rafterbook check square --blank > myscale.csv',
            'rafterbook check square --reads myscale.csv',
        ],
        'Fill in what your square shows; leave a cell empty where it shows nothing.\n',
    )
    parser.add_argument('--rises', metavar='RISES', help="such as '2 to 18' (the usual) or 4,6,8; 1 to 24")
    parser.add_argument(
        '--reads', metavar='FILE', help="a CSV of what the square shows; '-' is standard input"
    )
    parser.add_argument('--blank', action='store_true', help='print such a CSV to fill in')
    _add_format(parser, (TEXT, CSV, JSON))


def _add_steps(checks) -> None:
    parser = _check(
        checks,
        'steps',
        'count the steps of a rafter and judge where they end',
        ['rafterbook check steps --pitch 6 --run "13 ft 5 in" --step "13 3/8"'],
    )
    _add_pitch(parser)
    parser.add_argument('--of', choices=STEPPED, default='common', help='what is stepped off (common)')
    parser.add_argument(
        '--run', dest='run_', required=True, metavar='RUN', help='level run of the common rafter'
    )
    parser.add_argument('--step', metavar='LENGTH', help='the step as it was set (the exact one to 1/16)')
    parser.add_argument(
        '--stay-within', default='1/8', metavar='LENGTH', help='what the end may be off by (1/8 in)'
    )
    parser.add_argument('--marks', action='store_true', help='list where the mark of each step goes')
    _add_format(parser)


def _add_corner(checks) -> None:
    parser = _check(
        checks,
        'corner',
        'judge a corner by its diagonal',
        ['rafterbook check corner --sides "6 ft" "8 ft" --diagonal "10 ft 1/8 in"'],
    )
    parser.add_argument(
        '--sides', nargs=2, required=True, metavar='LENGTH', help='from the corner along each side'
    )
    parser.add_argument('--diagonal', required=True, metavar='LENGTH', help='between their ends')
    _add_within(parser, 'the diagonal')
    _add_tape(parser)
    _add_format(parser)


def _add_turn_over(checks) -> None:
    parser = _check(
        checks,
        'turn-over',
        'judge a square by turning it over on a straight edge',
        ['rafterbook check turn-over --gap 1/16 --over "16 in"'],
    )
    parser.add_argument('--gap', required=True, metavar='LENGTH', help='between the two lines')
    parser.add_argument(
        '--over', default='16 in', metavar='LENGTH', help='how far from their point (16 in, the short arm)'
    )
    _add_within(parser, 'the gap')
    _add_format(parser)


def _check(
    checks, name: str, summary: str, examples: Sequence[str], note: str = ''
) -> argparse.ArgumentParser:
    shown = '\n'.join(f'  {example}' for example in examples).replace('\n    ', '\n      ')
    return checks.add_parser(
        name,
        help=summary,
        description=f'{summary[0].upper()}{summary[1:]}.\n{note}Exit status: 0 right, 1 wrong, 2 bad input.',
        epilog=f'{"examples" if len(examples) > 1 else "example"}:\n{shown}\n\n{check_words.DEFER}',
        formatter_class=argparse.RawDescriptionHelpFormatter,
        allow_abbrev=False,
    )


def _add_pitch(parser) -> None:
    parser.add_argument('--pitch', required=True, help='such as 6, 6/12, 7 1/2 or 26.565 deg')
    parser.add_argument('--steep', action='store_true', help='let a pitch over 24 in 12 pass')


def _add_within(parser, what: str) -> None:
    parser.add_argument(
        '--within', metavar='LENGTH', help=f'what {what} may be off by (half of its finest part)'
    )


def _add_tape(parser) -> None:
    parser.add_argument('--tape', action='store_true', help='allow for the tape itself, by NIST Handbook 44')


def _add_format(parser, formats: Sequence[str] = (TEXT, JSON)) -> None:
    parser.add_argument('--format', choices=formats, default=TEXT, help='how it is written (text)')


def _pitch(args):
    return pitch(args.pitch, '--pitch', args.steep)


def _optional(given: str | None, option: str):
    return None if given is None else length(given, option)


def _rises(given: str | None) -> Sequence[int]:
    if given is None:
        return square_figures.USUAL_RISES
    allowed = f"'2 to 18' or 4,6,8: {square_file.RISES_ALLOWED}"
    words = given.split(' to ') if ' to ' in given else given.split(',')
    numbers = [int(word) if word.strip().isascii() and word.strip().isdigit() else 0 for word in words]
    if ' to ' in given and len(numbers) == 2:
        numbers = list(range(numbers[0], numbers[1] + 1)) if all(numbers) else []
    if not numbers or any(number not in square_figures.RISES for number in numbers):
        raise BookError('--rises', f"'{given}' is off the table", allowed)
    return sorted(set(numbers))


def _content(path: str) -> str:
    allowed = 'a CSV file of what the square shows'
    try:
        if path == STANDARD_INPUT:
            content = sys.stdin.read(MOST_CHARACTERS + 1)
        else:
            with open(path, encoding='utf-8-sig', newline='') as file:
                content = file.read(MOST_CHARACTERS + 1)
    except UnicodeDecodeError as fault:
        raise BookError(path, f'is no UTF-8 text, at byte {fault.start + 1}', allowed) from None
    except (OSError, ValueError) as fault:  # ValueError: a zero byte in the name
        said = f'cannot be read: {getattr(fault, "strerror", None) or fault}'
        raise BookError(path, said, allowed, square_file.TEMPLATE) from None
    if len(content) > MOST_CHARACTERS:
        raise BookError(path, 'is too long', f'up to {MOST_CHARACTERS:,} characters')
    return content


def _put(args, out, lines: Sequence[str], data: dict) -> None:
    if args.format == JSON:
        out.write(json.dumps(data, ensure_ascii=False, indent=2) + '\n')
    else:
        out.write('\n'.join(lines) + '\n')


def _put_csv(out, rows: Sequence[Sequence[str]]) -> None:
    csv.writer(out, lineterminator='\n').writerows(rows)


def _status(verdict: str) -> int:
    return ALL_RIGHT if verdict == RIGHT else NOT_RIGHT
