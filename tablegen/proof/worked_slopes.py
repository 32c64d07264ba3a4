"""What every figure of two rafters should read whose slopes differ: a saltbox's front and back, a gambrel's lower and upper."""

from __future__ import annotations

from decimal import Decimal

from tablegen.proof import worked_boards as build
from tablegen.proof.digits import FOOT_IN, SLACK, decimals, named, nearest, real
from tablegen.proof.roof import corner
from tablegen.proof.stated import Pitch
from tablegen.proof.timber import Timber
from tablegen.proof.worked_member import Answers, of_board, of_mouth
from tablegen.proof.worked_roof import GAMBREL, PLACES, Form, Roof, runs_of

NONE = ('',)
"""Of what one of them has not."""


def both_slopes(roof: Roof) -> tuple[Timber, Timber]:
    """Return both boards."""
    low, high = (roof.pitches[name].slope for name in ('a-pitch', 'b-pitch'))
    (first, second), boards = runs_of(roof), roof.boards
    ridge, out = real(boards.ridge) / 2, -real(roof.given['overhang'])
    if roof.stop == GAMBREL:
        purlin = real(roof.given['purlin']) / 2
        return build.between(low, first, (purlin, out), boards), build.between(
            high, second, (ridge, purlin), boards
        )
    return build.between(low, first, (ridge, out), boards), build.between(high, second, (ridge, out), boards)


def _rise_told(pitch: Pitch) -> str:
    """Return the rise in a foot of run: a pitch's own number, of one in degrees to a thousandth where it is no whole one."""
    rise = pitch.slope * FOOT_IN
    if not pitch.in_degrees:
        return named(pitch.number)
    whole = nearest(rise, 1)
    return str(whole) if abs(rise - whole) < SLACK else decimals(rise, PLACES)


def slopes_answers(roof: Roof) -> Answers:
    """Return what is told of both, of the first under names with `a-`, of the second with `b-`."""
    form, runs, made, boards = Form(roof.book), runs_of(roof), both_slopes(roof), roof.boards
    out, gambrel = real(roof.given['overhang']), roof.stop == GAMBREL
    height = corner(roof.pitches['a-pitch'].slope, boards).common_mouth(boards.rafters)[0]
    found: Answers = {}
    for name, board, run in zip('ab', made, runs, strict=True):
        pitch = roof.pitches[f'{name}-pitch']
        told = of_board(board, form, Decimal(1), run, out) | of_mouth(board, form, height)
        rise = corner(pitch.slope, boards).rise_between(Decimal(0), run)
        told |= {'rise': form.length(rise), 'rise-12': (_rise_told(pitch),)}
        told['ridge-along'] = told['off-along']
        if gambrel and name == 'a':
            told['ridge-along'] = NONE
        if gambrel and name == 'b':
            told |= dict.fromkeys(('tail-cut', 'height', 'heel'), NONE)
        told.setdefault('tail-cut', told['whole'])
        found |= {f'{name}-{what}': answer for what, answer in told.items()}
    rises = sum(
        (
            corner(roof.pitches[f'{name}-pitch'].slope, boards).rise_between(Decimal(0), run)
            for name, run in zip('ab', runs, strict=True)
        ),
        Decimal(0),
    )
    return found | {
        'rises': form.length(rises),
        'ridge-level': form.length(real(boards.ridge) / 2),
        'seat': form.length(real(boards.seat)),
    }


def one_slope(roof: Roof, name: str) -> Answers:
    """Return what is told of one of two rafters on a page of its own."""
    which = 'ab'[name == roof.words['second']]
    found = {
        key.removeprefix(f'{which}-'): answer
        for key, answer in slopes_answers(roof).items()
        if key.startswith(f'{which}-')
    }
    return found
