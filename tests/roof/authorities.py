"""Rows of published sources, and what this project's geometry gives for each, rounded as the source printed it."""

import tomllib
from fractions import Fraction
from pathlib import Path

from tablegen.angles import Angle, degrees_count, tangent_of_degrees
from tablegen.exact import exact, nearest
from tablegen.geometry import backing, common, finding_pitch, gable, hip, jacks, shortening
from tablegen.geometry.corner import hip_run, square_corner

FOLDER = Path(__file__).parents[1] / 'authorities'
SQUARE_45 = square_corner(exact(1), exact(1))
TEN_MINUTES, HUNDREDTH, EIGHTH, SIXTEENTH, TWELFTH, WHOLE = 6, 100, 8, 16, 12, 1
DRESSED_1916 = Fraction(13, 8)
"""What a nominal 2 in hip measured then, in: from memory, no document at hand."""


def rows(name):
    """Return the numbers of one file: rows that are a rule or a size (fact) have none to compute."""
    found = tomllib.loads((FOLDER / f'{name}.toml').read_text('utf-8'))['value']
    assert found
    return [row for row in found if row['status'] != 'fact']


def differences():
    return tomllib.loads((FOLDER / 'differences.toml').read_text('utf-8'))['difference']


def _per_foot(slope):
    return common.line_length(Fraction(12), slope)


def _hip_per_foot(slope):
    return hip.line_length(Fraction(12), slope)


BY_QUANTITY = {
    'pitch (rise / span) of roof': (lambda m, _: m / 2, 10**5),
    'pitch named by rise': (lambda m, _: m / 2, 10**5),
    'plumb cut, common/jack (complement of slope)': (lambda m, _: Angle(m).complement(), TEN_MINUTES),
    'seat cut, common/jack (slope angle)': (lambda m, _: Angle(m), TEN_MINUTES),
    'length of common or jack rafter per foot of run': (lambda m, _: _per_foot(m), HUNDREDTH),
    'length of common rafter per foot run': (lambda m, _: _per_foot(m), HUNDREDTH),
    'length of common rafter per foot run, in twelfths': (lambda m, _: _per_foot(m), TWELFTH),
    'side cut of jack, square corner (angle to the long edge of the rafter)': (
        lambda m, _: jacks.side_cut_from_edge(m),
        TEN_MINUTES,
    ),
    'difference in length of jacks, 16 in. centres': (lambda m, s: jacks.difference(s, m), EIGHTH),
    'difference in length of jacks, 24 in. centres': (lambda m, s: jacks.difference(s, m), EIGHTH),
    'difference in length of jacks, 16 in centres': (
        lambda m, _: jacks.difference(Fraction(16), m),
        HUNDREDTH,
    ),
    'plumb cut, hip/valley, square building': (lambda m, _: hip.slope_angle(m).complement(), TEN_MINUTES),
    'seat cut, hip/valley, square building': (lambda m, _: hip.slope_angle(m), TEN_MINUTES),
    'length of hip/valley per foot of run of common rafter': (lambda m, _: _hip_per_foot(m), HUNDREDTH),
    'length of hip/valley per foot run of common': (lambda m, _: _hip_per_foot(m), HUNDREDTH),
    'unit run of hip, equal pitch': (lambda m, _: hip_run(Fraction(12), SQUARE_45), HUNDREDTH),
    'side cut of hip/valley, square building (angle to the long edge of the rafter)': (
        lambda m, _: hip.side_cut_from_edge(m),
        TEN_MINUTES,
    ),
    'side cut of jacks (figure under the rise, used with 12)': (
        lambda m, _: jacks.side_cut_figure(m),
        SIXTEENTH,
    ),
    'side cut of jacks, number used with 12 (modern square, line 5)': (
        lambda m, _: jacks.side_cut_figure(m),
        SIXTEENTH,
    ),
    'side cut of hip/valley, number used with 12 (modern square, line 6)': (
        lambda m, _: hip.side_cut_figure(m),
        SIXTEENTH,
    ),
    'gable stud common difference': (lambda m, s: gable.stud_difference(s, m), WHOLE),
}
"""What to compute from the slope and the spacing, and the parts in one unit that the source printed."""


def _m(rise):
    return exact(Fraction(rise) / 12)


def _ft(feet):
    return Fraction(feet) * 12


BY_EXAMPLE = {
    'griffith-1916-examples': {
        '2-example-034': (common.line_length(_ft(Fraction(25, 2)), _m(6)), HUNDREDTH),
        '2-example-035': (common.line_length(_ft(14), _m(8)), HUNDREDTH),
        '2-example-036': (common.line_length(_ft(Fraction(25, 2)), _m(12)), HUNDREDTH),
        '2-example-037': (hip.line_length(_ft(Fraction(25, 2)), _m(12)), HUNDREDTH),
        '2-example-038': (jacks.difference(Fraction(24), _m(12)), EIGHTH),
        '2-example-039': (backing.drop_plumb(DRESSED_1916, square_corner(_m(12), _m(12))), SIXTEENTH),
        '2-example-040': (_hip_per_foot(_m(12)), SIXTEENTH),
        '2-example-041': (common.rise(Fraction(7), _m(6)), SIXTEENTH),
        '2-example-042': (hip_run(Fraction(7), square_corner(_m(6), _m(6))), TWELFTH),
        '2-example-043': (exact(_ft(24) / 2 / 12), WHOLE),
        '2-example-044': (finding_pitch.rise_per_foot(finding_pitch.from_degrees(Fraction(30))), HUNDREDTH),
        '2-example-045': (12 * tangent_of_degrees(Fraction(38)), EIGHTH),
        '2-example-046': (Angle(exact(Fraction(8, 17))), 60),
    },
    'navedtra-14044': {
        '2-example-001': (common.line_length(_ft(8), _m(7)), EIGHTH),
        '2-example-002': (exact(Fraction(25, 2)), HUNDREDTH),
        '2-example-003': (exact(Fraction(12, 100) * 16), HUNDREDTH),
        '2-example-004': (shortening.at_ridge(Fraction(3, 2)), SIXTEENTH),
        '2-example-009': (hip_run(Fraction(15), SQUARE_45), HUNDREDTH),
        '2-example-010': (common.rise(Fraction(15), _m(8)), HUNDREDTH),
        '2-example-011': (hip.line_length(Fraction(15), _m(8)), HUNDREDTH),
        '2-example-014': (hip_run(Fraction(15), SQUARE_45), HUNDREDTH),
        '2-example-015': (hip.line_length(Fraction(15), _m(9)), HUNDREDTH),
        '2-example-016': (hip.line_length(_ft(15), _m(9)), HUNDREDTH),
        '2-example-017': (jacks.difference(Fraction(16), _m(8)), HUNDREDTH),
        '2-example-018': (jacks.difference(Fraction(32), _m(8)), HUNDREDTH),
        '2-example-021': (
            common.rise(Fraction(7), finding_pitch.from_rise_and_run(Fraction(7), Fraction(43, 4))),
            TWELFTH,
        ),
    },
    'army-en0069': {
        '2-example-022': (
            finding_pitch.rise_per_foot(finding_pitch.from_rise_and_run(Fraction(2), Fraction(5))),
            HUNDREDTH,
        ),
        '2-example-023': (common.line_length(_ft(10), _m(8)), TWELFTH),
        '2-example-024': (common.line_length(Fraction(11), _m(8)), WHOLE),
        '2-example-025': (exact(Fraction(62, 6)), HUNDREDTH),
        '2-example-026': (common.line_length(_ft(Fraction(31, 3)), _m(13)), WHOLE),
    },
}
"""Worked examples by row: our exact number in the row's own unit, and the parts in one unit that it printed."""


def ours(file, row):
    """Return our number for a row and the source's printed parts in one unit."""
    if row['quantity'] in BY_QUANTITY:
        compute, per = BY_QUANTITY[row['quantity']]
        spacing = row['given'].get('spacing_in')
        return compute(_m(row['given']['rise_per_ft']), Fraction(spacing) if spacing else None), per
    return BY_EXAMPLE[file][row['id']]


def count(number, per):
    """Return a number or an angle as a whole count of the source's printed parts."""
    if isinstance(number, Angle):
        return nearest(Fraction(degrees_count(number, 9), 10**9), per)
    return nearest(number, per)


def printed_count(row, per):
    return nearest(Fraction(str(row['value'])), per)


def text_of(number, per):
    """Return our number to more digits than the source's, for the list of differences."""
    if isinstance(number, Angle):
        minutes = Fraction(degrees_count(number, 9), 10**9) * 60
        whole, rest = divmod(nearest(minutes, 10), 600)
        return f'{whole}-{rest // 10:02}.{rest % 10}'
    return f'{float(number):.4f}'
