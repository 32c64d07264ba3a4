"""A new PDF of objects of others, taken over byte for byte but for their numbers; what is alike stands in it once."""

from __future__ import annotations

import os
from collections.abc import Mapping
from pathlib import Path

import pydyf

from layouts.pdf.written import REFERENCE, Held, Written
from layouts.words.say import language

PRODUCER = 'rafterbook'


class Taken(pydyf.Object):  # type: ignore[misc]  # its library has no types
    """An object that is written as it stands."""

    def __init__(self, one: Held):
        super().__init__()
        self.held = one

    @property
    def data(self) -> bytes:
        """Return what stands in the file."""
        told, packed = self.held
        return told if packed is None else b'\n'.join((told, b'stream', packed, b'endstream'))


class NewFile:
    """The objects of a PDF that is being made."""

    def __init__(self) -> None:
        """Begin one without pages."""
        self.pdf = pydyf.PDF()
        self.pages: list[int] = []
        """The numbers of its pages, in order."""
        self._known: dict[Held, int] = {}
        self._taken: dict[Written, dict[int, int]] = {}

    @classmethod
    def of(cls, source: Written) -> NewFile:
        """Return all of another file but what it is called, each object under the number that it had there."""
        file = cls()
        file.pdf.objects[1:] = []
        nothing = Held(b'null')
        for number in range(1, max(source.objects) + 1):
            file.add(nothing if [number] == source.info else source.objects.get(number, nothing))
        catalog = file.pdf.catalog = pydyf.Dictionary(source.entries(source.root))
        catalog.number = source.root
        file.pdf.objects[source.root] = catalog
        file.pages = [page.number for page in source.pages]
        return file

    def add(self, one: Held) -> int:
        """Put an object there, and return its number."""
        taken = Taken(one)
        self.pdf.add_object(taken)
        number: int = taken.number
        return number

    def once(self, one: Held) -> int:
        """Put an object there unless one that is alike was, and return its number."""
        if one not in self._known:
            self._known[one] = self.add(one)
        return self._known[one]

    def add_page(self, told: Mapping[str, object]) -> None:
        """Put another page at the end, of what it says under each name."""
        said = pydyf.Dictionary({'Type': '/Page', **told, 'Parent': self.pdf.pages.reference})
        page = Taken(Held(said.data))  # which is asked for it twice
        self.pdf.add_page(page)
        self.pages.append(page.number)

    def take(self, source: Written, number: int) -> int:
        """Return the number here of an object of another file, which is taken over with all that it names."""
        taken = self._taken.setdefault(source, {})
        if number not in taken:
            said, data = source.objects[number]
            taken[number] = self.once(Held(self.renumbered(source, said), data))
        return taken[number]

    def renumbered(self, source: Written, told: bytes) -> bytes:
        """Return what stands in another file, with the numbers here of all that it names, which is taken over."""
        return REFERENCE.sub(
            lambda found: b'%d 0 R' % self.take(source, int(found[1])) if found[1] else found[0], told
        )

    def write(
        self,
        out: Path,
        title: str,
        owner: str = '',
        preferences: Mapping[str, str] | None = None,
    ) -> None:
        """Write it beside the file and rename, so that no half-written file ever bears its name.

        Given:
            title, owner  what the file is called and whose it is; its window bears the title, not the file's name
            preferences   what a viewer is asked for

        Notes:
            Its contents make its identifier, so that the same contents are the same file.
        """
        named = {'Title': title, 'Author': owner, 'Producer': PRODUCER}
        self.pdf.info.update({name: pydyf.String(words) for name, words in named.items() if words})
        self.pdf.catalog['Lang'] = pydyf.String(language())
        self.pdf.catalog['ViewerPreferences'] = pydyf.Dictionary(
            {**(preferences or {}), 'DisplayDocTitle': 'true'}
        )
        partial = out.with_name(out.name + '.partial')
        try:
            with partial.open('wb') as stream:
                self.pdf.write(stream, identifier=True)
            os.replace(partial, out)
        finally:
            partial.unlink(missing_ok=True)


def reference(number: int) -> bytes:
    """Return how an object is named."""
    return b'%d 0 R' % number
