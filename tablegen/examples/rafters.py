"""A common rafter, and the rafter of a shed roof on a ledger."""

from __future__ import annotations

from tablegen.examples.building import Building, Roof
from tablegen.examples.records import Example, Sources, Stands
from tablegen.examples.sources import Book
from tablegen.examples.steps import read_lengths, step_off, step_stands
from tablegen.geometry.seat import is_tabled
from tablegen.numbers.units import INCHES
from tablegen.roof.framing import common, shed_rafter
from tablegen.roof.member import Deduction, Member, Stop, inches_of, known
from tablegen.roof.seat import Mouth
from tablegen.settings import Settings
from tablegen.tables.seat import key_of


def common_rafter(building: Building, settings: Settings) -> Example | None:
    """Return the common; None where the book ends before it."""
    roof = building.common
    return _worked(common(roof.mark, roof.plane(settings)), roof, settings) if roof else None


def ledger_rafter(building: Building, settings: Settings) -> Example | None:
    """Return the rafter of a shed roof on a ledger; None where the book ends before it."""
    roof = building.shed
    return (
        _worked(shed_rafter(roof.mark, roof.plane(settings), building.ledger_in), roof, settings)
        if roof
        else None
    )


def mouth_stands(mouth: Mouth | None, book: Book) -> Stands:
    """Return where a common's heel, height and notch stand: in the tables of its seat, or the heel in the rises."""
    if mouth is None:
        return {}
    pitch, wide, heel = book.pitch, book.settings.seat, known(mouth.heel)
    left = key_of('stock-left', wide)
    return {
        'heel': book.stands(('heel',), (key_of('height', wide), pitch, 'heel', heel)) or book.in_rises(heel),
        'height': height_stands(mouth, book),
        'notch': book.stands(
            ('notch', 'left'),
            (left, pitch, 'notch', known(mouth.notch_depth)),
            (left, pitch, 'left', known(mouth.stock_left), book.settings.rafters),
        ),
    }


def height_stands(mouth: Mouth, book: Book) -> Sources:
    """Return where the commons' height above plate stands."""
    settings = book.settings
    notch = inches_of(known(mouth.notch_depth))
    if book.opened and not (
        settings.rafters in INCHES.stocks and is_tabled(settings.rafters.depth_in, settings.seat, notch)
    ):
        return ()
    cell = (key_of('height', settings.seat), book.pitch, 'height', mouth.height_above_plate, settings.rafters)
    return book.stands(('height',), cell)


def off_stands(off: Deduction, book: Book) -> Sources:
    level, thick = 'shortening-level', off.thickness_in
    if off.stop == Stop.LEDGER:
        return book.in_table(level, thick, 'shed_on_ledger', off.level)
    return book.stands(
        ('ridge_level', 'ridge_along'),
        (level, thick, 'common', off.level),
        ('shortening-common', book.pitch, 'off_along_edge', off.along, thick),
    )


def _worked(member: Member, roof: Roof, settings: Settings) -> Example | None:
    book, off = Book(member.pitch, settings), member.deductions[0]
    read = read_lengths(member, roof, book)
    if read is None:
        return None
    ledger = book.read('common', off.thickness_in) if off.stop == Stop.LEDGER and book.opened else None
    stepped, odd = step_stands(member, roof, book)
    stands = {
        'length': read[0].sources,
        'whole': read[1].sources,
        'off': ledger.sources if ledger else off_stands(off, book),
        'cuts': book.stands(('plumb_cut', 'level_cut')),
        **stepped,
        **mouth_stands(member.mouth, book),
    }
    return Example(
        roof=roof,
        member=member,
        stands=stands,
        length=read[0],
        whole=read[1],
        steps=step_off(member, roof, settings),
        odd=odd,
        ledger=ledger,
    )
