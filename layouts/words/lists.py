"""Words put in a row: lists, spans, and a first letter that is a capital."""

from __future__ import annotations

from collections.abc import Sequence

from layouts.words.say import _
from tablegen.geometry.pitch import Pitch


def joined(words: Sequence[str]) -> str:
    """Return words with commas and an 'and'; '' for none."""
    if len(words) < 2:
        return ''.join(words)
    return _('{first} and {last}').format(first=', '.join(words[:-1]), last=words[-1])


def either(words: Sequence[str]) -> str:
    """Return words of which one holds, with commas and an 'or'."""
    if len(words) < 2:
        return ''.join(words)
    return _('{first} or {last}').format(first=', '.join(words[:-1]), last=words[-1])


def pitches(*some: Pitch | None) -> str:
    """Return the pitches of a roof or a corner, the others left out where there are none: '7 in 12', '7 and 9 in 12', '7 in 12 and 30°'."""
    known = [one for one in some if one]
    units = {one.unit for one in known}
    if '' in units:
        return joined([one.text for one in known])
    return f'{joined([one.short for one in known])} {"".join(units)}'


def span(first: str, last: str) -> str:
    """Return the two ends of a range in words."""
    return _('{first} to {last}').format(first=first, last=last)


def steps(first: str, last: str, step: str) -> str:
    """Return a range and its step in words."""
    return _('{first} to {last} by {step}').format(first=first, last=last, step=step)


def in_short(words: Sequence[str]) -> str:
    """Return some neighbors in a few words: '9 to 24', '1 and 2', '' for none."""
    return span(words[0], words[-1]) if len(words) > 2 else joined(words)


def capital(words: str) -> str:
    """Return words as they begin a sentence."""
    return words[:1].upper() + words[1:]
