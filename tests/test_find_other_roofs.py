"""find of a shed and of many sides: what is told there and what is not."""

from __future__ import annotations

import pytest
from asking import ask


def text_of(*words: str) -> str:
    status, told, remarks = ask('find', *words)
    assert (status, remarks) == (0, '')
    return told


@pytest.mark.parametrize(
    ('words', 'off', 'sawn'),
    [
        (('wall',), '0', '144 1/4'),
        (('ledger',), '1 1/2', '142 7/16'),
        (('ledger', '--ledger-thickness', '3 in'), '3', '140 5/8'),
        (('ledger', '--run-to', 'ledger'), '0', '144 1/4'),
    ],
)
def test_a_shed(words, off, sawn):
    """Source: 120 in at 8 in 12, less nothing, 1 1/2 or 3 in level, times √208/12: 144.222, 142.419, 140.616."""
    told = ' '.join(text_of('8', '10 ft', '--shed', *words).split())

    assert f'rafter as sawn, plate line to its upper end {sawn} ' in told
    assert f' at the {words[0]} {off} ' in told
    assert 'ridge' not in told
    assert 'hip' not in told
    assert 'jack' not in told


def test_sides_have_what_comes_off_jacks_and_the_tail_and_no_valley():
    """Source: 0.75/cos 67.5° = 1.960 level; 12 √208/12 = 14.422 in of tail."""
    told = ' '.join(text_of('8', '10 ft', '--sides', '8').split())

    assert 'off a jack at the hip 1 15/16 2 3/8' in told
    assert 'common and jack, plate line to tail end 14 7/16' in told
    assert 'valley' not in told.lower()


def test_what_is_shorter_than_what_comes_off_is_no_board():
    """Source: a run of 1 in, less half of a ridge 3 in thick, leaves nothing; its hip's sides end inside the plates."""
    told = ' '.join(text_of('8', '1 in', '--ridge-thickness', '3', '--show', 'sawn').split())
    bare = ' '.join(text_of('8', '10 ft', '--overhang', '0').split())

    assert 'common: none: nothing is left of it' in told
    assert 'hip, plate corner to each side’s line none' in bare
    assert '−' not in told


def test_a_hip_that_would_be_cut_through_has_no_seat():
    """Source: an 11 in thick hip at 24 in 12 is dropped 5.5 · 2/√2 = 7.78 in, a 2×6 stands 5.5 √5 − 7 = 5.30 in over its plate."""
    told = ' '.join(text_of('24', '10 ft', '--hip-thickness', '11', '--stock', '2x6', '--all').split())

    assert 'seat: none: its notch would cut through this stock' in told


def test_a_corner_has_both_arrangements_of_its_end_commons():
    """Source: half of a common, 3/4; ridge/2 · cot a + t/2 / sin a, a = atan 8/12 or 12/8: 2.477 and 1.401 in."""
    told = ' '.join(text_of('8', '10 ft', '--with', '12').split())

    assert 'off an end common, hips at commons, level 3/4 3/4' in told
    assert 'off an end common, hips on the ridge, level 2 1/2 1 3/8' in told
    assert 'end common' not in text_of('8', '10 ft', '--corner', '100')


def test_a_hip_too_shallow_for_its_plate_says_why():
    """Source: at 8 in 12 a 2×4 hip's plumb depth is 3.5 √(1 + 64/288) = 3.87 in, less than the 6.38 of height."""
    told = ' '.join(text_of('8', '10 ft', '--hip-stock', '2x4').split())

    assert 'hip backed 2×4 none none 6 3/8 3 7/8 none none' in told
    assert 'Hip backed: none: this stock is too shallow to reach the plate.' in told
