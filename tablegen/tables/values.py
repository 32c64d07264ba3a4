"""What a pitch has but once, member by member: one row a pitch, for its opening, the glance, the cards and data.

Corners are regular: eaves at 90 degrees, one pitch on both sides. Lengths are plain inches to the smallest part.
"""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from functools import cached_property

from msgspec import Struct
from msgspec.structs import replace

from tablegen.geometry import common as commons
from tablegen.geometry import corner
from tablegen.geometry.pitch import Pitch
from tablegen.messages import Message, message
from tablegen.numbers import text
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import DEGREE, INCH, Figure, decimal_figure
from tablegen.numbers.units import INCHES
from tablegen.roof.members import Members
from tablegen.roof.names import Mark
from tablegen.roof.question import boards_of
from tablegen.roof.seat import Notch
from tablegen.roof.side import side
from tablegen.settings import Settings
from tablegen.tables.columns import UNIT_PLACES, Make, data_name
from tablegen.tables.table import PAST_A_QUARTER, PAST_A_THIRD, THIN, Cell, Column, Kind, Table

VALUES = 'values'
"""Name of the table, in data and among a book's parts."""
MARKS: dict[Mark, tuple[str, ...]] = {
    Mark.WITHIN_A_QUARTER: (),
    Mark.PAST_A_QUARTER: (PAST_A_QUARTER,),
    Mark.PAST_A_THIRD: (PAST_A_THIRD,),
}
One = Column[Members]


class Value(Struct):
    """One column of a pitch's values, named by the attribute that it is."""

    member: str
    of: Callable[[Members], Cell]
    head: str = ''
    """Name of its head's words; '' for its own."""
    kind: Kind = Kind.LENGTH
    way: str = 'of'
    """Name of the words that say how it is measured, where its head does not."""
    marks: Callable[[Members], tuple[str, ...]] | None = None
    key: str = ''

    def __set_name__(self, owner: type, name: str) -> None:
        self.key = name

    def __get__(self, values: Values, owner: type) -> One:
        """Return the column, its words being those of a book's boards."""
        datum = message(f'values.{self.way}', member=message(f'values.{self.member}'))
        head = message(f'values.{self.head or self.key}', **values.words)
        unit = DEGREE if self.kind is Kind.DEGREES else INCH
        column = Column(self.key, head, self.of, datum, self.kind, unit, self.marks)
        vars(values)[self.key] = column  # found there from now on
        return column


def _degrees(member: str, of: Callable[[Members], Cell], head: str) -> Value:
    return Value(member, of, head, Kind.DEGREES)


def _thousandths(member: str, inches: Callable[[Members], Exact], head: str) -> Value:
    return Value(member, lambda it: decimal_figure(inches(it), UNIT_PLACES), head, Kind.DECIMAL)


def _level(member: str, of: Callable[[Members], Cell], head: str) -> Value:
    return Value(member, of, head, way='level')


def _along(member: str, of: Callable[[Members], Cell], head: str) -> Value:
    return Value(member, of, head, way='along')


def _left(member: str, notch: Callable[[Members], Notch], head: str) -> Value:
    """Return the wood left over a notch, with what it is marked with."""

    def marks(it: Members) -> tuple[str, ...]:
        return (*MARKS[notch(it).mark], *((THIN,) if notch(it).thin else ()))

    return Value(member, lambda it: it.seated(notch(it), notch(it).left_in), head, marks=marks)


def _why(member: str, notch: Callable[[Members], Notch]) -> Value:
    """Return why a member has no bird's mouth, where its figures are missing."""

    def why(it: Members) -> Message | None:
        fault = it.fault(notch(it))
        return message(f'values.{fault.value}') if fault else None

    return Value(member, why, 'why', Kind.WORD)


def _run(it: Members) -> Exact:
    return commons.line_length(INCHES.unit_run, it.side.slope)


def _hip_run(it: Members) -> Exact:
    return corner.hip_length(INCHES.unit_run, it.side.at)


class Values:
    """The columns of a pitch's values, each under its name in data."""

    def __init__(self, settings: Settings):
        self.settings = settings
        self.pitch = Make[Members](settings).pitch(lambda it: it.pitch)
        self.words = {
            'part': text.mixed(1, settings.measure.per),
            'ridge': settings.ridge_thickness,
            'hip': settings.hip_thickness,
            'rafter': settings.rafter_thickness,
        }

    common_plumb_cut = _degrees('common', lambda it: it.cut.common.plumb, 'plumb_cut')
    common_level_cut = _degrees('common', lambda it: it.cut.common.level, 'level_cut')
    common_body = Value('common', lambda it: it.common_hold.body, 'body')
    common_tongue = Value('common', lambda it: it.common_hold.tongue, 'tongue')
    common_per_foot = _thousandths('common', _run, 'per_foot')
    common_per_foot_part = Value('common', lambda it: it.side.length(_run(it)), 'per_foot_part')
    common_tail_per_foot = Value('common', lambda it: it.tail.common_and_jack, 'tail_per_foot')
    common_at_ridge_level = _level(
        'common', lambda it: it.shortening.common_at_ridge.level, 'common_at_ridge'
    )
    common_at_ridge_along = _along(
        'common', lambda it: it.shortening.common_at_ridge.along, 'common_at_ridge'
    )
    common_height = Value('common', lambda it: it.seated(it.mouth, it.mouth.height_in))
    common_heel = Value('common', lambda it: it.seated(it.mouth, it.mouth.heel_in))
    common_notch = Value('common', lambda it: it.seated(it.mouth, it.mouth.notch_in))
    common_left = _left('common', lambda it: it.mouth, 'common_left')
    common_why = _why('common', lambda it: it.mouth)
    hip_plumb_cut = _degrees('hip', lambda it: it.cut.hip_valley.plumb, 'plumb_cut')
    hip_level_cut = _degrees('hip', lambda it: it.cut.hip_valley.level, 'level_cut')
    hip_body = Value('hip', lambda it: it.hip_hold.body, 'body')
    hip_tongue = Value('hip', lambda it: it.hip_hold.tongue, 'tongue')
    hip_per_foot = _thousandths('hip', _hip_run, 'hip_per_foot')
    hip_per_foot_part = Value('hip', lambda it: it.side.length(_hip_run(it)), 'per_foot_part')
    hip_tail_per_foot = Value('hip', lambda it: it.tail.hip_valley)
    hip_backing = _degrees('hip', lambda it: it.backing.bevel, 'backing')
    hip_drop = Value('hip', lambda it: it.drop.plumb, 'drop')
    valley_heel_out = Value('valley', lambda it: it.valley_heel_out, 'heel_out')
    hip_at_ridge_level = _level('hip', lambda it: it.shortening.hip_valley_at_ridge.level, 'hip_at_ridge')
    hip_at_ridge_along = _along('hip', lambda it: it.shortening.hip_valley_at_ridge.along, 'hip_at_ridge')
    hip_between_commons_level = _level(
        'hip', lambda it: it.shortening.hip_between_commons.level, 'hip_between_commons'
    )
    hip_between_commons_along = _along(
        'hip', lambda it: it.shortening.hip_between_commons.along, 'hip_between_commons'
    )
    hip_cheek_top = _degrees('hip', lambda it: it.cheek.hip_top.from_square, 'cheek_top')
    hip_cheek_top_12_and = Value('hip', lambda it: it.cheek.hip_top.figure_on_12, 'cheek_top_12_and')
    hip_cheek_side = _degrees('hip', lambda it: it.cheek.hip_at_ridge.side_line, 'cheek_side')
    hip_cheek_blade = _degrees('hip', lambda it: it.cheek.hip_at_ridge.side_blade_tilt, 'cheek_blade')
    hip_points_level = _level('hip', lambda it: it.cheek.hip_at_ridge.long_to_short_point.level, 'hip_points')
    hip_points_along = _along('hip', lambda it: it.cheek.hip_at_ridge.long_to_short_point.along, 'hip_points')
    hip_set_back_level = _level(
        'hip', lambda it: it.cheek.hip_between_commons.point_to_side.level, 'hip_set_back'
    )
    hip_set_back_along = _along(
        'hip', lambda it: it.cheek.hip_between_commons.point_to_side.along, 'hip_set_back'
    )
    dropped_hip_height = Value(
        'dropped_hip', lambda it: it.seated(it.dropped_mouth, it.dropped_mouth.height_in), 'mouth_height'
    )
    dropped_hip_heel = Value(
        'dropped_hip', lambda it: it.seated(it.dropped_mouth, it.dropped_mouth.heel_in), 'mouth_heel'
    )
    dropped_hip_seat = Value(
        'dropped_hip', lambda it: it.seated(it.dropped_mouth, it.dropped_mouth.seat_in), 'mouth_seat'
    )
    dropped_hip_left = _left('dropped_hip', lambda it: it.dropped_mouth, 'mouth_left')
    dropped_hip_why = _why('dropped_hip', lambda it: it.dropped_mouth)
    valley_height = Value(
        'valley', lambda it: it.seated(it.valley_mouth, it.valley_mouth.height_in), 'mouth_height'
    )
    valley_heel = Value(
        'valley', lambda it: it.seated(it.valley_mouth, it.valley_mouth.heel_in), 'mouth_heel'
    )
    valley_seat = Value(
        'valley', lambda it: it.seated(it.valley_mouth, it.valley_mouth.seat_in), 'mouth_seat'
    )
    valley_left = _left('valley', lambda it: it.valley_mouth, 'mouth_left')
    valley_why = _why('valley', lambda it: it.valley_mouth)
    jack_at_hip_level = _level('jack', lambda it: it.shortening.jack_at_hip.level, 'jack_at_hip')
    jack_at_hip_along = _along('jack', lambda it: it.shortening.jack_at_hip.along, 'jack_at_hip')
    jack_cheek_top = _degrees('jack', lambda it: it.cheek.jack_top.from_square, 'cheek_top')
    jack_cheek_top_12_and = Value('jack', lambda it: it.cheek.jack_top.figure_on_12, 'cheek_top_12_and')
    jack_cheek_side = _degrees('jack', lambda it: it.cheek.jack.side_line, 'cheek_side')
    jack_cheek_blade = _degrees('jack', lambda it: it.cheek.jack.side_blade_tilt, 'cheek_blade')
    jack_points_level = _level('jack', lambda it: it.cheek.jack.long_to_short_point.level, 'jack_points')
    jack_points_along = _along('jack', lambda it: it.cheek.jack.long_to_short_point.along, 'jack_points')

    @cached_property
    def jack_differences(self) -> tuple[One, ...]:
        """Return how much longer each jack is than the one before it, one a spacing."""
        datum = message('values.of', member=message('values.jack'))

        def difference(place: int, spacing: Fraction) -> One:
            head = message('values.difference', spacing=spacing)
            key = f'jack_difference_{data_name(spacing)}'
            return Column(key, head, lambda it: it.differences[place].difference, datum)

        return tuple(difference(*one) for one in enumerate(self.settings.spacings))

    def all(self) -> tuple[One, ...]:
        """Return every column, the pitch first."""
        own = [key for key, one in vars(Values).items() if isinstance(one, Value)]
        return (self.pitch, *(getattr(self, key) for key in own), *self.jack_differences)


def values_table(settings: Settings) -> Table[Members]:
    """Return the table of what every pitch has but once."""
    return Table(
        VALUES,
        VALUES,
        message('table.values'),
        Values(settings).all(),
        lambda: (members_of(pitch, settings) for pitch in settings.pitches),
    )


def members_of(pitch: Pitch, settings: Settings) -> Members:
    """Return what the columns are worked out from at one pitch."""
    return Members(side(pitch, replace(boards_of(settings), overhang_in=INCHES.unit_run)))


def text_of(column: One, it: Members) -> str:
    """Return a figure as it is printed, without its marks; '' where there is none."""
    cell = column.cell(it)
    return cell.text if isinstance(cell, Figure) else ''
