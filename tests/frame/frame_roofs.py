"""Roofs to be put together: one of every kind and way, and random ones."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from random import Random

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
from tablegen.geometry.pitch import Pitch
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


RISES = ['3', '4', '5', '6', '7 1/2', '8', '9', '10', '12', '14']
DEEPER = {'2×6': '2×8', '2×8': '2×10'}
SIXTEENTHS = 16
NEAR = F(2, 3)


class Drawn(Random):
    """What one number draws: every roof as likely as another."""

    def inches(self, low: int, high: int) -> Fraction:
        """Return a length to a sixteenth of an inch."""
        return F(self.randint(low * SIXTEENTHS, high * SIXTEENTHS), SIXTEENTHS)

    def kind(self, wide: Fraction, long: Fraction, pitched: str):
        """Return a kind of roof with its own sizes."""
        return self.choice(
            [
                self.shed,
                self.saltbox,
                self.gambrel,
                self.hip,
                self.hip,
                self.half_hip,
                self.wing,
                self.wing,
                self.round,
            ]
        )(wide, long, pitched)

    def near(self, pitched: str, least: Fraction = NEAR) -> Pitch:
        """Return a pitch not very unlike another."""
        rise = pitch(pitched).rise_in
        return pitch(self.choice([one for one in RISES if least <= pitch(one).rise_in / rise < 2]))

    def shed(self, wide: Fraction, long: Fraction, pitched: str):
        upper = self.choice(list(Upper))
        return Shed(
            upper,
            F(0) if upper is Upper.WALL else self.inches(1, 3) + (F(3) if upper is Upper.BEAM_OVER else 0),
        )

    def saltbox(self, wide: Fraction, long: Fraction, pitched: str):
        other = pitch(self.choice(RISES))
        return self.choice([Gable(), Saltbox(other, self.choice([F(0), F(6), F(29, 2)]))])

    def gambrel(self, wide: Fraction, long: Fraction, pitched: str):
        return Gambrel(pitch(self.choice(['2', '2 1/2'])), wide * F(self.randint(4, 10), 32))

    def hip(self, wide: Fraction, long: Fraction, pitched: str):
        if self.randint(0, 4) == 0:
            return Hip(2, self.near(pitched, F(1)), Eaves.EQUAL)
        return Hip(self.choice([1, 2]), self.choice([None, self.near(pitched)]))

    def half_hip(self, wide: Fraction, long: Fraction, pitched: str):
        """The gable is half to three quarters as high as the roof: over a lower one the hips' tails would run past the main eaves."""
        rise = wide / 2 * F(pitch(pitched).rise_in) / 12
        return HalfHip(rise * F(self.randint(12, 18), 24), self.choice([None, self.near(pitched)]))

    def wing(self, wide: Fraction, long: Fraction, pitched: str):
        """An L, a T of one ridge height, or a wing anywhere that is lower; standing on valleys or laid on the main roof."""
        out, hipped = self.inches(50, 90), self.choice([False, True])
        if hipped:  # its peak stands out of the main front
            out += wide / 2
        own = self.choice([None, self.near(pitched)])
        widest = wide * F(pitch(pitched).rise_in) / F((own or pitch(pitched)).rise_in)
        if self.randint(0, 3) == 0:
            width = self.choice([widest, widest * F(self.randint(3, 6), 8)])
            ends = self.choice([0, 0, 1, 2])
            return Wing(width, out, F(0), own, ends, hipped)
        width = self.choice([widest, widest * F(self.randint(5, 7), 8)])
        return Wing(
            width, out, (long - width) / 2, own, self.choice([0, 0, 2]), hipped,
            self.choice([Valleys.BOTH, Valleys.BOTH, Valleys.BLIND]),
        )  # fmt: skip

    def round(self, wide: Fraction, long: Fraction, pitched: str):
        sides = self.choice([4, 5, 6, 8, 12])
        if sides % 2 == 0 and sides > 4 and self.randint(0, 1):
            return Bay(sides, across_flats_in=wide, wall_through=self.choice(['corners', 'middles']))
        return ManySided(sides, across_flats_in=wide, post_across_flats_in=self.choice([None, F(6)]))


def drawn(number: int) -> Asked:
    """Return a roof, small, framed with any stock that its seats and planes allow."""
    draw = Drawn(number)
    wide, name, rise = draw.inches(80, 150), draw.choice(list(DEEPER)), draw.choice(RISES)
    long = wide * F(3, 2) + draw.inches(10, 60)
    kind = draw.kind(wide, long, rise)
    if isinstance(kind, Wing):  # room for its valleys between the ends of the ridge
        long += wide
        kind = replace(kind, from_left_in=kind.from_left_in and kind.from_left_in + wide / 2)
    eave, gable = draw.inches(2, 18), draw.inches(2, 12)
    if isinstance(kind, Wing) and not kind.from_left_in and kind.main_ends != 1:  # an L at either end
        kind = replace(kind, from_left_in=draw.choice([F(0), long - kind.width_in]))
        if not kind.main_ends:
            aside = eave * F(pitch(rise).rise_in) / F((kind.pitch or pitch(rise)).rise_in)
            gable = aside + draw.choice([F(0), draw.inches(0, 6)])
    ridge = RidgeBoard(
        draw.choice([F(3, 4), F(3, 2)]), F(draw.choice([37, 45]), 4), draw.choice(list(RidgeTop))
    )
    if draw.randint(0, 4) == 0 and not isinstance(kind, Wing):  # whose rafters do not all have a mate
        ridge = None
    return asked(
        kind,
        rise,
        wide,
        long,
        spacing_in=F(draw.choice([16, F(96, 5), 24])),
        first_in=draw.choice([None, draw.inches(4, 16)]),
        ridge=ridge,
        rafters=stock(name),
        hips=stock(DEEPER[name]),
        seat_in=draw.inches(2, 4),
        overhang_in=eave,
        gable_overhang_in=gable,
        hip_top=draw.choice(list(HipTop)),
        hip_head=draw.choice(list(HipHead)) if ridge else HipHead.BETWEEN,
        tail=draw.choice(list(TailCut)),
    )
