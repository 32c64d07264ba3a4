"""The settings of one book: what a settings file may say, and the record that the stages read."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from fractions import Fraction
from typing import TYPE_CHECKING

from msgspec import Struct, field
from msgspec.structs import replace

from tablegen.errors import BookError, SettingsFaults, each_of, meant
from tablegen.geometry.pitch import Pitch, pitch_of_rise
from tablegen.groups import GROUPS, HOUSE_GROUPS
from tablegen.messages import message
from tablegen.numbers import text
from tablegen.numbers.figure import Measure
from tablegen.numbers.units import INCHES, Stock
from tablegen.written.files import read_toml
from tablegen.written.keys import (
    choice,
    given_twice,
    leaves,
    listed,
    one_line,
    positive,
    size,
    smallest_part,
    truth,
)
from tablegen.written.lengths import length
from tablegen.written.pitches import read_pitches
from tablegen.written.stocks import stock

if TYPE_CHECKING:
    from tablegen.frame.asked import Asked  # a look-up waits for no frame

PAPERS = ('letter', 'a4')
TRIMS = ('pocket', 'large')
BEFORE_REFERENCE = (
    'how-to',
    'words',
    'square',
    'glance',
    'opening',
    'values',
    'jacks',
    'common',
    'hip-valley',
    'rise',
)
BOOK_PARTS = (*BEFORE_REFERENCE, *GROUPS, 'examples')
"""Parts that may be left out; cover, cautions, contents and the proof of the numbers always stand."""
HOUSE_PARTS = tuple(part for part in (*BEFORE_REFERENCE, *HOUSE_GROUPS, 'examples') if part != 'opening')
"""What a house framer needs, a table of runs inch by inch."""
EDITIONS = {
    'compact': ('how-to', 'words', 'square', 'glance', 'opening', 'examples'),
    'complete': HOUSE_PARTS,
}
"""Books by their names, the usual one first: the parts that each has where a file names none."""
USUAL_PARTS = EDITIONS['compact']
MOST_SPACINGS = 4
MOST_RUNS = 100_000


class Runs(Struct, frozen=True):
    """Level runs of the tables, from the plate line, in inches."""

    first: Fraction = Fraction(1)
    last: Fraction = Fraction(288)
    step: Fraction = Fraction(1)

    def count(self) -> int:
        """Return how many runs there are."""
        return (self.last - self.first) // self.step + 1

    def __iter__(self) -> Iterator[Fraction]:
        return (self.first + place * self.step for place in range(self.count()))


class Settings(Struct, frozen=True):
    """Everything that a book is made from; all lengths in inches."""

    title: str = 'Rafter Tables'
    owner: str = ''
    measure: Measure = Measure()
    """Smallest printed part and how lengths read."""
    pitches: tuple[Pitch, ...] = field(
        default_factory=lambda: tuple(map(pitch_of_rise, map(Fraction, range(1, 25))))
    )
    """From the flattest to the steepest, none twice."""
    steep: bool = False
    """Whether pitches over 24 in 12 were asked for on purpose."""
    runs: Runs = Runs()
    spacings: tuple[Fraction, ...] = INCHES.spacings
    """Jack spacings on center, in."""
    ridge_thickness: Fraction = Fraction(3, 2)
    hip_thickness: Fraction = Fraction(3, 2)
    rafter_thickness: Fraction = Fraction(3, 2)
    rafters: Stock = stock('2×8')
    """Size of commons and jacks."""
    hips: Stock = stock('2×8')
    valleys: Stock = stock('2×8')
    seat: Fraction = Fraction(7, 2)
    """Level length of the common's seat on its plate, in."""
    paper: str = 'letter'
    trim: str = 'pocket'
    parts: tuple[str, ...] = USUAL_PARTS
    """Parts of the book that are in."""
    roofs: tuple[str, ...] | None = None
    """Roof files whose roofs are worked through in place of the garden store and all else, as they were named; () for the
    garden store alone, None for it and the roofs that `tablegen/examples/shipped.py` has beside it."""
    own_roofs: tuple[Asked, ...] = ()
    """What they ask: read where files are, by `tablegen/frame/of_book.py`."""
    language: str = 'en'
    """What the book is said in; which languages there are is known where its words are."""
    source: str = ''
    """The settings file, by name; '' when none was given."""


Reader = Callable[[object, str, Settings], Settings]


def read_settings(written: str, source: str) -> Settings:
    """Return the settings that a TOML text gives, defaults standing where it is silent.

    Errors:
        SettingsFaults with every fault found; BookError where the text is no TOML
    """
    tables = read_toml(written, source)
    settings = Settings(source=source)
    found = leaves(tables, list(READERS))
    values, faults = dict(found), given_twice(found)
    for key in [key for key in READERS if key in values] + [key for key in values if key not in READERS]:
        try:
            if key not in READERS:
                advice = meant(key, list(READERS), message('setting.see_keys'))
                raise BookError(key, message('setting.unknown_key'), tuple(READERS), advice)
            settings = READERS[key](values[key], key, settings)
        except BookError as fault:
            faults += fault.each()
    if settings.runs.step and 'runs.by' in values and 'runs.from' not in values:
        settings = replace(settings, runs=replace(settings.runs, first=settings.runs.step))
    # of the rafters' size, where the file says no other
    if 'stock.hips' not in values:
        settings = replace(settings, hips=settings.rafters)
    if 'stock.valleys' not in values:
        settings = replace(settings, valleys=settings.rafters)
    if not {fault.place for fault in faults} & RUN_KEYS:
        faults += run_faults(settings)
    if faults:
        raise SettingsFaults(source, faults)
    return settings


def _language(value: object, place: str) -> str:
    if not isinstance(value, str) or not re.fullmatch(r'[a-z]{2,3}(_[A-Z]{2})?', value):
        raise BookError(
            place, message('setting.no_language', value=repr(value)), message('setting.a_language')
        )
    return value


def _spacings(value: object, place: str) -> tuple[Fraction, ...]:
    found = set(
        each_of(listed(value, place), place, lambda one, here: positive(one, here, INCHES.widest_spacing))
    )
    if len(found) > MOST_SPACINGS:
        problem = message('setting.too_many_spacings', count=len(found))
        raise BookError(place, problem, message('error.up_to', most=MOST_SPACINGS))
    return tuple(sorted(found))


def _parts(value: object, place: str) -> tuple[str, ...]:
    named = each_of(listed(value, place), place, lambda one, here: choice(one, here, BOOK_PARTS))
    return tuple(part for part in BOOK_PARTS if part in named)


def _roofs(value: object, place: str) -> tuple[str, ...]:
    named = each_of(listed(value, place) if value != [] else [], place, _file)
    return tuple(dict.fromkeys(named))


def _file(value: object, place: str) -> str:
    if not isinstance(value, str) or not value or not value.isprintable():
        raise BookError(place, message('setting.no_file', value=repr(value)), message('setting.a_roof_file'))
    return value


def _run(name: str, value: object, place: str, settings: Settings) -> Settings:
    return replace(settings, runs=replace(settings.runs, **{name: length(value, place)}))


def _measure(settings: Settings, per: int | None = None, style: str | None = None) -> Settings:
    usual = settings.measure
    return replace(settings, measure=Measure(usual.per if per is None else per, style or usual.style))


def run_faults(settings: Settings) -> list[BookError]:
    """Return what is wrong with the runs as a whole."""
    runs, part = settings.runs, Fraction(1, settings.measure.per)
    least = message('setting.from_up', least=text.in_units(part))
    faults = []
    if runs.step == 0:
        faults.append(BookError('runs.by', message('setting.no_step'), least))
    elif runs.step < part:
        faults.append(
            BookError('runs.by', message('setting.below_smallest_part', step=text.run(runs.step)), least)
        )
    elif runs.last >= runs.first and runs.count() > MOST_RUNS:
        problem = message('setting.too_many_runs', count=runs.count())
        most = message('setting.up_to_runs', most=MOST_RUNS)
        faults.append(BookError('runs.by', problem, most, message('setting.longer_step')))
    if runs.first == 0:
        faults.append(BookError('runs.from', message('setting.no_run'), message('error.above_zero')))
    if runs.last < runs.first:
        first, last = text.run(runs.first), text.run(runs.last)
        problem = message('setting.runs_backwards', first=first, last=last)
        faults.append(BookError('runs.to', problem, message('error.or_more', least=first)))
    return faults


RUN_KEYS = {'runs.from', 'runs.to', 'runs.by'}
READERS: dict[str, Reader] = {
    'title': lambda v, p, s: replace(s, title=one_line(v, p) or s.title),
    'owner': lambda v, p, s: replace(s, owner=one_line(v, p)),
    'language': lambda v, p, s: replace(s, language=_language(v, p)),
    'lengths': lambda v, p, s: _measure(s, style=choice(v, p, text.STYLES)),
    'smallest_part': lambda v, p, s: _measure(s, per=smallest_part(v, p)),
    'steep': lambda v, p, s: replace(s, steep=truth(v, p)),
    'pitches': lambda v, p, s: replace(s, pitches=read_pitches(v, p, s.steep)),
    'runs.from': lambda v, p, s: _run('first', v, p, s),
    'runs.to': lambda v, p, s: _run('last', v, p, s),
    'runs.by': lambda v, p, s: _run('step', v, p, s),
    'jacks.spacings': lambda v, p, s: replace(s, spacings=_spacings(v, p)),
    'stock.ridge': lambda v, p, s: replace(s, ridge_thickness=positive(v, p, INCHES.thickest)),
    'stock.hip': lambda v, p, s: replace(s, hip_thickness=positive(v, p, INCHES.thickest)),
    'stock.rafter': lambda v, p, s: replace(s, rafter_thickness=positive(v, p, INCHES.thickest)),
    'stock.rafters': lambda v, p, s: replace(s, rafters=size(v, p)),
    'stock.hips': lambda v, p, s: replace(s, hips=size(v, p)),
    'stock.valleys': lambda v, p, s: replace(s, valleys=size(v, p)),
    'stock.seat': lambda v, p, s: replace(s, seat=positive(v, p, INCHES.thickest)),
    'paper': lambda v, p, s: replace(s, paper=choice(v, p, PAPERS)),
    'trim': lambda v, p, s: replace(s, trim=choice(v, p, TRIMS)),
    'edition': lambda v, p, s: replace(s, parts=EDITIONS[choice(v, p, tuple(EDITIONS))]),
    'parts': lambda v, p, s: replace(s, parts=_parts(v, p)),
    'roofs': lambda v, p, s: replace(s, roofs=_roofs(v, p)),
}
"""One reader a key, in the order they are read: pitches after steep."""
