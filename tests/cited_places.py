"""What pages cite, read from their own words: every page named is there, and has the title, row, heads and figure said of it."""

from __future__ import annotations

import re
from collections.abc import Sequence
from html import unescape

from worked_pages import Place, places_in

INLINE = re.compile(r'</?(?:a|b|i|span|nobr|strong|em)\b[^>]*>')
LINK = re.compile(r'<a [^>]*href="page:(\d+)"[^>]*>(.*?)</a>', re.DOTALL)
ROW = re.compile(r'<tr>((?:(?!</tr>).)*?<span class="at">(.*?)</span>.*?)</tr>', re.DOTALL)
FIGURE = re.compile(r'<td class="n"><b>(.*?)</b></td>\s*$', re.DOTALL)


def pages_of(html: str) -> dict[int, str]:
    """Return every page of a document by its number."""
    return dict(enumerate(re.split(r'<section [^>]*>', html)[1:], 1))


def text(html: str) -> str:
    """Return the words of a piece of a page; those in two blocks stand apart."""
    return ' '.join(unescape(re.sub(r'<[^>]*>', ' ', INLINE.sub('', html))).split())


def cited_in_vain(pages: dict[int, str]) -> list[str]:
    """Turn to every page that is cited, and return the citations that lead to none or not to what they name."""
    said = {number: text(page) for number, page in pages.items()}
    wrong = []
    for number, page in pages.items():
        for led, words in ((int(led), text(words)) for led, words in LINK.findall(page)):
            told = words.removeprefix('p. ')
            named = re.sub(r'^[A-Z] (?=[A-Z])', '', words)  # a group of tables without its letter
            if led not in pages or (told.isdigit() and int(told) != led):
                wrong.append(f'page {number}: "{words}" leads to page {led}')
            elif _is_heading(words) and named not in said[led]:
                wrong.append(f'page {number}: "{words}" is not on page {led}')
        cited = (int(one) for one in re.findall(r'\b[Pp]ages? (\d+)', said[number]))
        wrong += [f'page {number} cites page {one}' for one in cited if one not in pages]
        for row, told in ROW.findall(page):
            if text(told).startswith('page'):
                wrong += _wrong_in_row(number, row, places_in(text(told)), said)
    return wrong


def _is_heading(words: str) -> bool:
    """Return whether a linked name is a heading: what a reader wants to do begins small, a number is a page's."""
    return not words.removeprefix('p. ').isdigit() and not words[0].islower()


def _wrong_in_row(number: int, row: str, places: Sequence[Place], said: dict[int, str]) -> list[str]:
    wrong = [f'page {number}: {place}' for place in places if not _stands(place, said.get(place.page, ''))]
    figure = FIGURE.search(row)
    if len(places) == 1 and len(places[0].heads) < 2 and figure and re.fullmatch(r'[\d /]+', text(figure[1])):
        alone = rf'(?<![\d/]){re.escape(text(figure[1]))}(?![\d/])'
        if not re.search(alone, said.get(places[0].page, '')):
            wrong.append(f'page {number}: {text(figure[1])} is not on page {places[0].page}')
    return wrong


def _stands(place: Place, page: str) -> bool:
    """Return whether all that a place names is printed on its page: its title, and the words of its row and heads."""
    words = set(re.split(r'[\s,;:]+', page))
    named = re.split(r'[\s,;:]+', ' '.join((place.row, *place.heads)))
    return place.title in page and words.issuperset(filter(None, named))
