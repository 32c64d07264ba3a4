"""What is asked about one whole roof: its kind with the sizes that only it has, and what every kind is framed with."""

from __future__ import annotations

from enum import StrEnum
from fractions import Fraction

from msgspec import Struct

from tablegen.geometry.pitch import Pitch
from tablegen.numbers.figure import Measure
from tablegen.numbers.units import INCHES, Stock
from tablegen.written.stocks import stock

EIGHTH_IN = Fraction(1, 8)
LEDGER_IN = Fraction(3, 2)
"""A ledger is so thick where nothing else is said: lumber of nominal 2 in, dressed."""
THREE_QUARTERS_IN = Fraction(3, 4)
CORNERS, MIDDLES = 'corners', 'middles'
"""What of a whole roof a bay's wall runs through."""


class Upper(StrEnum):
    """What holds the upper ends of a shed's rafters."""

    WALL = 'wall'
    """A bare wall, which they are cut against."""
    LEDGER = 'ledger'
    """A board on that wall."""
    BEAM_AGAINST = 'against-beam'
    """A beam's side."""
    BEAM_OVER = 'over-beam'
    """A beam or higher plate, with a second bird's mouth."""


class Eaves(StrEnum):
    """How the eaves of two pitches come to one height, or do not."""

    MATCHED = 'matched'
    """The steeper side's overhang is the shorter: fascias meet level."""
    EQUAL = 'equal'
    """Overhangs are equal and the steeper side's plates are raised."""


class HipTop(StrEnum):
    """How a hip comes into both roof planes."""

    DROPPED = 'dropped'
    BACKED = 'backed'


class HipHead(StrEnum):
    """How hips meet the ridge."""

    SINGLE = 'single'
    """Each with one cheek on its side of the ridge."""
    BETWEEN = 'between-commons'
    """Each with two cheeks, in the corner of the last side common and the end common."""


class RidgeTop(StrEnum):
    """Where the ridge's top lies."""

    FLUSH = 'flush'
    """Square-topped, set down until its edges lie in the roof planes."""
    BEVELED = 'beveled'
    """Its top planed into both planes: it reaches the line where they meet."""


class TailCut(StrEnum):
    """How rafters end at the eave."""

    PLUMB = 'plumb'
    SQUARE = 'square'
    """To the top edge: fascias stand square to the slopes, and hips and valleys are cut to those."""


class Valleys(StrEnum):
    """How a wing's roof joins the main one."""

    BOTH = 'both'
    """Two valley rafters; where the wing's ridge is the lower, the longer runs up to the main ridge and carries the shorter."""
    BLIND = 'blind'
    """The wing's rafters stand on the main roof's sheathing, on valley boards: no valley rafter."""


class Shed(Struct, frozen=True):
    """One slope; its run is the building's width."""

    upper: Upper = Upper.WALL
    thickness_in: Fraction = Fraction(0)
    """Of the ledger or the beam, level; 0 at a bare wall."""
    depth_in: Fraction = Fraction(37, 4)
    """Of a ledger, plumb."""


class Gable(Struct, frozen=True):
    """One pitch, the ridge in the middle."""


class Saltbox(Struct, frozen=True):
    """Two pitches, one ridge; plates of one height unless the back's is lower."""

    back: Pitch
    back_plate_below_in: Fraction = Fraction(0)


class Gambrel(Struct, frozen=True):
    """Two slopes a side: `Asked.pitch` is the lower, steeper one."""

    upper: Pitch
    break_in: Fraction
    """Level, plate line to the line where the slopes meet, which is the center line of the purlin there."""


class Hip(Struct, frozen=True):
    """Hipped at both ends, or at one."""

    ends: int = 2
    end: Pitch | None = None
    """Of the end planes; None for the pitch of the sides."""
    eaves: Eaves = Eaves.MATCHED


class HalfHip(Struct, frozen=True):
    """A gable whose top is hipped, at both ends."""

    gable_rise_in: Fraction
    """How high over the plates the end plane's eave line meets the gable's rake, plumb."""
    end: Pitch | None = None


class Wing(Struct, frozen=True):
    """A gable or hip roof with a wing square to it on its front."""

    width_in: Fraction
    """Outside of the wing's framing, across its ridge."""
    out_in: Fraction
    """How far the wing stands out of the main building's front, outside of framing."""
    from_left_in: Fraction
    """From the main building's left end, seen from the front, to the wing's left side; flush with an end it makes an L, whose
    outer corner is hipped where that end is."""
    pitch: Pitch | None = None
    """None for that of the main roof."""
    main_ends: int = 0
    """How many ends of the main roof are hipped: 2, 1 for the left one, or 0."""
    hipped: bool = False
    """Whether the wing's end is hipped."""
    valleys: Valleys = Valleys.BOTH
    sheathing_in: Fraction = Fraction(1, 2)
    """Thickness, of the main roof under a blind valley's boards."""
    board_in: Fraction = THREE_QUARTERS_IN
    """Thickness of those boards; 0 for none."""


class ManySided(Struct, frozen=True):
    """A regular roof of many sides, to a point; given by one of the two sizes."""

    sides: int
    side_in: Fraction | None = None
    across_flats_in: Fraction | None = None
    post_across_flats_in: Fraction | None = None
    """Of the post at the peak; None for none: hips meet one another."""


class Bay(Struct, frozen=True):
    """Half of a regular roof of an even number of sides, against a wall."""

    sides: int
    side_in: Fraction | None = None
    across_flats_in: Fraction | None = None
    wall_through: str = CORNERS
    """Or the middles of two sides."""


Kind = Shed | Gable | Saltbox | Gambrel | Hip | HalfHip | Wing | ManySided | Bay


class RidgeBoard(Struct, frozen=True):
    """A ridge board."""

    thickness_in: Fraction = Fraction(3, 2)
    depth_in: Fraction = Fraction(37, 4)
    top: RidgeTop = RidgeTop.FLUSH


class Asked(Struct, frozen=True, kw_only=True):
    """One whole roof, as it is asked; lengths in inches, level unless said."""

    name: str
    kind: Kind
    pitch: Pitch
    """Of the main planes; of a gambrel the lower slopes."""
    width_in: Fraction = Fraction(0)
    """Outside of framing, across the ridge; 0 for roofs of many sides, which have their own sizes."""
    length_in: Fraction = Fraction(0)
    """Outside of framing, along the ridge."""
    spacing_in: Fraction = INCHES.spacing
    """On center."""
    first_in: Fraction | None = None
    """From the left end of each plate to the first rafter's center; None for the usual: half a rafter at a gable (its
    outer face flush), a whole space at a hip's corner."""
    ridge: RidgeBoard | None = RidgeBoard()
    """None for no ridge board: rafters meet in pairs."""
    rafters: Stock = stock('2×8')
    hips: Stock = stock('2×8')
    valleys: Stock = stock('2×8')
    seat_in: Fraction = Fraction(7, 2)
    overhang_in: Fraction = INCHES.unit_run
    """To the upper corner of the rafters' tails, at the eaves of the main planes."""
    fascia_in: Fraction = Fraction(0)
    """Thickness of the fascia that stands on them; 0 for none."""
    gable_overhang_in: Fraction = Fraction(0)
    """Outside of framing to the outer face of the barge rafter."""
    tail: TailCut = TailCut.PLUMB
    hip_top: HipTop = HipTop.DROPPED
    hip_head: HipHead = HipHead.BETWEEN
    lengths_in: tuple[Fraction, ...] = tuple(
        Fraction(feet * INCHES.group) for feet in (8, 10, 12, 14, 16, 18, 20, 24)
    )
    """Of the boards that can be bought, from the shortest."""
    kerf_in: Fraction = EIGHTH_IN
    sheathing_allowance: Fraction = Fraction(1, 10)
    """Share of the roof's area that is added for cuts and waste."""
    measure: Measure = Measure()

    @property
    def other_pitch(self) -> Pitch | None:
        """Return what slopes have that are not of the main planes' pitch; None where all have that."""
        told = (getattr(self.kind, name) for name in self.kind.__struct_fields__)
        return next((one for one in told if isinstance(one, Pitch) and one.slope != self.pitch.slope), None)
