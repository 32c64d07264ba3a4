"""make: what it says, what it leaves behind, and what a terminal sees meanwhile."""

from __future__ import annotations

import re
import sys
from io import StringIO

import pytest
from asking import ask
from printed_words import words_of
from quick_books import FILES, LACKS, PAGES, QUICK, Terminal, add_style, contents, earlier, names

from layouts.command import main
from layouts.pages import paging
from layouts.pdf.progress import Progress

# What it makes -----------------------------------------------------------------------------------------------


def test_it_says_what_it_has_made(quick):
    status, told, remarks = ask('make', 'book.toml', '--out', 'mine')
    booklet, sheets, card, proven, printing = told.splitlines()

    assert status == 0
    assert booklet == f'mine/booklet.pdf: {PAGES} pages in 1 section, 55 figures in its pitches’ tables'
    assert (
        sheets
        == f'mine/sheets.pdf: {1 + -(-PAGES // 8)} sheets of paper, the first says how to fold the rest'
    )
    assert card.startswith('mine/card.pdf: ')
    assert re.fullmatch(
        rf'proof: 68 figures worked out once more by other means, \d+ links followed, {-(-PAGES // 8)} sheets folded; nothing differs',
        proven,
    )
    assert printing == (
        'to print: sheets.pdf on both sides, flip on the long edge, at 100 % (“actual size”); '
        'then cut, fold and staple as its first sheet shows'
    )
    assert re.fullmatch(r'made in \d+\.\d s\n', remarks)
    assert names(quick / 'mine') == FILES
    assert len(words_of(quick / 'mine' / 'booklet.pdf')) == PAGES


@pytest.mark.filterwarnings('default')
def test_what_the_typesetter_merely_warns_of_is_told_in_a_few_lines_and_the_book_made(quick, monkeypatch):
    """As a new release of it may; in these tests it is an error else."""
    add_style(monkeypatch, ''.join(f'p {{ colr-{number}: red }}' for number in range(5)))
    status, told, remarks = ask('make', 'book.toml', '--out', 'mine')
    made, *lines = remarks.splitlines()

    assert (status, len(told.splitlines()), names(quick / 'mine')) == (0, 5, FILES)
    assert made.startswith('made in ')
    assert lines[3:] == ['rafterbook: and 2 more']
    for number, line in enumerate(lines[:3]):
        assert re.fullmatch(
            rf'rafterbook: typesetter: said: Ignored `colr-{number}: red ?` at \d+:\d+, unknown property\.; '
            'next: it was made all the same: look all pages over before you use it',
            line,
        )


def test_it_reads_settings_from_a_pipe(quick, monkeypatch):
    with (quick / 'book.toml').open() as file:
        monkeypatch.setattr(sys, 'stdin', file)
        assert ask('make', '-', '--plan')[1].startswith(f'{PAGES} pages')


def test_without_a_folder_it_takes_output_and_leaves_other_files_alone(quick):
    """Files of an earlier book are replaced; that two builds agree to the byte is tested of a larger one."""
    before = earlier(quick)
    (quick / 'output' / 'notes.txt').write_text('mine')
    assert ask('make', 'book.toml')[1].startswith('output/booklet.pdf: ')
    after = contents(quick / 'output')

    assert after.pop('notes.txt') == b'mine'
    assert sorted(after) == sorted(before) == FILES
    assert all(after[name][:5] == b'%PDF-' != before[name][:5] for name in FILES)


def test_several_sections_are_said(quick, monkeypatch):
    monkeypatch.setattr(paging, 'MOST_IN_A_SECTION', 8)
    (quick / 'book.toml').write_text(QUICK.replace('[6]', '[4, 6, 8]'))
    booklet, sheets, *_ = ask('make', 'book.toml')[1].splitlines()

    assert booklet == 'output/booklet.pdf: 16 pages in 2 sections, 165 figures in its pitches’ tables'
    assert sheets.startswith('output/sheets.pdf: 3 sheets of paper')


# Progress ----------------------------------------------------------------------------------------------------


def test_a_terminal_sees_the_stages_and_is_left_clean(quick):
    out, err = StringIO(), Terminal()
    assert main(['make', 'book.toml'], out, err) == 0
    shown = err.getvalue()

    stages = [
        shown.index(stage) for stage in ('planning', 'typesetting', 'joining', 'imposing', 'proof-reading')
    ]
    assert stages == sorted(stages)
    assert shown.rsplit('\r', 1)[1].startswith('made in ')
    assert '\n' not in shown.rstrip('\n')


def test_a_failed_build_leaves_a_terminal_clean(quick, monkeypatch):
    add_style(monkeypatch, LACKS)
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

    monkeypatch.setattr('layouts.pdf.progress.Progress', Counting)
    ask('make', 'book.toml')

    assert seen['told'] == seen['wanted'] > PAGES
