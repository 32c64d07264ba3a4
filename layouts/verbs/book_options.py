"""The options of a book: settings that are often changed, each read as its key in a settings file is."""

from __future__ import annotations

import argparse

from layouts.verbs import options
from layouts.words.say import N_, _
from tablegen.settings import EDITIONS, PAPERS, TRIMS, Settings

WORDS: dict[str, tuple[str, str]] = {
    'title': ('TEXT', N_('on the cover')),
    'owner': ('TEXT', N_('whose book it is')),
    'paper': ('PAPER', N_('in the printer: {papers}')),
    'trim': ('TRIM', N_('size of the pages: {trims}')),
    'edition': (
        'EDITION',
        N_('{compact} (default): an opening a pitch; {complete}: runs inch by inch and reference tables'),
    ),
}
"""Options of a book alone, which have the names of their keys."""


def add_book(parser: argparse.ArgumentParser) -> None:
    """Declare the options of a book."""
    options.add_pitches(parser)
    options.add_runs(parser)
    named = {'papers': ', '.join(PAPERS), 'trims': ', '.join(TRIMS)} | {name: name for name in EDITIONS}
    for name, (metavar, words) in WORDS.items():
        parser.add_argument(f'--{name}', metavar=metavar, help=_(words).format(**named))
    options.add_reading(parser)
    options.add_steep(parser)


def pitches_told(settings: Settings) -> str:
    """Return the pitches of some settings in a few words."""
    first, last = settings.pitches[0].short, settings.pitches[-1].short
    if len(settings.pitches) == 1:
        return first
    return _('{count} pitches, {first} to {last}').format(count=len(settings.pitches), first=first, last=last)
