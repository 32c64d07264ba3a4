"""Findings of a measured pitch, of a rectangle and its diagonals, and of a brace."""

from fractions import Fraction

from tablegen.geometry import finding_pitch
from tablegen.numbers.figure import Measure
from tablegen.roof.layout import brace, pitch_found, rectangle, rectangle_check
from tablegen.roof.readings import as_data


def test_a_found_pitch():
    """A level of 24 in with 13⅛ in under its end: 6.5625 in 12, a sixteenth over the half."""
    data = as_data(pitch_found(finding_pitch.from_level_and_tape(Fraction(24), Fraction(105, 8)), Measure()))

    assert data['rise_per_foot_in'] == '6.562500000'
    assert data['nearest_half_pitch'] == '6 1/2 in 12'
    assert data['off_by_per_foot_in'] == '0.062500000'


def test_a_layout_out_of_square():
    """24 by 32 ft with diagonals 40 ft 1 in and 39 ft 11 in: (481² − 479²)/(4 · 384) = 1.25 in."""
    sides, diagonals = (Fraction(384), Fraction(288)), (Fraction(481), Fraction(479))
    data = as_data(rectangle_check(*sides, *diagonals, Measure()))
    turned = as_data(rectangle_check(*sides, *reversed(diagonals), Measure()))

    assert data['diagonals_should_be_in'] == '480.000000000'
    assert data['push_along_length_in'] == turned['push_along_length_in'] == '1.250000000'
    assert data['verdict'] == 'the first diagonal is the longer'
    assert turned['verdict'] == 'the second diagonal is the longer'
    assert as_data(rectangle_check(*sides, Fraction(480), Fraction(480), Measure()))['verdict'] == 'square'


def test_a_rectangle_and_a_brace():
    """3-4-5 by eight feet: 24 by 32 ft has a diagonal of 40 ft."""
    assert as_data(rectangle(Fraction(288), Fraction(384), Measure()))['diagonal_in'] == '480.000000000'
    data = as_data(brace(Fraction(36), Fraction(48), Measure()))
    assert data['length_in'] == '60.000000000'
    assert data['cut_on_leg_deg'] == '36.869898'
    assert data['cut_on_other_leg_deg'] == '53.130102'
