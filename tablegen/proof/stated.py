"""What a book says of itself on the page of how it was made: the lines of its settings, read by no reader of the book's."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator, Sequence
from decimal import Decimal
from fractions import Fraction
from functools import cache, cached_property
from typing import Any, NamedTuple

from msgspec import Struct

from tablegen.proof.digits import FOOT_IN, named, read, read_run, real, tangent
from tablegen.proof.page import Page, said
from tablegen.proof.roof import DEPTHS, Boards

KEY = re.compile(r'[a-z_]+ = |# ')
STRING = re.compile(r'"(?:[^"\\]|\\.)*"')
ENGLISH = 'en'
NEEDED = ('smallest_part', 'lengths')
COARSEST_PART, FINEST_PART, EIGHTH, MOST_FEET = 16, 64, 8, 24


class NoBook(ValueError):
    """A file that is no finished book."""


class Pitch(NamedTuple):
    """A pitch by the number that names it."""

    number: Fraction
    in_degrees: bool

    @property
    def slope(self) -> Decimal:
        """Return its rise over its run."""
        return tangent(self.number) if self.in_degrees else real(self.number) / FOOT_IN


class Runs(NamedTuple):
    """Runs in even steps, in."""

    first: Fraction
    last: Fraction
    step: Fraction

    def each(self) -> Iterator[Fraction]:
        """Yield every one."""
        return (self.first + n * self.step for n in range(int((self.last - self.first) // self.step) + 1))


USUAL_RUNS = Runs(Fraction(1), Fraction(MOST_FEET * FOOT_IN), Fraction(1))


class Stated(Struct, frozen=True, dict=True):
    """The settings of a copy, so far as its figures ask for them; lengths in inches."""

    language: str
    per: int
    in_feet: bool
    pitches: tuple[Pitch, ...]
    """Empty where the page does not name them."""
    spacings: tuple[Fraction, ...]
    boards: Boards | None
    """None for a book whose parts have no use for lumber."""
    runs: Runs = USUAL_RUNS
    written: str = ''
    """The lines as they stand."""

    @property
    def translated(self) -> bool:
        """Return whether its words may be longer than those that its lines are planned by, and heads stand in more lines."""
        return self.language != ENGLISH

    @cached_property
    def every_run(self) -> dict[Fraction, None]:
        """Return its runs in rising order, to be looked up too."""
        return dict.fromkeys(self.runs.each())

    @property
    def feet(self) -> int:
        """Return the feet of the longest run of an opening."""
        return min(MOST_FEET, max(1, int(self.runs.last // FOOT_IN)))

    def exactly(self, printed: str) -> Fraction:
        """Return a number that was printed; one of the book's own that is told to a thousandth is what it is."""
        return self._own.get(printed) or read(printed) or Fraction(0)

    @cached_property
    def _own(self) -> dict[str, Fraction]:
        """Return the book's own numbers as they are printed, the first that is printed so."""
        boards = self.boards
        own = (*self.spacings, *((boards.seat, boards.ridge, boards.hip, boards.rafter) if boards else ()))
        return {named(value): value for value in reversed(own)}

    @property
    def coarse(self) -> int:
        """Return the parts to the inch of the coarser of two small runs that are added."""
        return EIGHTH if self.per == FINEST_PART else COARSEST_PART

    @property
    def small_runs(self) -> list[Fraction]:
        """Return the runs below the step of the tables by the run, one of each kind to be added to a run at most."""
        coarse, fine = self.coarse, max(self.per, COARSEST_PART)
        parts = [Fraction(n, fine) for n in range(1, fine // coarse)]
        parts += [Fraction(n, coarse) for n in range(1, coarse)]
        return [run for run in (*parts, *map(Fraction, range(1, FOOT_IN))) if run < self.runs.step]

    @property
    def parts(self) -> list[Fraction]:
        """Return the parts of an inch that an opening has rows for."""
        coarse = min(self.per, COARSEST_PART)
        finer = [Fraction(n, self.per) for n in range(1, self.per // COARSEST_PART)]
        return [*finer, *(Fraction(n, coarse) for n in range(1, coarse))]


@cache
def pitch_of(words: str) -> Pitch | None:
    """Return the pitch that words name: '6 in 12', '7 1/2', '30°', '30 deg'; None where they name none."""
    bare = words.removesuffix(f' in {FOOT_IN}')
    degrees = bare.removesuffix('°').removesuffix(' deg')
    number = read(degrees)
    return Pitch(number, degrees != bare) if number is not None else None


def called(pitch: Pitch) -> str:
    """Return a pitch as it is named: '6 in 12', '30°'."""
    return f'{named(pitch.number)}°' if pitch.in_degrees else f'{named(pitch.number)} in {FOOT_IN}'


def stated(pages: Sequence[Page]) -> Stated:
    """Return what a book's settings are.

    Errors:
        NoBook where no page has them, or they cannot be read
    """
    for page in reversed(pages):
        lines = _settings_lines(page)
        page.forget()
        if all(any(line.startswith(f'{key} = ') for line in lines) for key in NEEDED):
            try:
                return _stated('\n'.join(lines))
            except (tomllib.TOMLDecodeError, KeyError, ValueError, TypeError, AttributeError) as fault:
                raise NoBook(f'{page.number}') from fault
    raise NoBook('')


def _settings_lines(page: Page) -> list[str]:
    """Return the lines of a page that are keys with values, what is broken over lines put together."""
    found: list[str] = []
    for words in page.lines:
        line = said(words)
        if found and _is_open(found[-1]):
            found[-1] += f' {line}'
        elif KEY.match(line):
            found.append(line)
    return found


def _is_open(line: str) -> bool:
    """Return whether a value goes on in the next line, which may begin with what looks like a key."""
    bare = STRING.sub('', line)
    return '"' in bare or bare.count('{') > bare.count('}') or bare.count('[') > bare.count(']')


def _stated(written: str) -> Stated:
    told: dict[str, Any] = tomllib.loads(written)
    stock, part = told.get('stock'), read(told['smallest_part'])
    given = told.get('pitches', [])
    pitches = [one for words in ([given] if isinstance(given, str) else given) for one in _pitches(words)]
    return Stated(
        told.get('language', ENGLISH),
        _known(part).denominator,
        told['lengths'] != 'inches',
        tuple(pitches),
        tuple(_known(read(one)) for one in told.get('jacks', {}).get('spacings', [])),
        _boards(stock) if stock else None,
        Runs(*(_known(read_run(told['runs'][key])) for key in ('from', 'to', 'by')))
        if 'runs' in told
        else USUAL_RUNS,
        written,
    )


def _boards(stock: dict[str, str]) -> Boards:
    ridge, hip, rafter, seat = (_known(read(stock[key])) for key in ('ridge', 'hip', 'rafter', 'seat'))
    rafters, hips, valleys = (stock[key] for key in ('rafters', 'hips', 'valleys'))
    if not {rafters, hips, valleys} <= set(DEPTHS):
        raise ValueError(str(stock))
    return Boards(ridge, hip, rafter, rafters, hips, valleys, seat)


def _known(value: Fraction | None) -> Fraction:
    if value is None:
        raise ValueError('no number')
    return value


def _pitches(words: str) -> list[Pitch]:
    """Return the pitches of a name or of a range: '7 1/2', '1 to 24', '4 to 8 by 1/2'."""
    first, to, rest = words.partition(' to ')
    last, _by, step = rest.partition(' by ')
    one = pitch_of(first)
    if one is None:
        raise ValueError(words)
    if not to:
        return [one]
    end, apart = _known(read(last)), _known(read(step or '1'))
    return [Pitch(one.number + n * apart, False) for n in range(int((end - one.number) / apart) + 1)]
