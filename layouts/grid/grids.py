"""Grids: a long table of runs cut into pages, feet down and inches across, as layers of text."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from markupsafe import Markup

from layouts.drawings import svg
from layouts.paper.trim import DIGIT_EM, FRACTION_OF_WHOLE, Trim, fraction_em, mixed_em, whole_em
from tablegen.numbers import text
from tablegen.numbers.figure import Figure, Measure
from tablegen.settings import Runs

FIGURE_SPACE = '\u2007'
SIZES = (8.3, 8.0, 7.7)
"""Sizes of type tried for a table, in units; none below the least that reads in bad light."""
GROUP = 6
"""Rows between rules."""
GROUP_SHIFT = 1.0
"""How much further a rule between groups of columns keeps from the figures right of it."""
COLUMN_GAP, FRACTION_GAP, LABEL_RULE, SPREAD = 4.6, 2.2, 2.4, 9.0
EDGE = 1.0
"""Kept free at the right: the typesetter places each letter to a thousandth of an em, and a line of them drifts."""
PX_PER_POINT, STRETCH = 4 / 3, 1.024
"""The typesetter cuts a tab stop down to whole CSS pixels, then sets it 1024/1000 as far: measured, and columns are
made to fit such stops, lest the last of them leave the page."""
BASELINE_SHIFT_EM = 0.388
"""Half of ascent less descent of Open Sans: how far lines of one height set their baselines apart, per em."""
MOST_BEFORE_A_HEAD = 3
"""Figure spaces and digits that bring a head over the whole numbers below it."""


@dataclass(frozen=True, slots=True)
class Grid:
    """One page of a table. Labels with whole numbers and fractions are two layers of text at tab stops, so
    that a fraction can be a size smaller and lighter: full-size figures in a row read as one long number.
    Two blocks of text a page are also what the typesetter sets fastest."""

    over: str
    """Heads of groups of columns, each over its first column; '' for none."""
    heads: str
    """Corner and column heads."""
    wholes: str
    """Labels and whole numbers, a line a row."""
    fractions: str
    size: float
    fraction_size: float
    column: float
    left: float
    """Type sizes of the two layers, width of a column as it is set, and where the first layer begins, in rem."""
    tab: float
    """The tab stop to ask for, rem."""
    fraction_left: float
    fraction_top: float
    """Where the second layer begins, in rem, so that both stand on one line."""
    rules: Markup


@dataclass(frozen=True, slots=True)
class Fit:
    """How a table's columns lie on a page."""

    size: float
    whole: float
    column: float
    """From one tab stop to the next as it is set, units."""
    tab: float
    """The tab stop to ask for, rem."""
    columns: int
    digits: int
    """Digits of the longest whole number, which every shorter one is padded to."""
    feet: int
    """Digits of the longest feet before it; 0 where lengths are in inches alone."""


def fit(
    trim: Trim,
    measure: Measure,
    greatest: int,
    label: float,
    most: int,
    least: float = 0,
    spread: float = SPREAD,
) -> Fit:
    """Return how figures up to a greatest count are set in columns.

    Given:
        greatest  the greatest count of smallest parts in the table
        label     width of the label column, units
        most      columns that would be welcome
        least     width that a column's head needs, units
        spread    how much wider than needed a column may be, units
    """
    whole_in = greatest // measure.per
    feet = len(str(whole_in // 12)) if measure.style == text.FEET_INCHES and whole_in >= 12 else 0
    digits = 2 if feet else len(str(whole_in))
    found = []
    for size in SIZES:
        whole = whole_em(digits, feet) * size
        fraction = fraction_em(measure.per) * size * FRACTION_OF_WHOLE
        needed = max(least, whole + FRACTION_GAP + fraction + COLUMN_GAP)
        columns = min(most, int((trim.text_width - label + COLUMN_GAP) // needed))
        found.append((columns, size, whole, needed))
    best = max(columns for columns, *_ in found)
    columns, size, whole, needed = next(one for one in found if one[0] == best)
    width = (trim.text_width - label + COLUMN_GAP - EDGE) / max(columns, 1)
    return Fit(size, whole, *tab_stop(min(width, needed + spread), trim), columns, digits, feet)


def tab_stop(width: float, trim: Trim) -> tuple[float, float]:
    """Return the width in units of the widest column that the typesetter sets within a width, and what to ask for."""
    per_pixel = STRETCH / (trim.unit_pt * PX_PER_POINT)  # units
    pixels = int(width / per_pixel)
    return pixels * per_pixel, round((pixels + 0.25) / (10 * trim.unit_pt * PX_PER_POINT), 4)


def head_width(heads: Sequence[str]) -> float:
    """Return the width of a column that the widest of some heads needs, in units."""
    return max(map(mixed_em, heads)) * SIZES[0] + COLUMN_GAP


def grid(
    rows: Sequence[tuple[str, Sequence[Figure | None]]],
    heads: Sequence[str],
    corner: str,
    fitted: Fit,
    label: float,
    trim: Trim,
    first_group: int = GROUP,
    groups: Sequence[str] = (),
) -> Grid:
    """Return one page of a table.

    Given:
        rows         a label and a figure (or none) in every column
        heads        one a column
        corner       head of the labels
        label        width of the labels' column, units
        first_group  rows before the first rule; later rules follow every six
        groups       heads of groups of columns, as many columns in each
    """
    in_group = len(heads) // max(1, len(groups))
    left = label - fitted.column  # the labels stand in a column of their own, before the first tab stop
    longest = max(len(name) for name, _ in rows)
    indent = FIGURE_SPACE * max(0, round(-left / (DIGIT_EM * fitted.size)))
    wholes = (
        '\t'.join(
            [indent + _label(name, longest), *(padded(cell, fitted.digits, fitted.feet) for cell in cells)]
        )
        for name, cells in rows
    )
    fractions = ('\t'.join(fraction_text(cell) for cell in cells) for _, cells in rows)
    return Grid(
        indent + ''.join('\t' + group + '\t' * (in_group - 1) for group in groups) if groups else '',
        '\t'.join([indent + corner, *(_centered(head, fitted.digits + fitted.feet) for head in heads)]),
        '\n'.join(wholes),
        '\n'.join(fractions),
        _rem(fitted.size),
        _rem(fitted.size * FRACTION_OF_WHOLE),
        _rem(fitted.column),
        _rem(left),
        fitted.tab,
        _rem(label + fitted.whole + FRACTION_GAP),
        _rem((1 - FRACTION_OF_WHOLE) * fitted.size * BASELINE_SHIFT_EM),
        _rules(
            len(rows),
            first_group,
            [
                label,
                *(label + fitted.column * in_group * place - GROUP_SHIFT for place in range(1, len(groups))),
            ],
            trim,
        ),
    )


def _rules(rows: int, first_group: int, columns: Sequence[float], trim: Trim) -> Markup:
    """Return the rules of a table: below each group of rows, and left of the columns that are said."""
    height = rows * trim.row_units
    across = [
        svg.line((0, row * trim.row_units), (trim.text_width, row * trim.row_units), svg.HAIR)
        for row in range(first_group, rows, GROUP)
    ]
    close = svg.line((0, height), (trim.text_width, height), svg.LINE)
    down = [svg.line((left - LABEL_RULE, 0), (left - LABEL_RULE, height), svg.HAIR) for left in columns]
    top = svg.line((0, 0), (trim.text_width, 0), svg.LINE)
    return svg.drawing(trim.text_width, height + 1, 'rules', [top, *across, close, *down], 'rules')


def _rem(units: float) -> float:
    return round(units / 10, 4)


def whole_text(figure: Figure | None) -> str:
    """Return what stands left of a length's fraction: '53', '4′ 5', '' for less than an inch."""
    return figure.parts.before if figure else ''


def fraction_text(figure: Figure | None) -> str:
    """Return a length's fraction, '' where it has none."""
    return figure.parts.fraction if figure else ''


def _label(name: str, longest: int) -> str:
    """Return a row's number moved right to stand under the others; a length in words stays at the left."""
    return name.rjust(longest, FIGURE_SPACE) if name.isdigit() else name


def padded(figure: Figure | None, digits: int, feet: int) -> str:
    """Return the whole number moved right by spaces as wide as a digit; a foot mark keeps its own width.

    Given:
        digits  of the longest whole number
        feet    digits of the longest feet before it, 0 where lengths are in inches alone
    """
    if not feet or figure is None:
        return whole_text(figure).rjust(digits, FIGURE_SPACE)
    sign, of_feet, inches, *_ = figure.parts
    # two word spaces are as wide as the foot mark and its space, to 0.02 em
    before = (sign + of_feet if of_feet else '').rjust(feet, FIGURE_SPACE) + ('′ ' if of_feet else '  ')
    return before + (inches if of_feet else sign + inches).rjust(digits, FIGURE_SPACE)


def _centered(head: str, digits: int) -> str:
    number = head.split(' ')[0]
    if not number[0].isdigit() or '/' in head:  # a fraction leaves no room to move
        return head
    places = min(digits, MOST_BEFORE_A_HEAD)
    return FIGURE_SPACE * max(0, places - len(number)) + head


def offsets_of_foot(runs: Runs) -> list[Fraction] | None:
    """Return the inches past a whole foot at which runs fall, or None where feet and inches make no grid.

    Notes:
        1. Runs given in metric make a list: their inches, such as 50/127, are heads that nobody finds on a tape.
    """
    if (12 / runs.step).denominator != 1 or any(map(text.is_metric, (runs.first, runs.step))):
        return None
    return sorted({run % 12 for run in runs})


def cells_of_foot(
    figures: dict[Fraction, Figure], feet: int, offsets: Sequence[Fraction]
) -> list[Figure | None]:
    """Return the figures of one foot's runs at some offsets in inches; None where the table has none."""
    return [figures.get(12 * feet + offset) for offset in offsets]
