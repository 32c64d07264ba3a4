"""Every caution of `find`: who calls for it, worked out in space from the limits of the code, and in which words."""

from __future__ import annotations

import json
from fractions import Fraction

import pytest
from asking import ask
from claimed import claims, strange
from fifty_digits import mp, mpf, real
from labels.asked import HIPS, ROOF, VALLEYS
from labels.expected import DEPTHS
from oracle import seats, tails
from oracle.corner import corner

LEFT, OUT, ON_WOOD, ON_MASONRY = mpf(7) / 2, 24, mpf(3) / 2, 3
"""in: IRC 2024 R802.7.1.1 (and 2006 and 2009 R802.7.1: 4 in nominal); R802.6; tests/authorities/residential-code.toml."""
FLAT, STEEP = 3, 8
"""Rises in 12: IRC R802.3, later R802.4.4; common practice, no source."""
COMMON, HIP, VALLEY = DEPTHS['2×8'], DEPTHS['2×10'], DEPTHS['2×12']
THICK = {'hips_dropped': Fraction(7, 2), 'hips_backed': Fraction(0)}
Called = set[tuple[str, str]]


def of_mouth(member: str, depth, notch, level, overhang) -> Called:
    """Return who calls for what: a member and a caution."""
    found = (
        {(member, 'third')}
        if notch > mpf(real(depth)) / 3
        else {(member, 'quarter')}
        if notch > mpf(real(depth)) / 4
        else set()
    )
    if overhang > 0 and real(depth) - notch < LEFT:
        found.add((member, 'thin_tail'))
    if overhang > OUT:
        found.add((member, 'long_tail'))
    if level < ON_WOOD:
        found.add((member, 'short_seat'))
    elif level < ON_MASONRY:
        found.add((member, 'short_seat_on_masonry'))
    return found


def notched(heel, level):
    return heel * level / mp.sqrt(heel**2 + level**2)


def called(rise: Fraction, seat: Fraction, overhang: Fraction) -> Called:
    """Return what a regular roof of the odd sizes calls for."""
    at = corner(rise)
    height = seats.height_above_plate(at, COMMON, seat)
    found = {('roof', 'low_slope')} if rise < FLAT else {('roof', 'steep')} if rise > STEEP else set()
    found |= of_mouth('commons', COMMON, seats.notch(at, seat), real(seat), overhang)
    for member, thickness in THICK.items():
        heel = seats.hip_heel(at, height, HIP, thickness)
        level = seats.hip_seat(at, height, HIP, thickness)
        if heel > 0 and notched(heel, level) < real(HIP):
            found |= of_mouth(member, HIP, notched(heel, level), level, overhang)
    heel = seats.valley_heel(at, height, VALLEY, Fraction(5, 2))
    level = seats.valley_seat(at, height, VALLEY, Fraction(5, 2))
    if heel > 0 and notched(heel, level) < real(VALLEY):
        found |= of_mouth('valleys', VALLEY, notched(heel, level), level, overhang)
    cut = tails.plumb_cut_length(at, COMMON)
    found |= {
        (member, 'shallow_hip') for member, depth in (('hips', HIP), ('valleys', VALLEY)) if cut > real(depth)
    }
    return found


def told(words: tuple[str, ...]) -> list[dict[str, str]]:
    return json.loads(ask('find', *words, '--format', 'json')[1])['caution']


def name_of(row: dict[str, str]) -> str:
    """Return a caution's name; notches past a quarter and past a third are of one."""
    return 'third' if 'a third' in row['text'] else 'quarter' if 'a quarter' in row['text'] else row['name']


@pytest.mark.parametrize('rise', ['2', '3', '4', '5 1/2', '7 1/2', '8', '9', '12', '18', '24'])
@pytest.mark.parametrize(('seat', 'overhang'), [('3 1/2', '16'), ('1', '30'), ('2 1/2', '24'), ('3', '0')])
def test_who_calls_for_a_caution(rise, seat, overhang):
    words = (rise, '10 ft 5 in', *ROOF[:2], '--seat', seat, '--overhang', f'{overhang} in', *HIPS, *VALLEYS)
    whole, _, half = rise.partition(' ')
    found = {(member, name_of(row)) for row in told(words) for member in row['of']}

    assert found == called(
        Fraction(whole) + Fraction(half or 0), sum(map(Fraction, seat.split())), Fraction(overhang)
    )


EVERY = (
    ('2', '3 ft', '--overhang', '30 in', '--seat', '1'),
    ('4', '10 ft', '--seat', '2 1/2', '--stock', '2x4'),
    ('12', '10 ft', '--seat', '5', '--stock', '2x12', '--hip-stock', '2x6'),
    ('12', '10 ft', '--seat', '2', '--overhang', '0'),
    ('12', '10 ft', '--seat', '4', '--overhang', '0'),
    ('2', '8 ft', '--shed', 'wall'),
    ('6', '10 ft'),
)
"""Roofs that together call for every caution, with a tail and without."""


def test_the_words_and_clauses_of_every_caution():
    wanted, used, unknown = claims('find')['cautions'], set(), []
    for words in EVERY:
        for row in told(words):
            said = f'{row["name"]} {row["text"]}\n{row["source"]}'
            unknown += strange(said, wanted, {}, used, in_order=False)
    assert unknown == []
    assert [wanted[place] for place in sorted(set(range(len(wanted))) - used)] == []
