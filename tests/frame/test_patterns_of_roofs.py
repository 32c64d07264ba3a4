"""Patterns of a roof file as they are asked for: all of them after a list that leads to each, or one by its mark."""

from __future__ import annotations

import json
import re

import pseudo
import pytest
from asking import ask
from fifty_digits import mpf
from inked import inked
from printed_words import told
from reading import mixed
from test_frame_pattern import made_of
from test_longer_words import english_in
from test_pattern_words import typed_on

from layouts.patterns.listing import list_of, list_pages
from layouts.patterns.make import laid
from layouts.patterns.shown import shared_by
from layouts.sheets.fold import PAPERS_MM
from tablegen.frame.frame import frame
from tablegen.frame.roof_file import read_roof

ROOF = 'kind = "hip"\npitch = 7\nwidth = "24 ft"\nlength = "36 ft"\n'


def test_a_member_of_a_roof_file_has_its_mark_and_its_hand(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    (tmp_path / 'a.toml').write_text(ROOF)
    for hand in ('left', 'right'):
        status, said, _ = ask(
            'pattern', '--roof', 'a.toml', '--member', 'HJ3', '--long-side', hand, '--out', 'a.pdf'
        )
        page = ' '.join(told('pdftotext', '-l', '1', 'a.pdf', '-').split())

        assert (status, said.splitlines()[1]) == (0, 'pages 1 to 3: upper end')
        assert f'HJ3 {hand}, hip jack, 7 in 12, 2×8: upper end' in page
        assert f'The long point is on the {hand} side. Geometry' in page


def test_the_list_leads_to_every_part_of_every_member(tmp_path, monkeypatch):
    """Each row's pages are turned to: their head names the mark and the part; its lengths are those of the tape on the cut list."""
    monkeypatch.chdir(tmp_path)
    (tmp_path / 'a.toml').write_text(made_of('on the ridge'))
    members = json.loads(ask('roof', 'a.toml', '--format', 'json', '--show', 'members')[1])['members']
    status, said, _ = ask('pattern', '--roof', 'a.toml', '--out', 'a.pdf')
    first, *others = told('pdftotext', '-layout', 'a.pdf', '-').split('\f')[:-1]
    rows = [
        re.split(r' {2,}', line.strip())
        for line in first.splitlines()
        if re.match(r' *[A-Z]+\d* .*\d', line) and 'pattern' not in line
    ]
    heads = [page.splitlines()[0] for page in others]
    upper = r'upper end, +bird’s mouth, +tail or lower +upper cut to +plate line +upper cut to'
    lower = r'mark +hand +what +number +pages +pages +end, pages +plate line +to tail’s cut +lower cut'

    assert re.search(rf'{upper}\n *{lower}', first)
    assert (status, said.partition(',')[0]) == (0, f'a.pdf: {len(others) + 1} pages')
    assert [row[0] for row in rows] == [one['mark'] for one in members]
    for row, member in zip(rows, members, strict=True):
        mark, *hand = row[: 1 + ('hand' in member)]
        assert hand == ([member['hand']] if hand else [])
        kind, number, *pages = row[1 + len(hand) :][:5]
        assert (kind, number) == (member['kind'].replace('_', ' '), str(member['number']))
        for name, at in zip(('upper end', 'bird’s mouth', 'tail'), pages, strict=True):
            start, _, end = at.partition('–')
            for page in range(int(start), int(end or start) + 1):
                assert re.search(rf'\b{mark}\b', heads[page - 2])
                assert name in heads[page - 2]
                hands = {*re.findall('left|right', heads[page - 2])}
                assert hands <= set(hand)
        at = {one['line']: mpf(one['at']['inches']) for one in member['marks']}
        head, plate, tail = at.get('cut', at.get('point')), at['plate'], at['tail']
        lengths = (plate - head, tail - plate, tail - head)
        assert [mixed(one) for one in row[-3:]] == [sixteenths(one) for one in lengths]


def test_a_list_of_longer_words_has_room_and_leaves_no_english(tmp_path):
    framed = frame(read_roof(made_of('gambrel'), 'a.toml', {}))
    with pseudo.spoken(tmp_path):
        shared, listed = shared_by(framed.members), list_of(framed, 'a4')
        pieces = laid([one.shown for one in shared], 'a4', listed.pages)
        (page,) = list_pages(listed, shared, pieces)
    lefts = {float(left) for left in re.findall(r'left:([\d.]+)mm', page)}
    assert max(lefts) < PAPERS_MM['a4'][0] - 20
    assert inked(page).collisions() == []
    assert english_in(' '.join(typed_on(page))) == [
        'Gambrel',
        'LO',
        'UB',
        'UR',
    ]  # as they are typed


def sixteenths(length):
    return int(length * 16 + mpf('0.5')) / 16


@pytest.mark.parametrize(
    ('asked', 'line'),
    [
        (['--roof', 'a.toml', '--member', 'X'], "--member: 'X' is unknown; allowed: C, E, HJ1, HJ2,"),
        (['--roof', 'a.toml', '--member', 'R'], '--member: R needs no pattern: it is level or stands plumb; allowed: C, E,'),
        (['--roof', 'a.toml', '--long-side', 'left'], '--long-side: all members are printed, of both hands; next: give --member'),
        (['8', '--roof', 'a.toml', '--member', 'C'], 'PITCH: the roof file says it; next: leave PITCH out'),
        (['--roof', 'a.toml', '--member', 'C', '--seat', '3'], '--seat: the roof file says it; next: leave --seat out'),
        (['--roof', 'a.toml', '--member', 'C', '--long-side', 'left'], '--long-side: the roof has none of that hand'),
        (['--roof', 'b.toml', '--member', 'C'], 'b.toml: there is no such file; next: rafterbook roof --starter'),
        ([], 'PITCH: is missing; next: give it, or a roof file with --roof'),
    ],
)  # fmt: skip
def test_what_a_roof_file_says_is_not_said_twice(asked, line, tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    (tmp_path / 'a.toml').write_text(ROOF)
    status, said, remarks = ask('pattern', *asked)

    assert (status, said) == (2, '')
    assert remarks.startswith(f'rafterbook: {line}')
    assert [path.name for path in tmp_path.iterdir()] == ['a.toml']
