"""The command as a whole: verbs, help, mistakes, broken outputs, and what a look-up may import."""

from __future__ import annotations

import os
import re
import shlex
import subprocess
import sys
import tomllib
from io import StringIO
from pathlib import Path

import pytest
from asking import ask
from hypothesis import given
from hypothesis import strategies as st

from layouts.command import main
from layouts.verbs import VERBS

ROOT = Path(__file__).parent.parent
LOOK_UPS = ('find', 'pitch', 'diagonal', 'brace', 'check', 'data', 'settings', 'help', 'complete')
FIND_OPTIONS = (
    '--format, --all, --show, --nearest, --lengths, --spacing, --stock, --hip-stock, --valley-stock, --seat, '
    '--overhang, --plate-length, --ridge-thickness, --hip-thickness, --valley-thickness, --rafter-thickness, --with, '
    '--corner, --sides, --shed, --ledger-thickness, --run-to, --steep'
)
SLOW = {'pint', 'jinja2', 'shtab', 'weasyprint', 'pypdf', 'pydyf', 'tqdm'}
EXAMPLE_HEADING = re.compile(r'^examples?:$', re.MULTILINE)


@pytest.fixture(autouse=True)
def _eighty_columns(monkeypatch):
    monkeypatch.setenv('COLUMNS', '80')


def examples_of(verb: str) -> list[str]:
    """Return the lines that the help of a verb ends with."""
    status, told, remarks = ask(verb, '--help')
    assert (status, remarks) == (0, '')
    return [line.strip() for line in EXAMPLE_HEADING.split(told)[-1].strip().splitlines()]


def started(*words: str, **settings) -> subprocess.Popen:
    """Return the command as a process of its own, which hides no complaint of the interpreter's."""
    pipes = {'stdout': subprocess.PIPE, 'stderr': subprocess.PIPE} | settings
    return subprocess.Popen([sys.executable, '-X', 'dev', '-m', 'layouts.command', *words], cwd=ROOT, **pipes)


def test_alone_it_lists_its_verbs():
    status, told, remarks = ask()

    assert (status, remarks) == (0, '')
    assert list(VERBS) == re.findall(r'^    ([a-z]+) ', told, re.MULTILINE)
    assert ask('--help') == (status, told, remarks)


def test_version_is_the_projects():
    project = tomllib.loads((ROOT / 'pyproject.toml').read_text('utf-8'))['project']
    assert ask('--version') == (0, f'rafterbook {project["version"]}\n', '')


@pytest.mark.parametrize('verb', VERBS)
def test_help_ends_with_examples_and_fits_a_terminal(verb):
    examples = examples_of(verb)

    assert examples
    assert all(example.startswith(f'rafterbook {verb}') for example in examples)
    assert all(len(line) <= 80 for line in ask(verb, '--help')[1].splitlines())


@pytest.mark.parametrize('verb', LOOK_UPS)
def test_examples_run(verb, tmp_path, monkeypatch):
    for example in examples_of(verb):
        words = shlex.split(example.partition(' > ')[0])[1:]
        monkeypatch.chdir(tmp_path)
        status, told, remarks = ask(*words)
        assert status in ((0, 1) if verb == 'check' else (0,))
        assert told
        assert remarks == ''


@pytest.mark.parametrize(
    ('words', 'line'),
    [
        (
            ['fnd'],
            f"rafterbook: 'fnd' is no verb; allowed: {', '.join(VERBS)}; next: did you mean find?",
        ),
        (
            ['--verbose'],
            f"rafterbook: '--verbose' is no verb; allowed: {', '.join(VERBS)}; next: see rafterbook --help",
        ),
        ([''], f"rafterbook: '' is no verb; allowed: {', '.join(VERBS)}; next: see rafterbook --help"),
        (['find'], 'rafterbook find: PITCH and RUN are missing; next: see rafterbook find --help'),
        (
            ['find', '6', '4', '--nearest', '1/8', '--nearest', '1/4'],
            'rafterbook find: --nearest is given twice; next: leave one of the two out',
        ),
        (['find', '6'], 'rafterbook find: RUN is missing; next: see rafterbook find --help'),
        (
            ['find', '6', '4', 'ft'],
            "rafterbook find: 'ft' is one word too many; "
            'next: put quotes round what has spaces; see rafterbook find --help',
        ),
        (
            ['find', '6', '4', '--neerest', '1/8'],
            f"rafterbook find: '--neerest' is unknown; allowed: {FIND_OPTIONS}; "
            'next: did you mean --nearest?',
        ),
        (
            ['find', '6', '4', '--leng'],
            f"rafterbook find: '--leng' is unknown; allowed: {FIND_OPTIONS}; next: did you mean --lengths?",
        ),
        (
            ['find', '6', '4', '--nearest'],
            'rafterbook find: --nearest needs a value after it; next: see rafterbook find --help',
        ),
        (
            ['settings', '--color=red'],
            "rafterbook settings: '--color' is unknown; allowed: --out, --overwrite; "
            'next: see rafterbook settings --help',
        ),
    ],
)
def test_words_that_are_no_command_are_told_in_a_line(words, line):
    assert (2, '', f'{line}\n') == ask(*words)


@given(st.text(), st.text())
def test_whatever_is_asked_gets_an_answer_or_one_line(pitch, run):
    status, told, remarks = ask('find', pitch, run)

    assert (status, bool(told), remarks.count('\n')) in {(0, True, 0), (2, False, 1)}


@pytest.mark.parametrize(
    'words',
    [
        ['find', '6', '4 ft'],
        ['find', '6', '4 ft', '--with', '8', '--all'],
        ['find', '6', '4 ft', '--sides', '8', '--format', 'json'],
        ['pitch', '--degrees', '30'],
        ['diagonal', '4 ft', '3 ft'],
        ['brace', '4 ft', '3 ft'],
        ['check', 'square'],
        ['data', '--runs', '4 ft'],
        ['data', '--table', 'hips'],
        ['settings'],
        ['help', 'find'],
    ],
)
def test_a_look_up_imports_nothing_slow(words):
    asking = (
        'import sys; from layouts.command import main; '
        'assert main(sys.argv[1:]) == 0; print(*sys.modules, file=sys.stderr)'
    )
    done = subprocess.run(
        [sys.executable, '-c', asking, *words], cwd=ROOT, capture_output=True, text=True, check=True
    )
    loaded = set(done.stderr.split())

    assert 'tablegen.numbers.figure' in loaded
    assert set() == loaded & (SLOW | {'layouts.verbs.make', 'layouts.verbs.card'})


def test_a_reader_that_leaves_is_not_complained_to():
    process = started('data', '--runs', '1/16 in to 500 ft by 1/16 in')
    with process:
        first = process.stdout.readline()
        process.stdout.close()
        remarks = process.stderr.read()

    assert first.startswith(b'pitch,')
    assert (process.returncode, remarks) == (141, b'')


@pytest.mark.parametrize(
    ('raised', 'status', 'line'),
    [
        (KeyboardInterrupt(), 130, 'rafterbook: stopped\n'),
        (
            OSError(28, 'No space left on device'),
            2,
            'rafterbook: output: No space left on device; next: mend that and give the command again\n',
        ),
        (
            PermissionError(13, 'Permission denied', 'there/booklet.pdf'),
            2,
            'rafterbook: there/booklet.pdf: Permission denied; next: mend that and give the command again\n',
        ),
    ],
)
def test_an_output_that_fails_is_told_in_a_line(monkeypatch, raised, status, line):
    def fail(text):
        raise raised

    out, err = StringIO(), StringIO()
    monkeypatch.setattr(out, 'write', fail)

    assert status == main(['settings'], out, err)
    assert line == err.getvalue()


def test_remarks_that_cannot_be_told_change_nothing(monkeypatch):
    def fail(text):
        raise BrokenPipeError

    err = StringIO()
    monkeypatch.setattr(err, 'write', fail)

    assert main(['find', '6', 'x'], StringIO(), err) == 2


def test_a_full_disk_is_complained_of_once(tmp_path):
    """A file that may not grow stands for a disk that is full."""
    asking = (
        'import resource, sys; resource.setrlimit(resource.RLIMIT_FSIZE, (100, 100)); '
        "from layouts.command import main; sys.exit(main(['settings']))"
    )
    with open(tmp_path / 'my-book.toml', 'wb') as file:
        done = subprocess.run(
            [sys.executable, '-X', 'dev', '-c', asking],
            cwd=ROOT,
            stdout=file,
            stderr=subprocess.PIPE,
            check=False,
        )

    line = b'rafterbook: output: File too large; next: mend that and give the command again\n'
    assert (2, line) == (done.returncode, done.stderr)


def test_a_pipe_gets_utf_8_whatever_the_terminal_speaks():
    speaking = os.environ | {'PYTHONIOENCODING': 'ascii', 'PYTHONUTF8': '0'}
    told, remarks = started('data', '--runs', '1 ft', '--pitches', '30 deg', env=speaking).communicate()

    assert remarks == b''
    assert told.decode('utf-8').splitlines()[1].startswith('30°,12.000000000,12,13.856406461,13 7/8,')
