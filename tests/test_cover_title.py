"""The size of a cover's title."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layouts.pages.cover_title import ROOM_REM, SIZES_REM, title_size
from tablegen.written.keys import LONGEST_NAME


@pytest.mark.parametrize(
    ('title', 'size'),
    [('Rafter Tables', 3.6), ('A', 3.6), ('The Garden Store and Its Porch', 2.4), ('W' * LONGEST_NAME, 1.5)],
)
def test_title_size(title, size):
    assert title_size(title) == size


@given(st.text(st.characters(min_codepoint=32, max_codepoint=0x17F), max_size=LONGEST_NAME))
def test_a_longer_title_is_never_larger(title):
    assert title_size(f'{title}W') <= title_size(title)
    assert title_size(title) in SIZES_REM
    assert title_size(title) <= ROOM_REM
