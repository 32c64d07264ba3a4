"""How the tests run: no deadline for one example, since two cores are shared with other work."""

import gc
import os
import socket
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import settings
from made_books import OPENINGS, SMALL, MadeBook, made_once, shared
from quick_books import QUICK
from skewed import SKEWED, SkewedBook

from layouts.pdf.typeset import load_typesetter

settings.register_profile('book', deadline=None, max_examples=40, print_blob=True)
settings.load_profile('book')
load_typesetter()  # processes that set documents are divided off from this one, and have it then
gc.set_threshold(100_000, 50, 50)  # books are kept for the whole run: there is little rubbish to look for


@pytest.fixture(scope='session', autouse=True)
def kept_documents(tmp_path_factory) -> None:
    """Let the books of a run, in whatever process, share the documents that are alike; nothing of a user's is taken or left."""
    os.environ['XDG_CACHE_HOME'] = str(shared(tmp_path_factory) / 'kept')


@pytest.fixture
def set_anew(monkeypatch) -> None:
    """Have every document of a book set."""
    monkeypatch.setenv('XDG_CACHE_HOME', os.path.join(os.devnull, 'none'))


@pytest.fixture(scope='session')
def small_book(tmp_path_factory) -> MadeBook:
    """One book of three pitches, made once a run."""
    return made_once(SMALL, tmp_path_factory)


@pytest.fixture(scope='session')
def skewed(tmp_path_factory) -> SkewedBook:
    """The skewed book, made once a run."""
    return SkewedBook(made_once(SKEWED, tmp_path_factory))


@pytest.fixture(scope='session')
def openings(tmp_path_factory) -> MadeBook:
    """A compact edition of every pitch, made once a run."""
    return made_once(OPENINGS, tmp_path_factory)


@pytest.fixture(scope='module')
def no_network() -> Iterator[None]:
    """Forbid sockets but those between processes of this machine: nothing that is written anywhere may make the command reach out."""
    real, within = socket.socket, getattr(socket, 'AF_UNIX', None)

    def refuse(*words, **options):
        if words and words[0] == within is not None:
            return real(*words, **options)
        raise AssertionError('a socket was asked for')

    with pytest.MonkeyPatch.context() as patched:
        for name in ('socket', 'create_connection', 'getaddrinfo'):
            patched.setattr(socket, name, refuse)
        yield


@pytest.fixture
def quick(tmp_path, monkeypatch) -> Path:
    """A folder to work in, with the settings of a short book in it."""
    (tmp_path / 'book.toml').write_text(QUICK)
    monkeypatch.chdir(tmp_path)
    return tmp_path
