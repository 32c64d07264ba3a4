"""Regular many-sided roofs: what the number of sides decides, and what the pitch adds."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from functools import partial

from tablegen.geometry import backing, cheeks, corner, many_sided, shortening
from tablegen.geometry.pitch import Pitch
from tablegen.numbers.exact import exact
from tablegen.numbers.figure import Figure
from tablegen.settings import Settings
from tablegen.tables.finish import at_least, deg, degrees_figure, mark, unit
from tablegen.tables.former import Table

SIDES = (5, 6, 8, 10, 12)
SPACING_IN = Fraction(16)
FOOT = Fraction(12)
ANY_SLOPE = exact(1)
"""Level lengths and blades on the side are the same at every pitch."""


@dataclass(frozen=True, slots=True)
class SidesRow:
    """One number of sides, any pitch."""

    sides: int
    corner: Figure
    """deg, inside angle of the plates' corner, in plan."""
    plate_miter: Figure
    """deg, cut of a plate's end, from square: 180/n."""
    side: Figure
    """in, one side, corner to corner, per foot of apothem, to thousandths."""
    apothem: Figure
    """in, middle of the plan to the middle of a side, per foot of side, to thousandths."""
    hip_run: Figure
    """in, level, middle to corner, per foot of apothem, to thousandths."""


@dataclass(frozen=True, slots=True)
class SidesJackRow:
    """Jacks against the hips of a number of sides, any pitch, for the set thicknesses."""

    sides: int
    blade: Figure
    """deg, tilt from square, shoe on the side; past 45, its complement from a squared end."""
    off_level: Figure
    """in, level along the jack, hip center line to its side."""
    short_to_long_point_level: Figure
    """in, level along the jack; half lies each side of its center line."""
    reach: Figure
    """in, along the blade, that a circular saw's must go through the jack; rounded up."""


@dataclass(frozen=True, slots=True)
class SidesPeakRow:
    """Hips at the peak of a number of sides, any pitch, for the set thickness."""

    sides: int
    blade: Figure
    """deg, each of two cheeks to a point: tilt from square, shoe on the side."""
    set_back_level: Figure
    """in, level along the hip, its point on the axis back to the plumb line of each side."""
    reach: Figure
    """in, along the blade, through half of the hip; rounded up."""
    least_post: Figure
    """in, across flats, smallest center post on which square-cut hips find room; rounded up."""


@dataclass(frozen=True, slots=True)
class ManySidedRow:
    """One pitch of a roof with a given number of sides."""

    pitch: Pitch
    hip_per_foot: Figure
    """in, along the hip, per foot of apothem, to thousandths."""
    hip_plumb_cut: Figure
    """deg, on the hip's side, from square."""
    jack_difference: Figure
    """in, along the slope, neighboring jacks at 16 in on center."""
    jack_12_and: Figure
    """in, against 12 on the square, jack's top edge against the hip, marked along the 12."""
    peak_12_and: Figure
    """in, against 12, SQUARE top of a hip, each of the two cheeks at the peak."""
    backing_bevel: Figure
    """deg, each face of the hip's top."""
    drop_plumb: Figure
    """in, PLUMB, for the set hip thickness."""


def sides_rows(settings: Settings) -> list[SidesRow]:
    """Return one row a number of sides."""
    return [
        SidesRow(
            sides,
            degrees_figure(many_sided.plan_corner_degrees(sides)),
            deg(many_sided.half_central(sides)),
            unit(many_sided.side_from_apothem(FOOT, sides)),
            unit(many_sided.apothem_from_side(FOOT, sides)),
            unit(many_sided.hip_unit_run(sides)),
        )
        for sides in SIDES
    ]


def jack_rows(settings: Settings) -> list[SidesJackRow]:
    """Return the jacks of each number of sides."""
    rows = []
    for sides in SIDES:
        at = many_sided.regular_corner(ANY_SLOPE, sides)
        cut = cheeks.jack(at)
        rows.append(
            SidesJackRow(
                sides,
                deg(cut.blade),
                mark(shortening.jack_at_hip(settings.hip_thickness, at), settings),
                mark(shortening.point_to_point(settings.rafter_thickness, at), settings),
                at_least(cut.reach(settings.rafter_thickness), settings),
            )
        )
    return rows


def peak_rows(settings: Settings) -> list[SidesPeakRow]:
    """Return the peak of each number of sides."""
    rows = []
    for sides in SIDES:
        cut, point = (
            many_sided.peak_cheek(ANY_SLOPE, sides),
            many_sided.peak_point(settings.hip_thickness, sides),
        )
        rows.append(
            SidesPeakRow(
                sides,
                deg(cut.blade),
                mark(point, settings),
                at_least(cut.reach(settings.hip_thickness / 2), settings),
                at_least(2 * point, settings),
            )
        )
    return rows


def pitch_rows(settings: Settings, sides: int) -> list[ManySidedRow]:
    """Return one row a pitch for a number of sides."""
    rows = []
    for pitch in settings.pitches:
        at = many_sided.regular_corner(pitch.slope, sides)
        rows.append(
            ManySidedRow(
                pitch,
                unit(many_sided.hip_length(FOOT, pitch.slope, sides)),
                deg(corner.hip_angle(at)),
                mark(corner.jack_difference(SPACING_IN, at), settings),
                mark(cheeks.jack(at).figure(), settings),
                mark(many_sided.peak_cheek(pitch.slope, sides).figure(), settings),
                deg(backing.bevel(at)),
                mark(backing.drop_plumb(settings.hip_thickness, at), settings),
            )
        )
    return rows


def listed(settings: Settings) -> list[Table]:
    """Return the tables of this group."""
    return [
        Table(
            'many-sided',
            'sides',
            'Many-sided plans',
            ('sides', 'corner', 'plate cut', 'side', 'apothem', 'hip run'),
            'corner inside, in plan; plate cut from square; side and hip run per foot of apothem; apothem per foot of side',
            sides_rows,
        ),
        Table(
            'many-sided',
            'sides-jacks',
            'Many sides: jacks',
            ('sides', 'blade', 'off', 'points', 'reach'),
            'blade from square, on the side, over the plumb cut; off, hip center line to its side, and points, short to '
            'long, level; reach along the blade, at least',
            jack_rows,
        ),
        Table(
            'many-sided',
            'sides-peak',
            'Many sides: hips at the peak',
            ('sides', 'blade', 'side', 'reach', 'post'),
            "blade from square, on the side; side: level, the point back to each side's plumb line; reach along the blade, "
            'at least; post: least across flats for square-cut hips',
            peak_rows,
        ),
        *(
            Table(
                'many-sided',
                f'{count}-sides',
                f'Roofs of {count} sides',
                ('pitch', 'per foot', 'hip: side', 'jacks 16', 'jack: 12 &', 'peak: 12 &', 'backing', 'drop'),
                'hip per foot of apothem; its plumb cut on the side, from square; jacks along the slope; 12 &: the square, '
                'top edge, hip left square, marked along the 12; drop plumb',
                partial(pitch_rows, sides=count),
            )
            for count in SIDES
        ),
    ]
