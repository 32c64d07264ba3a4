"""Random roofs to be put together, each of its number."""

from __future__ import annotations

from fractions import Fraction
from random import Random

from frame_roofs import F, asked
from msgspec.structs import replace

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
