"""What the verbs share: how a verb is declared, and how its arguments change the settings."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Mapping, Sequence
from fractions import Fraction
from pathlib import Path
from typing import Any, Protocol, TextIO

from msgspec.structs import replace

from layouts.words.say import N_, _, n_
from tablegen.errors import BookError, SettingsFaults
from tablegen.messages import message
from tablegen.numbers import text
from tablegen.numbers.units import INCHES
from tablegen.settings import READERS, Settings, run_faults
from tablegen.written.lengths import ALLOWED, length
from tablegen.written.pitches import STEEPEST
from tablegen.written.ranges import WrittenRange, split_range

FORMATS = ('text', 'json')
OUTPUT = 'output'
A_PITCH = N_('such as 6, 6/12, 7 1/2 or 26.565 deg')
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
        allow_abbrev: bool,
    ) -> argparse.ArgumentParser:
        """Return a new parser under a name."""


def add_verb(
    subparsers: Subparsers, name: str, summary: str, run: Run, examples: Sequence[str], notes: str = ''
) -> argparse.ArgumentParser:
    """Return a new verb's parser, whose help ends with examples that can be pasted."""
    shown = '\n'.join(f'  {example}' for example in examples)
    heading = n_('example', 'examples', len(examples))
    parser = subparsers.add_parser(
        name,
        help=summary,
        description='\n\n'.join(part for part in (f'{summary[0].upper()}{summary[1:]}.', notes) if part),
        epilog=f'{heading}:\n{shown}',
        allow_abbrev=False,
    )
    parser.set_defaults(run=run, parser=parser)
    return parser


def add_reading(parser: argparse.ArgumentParser) -> None:
    """Declare how lengths are rounded and read."""
    add_nearest(parser)
    words = _('how lengths read: {inches} (default) or {feet}')
    parser.add_argument(
        '--lengths', metavar='STYLE', help=words.format(inches=text.INCHES, feet=text.FEET_INCHES)
    )


def add_nearest(parser: argparse.ArgumentParser) -> None:
    """Declare how lengths are rounded."""
    first, last = INCHES.smallest_parts[0], INCHES.smallest_parts[-1]
    words = _('round lengths to this part of an inch: {first} to {last}').format(first=first, last=last)
    parser.add_argument('--nearest', metavar='PART', help=words)


def add_pitches(parser: argparse.ArgumentParser) -> None:
    """Declare the pitches of a table."""
    parser.add_argument('--pitches', metavar='LIST', help=_('such as 6, "4,6,8" or "4 to 12 by 1/2"'))


def add_runs(parser: argparse.ArgumentParser) -> None:
    """Declare the runs of a table."""
    parser.add_argument('--runs', metavar='RANGE', help=_('such as "4 ft" or "1 in to 24 ft by 1 in"'))


def add_format(parser: argparse.ArgumentParser, formats: Sequence[str] = FORMATS) -> None:
    """Declare how the answer is written: the first of the formats where nothing is said."""
    usual, *others = formats
    words = _('{usual} (default) or {others}').format(usual=usual, others=', '.join(others))
    parser.add_argument('--format', metavar='FORMAT', default=usual, help=words)


def add_folder(parser: argparse.ArgumentParser) -> None:
    """Declare where files are put."""
    words = _('folder for what is made (default: {folder})').format(folder=OUTPUT)
    parser.add_argument('--out', default=OUTPUT, metavar='DIR', help=words)


def folder_of(args: argparse.Namespace) -> Path:
    """Return where files are put.

    Errors:
        BookError for a name that is none
    """
    if not args.out.strip():
        problem = _("'{folder}' names no folder").format(folder=args.out)
        raise BookError('--out', problem, '', _('give a name, or leave it out'))
    return Path(args.out)


def add_steep(parser: argparse.ArgumentParser) -> None:
    """Declare that a pitch may be steep."""
    parser.add_argument(
        '--steep',
        action='store_true',
        help=_('let pitches over {most} pass').format(most=f'{STEEPEST} {INCHES.over_base}'),
    )


def choice(value: str, option: str, allowed: Sequence[str]) -> str:
    """Return a value that is one of those allowed."""
    if value not in allowed:
        raise BookError(option, message('error.unknown', value=f"'{value}'"), tuple(allowed))
    return value


def above_zero(written: str, place: str) -> Fraction:
    """Return a length in inches that is not 0."""
    inches = length(written, place)
    if not inches:
        raise BookError(place, message('error.measures_nothing', length=f"'{written}'"), ALLOWED)
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


def with_pitches(settings: Settings, written: str) -> Settings:
    """Return the settings with the pitches of an argument: '6', '4,6,8', '4 to 12 by 1/2' or several."""
    return changed(settings, 'pitches', [item.strip() for item in written.split(',')], '--pitches')


def with_runs(settings: Settings, written: str) -> Settings:
    """Return the settings with the runs of an argument: '4 ft' or '1 in to 24 ft by 1 in'.

    Errors:
        BookError if the runs make no table
    """
    read = split_range(written) or WrittenRange(written, written, None)
    words = {'runs.from': read.first, 'runs.to': read.last} | ({'runs.by': read.step} if read.step else {})
    for key, value in words.items():
        settings = changed(settings, key, value, '--runs')
    if faults := run_faults(settings):
        raise SettingsFaults('', [fault.at('--runs') for fault in faults])
    return settings


def _of_key(key: str, option: str) -> Callable[[Settings, Any], Settings]:
    return lambda settings, written: changed(settings, key, written, option)


READ: dict[str, Callable[[Settings, Any], Settings]] = {
    'edition': _of_key('edition', '--edition'),
    'title': _of_key('title', '--title'),
    'owner': _of_key('owner', '--owner'),
    'paper': _of_key('paper', '--paper'),
    'trim': _of_key('trim', '--trim'),
    'lengths': _of_key('lengths', '--lengths'),
    'nearest': _of_key('smallest_part', '--nearest'),
    'spacing': _of_key('jacks.spacings', '--spacing'),
    'pitches': with_pitches,
    'runs': with_runs,
}
"""How each option that stands for a setting changes the settings, in this order; --steep comes before."""


def with_options(settings: Settings, args: argparse.Namespace) -> Settings:
    """Return the settings, a file's or the usual ones, with those options put over them that a verb has.

    Errors:
        SettingsFaults with the faults of all of them
    """
    if getattr(args, 'steep', False):
        settings = replace(settings, steep=True)
    return with_written(settings, {name: getattr(args, name, None) for name in READ})


def with_written(settings: Settings, written: Mapping[str, object]) -> Settings:
    """Return the settings with some options as they are written; None keeps what stands."""
    faults: list[BookError] = []
    for name, value in written.items():
        try:
            settings = settings if value is None else READ[name](settings, value)
        except BookError as fault:
            faults += fault.each()
    if faults:
        raise SettingsFaults('', faults)
    return settings


def with_sound_runs(settings: Settings) -> Settings:
    """Return the settings as they are if their runs still make a table: a smallest part may be coarser than their step.

    Errors:
        SettingsFaults, each under its key: options that gave runs have been read
    """
    if faults := run_faults(settings):
        raise SettingsFaults('', faults)
    return settings
