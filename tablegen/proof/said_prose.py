"""What pages of prose say in numbers: limits of a code, rounded lengths added, what 17 makes of a hip, how many pages there are."""

from __future__ import annotations

import re
from collections.abc import Iterator
from decimal import Decimal
from fractions import Fraction

from tablegen.proof.digits import FOOT_IN, decimals, nearest, written
from tablegen.proof.figures import OLD_RUN, length
from tablegen.proof.names import SaidPage
from tablegen.proof.page import Page, close
from tablegen.proof.roof import Boards, Corner, corner
from tablegen.proof.roof_stated import Unstated, inches_of
from tablegen.proof.sentences import told
from tablegen.proof.worked_boards import COMMONS, ridge_past
from tablegen.proof.worked_lines import cells_of
from tablegen.proof.worked_roof import Form

IN_SOME = '?'
"""Of a sentence that stands there in some cases only."""
LIMITS = {
    'low_slope-rise': '3',
    'short_seat-least': '1 1/2',
    'short_seat-masonry': '3',
    'thin_tail-least': '3 1/2',
    'long_tail-most': '24',
}
"""in, by cautions and places in them. Source: International Residential Code R802.3 (R802.4.4), R802.6, R802.7.1.1."""
COUNTED, ADDED = ('made', 'closing'), ('numbers', 'rounded')
"""Pages that say how many there are, and that add rounded lengths."""


def prose_answers(per: int) -> dict[str, tuple[str, ...]]:
    """Return what stands in the places of sentences in any book of such parts of an inch."""
    return {
        'base': (str(FOOT_IN),),
        'part': (written(1 / Decimal(per), per),),
        'half': (written(1 / Decimal(2 * per), 2 * per),),
        'over': (decimals(_seventeen(), 3),),
        **{f'caution-{name}': (value,) for name, value in LIMITS.items()},
    }


def _seventeen() -> Decimal:
    """Return how much longer twelve steps of 17 and 8 are than those of a hip at 8 in 12, whose run in a foot is √288."""
    hip, rise = Decimal(2 * FOOT_IN**2), Decimal(8**2)
    return FOOT_IN * ((OLD_RUN**2 + rise).sqrt() - (hip + rise).sqrt())


def past_ridge(boards: Boards, form: Form) -> dict[str, tuple[str, ...]]:
    """Return what comes off an end common: as far as the ridge runs past where the center lines meet, which no pitch changes."""
    at = corner(Decimal(1), boards)
    return {f'past-{stop}': form.length(ridge_past(at, stop)) for stop in ('', COMMONS)}


def counts(kind: SaidPage, words: str) -> Iterator[tuple[int, str, str]]:
    """Yield how many pages, then sections, words say: the place of what is counted, its name, and the number."""
    for place, label in enumerate(kind.labels):
        found = re.search(re.escape(label).replace(r'\{count\}', r'(?<![\d,])([\d,]+)'), words)
        if found:
            yield place, label.partition('}')[2].strip(), found[1]


def added(page: Page, kind: SaidPage, slope: Corner, per: int) -> Iterator[tuple[str, str, Decimal]]:
    """Yield two lengths that are added, their sum as they are rounded, and the length of both runs: name, figure, and what it is."""
    row, total, exact = kind.labels
    runs, parts, of = list[Fraction](), list[int](), ''
    for line in page.lines:
        label, *printed = [close(cell) for cell in cells_of(line)]
        said = told(row, label)
        run = _run(said['run']) if said else None
        if len(printed) != 1:
            continue
        if said and run is not None:
            of = dict(kind.columns).get(said['member'], of)
            value = length(slope, of or 'common', run)
            runs.append(run)
            parts.append(nearest(value, per))
            yield label, printed[0], value
        elif label == total:
            yield label, printed[0], Decimal(sum(parts)) / per
        elif label == exact:
            yield label, printed[0], length(slope, of or 'common', sum(runs, Fraction(0)))


def _run(words: str) -> Fraction | None:
    try:
        return inches_of(words)
    except Unstated:
        return None
