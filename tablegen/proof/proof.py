"""Proof-reading a booklet from its pages alone."""

from __future__ import annotations

from collections.abc import Callable

from tablegen.proof.cited import follow
from tablegen.proof.digits import begin
from tablegen.proof.found import Found
from tablegen.proof.glance import read_glances
from tablegen.proof.members import read_members
from tablegen.proof.names import Names
from tablegen.proof.openings import read_openings
from tablegen.proof.page import Page
from tablegen.proof.run_tables import RunReader
from tablegen.proof.sheets import SheetReader
from tablegen.proof.stated import Stated, stated


def proof(pages: list[Page], names: Callable[[Stated], Names]) -> Found:
    """Read a booklet.

    Given:
        names  gives the printed heads of a copy of these settings

    Errors:
        NoBook where no page says how the copy was made
    """
    begin()
    book = stated(pages)
    found = Found(pages=len(pages))
    heads = names(book)
    openings = read_openings(pages, heads, book, found) if book.boards else {}
    read_members(pages, heads, book, found)
    RunReader(heads, book, found).read(pages)
    SheetReader(heads.tables.sheets, book, found).read(pages)
    read_glances(pages, heads, book, found)
    follow(pages, openings, found)
    return found
