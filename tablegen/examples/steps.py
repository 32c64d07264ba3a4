"""A member worked out for the book: its length as it is read, and by stepping off."""

from __future__ import annotations

from tablegen.checking.amounts import amount
from tablegen.examples.building import Roof
from tablegen.examples.records import Length, Stands, StepOff
from tablegen.examples.sources import Book
from tablegen.geometry import seventeen
from tablegen.geometry.stepping import SQUARE, drift, steps
from tablegen.numbers.figure import Measure, decimal_figure, length_figure
from tablegen.roof.member import Member
from tablegen.settings import Settings


def read_lengths(member: Member, roof: Roof, book: Book) -> tuple[Length, Length] | None:
    """Return its line length and that to its tail's end as the book gives them; None where it ends before them."""
    table = 'hip-valley' if member.kind.in_corner else 'common'
    length, whole = (book.read(table, one) for one in (roof.run_in, roof.run_in + roof.overhang_in))
    return None if length is None or whole is None else (length, whole)


def step_off(member: Member, roof: Roof, settings: Settings) -> StepOff:
    """Return a member's stepping off, by the run of the COMMON in or beside it."""
    held, per = member.hold, settings.measure.per
    stepped, of_tail = steps(member.run_in, held), steps(roof.overhang_in, held)
    stamped = None
    if member.kind.in_corner:
        over = seventeen.hip_length(held.run_in, member.pitch.slope) - stepped.step_in
        stamped = amount(stepped.whole * over)
    return StepOff(
        stepped.whole,
        length_figure(stepped.left_level_in, SQUARE),
        length_figure(stepped.left_rise_in, SQUARE),
        of_tail.whole,
        length_figure(of_tail.left_level_in, SQUARE),
        length_figure(of_tail.left_rise_in, SQUARE),
        decimal_figure(stepped.step_in, 3),
        length_figure(stepped.step_in, Measure(per)),
        amount(drift(stepped.whole, stepped.step_in, per)),
        stamped,
    )


def step_stands(member: Member, roof: Roof, book: Book) -> tuple[Stands, Length | None]:
    """Return where on a pitch's one opening the steps' figures stand, and the rise of their odd remainder as it is read."""
    if not book.opened:
        return {}, None
    held, in_corner = member.hold, member.kind.in_corner
    prefix = 'hip_' if in_corner else ''
    stands = {'hold': book.stands((f'{prefix}body', f'{prefix}tongue'))}
    one, stepped = book.read('common', held.run_in), steps(roof.run_in, held)
    if (
        one
        and len(one.readings) == 1  # a sum would have to be told
        and not in_corner
        and one.direct.text == length_figure(stepped.step_in, Measure(book.settings.measure.per)).text
    ):
        stands['drift'] = one.sources + (book.stands(('exact_foot',)) if held.holds == 1 else ())
    left = roof.run_in % held.run_in
    odd = book.read('rise', left) if left else None
    if odd is None or odd.direct.text != length_figure(stepped.left_rise_in, SQUARE).text:
        return stands, None
    return {**stands, 'odd': odd.sources}, odd
