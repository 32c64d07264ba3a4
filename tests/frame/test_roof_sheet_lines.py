"""What the sheets of a roof say of ends, joints, studs and layouts: each sentence by what the roof is, worked out beside it."""

from __future__ import annotations

import re
from fractions import Fraction
from itertools import accumulate

from claimed import page_text
from inked import inked
from printed_words import words_of
from roof_files import roof
from test_roof_sheets import HALF, ROOT2, SLOPE, bodies
from test_roof_verb import sixteenths

from layouts.build import build_roof
from layouts.roofs.make import SIDE_MM, roof_bodies
from layouts.sheets.fold import PAPERS_MM
from tablegen.frame.frame import frame
from tablegen.frame.pieces import to_buy


def test_steps_end_where_a_mark_or_the_line_of_what_stops_a_board_is(tmp_path):
    """Source: of a wing flush with rafters 16 in apart, out 10 ft, the first common behind its inside corner is 7 1/4 in on: at one pitch
    the valley's center line runs at 45 degrees from that corner, so its tail meets that line 7 1/4 in outside the plate, level.
    """
    framed = frame(roof('wing'))
    found = [page_text(body).strip() for body in roof_bodies(framed, to_buy(framed), 'letter')]
    (common,) = [one for one in found if one.startswith('C1 common')]
    (valley_jacks,) = [one for one in found if one.startswith('VJ1')]
    (through,) = [one for one in found if one.startswith('C2, C4 common')]
    rise = sixteenths(7.25 * SLOPE)

    assert (
        f'Tail’s steps from mark 2: 0 whole, then 7 1/4 on the body & {rise} on the tongue, to the center line of what stops it below'
        in common
    )
    assert 'Tail’s steps from mark 2: 1 whole, to mark 3' in through
    assert 'Steps from line c, the ridge center line, to mark 2: the whole ones' in through
    assert (
        'Steps from line c, the ridge center line, to the center line of what stops it below: the whole'
        in valley_jacks
    )


def test_a_ridge_and_a_purlin_of_several_parts_are_joined_at_rafters():
    """Source: rafters stand 16 in apart from the left end of the plate; over a gable the ridge begins 16 in outside it."""
    for kind, mark, outside in (('gable', 'R', 16), ('gambrel', 'P2', 0), ('wing', 'R', 0)):
        words = page_text(bodies(kind)[-1])
        lengths = {
            int(part): Fraction(sum(map(Fraction, length.split())))
            for part, length in re.findall(rf'\b{mark} part (\d) of \d, ([\d /]+) in', words)
        }
        joints = list(accumulate(lengths[part] for part in sorted(lengths)))

        assert len(joints) > 1, kind
        assert [(one - outside) % 16 for one in joints[:-1]] == [0] * (len(joints) - 1), kind


def test_a_gable_stud_tells_the_slope_that_it_stands_under():
    """Source: it is cut as its slope's plumb cut, 7 in 12 at 30.26° in front and 4 in 12 at 18.43° behind."""
    rows = re.findall(r'^GS\d+ .* ([\d.]+)° (.*)$', page_text(bodies('saltbox')[-1]), re.MULTILINE)

    assert len(rows) > 10
    assert set(rows) == {('30.26', 'front'), ('18.43', 'back')}


def test_an_end_common_is_cut_to_the_end_of_the_ridge():
    """Source: hips of one cheek lie against a ridge that runs on past where the planes meet, by half a hip's thickness and half the ridge's, askew."""
    framed = frame(roof('hip', **{'cuts.hip_heads': 'single'}))
    (sheet,) = [body for body in roof_bodies(framed, to_buy(framed), 'letter') if '<h1>E<' in body]
    past = HALF * ROOT2 + HALF

    assert f'{sixteenths(past)} in level: up to the end of the ridge' in page_text(sheet)


def test_an_end_at_a_post_is_no_ridge_s():
    framed = frame(roof('many-sided', **{'many-sided.post': '8 in'}))
    (sheet,) = [body for body in roof_bodies(framed, to_buy(framed), 'letter') if '<h1>H<' in body]
    labels = [one.text for one in inked(*re.findall('<img[^>]*>', sheet)).labels]

    assert 'UPPER END' in labels
    assert 'RIDGE' not in labels


def test_a_layout_of_plates_stands_within_its_margins(tmp_path):
    """Feet and inches to the sixty-fourth are the longest figures that there are; on the narrower paper."""
    framed = frame(roof('wing', lengths='feet-inches', smallest_part='1/64', **{'wing.from_left': '8 ft'}))
    build_roof(framed, to_buy(framed), 'a4', tmp_path / 'roof.pdf')
    width, _height = PAPERS_MM['a4']
    heads = ('Layout of the plates', 'back: plate line')
    pages = [
        page
        for page in words_of(tmp_path / 'roof.pdf')
        if ' '.join(word.text for word in page).startswith(heads)
    ]

    assert pages
    assert [word for page in pages for word in page if word.right > width - SIDE_MM + 0.5] == []
