"""The worked examples as openings: the work step by step, with its page and row, then the board with its marks."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from fractions import Fraction

from markupsafe import Markup
from msgspec import Struct
from msgspec.structs import replace

from layouts.opening.pages import exactly
from layouts.pages.example_boards import Rows, board_of, by_marks, marks_in_rows, numbers_of, otherwise
from layouts.pages.example_care import cautions_of
from layouts.pages.example_places import Place, Places
from layouts.pages.how_to_page import SHOWN_PLACES, unit_after
from layouts.pages.part_tabs import part_tab
from layouts.pages.slopes_pages import keys_of_file, slopes_maker
from layouts.paper.page import Block, Draft, Index, Maker
from layouts.paper.trim import trim_of
from layouts.words.pages import ALL_MEMBERS, heading
from layouts.words.say import say
from tablegen import examples as worked
from tablegen.examples import Building
from tablegen.examples.records import Example, JackExample, SlopesExample
from tablegen.geometry import common
from tablegen.numbers import text
from tablegen.numbers.exact import nearest
from tablegen.numbers.figure import Measure, length_of_count
from tablegen.numbers.units import INCHES
from tablegen.roof import cautions
from tablegen.roof.member import Kind, Line, Member
from tablegen.settings import Settings
from tablegen.tables.opening_runs import reads_openings

WHOLE, BOTH, EACH = ('table', 'mouth', 'board', 'steps'), ('table', 'board'), ('table', 'first', 'second')
FEW_MARKS = 4
ONE_PAGE = 'example_store_opening'
Made = Example | JackExample | SlopesExample
Make = Callable[[Building, Settings], Made | None]
EXAMPLES: tuple[tuple[str, Make, str, tuple[str, ...]], ...] = (
    ('store', worked.common_rafter, 'common', BOTH),
    ('hip', worked.whole_hip, 'hip-valley', WHOLE),
    ('jacks', worked.hip_jacks, 'jacks', BOTH),
    ('valley', worked.whole_valley, 'hip-valley', WHOLE),
    ('porch', worked.ledger_rafter, 'common', BOTH),
    ('saltbox', worked.saltbox_rafters, 'common', EACH),
    ('gambrel', worked.gambrel_rafters, 'common', EACH),
)
"""Key, what makes it, the part of the book that it needs where pitches have no openings, and its pages.

A book whose pitches have one opening each has one opening an example: WHOLE is then a left page of its own, and the board."""


class ExamplePage(Struct, frozen=True):
    """One page of a worked example."""

    key: str
    example: Example | JackExample
    at: dict[str, tuple[Place, ...]]
    """Places of each step's figures."""
    words: dict[str, str]
    """Runs, thicknesses and names, finished."""
    unit: str
    """What follows a length: ' in', or nothing where its text has its units."""
    opened: bool
    """Whether all figures stand on its pitch's one opening."""
    marks: Rows
    zero: int
    plate: int
    """Numbers of the mark that all is measured from, and of the one at the plate line."""
    by_marks: tuple[int, int, str] | None
    """Numbers of the first and the last mark of the cut board, and what they are apart; None where that is its length."""
    points: tuple[str, ...]
    """Long and short point of the last jack, added up from what is read; none where they are not."""
    by_hand: tuple[str, ...]
    """Run to its short point, the exact foot and their product, in inches as decimals; none where points are not added up."""
    board: Markup
    drawn_page: int
    """Where the store's common is drawn, 0 for nowhere."""
    mouth_page: int
    """Where the bird's mouth of the store's common is worked, 0 for nowhere."""
    hip_page: int
    jacks_page: int
    all_page: int
    """Where all members of the reader's own roof stand, 0 for nowhere."""
    cautions: str
    care_page: int
    """Where the clauses of the cautions stand, 0 for nowhere."""
    defers: str


def example_blocks(settings: Settings) -> list[Block]:
    """Return the openings of the examples whose tables are in the book: of the roofs that it is asked for, or of our own.

    Errors:
        SettingsFaults for a roof whose pitch or spacing is not in the book
    """
    if 'examples' not in settings.parts:
        return []
    if not settings.own_roofs:
        drafts = _of_our_own(settings)
        return [_block(drafts)] if drafts else []
    from layouts.pages import own_roof_pages as own  # the garden store waits for no frame
    from tablegen.examples.own_roof import own_roof

    found = []
    asked_for = zip(settings.roofs or (), settings.own_roofs, own.called(settings), strict=True)
    for place, (file, asked, name) in enumerate(asked_for):
        roof, keys = own_roof(file, asked, settings), own.keys_of(place)
        drafts = _drafts(roof.building, keys, settings, name)
        drafts += own.members_drafts(roof, name, keys, settings)
        found.append(_block(drafts, '' if place else 'examples'))
    return found


def _of_our_own(settings: Settings) -> list[Draft]:
    """Return the pages of the garden store and its porch, then of the roofs beside them: one each where a pitch has one opening, else
    with all of their members in lists.

    Where the store's common then has one page too, that faces the first of them.
    """
    beside, lists = list[Draft](), list[Draft]()
    if settings.roofs is None:
        from tablegen.examples.shipped import shipped_roofs

        for one in shipped_roofs(settings):
            worked_through = _drafts(one.building, '', settings, one.frame.asked.name, one.file)
            beside += worked_through
            if worked_through and not on_one_opening(
                settings
            ):  # else there is no room for them in a book of one section
                from layouts.pages.own_roof_pages import members_drafts

                lists += members_drafts(one, one.frame.asked.name, keys_of_file(one.file), settings)
    store = _drafts(worked.store_and_porch(settings), '', settings, faced=bool(beside))
    at = 1 if store and store[0].template == ONE_PAGE else len(store)
    return [*store[:at], *beside[:1], *store[at:], *beside[1:], *lists]


def _block(drafts: Sequence[Draft], key: str = 'examples') -> Block:
    first, *others = drafts
    return Block((replace(first, key=key), *others), opens_left=True)


def _drafts(
    building: Building,
    keys: str,
    settings: Settings,
    roof: str = '',
    shipped: str = '',
    faced: bool = False,
) -> list[Draft]:
    """Return the pages of the members that are worked through.

    Given:
        keys     what the names of its pages end with
        roof     its name, '' for the garden store
        shipped  its file, where it is one of our own
        faced    whether another roof's page may face that of the common
    """
    drafts: list[Draft] = []
    single = False
    opened, tab = on_one_opening(settings), part_tab('examples', trim_of(settings))
    for key, make_example, needs, sides in EXAMPLES:
        stands = needs in settings.parts or reads_openings(settings)
        example = make_example(building, settings) if stands else None
        if example is None:  # its table is left out, or the book ends before it
            continue
        if opened and (shipped or sides is WHOLE):
            sides = ('opening', 'board') if sides is WHOLE else ('table',)
        if isinstance(example, SlopesExample):
            maker = slopes_maker(example, settings, keys, roof, shipped, opened, not (opened and shipped))
        else:
            single = single or (faced and key == 'store' and _has_one_page(example.member, settings))
            maker = _maker(key, example, settings, keys, roof, single)
            sides = ('opening',) if key == 'store' and single else sides
        for place, side in enumerate(sides):
            known = () if place else (f'example:{key}{keys}',)
            drafts.append(Draft(f'example_{key}_{side}', maker, '', heading('examples'), tab, known))
    return drafts


def _has_one_page(member: Member, settings: Settings) -> bool:
    """Return whether the store's common has room on one page: where it is drawn before the pitches."""
    plain = not member.cautions and member.mouth is not None and member.hold.holds == 1
    return plain and on_one_opening(settings) and 'how-to' in settings.parts


def on_one_opening(settings: Settings) -> bool:
    """Return whether all figures of an example stand on its pitch's one opening: its steps are then told in less room."""
    return reads_openings(settings) and 'values' not in settings.parts


def _maker(
    key: str, example: Example | JackExample, settings: Settings, keys: str, roof: str, single: bool
) -> Maker:
    """Return what makes a page; single tells whether the store's common has one page."""

    def make(index: Index) -> ExamplePage:
        member = example.member
        words, opened = _words(example, settings, roof), on_one_opening(settings)
        places = Places(member.pitch, index, settings, trim_of(settings))
        at = places.of(example.stands)
        if isinstance(example, JackExample):
            at |= {'lines': places.of_rows([one.source for one in example.jacks])}
        numbers = numbers_of(member)
        return ExamplePage(
            key,
            example,
            at,
            words,
            unit_after(settings),
            opened,
            marks_in_rows(member, (single and key == 'store') or _paired(member, opened)),
            numbers[Line.CENTER],
            numbers[Line.PLATE],
            by_marks(member, numbers, settings.measure),
            _points(example, settings.measure) if isinstance(example, JackExample) else (),
            _by_hand(example, settings, words['exact_foot']) if isinstance(example, JackExample) else (),
            board_of(
                member,
                *_drawn(member, opened, settings.measure.style != text.INCHES),
                otherwise(example, roof),
            ),
            index.get('one-rafter'),
            index.get('seat-cut-try') if single else index.get(f'example:store{keys}'),
            index.get(f'example:hip{keys}'),
            index.get(f'example:jacks{keys}'),
            index.get(f'{ALL_MEMBERS}{keys}'),
            cautions_of(member, opened, trim_of(settings)),
            next((index[name] for name in ('care', 'cautions') if name in index), 0),
            say(cautions.DEFERS),
        )

    return make


def _paired(member: Member, opened: bool) -> bool:
    """Return whether marks stand two in a row: where they are few, or on one opening where there is much beside them."""
    few = len(member.marks) <= FEW_MARKS
    return member.kind == Kind.HIP or (few and bool(member.cautions)) if opened else few


def _drawn(member: Member, opened: bool, feet: bool) -> tuple[float, bool]:
    """Return how much higher than usual a board may be drawn, and whether its lengths are drawn.

    On one opening it takes what its words leave: feet, halved figures of the square and cautions take lines more.
    """
    if not opened or member.kind == Kind.HIP_JACK:
        return 1.0, True
    if member.kind == Kind.HIP:
        return 0.5 if feet or member.hold.holds > 1 else 0.75, False
    more = 1.0 if member.kind == Kind.VALLEY else 1.4
    return 0.7 * more if member.cautions else more, True


def _points(example: JackExample, measure: Measure) -> tuple[str, ...]:
    length, half = example.length, example.half
    if length is None or half is None:
        return ()
    center = length.total.count - example.member.deductions[0].along.count
    return tuple(length_of_count(center + sign * half.total.count, measure).text for sign in (1, -1))


def _by_hand(example: JackExample, settings: Settings, foot: str) -> tuple[str, ...]:
    if example.half is None:
        return ()
    run = example.jacks[-1].run_in - Fraction(example.off_by_hand.text) - settings.rafter_thickness / 2
    along = nearest(run / INCHES.base * Fraction(foot), 10**SHOWN_PLACES)
    return f'{float(run):.3f}', foot, text.decimal(along, SHOWN_PLACES)


def _words(example: Example | JackExample, settings: Settings, of: str) -> dict[str, str]:
    roof, jacks = example.roof, example if isinstance(example, JackExample) else None
    return {
        'roof': of,
        'mark': roof.mark,
        'pitch': roof.pitch.text,
        'run': text.run(roof.run_in),
        'odd': text.run(roof.run_in % example.member.hold.run_in),
        'whole_run': text.run(roof.run_in + roof.overhang_in),
        'width': text.run(2 * roof.run_in),
        'overhang': text.run(roof.overhang_in),
        'seat': text.run(settings.seat),
        'ridge': text.rational(settings.ridge_thickness),
        'hip': text.rational(settings.hip_thickness),
        'rafter': text.rational(settings.rafter_thickness),
        'half': text.rational(settings.rafter_thickness / 2),
        'half_by_hand': f'{float(settings.rafter_thickness / 2):g}',
        'rafters': settings.rafters.name,
        'hips': settings.hips.name,
        'valleys': settings.valleys.name,
        'last': jacks.jacks[-1].mark if jacks else '',
        'last_run': text.run(jacks.jacks[-1].run_in) if jacks else '',
        'exact_foot': exactly(common.line_length(INCHES.unit_run, example.member.slope)),
        'spacing': text.rational(jacks.spacing_in) if jacks else '',
        'first': text.rational(jacks.first_in) if jacks else '',
        'ledger': text.rational(example.member.deductions[0].thickness_in),
    }
