"""make: each way in which it fails, told in one line, leaving what was there."""

from __future__ import annotations

import errno
import os
import re
import sys
from decimal import Decimal
from pathlib import Path

import pytest
from asking import ask
from quick_books import LACKS, QUICK, add_style, contents, earlier, names

from layouts import build as building
from layouts.pages.book import plan
from layouts.paper import typeface
from layouts.pdf.parts import OF_THE_COPY
from layouts.pdf.typeset import load_typesetter
from tablegen.proof.figures import figures
from tablegen.proof.roof import Corner
from tablegen.settings import read_settings

REPORT = 'next: this is a fault of the program: report it with the settings file'


def fails(*words: str) -> str:
    """Return the one line with which a command fails, with nothing said to the pipe."""
    status, told, remarks = ask('make', *words)
    assert (status, told, remarks.count('\n')) == (2, '', 1)
    assert remarks.startswith('rafterbook: ')
    return remarks.removeprefix('rafterbook: ').rstrip('\n')


def test_a_failed_build_leaves_the_earlier_booklet(quick, monkeypatch):
    good = earlier(quick)
    add_style(monkeypatch, LACKS)

    assert re.fullmatch(rf'typesetter: said: Failed to load image .*; {REPORT}', fails('book.toml'))
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


def test_a_figure_that_differs_stops_the_book(quick, monkeypatch):
    good = earlier(quick)
    monkeypatch.setattr(Corner, 'jack_difference', lambda corner, spacing: Decimal(5))
    figures.cache_clear()
    try:
        told = fails('book.toml')
    finally:
        figures.cache_clear()

    assert re.fullmatch(
        rf'proof: page \d+, .*: printed [\d/ ]+, right 5; \d+ more differ; nothing was put in place; {REPORT}; '
        '--no-proof makes the book without a proof',
        told,
    )
    assert contents(quick / 'output') == good
    assert ask('make', 'book.toml', '--no-proof')[0] == 0


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

    drafts = plan(read_settings(QUICK, '')).drafts
    ruled = [number for number, draft in enumerate(drafts, 1) if draft.template in ('notes', 'closing')]
    pages = sum(draft.template not in OF_THE_COPY for draft in drafts)  # of their document
    said = f'set {pages + len(ruled)} pages where {pages} were planned: page {ruled[0]} runs over'
    assert fails('book.toml') == f'typesetter: {said}; {REPORT}'


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

    monkeypatch.setattr(os, 'mkdir', refuse)

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


def test_a_missing_pango_is_told_with_what_to_do(quick, set_anew, monkeypatch):
    real = __import__

    def refusing(name, *args):
        if name == 'weasyprint':
            raise OSError(
                "cannot load library 'libpango-1.0-0': libpango-1.0-0: cannot open shared object file"
            )
        return real(name, *args)

    monkeypatch.delitem(sys.modules, 'weasyprint')
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
    (quick / 'book.toml').write_text('edition = "complete"\nruns = {by = "1/16 in"}')

    assert re.match(
        r'runs\.by: 1/16 in over 24 pitches would make 2,\d\d\d pages; allowed: up to 1,000',
        fails('book.toml'),
    )
    assert names(quick) == ['book.toml']


def test_the_typesetter_is_there_after_all_that():
    """What a test has taken away was given back."""
    assert load_typesetter().__name__ == 'weasyprint'
