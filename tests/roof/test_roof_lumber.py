"""Dressed sizes and the limits that cautions name, against the standards' rows in authorities/."""

import re
import tomllib
from fractions import Fraction
from pathlib import Path

import pytest

from layouts.words.caution import caution_source, caution_text
from layouts.words.error import error_line
from tablegen.errors import BookError
from tablegen.geometry import seat
from tablegen.geometry.pitch import pitch_of_rise
from tablegen.numbers.exact import exact
from tablegen.numbers.units import INCHES
from tablegen.roof import cautions
from tablegen.roof.question import Boards
from tablegen.roof.seat import common_notch
from tablegen.roof.side import side
from tablegen.written.numbers import number
from tablegen.written.stocks import stock

FOLDER = Path(__file__).parents[1] / 'authorities'


def _rows(file):
    return tomllib.loads((FOLDER / file).read_text('utf-8'), parse_float=Fraction)['value']


def _standard(quantity):
    """Nominal to dressed dry size, in, of one quantity of PS 20."""
    rows = [row for row in _rows('ps20-lumber.toml') if row['quantity'] == quantity]
    assert rows
    return {row['given']['nominal_in']: number(row['printed'].split(' (')[0]) for row in rows}


def _code(row_id):
    (row,) = [row for row in _rows('residential-code.toml') if row['id'] == row_id]
    return row


def _limit(row_id):
    return Fraction(_code(row_id)['value'])


def test_dressed_sizes_are_the_standards():
    widths = _standard('width, dressed dry (green)')
    thick = _standard('dimension thickness, dressed dry (green)')

    assert [size.name for size in INCHES.stocks] == ['2×4', '2×6', '2×8', '2×10', '2×12']
    for size in INCHES.stocks:
        nominal_thickness, nominal_width = size.name.split('×')
        assert size.thickness_in == thick[nominal_thickness]
        assert size.depth_in == widths[nominal_width]


def test_thicknesses_are_the_standards():
    known = {
        *_standard('board thickness, dressed dry (green)').values(),
        *_standard('dimension thickness, dressed dry (green)').values(),
        *_standard('width, dressed dry (green)').values(),
    }

    assert set(INCHES.thicknesses) <= known
    assert (min(INCHES.thicknesses), max(INCHES.thicknesses)) == (number('3/4'), number('5 1/2'))


@pytest.mark.parametrize('written', ['2x8', '2×8', '2 X 8', ' 2x8 '])
def test_stock_is_known_by_its_name(written):
    assert stock(written).depth_in == number('7 1/4')


def test_unknown_stock_is_refused():
    with pytest.raises(BookError) as refused:
        stock('2x7')

    assert error_line(refused.value) == (
        "stock: '2x7' is no size of rafter stock; allowed: 2×4, 2×6, 2×8, 2×10, 2×12"
    )


def test_the_limits_of_cautions_are_the_codes():
    assert _limit('4-code-005') == cautions.LOW_RISE_IN
    assert _limit('4-code-023') == cautions.LONGEST_NOTCHED_TAIL_IN
    assert _limit('4-code-022') == cautions.LEAST_STOCK_UNDER_A_TAIL_IN
    assert _limit('4-code-013') == cautions.LEAST_SEAT_IN
    assert _limit('4-code-014') == cautions.LEAST_SEAT_ON_MASONRY_IN
    assert _limit('4-code-018') == seat.MARKS[0]


def test_a_limit_itself_is_not_past_it():
    three, eight = exact(Fraction(3, 12)), exact(Fraction(8, 12))

    assert cautions.pitch_cautions(three) == cautions.pitch_cautions(eight) == ()
    on_masonry, on_wood = (
        common_notch(side(pitch_of_rise(Fraction(3)), Boards(seat_in=Fraction(seat))))
        for seat in ('3', '3/2')
    )
    assert on_masonry.cautions(Fraction(24)) == ()
    assert on_wood.cautions(Fraction(24)) == (cautions.SHORT_ON_MASONRY,)
    assert not cautions.too_thin_for_a_tail(exact(Fraction(7, 2)))


@pytest.mark.parametrize(
    ('caution', 'keys'),
    [
        (cautions.LOW_SLOPE, ['4-code-005']),
        (cautions.PAST_A_QUARTER, ['4-code-018']),
        (cautions.PAST_A_THIRD, ['4-code-018']),
        (cautions.LONG_TAIL, ['4-code-021', '4-code-023']),
        (cautions.THIN_TAIL, ['4-code-021', '4-code-022']),
        (cautions.SHORT_SEAT, ['4-code-013', '4-code-014']),
        (cautions.SHORT_ON_MASONRY, ['4-code-014']),
        (cautions.SHALLOW_HIP, ['4-code-004']),
    ],
)
def test_a_cautions_clauses_are_those_of_the_code(caution, keys):
    """The clauses that the authority's file names for those values, no other, and what of them is from memory."""
    sources = [_code(key)['source'] for key in keys]
    told = ' '.join(sources).replace('R802.7.1(.1)', 'R802.7.1 R802.7.1.1')

    assert set(re.findall(r'R\d+[.\d]*\d', caution_source(caution))) == set(re.findall(r'R\d+[.\d]*\d', told))
    assert 'memory' in caution_source(caution) or 'memory' not in told
    assert ('4 in nominal' in caution_source(caution)) <= ('4-code-021' in keys)


def test_no_pitch_is_named_as_one_that_is_safe_to_stand_on():
    """Any roof is a fall: no limit is known, and the source says that there is none."""
    assert not re.search(r'\d', caution_text(cautions.STEEP))
    assert caution_source(cautions.STEEP) == 'common practice, no source'
