"""The checks as data: objects for JSON and rows for CSV, every number a decimal string or a count."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from layouts.words.say import said
from tablegen.checking import tape
from tablegen.checking.allowance import Allowance
from tablegen.checking.amounts import FINE_PLACES, Amount
from tablegen.checking.corner import CornerCheck, TurnOver
from tablegen.checking.reading import LengthCheck
from tablegen.checking.square_file import HEADER
from tablegen.checking.square_judging import VERDICTS, Cell, SquareCheck
from tablegen.checking.steps import StepMark, StepsCheck
from tablegen.checking.written import Written
from tablegen.geometry.pitch import Pitch
from tablegen.numbers import text
from tablegen.numbers.exact import Exact, nearest
from tablegen.numbers.figure import Figure
from tablegen.tables.table import Table

JUDGED_HEADER = ('rise', 'column', 'shown', 'right', 'difference_inches', 'verdict', 'belongs_to_rise')


def length_data(check: LengthCheck) -> dict[str, object]:
    """Return a length check as an object."""
    return {
        'check': 'length',
        'of': check.kind,
        **_pitch(check.pitch),
        'spacing' if check.kind == 'jack-difference' else 'run': _run(check.run_in),
        'read': _read(check.read),
        'exact': {'inches': _fine(check.exact)},
        'nearest': {'part': check.read.part.text, **_figure(check.nearest)},
        'nearest_book_part': {
            'part': f'1/{check.nearest_book_part.per} in',
            **_figure(check.nearest_book_part),
        },
        'difference': {
            'inches': _fine(check.difference),
            'parts': _fine(check.difference_parts),
            'marks': check.marks_off,
        },
        'repeated': check.repeated
        and {
            'total_run': _run(check.repeated.total_run_in),
            'steps': check.repeated.steps,
            'left_run': _run(check.repeated.left_run_in),
            'inches': _fine(check.repeated.error),
        },
        'exact_for': check.fits
        and {'rise_per_foot': _fine(check.fits.rise_per_foot), 'degrees': _fine(check.fits.degrees)},
        **_verdict(check.allowed, check.verdict),
    }


def steps_data(check: StepsCheck, marks: Sequence[StepMark] = ()) -> dict[str, object]:
    """Return a steps check as an object."""
    return {
        'check': 'steps',
        'of': check.kind,
        **_pitch(check.pitch),
        'run': _run(check.run_in),
        'held': {'body': _figure(check.hold.body), 'tongue': _figure(check.hold.tongue)},
        'step_run': _run(check.hold.run_in),
        'whole_steps': check.whole,
        'odd_run': _run(check.left_run_in),
        'odd_remainder': {'body': _figure(check.left_level), 'tongue': _figure(check.left_rise)},
        'exact_step': {'inches': _fine(check.step)},
        'step': {
            'given': bool(check.set_to),
            **_figure(check.set_figure),
            'error_inches': _fine(check.step_error),
        },
        'exact_length': {'inches': _fine(check.end)},
        'last_mark': {'inches': _fine(check.reached), 'error_inches': _fine(check.error)},
        'drift': [{'step_off_by': f'1/{one.per} in', 'inches': _fine(one.total)} for one in check.drifts],
        'step_allowed': check.step_allowed
        and {
            'inches': _fine(check.step_allowed),
            'set_to': check.setting and f'1/{check.setting} in',
        },
        'with_seventeen': check.seventeen
        and {
            'step_inches': _fine(check.seventeen.step),
            'error_inches': _fine(check.seventeen.error),
            'odd_body': _figure(check.seventeen.left_level),
        },
        'marks': [
            {
                'step': one.number,
                'inches': _fine(one.exact),
                'text': one.figure.text,
                'steps_error_inches': _fine(one.stepped),
            }
            for one in marks
        ],
        **_verdict(check.allowed, check.verdict),
        'within_allowed': check.within,
    }


def corner_data(check: CornerCheck) -> dict[str, object]:
    """Return a corner check as an object."""
    return {
        'check': 'corner',
        'long_side': _run(check.long_in),
        'short_side': _run(check.short_in),
        'diagonal': _read(check.diagonal),
        'true_diagonal': {'inches': _fine(check.true_diagonal)},
        'difference': {'inches': _fine(check.difference)},
        'out_of_square': {'degrees': _fine(check.out), 'inches_over_long_side': _fine(check.over_long)},
        'unseen_inches_over_long_side': _fine(check.unseen),
        **_verdict(check.allowed, check.verdict),
    }


def turn_over_data(check: TurnOver) -> dict[str, object]:
    """Return a turn-over test as an object."""
    return {
        'check': 'turn-over',
        'gap': _read(check.gap),
        'over': _run(check.over_in),
        'error': {
            'degrees': _fine(check.out),
            'inches_at_over': _fine(check.error),
            'inches_over_24_in': _fine(check.over_body),
            'inches_over_12_ft': _fine(check.over_wall),
        },
        **_verdict(check.allowed, check.verdict),
    }


def figures_data(carried: Table[int]) -> dict[str, object]:
    """Return what a square should carry as an object."""
    return {
        'check': 'square',
        'rows': [
            {
                column.key: _figure(cell) if isinstance(cell, Figure) else cell
                for column, cell in zip(carried.columns, row.cells, strict=True)
            }
            for row in carried.rows()
        ],
    }


def judged_data(check: SquareCheck) -> dict[str, object]:
    """Return a square's judgement as an object."""
    return {
        'check': 'square',
        'cells': [_cell(cell) for cell in check.cells],
        'counts': {verdict: check.count(verdict) for verdict in VERDICTS},
        'hip_convention': check.convention,
        'misprints': [{'rise': cell.rise, 'column': cell.column} for cell in check.misprints],
        'verdict': check.verdict,
    }


def figure_rows(carried: Table[int], blank: bool) -> list[tuple[str, ...]]:
    """Return what a square should carry as rows under its header, or the same with empty cells."""
    return [
        HEADER,
        *(
            tuple('' if blank and isinstance(cell, Figure) else str(said(cell)) for cell in row.cells)
            for row in carried.rows()
        ),
    ]


def judged_rows(check: SquareCheck) -> list[tuple[str, ...]]:
    """Return a square's judgement as rows, a cell a row."""
    return [
        JUDGED_HEADER,
        *(
            (
                str(cell.rise),
                cell.column,
                cell.shown.figure.text,
                cell.right.text,
                _fine(cell.difference),
                cell.verdict,
                str(cell.belongs_to or ''),
            )
            for cell in check.cells
        ),
    ]


def _cell(cell: Cell) -> dict[str, object]:
    return {
        'rise': cell.rise,
        'column': cell.column,
        'shown': _read(cell.shown),
        'right': _figure(cell.right),
        'difference': {'inches': _fine(cell.difference)},
        'verdict': cell.verdict,
        'follows': cell.follows,
        'rounding': cell.rounding,
        'belongs_to_rise': cell.belongs_to,
    }


def _verdict(rule: Allowance, verdict: str) -> dict[str, object]:
    return {
        'allowed': {
            'inches': _inches(rule.inches),
            'rule': rule.rule,
            'part': rule.part and rule.part.text,
            'part_assumed': bool(rule.part and rule.part.assumed),
            'own_inches': _inches(rule.own_in),
            'tape_inches': None if rule.tape_in is None else _inches(rule.tape_in),
            'tape_source': None if rule.tape_in is None else tape.SOURCE,
        },
        'verdict': verdict,
    }


def _pitch(pitch: Pitch) -> dict[str, object]:
    return {'pitch': pitch.text, 'rise_per_foot': _inches(pitch.rise)}


def _run(run_in: Fraction) -> dict[str, object]:
    return {'inches': _inches(run_in), 'text': text.run(run_in)}


def _read(read: Written) -> dict[str, object]:
    figure = read.figure
    return {'inches': _inches(read.inches), 'text': f'{figure.text} {figure.unit}'}


def _figure(figure: Figure) -> dict[str, object]:
    return {'count': figure.count, 'per': figure.per, 'unit': figure.unit, 'text': figure.text}


def _fine(amount: Amount) -> str:
    return text.plain_decimal(amount.fine.count, FINE_PLACES)


def _inches(number: Exact | Fraction) -> str:
    return text.plain_decimal(nearest(number, 10**FINE_PLACES), FINE_PLACES)
