"""The starters for a double-click: run with answers as a Linux machine can; the one for Windows is read only.

What no test here sees: that macOS and Windows open a terminal for them, and that a desktop lets the launcher start.
"""

from __future__ import annotations

import configparser
import os
import shlex
import shutil
import subprocess
import sys
from pathlib import Path

import pytest
from pypdf import PdfReader

from layouts.verbs.questions import QUESTIONS

TOP = Path(__file__).resolve().parent.parent
STARTERS = TOP / 'layouts' / 'starters'
COMMAND, DESKTOP, BATCH = (STARTERS / f'make-my-book.{ending}' for ending in ('command', 'desktop', 'bat'))
WORDS = 'make --ask --open'
ANSWERS = '6\na4\nThe Garden Store\n'
NOTES = """#!/bin/sh
pwd > "$NOTED"
echo "$@" >> "$NOTED"
cat >> "$NOTED"
"""
"""A Python that notes down where it runs, what it is given and what it is answered."""


@pytest.fixture
def elsewhere(tmp_path, monkeypatch) -> Path:
    """A copy of the starters in a project of their own, in a folder with a space; return what Python notes down."""
    copied = tmp_path / 'my books' / 'layouts' / 'starters'
    shutil.copytree(STARTERS, copied)
    python = tmp_path / 'bin' / 'python3'
    python.parent.mkdir()
    python.write_text(NOTES)
    python.chmod(0o755)
    monkeypatch.setenv('PATH', f'{python.parent}:{os.environ["PATH"]}')
    monkeypatch.setenv('NOTED', str(tmp_path / 'noted'))
    monkeypatch.chdir('/')
    return copied


def noted(folder: Path) -> list[str]:
    project = folder.parent.parent
    lines = (project.parent / 'noted').read_text().splitlines()
    assert lines[0] == str(project)
    return lines[1:]


def launched(launcher: Path) -> str:
    """Return the line that a desktop runs for a launcher: its escapes taken off, its own place put in."""
    read = configparser.ConfigParser(interpolation=None, delimiters=['='])
    read.optionxform = str
    read.read_string(launcher.read_text('utf-8'))
    entry = read['Desktop Entry']
    assert (entry['Type'], entry['Terminal']) == ('Application', 'true')
    return entry['Exec'].replace('\\\\', '\\').replace('%k', shlex.quote(str(launcher)))


@pytest.mark.parametrize('starter', [COMMAND, DESKTOP], ids=lambda path: path.suffix)
def test_a_double_click_may_start_it(starter):
    assert os.access(starter, os.X_OK)


def test_it_goes_to_the_project_and_asks_through_the_script_that_sets_up(elsewhere):
    subprocess.run([elsewhere / COMMAND.name], input=ANSWERS, text=True, check=True)

    assert noted(elsewhere) == [f'layouts/bootstrap.py {WORDS}', *ANSWERS.splitlines()]


def test_the_launcher_runs_it_and_waits_before_its_window_closes(elsewhere):
    line = launched(elsewhere / DESKTOP.name)
    done = subprocess.run(['sh', '-c', line], input='', text=True, capture_output=True, check=False)

    assert done.stdout == 'Press Enter to close this window.\n'
    assert noted(elsewhere)[0] == f'layouts/bootstrap.py {WORDS}'


def test_the_one_for_windows_says_the_same():
    written = BATCH.read_bytes().decode('ascii')

    assert written.count('\r\n') == written.count('\n')
    assert rf'py layouts\bootstrap.py {WORDS}' in written.split('\r\n')
    assert 'cd /d "%~dp0..\\.."' in written.split('\r\n')
    assert '*.bat -text' in (TOP / '.gitattributes').read_text().splitlines()


def test_a_book_is_made_from_answers_and_shown(tmp_path, monkeypatch):
    """From the script on, where everything is set up: a wrong answer is asked again, the opener gets the book."""
    opened = tmp_path / 'opened'
    for name, script in (
        ('python3', f'#!/bin/sh\nshift\ncd "{tmp_path}"\nPYTHONPATH="{TOP}" exec "{sys.executable}" -m layouts.command "$@"\n'),
        ('xdg-open', f'#!/bin/sh\necho "$@" > "{opened}"\n'),
    ):  # fmt: skip
        (tmp_path / name).write_text(script)
        (tmp_path / name).chmod(0o755)
    monkeypatch.setenv('PATH', f'{tmp_path}:{os.environ["PATH"]}')
    monkeypatch.setenv('DISPLAY', ':0')
    done = subprocess.run([COMMAND], input=f'x\n{ANSWERS}', text=True, capture_output=True, check=True)

    assert done.stderr.count('Pitches, inches of rise') == 2
    assert done.stderr.count(' [') == len(QUESTIONS) + 1
    assert opened.read_text() == 'output/booklet.pdf\n'
    book = PdfReader(tmp_path / 'output' / 'booklet.pdf')
    assert 'The Garden Store' in book.pages[0].extract_text()
