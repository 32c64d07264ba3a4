"""Roofs of our own scenario that every book works through beside the garden store: roof files in `roofs/`, at the book's pitches and of its lumber."""

from __future__ import annotations

from fractions import Fraction
from functools import cache
from pathlib import Path

from msgspec.structs import replace

from tablegen.errors import BookError
from tablegen.examples.building import nearest_pitch
from tablegen.examples.own_roof import OwnRoof, own_roof
from tablegen.frame.asked import Asked, Gambrel, RidgeBoard, Saltbox
from tablegen.frame.roof_file import read_roof
from tablegen.geometry.pitch import Pitch
from tablegen.numbers.units import INCHES
from tablegen.settings import Settings

FILES = tuple(Path(__file__).parent / 'roofs' / name for name in ('woodshed.toml', 'workshop.toml'))


def shipped_roofs(settings: Settings) -> list[OwnRoof]:
    """Return the roofs that go into a book: at its pitches nearest to theirs, which must differ, where its lumber allows.

    Notes:
        1. A saltbox is as wide as brings its ridge over whole feet of run, so that each is read in one row.
    """
    found = []
    for file in FILES:
        asked = _of_book(_asked(file), settings)
        if asked is None:
            continue
        try:
            found.append(own_roof(file.name, asked, settings))
        except (
            BookError
        ):  # the book's seat would cut its stock through, or its stock stops short of the plate
            continue
    return found


@cache
def _asked(file: Path) -> Asked:
    return read_roof(file.read_text(encoding='utf-8'), file.name)


def _of_book(asked: Asked, settings: Settings) -> Asked | None:
    """Return a roof as a book has it; None where its two slopes would be one, or change places."""
    kind = asked.kind
    assert isinstance(kind, Saltbox | Gambrel)
    assert asked.ridge
    main = _nearest(asked.pitch, settings)
    other = _nearest(kind.back if isinstance(kind, Saltbox) else kind.upper, settings)
    if main.rise_in is None or other.rise_in is None or not main.rise_in > other.rise_in:
        return None
    of_book = replace(
        asked,
        pitch=main,
        rafters=replace(settings.rafters, thickness_in=settings.rafter_thickness),
        ridge=RidgeBoard(settings.ridge_thickness, asked.ridge.depth_in),
        seat_in=settings.seat,
    )
    if isinstance(kind, Gambrel):
        return replace(of_book, kind=replace(kind, upper=other))
    width = _in_whole_feet(main.rise_in / other.rise_in, asked.width_in)
    return replace(of_book, kind=replace(kind, back=other), width_in=width)


def _in_whole_feet(steeper: Fraction, width_in: Fraction) -> Fraction:
    """Return the width nearest to one wanted over which two slopes meet at whole feet from both sides.

    Given:
        steeper  how many times as steep the front is: the back's run is as many times as long
    """
    least = INCHES.unit_run * (steeper.numerator + steeper.denominator)
    return least * max(1, round(width_in / least))


def _nearest(pitch: Pitch, settings: Settings) -> Pitch:
    assert pitch.rise_in is not None
    return nearest_pitch(settings, pitch.rise_in)
