"""The first pages of each group of reference tables: the idea drawn to scale, and how its figures are used."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from functools import cache

from markupsafe import Markup
from msgspec import Struct
from msgspec.structs import replace

from layouts.pages.reference_drawings import PICTURES
from layouts.paper.page import Draft, Index, Maker, Tab
from layouts.words.caution import caution_source, caution_text
from layouts.words.lists import capital, in_short
from layouts.words.reference import low_pitches
from layouts.words.say import _, say
from tablegen.examples import nearest_pitch
from tablegen.geometry.pitch import Pitch, pitch_of_rise
from tablegen.numbers import text
from tablegen.numbers.figure import Measure
from tablegen.numbers.units import INCHES
from tablegen.roof import cautions
from tablegen.roof.answer import RegularRoof, regular
from tablegen.roof.question import RoofQuestion
from tablegen.settings import Settings

RUN_IN = Fraction(120)
"""Level run of the roof that is drawn."""
WANTED = Fraction(8)
FLATTEST, STEEPEST = 4, INCHES.base
"""Rises per foot between which the drawings can be read."""
PAGES = {
    'set-out': ('set_out',),
    'ridge': ('ridge', 'ridge_end'),
    'seat': ('seat', 'hip_seat'),
    'tail': ('tail',),
    'hips': ('hips',),
    'jack-deductions': ('jack_deductions',),
    'cheeks': ('cheeks', 'hip_ends', 'past_scale'),
    'trim': ('trim',),
    'gable': ('gable',),
    'unequal': ('unequal',),
    'many-sided': ('many_sided',),
    'find-pitch': ('find_pitch',),
}
"""Templates of each group's first pages."""


Drawn = Callable[[], tuple[RoofQuestion, RegularRoof]]
"""Gives the roof that is drawn: what is asked, and the answer."""


class IntroPage(Struct, frozen=True):
    """A page with the drawing of an idea."""

    pitch: str
    """Of the roof that is drawn."""
    pictures: tuple[Markup, ...]
    v: dict[str, str]
    """Figures of that roof, by name."""
    cautions: dict[str, str]
    low: str
    """Pitches of the book under 3 in 12, '' for none."""
    defers: str
    part: str
    """The smallest printed part of an inch."""
    jacks_page: int
    """First page of jacks by number; 0 where the book has none, as of the pages below."""
    hip_ends_page: int
    """Where a hip's sides are cut."""
    past_scale_page: int
    """How blades past a saw's scale are cut."""


def intro_drafts(group: str, settings: Settings, drawn: Drawn, tab: Tab, head: str) -> list[Draft]:
    """Return a group's first pages.

    Given:
        drawn  gives the roof that is drawn on all of them
    """
    return [
        Draft(
            f'ref_{name}',
            _maker(name, settings, drawn),
            f'page-{name}' if place else f'group-{group}',
            head,
            tab,
        )
        for place, name in enumerate(PAGES[group])
    ]


def drawn_pitch(settings: Settings) -> Pitch:
    """Return the book's pitch that is drawn: near 8 in 12; 8 itself where none can be read in a drawing."""
    near = nearest_pitch(settings, WANTED)
    return near if FLATTEST <= float(near.rise) <= STEEPEST else pitch_of_rise(WANTED)


def question(settings: Settings) -> RoofQuestion:
    """Return the roof that is drawn, its thicknesses being the book's."""
    return RoofQuestion(
        drawn_pitch(settings),
        RUN_IN,
        ridge_in=settings.ridge_thickness,
        hip_in=settings.hip_thickness,
        rafter_in=settings.rafter_thickness,
        spacings=settings.spacings,
        measure=replace(Measure(), per=settings.measure.per),
    )


def drawn_roof(settings: Settings) -> Drawn:
    """Return what gives the roof that is drawn, worked out once."""

    @cache
    def drawn() -> tuple[RoofQuestion, RegularRoof]:
        ask = question(settings)
        return ask, regular(ask, listed=False)

    return drawn


def _maker(name: str, settings: Settings, drawn: Drawn) -> Maker:
    def make(index: Index) -> IntroPage:
        ask, found = drawn()
        pictures, values = PICTURES[name](ask, found) if name in PICTURES else ((), {})
        return IntroPage(
            ask.pitch.text,
            pictures,
            values,
            _cautions(),
            in_short(low_pitches(settings)),
            say(cautions.DEFERS),
            text.mixed(1, settings.measure.per),
            index.get(f'jacks:{settings.pitches[0].text}'),
            index.get('page-hip_ends'),
            index.get('page-past_scale'),
        )

    return make


def _cautions() -> dict[str, str]:
    return {
        'low': caution_text(cautions.LOW_SLOPE),
        'steep': caution_text(cautions.STEEP),
        'notch': say(cautions.NOT_AT_AN_END),
        'short': say(cautions.LOOK_AT_THE_SEAT),
        'long': caution_text(cautions.LONG_TAIL),
        'thin': caution_text(cautions.THIN_TAIL),
        'clauses': capital(
            _('{ends}; bearing: {bearing}.').format(
                ends=say(cautions.AT_ENDS), bearing=caution_source(cautions.SHORT_SEAT)
            )
        ),
        'tail_clauses': say(cautions.CANTILEVERS),
    }
