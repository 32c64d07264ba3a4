"""How the tests run: no deadline for one example, since two cores are shared with other work."""

import pytest
from hypothesis import settings
from made_books import SMALL, MadeBook, made

settings.register_profile('book', deadline=None, max_examples=80, print_blob=True)
settings.load_profile('book')


@pytest.fixture(scope='session')
def small_book(tmp_path_factory) -> MadeBook:
    """One book of three pitches, made once."""
    return made(SMALL, tmp_path_factory.mktemp('small'))
