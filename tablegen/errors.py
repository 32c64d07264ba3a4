"""The one family of errors that a user may see."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any, TypeVar

Item = TypeVar('Item')
Read = TypeVar('Read')

LONGEST_PROBLEM = 200
"""Characters; a longer problem keeps its two ends, so that a fault stays a line."""


class BookError(Exception):
    """A user's mistake, told in one line: place, problem, what is allowed, next step.

    Attributes:
        place      where: a settings key, an argument, a file
        problem    what is wrong there, with the value as given
        allowed    what would be right, or '' where nothing can be listed
        next_step  what to do now
    """

    def __init__(self, place: str, problem: str, allowed: str = '', next_step: str = ''):
        if len(problem) > LONGEST_PROBLEM:
            problem = f'{problem[: LONGEST_PROBLEM // 2]} … {problem[-LONGEST_PROBLEM // 4 :]}'
        self.place, self.problem, self.allowed, self.next_step = place, problem, allowed, next_step
        parts = [f'{place}: {problem}' if place else problem]
        if allowed:
            parts.append(f'allowed: {allowed}')
        if next_step:
            parts.append(f'next: {next_step}')
        super().__init__(_one_line('; '.join(parts)))

    def advised(self, next_step: str) -> BookError:
        """Return this error with a next step where it has none of its own."""
        return self if self.next_step else BookError(self.place, self.problem, self.allowed, next_step)

    def __reduce__(self) -> tuple[Any, ...]:
        """Let the error cross from one process to another."""
        return type(self), (self.place, self.problem, self.allowed, self.next_step)

    def each(self) -> list[BookError]:
        """Return the faults that this error stands for."""
        return [self]

    def lines(self) -> list[str]:
        """Return the lines to print, one a fault."""
        return [str(self)]


class SettingsFaults(BookError):
    """All faults of one settings file, told together, one line each; source '' for a command line."""

    def __init__(self, source: str, faults: list[BookError]):
        self.source, self.faults = source, faults
        super().__init__(source, f'{len(faults)} faults')

    def __reduce__(self) -> tuple[Any, ...]:
        return type(self), (self.source, self.faults)

    def advised(self, next_step: str) -> BookError:
        return SettingsFaults(self.source, [fault.advised(next_step) for fault in self.faults])

    def each(self) -> list[BookError]:
        return self.faults

    def lines(self) -> list[str]:
        """Return one line for each fault, each beginning with the file if there is one."""
        before = _one_line(f'{self.source}: ') if self.source else ''
        return [f'{before}{fault}' for fault in self.faults]


def meant(word: str, known: Sequence[str], otherwise: str) -> str:
    """Return what to try in place of a misspelt word: the nearest of those known, or else other advice."""
    from difflib import get_close_matches  # only a mistake has to wait for it

    close = [name for name in known if word and name.startswith(word)] or get_close_matches(word, known, 1)
    return f'did you mean {close[0]}?' if len(close) == 1 else otherwise


def _one_line(words: str) -> str:
    """Return words with what cannot be printed on a line (a newline, a stray byte) written as an escape."""
    return ''.join(
        letter if letter.isprintable() else letter.encode('unicode_escape').decode() for letter in words
    )


def each_of(items: Sequence[Item], place: str, reader: Callable[[Item, str], Read]) -> list[Read]:
    """Return what the reader makes of every item; the faults of all items are raised together."""
    read: list[Read] = []
    faults: list[BookError] = []
    for index, item in enumerate(items, 1):
        try:
            read.append(reader(item, f'{place}[{index}]'))
        except BookError as fault:
            faults += fault.each()
    if faults:
        raise SettingsFaults(place, faults)
    return read
