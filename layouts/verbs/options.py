"""What the verbs share: how a verb is declared, and how its arguments change the settings."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Sequence
from dataclasses import replace
from fractions import Fraction
from typing import Protocol, TextIO

from tablegen.errors import BookError, SettingsFaults
from tablegen.numbers import text
from tablegen.settings import READERS, Settings, run_faults
from tablegen.written.lengths import ALLOWED, length
from tablegen.written.ranges import WrittenRange, split_range

FORMATS = ('text', 'json')
Run = Callable[[argparse.Namespace, TextIO, TextIO], int]
"""Answers what was asked: the arguments, where data goes, where remarks go; returns the exit status."""


class Subparsers(Protocol):
    """What a verb or a check adds its own parser to."""

    def add_parser(
        self,
        name: str,
        *,
        help: str,
        description: str,
        epilog: str,
        formatter_class: type[argparse.HelpFormatter],
        allow_abbrev: bool,
    ) -> argparse.ArgumentParser:
        """Return a new parser under a name."""


def add_verb(
    subparsers: Subparsers, name: str, summary: str, run: Run, examples: Sequence[str], notes: str = ''
) -> argparse.ArgumentParser:
    """Return a new verb's parser, whose help ends with examples that can be pasted."""
    shown = '\n'.join(f'  {example}' for example in examples)
    parser = subparsers.add_parser(
        name,
        help=summary,
        description='\n\n'.join(part for part in (f'{summary[0].upper()}{summary[1:]}.', notes) if part),
        epilog=f'{"examples" if len(examples) > 1 else "example"}:\n{shown}',
        formatter_class=argparse.RawDescriptionHelpFormatter,
        allow_abbrev=False,
    )
    parser.set_defaults(run=run, parser=parser)
    return parser


def add_reading(parser: argparse.ArgumentParser) -> None:
    """Declare how lengths are rounded and read."""
    parser.add_argument(
        '--nearest', metavar='PART', help='round lengths to this part of an inch: 1/2 to 1/64'
    )
    parser.add_argument('--feet-inches', action='store_true', help='read lengths as feet and inches')


def add_steep(parser: argparse.ArgumentParser) -> None:
    """Declare that a pitch may be steep."""
    parser.add_argument('--steep', action='store_true', help='let pitches over 24 in 12 pass')


def choice(value: str, option: str, allowed: Sequence[str]) -> str:
    """Return a value that is one of those allowed."""
    if value not in allowed:
        raise BookError(option, f"'{value}' is unknown", ', '.join(allowed))
    return value


def above_zero(written: str, place: str) -> Fraction:
    """Return a length in inches that is not 0."""
    inches = length(written, place)
    if not inches:
        raise BookError(place, f"'{written}' measures nothing", ALLOWED)
    return inches


def thickness(written: str, option: str) -> Fraction:
    """Return a board's thickness in inches, as the settings allow it."""
    return changed(Settings(), 'stock.ridge', written, option).ridge_thickness


def changed(settings: Settings, key: str, value: object, option: str) -> Settings:
    """Return the settings with one key as an argument gives it.

    Errors:
        BookError that names the option
    """
    try:
        return READERS[key](value, option, settings)
    except SettingsFaults as several:
        raise SettingsFaults('', several.faults) from None


def with_reading(settings: Settings, args: argparse.Namespace) -> Settings:
    """Return the settings with --nearest, --feet-inches and --steep put in."""
    if args.nearest is not None:
        settings = changed(settings, 'smallest_part', args.nearest, '--nearest')
    if args.feet_inches:
        settings = changed(settings, 'lengths', text.FEET_INCHES, '--feet-inches')
    return with_steep(settings, args)


def with_steep(settings: Settings, args: argparse.Namespace) -> Settings:
    """Return the settings with --steep put in."""
    return replace(settings, steep=True) if getattr(args, 'steep', False) else settings


def with_pitches(settings: Settings, written: str) -> Settings:
    """Return the settings with the pitches of an argument: '6', '4,6,8', '4 to 12 by 1/2' or several."""
    return changed(settings, 'pitches', [item.strip() for item in written.split(',')], '--pitches')


def with_runs(settings: Settings, written: str | None) -> Settings:
    """Return the settings with the runs of an argument: '4 ft' or '1 in to 24 ft by 1 in'; None keeps them.

    Errors:
        BookError if the runs make no table, also where only the smallest part has changed
    """
    if written is not None:
        read = split_range(written) or WrittenRange(written, written, None)
        words = {'runs.from': read.first, 'runs.to': read.last} | (
            {'runs.by': read.step} if read.step else {}
        )
        for key, value in words.items():
            settings = changed(settings, key, value, '--runs')
    if faults := run_faults(settings):
        raise SettingsFaults('', [fault if written is None else fault.at('--runs') for fault in faults])
    return settings
