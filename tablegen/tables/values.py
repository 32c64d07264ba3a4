"""What a pitch has but once, member by member: one row a pitch, for its opening, the glance, the cards and data.

Corners are regular: eaves at 90 degrees, one pitch on both sides. Lengths are plain inches to the smallest part.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, fields, replace
from typing import Any

from tablegen.geometry import common, corner
from tablegen.geometry.pitch import Pitch
from tablegen.messages import message
from tablegen.numbers import text
from tablegen.numbers.figure import Figure, decimal_figure
from tablegen.numbers.units import INCHES
from tablegen.roof.members import Members
from tablegen.roof.question import boards_of
from tablegen.settings import Settings
from tablegen.tables.columns import UNIT_PLACES, Make, data_name
from tablegen.tables.member_columns import BothWays, CheekColumns, CommonMouth, HipMouth, Of, One
from tablegen.tables.table import Column, Kind, Table

VALUES = 'values'
"""Name of the table, in data and among a book's parts."""


@dataclass(frozen=True, slots=True)
class CommonColumns:
    """The common rafter."""

    plumb_cut: One
    level_cut: One
    body: One
    tongue: One
    per_foot: One
    per_foot_part: One
    tail_per_foot: One
    at_ridge: BothWays
    mouth: CommonMouth


@dataclass(frozen=True, slots=True)
class HipColumns:
    """Hip and valley."""

    plumb_cut: One
    level_cut: One
    body: One
    tongue: One
    per_foot: One
    per_foot_part: One
    tail_per_foot: One
    backing: One
    drop: One
    valley_heel_out: One
    at_ridge: BothWays
    between_commons: BothWays
    cheek: CheekColumns
    points: BothWays
    set_back: BothWays
    dropped: HipMouth
    valley: HipMouth


@dataclass(frozen=True, slots=True)
class JackColumns:
    """Jacks."""

    at_hip: BothWays
    cheek: CheekColumns
    points: BothWays
    differences: tuple[One, ...]
    """One a spacing."""


@dataclass(frozen=True, slots=True)
class ValueColumns:
    """All of a pitch's values, each under its own name."""

    pitch: One
    common: CommonColumns
    hip: HipColumns
    jack: JackColumns


def value_columns(settings: Settings) -> ValueColumns:
    """Return the columns of every pitch of a book."""
    return ValueColumns(
        Make[Members](settings).pitch(lambda it: it.pitch), _common(settings), _hip(settings), _jack(settings)
    )


def _common(settings: Settings) -> CommonColumns:
    of, part = Of('common'), text.mixed(1, settings.measure.per)
    run = INCHES.unit_run
    return CommonColumns(
        of.degrees('plumb_cut', lambda it: it.cut.common.plumb),
        of.degrees('level_cut', lambda it: it.cut.common.level),
        of.one('body', lambda it: it.common_hold.body),
        of.one('tongue', lambda it: it.common_hold.tongue),
        of.one(
            'per_foot',
            lambda it: decimal_figure(common.line_length(run, it.side.slope), UNIT_PLACES),
            kind=Kind.DECIMAL,
        ),
        of.one(
            'per_foot_part',
            lambda it: it.side.length(common.line_length(run, it.side.slope)),
            message('values.per_foot_part', part=part),
        ),
        of.one('tail_per_foot', lambda it: it.tail.common_and_jack),
        of.both('at_ridge', lambda it: it.shortening.common_at_ridge, ridge=settings.ridge_thickness),
        of.common_mouth(lambda it: it.mouth),
    )


def _hip(settings: Settings) -> HipColumns:
    of, part = Of('hip'), text.mixed(1, settings.measure.per)
    run = INCHES.unit_run
    return HipColumns(
        of.degrees('plumb_cut', lambda it: it.cut.hip_valley.plumb),
        of.degrees('level_cut', lambda it: it.cut.hip_valley.level),
        of.one('body', lambda it: it.hip_hold.body),
        of.one('tongue', lambda it: it.hip_hold.tongue),
        of.one(
            'per_foot',
            lambda it: decimal_figure(corner.hip_length(run, it.side.at), UNIT_PLACES),
            message('values.hip_per_foot'),
            Kind.DECIMAL,
        ),
        of.one(
            'per_foot_part',
            lambda it: it.side.length(corner.hip_length(run, it.side.at)),
            message('values.per_foot_part', part=part),
        ),
        of.one(
            'tail_per_foot',
            lambda it: it.tail.hip_valley,
            message('values.hip_tail_per_foot'),
        ),
        of.degrees('backing', lambda it: it.backing.bevel),
        of.one('drop', lambda it: it.drop.plumb),
        Of('valley').one('heel_out', lambda it: it.valley_heel_out),
        of.both('at_ridge', lambda it: it.shortening.hip_valley_at_ridge, ridge=settings.ridge_thickness),
        of.both(
            'between_commons', lambda it: it.shortening.hip_between_commons, rafter=settings.rafter_thickness
        ),
        of.cheek(lambda it: it.cheek.hip_at_ridge),
        of.both('points', lambda it: it.cheek.hip_at_ridge.long_to_short_point),
        of.both('set_back', lambda it: it.cheek.hip_between_commons.point_to_side),
        Of('dropped_hip').hip_mouth(lambda it: it.dropped_mouth),
        Of('valley').hip_mouth(lambda it: it.valley_mouth),
    )


def _jack(settings: Settings) -> JackColumns:
    of = Of('jack')
    differences = (
        of.one(
            f'difference_{data_name(spacing)}',
            lambda it, place=place: it.differences[place].difference,  # type: ignore[misc]  # bound as it is made
            message('values.difference', spacing=spacing),
        )
        for place, spacing in enumerate(settings.spacings)
    )
    return JackColumns(
        of.both('at_hip', lambda it: it.shortening.jack_at_hip, hip=settings.hip_thickness),
        of.cheek(lambda it: it.cheek.jack),
        of.both('points', lambda it: it.cheek.jack.long_to_short_point),
        tuple(differences),
    )


def values_table(settings: Settings) -> Table[Members]:
    """Return the table of what every pitch has but once."""
    return Table(
        VALUES,
        VALUES,
        message('table.values'),
        tuple(_all(value_columns(settings))),
        lambda: (members_of(pitch, settings) for pitch in settings.pitches),
    )


def members_of(pitch: Pitch, settings: Settings) -> Members:
    """Return what the columns are worked out from at one pitch."""
    return Members(pitch, replace(boards_of(settings), overhang_in=INCHES.unit_run))


def text_of(column: One, it: Members) -> str:
    """Return a figure as it is printed, without its marks; '' where there is none."""
    cell = column.cell(it)
    return cell.text if isinstance(cell, Figure) else ''


def _all(record: Any) -> Iterator[One]:
    if isinstance(record, Column):
        yield record
        return
    parts = record if isinstance(record, tuple) else [getattr(record, one.name) for one in fields(record)]
    for part in parts:
        yield from _all(part)
