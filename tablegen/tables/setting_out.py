"""Setting out: diagonals of rectangles by the foot, whole triangles, braces."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from functools import partial
from typing import Any

from tablegen.geometry import setting_out
from tablegen.messages import Message, message
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import FOOT
from tablegen.numbers.text import FEET_INCHES
from tablegen.numbers.units import INCHES
from tablegen.settings import Settings
from tablegen.tables.columns import Make, each, spanned
from tablegen.tables.table import Needs, Table

WIDTHS_FT = ((4, 6, 8, 10, 12, 14), (16, 18, 20, 22, 24, 26), (28, 30, 32, 34, 36, 40))
"""Widths of one page's columns, ft."""
LENGTHS_FT = tuple(range(4, 30)), tuple(range(16, 42)), tuple(range(28, 54))
"""Lengths of the rows of the same page, ft."""
LONGEST_TRIANGLE = 41
Triangle = tuple[int, int, int]
TIMES = (2, 3, 4, 5)
BRACE_LEGS_IN = tuple(Fraction(6 * n) for n in range(2, 17))
OTHER_LEGS_IN = tuple(map(Fraction, (12, 18, 24, 30, 36, 48)))


def listed(settings: Settings) -> list[Table[Any]]:
    """Return the tables of this group."""
    diagonals = [
        _diagonals(settings, f'diagonals-{page}', widths, lengths)
        for page, (widths, lengths) in enumerate(zip(WIDTHS_FT, LENGTHS_FT, strict=True), 1)
    ]
    return [*diagonals, _triangles(settings), _braces(settings)]


def _reads(settings: Settings) -> Message:
    """Return what lengths read in, as words."""
    in_feet = settings.measure.style == FEET_INCHES
    return message('datum.feet_and_inches' if in_feet else 'datum.inches')


def _diagonals(settings: Settings, key: str, widths: Sequence[int], lengths: Sequence[int]) -> Table[int]:
    """Return diagonals, outside corner to opposite outside corner; none where the width is the longer side."""
    make, foot = Make[int](settings), INCHES.group

    def diagonal(length: int, width: Fraction) -> Exact | None:
        return setting_out.diagonal(Fraction(foot * length), foot * width) if width <= length else None

    long = partial(make.length, measure=settings.measure)
    columns = (
        make.count('length_ft', lambda length: length),
        *each(long, 'diagonal_width', tuple(map(Fraction, widths)), diagonal, unit=FOOT),
    )
    return make.table(
        'set-out',
        key,
        lambda: lengths,
        columns,
        title=message('table.diagonals', first=widths[0], last=widths[-1]),
        datum=message('datum.diagonals', reads=_reads(settings)),
        needs=Needs(dashes=False, span=spanned('width')),
    )


def _triangles(settings: Settings) -> Table[Triangle]:
    """Return right triangles with whole sides, in any unit, and their multiples."""
    make = Make[Triangle](settings)
    columns = (
        make.count('short', lambda sides: sides[0]),
        make.count('long', lambda sides: sides[1]),
        make.count('diagonal', lambda sides: sides[2]),
        *(
            make.word(f'times_{times}', partial(_multiple, times), message('head.times', times=times))
            for times in TIMES
        ),
    )
    return make.table(
        'set-out',
        'whole-triangles',
        lambda: setting_out.whole_triangles(LONGEST_TRIANGLE),
        columns,
        message('note.whole_triangles'),
        datum='whole_triangles',
        needs=Needs(dashes=False, corner=message('head.sides')),
        stubs=3,
    )


def _multiple(times: int, sides: Triangle) -> Message:
    """Return a triangle of so many times the sides."""
    a, b, c = (times * one for one in sides)
    return message('table.triangle', a=a, b=b, c=c)


def _braces(settings: Settings) -> Table[Fraction]:
    """Return braces from a post or plate, the first leg given, each leg from the inner corner to a long point."""
    make = Make[Fraction](settings)
    long = partial(make.length, measure=settings.measure)
    lengths = (
        long('equal_legs', lambda leg: setting_out.diagonal(leg, leg)),
        *each(long, 'other_leg', OTHER_LEGS_IN, setting_out.diagonal),
    )
    # on the other leg 90 degrees less this
    cuts = each(make.degrees, 'cut_other_leg', OTHER_LEGS_IN, setting_out.brace_cut, 'brace_cut', 'cut')
    columns = (make.given('leg', lambda leg: leg), *lengths, *cuts)
    datum, needs = message('datum.braces', reads=_reads(settings)), Needs(cuts=(len(lengths), len(cuts)))
    return make.table('set-out', 'braces', lambda: BRACE_LEGS_IN, columns, datum=datum, needs=needs)
