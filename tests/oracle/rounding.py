"""From a number to the digits of a page: once, to a whole count of parts; a half goes up."""

from math import gcd

from fifty_digits import mp, mpf

MINUS = '−'
SLACK = mpf(10) ** -30
"""How far below a half a number may come out that is a half: the model's own error is some 1e-45."""


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
    return mixed(nearest(value, per), per)


def limit(value, per=16):
    """Return a greatest length as it is printed: never more than it is."""
    return mixed(whole_parts(value, per), per)


def least(value, per=16):
    """Return a least length as it is printed: never less than it is."""
    return mixed(no_fewer_parts(value, per), per)


def decimal(value, places):
    """Return a number in decimals, as printed."""
    count = nearest(value, 10**places)
    whole, rest = divmod(abs(count), 10**places)
    return f'{MINUS * (count < 0)}{whole}' + (f'.{rest:0{places}d}' if places else '')


def degrees(radians, places=2):
    """Return an angle as it is printed, in degrees."""
    return decimal(mp.degrees(radians), places) + '°'
