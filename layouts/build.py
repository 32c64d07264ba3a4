"""Building: from settings to the files of a booklet, all of them or none."""

from __future__ import annotations

import gc
import os
import tempfile
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass
from pathlib import Path
from time import monotonic

from layouts.book import Plan, plan
from layouts.booklet import join
from layouts.fold import sheet_sides
from layouts.instructions import instructions_job
from layouts.progress import Progress
from layouts.sheets import SheetLayout, impose
from layouts.typeface import check_letters
from layouts.typeset import parts, typeset
from layouts.words import WORDS
from tablegen.errors import BookError
from tablegen.reference.groups import GROUPS
from tablegen.settings import Settings

BOOKLET, SHEETS = 'booklet.pdf', 'sheets.pdf'
OUTLINED = (
    'cautions',
    'contents',
    'how-to',
    'order',
    'words',
    'glance',
    'after-the-length',
    'care',
    'examples',
    'numbers',
    'checked',
    'made',
)


@dataclass(frozen=True, slots=True)
class Built:
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


def build(
    settings: Settings, folder: Path, progress: Progress, tell: Callable[[Plan], None] = lambda planned: None
) -> Built:
    """Make a booklet and its sheets.

    Given:
        folder    where the files go; made if it is not there
        tell      told the plan, with its page count, before anything is typeset

    Errors:
        BookError if anything fails; files of an earlier build are then as they were
    """
    began = monotonic()
    for place, words in (('title', settings.title), ('owner', settings.owner)):
        check_letters(words, place)
    with _no_looking_for_rubbish(), _workplace(folder) as work:
        progress.stage('planning')
        planned = plan(settings)
        tell(planned)
        progress.stage('typesetting', planned.index.total + 1)
        jobs = parts(planned.pages(), planned.trim, settings.title, work)
        guide = instructions_job(planned, work)
        typeset([*jobs, guide], progress.advance)
        progress.stage('joining')
        join([job.out for job in jobs], settings.title, settings.owner, _outline(planned), work / BOOKLET)
        progress.stage('imposing')
        sections = [(first - 1, count) for first, count in planned.index.sections]
        count = impose(work / BOOKLET, sections, sheet_layout(planned), work / SHEETS, guide.out)
        for name in (BOOKLET, SHEETS):
            os.replace(work / name, folder / name)
    progress.done()
    return Built(
        folder / BOOKLET,
        folder / SHEETS,
        planned.index.total,
        len(sections),
        count.total,
        planned.figures,
        monotonic() - began,
    )


def sheet_layout(planned: Plan) -> SheetLayout:
    """Return how a plan's pages lie on the printer's paper."""
    trim = planned.trim
    return SheetLayout(planned.settings.paper, trim.width_mm, trim.height_mm, trim.up)


def sheet_count(planned: Plan) -> int:
    """Return how many sheets of paper a plan takes, the one of instructions among them."""
    bounds = [(first - 1, count) for first, count in planned.index.sections]
    return len(sheet_sides(bounds, planned.trim.up)) // 2 + 1


def _outline(planned: Plan) -> list[tuple[str, int]]:
    index = planned.index
    named = [(WORDS[key], index[key]) for key in OUTLINED if key in index]
    groups = [(WORDS['groups'][group], f'group-{group}') for group in GROUPS]
    named += [(name, index[key]) for name, key in groups if key in index]
    firsts: dict[str, int] = {}
    for key, page in index.pages.items():
        _, colon, pitch = key.partition(':')
        if colon and not key.startswith('section:'):
            firsts[pitch] = min(page, firsts.get(pitch, page))
    return sorted(named + list(firsts.items()), key=lambda entry: entry[1])


@contextmanager
def _no_looking_for_rubbish() -> Iterator[None]:
    """Switch the garbage collector off: documents are large live trees, and looking through them costs a tenth."""
    gc.disable()
    try:
        yield
    finally:
        gc.enable()


@contextmanager
def _workplace(folder: Path) -> Iterator[Path]:
    """Give a folder for unfinished work inside the one wanted, and leave nothing behind."""
    made = not folder.exists()
    try:
        folder.mkdir(parents=True, exist_ok=True)
        work = tempfile.TemporaryDirectory(prefix='.rafterbook-', dir=folder)
    except OSError as fault:
        said = f'cannot be written: {fault.strerror}'
        raise BookError(
            str(folder), said, 'a folder that you may write in', 'give another with --out'
        ) from None
    try:
        with work as name:
            yield Path(name)
    except OSError as fault:
        said = f'writing failed: {fault.strerror}'
        raise BookError(str(folder), said, '', 'make room there or give another folder with --out') from None
    finally:
        if made:
            with suppress(OSError):  # only an empty folder goes
                folder.rmdir()
