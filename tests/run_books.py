"""Settings of books of runs and jacks to draw from, and the tables on the pages of one pitch."""

from fractions import Fraction

from complete import complete
from hypothesis import assume
from hypothesis import strategies as st
from strategies import parts, styles
from table_pages import pages_of

from tablegen.geometry.pitch import pitch_of_rise
from tablegen.numbers.figure import Measure
from tablegen.settings import PAPERS, TRIMS, Runs, Settings

FIELDS = {'common': 'common', 'hip-valley': 'hip_valley', 'rise': 'rise'}
TABLES = tuple(FIELDS)
SMALL_RUNS = 'small-runs'


def settings_with(per, style, runs, rises, **others) -> Settings:
    pitches = tuple(map(pitch_of_rise, sorted(rises)))
    return complete(measure=Measure(per, style), runs=runs, pitches=pitches, **others)


@st.composite
def book_settings(draw, steps, **others):
    """Settings of all trims, parts of an inch and styles, over at most 150 runs."""
    per, step = draw(parts()), draw(steps)
    assume(step >= Fraction(1, per))
    first = Fraction(draw(st.integers(1, 60 * 16)), 16)
    last = first + step * draw(st.integers(0, 150)) + draw(st.sampled_from([0, step / 2]))
    rises = draw(
        st.sets(st.sampled_from([Fraction(n, 4) for n in (1, 6, 24, 30, 48, 96)]), min_size=1, max_size=2)
    )
    return settings_with(
        per, draw(styles()), Runs(first, last, step), rises,
        paper=draw(st.sampled_from(PAPERS)), trim=draw(st.sampled_from(TRIMS)), **others,
    )  # fmt: skip


def sixteenths():
    """Steps from a sixteenth to a foot."""
    return st.integers(1, 192).map(lambda count: Fraction(count, 16))


def grid_steps():
    """Steps of which at least three fill a foot, in binary parts and in tenths."""
    return st.sampled_from([Fraction(12, n) for n in (3, 4, 5, 6, 8, 10, 12, 24, 32, 48, 96, 192)])


def is_grid(page) -> bool:
    """Return whether a page is of a table of feet and inches."""
    return getattr(page, 'table', '') in TABLES


def is_list(page) -> bool:
    """Return whether a page is a list of runs, or of small runs to add to them."""
    return getattr(page, 'table', '') in ('list', SMALL_RUNS)


def grids_of(book: Settings, place: int = 0) -> list:
    return [page.grid for _, page in pages_of(book, place) if hasattr(page, 'grid')]
