"""A roof of the reader's own, out of a roof file, as a building to be worked through: those members that an example fits."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from fractions import Fraction

from msgspec import Struct
from msgspec.structs import replace

from tablegen.errors import BookError, SettingsFaults
from tablegen.examples.building import Building, Roof, Slopes, Stations
from tablegen.frame.asked import Asked, Gambrel, Saltbox, TailCut
from tablegen.frame.frame import Frame, frame
from tablegen.geometry.pitch import Pitch
from tablegen.messages import message
from tablegen.numbers import text
from tablegen.numbers.exact import Exact, exact
from tablegen.numbers.figure import Figure
from tablegen.roof.framing import common, hip, hip_jack, shed_rafter, valley
from tablegen.roof.member import Kind, Member, Stop
from tablegen.roof.plane import Plane
from tablegen.settings import Settings


class OwnRoof(Struct, frozen=True):
    """A whole roof of the reader's own in a book."""

    file: str
    frame: Frame
    """Read as the book's lengths are."""
    building: Building


def own_roof(file: str, asked: Asked, settings: Settings) -> OwnRoof:
    """Return a roof as it is worked through in a book.

    Errors:
        SettingsFaults for a pitch and for a spacing of jacks that the book lacks
    """
    framed = frame(replace(asked, measure=settings.measure))
    faults = []
    if _in_book(asked.pitch, settings) is None:
        faults.append(_lacks('roof_pitch', 'pitches', file, pitch=asked.pitch.text))
    jacks = any(one.member.kind is Kind.HIP_JACK for one in framed.members)
    if jacks and asked.spacing_in not in settings.spacings:
        faults.append(_lacks('roof_spacing', 'jacks.spacings', file, spacing=text.run(asked.spacing_in)))
    if faults:
        raise SettingsFaults('', faults)
    return OwnRoof(file, framed, _building(framed, settings))


def _lacks(problem: str, key: str, file: str, **values: str) -> BookError:
    return BookError(
        key, message(f'setting.{problem}', file=file, **values), '', message('setting.add_to_key', key=key)
    )


def _building(framed: Frame, settings: Settings) -> Building:
    hips, sheds = _first(framed, Kind.HIP, settings, _hip), _first(framed, Kind.SHED_RAFTER, settings, _shed)
    commons = _first(framed, Kind.COMMON, settings, lambda mark, of, member: common(mark, of))
    valleys = _first(framed, Kind.VALLEY, settings, lambda mark, of, member: valley(mark, of))
    slopes = _slopes(framed, settings)
    return Building(
        common=commons and commons[0] if slopes is None else None,
        hip=hips and hips[0],
        hip_stop=_stop(hips[1]) or Stop.RIDGE if hips else Stop.RIDGE,
        jacks=_jacks(framed, settings),
        valley=valleys and valleys[0],
        shed=sheds and sheds[0],
        ledger_in=sheds[1].deductions[0].thickness_in if sheds else Fraction(0),
        slopes=slopes,
    )


def _slopes(framed: Frame, settings: Settings) -> Slopes | None:
    """Return both rafters of a gambrel, or of a saltbox whose plates are of one height; they are marked as the frame's."""
    asked, kind = framed.asked, framed.asked.kind
    if isinstance(kind, Gambrel):
        kinds = (Kind.LOWER_RAFTER, Kind.UPPER_RAFTER)
    elif isinstance(kind, Saltbox) and kind.back.slope != asked.pitch.slope and not kind.back_plate_below_in:
        kinds = (Kind.COMMON, Kind.COMMON)
    else:
        return None
    if asked.ridge is None or asked.tail is TailCut.SQUARE:
        return None
    found = {one.member.kind: one.member for one in framed.members}
    if kinds[0] is Kind.COMMON:
        front, back = sorted(
            (one.member for one in framed.members if one.member.kind is Kind.COMMON),
            key=lambda member: member.pitch.slope != asked.pitch.slope,
        )
    else:
        front, back = (found[one] for one in kinds)
    roofs = [_of_slope(member, settings) for member in (front, back)]
    if None in roofs or any(one.kind.stands_on_plate and not one.mouth for one in (front, back)):
        return None
    first, second = roofs
    assert first
    assert second
    return Slopes(roofs=(first, second), members=(front, back), width_in=asked.width_in)


def _of_slope(member: Member, settings: Settings) -> Roof | None:
    pitch, run, out = (
        _in_book(member.pitch, settings),
        _rational(member.run_in),
        _rational(member.overhang_in),
    )
    tail = out if member.kind.stands_on_plate else Fraction(0)
    return None if pitch is None or run is None or tail is None else Roof(pitch, run, tail, member.name)


def _hip(mark: str, of: Plane, member: Member) -> Member | None:
    stop = _stop(member)
    return hip(mark, of, stop) if stop in (Stop.RIDGE, Stop.COMMONS) else None


def _shed(mark: str, of: Plane, member: Member) -> Member | None:
    return shed_rafter(mark, of, member.deductions[0].thickness_in) if _stop(member) is Stop.LEDGER else None


def _jack(mark: str, of: Plane, member: Member) -> Member | None:
    return hip_jack(mark, of, member.run_in) if _stop(member) is Stop.HIP else None


Make = Callable[[str, Plane, Member], Member | None]
"""Makes a member of an example by its mark, in a plane, like one of the frame; None where no example is of its kind."""


def _first(framed: Frame, kind: Kind, settings: Settings, make: Make) -> tuple[Roof, Member] | None:
    """Return the first member of a kind that an example works as the frame does, and the roof it stands in."""
    return next(_like(framed, kind, settings, make), None)


def _like(framed: Frame, kind: Kind, settings: Settings, make: Make) -> Iterator[tuple[Roof, Member]]:
    """Return members that an example makes mark for mark: not those of unequal pitches, without a ridge, or cut square."""
    for one in sorted(framed.members, key=lambda one: -one.count if kind is not Kind.HIP_JACK else 0):
        member, pitch, run = one.member, _in_book(one.member.pitch, settings), _rational(one.member.run_in)
        if member.kind is not kind or pitch is None or run is None:
            continue
        roof = Roof(pitch, run, framed.asked.overhang_in, member.name)
        made = make(member.name, roof.plane(settings), member)
        if made and _marked(made) == _marked(member):
            yield roof, member


def _marked(member: Member) -> tuple[object, ...]:
    """Return what is marked on a member: every line, and its bird's mouth."""
    mouth = member.mouth
    figures = (mouth.height_above_plate, mouth.seat, mouth.heel) if mouth else ()
    marks = {mark.line: mark.at.count for mark in member.marks}
    return marks, *(one.count for one in figures if isinstance(one, Figure))


def _jacks(framed: Frame, settings: Settings) -> Stations | None:
    """Return the jacks of the side of a hip that has most of them a space apart."""
    spacing, series = framed.asked.spacing_in, dict[Fraction, dict[str, Roof]]()
    for roof, _member in _like(framed, Kind.HIP_JACK, settings, _jack):
        series.setdefault(roof.run_in % spacing, {}).setdefault(roof.mark, roof)
    if not series:
        return None
    roofs = sorted(max(series.values(), key=len).values(), key=lambda one: one.run_in)
    marks = tuple((one.mark, one.run_in) for one in roofs)
    return Stations(roof=roofs[0], spacing_in=spacing, first_in=roofs[0].run_in, marks=marks)


def _stop(member: Member) -> Stop | None:
    return member.head.off.stop if member.head.off else None


def _in_book(pitch: Pitch, settings: Settings) -> Pitch | None:
    return next((one for one in settings.pitches if one.slope == pitch.slope), None)


def _rational(run: Exact | Fraction) -> Fraction | None:
    terms = exact(run).terms
    if not terms:
        return Fraction(0)
    return terms[0][0] if len(terms) == 1 and terms[0][1] == 1 else None
