"""What a pattern says: each line by its name beside it, where it touches nothing; its sentences, claim by claim; its refusals."""

from __future__ import annotations

import re
from fractions import Fraction
from html import unescape
from math import atan, degrees

import pseudo
import pytest
from asking import ask
from claimed import claims, strange
from inked import inked
from test_longer_words import english_in

from layouts.patterns.make import laid
from layouts.patterns.page import page_drawing
from layouts.patterns.shown import shown_of
from layouts.words import pattern_pages as words
from tablegen.geometry.pitch import pitch_of_rise
from tablegen.numbers.figure import Measure
from tablegen.roof import framing
from tablegen.roof.member import Stop
from tablegen.roof.members import Members
from tablegen.roof.pattern import pattern_of
from tablegen.roof.plane import Plane
from tablegen.roof.question import Boards
from tablegen.roof.side import side
from tablegen.written.stocks import stock

HEADS = {
    'common': 'ridge plumb cut',
    'shed': 'plumb cut at the ledger',
    'jack': 'plumb cut at the hip',
    'hip': 'ridge plumb cut',
    'between': 'plumb cut between commons',
    'valley': 'plumb cut between ridges',
}
UPPER_ENDS = {'shed': 'WALL', 'jack': 'HIP'}
MAKERS = {
    'common': lambda of: framing.common('', of),
    'shed': lambda of: framing.shed_rafter('', of, Fraction(3, 2)),
    'jack': lambda of: framing.hip_jack('', of, of.run_in),
    'hip': lambda of: framing.hip('', of),
    'between': lambda of: framing.hip('', of, Stop.COMMONS),
    'valley': lambda of: framing.valley('', of),
}
ON_THE_MAP = re.compile(r'through "\d+"')
"""Numbers of pages, over the small lines of their piece."""
PITCH = 'a pitch such as 6, 6/12, 6 in 12, 6:12, 7.5, 7 1/2 or 26.565 deg, above 0 and up to 24 in 12'


def whole(kind: str, rise: str = '7', size: str = '2x6', out: str = '12'):
    boards = Boards(stock=stock(size), seat_in=Fraction(3), overhang_in=Fraction(out))
    of = Plane(Members(side(pitch_of_rise(Fraction(rise)), boards)), Fraction(144), Measure())
    return pattern_of(MAKERS[kind](of))


def drawings(pattern, paper='letter'):
    """Return the drawing of every page, piece by piece."""
    pieces = laid(shown_of(pattern, run_known=True), paper)
    return [
        [inked(page_drawing(one, page, pieces[-1].last)) for page in range(one.last - one.first + 1)]
        for one in pieces
    ]


def typed_on(page):
    """Return the lines of type that stand on a page beside its drawing."""
    return [unescape(line) for line in re.findall(r'<p [^>]*>([^<]*)</p>', page)]


@pytest.mark.parametrize(
    ('kind', 'rise', 'size', 'out', 'paper'),
    [
        ('common', '7', '2x6', '12', 'letter'),
        ('common', '3', '2x8', '24', 'a4'),
        ('shed', '2', '2x12', '0', 'letter'),
        ('jack', '15/2', '2x8', '16', 'a4'),
        ('hip', '12', '2x12', '12', 'letter'),
        ('between', '9', '2x10', '8', 'a4'),
        ('valley', '3', '2x6', '12', 'letter'),
    ],
)
def test_every_line_is_named_beside_it_and_no_word_meets_ink(kind, rise, size, out, paper):
    pieces = drawings(whole(kind, rise, size, out), paper)
    for pages in pieces:
        for page in pages:
            assert [one for one in page.collisions() if not ON_THE_MAP.search(one)] == []
    head, *_middle, tail = ([label.text for page in pages for label in page.labels] for pages in pieces)
    body = [label.text for pages in pieces for page in pages for label in page.labels]
    assert {HEADS[kind], 'waste', UPPER_ENDS.get(kind, 'RIDGE'), 'TAIL'} <= set(head)
    assert {'tail plumb cut', 'waste', 'TAIL'} <= set(tail)
    assert ('cheek, top edge' in head) == (kind not in ('common', 'shed'))
    for name in ('seat', 'heel', 'top edge', 'bottom edge'):
        assert any(one.partition(':')[0] == name for one in body), name


CUT, DATUM, EDGE = (0.45, False), (0.2, True), (0.3, False)
"""Width of ink, mm, and whether it is dashed: of what is sawn, of what is measured from, and of the board's own edges."""
LINES = {
    'ridge plumb cut': (CUT, 'plumb'),
    'tail plumb cut': (CUT, 'plumb'),
    'heel': (CUT, 'plumb'),
    'seat': (CUT, 'level'),
    'ridge center line': (DATUM, 'plumb'),
    'plate line': (DATUM, 'plumb'),
    'top edge': (EDGE, 'edge'),
    'bottom edge': (EDGE, 'edge'),
}


@pytest.mark.parametrize('rise', ['3', '7', '12'])
def test_a_name_stands_at_its_line(rise):
    """Its ink, and which way it goes on a board that lies on its side: plumb, level, or along the edge."""
    slope = degrees(atan(int(rise) / 12))
    ways = {'plumb': slope - 90, 'level': slope, 'edge': 0.0}
    found = {}
    for page in (page for pages in drawings(whole('common', rise)) for page in pages):
        for label in page.labels:
            name = label.text.partition(':')[0]
            if name in LINES:
                ink, way = LINES[name]
                away = {one: label.away(*one.points[:2]) for one in page.drawn.strokes}
                near = [
                    one for one in away if away[one] < min(away.values()) + 0.1
                ]  # a line may end at another
                (own,) = [one for one in near if (one.width, one.dashed) == ink]
                assert label.turn == pytest.approx(ways[way], abs=0.05)
                found[name] = label, own
    assert set(found) == set(LINES)
    assert found['top edge'][1].points[0][1] < found['bottom edge'][1].points[0][1]
    assert found['ridge center line'][0].at[0] < found['ridge plumb cut'][0].at[0]


def test_lengths_on_a_pattern_are_those_of_the_board():
    """Worked by hand of 7 in 12, a 2×6 on a seat of 3 in, a tail of 12 in; 12² + 7² is 193."""
    pattern = whole('common')
    said = {label.text for pages in drawings(pattern) for page in pages for label in page.labels}
    said |= {line for one in shown_of(pattern, run_known=True) for line in one.lengths}

    assert (
        {
            'seat: 3 in, level',
            'heel: 1 3/4 in, plumb',  # 3 · 7/12
            'plate line: 4 5/8 in, plumb, seat to top edge',  # 5.5 √193/12 − 1.75 is 4.617
            'From the plate line to the tail’s cut, along the center of the top edge: 13 7/8 in.',  # √193 is 13.892
            'From the cut to the plate line, along the center of the top edge: 165 13/16 in.',  # 143.25 √193/12 is 165.84
        }
        <= said
    )
    assert words.lengths_of(pattern, pattern.pieces[0], run_known=False) == []


def test_the_left_side_lies_under_the_top_edge_and_the_right_one_over_it():
    (head, *_rest) = drawings(whole('hip'))
    y = {label.text: label.at[1] for label in head[0].labels}

    assert y['RIGHT SIDE'] < y['TOP EDGE'] < y['LEFT SIDE']


def test_what_pages_say():
    """Every sentence at the head and the foot of every kind of page."""
    text = []
    for kind in MAKERS:
        pattern = whole(kind, '9', '2x6', '25')
        for piece in pattern.pieces:
            text += [words.head_of(words.title_of(pattern.member), pattern, piece)]
            text += (
                words.facts_of(pattern, piece)
                + words.lengths_of(pattern, piece, True)
                + words.tops_of(pattern)
            )
            text += [one for joined in (False, True) for one in words.sentences_of(pattern, piece, joined)]
        text += words.cautions_of([pattern.member])
    wanted, used = claims('pattern')['pages'], set()
    assert strange('\n'.join(text), wanted, {}, used, in_order=False) == []
    assert [wanted[place] for place in sorted(set(range(len(wanted))) - used)] == []


def test_it_says_what_is_on_which_page_and_what_to_look_out_for(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    status, said, remarks = ask('pattern', '7', '--stock', '2x6', '--seat', '3')

    assert (status, remarks) == (0, '')
    assert said.splitlines()[:4] == [
        'output/pattern.pdf: 3 pages, letter paper',
        'page 1: upper end',
        'pages 2 to 3: bird’s mouth and tail',
        'print at 100 %, actual size, and hold a rule against both bars before you trace',
    ]
    assert 'Geometry, not strength. Local code and a licensed designer decide.' in said
    assert [path.name for path in (tmp_path / 'output').iterdir()] == ['pattern.pdf']


@pytest.mark.parametrize(
    ('asked', 'line'),
    [
        (['30'], f"PITCH: '30' is over 24 in 12; allowed: {PITCH}"),
        (['7', '--member', 'jack'], "--member: 'jack' is unknown; allowed: common, shed, hip-jack, hip,"),
        (['7', '--hip-stock', '2x8'], '--hip-stock: a pattern of common has no use for it; next: leave --hip-stock out'),
        (['7', '--member', 'valley', '--long-side', 'left'], '--long-side: a pattern of valley has no use for it'),
        (['7', '--member', 'hip', '--long-side', 'up'], "--long-side: 'up' is unknown; allowed: left, right"),
        (['7', '--seat', '15'], '--seat: its notch is 7.56 in deep and the stock 7 1/4 in; allowed: a seat of 7.19 in'),
        (['7', '--overhang', '9 ft', '--run', '8 ft'], '--overhang: 108 in is more than the run, 96 in'),
        (['7', '--run', '1/2'], "--run: on a run of '1/2' nothing is left of it; next: give a longer run"),
        (['12', '--member', 'hip', '--stock', '2x12', '--hip-stock', '2x6'], '--hip-stock: 2×6 gets no bird\'s mouth there that matches the rafters\''),
        (['7', '--overhang', '90 ft'], '--overhang: its pattern would take'),
        (['7', '--out', 'pattern.svg'], "--out: 'pattern.svg' is no PDF; allowed: a name that ends in .pdf"),
        (['7', '--paper', 'a3'], "--paper: 'a3' is unknown; allowed: letter, a4"),
    ],
)  # fmt: skip
def test_it_refuses_in_a_line_and_writes_nothing(asked, line, tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    status, said, remarks = ask('pattern', *asked)

    assert (status, said) == (2, '')
    assert remarks.startswith(f'rafterbook: {line}')
    assert len(remarks.splitlines()) == 1
    assert list(tmp_path.iterdir()) == []


def test_a_language_of_longer_words_has_room_and_leaves_no_english(tmp_path):
    with pseudo.spoken(tmp_path):
        pieces = laid(shown_of(whole('hip', '8', '2x8'), run_known=True), 'letter')
        made = [page_drawing(one, 0, 9) for one in pieces]
        pages = [inked(one) for one in made]
        assert [one for page in pages for one in page.collisions() if not ON_THE_MAP.search(one)] == []
        said = {label.text for page in pages for label in page.labels} | set(typed_on(''.join(made)))
    assert english_in(' '.join(said)) == ['left']  # as it is typed, after --long-side
