"""The typesetter's system libraries, found by the names that the system's loader knows.

Contract: the libraries are those that would be found otherwise. It tries half a dozen names for each, and asks for every one of
them, by way of Python, the compiler, the linker and the loader's list: eighty programs before the first page, of which none tells
more than the name that it tries last, which the loader knows. Elsewhere than on Linux no program is asked.
"""

from __future__ import annotations

import sys
from collections.abc import Iterator
from contextlib import contextmanager


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
