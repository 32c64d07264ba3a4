"""Marking sheets to fill in: a common rafter, and a hip or valley with its jacks, each line with where its figure is read."""

from __future__ import annotations

from collections.abc import Sequence

from markupsafe import Markup
from msgspec import Struct

from layouts.paper.page import Block, Draft, Index, PageNumber
from layouts.paper.trim import trim_of
from layouts.words.examples import OPENING_ROWS
from layouts.words.pages import heading
from layouts.words.say import _
from tablegen.numbers import text
from tablegen.numbers.units import INCHES
from tablegen.settings import Settings
from tablegen.tables.opening_runs import reads_openings

RIGHT = 'marking-sheet-right'
"""Key of the right page."""
COMMON, HIPS = 'values', 'hip-values'
"""The two pages of a pitch by member, which an opening has as its left and its right one."""
RUNS = {COMMON: 'common', HIPS: 'hip-valley'}
COLUMNS, HEAD, BOXES = 12, 51.0, 96.0
"""Of a sheet's boxes: one to four in a line are equally wide; what stands above the lines;
how wide the boxes of a line are together; units."""
OF_A_PITCH = ('opening', COMMON, HIPS, 'jacks', 'common', 'hip-valley', 'rise')


class Line(Struct, frozen=True):
    """One line to fill in."""

    number: int
    name: str
    """What it is, and which way it is measured."""
    how: str
    """'' where its name says it all."""
    where: tuple[str | Markup, ...]
    """Where it is read in this book; none for what is measured or chosen, and for what the book has not."""
    boxes: tuple[str, ...]
    """What is written into each, in small type."""

    @property
    def span(self) -> int:
        """Return how many columns each box goes over."""
        return COLUMNS // len(self.boxes)

    @property
    def room(self) -> float:
        """Return how wide the words in a box may be, units."""
        return BOXES / len(self.boxes) - 4


class MarkingSheet(Struct, frozen=True):
    """One page."""

    lines: tuple[Line, ...]
    row: float
    """Height of a line, rem."""
    alone: bool
    """Whether a pitch has one opening; else they are counted."""


class _Book(Struct, frozen=True):
    """Where figures of any pitch stand in a book."""

    settings: Settings
    index: Index

    @property
    def opened(self) -> bool:
        return 'opening' in self.settings.parts

    @property
    def alone(self) -> bool:
        """Return whether a pitch has its opening alone."""
        return set(OF_A_PITCH) & set(self.settings.parts) == {'opening'}

    def at(self, page: str, opening: str, member: str) -> tuple[str, ...]:
        """Return the place of a row: on the opening, else on the page by member, else nowhere.

        Given:
            page             COMMON or HIPS
            opening, member  what names the row on either
        """
        return (self._side(page, opening),) if self.opened else self._on(page, member)

    def lengths(self, page: str) -> tuple[str, ...]:
        """Return where lengths by run are read."""
        if reads_openings(self.settings) or (self.opened and RUNS[page] not in self.settings.parts):
            return (self._side(page, _('ft, in, parts of an inch')),)
        return self._on(RUNS[page], _('ft and in'))

    def _side(self, page: str, row: str) -> str:
        if not self.alone:
            return _counted(1, int(page == HIPS), row)
        named = _('left page: {row}') if page == COMMON else _('right page: {row}')
        return named.format(row=row)

    def _on(self, key: str, row: str) -> tuple[str, ...]:
        """Return a row of one of a pitch's pages, which is told by its opening among them."""
        pitch = self.settings.pitches[0].text
        pages = [self.index[f'{one}:{pitch}'] for one in OF_A_PITCH if f'{one}:{pitch}' in self.index]
        if f'{key}:{pitch}' not in self.index:
            return ()
        opening, side = divmod(self.index[f'{key}:{pitch}'] - min(pages), 2)
        return (_counted(opening + 1, side, row),)

    def jacks(self) -> tuple[str, ...]:
        """Return where a jack's line length is read: in its own table, or as a common's of its run."""
        return self._on('jacks', _('jack')) or self.lengths(COMMON)

    def other(self, *keys: str) -> tuple[Markup, ...]:
        """Return the pages that have more of a kind."""
        pages = [PageNumber(self.index[key]) for key in keys if key in self.index]
        return tuple(page.linked(_('p. {page}').format(page=page)) for page in pages)


def marking_block(settings: Settings) -> Block | None:
    """Return both pages, which lie open together; None where the book tells no ways of finding a figure."""
    if 'how-to' not in settings.parts:
        return None
    keys = ('marking-sheet', RIGHT)
    drafts = (
        Draft('marking_sheet', lambda index: _common(_Book(settings, index)), keys[0], heading(keys[0])),
        Draft('marking_sheet', lambda index: _hip(_Book(settings, index)), keys[1], heading(keys[1])),
    )
    return Block(drafts, opens_left=True)


def _counted(opening: int, side: int, row: str) -> str:
    told = _('opening {opening}, right: {row}') if side else _('opening {opening}, left: {row}')
    return told.format(opening=opening, row=row)


def _row(name: str) -> str:
    """Return how a row of a pitch's page by member begins."""
    return _(OPENING_ROWS[name][0])


Row = tuple[str, str, Sequence[str | Markup], tuple[str, ...]]


def _sheet(rows: Sequence[Row], first: int, book: _Book) -> MarkingSheet:
    lines = tuple(
        Line(number, name, how, tuple(where), boxes)
        for number, (name, how, where, boxes) in enumerate(rows, first)
    )
    room = trim_of(book.settings).text_height - HEAD
    return MarkingSheet(lines, round(room / len(rows) / 10, 3), book.alone)


def _common(book: _Book) -> MarkingSheet:
    settings = book.settings
    ridge, seat = text.rational(settings.ridge_thickness), text.rational(settings.seat)
    over_plate = _('Seat {seat}').format(seat=seat)
    length, at, drawn = book.lengths(COMMON), book.at, _('drawing')
    tail = at(COMMON, _('Overhang'), '') if book.opened else length
    off = at(COMMON, _('Off for a ridge {ridge}').format(ridge=ridge), _row('ridge_level'))
    return _sheet(
        [
            (_('Width'), _('outside to outside of the plates, both ends; the diagonals alike'), (), ('',)),
            (_('Run, level'), _('half of 1; a shed’s: all, to wall or ledger'), (), (_('ft'), _('in'))),
            (_('Length of 2, along the top edge'), '', length, (_('ft'), _('in'), _('part'))),
            (_('Together'), _('ridge center line to plate line; a shed’s from the wall or the ledger’s face'), (), ('',)),
            (_('Tail, along the top edge'), '', (*tail, *book.other('group-tail')), (_('overhang'), _('tail'))),
            (_('Off, level'), _('half the ridge; all of a ledger, where the run goes to the wall'), (*off, *book.other('group-ridge')), ('',)),
            (_('Square, on the edge'), '', at(COMMON, drawn, drawn), (_('body'), _('tongue'))),
            (_('Cuts on the side, from square'), '', (*at(COMMON, _('Plumb cut'), _row('plumb_cut')), *book.other('glance')), (_('plumb'), _('level'))),
            (_('Height above plate, plumb'), '', (*at(COMMON, over_plate, _row('height')), *book.other('group-seat')), (_('stock'), _('height'))),
            (_('Seat, level; heel, plumb'), _('any heel is its seat’s rise'), at(COMMON, f'{over_plate}, {_("heel")}', _row('heel')), (_('seat'), _('heel'))),
            (_('Cut two, try, mark PATTERN'), _('then all others from it'), (), (_('how many'), _('tried'))),
        ],
        1,
        book,
    )  # fmt: skip


def _hip(book: _Book) -> MarkingSheet:
    settings, at, drawn = book.settings, book.at, _('drawing')
    stocks = ' '.join(dict.fromkeys((settings.hips.name, settings.valleys.name)))
    mouth, out = _('Bird’s mouth {stock}').format(stock=stocks), _('Valley’s heel: out, level')
    off, cheek, length = _('Comes off, center to face'), _('Cheek on top'), book.lengths(HIPS)
    drop = _('Drop, plumb; hip {thick}').format(thick=text.rational(settings.hip_thickness))
    tail = at(HIPS, _('hip tail'), '') if book.opened else length
    told, on_base = (_('height'), _('heel'), _('seat')), _('{base} &').format(base=INCHES.base)
    return _sheet(
        [
            (_('Length, along top edge'), _('COMMON run 2'), length, (_('ft'), _('in'), _('part'))),
            (_('Together; tail'), _('from the corner'), (*tail, *book.other('group-tail')), (_('together'), _('tail'))),
            (_('Off, level'), _('at a ridge, at commons'), (*at(HIPS, off, f'{_row("hip_level")}; {_row("between_level")}'), *book.other('group-ridge')), (_('ridge'), _('commons'))),
            (_('Square, on the edge'), '', at(HIPS, drawn, drawn), (_('body'), _('tongue'))),
            (_('Cuts on the side, from square'), '', (*at(HIPS, _('Plumb cut'), _row('plumb_cut')), *book.other('glance')), (_('plumb'), _('level'))),
            (_('Cheek on the square top'), _('along its plumb cut, blade at 45°'), (*at(HIPS, cheek, _row('hip_top')), *book.other('glance-right')), (_('degrees'), on_base)),
            (_('Drop (in 19 already) or backing'), '', (*at(HIPS, drop, _row('drop')), *book.other('group-hips')), (_('drop'), _('backing'))),
            (_('Hip, dropped'), _('on its center line'), (*at(HIPS, mouth, _row('dropped_height')), *book.other('group-seat')), told),
            (_('Valley; its heel out, level'), '', (*at(HIPS, f'{mouth}; {out}', f'{_row("valley_height")}; {_row("valley_out")}'), *book.other('group-seat')), (*told, _('out'))),
            (_('Jacks: spacing; each longer by'), '', (*at(HIPS, _('Jacks apart'), _('Longer by, along top')), *book.other('group-jack-deductions')), (_('spacing'), _('longer'))),
            (_('Jack: off, level; cheek, as 17'), '', at(HIPS, f'{off}; {cheek}', f'{_row("jack_level")}; {_row("jack_top")}'), (_('off'), _('degrees'), on_base)),
            (_('Jacks, to the hip’s center line'), _('run: the number times the spacing'), book.jacks(), ('1', '2', '3', '4')),
        ],
        len(_common(book).lines) + 1,
        book,
    )  # fmt: skip
