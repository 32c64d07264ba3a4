"""Patterns of the members of whole roofs: each cut as the cut list has it, left and right as they stand, those alike once."""

from __future__ import annotations

import json
from collections import Counter

import pytest
from asking import ask
from claimed import claims, strange
from each import some
from fifty_digits import mpf
from frame_patterns import Told
from frame_roofs import FIXED
from full_size import TRUE, datums_off, flat, joined, off_by, pages_of
from inked import inked
from roof_files import roof

from layouts.patterns.make import laid, write_patterns
from layouts.patterns.page import page_drawing
from layouts.patterns.shown import shared_by
from layouts.words import pattern_list as list_words
from layouts.words.patterns import line_names
from tablegen.frame.frame import frame
from tablegen.frame.roof_file import read_roof
from tablegen.roof.ends import crossings
from tablegen.roof.member import Hand
from tablegen.roof.pattern import Face, Name, Part


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
    'bay': ('HJ2', 'H1', 'H2'),
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


WHOLE = {Part.HEAD, Part.TAIL}, {Part.HEAD, Part.MOUTH_AND_TAIL}, {Part.HEAD, Part.MOUTH, Part.TAIL}


@pytest.mark.parametrize(
    'name', some([*FIXED, *(f'square tails: {kind}' for kind in ('gable', 'hip', 'wing', 'bay'))])
)
def test_no_member_of_any_kind_of_roof_lacks_a_part_or_a_name(name):
    """Both ends of each, and the bird's mouth of each that has one; every line of every piece is called something."""
    kind = name.removeprefix('square tails: ')
    members = frame(FIXED[name] if name in FIXED else roof(kind, 'cuts.tails = "square"')).members
    shared = shared_by(members)
    for framed in members:
        own = [one.shown.flat.piece for one in shared if any(framed is it for it in one.of)]
        parts = {piece.part for piece in own}
        assert parts in WHOLE
        assert len(own) == len(parts)
        assert bool(parts & {Part.MOUTH, Part.MOUTH_AND_TAIL}) == (framed.member.mouth is not None)
        drawn = {stroke.name for piece in own for stroke in piece.strokes}
        assert drawn >= {Name.HEAD, Name.TAIL}
        assert (Name.SEAT in drawn) == (framed.member.mouth is not None)
    assert all(
        line_names(one.shown.whole, line.name, line.face)[0]
        for one in shared
        for line in one.shown.flat.lines
    )


@pytest.mark.parametrize('hand', list(Hand))
def test_a_bay_s_hip_beside_the_wall_is_cut_to_it_on_the_wall_s_side(printed, hand):
    (one,) = [shown for _inks, shown, _of in printed if shown.title == f'H1 {hand}: upper end']
    cuts = {face: line_names(one.whole, Name.HEAD, Face(face))[0] for face in Hand}

    assert cuts == {hand: 'plumb cut at the wall', hand.other: 'plumb cut at the peak'}


def test_every_line_of_a_roof_s_patterns_is_named_and_all_waste_is_crossed(printed):
    """On one page at least of its piece, beside it; the lines over the top edge in less words where they are short."""
    for one in laid([shown for _inks, shown, _of in printed], 'a4'):
        pages = [inked(page_drawing(one, page, 99)) for page in range(one.sheet.tiling.count)]
        said = Counter(label.text for page in pages for label in page.labels)
        for line in one.shown.flat.lines:
            assert any(name in said for name in line_names(one.shown.whole, line.name, line.face)), (
                one.shown.title
            )
        assert said['waste'] >= len(one.shown.flat.wastes)


def test_what_the_pages_of_a_roof_say(printed):
    """Every sentence at the head and the foot of their pages and of the list before them."""
    text = []
    for _inks, one, _of in printed:
        _kinds, _, board = one.facts[0].partition('. ')
        text += [board, *one.facts[1:], *one.lengths, *one.joined]
    framed = frame(read_roof(made_of('gambrel'), 'a.toml', {}))
    text += list_words.facts_of(framed) + list_words.sentences_of(framed)
    *_others, bare = frame(roof('hip', 'stock = {rafters = "2x12", hips = "2x4"}')).members
    text += [line for one in shared_by([bare]) for line in one.shown.lengths]
    wanted = claims('pattern')['pages'] + claims('pattern')['roofs']
    used: set[int] = set()

    assert strange('\n'.join(text), wanted, {}, used, in_order=False) == []
    assert [
        one for place, one in enumerate(wanted) if place not in used and one in claims('pattern')['roofs']
    ] == []
