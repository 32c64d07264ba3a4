"""What a worked example is made of: figures with the places where they stand, deductions with reasons, cuts, marks."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from tablegen.geometry.pitch import Pitch
from tablegen.geometry.stepping import Hold
from tablegen.messages import Message
from tablegen.numbers.figure import Figure
from tablegen.numbers.units import Stock
from tablegen.roof.cautions import Caution


@dataclass(frozen=True, slots=True)
class Source:
    """A figure that stands in a row of a table, or of the opening by member of its pitch."""

    table: str
    """'values', 'hip-values' or 'jack-lengths' of the example's pitch, or a reference table's key."""
    row: str
    """What names its row there."""
    column: Message | str
    """The head that it stands under there; '' where the row has one figure, or its name says the column too."""
    place: int
    """Which column that is, from 0."""
    figure: Figure


@dataclass(frozen=True, slots=True)
class RunSource:
    """A figure that stands in a table of runs of the example's pitch."""

    table: str
    """'common', 'hip-valley' or 'rise'."""
    run_in: Fraction
    figure: Figure
    added: bool
    """Whether it stands in the line of small runs to add."""


Sources = tuple[Source | RunSource, ...]
Stands = dict[str, Sources]
"""Where the figures of each step stand in this book, by the step's name; a step without a place has none."""


@dataclass(frozen=True, slots=True)
class Length:
    """A length from the ridge's center line, read from a table of runs."""

    run_in: Fraction
    """Level run of the common, in."""
    readings: tuple[tuple[Fraction, Figure], ...]
    """Run and figure of what is read and added up; none where its table is left out of the book."""
    total: Figure
    """Sum of what is read."""
    direct: Figure
    """The exact length, rounded once: the sum may be one part off."""


@dataclass(frozen=True, slots=True)
class Deduction:
    """What comes off a line length, and why."""

    reason: str
    """'ridge', 'ledger', 'hip', 'between' two commons, 'corner' of two ridges: the face that stops the member."""
    thickness_in: Fraction
    """Of the thing that stops it, in."""
    level: Figure
    """in, LEVEL, from the center line (of a ledger: the wall) to the face, in the member's own direction."""
    along: Figure
    """The same measured along the member's top edge."""


@dataclass(frozen=True, slots=True)
class CheekCut:
    """A plumb cut on the skew, on a top edge left square."""

    plumb: Figure
    """deg, on the SIDE, from square across."""
    blade: Figure
    """deg, tilt of the blade from square, the shoe on the side."""
    top: Figure
    """deg, on the TOP edge, from square across."""
    on_12: Figure
    """in, held against 12 for that line, which is marked along the 12."""
    double: bool
    """Whether two of them meet at a point on the center line."""
    side_level: Figure
    """in, level, from the mark on the center line to where the cut leaves either side: of a single cheek one side's
    towards the ridge, its long point, and the other's as far towards the tail."""
    side_along: Figure
    """The same along the top edge."""


@dataclass(frozen=True, slots=True)
class Mouth:
    """A bird's mouth: a level seat and a plumb heel."""

    plumb_depth: Figure
    """in, plumb, top edge to underside of the stock."""
    height: Figure
    """in, plumb, plate's top to top edge, over the plate line (hip and valley: over the corner, on the center line)."""
    heel: Figure
    """in, plumb, from the seat down to the underside."""
    seat: Figure
    """in, level, from the heel towards the ridge."""
    out: Figure
    """in, level, how far the heel stands outwards of the plate line, towards the tail: 0 but for a valley."""
    notch: Figure
    """in, square to the edge, underside to the notch's corner."""
    left: Figure
    """in, square to the edge, the wood left over the notch."""
    cautions: tuple[Caution, ...]
    """What the notch and the tail outside it call for."""


@dataclass(frozen=True, slots=True)
class Mark:
    """A plumb line on the board."""

    key: str
    at: Figure
    """in, along the top edge from the line that the example measures from; below 0 is towards the ridge."""


@dataclass(frozen=True, slots=True)
class StepOff:
    """The same length by stepping off with the square."""

    hold: Hold
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


@dataclass(frozen=True, slots=True)
class Member:
    """One member, from the run of its common to the marks on its board."""

    key: str
    pitch: Pitch
    stock: Stock
    thickness_in: Fraction
    """As the book's settings have it, in."""
    run_in: Fraction
    """Level run of the common, plate line to ridge center line (or to the wall), in."""
    overhang_in: Fraction
    """Of the commons, level, in."""
    length: Length
    """Ridge center line to plate line."""
    whole: Length
    """Ridge center line to the tail's end, run and overhang together."""
    off: Deduction
    mouth: Mouth | None
    """None where the seat would cut through the stock, or a shallow hip does not reach the plate."""
    marks: tuple[Mark, ...]
    """From the ridge end to the tail."""
    overall: Figure
    """in, along the top edge, from the first point of the cut board to its last."""
    stick: Figure
    """in, the shortest board that it can be cut from, tip to tip: rounded up."""
    steps: StepOff
    cautions: tuple[Caution, ...]
    """What its numbers call for."""
    stands: Stands
