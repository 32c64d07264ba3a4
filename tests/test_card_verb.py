"""The verb card, as a user calls it; and the card that make puts beside the booklet."""

from __future__ import annotations

import pytest
from asking import ask
from pypdf import PdfReader

PITCHES = 'a pitch such as 6, 6/12, 6 in 12, 6:12, 7.5, 7 1/2 or 26.565 deg, above 0 and up to 24 in 12'


def test_it_says_what_is_on_the_card(tmp_path):
    status, told, remarks = ask('card', '--size', 'id-1', '--pitches', '4,6,8,12', '--out', str(tmp_path))

    assert (status, remarks.startswith('made in ')) == (0, True)
    assert told == (
        f'{tmp_path}/card.pdf: 1 card of two sides, id-1, 85.6 × 53.98 mm; 9 on a sheet, 1 sheet, '
        'flip on the short edge\n'
        '4 pitches, 4, 6, 8, 12 in 12, on the front and how to use it\n'
        'columns: plumb cut, common per foot, hip per foot, jacks at 16, jacks at 24, cheek of jacks, '
        'cheek of the hip\n'
        'no room for: level cut, plumb cut of the hip, jacks at 12, jacks at 19.2, backing, drop of the hip\n'
    )
    assert [path.name for path in tmp_path.iterdir()] == ['card.pdf']
    assert len(PdfReader(tmp_path / 'card.pdf').pages) == 2


def test_a_settings_file_gives_paper_and_pitches(tmp_path):
    book = tmp_path / 'book.toml'
    book.write_text('paper = "a4"\npitches = ["30 deg"]\n', 'utf-8')
    status, told, _ = ask('card', str(book), '--size', 'index', '--out', str(tmp_path))

    assert status == 0
    assert told.splitlines()[1] == (
        '30°, runs 1 ft to 24 ft by the foot on the front: common, hip and valley, rise'
    )
    width, height = PdfReader(tmp_path / 'card.pdf').pages[0].mediabox[2:]
    assert sorted((float(width), float(height))) == pytest.approx([595.28, 841.89], abs=0.01)


@pytest.mark.parametrize(
    ('words', 'line'),
    [
        (
            ['--size', 'b5'],
            "--size: 'b5' is no size of card; allowed: id-1, index, a6, half-letter, letter; "
            'next: see rafterbook card --help',
        ),
        (
            ['--pitches', '4,thirty'],
            f"--pitches[2]: 'thirty' is no pitch; allowed: {PITCHES}; next: see rafterbook card --help",
        ),
        (
            ['--pitches', '30'],
            f"--pitches: '30' is over 24 in 12; allowed: {PITCHES}; next: if it is meant, say so: "
            'steep = true in the settings, --steep on the command line',
        ),
        (
            ['no-such.toml'],
            'no-such.toml: there is no such file; next: rafterbook settings --out my-book.toml makes one to start from',
        ),
    ],
)
def test_a_mistake_is_told_in_a_line_and_nothing_is_made(tmp_path, words, line):
    out = tmp_path / 'out'

    assert ask('card', *words, '--out', str(out)) == (2, '', f'rafterbook: {line}\n')
    assert not out.exists()


def test_a_card_bigger_than_the_paper_is_told_in_a_line(tmp_path):
    (tmp_path / 'book.toml').write_text('paper = "a4"\n', 'utf-8')
    asked = ask('card', str(tmp_path / 'book.toml'), '--size', 'letter', '--out', str(tmp_path / 'out'))

    assert asked == (
        2,
        '',
        "rafterbook: --size: 'letter' is bigger than a4 paper; next: take a smaller card, or set paper = 'letter'\n",
    )
    assert not (tmp_path / 'out').exists()


def test_a_book_in_large_print_has_a_large_card(tmp_path):
    (tmp_path / 'book.toml').write_text('trim = "large"\n', 'utf-8')
    status, told, _ = ask('card', str(tmp_path / 'book.toml'), '--out', str(tmp_path))

    assert status == 0
    assert ': 1 card of two sides, half-letter, ' in told.splitlines()[0]


def test_an_earlier_card_stays_where_a_new_one_fails(tmp_path):
    (tmp_path / 'card.pdf').write_bytes(b'earlier')

    assert ask('card', '--size', 'b5', '--out', str(tmp_path))[0] == 2
    assert (tmp_path / 'card.pdf').read_bytes() == b'earlier'


def test_steep_pitches_pass_where_they_are_meant(tmp_path):
    status, told, _ = ask('card', '--pitches', '30', '--steep', '--out', str(tmp_path))

    assert status == 0
    assert '\n30 in 12, runs ' in told


def test_make_puts_the_same_card_beside_the_booklet(tmp_path):
    book = tmp_path / 'book.toml'
    book.write_text('pitches = [4, 6]\nparts = ["values"]\n', 'utf-8')
    status, told, _ = ask('make', str(book), '--out', str(tmp_path / 'book'))
    _, said, _ = ask('card', str(book), '--out', str(tmp_path / 'alone'))

    assert status == 0
    assert {path.name for path in (tmp_path / 'book').iterdir()} == {'booklet.pdf', 'sheets.pdf', 'card.pdf'}
    assert told.splitlines()[2] == said.splitlines()[0].replace('alone', 'book')
    assert (tmp_path / 'book' / 'card.pdf').read_bytes() == (tmp_path / 'alone' / 'card.pdf').read_bytes()
