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
from contextlib import suppress
from pathlib import Path
from time import monotonic, sleep

import pytest
from quick_books import FILES, QUICK, contents, names

pytestmark = pytest.mark.skipif(not sys.platform.startswith('linux'), reason='looks processes up in /proc')

MOST_SECONDS, LONGEST_WAIT_S = 2, 60
STATUSES = {signal.SIGINT: 130, signal.SIGTERM: 143, signal.SIGHUP: 129, signal.SIGKILL: -9}
"""As shells count them; Python tells a signal that nothing heard by its negative."""


def make(folder: Path) -> subprocess.Popen[str]:
    """Begin a build in a session of its own, so that its processes can be told, as the terminal's job would be."""
    surroundings = os.environ | {'TMPDIR': str(folder / 'passing'), 'XDG_CACHE_HOME': str(folder / 'kept')}
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


def waited(process: int) -> float:
    """Return the seconds for which a process has wanted a core and had none; of one that is gone nothing more is known."""
    try:
        return int(Path(f'/proc/{process}/schedstat').read_text().split()[1]) / 1e9
    except (OSError, IndexError):
        return 0


def seconds_to_end(session: int) -> float:
    """Return how long a session's processes still are there, less what the machine kept them, and this one, waiting.

    Other programs may have the cores: what the command itself takes is asked. Of working processes, which end side by
    side, the one that waited longest counts.
    """
    began, own = monotonic(), os.getpid()
    before = {one: waited(one) for one in (own, *alive(session))}
    after = dict(before)
    while (left := alive(session)) and monotonic() - began < LONGEST_WAIT_S:
        after |= {one: max(waited(one), after.get(one, 0)) for one in (own, *left)}
        sleep(0.01)
    after[own] = waited(own)
    kept = {one: after[one] - before.get(one, 0) for one in after}
    workers = [seconds for one, seconds in kept.items() if one not in (own, session)]
    return monotonic() - began - kept[own] - kept.get(session, 0) - max(workers, default=0)


@pytest.fixture(scope='module')
def whole(tmp_path_factory) -> tuple[dict[str, bytes], float, float]:
    """A book, the seconds that Python and the command take to begin, and those to the end."""
    folder = tmp_path_factory.mktemp('whole')
    began = monotonic()
    subprocess.run([sys.executable, '-m', 'layouts.command', '--help'], stdout=subprocess.DEVNULL, check=True)
    begun = monotonic() - began
    prepared(folder)
    began = monotonic()
    remarks = make(folder).communicate()[1]
    assert remarks.startswith('made in')
    return contents(folder / 'output'), begun, monotonic() - began


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
    with suppress(subprocess.TimeoutExpired):
        process.wait(after)
    if process.poll() is None:
        (os.killpg if to_all else os.kill)(process.pid, sent)
    assert seconds_to_end(process.pid) < MOST_SECONDS
    assert not alive(process.pid), 'they outlive their command'
    remarks = process.communicate()[1]
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
    """Return moments of a build, as parts of the time it takes once it has begun, and whether an earlier book is there."""
    picked = random.Random(7)
    return [(picked.uniform(0, 1), place % 2 == 0) for place in range(count)]


@pytest.mark.parametrize('sent', [signal.SIGINT, signal.SIGTERM, signal.SIGKILL])
def test_a_command_that_is_stopped_leaves_a_whole_book(sent, whole, tmp_path):
    book, begun, seconds = whole
    check(tmp_path, sent, begun + (seconds - begun) * 0.6, True, book)


@pytest.mark.thorough
@pytest.mark.parametrize('sent', STATUSES)
@pytest.mark.parametrize(('part', 'earlier'), moments(100))
def test_at_any_moment(sent, part, earlier, whole, tmp_path):
    book, begun, seconds = whole
    check(tmp_path, sent, begun + (seconds - begun) * part, earlier, book)


IN_A_BLOCK = """
import os, signal, threading, time
from layouts.pdf.leaving import clearing, stoppable, stops_held_back
threading.Thread(target=time.sleep, args=(9,), daemon=True).start()
with stoppable(lambda: print('told', flush=True)), clearing(lambda: print('cleared', flush=True)):
    with stops_held_back():
        os.kill(os.getpid(), signal.SIGTERM)
        time.sleep(0.2)
        print('whole', flush=True)
    print('more', flush=True)
"""


def test_a_stop_that_another_thread_takes_waits_for_the_block_too():
    """Else a working process that has just begun, and is not known yet, would outlive its command."""
    made = subprocess.run([sys.executable, '-c', IN_A_BLOCK], capture_output=True, text=True, check=False)

    assert (made.returncode, made.stdout.split()) == (128 + signal.SIGTERM, ['whole', 'cleared', 'told'])
