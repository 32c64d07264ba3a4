"""Angles as people write them, in degrees."""

from __future__ import annotations

import re
from fractions import Fraction

from tablegen.errors import BookError, did_you_mean
from tablegen.messages import message
from tablegen.written.numbers import NUMBER, NoNumber, normalized, read_number

SIGN = r'(?:degrees\b|degree\b|deg\b\.?|°)'
"""What may stand after the number, and nowhere else."""
DEGREES = re.compile(rf'(?P<degrees>{NUMBER}) ?(?P<sign>{SIGN})?', re.IGNORECASE)


def signed_degrees(clean: str) -> Fraction | None:
    """Return the degrees of normalized text that names them, as 30 deg or 30°; None where it does not.

    Errors:
        NoNumber where the sign stands after no number
    """
    match = DEGREES.fullmatch(clean)
    return read_number(match['degrees']).value if match and match['sign'] else None


def degrees(written: str, place: str, below: int) -> Fraction:
    """Return degrees above 0 and below a limit: 30, 30 deg, 30°, 22 1/2 degrees.

    Errors:
        BookError if it is no such angle
    """
    clean = normalized(written)
    match = DEGREES.fullmatch(clean)
    try:
        found, meant = read_number(match['degrees']).value if match else Fraction(0), ''
    except NoNumber as fault:
        found, meant = Fraction(0), fault.meant_in(clean)
    if not 0 < found < below:
        problem = message('reader.no_angle', written=written)
        raise BookError(place, problem, message('reader.degrees_below', below=below), did_you_mean(meant))
    return found
