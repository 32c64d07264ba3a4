"""The section of a roof: half of it cut through, once for each slope that is not like another."""

from __future__ import annotations

from collections.abc import Iterator

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings.roof_section import SectionInk, SectionLeg, section_drawing
from layouts.drawings.svg import Words
from layouts.words.drawings import ROOF_SECTION
from layouts.words.frame import AT_WALL, LEDGER_TOP, MEET
from layouts.words.lists import joined, pitches
from layouts.words.marking import slope_name
from layouts.words.say import _
from tablegen.frame.asked import Shed, Upper
from tablegen.frame.frame import Frame
from tablegen.frame.plan import Edge
from tablegen.frame.sections import Section, exact_of, sections_of
from tablegen.frame.wood import free_tail
from tablegen.numbers.figure import Figure

SHARES = 0.62, 0.27
"""Of the room, that one of one, and one of two on a page may have."""


class SectionSheet(Struct, frozen=True):
    """One drawing with what stands in it."""

    slopes: str
    pitch: str
    image: Markup
    heights: tuple[tuple[str, Figure], ...]
    """PLUMB over the main plates, each with its name."""


def section_sheets(frame: Frame, width: float, height: float) -> list[SectionSheet]:
    """Return the sections of a roof."""
    found = sections_of(frame.asked, frame.plan)
    room = height * SHARES[min(len(found), 2) - 1]
    return [
        SectionSheet(
            joined([slope_name(name) for name in one.slopes]) if len(one.slopes) < 5 else _('every side'),
            pitches(*(leg.pitch for leg in one.legs)),
            section_drawing(_ink(frame, one), width, room),
            tuple(_named(frame, one)),
        )
        for one in found
    ]


def _named(frame: Frame, one: Section) -> Iterator[tuple[str, Figure]]:
    named = (
        (_('plate of this slope'), one.plate if one.plate.count else None),
        (_('rafters’ top edge, over the plate line'), one.above_plate),
        (_(AT_WALL if frame.heights.ledger_top else MEET), one.legs[-1].top),
        (_(LEDGER_TOP), frame.heights.ledger_top),
        (_('top of the ridge'), one.ridge_top),
        (_('underside of the ridge'), one.ridge_bottom),
        (_('top of the purlins'), frame.heights.purlin_top),
        (_('top of the beam'), frame.heights.beam_top),
        (_('upper corner of the tails'), one.tail_top),
    )
    return ((name, figure) for name, figure in named if figure is not None)


def _ink(frame: Frame, one: Section) -> SectionInk:
    asked = frame.asked
    lead = next(slope for slope in frame.plan.slopes if slope.name == one.slopes[0])
    off = _upper_in(frame, one)
    return SectionInk(
        tuple(
            SectionLeg(
                float(leg.slope),
                _in(leg.run),
                _words('run', leg.run),
                '12' if leg.pitch.unit else '',
                leg.pitch.short,
            )
            for leg in one.legs
        ),
        float(asked.rafters.depth_in),
        _in(one.overhang),
        _in(lower.set_in) if (lower := free_tail(asked, lead).lower) else 0.0,
        float(lead.members.side.seat_in),
        _in(one.plate),
        _in(one.above_plate),
        _upper(frame, one),
        off,
        _words('overhang', one.overhang),
        _words('above_plate', one.above_plate),
        _words('tail', one.tail_top),
        _words('raised', one.plate),
        tuple(_heights(frame, one)),
    )


def _upper_in(frame: Frame, one: Section) -> float:
    asked = frame.asked
    if one.upper is Edge.RIDGE and asked.ridge:
        return float(asked.ridge.thickness_in) / 2
    if isinstance(asked.kind, Shed) and asked.kind.upper is Upper.LEDGER:
        return float(asked.kind.thickness_in)
    return 0.0


def _upper(frame: Frame, one: Section) -> tuple[float, float, float, float] | None:
    """Return the ridge, ledger or beam at the upper end as it is drawn."""
    asked, of = frame.asked, frame.heights
    if one.ridge_top and one.ridge_bottom and asked.ridge:
        half = float(asked.ridge.thickness_in) / 2
        return -half, half, _in(one.ridge_top), _in(one.ridge_bottom)
    if isinstance(asked.kind, Shed) and (top := of.ledger_top or of.beam_top):
        thick = float(asked.kind.thickness_in)
        deep = float(asked.kind.depth_in) if of.ledger_top else thick
        return 0.0, thick, _in(top), _in(top) - deep
    return None


def _heights(frame: Frame, one: Section) -> list[tuple[float, Words, str]]:
    top = one.legs[-1].top
    name = {Edge.HIP: 'peak', Edge.RIDGE: 'meet', Edge.MATE: 'meet', Edge.LEDGER: 'at_wall'}.get(
        one.upper, 'top'
    )
    named = [
        ('ridge_bottom', one.ridge_bottom),
        ('ridge_top', one.ridge_top),
        ('beam_top', frame.heights.beam_top),
        ('ledger_top', frame.heights.ledger_top),
        (name, top),
    ]
    return [(_in(figure), _words(key, figure), figure.text) for key, figure in named if figure is not None]


def _words(key: str, figure: Figure) -> Words:
    return ROOF_SECTION[key], {'length': figure.text}


def _in(figure: Figure) -> float:
    return float(exact_of(figure))
