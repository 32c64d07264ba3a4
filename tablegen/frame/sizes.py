"""Sizes of a roof that do not go together, as far as they tell it without its planes."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from tablegen.errors import BookError, Word
from tablegen.frame.asked import (
    Asked,
    Bay,
    Gambrel,
    HalfHip,
    Hip,
    ManySided,
    Saltbox,
    Shed,
    Wing,
)
from tablegen.geometry.many_sided import apothem_from_side
from tablegen.geometry.pitch import Pitch
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
        case Saltbox(back, below) if below >= back.slope * asked.width_in:
            faults.append(_fault('saltbox.back_plate_below', 'roof_file.no_front', 'roof_file.plates_closer'))
        case Gambrel() as gambrel:
            faults += _gambrel(asked, gambrel)
        case Hip(ends, end):
            faults += _ends(asked, _half_rise(asked), ends, end or asked.pitch)
        case HalfHip(rise, end):
            left = _half_rise(asked) - rise
            if left > 0:
                faults += _ends(asked, left, 2, end or asked.pitch)
            else:
                faults.append(
                    _fault('half-hip.gable_rise', 'roof_file.past_the_ridge', 'roof_file.below_ridge')
                )
        case Wing() as wing:
            faults += _wing(asked, wing)
        case ManySided(post_across_flats_in=post) if post is not None and post >= 2 * _run(asked):
            faults.append(_fault('many-sided.post', 'roof_file.wide_post', 'roof_file.narrower_post'))
    return faults


def _fault(place: str, problem: str, allowed: str) -> BookError:
    return BookError(place, message(problem), message(allowed))


def _half_rise(asked: Asked) -> Exact:
    """Return the rise of the main planes from plate to ridge."""
    return asked.pitch.slope * asked.width_in / 2


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
        yield _fault('overhang.eave', 'roof_file.long_overhang', 'error.up_to_the_run')
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


def _gambrel(asked: Asked, gambrel: Gambrel) -> Iterator[BookError]:
    if 2 * gambrel.break_in >= asked.width_in:
        below = message('error.above_zero_below', below=text.run(asked.width_in / 2))
        yield BookError('gambrel.break', message('roof_file.past_the_ridge'), below)
    if gambrel.upper.slope >= asked.pitch.slope:
        allowed = message('roof_file.flatter_than', pitch=asked.pitch.text)
        yield BookError(
            'gambrel.upper_pitch', message('roof_file.no_break', pitch=gambrel.upper.text), allowed
        )


def _ends(asked: Asked, rise_in: Exact, ends: int, pitch: Pitch) -> Iterator[BookError]:
    """Return that end planes which rise so far meet one another before the ridge is reached, or go past the other gable."""
    if ends * rise_in / pitch.slope >= asked.length_in:
        words: Word = message('roof_file.hips_meet', length=text.run(asked.length_in))
        yield BookError('length', words, '', message('roof_file.turn_round'))


def _wing(asked: Asked, wing: Wing) -> Iterator[BookError]:
    if wing.from_left_in + wing.width_in > asked.length_in:
        problem = message('roof_file.wide_wing', length=text.run(asked.length_in))
        yield BookError(['wing.from_left', 'wing.width'], problem, '', message('roof_file.move_wing'))
    if (wing.pitch or asked.pitch).slope * wing.width_in > asked.pitch.slope * asked.width_in:
        yield BookError('wing.width', message('roof_file.high_wing'), '', message('roof_file.swap_wing'))
    if wing.main_ends:
        yield from _ends(asked, _half_rise(asked), wing.main_ends, asked.pitch)
