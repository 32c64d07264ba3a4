"""From a number to the digits of a page: once, to a whole count of parts; a half goes up."""

from math import gcd

from fifty_digits import mp, mpf

MINUS = '−'
SLACK = mpf(10) ** -30
"""How far below a half a number may come out that is a half: the model's own error is some 1e-45."""


class Printed(str):
    """Digits as they are printed, with what they were rounded from in nine decimals, rounded the same way."""

    exact: str

    def __new__(cls, digits, exact):
        made = super().__new__(cls, digits)
        made.exact = exact
        return made

    def __add__(self, after):
        return Printed(super().__add__(after), self.exact)

    def __str__(self):
        return self


def nearest(value, per):
    """Return the whole count of parts that is nearest to a number; a half goes up."""
    return int(mp.floor(mpf(value) * per + mpf(1) / 2 + SLACK))


def whole_parts(value, per):
    """Return the whole count of parts that does not pass a number: a limit is rounded to the safe side."""
    return int(mp.floor(mpf(value) * per + SLACK))


def no_fewer_parts(value, per):
    """Return the whole count of parts that is not less than a number: of what must be there at least."""
    return int(mp.ceil(mpf(value) * per - SLACK))


def mixed(count, per):
    """Return a count of parts as a carpenter writes it: '53 11/16', '7/8', '0', '−1/16'."""
    whole, rest = divmod(abs(count), per)
    common = gcd(rest, per)
    words = [str(whole)] if whole or not rest else []
    if rest:
        words.append(f'{rest // common}/{per // common}')
    return MINUS * (count < 0) + ' '.join(words)


def part(value, per=16):
    """Return a length as it is printed, to the smallest part."""
    return Printed(mixed(nearest(value, per), per), nine_decimals(value))


def limit(value, per=16):
    """Return a greatest length as it is printed: never more than it is."""
    return Printed(mixed(whole_parts(value, per), per), nine_decimals(value, whole_parts))


def least(value, per=16):
    """Return a least length as it is printed: never less than it is."""
    return Printed(mixed(no_fewer_parts(value, per), per), nine_decimals(value, no_fewer_parts))


def decimal(value, places):
    """Return a number in decimals, as printed."""
    return Printed(_decimals(nearest(value, 10**places), places, MINUS), nine_decimals(value))


def nine_decimals(value, count=nearest):
    """Return a number as a data file has it."""
    return _decimals(count(value, 10**9), 9, '-')


def _decimals(count, places, minus):
    whole, rest = divmod(abs(count), 10**places)
    return f'{minus * (count < 0)}{whole}' + (f'.{rest:0{places}d}' if places else '')


def degrees(radians, places=2):
    """Return an angle as it is printed, in degrees."""
    return decimal(mp.degrees(radians), places) + '°'
