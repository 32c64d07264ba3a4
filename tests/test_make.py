"""make: what it says, what it leaves behind, and each way in which it fails, told in one line."""

from __future__ import annotations

import errno
import os
import re
import sys
from io import StringIO
from pathlib import Path

import pytest
from asking import ask
from printed_words import words_of

from layouts import build as building
from layouts import typeface, typeset
from layouts.command import main
from layouts.progress import Progress
from layouts.typeset import load_typesetter

FILES = ['booklet.pdf', 'card.pdf', 'sheets.pdf']
QUICK = 'pitches = [6]\nparts = ["values"]\nruns = {to = "12 in"}\n'
"""The shortest book: twelve pages; its figures are those of one page of values, 17 and four jack differences."""
REPORT = 'next: this is a fault of the program: report it with the settings file'


@pytest.fixture
def quick(tmp_path, monkeypatch) -> Path:
    """A folder to work in, with the settings of a short book in it."""
    (tmp_path / 'book.toml').write_text(QUICK)
    monkeypatch.chdir(tmp_path)
    return tmp_path


def names(folder: Path) -> list[str]:
    """Return every file and folder, hidden ones too."""
    return sorted(path.name for path in folder.iterdir())


def contents(folder: Path) -> dict[str, bytes]:
    return {path.name: path.read_bytes() for path in folder.iterdir()}


def earlier(quick: Path) -> dict[str, bytes]:
    """Return what stands in the folder of an earlier build."""
    (quick / 'output').mkdir()
    for name in FILES:
        (quick / 'output' / name).write_text(f'an earlier {name}')
    return contents(quick / 'output')


def add_style(monkeypatch, css: str) -> None:
    style = typeset.style
    monkeypatch.setattr(typeset, 'style', lambda trim: style(trim) + css)


class Terminal(StringIO):
    """Takes remarks as a terminal does."""

    def isatty(self) -> bool:
        return True


# What it makes -----------------------------------------------------------------------------------------------


def test_it_says_what_it_has_made(quick):
    status, told, remarks = ask('make', 'book.toml', '--out', 'mine')
    booklet, sheets, card = told.splitlines()

    assert status == 0
    assert booklet == 'mine/booklet.pdf: 12 pages in 1 section, 21 figures in its tables'
    assert sheets == 'mine/sheets.pdf: 3 sheets of paper, the first says how to fold the rest'
    assert card.startswith('mine/card.pdf: ')
    assert re.fullmatch(r'made in \d+\.\d s\n', remarks)
    assert names(quick / 'mine') == FILES
    assert len(words_of(quick / 'mine' / 'booklet.pdf')) == 12


def test_without_a_folder_it_takes_output(quick):
    assert ask('make', 'book.toml')[1].startswith('output/booklet.pdf: ')
    assert names(quick / 'output') == FILES


def test_it_reads_settings_from_a_pipe(quick, monkeypatch):
    with (quick / 'book.toml').open() as file:
        monkeypatch.setattr(sys, 'stdin', file)
        assert ask('make', '-')[0] == 0


def test_made_again_it_replaces_and_is_the_same(quick):
    ask('make', 'book.toml')
    first = contents(quick / 'output')
    ask('make', 'book.toml')

    assert contents(quick / 'output') == first


def test_other_files_in_the_folder_are_left_alone(quick):
    (quick / 'output').mkdir()
    (quick / 'output' / 'notes.txt').write_text('mine')
    ask('make', 'book.toml')

    assert names(quick / 'output') == sorted([*FILES, 'notes.txt'])
    assert (quick / 'output' / 'notes.txt').read_text() == 'mine'


def test_several_sections_are_said(quick):
    (quick / 'book.toml').write_text(
        'parts = ["rise"]\nruns = {to = "12 in", by = "4 in"}\npitches = "1 to 20 by 1/2"'
    )
    told = ask('make', 'book.toml')[1].splitlines()[0]

    assert re.fullmatch(r'output/booklet\.pdf: \d+ pages in 2 sections, [\d,]+ figures in its tables', told)


# Progress ----------------------------------------------------------------------------------------------------


def test_a_terminal_sees_the_stages_and_is_left_clean(quick):
    out, err = StringIO(), Terminal()
    assert main(['make', 'book.toml'], out, err) == 0
    shown = err.getvalue()

    assert [shown.index(stage) for stage in ('planning', 'typesetting', 'joining', 'imposing')] == sorted(
        shown.index(stage) for stage in ('planning', 'typesetting', 'joining', 'imposing')
    )
    assert shown.rsplit('\r', 1)[1].startswith('made in ')
    assert '\n' not in shown.rstrip('\n')


def test_a_failed_build_leaves_a_terminal_clean(quick, monkeypatch):
    add_style(monkeypatch, 'p { colr: red }')
    err = Terminal()
    main(['make', 'book.toml'], StringIO(), err)

    assert err.getvalue().rsplit('\r', 1)[1].startswith('rafterbook: typesetter: said: ')


def test_the_bar_counts_every_page_once():
    err = Terminal()
    progress = Progress(err)
    progress.stage('typesetting', 12)
    for _ in range(12):
        progress.bar.mininterval = 0
        progress.advance(1)

    assert progress.bar.n == 12
    assert '12 of 12' in err.getvalue()
    progress.done()


def test_a_pipe_sees_no_progress():
    err = StringIO()
    progress = Progress(err)
    progress.stage('typesetting', 12)
    progress.advance(12)
    progress.done()

    assert err.getvalue() == ''


def test_progress_is_told_to_the_end(quick, monkeypatch):
    """As many pages are laid out as the bar has been told to expect."""
    seen = {'wanted': 0, 'told': 0}

    class Counting(Progress):
        def stage(self, name, pages=1):
            seen['wanted'] += pages if name == 'typesetting' else 0

        def advance(self, pages):
            seen['told'] += pages

    monkeypatch.setattr('layouts.progress.Progress', Counting)
    ask('make', 'book.toml')

    assert seen['told'] == seen['wanted'] > 12


# Failures ----------------------------------------------------------------------------------------------------


def fails(*words: str) -> str:
    """Return the one line with which a command fails, with nothing said to the pipe."""
    status, told, remarks = ask('make', *words)
    assert (status, told, remarks.count('\n')) == (2, '', 1)
    assert remarks.startswith('rafterbook: ')
    return remarks.removeprefix('rafterbook: ').rstrip('\n')


def test_a_failed_build_leaves_the_earlier_booklet(quick, monkeypatch):
    good = earlier(quick)
    add_style(monkeypatch, 'p { colr: red }')

    assert re.fullmatch(
        rf'typesetter: said: Ignored `colr: red ?` at \d+:\d+, unknown property\.; {REPORT}',
        fails('book.toml'),
    )
    assert contents(quick / 'output') == good


def full_disk(*args, **options):
    raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))


@pytest.mark.parametrize('stage', ['join', 'impose'])
def test_a_full_disk_leaves_the_earlier_booklet(stage, quick, monkeypatch):
    good = earlier(quick)
    monkeypatch.setattr(building, stage, full_disk)

    assert fails('book.toml') == (
        'output: writing failed: No space left on device; next: make room there or give another folder with --out'
    )
    assert contents(quick / 'output') == good


def test_a_failed_first_build_leaves_nothing(quick, monkeypatch):
    monkeypatch.setattr(building, 'impose', full_disk)
    fails('book.toml')

    assert names(quick) == ['book.toml']


def test_a_build_that_is_stopped_leaves_nothing(quick, monkeypatch):
    def stop(*args):
        raise KeyboardInterrupt

    monkeypatch.setattr(building, 'typeset', stop)

    assert ask('make', 'book.toml') == (130, '', 'rafterbook: stopped\n')
    assert names(quick) == ['book.toml']


def test_a_page_that_runs_over_is_told(quick, monkeypatch):
    add_style(monkeypatch, '.ruled { height: 12mm }')

    assert fails('book.toml') == f'typesetter: set 17 pages where 12 were planned: page 5 runs over; {REPORT}'


@pytest.mark.parametrize(
    ('out', 'strerror'), [('book.toml', 'File exists'), ('book.toml/inside', 'Not a directory')]
)
def test_a_file_in_the_way(out, strerror, quick):
    assert fails('book.toml', '--out', out) == (
        f'{out}: cannot be written: {strerror}; allowed: a folder that you may write in; next: give another with --out'
    )
    assert names(quick) == ['book.toml']


def test_a_folder_with_no_leave_to_write(quick, monkeypatch):
    def refuse(*args, **options):
        raise PermissionError(errno.EACCES, os.strerror(errno.EACCES))

    monkeypatch.setattr(building.tempfile, 'TemporaryDirectory', refuse)

    assert fails('book.toml', '--out', 'there') == (
        'there: cannot be written: Permission denied; allowed: a folder that you may write in; '
        'next: give another with --out'
    )


@pytest.mark.parametrize('lost', ['package', 'file'])
def test_a_missing_font_is_told_with_what_to_do(lost, quick, monkeypatch):
    if lost == 'package':
        monkeypatch.setitem(sys.modules, 'fontpkg_open_sans', None)
    else:
        monkeypatch.setattr(typeface, 'font_path', typeface.font_path)
        monkeypatch.setattr(typeface, 'Path', lambda name: Path('nowhere') / 'fonts.py')

    assert fails('book.toml') == (
        'font: OpenSans[wdth,wght].ttf is not installed; next: run: pip install fontpkg-open-sans==3.3'
    )
    assert names(quick) == ['book.toml']


def test_a_missing_pango_is_told_with_what_to_do(quick, monkeypatch):
    real = __import__

    def refusing(name, *args):
        if name == 'weasyprint':
            raise OSError(
                "cannot load library 'libpango-1.0-0': libpango-1.0-0: cannot open shared object file"
            )
        return real(name, *args)

    monkeypatch.setattr('builtins.__import__', refusing)

    assert fails('book.toml') == (
        'typesetter: the system library libpango-1.0-0 is missing; '
        'next: run: python3 layouts/bootstrap.py setup (it says what to install on this system)'
    )
    assert names(quick) == ['book.toml']


@pytest.mark.parametrize(
    ('line', 'place', 'letters'),
    [
        ('title = "屋根"', 'title', '屋 根'),
        ('owner = "Store ☂ two"', 'owner', '☂'),
        ('title = "→←"', 'title', '← →'),
    ],
)
def test_a_letter_that_the_typeface_lacks(line, place, letters, quick):
    (quick / 'book.toml').write_text(f'{line}\n{QUICK}')

    assert fails('book.toml') == (
        f"{place}: the book's typeface has no {letters}; allowed: Latin, Greek and Cyrillic letters; "
        'next: write it another way'
    )
    assert names(quick) == ['book.toml']


@pytest.mark.parametrize('words', ['Dächer für Süd', 'Στέγη', 'Крыша', 'O’Neil – 2 × 6'])
def test_a_letter_that_the_typeface_has(words):
    typeface.check_letters(words, 'title')
    assert not words.isascii()


def test_all_faults_of_a_settings_file_are_told_at_once(quick):
    (quick / 'book.toml').write_text('pitches = [0]\npaper = "a5"\ntitel = "x"\n')
    status, told, remarks = ask('make', 'book.toml')

    assert (status, told) == (2, '')
    assert [line.split(': ')[2] for line in remarks.splitlines()] == ['pitches', 'paper', 'titel']
    assert names(quick) == ['book.toml']


def test_too_many_pages_are_told_before_anything_is_written(quick):
    (quick / 'book.toml').write_text('runs = {by = "1/16 in"}')

    assert re.match(
        r'runs\.by: 1/16 in over 24 pitches would make 2,\d\d\d pages; allowed: up to 1,000',
        fails('book.toml'),
    )
    assert names(quick) == ['book.toml']


def test_the_typesetter_is_there_after_all_that():
    """What a test has taken away was given back."""
    assert load_typesetter().__name__ == 'weasyprint'
