"""Roofs at the edge of what can be framed: past it they are refused in a line, and what that line allows goes together."""

from __future__ import annotations

import re
from fractions import Fraction as F

import pytest
from frame_roofs import asked
from msgspec.structs import replace
from test_frame_together import goes_together, put_together

from layouts.words.error import error_lines
from tablegen.errors import BookError
from tablegen.frame.asked import Asked, Hip, HipHead, HipTop, RidgeBoard, Valleys, Wing
from tablegen.frame.frame import frame
from tablegen.geometry.pitch import Pitch
from tablegen.written.lengths import length
from tablegen.written.pitches import pitch
from tablegen.written.stocks import stock

THIN = RidgeBoard(F(3, 4))
SHORT = ': the ridge left on {given} in is too short for the commons at the hips’ heads; allowed: {least} in or more'
NO_HIP = ': the two ridges stand so near in height that no hip is left between them; allowed: up to {most} in, or {level} in for ridges of one height'


def hip(ends: int = 2, end: str = '', **more) -> Asked:
    return asked(
        Hip(ends, pitch(end) if end else None), 6, 144, 0, spacing_in=F(24), hips=stock('2×10'), **more
    )


def wing(own: Pitch | None = None, **more) -> Asked:
    kind = Wing(F(0), F(90), F(0), own, main_ends=1)
    return asked(kind, 6, 144, 280, spacing_in=F(24), hips=stock('2×10'), **more)


def one_fault(roof: Asked) -> str:
    with pytest.raises(BookError) as caught:
        frame(roof)
    (line,) = error_lines(caught.value)
    return line


def wide(roof: Asked, width: F) -> Asked:
    return replace(roof, kind=replace(roof.kind, width_in=width))


@pytest.mark.parametrize(
    ('roof', 'given', 'least'),
    [
        # between commons: two beside one another on the ridge, or a hip's and the gable's, whose outer face is the gable's
        (hip(), 144 + F(1), '145 1/2'),
        (hip(end='9', ridge=THIN), 96 + F(23, 16), '97 1/2'),
        (hip(1), 72 + F(2), '74 1/4'),
        # single: one common between the hips' sides, which leave a 3/4 or 1 1/2 in ridge 1.061 - 0.375 or - 0.75 in past its end
        (hip(hip_head=HipHead.SINGLE), 144 + F(2), '146 1/8'),
        (hip(hip_head=HipHead.SINGLE, ridge=THIN), 144 + F(11, 4), '146 7/8'),
        (hip(1, hip_head=HipHead.SINGLE), 72 + F(3), '75 5/16'),
    ],
)
def test_a_ridge_that_its_commons_have_no_room_on(roof, given, least):
    words = SHORT.format(
        given=str(given) if given.denominator == 1 else f'{given // 1} {given % 1}', least=least
    )

    assert one_fault(replace(roof, length_in=given)) == f'length{words}'
    assert goes_together(put_together(replace(roof, length_in=length(least, '')))) == []


@pytest.mark.parametrize(
    ('roof', 'level'),
    [
        (wing(), '144'),
        (wing(pitch('9'), hip_head=HipHead.SINGLE, ridge=THIN), '96'),
        (wing(pitch('4'), hip_top=HipTop.BACKED), '216'),
    ],
)
def test_an_ell_s_ridge_that_is_hardly_lower(roof, level):
    """It is refused a sixteenth under the main ridge's width, and a sixteenth over what it is told to be at most."""
    line = one_fault(wide(roof, F(level) - F(1, 16)))
    most = re.search('up to (.+) in,', line)[1]

    assert line == f'wing.width{NO_HIP.format(most=most, level=level)}'
    assert one_fault(wide(roof, length(most, '') + F(1, 16))) == line
    assert F(level) - 6 < length(most, '')
    assert goes_together(put_together(wide(roof, length(most, '')))) == []


def test_a_wing_flush_with_a_gable():
    """The wing of 9 in 12 has eaves 12 · 6/9 in out: the gable's barge has to end beside them, not over them."""
    flush = asked(Wing(F(80), F(60), F(0), pitch('9')), 6, 144, 220, spacing_in=F(24))

    assert one_fault(replace(flush, gable_overhang_in=F(127, 16))) == (
        'overhang.gable: the main roof’s gable would end over the eave of the wing that is flush with it; allowed: 8 in or more'
    )
    assert goes_together(put_together(replace(flush, gable_overhang_in=F(8)))) == []


NOT_IN = (
    'wing.from_left: {place} in does not leave room for the wing and the overhang on the front; allowed: between 12 in and 124 in; '
    'next: or put it flush with an end, as an L'
)


NO_FRONT = 'wing.width: the wing leaves no room for the overhang on the front; allowed: up to 208 in'


def test_a_wing_s_hips_that_leave_no_ridge():
    """At 4 in 12 it reaches 2/3 of its half width into the main front of 6, 24 in; its hips meet 36 in from its end, and on either
    side of the ridge there has to be a jack."""
    flat = asked(Wing(F(72), F(13), F(60), pitch('4'), hipped=True), 6, 144, 220, spacing_in=F(24))

    assert (
        one_fault(flat)
        == 'wing.out: the wing’s hips leave no ridge before the main roof; allowed: 15 3/16 in or more'
    )
    assert goes_together(put_together(replace(flat, kind=replace(flat.kind, out_in=F(243, 16))))) == []


@pytest.mark.parametrize(
    ('kind', 'line'),
    [
        (Wing(F(84), F(60), F(11)), NOT_IN.format(place=11)),
        (Wing(F(84), F(60), F(125)), NOT_IN.format(place=125)),
        (Wing(F(84), F(60), F(133), main_ends=2), NOT_IN.format(place=133)),
        *((Wing(F(209), F(60), F(place), pitch('4'), main_ends=2), NO_FRONT) for place in (0, 5, 11)),
        (
            Wing(F(84), F(60), F(0), main_ends=1, valleys=Valleys.BLIND),
            'wing.valleys: a wing flush with the main roof’s end cannot be laid on its roof: it needs valley rafters; allowed: both',
        ),
        (
            Wing(F(84), F(12), F(60)),
            'wing.out: the wing does not stand out past the main roof’s eaves; allowed: more than 12 in',
        ),
        (
            Wing(F(129), F(60), F(0), pitch('9'), main_ends=1),
            'wing.width: the wing’s ridge would stand over the main one; allowed: up to 96 in',
        ),
    ],
)
def test_wings_that_cannot_be(kind, line):
    assert one_fault(asked(kind, 6, 144, 220)) == line


def test_a_hipped_wing_whose_commons_would_stand_in_the_inside_corners():
    """Its hips meet 40 in from its end, so their commons would stand where both roofs' plates do; at 42 1/8 in beside the valleys."""
    short = asked(Wing(F(80), F(40), F(60), pitch('9'), hipped=True), 6, 144, 240, spacing_in=F(24))

    assert one_fault(short) == (
        'wing.out: the commons that the wing’s hips are cut to would stand in the inside corners; allowed: 42 1/8 in or more'
    )
    assert goes_together(put_together(replace(short, kind=replace(short.kind, out_in=F(337, 8))))) == []
    single = replace(short, hip_head=HipHead.SINGLE)
    assert goes_together(put_together(single)) == []


@pytest.mark.parametrize(
    'more',
    [
        # 3 1/2 in, past the end common beside it, and past the hips' sides beside the main commons
        {'ridge': RidgeBoard(F(7, 2)), 'kind': Hip(2, pitch('4'))},
        # past the point where the center lines meet a jack's place is still the hip's: its side comes to the ridge farther on
        {'ridge': THIN, 'kind': Hip(1, pitch('4')), 'first_in': F(25, 2)},
    ],
)
def test_the_last_jacks_stop_on_the_hip_before_they_come_to_the_ridge(more):
    assert goes_together(put_together(replace(hip(hip_head=HipHead.SINGLE), length_in=F(320), **more))) == []


def test_the_last_valley_jack_of_a_wing_is_no_sliver():
    """One that would stand 2 1/4 in from where ridge and valleys meet, with no wood between its points, stands farther off; without it
    the bay would be wider than 24 in."""
    wing = Wing(F(44), F(40), F(60), pitch('9'), hipped=True)

    assert goes_together(put_together(asked(wing, 6, 144, 260, spacing_in=F(24)))) == []
