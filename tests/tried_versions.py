"""Tries versions of the libraries, and writes down those that were tested. Run on demand; it is not part of the suite.

    python tests/tried_versions.py lowest          the lowest version of each that pyproject.toml allows
    python tests/tried_versions.py newest          the newest of each
    python tests/tried_versions.py pypdf==5.1 ...  those versions, of all else the newest
    python tests/tried_versions.py --write         write .tested/: the newest of each, with the hashes of its files

Each is tried in an environment of its own: a compact book is made and read back, and tests that use every library run
there. `--python 3.13`, before them, takes another Python. What is installed is told, and what failed.
"""

from __future__ import annotations

import subprocess
import sys
import tempfile
import venv
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
TESTED = ROOT / '.tested'
TESTS = (
    'frame/test_frame_cutting', 'frame/test_frame_together', 'test_booklet', 'test_card_verb', 'test_columns',
    'test_find_schema', 'test_help_and_complete', 'test_language', 'test_make', 'test_make_fails', 'test_proof',
    'test_quick', 'test_read_back', 'test_sheets', 'test_typesetting', 'test_words', 'test_workers', 'test_written',
    'written/test_written_lengths',
)  # fmt: skip
"""Where the typesetter, its writer, the reader of PDF, fonts, templates, units, bars and completion are all used.

Types and style are not among them: they are held against the newest."""
LOCKING = (
    '--universal',
    '--fork-strategy=fewest',
    '--python-version=3.11',
    '--only-binary=:all:',
    '--upgrade',
)
PLAIN = ('--generate-hashes', '--no-header', '--no-annotate', '--quiet')


def main(words: list[str]) -> int:
    """Do what the words ask for; 1 where a version does not do."""
    python = words[1] if words[:1] == ['--python'] else '3.11'
    asked = words[2:] if words[:1] == ['--python'] else words
    if not asked:
        tell(__doc__)
        return 2
    with tempfile.TemporaryDirectory() as name:
        tools = Path(name) / 'tools'
        venv.create(tools, with_pip=True)
        run(tools / 'bin/python', '-m', 'pip', 'install', '--quiet', 'uv')
        return write(tools / 'bin/uv') if asked == ['--write'] else tried(asked, python, Path(name))


def write(uv: Path) -> int:
    """Write the versions and hashes of both levels of the setting up; those of the tests go on from the others."""
    builds = TESTED / 'make.in'
    builds.parent.mkdir(exist_ok=True)
    builds.write_text('setuptools\n', 'utf-8')  # builds the project, so that pip fetches nothing else for it
    for level, more in (('make', ()), ('test', ('--extra=test', f'--constraints={TESTED / "make.txt"}'))):
        out = TESTED / f'{level}.txt'
        run(uv, 'pip', 'compile', 'pyproject.toml', builds, *LOCKING, *PLAIN, *more, f'--output-file={out}')
    builds.unlink()
    return 0


def tried(asked: list[str], python: str, folder: Path) -> int:
    """Make a book and run tests with some versions."""
    uv, home = folder / 'tools/bin/uv', folder / 'tried'
    one = home / 'bin/python'
    run(uv, 'venv', '--quiet', '--no-python-downloads', f'--python={python}', home)
    lowest = ('--resolution=lowest-direct',) if asked == ['lowest'] else ()
    pinned = [] if asked in (['lowest'], ['newest']) else asked
    run(uv, 'pip', 'install', '--quiet', f'--python={one}', *lowest, '--editable', '.[test]', *pinned)
    listed = run(uv, 'pip', 'freeze', f'--python={one}', '--exclude-editable')
    tell(listed.replace('\n', ' '))
    book = folder / 'book'
    steps = {
        'making a book': ['-W', 'error::UserWarning', '-m', 'layouts.command', 'make', '--out', book],
        'reading it back': ['-m', 'layouts.command', 'proof', book / 'booklet.pdf'],
        'tests': ['-m', 'pytest', '-n', '0', *(f'tests/{name}.py' for name in TESTS)],
    }
    failed = 0
    for step, words in steps.items():
        done = subprocess.run([one, *words], cwd=ROOT, capture_output=True, text=True, check=False)
        said = (done.stdout + done.stderr).strip().splitlines()
        tell('\n  '.join([f'{step}: {"failed" if done.returncode else "passed"}', *said[-12:]]))
        failed |= bool(done.returncode)
    return failed


def tell(text: str) -> None:
    sys.stdout.write(f'{text}\n')
    sys.stdout.flush()


def run(*words: object) -> str:
    """Return what a command says; it ends this script where it fails."""
    done = subprocess.run([*map(str, words)], cwd=ROOT, capture_output=True, text=True, check=False)
    if done.returncode:
        sys.exit(f'{" ".join(map(str, words))}:\n{done.stdout}{done.stderr}')
    return done.stdout


if __name__ == '__main__':
    sys.exit(main(sys.argv[1:]))
