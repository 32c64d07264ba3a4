"""The options of a book: settings that are often changed, each read as its key in a settings file is."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Mapping

from layouts.verbs import options
from layouts.words.say import N_, _
from tablegen.errors import BookError, SettingsFaults
from tablegen.settings import PAPERS, TRIMS, Settings

Put = Callable[[Settings, str], Settings]
WORDS: dict[str, tuple[str, str]] = {
    'title': ('TEXT', N_('on the cover')),
    'owner': ('TEXT', N_('whose book it is')),
    'paper': ('PAPER', N_('in the printer: {papers}')),
    'trim': ('TRIM', N_('size of the pages: {trims}')),
}
"""Options of a book alone, which have the names of their keys."""


def _of_key(key: str, option: str) -> Put:
    return lambda settings, written: options.changed(settings, key, written, option)


READ: dict[str, Put] = {
    **{name: _of_key(name, f'--{name}') for name in (*WORDS, 'lengths')},
    'nearest': _of_key('smallest_part', '--nearest'),
    'pitches': options.with_pitches,
    'runs': options.with_runs,
}
"""How each option with a value changes the settings, in this order; --steep comes before."""


def add_book(parser: argparse.ArgumentParser) -> None:
    """Declare the options of a book."""
    options.add_pitches(parser)
    options.add_runs(parser)
    named = {'papers': ', '.join(PAPERS), 'trims': ', '.join(TRIMS)}
    for name, (metavar, words) in WORDS.items():
        parser.add_argument(f'--{name}', metavar=metavar, help=_(words).format(**named))
    options.add_reading(parser)
    options.add_steep(parser)


def with_book(settings: Settings, args: argparse.Namespace) -> Settings:
    """Return the settings, those of a file or the usual ones, with the options of a book put over them.

    Errors:
        SettingsFaults with the faults of all options
    """
    return with_written(options.with_steep(settings, args), {name: getattr(args, name) for name in READ})


def with_written(settings: Settings, written: Mapping[str, str | None]) -> Settings:
    """Return the settings with some options as they are written; None keeps what stands."""
    faults: list[BookError] = []
    for name, value in written.items():
        try:
            if value is not None:
                settings = READ[name](settings, value)
        except BookError as fault:
            faults += fault.each()
    if not faults and written.get('nearest') is not None and written.get('runs') is None:
        settings = options.with_runs(settings, None)  # a finer step than the new smallest part
    if faults:
        raise SettingsFaults('', faults)
    return settings


def pitches_told(settings: Settings) -> str:
    """Return the pitches of some settings in a few words."""
    first, last = settings.pitches[0].short, settings.pitches[-1].short
    if len(settings.pitches) == 1:
        return first
    return _('{count} pitches, {first} to {last}').format(count=len(settings.pitches), first=first, last=last)
