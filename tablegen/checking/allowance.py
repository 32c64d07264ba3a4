"""How far off a reading may be and still be right, and by which rule."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from tablegen.checking import tape
from tablegen.checking.written import Part, Written, half, inches_text
from tablegen.numbers.exact import Exact, sign

HALF_PART, GIVEN, USUAL = 'half-part', 'given', 'usual'
RIGHT, WRONG, NOT_JUDGED = 'right', 'wrong', 'not-judged'


@dataclass(frozen=True, slots=True)
class Allowance:
    """The rule of a verdict, and what it comes to."""

    rule: str
    """'half-part': half of the finest part read; 'given': as the user says; 'usual': where nothing was said."""
    part: Part | None
    """The finest part read; None where the allowance does not come from it."""
    own_in: Fraction
    """What the rule allows, in."""
    tape_in: Fraction | None
    """What the tape may be wrong by, in; None where that is not asked for."""

    @property
    def inches(self) -> Fraction:
        """Return all that is allowed, in, plus or minus."""
        return self.own_in + (self.tape_in or 0)

    @property
    def text(self) -> str:
        """Return it as text."""
        return inches_text(self.inches)


def allowance(reading: Written, within_in: Fraction | None = None, with_tape: bool = False) -> Allowance:
    """Return what a reading may be off by.

    Given:
        within_in  in, or None for half of the finest part read
        with_tape  whether the tape's own tolerance at that length comes on top

    Errors:
        BookError if the tape's tolerance is asked for past the end of its table
    """
    tape_in = tape.tolerance(reading.inches) if with_tape else None
    if within_in is not None:
        return Allowance(GIVEN, None, within_in, tape_in)
    return Allowance(HALF_PART, reading.part, half(reading.part), tape_in)


def verdict(difference: Exact, allowed: Allowance) -> str:
    """Return 'right' where a difference in inches is not over what is allowed, else 'wrong'."""
    size = -difference if sign(difference) < 0 else difference
    return RIGHT if size <= allowed.inches else WRONG
