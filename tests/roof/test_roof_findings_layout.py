"""Findings of a measured pitch, of a rectangle and its diagonals, and of a brace."""

from fractions import Fraction

from layouts.told.objects import as_data
from tablegen.geometry import finding_pitch
from tablegen.numbers.figure import Measure
from tablegen.roof.layout import brace, pitch_found, rectangle, rectangle_check


def test_a_found_pitch():
    """A level of 24 in with 13⅛ in under its end: 6.5625 in 12, a sixteenth over the half."""
    data = as_data(pitch_found(finding_pitch.from_level_and_tape(Fraction(24), Fraction(105, 8)), Measure()))

    assert data['rise_per_foot']['inches'] == '6.562500000'
    assert data['nearest_half_pitch'] == '6 1/2 in 12'
    assert data['off_by_per_foot']['inches'] == '0.062500000'


def test_a_layout_out_of_square():
    """24 by 32 ft with diagonals 40 ft 1 in and 39 ft 11 in: (481² − 479²)/(4 · 384) = 1.25 in."""
    sides, diagonals = (Fraction(384), Fraction(288)), (Fraction(481), Fraction(479))
    data = as_data(rectangle_check(*sides, *diagonals, Measure()))
    turned = as_data(rectangle_check(*sides, *reversed(diagonals), Measure()))

    assert data['diagonals_should_be']['inches'] == '480.000000000'
    assert data['push_along_length']['inches'] == turned['push_along_length']['inches'] == '1.250000000'
    assert data['verdict'] == 'first_is_longer'
    assert turned['verdict'] == 'second_is_longer'
    assert as_data(rectangle_check(*sides, Fraction(480), Fraction(480), Measure()))['verdict'] == 'square'


def test_a_rectangle_and_a_brace():
    """3-4-5 by eight feet: 24 by 32 ft has a diagonal of 40 ft."""
    assert (
        as_data(rectangle(Fraction(288), Fraction(384), Measure()))['diagonal']['inches'] == '480.000000000'
    )
    data = as_data(brace(Fraction(36), Fraction(48), Measure()))
    assert data['length']['inches'] == '60.000000000'
    assert data['cut_on_leg']['degrees'] == '36.869897646'
    assert data['cut_on_other_leg']['degrees'] == '53.130102354'
