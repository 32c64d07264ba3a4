"""What is told of any one board of a worked example, and of stepping it off."""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction

from tablegen.proof.digits import FOOT_IN, decimals, nearest, real, written
from tablegen.proof.roof_boards import SQUARE_PARTS, square_of, steps_of
from tablegen.proof.timber import Timber
from tablegen.proof.worked_roof import PLACES, Form, angle

Answers = dict[str, tuple[str, ...]]
"""The ways in which each figure may be told, by its name."""


def of_board(board: Timber, form: Form, far: Decimal, run: Decimal, overhang: Decimal) -> Answers:
    """Return what is told of any board, and of stepping it off."""
    assert board.center
    flat, line = board.flat, board.to(board.center) or Decimal(0)
    head, tail = board.at(board.head), board.at(board.tail, upper=False)
    back = abs(head - board.at(board.head, real(board.thick) / 2))
    back_tail = abs(tail - board.at(board.tail, real(board.thick) / 2, upper=False))
    whole, body, tongue = steps_of(board, run, far)
    more, tail_body, tail_tongue = steps_of(board, overhang, far)
    hold_body, hold_tongue, step_run = square_of(board, far)
    step = real(fraction(step_run)) * far / flat
    rounded = Decimal(nearest(step, form.per)) / form.per
    stamped = real(fraction(step_run)) / FOOT_IN
    rise = board.edge[2] / (board.edge[0] ** 2 + board.edge[1] ** 2).sqrt() * far
    by_17 = stamped * (Decimal(17**2) + (rise * FOOT_IN) ** 2).sqrt()
    parts = [written(one, SQUARE_PARTS) for one in (body, tongue, tail_body, tail_tongue)]
    return {
        'line': form.length(line),
        'whole': form.length(line - tail),
        'tail': form.length(-tail),
        'off-along': form.length(line - head),
        'off-level': form.length((line - head) * flat),
        'tail-off-along': form.length(tail),
        'tail-off-level': form.length(tail * flat),
        'side-along': form.length(back),
        'side-level': form.length(back * flat),
        'tail-side-along': form.length(back_tail),
        'tail-side-level': form.length(back_tail * flat),
        'overall': form.length(board.overall),
        'stick': form.length(board.stick, up=True),
        'plumb': angle(board.plumb_cut),
        'side': angle(board.plumb_cut),
        'level': angle(board.level_cut),
        'hold': (f'{hold_body} & {hold_tongue}',),
        'hold-body': (hold_body,),
        'hold-tongue': (hold_tongue,),
        'step-run': (f'{step_run} in', step_run),
        'steps': (str(whole),),
        'odd': (f'{parts[0]} & {parts[1]}',),
        'odd-body': (parts[0],),
        'odd-tongue': (parts[1],),
        'tail-odd': (f'{parts[2]} & {parts[3]}',),
        'tail-steps': (str(more),),
        'step-set': (written(step, form.per),),
        'step-exact': (decimals(step, PLACES),),
        'drift': form.off((rounded - step) * whole),
        'seventeen': form.off((by_17 - step) * whole),
        'base': (str(FOOT_IN),),
    }


def fraction(told: str) -> Fraction:
    return sum(map(Fraction, told.split()), Fraction(0))


def of_mouth(board: Timber, form: Form, height: Decimal) -> Answers:
    heel, seat, notch, left = board.mouth(height)
    told = {'height': height, 'heel': heel, 'mouth-seat': seat, 'notch': notch, 'left': left}
    return {name: form.length(value) for name, value in told.items()}
