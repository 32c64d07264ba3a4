"""The one normalizer of what people write, and the one grammar of numbers in it."""

from __future__ import annotations

import re
import unicodedata
from fractions import Fraction

from msgspec import Struct

from tablegen.numbers import text

MIXED = r'[0-9]+(?:-| - | )[0-9]+/[0-9]+'
NUMBER = rf'(?:{MIXED}|[0-9]+/[0-9]+|[0-9]+(?:\.[0-9]*)?|\.[0-9]+)'
"""3 1/2, 3-1/2, 1/2, 3, 3.5, .5: whole, decimal or mixed, without a sign; matched in normalized text."""
LONGEST_NUMBER = 40
"""Characters: more digits than this measure nothing."""
MARKS = str.maketrans(
    {
        '′': "'",
        '’': "'",
        '‘': "'",
        '″': '"',
        '”': '"',
        '“': '"',
        '⁄': '/',
        '∕': '/',
        '–': '-',
        '−': '-',
        '×': 'x',
    }
)


class NoNumber(ValueError):
    """What was written is no number.

    Attributes:
        meant  what was probably meant, '' where nothing can be guessed
    """

    def __init__(self, written: str, meant: str = ''):
        super().__init__(written)
        self.written, self.meant = written, meant

    def meant_in(self, clean: str) -> str:
        """Return what was probably meant by the text that the number stands in, its unit with it."""
        return clean.replace(self.written, self.meant, 1) if self.meant else ''


class Number(Struct, frozen=True):
    """A number as it was written."""

    value: Fraction
    below: int | None
    """What stands below the line of its fraction: 8 of 3 3/8; None where it has no fraction."""
    places: int
    """Decimal places that were written."""


def normalized(written: str) -> str:
    """Return text with one spelling of every mark, vulgar fraction and space.

    Returned:
        marks of feet and inches as ' and ", dashes as -, a vulgar fraction such as ½ as ' 1/2 ' parted from what
        stands beside it, every run of spaces as one space, none at the ends; letters keep their case
    """
    parted = ''.join(
        f' {unicodedata.normalize("NFKC", sign)} '
        if unicodedata.decomposition(sign).startswith('<fraction>')
        else sign
        for sign in written
    )
    clean = ' '.join(parted.translate(MARKS).split())
    clean = re.sub(r'(?<=[0-9]/) (?=[0-9])', '', clean)  # ⅟ is a numerator alone
    clean = re.sub(r"' ?'", '"', clean)  # two single marks for a double one
    return re.sub(r'(?<=/[0-9]) (?=["\'])', '', clean)


def read_number(clean: str) -> Number:
    """Return a number of normalized text, exactly: '3 1/2' is 7/2.

    Errors:
        NoNumber if it is none, is out of all measure, has a zero below its line, or has as much above its line
        as below: 131/2 is refused with 13 1/2 as what was probably meant
    """
    if len(clean) > LONGEST_NUMBER or not re.fullmatch(NUMBER, clean):
        raise NoNumber(clean, _meant_by_parts(clean))
    whole, _, fraction = re.sub(' ?- ?', ' ', clean).rpartition(' ')
    if '/' not in fraction:
        return Number(Fraction(clean.rstrip('.') or '0'), None, len(clean.partition('.')[2]))
    above, below = fraction.split('/')
    if int(above) >= int(below):
        raise NoNumber(clean, '' if whole else _meant(above, below))
    return Number(Fraction(int(above), int(below)) + int(whole or 0), int(below), 0)


def number(written: str) -> Fraction:
    """Return a whole, decimal or mixed number, exactly.

    Errors:
        NoNumber as read_number raises it
    """
    return read_number(normalized(written)).value


def whole_number(written: str) -> int | None:
    """Return a whole number, None for what is none."""
    try:
        value = number(written)
    except NoNumber:
        return None
    return value.numerator if value.denominator == 1 else None


def _meant(above: str, below: str) -> str:
    """Return 13 1/2 for 131/2, a whole number that ran into a tape's fraction; 1 1/4 for 5/4."""
    parts = int(below)
    if not parts:
        return ''
    if parts & (parts - 1) == 0:
        for cut in range(1, len(above)):
            if int(above[cut:]) % 2 and int(above[cut:]) < parts:
                return f'{int(above[:cut])} {int(above[cut:])}/{below}'
    return text.rational(Fraction(int(above), parts))


def _meant_by_parts(clean: str) -> str:
    """Return 4 1/2 for 4 1/2 5, a vulgar fraction in the middle of a number."""
    found = re.fullmatch(rf'({MIXED}|[0-9]+/[0-9]+) [0-9]+', clean)
    return found[1] if found and len(clean) <= LONGEST_NUMBER else ''
