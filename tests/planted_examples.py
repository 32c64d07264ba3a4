"""Errors that are planted on the pages of worked examples, each of which says on which page it was planted."""

from __future__ import annotations

import random
from collections.abc import Callable
from contextlib import suppress

from planted_errors import Planter, change_digit_of, forget, put

from layouts.words.proof import names
from tablegen.proof.page import Page
from tablegen.proof.stated import stated
from tablegen.proof.word import Word

Kind = Callable[[Page, random.Random], None]
AT_LEAST = 1.01
"""Figures are set larger than so many times the size of notes, places in the book smaller."""


def example_pages(pages: list[Page]) -> list[Page]:
    """Return those of worked examples."""
    kinds = names(stated(pages)).examples.kinds
    titles = {title.partition('{')[0] for kind in kinds for title in kind.titles}
    return [
        page
        for page in pages
        if page.folio and page.phrases and page.phrases[0].text.startswith(tuple(titles))
    ]


def in_an_example(kind: Kind, seed: int) -> Planter:
    def plant(pages: list[Page]) -> int:
        chosen = random.Random(seed)
        found = example_pages(pages)
        for page in chosen.sample(found, len(found)):
            with suppress(IndexError):  # nothing of the kind stands there
                kind(page, chosen)
                return page.number
        raise AssertionError('nothing of the kind stands anywhere')

    return plant


def figures(page: Page) -> list[Word]:
    """Return the figures beside the steps, of the marks and of the jacks."""
    right = max(word.right for word in page.body)
    top = page.lines[0][0].base - 1
    return [
        word
        for line in page.lines
        for word in line
        if word.bold and word.base < top and '/' not in word.text and any(map(str.isdigit, word.text))
        if word.size > page.notes_size * AT_LEAST
        and (word.right > right - 40)
        and line[0].left < page.lines[0][0].left + 15
    ]


def digit_of_a_line(page: Page, chosen: random.Random) -> None:
    """Change a digit anywhere but in a drawing, and in the title."""
    edge, top = page.lines[0][0].left + 15, page.lines[0][0].base - 1
    lines = [line for line in page.lines if line[0].left < edge and line[0].base < top]
    change_digit_of(
        page,
        chosen.choice([word for line in lines for word in line if any(map(str.isdigit, word.text))]),
        chosen,
    )


def digit_of_a_figure(page: Page, chosen: random.Random) -> None:
    change_digit_of(page, chosen.choice(figures(page)), chosen)


def figures_swapped(page: Page, chosen: random.Random) -> None:
    one, other = next(
        (a, b)
        for a in chosen.sample(figures(page), len(figures(page)))
        for b in figures(page)
        if a.text != b.text
    )
    put(page, {one: other.text, other: one.text})


def row_missing(page: Page, chosen: random.Random) -> None:
    """Leave out a step or a mark, and all that is said of it, but the last."""
    lines = page.lines
    first = [
        n
        for n, line in enumerate(lines)
        if line[0].text.isdigit() and line[0].bold and line[0].left < lines[0][0].left + 6
    ]
    place = chosen.randrange(len(first) - 1)
    gone = {id(word) for line in lines[first[place] : first[place + 1]] for word in line}
    page.words[:] = [word for word in page.words if id(word) not in gone]
    forget(page)


def word_changed(page: Page, chosen: random.Random) -> None:
    """Put another line, end or member in place of one that a step or a mark names."""
    other = {
        'plate': 'ridge', 'ridge': 'plate', 'level;': 'plumb;', 'Heel,': 'Height,', 'Seat:': 'Heel:', 'hip': 'valley', 'long': 'short', 'short': 'long',
        'tail': 'ridge', 'tail,': 'ridge,', 'along': 'across', 'Off': 'On', 'corner': 'middle', 'Odd': 'Even', 'wall': 'plate', 'point,': 'corner,',
    }  # fmt: skip
    some = [
        word
        for line in page.lines[2:]
        for word in line
        if word.text in other and line[0].bold and line[0].text.isdigit()
    ]
    word = chosen.choice(some)
    put(page, {word: other[word.text]})


def place_changed(page: Page, chosen: random.Random) -> None:
    """Cite another page, row or column."""
    change = {
        '“level”': '“heel”',
        'common”': 'rise”',
        '“common”': '“rise”',
        '“rise”': '“common”',
        '“height”,': '“tail”,',
        'under': 'over',
    }
    small = [word for word in page.body if word.size < page.notes_size]
    some = [word for word in small if word.text in change or word.text.strip(',').isdigit()]
    if not some:  # a page that cites nothing
        digit_of_a_figure(page, chosen)
        return
    word = chosen.choice(some)
    if word.text in change:
        put(page, {word: change[word.text]})
    else:
        number = word.text.strip(',')
        put(page, {word: word.text.replace(number, str(int(number) + 2))})


KINDS: dict[str, Kind] = {
    'a digit of a line': digit_of_a_line,
    'a digit of a figure': digit_of_a_figure,
    'two figures swapped': figures_swapped,
    'a row missing': row_missing,
    'a word changed': word_changed,
    'a place changed': place_changed,
}
