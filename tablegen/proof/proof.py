"""Proof-reading a booklet from its pages alone."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Protocol

from tablegen.proof.cited import Follower
from tablegen.proof.counted import Counted
from tablegen.proof.covers import CoverReader
from tablegen.proof.digits import begin
from tablegen.proof.found import Found
from tablegen.proof.glance import GlanceReader
from tablegen.proof.marking_sheets import MarkingReader
from tablegen.proof.member_lists import ListsReader
from tablegen.proof.members import MemberReader
from tablegen.proof.names import Names
from tablegen.proof.openings import OpeningReader
from tablegen.proof.page import Page
from tablegen.proof.places import Places
from tablegen.proof.run_tables import RunReader
from tablegen.proof.said_pages import SaidReader
from tablegen.proof.sheets import SheetReader
from tablegen.proof.stated import Stated, stated
from tablegen.proof.worked import ExampleReader


class Reader(Protocol):
    """Reads one kind of page of a book."""

    @property
    def found(self) -> Found:
        """Return what it found."""

    def page(self, page: Page) -> None:
        """Read a page, if it is of that kind."""

    def end(self) -> None:
        """Say what is on no page."""


def proof(pages: Sequence[Page], names: Callable[[Stated], Names]) -> Found:
    """Read a booklet, page by page; of each no more is kept than what later pages are held against.

    Given:
        names  gives the printed heads of a copy of these settings

    Errors:
        NoBook where no page says how the copy was made
    """
    begin()
    book = stated(pages)
    heads = names(book)
    openings = OpeningReader(heads, book)
    members, runs, tables = MemberReader(heads, book), RunReader(heads, book), heads.tables
    sheets, cited = SheetReader(tables.sheets, book), heads.examples.citing
    kept = openings.found, members.found, runs.found, sheets.found
    counted = Counted(
        book.pitches,
        openings.there,
        members.there,
        runs.seen,
        tables.members,
        tables.jacks.corner,
        book.translated,
    )
    readers: list[Reader] = [
        openings,
        members,
        runs,
        sheets,
        *(GlanceReader(glance, book) for glance in heads.glances),
        ExampleReader(heads.examples, book, Places(cited, kept)),
        SaidReader(heads.said, book),
        MarkingReader(heads.marking, heads.sides, counted),
        ListsReader(heads.members, book),
        CoverReader(next(one for one in heads.said if one.kind == 'cover'), book, counted),
        Follower(openings.there),
    ]
    for page in pages:
        for reader in readers:
            reader.page(page)
        page.forget()
    found = Found(pages=len(pages))
    for reader in readers:
        reader.end()
        found.add(reader.found)
    return found
