"""Errors that are planted in the words of a finished book's pages, each of which says on which page it was planted."""

from __future__ import annotations

import random
import re
from collections.abc import Callable
from functools import cache

from msgspec.structs import replace

from layouts.words.proof import names as names_of
from tablegen.proof.found import Found
from tablegen.proof.openings import side_of
from tablegen.proof.page import Page, said
from tablegen.proof.proof import proof
from tablegen.proof.stated import stated
from tablegen.proof.word import Word

Planter = Callable[[list[Page]], int]


names = cache(names_of)
"""What a book's pages say, worked out once for each of the copies in which something is planted."""


def with_planted(read, plant: Planter) -> tuple[Found, int]:
    """Return what is found in a copy of the pages in which something was planted, and on which page that was."""
    copy = [Page(page.number, list(page.words), page.links) for page in read]
    place = plant(copy)
    return proof(copy, names), place


def figures_on(pages: list[Page], book) -> list[tuple[Page, Word]]:
    """Return every word with a digit in the tables of the openings: figures, and the runs and sizes that name rows."""
    found = []
    for page in pages:
        if side_of(page, names(book)) is None:
            continue
        top = page.named('ft')[0].base
        for line in page.lines:
            legend = said(line[-4:]).endswith('not left')
            found += [
                (page, word)
                for word in line
                if not word.bold
                and word.base < top
                and word.size > page.notes_size * 1.01
                and any(map(str.isdigit, word.text))
                and '√' not in word.text
                and not (legend and word in line[-4:])
            ]
    return found


def change_a_digit(seed: int) -> Planter:
    def plant(pages: list[Page]) -> int:
        chosen = random.Random(seed)
        page, word = chosen.choice(figures_on(pages, stated(pages)))
        change_digit_of(page, word, chosen)
        return page.number

    return plant


def change_digit_of(page: Page, word: Word, chosen: random.Random) -> None:
    place = chosen.choice([n for n, letter in enumerate(word.text) if letter.isdigit()])
    digit = str((int(word.text[place]) + chosen.randint(1, 9)) % 10)
    put(page, {word: f'{word.text[:place]}{digit}{word.text[place + 1 :]}'})


def put(page: Page, changed: dict[Word, str]) -> None:
    """Put other letters in place of words."""
    page.words[:] = [replace(word, text=changed[word]) if word in changed else word for word in page.words]
    forget(page)


FEWEST_ROWS = 3
"""Of a page that has a table, and more."""

# In tables whose rows are runs of text -----------------------------------------------------------------------------


def in_a_table(seed: int) -> Planter:
    """Plant one of five errors in a table, or in two: its page is where it is found."""

    def plant(pages: list[Page]) -> int:
        chosen = random.Random(seed)
        kind = (digit_in_a_row, cells_swapped, row_missing, heads_swapped, tables_swapped)[seed % 5]
        tabled = [(page, [line for line in page.lines if cells(line)]) for page in pages]
        tabled = [(page, lines) for page, lines in tabled if len(lines) > FEWEST_ROWS]
        page, lines = chosen.choice(tabled)
        kind(page, lines, chosen, [page for page, _lines in tabled])
        return page.number

    return plant


def cells(line: list[Word]) -> list[list[Word]]:
    """Return the words at each tab stop of a line."""
    stops = sorted({word.stops for word in line if word.stops})
    return [[word for word in line if word.stops == stop] for stop in stops]


def digit_in_a_row(page: Page, lines: list, chosen: random.Random, _pages: list[Page]) -> None:
    words = [word for line in lines for word in line if any(map(str.isdigit, word.text))]
    change_digit_of(page, chosen.choice(words), chosen)


def cells_swapped(page: Page, lines: list, chosen: random.Random, _pages: list[Page]) -> None:
    """Swap what stands first at two stops of a row."""
    swap_in(page, [line for line in lines if not line[0].bold], chosen)


def heads_swapped(page: Page, lines: list, chosen: random.Random, _pages: list[Page]) -> None:
    swap_in(page, [line for line in lines if line[0].bold], chosen)


def swap_in(page: Page, lines: list, chosen: random.Random) -> None:
    pairs = [
        (one[0], other[0])
        for line in lines
        for one in cells(line)
        for other in cells(line)
        if one[0].text != other[0].text
    ]
    if not pairs:  # all its heads, or figures, are alike
        digit_in_a_row(page, lines, chosen, [])
        return
    one, other = chosen.choice(pairs)
    put(page, {one: other.text, other: one.text})


def row_missing(page: Page, lines: list, chosen: random.Random, _pages: list[Page]) -> None:
    gone = chosen.choice([line for line in lines if not line[0].bold])
    page.words[:] = [word for word in page.words if word not in gone]
    forget(page)


def tables_swapped(page: Page, _lines: list, chosen: random.Random, pages: list[Page]) -> None:
    """Swap what two pages say below what stands over them."""
    other = chosen.choice([one for one in pages if one is not page])
    page.words[:], other.words[:] = list(other.words), list(page.words)
    forget(page)
    forget(other)


def head(page_of: str, side: int, change: dict[str, str]) -> Planter:
    """Change words of heads on a page of a pitch."""

    def plant(pages: list[Page]) -> int:
        page = page_of_pitch(pages, page_of, side)
        page.words[:] = [
            replace(word, text=change.get(word.text, word.text)) if word.bold else word for word in page.words
        ]
        forget(page)
        return page.number

    return plant


def row(page_of: str, side: int, begins: str, change: Callable[[list[Word]], list[Word]]) -> Planter:
    """Put other words in place of those of a row."""

    def plant(pages: list[Page]) -> int:
        page = page_of_pitch(pages, page_of, side)
        runs: dict[int, list[Word]] = {}
        for word in page.words:
            runs.setdefault(word.run, []).append(word)
        (some,) = [words for words in runs.values() if re.match(rf'{begins} \d', said(words))]
        page.words[:] = [word for word in page.words if word not in some] + change(some)
        forget(page)
        return page.number

    return plant


def swapped(words: list[Word]) -> list[Word]:
    """Return a row in which an angle and the first word of the figure after it have changed places."""
    place = next(n for n, word in enumerate(words) if word.text.endswith('°'))
    one, other = words[place : place + 2]
    words[place : place + 2] = [replace(one, text=other.text), replace(other, text=one.text)]
    return words


def pages_swapped(pages: list[Page]) -> int:
    one, other = (page_of_pitch(pages, pitch, 0) for pitch in ('6 in 12', '7 in 12'))
    one.words[:], other.words[:] = list(other.words), list(one.words)
    for page in (one, other):
        forget(page)
    return one.number


def page_missing(pages: list[Page]) -> int:
    page = page_of_pitch(pages, '9 in 12', 1)
    page.words.clear()
    forget(page)
    return 0


def cited_wrong(pages: list[Page]) -> int:
    page = next(page for page in pages if page.named('Contents'))
    place = next(
        n for n, word in enumerate(page.words) if word.text == '8' and page.words[n + 2].text == '12'
    )
    number = page.words[place + 3]
    page.words[place + 3] = replace(number, text=str(int(number.text) + 2))
    forget(page)
    return page.number


def entry_wrong(pages: list[Page]) -> int:
    """Let an entry of the contents say the next page, and lead there."""
    page = next(page for page in pages if page.named('Contents'))
    line, place = next(
        (line, n)
        for line in page.lines
        for n, word in enumerate(line)
        if said(line[n : n + 3]) == 'Seat, cut, try'
    )
    number = line[place + 3]
    put(page, {number: str(int(number.text) + 1)})
    page.links = [
        replace(link, target=link.target + 1)
        if link.target == int(number.text) and link.low < number.base < link.high
        else link
        for link in page.links
    ]
    return page.number


def page_of_pitch(pages: list[Page], pitch: str, side: int) -> Page:
    book = names(stated(pages))
    (found,) = [page for page in pages if side_of(page, book) == side and page.pitch == pitch]
    return found


def forget(page: Page) -> None:
    """Let a page be read anew after its words were changed."""
    for name in ('lines', 'phrases', 'body', 'folio', 'pitch', '_foot', 'notes_size'):
        page.__dict__.pop(name, None)
