"""The store's common rafter, and the rafter of its porch, a shed roof on a ledger."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from tablegen.examples import parts
from tablegen.examples.building import (
    PORCH_OVERHANG_IN,
    PORCH_RISE,
    PORCH_RUN_IN,
    garden_store,
    nearest_pitch,
    reachable,
)
from tablegen.examples.records import Deduction, Member, Mouth, RunSource, Sources, Stands
from tablegen.examples.sources import in_opening, in_table, read_length
from tablegen.geometry import common, seat, shortening
from tablegen.geometry.pitch import Pitch
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import Figure, degree_figure
from tablegen.settings import Settings
from tablegen.tables.columns import data_name
from tablegen.tables.lookup import look_up
from tablegen.tables.members import members


@dataclass(frozen=True, slots=True)
class CommonExample:
    """One common rafter, from the width of a building to the marks."""

    member: Member
    width_in: Fraction | None
    """Outside to outside of the plates; None for a shed, whose run is measured to the wall."""
    seat_in: Fraction
    """That was asked for."""
    plumb_cut: Figure
    level_cut: Figure
    """deg, on the side, from square across."""


def store(settings: Settings) -> CommonExample | None:
    """Return the store's common; None where the book ends before it."""
    roof = garden_store(settings)
    if roof is None:
        return None
    return _common(
        'store', roof.pitch, roof.run_in, roof.overhang_in, roof.width_in, settings.ridge_thickness, settings
    )


def porch(settings: Settings) -> CommonExample | None:
    """Return the porch's rafter: run 4 ft 5 5/8 in to the wall, 4 in 12 or the nearest in the book, a ledger of its stock."""
    run, overhang = reachable(PORCH_RUN_IN, PORCH_OVERHANG_IN, settings)
    if run <= PORCH_OVERHANG_IN or overhang <= 0:
        return None
    pitch = nearest_pitch(settings, PORCH_RISE)
    return _common('porch', pitch, run, overhang, None, settings.rafter_thickness, settings)


def height_of_commons(pitch: Pitch, settings: Settings) -> Exact:
    """Return the height above plate that every rafter of a roof has, in, from its commons' stock and seat."""
    return seat.height_above_plate(settings.rafters.depth_in, settings.seat, pitch.slope)


def mouth_of_commons(pitch: Pitch, overhang_in: Fraction, settings: Settings) -> Mouth | None:
    """Return the bird's mouth of commons and jacks."""
    height, heel = height_of_commons(pitch, settings), seat.heel(settings.seat, pitch.slope)
    return parts.mouth(settings.rafters.depth_in, height, heel, pitch.slope, overhang_in, settings)


def mouth_stands(mouth: Mouth | None, pitch: Pitch, settings: Settings) -> Stands:
    """Return where a common's heel, height and notch stand: in the tables of its seat, or the heel in the rises."""
    if mouth is None:
        return {}
    left, name, values = f'stock-left-{_seat_key(settings)}', settings.rafters, members(pitch, settings)
    opened = in_opening('notch', mouth.notch, values, settings)
    opened += in_opening('left', mouth.left, values, settings)
    return {
        'heel': in_opening('heel', mouth.heel, values, settings)
        or in_table(f'height-{_seat_key(settings)}', pitch, 'heel', mouth.heel, settings)
        or _in_rises(mouth, pitch, settings),
        'height': height_stands(pitch, settings),
        'notch': opened
        or in_table(left, pitch, 'notch', mouth.notch, settings)
        + in_table(left, pitch, 'left', mouth.left, settings, name),
    }


def _off_stands(off: Deduction, pitch: Pitch, settings: Settings) -> Sources:
    level, thick, values = 'shortening-level', off.thickness_in, members(pitch, settings)
    if off.reason == 'ledger':
        return in_table(level, thick, 'shed_on_ledger', off.level, settings)
    opened = in_opening('ridge_level', off.level, values, settings)
    opened += in_opening('ridge_along', off.along, values, settings)
    along = 'shortening-common', pitch, 'off_along_edge', off.along, settings, thick
    return opened or in_table(level, thick, 'common', off.level, settings) + in_table(*along)


def height_stands(pitch: Pitch, settings: Settings) -> Sources:
    """Return where the commons' height above plate stands."""
    height = parts.inches(height_of_commons(pitch, settings), settings)
    return in_opening('height', height, members(pitch, settings), settings) or in_table(
        f'height-{_seat_key(settings)}', pitch, 'height', height, settings, settings.rafters
    )


def _seat_key(settings: Settings) -> str:
    return data_name(settings.seat, '').replace('_', '-')


def _in_rises(mouth: Mouth, pitch: Pitch, settings: Settings) -> Sources:
    """Return where the rise of the seat stands, if it can be read in one place: it is the heel."""
    found = look_up('rise', settings.seat, pitch, settings) if 'rise' in settings.parts else None
    if found is None or len(found.readings) > 1 or found.direct.count != mouth.heel.count:
        return ()
    (reading,) = found.readings
    return (RunSource('rise', reading.run_in, reading.figure, reading.added),)


def _common(
    key: str,
    pitch: Pitch,
    run_in: Fraction,
    overhang_in: Fraction,
    width_in: Fraction | None,
    met_in: Fraction,
    settings: Settings,
) -> CommonExample | None:
    read, to_tail = (read_length('common', one, pitch, settings) for one in (run_in, run_in + overhang_in))
    if read is None or to_tail is None:
        return None
    slope, values = pitch.slope, members(pitch, settings)
    level = shortening.at_ledger(met_in) if width_in is None else shortening.at_ridge(met_in)
    off = parts.deduction('ledger' if width_in is None else 'ridge', met_in, level, slope, settings)
    mouth = mouth_of_commons(pitch, overhang_in, settings)
    cut = shortening.along(level, slope)
    plate, tail = (common.line_length(one, slope) for one in (run_in, run_in + overhang_in))
    overall, stick = parts.stick(tail - cut, settings.rafters.depth_in, slope, settings)
    angle = common.slope_angle(slope)
    stands = {
        'length': read[1],
        'whole': to_tail[1],
        'off': _off_stands(off, pitch, settings),
        'cuts': in_opening('plumb_cut', degree_figure(angle), values, settings)
        + in_opening('level_cut', degree_figure(angle.complement()), values, settings),
        **mouth_stands(mouth, pitch, settings),
    }
    return CommonExample(
        Member(
            key,
            pitch,
            settings.rafters,
            settings.rafter_thickness,
            run_in,
            overhang_in,
            read[0],
            to_tail[0],
            off,
            mouth,
            parts.marks(settings, center=0, cut=cut, plate=plate, tail=tail),
            overall,
            stick,
            parts.common_step_off(run_in, overhang_in, pitch, settings),
            parts.cautions(pitch, mouth),
            stands,
        ),
        width_in,
        settings.seat,
        degree_figure(angle),
        degree_figure(angle.complement()),
    )
