"""The worked examples of a book whose pitches have one opening each, as they should be printed: steps by title and words."""

from __future__ import annotations

from fractions import Fraction

from oracle import cuts, framing_square, hip_ends, seats, shortening, tails
from oracle.corner import common_length, hip_length
from oracle.rounding import degrees, least, part

from labels.example_roof import PORCH_OUT, STORE_OUT, Roof, feet, lean, stepped
from labels.examples import _jack_cuts as jack_cuts
from labels.expected import DEPTHS
from labels.two_slopes import tables


def steps(roof: Roof) -> dict[str, dict[str, str]]:
    """Return the figure of every step by the title of its page and some of its words."""
    at, run, out = roof.at, roof.run, STORE_OUT
    level, along = shortening.common_at_ridge(at, roof.ridge)
    shed = hip_ends.shed_on_ledger(roof.porch, roof.rafter)
    shed_along = part(shed * common_length(roof.porch, 1))
    return {
        'A common rafter: the garden store': {
            f'Run: half of {feet(2 * run)}': feet(run),
            **_lengths(at, run, out, f'Off at the ridge: half of it, level; {part(along)} along the top edge', level),
        },
        'A common rafter: marks': _mouth(roof, at),
        'The store’s hip': _hip(roof),
        'The store’s hip: marks': stepped(at, run, out, shortening.hip_at_ridge(at, roof.ridge)[0], hip=True),
        'The store’s hip jacks': _jacks(roof),
        f'Hip jack {roof.last_jack}: marks': jack_cuts(roof),
        'The wing’s valley': _valley(roof),
        'The wing’s valley: marks': {},
        'A shed’s rafter: the porch': {
            'Run: level, outside of the plate to the face of the wall': feet(roof.porch_run),
            **_lengths(
                roof.porch, roof.porch_run, PORCH_OUT,
                f'all of it, level, since the run goes to the wall; {shed_along} along the top edge. '
                f'{part(roof.rafter)} in is read as a run.', shed,
            ),
        },
        'A shed’s rafter: marks': _mouth(roof, roof.porch),
        **tables(roof, roof.slopes),
    }  # fmt: skip


def _lengths(at, run: Fraction, out: Fraction, off: str, level) -> dict[str, str]:
    return {
        'Line length': part(common_length(at, run)),
        f'To the tail: run and overhang, {feet(run + out)}': part(common_length(at, run + out)),
        off: part(level),
        **stepped(at, run, out, level, hip=False),
    }


def _mouth(roof: Roof, at) -> dict[str, str]:
    return {
        'Heel, plumb': part(seats.heel(at, roof.seat)),
        'Height above plate': part(seats.height_above_plate(at, DEPTHS[roof.rafters], roof.seat)),
    }


def _corner(roof: Roof, words: str, off: str, to_tail: str) -> dict[str, str]:
    """Return what hip and valley have alike."""
    at, (level, along) = roof.at, shortening.hip_at_ridge(roof.at, roof.ridge)
    return {
        words: part(hip_length(at, roof.run)),
        f'{to_tail}: {feet(roof.run + STORE_OUT)}': part(hip_length(at, roof.run + STORE_OUT)),
        f'{off}, level; {part(along)} along the top edge': part(level),
        f'On the sides, from square; blade tilted {degrees(cuts.hip_blade(at))}': degrees(cuts.hip_saw(at)),
    }


def _square(cheek) -> str:
    return f'12 & {part(framing_square.figure_against_12(cheek))}'


def _hip(roof: Roof) -> dict[str, str]:
    at, depth = roof.at, DEPTHS[roof.hips]
    off, side = shortening.hip_at_ridge(at, roof.ridge)[1], hip_ends.set_back(at, roof.hip)[1]
    whole = hip_length(at, roof.run + STORE_OUT) - off + side
    board = whole + lean(tails.hip_plumb_cut_length(at, depth), depth)
    cheek = _square(cuts.hip_cheek(at))
    return {
        **_corner(roof, 'Ridge center line to corner of plates, by the common’s run', 'Off at the ridge', 'To the tail’s point'),
        f'its long point away from the hipped end: on the top edge, or {cheek} along the 12': degrees(cuts.hip_cheek(at)),
        f'Height above plate, at the corner, dropped by {part(cuts.drop_plumb(at, roof.hip))}': part(
            seats.hip_height(at, roof.height, roof.hip)
        ),
        'Heel, plumb, there': part(seats.hip_heel(at, roof.height, depth, roof.hip)),
        'Seat: level': part(seats.hip_seat(at, roof.height, depth, roof.hip)),
        f'Tail: two cheeks, to a point; {_square(hip_ends.hip_cheek_at_fascia(at))}': '',
        f'Overall, from a board of {least(board)} in or more': part(whole),
    }  # fmt: skip


def _valley(roof: Roof) -> dict[str, str]:
    at, depth = roof.at, DEPTHS[roof.valleys]
    return {
        **_corner(roof, 'inside corner, by the common’s run', 'Off at the ridges', 'To the tail, on its center'),
        f'Two cheeks, to a point at that mark: on the top edge, or {_square(cuts.hip_cheek(at))}': degrees(cuts.hip_cheek(at)),
        'Height above plate, at the inside corner: not dropped': part(roof.height),
        'The heel stands outwards of it, level': part(seats.valley_back(at, roof.hip)),
        'Heel, plumb, there': part(seats.valley_heel(at, roof.height, depth, roof.hip)),
        'Seat: level': part(seats.valley_seat(at, roof.height, depth, roof.hip)),
        'Its jacks stand over its square edges': part(cuts.drop_plumb(at, roof.hip)),
        f'the last of it by hand; {_square(hip_ends.hip_cheek_at_fascia(at))}': '',
    }  # fmt: skip


def _jacks(roof: Roof) -> dict[str, str]:
    at, run = roof.at, roof.last_jack * roof.spacing
    level, along = shortening.jack_at_hip(at, roof.hip)
    return {
        f'Jack {roof.last_jack}, {feet(run)} from the corner: that is its own run': part(common_length(at, run)),
        f'on the jack’s center; {part(along)} along': part(level),
        f'Half of its thickness, {part(roof.rafter / 2)} in, read as a run': part(common_length(at, roof.rafter / 2)),
        'Tail of every jack': part(tails.common_tail(at, STORE_OUT)),
        'Off the end common, level': part(shortening.past_end_between_hips(at, roof.ridge, roof.hip)),
    }  # fmt: skip
