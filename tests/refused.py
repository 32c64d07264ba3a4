"""Errors of tablegen in words: what a test demands of them is what a user reads."""

from __future__ import annotations

import re
from collections.abc import Iterator
from contextlib import contextmanager

import pytest

from layouts.words.error import error_line
from tablegen.errors import BookError


@contextmanager
def refused(words: str) -> Iterator[pytest.ExceptionInfo[BookError]]:
    """Demand an error whose line matches a pattern."""
    with pytest.raises(BookError) as caught:
        yield caught
    assert re.search(words, error_line(caught.value))
