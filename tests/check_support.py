"""What the tests of the checks share: outside values, an independent arithmetic, the verb as a user calls it."""

from __future__ import annotations

import json
import tomllib
from fractions import Fraction
from importlib.resources import files
from pathlib import Path

from asking import ask
from jsonschema import Draft202012Validator
from mpmath import mp, mpf

from tablegen.checking.square_file import read_square
from tablegen.checking.square_judging import SquareCheck, judge_square

AUTHORITIES = Path(__file__).parent / 'authorities'
mp.dps = 50
SCHEMA = Draft202012Validator(
    json.loads(files('layouts.told').joinpath('schemas/check.json').read_text('utf-8'))
)
"""Every answer of a check that a test asks for is held against it."""


def authority(name: str) -> list[dict]:
    """Return the values of one outside source; an empty file is an error."""
    values = tomllib.loads((AUTHORITIES / name).read_text('utf-8'))['value']
    assert values
    return values


def real(number: Fraction | int | str) -> mpf:
    """Return a rational, or the text of a decimal, for mpmath."""
    fraction = Fraction(number)
    return mpf(fraction.numerator) / fraction.denominator


def rounded(number: mpf, per: int) -> int:
    """Return the nearest count of parts, a half up, by mpmath."""
    return int(mp.floor(number * per + mpf(1) / 2))


def fine(amount) -> mpf:
    """Return an amount's nine decimals for mpmath."""
    return mpf(amount.decimal)


def near(amount, wanted: mpf) -> bool:
    """Return whether nine decimals are those of a number that mpmath found."""
    return abs(fine(amount) - wanted) <= mpf('0.5000001e-9')


def run_check(*argv: str) -> tuple[int, str, str]:
    """Return exit status, output and remarks of the verb."""
    return ask('check', *argv)


def refuse_float(written: str):
    raise AssertionError(f'{written} is a float')


def data(*argv: str) -> tuple[int, dict]:
    """Return exit status and the object that a check answers with; a float in it is an error."""
    status, out, _ = run_check(*argv, '--format', 'json')
    found = json.loads(out, parse_float=refuse_float)
    SCHEMA.validate(found)
    return status, found


def square(content: str) -> SquareCheck:
    """Return what a file of a square's figures is judged to say."""
    return judge_square(read_square(content, 'mine.csv'))


def changed(content: str, **swaps: tuple[str, str]) -> str:
    """Return a text with each of some words, there once, changed for another."""
    for before, after in swaps.values():
        assert content.count(before) == 1
        content = content.replace(before, after)
    return content
