"""Cautions in words: what is said of a roof's numbers, and the clause that each limit is from."""

from __future__ import annotations

from layouts.words.fields import label
from layouts.words.say import _, say
from tablegen.roof.called import Called
from tablegen.roof.cautions import Caution


def caution_text(one: Caution) -> str:
    """Return what a caution says."""
    return ' '.join(map(say, one.says))


def caution_source(one: Caution) -> str:
    """Return the clauses that a caution is from."""
    return '; '.join(map(say, one.sources))


def called_text(called: Called) -> str:
    """Return a caution with those who call for it, and its clauses."""
    of = ', '.join(map(label, called.of))
    one = called.caution
    return _('Caution, {of}: {text} ({source})').format(
        of=of, text=caution_text(one), source=caution_source(one)
    )
