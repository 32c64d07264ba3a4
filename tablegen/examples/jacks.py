"""The jacks of one side of a hip, each from its own run."""

from __future__ import annotations

from fractions import Fraction
from itertools import islice

from msgspec.structs import replace

from tablegen.checking.amounts import amount
from tablegen.examples.building import Building, Stations
from tablegen.examples.records import Jack, JackExample, Length, Sources
from tablegen.examples.sources import Book
from tablegen.geometry import shortening
from tablegen.numbers import text
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import Figure, decimal_figure, length_figure, length_of_count
from tablegen.roof.framing import hip_jack
from tablegen.roof.member import Line, Member, Stop, inches_of
from tablegen.roof.plane import Plane
from tablegen.settings import Settings

MOST_JACKS = 5
"""Jacks of the example, where they stand so close that there would be no end of them."""


def hip_jacks(building: Building, settings: Settings) -> JackExample | None:
    """Return the jacks of one side of a hip; None where there are none, or the book has no such spacing."""
    at = building.jacks
    if at is None or at.spacing_in not in settings.spacings:
        return None
    roof, place = at.roof, settings.spacings.index(at.spacing_in)
    plane, book = roof.plane(settings), Book(roof.pitch, settings)
    standing = _standing(plane, at)
    if not standing:
        return None
    *_before, (_mark, last_run, last) = standing
    points = plane.members.cheek.jack.long_to_short_point.along
    difference = plane.members.differences[place].difference
    off, cut, pitch = last.deductions[0], plane.members.cheek.jack, book.pitch
    in_one = inches_of(difference)
    as_run = book.opened and 'jacks' not in settings.parts
    jacks = tuple(_jack(mark, run, one, book, place) for mark, run, one in standing)
    length = book.read('common', last_run) if as_run or not jacks[-1].source else None
    half, tail = (
        book.read('common', run) if as_run else None
        for run in (settings.rafter_thickness / 2, roof.overhang_in)
    )
    stands = {
        'off': book.stands(
            ('jack_level', 'jack_along'),
            ('shortening-level', off.thickness_in, 'hip_or_jack', off.level),
            ('shortening-jack', pitch, 'off_along_edge', off.along, off.thickness_in),
        ),
        'side': book.stands(('jack_side',), ('cheeks', pitch, 'jack_side', cut.side_line)),
        'top': book.stands(('jack_top', 'jack_on_12'), ('cheeks', pitch, 'jack_top', cut.top_from_square)),
        'points': half.sources
        if half
        else book.stands(('jack_points',), ('jacks', pitch, 'short_to_long_point', points)),
        'difference': _difference_stands(difference, settings.spacings[place], book),
        'line': length.sources if length else book.stands(('exact_foot',)),
        'tail': tail.sources if tail else (),
        'past': book.stands(('ridge_level', 'jack_level'))
        if book.opened and building.hip_stop is Stop.RIDGE
        else (),
    }
    return JackExample(
        member=last,
        stands=stands,
        roof=roof,
        spacing_in=at.spacing_in,
        first_in=at.first_in,
        jacks=jacks,
        points=points,
        tail=plane.members.tail.common_and_jack,
        difference=difference,
        hand=decimal_figure(in_one, 3),
        length=length,
        half=half,
        tail_read=tail,
        past=_past(plane) if building.hip_stop is Stop.RIDGE else None,
        off_by_hand=decimal_figure(shortening.jack_at_hip(off.thickness_in, plane.side.at), 3),
        drift=amount(last_run // at.spacing_in * (Fraction(difference.count, difference.per) - in_one)),
    )


def _difference_stands(difference: Figure, spacing_in: Fraction, book: Book) -> Sources:
    if book.opened:
        return tuple(replace(one, column=text.rational(spacing_in)) for one in book.on_opening('difference'))
    return book.in_table('jacks', book.pitch, 'difference', difference, spacing_in)


def _past(plane: Plane) -> Length:
    off = plane.members.shortening
    read = (off.common_at_ridge.level, off.jack_at_hip.level)
    assert off.end_common  # the corner is square
    total = length_of_count(sum(one.count for one in read), plane.side.boards.measure)
    return Length(read, total, off.end_common.hips_on_ridge.level, ())


def _standing(plane: Plane, at: Stations) -> list[tuple[str, Fraction, Member]]:
    """Return the jacks with their marks and runs, from the first that reaches past the hip's side."""
    jacks = ((mark, run, hip_jack(mark, plane, run)) for mark, run in at.marks)
    return list(islice((one for one in jacks if one[2].at(Line.PLATE) > one[2].at(Line.SHORT)), MOST_JACKS))


def _jack(mark: str, run_in: Fraction, member: Member, book: Book, place: int) -> Jack:
    def to(first: Line, last: Line) -> Exact:
        return member.at(last) - member.at(first)

    lengths = (to(Line.CENTER, Line.PLATE), to(Line.LONG, Line.PLATE), to(Line.SHORT, Line.PLATE))
    line, long, short = (length_figure(one, book.settings.measure) for one in lengths)
    number = run_in / book.settings.spacings[place]
    sources = book.in_jacks(int(number), place) if number.denominator == 1 else ()
    return Jack(mark, run_in, sources, line, long, short, member.overall)
