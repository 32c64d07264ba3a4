"""The sheets of a hip roof of two pitches: what differs between its slopes, and between the two hands of its hips, is told where it is sawn."""

from __future__ import annotations

import json
import re
import subprocess

import pytest
from claimed import page_text
from mpmath import mpf, sqrt
from roof_files import roof
from test_roof_verb import sixteenths

from layouts.build import build_roof
from layouts.roofs.make import roof_bodies
from layouts.told.roof_answer import roof_json, roof_text
from layouts.words.pattern_pages import title_of
from layouts.words.patterns import plate_of
from tablegen.frame.cut_list import cut_list
from tablegen.frame.frame import frame
from tablegen.frame.pieces import to_buy
from tablegen.roof.member import Kind

MORE = {'pitch': 7, 'width': '24 ft', 'length': '36 ft', 'overhang.eave': '16 in', 'hip.end_pitch': 9}
RISE, STEEP = mpf(7) / 12, mpf(9) / 12
OUT = 16
"""The overhang, level, in; the seat is 3 1/2 in, the stock 7 1/4 in deep."""


@pytest.fixture(scope='module')
def sheets() -> list[str]:
    """Return the words of the sheets of one whose overhangs are equal."""
    framed = frame(roof('hip', **MORE, **{'hip.eaves': 'equal'}))
    return [page_text(body).strip() for body in roof_bodies(framed, to_buy(framed), 'letter')]


def test_the_plan_tells_the_slopes_apart(sheets):
    """Source: eaves at one height: the ends' plates stand higher by what their tails drop more over 16 in."""
    raised = sixteenths(OUT * (STEEP - RISE))

    assert (
        f'front and back: 7 in 12, overhang 16 in; left end and right end: 9 in 12, overhang 16 in, plates {raised} in over the main ones, plumb.'
        in sheets[0]
    )


def test_matched_overhangs_are_told():
    """Source: eaves at one height over plates at one height: the tails drop alike."""
    framed = frame(roof('hip', **MORE))
    plan = page_text(roof_bodies(framed, to_buy(framed), 'letter')[0])

    assert f'left end and right end: 9 in 12, overhang {sixteenths(OUT * RISE / STEEP)} in.' in plan


@pytest.mark.parametrize(
    ('kind', 'more', 'said', 'other'),
    [
        ('saltbox', {}, '7 and 4 in 12', '4 in 12'),
        ('gambrel', {'pitch': '16 1/2'}, '16 1/2 and 4 in 12', '4 in 12'),
        ('half-hip', {'half-hip.end_pitch': '45 deg'}, '7 in 12 and 45°', '45°'),
        ('wing', {'pitch': '30 deg', 'wing.pitch': '35 deg'}, '30° and 35°', '35°'),
        ('hip', {'pitch': 12, 'hip.end_pitch': '45 deg'}, '12 in 12', None),
    ],
)
def test_a_roof_is_named_by_all_its_pitches(kind, more, said, other):
    """Source: what was asked; 45 degrees rise 12 in 12."""
    framed = frame(roof(kind, **more))
    found = cut_list(framed, None)
    plan = page_text(roof_bodies(framed, to_buy(framed), 'letter')[0])

    assert f'{kind} roof, {said}, ' in plan
    assert roof_text(found, ['checks']).splitlines()[0].startswith(f'{kind} roof, {said}, ')
    assert json.loads(roof_json(found, ['checks']))['roof'].get('other_pitch') == other


def test_a_hip_between_two_pitches_is_named_by_both():
    framed = frame(roof('hip', **MORE))
    hip = next(one.member for one in framed.members if one.member.kind is Kind.HIP)

    assert title_of(hip) == 'H, hip, 7 and 9 in 12, 2×8'
    assert re.search(
        r'^  H +hip, 7 and 9 in 12 ', roof_text(cut_list(framed, None), ['members']), re.MULTILINE
    )


def test_both_hands_of_a_hip_are_led_to(sheets):
    assert re.search(r'H left page ?; H right page', sheets[0])
    titles = [one for one in sheets if one.startswith('H hip')]
    assert [one.splitlines()[0] for one in titles] == ['H hip, 7 and 9 in 12, 2×8'] * 2


SMALL = {
    'pitch': 7, 'hip.end_pitch': 9, 'width': '10 ft', 'length': '16 ft', 'spacing': '24 in',
}  # fmt: skip


def printed(tmp_path, **more: object) -> list[str]:
    """Return the lines of each page of a small roof's sheets."""
    framed, out = frame(roof('hip', **{**SMALL, **more})), tmp_path / 'roof.pdf'
    build_roof(framed, to_buy(framed), 'letter', out)
    told = subprocess.run(['pdftotext', '-layout', out, '-'], capture_output=True, text=True, check=True)
    return told.stdout.split('\f')[:-1]


def test_a_member_is_marked_by_one_page(tmp_path):
    """Whatever the cheeks of a hip are: all that is said of it, its cautions last, stands under its title."""
    pages = printed(tmp_path)
    hips = [page for page in pages if page.strip().startswith('H hip')]

    assert len(hips) == 2
    for page in hips:
        assert page.index('Cut from') < page.index('Stands on') < page.index('Caution:')
        (cited,) = re.findall(r'Clauses: page (\d+)', page)
        assert re.search(r'^Cautions$.*^(.*, )?H: .*?R802', pages[int(cited) - 1], re.DOTALL | re.MULTILINE)


def test_clauses_stand_where_closer_lines_leave_them_room(tmp_path):
    """Of a regular hip, whose cheeks are told in fewer words, the lines are set close, and its clauses stay with its cautions."""
    pages = printed(
        tmp_path,
        **{'pitch': 18, 'hip.end_pitch': 18, 'width': '12 ft', 'length': '20 ft', 'spacing': '16 in'},
    )
    (hips,) = [page for page in pages if page.strip().startswith('H hip')]

    assert 'Clauses' not in ''.join(pages)
    assert re.search(r'Caution: Less deep .*?\(IRC[^)]*R802', hips, re.DOTALL)


@pytest.mark.thorough
def test_a_member_s_second_page_is_named(tmp_path):
    pages = printed(tmp_path, spacing='3 in')
    titles = [page.strip().splitlines()[0].strip() for page in pages]
    named = [
        (n, *found.groups())
        for n, title in enumerate(titles)
        if (found := re.fullmatch('(HJ.*): (.) of (.)', title))
    ]
    marks = {one[1] for one in named}

    assert marks
    for mark in marks:
        places, _marks, numbers, of = zip(*(one for one in named if one[1] == mark), strict=True)
        assert places == tuple(range(places[0], places[0] + len(places)))
        assert numbers == tuple(str(n + 1) for n in range(len(places)))
        assert set(of) == {str(len(places))}
        assert pages[places[0]].strip().splitlines()[1].strip().startswith(mark.partition(',')[0])


def test_a_hip_s_heel_stands_on_the_raised_plate(sheets):
    """Source: in plan a hip leaves the eaves' corner, which is 16 in outside both plates, at the angle whose tangent is 9/7, and
    crosses the ends' plate line first; its rise there is that of the ends over 16 in. Its edges stand nearer to the eaves by half its
    thickness times the cosine of its angle to each.
    """
    long = OUT * sqrt(1 + (STEEP / RISE) ** 2 + STEEP**2)
    left = next(one for one in sheets if one.startswith('H hip'))

    assert 'Corner of plates' not in left
    a = mpf(7) / sqrt(mpf(9**2 + 7**2)), mpf(9) / sqrt(mpf(9**2 + 7**2))
    drops = RISE * a[0] * mpf('0.75'), STEEP * a[1] * mpf('0.75')
    assert (
        f'Top edge dropped {sixteenths(drops[1])} in, plumb, on its center: its top stays square, its edge towards the front or back '
        f'{sixteenths(drops[1] - drops[0])} in low'
    ) in left
    (row,) = [line for line in left.splitlines() if 'Raised plate’s line: heel' in line]
    assert row.endswith(sixteenths(long))


def test_the_hips_of_a_wing_of_another_pitch_are_dropped_by_its_own():
    """Source: its end and sides are of one pitch, so both edges of a hip come down by half its thickness times the rise over √2."""
    wing = {'wing.pitch': 9, 'wing.end': 'hip', 'wing.width': '8 ft', 'wing.from_left': '10 ft'}
    framed = frame(roof('wing', **{'pitch': 6, **wing}))
    (hips,) = [
        text
        for body in roof_bodies(framed, to_buy(framed), 'letter')
        if (text := page_text(body).strip()).startswith('H hip')
    ]

    drop = sixteenths(mpf('0.75') * STEEP / sqrt(mpf(2)))
    assert f'Top edge dropped {drop} in, plumb, on its center: its top stays square\n' in hips


def test_an_l_s_side_is_told_the_height_of_the_ridge_that_its_rafters_stand_at():
    """Source: ridges of one height, the wing's set down by half its thickness times the wing's rise, 9, the main one by 6."""
    wing = {
        'wing.pitch': 9,
        'wing.main_ends': 1,
        'wing.from_left': 0,
        'wing.width': '16 ft',
        'wing.out': '10 ft',
    }
    framed = frame(roof('wing', **{'pitch': 6, 'width': '24 ft', **wing}))
    (sections,) = [
        text
        for body in roof_bodies(framed, to_buy(framed), 'letter')
        if (text := page_text(body).strip()).startswith('Section')
    ]

    main, own = re.findall(r'top of the ridge ([\d /]+)', sections)
    assert (main, own) == (
        sixteenths(mpf(main_meet(6)) - mpf('0.75') * 6 / 12),
        sixteenths(mpf(main_meet(6)) - mpf('0.75') * STEEP),
    )


def main_meet(rise: int) -> mpf:
    """Return where the planes meet over the plates: height above plate and rise over 12 ft of run."""
    slope = mpf(rise) / 12
    return mpf('7.25') * sqrt(1 + slope**2) - mpf('3.5') * slope + 144 * slope


def test_its_pattern_names_the_raised_plate_too():
    """The same heel, traced."""
    (hip, _right) = [
        one for one in frame(roof('hip', **MORE, **{'hip.eaves': 'equal'})).members if one.member.name == 'H'
    ]

    assert plate_of(hip.member) == 'raised plate’s line'
    matched = [one for one in frame(roof('hip', **MORE)).members if one.member.name == 'H']
    assert plate_of(matched[0].member) == 'corner of the plates'
