"""How far off a reading may be and still be right, and by which rule."""

from __future__ import annotations

from enum import StrEnum
from fractions import Fraction

from msgspec import Struct

from tablegen.checking import tape
from tablegen.checking.written import Part, Written, half, inches_text
from tablegen.messages import Message
from tablegen.numbers.exact import Exact, sign


class Rule(StrEnum):
    """Where an allowance comes from."""

    HALF_PART = 'half_part'
    """Half of the finest part read."""
    GIVEN = 'given'
    """The user says so."""
    USUAL = 'usual'
    """Nothing was said."""


class Verdict(StrEnum):
    """What a check finds."""

    RIGHT = 'right'
    WRONG = 'wrong'
    NOT_JUDGED = 'not_judged'


class Allowance(Struct, frozen=True):
    """The rule of a verdict, and what it comes to."""

    rule: Rule
    part: Part | None
    """The finest part read; None where the allowance does not come from it."""
    part_assumed: bool
    """Whether none was read, so that the usual one is taken."""
    own: Fraction
    """What the rule allows, in."""
    tape: Fraction | None
    """What the tape may be wrong by, in; None where that is not asked for."""
    tape_source: Message | None
    total: Fraction
    """All that is allowed, in, plus or minus."""

    @property
    def text(self) -> str:
        """Return it as text."""
        return inches_text(self.total)


def allowance(
    reading: Written | None,
    within_in: Fraction | None = None,
    with_tape: bool = False,
    usual_in: Fraction = Fraction(0),
) -> Allowance:
    """Return what may be off by how much.

    Given:
        reading    None where what is judged was not read
        within_in  in, or None for half of the finest part read
        with_tape  whether the tape's own tolerance at that length comes on top
        usual_in   what is allowed where nothing was read, and nothing said, in

    Errors:
        BookError if the tape's tolerance is asked for past the end of its table
    """
    part = reading.part if reading and within_in is None else None
    rule = Rule.HALF_PART if part else Rule.USUAL if within_in is None else Rule.GIVEN
    own = half(part) if part else usual_in if within_in is None else within_in
    of_tape = tape.tolerance(reading.inches) if with_tape and reading else None
    source = None if of_tape is None else tape.SOURCE
    return Allowance(rule, part, bool(part and part.assumed), own, of_tape, source, own + (of_tape or 0))


def verdict(difference: Exact, allowed: Allowance) -> Verdict:
    """Return whether a difference in inches is within what is allowed."""
    size = -difference if sign(difference) < 0 else difference
    return Verdict.RIGHT if size <= allowed.total else Verdict.WRONG
