"""How the columns of a pitch's values are made: one figure, a distance two ways, a cheek, a bird's mouth."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from tablegen.messages import Message, message
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import DEGREE, INCH, Figure
from tablegen.roof.cheeks import CheekCut
from tablegen.roof.figures import TwoWays
from tablegen.roof.members import Members
from tablegen.roof.names import Mark
from tablegen.roof.seat import Notch
from tablegen.tables.table import PAST_A_QUARTER, PAST_A_THIRD, THIN, Cell, Column, Kind

One = Column[Members]
MARKS: dict[Mark, tuple[str, ...]] = {
    Mark.WITHIN_A_QUARTER: (),
    Mark.PAST_A_QUARTER: (PAST_A_QUARTER,),
    Mark.PAST_A_THIRD: (PAST_A_THIRD,),
}


@dataclass(frozen=True, slots=True)
class BothWays:
    """One distance between two plumb lines, measured two ways."""

    level: One
    along: One


@dataclass(frozen=True, slots=True)
class CheekColumns:
    """A cheek, where it is marked and sawn."""

    top: One
    top_12_and: One
    side: One
    blade: One


@dataclass(frozen=True, slots=True)
class CommonMouth:
    """A common's bird's mouth, its seat being given; its figures are missing where `why` says why there is none."""

    height: One
    heel: One
    notch: One
    left: One
    why: One


@dataclass(frozen=True, slots=True)
class HipMouth:
    """A hip's or valley's."""

    height: One
    heel: One
    seat: One
    left: One
    why: One


@dataclass(frozen=True, slots=True)
class Of:
    """Makes the columns of one member, their heads and what they are told of being said by their names."""

    member: str

    def one(
        self,
        key: str,
        of: Callable[[Members], Cell],
        head: Message | None = None,
        kind: Kind = Kind.LENGTH,
        way: str = '',
        marks: Callable[[Members], tuple[str, ...]] | None = None,
    ) -> One:
        """Return a column of finished figures.

        Given:
            way  name of the words that say how it is measured, where its head does not
        """
        datum = message(f'values.{way or "of"}', member=message(f'values.{self.member}'))
        unit = DEGREE if kind is Kind.DEGREES else INCH
        return Column(
            f'{self.member}_{key}',
            head or message(f'values.{key}'),
            of,
            datum,
            kind,
            unit,
            marks,
        )

    def degrees(self, key: str, of: Callable[[Members], Cell]) -> One:
        """Return a column of angles."""
        return self.one(key, of, kind=Kind.DEGREES)

    def both(self, key: str, of: Callable[[Members], TwoWays], **values: object) -> BothWays:
        """Return the columns of one distance."""
        head = message(f'values.{self.member}_{key}', **values)
        return BothWays(
            self.one(f'{key}_level', lambda it: of(it).level, head, way='level'),
            self.one(f'{key}_along', lambda it: of(it).along, head, way='along'),
        )

    def cheek(self, of: Callable[[Members], CheekCut]) -> CheekColumns:
        """Return the columns of a cheek."""
        return CheekColumns(
            self.degrees('cheek_top', lambda it: of(it).top_from_square),
            self.one('cheek_top_12_and', lambda it: of(it).top_figure_on_12),
            self.degrees('cheek_side', lambda it: of(it).side_plumb),
            self.degrees('cheek_blade', lambda it: of(it).side_blade_tilt),
        )

    def common_mouth(self, of: Callable[[Members], Notch]) -> CommonMouth:
        """Return the columns of a common's bird's mouth."""
        return CommonMouth(*self._mouth(of, 'common', 'notch', lambda one: one.notch_in))

    def hip_mouth(self, of: Callable[[Members], Notch]) -> HipMouth:
        """Return the columns of a hip's or valley's bird's mouth."""
        return HipMouth(*self._mouth(of, 'mouth', 'seat', lambda one: one.seat_in))

    def _mouth(
        self, of: Callable[[Members], Notch], heads: str, third: str, told_third: Callable[[Notch], Exact]
    ) -> tuple[One, One, One, One, One]:
        def length(key: str, told: Callable[[Notch], Exact], marked: bool = False) -> One:
            def cell(it: Members) -> Figure | None:
                return None if it.fault(of(it)) else it.side.length(told(of(it)))

            return self.one(key, cell, message(f'values.{heads}_{key}'), marks=marks if marked else None)

        def marks(it: Members) -> tuple[str, ...]:
            notch = of(it)
            return (*MARKS[notch.mark], *((THIN,) if notch.thin else ()))

        def why(it: Members) -> Message | None:
            fault = it.fault(of(it))
            return message(f'values.{fault.value}') if fault else None

        return (
            length('height', lambda one: one.height_in),
            length('heel', lambda one: one.heel_in),
            length(third, told_third),
            length('left', lambda one: one.left_in, marked=True),
            self.one('why', why, kind=Kind.WORD),
        )
