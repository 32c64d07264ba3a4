"""Whatever is written, a check answers or refuses; and the verb is quick to load."""

import subprocess
import sys

import pytest
from check_support import run_check
from hypothesis import given, settings
from hypothesis import strategies as st

from layouts.words.error import error_line
from tablegen.checking.square_file import HEADER, read_square
from tablegen.checking.written import written
from tablegen.errors import BookError

SCRAPS = st.lists(
    st.sampled_from(
        [
            '0',
            '1',
            '13',
            '3/8',
            '1/0',
            '.5',
            '.',
            ' ',
            '-',
            'ft',
            'in',
            "'",
            '"',
            'mm',
            'm',
            '⅜',
            '½',
            '\n',
            ',',
            'e9',
            '٣',
        ]
    ),
    max_size=7,
).map(''.join)


def answer(function, *given):
    """Return what a function returns and no refusal, or nothing and its refusal."""
    try:
        return function(*given), None
    except BookError as fault:
        return None, fault


@settings(max_examples=100, deadline=None)
@given(SCRAPS)
def test_any_reading_is_a_length_or_is_refused(scrap):
    read, fault = answer(written, scrap, '--reads')
    if fault:
        assert fault.place == '--reads'
    else:
        assert read.part.inches > 0
        assert abs(read.inches - read.figure.count * read.part.inches) <= read.part.inches / 2


@settings(max_examples=80, deadline=None)
@given(st.lists(SCRAPS, max_size=8).map(','.join), st.booleans())
def test_any_file_is_read_or_refused(scrap, headed):
    rows, fault = answer(read_square, f'{",".join(HEADER)}\n{scrap}' if headed else scrap, 'mine.csv')
    if fault:
        assert error_line(fault).startswith('mine.csv')
    else:
        assert all(row.rise in range(1, 25) for row in rows)


@pytest.mark.parametrize('pitch', ['30 deg', '26.565 deg', '7 1/2', '4:12'])
def test_any_pitch_can_be_checked(pitch):
    assert run_check('length', '--pitch', pitch, '--run', '12', '--reads', '13.5')[0] in (0, 1)
    assert run_check('steps', '--pitch', pitch, '--run', '12 ft')[0] in (0, 1)


def test_the_verb_imports_nothing_slow():
    asked = (
        'import sys, layouts.verbs.check; print(sorted({"pint", "jinja2", "weasyprint"} & set(sys.modules)))'
    )
    answered = subprocess.run([sys.executable, '-c', asked], capture_output=True, text=True, check=True)

    assert answered.stdout == '[]\n'
