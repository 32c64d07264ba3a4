"""Figures among the words of the pages on ridges' ends, hips' ends and blades past 45, each worked out in space."""

from __future__ import annotations

from fractions import Fraction

import pytest
from fifty_digits import mp, mpf, real
from oracle import cuts, framing_square, hip_ends, shortening
from oracle.corner import corner
from oracle.rounding import degrees, least, part
from skewed import HIP, RAFTER, RIDGE

DRAWN = corner(Fraction(15, 2))
"""Of the skewed book's two pitches the one nearer to 8 in 12."""


def said(book, template: str) -> str:
    (number,) = book.numbers(template)
    return ' '.join(word.text for word in book.words(number))


def test_the_end_of_a_ridge(skewed):
    """Ridge 3/4, hips 3 1/2, commons 1 3/4: the end common is the thicker, so that it is clipped."""
    page = said(skewed, 'ref_ridge_end')
    between = shortening.past_end_between_commons(DRAWN, RAFTER)
    on_ridge = shortening.past_end_between_hips(DRAWN, RIDGE, HIP)
    slope, down = real(Fraction(15, 2)) / 12, shortening.sits_down(DRAWN, RIDGE)
    clip = (real(RAFTER) - real(RIDGE)) / 2  # at 45 degrees as far back as it goes in

    assert f'{part(between)} in {part(on_ridge)} in' in page
    assert f'here each side from {part(clip)} in back' in page
    assert (
        f'stands over it by {part(on_ridge * slope - down)} in with the hips on it, '
        f'by {part(between * slope - down)} in between commons' in page
    )


def test_where_a_hips_sides_are_cut(skewed):
    page = said(skewed, 'ref_hip_ends')
    level, along = hip_ends.set_back(DRAWN, HIP)
    top = cuts.hip_cheek(DRAWN)

    assert page.count(f'{part(level)} in') == 1 + 8  # in the words, and at eight arrows
    assert f'along the top edge {part(along)} in at 7 1/2 in 12' in page
    assert (
        f'{degrees(cuts.hip_saw(DRAWN))} on the side, from square across, blade at {degrees(cuts.hip_blade(DRAWN), 0)}'
        in page
    )
    assert (
        f'on a square top {degrees(top)} from square across, 12 & {part(framing_square.figure_against_12(top))}'
        in page
    )
    assert hip_ends.hip_cheek_at_fascia(DRAWN) == pytest.approx(top)


def test_what_a_blade_past_45_must_reach(skewed):
    page = said(skewed, 'ref_past_scale')
    reaches = [least(real(RAFTER) / mp.cos(mpf(tilt) * mp.pi / 180)) for tilt in (50, 60, 70)]

    assert (
        f'1 3/4 in stock asks for {reaches[0]} in at 50°, {reaches[1]} in at 60°, {reaches[2]} in at 70°'
        in page
    )
    assert page.index('By hand, first') < page.index('circular saw only where its blade reaches')


@pytest.mark.parametrize(
    ('template', 'cited'),
    [
        ('ref_tail', 'page-hip_ends'),
        ('ref_unequal', 'page-past_scale'),
        ('ref_many_sided', 'page-past_scale'),
    ],
)
def test_a_page_that_is_cited_has_what_it_is_cited_for(skewed, template, cited):
    number = skewed.made.planned.index[cited]

    assert f'page {number}' in said(skewed, template)
    assert skewed.made.pages[number - 1].template == f'ref_{cited.removeprefix("page-")}'


def test_jacks_points_are_read_on_the_pages_of_their_pitch(skewed):
    index = skewed.made.planned.index

    assert f'page {index["jacks:5 in 12"]} and on' in said(skewed, 'ref_jack_deductions')
