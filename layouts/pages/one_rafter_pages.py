"""One rafter, start to finish: an opening with one board drawn, every mark on it told, each figure with its place in the book."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction
from itertools import groupby

from markupsafe import Markup
from msgspec import Struct

from layouts.drawings.rafter_at_fold import RafterAtFold, rafter_at_fold
from layouts.opening.common import OVERHANGS_IN
from layouts.pages.example_places import Places
from layouts.paper.page import Draft, Index, PageNumber
from layouts.paper.trim import trim_of
from layouts.words.pages import heading
from layouts.words.say import _
from tablegen.examples import one_rafter
from tablegen.examples.one_rafter import OneRafter
from tablegen.examples.records import RunSource, Sources
from tablegen.numbers import text
from tablegen.numbers.exact import Exact
from tablegen.numbers.figure import Figure
from tablegen.numbers.units import INCHES
from tablegen.roof.member import inches_of, known
from tablegen.roof.seat import common_notch
from tablegen.settings import Settings
from tablegen.tables.opening_runs import reads_openings
from tablegen.tables.seat import is_tabled

RIGHT = 'seat-cut-try'
"""Key of the right page."""
WIDEST = 32
"""Letters of a place."""


class Where(Struct, frozen=True):
    """Where a figure is read."""

    page: Markup
    """A link."""
    row: str
    """What names the row there, or the table."""

    @property
    def wide(self) -> bool:
        """Return whether it is too long to stand under its figure: it stands under the words."""
        return len(self.row) > WIDEST


class OneRafterPage(Struct, frozen=True):
    """One of the two pages."""

    rafter: OneRafter
    picture: Markup
    figures: dict[str, str]
    """Of the steps that have one, by their names."""
    at: dict[str, tuple[Where, ...]]
    words: dict[str, str]
    """Runs and sizes, finished."""
    readings: tuple[tuple[str, str], ...]
    """Runs that are added up to the line length, and their figures; none where it is read at once."""
    sum: str
    """What they make where that is a part off the length rounded once, else ''."""
    sum_off: str
    """By how much, and which way."""
    room: float
    """Width of the text, units."""
    exact_page: int
    """Where it stands how a length is had exactly."""
    care_page: int
    """Where the cautions stand that the rafter's numbers call for, 0 where they call for none."""


def one_rafter_drafts(settings: Settings) -> list[Draft]:
    """Return both pages, to begin on the left of an opening."""
    return [
        Draft(
            'one_rafter_left', lambda index: _page(settings, index, 0), 'one-rafter', heading('one-rafter')
        ),
        Draft('one_rafter_right', lambda index: _page(settings, index, 1), RIGHT, heading(RIGHT)),
    ]


def _page(settings: Settings, index: Index, half: int) -> OneRafterPage:
    it = one_rafter(settings)
    member, read = it.member, it.length
    runs = [source for source in read.sources if isinstance(source, RunSource)] if read else []
    readings = [
        (text.run(run.run_in), figure.text)
        for run, figure in zip(runs, read.readings if read else (), strict=False)
    ]
    off = read.total.count - read.direct.count if read and len(readings) > 1 else 0
    return OneRafterPage(
        it,
        _halves(it, settings)[half],
        _figures(it),
        _places(it, settings, index),
        _words(it, settings),
        tuple(readings) if len(readings) > 1 else (),
        read.total.text if read and off else '',
        (_('{part} long') if off > 0 else _('{part} short')).format(
            part=text.mixed(abs(off), settings.measure.per)
        ),
        trim_of(settings).text_width,
        index.get('reading', index['one-rafter']),
        index['cautions'] if member.cautions else 0,
    )


def _figures(it: OneRafter) -> dict[str, str]:
    member, mouth = it.member, it.member.mouth
    assert member.head.off
    found = {
        'length': next(mark.at.text for mark in member.marks if mark.line == 'plate'),
        'tail': it.tail_along.text,
        'off': member.head.off.level.text,
        'cuts': member.cut.plumb.text,
    }
    if mouth:
        told = {'height': mouth.height_above_plate, 'heel': mouth.heel, 'seat': mouth.seat}
        found |= {name: known(one).text for name, one in told.items()}
    return found


def _words(it: OneRafter, settings: Settings) -> dict[str, str]:
    held = it.member.hold
    return {
        'pitch': it.roof.pitch.text,
        'width': text.run(2 * it.roof.run_in),
        'run': text.run(it.roof.run_in),
        'overhang': text.rational(it.roof.overhang_in),
        'stock': it.member.stock.name,
        'ridge': text.rational(settings.ridge_thickness),
        'seat': text.rational(settings.seat),
        'body': held.body.text,
        'tongue': held.tongue.text,
        'step': held.run_text if held.holds > 1 else '',
        'level': it.member.cut.level.text,
    }


def _places(it: OneRafter, settings: Settings, index: Index) -> dict[str, tuple[Where, ...]]:
    """Return where each step's figures stand: on the pitch's opening by the heads of that, else as examples say it."""
    pitch = it.roof.pitch
    sources: dict[str, Sources] = {name: stands[:1] for name, stands in it.stands.items()}
    sources |= {'length': it.length.sources if it.length else (), 'tail': it.tail.sources if it.tail else ()}
    places = Places(pitch, index, settings, trim_of(settings))
    found: dict[str, list[tuple[int, str]]] = {
        name: [
            (one.page, one.table or f'{one.row}, {one.column}'.removesuffix(', '))
            for one in places.of_step(told)
        ]
        for name, told in sources.items()
    }
    if 'values' in settings.parts:
        found['hold'] = [(index[f'values:{pitch.text}'], _('drawing'))]
    if 'opening' in settings.parts:
        page = index[f'opening:{pitch.text}']
        found |= {name: [(page, words)] for name, words in _on_opening(it, settings).items()}
    return {name: tuple(_together(told)) for name, told in found.items()}


def _together(told: Sequence[tuple[int, str]]) -> Iterator[Where]:
    """Return places one after the other, those on one page as one."""
    for page, on_it in groupby(told, key=lambda one: one[0]):
        number = PageNumber(page).linked(_('p. {page}').format(page=page))
        yield Where(number, _('; ').join(words for _page, words in on_it))


def _on_opening(it: OneRafter, settings: Settings) -> dict[str, str]:
    """Return what names the rows of a pitch's opening on which this rafter's figures stand."""
    seat, stock = _('Seat {seat}').format(seat=text.rational(settings.seat)), it.member.stock
    found = {
        'hold': _('drawing'),
        'cuts': _('Plumb cut'),
        'off': _('Off for a ridge {ridge}').format(ridge=text.rational(settings.ridge_thickness)),
        'heel': f'{seat}, {_("heel")}',
    }
    plane = it.roof.plane(settings)
    if stock in INCHES.stocks and is_tabled(common_notch(plane.side)):
        found['height'] = f'{seat}, {stock.name}'
    if reads_openings(settings):
        for name, read in (('length', it.length), ('tail', it.tail)):
            if read:
                found[name] = _blocks([one.run_in for one in read.sources if isinstance(one, RunSource)])
    if it.roof.overhang_in in OVERHANGS_IN:
        found['tail'] = f'{_("Overhang")} {text.rational(it.roof.overhang_in)}'
    return found


def _blocks(runs: Sequence[Fraction]) -> str:
    """Return the heads of the blocks of lengths in which some runs stand."""
    named = [
        _('ft') if run >= INCHES.group else _('in') if run >= 1 else _('parts of an inch') for run in runs
    ]
    return _(' and ').join(dict.fromkeys(named))


def _halves(it: OneRafter, settings: Settings) -> tuple[Markup, Markup]:
    member, figures = it.member, _figures(it)
    assert member.head.off
    mouth = member.mouth
    drawn = RafterAtFold(
        float(member.slope),
        float(member.stock.depth_in),
        _inches(it.tail_along),
        _inches(member.head.off.level),
        _inches(mouth.height_above_plate) if mouth else 0.0,
        float(settings.seat),
        member.hold,
        *(figures.get(name, '') for name in ('length', 'tail', 'off', 'height', 'seat')),
    )
    return rafter_at_fold(drawn, trim_of(settings).text_width)


def _inches(figure: Figure) -> float:
    value: Exact = inches_of(figure)
    return float(value)
