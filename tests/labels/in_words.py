"""Figures that stand among the words of the skewed book's pages, by the name that tests/claims/pages.toml gives them."""

from __future__ import annotations

from fractions import Fraction

from fifty_digits import mp, mpf, real
from oracle import cuts, framing_square, hip_ends, sawn, seats, setting_out, shortening, tails
from oracle.corner import common_length, corner
from oracle.rounding import degrees, least, part
from skewed import HIP, HIPS, RAFTER, RAFTERS, RIDGE, SEAT, VALLEYS

from labels.expected import DEPTHS

DRAWN = corner(Fraction(15, 2))
"""Of the book's two pitches the one nearer to 8 in 12: drawings are of it."""
WORKED = corner(Fraction(5))
"""The one nearer to 6 and to 4 in 12: steps and worked examples are of it."""
STOCK, OUT, FACE = '2×8', 12, Fraction(11, 2)
"""Of every drawing: its stock, and its overhang and what is left of the plumb cut, in."""
DEPTH = DEPTHS[STOCK]


def figures() -> dict[str, str]:
    """Return every figure as it should be printed, worked out in space."""
    return {name: part(value) for name, value in _lengths().items()} | _angles()


def _lengths() -> dict[str, object]:
    height = seats.height_above_plate(DRAWN, DEPTH, SEAT)
    dropped = seats.hip_height(DRAWN, height, HIP)
    old = seats.height_of_seat(DRAWN, DEPTH, SEAT * Fraction(17, 12))  # wrong, as the page says
    half, along = hip_ends.set_back(DRAWN, HIP)
    between, on_ridge = (
        shortening.past_end_between_commons(DRAWN, RAFTER),
        shortening.past_end_between_hips(DRAWN, RIDGE, HIP),
    )
    slope, down = real(Fraction(15, 2)) / 12, shortening.sits_down(DRAWN, RIDGE)
    soffit, below = sawn.soffit(DRAWN, real(DEPTH), height, OUT, FACE)
    return {
        'ridge': RIDGE,
        'hip': HIP,
        'rafter': RAFTER,
        'seat': SEAT,
        'heel': seats.heel(DRAWN, SEAT),
        'notch': seats.notch(DRAWN, SEAT),
        'left': seats.left(DRAWN, DEPTH, SEAT),
        'height': height,
        'hip_seat': seats.hip_seat(DRAWN, height, DEPTH, HIP),
        'hip_heel': seats.hip_heel(DRAWN, height, DEPTH, HIP),
        'hip_height': dropped,
        'high_dropped': old - dropped,
        'low_backed': height - old,
        'valley_out': seats.valley_back(DRAWN, HIP),
        'valley_heel': seats.valley_heel(DRAWN, height, DEPTH, HIP),
        'valley_seat': seats.valley_seat(DRAWN, height, DEPTH, HIP),
        'out': OUT,
        'tail': tails.common_tail(DRAWN, OUT),
        'fall': tails.fall(DRAWN, OUT),
        'face': FACE,
        'soffit': soffit,
        'below': below,
        'drop': cuts.drop_plumb(DRAWN, HIP),
        'drop_square': cuts.drop_square(DRAWN, HIP),
        'half': half,
        'along': along,
        'clip': (real(RAFTER) - real(RIDGE)) / 2,  # at 45 degrees as far back as it goes in
        'over_on_ridge': on_ridge * slope - down,
        'over_between': between * slope - down,
        'gap': setting_out.level_gap(DRAWN, 24),
    }


def _angles() -> dict[str, str]:
    top = cuts.hip_cheek(DRAWN)
    reaches = {
        f'reach_{tilt}': least(real(RAFTER) / mp.cos(mpf(tilt) * mp.pi / 180)) for tilt in (50, 60, 70)
    }
    return {
        'stock': STOCK,
        'rafters': RAFTERS,
        'hips': HIPS,
        'valleys': VALLEYS,
        'pitch': '5 in 12',
        'body': '12',
        'hip_body': '17',
        'tongue': '5',
        'step': part(common_length(WORKED, 12)),
        'plumb_cut': degrees(cuts.plumb_cut(WORKED)),
        'level_cut': degrees(cuts.level_cut(WORKED)),
        'drawn': '7 1/2 in 12',
        'saw': degrees(cuts.hip_saw(DRAWN)),
        'top': degrees(top),
        'figure': part(framing_square.figure_against_12(top)),
    } | reaches
