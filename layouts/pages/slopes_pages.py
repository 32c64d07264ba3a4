"""The pages of a roof whose rafters have two slopes: how both are had, each from its pitch's pages, and their boards."""

from __future__ import annotations

from pathlib import PurePath

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings.two_slopes import Slope, height_of, two_slopes
from layouts.pages.example_boards import Rows, board_of, by_marks, marks_in_rows, numbers_of
from layouts.pages.example_care import told_in_all
from layouts.pages.example_places import Place, Places, on_both
from layouts.pages.how_to_page import unit_after
from layouts.pages.slopes_room import setting_and_cautions, told_of
from layouts.paper.page import Index, Maker
from layouts.paper.trim import trim_of
from layouts.words.drawings import TWO_SLOPES
from layouts.words.pages import ALL_MEMBERS
from layouts.words.say import say
from tablegen.examples.records import Example, SlopesExample
from tablegen.geometry.pitch import Pitch
from tablegen.numbers import text
from tablegen.numbers.figure import decimal_figure
from tablegen.roof import cautions
from tablegen.roof.member import Line
from tablegen.settings import Settings

RISE_PLACES = 3
"""Decimals of a rise in a foot that is no rational."""
MOST_ALONE = 4
"""Lines that cautions may take, whole, below one rafter."""


class Rafter(Struct, frozen=True):
    """One of the two rafters."""

    example: Example
    at: dict[str, tuple[Place, ...]]
    """Places of each step's figures."""
    words: dict[str, str]
    """Runs, finished."""
    unit: str
    """What follows a length: ' in', or nothing where its text has its units."""
    opened: bool
    zero: int
    plate: int
    """Numbers of the mark that all is measured from, and of the one at the plate line or the purlin's center line."""
    line: dict[str, str]
    """Where its marks are: both cuts, and the line at which it stands."""
    marks: Rows
    by_marks: tuple[int, int, str] | None
    """Numbers of the first and the last mark of the cut board, and what they are apart; None where that is its length."""
    board: Markup
    cautions: str
    """Whole, or where they are long the first sentence of each; '' for none."""


class SlopesPage(Struct, frozen=True):
    """One page of a roof with two slopes."""

    example: SlopesExample
    rafters: tuple[Rafter, ...]
    at: dict[str, tuple[Place, ...]]
    """Places of figures of both together."""
    words: dict[str, str]
    unit: str
    opened: bool
    setting: str
    """How close lines of both rafters' page stand: its class, '' for as far apart as usual."""
    section: Markup
    cautions: str
    """The first sentence of each that has room, where no page of one rafter follows; else ''."""
    all_page: int
    """Where all members stand, 0 for nowhere."""
    care_page: int
    """Where the clauses of the cautions stand, 0 for nowhere."""
    defers: str


def keys_of_file(file: str) -> str:
    """Return what the name of the list of one of the book's own roofs ends with."""
    return f':{PurePath(file).stem}'


def slopes_maker(
    example: SlopesExample,
    settings: Settings,
    keys: str,
    roof: str,
    shipped: str,
    opened: bool,
    followed: bool,
) -> Maker:
    """Return what makes a page of a roof with two slopes.

    Given:
        keys    what the names of its pages end with
        roof    its name
        shipped its file, where it is one of the book's own; else ''
        followed whether pages of each rafter follow
        opened  whether all figures of a pitch stand on its one opening
    """

    trim = trim_of(settings)
    wide_rem = trim.text_width / 10

    def make(index: Index) -> SlopesPage:
        rafters = tuple(_rafter(one, index, settings, opened) for one in example.rafters)
        first, second = (
            rafter.at | Places(one.roof.pitch, index, settings, trim).of({'rise': rise.sources})
            for rafter, one, rise in zip(rafters, example.rafters, example.rises, strict=True)
        )
        together = {
            name: on_both(first.get(name, ()), second.get(name, ()))
            for name in dict.fromkeys((*first, *second))
        }
        together['mouth'] = together.get('height', ()) + together.get('heel', ())
        called = [one for rafter in example.rafters for one in rafter.member.cautions if not followed]
        words, unit = _words(example, settings, roof, shipped), unit_after(settings)
        about = words | {
            'rises': [rafter.words['rise'] for rafter in rafters],
            'length': rafters[1].line['stands'],
        }
        alone = (
            {}
            if example.meets
            else {'whole': rafters[0].at.get('whole', ()), 'off': rafters[1].at.get('off', ())}
        )
        told = told_of(example, together | alone, about, _height(example, settings) / 10, bool(unit))
        setting, told_cautions = setting_and_cautions(told, called, wide_rem, trim.text_height / 10)
        return SlopesPage(
            example,
            rafters,
            together,
            words,
            unit,
            opened,
            setting,
            two_slopes(*_cut(example), TWO_SLOPES, _room(settings)),
            told_cautions,
            index.get(f'{ALL_MEMBERS}{keys_of_file(shipped) if shipped else keys}'),
            next((index[name] for name in ('care', 'cautions') if name in index), 0),
            say(cautions.DEFERS),
        )

    return make


def _rise(pitch: Pitch) -> str:
    """Return a pitch's rise in a foot of run, in: what slopes are divided by, in degrees too."""
    if pitch.rise_in is not None:
        return text.rational(pitch.rise_in)
    return decimal_figure(pitch.rise, RISE_PLACES).text


def _rafter(example: Example, index: Index, settings: Settings, opened: bool) -> Rafter:
    member, roof = example.member, example.roof
    numbers, at = numbers_of(member), {mark.line: mark.at.text for mark in member.marks}
    called = bool(member.cautions)
    stands = Line.PLATE if Line.PLATE in at else Line.FOOT
    return Rafter(
        example,
        Places(roof.pitch, index, settings, trim_of(settings)).of(example.stands),
        {
            'pitch': roof.pitch.text,
            'rise': _rise(roof.pitch),
            'run': text.run(roof.run_in),
            'whole_run': text.run(roof.run_in + roof.overhang_in),
            'odd': text.run(roof.run_in % member.hold.run_in),
        },
        unit_after(settings),
        opened,
        numbers[Line.CENTER],
        numbers[stands],
        {
            'cut': at[Line.CUT],
            'stands': at[stands],
            'end': at.get(Line.TAIL) or at[Line.FOOT_CUT],
        },
        marks_in_rows(member, True),
        by_marks(member, numbers, settings.measure),
        board_of(member, 0.7 if called else 1.0, settings.measure.style == text.INCHES and not called),
        told_in_all(member.cautions, trim_of(settings), MOST_ALONE),
    )


def _words(example: SlopesExample, settings: Settings, roof: str, shipped: str) -> dict[str, str]:
    first = example.rafters[0]
    return {
        'roof': roof,
        'shipped': shipped,
        'width': text.run(example.width_in),
        'half': text.run(example.width_in / 2),
        'overhang': text.run(first.roof.overhang_in),
        'seat': text.run(settings.seat),
        'ridge': text.rational(settings.ridge_thickness),
        'rafter': text.rational(settings.rafter_thickness),
        'half_purlin': text.rational(settings.rafter_thickness / 2),
        'rafters': settings.rafters.name,
    }


def _height(example: SlopesExample, settings: Settings) -> float:
    """Return how high the drawing of the roof cut through is, units."""
    return height_of(*_cut(example), _room(settings))


def _cut(example: SlopesExample) -> tuple[tuple[Slope, Slope], bool, float, float]:
    """Return the roof cut through: its slopes, whether they meet, depth of its rafters and overhang in inches."""
    first, second = example.rafters
    depth, overhang = first.member.stock.depth_in, first.roof.overhang_in
    return (_slope(first), _slope(second)), example.meets, float(depth), float(overhang)


def _room(settings: Settings) -> float:
    return 1.0 if settings.measure.style == text.INCHES else 0.7


def _slope(one: Example) -> Slope:
    return Slope(float(one.member.slope), float(one.roof.run_in), one.member.name, text.run(one.roof.run_in))
