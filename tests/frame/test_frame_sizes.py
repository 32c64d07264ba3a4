"""Sizes of a roof that do not go together, told in a line under their key; limits worked out by hand."""

from __future__ import annotations

import pytest
from mpmath import pi, tan
from roof_files import HOUSE, roof, told, told_of

from tablegen.frame.roof_file import read_roof

TOO_LONG = "overhang.eave: the tails would be longer than the rafters' run: such a tail cannot be; allowed: between 0 in and {most}"
SIZES = {
    # 24 ft wide: runs of 12 ft, and a rise of 7 ft at 7 in 12
    ('gable', 'overhang.eave = "12 ft 1 in"'): TOO_LONG.format(most='144 in'),
    ('gable', 'overhang = {eave = "1/2 in", fascia = "3/4", measured_to = "fascia"}'):
        'overhang.eave: is less than the fascia that it is measured over; allowed: the thickness of the fascia or more',
    ('gable', 'overhang.measured_to = "fascia"'): 'overhang.measured_to: there is no fascia to measure to; next: measure the overhang to the framing',
    ('gable', 'overhang = {measured_to = "fascia", fascia = 1}\ncuts.tails = "square"'):
        'overhang.measured_to: the fascia on square tails is not plumb, and no level distance is its own; next: measure the overhang to the framing',
    ('gable', 'overhang.gable = "18 ft 1 in"'): "overhang.gable: is more than half of the building's length; allowed: up to 18 ft",
    ('gable', 'spacing = "1 1/2"'): 'spacing: rafters 1 1/2 in on center have no space between them; allowed: more than 1 1/2 in',
    ('gable', 'first = "16 1/8"'): 'first: leaves more than a space before the first rafter; allowed: up to 16 in',
    ('gable', 'buy.allowance = "101 %"'): "buy.allowance: '101 %' is no share; allowed: percent from 0 to 100, such as 10 %",
    ('gable', 'buy.kerf = "9/16"'): "buy.kerf: '9/16' is out of range; allowed: up to 1/2 in",
    # 2×8 is 7 1/4 in deep; at 45 degrees a seat of 10 5/16 in is a notch of 7.29
    ('hip', 'stock.seat = "10 5/16 in"\nhip.end_pitch = 12'):
        'stock.seat: its notch is 7.29 in deep and the stock 7 1/4 in; allowed: a seat of 5.12 in leaves half of the stock',
}  # fmt: skip


@pytest.mark.parametrize(('kind', 'more'), SIZES)
def test_sizes_that_do_not_go_together(kind, more):
    assert told_of(kind, more) == [SIZES[kind, more]]


def test_a_gambrel_s_upper_slopes_are_flatter_than_its_lower_ones():
    gambrel = f'kind = "gambrel"\n{HOUSE}gambrel = {{break = "6 ft", upper_pitch = '

    assert read_roof(gambrel + '"6 15/16"}', '')
    assert told(gambrel + '7}') == [
        'gambrel.upper_pitch: 7 in 12 is no flatter than the lower slopes; allowed: flatter than 7 in 12'
    ]


def test_a_regular_roof_s_overhang_is_held_against_its_run():
    """Eight sides of 5 ft: 2.5 ft / tan 22.5 degrees from the middle to a side, 72.43 in: down to the sixteenth below."""
    run = 30 / tan(pi / 8)

    assert roof('many-sided', f'overhang.eave = {float(run - 0.001)}')
    assert told_of('many-sided', f'overhang.eave = {float(run + 0.001)}') == [
        TOO_LONG.format(most='72 3/8 in')
    ]
