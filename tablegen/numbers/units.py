"""Systems of units: how each counts lengths, what its pitches stand over, what is sold in it."""

from __future__ import annotations

from fractions import Fraction

from msgspec import Struct


class Stock(Struct, frozen=True):
    """One size of rafter stock, dry."""

    name: str
    """As it is sold: '2×8'."""
    thickness_in: Fraction
    """Dressed, in: across the edge."""
    depth_in: Fraction
    """Dressed, in: square to the edge, top to bottom."""


class Units(Struct, frozen=True):
    """One system of units; its lengths are in its own unit."""

    name: str
    unit: str
    """Of every length: 'in'."""
    parts: tuple[int, ...]
    """Smallest parts in one unit that a tape shows, from the coarsest."""
    part: int
    """The usual one: what a tape is taken to show where nothing else is said."""
    greater: str
    """Unit that lengths are grouped in: 'ft'."""
    group: int
    """Units in the greater one."""
    base: int
    """Level run that a pitch's rise stands over, and the figure that a cheek's is held against on the square."""
    unit_run: Fraction
    """Level run that lengths per foot are told for."""
    spacings: tuple[Fraction, ...]
    """Usual on center."""
    spacing: Fraction
    """The one of them that stands for all where there is room for one."""
    stocks: tuple[Stock, ...]
    """Sizes of rafters that are sold, nominal and dressed."""
    thicknesses: tuple[Fraction, ...]
    """Dressed thicknesses of boards and members that are sold."""
    thickest: int
    """Most that a setting of a thickness or a seat may be."""
    widest_spacing: int
    longest: int
    """Past this a length is a slip of the pen."""

    @property
    def smallest_parts(self) -> tuple[str, ...]:
        """Return the smallest parts that a tape shows as they are written: '1/16'."""
        return tuple(f'1/{per}' for per in self.parts)

    @property
    def over_base(self) -> str:
        """Return what a pitch's rise is followed by: 'in 12'."""
        return f'in {self.base}'


TWO_IN = Fraction(3, 2)
INCHES = Units(
    name='inches',
    unit='in',
    parts=(2, 4, 8, 16, 32, 64),
    part=16,
    greater='ft',
    group=12,
    base=12,
    unit_run=Fraction(12),
    spacings=(Fraction(12), Fraction(16), Fraction(96, 5), Fraction(24)),
    spacing=Fraction(16),
    # Source: American Softwood Lumber Standard, Voluntary Product Standard PS 20 (NIST), minimum dressed dry sizes.
    stocks=(
        Stock('2×4', TWO_IN, Fraction(7, 2)),
        Stock('2×6', TWO_IN, Fraction(11, 2)),
        Stock('2×8', TWO_IN, Fraction(29, 4)),
        Stock('2×10', TWO_IN, Fraction(37, 4)),
        Stock('2×12', TWO_IN, Fraction(45, 4)),
    ),
    # ¾ to 5½ in, from the same standard: boards and dimension to 4 in, then the widths of nominal 5 and 6 in, as two
    # or three members nailed side by side come near them too.
    thicknesses=tuple(Fraction(quarters, 4) for quarters in (3, 4, 5, 6, 8, 10, 12, 14, 16, 18, 22)),
    thickest=12,
    widest_spacing=96,
    longest=120_000,
)
