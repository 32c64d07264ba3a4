"""Building: from settings to the files of a booklet, all of them or none."""

from __future__ import annotations

import gc
import os
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from time import monotonic
from typing import TYPE_CHECKING

from msgspec import Struct

from layouts.cards.formats import USUAL
from layouts.cards.make import CARD, card_work, finish_cards
from layouts.pages.book import Plan, plan
from layouts.pages.outline import outline
from layouts.paper.typeface import check_letters
from layouts.pdf.booklet import join
from layouts.pdf.documents import Job, Unmade, typeset
from layouts.pdf.kept import Kept
from layouts.pdf.parts import parts
from layouts.pdf.progress import Progress
from layouts.pdf.workplace import put_in_place, workplace
from layouts.sheets.counted import sheet_layout
from layouts.sheets.instructions import instructions_job
from layouts.sheets.sheets import impose
from layouts.words.say import _, catalogue, speaking
from tablegen.settings import Settings

if TYPE_CHECKING:
    from markupsafe import Markup

    from layouts.patterns.page import Laid
    from layouts.pdf.workers import Crew
    from tablegen.frame.buying import Buying
    from tablegen.frame.frame import Frame
    from tablegen.proof.found import Found
    from tablegen.roof.member import Hand
    from tablegen.roof.pattern import Pattern

BOOKLET, SHEETS = 'booklet.pdf', 'sheets.pdf'


class Built(Struct, frozen=True):
    """What has been made."""

    booklet: Path
    sheets: Path
    pages: int
    sections: int
    sheets_of_paper: int
    """The sheet of instructions among them."""
    figures: int
    """Figures in the tables of the pitches."""
    seconds: float
    card: BuiltCard
    found: Found | None = None
    """What the proof-reader read; None where it was not asked."""


class BuiltCard(Struct, frozen=True):
    """A card that has been made."""

    path: Path
    said: tuple[str, ...]
    """What it is and what is on it, in lines."""
    seconds: float


def build_cards(settings: Settings, size: str, folder: Path) -> BuiltCard:
    """Make the cards of some settings.

    Given:
        size    the name of a format
        folder  where the file goes; made if it is not there

    Errors:
        BookError if anything fails, or the settings' language has no catalogue; a card made earlier is then as it was
    """
    began = monotonic()
    _check_names(settings)
    with workplace(folder) as work, speaking(settings.language):
        cards = card_work(settings, size, work)
        typeset([cards.job])
        said = finish_cards(cards, work / CARD)
        put_in_place(work, [CARD])
    return BuiltCard(folder / CARD, tuple(said), monotonic() - began)


def build_pattern(
    whole: Pattern, paper: str, file: Path, run_known: bool, hand: Hand | None = None
) -> list[Laid]:
    """Write a member's pattern at full size, and return how its pieces lie on pages.

    Given:
        file       the PDF; its folder is made if it is not there
        run_known  whether lengths that the run makes are to be told
        hand       of a roof's member that has a mate cut the other way

    Errors:
        BookError if anything fails; a file made earlier is then as it was
    """
    from layouts.patterns.make import laid
    from layouts.patterns.shown import shown_of
    from layouts.words.pattern_pages import title_of

    pieces = laid(shown_of(whole, run_known, hand), paper)
    _write_patterns(title_of(whole.member, hand), [], pieces, paper, file)
    return pieces


def build_patterns(framed: Frame, paper: str, file: Path) -> list[Laid]:
    """Write the patterns of all members of a roof after a list of them, and return how their pieces lie on pages.

    Given, Errors:
        as of build_pattern
    """
    from layouts.patterns.listing import list_of, list_pages
    from layouts.patterns.make import laid
    from layouts.patterns.shown import shared_by

    check_letters(framed.asked.name, 'name')
    shared, listed = shared_by(framed.members), list_of(framed, paper)
    pieces = laid([one.shown for one in shared], paper, listed.pages)
    _write_patterns(listed.head[0].words, list_pages(listed, shared, pieces), pieces, paper, file)
    return pieces


def _write_patterns(title: str, first: list[Markup], pieces: list[Laid], paper: str, file: Path) -> None:
    from layouts.patterns.make import write_patterns

    with workplace(file.parent) as work:
        os.replace(write_patterns(title, first, pieces, paper, work), work / file.name)
        put_in_place(work, [file.name])


def build_roof(framed: Frame, buy: Buying, paper: str, file: Path) -> int:
    """Write the sheets of a roof, and return how many pages they are.

    Given:
        file  the PDF; its folder is made if it is not there

    Errors:
        BookError if anything fails; a file made earlier is then as it was
    """
    from layouts.roofs.make import write_roof

    check_letters(framed.asked.name, 'name')
    with workplace(file.parent) as work:
        made, pages = write_roof(framed, buy, paper, work)
        os.replace(made, work / file.name)
        put_in_place(work, [file.name])
    return pages


def build(
    settings: Settings,
    folder: Path,
    progress: Progress,
    tagged: bool = False,
    kept: Kept | None = None,
    proven: bool = False,
    setters: Crew[Job] | None = None,
) -> Built:
    """Make a booklet and its sheets.

    Given:
        folder    where the files go; made if it is not there
        tagged    whether the booklet has tags for a screen reader: it is then set in one process
        kept      documents of earlier books, of which what has not changed is taken
        proven    whether it is read back before it is put in place
        setters   processes that were begun earlier to set its documents; None to begin some

    Errors:
        BookError if anything fails, or the settings' language has no catalogue; files of an earlier build are then as
        they were
    """
    began = monotonic()
    _check_names(settings)
    with _no_looking_for_rubbish(), workplace(folder) as work, speaking(settings.language):
        progress.stage(_('planning'))
        planned = plan(settings)
        cards = card_work(settings, USUAL[settings.trim], work)
        progress.stage(_('typesetting'), planned.index.total + 1 + (cards.job.pages or 0))
        guide = instructions_job(planned, work)
        of_book: list[tuple[Path, Sequence[int]]] = []
        typeset(
            _documents(planned, [guide, cards.job], work, of_book, tagged), progress.advance, kept, setters
        )
        progress.stage(_('joining'))
        gc.freeze()  # what was made up to here is of use: it is not looked through for rubbish
        pages = join(
            of_book,
            settings.title,
            settings.owner,
            outline(planned),
            work / BOOKLET,
            tagged,
        )
        progress.stage(_('imposing'))
        sections = [(first - 1, count) for first, count in planned.index.sections]
        layout = sheet_layout(planned)
        tabs = _tabs(planned)
        count = impose(
            work / BOOKLET, sections, layout, work / SHEETS, settings.title, tabs, guide.out, pages=pages
        )
        del pages  # they hold a file in memory that the proof reads for itself
        said = finish_cards(cards, work / CARD)
        found = None
        if proven:
            from layouts.pdf.proving import prove_made

            progress.stage(_('proof-reading'))
            gc.collect()  # what joining and imposing left is as large as what is read now
            found = prove_made(work / BOOKLET, work / SHEETS, work / CARD)
        put_in_place(work, [BOOKLET, SHEETS, CARD])
    progress.done()
    seconds = monotonic() - began
    return Built(
        folder / BOOKLET,
        folder / SHEETS,
        planned.index.total,
        len(sections),
        count.total,
        planned.figures,
        seconds,
        BuiltCard(folder / CARD, tuple(said), seconds),
        found,
    )


def _tabs(planned: Plan) -> dict[int, tuple[float, float]]:
    """Return how far below a page's top its tab begins, and its height, mm, by the page's place from 0."""
    return {
        place: (planned.trim.top_mm + draft.tab.top_mm, draft.tab.height_mm)
        for place, draft in enumerate(planned.drafts)
        if draft.tab
    }


def _documents(
    planned: Plan, small: Sequence[Job], work: Path, of_book: list[tuple[Path, Sequence[int]]], tagged: bool
) -> Iterator[Job | Unmade]:
    """Return all documents, small ones first: they are set while the book's pages are still being made."""
    yield from small
    kinds = [draft.template for draft in planned.drafts]
    # Their own title says nothing: the booklet bears the book's, and a document without it stays what it was.
    title = planned.settings.title if tagged else ''
    made_of = '' if tagged else repr((planned.common, planned.index, catalogue()))
    for part in parts(planned.pages(), kinds, planned.trim, title, work, tagged, made_of):
        of_book.append((part.job.out, part.places))  # and not its HTML
        yield part.job


def _check_names(settings: Settings) -> None:
    for place, words in (('title', settings.title), ('owner', settings.owner)):
        check_letters(words, place)


@contextmanager
def _no_looking_for_rubbish() -> Iterator[None]:
    """Switch the garbage collector off: documents are large live trees, and looking through them costs a tenth."""
    gc.disable()
    try:
        yield
    finally:
        gc.unfreeze()
        gc.enable()
