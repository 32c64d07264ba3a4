"""What is asked about one roof."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from tablegen.geometry.pitch import Pitch
from tablegen.numbers.figure import Measure
from tablegen.numbers.units import INCHES, Stock
from tablegen.written.stocks import stock


@dataclass(frozen=True, slots=True)
class RoofQuestion:
    """What is asked; lengths in inches."""

    pitch: Pitch
    run_in: Fraction
    """Level, outside of plate to ridge center line; the apothem of a many-sided roof; of a shed to its wall or ledger."""
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
    plate_length_in: Fraction | None = None
    """Outside of plates along the ridge of a hip roof, for the ridge's length; None where that is not asked."""
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
