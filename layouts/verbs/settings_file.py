"""Reading a settings file, with every way it can fail told in a line."""

from __future__ import annotations

import argparse
import os
import sys
from codecs import BOM_UTF16_BE, BOM_UTF16_LE
from collections.abc import Sequence
from typing import TextIO

from layouts.words.say import N_, _
from tablegen.errors import BookError
from tablegen.messages import message
from tablegen.settings import Settings, read_settings

STANDARD_INPUT = '-'
MOST_BYTES = 64_000
START = N_('rafterbook settings --out my-book.toml makes one to start from')
A_FILE = N_('a settings file')
START_A_ROOF = N_('rafterbook roof --starter KIND prints one to start from')
A_ROOF = N_('a roof file')


def add_settings_file(parser: argparse.ArgumentParser) -> None:
    """Declare the file."""
    words = _("settings file; '-' is standard input")
    parser.add_argument('settings', nargs='?', metavar='SETTINGS.toml', help=words)


def settings_from(path: str | None) -> Settings:
    """Return the settings of a file; '-' is standard input, None the defaults.

    Errors:
        BookError if it cannot be read or is no text; SettingsFaults with every fault in it
    """
    if path is None:
        return Settings()
    written = written_in(path, _(A_FILE), _(START))
    try:
        settings = read_settings(written, path)
    except BookError as fault:
        raise fault.advised(message('setting.see_keys')) from None
    return with_roof_files(settings, settings.roofs, os.path.dirname(path)) if settings.roofs else settings


def with_roof_files(settings: Settings, names: Sequence[str], folder: str = '') -> Settings:
    """Return the settings of a book of the roofs in some files.

    Given:
        folder  what their names start from, '' for the folder that the command runs in

    Errors:
        BookError if one cannot be read or the roofs do not go into one book; SettingsFaults with every fault in one
    """
    from tablegen.frame.of_book import (
        with_roofs,
    )  # which takes a tenth of a second that other books need not wait for
    from tablegen.frame.roof_file import read_roof

    paths = [os.path.join(folder, name) for name in names]
    written = [written_in(path, _(A_ROOF), _(START_A_ROOF)) for path in paths]
    asked = [read_roof(one, path) for one, path in zip(written, paths, strict=True)]
    return with_roofs(settings, list(zip(names, asked, strict=True)))


def written_in(path: str, what: str, start: str) -> str:
    """Return the text of a file; '-' is standard input.

    Given:
        what   what it should be
        start  how one is made to start from

    Errors:
        BookError if it cannot be read, is too long or is no text
    """
    try:
        if path == STANDARD_INPUT:
            content = standard_input().buffer.read(MOST_BYTES + 1)
        else:
            with open(path, 'rb') as file:
                content = file.read(MOST_BYTES + 1)
    except FileNotFoundError:
        raise BookError(path, _('there is no such file'), '', start) from None
    except IsADirectoryError:
        raise BookError(path, _('this is a folder'), what, start) from None
    except (OSError, ValueError) as fault:  # ValueError: a zero byte in the name
        raise BookError(path, unreadable(fault), what) from None
    if len(content) > MOST_BYTES:
        most = _('up to {most:,} bytes').format(most=MOST_BYTES)
        raise BookError(path, _('is too long for {what}').format(what=what), most, start)
    try:
        return content.decode(encoding_of(content))
    except UnicodeDecodeError as fault:
        raise BookError(path, no_text(fault), what, start) from None


def standard_input() -> TextIO:
    """Return this process's input.

    Errors:
        BookError if it is closed
    """
    if sys.stdin is None:
        problem = _('standard input is closed')
        raise BookError(STANDARD_INPUT, problem, '', _('give a file, or let another command write to it'))
    return sys.stdin


def encoding_of(content: bytes) -> str:
    """Return how a text file's letters are written: UTF-8, or UTF-16 where its first two bytes are the mark of it."""
    return 'utf-16' if content.startswith((BOM_UTF16_LE, BOM_UTF16_BE)) else 'utf-8-sig'


def no_text(fault: UnicodeDecodeError) -> str:
    """Return that a file is no text, and where."""
    if fault.encoding.startswith('utf-16'):
        return _('is no UTF-16 text, at byte {place}').format(place=fault.start + 1)
    return _('is no UTF-8 text, at byte {place}').format(place=fault.start + 1)


def unreadable(fault: Exception) -> str:
    """Return why a file cannot be read, in the system's words."""
    return _('cannot be read: {why}').format(why=getattr(fault, 'strerror', None) or fault)
