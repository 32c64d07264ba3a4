"""How the tests run: no deadline for one example, since two cores are shared with other work."""

from pathlib import Path

import pytest
from hypothesis import settings
from made_books import SMALL, MadeBook, made
from quick_books import QUICK
from skewed import SkewedBook, skewed_book

settings.register_profile('book', deadline=None, max_examples=80, print_blob=True)
settings.load_profile('book')


@pytest.fixture(scope='session')
def small_book(tmp_path_factory) -> MadeBook:
    """One book of three pitches, made once."""
    return made(SMALL, tmp_path_factory.mktemp('small'))


@pytest.fixture(scope='session')
def skewed(tmp_path_factory) -> SkewedBook:
    """The skewed book, made once a worker."""
    return skewed_book(tmp_path_factory.mktemp('skewed'))


@pytest.fixture
def quick(tmp_path, monkeypatch) -> Path:
    """A folder to work in, with the settings of a short book in it."""
    (tmp_path / 'book.toml').write_text(QUICK)
    monkeypatch.chdir(tmp_path)
    return tmp_path
