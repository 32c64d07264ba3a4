"""What every figure of a worked example should read, by its name, from what its page says of the roof."""

from __future__ import annotations

from decimal import Decimal

from tablegen.proof import worked_boards as build
from tablegen.proof.digits import FOOT_IN, decimals, named, nearest, real
from tablegen.proof.figures import figures
from tablegen.proof.roof import DEPTHS, Corner, corner
from tablegen.proof.roof_boards import place_of, square_of
from tablegen.proof.timber import Timber
from tablegen.proof.worked_member import Answers, fraction, of_board, of_mouth
from tablegen.proof.worked_roof import PLACES, Form, Roof, angle, station
from tablegen.proof.worked_slopes import slopes_answers


def answers(roof: Roof) -> Answers:
    """Return every answer that what is given is enough for."""
    roof.settle()
    return {
        'common': _rafter,
        'shed': _rafter,
        'hip': _hip,
        'valley': _valley,
        'jacks': _jacks,
        'slopes': slopes_answers,
    }[roof.kind](roof)


def _rafter(roof: Roof) -> Answers:
    form, it, slope = Form(roof.book), roof.given, roof.pitches['pitch'].slope
    board = build.rafter(slope, it, roof.boards)
    height = corner(slope, roof.boards).common_mouth(roof.boards.rafters)[0]
    return of_board(board, form, Decimal(1), real(it['run']), real(it['overhang'])) | of_mouth(
        board, form, height
    )


def _in_corner(roof: Roof, at: Corner, board: Timber, form: Form) -> Answers:
    """Return what is told of hips and valleys alike."""
    known = figures(at, roof.book)
    far = board.flat * at.an_inch['hip']
    odd = roof.given['run'] % fraction(square_of(board, far)[2])
    plumb_depth = (
        real(DEPTHS[roof.boards.valleys if roof.kind == 'valley' else roof.boards.hips]) / at.top.normal[2]
    )
    return {
        **of_board(board, form, far, real(roof.given['run']), real(roof.given['overhang'])),
        'odd-run': (f'{named(odd)} in',),
        'top': (known['hip-cheek-top'],),
        'top-12': (known['hip-cheek-top-held'],),
        'blade': (known['hip-cheek-blade'],),
        'drop': form.length(at.drop(roof.boards.hip)),
        'depth': form.length(plumb_depth),
    }


def _hip(roof: Roof) -> Answers:
    form, boards = Form(roof.book), roof.boards
    at = corner(roof.pitches['pitch'].slope, boards)
    board, between = (build.hip(at, roof.given, stop) for stop in (roof.stop, build.COMMONS))
    height, drop = at.common_mouth(boards.rafters)[0], at.drop(boards.hip)
    backed = at.hip_mouth(boards.hips, Decimal(0), Decimal(0))
    past, past_between = build.ridge_past(at, ''), build.ridge_past(at, build.COMMONS)
    other = of_board(between, form, Decimal(1), Decimal(0), Decimal(0))
    return {
        **_in_corner(roof, at, board, form),
        **of_mouth(board, form, height - drop),
        **{f'between-{name}': other[name] for name in ('side-along', 'side-level')},
        'between-along': other['off-along'],
        'between-level': other['off-level'],
        'commons-height': form.length(height),
        'backing': angle(at.backing()),
        'backed-heel': form.length(backed[1]),
        'backed-seat': form.length(backed[2]),
        'least-depth': form.length(build.least_depth(at, drop, Decimal(0)), up=True),
        'past': form.length(past),
        'over': form.length(build.stands_over(at, past)),
        'between-past': form.length(past_between),
        'between-over': form.length(build.stands_over(at, past_between)),
    }


def _valley(roof: Roof) -> Answers:
    form, boards = Form(roof.book), roof.boards
    at = corner(roof.pitches['pitch'].slope, boards)
    board, out = build.valley(at, roof.given), at.valley_out()
    height = at.common_mouth(boards.rafters)[0]
    return {
        **_in_corner(roof, at, board, form),
        **of_mouth(board, form, height),
        'heel-out': form.length(out),
        'least-depth': form.length(build.least_depth(at, Decimal(0), out), up=True),
    }


def jack_row(roof: Roof, name: str) -> Answers:
    """Return what is told of one jack in the table of them."""
    form, at = Form(roof.book), corner(roof.pitches['pitch'].slope, roof.boards)
    board = build.jack(at, station(roof, name), roof.given['overhang'])
    assert board.center
    places = {name: place_of(board, ('head', name)) for name in ('long', 'short')}
    whole = {'line': board.to(board.center) or Decimal(0), **places, 'overall': board.overall}
    return {name: form.length(value) for name, value in whole.items()}


def lacks_first_jack(roof: Roof) -> bool:
    """Return whether another would stand a space before the first jack of the table, its short point inside of the plate line."""
    away = station(roof, roof.jacks[0]) - roof.given['spacing']
    if away <= 0:
        return False
    board = build.jack(corner(roof.pitches['pitch'].slope, roof.boards), away, roof.given['overhang'])
    return place_of(board, ('head', 'short')) > 0


def _jacks(roof: Roof) -> Answers:
    form, boards, per = Form(roof.book), roof.boards, roof.book.per
    at = corner(roof.pitches['pitch'].slope, boards)
    known, away, half = figures(at, roof.book), station(roof, roof.jacks[-1]), real(boards.rafter) / 2
    board = build.jack(at, away, roof.given['overhang'])
    found = of_board(board, form, Decimal(1), real(away), real(roof.given['overhang']))
    apart, line, off = (
        at.jack_difference(roof.given['spacing']),
        at.common_length(away),
        at.jack_off(boards.hip),
    )
    points = at.common_length(boards.rafter / 2)
    center = nearest(roof.summed.get('line', line), per) - nearest(off[1], per)
    by_hand = Decimal(decimals(off[0], PLACES))
    foot, short = Decimal(known['common-exact-foot']), real(away) - by_hand - half
    steps = away // roof.given['spacing']
    return {
        **found,
        **of_mouth(board, form, at.common_mouth(boards.rafters)[0]),
        'top': (known['jack-cheek-top'],),
        'top-12': (known['jack-cheek-top-held'],),
        'blade': (known['jack-cheek-blade'],),
        'number': (roof.jacks[-1],),
        'half-along': form.length(points),
        'half-rafter': (f'{named(boards.rafter / 2)} in', named(boards.rafter / 2)),
        **{
            f'{name}-summed': form.length(
                Decimal(center + sign * nearest(roof.summed.get('half-along', points), per)) / per
            )
            for name, sign in (('long', 1), ('short', -1))
        },
        'points': form.length(at.sides_of_jack()[1]),
        'past': form.length(build.ridge_past(at, '')),
        'off-by-hand': (decimals(off[0], PLACES),),
        'half-by-hand': (f'{float(half):g}',),
        'short-by-hand': (decimals(short, PLACES),),
        'exact-foot': (known['common-exact-foot'], f'{foot:.4f}'),
        'along-by-hand': (decimals(short / FOOT_IN * foot, PLACES),),
        'difference': form.length(apart),
        'difference-exact': (decimals(apart, PLACES),),
        'jack-drift': form.off((Decimal(nearest(apart, per)) / per - apart) * steps),
    }
