"""Working processes: what they need is prepared once, what they take is counted, none is left."""

from __future__ import annotations

import os
import subprocess
import sys
from functools import partial
from pathlib import Path
from threading import Timer
from time import monotonic, process_time, sleep

import pytest
from quick_books import QUICK, contents
from refused import refused

from layouts.pdf import workers
from layouts.pdf.workers import crew
from tablegen.errors import BookError

pytestmark = pytest.mark.skipif(
    not sys.platform.startswith('linux'), reason='elsewhere a process cannot divide'
)
CORES = 3


@pytest.fixture(autouse=True)
def cores(monkeypatch) -> None:
    monkeypatch.setattr(workers, 'cores', lambda: CORES)


def write_down(folder: Path, name: str) -> None:
    (folder / f'{name}-{os.getpid()}').touch()


def written_down(folder: Path, name: str) -> set[int]:
    """Return the processes that have written something down."""
    return {int(one.name.rpartition('-')[2]) for one in folder.glob(f'{name}-*')}


def prepared(folder: Path, seconds: float):
    """Return work that lasts, after its process is written down."""
    write_down(folder, 'prepared')

    def work(item, tell):
        write_down(folder, 'work')
        sleep(seconds)
        tell(item)

    return work


def are_gone(processes: set[int]) -> bool:
    """Return whether processes are over; the system may still be clearing up what they had."""
    began = monotonic()
    while any(map(is_there, processes)) and monotonic() - began < 1:
        sleep(0.001)
    return not any(map(is_there, processes))


def is_there(process: int) -> bool:
    try:
        return Path(f'/proc/{process}/stat').read_text().rpartition(')')[2].split()[0] not in 'ZX'
    except OSError:
        return False


def test_what_is_needed_is_prepared_once_and_every_process_has_it(tmp_path):
    """Each waits for all others, so that none does the work of two."""

    def waiting():
        write_down(tmp_path, 'prepared')

        def work(item, tell):
            write_down(tmp_path, 'work')
            while len(written_down(tmp_path, 'work')) < CORES:
                sleep(0.01)
            tell(item)

        return work

    told: list[int] = []
    with crew(waiting) as those:
        those.do(range(2 * CORES), told.append)

    assert sorted(told) == [*range(2 * CORES)]
    assert len(written_down(tmp_path, 'prepared')) == 1
    assert len(written_down(tmp_path, 'work')) == CORES
    assert are_gone(written_down(tmp_path, 'work'))


def test_processes_that_are_at_work_end_with_the_block(tmp_path):
    began = monotonic()

    def items():
        yield from range(CORES)
        while len(written_down(tmp_path, 'work')) < CORES:
            sleep(0.01)
        raise ZeroDivisionError

    with pytest.raises(ZeroDivisionError), crew(partial(prepared, tmp_path, 60)) as those:
        those.do(items(), int)

    assert monotonic() - began < 30
    assert are_gone(written_down(tmp_path, 'work'))


def test_processes_that_prepare_end_with_the_block(tmp_path):
    def slowly():
        write_down(tmp_path, 'prepared')
        sleep(60)

    with crew(slowly):
        while not written_down(tmp_path, 'prepared'):
            sleep(0.01)

    assert are_gone(written_down(tmp_path, 'prepared'))


def test_what_fails_in_preparing_comes_home(tmp_path):
    def lacking():
        raise BookError('typesetter', 'is not there')

    with refused('typesetter: is not there'), crew(lacking) as those:
        those.do([1], int)


def test_a_process_that_was_ended_while_it_had_nothing_to_do_is_told(monkeypatch):
    """What is sent to it then is a broken pipe, which must not be taken for a reader who has left."""
    monkeypatch.setattr(workers, 'cores', lambda: 1)

    def ended():
        return lambda item, tell: Timer(0.05, os._exit, (1,)).start()

    def items():
        yield 1
        sleep(0.3)
        yield 2

    with refused('a process that was setting pages was ended'), crew(ended) as those:
        those.do(items(), int)
    with crew(ended) as those:  # and after the last there is nothing to tell
        those.do([1], int)
        sleep(0.3)


def test_what_all_processes_take_is_counted_as_this_ones():
    def busy():
        def work(item, tell):
            until = process_time() + item
            while process_time() < until:
                pass

        return work

    def taken() -> float:
        return sum(os.times()[2:4])

    before = taken()
    with crew(busy) as those:
        those.do([0.1] * CORES, int)

    assert taken() - before >= 0.1 * CORES


APART = """
import sys
from layouts.pdf import workers
if __name__ == '__main__':
    from layouts.command import main
    workers.FORKS = sys.argv[1] == 'divided'
    sys.exit(main(['make', 'book.toml', '--fresh', '--no-proof', '--out', sys.argv[1]]))
"""


def test_where_no_process_can_divide_the_book_is_the_same(tmp_path):
    """Each process is begun by itself there, and has loaded nothing."""
    (tmp_path / 'book.toml').write_text(QUICK)
    (tmp_path / 'apart.py').write_text(APART)
    surroundings = os.environ | {'PYTHONPATH': str(Path(__file__).parent.parent)}
    for folder in ('divided', 'apart'):
        command = [sys.executable, 'apart.py', folder]
        subprocess.run(command, cwd=tmp_path, env=surroundings, check=True, capture_output=True)

    assert contents(tmp_path / 'apart') == contents(tmp_path / 'divided')
