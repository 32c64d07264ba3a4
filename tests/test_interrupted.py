"""A command that is stopped: Ctrl-C, a polite signal, a killed process, at any moment of a build.

The earlier book or the new one stands there, whole; the command is gone in two seconds, its working processes and passing
files with it. Only after SIGKILL a hidden folder may be left, which the next command into that folder clears.
"""

from __future__ import annotations

import os
import random
import signal
import subprocess
import sys
from pathlib import Path
from time import monotonic, sleep

import pytest
from quick_books import FILES, QUICK, contents, names

pytestmark = pytest.mark.skipif(not sys.platform.startswith('linux'), reason='looks processes up in /proc')

MOST_SECONDS = 2
STATUSES = {signal.SIGINT: 130, signal.SIGTERM: 143, signal.SIGHUP: 129, signal.SIGKILL: -9}
"""As shells count them; Python tells a signal that nothing heard by its negative."""


def make(folder: Path) -> subprocess.Popen[str]:
    """Begin a build in a session of its own, so that its processes can be told, as the terminal's job would be."""
    surroundings = os.environ | {'TMPDIR': str(folder / 'passing')}
    words = [sys.executable, '-m', 'layouts.command', 'make', str(folder / 'book.toml'), '--out']
    return subprocess.Popen(
        [*words, str(folder / 'output')],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
        env=surroundings,
        start_new_session=True,
    )


def alive(session: int) -> list[int]:
    """Return the processes of a session that are not over."""
    found = []
    for entry in Path('/proc').glob('[0-9]*'):
        try:
            state, _, _, its_session = (entry / 'stat').read_text().rpartition(')')[2].split()[:4]
        except OSError:  # gone meanwhile
            continue
        if int(its_session) == session and state not in 'ZX':
            found.append(int(entry.name))
    return found


def until(true, seconds: float) -> bool:
    end = monotonic() + seconds
    while not (found := true()) and monotonic() < end:
        sleep(0.01)
    return bool(found)


@pytest.fixture(scope='module')
def whole(tmp_path_factory) -> tuple[dict[str, bytes], float]:
    """A book, and the seconds that it takes."""
    folder = tmp_path_factory.mktemp('whole')
    began = monotonic()
    prepared(folder)
    remarks = make(folder).communicate()[1]
    assert remarks.startswith('made in')
    return contents(folder / 'output'), monotonic() - began


def prepared(folder: Path, earlier: bool = False) -> dict[str, bytes]:
    """Put settings, a folder for passing files and perhaps an earlier book into a folder, and return that book."""
    (folder / 'passing').mkdir()
    (folder / 'book.toml').write_text(QUICK)
    if earlier:
        (folder / 'output').mkdir()
        for name in FILES:
            (folder / 'output' / name).write_text(f'an earlier {name}')
    return contents(folder / 'output') if earlier else {}


def stopped(folder: Path, sent: signal.Signals, after: float, to_all: bool) -> tuple[int, str]:
    """Begin a build, send a signal so many seconds later, and return its status and remarks."""
    process = make(folder)
    until(lambda: process.poll() is not None, after)
    if process.poll() is None:
        (os.killpg if to_all else os.kill)(process.pid, sent)
    sent_at = monotonic()
    remarks = process.communicate()[1]
    gone = until(lambda: not alive(process.pid), MOST_SECONDS - (monotonic() - sent_at))
    assert gone, f'{alive(process.pid)} outlive their command'
    return process.returncode, remarks


def check(folder: Path, sent: signal.Signals, after: float, earlier: bool, whole: dict[str, bytes]) -> None:
    before = prepared(folder, earlier)
    status, remarks = stopped(folder, sent, after, to_all=sent == signal.SIGINT)

    assert status in (0, STATUSES[sent])
    assert 'Traceback' not in remarks
    if status not in (0, -signal.SIGKILL):
        assert remarks == 'rafterbook: stopped\n'
    out = folder / 'output'
    if sent == signal.SIGKILL:
        assert make(folder).communicate()[1].startswith('made in')
        before = whole
    assert names(folder / 'passing') == []
    found = contents(out) if out.exists() else {}
    assert found in (before, whole), sorted(found)
    assert out.exists() == bool(found)


def moments(count: int) -> list[tuple[float, bool]]:
    """Return moments of a build, as parts of the time it takes, and whether an earlier book is there."""
    picked = random.Random(7)
    return [(picked.uniform(0.1, 1), place % 2 == 0) for place in range(count)]


@pytest.mark.parametrize('sent', [signal.SIGINT, signal.SIGTERM, signal.SIGKILL])
def test_a_command_that_is_stopped_leaves_a_whole_book(sent, whole, tmp_path):
    book, seconds = whole
    check(tmp_path, sent, seconds * 0.6, True, book)


@pytest.mark.thorough
@pytest.mark.parametrize('sent', STATUSES)
@pytest.mark.parametrize(('part', 'earlier'), moments(100))
def test_at_any_moment(sent, part, earlier, whole, tmp_path):
    book, seconds = whole
    check(tmp_path, sent, seconds * part, earlier, book)
