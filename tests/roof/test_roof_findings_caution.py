"""Cautions of the findings: who calls for each, by which number, with which clause."""

from fractions import Fraction

import pytest
from msgspec.structs import replace

from layouts.told.objects import as_data
from tablegen.geometry.many_sided import regular_corner
from tablegen.roof.called import cautions_of, corner_cautions, shed_cautions
from tablegen.roof.question import Boards, RoofQuestion
from tablegen.roof.side import side, sides
from tablegen.written.pitches import pitch
from tablegen.written.stocks import stock

ASK = RoofQuestion(pitch('8'), Fraction(120), hip_stock=stock('2x10'), valley_stock=stock('2x10'))
"""Hips and valleys deeper than the rafters' plumb cut, 7.25 · √208/12 = 8.71 in."""


def one_pitch(ask):
    """Return a side of a roof of one pitch."""
    return side(ask.pitch, ask)


def told(rows):
    """Return the cautions as a program reads them."""
    return as_data(rows)


def called(rows, member):
    """Return the names of the cautions that a member calls for."""
    return [one['name'] for one in told(rows) if member in one['of']]


@pytest.mark.parametrize(
    ('changes', 'roof', 'commons'),
    [
        ({}, [], ['deep_notch']),
        ({'pitch': pitch('2')}, ['low_slope'], []),
        ({'pitch': pitch('3'), 'overhang_in': Fraction(24)}, [], []),
        ({'pitch': pitch('3'), 'overhang_in': Fraction(25)}, [], ['long_tail']),
        ({'pitch': pitch('9'), 'seat_in': Fraction(1)}, ['steep'], ['short_seat']),
        ({'pitch': pitch('4'), 'seat_in': Fraction(3, 2)}, [], ['short_seat_on_masonry']),
        ({'pitch': pitch('4'), 'seat_in': Fraction(3)}, [], []),
        (
            {'stock': stock('2x4'), 'seat_in': Fraction(2), 'pitch': pitch('4')},
            [],
            ['thin_tail', 'short_seat_on_masonry'],
        ),
        (
            {'stock': stock('2x4'), 'seat_in': Fraction(2), 'pitch': pitch('4'), 'overhang_in': Fraction(0)},
            [],
            ['short_seat_on_masonry'],
        ),
    ],
)
def test_cautions_stand_where_the_numbers_call_for_them(changes, roof, commons):
    rows = cautions_of(one_pitch(replace(ASK, **changes)))

    assert called(rows, 'roof') == roof
    assert called(rows, 'commons') == commons


def test_a_tail_makes_a_deep_notch_one_that_is_not_at_an_end():
    with_tail, without = (
        next(
            one
            for one in told(cautions_of(one_pitch(replace(ASK, overhang_in=Fraction(out)))))
            if one['name'] == 'deep_notch'
        )
        for out in (12, 0)
    )

    assert 'not at the end of the member' in with_tail['text']
    assert 'R802.7.1.1' in with_tail['source']
    assert 'not at the end of the member' not in without['text']
    assert 'later editions refer to R502.8.1' in without['source']


def test_every_caution_has_its_clause():
    for changes in ({}, {'pitch': pitch('2')}, {'pitch': pitch('9'), 'overhang_in': Fraction(30)}):
        rows = told(cautions_of(one_pitch(replace(ASK, **changes))))
        assert rows
        assert all('R802.' in one['source'] or 'common practice, no source' in one['source'] for one in rows)


def test_a_corner_has_the_cautions_of_both_sides():
    """Side B, 12 in 12, is steep; its seat's notch takes 2.74 of 7.25 in, past a third: 7.25 − 6.38 cos 45°."""
    rows = corner_cautions(*sides(ASK.pitch, ASK, pitch('12')))

    assert called(rows, 'side_a') == []
    assert called(rows, 'side_b') == ['steep']
    assert called(rows, 'commons_of_a') == called(rows, 'commons_of_b') == ['deep_notch']
    (third,) = [one for one in told(rows) if 'commons_of_b' in one['of']]
    assert 'more than a third' in third['text']
    assert 'commons_of_a' not in third['of']


def test_a_low_side_b_is_cautioned_too():
    rows = corner_cautions(*sides(ASK.pitch, ASK, pitch('2')))

    assert called(rows, 'side_b') == ['low_slope']
    assert called(rows, 'side_a') == []


def test_a_hip_is_cautioned_of_its_own_notch():
    """2×12 hip at 8 in 12: 11.25 − 6.0265 cos H = 5.8 of 11.25 in, past a third; the commons' is past a quarter."""
    rows = told(cautions_of(one_pitch(replace(ASK, hip_stock=stock('2x12')))))
    (deep,) = [one for one in rows if 'a third' in one['text'] and 'hips_dropped' in one['of']]

    assert 'commons' not in deep['of']


def test_a_hip_shallower_than_the_rafters_cut_end_is_named():
    """2×8 hips at 8 in 12 are 7.25 in deep, the rafters' plumb cut is 8.71; a 2×10 is deeper, at 3 in 12 neither is."""
    shallow = cautions_of(one_pitch(RoofQuestion(pitch('8'), Fraction(120))))
    (one,) = [one for one in told(shallow) if one['name'] == 'shallow_hip']

    assert one['of'] == ['hips', 'valleys']
    assert one['source'] == 'IRC 2006 and 2009 R802.3; 2018 and later R802.4.3'
    assert 'shallow_hip' not in [one['name'] for one in told(cautions_of(one_pitch(ASK)))]
    hips_only = cautions_of(one_pitch(replace(ASK, valley_stock=None)))
    assert called(hips_only, 'hips') == []
    assert called(hips_only, 'valleys') == ['shallow_hip']


def test_a_many_sided_roof_has_no_cautions_of_valleys():
    rows = cautions_of(side(pitch('8'), Boards(), regular_corner(pitch('8').slope, 8)), with_valley=False)

    assert called(rows, 'valleys') == []
    assert called(rows, 'hips') == ['shallow_hip']


def test_a_low_shed_has_no_ridge_to_be_designed():
    rows = told(shed_cautions(one_pitch(replace(ASK, pitch=pitch('2')))))

    assert [one['name'] for one in rows] == ['low_slope']
    assert 'ridge' not in rows[0]['text']
    assert rows[0]['source'] == 'IRC 2021 R905.2.2 to R905.15.1'
