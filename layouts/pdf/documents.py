"""Documents: what is to be typeset, and how it is set side by side, each kept for the next time."""

from __future__ import annotations

import warnings
from collections.abc import Callable, Iterable, Iterator
from contextlib import AbstractContextManager, nullcontext
from pathlib import Path

from msgspec import Struct

from layouts.pdf.kept import Kept, name_of
from layouts.pdf.workers import Crew, Work, crew


class Job(Struct, frozen=True):
    """One document to typeset."""

    html: str
    css: str
    pages: int | None
    """Pages it must have; None where it runs on as its lists do."""
    out: Path
    tagged: bool = False
    """Whether its file tells a screen reader what is a head, a paragraph, a table, a picture."""

    @property
    def made_of(self) -> tuple[str, ...]:
        """Return all that it is made of beside the program."""
        return self.html, self.css, str(self.pages), str(self.tagged)

    def made(self) -> Job:
        """Return it as it is."""
        return self


class Unmade(Struct, frozen=True):
    """A document whose pages are made only where it is not kept."""

    made_of: tuple[str, ...]
    """All that its pages are made of beside the program."""
    pages: int
    out: Path
    made: Callable[[], Job]


def setter() -> Work[Job]:
    """Load the typesetter, and return what sets documents in one process.

    Errors:
        BookError if it cannot be loaded
    """
    from layouts.pdf.typeset import Setting, begin_typesetter

    begin_typesetter()
    return Setting()


def typeset(
    jobs: Iterable[Job | Unmade],
    tell: Callable[[int], None] = lambda pages: None,
    kept: Kept | None = None,
    setters: Crew[Job] | None = None,
) -> None:
    """Typeset documents, side by side where that pays, and write them.

    Given:
        jobs     documents; where they are made one by one, those before are being set meanwhile
        tell     told how many more pages have been laid out
        kept     documents that were set before, which are taken as they are; those that are set now are kept too
        setters  processes that were begun earlier to set them; None to begin some

    Errors:
        BookError if the typesetter lacks something, cannot be loaded, or sets another number of pages

    Notes:
        What it merely remarks on is a warning, a Remark; a new release of it has new ones. Nothing is kept then, so that it is
        told again.
    """
    made: list[tuple[str, Path]] = []

    def new() -> Iterator[Job]:
        for job in jobs:
            name = name_of(job.made_of) if kept else ''
            if kept and kept.take(name, job.out):
                tell(job.pages or 0)
                continue
            made.append((name, job.out))
            yield job.made()

    with (
        warnings.catch_warnings(record=True) as remarks,
        nullcontext(setters) if setters else _begun() as those,
    ):
        those.do(new(), tell)
    for remark in remarks:
        warnings.warn(remark.message, stacklevel=2)
    if kept and not remarks:
        for name, out in made:
            kept.put(name, out)
        kept.trim()


def _begun() -> AbstractContextManager[Crew[Job]]:
    setter()  # here too, so that it is loaded once however often documents are set
    return crew(setter)
