"""The opening before the checks of the square: an existing roof's pitch, and which line each arm gives, cheeks among them."""

from __future__ import annotations

from fractions import Fraction

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings.cheek_faces import cheek_faces
from layouts.drawings.setting_out import level_and_tape
from layouts.pages.drawn_figures import number
from layouts.paper.page import Draft, Index, PageNumber
from layouts.words.drawings import ENDS, ROOF_DRAWINGS
from layouts.words.pages import heading
from tablegen.examples import nearest_pitch
from tablegen.geometry import common
from tablegen.geometry.pitch import pitch_of_rise
from tablegen.geometry.stepping import common_hold, hip_hold
from tablegen.numbers import text
from tablegen.numbers.figure import Measure, decimal_figure, length_figure
from tablegen.numbers.units import INCHES
from tablegen.roof.members import Members
from tablegen.roof.question import boards_of
from tablegen.roof.side import side
from tablegen.settings import Settings

DRAWN, BETWEEN = Fraction(6), Fraction(21, 4)
"""Rise of the roof that is measured, and of a pitch between whole ones; a cheek is of the book's nearest to the first."""
FOOT_PLACES = 3


class ExistingPage(Struct, frozen=True):
    """How an existing roof's pitch is found, and what is done where it stands between two of the book's."""

    picture: Markup
    pitch: str
    rise: str
    glance: PageNumber
    """Page of all pitches at a glance, 0 where the book has none."""
    tables: PageNumber
    """Page of the tables on finding a pitch, 0 for none."""
    between: str
    squared: str
    """The square of a foot of run, and of the rise between."""
    foot: str
    reading: PageNumber
    """Page on reading a length exactly, 0 where the book has none."""


class ArmsPage(Struct, frozen=True):
    """What is marked along body and tongue, and how a cheek is marked and cut."""

    pitch: str
    common: str
    hip: str
    cheek: str
    """Figures on the square, body first."""
    top: str
    picture: Markup
    past_scale: PageNumber
    """Page of blades past the saw's scale, 0 where the book has none."""


def line_drafts(settings: Settings) -> list[Draft]:
    """Return both pages, to begin on the left of an opening."""
    return [
        Draft('existing_pitch', lambda index: _existing(settings, index), 'existing', heading('existing')),
        Draft('arms', lambda index: _arms(settings, index), 'arms', heading('arms')),
    ]


def _existing(settings: Settings, index: Index) -> ExistingPage:
    pitch, between = pitch_of_rise(DRAWN), pitch_of_rise(BETWEEN)
    rise = length_figure(pitch.slope * INCHES.base, Measure(settings.measure.per)).text
    words = ROOF_DRAWINGS['level']
    labels = {'level': words['level'], 'gap': f'{rise} in', 'pitch': pitch.text} | ENDS
    squares = (Fraction(INCHES.base) ** 2, BETWEEN**2)
    return ExistingPage(
        level_and_tape(float(pitch.slope), float(INCHES.base), labels, words['title']),
        pitch.text,
        rise,
        index.get('glance'),
        index.get('group-find-pitch'),
        text.rational(BETWEEN),
        ' + '.join(f'{float(one):g}' for one in squares),
        decimal_figure(common.line_length(INCHES.unit_run, between.slope), FOOT_PLACES).text,
        index.get('reading'),
    )


def _arms(settings: Settings, index: Index) -> ArmsPage:
    pitch = nearest_pitch(settings, DRAWN)
    members = Members(side(pitch, boards_of(settings)))
    cut, words = members.cheek.jack, ROOF_DRAWINGS['cheeks']
    labels = words | ENDS | {'top_angle': cut.top_from_square.text, 'side_angle': cut.side_line.text}
    return ArmsPage(
        pitch.text,
        common_hold(pitch.slope).text,
        hip_hold(pitch.corner).text,
        cut.top_held,
        cut.top_from_square.text,
        cheek_faces(number(cut.side_line), number(cut.top_from_square), labels, words['title']),
        index.get('page-past_scale'),
    )
