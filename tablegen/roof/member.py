"""A member: one board of a roof by its name on the plan, what comes off it and why, how it is cut, every mark on it.

Every length of a board is along its top edge, on the center of that edge, and every mark is measured from ONE line: the
center line of what stops it, at its upper end. framing.py makes members.
"""

from __future__ import annotations

from enum import StrEnum
from fractions import Fraction

from msgspec import Struct, field

from tablegen.geometry.pitch import Pitch
from tablegen.geometry.stepping import Hold
from tablegen.numbers.exact import Exact, exact
from tablegen.numbers.figure import Figure
from tablegen.numbers.units import Stock
from tablegen.roof.cautions import Caution
from tablegen.roof.cheeks import OneCheek, TwoCheeks
from tablegen.roof.figures import Degrees, Length, PlumbLevel, TwoWays
from tablegen.roof.names import Why
from tablegen.roof.seat import Mouth


class Kind(StrEnum):
    """What a member is."""

    COMMON = 'common'
    END_COMMON = 'end_common'
    """In the middle of a sloping end, against the ridge's end."""
    SHED_RAFTER = 'shed_rafter'
    HIP_JACK = 'hip_jack'
    VALLEY_JACK = 'valley_jack'
    """From a ridge down to a valley."""
    CRIPPLE = 'cripple'
    """From a hip or valley down to a valley: it meets no ridge and no plate."""
    LOWER_RAFTER = 'lower_rafter'
    """Of a gambrel, from its purlin down."""
    UPPER_RAFTER = 'upper_rafter'
    """Of a gambrel, from its ridge down to its purlin."""
    LAID_JACK = 'laid_jack'
    """Of a wing, from its ridge down to a board on the main roof's sheathing."""
    BARGE = 'barge'
    """Outside a gable, over no plate."""
    UPPER_BARGE = 'upper_barge'
    """Of a gambrel, from its ridge down to its purlin."""
    HIP = 'hip'
    UPPER_HIP = 'upper_hip'
    """From a ridge down to where a lower ridge and its valley end: it stands over no plate."""
    VALLEY = 'valley'

    @property
    def in_corner(self) -> bool:
        """Return whether it runs along the line where two roof planes meet."""
        return self in (Kind.HIP, Kind.UPPER_HIP, Kind.VALLEY)

    @property
    def stands_on_plate(self) -> bool:
        """Return whether its lower end is a tail over a plate, and not cut to what it meets there."""
        return self not in (
            Kind.VALLEY_JACK,
            Kind.CRIPPLE,
            Kind.UPPER_RAFTER,
            Kind.UPPER_BARGE,
            Kind.UPPER_HIP,
            Kind.LAID_JACK,
        )


class Hand(StrEnum):
    """A side of a board, as one sees it who looks from its lower end up to its upper one, its top edge up."""

    LEFT = 'left'
    RIGHT = 'right'

    @property
    def other(self) -> Hand:
        """Return the other one."""
        return Hand.RIGHT if self is Hand.LEFT else Hand.LEFT


class Stop(StrEnum):
    """What stops a member at its upper end: it is cut to the face of that."""

    RIDGE = 'ridge'
    LEDGER = 'ledger'
    HIP = 'hip'
    COMMONS = 'commons'
    """The corner of the last side common and the end common."""
    RIDGES = 'ridges'
    """The corner of two ridges of one height."""
    MATE = 'mate'
    """The rafter over against it, where there is no ridge."""
    WALL = 'wall'
    BEAM = 'beam'
    VALLEY = 'valley'
    PURLIN = 'purlin'
    HIPS = 'hips'
    """The other hips of a peak."""
    POST = 'post'
    BOARD = 'board'
    """A board that lies on sheathing."""


class Line(StrEnum):
    """A plumb line on a member."""

    CENTER = 'center'
    """The center line of what stops it; of a ledger, the face of the wall behind."""
    LONG = 'long'
    """Where one cheek leaves the side that it makes the longer."""
    CUT = 'cut'
    """On the center of the top edge: a square cut, or one cheek."""
    SHORT = 'short'
    POINT = 'point'
    """Where two cheeks meet, on the center of the top edge."""
    SIDE = 'side'
    """Where two cheeks leave both sides."""
    PLATE = 'plate'
    """The plate line, or the corner of the plates; the heel too, but for a valley."""
    HEEL = 'heel'
    """Of a valley, outwards of the inside corner."""
    TAIL = 'tail'
    """The tail's end, on the center of the top edge."""
    TAIL_SIDE = 'tail_side'
    """Where two cheeks at the tail leave both sides."""
    SIDE_RIGHT = 'side_right'
    """Where the right one of two unlike cheeks leaves its side; SIDE is then the left one's."""
    TAIL_RIGHT = 'tail_right'
    """The same at the tail."""
    TAIL_LONG = 'tail_long'
    """Of a tail with one cheek, where it leaves the side that it makes the longer."""
    TAIL_SHORT = 'tail_short'
    FOOT = 'foot'
    """The center line of what stops it at its lower end."""
    FOOT_LONG = 'foot_long'
    """There as LONG, CUT and SHORT are above."""
    FOOT_CUT = 'foot_cut'
    FOOT_SHORT = 'foot_short'
    UPPER_PLATE = 'upper_plate'
    """Of a shed's rafter that runs over a beam: its outer face, the upper bird's mouth's heel."""


class Deduction(Struct, frozen=True):
    """What comes off a line length, and why."""

    stop: Stop
    thickness_in: Fraction
    """Of what stops it."""
    level: Length
    """LEVEL, from the center line (of a ledger: the wall) to the face, in the member's own direction."""
    along: Length
    """The same ALONG its top edge."""


class LowerCorner(Struct, frozen=True):
    """The lower corner of a tail cut square to the top edge, seen from its upper one."""

    set_in: Length
    """LEVEL, towards the plate."""
    below: Length
    """PLUMB."""


class End(Struct, frozen=True):
    """One end, cut plumb: square across, or with cheeks, each alike on both sides of the center line."""

    off: Deduction | None = None
    """None where nothing stops it, as at a tail."""
    cut: OneCheek | TwoCheeks | None = None
    """Each of its cheeks: its angles on the SIDE and on the TOP edge, each from the line square across; None for none."""
    back: TwoWays | None = None
    """From the mark on the center line to where a cheek leaves either side; one cheek's long point lies as far the
    other way."""
    hollow: bool = False
    """Whether two cheeks have their long points on the sides, as at a valley's tail."""
    long: Hand | None = None
    """The side where one cheek has its long point, or where one of two lies against a wall; None where none does, or either hand
    is wanted."""
    other: OneCheek | TwoCheeks | None = None
    """The right one of two cheeks that are not alike: `cut` is then the left one."""
    other_back: TwoWays | None = None
    """As `back`, of the right one."""
    tip: TwoWays | None = None
    """From the mark on the center line on to where two unlike cheeks meet, aside of it: up, at a tail down."""
    blunt: bool = False
    """Whether two cheeks leave a square end between them, as wide as the ridge: no point."""
    bevel: Degrees | None = None
    """Of a foot that is cut level and lies on a sloping roof: the blade's tilt from square along that level line."""
    square: bool = False
    """Whether a tail ends at fascias that stand square to the roof: cut square to the top edge, or with cheeks that lean."""
    lower: LowerCorner | None = None
    """Of a tail cut square to the top edge."""
    set_in_in: Exact = field(default_factory=Exact)
    """Of a dropped hip's tail at such fascias: its mark on the center line from where the eaves meet, ALONG, towards the ridge."""


class Mark(Struct, frozen=True):
    """A plumb line on the board."""

    line: Line
    at: Length
    """ALONG the top edge from Line.CENTER; below 0 is towards the ridge."""


class Backs(Struct, frozen=True):
    """The bevels of a backed hip's top, each from its square top, from the center line down to one side."""

    left: Degrees
    right: Degrees


class Member(Struct, frozen=True):
    """One board."""

    name: str
    """Its mark: what it is called on the plan."""
    kind: Kind
    pitch: Pitch
    slope: Exact
    """The member's own: of a hip or valley, over its own run."""
    stock: Stock
    thickness_in: Fraction
    run_in: Exact | Fraction
    """Level run of the common in or beside it, plate line (or the center line of what stops it at its foot) to that of
    what stops it at its head."""
    overhang_in: Exact
    """Level, of the commons."""
    cut: PlumbLevel
    """Its two cuts, on the SIDE, from the line square across; the seat is marked by the level one."""
    hold: Hold
    """How the square is held for one step of it."""
    head: End
    tail: End
    mouth: Mouth | None
    """None where its stock does not reach the plate, or the seat would cut it through or take half of its run."""
    marks: tuple[Mark, ...]
    """From the ridge end to the tail."""
    overall: Length
    """ALONG the top edge, from the first point of the cut board to its last."""
    stick: Length
    """Of the shortest board that it can be cut from, tip to tip: rounded up."""
    cautions: tuple[Caution, ...]
    """What its numbers call for."""
    backs: Backs | None = None
    """Of a backed hip; None where the top stays square."""
    upper_mouth: Mouth | None = None
    """The second one of a shed's rafter that runs over a beam, its heel at Line.UPPER_PLATE."""
    other_pitch: Pitch | None = None
    """Of a hip or valley, that of its other slope where it is not alike."""
    on_raised_plate: bool = False
    """Whether a hip's heel stands where it crosses a raised plate's line, aside of the plates' corner."""

    @property
    def deductions(self) -> tuple[Deduction, ...]:
        """Return what comes off its line length, the upper end first."""
        return tuple(end.off for end in (self.head, self.tail) if end.off)

    def at(self, line: Line) -> Exact:
        """Return where a mark is, in, which nothing has rounded."""
        return next(inches_of(mark.at) for mark in self.marks if mark.line == line)


def known(figure: Figure | Why | None) -> Figure:
    """Return a figure that an answer has."""
    assert isinstance(figure, Figure)
    return figure


def inches_of(figure: Figure) -> Exact:
    """Return the length that a figure was rounded from, in."""
    assert isinstance(figure.value, Exact | Fraction)
    return exact(figure.value)
