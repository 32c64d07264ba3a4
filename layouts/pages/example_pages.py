"""The worked examples as openings: the work step by step, with its page and row, then the board with its marks."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from markupsafe import Markup

from layouts.drawings.marked_board import BoardMarks, End, marked_board
from layouts.pages.example_places import Place, Places
from layouts.pages.how_to_page import unit_after
from layouts.pages.part_tabs import part_tab
from layouts.paper.page import Block, Draft, Index, Maker
from layouts.paper.trim import trim_of
from layouts.words.drawings import ENDS
from layouts.words.examples import BOARD_TITLE, MARKS
from layouts.words.pages import heading
from layouts.words.say import _, say
from tablegen import examples as worked
from tablegen.examples.records import Example, JackExample
from tablegen.numbers import text
from tablegen.numbers.figure import Figure
from tablegen.roof import cautions
from tablegen.roof.member import Kind, Line, Member, known
from tablegen.settings import Settings

WHOLE = ('table', 'mouth', 'board', 'steps')
FEW_MARKS = 4
HEADS = {Kind.SHED_RAFTER: 'wall', Kind.HIP_JACK: 'hip'}
"""What stands at the upper end of a board, where it is no ridge."""
EXAMPLES: tuple[tuple[str, Callable[[Settings], Example | JackExample | None], str, tuple[str, ...]], ...] = (
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
    example: Example | JackExample
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


def example_block(settings: Settings) -> Block | None:
    """Return the openings of the examples whose tables are in the book, or None if there is none."""
    if 'examples' not in settings.parts:
        return None
    drafts: list[Draft] = []
    tab = part_tab('examples', trim_of(settings))
    for key, make_example, needs, sides in EXAMPLES:
        example = make_example(settings) if needs in settings.parts else None
        if example is None:  # its table is left out, or the book ends before it
            continue
        for side in sides:
            name = 'examples' if not drafts else ''
            maker = _maker(key, example, settings)
            known = (f'example:{key}',) if side == 'table' else ()
            drafts.append(Draft(f'example_{key}_{side}', maker, name, heading('examples'), tab, known))
    return Block(tuple(drafts), opens_left=True) if drafts else None


def _maker(key: str, example: Example | JackExample, settings: Settings) -> Maker:
    def make(index: Index) -> ExamplePage:
        member = example.member
        places = Places(member.pitch, index, settings, trim_of(settings))
        at = places.of(example.stands)
        if isinstance(example, JackExample):
            at |= {'lines': places.of_rows([one.source for one in example.jacks])}
        numbers = {mark.line: number for number, mark in enumerate(member.marks, 1)}
        numbered = tuple(
            (numbers[mark.line], _(MARKS[member.kind][mark.line]), mark.at.text) for mark in member.marks
        )
        return ExamplePage(
            key,
            example,
            at,
            _words(example, settings),
            unit_after(settings),
            _in_rows(numbered),
            numbers[Line.CENTER],
            numbers[Line.PLATE],
            _board(member),
            next((index[name] for name in ('example:store',) if name in index), 0),
            next((index[name] for name in ('care', 'cautions') if name in index), 0),
            say(cautions.DEFERS),
        )

    return make


def _in_rows(numbered: tuple[tuple[int, str, str], ...]) -> tuple[tuple[tuple[int, str, str], ...], ...]:
    if len(numbered) > FEW_MARKS:
        return tuple((one,) for one in numbered)
    half = -(-len(numbered) // 2)
    return tuple(numbered[place::half] for place in range(half))


def _words(example: Example | JackExample, settings: Settings) -> dict[str, str]:
    roof, jacks = example.roof, example if isinstance(example, JackExample) else None
    return {
        'pitch': roof.pitch.text,
        'run': text.run(roof.run_in),
        'whole_run': text.run(roof.run_in + roof.overhang_in),
        'width': text.run(2 * roof.run_in),
        'overhang': text.run(roof.overhang_in),
        'seat': text.run(settings.seat),
        'ridge': text.rational(settings.ridge_thickness),
        'hip': text.rational(settings.hip_thickness),
        'rafter': text.rational(settings.rafter_thickness),
        'rafters': settings.rafters.name,
        'hips': settings.hips.name,
        'valleys': settings.valleys.name,
        'last': str(jacks.jacks[-1].number) if jacks else '',
        'spacing': text.rational(jacks.spacing_in) if jacks else '',
    }


def _inches(figure: Figure) -> float:
    return figure.count / figure.per


def _board(member: Member) -> Markup:
    at = {mark.line: _inches(mark.at) for mark in member.marks}
    mouth = member.mouth
    heel, seat = (known(mouth.heel), known(mouth.seat)) if mouth else (None, None)
    board = BoardMarks(
        float(member.slope),
        float(member.stock.depth_in),
        float(member.thickness_in) if member.head.cut else 0.0,
        _head(at),
        _tail(at),
        at[Line.PLATE],
        at.get(Line.HEEL, at[Line.PLATE]),
        _inches(heel) if heel else 0.0,
        _inches(seat) if seat else 0.0,
        tuple(at.values()),
        tuple((at[mark.line], mark.at.text) for mark in member.marks if mark.line in (Line.PLATE, Line.TAIL)),
    )
    words = (heel.text, seat.text) if heel and seat else ('', '')
    return marked_board(board, words, BOARD_TITLE, ENDS[HEADS.get(member.kind, 'ridge')])


def _head(at: dict[Line, float]) -> End:
    if Line.LONG in at:
        return End(at[Line.LONG], at[Line.CUT], at[Line.SHORT])
    if Line.SIDE in at:
        return End(at[Line.SIDE], at[Line.POINT], at[Line.SIDE])
    return End(at[Line.CUT], at[Line.CUT], at[Line.CUT])


def _tail(at: dict[Line, float]) -> End:
    side = at.get(Line.TAIL_SIDE, at[Line.TAIL])
    return End(side, at[Line.TAIL], side)
