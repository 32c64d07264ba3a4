"""Files to start from, settings and roofs: their lines as they stand, their remarks in the reader's language."""

from __future__ import annotations

from collections.abc import Iterator
from importlib.resources import files
from itertools import groupby
from textwrap import wrap
from typing import IO

from layouts.words.say import _

MARK = '# '
OF_KINDS, KIND = '#?', '"KIND"'
"""In the roof's: what begins a line that names the kinds which have the lines below it, none for all; and what stands for the kind."""
WIDTH = 110
"""Letters in a line of remarks alone."""


def starter() -> str:
    """Return the commented settings file that says what the defaults say."""
    return _file(_template('starter.toml'))


def roof_starter(kind: str) -> str:
    """Return the commented roof file of a kind: a roof as it stands, every key of that kind in it."""
    kept, lines = True, []
    for line in _template('roof_starter.toml').splitlines():
        if line.startswith(OF_KINDS):
            kinds = line.removeprefix(OF_KINDS).split()
            kept = not kinds or kind in kinds
        elif kept:
            lines.append(line.replace(KIND, f'"{kind}"'))
    return _file('\n'.join(lines))


def _template(name: str) -> str:
    return files('layouts.words').joinpath(name).read_text('utf-8')


def _file(written: str) -> str:
    return ''.join(f'{line}\n' for _number, before, said in _remarks(written) for line in _told(before, said))


def extract(
    file: IO[bytes], *_keywords: object, options: object
) -> Iterator[tuple[int, None, str, list[str]]]:
    """Give the remarks to who makes a catalogue, as babel asks for them."""
    for number, _before, said in _remarks(file.read().decode('utf-8')):
        if said:
            yield number, None, said, []


def _remarks(written: str) -> Iterator[tuple[int, str, str]]:
    """Return lines by number, what stands before a remark, and the remark; one of several lines alone is whole."""
    numbered = [(number, *line.partition(MARK)) for number, line in enumerate(written.splitlines(), 1)]
    for alone, lines in groupby(numbered, key=lambda line: not line[1] and bool(line[2])):
        if alone:
            first, *rest = lines
            yield first[0], '', ' '.join(one[3] for one in (first, *rest))
        else:
            yield from ((number, before, said) for number, before, _mark, said in lines)


def _told(before: str, said: str) -> list[str]:
    if not said:
        return [before]
    return (
        [f'{before}{MARK}{_(said)}']
        if before
        else [MARK + line for line in wrap(_(said), WIDTH, break_on_hyphens=False)]
    )
