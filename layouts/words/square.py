"""The sentences of a square's check: the figures it should carry, and what its own figures say."""

from __future__ import annotations

from collections.abc import Sequence
from textwrap import wrap

from layouts.words.checks import WIDTH, table, way
from layouts.words.say import N_
from tablegen.checking.square_figures import SquareRow
from tablegen.checking.square_judging import (
    COARSER,
    CUT_OFF,
    NOT_SHOWN,
    RIGHT,
    ROOT_288,
    SEVENTEEN,
    VERDICTS,
    WRONG,
    Cell,
    SquareCheck,
)

MESSAGES = {
    'square.template': N_('rafterbook check square --blank prints one to fill in'),
    'square.rises': N_('whole inches per foot, {first} to {last}'),
    'square.row': N_('{source}: row {row}'),
    'square.cell': N_('{source}: row {row}, column {column}'),
    'square.no_csv': N_('is no CSV: {fault}'),
    'square.empty': N_('is empty'),
    'square.header': N_('a header {header} and a row a rise'),
    'square.rise_twice': N_('the rise {rise} is there twice'),
    'square.rises_once': N_('each rise once'),
    'square.no_figure': N_('has no figure in it'),
    'square.one_cell': N_('at least one filled cell'),
    'square.missing_column': N_("the column '{name}' is missing"),
    'square.twice': N_("'{name}' is there twice"),
    'square.columns_once': N_('each column once'),
    'square.cells': N_('{cells} cells under {columns} columns'),
    'square.cell_a_column': N_('a cell a column, empty where the square shows nothing'),
    'square.off_the_table': N_("'{written}' is off the table"),
    'square.no_square_figure': N_("'{written}' is no figure of a square"),
    'square.leave_empty': N_('leave the cell empty'),
}
COLUMN_NAMES = {
    'common': 'common',
    'hip_valley': 'hip, valley',
    'jack_16': 'jacks 16',
    'jack_24': 'jacks 24',
    'jack_cheek': 'jack cheek',
    'hip_cheek': 'hip cheek',
}
VERDICT_NAMES = {
    RIGHT: 'right',
    CUT_OFF: 'cut off instead of rounded',
    COARSER: 'rounded to a coarser part',
    SEVENTEEN: 'computed with 17 in place of √288 = 16.9706',
    WRONG: 'wrong',
}
FIGURES_NOTE = (
    'Inches. Common, hip and valley: length per foot of common run. Jacks: difference in length at 16 and 24 in '
    'on center. Cheeks: on the top edge, left square; held against 12 on the square, marked along the 12.'
)
FINDINGS = {
    ROOT_288: 'Its hip figures follow √288, as they should.',
    SEVENTEEN: (
        'An old square’s convention, no misprint: its hip figures are computed with 17 in place of √288. '
        'They are too long by a little at every step: use the figures given here.'
    ),
    NOT_SHOWN: 'Nothing on it tells whether 17 or √288 was used for the hip.',
}
SEVENTEEN_MIXED = (
    'Its hip figures are computed with 17 in place of √288, an old convention; use those given here.'
)


def figure_lines(rows: Sequence[SquareRow]) -> list[str]:
    """Return the table of what a square should carry."""
    head = ('rise', *COLUMN_NAMES.values())
    cells = [(str(row.rise), *(figure.text for figure in row.figures)) for row in rows]
    return ['What a square should carry', *table([head, *cells], ''), *wrap(FIGURES_NOTE, WIDTH)]


def judged_lines(check: SquareCheck) -> list[str]:
    """Return what a square's own figures say: each that is not right, the counts, the finding."""
    listed = [cell for cell in check.cells if cell.verdict != RIGHT or cell in check.misprints]
    head = ('rise', 'column', 'shown', 'right', 'off', '')
    remarks = [_remark(cell, check) for cell in listed]
    widest = max(map(len, remarks), default=0)
    rows = [
        (
            str(cell.rise),
            COLUMN_NAMES[cell.column],
            cell.shown.figure.text,
            cell.right.text,
            way(cell.difference),
            remark.ljust(widest),
        )
        for cell, remark in zip(listed, remarks, strict=True)
    ]
    return [
        f'{len(check.cells)} figures read',
        *(table([head, *rows]) if rows else []),
        *(
            f'  {check.count(verdict):3} {VERDICT_NAMES[verdict]}'
            for verdict in VERDICTS
            if check.count(verdict)
        ),
        *wrap(_finding(check), WIDTH),
    ]


def _remark(cell: Cell, check: SquareCheck) -> str:
    if cell.verdict != WRONG:
        short = {CUT_OFF: 'cut off', COARSER: 'coarser', SEVENTEEN: '17', RIGHT: '√288'}[cell.verdict]
        if cell.verdict == RIGHT and cell.follows == check.convention:
            short = 'rounded'
        if cell.verdict == SEVENTEEN and cell.rounding == CUT_OFF:
            short += ', cut off'
        return f'{short}, alone' if cell in check.misprints else short
    return f'wrong: of {cell.belongs_to}' if cell.belongs_to else 'wrong'


def _finding(check: SquareCheck) -> str:
    if not check.misprints:
        return FINDINGS[check.convention]
    many = len(check.misprints)
    said = f'{many} misprint{"" if many == 1 else "s"} or bad reading{"" if many == 1 else "s"}: look again.'
    return f'{said} {SEVENTEEN_MIXED if check.convention == SEVENTEEN else FINDINGS[check.convention]}'
