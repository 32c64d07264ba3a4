"""What stands on a pitch's one opening where a worked example says: in the row and under the head named."""

from __future__ import annotations

import re
from itertools import pairwise

from headed import NotTold, phrases, said
from test_opening import lengths_in, parted
from worked_pages import Place, WorkedPage

COLUMNS_MM = 1.4
"""Columns stand further apart than that, a fraction nearer to its whole number."""
HELD = ('body: level', 'tongue: plumb')


def figures_on_opening(book, place: Place) -> list[str]:
    """Return the figure under each head named, one for a row of one figure; thousandths of an exact foot."""
    right = place.page - book.planned.index['opening:1 in 12']
    lengths, beside = parted(book.words[place.page - 1], 'Jacks' if right % 2 else 'Overhang')
    if place.kind == 'runs':
        number, _, unit = (
            place.row.partition(' ') if place.row.endswith((' ft', ' in')) else (place.row, '', 'in')
        )
        return [lengths_in(lengths)[unit, number, head] for head in place.heads]
    if place.row == 'exact foot':
        (after,) = [below for line, below in pairwise(lengths) if said(line).startswith('exact foot')]
        return [f'{float(after[0].text):.3f}']
    return [_beside(beside, place, head) for head in place.heads]


def cited_wrongly(book, pages: dict[str, WorkedPage]) -> tuple[list[str], int]:
    """Turn to every place that is cited: in the named row, under the named head, stands a figure of the step.

    Returned:
        where that is not so, and how many figures were looked at
    """
    wrong, seen = [], 0
    for title, page in pages.items():
        for step in page.steps:
            told = f' {step.words} {step.figure} '
            for place in step.places:
                for figure in figures_on_opening(book, place):
                    seen += 1
                    if not re.search(rf'(?<=[\s&(]){re.escape(figure)}(?=[\s.,;])', told) and not _follows(
                        figure, place, page
                    ):
                        wrong.append(
                            f'{title}, "{step.words}": page {place.page} has {figure} there, {place}'
                        )
    return wrong, seen


def _follows(figure: str, place: Place, page: WorkedPage) -> bool:
    """Heel and seat stand in the next steps."""
    return place.row in ('Hip, dropped', 'Valley') and figure in {step.figure for step in page.steps}


def _beside(lines, place: Place, head: str) -> str:
    if place.row in HELD:
        (line,) = [line for line in lines if place.row in said(line)]
        return said(line).partition(' body')[0].partition(' tongue')[0]
    if place.title:
        (start,) = [n for n, line in enumerate(lines) if said(line) == place.title]
        lines = lines[start : start + 3]
    count, found = len(place.row.split()), []
    for n, line in enumerate(lines):
        if said(line[:count]) == place.row and re.fullmatch(
            r'[\d/]+[†‡§]*|\d+\.\d\d°', line[count].text if line[count:] else ''
        ):
            cells = phrases(line[count:], COLUMNS_MM)
            if not head:
                found += [one.text for one in cells]
                continue
            top = next((one for one in reversed(lines[:n]) if _head(one, head)), None)
            if top:
                middle = _head(top, head)
                found.append(min(cells, key=lambda one: abs((one.left + one.right) / 2 - middle)).text)
    if len(found) != 1:
        raise NotTold(f'{place}: {found}')
    return re.sub('[ †‡§]+$', '', found[0])


def _head(line, head: str) -> float:
    """Return where the middle of a head is, the last of its kind in a line; 0 where it is not there."""
    wanted = head.split()
    places = [n for n in range(1, len(line)) if [word.text for word in line[n : n + len(wanted)]] == wanted]
    return (line[places[-1]].left + line[places[-1] + len(wanted) - 1].right) / 2 if places else 0
