"""Sizes of a roof that do not go together, told in a line under their key; limits worked out by hand."""

from __future__ import annotations

import pytest
from mpmath import pi, tan
from roof_files import HOUSE, SMALLEST, roof, told, told_of

from tablegen.frame.roof_file import read_roof

TOO_LONG = "overhang.eave: the tails would be longer than the rafters' run: such a tail cannot be; allowed: from 0 up to the run"
SIZES = {
    # 24 ft wide: runs of 12 ft, and a rise of 7 ft at 7 in 12
    ('gable', 'overhang.eave = "12 ft 1 in"'): TOO_LONG,
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
    # each end plane runs back 7 ft / (4/12) = 21 ft
    ('hip', 'hip.end_pitch = 4'): 'length: the hips of its ends meet before they reach a ridge: the building is 36 ft long; next: make it longer, or turn width and length round',
    ('saltbox', 'saltbox.back_plate_below = "8 ft"'):
        'saltbox.back_plate_below: the back plate lies so low that the ridge would stand over the front wall, or before it; allowed: plates closer in height, or a steeper back',
    }  # fmt: skip


@pytest.mark.parametrize(('kind', 'more'), SIZES)
def test_sizes_that_do_not_go_together(kind, more):
    line = SIZES[kind, more]
    own = SMALLEST[kind]
    if more.startswith('saltbox'):
        own, more = HOUSE, f'saltbox = {{back_pitch = 4, {more.partition(".")[2]}}}'

    assert told(f'kind = "{kind}"\n{own}\n{more}') == [line]


@pytest.mark.parametrize(
    ('kind', 'own', 'line'),
    [
        ('gambrel', 'gambrel = {upper_pitch = 4, break = "12 ft"}', 'gambrel.break: lies at the ridge or past it; allowed: above 0 and below 12 ft'),
        ('gambrel', 'gambrel = {upper_pitch = 7, break = "6 ft"}\noverhang.eave = 0',
         'gambrel.upper_pitch: 7 in 12 is no flatter than the lower slopes; allowed: flatter than 7 in 12'),
        ('half-hip', 'half-hip.gable_rise = "7 ft"', 'half-hip.gable_rise: lies at the ridge or past it; allowed: less than the rise of the main roof'),
        ('wing', 'wing = {width = "16 ft", out = "9 ft", from_left = "20 ft 1 in"}',
         'wing.from_left, wing.width: the wing stands past the end of the building, which is 36 ft long; next: move it to the left, or make it narrower'),
        ('wing', 'wing = {width = "24 ft 1/16 in", out = "9 ft", from_left = 0}',
         'wing.width: its ridge would stand over the main one; next: make it narrower or flatter, or call the wing the main building'),
        ('wing', 'wing = {width = "24 ft", out = "9 ft", from_left = 0, pitch = "7 1/16"}',
         'wing.width: its ridge would stand over the main one; next: make it narrower or flatter, or call the wing the main building'),
    ],
)  # fmt: skip
def test_breaks_wings_and_half_hips_past_the_ridge(kind, own, line):
    assert told(f'kind = "{kind}"\n{HOUSE}{own}') == [line]


@pytest.mark.parametrize(
    ('kind', 'own'),
    [
        ('half-hip', 'half-hip.gable_rise = "6 ft 11 in"'),
        ('wing', 'wing = {width = "24 ft", out = "9 ft", from_left = "12 ft"}'),
        ('gambrel', 'gambrel = {upper_pitch = "6 15/16", break = "11 ft 11 in"}'),
        (
            'hip',
            'hip.end_pitch = "4 11/16"',
        ),  # two ends of 7 ft over 4 2/3 in 12, 18 ft, would meet in a point
    ],
)
def test_sizes_at_their_limit_go_together(kind, own):
    assert read_roof(f'kind = "{kind}"\n{HOUSE}{own}', '')


def test_a_regular_roof_s_overhang_is_held_against_its_run():
    """Eight sides of 5 ft: 2.5 ft / tan 22.5 degrees from the middle to a side."""
    run = 30 / tan(pi / 8)

    assert roof('many-sided', f'overhang.eave = {float(run - 0.001)}')
    assert told_of('many-sided', f'overhang.eave = {float(run + 0.001)}') == [TOO_LONG]
