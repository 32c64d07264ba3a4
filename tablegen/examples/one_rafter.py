"""The store's common as one rafter from crown to pattern: its member, and where each of its figures is read in the book."""

from __future__ import annotations

from tablegen.examples.building import store_anyway
from tablegen.examples.rafters import mouth_stands, off_stands
from tablegen.examples.records import Length, Worked
from tablegen.examples.sources import Book
from tablegen.geometry import common as commons
from tablegen.numbers.figure import Figure, length_figure
from tablegen.roof.framing import common
from tablegen.settings import Settings


class OneRafter(Worked, frozen=True, kw_only=True):
    """A common rafter as it is marked, every figure of it."""

    length: Length | None
    """Ridge center line to plate line, as it is read; None where the book's runs end before it."""
    tail: Length | None
    """Plate line to the tail's end, as the table of runs gives it; None where it does not."""
    tail_along: Figure
    """The same, rounded once."""


def one_rafter(settings: Settings) -> OneRafter:
    """Return the store's common, as much of it read from the book as it has."""
    roof = store_anyway(settings)
    member, book = common('store', roof.plane(settings)), Book(roof.pitch, settings)
    tail = commons.line_length(roof.overhang_in, member.slope)
    return OneRafter(
        roof=roof,
        member=member,
        stands={
            'off': off_stands(member.deductions[0], book),
            'cuts': book.stands(('plumb_cut',)),
            **mouth_stands(member.mouth, book),
        },
        length=book.read('common', roof.run_in),
        tail=book.read('common', roof.overhang_in),
        tail_along=length_figure(tail, settings.measure),
    )
