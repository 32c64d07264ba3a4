"""The worked examples as openings: the work step by step, with its page and row, then the board with its marks."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from markupsafe import Markup

from layouts.drawings.marked_board import BoardMarks, End, marked_board
from layouts.example_places import Place, Places
from layouts.example_words import BOARD_TITLE, MARKS
from layouts.how_to_page import unit_after
from layouts.pages import Block, Draft, Index, Maker
from layouts.trim import trim_of
from layouts.words import ENDS, WORDS
from tablegen import cautions, text, worked
from tablegen.figures import Figure
from tablegen.lumber import Stock
from tablegen.pitch import Pitch
from tablegen.settings import Settings
from tablegen.worked.commons import CommonExample
from tablegen.worked.hips import HipExample
from tablegen.worked.jacks import JackExample
from tablegen.worked.records import Mark, Mouth, Stands
from tablegen.worked.valleys import ValleyExample

Example = CommonExample | HipExample | JackExample | ValleyExample
WHOLE = ('table', 'mouth', 'board', 'steps')
FEW_MARKS = 4
EXAMPLES = (
    ('store', worked.store, 'common', ('table', 'board')),
    ('hip', worked.store_hip, 'hip-valley', WHOLE),
    ('jacks', worked.hip_jacks, 'jacks', ('table', 'board')),
    ('valley', worked.wing_valley, 'hip-valley', WHOLE),
    ('porch', worked.porch, 'common', ('table', 'board')),
)
"""Key, what makes it, the part of the book that it needs, and its pages."""


@dataclass(frozen=True, slots=True)
class ExamplePage:
    """One page of a worked example."""

    key: str
    example: Example
    at: dict[str, tuple[Place, ...]]
    """Places of each step's figures."""
    words: dict[str, str]
    """Runs, thicknesses and names, finished."""
    unit: str
    """What follows a length: ' in', or nothing where its text has its units."""
    marks: tuple[tuple[tuple[int, str, str], ...], ...]
    """Rows of number, what it is, distance; a few marks stand two in a row."""
    zero: int
    plate: int
    """Numbers of the mark that all is measured from, and of the one at the plate line."""
    board: Markup
    store_page: int
    """Where the store's common is worked, 0 for nowhere."""
    care_page: int
    """Where the clauses of the cautions stand, 0 for nowhere."""
    defers: str


@dataclass(frozen=True, slots=True)
class Alike:
    """What every example has, whatever its member."""

    pitch: Pitch
    stock: Stock
    thickness_in: Fraction
    run_in: Fraction
    """Level run of the common, in; of jacks that of the store."""
    overhang_in: Fraction
    mouth: Mouth | None
    marks: tuple[Mark, ...]
    stands: Stands


def example_block(settings: Settings) -> Block | None:
    """Return the openings of the examples whose tables are in the book, or None if there is none."""
    if 'examples' not in settings.parts:
        return None
    drafts: list[Draft] = []
    for key, make_example, needs, sides in EXAMPLES:
        example = make_example(settings) if needs in settings.parts else None
        if example is None:  # its table is left out, or the book ends before it
            continue
        for side in sides:
            name = 'examples' if not drafts else ''
            maker = _maker(key, example, settings)
            known = (f'example:{key}',) if side == 'table' else ()
            drafts.append(Draft(f'example_{key}_{side}', maker, name, WORDS['examples'], None, known))
    return Block(tuple(drafts), opens_left=True) if drafts else None


def _maker(key: str, example: Example, settings: Settings) -> Maker:
    def make(index: Index) -> ExamplePage:
        alike = _alike_in(example, settings)
        places = Places(alike.pitch, index, settings, trim_of(settings))
        at = places.of(alike.stands)
        if isinstance(example, JackExample):
            at |= {'lines': places.of_rows([one.source for one in example.jacks])}
        numbered = tuple(
            (number, MARKS[key][mark.key], mark.at.text) for number, mark in enumerate(alike.marks, 1)
        )
        care = next((index[name] for name in ('care', 'cautions') if name in index), 0)
        return ExamplePage(
            key,
            example,
            at,
            _words(key, example, settings),
            unit_after(settings),
            _in_rows(numbered),
            _number('center', alike.marks),
            _number('plate', alike.marks),
            _board(key, example, settings),
            next((index[name] for name in ('example:store',) if name in index), 0),
            care,
            cautions.DEFERS,
        )

    return make


def _alike_in(example: Example, settings: Settings) -> Alike:
    """Return what an example has as every other has it."""
    if isinstance(example, JackExample):
        roof, stock = example.store, settings.rafters
        overhang, run, thickness = roof.overhang_in, roof.run_in, example.thickness_in
        return Alike(
            roof.pitch, stock, thickness, run, overhang, example.mouth, example.marks, example.stands
        )
    one = example.member
    return Alike(
        one.pitch, one.stock, one.thickness_in, one.run_in, one.overhang_in, one.mouth, one.marks, one.stands
    )


def _number(key: str, marks: tuple[Mark, ...]) -> int:
    """Return the number of a mark, from 1."""
    return next(number for number, mark in enumerate(marks, 1) if mark.key == key)


def _in_rows(numbered: tuple[tuple[int, str, str], ...]) -> tuple[tuple[tuple[int, str, str], ...], ...]:
    if len(numbered) > FEW_MARKS:
        return tuple((one,) for one in numbered)
    half = -(-len(numbered) // 2)
    return tuple(numbered[place::half] for place in range(half))


def _words(key: str, example: Example, settings: Settings) -> dict[str, str]:
    alike = _alike_in(example, settings)
    run, overhang = alike.run_in, alike.overhang_in
    ridge, hip, rafter = settings.ridge_thickness, settings.hip_thickness, settings.rafter_thickness
    return {
        'pitch': alike.pitch.text,
        'run': text.run(run),
        'whole_run': text.run(run + overhang),
        'width': text.run(2 * run),
        'overhang': text.run(overhang),
        'seat': text.run(settings.seat),
        'ridge': text.rational(ridge),
        'hip': text.rational(hip),
        'rafter': text.rational(rafter),
        'rafters': settings.rafters.name,
        'hips': settings.hips.name,
        'valleys': settings.valleys.name,
        'part': text.mixed(1, settings.measure.per),
        'last': str(example.jacks[-1].number) if isinstance(example, JackExample) else '',
        'spacing': text.rational(example.spacing_in) if isinstance(example, JackExample) else '',
    }


def _inches(figure: Figure) -> float:
    return figure.count / figure.per


def _board(key: str, example: Example, settings: Settings) -> Markup:
    alike = _alike_in(example, settings)
    at = {mark.key: _inches(mark.at) for mark in alike.marks}
    regular, mouth = float(alike.pitch.slope), alike.mouth
    skew = key in ('hip', 'valley', 'jacks')
    board = BoardMarks(
        regular if key not in ('hip', 'valley') else regular / 2**0.5,
        float(alike.stock.depth_in),
        float(alike.thickness_in) if skew else 0.0,
        _head(at),
        _tail(at),
        at['plate'],
        at.get('heel', at['plate']),
        _inches(mouth.heel) if mouth else 0.0,
        _inches(mouth.seat) if mouth else 0.0,
        tuple(at.values()),
        _distances(alike.marks),
    )
    ends = {'porch': 'wall', 'jacks': 'hip'}
    return marked_board(
        board,
        (mouth.heel.text, mouth.seat.text) if mouth else ('', ''),
        BOARD_TITLE,
        ENDS[ends.get(key, 'ridge')],
    )


def _head(at: dict[str, float]) -> End:
    if 'long' in at:
        return End(at['long'], at['cut'], at['short'])
    if 'side' in at:
        return End(at['side'], at['point'], at['side'])
    return End(at['cut'], at['cut'], at['cut'])


def _tail(at: dict[str, float]) -> End:
    side = at.get('tail_side', at['tail'])
    return End(side, at['tail'], side)


def _distances(marks: tuple[Mark, ...]) -> tuple[tuple[float, str], ...]:
    """Return the two distances that the tables give, drawn from the line they are measured from."""
    return tuple((_inches(mark.at), mark.at.text) for mark in marks if mark.key in ('plate', 'tail'))
