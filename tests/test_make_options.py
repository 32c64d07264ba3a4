"""make's options: settings over those of a file, each fault under its option, questions, and the book shown."""

from __future__ import annotations

import io
import subprocess
import sys
import tomllib
from pathlib import Path

import pytest
from asking import ask
from pypdf import PdfReader

from layouts.pages import colophon
from layouts.pages.book import plan
from layouts.verbs import make, opening
from tablegen.settings import Settings, read_settings

FILE = 'title = "Old"\nowner = "Me"\npitches = [8]\nparts = ["values"]\nruns = {to = "12 in"}\npaper = "a4"\n'
BOTH = (
    '--title', 'New', '--owner', 'The Store', '--pitches', '4 to 6', '--runs', '1 ft to 3 ft by 1 ft', '--paper', 'letter',
    '--trim', 'large', '--nearest', '1/8', '--lengths', 'feet-inches',
)  # fmt: skip
SAID = """title = "New"
owner = "The Store"
pitches = "4 to 6"
runs = {from = "1 ft", to = "3 ft", by = "1 ft"}
paper = "letter"
trim = "large"
smallest_part = "1/8"
lengths = "feet-inches"
"""


@pytest.fixture
def asked_for(monkeypatch, tmp_path):
    """Return the settings that a line of make asks for; nothing is made."""
    monkeypatch.chdir(tmp_path)
    (tmp_path / 'book.toml').write_text(FILE, 'utf-8')
    seen: list[Settings] = []
    monkeypatch.setattr(make, '_tell_plan', lambda settings, out: seen.append(settings) or 0)

    def read(*words: str) -> Settings:
        assert ask('make', *words, '--plan')[::2] == (0, ''), words
        return seen.pop()

    return read


def refused(*words: str) -> list[str]:
    status, told, remarks = ask('make', *words, '--plan')
    assert (status, told) == (2, '')
    return remarks.removesuffix('\n').split('\n')


# Settings ----------------------------------------------------------------------------------------------------


def test_options_say_what_a_file_says(asked_for):
    assert asked_for(*BOTH) == read_settings(SAID, '')


def test_options_go_over_the_file_and_what_they_leave_is_the_file_s(asked_for):
    assert asked_for('book.toml') == read_settings(FILE, 'book.toml')
    changed = asked_for('book.toml', '--title', 'New', '--pitches', '4 to 6')

    assert changed == read_settings(FILE.replace('"Old"', '"New"').replace('[8]', '"4 to 6"'), 'book.toml')
    assert asked_for('book.toml', *BOTH) == read_settings(f'{SAID}parts = ["values"]', 'book.toml')


def test_a_steep_pitch_passes_when_it_is_asked_for(asked_for):
    assert (
        asked_for('--pitches', '30', '--steep').pitches
        == read_settings('steep = true\npitches = [30]', '').pitches
    )


def test_the_colophon_s_lines_make_the_book_that_options_made(asked_for):
    made = asked_for('book.toml', *BOTH)
    lines = '\n'.join(colophon.lines(made, plan(made).index))

    assert tomllib.loads(lines)['title'] == 'New'
    assert read_settings(lines, 'book.toml') == made


@pytest.mark.parametrize(
    ('words', 'line'),
    [
        (('--title', 'x' * 49), f"--title: '{'x' * 49}' is no name; allowed: one line of up to 48 letters"),
        (('--owner', 'a\nb'), r"--owner: 'a\nb' is no name; allowed: one line of up to 48 letters"),
        (('--paper', 'A5'), "--paper: 'A5' is unknown; allowed: letter, a4"),
        (('--trim', 'huge'), "--trim: 'huge' is unknown; allowed: pocket, large"),
        (('--lengths', 'yards'), "--lengths: 'yards' is unknown; allowed: inches, feet-inches"),
        (
            ('--nearest', '1/10'),
            "--nearest: '1/10' is not a part of an inch that a tape shows; allowed: 1/2, 1/4, 1/8, 1/16, 1/32, 1/64",
        ),
        (('--runs', '1 ft to 2 ft by 0'), '--runs: a step of 0 gets nowhere; allowed: from 1/16 in up'),
        (('--runs', '0'), '--runs: a run of 0 has no rafter; allowed: above 0'),
    ],
)  # fmt: skip
def test_a_fault_is_named_by_its_option(words, line):
    assert refused(*words) == [f'rafterbook: {line}; next: see rafterbook make --help']


def test_all_faults_are_told_together():
    lines = refused('--paper', 'A5', '--trim', 'huge', '--pitches', '4, x')

    assert [line.split(': ')[1] for line in lines] == ['--paper', '--trim', '--pitches[2]']


def test_a_step_that_the_new_smallest_part_does_not_reach_is_a_fault_of_the_file(tmp_path):
    file = tmp_path / 'book.toml'
    file.write_text('runs = {from = "1 in", to = "2 in", by = "1/16"}', 'utf-8')

    (line,) = refused(str(file), '--nearest', '1/4')
    assert line.startswith('rafterbook: runs.by: 1/16 in is below the smallest part; allowed: from 1/4 in up')


def test_letters_that_the_font_has_not_are_of_the_option_or_of_the_file(quick):
    (quick / 'other.toml').write_text('title = "語"', 'utf-8')

    assert ask('make', 'book.toml', '--title', '語')[2].startswith('rafterbook: --title: ')
    assert ask('make', 'other.toml', '--owner', 'me')[2].startswith('rafterbook: title: ')


def test_a_book_made_by_options_has_them_on_its_cover(quick):
    assert ask('make', 'book.toml', '--title', 'Sheds', '--owner', 'The Store')[0] == 0

    cover = PdfReader(quick / 'output' / 'booklet.pdf').pages[0].extract_text()
    assert 'Sheds' in cover
    assert 'The Store' in cover


@pytest.mark.parametrize(
    ('trim', 'after'),
    [('pocket', 'cut, fold and staple'), ('large', 'fold and staple')],
    ids=['pocket', 'large'],
)
def test_it_ends_by_saying_how_its_sheets_are_printed(quick, trim, after):
    """A sheet turns about its upright middle line: over the long edge where it stands upright, else over the short one."""
    told = ask('make', 'book.toml', '--trim', trim)[1]
    width, height = PdfReader(quick / 'output' / 'sheets.pdf').pages[2].mediabox[2:]

    assert told.splitlines()[-1] == (
        f'to print: sheets.pdf on both sides, flip on the {"long" if height > width else "short"} edge, at 100 % '
        f'(“actual size”); then {after} as its first sheet shows'
    )


# Questions ---------------------------------------------------------------------------------------------------


def answer(monkeypatch, lines: str) -> None:
    monkeypatch.setattr(sys, 'stdin', io.StringIO(lines))


def test_answers_are_settings(monkeypatch, tmp_path):
    seen = []
    monkeypatch.setattr(make, '_tell_plan', lambda settings, out: seen.append(settings) or 0)
    answer(monkeypatch, '4 to 6\n a4 \nThe Store\n')
    status, _, remarks = ask('make', '--ask', '--plan')

    assert status == 0
    assert seen == [read_settings('pitches = "4 to 6"\npaper = "a4"\nowner = "The Store"', '')]
    assert remarks == (
        'Press Enter to take what stands in brackets.\n'
        'Pitches, inches of rise in 12, such as 6 or 4,6,8 or 4 to 12 [24 pitches, 1 to 24]: '
        'Paper in the printer, letter / a4 [letter]: Name on the cover [none]: '
    )


@pytest.mark.parametrize('lines', ['\n\n\n', ''])
def test_an_empty_answer_or_none_keeps_what_stands(monkeypatch, lines):
    seen = []
    monkeypatch.setattr(make, '_tell_plan', lambda settings, out: seen.append(settings) or 0)
    answer(monkeypatch, lines)

    assert ask('make', '--ask', '--plan', '--pitches', '6', '--owner', 'Me')[0] == 0
    assert seen == [read_settings('pitches = [6]\nowner = "Me"', '')]


def test_a_wrong_answer_is_told_and_asked_again(monkeypatch):
    seen = []
    monkeypatch.setattr(make, '_tell_plan', lambda settings, out: seen.append(settings) or 0)
    answer(monkeypatch, '6\nA5\na4\n')
    remarks = ask('make', '--ask', '--plan')[2]

    assert seen[0].paper == 'a4'
    assert "[letter]: --paper: 'A5' is unknown; allowed: letter, a4\nPaper in the printer" in remarks


# What does not go together, and the book shown ------------------------------------------------------------------


@pytest.mark.parametrize(
    ('words', 'line'),
    [
        (('--plan', '--open'), '--open: does not go with --plan; next: leave one of the two out'),
        (
            ('-', '--ask'),
            '--ask: reads answers where the settings are read; next: give the settings as a file',
        ),
    ],
)
def test_what_does_not_go_together_is_refused(words, line):
    assert ask('make', *words) == (2, '', f'rafterbook: {line}\n')


def opener_of(monkeypatch, folder, name: str, platform: str, status: int = 0):
    """Put an opener on the path that notes down what it is given; return the note."""
    monkeypatch.setattr(opening.sys, 'platform', platform)
    monkeypatch.setenv('PATH', str(folder), prepend=':')
    monkeypatch.setenv('DISPLAY', ':0')
    script = folder / name
    script.write_text(f'#!/bin/sh\necho "$@" > {folder}/opened\nexit {status}\n')
    script.chmod(0o755)
    return folder / 'opened'


@pytest.mark.parametrize(('platform', 'name'), [('linux', 'xdg-open'), ('darwin', 'open')])
def test_the_book_is_shown_by_the_platform_s_opener(tmp_path, monkeypatch, platform, name):
    opened = opener_of(monkeypatch, tmp_path, name, platform)

    assert opening.opener() == [name]
    opening.show(Path('output/booklet.pdf'))
    assert opened.read_text() == 'output/booklet.pdf\n'


def test_what_is_shown_is_the_book_that_was_made(quick, monkeypatch):
    opened = opener_of(monkeypatch, quick, 'xdg-open', 'linux')

    assert ask('make', 'book.toml', '--open')[0] == 0
    assert opened.read_text() == 'output/booklet.pdf\n'


def test_on_windows_the_system_itself_opens_it(monkeypatch, tmp_path):
    opened = []
    monkeypatch.setattr(opening.sys, 'platform', 'win32')
    monkeypatch.setattr(opening.os, 'startfile', opened.append, raising=False)

    assert opening.opener() == []
    opening.show(tmp_path)
    assert opened == [tmp_path]


def test_a_machine_that_opens_nothing_is_told_before_anything_is_made(quick, monkeypatch):
    line = (
        'rafterbook: --open: this machine has no screen, or no xdg-open to show a file with; '
        'next: leave it out, and open the booklet where there is one\n'
    )
    monkeypatch.setattr(opening.sys, 'platform', 'linux')
    monkeypatch.setenv('DISPLAY', ':0')
    monkeypatch.setattr(opening.shutil, 'which', lambda name: None)
    assert ask('make', 'book.toml', '--open') == (2, '', line)
    monkeypatch.setattr(opening.shutil, 'which', lambda name: name)
    for screen in opening.SCREENS:
        monkeypatch.delenv(screen, raising=False)
    assert ask('make', 'book.toml', '--open') == (2, '', line)
    assert not (quick / 'output').exists()


def test_an_opener_that_fails_leaves_the_book_and_a_line(tmp_path, monkeypatch):
    opener_of(monkeypatch, tmp_path, 'xdg-open', 'linux', status=3)
    with pytest.raises(opening.BookError) as refusal:
        opening.show(tmp_path / 'booklet.pdf')

    assert refusal.value.place == '--open'
    assert refusal.value.problem == f'{tmp_path}/booklet.pdf is made, but nothing here shows it'


def test_an_opener_that_waits_for_its_program_is_not_waited_for(tmp_path, monkeypatch):
    class Waits:
        def __init__(self, *words, **settings):
            pass

        def wait(self, seconds):
            raise subprocess.TimeoutExpired('xdg-open', seconds)

    opener_of(monkeypatch, tmp_path, 'xdg-open', 'linux')
    monkeypatch.setattr(opening.subprocess, 'Popen', Waits)
    opening.show(tmp_path / 'booklet.pdf')
