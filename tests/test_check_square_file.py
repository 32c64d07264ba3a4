"""A file of what a square shows: read in any order, refused with row and column."""

from fractions import Fraction

import pytest

from layouts.words.error import error_line, error_lines
from tablegen.checking.square_file import read_square
from tablegen.errors import BookError

OLD_SQUARE = """rise,common,hip_valley,jack_16,jack_24,jack_cheek,hip_cheek
8,14.42,18.78,19.23,28.84,10,10 7/8
17,20.81,24.04,27.74,41.62,6 15/16,8 1/2
18,21.63,24.75,28.84,43.27,6 11/16,8 1/4
"""


def test_columns_may_stand_in_any_order_and_cells_be_empty():
    rows = read_square(
        'HIP_VALLEY, rise,common,jack_24,jack_16,hip_cheek,jack_cheek\n18.76,8,,,,,\n', 'a.csv'
    )

    assert [(row.rise, [one and one.inches for one in row.cells]) for row in rows] == [
        (8, [None, Fraction('18.76'), None, None, None, None])
    ]


LENGTHS = 'a length such as 4 ft, 4\' 7 1/2", 55.5 in, 55 1/2 (inches), 1.4 m or 1400 mm'
COLUMNS_ALLOWED = 'rise, common, hip_valley, jack_16, jack_24, jack_cheek, hip_cheek'
BLANK = 'next: rafterbook check square --blank prints one to fill in'


@pytest.mark.parametrize(
    ('content', 'said'),
    [
        (
            OLD_SQUARE.replace('jack_16,', ''),
            f"mine.csv: row 1: the column 'jack_16' is missing; allowed: {COLUMNS_ALLOWED}; {BLANK}",
        ),
        (
            OLD_SQUARE.replace('jack_16,', 'jack_16,jack_19,'),
            f"mine.csv: row 1, column 5: 'jack_19' is unknown; allowed: {COLUMNS_ALLOWED}; {BLANK}",
        ),
        (
            OLD_SQUARE.replace('jack_16,', 'jack_16,jack_16,'),
            "mine.csv: row 1, column 5: 'jack_16' is there twice; allowed: each column once",
        ),
        (
            OLD_SQUARE.replace('\n17,', '\n25,'),
            "mine.csv: row 3, column 'rise': '25' is off the table; allowed: whole inches per foot, 1 to 24",
        ),
        (
            OLD_SQUARE.replace('\n17,', '\n17 1/2,'),
            "mine.csv: row 3, column 'rise': '17 1/2' is off the table; allowed: whole inches per foot, 1 to 24",
        ),
        (
            OLD_SQUARE.replace('\n17,', '\n8,'),
            "mine.csv: row 3, column 'rise': the rise 8 is there twice; allowed: each rise once",
        ),
        (
            OLD_SQUARE.replace('24.04', '24,04'),
            'mine.csv: row 3: 8 cells under 7 columns; '
            'allowed: a cell a column, empty where the square shows nothing',
        ),
        (
            OLD_SQUARE.replace('24.04', 'worn'),
            f"mine.csv: row 3, column 'hip_valley': 'worn' is no length; allowed: {LENGTHS}",
        ),
        (
            OLD_SQUARE.replace('24.04', '0'),
            "mine.csv: row 3, column 'hip_valley': '0' is no figure of a square; allowed: above 0; "
            'next: leave the cell empty',
        ),
        (
            '',
            f'mine.csv: is empty; allowed: a header {COLUMNS_ALLOWED.replace(", ", ",")} and a row a rise; {BLANK}',
        ),
        (
            OLD_SQUARE.partition('\n')[0] + '\n8,,,,,,\n',
            f'mine.csv: has no figure in it; allowed: at least one filled cell; {BLANK}',
        ),
    ],
)
def test_a_file_that_cannot_be_judged_is_refused_in_one_line(content, said):
    with pytest.raises(BookError) as caught:
        read_square(content, 'mine.csv')
    assert error_line(caught.value) == said
    assert len(error_lines(caught.value)) == 1
