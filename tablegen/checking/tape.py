"""What a tape itself may be wrong by: the tolerances that weights-and-measures inspection allows it."""

from __future__ import annotations

from fractions import Fraction

from msgspec import Struct

from tablegen.errors import BookError
from tablegen.messages import message
from tablegen.numbers import text
from tablegen.numbers.units import INCHES

SOURCE = message('check.tape_source')
LONGEST_FT = 100


class Band(Struct, frozen=True):
    """Tolerance of a metal tape over an interval measured from its zero."""

    from_ft: int
    """Nominal interval at which the band begins; the first holds from zero."""
    to_ft: int
    """Nominal interval at which it ends, included."""
    tolerance_in: Fraction
    """Plus or minus, in."""


BANDS = (
    Band(0, 6, Fraction('1/32')),
    Band(7, 30, Fraction('1/16')),
    Band(31, 55, Fraction('1/8')),
    Band(56, 80, Fraction('3/16')),
    Band(81, LONGEST_FT, Fraction('1/4')),
)
"""As the handbook prints them."""


def tolerance(length_in: Fraction, place: str = 'tape') -> Fraction:
    """Return what a metal tape may be wrong by, plus or minus, at a length from its zero.

    Given:
        length_in  in, up to 100 ft

    Returned:
        in. The handbook names whole feet only: between two of its bands, as at 6 ft 6 in, the tighter is
        taken.

    Errors:
        BookError past 100 ft, where the handbook's table ends

    Source: NIST Handbook 44, section 5.52 Linear Measures: metal tapes.
    """
    if length_in > INCHES.group * LONGEST_FT:
        problem = message('check.past_tape_table', length=text.run(length_in))
        most = message('error.up_to', most=f'{LONGEST_FT} {INCHES.greater}')
        raise BookError(place, problem, most, message('check.leave_out_tape'))
    return next(band.tolerance_in for band in reversed(BANDS) if length_in >= INCHES.group * band.from_ft)
