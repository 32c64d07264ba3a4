"""The worked examples: every number worked again at 50 digits, and books too small for them."""

from fractions import Fraction

import pytest
from fifty_digits import count_of, mp, mpf

from tablegen.settings import Runs, Settings, read_settings
from tablegen.worked import corner, corner_jacks, nearest_pitch, porch, store
from tablegen.written.pitches import pitch

BOOK = Settings()
SMALL = Settings(runs=Runs(last=Fraction(10)))
COMMON_6 = mp.sqrt(180) / 12
COMMON_4 = mp.sqrt(160) / 12
COMMON_8 = mp.sqrt(208) / 12
HIP_8 = mp.sqrt(352) / 12
"""Lengths per inch of common run at 6, 4 and 8 in 12."""


def texts(found) -> list[str]:
    return [reading.figure.text for reading in found.readings]


def test_the_store():
    """11 ft 2 in wide: run 67 in, with 8 in of overhang 75 in; five steps and 7 in over."""
    example = store(BOOK)

    assert (example.pitch.rise_in, example.width_in, example.run_in, example.overhang_in) == (6, 134, 67, 8)
    assert example.length.direct.count == count_of(67 * COMMON_6, 16)
    assert (example.length.total.text, example.whole.total.text) == ('74 15/16', '83 7/8')
    assert example.whole.direct.count == count_of(75 * COMMON_6, 16)
    assert (texts(example.heel), example.heel.total.text) == (['1 1/2', '1/4'], '1 3/4')
    assert example.ridge_half.text == '3/4'
    assert example.steps.hold.text == '12 & 6'
    assert (example.steps.whole, example.steps.left_level.text, example.steps.left_rise.text) == (
        5,
        '7',
        '3 1/2',
    )
    assert example.steps.step_exact.count == count_of(12 * COMMON_6, 1000)
    assert example.steps.step_set.text == '13 7/16'
    assert example.steps.drift.count == count_of(5 * (mpf(13) + mpf(7) / 16 - 12 * COMMON_6), 1000)


def test_the_porch():
    """A lean-to has a measured run and no ridge; its run is read in two lines, whose sum is a part over."""
    example = porch(BOOK)

    assert (example.pitch.rise_in, example.width_in, example.run_in) == (4, None, Fraction(429, 8))
    assert example.ridge_half is None
    assert (texts(example.length), example.length.total.text) == (['55 7/8', '11/16'], '56 9/16')
    assert (
        example.length.direct.count == count_of(mpf(429) / 8 * COMMON_4, 16) == example.length.total.count - 1
    )
    assert (example.steps.whole, example.steps.left_level.text, example.steps.left_rise.text) == (
        4,
        '5 5/8',
        '1 7/8',
    )


def test_the_corner():
    """A hip for a common run of 6 ft 3 in, stepped off with √288 held at 17, to the sixteenth."""
    example = corner(BOOK)

    assert (example.pitch.rise_in, example.run_in) == (8, 75)
    assert example.length.total.count == count_of(75 * HIP_8, 16)
    assert example.whole.total.count == count_of(83 * HIP_8, 16)
    assert example.shortening.count == count_of(mpf(3) / 2 / mp.sqrt(2), 16)
    assert (example.steps.hold.text, example.steps.whole) == ('17 & 8', 6)
    assert example.steps.left_level.count == count_of(3 * mp.sqrt(2), 16)
    assert example.steps.left_rise.text == '2'
    assert example.seventeen_drift.count == count_of(6 * (mp.sqrt(17**2 + 8**2) - 12 * HIP_8), 1000)


def test_the_jacks():
    """Four at 16 in before the run ends; worked one by one, not added up."""
    example = corner_jacks(BOOK)

    assert (example.spacing_in, BOOK.spacings[example.spacing_place]) == (16, 16)
    assert [(number, run) for number, _, run in example.jacks] == [(n, 16 * n) for n in (1, 2, 3, 4)]
    assert [figure.count for _, figure, _ in example.jacks] == [
        count_of(16 * n * COMMON_8, 16) for n in (1, 2, 3, 4)
    ]
    assert example.difference == example.jacks[0][1]
    assert example.shortening.count == count_of(mpf(3) / 2 / mp.sqrt(2), 16)
    assert example.point_to_point.count == count_of(mpf(3) / 4 * COMMON_8, 16)
    assert example.hand.count == count_of(16 * COMMON_8, 1000)
    assert example.drift.count == count_of(4 * (mpf(19) + mpf(1) / 4 - 16 * COMMON_8), 1000)


def test_a_book_without_the_examples_pitch_takes_its_nearest():
    book = read_settings('pitches = [5, "20 deg", 12]', '')

    assert nearest_pitch(book, Fraction(6)).text == '5 in 12'
    assert nearest_pitch(book, Fraction(11)).text == '12 in 12'
    assert nearest_pitch(book, Fraction(9, 2)).text == '20°'


def test_a_book_that_ends_early_takes_a_run_with_room_for_the_overhang():
    book = Settings(runs=Runs(last=Fraction(121, 2)))

    assert (store(book).run_in, corner(book).run_in) == (48, 48)
    assert store(book).width_in == 96


@pytest.mark.parametrize('make', [store, porch, corner])
def test_a_book_too_small_for_an_example_has_none(make):
    assert make(SMALL) is None


def test_jacks_need_no_run_table():
    example = corner_jacks(SMALL)

    assert [number for number, _, _ in example.jacks] == [1]
    assert example.pitch == pitch('8')
