"""Sizes of a roof that do not go together, as far as they tell it without its planes."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from tablegen.errors import BookError
from tablegen.frame.asked import (
    Asked,
    Bay,
    Gambrel,
    Hip,
    ManySided,
    Saltbox,
    Shed,
    Wing,
)
from tablegen.frame.limits import greatest
from tablegen.geometry.many_sided import apothem_from_side
from tablegen.geometry.seat import checked_seat
from tablegen.messages import message
from tablegen.numbers import text
from tablegen.numbers.exact import Exact, exact


def faults_of_sizes(asked: Asked) -> list[BookError]:
    """Return what is wrong with a roof's sizes, each under the key of a roof file that says it."""
    faults = [*_seats(asked), *_overhangs(asked), *_spacings(asked)]
    match asked.kind:
        case Shed(_, thickness) if thickness >= asked.width_in:
            faults.append(_fault('shed.thickness', 'error.thick_ledger', 'error.less_than_the_run'))
        case Gambrel(upper) if upper.slope >= asked.pitch.slope:
            allowed = message('roof_file.flatter_than', pitch=asked.pitch.text)
            problem = message('roof_file.no_break', pitch=upper.text)
            faults.append(BookError('gambrel.upper_pitch', problem, allowed))
        case ManySided(post_across_flats_in=post) if post is not None and post >= 2 * _run(asked):
            narrower = message('roof_file.narrower_post', most=greatest(2 * _run(asked), asked))
            faults.append(BookError('many-sided.post', message('roof_file.wide_post'), narrower))
    return faults


def _fault(place: str, problem: str, allowed: str) -> BookError:
    return BookError(place, message(problem), message(allowed))


def _run(asked: Asked) -> Exact:
    """Return the longest run that a rafter from the main eaves may have, level."""
    match asked.kind:
        case Shed(_, thickness):
            return exact(asked.width_in - thickness)
        case Gambrel(_, break_in):
            return exact(break_in)
        case ManySided(sides, side, flats) | Bay(sides, side, flats):
            return exact((flats or Fraction(0)) / 2) if side is None else apothem_from_side(side, sides)
        case Saltbox():
            return exact(asked.width_in)
    return exact(asked.width_in / 2)


def _seats(asked: Asked) -> Iterator[BookError]:
    """Return that a seat cuts through the rafters, at the steepest of the pitches that stand on plates."""
    others = {
        Saltbox: ('back',), Hip: ('end',), Wing: ('pitch',),
    }.get(type(asked.kind), ())  # fmt: skip
    pitches = [asked.pitch, *(one for name in others if (one := getattr(asked.kind, name)) is not None)]
    try:
        checked_seat(asked.rafters.depth_in, asked.seat_in, max(one.slope for one in pitches), 'stock.seat')
    except BookError as fault:
        yield fault


def _overhangs(asked: Asked) -> Iterator[BookError]:
    if asked.overhang_in < 0:
        yield _fault('overhang.eave', 'roof_file.thinner_overhang', 'roof_file.past_fascia')
    if asked.overhang_in > _run(asked):
        most = message('error.between', least=text.in_units(Fraction(0)), most=greatest(_run(asked), asked))
        yield BookError('overhang.eave', message('roof_file.long_overhang'), most)
    if 2 * asked.gable_overhang_in > asked.length_in > 0:
        half = text.run(asked.length_in / 2)
        yield BookError('overhang.gable', message('roof_file.long_gable'), message('error.up_to', most=half))


def _spacings(asked: Asked) -> Iterator[BookError]:
    thick = asked.rafters.thickness_in
    if asked.spacing_in <= thick:
        problem = message('roof_file.no_space', spacing=text.in_units(asked.spacing_in))
        yield BookError('spacing', problem, message('roof_file.more_than', least=text.in_units(thick)))
    if asked.first_in is not None and asked.first_in > asked.spacing_in:
        most = message('error.up_to', most=text.in_units(asked.spacing_in))
        yield BookError('first', message('roof_file.past_a_space'), most)
