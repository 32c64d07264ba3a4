"""Cards of several pitches, a row each: as many columns and rows as stand, then how they are used."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from layouts.cards.columns import Column, columns
from layouts.cards.faces import Block, Cell, Face, Row, TableFace, Title, WordsFace
from layouts.cards.fitting import column_width, foot_lines, label_width, most_rows, table_face, words_face
from layouts.cards.formats import Format
from layouts.cards.measures import BOLD, LEAST_PT, width_pt
from layouts.cards.titles import fitted_title, pitch_title
from layouts.pages.glance_pages import pitch_head
from layouts.pages.how_to_page import unit_after
from layouts.words.cards import (
    ALL_PITCHES,
    CAUTION,
    EXAMPLE,
    EXAMPLE_HEAD,
    MEANINGS_HEAD,
    ON_SITE,
    PARTS_HEAD,
    SITE_HEAD,
    STEPS,
    USE,
)
from layouts.words.caution import caution_text
from layouts.words.say import N_, _
from tablegen.errors import BookError
from tablegen.examples import nearest_pitch
from tablegen.geometry.pitch import Pitch
from tablegen.messages import message
from tablegen.numbers import text
from tablegen.numbers.exact import nearest
from tablegen.numbers.figure import Figure, length_of_count
from tablegen.numbers.units import INCHES
from tablegen.roof.cautions import LOW_SLOPE, STEEP
from tablegen.settings import Settings
from tablegen.tables.values import Values, members_of

PART_PLACES = 3
HEAD_LINES = 3
NO_BREAK = '\u00a0'
LEAST_FOR_FOUR = 23
"""Width of four pairs, in em."""
EXAMPLE_FEET = Fraction(25, 2)
"""Run of the example, ft."""


class _Figures:
    """The figures of a book's pitches by the columns of a card, each column's worked out once."""

    def __init__(self, settings: Settings):
        self.pitches = settings.pitches
        self.stand, self.wanted = columns(settings)
        self._members = [members_of(pitch, settings) for pitch in settings.pitches]
        self._cells: dict[str, list[Cell]] = {}

    def cells(self, column: Column) -> list[Cell]:
        """Return a column's cells, one a pitch."""
        if column.name not in self._cells:
            self._cells[column.name] = [column.cell(one) for one in self._members]
        return self._cells[column.name]


def all_pitches(settings: Settings, upright: Format) -> tuple[Format, list[tuple[Face, Face]], list[str]]:
    """Return the format as it lies, the cards, and what is said of them.

    Notes:
        1. A card lies the way that takes fewer sides, then more columns.
        2. Pitches that stand on one side leave the other for how to use it; more go on both sides, still
           more on several cards.
    """
    figures, count, caution = _Figures(settings), len(settings.pitches), _(CAUTION)

    def cost(form: Format) -> tuple[int, int]:
        rows = most_rows(form, foot_lines(caution, form), form.type_pt, HEAD_LINES)
        return -(-count // max(1, rows)), -len(_columns(form, figures)[0])

    form = min((upright, upright.turned()), key=cost)
    foot = foot_lines(caution, form)
    chosen, left_out = _columns(form, figures)
    most = most_rows(form, foot, head_lines=HEAD_LINES)
    faces = -(-count // most)
    share = -(-count // faces)
    places = [slice(at, at + share) for at in range(0, count, share)]
    tables = [_table(form, chosen, figures, some, foot) for some in places]
    sides: list[Face] = [*tables, *([_use(settings, form, chosen, foot)] if len(tables) % 2 else [])]
    cards = list(zip(sides[::2], sides[1::2], strict=True))
    return form, cards, _said(settings.pitches, chosen, left_out, len(tables), len(cards))


def _said(
    pitches: Sequence[Pitch], chosen: Sequence[Column], left_out: Sequence[Column], tables: int, cards: int
) -> list[str]:
    span = ' '.join(part for part in (pitch_title(pitches)) if part)
    on_cards = N_('{count} pitches, {span}, on {cards} cards')
    if tables % 2:
        on_cards = N_('{count} pitches, {span}, on {cards} cards and how to use it')
    on_one = {
        1: N_('{count} pitches, {span}, on the front and how to use it'),
        2: N_('{count} pitches, {span}, on both sides'),
    }
    where = _(on_one.get(tables, on_cards))
    names, without = (', '.join(column.name for column in some) for some in (chosen, left_out))
    said = [
        where.format(count=len(pitches), span=span, cards=cards),
        _('columns: {names}').format(names=names),
    ]
    return said + ([_('no room for: {names}').format(names=without)] if left_out else [])


def _columns(form: Format, figures: _Figures) -> tuple[list[Column], list[Column]]:
    """Return the columns that stand in the type aimed at, or in the least if not three do, and the rest."""
    labels, over = [one.short for one in figures.pitches], _pitch_head(figures.pitches)

    def width(column: Column, size: float, head: tuple[str, ...]) -> float:
        return column_width(head, figures.cells(column), size)

    for size in (form.type_pt, LEAST_PT):
        used = label_width(over, labels, size)
        chosen: set[str] = set()
        for column in figures.wanted:
            used += width(column, size, column.narrow)
            if used > form.inner_pt:
                break
            chosen.add(column.name)
        if len(chosen) >= 3:
            break
    if not chosen:
        raise BookError(
            '--size',
            message('making.too_narrow', name=form.name),
            '',
            message('making.larger_card'),
        )
    standing = [column for column in figures.stand if column.name in chosen]
    full = label_width(over, labels, size) + sum(width(column, size, column.head) for column in standing)
    if full > form.inner_pt:
        standing = [column.narrowed() for column in standing]
    return standing, [one for one in figures.stand if one.name not in chosen]


def _table(
    form: Format, chosen: Sequence[Column], figures: _Figures, some: slice, foot: Sequence[str]
) -> TableFace:
    pitches = figures.pitches[some]
    cells = zip(*(figures.cells(column)[some] for column in chosen), strict=True)
    rows = [Row(pitch.short, told) for pitch, told in zip(pitches, cells, strict=True)]
    title = fitted_title(form, pitch_title(pitches), ALL_PITCHES)
    face = table_face(form, title, [_pitch_head(pitches), *(column.head for column in chosen)], rows, foot)
    if face is None:  # the columns were chosen to fit in the least type
        raise ValueError(f'a table of {len(rows)} rows does not stand on {form.name}')
    return face


def _pitch_head(pitches: Sequence[Pitch]) -> tuple[str, str, str]:
    return ('', *pitch_head(pitches))


def _use(settings: Settings, form: Format, chosen: Sequence[Column], foot: Sequence[str]) -> WordsFace:
    steps = Block('', tuple((str(number), _(step)) for number, step in enumerate(STEPS, 1)))
    meanings = tuple({column.said: column.meaning for column in chosen}.items())
    site = Block(
        _(SITE_HEAD), tuple((line,) for line in (*map(_, ON_SITE), *map(caution_text, (LOW_SLOPE, STEEP))))
    )
    blocks = [steps, site, Block(_(MEANINGS_HEAD), meanings), _parts(form), _example(settings)]
    name = settings.owner or settings.title
    if width_pt(name, form.note_pt, BOLD) <= form.title_pt:
        return words_face(form, Title(_(USE), '', name), blocks, foot)
    named = foot_lines(f'{name}. {_(CAUTION)}', form)
    fits = all(width_pt(line, form.note_pt) <= form.inner_pt for line in named)
    return words_face(form, Title(_(USE), '', ''), blocks, named if fits else foot)


def _example(settings: Settings) -> Block:
    """Return a length worked with the card's own figure; the product of printed figures, rounded once."""
    pitch = nearest_pitch(settings, Fraction(6))
    unit = Values(settings).common_per_foot.cell(members_of(pitch, settings))
    assert isinstance(unit, Figure)
    product = EXAMPLE_FEET * Fraction(unit.count, unit.per)
    words = _(EXAMPLE).format(
        pitch=pitch.text,
        run=text.run(INCHES.group * EXAMPLE_FEET),
        feet=text.decimal(nearest(EXAMPLE_FEET, 10), 1),
        unit=unit.text,
        length=text.decimal(nearest(product, 10**PART_PLACES), PART_PLACES),
        rounded=length_of_count(nearest(product, settings.measure.per), settings.measure).text.replace(
            ' ', NO_BREAK
        )
        + unit_after(settings).replace(' ', NO_BREAK),
    )
    return Block(_(EXAMPLE_HEAD), ((words,),))


def _parts(form: Format) -> Block:
    """Return the sixteenths of an inch in thousandths, pairs in a row, down the columns."""
    per = INCHES.part
    pairs = [
        (text.mixed(n, per), text.decimal(nearest(Fraction(n, per), 10**PART_PLACES), PART_PLACES))
        for n in range(1, per + 1)
    ]
    down = len(pairs) // (4 if form.inner_pt >= LEAST_FOR_FOUR * form.type_pt else 2)
    return Block(_(PARTS_HEAD), tuple(sum(pairs[row::down], ()) for row in range(down)), figures=True)
