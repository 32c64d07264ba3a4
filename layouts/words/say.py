"""Words in the reader's language: every sentence goes through the catalogue here, and English is its source.

Words stand where they are placed, marked with `_` (said at once) or `N_` (said by whoever places them: constants); templates
mark theirs with `trans`. A Message of tablegen is said by the English under its name in english/.
"""

from __future__ import annotations

import gettext
import os
from collections.abc import Iterator
from contextlib import contextmanager
from fractions import Fraction
from pathlib import Path

from layouts.words.messages import english
from tablegen.errors import BookError
from tablegen.messages import Message
from tablegen.numbers import text
from tablegen.numbers.figure import Figure
from tablegen.numbers.units import INCHES

DOMAIN = 'rafterbook'
SOURCE = 'en'
"""The language that words are written in: it needs no catalogue."""
LANGUAGE, CATALOGUES = 'RAFTERBOOK_LANGUAGE', 'RAFTERBOOK_CATALOGUES'
"""Environment variables: what a terminal is answered in, and a folder of catalogues besides the package's own."""
_catalogue = gettext.NullTranslations()
_language = SOURCE
_told: list[tuple[str, str]] = []


def use(wanted: str) -> None:
    """Say everything from now on, in this process, in a language such as 'en' or 'de'.

    Errors:
        BookError for a language without a catalogue
    """
    global _catalogue, _language
    if wanted == SOURCE:
        _catalogue, _language = gettext.NullTranslations(), SOURCE
        return
    path = _file(wanted)
    if wanted not in languages() or path is None:
        problem = _("'{language}' has no catalogue").format(language=wanted)
        raise BookError('language', problem, ', '.join(languages()))
    with open(path, 'rb') as file:
        _catalogue, _language = gettext.GNUTranslations(file), wanted


@contextmanager
def speaking(wanted: str) -> Iterator[None]:
    """Say everything in a language for as long as the block lasts.

    Errors:
        BookError for a language without a catalogue
    """
    global _catalogue, _language
    before = _catalogue, _language
    use(wanted)
    try:
        yield
    finally:
        _catalogue, _language = before


def language() -> str:
    """Return the language in use."""
    return _language


def languages() -> list[str]:
    """Return the languages that can be used: English, and those with a catalogue LANGUAGE/LC_MESSAGES/rafterbook.mo."""
    made = (path for folder in _folders() for path in folder.glob(f'*/LC_MESSAGES/{DOMAIN}.mo'))
    return [SOURCE, *sorted({path.parts[-3] for path in made} - {SOURCE})]


def catalogue() -> bytes:
    """Return the catalogue of the language in use; nothing for English."""
    path = None if _language == SOURCE else _file(_language)
    return Path(path).read_bytes() if path else b''


def _file(wanted: str) -> str | None:
    return next(filter(None, (gettext.find(DOMAIN, folder, [wanted]) for folder in _folders())), None)


def _folders() -> list[Path]:
    more = os.environ.get(CATALOGUES)
    return [Path(__file__).parent / 'catalogues', *([Path(more)] if more else [])]


def N_(words: str) -> str:
    """Mark words that are said later, where they are placed; return them as they are."""
    return words


def _(words: str) -> str:
    """Return English words in the language in use."""
    # a catalogue says what it is where it is asked for nothing
    return _heard(words, _catalogue.gettext(words)) if words else words


def n_(one: str, many: str, count: int) -> str:
    """Return the words for one or for several, in the language in use."""
    return _heard(many, _catalogue.ngettext(one, many, count))


def _heard(words: str, told: str) -> str:
    if told is not words:
        _told.append((words, told))
    return told


def told() -> list[tuple[str, str]]:
    """Return what has been said in another language since this was last asked, after its English."""
    heard = list(_told)
    _told.clear()
    return heard


def say(message: Message) -> str:
    """Return a message in the language in use, its values placed by name; {base} is what a pitch's rise stands over.

    Errors:
        KeyError for a name without words
    """
    values = {'base': INCHES.base} | {name: said(value) for name, value in message.values}
    return _(english(message.name)).format(**values)


def said(value: object) -> object:
    """Return a value as it is said: figures and numbers as their text, messages in words, several joined by commas."""
    match value:
        case Message():
            return say(value)
        case Figure():
            return value.text
        case Fraction():
            return text.rational(value)
        case tuple() | list():
            return ', '.join(str(said(one)) for one in value)
        case _:
            return value
