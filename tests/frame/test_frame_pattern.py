"""Patterns of the members of whole roofs: each cut as the cut list has it, left and right as they stand, alone or all by a list."""

from __future__ import annotations

import json
import re
from collections import Counter

import pseudo
import pytest
from asking import ask
from claimed import claims, strange
from fifty_digits import mpf
from frame_patterns import Told
from full_size import TRUE, datums_off, flat, joined, off_by, pages_of
from inked import inked
from printed_words import told
from reading import mixed
from roof_files import roof
from test_longer_words import english_in
from test_pattern_words import typed_on

from layouts.patterns.listing import list_of, list_pages
from layouts.patterns.make import laid, write_patterns
from layouts.patterns.shown import shared_by
from layouts.sheets.fold import PAPERS_MM
from layouts.words import pattern_list as list_words
from tablegen.frame.frame import frame
from tablegen.frame.roof_file import read_roof
from tablegen.roof.ends import crossings
from tablegen.roof.member import Hand

ROOF = 'kind = "hip"\npitch = 7\nwidth = "24 ft"\nlength = "36 ft"\n'


@pytest.mark.parametrize('kind', ['wing', 'hip', 'bay'])
def test_a_long_point_is_on_the_hand_that_a_roof_s_member_has_it(kind):
    """Towards the ridge at its head, towards the eave at its foot."""
    seen = 0
    for one in frame(roof(kind)).members:
        head, foot = crossings(one.member)
        for end, cut, further in ((one.member.head, head, -1), (one.member.tail, foot, 1)):
            if end.long:
                long, short = (cut.left, cut.right) if end.long is Hand.LEFT else (cut.right, cut.left)
                assert further * (long - short) > 0
                seen += 1
    assert seen > 3


def test_a_member_of_a_roof_file_has_its_mark_and_its_hand(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    (tmp_path / 'a.toml').write_text(ROOF)
    for hand in ('left', 'right'):
        status, said, _ = ask(
            'pattern', '--roof', 'a.toml', '--member', 'HJ3', '--long-side', hand, '--out', 'a.pdf'
        )
        page = ' '.join(told('pdftotext', '-l', '1', 'a.pdf', '-').split())

        assert (status, said.splitlines()[1]) == (0, 'pages 1 to 3: upper end')
        assert 'HJ3, hip jack, 7 in 12, 2×8: upper end' in page
        assert f'The long point is on the {hand} side. Geometry' in page


ROOFS = {
    'blind': """
kind = "wing"
pitch = 7
width = "12 ft"
length = "20 ft"
wing = {width = "8 ft", out = "4 ft", from_left = "6 ft", pitch = 9, valleys = "blind"}
""",
    'wing': """
kind = "wing"
pitch = 6
width = "14 ft"
length = "22 ft"
wing = {width = "9 ft", out = "4 ft", from_left = "6 ft"}
""",
    'two pitches': """
kind = "hip"
pitch = 6
width = "10 ft"
length = "14 ft"
hip = {end_pitch = 9}
cuts = {hips = "backed"}
""",
    'on the ridge': """
kind = "hip"
pitch = 8
width = "9 ft"
length = "12 ft"
ridge.thickness = "3/4 in"
cuts = {hips = "backed", hip_heads = "single"}
""",
    'square tails': """
kind = "hip"
pitch = 6
width = "10 ft"
length = "14 ft"
hip = {end_pitch = 9}
cuts = {tails = "square"}
overhang = {eave = "8 in", fascia = "3/4 in"}
""",
    'gambrel': """
kind = "gambrel"
pitch = 18
width = "14 ft"
length = "8 ft"
gambrel = {upper_pitch = 6, break = "3 ft"}
overhang.gable = "6 in"
""",
    'beam': """
kind = "shed"
pitch = 4
width = "8 ft"
length = "8 ft"
shed = {upper = "over-beam", thickness = "4 1/2 in"}
""",
    'bay': """
kind = "bay"
pitch = 8
bay = {sides = 8, side = "4 ft"}
stock.hips = "2x6"
""",
    'post': """
kind = "many-sided"
pitch = 5
many-sided = {sides = 6, side = "5 ft", post = "6 in"}
""",
}
MARKS = {
    'blind': ('C1', 'LJ1', 'LJ2'),
    'wing': ('C1', 'VJ1', 'CJ', 'CJ1', 'V1', 'V2'),
    'two pitches': ('E', 'H'),
    'on the ridge': ('E', 'HJ1', 'H'),
    'square tails': ('C', 'H'),
    'bay': ('HJ2', 'H'),
    'post': ('H',),
}
"""Members that are printed, where not all are."""
SMALL = """
spacing = "24 in"
stock.rafters = "2x4"
stock.seat = "1 1/2 in"
"""
"""What makes patterns of few pages."""
SHORT = 'overhang.eave = "3 in"\n'


def made_of(name: str) -> str:
    """Return a roof's file."""
    return ROOFS[name] + SMALL + ('' if 'overhang = ' in ROOFS[name] else SHORT)


@pytest.fixture(scope='module')
def printed(tmp_path_factory):
    """Return every piece of all these roofs in one file: its ink, which it is, and the members that it is of as they are told."""
    folder = tmp_path_factory.mktemp('patterns')
    shared, told_of = [], []
    for name in ROOFS:
        file = folder / 'a.toml'
        file.write_text(made_of(name))
        said = ask('roof', str(file), '--format', 'json', '--show', 'members')[1]
        members = [one for one in json.loads(said)['members'] if one['mark'] in MARKS.get(name, one['mark'])]
        known = {(one['mark'], one.get('hand')): Told(one, mpf('1.5')) for one in members}
        framed = [
            one
            for one in frame(read_roof(file.read_text(), 'a.toml', {})).members
            if one.member.name in MARKS.get(name, one.member.name)
        ]
        assert sorted(known, key=str) == sorted(((one.member.name, one.hand) for one in framed), key=str)
        own = shared_by(framed)
        of = [[known[one.member.name, one.hand] for one in piece.of] for piece in own]
        assert {id(one) for some in of for one in some} == {id(one) for one in known.values()}
        shared, told_of = shared + own, told_of + of
    pieces = laid([one.shown for one in shared], 'letter')
    pdf = write_patterns('all', [], pieces, 'letter', folder)
    return [
        (inks, one.shown, of) for inks, one, of in zip(joined(pages_of(pdf)), shared, told_of, strict=True)
    ]


def test_ink_is_where_the_cut_list_has_every_cut(printed):
    """Of every member that shares a piece: by its own angles and marks, as planes."""
    seen = Counter()
    for inks, shown, of in printed:
        part = shown.flat.piece.part
        for member in of:
            wanted, others = (
                flat(lines, member.thick, member.wrapped(part))
                for lines in (member.sawn(part), member.datums(part))
            )
            assert off_by(wanted, inks) < TRUE, (member.said['mark'], part)
            assert datums_off(wanted, others, inks) < TRUE, (member.said['mark'], part)
            seen[member.said['kind']] += 1
    assert len(seen) >= 12


def test_what_the_pages_of_a_roof_say(printed):
    """Every sentence at the head and the foot of their pages and of the list before them."""
    text = []
    for _inks, one, _of in printed:
        _kinds, _, board = one.facts[0].partition('. ')
        text += [board, *one.facts[1:], *one.lengths, *one.joined]
    framed = frame(read_roof(made_of('gambrel'), 'a.toml', {}))
    text += list_words.facts_of(framed) + list_words.sentences_of(framed)
    wanted = claims('pattern')['pages'] + claims('pattern')['roofs']
    used: set[int] = set()

    assert strange('\n'.join(text), wanted, {}, used, in_order=False) == []
    assert [
        one for place, one in enumerate(wanted) if place not in used and one in claims('pattern')['roofs']
    ] == []


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
