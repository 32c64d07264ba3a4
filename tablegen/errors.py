"""The one family of errors that a user may see."""

from __future__ import annotations


class BookError(Exception):
    """A user's mistake, told in one line: place, problem, what is allowed, next step.

    Attributes:
        place      where: a settings key, an argument, a file
        problem    what is wrong there, with the value as given
        allowed    what would be right, or '' where nothing can be listed
        next_step  what to do now
    """

    def __init__(self, place: str, problem: str, allowed: str = '', next_step: str = ''):
        self.place, self.problem, self.allowed, self.next_step = place, problem, allowed, next_step
        parts = [f'{place}: {problem}' if place else problem]
        if allowed:
            parts.append(f'allowed: {allowed}')
        if next_step:
            parts.append(f'next: {next_step}')
        super().__init__('; '.join(parts))

    def each(self) -> list[BookError]:
        """Return the faults that this error stands for."""
        return [self]

    def lines(self) -> list[str]:
        """Return the lines to print, one a fault."""
        return [str(self)]


class SettingsFaults(BookError):
    """All faults of one settings file, told together, one line each."""

    def __init__(self, source: str, faults: list[BookError]):
        self.source, self.faults = source, faults
        super().__init__(source, f'{len(faults)} faults')

    def each(self) -> list[BookError]:
        return self.faults

    def lines(self) -> list[str]:
        """Return one line for each fault, each beginning with the file."""
        return [f'{self.source}: {fault}' for fault in self.faults]
