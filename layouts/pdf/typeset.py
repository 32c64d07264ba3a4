"""Typesetting: HTML into PDF, documents side by side, every message heard."""

from __future__ import annotations

import logging
import os
import warnings
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager, suppress
from functools import cache
from importlib import import_module
from importlib.resources import files
from pathlib import Path
from types import ModuleType
from typing import Any, Protocol

from msgspec import Struct, field

from layouts.pdf.documents import Job
from layouts.pdf.libraries import known_to_the_loader
from layouts.pdf.packed import pack
from layouts.pdf.remark import Remark
from layouts.pdf.static_cuts import static_cuts
from layouts.pdf.workplace import passing_files_in
from layouts.quick.cuts import quick_cuts
from layouts.quick.drawing import quick_drawings
from layouts.quick.pages import quick_document
from layouts.quick.refusal import NotPlain
from layouts.quick.shaper import name_kinds
from layouts.words.say import SOURCE, language
from tablegen.errors import BookError
from tablegen.messages import message

EPOCH = '1735689600'
"""The fixed moment (2025-01-01) that PDFs bear, so that the same settings give the same bytes."""
REPORT = message('making.report')
SHORTEN = message('making.fewer_words')
LOOK_OVER = message('making.look_over')
OWN_SHEETS = ('book', 'words', 'card')
"""In the order in which others have them in them."""
_Styles = dict[str, tuple[object, list[object]]]
"""The fonts of a style sheet, and the sheet as the typesetter has read it."""
NOT_AS_KNOWN = (ImportError, AttributeError, TypeError, ValueError, LookupError, AssertionError)
"""What comes of asking a typesetter's insides for what is not there."""


class SetPage(Protocol):
    """A page that the typesetter has laid out."""

    anchors: dict[str, object]
    """By name: what may be linked to on it."""


class SetDocument(Protocol):
    """A document that the typesetter has laid out; its library has no types."""

    pages: Sequence[SetPage]

    def write_pdf(
        self, target: Path, *, finisher: Callable[[object, Any], None], pdf_tags: bool, uncompressed_pdf: bool
    ) -> None:
        """Write it."""


class Setting(Struct, frozen=True):
    """What sets documents in one process, and keeps the style sheets that it has read."""

    styles: _Styles = field(default_factory=dict)

    def __call__(self, job: Job, tell: Callable[[int], None]) -> None:
        set_document(job, tell, self.styles)


def begin_typesetter() -> None:
    """Do what a process does once and its first document would wait for: to name kinds of memory, to read the program's own sheets.

    Notes:
        Nothing here begins a thread, as finding a font does: a process may divide after it.
    """
    load_typesetter()
    own_sheets()
    with suppress(*NOT_AS_KNOWN):
        import_module('email.policy')  # by which it reads addresses of data
        name_kinds()


@cache
def own_sheets() -> dict[str, object]:
    """Return style sheets that are the program's own, by their text, each as the typesetter has read it; none of which it says anything."""
    read = {}
    for name in OWN_SHEETS:
        text = files('layouts.html').joinpath(f'styles/{name}.css').read_text('utf-8')
        with _listening(lambda pages: None) as heard:
            sheet = load_typesetter().CSS(string=text)
        if not heard.lacking and not heard.remarks:
            read[text] = sheet
    return read


def _styled(css: str) -> tuple[object, list[object]]:
    """Return the fonts of a style sheet, and the sheet as the typesetter has read it: as several, one after the other."""
    from weasyprint.text.fonts import FontConfiguration

    fonts, sheets = FontConfiguration(), []
    read = load_typesetter().CSS
    for text, sheet in own_sheets().items():
        before, found, after = css.partition(text)
        if found:
            sheets += [read(string=before, font_config=fonts), sheet]
            css = after
    return fonts, [*sheets, read(string=css, font_config=fonts)]


def set_document(
    job: Job, tell: Callable[[int], None] = lambda pages: None, styles: _Styles | None = None
) -> None:
    """Typeset one document and write it, checking its pages and what the typesetter says.

    Given:
        styles  style sheets that were read for earlier documents of the same folder; what is read now is put there

    Errors:
        BookError if there are more or fewer pages than said, or something that they show was not there
        what it warns of otherwise is a Remark
    """
    os.environ['SOURCE_DATE_EPOCH'] = EPOCH
    weasyprint = load_typesetter()
    with _listening(tell) as heard, passing_files_in(job.out.parent), static_cuts():
        fonts, sheets = (styles or {}).get(job.css) or _styled(job.css)
        # What is said of it is to be told of every document.
        if styles is not None and not heard.lacking and not heard.remarks:
            styles[job.css] = fonts, sheets
        if job.tagged or not _set_quickly(weasyprint, job, sheets, fonts, tell):
            _write(weasyprint.HTML(string=job.html).render(stylesheets=sheets, font_config=fonts), job)
    for words in heard.lacking:
        raise BookError('typesetter', message('making.typesetter_said', words=words), '', REPORT)
    for words in heard.remarks:
        remark = BookError('typesetter', message('making.typesetter_said', words=words), '', LOOK_OVER)
        warnings.warn(Remark(remark), stacklevel=2)


def _set_quickly(
    weasyprint: ModuleType, job: Job, sheets: Sequence[object], fonts: object, tell: Callable[[int], None]
) -> bool:
    """Typeset a document the quick way as far as its pages are plain; return whether it is written.

    Notes:
        A typesetter that is not built as the quick way knows it sets the document its own way, and that is remarked on.
    """
    try:
        with quick_cuts(), quick_drawings():
            _write(quick_document(weasyprint, job.html, sheets, fonts, tell), job)
    except NotPlain:
        return False
    except NOT_AS_KNOWN as fault:
        said = message(
            'making.slow_way', version=weasyprint.__version__, words=f'{type(fault).__name__}: {fault}'
        )
        warnings.warn(
            Remark(BookError('typesetter', said, '', message('making.slow_but_right'))), stacklevel=2
        )
        return False
    return True


def _write(document: SetDocument, job: Job) -> None:
    if job.pages not in (None, len(document.pages)):
        counts = {'count': len(document.pages), 'planned': job.pages}
        problem = message('making.runs_over', **counts, page=_overfull(document))
        raise BookError('typesetter', problem, '', REPORT if language() == SOURCE else SHORTEN)
    document.write_pdf(job.out, finisher=pack, pdf_tags=job.tagged, uncompressed_pdf=True)


def load_typesetter() -> ModuleType:
    """Return the typesetter.

    Errors:
        BookError if its system libraries are missing
    """
    try:
        with known_to_the_loader():
            import weasyprint
    except OSError as fault:
        library = str(fault).split(':')[0].replace('cannot load library', '').strip(" '")
        raise BookError(
            'typesetter',
            message('making.no_library', library=library),
            '',
            message('making.set_up'),
        ) from None
    module: ModuleType = weasyprint
    return module


class _Heard(logging.Handler):
    """Keeps what the typesetter says, each thing once, and tells how many pages it has laid out."""

    def __init__(self, tell: Callable[[int], None]):
        super().__init__()
        self.tell = tell
        self.lacking: dict[str, None] = {}
        """What could not be had: a drawing, a font, a style. A page would be without it."""
        self.remarks: dict[str, None] = {}

    def emit(self, record: logging.LogRecord) -> None:
        if record.levelno >= logging.WARNING:
            kept = self.lacking if record.levelno >= logging.ERROR else self.remarks
            kept[record.getMessage()] = None
        elif 'Creating layout - Page' in record.msg:
            self.tell(1)


@contextmanager
def _listening(tell: Callable[[int], None]) -> Iterator[_Heard]:
    heard = _Heard(tell)
    logging.getLogger('weasyprint.progress').setLevel(logging.INFO)
    logger = logging.getLogger('weasyprint')  # hears of progress too
    logger.addHandler(heard)
    try:
        yield heard
    finally:
        logger.removeHandler(heard)


def _overfull(document: SetDocument) -> str:
    """Return the name of the first page whose contents ran on to another."""
    named = ''
    for page in document.pages:
        name = next(iter(page.anchors), named)
        if name == named:
            break
        named = name
    return named.replace('-', ' ')
