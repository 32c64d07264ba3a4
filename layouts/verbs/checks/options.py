"""What the checks share: how one is declared, its common options, and how its answer is written."""

from __future__ import annotations

import argparse
import csv
import json
from collections.abc import Iterable, Mapping, Sequence
from fractions import Fraction
from typing import Protocol, TextIO

from layouts.told.check_data import check_data
from layouts.verbs.options import A_PITCH, FORMATS, Run, Subparsers, add_steep, add_verb, choice
from layouts.verbs.options import add_format as add_format  # declared as elsewhere
from layouts.words.checks import DEFER
from layouts.words.say import N_, _
from tablegen.checking.allowance import Verdict
from tablegen.geometry.pitch import Pitch
from tablegen.written.lengths import length
from tablegen.written.pitches import pitch

TEXT, JSON, CSV = 'text', 'json', 'csv'
ALL_RIGHT, NOT_RIGHT = 0, 1
STATUS = N_('Exit status: 0 right or nothing to judge, 1 wrong, 2 bad input.')


class Judged(Protocol):
    """A check's record, which a verdict ends."""

    @property
    def verdict(self) -> Verdict:
        """Return what was found."""


def add_check(
    checks: Subparsers, name: str, summary: str, run: Run, examples: Sequence[str], notes: str = ''
) -> argparse.ArgumentParser:
    """Return a new check's parser, whose help ends with examples that can be pasted."""
    told = '\n'.join(part for part in (notes, _(STATUS), _(DEFER)) if part)
    return add_verb(checks, name, summary, run, examples, told)


def add_pitch(parser: argparse.ArgumentParser) -> None:
    """Declare the pitch."""
    parser.add_argument('--pitch', required=True, help=_(A_PITCH))
    add_steep(parser)


def add_within(parser: argparse.ArgumentParser, words: str) -> None:
    """Declare what may be off by how much."""
    parser.add_argument('--within', metavar='LENGTH', help=words)


def add_tape(parser: argparse.ArgumentParser) -> None:
    """Declare the tape's own tolerance."""
    parser.add_argument(
        '--tape', action='store_true', help=_('allow for the tape itself, by NIST Handbook 44')
    )


def format_of(args: argparse.Namespace, formats: Sequence[str] = FORMATS) -> str:
    """Return how the answer is to be written."""
    return choice(args.format, '--format', formats)


def pitch_of(args: argparse.Namespace) -> Pitch:
    """Return the pitch that was given."""
    return pitch(args.pitch, '--pitch', args.steep)


def optional(given: str | None, option: str) -> Fraction | None:
    """Return a length that need not be given, in inches."""
    return None if given is None else length(given, option)


def put(form: str, out: TextIO, lines: Sequence[str], data: Mapping[str, object]) -> None:
    """Write an answer as sentences or as one JSON object."""
    if form == JSON:
        out.write(json.dumps(data, ensure_ascii=False, indent=2) + '\n')
    else:
        out.write('\n'.join(lines) + '\n')


def put_rows(out: TextIO, rows: Iterable[Sequence[str]]) -> None:
    """Write rows as CSV."""
    csv.writer(out, lineterminator='\n').writerows(rows)


def tell(form: str, out: TextIO, name: str, check: Judged, lines: Sequence[str]) -> int:
    """Write a check's answer and return the exit status of its verdict."""
    put(form, out, lines, check_data(name, check))
    return status(check.verdict)


def status(verdict: Verdict) -> int:
    """Return the exit status of a verdict."""
    return NOT_RIGHT if verdict == Verdict.WRONG else ALL_RIGHT
