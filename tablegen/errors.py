"""The one family of errors that a user may see; its words are the reader's language's."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any, TypeVar

from tablegen.messages import Message, message

LONGEST_WORD = 60
"""Characters of what may be a misspelt word: comparing longer ones takes long and finds nothing."""
Item = TypeVar('Item')
Read = TypeVar('Read')
Word = Message | str | Sequence[Message | str]
"""What is to be said, or a value as it stands: a key, a file, what was written, several of them."""


class BookError(Exception):
    """A user's mistake, told in one line: place, problem, what is allowed, next step.

    Attributes:
        place      where: a settings key, an argument, a file; the name of what is asked where only that is known
        problem    what is wrong there, with the value as given
        allowed    what would be right, or '' where nothing can be listed
        next_step  what to do now
    """

    def __init__(self, place: Word, problem: Word, allowed: Word = '', next_step: Word = ''):
        super().__init__(place, problem, allowed, next_step)
        self.place, self.problem, self.allowed, self.next_step = place, problem, allowed, next_step

    def __str__(self) -> str:
        """Return names and values: what a program sees that has no catalogue."""
        return '; '.join(
            str(part) if isinstance(part, (str, Message)) else ', '.join(map(str, part))
            for part in self.args
            if part
        )

    def at(self, place: Word) -> BookError:
        """Return this error as one of another place."""
        return BookError(place, self.problem, self.allowed, self.next_step)

    def advised(self, next_step: Word) -> BookError:
        """Return this error with a next step where it has none of its own."""
        return self if self.next_step else BookError(self.place, self.problem, self.allowed, next_step)

    def each(self) -> list[BookError]:
        """Return the faults that this error stands for."""
        return [self]


class SettingsFaults(BookError):
    """All faults of one settings file, told together, one line each; source '' for a command line."""

    def __init__(self, source: str, faults: list[BookError]):
        super().__init__(source, message('error.faults', count=len(faults)))
        self.source, self.faults = source, faults

    def __reduce__(self) -> tuple[Any, ...]:
        """Let the error cross from one process to another."""
        return type(self), (self.source, self.faults)

    def advised(self, next_step: Word) -> BookError:
        return SettingsFaults(self.source, [fault.advised(next_step) for fault in self.faults])

    def each(self) -> list[BookError]:
        return self.faults


def meant(word: str, known: Sequence[str], otherwise: Word) -> Word:
    """Return what to try in place of a misspelt word: the nearest of those known, or else other advice."""
    from difflib import get_close_matches  # only a mistake has to wait for it

    if len(word) > LONGEST_WORD:
        return otherwise
    close = [name for name in known if word and name.startswith(word)] or get_close_matches(word, known, 1)
    return did_you_mean(close[0]) if len(close) == 1 else otherwise


def did_you_mean(word: str) -> Message | str:
    """Return the question whether something was meant; '' where nothing can be guessed."""
    return message('error.did_you_mean', word=word) if word else ''


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
