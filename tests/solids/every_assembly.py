"""All assemblies by name: what is built, by which hand."""

from functools import partial
from itertools import product

from hands import Marks, Saw, Square
from hip_end import BETWEEN, ON_RIDGE, hip_end
from shed import ON_WALL, TO_LEDGER, WALL, shed
from two_pitches import BACKED, DROPPED, RIDGE_A, RIDGE_B, SLID, two_pitches
from two_pitches import BETWEEN as TWO_CHEEKS
from valley_corner import ONE_RIDGE, TWO_RIDGES, valley_corner

HANDS = (Marks, Saw, Square)
SPACINGS = {
    BETWEEN: ('12', '16'),
    ON_RIDGE: ('19.2', '24'),
    'backed': ('24', '24'),
    TWO_RIDGES: ('16', '24'),
    ONE_RIDGE: ('12',),
}
PAIRS = ('6 9', '8 12')
FITS = (
    (TWO_CHEEKS, DROPPED), (TWO_CHEEKS, BACKED), (RIDGE_A, DROPPED), (RIDGE_A, BACKED), (RIDGE_A, SLID), (RIDGE_B, DROPPED),
)  # fmt: skip
HIP_ENDS = {
    f'hip {hips}, {top}, {hand.name}': partial(
        hip_end,
        work=hand,
        hips=hips,
        backed=top == 'backed',
        spacings=SPACINGS[hips if top == 'dropped' else top],
    )
    for hips, top, hand in product((BETWEEN, ON_RIDGE), ('dropped', 'backed'), HANDS)
    if (hips, top, hand) != (ON_RIDGE, 'backed', Saw)  # as between commons
}
VALLEYS = {
    f'valley, {ridges}, {hand.name}': partial(
        valley_corner, work=hand, ridges=ridges, spacings=SPACINGS[ridges]
    )
    for ridges in (TWO_RIDGES, ONE_RIDGE)
    for hand in HANDS
}
SHEDS = {
    f'shed, {against}, {hand.name}': partial(shed, work=hand, against=against)
    for against in (WALL, ON_WALL, TO_LEDGER)
    for hand in HANDS
}
TWO_PITCHES = {
    f'{pair}, {against}, {fit}, {"blade" if by_blade else "square"}': partial(
        two_pitches, label=pair, by_blade=by_blade, against=against, fit=fit
    )
    for pair in PAIRS
    for against, fit in FITS
    for by_blade in (True, False)
}
ASSEMBLIES = {**HIP_ENDS, **VALLEYS, **SHEDS, **TWO_PITCHES}
