"""What pages and answers claim, sentence by sentence: the words that bear on a cut, without the glue between them."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterable, Mapping, Sequence
from functools import cache
from html import unescape
from pathlib import Path

CLAIMS = Path(__file__).parent / 'claims'
GLUE = frozenset(
    [
        'a',
        'an',
        'and',
        'are',
        'as',
        'at',
        'be',
        'been',
        'being',
        'but',
        'by',
        'can',
        'could',
        'did',
        'do',
        'does',
        'for',
        'had',
        'has',
        'have',
        'how',
        'i',
        'if',
        'in',
        'into',
        'is',
        'it',
        'its',
        'itself',
        'let',
        'may',
        'might',
        'must',
        'of',
        'on',
        'or',
        'our',
        'shall',
        'should',
        'so',
        'such',
        'that',
        'the',
        'their',
        'them',
        'then',
        'there',
        'these',
        'they',
        'this',
        'those',
        'was',
        'we',
        'were',
        'what',
        'when',
        'where',
        'which',
        'who',
        'whose',
        'why',
        'will',
        'with',
        'would',
        'you',
        'your',
    ]
)
"""Words that may be changed without a board being cut otherwise."""
FIGURE = r'[+−–√]?\d[\d/.,×′″]*°?'
ANY_FIGURE = rf'{FIGURE}(?: {FIGURE})*'
ANY_LENGTH = rf'(?:{FIGURE}|ft)(?: (?:{FIGURE}|ft))*'
"""A run, which may have feet."""
ANY_SUM = rf'{ANY_FIGURE}(?: \+ {ANY_FIGURE})+ sum {ANY_FIGURE} rounded once {ANY_FIGURE}'
"""Readings that are added, their sum a part off."""
ANY_LETTER = '(?:[b-hj-l] )?'
"""Of a group of tables, which goes by what groups the book has; A and I are glue."""
ANY_SECTIONS = rf'section {FIGURE} pages {FIGURE} to {FIGURE} {FIGURE} sheets?(?: section {FIGURE} pages {FIGURE} to {FIGURE} {FIGURE} sheets?)*'
SENTENCE_ENDS = re.compile(r'(?<=[.?!])["”)]?\s+|\n+')
BLOCK_ENDS = re.compile(r'</(?:p|li|h1|h2|tr|div|td class="d")>')
LEFT_OUT = re.compile(
    r'<head>.*?</head>|<pre.*?</pre>|<table class="(?:figures|glance|marks).*?</table>|<span class="at">.*?</span>'
    r'|<div class="(?:folio|tab)".*?</div>|<img[^>]*>',
    re.S,
)
"""Tables of figures and the places of an example's, which are proven by head and label; running heads; drawings."""


@cache
def claims(name: str) -> dict[str, tuple[str, ...]]:
    """Return what each text of a kind claims, a line a sentence: tests/claims/NAME.toml."""
    told = tomllib.loads((CLAIMS / f'{name}.toml').read_text('utf-8'))
    return {key: tuple(lines.strip().splitlines()) for key, lines in told.items()}


def bearing(sentence: str) -> str:
    """Return a sentence's words without glue and punctuation; '' where they say nothing."""
    words = [word for raw in sentence.split() if (word := raw.strip('.,;:?!()“”"‘\'·•[]'))]
    kept = [
        one
        for one in ('A' if word == 'A' and place else word.lower() for place, word in enumerate(words))
        if one not in GLUE
    ]
    return '' if all(re.fullmatch(FIGURE, word) or len(word) == 1 for word in kept) else ' '.join(kept)


def sentences(text: str) -> list[str]:
    """Return the bearing words of every sentence of a text, those without any left out."""
    return [said for sentence in SENTENCE_ENDS.split(text) if (said := bearing(sentence))]


def page_text(html: str) -> str:
    """Return the prose of a page, a line a block."""
    blocks = BLOCK_ENDS.sub('\n', LEFT_OUT.sub(' ', html))
    text = unescape(re.sub(r'<[^>]*>', ' ', blocks))
    return '\n'.join(' '.join(line.split()) for line in text.split('\n'))


def unclaimed(text: str, said: Iterable[str]) -> list[str]:
    """Return the bearing words of a text that none of some phrases in it accounts for."""
    for phrase in sorted(said, key=len, reverse=True):
        text = text.replace(phrase, '\n')
    return sentences(text)


def pattern(claim: str, figures: Mapping[str, str]) -> re.Pattern:
    """Return what a claim stands for: '#' for any figure, '{name}' for a figure that is worked out."""
    parts = re.split(r'(#ft|#added|#sections|#letter |#|\{\w+\})', claim)
    open_ones = {
        '#': ANY_FIGURE,
        '#ft': ANY_LENGTH,
        '#added': ANY_SUM,
        '#sections': ANY_SECTIONS,
        '#letter ': ANY_LETTER,
    }
    made = [open_ones.get(part) or _named(part, figures) for part in parts]
    return re.compile(''.join(made))


def _named(part: str, figures: Mapping[str, str]) -> str:
    if not part.startswith('{'):
        return re.escape(part)
    name = part[1:-1]
    return re.escape(bearing_figure(figures[name])) if name in figures else ANY_LENGTH


def bearing_figure(figure: str) -> str:
    """Return a figure as it stands among bearing words."""
    return ' '.join(word for word in figure.lower().split() if word not in GLUE)


def strange(
    text: str, wanted: Sequence[str], figures: Mapping[str, str], used: set[int], in_order: bool = True
) -> list[str]:
    """Return the sentences of a text that are not claimed, or not in its order.

    Given:
        wanted   the claims, in the order in which they are said; not every text says all of them
        figures  those that are worked out, by name
        used     places of claims that are said, added to
    """
    found, start = [], 0
    for said in sentences(text):
        place = next(
            (n for n in range(start, len(wanted)) if pattern(wanted[n], figures).fullmatch(said)), None
        )
        if place is None:
            found.append(said)
        else:
            used.add(place)
            start = place if in_order else 0  # several may say the same, each of its own figures
    return found
