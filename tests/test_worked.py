"""The worked examples as records: one building for any settings, and books too small for them."""

from fractions import Fraction

import pytest
from complete import complete, read_complete
from fifty_digits import mpf
from msgspec.structs import replace
from oracle import hip_ends, seats
from oracle.corner import corner, hip_length, hip_run
from oracle.rounding import part

from layouts.words.caution import caution_text
from tablegen.examples import (
    common_rafter,
    hip_jacks,
    ledger_rafter,
    nearest_pitch,
    store_and_porch,
    whole_hip,
    whole_valley,
)
from tablegen.roof.cautions import THIN_TAIL
from tablegen.settings import BOOK_PARTS, Runs
from tablegen.written.stocks import stock

BOOK = complete()
SMALL = complete(runs=Runs(last=Fraction(10)))
MAKERS = (common_rafter, whole_hip, hip_jacks, whole_valley, ledger_rafter)
EVERY = [lambda book, make=make: make(store_and_porch(book), book) for make in MAKERS]
store, store_hip, store_jacks, wing_valley, porch = EVERY
ONE_ROOF = (store, store_hip, wing_valley)


def test_a_book_without_the_examples_pitch_takes_its_nearest():
    book = read_complete('pitches = [5, "20 deg", 12]')

    assert nearest_pitch(book, Fraction(6)).text == '5 in 12'
    assert nearest_pitch(book, Fraction(11)).text == '12 in 12'
    assert nearest_pitch(book, Fraction(9, 2)).text == '20°'


@pytest.mark.parametrize('last', [288, 121 / 2])
@pytest.mark.parametrize('pitches', ['[6, 8]', '["7 1/2", 12]', '["26 deg"]'])
def test_hip_jacks_and_valley_have_the_pitch_and_run_of_the_store(pitches, last):
    """A regular hip needs one pitch on both sides: the hipped end is the store's own, and so is the wing."""
    book = replace(read_complete(f'pitches = {pitches}'), runs=Runs(last=Fraction(last)))
    common, *others = [make(book) for make in (*ONE_ROOF, store_jacks)]

    for other in others:
        assert other.roof == common.roof
        assert (other.member.pitch, other.member.overhang_in) == (common.roof.pitch, common.roof.overhang_in)


def test_a_book_that_ends_early_takes_a_run_with_room_for_the_overhang():
    book = complete(runs=Runs(last=Fraction(121, 2)))

    assert [make(book).member.run_in for make in (*ONE_ROOF, porch)] == [48, 48, 48, 48]


@pytest.mark.parametrize('make', EVERY)
def test_a_book_too_small_for_an_example_has_none(make):
    assert make(SMALL) is None


@pytest.mark.parametrize('spacing', ['2', '3', '19.2', '66', '80'])
def test_jacks_stand_between_the_hips_side_and_the_side_common(spacing):
    book = read_complete(f'jacks.spacings = [{spacing}]\nstock.hip = 3.5\nstock.rafter = 1.75')
    example, step = store_jacks(book), Fraction(spacing)
    if step > 67 - Fraction(7, 4):
        assert example is None
        return
    numbers = [int(jack.mark) for jack in example.jacks]

    assert all(jack.short.count > 0 for jack in example.jacks)
    assert numbers == list(range(numbers[0], numbers[0] + len(numbers)))
    assert len(numbers) <= 5
    assert numbers[-1] * step + Fraction(7, 4) <= 67
    # one space nearer to the corner than the first there would be no short point left
    assert (numbers[0] - 1) * step <= Fraction(7, 4) * Fraction(1415, 1000) + Fraction(7, 8)


def test_stock_too_shallow_for_the_plate_has_no_birds_mouth_and_is_told_the_least():
    """Rafters 2×12 at 12 in 12 stand so high that a 2×6 hip or valley hangs over the plate."""
    book = read_complete('pitches = [12]\nstock.rafters = "2x12"\nstock.hips = "2x6"\nstock.valleys = "2x6"')
    hip, valley, at = store_hip(book), wing_valley(book), corner(Fraction(12))
    height = seats.height_above_plate(at, Fraction(45, 4), Fraction(7, 2))
    slope = hip_run(at, 1) / hip_length(at, 1)

    assert (hip.member.mouth, valley.member.mouth) == (None, None)
    reaches = seats.hip_height(at, height, Fraction(3, 2)) * slope
    assert 0 <= mpf(hip.least_depth.count) / 16 - reaches < mpf(1) / 16
    assert seats.hip_heel(at, height, Fraction(hip.least_depth.count, 16), Fraction(3, 2)) >= 0
    assert seats.valley_heel(at, height, Fraction(valley.least_depth.count, 16), Fraction(3, 2)) >= 0
    assert hip.backed is None


def test_a_seat_that_would_cut_the_stock_through_is_not_cut():
    book = read_complete('pitches = [24]\nstock.rafters = "2x4"\nstock.seat = "5 1/2"')
    assert [make(book).member.mouth for make in (store, porch)] == [None, None]
    assert store(book).stands.keys() & {'heel', 'height', 'notch'} == set()
    for make, way in ((store_hip, 'dropped'), (wing_valley, 'valley')):
        assert make(book).member.mouth is None
        assert not [step for step in make(book).stands if step.startswith(way)]


def test_a_seat_that_would_take_half_of_a_flat_hip_is_not_cut():
    """A 2×12 valley beside 2×4 rafters at 1 in 12 would be notched for eleven feet."""
    book = read_complete('pitches = [1]\nstock.rafters = "2x4"\nstock.hips = "2x12"\nstock.valleys = "2x12"')
    at = corner(Fraction(1))
    height = seats.height_above_plate(at, Fraction(7, 2), Fraction(7, 2))

    assert seats.valley_seat(at, height, Fraction(45, 4), Fraction(3, 2)) > hip_run(at, 67)
    assert [make(book).member.mouth for make in (store_hip, wing_valley)] == [None, None]
    assert store(book).member.mouth is not None


def test_a_thin_tail_is_cautioned():
    """A 3 1/2 seat in a 2×6 at 6 in 12 leaves 3.93 in, in a 2×4 only 1.93."""
    two_by_four, two_by_six = (
        store(replace(BOOK, rafters=stock(size))).member.cautions for size in ('2×4', '2×6')
    )
    assert THIN_TAIL in two_by_four
    assert THIN_TAIL not in two_by_six
    assert 'more than a quarter' in caution_text(two_by_six[0])


@pytest.mark.parametrize(('seat', 'stands'), [('3 1/2', True), ('3', True), ('2 13/16', False)])
def test_without_tables_of_seats_the_heel_is_read_from_the_rises(seat, stands):
    """Where it can be read in one place: 3 1/2 in of run are 3 and 1/2, two readings and a sum."""
    parts = [part for part in BOOK_PARTS if part not in ('seat', 'values', 'opening')]
    book = read_complete(f'stock.seat = "{seat}"\nruns = {{by = "1/2 in"}}\nparts = {parts}')
    sources = store(book).stands['heel']

    assert [(one.table, one.run_in) for one in sources] == ([('rise', Fraction(seat) if ' ' not in seat else Fraction(7, 2))] if stands else [])  # fmt: skip


def test_a_figure_that_another_stock_has_is_not_cited():
    """The tables are for dressed thicknesses: a ridge 1.6 in thick stands on its pitch's own pages, or nowhere."""
    book = read_complete('stock.ridge = 1.6')
    without = replace(book, parts=tuple(part for part in book.parts if part != 'values'))

    for make in ONE_ROOF:
        assert {one.table for one in make(book).stands['off']} <= {'values', 'hip-values'}
        assert make(book).stands['off']
        assert make(without).stands['off'] == ()


def test_the_valleys_heel_is_marked_outwards_of_the_inside_corner():
    """By its thickness: half of it, level, at a regular corner."""
    book, at = read_complete('stock.hip = 3.5'), corner(Fraction(6))
    marks = {mark.line: mark.at.text for mark in wing_valley(book).member.marks}
    out = hip_ends.set_back(at, Fraction(7, 2))[1]

    assert marks['heel'] == part(hip_length(at, 67) + out)
    assert marks['plate'] == part(hip_length(at, 67))
