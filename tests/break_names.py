"""Breaks names one at a time and says how many a test catches. Run on demand; it is not part of the suite.

    python tests/break_names.py              every breakage of tests/breakages.toml
    python tests/break_names.py 3 17         some of them, by number
    python tests/break_names.py --list       what would be broken
    python tests/break_names.py --quick ...  only the tests named with a breakage, not the whole suite after them

Each breakage is one change of a name that a carpenter saws by: a head, a label, an arrow's end, a clause, a page number, a
flip edge, a key. It is made in a copy of the project, the tests named with it are run there, and if they let it pass, the
whole suite. A breakage whose old words are not in its file, or stand there more than once, is a fault of the list; tests
that fail with nothing broken catch nothing, so that those named are run once without a breakage.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import tempfile
import tomllib
from collections.abc import Sequence
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager
from functools import partial
from pathlib import Path

from msgspec import Struct

ROOT = Path(__file__).resolve().parent.parent
LIST = ROOT / 'tests' / 'breakages.toml'
LEFT_OUT = shutil.ignore_patterns('.git', '.venv', '__pycache__', '.hypothesis', '*_cache')
COPIES = 2
"""Breakages tried at once, one a core."""
WHOLE_SUITE = ()


class Breakage(Struct, frozen=True):
    """One name broken."""

    number: int
    what: str
    """What is broken, in words."""
    file: str
    old: str
    new: str
    tests: tuple[str, ...]
    """Test files that should catch it, tried first."""

    def fault(self) -> str:
        """Return why it cannot be made, '' if it can."""
        path = ROOT / self.file
        if not path.is_file():
            return f'there is no {self.file}'
        times = path.read_text('utf-8').count(self.old)
        missing = [test for test in self.tests if not (ROOT / test).is_file()]
        if times != 1:
            return f'its old words stand {times} times in {self.file}'
        if self.old == self.new or not self.tests or missing:
            return f'no test is named, or one that is not there: {missing}'
        return ''

    def make(self, folder: Path) -> None:
        """Break the name in a copy of the project."""
        path = folder / self.file
        path.write_text(path.read_text('utf-8').replace(self.old, self.new), 'utf-8')


def breakages(path: Path = LIST) -> list[Breakage]:
    """Return the breakages of a list, each of which can be made."""
    entries = enumerate(tomllib.loads(path.read_text('utf-8'))['break'], 1)
    found = [
        Breakage(number, one['what'], one['file'], one['old'], one['new'], tuple(one['tests']))
        for number, one in entries
    ]
    faults = [f'{one.number} {one.what}: {one.fault()}' for one in found if one.fault()]
    if faults:
        raise SystemExit('\n'.join(faults))
    return found


@contextmanager
def copied():
    """Give a copy of the project in a folder of its own."""
    with tempfile.TemporaryDirectory() as folder:
        copy = Path(folder) / 'project'
        shutil.copytree(ROOT, copy, ignore=LEFT_OUT)
        yield copy


def caught_by(one: Breakage, quick: bool) -> str:
    """Return the name of the first test that fails with the breakage made, '' if none does."""
    with copied() as copy:
        one.make(copy)
        return first_failure(copy, one.tests) or ('' if quick else first_failure(copy, WHOLE_SUITE))


def first_failure(folder: Path, tests: Sequence[str]) -> str:
    """Return the first test of some files, or of all, that fails in a folder, '' if none does."""
    words = [sys.executable, '-m', 'pytest', '-x', '-q', '-n', '0', '--no-header', '--tb=no', '-rfE', *tests]
    environment = {**os.environ, 'PYTHONPATH': str(folder), 'PYTHONDONTWRITEBYTECODE': '1'}
    done = subprocess.run(words, cwd=folder, env=environment, capture_output=True, text=True, check=False)
    failed = [
        line.split(' ')[1] for line in done.stdout.splitlines() if line.startswith(('FAILED ', 'ERROR '))
    ]
    if done.returncode and not failed:
        return f'pytest left with {done.returncode}'
    return failed[0] if failed else ''


def unbroken(chosen: Sequence[Breakage]) -> None:
    """Refuse to begin where a named test fails with nothing broken."""
    with copied() as copy:
        named = sorted({test for one in chosen for test in one.tests})
        failed = first_failure(copy, named)
    if failed:
        raise SystemExit(f'{failed} fails with nothing broken')


def main(words: list[str]) -> int:
    """Break the names that were asked for, or all, and tell each; exit status 1 where one passed unseen."""
    numbers, quick = {word for word in words if word.isdigit()}, '--quick' in words
    chosen = [one for one in breakages() if not numbers or str(one.number) in numbers]
    if '--list' in words:
        print(*(f'{one.number:3} {one.what} ({one.file})' for one in chosen), sep='\n')  # noqa: T201
        return 0
    unbroken(chosen)
    caught = 0
    with ThreadPoolExecutor(COPIES) as several:
        found = several.map(partial(caught_by, quick=quick), chosen)
        for one, test in zip(chosen, found, strict=True):
            caught += bool(test)
            print(f'{one.number:3} {"caught" if test else "PASSED"}  {one.what}  {test}', flush=True)  # noqa: T201
    print(f'{caught} of {len(chosen)} caught')  # noqa: T201
    return 0 if caught == len(chosen) else 1


if __name__ == '__main__':
    sys.exit(main(sys.argv[1:]))
