"""Reading the worked examples: which roof each page is of, one after the other."""

from __future__ import annotations

from collections.abc import Mapping

from tablegen.proof.found import Found
from tablegen.proof.names import Example, ExampleNames
from tablegen.proof.page import Page
from tablegen.proof.places import Places
from tablegen.proof.sentences import told
from tablegen.proof.stated import Stated
from tablegen.proof.worked_lines import worked_page
from tablegen.proof.worked_marks import State
from tablegen.proof.worked_page import PageReader
from tablegen.proof.worked_rafter import rafter_page
from tablegen.proof.worked_roof import Roof

RAFTER = 'rafter'
"""One rafter from crown to pattern: the store's common."""
TITLE = 1.3
"""Titles are set larger than so many times the words at the foot."""


class ExampleReader:
    """All pages of worked examples."""

    def __init__(self, names: ExampleNames, book: Stated, places: Places):
        self.names, self.book, self.found = names, book, Found()
        self.state = State(book, names, places, self.found)
        self.roofs: dict[tuple[str, str], Roof] = {}
        """By what a roof is called, '' for the garden store, and whether it is a shed or of two slopes."""
        self.of = ('', '')

    def page(self, page: Page) -> None:
        """Read a page, if it is of one."""
        title = next(iter(page.phrases), None)
        if (
            not page.folio
            or title is None
            or title.size < page.notes_size * TITLE
            or not (found := self._titled(title.text))
        ):
            return
        example, places = found
        roof = self._roof(page, example, places)
        self.found.read.add(page.number)
        worked = (
            rafter_page(page, [head for head, _of in example.heads], self.names.citing.short)
            if example.kind == RAFTER
            else worked_page(page, dict(example.marks), self.names.citing)
        )
        PageReader(
            self.state, page, title.text, example, worked, roof, places.get('mark', ''), self.of[0]
        ).read()

    def end(self) -> None:
        """Look up what waits for it; leave the numbers of marks that are nowhere."""
        self.state.begin()
        for one in self.state.at_end:
            one()

    def _titled(self, title: str) -> tuple[Example, Mapping[str, str]] | None:
        exact = [one for one in self.names.kinds if title in one.titles]
        if exact:
            return exact[0], {}
        for one in self.names.kinds:
            for words in one.titles:
                places = told(words, title)
                if places and not any(' ' in word for word in places.values()):
                    roof = self.roofs.get(self.of)
                    two = roof and places.get('mark') in roof.words.values()
                    slopes = (it for it in self.names.kinds if it.kind == 'slopes')
                    return (next(slopes) if two else one), places
        return None

    def _roof(self, page: Page, example: Example, places: Mapping[str, str]) -> Roof:
        """Return the roof that a page is of: its name stands first, in bold, where it is not the garden store."""
        first = page.lines[1] if len(page.lines) > 1 else page.lines[0]
        bold: list[str] = []
        for word in first if first[0].text[0].isalpha() and example.kind != RAFTER else ():
            if not word.bold:
                break
            bold.append(word.text)
        name = ' '.join(bold) or (self.of[0] if places else '')
        before = self.of, getattr(self.roofs.get(self.of), 'kind', '')
        self.of = name, example.kind if example.kind in ('shed', 'slopes') else ''
        roof = self.roofs.setdefault(self.of, Roof(self.book, example.kind))
        roof.kind = 'common' if example.kind == RAFTER else example.kind
        if before != (self.of, roof.kind):
            roof.stop = roof.stop if roof.kind == 'slopes' else ''
            roof.summed.clear()
            self.state.begin()
        return roof
