"""Progress: the stage and a bar on a terminal, nothing in a pipe."""

from __future__ import annotations

from typing import NoReturn, TextIO

from tqdm import tqdm

from layouts.words.say import _


class Progress:
    """Shows how far a build has come."""

    def __init__(self, out: TextIO):
        self.out = out
        self.bar: tqdm[NoReturn] | None = None

    def stage(self, name: str, pages: int = 1) -> None:
        """Begin a stage of so many pages."""
        self.done()
        self.bar = tqdm(
            total=pages,
            desc=f'{name:<12}',
            file=self.out,
            leave=False,
            disable=not self.out.isatty(),
            bar_format='{desc} {bar} ' + _('{n_fmt} of {total_fmt}') if pages > 1 else '{desc}',
        )

    def advance(self, pages: int) -> None:
        """Say that more pages are done."""
        if self.bar is not None:
            self.bar.update(pages)

    def done(self) -> None:
        """End the stage and clear its line."""
        if self.bar is not None:
            self.bar.close()
        self.bar = None
