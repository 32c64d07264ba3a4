"""The hip and the valley of the worked examples as they should be printed."""

from __future__ import annotations

from fifty_digits import mp, mpf
from oracle import cuts, framing_square, hip_ends, seats, shortening, tails
from oracle.corner import hip_length, hip_run, rise
from oracle.rounding import degrees, least, nearest, part

from labels.example_roof import STORE_OUT, Roof, lean, stepped
from labels.expected import DEPTHS


def along_hip(at, level):
    """Return a level length of the hip along its own edge."""
    return level * hip_length(at, 1) / hip_run(at, 1)


def hip_notch(at, seat_in):
    """Return the notch of a hip, square to its edge: of the triangle of level seat and plumb heel."""
    return mpf(seat_in) * mp.sin(mp.atan(rise(at, 1) / hip_run(at, 1)))


def hip_table(roof: Roof) -> dict[str, str]:
    at, run, out = roof.at, roof.run, STORE_OUT
    level, along = shortening.hip_at_ridge(at, roof.ridge)
    between, between_along = shortening.hip_between_commons(at, roof.rafter)
    side, side_along = hip_ends.set_back(at, roof.hip)
    return {
        'Line length by the common run': part(hip_length(at, run)),
        'To the tail’s point': part(hip_length(at, run + out)),
        f'one cheek. Off, level; {part(along)} along': part(level),
        f'as far down, level; {part(side_along)} along': part(side),
        f'two cheeks, to a point. Off, level; {part(between_along)} along': part(between),
        f'Both sides start so far from the point towards the tail, level; {part(side_along)}': part(side),
    }


def hip_mouth(roof: Roof) -> dict[str, str]:
    at, depth = roof.at, DEPTHS[roof.hips]
    heel, wide = (one(at, roof.height, depth, roof.hip) for one in (seats.hip_heel, seats.hip_seat))
    backed_heel, backed = (one(at, roof.height, depth) for one in (seats.hip_heel, seats.hip_seat))
    notch, plumb = hip_notch(at, wide), tails.hip_plumb_cut_length(at, depth)
    side, side_along = hip_ends.set_back(at, roof.hip)
    cheek = hip_ends.hip_cheek_at_fascia(at)
    return {
        'The commons’ height above plate': part(roof.height),
        'Its top is left square and dropped, plumb': part(cuts.drop_plumb(at, roof.hip)),
        'Its height above plate, on its center line': part(seats.hip_height(at, roof.height, roof.hip)),
        f'Heel, plumb, there: its plumb depth, {part(plumb)}': part(heel),
        'Seat: level, from the heel towards the ridge': part(wide),
        f'Notch, square to the edge; wood left, {part(depth - notch)}': part(notch),
        f'Or backed: each side of the top, from square. Then it is not dropped: heel {part(backed_heel)}, seat '
        f'{part(backed)}.': degrees(cuts.backing(at)),
        f'to a point, meet both fascias: {degrees(cuts.hip_plumb_cut(at))} on the side, blade 45.00°; on top 12 & '
        f'{part(framing_square.figure_against_12(cheek))}. Both sides start so far from the point towards the ridge, '
        f'level; {part(side_along)} along': part(side),
    }


def hip_cuts(roof: Roof) -> dict[str, str]:
    at = roof.at
    cheek, off = cuts.hip_cheek(at), shortening.hip_at_ridge(at, roof.ridge)[0]
    return {
        f'on the side: the plumb angle from square across, blade tilted {degrees(cuts.hip_blade(at))}': degrees(
            cuts.hip_saw(at)
        ),
        f'On the top edge, left square: from square across; or 12 & {part(framing_square.figure_against_12(cheek))}': (
            degrees(cheek)
        ),
        **stepped(at, roof.run, STORE_OUT, off, hip=True),
    }


def end_common(roof: Roof) -> dict[str, str]:
    """Return what comes off the end common, and what of the ridge's end stands over the end's plane."""
    at = roof.at
    past = shortening.past_end_between_hips(at, roof.ridge, roof.hip)
    between = shortening.past_end_between_commons(at, roof.rafter)
    down = shortening.sits_down(at, roof.ridge)
    over, over_between = (one * rise(at, 1) - down for one in (past, between))
    plane, plane_between = (f' Plane {what} down by {part(one)} in.' if nearest(one, 16) > 0 else ''
        for what, one in (('that end', over), ('it', over_between)))  # fmt: skip
    return {
        f'as far past its theoretical end.{plane}': part(past),
        f'Hips between commons, the same.{plane_between}': part(between),
    }


def valley_table(roof: Roof) -> dict[str, str]:
    at, run, out = roof.at, roof.run, STORE_OUT
    level, along = shortening.hip_at_ridge(at, roof.ridge)
    side, side_along = hip_ends.set_back(at, roof.hip)
    return {
        'Line length by the common run': part(hip_length(at, run)),
        'To the tail, on its center': part(hip_length(at, run + out)),
        f'Off at the ridges, level; {part(along)} along': part(level),
        f'start so far from the point towards the tail, level; {part(side_along)} along': part(side),
    }


def valley_mouth(roof: Roof) -> dict[str, str]:
    at, depth = roof.at, DEPTHS[roof.valleys]
    heel, wide = (one(at, roof.height, depth, roof.hip) for one in (seats.valley_heel, seats.valley_seat))
    notch, plumb = hip_notch(at, wide), tails.hip_plumb_cut_length(at, depth)
    side, side_along = hip_ends.set_back(at, roof.hip)
    cheek = hip_ends.hip_cheek_at_fascia(at)
    return {
        'Height above plate, over the inside corner': part(roof.height),
        'The heel stands outwards of the inside corner': part(seats.valley_back(at, roof.hip)),
        f'out of the corner. Plumb depth {part(plumb)}': part(heel),
        'Seat: level, from the heel towards the ridge': part(wide),
        f'Notch, square to the edge; wood left, {part(depth - notch)}': part(notch),
        'Its jacks stand over its square edges': part(cuts.drop_plumb(at, roof.hip)),
        f'hollow, meet both fascias: {degrees(cuts.hip_plumb_cut(at))} on the side, blade 45.00°, the last of it by '
        f'hand; on top 12 & {part(framing_square.figure_against_12(cheek))}. The sides reach so far past the center’s '
        f'mark, away from the ridge, level; {part(side_along)} along': part(side),
    }


def hip_marks(roof: Roof) -> dict[str, str]:
    at = roof.at
    off, side = shortening.hip_at_ridge(at, roof.ridge)[1], hip_ends.set_back(at, roof.hip)[1]
    tail = hip_length(at, roof.run + STORE_OUT)
    return {
        'ridge center line': '0',
        'long point, far side': part(off - side),
        'the cut, on the center': part(off),
        'short point, near side': part(off + side),
        'corner of plates: heel': part(hip_length(at, roof.run)),
        'tail, both sides': part(tail - side),
        'tail’s point': part(tail),
    }


def valley_marks(roof: Roof) -> dict[str, str]:
    at = roof.at
    off, side = shortening.hip_at_ridge(at, roof.ridge)[1], hip_ends.set_back(at, roof.hip)[1]
    corner_at, tail = hip_length(at, roof.run), hip_length(at, roof.run + STORE_OUT)
    return {
        'where the ridges’ center lines meet': '0',
        'the point, on the center of the top': part(off),
        'both cheeks, on the sides': part(off + side),
        'inside corner of the plates': part(corner_at),
        'heel of the bird’s mouth': part(corner_at + along_hip(at, seats.valley_back(at, roof.hip))),
        'tail’s hollow, on the center': part(tail),
        'tail, both sides': part(tail + side),
    }


def overall(roof: Roof) -> dict[str, str]:
    """Return how long hip and valley are from end to end, and the shortest boards that hold them, by page."""
    at = roof.at
    off, side = shortening.hip_at_ridge(at, roof.ridge)[1], hip_ends.set_back(at, roof.hip)[1]
    whole = hip_length(at, roof.run + STORE_OUT) - off + side
    found = {}
    for title, words, stock in (
        ('The store’s hip: marks', 'long point to tail’s point', roof.hips),
        ('The wing’s valley: marks', 'its point to the tail’s sides', roof.valleys),
    ):
        depth = DEPTHS[stock]
        board = whole + lean(tails.hip_plumb_cut_length(at, depth), depth)
        found[title] = f'Overall, {words}, {part(whole)} in; from a board of {least(board)} in or more.'
    return found
