"""The worked examples as they should be printed: each step's figure by its words, each mark by what it is."""

from __future__ import annotations

from fractions import Fraction

from fifty_digits import mp, mpf
from oracle import cuts, framing_square, hip_ends, seats, shortening, tails
from oracle.corner import common_length, hip_length, jack_length, jack_points, jack_to_points, rise
from oracle.rounding import decimal, degrees, least, nearest, part

from labels.example_hips import (
    end_common,
    hip_cuts,
    hip_marks,
    hip_mouth,
    hip_table,
    overall,
    valley_marks,
    valley_mouth,
    valley_table,
)
from labels.example_roof import PORCH_OUT, STAMPED, STORE_OUT, Roof, feet, lean, signed, stepped
from labels.expected import DEPTHS
from labels.two_slopes import GAMBREL, SALTBOX, boards, tables
from labels.two_slopes import marks as marks_of_slopes


def _mouth(at, depth, seat) -> dict[str, str]:
    left = part(seats.left(at, depth, seat))
    return {
        'Heel, plumb': part(seats.heel(at, seat)),
        'Height above plate': part(seats.height_above_plate(at, depth, seat)),
        f'Notch, square to the edge; wood left over it, {left}.': part(seats.notch(at, seat)),
    }


def _common(roof, at, run, out, off, words) -> tuple[dict, dict, str]:
    """Return the steps by the table, those with the square, and the small print's figures."""
    level, along = off
    depth = DEPTHS[roof.rafters]
    table = {
        'Line length': part(common_length(at, run)),
        'To the tail': part(common_length(at, run + out)),
        f'{words}; {part(along)} along the top edge': part(level),
        **_mouth(at, depth, roof.seat),
    }
    whole = common_length(at, run + out) - along
    board = whole + lean(tails.plumb_cut_length(at, depth), depth)
    small = (
        f'Cut to cut {part(whole)} in; from a board of {least(board)} in or more. On the side, from square across: '
        f'plumb cuts {degrees(cuts.plumb_cut(at))}, level {degrees(cuts.level_cut(at))}.'
    )
    return table, stepped(at, run, out, level, hip=False), small


def _common_marks(at, run, out, along, names) -> dict[str, str]:
    figures = (0, along, common_length(at, run), common_length(at, run + out))
    return dict(zip(names, map(part, figures), strict=True))


def steps(roof: Roof) -> dict[str, dict[str, str]]:
    """Return the figure of every step by the title of its page and some of its words."""
    at, run, out = roof.at, roof.run, STORE_OUT
    table, by_square, _ = _common(
        roof, at, run, out, shortening.common_at_ridge(at, roof.ridge), 'Off at the ridge: half of it, level'
    )
    shed = hip_ends.shed_on_ledger(roof.porch, roof.rafter)
    ledger = (shed, shed * common_length(roof.porch, 1))
    words = 'Off at the ledger: all of it, level, since the run goes to the wall'
    shed_table, shed_stepped, _ = _common(roof, roof.porch, roof.porch_run, PORCH_OUT, ledger, words)
    return {
        'A common rafter: the garden store': {f'Run: half of {feet(2 * run)}': feet(run), **table},
        'A common rafter: marks': by_square,
        'The store’s hip: length, upper end': hip_table(roof),
        'The store’s hip: mouth and tail': hip_mouth(roof),
        'The store’s hip: marks': {},
        'The store’s hip: cuts and steps': hip_cuts(roof) | end_common(roof),
        'The store’s hip jacks': _jacks(roof),
        f'Hip jack {roof.last_jack}: marks': _jack_cuts(roof),
        'The wing’s valley: length, upper end': valley_table(roof),
        'The wing’s valley: mouth and tail': valley_mouth(roof),
        'The wing’s valley: marks': {},
        'The wing’s valley: cuts and steps': hip_cuts(roof),
        'A shed’s rafter: the porch': {'Run: level': feet(roof.porch_run), **shed_table},
        'A shed’s rafter: marks': shed_stepped,
        **_beside(roof),
    }


def _beside(roof: Roof) -> dict[str, dict[str, str]]:
    """Return the pages of both roofs of two slopes, a table before its boards."""
    if roof.slopes is None:
        return {}
    table, board = tables(roof, roof.slopes), boards(roof, roof.slopes)
    return {
        title: steps
        for of, kind in ((SALTBOX, 'A saltbox'), (GAMBREL, 'A gambrel'))
        for title, steps in ((of, table[of]), *(one for one in board.items() if one[0].startswith(kind)))
    }


def small_print(roof: Roof) -> dict[str, str]:
    """Return words with figures that the small print must have, by the page's title."""
    at = roof.at
    over = _whole(roof) * (mp.sqrt(STAMPED**2 + rise(at, 12) ** 2) - hip_length(at, 12)) / _halves(roof)
    hold = f'Held at a full {"8 1/2" if _halves(roof) > 1 else 17} the steps would end {signed(over)} in long'
    shed = hip_ends.shed_on_ledger(roof.porch, roof.rafter)
    ledger = (shed, shed * common_length(roof.porch, 1))
    return {
        'A common rafter: marks': _common(
            roof, at, roof.run, STORE_OUT, shortening.common_at_ridge(at, roof.ridge), ''
        )[2],
        'A shed’s rafter: marks': _common(roof, roof.porch, roof.porch_run, PORCH_OUT, ledger, '')[2],
        'The store’s hip: cuts and steps': hold,
        'The wing’s valley: cuts and steps': hold,
        'A shed’s rafter: the porch': f'on a ledger {part(roof.rafter)} in thick',
        **overall(roof),
    }


def _halves(roof: Roof) -> int:
    return 2 if rise(roof.at, 12) > framing_square.FULL_TONGUE else 1


def _whole(roof: Roof) -> int:
    return int(roof.run // Fraction(12, _halves(roof)))


def _jacks(roof: Roof) -> dict[str, str]:
    at = roof.at
    level, along = shortening.jack_at_hip(at, roof.hip)
    return {
        'Plate line to hip center: the tabled length': '',
        f'on the jack’s center; {part(along)} along': part(level),
        'Short to long point along': part(jack_points(at, roof.hip, roof.rafter)),
        'Tail of every jack': part(tails.common_tail(at, STORE_OUT)),
    }


def jack_table(roof: Roof) -> dict[str, list[str]]:
    """Return each jack's figures: to the hip's center, to its long point, to its short point, and from end to end."""
    at, found = roof.at, {}
    for number in roof.jacks:
        short, long = jack_to_points(at, number * roof.spacing, roof.hip, roof.rafter)
        over_all = long + tails.common_tail(at, STORE_OUT)
        lengths = (jack_length(at, number * roof.spacing), long, short, over_all)
        found[str(number)] = [part(one) for one in lengths]
    return found


def _jack_cuts(roof: Roof) -> dict[str, str]:
    at, count = roof.at, roof.last_jack
    difference, cheek = jack_length(at, roof.spacing), cuts.jack_cheek(at)
    drift = count * (mpf(nearest(difference, 16)) / 16 - difference)
    return {
        f'On the side: the plumb angle from square across, blade tilted {degrees(cuts.jack_blade(at))}': degrees(
            cuts.jack_saw(at)
        ),
        f'On the top edge: from square across; or 12 & {part(framing_square.figure_against_12(cheek))}': degrees(
            cheek
        ),
        f'Stepped by {part(difference)} for {decimal(difference, 3)}, jack {count}': f'{signed(drift)} in',
    }


def marks(roof: Roof) -> dict[str, dict[str, str]]:
    """Return the distance of every mark by the title of its page and what it is."""
    at, run, out = roof.at, roof.run, STORE_OUT
    ridge_along = shortening.common_at_ridge(at, roof.ridge)[1]
    shed = hip_ends.shed_on_ledger(roof.porch, roof.rafter) * common_length(roof.porch, 1)
    return {
        'A common rafter: marks': _common_marks(
            at, run, out, ridge_along, ('ridge center line', 'ridge cut', 'plate line: heel', 'tail cut')
        ),
        'The store’s hip: marks': hip_marks(roof),
        f'Hip jack {roof.last_jack}: marks': _jack_marks(roof),
        'The wing’s valley: marks': valley_marks(roof),
        'A shed’s rafter: marks': _common_marks(
            roof.porch,
            roof.porch_run,
            PORCH_OUT,
            shed,
            ('face of the wall', 'cut at the ledger', 'plate line: heel', 'tail cut'),
        ),
        **(marks_of_slopes(roof, roof.slopes) if roof.slopes and not roof.opened else {}),
    }


def _jack_marks(roof: Roof) -> dict[str, str]:
    at, run = roof.at, roof.last_jack * roof.spacing
    line = jack_length(at, run)
    short, long = jack_to_points(at, run, roof.hip, roof.rafter)
    return {
        'hip center line': '0',
        'long point, far side': part(line - long),
        'the cut, on the center': part(shortening.jack_at_hip(at, roof.hip)[1]),
        'short point, near side': part(line - short),
        'plate line: heel': part(line),
        'tail cut': part(line + tails.common_tail(at, STORE_OUT)),
    }
