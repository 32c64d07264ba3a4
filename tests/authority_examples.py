"""Worked examples and single cells in authorities/, each printed result set against what this book computes."""

from __future__ import annotations

from fractions import Fraction

from authority_tables import EIGHTH, EXACT, FOOT, HUNDREDTH, SIXTEENTH, Reading, mixed

from tablegen.examples import common_rafter, store_and_porch
from tablegen.geometry import backing, cheeks, common, corner
from tablegen.geometry.corner import Corner
from tablegen.geometry.stepping import common_hold, hip_hold, steps
from tablegen.numbers.angles import Angle
from tablegen.numbers.exact import Exact, exact, nearest
from tablegen.settings import Settings
from tablegen.written.lengths import length
from tablegen.written.pitches import pitch

TWELFTH = Fraction(1, 12)
WHOLE = Fraction(1)
MINUTE = Fraction(1, 60)
NOMINAL_TWO = Fraction(13, 8)
"""A 2 in hip as dressed in 1916, 1 5/8 in: from memory. At 1 1/2 in the drop would be 1/2 in."""


def _slope(rise: int) -> Exact:
    return pitch(rise).slope


def _at(rise: int) -> Corner:
    return pitch(rise).corner


def _common(run_ft: Fraction | int | str, rise: int) -> Exact:
    return common.line_length(12 * Fraction(run_ft), _slope(rise))


def _hip(run_ft: Fraction | int | str, rise: int) -> Exact:
    return corner.hip_length(12 * Fraction(run_ft), _at(rise))


def _own_run(run_ft: int) -> Exact:
    """Return a hip's own run in feet: so many whole steps of √288 in."""
    held = hip_hold(_at(8))
    stepped = steps(Fraction(12 * run_ft), held)
    return stepped.whole * held.body_in / 12 + stepped.left_level_in / 12


def army() -> list[tuple[str, str, str, Exact | Fraction | int, Fraction]]:
    """Values of army-en0069.toml: row, piece as printed, its value, ours, last place printed."""
    named = {4: '1/6', 6: '1/4', 8: '1/3', 10: '5/12', 12: '1/2', 15: '5/8', 18: '3/4'}
    ids = range(27, 34)
    return [
        ('1-table-228', '20.00', '20.00', _common(1, 16), HUNDREDTH),
        ('1-table-229', '17.69', '17.69', _common(1, 13), HUNDREDTH),
        ('1-table-230', '14 5/12', '14 5/12', _common(1, 8), TWELFTH),
        ('2-example-022', '4 4/5', '4 4/5', pitch('2 in 5').rise, EXACT),
        ('2-example-023', '144 2/12 in', '144 2/12', _common(10, 8), TWELFTH),
        ('2-example-025', '10 ft 4 in', '124', length('20 ft 8 in') / 2, EXACT),
        ('2-example-026', '182.79 in', '182.79', _common('31/3', 13), HUNDREDTH),
        ('2-example-026', '15 ft 3 in', '183', _common('31/3', 13), WHOLE),
        *(
            (f'2-example-{number:03}', fraction, fraction, pitch(rise).slope / 2, EXACT)
            for number, (rise, fraction) in zip(ids, named.items(), strict=True)
        ),
    ]


def griffith() -> list[tuple[str, str, str, Exact | Angle | Fraction | int, Fraction]]:
    """Values of griffith-1916-examples.toml; pitches 1/4, 1/3, 1/2 are 6, 8, 12 in 12."""
    half, held, hip_held = _at(12), common_hold(_slope(6)), hip_hold(_at(6))
    odd = Fraction(12 * 12 + 7)
    common_steps, hip_steps = steps(odd, held), steps(odd, hip_held)
    return [
        ('2-example-034', '167.75 in', '167.75', _common('25/2', 6), HUNDREDTH),
        ('2-example-034', '13.98 ft', '13.98', _common('25/2', 6) / 12, HUNDREDTH),
        ('2-example-035', '201.88 in', '201.88', _common(14, 8), HUNDREDTH),
        ('2-example-035', '16.82 ft', '16.82', _common(14, 8) / 12, HUNDREDTH),
        ('2-example-036', '17 ft 8.12 in', '212.12', _common('25/2', 12), HUNDREDTH),
        ('2-example-036', '17 ft 8 1/8 in', '212 1/8', _common('25/2', 12), EIGHTH),
        ('2-example-037', '21 ft 7.75 in', '259.75', _hip('25/2', 12), HUNDREDTH),
        ('2-example-037', '21 ft 7 3/4 in', '259 3/4', _hip('25/2', 12), EIGHTH),
        ('2-example-038', '2 ft 10 in', '34', corner.jack_difference(Fraction(24), half), EIGHTH),
        ('2-example-039', '9/16', '9/16', backing.drop_plumb(NOMINAL_TWO, half), SIXTEENTH),
        ('2-example-040', '20 13/16', '20 13/16', 12 / (backing.bevel(half).tangent), SIXTEENTH),
        ('2-example-041', '12 steps', '12', common_steps.whole, EXACT),
        ('2-example-041', '12 & 6', '12', held.body_in, EXACT),
        ('2-example-041', '& 6', '6', held.tongue_in, EXACT),
        ('2-example-041', 'then 7', '7', common_steps.left_level_in, EXACT),
        ('2-example-041', '3 1/2', '3 1/2', common_steps.left_rise_in, EXACT),
        ('2-example-042', '12 steps', '12', hip_steps.whole, EXACT),
        ('2-example-042', 'at 17', '17', hip_held.body_in, WHOLE),
        ('2-example-042', '9 11/12', '9 11/12', hip_steps.left_level_in, TWELFTH),
        ('2-example-042', '3 1/2', '3 1/2', hip_steps.left_rise_in, EXACT),
        ('2-example-043', '12', '12', steps(12 * FOOT, held).whole, EXACT),
        ('2-example-044', '6.93', '6.93', pitch('30 deg').rise, HUNDREDTH),
        ('2-example-044', '6 11/12', '6 11/12', pitch('30 deg').rise, TWELFTH),
        ('2-example-045', '9 3/8', '9 3/8', pitch('38 deg').rise, EIGHTH),
        ('2-example-046', '25 deg 19 min', '25 19/60', Angle(exact(Fraction(8, 17))), MINUTE),
    ]


def navedtra() -> list[tuple[str, str, str, Exact | Fraction | int, Fraction]]:
    """Values of navedtra-14044.toml."""
    jack = corner.jack_difference(Fraction(16), _at(8))
    return [
        ('1-table-220', '13.89', '13.89', _common(1, 7), HUNDREDTH),
        ('1-table-222', '14.42', '14.42', _common(1, 8), HUNDREDTH),
        ('1-table-223', '18.76', '18.76', _hip(1, 8), HUNDREDTH),
        ('1-table-224', '19.21', '19.21', _hip(1, 9), HUNDREDTH),
        ('1-table-225', '16.97', '16.97', corner.hip_run(FOOT, _at(8)), HUNDREDTH),
        ('1-table-226', '19.23', '19.23', jack, HUNDREDTH),
        ('1-table-227', '10', '10', cheeks.jack(_at(8)).figure(), SIXTEENTH),
        ('2-example-001', '111.12 in', '111.12', _common(8, 7), HUNDREDTH),
        ('2-example-001', '111 1/8 in', '111 1/8', _common(8, 7), SIXTEENTH),
        ('2-example-001', '9 ft 3 1/8 in', '111 1/8', _common(8, 7), SIXTEENTH),
        ('2-example-002', '12 ft 6 in', '150', length('25 ft') / 2, EXACT),
        ('2-example-003', '1.92', '1.92', 16 * Fraction(12, 100), EXACT),
        ('2-example-003', '1/8', '1/8', Fraction(nearest(Fraction(12, 100), 16), 16), EXACT),
        (
            '2-example-004',
            '3/4',
            '3/4',
            Fraction(
                common_rafter(store_and_porch(Settings()), Settings()).member.deductions[0].level.count, 16
            ),
            EXACT,
        ),
        ('2-example-009', '21.21', '21.21', _own_run(15), HUNDREDTH),
        ('2-example-010', '10', '10', common.rise(15 * FOOT, _slope(8)) / 12, EXACT),
        ('2-example-011', '23.45', '23.45', _hip(15, 8) / 12, HUNDREDTH),
        ('2-example-014', '21.21', '21.21', _own_run(15), HUNDREDTH),
        ('2-example-015', '24.01', '24.01', _hip(15, 9) / 12, HUNDREDTH),
        ('2-example-016', '288.15', '288.15', _hip(15, 9), HUNDREDTH),
        ('2-example-016', '9.21', '9.21', _hip(1, 9), HUNDREDTH),
        ('2-example-017', '19.23', '19.23', jack, HUNDREDTH),
        ('2-example-018', '2 x 19.23', '38.46', 2 * jack, HUNDREDTH),
        ('3-special-174', '12', '12', common.rise(Fraction(24), _slope(6)), EXACT),
    ]


def example_readings() -> list[Reading]:
    """Return a reading for every result that the examples print and this book computes."""
    return [
        Reading(row, piece, mixed(theirs), ours if isinstance(ours, Angle) else exact(ours), step)
        for row, piece, theirs, ours, step in (*army(), *griffith(), *navedtra())
    ]


NOT_COMPUTED = {
    '2-example-021': 'the proportion of a wall panel, no length of a roof',
    '2-example-024': 'stock to buy, with the overhang added along the rafter; this book takes an overhang level',
    '4-code-043': 'least slope of a covering: a rule, deferred to the local code',
    '6-accuracy-009': 'how hundredths are rounded to sixteenths: a rule; its example 2-example-003 is checked',
    '6-accuracy-010': 'how close a carpenter works: a rule',
    '6-accuracy-012': 'what is graduated on a square: a fact about the tool',
    '6-accuracy-015': 'where square gauges are clamped: a rule',
    '6-accuracy-016': 'which fractions framers use: a rule',
}
"""Rows that state no quantity of this book, with the reason."""
