"""Errors that are planted in the words of a roof's sheets, anywhere but where these only repeat what was asked for."""

from __future__ import annotations

import random
import re
from collections.abc import Callable

from msgspec.structs import replace

from layouts.roofs.proof_names import roof_names
from tablegen.proof.page import Page, close, lines_of
from tablegen.proof.sheet_lines import FIGURE_PT, FOOT_PT, TITLE_PT, is_head
from tablegen.proof.word import Word

Line = list[Word]
Changed = dict[Word, Word | None]
"""Words in place of others, None for none."""
Planter = Callable[[random.Random, list[Line]], Changed]


def planted_at(seed: int, plant: Planter, pages: list[Page]) -> tuple[list[Page], str]:
    """Return the pages with one error, and what was changed."""
    chosen = random.Random(seed)
    lines = {page.number: list(_lines(page)) for page in pages[1:]}
    page = chosen.choice([page for page in pages[1:] if any(map(_figures, lines[page.number]))])
    changed = plant(chosen, lines[page.number])
    words = [changed.get(word, word) for word in page.words]
    other = Page(page.number, [word for word in words if word], [], lambda: page.ink)
    said = {word.text: new and new.text for word, new in changed.items()}
    return [other if one is page else one for one in pages], f'page {page.number}: {said}'


def _lines(page: Page) -> list[Line]:
    """Return the lines of a page over what was asked for."""
    found: list[Line] = []
    for line in lines_of([word for word in page.words if word.base > FOOT_PT]):
        if close(line) == roof_names().titles['asked']:
            break
        found.append(line)
    return found


def _figures(line: Line) -> Line:
    return [word for word in line if FIGURE_PT < word.size < TITLE_PT and re.search(r'\d', word.text)]


def a_digit(chosen: random.Random, lines: list[Line]) -> Changed:
    word = chosen.choice([word for line in lines for word in _figures(line)])
    place = chosen.choice([n for n, letter in enumerate(word.text) if letter.isdigit()])
    digit = str((int(word.text[place]) + chosen.randint(1, 9)) % 10)
    return {word: replace(word, text=f'{word.text[:place]}{digit}{word.text[place + 1 :]}')}


def figures_swapped(chosen: random.Random, lines: list[Line]) -> Changed:
    """Two figures of a row, or of two rows where none has two."""
    pairs = [
        (one, two)
        for line in lines
        for one in _figures(line)
        for two in _figures(line)
        if one.text != two.text
    ]
    every = [word for line in lines for word in _figures(line)]
    one, two = chosen.choice(pairs or [(one, two) for one in every for two in every if one.text != two.text])
    return {one: replace(one, text=two.text), two: replace(two, text=one.text)}


def a_row_gone(chosen: random.Random, lines: list[Line]) -> Changed:
    return dict.fromkeys(chosen.choice([line for line in lines if _figures(line)]))


def a_head_changed(chosen: random.Random, lines: list[Line]) -> Changed:
    """Letters of a head the other way about; of a page without heads a digit."""
    heads = [word for line in lines if is_head(line) for word in line if word.text[::-1] != word.text]
    if not heads:
        return a_digit(chosen, lines)
    word = chosen.choice(heads)
    return {word: replace(word, text=word.text[::-1])}


PLANTERS: dict[str, Planter] = {
    'a digit': a_digit,
    'two figures swapped': figures_swapped,
    'a row gone': a_row_gone,
    'a head changed': a_head_changed,
}
