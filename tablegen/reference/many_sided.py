"""Regular many-sided roofs: what the number of sides decides, and what the pitch adds."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from functools import partial

from tablegen.figures import Figure
from tablegen.geometry import backing, cheeks, corner, many_sided
from tablegen.pitch import Pitch
from tablegen.reference.finish import deg, degrees_figure, mark, unit
from tablegen.reference.table import Table
from tablegen.settings import Settings

SIDES = (5, 6, 8, 10, 12)
SPACING_IN = Fraction(16)
FOOT = Fraction(12)


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
    jack_blade: Figure
    """deg, jack against hip: tilt from square, shoe on the side; past 45 use plate_miter from a squared end."""
    peak_blade: Figure
    """deg, each cheek of a hip at the peak: tilt from square, shoe on the side."""
    least_post: Figure
    """in, across flats, smallest center post on which square-cut hips of the set thickness find room."""


@dataclass(frozen=True, slots=True)
class ManySidedRow:
    """One pitch of a roof with a given number of sides."""

    pitch: Pitch
    hip_per_foot: Figure
    """in, along the hip, per foot of apothem, to thousandths."""
    hip_slope: Figure
    """deg, the hip's plumb cut, on its side from square."""
    jack_difference: Figure
    """in, along the slope, neighboring jacks at 16 in on center."""
    jack_figure: Figure
    """in, against 12 on the square, jack's top edge against the hip."""
    peak_figure: Figure
    """in, against 12, SQUARE top of a hip, each of the two cheeks at the peak."""
    backing_bevel: Figure
    """deg, each face of the hip's top."""
    drop: Figure
    """in, PLUMB, for the set hip thickness."""


def sides_rows(settings: Settings) -> list[SidesRow]:
    """Return one row a number of sides."""
    rows = []
    for sides in SIDES:
        half = many_sided.half_central(sides)
        rows.append(
            SidesRow(
                sides,
                degrees_figure(many_sided.plan_corner_degrees(sides)),
                deg(half),
                unit(many_sided.side_from_apothem(FOOT, sides)),
                unit(many_sided.apothem_from_side(FOOT, sides)),
                unit(many_sided.hip_unit_run(sides)),
                deg(half.complement()),
                deg(half.complement()),
                mark(2 * many_sided.peak_point(settings.hip_thickness, sides), settings),
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
    sides = Table(
        'many-sided',
        'sides',
        'Many-sided plans',
        ('sides', 'corner', 'plate cut', 'side', 'apothem', 'hip run', 'jack blade', 'peak blade', 'post'),
        'side and hip run per foot of apothem; apothem per foot of side; blades from square, on the side; post: '
        'smallest across flats for square-cut hips',
        sides_rows,
    )
    return [
        sides,
        *(
            Table(
                'many-sided',
                f'{count}-sides',
                f'Roofs of {count} sides',
                ('pitch', 'per foot', 'hip slope', 'jacks 16', 'jack on 12', 'peak on 12', 'backing', 'drop'),
                'hip per foot of apothem; jacks along the slope; on 12: figure on the square, top edge, hip left '
                'square; drop plumb',
                partial(pitch_rows, sides=count),
            )
            for count in SIDES
        ),
    ]
