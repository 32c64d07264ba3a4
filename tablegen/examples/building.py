"""The building of the worked examples: a garden store, hipped at one end, with a wing and a porch, one pitch on all but the porch."""

from __future__ import annotations

from fractions import Fraction

from msgspec import Struct
from msgspec.structs import replace

from tablegen.geometry.pitch import Pitch
from tablegen.numbers.exact import Exact
from tablegen.numbers.units import INCHES
from tablegen.roof.member import Member, Stop
from tablegen.roof.members import Members
from tablegen.roof.plane import Plane
from tablegen.roof.question import boards_of
from tablegen.roof.side import side
from tablegen.settings import Settings
from tablegen.tables.lookup import addends

STORE_RISE, PORCH_RISE = Fraction(6), Fraction(4)
"""Inches per foot that are wanted; the book's nearest are taken."""
STORE_WIDTH_IN = Fraction(134)
"""Outside to outside of the plates; the wing is as wide, so that its ridge and the store's meet at one height."""
PORCH_RUN_IN = Fraction(429, 8)
"""Outside of the porch's plate to the store's wall."""
STORE_OVERHANG_IN, PORCH_OVERHANG_IN = Fraction(8), Fraction(6)
ROOM_IN = INCHES.unit_run
"""What a book's runs must have left for an overhang."""
SPACING_IN = INCHES.spacing
"""Of the jacks, where the book has it."""


class Roof(Struct, frozen=True):
    """The roof of the store, or of its porch; the store's hips and valleys stand at regular corners."""

    pitch: Pitch
    run_in: Fraction
    overhang_in: Fraction
    mark: str = ''
    """Of the member worked, in the cut list of a roof of the reader's own; '' in the garden store."""

    def plane(self, settings: Settings) -> Plane:
        """Return what its members have in common, of the book's boards."""
        boards = replace(boards_of(settings), overhang_in=self.overhang_in)
        return Plane(Members(side(self.pitch, boards)), self.run_in, settings.measure)


class Stations(Struct, frozen=True, kw_only=True):
    """Where the jacks of one side of a hip stand."""

    roof: Roof
    spacing_in: Fraction
    first_in: Fraction
    """From the corner, level, to the first: a whole space but where the roof says another."""
    marks: tuple[tuple[str, Fraction], ...]
    """What each is called, and its run, which is how far from the corner it stands; from the shortest."""


class Slopes(Struct, frozen=True, kw_only=True):
    """Two rafters of a roof whose slopes differ: a saltbox's front and back, a gambrel's lower and upper."""

    roofs: tuple[Roof, Roof]
    members: tuple[Member, Member]
    width_in: Fraction
    """Of the roof, outside to outside of the plates."""


class Building(Struct, frozen=True, kw_only=True):
    """What is worked through: each member by the roof that it stands in, None for what the building does not have."""

    common: Roof | None = None
    hip: Roof | None = None
    hip_stop: Stop = Stop.RIDGE
    """What its hips meet."""
    jacks: Stations | None = None
    valley: Roof | None = None
    shed: Roof | None = None
    ledger_in: Fraction = Fraction(0)
    """Thickness of the shed's ledger."""
    slopes: Slopes | None = None


def store_and_porch(settings: Settings) -> Building:
    """Return the building of a book that is asked for no roof of the reader's own."""
    store = garden_store(settings)
    return Building(
        common=store,
        hip=store,
        jacks=_stations(store, settings) if store else None,
        valley=store,
        shed=lean_to_porch(settings),
        ledger_in=settings.rafter_thickness,
    )


def _stations(roof: Roof, settings: Settings) -> Stations:
    """Return those a space of the book apart, the nearest to the usual, that have room between hip and side common."""
    spacing = min(settings.spacings, key=lambda one: abs(one - SPACING_IN))
    count = (roof.run_in - settings.rafter_thickness) // spacing
    marks = tuple((str(number), number * spacing) for number in range(1, count + 1))
    return Stations(roof=roof, spacing_in=spacing, first_in=spacing, marks=marks)


def garden_store(settings: Settings) -> Roof | None:
    """Return the store: 11 ft 2 in wide, 6 in 12 or the book's nearest pitch; None where the book's runs are too short."""
    return _roof(STORE_RISE, STORE_WIDTH_IN / 2, STORE_OVERHANG_IN, settings)


def store_anyway(settings: Settings) -> Roof:
    """Return the store, with the run and overhang that are wanted where the book's runs are too short for it."""
    wanted = Roof(nearest_pitch(settings, STORE_RISE), STORE_WIDTH_IN / 2, STORE_OVERHANG_IN)
    return garden_store(settings) or wanted


def lean_to_porch(settings: Settings) -> Roof | None:
    """Return the porch: run 4 ft 5 5/8 in to the wall, 4 in 12 or the nearest in the book."""
    return _roof(PORCH_RISE, PORCH_RUN_IN, PORCH_OVERHANG_IN, settings)


def _roof(rise_in: Fraction, run_in: Fraction, overhang_in: Fraction, settings: Settings) -> Roof | None:
    run, overhang = reachable(run_in, overhang_in, settings)
    if run <= overhang_in or overhang <= 0:
        return None
    return Roof(nearest_pitch(settings, rise_in), run, overhang)


def nearest_pitch(settings: Settings, rise_in: Fraction) -> Pitch:
    """Return the book's pitch nearest to a rise per foot."""
    return min(settings.pitches, key=lambda one: _distance(one.rise, rise_in))


def _distance(rise: Exact, wanted: Fraction) -> Exact:
    return rise - wanted if rise >= wanted else wanted - rise


def reachable(run_in: Fraction, overhang_in: Fraction, settings: Settings) -> tuple[Fraction, Fraction]:
    """Return a run and an overhang that the book's tables can give, the wanted ones where they can.

    Notes:
        1. Where the book ends before them it is the longest run with room for an overhang. Where small runs cannot
           be added up to them, as in a book of metric runs, both ends are tabled runs.
    """
    last = settings.runs.last
    if run_in + ROOM_IN > last:
        run_in = last - last % 1 - ROOM_IN
    if addends(run_in, settings) and addends(run_in + overhang_in, settings):
        return run_in, overhang_in
    plate = _tabled_below(run_in, settings)
    return plate, _tabled_below(run_in + overhang_in, settings) - plate


def _tabled_below(run_in: Fraction, settings: Settings) -> Fraction:
    runs = settings.runs
    return runs.first + (run_in - runs.first) // runs.step * runs.step
