"""The sentences of a square's check: the figures it should carry, and what its own figures say."""

from __future__ import annotations

from textwrap import wrap

from layouts.words.checks import WIDTH, table, way
from layouts.words.messages import english
from layouts.words.say import N_, _, n_, said, say
from tablegen.checking.square_judging import Cell, Convention, Fit, Rounding, SquareCheck
from tablegen.numbers.units import INCHES
from tablegen.tables.table import Table

ENGRAVED = (
    (N_('length, per foot of run'), (N_('common'), N_('hip, valley'), N_('by 17'))),
    (N_('jacks differ, spaced'), (N_('16 in'), N_('24 in'))),
    (N_('cheek (“side cut”)'), (N_('jack'), N_('hip'))),
)
"""What stands over the columns of the page on what a square should carry, and their heads below it."""
ENGRAVED_BELOW = N_(
    'A square has these lines, all but “by 17”, each figure under the inch of its rise (common practice); “15 62” is 15.62. Cheeks: '
    'against {base}, marked along the {base}. Old squares work hips by 17, not √288, and cut last digits off: a figure “by 17”, or '
    '1/100 less than one here, is no misprint; but cut by the other columns.'
)
RISE, STEP, STEPS = N_('rise'), (N_('step'), N_('set to')), N_('steps')
"""Heads of the page on what rounded steps add up to."""
DRIFT_BELOW = N_(
    'Inches that a common comes out long (+) or short (−) with every step set to the nearest {part}: so measure the whole length once '
    '(page {page}). Other counts: the 24 steps’ figure ÷ 24 × the count. Past 16 in {base} a step is 6 in of run. Set 1/32 off, '
    'twelve steps are 3/8 off besides.'
)
VERDICT_NAMES = {
    Fit.RIGHT: N_('right'),
    Fit.CUT_OFF: N_('cut off instead of rounded'),
    Fit.COARSER: N_('rounded to a coarser part'),
    Fit.SEVENTEEN: N_('computed with 17 in place of √288 = 16.9706'),
    Fit.WRONG: N_('wrong'),
}
SHORT = {
    Fit.RIGHT: N_('√288'),
    Fit.CUT_OFF: N_('cut off'),
    Fit.COARSER: N_('coarser'),
    Fit.SEVENTEEN: N_('17'),
    Fit.WRONG: N_('wrong'),
}
FIGURES_NOTE = N_(
    'Inches. Common, hip and valley: length per foot of common run. Jacks: difference in length at 16 and 24 in '
    'on center. Cheeks: on the top edge, left square; held against {base} on the square, marked along the {base}.'
)
FINDINGS = {
    Convention.ROOT_288: N_('Its hip figures follow √288, as they should.'),
    Convention.SEVENTEEN: N_(
        'An old square’s convention, no misprint: its hip figures are computed with 17 in place of √288. '
        'They are too long by a little at every step: use the figures given here.'
    ),
    Convention.NOT_SHOWN: N_('Nothing on it tells whether 17 or √288 was used for the hip.'),
}
SEVENTEEN_MIXED = N_(
    'Its hip figures are computed with 17 in place of √288, an old convention; use those given here.'
)


def figure_lines(carried: Table[int]) -> list[str]:
    """Return the table of what a square should carry."""
    head = tuple(say(column.head) for column in carried.columns)
    cells = [tuple(str(said(cell)) for cell in row.cells) for row in carried.rows()]
    return [
        say(carried.title),
        *table([head, *cells], ''),
        *wrap(_(FIGURES_NOTE).format(base=INCHES.base), WIDTH),
    ]


def judged_lines(check: SquareCheck) -> list[str]:
    """Return what a square's own figures say: each that is not right, the counts, the finding."""
    listed = [cell for cell in check.cells if cell.verdict != Fit.RIGHT or cell.misprint]
    head = (_('rise'), _('column'), _('shown'), _('right'), _('off'), '')
    remarks = [_remark(cell, check) for cell in listed]
    widest = max(map(len, remarks), default=0)
    rows = [
        (
            str(cell.rise),
            _(english(f'square.{cell.column}')),
            cell.shown.figure.text,
            cell.right.text,
            way(cell.difference),
            remark.ljust(widest),
        )
        for cell, remark in zip(listed, remarks, strict=True)
    ]
    return [
        _('{count} figures read').format(count=len(check.cells)),
        *(table([head, *rows]) if rows else []),
        *(f'  {count:3} {_(VERDICT_NAMES[fit])}' for fit, count in check.counts.items() if count),
        *wrap(_finding(check), WIDTH),
    ]


def _remark(cell: Cell, check: SquareCheck) -> str:
    if cell.verdict == Fit.WRONG:
        belongs = _('wrong: of {rise}').format(rise=cell.belongs_to_rise)
        return belongs if cell.belongs_to_rise else _(SHORT[Fit.WRONG])
    short = _(SHORT[cell.verdict])
    if cell.verdict == Fit.RIGHT and cell.follows == check.hip_convention:
        short = _('rounded')
    if cell.verdict == Fit.SEVENTEEN and cell.rounding == Rounding.CUT_OFF:
        short = _('17, cut off')
    return _('{remark}, alone').format(remark=short) if cell.misprint else short


def _finding(check: SquareCheck) -> str:
    many = len(check.misprints)
    found = _(FINDINGS[check.hip_convention])
    if not many:
        return found
    if check.hip_convention == Convention.SEVENTEEN:
        found = _(SEVENTEEN_MIXED)
    told = n_(
        '{count} misprint or bad reading: look again.', '{count} misprints or bad readings: look again.', many
    )
    return f'{told.format(count=many)} {found}'
