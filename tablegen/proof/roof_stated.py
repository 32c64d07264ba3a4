"""What the sheets of a roof say of themselves: the lines of the roof file that makes them, read by no reader of the program's."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Mapping, Sequence
from decimal import Decimal
from fractions import Fraction
from typing import Any

from msgspec import Struct

from tablegen.proof.digits import FOOT_IN, read
from tablegen.proof.roof import DEPTHS
from tablegen.proof.stated import Pitch, pitch_of

FEET = re.compile(r'(?:(\d+)′)? ?(\d[\d /]*)?″?')
KEY = re.compile(r'[a-z_.-]+ = ')
THICK, THICKNESS = Fraction(3, 2), 'stock.rafter'
"""in, of what is sold as 2 by something, dressed. Source: Voluntary Product Standard PS 20."""


class Unstated(ValueError):
    """Sheets that do not say what they were worked out from."""


class Asked(Struct, frozen=True):
    """The lines, each by its key; lengths in inches."""

    told: Mapping[str, Any]

    def word(self, key: str, usual: str = '') -> str:
        """Return what a key says."""
        return str(self.told.get(key, usual))

    def inches(self, key: str, usual: Fraction | int = 0) -> Fraction:
        """Return a length."""
        return inches_of(str(self.told[key])) if key in self.told else Fraction(usual)

    def pitch(self, key: str = 'pitch') -> Pitch | None:
        """Return a pitch; None where there is none."""
        return pitch_of(str(self.told[key])) if key in self.told else None

    def slope(self, key: str = 'pitch') -> Decimal:
        """Return the rise over the run of a pitch, of the main one where it is not told."""
        found = self.pitch(key) or self.pitch()
        if found is None:
            raise Unstated(key)
        return found.slope

    def pitch_told(self, key: str = '') -> str:
        """Return a pitch as the sheets tell it, the main one where it is not told."""
        words = self.word(key) if key and key in self.told else self.word('pitch')
        return f'{words.removesuffix(" deg")}°' if words.endswith(' deg') else words

    @property
    def pitches(self) -> list[str]:
        """Return the pitches of its slopes as they are told, the main one first."""
        keys = ['pitch', *(key for key in self.told if key.endswith('pitch') and key != 'pitch')]
        slopes = {self.slope(key): self.pitch_told(key) for key in reversed(keys)}
        return [slopes[slope] for slope in dict.fromkeys(map(self.slope, keys))]

    def depth(self, key: str) -> Fraction:
        """Return how deep boards of a size are."""
        return DEPTHS[self.word(key, self.word('stock.rafters'))]

    @property
    def per(self) -> int:
        """Return the parts to the inch that lengths are rounded to."""
        return Fraction(self.word('smallest_part')).denominator

    @property
    def in_feet(self) -> bool:
        """Return whether lengths are told in feet and inches."""
        return self.word('lengths') != 'inches'

    @property
    def ridge(self) -> Fraction:
        """Return the thickness of the ridge, 0 where there is none."""
        return self.inches('ridge.thickness') if self.told.get('ridge.board') else Fraction(0)

    @property
    def thick(self) -> Fraction:
        """Return the thickness of the rafters; a book of our own roofs may have another than their size has."""
        return self.inches(THICKNESS, THICK)

    @property
    def square(self) -> bool:
        """Return whether tails are cut square to the slope."""
        return self.word('cuts.tails') == 'square'

    @property
    def lengths(self) -> list[Fraction]:
        """Return the lengths of boards that can be bought."""
        return [inches_of(one) for one in self.told.get('buy.lengths', [])]


def asked(lines: Sequence[str]) -> Asked:
    """Return what the lines say, from the first that is a key to the last.

    Errors:
        Unstated where they cannot be read
    """
    kept: list[str] = []
    for line in lines:
        if KEY.match(line):
            kept.append(line)
        elif kept and kept[-1].count('[') > kept[-1].count(']'):
            kept[-1] += f' {line}'
    try:
        return Asked(dict(_flat('', tomllib.loads('\n'.join(kept)))))
    except (tomllib.TOMLDecodeError, ValueError) as fault:
        raise Unstated(str(fault)) from fault


def _flat(name: str, told: Mapping[str, Any]) -> list[tuple[str, Any]]:
    found = []
    for key, value in told.items():
        path = f'{name}.{key}' if name else key
        found += _flat(path, value) if isinstance(value, dict) else [(path, value)]
    return found


def inches_of(words: str) -> Fraction:
    """Return the inches of '24 ft', '13 ft 5 1/2 in', '3 1/2 in', '1200 mm', '0 in', '4′ 5 11/16″'.

    Errors:
        Unstated for anything else
    """
    feet, foot, rest = words.partition(' ft')
    if foot:
        return inches_of(f'{feet} in') * FOOT_IN + (inches_of(rest.strip()) if rest.strip() else 0)
    marked = FEET.fullmatch(words) if '′' in words or '″' in words else None
    if marked:
        return int(marked[1] or 0) * FOOT_IN + (inches_of(marked[2]) if marked[2] else Fraction(0))
    if words.removesuffix(' in').strip() == '0':
        return Fraction(0)
    found = read(words)
    if found is None:
        raise Unstated(words)
    return found
