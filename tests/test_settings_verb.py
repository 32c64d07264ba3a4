"""settings, and reading the file that it starts: every way a file can fail, told in a line."""

from __future__ import annotations

import sys
from io import BytesIO, TextIOWrapper

import pytest
from asking import ask

from layouts.verbs.settings_file import settings_from
from layouts.words.error import error_lines
from layouts.words.starter import starter
from tablegen.errors import BookError
from tablegen.settings import Settings, read_settings

START = 'next: rafterbook settings --out my-book.toml makes one to start from'
KEYS = (
    'title, owner, language, lengths, smallest_part, steep, pitches, runs.from, runs.to, runs.by, jacks.spacings, '
    'stock.ridge, stock.hip, stock.rafter, stock.rafters, stock.hips, stock.valleys, stock.seat, paper, trim, edition, parts, '
    'roofs'
)


def refused(path) -> list[str]:
    """Return the lines that a settings file is refused with."""
    with pytest.raises(BookError) as refusal:
        settings_from(str(path))
    return error_lines(refusal.value)


def test_it_prints_the_starter_file():
    assert ask('settings') == (0, starter(), '')


def test_it_writes_the_starter_file(tmp_path):
    file = tmp_path / 'my-book.toml'

    assert ask('settings', '--out', str(file)) == (
        0,
        f'{file}: every key explained; change what you like\n',
        '',
    )
    assert file.read_bytes() == starter().encode()
    assert settings_from(str(file)).title == Settings().title


def test_a_file_that_is_there_stays_as_it_is_until_told(tmp_path):
    file = tmp_path / 'my-book.toml'
    file.write_text('owner = "mine"', 'utf-8')
    refusal = f'rafterbook: --out: {file} is there already; next: give another name, or --overwrite to lose what is in it\n'

    assert ask('settings', '--out', str(file)) == (2, '', refusal)
    assert file.read_text('utf-8') == 'owner = "mine"'
    assert ask('settings', '--out', str(file), '--overwrite')[0] == 0
    assert file.read_text('utf-8') == starter()


def test_to_overwrite_what_is_not_named_is_refused():
    line = 'rafterbook: --overwrite: is of a file; next: name it with --out\n'
    assert ask('settings', '--overwrite') == (2, '', line)


@pytest.mark.parametrize(
    ('place', 'why'), [('no/my-book.toml', 'No such file or directory'), ('', 'Is a directory')]
)
def test_a_place_that_takes_no_file_is_told_in_a_line(tmp_path, place, why):
    file = tmp_path / place
    status, told, remarks = ask('settings', '--out', str(file), '--overwrite')

    assert (status, told) == (2, '')
    assert remarks == f'rafterbook: --out: {file}: {why}; next: give another name\n'


@pytest.mark.parametrize('encoding', ['utf-16-le', 'utf-16-be', 'utf-8'])
def test_a_file_with_the_mark_of_its_letters_is_read(tmp_path, encoding):
    """As some terminals write what is sent into a file: the mark before the text, lines ending in two letters."""
    file = tmp_path / 'my-book.toml'
    file.write_bytes(
        ('\ufeff' + starter().replace('"Rafter Tables" ', '"Dächer"').replace('\n', '\r\n')).encode(encoding)
    )

    assert settings_from(str(file)).title == 'Dächer'


def test_a_file_cut_off_in_the_middle_of_a_letter(tmp_path):
    file = tmp_path / 'my-book.toml'
    file.write_bytes('\ufeffa = 1'.encode('utf-16-le')[:-1])
    assert refused(file) == [f'{file}: is no UTF-16 text, at byte 11; allowed: a settings file; {START}']


def test_its_remarks_are_said_in_the_reader_s_language(monkeypatch):
    monkeypatch.setattr('layouts.words.starter._', str.upper)

    assert '# OF ITS WORDS: EN, OR A LANGUAGE THAT HAS BEEN ADDED\n' in starter()
    assert read_settings(starter(), '') == Settings()
    assert max(map(len, starter().splitlines())) <= 114


def test_what_it_prints_says_what_silence_says(tmp_path):
    file = tmp_path / 'my-book.toml'
    file.write_text(ask('settings')[1], 'utf-8')

    assert ask('data', str(file)) == ask('data')


def test_no_file_gives_the_defaults():
    assert settings_from(None) == Settings()


def test_a_dash_reads_standard_input(monkeypatch):
    monkeypatch.setattr(sys, 'stdin', TextIOWrapper(BytesIO('title = "Dächer"'.encode())))
    assert settings_from('-').title == 'Dächer'


def test_a_file_that_is_not_there(tmp_path):
    assert refused(tmp_path / 'no.toml') == [f'{tmp_path}/no.toml: there is no such file; {START}']


def test_a_folder(tmp_path):
    assert refused(tmp_path) == [f'{tmp_path}: this is a folder; allowed: a settings file; {START}']


def test_a_place_that_cannot_be_read(tmp_path):
    (tmp_path / 'file').touch()
    place = tmp_path / 'file' / 'my-book.toml'
    assert refused(place) == [f'{place}: cannot be read: Not a directory; allowed: a settings file']


def test_a_file_that_is_no_text(tmp_path):
    file = tmp_path / 'booklet.pdf'
    file.write_bytes(b'%PDF\xe2\xe3')
    assert refused(file) == [f'{file}: is no UTF-8 text, at byte 5; allowed: a settings file; {START}']


def test_a_file_too_long_for_settings(tmp_path):
    file = tmp_path / 'my-book.toml'
    file.write_bytes(b'#' * 1_000_001)
    assert refused(file) == [f'{file}: is too long for a settings file; allowed: up to 64,000 bytes; {START}']


@pytest.mark.parametrize(
    ('written', 'problem'),
    [
        ('a = 1\nb = = 2', 'Invalid value (at line 2, column 5); next: mend that place'),
        ('a = ' + '[' * 5000, 'brackets nested too deep; next: mend that'),
        ('pitches = [nan]', 'nan is no number that measures anything; next: mend that place'),
        ('pitches = [1e999999999]', '1e999999999 is no number that measures anything; next: mend that place'),
        (
            f'lengths = 0x{"f" * 5000}',
            'a whole number of over 40 digits measures nothing; next: mend that place',
        ),
    ],
)
def test_a_file_that_is_no_toml(tmp_path, written, problem):
    file = tmp_path / 'my-book.toml'
    file.write_text(written, 'utf-8')
    assert refused(file) == [f'{file}: cannot be read as TOML: {problem}']


def test_all_faults_of_a_file_are_told_at_once(tmp_path):
    file = tmp_path / 'my-book.toml'
    file.write_text(
        'titel = "x"\nlengths = "metres"\npitches = [6, 121]\nruns = {by = 0}\nzebra = 1', 'utf-8'
    )
    told = [
        "lengths: 'metres' is unknown; allowed: inches, feet-inches; next: rafterbook settings prints every key",
        "pitches[2]: '121' is steeper than any rafter; allowed: up to 120 in 12; "
        'next: rafterbook settings prints every key',
        f'titel: unknown key; allowed: {KEYS}; next: did you mean title?',
        f'zebra: unknown key; allowed: {KEYS}; next: rafterbook settings prints every key',
        'runs.by: a step of 0 gets nowhere; allowed: from 1/16 in up; next: rafterbook settings prints every key',
    ]
    assert refused(file) == [f'{file}: {line}' for line in told]
    assert ask('data', str(file)) == (2, '', ''.join(f'rafterbook: {file}: {line}\n' for line in told))
