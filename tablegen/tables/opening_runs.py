"""The runs that stand on the opening of a pitch, and how any run is added up from them."""

from __future__ import annotations

from fractions import Fraction
from functools import cached_property, lru_cache

from msgspec import Struct

from tablegen.settings import Settings

MOST_FEET = 24


class OpeningRuns(Struct, frozen=True, dict=True):
    """Runs, in inches: a reader adds at most one of the feet, one of the inches, and of parts a usual and a finer one."""

    feet: tuple[Fraction, ...]
    inches: tuple[Fraction, ...]
    parts: tuple[Fraction, ...]

    @cached_property
    def known(self) -> frozenset[Fraction]:
        """Return all of them, in no order."""
        return frozenset((*self.feet, *self.inches, *self.parts))

    def count(self) -> int:
        """Return how many there are."""
        return len(self.feet) + len(self.inches) + len(self.parts)

    def addends(self, run_in: Fraction) -> list[Fraction] | None:
        """Return the runs that add up to a run, longest first; None where they do not reach it."""
        foot = max((one for one in self.feet if one <= run_in), default=Fraction(0))
        rest = run_in - foot
        usual = 1 - max(self.parts)  # the longest is one part short of an inch
        found = [foot, rest - rest % 1, rest % 1 - rest % usual, rest % usual]
        wanted = [one for one in found if one]
        return wanted if self.known.issuperset(wanted) else None


def opening_runs(settings: Settings) -> OpeningRuns:
    """Return the runs of a book's openings: feet to the longest run, and all that is added to them.

    Notes:
        1. Parts of an inch are sixteenths, or what the tape shows where that is coarser, and of a finer tape all parts
           below a sixteenth.
    """
    units = settings.measure.units
    last = min(MOST_FEET, max(1, int(settings.runs.last // units.group)))
    return _runs(last, units.group, settings.measure.per, units.part)


@lru_cache(maxsize=4)  # they are those of all openings of a book
def _runs(last: int, group: int, per: int, usual: int) -> OpeningRuns:
    finer = [Fraction(n, per) for n in range(1, per // usual)]
    parts = min(per, usual)
    return OpeningRuns(
        tuple(Fraction(group * n) for n in range(1, last + 1)),
        tuple(map(Fraction, range(1, group))),
        (*finer, *(Fraction(n, parts) for n in range(1, parts))),
    )


def reads_openings(settings: Settings) -> bool:
    """Return whether a book's lengths are read on its openings: it has these, and no tables of runs."""
    return 'opening' in settings.parts and not {'common', 'hip-valley', 'rise'} & set(settings.parts)
