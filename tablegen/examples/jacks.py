"""The hip jacks of the store's hipped end, each from its own run."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import islice

from tablegen.checking.amounts import amount
from tablegen.examples.building import SPACING_IN, garden_store
from tablegen.examples.records import Jack, JackExample, Length, Sources
from tablegen.examples.sources import Book
from tablegen.numbers import text
from tablegen.numbers.exact import Exact, exact, floor_of
from tablegen.numbers.figure import Figure, decimal_figure, length_figure, length_of_count
from tablegen.roof.framing import hip_jack
from tablegen.roof.member import Line, Member, inches_of
from tablegen.roof.plane import Plane
from tablegen.settings import Settings

MOST_JACKS = 5
"""Jacks of the example, where they stand so close that there would be no end of them."""


def hip_jacks(settings: Settings) -> JackExample | None:
    """Return the jacks at 16 in on center or the book's nearest spacing; None where there is no run or no jack."""
    roof = garden_store(settings)
    if roof is None:
        return None
    plane, book = roof.plane(settings), Book(roof.pitch, settings)
    place = min(range(len(settings.spacings)), key=lambda i: abs(settings.spacings[i] - SPACING_IN))
    members = _standing(plane, settings.spacings[place])
    if not members:
        return None
    last, points = next(reversed(members.items())), plane.members.cheek.jack.long_to_short_point.along
    difference = plane.members.differences[place].difference
    off, cut, pitch = last[1].deductions[0], plane.members.cheek.jack, book.pitch
    in_one = inches_of(difference)
    as_run = book.opened and 'jacks' not in settings.parts
    length, half, tail = (
        book.read('common', run) if as_run else None
        for run in (last[0] * settings.spacings[place], settings.rafter_thickness / 2, roof.overhang_in)
    )
    stands = {
        'off': book.stands(
            ('jack_level', 'jack_along'),
            ('shortening-level', off.thickness_in, 'hip_or_jack', off.level),
            ('shortening-jack', pitch, 'off_along_edge', off.along, off.thickness_in),
        ),
        'side': book.stands(('jack_side',), ('cheeks', pitch, 'jack_side', cut.side_plumb)),
        'top': book.stands(('jack_top', 'jack_on_12'), ('cheeks', pitch, 'jack_top', cut.top_from_square)),
        'points': half.sources
        if half
        else book.stands(('jack_points',), ('jacks', pitch, 'short_to_long_point', points)),
        'difference': _difference_stands(difference, settings.spacings[place], book),
        'line': length.sources if length else book.stands(('exact_foot',)),
        'tail': tail.sources if tail else (),
        'past': book.stands(('ridge_level', 'jack_level')) if book.opened else (),
    }
    return JackExample(
        member=last[1],
        stands=stands,
        roof=roof,
        spacing_in=settings.spacings[place],
        jacks=tuple(
            _jack(number, number * settings.spacings[place], one, book, place)
            for number, one in members.items()
        ),
        points=points,
        tail=plane.members.tail.common_and_jack,
        difference=difference,
        hand=decimal_figure(in_one, 3),
        length=length,
        half=half,
        past=_past(plane),
        drift=amount(last[0] * (Fraction(difference.count, difference.per) - in_one)),
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


def _standing(plane: Plane, spacing_in: Fraction) -> dict[int, Member]:
    """Return the jacks by number: from the first that reaches past the hip's side to the last clear of the side common."""
    last = floor_of(exact(plane.run_in - plane.side.boards.rafter_in) / spacing_in)
    jacks = ((number, hip_jack(str(number), plane, number * spacing_in)) for number in range(1, last + 1))
    standing = ((number, one) for number, one in jacks if one.at(Line.PLATE) > one.at(Line.SHORT))
    return dict(islice(standing, MOST_JACKS))


def _jack(number: int, run_in: Fraction, member: Member, book: Book, place: int) -> Jack:
    def to(first: Line, last: Line) -> Exact:
        return member.at(last) - member.at(first)

    lengths = (to(Line.CENTER, Line.PLATE), to(Line.LONG, Line.PLATE), to(Line.SHORT, Line.PLATE))
    line, long, short = (length_figure(one, book.settings.measure) for one in lengths)
    return Jack(number, run_in, book.in_jacks(number, place), line, long, short, member.overall)
