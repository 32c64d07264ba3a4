"""A length that was read, against the exact one."""

from __future__ import annotations

from fractions import Fraction

from msgspec import Struct

from tablegen.checking.allowance import Allowance, Verdict, allowance, verdict
from tablegen.checking.amounts import amount
from tablegen.checking.members import MEMBERS, slope_of
from tablegen.checking.written import Part, Written
from tablegen.errors import BookError
from tablegen.geometry.pitch import Pitch
from tablegen.messages import message
from tablegen.numbers import text
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import RATIO, Measure, decimal_figure, degree_figure, length_figure
from tablegen.numbers.units import INCHES
from tablegen.roof.figures import Degrees, Length, Ratio


class Repeated(Struct, frozen=True):
    """One error made again at every step."""

    total_run: Fraction
    """in."""
    steps: int
    """Whole runs of the check in the total run."""
    left_run: Fraction
    """What is left over, in, in which nothing is repeated."""
    error: Length
    """in; above 0 is long."""


class FittingPitch(Struct, frozen=True):
    """The pitch that a reading is exact for."""

    rise_per_foot: Length
    """in per foot of run."""
    angle: Degrees
    """Degrees from level."""


class LengthCheck(Struct, frozen=True):
    """A reading judged."""

    of: str
    """A key of members.MEMBERS."""
    pitch: Pitch
    rise_per_foot: Length
    run: Fraction | None
    """Level run, in; None for a difference of jacks."""
    spacing: Fraction | None
    """Of jacks on center, in; None for any other length."""
    read: Written
    part: Part
    """The finest part that was read."""
    exact: Length
    """in."""
    nearest: Length
    """The exact length to that part, in the reading's unit."""
    nearest_book_part: Length
    """The exact length to the smallest part of the book."""
    difference: Length
    """Reading less exact length, in; above 0 is long."""
    parts_off: Ratio
    """The same in finest parts of the reading."""
    marks_off: int
    """Whole parts from the nearest mark to the reading; above 0 is long."""
    repeated: Repeated | None
    """None where no total run is given."""
    exact_for: FittingPitch | None
    """None where no pitch makes the member so short."""
    allowed: Allowance
    verdict: Verdict


def check_length(
    kind: str,
    pitch: Pitch,
    run_in: Fraction,
    read: Written,
    measure: Measure,
    total_run_in: Fraction | None = None,
    within_in: Fraction | None = None,
    with_tape: bool = False,
) -> LengthCheck:
    """Return a reading judged against the exact length.

    Given:
        kind          a key of members.MEMBERS
        run_in        level run of the common rafter, or the spacing of a jack difference, in
        measure       the book's smallest part, for the figure a reader of the book would find
        total_run_in  the whole rafter's run, in, over which the error is made again; or None
        within_in     what the reading may be off by, in; None for half of its finest part
        with_tape     whether the tape's own tolerance comes on top

    Errors:
        BookError for a run or a reading of nothing, or a total run below the run
    """
    of_jacks = kind == 'jack-difference'
    for place, given in (('spacing' if of_jacks else 'run', run_in), ('reads', read.inches)):
        if given == 0:
            raise BookError(place, message('check.nothing_to_check'), message('error.above_zero'))
    true = MEMBERS[kind].length(run_in, pitch)
    off = read.inches - true
    allowed = allowance(read, within_in, with_tape)
    near = read.part.nearest(true)
    return LengthCheck(
        kind,
        pitch,
        amount(pitch.rise),
        None if of_jacks else run_in,
        run_in if of_jacks else None,
        read,
        read.part,
        amount(true),
        near,
        length_figure(true, measure),
        amount(off),
        decimal_figure(off / read.part.inches, 2, RATIO),
        read.figure.count - near.count,
        None if total_run_in is None else _repeated(off, run_in, total_run_in),
        _fitting(kind, run_in, read.inches),
        allowed,
        verdict(off, allowed),
    )


def _repeated(off: Exact, run_in: Fraction, total_run_in: Fraction) -> Repeated:
    steps, left = divmod(total_run_in, run_in)
    if not steps:
        problem = message('check.short_total_run', total=text.run(total_run_in))
        raise BookError('total-run', problem, message('error.or_more', least=text.run(run_in)))
    return Repeated(total_run_in, int(steps), left, amount(steps * off))


def _fitting(kind: str, run_in: Fraction, length_in: Fraction) -> FittingPitch | None:
    slope = slope_of(kind, run_in, length_in)
    if slope is None:
        return None
    return FittingPitch(amount(slope * INCHES.base), degree_figure(Angle(slope)))
