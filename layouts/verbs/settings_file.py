"""Reading a settings file, with every way it can fail told in a line."""

from __future__ import annotations

import sys

from tablegen.errors import BookError
from tablegen.settings import Settings, read_settings

STANDARD_INPUT = '-'
MOST_BYTES = 1_000_000
START = 'rafterbook settings > my-book.toml makes one to start from'


def settings_from(path: str | None) -> Settings:
    """Return the settings of a file; '-' is standard input, None the defaults.

    Errors:
        BookError if it cannot be read or is no text; SettingsFaults with every fault in it
    """
    if path is None:
        return Settings()
    try:
        if path == STANDARD_INPUT:
            content = sys.stdin.buffer.read(MOST_BYTES + 1)
        else:
            with open(path, 'rb') as file:
                content = file.read(MOST_BYTES + 1)
    except FileNotFoundError:
        raise BookError(path, 'there is no such file', '', START) from None
    except IsADirectoryError:
        raise BookError(path, 'this is a folder', 'a settings file', START) from None
    except (OSError, ValueError) as fault:  # ValueError: a zero byte in the name
        raise BookError(
            path, f'cannot be read: {getattr(fault, "strerror", fault)}', 'a settings file'
        ) from None
    if len(content) > MOST_BYTES:
        raise BookError(path, 'is too long for settings', f'up to {MOST_BYTES:,} bytes', START)
    try:
        written = content.decode('utf-8-sig')
    except UnicodeDecodeError as fault:
        raise BookError(
            path, f'is no UTF-8 text, at byte {fault.start + 1}', 'a settings file', START
        ) from None
    try:
        return read_settings(written, path)
    except BookError as fault:
        raise fault.advised('rafterbook settings prints every key') from None
