"""An answer about a roof in words: from which line its figures are measured, its names, and what it says by name."""

from __future__ import annotations

from collections.abc import Iterable

from layouts.words.fields import label
from layouts.words.messages import words_of
from layouts.words.say import say
from tablegen.messages import Message


def datum_words(names: Iterable[str]) -> str:
    """Return from which line figures are measured, clause by clause."""
    return '; '.join(say(Message(name)) for name in names)


def name_words(name: str) -> str:
    """Return what an answer says by name."""
    said = f'said.{name}'
    return say(Message(f'roof.{said}')) if said in words_of('roof') else label(name)
