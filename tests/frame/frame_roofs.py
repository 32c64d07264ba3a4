"""Roofs to be put together: one of every kind and way."""

from __future__ import annotations

from fractions import Fraction

from tablegen.frame.asked import (
    Asked,
    Bay,
    Eaves,
    Gable,
    Gambrel,
    HalfHip,
    Hip,
    HipHead,
    HipTop,
    ManySided,
    RidgeBoard,
    RidgeTop,
    Saltbox,
    Shed,
    TailCut,
    Upper,
    Valleys,
    Wing,
)
from tablegen.written.pitches import pitch
from tablegen.written.stocks import stock

F = Fraction


def asked(kind, rise: object, width, length, **more) -> Asked:
    return Asked(name='', kind=kind, pitch=pitch(rise), width_in=F(width), length_in=F(length), **more)


FIXED = {
    'shed at a wall': asked(Shed(), 4, 96, 120, spacing_in=F(24)),
    'shed on a ledger': asked(Shed(Upper.LEDGER, F(3, 2)), 5, 100, 90, spacing_in=F(24)),
    'gable': asked(Gable(), 6, 146, 170, spacing_in=F(24), gable_overhang_in=F(12)),
    'gable, rafters in pairs': asked(Gable(), 9, 146, 100, spacing_in=F(24), ridge=None),
    'saltbox': asked(Saltbox(pitch('6')), 10, 200, 90, spacing_in=F(24)),
    'saltbox, steeper behind': asked(Saltbox(pitch('9'), F(12)), 5, 200, 90, spacing_in=F(24)),
    'gambrel': asked(Gambrel(pitch('6'), F(40)), 18, 200, 90, spacing_in=F(24)),
    'hip between commons, dropped': asked(Hip(2), 7, 122, 200, spacing_in=F(24), hips=stock('2×10')),
    'hip on the ridge, dropped': asked(
        Hip(2), 7, 122, 200, spacing_in=F(24), hip_head=HipHead.SINGLE, ridge=RidgeBoard(F(3, 4))
    ),
    'hip between commons, backed': asked(Hip(1), 6, 122, 150, spacing_in=F(24), hip_top=HipTop.BACKED),
    'hip of two pitches': asked(Hip(2, pitch('9')), 6, 144, 220, spacing_in=F(24), hips=stock('2×10')),
    'hip of two pitches, backed': asked(
        Hip(2, pitch('10')), 6, 120, 200, spacing_in=F(24), hip_top=HipTop.BACKED, hip_head=HipHead.SINGLE
    ),
    'hip of equal overhangs': asked(Hip(2, pitch('9'), Eaves.EQUAL), 6, 120, 200, spacing_in=F(24)),
    'shed over a beam': asked(Shed(Upper.BEAM_OVER, F(7, 2)), 4, 100, 90, spacing_in=F(24)),
    'shed against a beam': asked(Shed(Upper.BEAM_AGAINST, F(7, 2)), 7, 100, 90, spacing_in=F(24)),
    'wing, one ridge height': asked(Wing(F(120), F(60), F(40)), 6, 120, 210, spacing_in=F(24)),
    'wing, lower ridge': asked(Wing(F(96), F(60), F(60)), 6, 144, 220, spacing_in=F(24)),
    'wing near the right end': asked(
        Wing(F(60), F(60), F(148)), 6, 144, 220, spacing_in=F(24), gable_overhang_in=F(8)
    ),
    'wing, steeper, hipped': asked(
        Wing(F(80), F(80), F(60), pitch=pitch('9'), hipped=True), 6, 120, 220, spacing_in=F(24)
    ),
    'wing laid on': asked(Wing(F(96), F(60), F(60), valleys=Valleys.BLIND), 6, 144, 220, spacing_in=F(24)),
    'wing laid on, ridges beveled': asked(
        Wing(F(96), F(60), F(60), pitch=pitch('8'), valleys=Valleys.BLIND),
        6,
        144,
        220,
        spacing_in=F(24),
        ridge=RidgeBoard(top=RidgeTop.BEVELED),
    ),
    'ell': asked(Wing(F(120), F(90), F(0), main_ends=1), 6, 120, 220, spacing_in=F(24)),
    'ell, one hip on the ridge': asked(
        Wing(F(120), F(90), F(0), main_ends=1),
        6,
        120,
        220,
        spacing_in=F(24),
        hip_head=HipHead.SINGLE,
        ridge=RidgeBoard(F(3, 4)),
    ),
    'ell of two pitches': asked(
        Wing(F(80), F(90), F(0), pitch=pitch('9'), main_ends=1), 6, 120, 220, spacing_in=F(24)
    ),
    'ell, lower ridge': asked(Wing(F(72), F(90), F(0), main_ends=1), 6, 144, 220, spacing_in=F(24)),
    'ell, lower ridge, two pitches': asked(
        Wing(F(72), F(100), F(0), pitch=pitch('8'), main_ends=2, hipped=True),
        6,
        144,
        220,
        spacing_in=F(24),
        hip_head=HipHead.SINGLE,
        hips=stock('2×10'),
        ridge=RidgeBoard(F(3, 4)),
    ),
    'ell at the right, two pitches': asked(
        Wing(F(84), F(90), F(136), pitch=pitch('8'), main_ends=2),
        6,
        144,
        220,
        spacing_in=F(24),
        hip_top=HipTop.BACKED,
    ),
    'ell at the right, hipped': asked(
        Wing(F(72), F(100), F(148), main_ends=2, hipped=True),
        6,
        144,
        220,
        spacing_in=F(24),
        first_in=F(10),
        hip_head=HipHead.SINGLE,
        hips=stock('2×10'),
        tail=TailCut.SQUARE,
    ),
    'ell at the right, one ridge height': asked(
        Wing(F(80), F(90), F(140), pitch=pitch('9'), main_ends=2), 6, 120, 220, spacing_in=F(24)
    ),
    'ell at a gable': asked(Wing(F(84), F(60), F(0)), 6, 144, 220, spacing_in=F(24), gable_overhang_in=F(14)),
    'ell at the right gable, one ridge height': asked(
        Wing(F(80), F(60), F(140), pitch=pitch('9')),
        6,
        120,
        220,
        spacing_in=F(24),
        gable_overhang_in=F(8),
        ridge=RidgeBoard(F(3, 4)),
    ),
    'six sides': asked(ManySided(6, across_flats_in=F(144)), 8, 0, 0, spacing_in=F(24), hips=stock('2×10')),
    'eight sides around a post': asked(
        ManySided(8, side_in=F(50), post_across_flats_in=F(6)), 8, 0, 0, spacing_in=F(24), hips=stock('2×10')
    ),
    'bay at corners': asked(Bay(8, side_in=F(50)), 8, 0, 0, spacing_in=F(24), hips=stock('2×10')),
    'bay at middles': asked(
        Bay(8, side_in=F(50), wall_through='middles'), 8, 0, 0, spacing_in=F(24), hips=stock('2×10')
    ),
    'gable, square tails': asked(
        Gable(), 8, 146, 170, spacing_in=F(24), gable_overhang_in=F(12), tail=TailCut.SQUARE
    ),
    'shed, square tails': asked(
        Shed(Upper.LEDGER, F(3, 2)), 5, 100, 90, spacing_in=F(24), tail=TailCut.SQUARE
    ),
    'hip, square tails, dropped': asked(
        Hip(2), 7, 122, 200, spacing_in=F(24), hips=stock('2×10'), tail=TailCut.SQUARE
    ),
    'hip of two pitches, square tails': asked(
        Hip(2, pitch('9')),
        6,
        144,
        220,
        spacing_in=F(24),
        hips=stock('2×10'),
        tail=TailCut.SQUARE,
        overhang_in=F(16),
    ),
    'hip of two pitches, square tails, backed': asked(
        Hip(2, pitch('9')),
        6,
        144,
        220,
        spacing_in=F(24),
        tail=TailCut.SQUARE,
        hip_top=HipTop.BACKED,
    ),
    'wing, square tails': asked(
        Wing(F(96), F(60), F(60), pitch=pitch('7')), 6, 144, 220, spacing_in=F(24), tail=TailCut.SQUARE
    ),
    'half-hip, square tails': asked(
        HalfHip(F(40), pitch('9')),
        8,
        144,
        150,
        spacing_in=F(24),
        gable_overhang_in=F(12),
        tail=TailCut.SQUARE,
    ),
    'bay, square tails': asked(Bay(8, side_in=F(50)), 8, 0, 0, spacing_in=F(24), tail=TailCut.SQUARE),
    'half-hip': asked(HalfHip(F(30)), 8, 144, 150, spacing_in=F(24), gable_overhang_in=F(8)),
}
