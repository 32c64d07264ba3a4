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
