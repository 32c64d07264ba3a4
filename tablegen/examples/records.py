"""What a worked example is made of: members, where their figures stand in the book, lengths as they are read, steps."""

from __future__ import annotations

from fractions import Fraction

from msgspec import Struct

from tablegen.examples.building import Roof
from tablegen.messages import Message
from tablegen.numbers.figure import Figure
from tablegen.roof.member import Member
from tablegen.roof.seat import Mouth


class Source(Struct, frozen=True):
    """A place in a table, or in the opening by member of its pitch."""

    table: str
    """'values', 'hip-values', 'opening' or 'jack-lengths' of the example's pitch, or a reference table's key."""
    row: str
    """What names its row there."""
    column: Message | str
    """The head that it stands under there; '' where the row has one figure, or its name says the column too."""
    place: int
    """Which column that is, from 0; of an opening, which of its pages."""
    title: Message | None = None
    """Of a reference table; a page has one of the others."""


class RunSource(Struct, frozen=True):
    """A place in a table of runs of the example's pitch."""

    table: str
    """'common', 'hip-valley' or 'rise'."""
    run_in: Fraction
    added: bool
    """Whether it is in the line of small runs to add."""


Sources = tuple[Source | RunSource, ...]
Stands = dict[str, Sources]
"""Where the figures of each step stand in this book, by the step's name; a step without a place has none."""


class Length(Struct, frozen=True):
    """A length from the ridge's center line, read from a table of runs."""

    readings: tuple[Figure, ...]
    """What is read and added up; none where its table is left out of the book."""
    total: Figure
    """Sum of what is read."""
    direct: Figure
    """The exact length, rounded once: the sum may be one part off."""
    sources: Sources


class StepOff(Struct, frozen=True):
    """The same length by stepping off with the square, held as the member's steps are."""

    whole: int
    """Steps, each of the hold's common run."""
    left_level: Figure
    left_rise: Figure
    """Odd remainder, level on the body and plumb on the tongue, to sixteenths; count 0 where there is none."""
    tail_whole: int
    tail_level: Figure
    tail_rise: Figure
    """The tail from the plate line: whole steps and what is left, held the same way."""
    step_exact: Figure
    """One whole step along the top edge, to thousandths."""
    step_set: Figure
    """The same to the book's smallest part."""
    drift: Figure
    """How far the last whole step is off when every step is set to that, to thousandths; + is long."""
    seventeen: Figure | None
    """Hip and valley: how far too long the whole steps are with a full 17 held for √288, to thousandths."""


class Worked(Struct, frozen=True, kw_only=True):
    """A member that an example shows on the board, and where its figures stand."""

    roof: Roof
    member: Member
    stands: Stands


class Example(Worked, frozen=True, kw_only=True):
    """One member from the run of its common to the marks on its board."""

    length: Length
    """Ridge center line to plate line."""
    whole: Length
    """Ridge center line to the tail's end, run and overhang together."""
    steps: StepOff
    odd: Length | None = None
    """The rise of the odd remainder, where the book's pages for a pitch are one opening and have it."""
    ledger: Length | None = None
    """What comes off at a ledger or purlin, ALONG the top edge, where it is read as a run."""


class SlopesExample(Struct, frozen=True, kw_only=True):
    """Two rafters of one roof whose slopes differ: a saltbox's front and back, a gambrel's lower and upper."""

    rafters: tuple[Example, Example]
    rises: tuple[Length, Length]
    """Of each over its run."""
    rise: Length
    """Of both, one over the other."""
    width_in: Fraction
    """Of the roof, outside to outside of the plates."""

    @property
    def meets(self) -> bool:
        """Return whether both meet at the ridge, as a saltbox's do; a gambrel's meet at a purlin."""
        return self.rafters[0].member.kind is self.rafters[1].member.kind


class RidgeEnd(Struct, frozen=True):
    """How far the ridge runs on past the point where the center lines meet, and its end common."""

    past: Figure
    """in, level, theoretical end to sawn end: just what comes off the end common."""
    over: Figure
    """in, plumb, how far its square top then stands over the end's plane, to be planed off; count 0 for nothing."""
    clip: Figure | None
    """in, level, how far back each side of the end common is clipped to hips on the ridge; count 0 for nothing."""


class HipExample(Example, frozen=True, kw_only=True):
    """A whole hip; its member is framed against the ridge, and dropped."""

    between: Member
    """The same hip between commons."""
    ridge: RidgeEnd
    ridge_between: RidgeEnd
    """Of the two ways in which the ridge's end is framed."""
    drop: Figure
    """in, plumb: what a hip left square is lowered by; its bird's mouth has it already."""
    backing: Figure
    """deg, each side of a backed hip's top, from square: in place of the drop."""
    commons_height: Figure
    """in, plumb over the plate: of the commons, and of a backed hip."""
    backed: Mouth | None
    """The bird's mouth of a backed hip."""
    least_depth: Figure
    """in, square to its edge, rounded up: the stock that just reaches the plate."""


class ValleyExample(Example, frozen=True, kw_only=True):
    """A whole valley, whose upper end stands in the corner of the store's ridge and the wing's."""

    stands_over: Figure
    """in, plumb: how far its jacks stand over its square edges; a valley is not dropped."""
    least_depth: Figure
    """in, square to its edge, rounded up: the stock that just reaches the plate."""


class Jack(Struct, frozen=True):
    """One jack; every length along its top edge, worked from its run and rounded once."""

    mark: str
    """Its number from the corner, or its mark in the cut list of a roof of the reader's own."""
    run_in: Fraction
    """Level, to the hip's center line: how far from the corner it stands."""
    source: Sources
    """Where its line length stands."""
    line: Figure
    """Plate line to the hip's center line, on the jack's own center line."""
    long: Figure
    short: Figure
    """Plate line to the long point, and to the short point, of the cut against the hip."""
    overall: Figure
    """Long point to the tail's end."""


class JackExample(Worked, frozen=True, kw_only=True):
    """The jacks of one side of the hip at one spacing, the last one's board; the other side has left and right changed over."""

    spacing_in: Fraction
    first_in: Fraction
    """Of the first from the corner, level."""
    jacks: tuple[Jack, ...]
    points: Figure
    """in, along the top edge, short to long point of every jack."""
    tail: Figure
    """in, along the top edge, plate line to the tail's end: the same on every jack."""
    difference: Figure
    """One space more, to the smallest part."""
    hand: Figure
    """The same to thousandths."""
    length: Length | None
    """Line length of the last one where it is read as a common of its run; None where the book has a table of jacks."""
    past: Length | None
    """Of hips that meet the ridge: what comes off the end common by hips on the ridge, LEVEL, as half the ridge and what comes off a jack at a hip."""
    half: Length | None
    """Half of a jack's thickness, level, ALONG the top edge: long and short point lie as far from the center. Read as a run."""
    tail_read: Length | None
    """The tail where it is read as a run."""
    off_by_hand: Figure
    """in, to thousandths, LEVEL: what comes off a jack at the hip, on its center line."""
    drift: Figure
    """How far the last jack is off if each is measured a rounded difference on from the one before; + is long."""
