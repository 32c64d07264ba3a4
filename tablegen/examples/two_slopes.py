"""Two rafters of one roof whose slopes differ: a saltbox's front and back, a gambrel's lower and upper one."""

from __future__ import annotations

from tablegen.examples.building import Building, Roof
from tablegen.examples.rafters import mouth_stands, off_stands
from tablegen.examples.records import Example, Length, SlopesExample
from tablegen.examples.sources import Book
from tablegen.examples.steps import read_lengths, step_off, step_stands
from tablegen.numbers.exact import exact
from tablegen.numbers.figure import length_figure, length_of_count
from tablegen.roof.member import Kind, Member, Stop, inches_of, known
from tablegen.settings import Settings


def saltbox_rafters(building: Building, settings: Settings) -> SlopesExample | None:
    """Return front and back of a saltbox; None where the roof is another or the book ends before it."""
    return _both(building, settings, Kind.COMMON)


def gambrel_rafters(building: Building, settings: Settings) -> SlopesExample | None:
    """Return lower and upper of a gambrel; None where the roof is another or the book ends before it."""
    return _both(building, settings, Kind.LOWER_RAFTER)


def _both(building: Building, settings: Settings, kind: Kind) -> SlopesExample | None:
    slopes = building.slopes
    if slopes is None or slopes.members[0].kind is not kind:
        return None
    found = [
        (rafter, one)
        for member, roof in zip(slopes.members, slopes.roofs, strict=True)
        if (rafter := _rafter(member, roof, settings))
        and (one := Book(roof.pitch, settings).read('rise', roof.run_in))
    ]
    if len(found) < len(slopes.roofs):
        return None
    rafters, rises = zip(*found, strict=True)
    measure, each = settings.measure, tuple(one.direct for one in rises)
    low, high = slopes.roofs
    rise = Length(
        each,
        length_of_count(sum(one.count for one in each), measure),
        length_figure(low.pitch.slope * low.run_in + high.pitch.slope * high.run_in, measure),
        (),
    )
    return SlopesExample(rafters=rafters, rises=rises, rise=rise, width_in=slopes.width_in)


def _rafter(member: Member, roof: Roof, settings: Settings) -> Example | None:
    book = Book(roof.pitch, settings)
    read, purlin = read_lengths(member, roof, book), _at_purlin(member, book)
    if read is None:
        return None
    stepped, odd = step_stands(member, roof, book)
    ridge = next((off for off in member.deductions if off.stop is Stop.RIDGE), None)
    mouth, stands = member.mouth, {}
    if mouth and inches_of(known(mouth.seat)) == exact(settings.seat):
        stands = mouth_stands(mouth, book)
    return Example(
        roof=roof,
        member=member,
        stands={
            'length': read[0].sources,
            'whole': read[1].sources,
            'off': off_stands(ridge, book) if ridge else (),
            'purlin': purlin.sources if purlin else (),
            'cuts': book.stands(('plumb_cut',)),
            **stepped,
            **stands,
        },
        length=read[0],
        whole=read[1],
        steps=step_off(member, roof, settings),
        odd=odd,
        ledger=purlin,
    )


def _at_purlin(member: Member, book: Book) -> Length | None:
    """Return what comes off at a purlin, ALONG the top edge, as it is read: half of its thickness as a run, or in its table."""
    off = next((one for one in member.deductions if one.stop is Stop.PURLIN), None)
    if off is None:
        return None
    if book.opened:
        found = book.read('common', off.thickness_in / 2)
        return found if found and found.direct.count == off.along.count else None
    cell = ('shortening-common', book.pitch, 'off_along_edge', off.along, off.thickness_in)
    return Length((), off.along, off.along, book.in_table(*cell))
