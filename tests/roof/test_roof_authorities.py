"""Published tables and worked examples, row by row, at the precision that they printed.

Sources: Griffith, Carpentry, 1916, figures 49 and 60 and examples; NAVEDTRA 14044; US Army EN0069; PS 20; and
customary engraved figures, from memory. No tolerance is wider than a source's own last digit: a row that
differs is listed in authorities/differences.toml with theirs, ours and why, and the list may hold no other.
"""

import authorities
import pytest

from tablegen import lumber
from tablegen.lengths import number

FILES = (
    'griffith-1916-fig49',
    'griffith-1916-fig60',
    'griffith-1916-examples',
    'navedtra-14044',
    'army-en0069',
    'engraved-figures',
)
ROWS = [(file, row) for file in FILES for row in authorities.rows(file)]
LISTED = {(one['file'], one['id']): one for one in authorities.differences()}


@pytest.mark.parametrize(('file', 'row'), ROWS, ids=[f'{file} {row["id"]}' for file, row in ROWS])
def test_a_row(file, row):
    ours, per = authorities.ours(file, row)
    agrees = authorities.count(ours, per) == authorities.printed_count(row, per)

    assert agrees == ((file, row['id']) not in LISTED)


@pytest.mark.parametrize('key', LISTED, ids=' '.join)
def test_a_listed_difference_says_theirs_ours_and_why(key):
    (row,) = [row for file, row in ROWS if (file, row['id']) == key]
    one = LISTED[key]

    assert one['theirs'] == row['printed']
    assert one['quantity'] == row['quantity']
    assert one['ours'] == authorities.text_of(*authorities.ours(key[0], row))
    assert len(one['why']) > 20


def test_there_are_enough_rows():
    """Every number of the six files: 18 rises of two tables, the examples, the engraved lines."""
    assert len(ROWS) > 280
    assert len(LISTED) < len(ROWS) / 8


def test_no_source_error_goes_unlisted():
    """A row that its keeper marked as wrong is a difference here too."""
    marked = {
        (file, row['id']) for file, row in ROWS if row['status'] in ('off', 'misprint', 'convention-17')
    }

    assert marked
    assert marked <= set(LISTED)


def _standard(quantity):
    rows = authorities.tomllib.loads((authorities.FOLDER / 'ps20-lumber.toml').read_text('utf-8'))['value']
    dry = {
        row['given']['nominal_in']: number(row['printed'].split(' (')[0])
        for row in rows
        if row['quantity'] == quantity
    }
    assert dry
    return dry


def test_dressed_sizes_are_the_standards():
    widths = _standard('width, dressed dry (green)')
    thick = _standard('dimension thickness, dressed dry (green)')

    assert [size.name for size in lumber.SIZES] == ['2×4', '2×6', '2×8', '2×10', '2×12']
    for size in lumber.SIZES:
        nominal_thickness, nominal_width = size.name.split('×')
        assert size.thickness_in == thick[nominal_thickness]
        assert size.depth_in == widths[nominal_width]


def test_thicknesses_are_the_standards():
    known = {
        *_standard('board thickness, dressed dry (green)').values(),
        *_standard('dimension thickness, dressed dry (green)').values(),
        *_standard('width, dressed dry (green)').values(),
    }

    assert set(lumber.THICKNESSES_IN) <= known
    assert (min(lumber.THICKNESSES_IN), max(lumber.THICKNESSES_IN)) == (number('3/4'), number('5 1/2'))


@pytest.mark.parametrize('written', ['2x8', '2×8', '2 X 8', ' 2x8 '])
def test_stock_is_known_by_its_name(written):
    assert lumber.stock(written).depth_in == number('7 1/4')


def test_unknown_stock_is_refused():
    with pytest.raises(lumber.BookError) as refused:
        lumber.stock('2x7')

    assert str(refused.value) == (
        "stock: '2x7' is no size of rafter stock; allowed: 2×4, 2×6, 2×8, 2×10, 2×12"
    )
