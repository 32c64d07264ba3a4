"""What is given twice, or in two ways, is refused: never is the last one taken."""

from __future__ import annotations

import io

import pytest

from layouts.command import main
from layouts.words.error import error_lines
from tablegen.checking.square_figures import KEYS
from tablegen.checking.square_file import read_square
from tablegen.errors import BookError
from tablegen.settings import read_settings


@pytest.mark.parametrize(
    ('file', 'said'),
    [
        ('title = "a"\ntitle = "b"', 'mine: cannot be read as TOML: Cannot overwrite a value (at'),
        ('[runs]\nby = 1\n[runs]\nby = 2', 'mine: cannot be read as TOML: Cannot declare'),
        (
            '"runs.by" = "2 in"\n[runs]\nby = "1 in"',
            'mine: runs.by: is given twice, as a key of its own and in a table; next: leave one of the two out',
        ),
        ('[stock]\nseat = 3\n"seat" = 4', 'mine: cannot be read as TOML: Cannot overwrite a value (at'),
    ],
)
def test_a_key_of_a_settings_file(file, said):
    with pytest.raises(BookError) as caught:
        read_settings(file, 'mine')

    (line,) = error_lines(caught.value)
    assert line.startswith(said)


@pytest.mark.parametrize(
    ('words', 'said'),
    [
        ('find 6 9ft --format json --format text', 'rafterbook find: --format is given twice'),
        ('find 6 9ft --format=json --format=json', 'rafterbook find: --format is given twice'),
        ('find 6 9ft --all --all', 'rafterbook find: --all is given twice'),
        ('find 6 9ft --steep --steep', 'rafterbook find: --steep is given twice'),
        ('find 6 9ft --seat 3 --seat 4', 'rafterbook find: --seat is given twice'),
        ('find 6 9ft --all --show seat', 'rafterbook: --show: picks, and --all shows everything'),
        ('find 6 9ft --corner 135 --sides 8', 'rafterbook: --sides: asks about'),
        ('diagonal 9 8 --reads 12 12 --reads 12 12', 'rafterbook diagonal: --reads is given twice'),
        ('pitch --degrees 30 --rise 5 --run 9', 'rafterbook: pitch: these measures do not make a pitch'),
        ('pitch --rise 5 --run 9 --length 12', 'rafterbook: pitch: these measures do not make a pitch'),
        ('data --tables --table hips', 'rafterbook: --tables: does not go with --table'),
        ('data --table hips --runs 9', 'rafterbook: --runs: a reference table has no runs'),
        ('check length --pitch 6 --run 9 --spacing 9 --reads 9', 'rafterbook: --run: stands for common'),
        ('check square --blank --reads -', 'rafterbook: --blank: does not go with --reads'),
        (
            'check corner --along 9 9 --along 8 8 --diagonal 9',
            'rafterbook check corner: --along is given twice',
        ),
        ('make --plan --plan', 'rafterbook make: --plan is given twice'),
    ],
)
def test_an_option(words, said):
    out, err = io.StringIO(), io.StringIO()

    assert main(words.split(), out, err) == 2
    assert err.getvalue().startswith(said)
    assert out.getvalue() == ''


def test_a_column_and_a_row_of_a_table():
    twice = [*KEYS[:-1], KEYS[0]]
    for rows, said in (
        (f'rise,{",".join([*twice, KEYS[-1]])}\n', "mine: row 1, column 7: 'common' is there twice"),
        (
            f'rise,{",".join(KEYS)}\n6,1,1,1,1,1,1\n6,2,2,2,2,2,2\n',
            "mine: row 3, column 'rise': the rise 6 is there twice",
        ),
    ):
        with pytest.raises(BookError) as caught:
            read_square(rows, 'mine')
        assert error_lines(caught.value)[0].startswith(said)
