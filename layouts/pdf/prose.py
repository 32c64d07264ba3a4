"""The pages of prose as a proof-reader reads them: every sentence that their templates say in any case stands there whole."""

from __future__ import annotations

from functools import cache

from msgspec.structs import replace

from layouts.html.said_by import said_by
from layouts.words.pages import heading
from layouts.words.proof import names
from layouts.words.proof_examples import plain
from layouts.words.proof_pages import said_more
from tablegen.proof.names import Names, SaidPage, Sentence
from tablegen.proof.said_prose import IN_SOME
from tablegen.proof.stated import Stated

PROSE = {
    'cautions': ('cautions.html',),
    'how-to': ('how_to_run.html',),
    'words': ('words_rafter.html',),
    'words-corner': ('words_corner.html',),
    'numbers': ('numbers.html',),
    'checked': ('checked.html',),
    'rounded': ('rounded.html',),
    'made': ('made.html',),
    'closing': ('closing.html', 'closing_made.html'),
}
"""Pages by the names of their heads: their templates, of which the first is on all."""


def all_names(book: Stated) -> Names:
    """Return all that a copy of these settings says, in the language in use."""
    found = names(book)
    return replace(found, said=(*found.said, *prose_pages()))


@cache
def _said(kind: str) -> tuple[tuple[str, bool], ...]:
    first, *others = PROSE[kind]
    more = [(words, False) for template in others for words, _always in said_by(template)]
    return (*said_by(first), *more)


def prose_pages() -> tuple[SaidPage, ...]:
    """Return them in the language in use."""
    found = []
    for kind in PROSE:
        sentences, labels, columns, drawn = said_more(kind)
        told = tuple(
            Sentence(plain(words), sets='' if always else IN_SOME)
            for words, always in dict(_said(kind)).items()
        )
        found.append(SaidPage(kind, heading(kind), (*told, *sentences), (), labels, columns, drawn))
    return tuple(found)
