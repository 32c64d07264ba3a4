"""The worked examples as openings: the work step by step on the left, the board on the right."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from markupsafe import Markup

from layouts.drawings.details import birds_mouth, ridge_end, top_cut
from layouts.drawings.marked_board import BoardMarks, marked_board
from layouts.how_to_page import unit_after
from layouts.jack_pages import page_of_jack
from layouts.pages import Block, Draft, Index
from layouts.pitch_pages import page_of_run
from layouts.trim import trim_of
from layouts.words import WORDS
from tablegen import text, worked
from tablegen.exact import root
from tablegen.figures import Figure
from tablegen.lookup import Found
from tablegen.settings import Settings
from tablegen.worked import CommonExample, HipExample, JackExample

TABLES_OF = {
    'store': ('common', 'rise'),
    'porch': ('common', 'rise'),
    'corner': ('hip-valley', 'values'),
    'jacks': ('jacks', 'values'),
}


@dataclass(frozen=True, slots=True)
class ExamplePage:
    """One page of a worked example."""

    example: CommonExample | HipExample | JackExample
    pages: dict[str, int]
    """Page of each table it reads from."""
    length: tuple[tuple[str, str], ...]
    """Run and figure of every reading of the line length."""
    whole: tuple[tuple[str, str], ...]
    """The same for run and overhang together."""
    run: str
    whole_run: str
    width: str
    overhang: str
    seat: str
    spacing: str
    stock: dict[str, str]
    """Thicknesses: ridge, hip, rafter."""
    part: str
    unit: str
    """What follows a length: ' in', or nothing where its text has its units."""
    board: Markup | str
    details: tuple[Markup, ...]
    """Two drawings side by side below the board."""


def example_block(settings: Settings) -> Block | None:
    """Return the openings of the examples whose tables are in the book, or None if there is none."""
    if 'examples' not in settings.parts:
        return None
    drafts: list[Draft] = []
    for make_example in (worked.store, worked.porch, worked.corner, worked.corner_jacks):
        key = {'store': 'store', 'porch': 'porch', 'corner': 'corner', 'corner_jacks': 'jacks'}[
            make_example.__name__
        ]
        if not set(TABLES_OF[key]) <= set(settings.parts):
            continue
        example = make_example(settings)
        if example is None or (key == 'jacks' and example.jacks[-1][2] > settings.runs.last):
            continue  # the book ends before it
        for side in ('table', 'board'):
            name = 'examples' if not drafts else ''
            drafts.append(Draft(f'example_{key}_{side}', _maker(example, settings), name, WORDS['examples']))
    return Block(tuple(drafts), opens_left=True) if drafts else None


def _maker(example, settings: Settings):
    def make(index: Index) -> ExamplePage:
        pages = _cited(example, index, settings)
        is_jack = isinstance(example, JackExample)
        overhang = Fraction(0) if is_jack else example.overhang_in
        return ExamplePage(
            example,
            pages,
            () if is_jack else _read(example.length),
            () if is_jack else _read(example.whole),
            '' if is_jack else text.run(example.run_in),
            '' if is_jack else text.run(example.run_in + overhang),
            text.run(example.width_in) if getattr(example, 'width_in', None) else '',
            text.run(overhang) if overhang else '',
            text.run(worked.SEAT),
            text.rational(example.spacing_in) if is_jack else '',
            {
                'ridge': text.rational(settings.ridge_thickness),
                'hip': text.rational(settings.hip_thickness),
                'rafter': text.rational(settings.rafter_thickness),
            },
            text.mixed(1, settings.measure.per),
            unit_after(settings),
            '' if is_jack else _board(example, settings),
            _details(example, settings),
        )

    return make


def _cited(example, index: Index, settings: Settings) -> dict[str, int]:
    """Return the page of each table where the example's first figure stands."""
    pages = {name: index[f'{name}:{example.pitch.text}'] for name in TABLES_OF[example.key]}
    if example.key in ('corner', 'jacks'):
        pages['values'] = index[f'hip-values:{example.pitch.text}']
    if example.key == 'jacks':
        place = (example.spacing_place, example.pitch, settings, trim_of(settings))
        pages['jacks'] = page_of_jack(index, 1, *place)
    read = {'common': 'length', 'hip-valley': 'length', 'rise': 'heel'}
    for table in pages.keys() & read.keys():
        run = getattr(example, read[table]).readings[0].run_in
        pages[table] = page_of_run(index, table, run, example.pitch, settings, trim_of(settings))
    return pages


def _read(found: Found) -> tuple[tuple[str, str], ...]:
    return tuple((text.run(reading.run_in), reading.figure.text) for reading in found.readings)


def _inches(figure: Figure) -> float:
    return figure.count / figure.per


def _board(example: CommonExample | HipExample, settings: Settings) -> Markup:
    slope = float(example.pitch.slope)
    hip = isinstance(example, HipExample)
    shortening = float(settings.ridge_thickness / (root(2) if hip else 2))
    if not hip and example.ridge_half is None:
        shortening = 0.0
    marks = BoardMarks(
        slope / 2**0.5 if hip else slope,
        float(worked.RAFTER_DEPTH),
        shortening,
        _inches(example.length.direct),
        _inches(example.whole.direct),
        0.0 if hip else _inches(example.heel.direct),
        0.0 if hip else float(worked.SEAT),
    )
    words = WORDS['board_drawing']
    return marked_board(
        marks,
        (
            words['cut' if shortening else 'head'],
            f'{example.length.direct.text}',
            f'{example.whole.direct.text}',
            '' if hip else words['mouth'],
        ),
        words['title'],
        WORDS['ends']['ridge' if shortening else 'wall'],
    )


def _details(example, settings: Settings) -> tuple[Markup, ...]:
    words, values = WORDS['board_drawing'], example.values
    slope, depth = float(example.pitch.slope), float(worked.RAFTER_DEPTH)
    if isinstance(example, JackExample):
        jack = _inches(values.jack_cheek), False, (values.jack_cheek.text, words['jack_top'])
        shortening = float(settings.hip_thickness / root(2))
        end = ridge_end(
            slope,
            depth,
            shortening,
            (words['hip_center'], words['jack_cut'], example.shortening.text),
            words['title'],
            WORDS['ends']['hip'],
        )
        return end, top_cut(*jack, words['title'], WORDS['ends']['hip'])
    if isinstance(example, HipExample):
        cut = _inches(values.hip_cheek), True, (values.hip_cheek.text, words['hip_top'])
        shortening = float(settings.ridge_thickness / root(2))
        names = (words['center'], words['cut'], example.shortening.text)
        return ridge_end(slope / 2**0.5, depth, shortening, names, words['title']), top_cut(
            *cut, words['title']
        )
    half = example.ridge_half
    names = (words['center'], words['cut' if half else 'head'], half.text if half else '')
    shortening = float(settings.ridge_thickness / 2) if half else 0.0
    head = WORDS['ends']['ridge' if half else 'wall']
    return (
        ridge_end(slope, depth, shortening, names, words['title'], head),
        birds_mouth(
            slope,
            depth,
            float(worked.SEAT),
            (words['plate_line'], example.heel.total.text, text.rational(worked.SEAT)),
            words['title'],
            head,
        ),
    )
