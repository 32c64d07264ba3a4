"""Worked examples read back from a finished page: its steps with their figures and places, its marks, its table of jacks."""

from __future__ import annotations

import re
from collections.abc import Sequence

from headed import TITLE_REM, NotTold, lines, said
from msgspec import Struct
from printed_words import Word

FIGURE_REM = (0.9, 1.02)
"""Figures at the right of steps."""
PLACE_REM = 0.72
"""Places are set as small as that."""
PROSE_REM = 0.77
"""Small print, smaller than a step."""
ENDS = {'RIDGE', 'WALL', 'HIP', 'PURLIN', 'TAIL'}
"""Written up along a board."""
QUOTED = '“[^”]+”(?:, “[^”]+”)*(?: and “[^”]+”)?'
PLACE = re.compile(
    rf'(?:(?:page|pages (?P<also>\d+) and) (?P<page>\d+), )?(?:“(?P<title>[^”]+)”, )?'
    rf'(?:rows? (?P<rows>[^;]+?), under (?P<heads>{QUOTED}|[^;]+)|at the foot, for (?P<add>[^;]+)|'
    rf'(?P<names>“[^”]+”(?: and “[^”]+”)?)(?:, under (?P<columns>{QUOTED}))?)(?:; |$)'
)
"""A page is not said again where the next place is on it too; two have the figures of two rafters alike."""


class Place(Struct, frozen=True):
    """Where a figure is said to stand."""

    page: int
    title: str
    row: str
    heads: tuple[str, ...]
    kind: str
    """'table', 'runs', 'jacks', 'added', or 'opening': the pages by member of a pitch."""


class Step(Struct, frozen=True):
    """One step of a page."""

    words: str
    figure: str
    places: tuple[Place, ...]


class WorkedPage(Struct, frozen=True):
    """One page."""

    number: int
    title: str
    steps: tuple[Step, ...]
    small: str
    """Small print and the words before the steps."""
    marks: dict[str, str]
    """Distance of each mark by what it is."""
    numbers: dict[str, int]
    """Number of each mark by the same."""

    def step(self, words: str) -> Step:
        """Return the one step that has some words in it."""
        found = [step for step in self.steps if words in step.words]
        if len(found) != 1:
            raise NotTold(f'page {self.number}: {len(found)} steps with "{words}"')
        return found[0]


def worked_page(number: int, words: Sequence[Word], rem: float) -> WorkedPage:
    """Return a page of an example."""
    words = [word for word in words if word.text not in ENDS]
    title, *below = lines(words)
    edge, right = min(word.left for word in words), max(word.right for word in words)
    begun: list[list[list[Word]]] = []
    small, marks = [], {}
    for line in below:
        sizes = [word.size / rem for word in line]
        label = line[0].text.isdigit() and abs(line[0].left - edge) < 0.3 and line[1].left > edge + rem
        label = label and sizes[0] > PROSE_REM and not all(_is_figure(word.text) for word in line)
        if max(sizes) >= TITLE_REM:
            raise NotTold(f'page {number}: a second title, "{said(line)}"')
        if (label and FIGURE_REM[0] < max(sizes[1:]) < FIGURE_REM[1]) or (
            label and sizes[0] > PROSE_REM and _alone(line, right) and not _is_figure(line[-1].text)
        ):
            begun.append([line])
        elif label and len(line) > 2:
            marks |= _marks(line)
        elif begun and line[0].left > edge + rem and max(sizes) < FIGURE_REM[1]:
            begun[-1].append(line)
        else:
            small.append(line)
    steps = tuple(_step(some, rem) for some in begun)
    small_print = said([word for line in small for word in line])
    distances = {name: distance for name, (distance, _) in marks.items()}
    numbers = {name: place for name, (_, place) in marks.items()}
    return WorkedPage(number, said(title), steps, small_print, distances, numbers)


def _alone(line: Sequence[Word], right: float) -> bool:
    """Return whether a numbered line has no figure at the right: a step without one."""
    return right - line[-1].right > 1 and line[0].size > 0


def _step(some: Sequence[Sequence[Word]], rem: float) -> Step:
    figure, words, places = [], [], []
    for place, line in enumerate(some):
        for word in line[1:] if not place else line:
            size = word.size / rem
            (figure if size > FIGURE_REM[0] else places if size < PLACE_REM else words).append(word)
    return Step(said(words), said(figure), places_in(said(places)))


def places_in(written: str) -> tuple[Place, ...]:
    """Return the places that a step's small print names."""
    found, at, page = [], 0, 0
    while at < len(written):
        match = PLACE.match(written, at)
        if not match or not (page or match['page']):
            raise NotTold(f'no place: "{written[at:]}"')
        page = int(match['page'] or page)
        for one in filter(None, (int(match['also'] or 0), page)):
            found += _place(one, match)
        at = match.end() + (match.end() < len(written) and written[match.end()] == ' ')
    return tuple(found)


def _place(page: int, match: re.Match) -> list[Place]:
    title = match['title'] or ''
    if match['names']:
        columns = tuple(re.findall(r'“(.+?)”', match['columns'] or '')) or ('',)
        return [
            Place(page, title, name, columns, 'opening') for name in re.findall(r'“(.+?)”', match['names'])
        ]
    if match['add']:
        return [Place(page, '', match['add'].strip(), (), 'added')]
    heads = re.findall(r'“(.+?)”', match['heads']) or [match['heads'].strip()]
    rows = re.split(', | and ', match['rows'])
    if title:
        return [Place(page, title, row, tuple(heads), 'table') for row in rows]
    if rows[0].endswith((' ft', ' in', ' mm')) or '/' in rows[0]:
        return [Place(page, '', row, tuple(heads), 'runs') for row in rows]
    spacing, _, columns = heads[0].partition(': ')
    heads = [f'{spacing}: {column}' for column in columns.split(', ')]
    first, _, last = match['rows'].partition(' to ')
    return [
        Place(page, '', str(row), tuple(heads), 'jacks') for row in range(int(first), int(last or first) + 1)
    ]


def _marks(line: Sequence[Word]) -> dict[str, tuple[str, int]]:
    """Return the marks of a line: number, what it is, distance in figures and fractions at its end."""
    found: dict[str, tuple[str, int]] = {}
    rest = [word.text for word in line]
    while rest:
        number = rest.pop(0)
        name = [rest.pop(0)]
        while not _is_figure(rest[0]):
            name.append(rest.pop(0))
        distance = [rest.pop(0)]
        while rest and (('/' in rest[0]) or '″' in rest[0]) and _is_figure(rest[0]):
            distance.append(rest.pop(0))
        found[' '.join(name)] = ' '.join(distance).replace('− ', '−'), int(number)
    return found


def _is_figure(word: str) -> bool:
    return bool(re.fullmatch(r'−?\d+(/\d+)?[′″]?', word))


def jack_rows(words: Sequence[Word]) -> dict[str, list[str]]:
    """Return the table of jacks: by number or mark, its figures from the left."""
    below = lines(words)
    start = next(n for n, line in enumerate(below) if line[0].text == 'jack')
    found = {}
    for line in below[start + 1 :]:
        if not re.fullmatch(r'[A-Z]*\d+', line[0].text) or not all(
            _is_figure(word.text) for word in line[1:]
        ):
            break
        cells: list[list[Word]] = []
        for word in line[1:]:
            if cells and word.left - cells[-1][-1].right < 1:
                cells[-1].append(word)
            else:
                cells.append([word])
        found[line[0].text] = [said(cell) for cell in cells]
    return found
