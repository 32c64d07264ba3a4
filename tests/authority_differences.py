"""Where a printed source departs from the exact relation: theirs, ours, and why, none of it absorbed."""

from __future__ import annotations

from fractions import Fraction

from msgspec import Struct

CUT = 'the last place was cut off, not rounded'
RAISED = 'raised to the next step, though the one below is nearer'
OTHER = 'off by a whole step or more; the source does not say how it was computed'
PRODUCT = 'multiplied from a unit length that was already rounded'
MISPRINT = 'misprint'


class Difference(Struct, frozen=True):
    """One printed value that is not within half of its last place."""

    row: str
    theirs: str
    """The piece as printed."""
    ours: str
    """To a place finer: thousandths of the unit, hundredths of a degree."""
    why: str
    product: tuple[str, str] | None = None
    """The rounded factors as the source multiplied them."""


DIFFERENCES = [
    # griffith-1916-fig49.toml
    Difference('1-table-023', '2-2 3/4', '26.667', RAISED),
    Difference('1-table-029', '32-10', '31.99°', OTHER),
    Difference('1-table-032', '3-2 1/2', '38.419', RAISED),
    Difference('1-table-093', '41-0', '40.82°', OTHER),
    Difference('1-table-133', '44-30', '44.61°', CUT),
    Difference('1-table-136', '2-0 1/4', '24.331', CUT),
    # griffith-1916-fig60.toml
    Difference('1-table-148', '24.72', '24.739', OTHER),
    Difference('1-table-152', '24.00', '24.021', OTHER),
    Difference('1-table-153', '35-20', '35.24°', RAISED),
    Difference('1-table-156', '23.31', '23.324', OTHER),
    Difference('1-table-160', '22.64', '22.650', CUT),
    Difference('1-table-164', '21.99', '22.000', OTHER),
    Difference('1-table-168', '21.37', '21.378', CUT),
    Difference('1-table-169', '38-20', '38.44°', CUT),
    Difference('1-table-170', '54-50', '54.74°', RAISED),
    Difference('1-table-171', '35-10', '35.26°', CUT),
    Difference('1-table-174', '57-10', '57.05°', RAISED),
    Difference('1-table-175', '32-50', '32.95°', CUT),
    Difference('1-table-180', '19.69', '19.698', CUT),
    Difference('1-table-181', '40-50', '40.75°', RAISED),
    Difference('1-table-182', '62-10', '62.06°', RAISED),
    Difference('1-table-183', '27-50', '27.94°', CUT),
    Difference('1-table-190', '67-30', '67.58°', CUT),
    Difference('1-table-191', '22-30', '22.42°', RAISED),
    Difference('1-table-193', '42-40', '42.75°', CUT),
    Difference('1-table-204', '17.43', '17.436', CUT),
    # engraved-figures.toml
    Difference('1-table-348', '9 1/4', '9.219', RAISED),
    Difference('1-table-349', '10 3/8', '10.339', RAISED),
    # army-en0069.toml
    Difference('2-example-023', '144 2/12 in', '144.222', PRODUCT, ('14 5/12', '10')),
    Difference('2-example-026', '182.79 in', '182.815', f'{PRODUCT}, then cut off', ('17.69', '10 1/3')),
    # griffith-1916-examples.toml
    Difference('2-example-034', '167.75 in', '167.705', PRODUCT, ('12.5', '13.42')),
    Difference('2-example-035', '201.88 in', '201.911', PRODUCT, ('14', '14.42')),
    Difference('2-example-035', '16.82 ft', '16.826', PRODUCT, ('201.88', '1/12')),
    Difference('2-example-036', '17 ft 8.12 in', '212.132', f'{PRODUCT}, then cut off', ('12 1/2', '16.97')),
    Difference('2-example-037', '21 ft 7.75 in', '259.808', PRODUCT, ('12 1/2', '20.78')),
    Difference('2-example-046', '25 deg 19 min', '25.20°', f'{MISPRINT} for 25 deg 12 min'),
    # navedtra-14044.toml
    Difference('2-example-001', '111.12 in', '111.140', PRODUCT, ('8', '13.89')),
    Difference('2-example-016', '288.15', '288.141', PRODUCT, ('15', '19.21')),
    Difference('2-example-016', '9.21', '19.209', f'{MISPRINT} for 19.21'),
]


def reason_holds(why: str, theirs: Fraction, ours_in_steps: Fraction, step: Fraction) -> bool:
    """Return whether the steps of a source's last place bear out what is said of them.

    Given:
        ours_in_steps  ours counted in steps of their last place, to many digits
    """
    count = theirs / step
    if why == CUT:
        return count == ours_in_steps // 1
    if why == RAISED:
        return count - 1 == ours_in_steps // 1
    if why == OTHER:
        return abs(count - ours_in_steps) >= 1
    return why.startswith((PRODUCT, MISPRINT))
