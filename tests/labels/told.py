"""How `find` tells a program its figures: a length in decimals of an inch and as a tape shows it, an angle in degrees."""

from __future__ import annotations

from fractions import Fraction

from fifty_digits import mp
from oracle.rounding import decimal, least, limit, no_fewer_parts, part, whole_parts

DATA_PLACES = 9
SPACINGS = {'12': Fraction(12), '16': Fraction(16), '19.2': Fraction(96, 5), '24': Fraction(24)}
RUN = Fraction(125)
RIDGE, HIP, VALLEY, RAFTER = Fraction(3, 4), Fraction(7, 2), Fraction(5, 2), Fraction(7, 4)
SEAT, OVERHANG, PLATE = Fraction(7, 2), Fraction(16), Fraction(372)
RAFTERS, HIPS, VALLEYS = '2×8', '2×10', '2×12'
FACE = Fraction(11, 2)
"""Height of a fascia's plumb cut above a soffit, where nothing else is asked."""
MARKS = ('within_a_quarter', 'past_a_quarter', 'past_a_third')
Told = dict[str, object]


def inches(**figures) -> Told:
    """Return lengths under their names: in decimals, and as a tape shows them."""
    told: Told = {}
    for name, value in figures.items():
        told |= length(name, decimal(value, DATA_PLACES), part(value))
    return told


def length(name: str, exact: str, text: str) -> Told:
    """Return one length under its name."""
    return {f'{name}.inches': exact, f'{name}.text': text}


def at_most(**figures) -> Told:
    """Return greatest lengths, rounded down."""
    told: Told = {}
    for name, value in figures.items():
        count = whole_parts(value, 10**DATA_PLACES)
        told |= length(name, decimal(Fraction(count, 10**DATA_PLACES), DATA_PLACES), limit(value))
    return told


def at_least(**figures) -> Told:
    """Return least lengths, rounded up."""
    told: Told = {}
    for name, value in figures.items():
        count = no_fewer_parts(value, 10**DATA_PLACES)
        told |= length(name, decimal(Fraction(count, 10**DATA_PLACES), DATA_PLACES), least(value))
    return told


def turns(**angles) -> Told:
    """Return angles under their names, in degrees."""
    return {f'{name}.degrees': decimal(mp.degrees(angle), DATA_PLACES) for name, angle in angles.items()}


def level_and_along(**figures) -> Told:
    """Return pairs of lengths, level and along the top edge."""
    told: Told = {}
    for name, (level, along) in figures.items():
        told |= inside(name, inches(level=level, along=along))
    return told


def spaced(said: str, on) -> Told:
    """Return a spacing as it was asked for."""
    return length('spacing', decimal(on, DATA_PLACES), said)


def inside(name: str, told: Told) -> Told:
    """Return what is told in a group of a name."""
    return {f'{name}.{key}': value for key, value in told.items()}


def grouped(groups: dict[str, Told]) -> Told:
    """Return what is told in several groups; a group without a name stands by itself."""
    return {
        key: value
        for name, told in groups.items()
        for key, value in (inside(name, told) if name else told).items()
    }
