"""Patterns at full size: the ink of the finished pages against boards, ridges and plates in space, at their true size."""

from __future__ import annotations

from fractions import Fraction

import pytest
from asking import ask
from fifty_digits import mpf
from full_size import TRUE, beside, flat, joined, off_by, pages_of
from oracle import sawn, seats
from oracle.boards import LEFT, RIGHT, TOP, Board
from oracle.corner import corner
from oracle.planes import ORIGIN, UP, Plane, plane
from printed_words import faults_of
from pypdf import PdfReader

from layouts.sheets.fold import PAPERS_MM

RUN = 144
DEPTHS = {'2x6': mpf('5.5'), '2x8': mpf('7.25'), '2x12': mpf('11.25')}
"""Dressed, in, as the lumber standard has them: PS 20."""


def common(rise, size, seat, out):
    """Return what is sawn at both ends of a common, on its left side; its ridge is 1 1/2 in thick."""
    place, depth = corner(rise), DEPTHS[size]
    board = Board(place.rafter(0, mpf('1.5')), place.across_a(RUN), depth, mpf('1.5'))
    plates = Plane(UP, -seats.height_above_plate(place, depth, seat))
    head = board.plumb(LEFT, sawn.ridge_face(place, RUN, mpf('1.5')))
    tail = board.plumb(LEFT, sawn.fascia(place, out))
    return [[head], [*board.mouth(place.across_a(0), plates), tail]]


def hip_or_valley(rise, size, rafter, seat, out, valley=False):
    """Return what is sawn: a hip at a ridge over A, which lies at its right; a valley between two ridges."""
    place, depth, thick = corner(rise), DEPTHS[size], mpf('1.5')
    over = seats.height_above_plate(place, DEPTHS[rafter], seat)
    member = place.hip_board(thick)
    height = over if valley else seats.hip_height(place, over, thick)
    top = member.top.lifted(height - over)
    ends = plane(place.on_hip(place.across_a(RUN)), place.hip_level)
    board = Board(member, ends, depth, thick, top)
    ridge = sawn.ridge_face(place, RUN, thick)
    head = board.crossed(ridge, sawn.ridge_face_b(place, RUN, thick) if valley else ridge)
    fascias = sawn.fascia(place, out), sawn.fascia_b(place, out)
    tail = board.crossed(*(fascias if valley else reversed(fascias)))
    out_in = seats.valley_back(place, thick) if valley else mpf(0)
    heel = Plane(plane(ORIGIN, place.hip_level).normal, -out_in)
    return [head, board.mouth(heel, Plane(UP, -over)), tail]


def hip_jack(rise, size, seat, out):
    """Return what is sawn of a jack of A, its pair's long point on the left; the hip 1 1/2 in thick, at the one's left.

    It stands so far from the corner as its run is long. Its pair is the same board in a mirror.
    """
    place, depth, thick = corner(rise), DEPTHS[size], mpf('1.5')
    board = Board(place.rafter(RUN, thick), place.across_a(RUN), depth, thick)
    plates = Plane(UP, -seats.height_above_plate(place, depth, seat))
    hip = place.hip_side(thick)
    tail = board.plumb(LEFT, sawn.fascia(place, out))
    return [mirrored(board.crossed(hip, hip), thick), [*board.mouth(place.across_a(0), plates), tail]]


def mirrored(lines, thick):
    """Return the lines of a board's other hand."""
    other = {LEFT: RIGHT, RIGHT: LEFT}
    over = [(face, *((x, thick - y) for x, y in ends)) for face, *ends in lines if face == TOP]
    return over + [(other[face], *ends) for face, *ends in lines if face != TOP]


ASKED = {
    'common 7 in 12': (
        ['7', '--stock', '2x6', '--seat', '3', '--overhang', '12 in', '--paper', 'a4'],
        lambda: common(7, '2x6', 3, 12), 'a4', 'ridge plumb cut',
    ),
    'hip 12 in 12': (
        ['12', '--member', 'hip', '--stock', '2x8', '--hip-stock', '2x12', '--overhang', '10 in'],
        lambda: hip_or_valley(12, '2x12', '2x8', Fraction(7, 2), 10), 'letter', 'ridge plumb cut',
    ),
    'valley 5 in 12': (
        ['5', '--member', 'valley', '--stock', '2x6', '--overhang', '9 in'],
        lambda: hip_or_valley(5, '2x6', '2x6', Fraction(7, 2), 9, valley=True), 'letter', 'plumb cut between ridges',
    ),
    'hip jack 8 in 12': (
        ['8', '--member', 'hip-jack', '--stock', '2x6', '--long-side', 'left'],
        lambda: hip_jack(8, '2x6', Fraction(7, 2), 12), 'letter', 'plumb cut at the hip',
    ),
}  # fmt: skip
"""Words after the verb, what is sawn of each piece, the paper, and what the cut at the upper end is called."""


@pytest.fixture(scope='module')
def made(tmp_path_factory):
    """Every pattern, made once."""
    folder, found = tmp_path_factory.mktemp('patterns'), {}
    for name, (words, *_rest) in ASKED.items():
        pdf = folder / f'{name}.pdf'
        status, said, _ = ask('pattern', *words, '--out', str(pdf))
        found[name] = pdf, pages_of(pdf)
        assert (status, said.partition(',')[0]) == (0, f'{pdf}: {len(found[name][1])} pages')
    return found


@pytest.mark.parametrize('name', ASKED)
def test_ink_is_true(made, name):
    """All that is sawn is drawn where it is, in one place on the paper for the piece as a whole, and nothing else is."""
    _words, model, *_rest = ASKED[name]
    for inks, lines in zip(joined(made[name][1]), model(), strict=True):
        assert off_by(flat(lines, mpf('1.5'), any(face != LEFT for face, *_ in lines)), inks) < TRUE


@pytest.mark.parametrize('name', ASKED)
def test_every_page_can_be_checked_with_a_rule_and_none_needs_the_papers_edge(made, name):
    pdf, pages = made[name]
    paper = PAPERS_MM[ASKED[name][2]]
    for number, page in enumerate(pages, 1):
        assert sorted((page.wide, page.high)) == pytest.approx(sorted(paper), abs=0.02)
        bars = [ink for ink in page.inks if ink.long == pytest.approx(101.6, abs=0.02)]
        assert sorted(ink.a[1] == ink.b[1] for ink in bars) == [False, True]
        for bar in bars:
            ticks = [
                ink.middle for ink in page.inks if 0.5 < ink.long < 2 and beside(ink.middle, bar.a, bar.b) < 1
            ]
            reach = sorted({round(abs(x - bar.a[0]) if bar.a[1] == bar.b[1] else abs(y - bar.b[1]), 2) for x, y in ticks})  # fmt: skip
            assert [one for one in reach if one > 1] == pytest.approx([100.0, 101.6], abs=0.02)
            if bar.a[1] == bar.b[1]:
                hundred, four = (min((w for w in page.words if w.text == text), key=lambda w: abs(w.base - bar.a[1])) for text in ('100', '4'))  # fmt: skip
                assert (
                    bar.a[0] + 80
                    < hundred.left
                    < hundred.right
                    < bar.a[0] + 100
                    < bar.b[0]
                    < four.left
                    < bar.b[0] + 2
                )
                assert hundred.base < bar.a[1] < four.base
        points = [point for ink in page.inks for point in (ink.a, ink.b)]
        points += [
            corner_ for word in page.words for corner_ in ((word.left, word.top), (word.right, word.foot))
        ]
        assert all(x + 0.05 >= 8 and x - 0.05 <= page.wide - 8 for x, _y in points)
        assert all(y + 0.05 >= 8 and y - 0.05 <= page.high - 8 for _x, y in points)
        assert f'page {number} of {len(pages)}' in page.said
        assert 'Print at 100 %, actual size' in page.said
        assert 'Geometry, not strength.' in page.said
    assert PdfReader(pdf).viewer_preferences.print_scaling == '/None'  # actual size: ISO 32000-1, 12.2
    assert faults_of(pdf) == ''
