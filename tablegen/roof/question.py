"""What is asked about one roof: its kind, its pitch and run, and the boards that it is framed with."""

from __future__ import annotations

from fractions import Fraction

from msgspec import Struct

from tablegen.geometry.pitch import Pitch
from tablegen.numbers.figure import Measure
from tablegen.numbers.units import INCHES, Stock
from tablegen.roof.names import Against
from tablegen.settings import Settings
from tablegen.written.stocks import stock

SQUARE_DEGREES = Fraction(90)


class Regular(Struct, frozen=True):
    """A hip roof of one pitch with square corners."""


class TwoPitches(Struct, frozen=True):
    """A corner of two pitches."""

    other: Pitch
    """Of side B; side A is the pitch and run that are asked about."""
    corner_degrees: Fraction = SQUARE_DEGREES
    """Plan angle between the eaves, inside the building, above 0 and below 180."""


class ManySided(Struct, frozen=True):
    """A regular roof of many sides; its run is the apothem."""

    sides: int


class Shed(Struct, frozen=True):
    """Rafters of one slope that stand against a wall, or on a ledger on it."""

    against: Against
    ledger_in: Fraction = Fraction(0)
    """Thickness of the ledger; 0 at a bare wall."""
    run_to: Against = Against.WALL
    """To which face the run goes."""


Kind = Regular | TwoPitches | ManySided | Shed


class Boards(Struct, frozen=True, kw_only=True):
    """What a roof is framed with, whatever its run; lengths in inches."""

    stock: Stock = stock('2×8')
    """Of commons and jacks."""
    hip_stock: Stock | None = None
    """None for that of the rafters."""
    valley_stock: Stock | None = None
    """None for that of the rafters."""
    seat_in: Fraction = Fraction(7, 2)
    """Level length of the common's seat: the width of a nominal 4 in plate."""
    overhang_in: Fraction = INCHES.unit_run
    """Level, outside of plate to the tail's end, of the common."""
    tail_face_in: Fraction = Fraction(11, 2)
    """Plumb cut left above a level soffit cut: a nominal 6 in fascia."""
    ridge_in: Fraction = Fraction(3, 2)
    """Thickness."""
    hip_in: Fraction = Fraction(3, 2)
    """Thickness of hips."""
    valley_in: Fraction | None = None
    """Thickness of valleys; None for that of the hips."""
    rafter_in: Fraction = Fraction(3, 2)
    spacings: tuple[Fraction, ...] = INCHES.spacings
    measure: Measure = Measure()

    @property
    def hips(self) -> Stock:
        """Return the size of the hips."""
        return self.hip_stock or self.stock

    @property
    def valleys(self) -> Stock:
        """Return the size of the valleys."""
        return self.valley_stock or self.stock

    @property
    def valley_thickness_in(self) -> Fraction:
        """Return the thickness of the valleys."""
        return self.hip_in if self.valley_in is None else self.valley_in


class RoofQuestion(Boards, frozen=True):
    """What is asked."""

    pitch: Pitch
    run_in: Fraction
    """Level, outside of plate to ridge center line; the apothem of a many-sided roof; of a shed to its wall or ledger."""
    roof: Kind = Regular()
    plate_length_in: Fraction | None = None
    """Outside of plates along the ridge of a hip roof, for the ridge's length; None where that is not asked."""


def boards_of(settings: Settings) -> Boards:
    """Return the boards of a book, its lengths being told in inches whatever its run tables read in."""
    return Boards(
        stock=settings.rafters,
        hip_stock=settings.hips,
        valley_stock=settings.valleys,
        seat_in=settings.seat,
        ridge_in=settings.ridge_thickness,
        hip_in=settings.hip_thickness,
        rafter_in=settings.rafter_thickness,
        spacings=settings.spacings,
        measure=Measure(settings.measure.per),
    )
