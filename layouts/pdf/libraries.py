"""The typesetter's system libraries, found by the names that the system's loader knows.

Contract: the libraries are those that would be found otherwise. It tries half a dozen names for each, and asks for every one of
them, by way of Python, the compiler, the linker and the loader's list: eighty programs before the first page, of which none tells
more than the name that it tries last, which the loader knows. Elsewhere than on Linux no program is asked.
"""

from __future__ import annotations

import ctypes
import sys
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from typing import Any

TEXT, SHAPER = 'pango', 'harfbuzz'
"""As the typesetter names them."""
FILES = {TEXT: 'libpango-1.0.so.0', SHAPER: 'libharfbuzz.so.0'}
"""As the loader does."""


@contextmanager
def known_to_the_loader() -> Iterator[None]:
    """Have libraries found by the loader alone, while the typesetter is being imported."""
    if not sys.platform.startswith('linux'):
        yield
        return
    from ctypes import util

    plain = util.find_library
    util.find_library = lambda name: None
    try:
        yield
    finally:
        util.find_library = plain


def text_release() -> int:
    """Return the release of the library that lays text out."""
    release: int = _library(TEXT).pango_version()
    return release


def shaper_release() -> tuple[int, ...]:
    """Return the release of the shaper's library: all that it tells is whether it is at least of some release."""
    shaper = _library(SHAPER)
    release: tuple[int, ...] = ()
    while len(release) < 3:
        rest = (0,) * (2 - len(release))
        release += (max(n for n in range(100) if shaper.hb_version_atleast(*release, n, *rest)),)
    return release


def _library(name: str) -> Any:
    """Return a library by itself where the loader has it: to load the typesetter takes half as long as a book that is kept."""
    if sys.platform.startswith('linux'):
        with suppress(OSError):
            return ctypes.CDLL(FILES[name])
    with known_to_the_loader():
        from weasyprint.text import ffi

    return getattr(ffi, name)
