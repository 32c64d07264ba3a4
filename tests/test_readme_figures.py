"""Figures and lines that README tells in words, worked out in space."""

from __future__ import annotations

from fractions import Fraction
from pathlib import Path

from fifty_digits import mp, mpf
from labels.expected import DEPTHS
from oracle import seats
from oracle.corner import common_length, corner, hip_length
from oracle.rounding import decimal, nearest, part

from layouts.pages.book import plan
from tablegen.settings import Settings

WORDS = ' '.join((Path(__file__).parent.parent / 'README.md').read_text('utf-8').split())


def test_four_feet_of_run_at_6_in_12():
    length = common_length(corner(6), 48)
    eighths = Fraction(nearest(length, 8), 8)

    assert (
        f'four feet of run make {part(length)} in of common rafter; to the nearest eighth, {part(eighths)}.'
        in WORDS
    )


def test_a_2x8_at_8_in_12_and_its_hip():
    at, depth, seat, thick = corner(8), DEPTHS['2×8'], Fraction(7, 2), Fraction(3, 2)
    height = seats.height_above_plate(at, depth, seat)
    dropped = seats.hip_height(at, height, thick)
    low = dropped - seats.height_of_seat(at, depth, seat * Fraction(17, 12))

    assert (
        f'a 2×8 on a 3 1/2 in seat stands {part(height)} in over the plate; its hip, dropped, {part(dropped)} in'
        in WORDS
    )
    assert f'17/12 as long would put it {part(low)} in too low' in WORDS


def test_what_steps_come_to():
    """13 3/8 in for a foot at 6 in 12, once, twelve and thirteen times; 17 for √288 at 8 in 12, twelve times."""
    short = common_length(corner(6), 12) - mpf(107) / 8
    over = 12 * (mp.sqrt(17**2 + 8**2) - hip_length(corner(8), 12))

    assert (
        f'right to the eighth, {decimal(short, 3)} in short of the exact length and {decimal(12 * short, 3)} in'
        in WORDS
    )
    assert f'thirteen steps would end {decimal(13 * short, 3)} in short' in WORDS
    assert f'{decimal(over, 3)} in too long over twelve steps at 8 in 12' in WORDS


def test_pages_that_it_names_are_those():
    index = plan(Settings()).index

    assert 'Four pages of the book hold the same: the turn-over test' in WORDS
    assert index['drift'] - index['square'] + 1 == 4


def test_from_where_to_where_a_length_runs():
    """As the pages of the tables say it, and what then comes off."""
    for words in (
        'runs along the top edge, from the plate line (the outside of the plate) to the ridge center line',
        'half of it comes off, level; of a ledger all of it, where the run goes to the wall behind it',
        'their height comes from the rafters, heel and seat from their own depth',
        'on a ledger, whose whole thickness comes off a run to the wall',
        'Degrees are from square across the board.',
    ):
        assert words in WORDS
