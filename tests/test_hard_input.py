"""Input that nobody means: closed streams, names of odd letters, files far too large, text of every kind.

Each is refused in lines, at once, with nothing on standard output and no file left.
"""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path
from time import process_time

import pytest
from asking import ask
from quick_books import QUICK, names

from tablegen.settings import read_settings

MOST_SECONDS = 2
MOST_LINES = 21


def command(*words: str, folder: Path, **streams) -> tuple[int, str]:
    """Return status and remarks of the command as a process of its own, which tells no traceback."""
    done = subprocess.run(
        [sys.executable, '-m', 'layouts.command', *words],
        cwd=folder,
        stderr=subprocess.PIPE,
        env=os.environ | {'PYTHONPATH': str(Path(__file__).parent.parent)},
        errors='replace',
        timeout=60,
        check=False,
        **streams,
    )
    assert 'Traceback' not in done.stderr
    return done.returncode, done.stderr


def closed(number: int) -> dict:
    return {'preexec_fn': lambda: os.close(number)} | ({} if number == 1 else {'stdout': subprocess.DEVNULL})


@pytest.mark.parametrize(
    'words', [['make', '-'], ['roof', '-'], ['make', '--ask'], ['check', 'square', '--reads', '-']]
)
def test_a_closed_input_is_told(words, quick, monkeypatch):
    monkeypatch.setattr(sys, 'stdin', None)

    line = 'rafterbook: -: standard input is closed; next: give a file, or let another command write to it\n'
    assert ask(*words) == (2, '', line)
    assert names(quick) == ['book.toml']


@pytest.mark.skipif(os.name == 'nt', reason='closes a file by its number')
def test_a_closed_output_is_an_error(tmp_path):
    assert command('find', '8', '4 ft', folder=tmp_path, **closed(1)) == (
        2,
        'rafterbook: output: is closed; next: let it go to a screen, a file or a pipe\n',
    )


def test_a_reader_that_leaves_spoils_no_book_that_is_made(quick):
    reads, writes = os.pipe()
    os.close(reads)
    with open(writes, 'wb') as gone:
        status, remarks = command('card', 'book.toml', folder=quick, stdout=gone)

    assert (status, remarks[:7]) == (0, 'made in')
    assert names(quick / 'output') == ['card.pdf']


@pytest.mark.skipif(not sys.platform.startswith('linux'), reason='names of other systems are text')
def test_a_folder_whose_name_is_no_text(quick):
    out = os.fsdecode(b'caf\xe9')
    assert command('card', 'book.toml', '--out', out, folder=quick, stdout=subprocess.DEVNULL)[0] == 0
    assert names(quick / out) == ['card.pdf']


@pytest.mark.parametrize(
    ('limit', 'said'), [(f'-n {most}', 'Too many open files; next: close other programs') for most in (7, 12)]
)
def test_a_process_that_may_open_no_more_files(limit, said, quick, set_anew):
    line = f'ulimit {limit}; exec "{sys.executable}" -m layouts.command make book.toml'
    done = subprocess.run(['sh', '-c', line], cwd=quick, capture_output=True, text=True, check=False, env=os.environ | {'PYTHONPATH': str(Path(__file__).parent.parent)})  # fmt: skip

    assert (done.returncode, done.stdout, done.stderr.count('\n')) == (2, '', 1)
    assert said in done.stderr
    assert names(quick) == ['book.toml']


def test_memory_that_runs_out_is_told_in_a_line(quick, monkeypatch):
    def full(*words):
        raise MemoryError

    monkeypatch.setattr('layouts.build.join', full)
    line = 'rafterbook: memory has run out; next: close other programs and give the command again\n'
    assert ask('make', 'book.toml') == (2, '', line)
    assert names(quick) == ['book.toml']


def test_a_working_process_that_is_killed_is_told_in_a_line(quick, set_anew, monkeypatch):
    monkeypatch.setattr('layouts.pdf.typeset.set_document', lambda *given: os.kill(os.getpid(), 9))

    assert ask('make', 'book.toml') == (
        2,
        '',
        'rafterbook: typesetter: a process that was setting pages was ended by the system, which does so where '
        'memory runs out; next: close other programs and give the command again\n',
    )
    assert names(quick) == ['book.toml']


@pytest.mark.parametrize('verb', ['make', 'roof'])
@pytest.mark.parametrize(
    'written',
    [
        'pitches = [' + '6,' * 30_000 + ']',
        'pitches = [' + '"1 to 24 by 1/8",' * 3_000 + ']',
        'parts = [' + '"x",' * 900 + ']',
        ''.join(f'titl{place} = 1\n' for place in range(900)),
        '.'.join('a' * 30_000) + ' = 1',
        '[' + '.'.join(['"a"'] * 15_000) + ']',
        'a = ' + '[' * 60_000,
        'a = ' + '{a = ' * 12_000,
        'k' * 5_000 + ' = 1',
        'title = "' + 'x' * 60_000 + '"',
        'pitches = [' + '9' * 50_000 + ']',
        'pitches = [1e999999]',
        '#' * 1_000_000,
    ],
    ids=range(13),
)
def test_a_file_far_too_large_is_refused_at_once(written, verb, quick):
    (quick / 'book.toml').write_text(written)
    began = process_time()
    status, told, remarks = ask(verb, 'book.toml')

    assert process_time() - began < MOST_SECONDS
    assert (status, told) == (2, '')
    lines = remarks.splitlines()
    assert len(lines) <= MOST_LINES
    assert all(len(line) < 3_000 for line in lines)
    assert len(lines) < MOST_LINES or lines[-1] in (
        'rafterbook: book.toml: and 880 more',
        'rafterbook: book.toml: and 881 more',
    )
    assert names(quick) == ['book.toml']


@pytest.mark.parametrize(
    'words',
    [
        ['make', '--pitches', '9' * 5_000],
        ['make', '--pitches', f'1 to {"9" * 5_000}'],
        ['make', '--pitches', '1/1000000000 to 24 by 1/1000000000'],
        ['check', 'square', '--pitches', f'2 to {"9" * 5_000}'],
        ['check', 'square', '--pitches', '2 to 1000000000'],
        ['find', '9' * 5_000, '4 ft'],
        ['data', '--pitches', '1 to 1000000000'],
    ],
)
def test_numbers_past_all_measure_are_refused_at_once(words, quick):
    began = process_time()
    status, told, remarks = ask(*words)

    assert process_time() - began < MOST_SECONDS
    assert (status, told, remarks.count('\n')) == (2, '', 1)
    assert len(remarks) < 700


def test_names_that_begin_with_a_dash_stay_as_they_are(quick):
    (quick / '-1.toml').write_text(QUICK)

    assert ask('card', '-1.toml', '--out', '-5')[0] == 0
    assert names(quick) == ['-1.toml', '-5', 'book.toml']
    assert names(quick / '-5') == ['card.pdf']


@pytest.mark.parametrize('verb', ['make', 'card'])
def test_a_folder_without_a_name_is_refused(verb, quick):
    line = "rafterbook: --out: '' names no folder; next: give a name, or leave it out\n"
    assert ask(verb, 'book.toml', '--out', '') == (2, '', line)


def test_a_letter_has_one_mark_at_most():
    assert read_settings('title = "Re\u0301sume\u0301 q\u0303"', '').title == 'R\u00e9sum\u00e9 q\u0303'
    for title in ('a' + '\u0301' * 40, '\u0301', 'q\u0303\u0301'):
        status, told, remarks = ask('make', '--title', title, '--plan')
        assert (status, told) == (2, '')
        assert 'has marks that would be printed one over the other; allowed: one mark on a letter' in remarks


def test_a_range_may_begin_with_a_fraction():
    rises = [pitch.rise_in for pitch in read_settings('pitches = ["1/2 to 24 by 1/2"]', '').pitches]
    assert rises == [place / 2 for place in range(1, 49)]


def test_names_never_become_markup_and_nothing_is_fetched(quick, no_network):
    """A title and an owner of markup are printed as they stand, on the cover and the card's sheet too."""
    from pypdf import PdfReader

    title, owner = '<img src="http://a.invalid/x.png">', '{{ 7 * 7 }} & <b>'
    assert ask('make', 'book.toml', '--title', title, '--owner', owner)[0] == 0
    book = PdfReader(quick / 'output' / 'booklet.pdf')
    cover = ' '.join(book.pages[0].extract_text().split())

    assert title.replace(' ', '') in cover.replace(' ', '')
    assert owner.replace(' ', '') in cover.replace(' ', '')
    assert (book.metadata.title, book.metadata.author) == (title, owner)
