"""Fonts cut quickly: what the typesetter does when it puts a font into a file, without what takes it long for nothing.

Contract: the files that are written are the same, byte for byte; tests/test_quick.py says so. A typesetter or a font
library that is not built as expected is left as it is.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import Any

COUNTED = re.compile(r'\[\d+\]$')


class _Kinds:
    """The typesetter's way to its C libraries, by which arrays of every length are one kind.

    It names a kind anew for every length, and each name is parsed as C: a quarter of the time that a font takes.
    """

    def __init__(self, plain: Any):
        self._plain = plain

    def __getattr__(self, name: str) -> Any:
        return getattr(self._plain, name)

    def new(self, kind: str, init: Any = None) -> Any:
        """Return memory of a kind; an array is as long as what it begins with."""
        if isinstance(init, (list, tuple)):
            kind = COUNTED.sub('[]', kind)
        return self._plain.new(kind, init)


def _of_drawn(plain: Callable[..., None]) -> Callable[..., None]:
    """Return what sets the outlines of a variable font at a place of its axes, for glyphs that it still has.

    A font from which glyphs were taken keeps their numbers, hundreds of empty ones, and each would be worked through.
    """

    def set_outlines(font: Any, *limits: Any, **options: Any) -> None:
        outlines, widths = font['glyf'], font['hmtx'].metrics
        numbered = outlines.glyphOrder
        drawn = [name for name in numbered if outlines[name].numberOfContours or widths[name][0]]
        for name in set(numbered) - set(drawn):
            font['gvar'].variations.pop(name, None)
        outlines.glyphOrder = drawn
        try:
            plain(font, *limits, **options)
        finally:
            outlines.glyphOrder = numbered

    return set_outlines


@contextmanager
def quick_cuts() -> Iterator[None]:
    """Have fonts cut the quick way for a while."""
    from fontTools.varLib import instancer
    from weasyprint.pdf import fonts

    changed: list[tuple[Any, str, Any, Callable[[Any], Any]]] = [
        (module, name, getattr(module, name), make)
        for module, name, make in ((fonts, 'ffi', _Kinds), (instancer, 'instantiateGvar', _of_drawn))
        if hasattr(module, name)
    ]
    for module, name, plain, make in changed:
        setattr(module, name, make(plain))
    try:
        yield
    finally:
        for module, name, plain, _make in changed:
            setattr(module, name, plain)
