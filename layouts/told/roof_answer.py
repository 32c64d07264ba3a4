"""The answer of roof: for a person, whole or some of its groups; for a program, as one JSON object; the cut list as CSV."""

from __future__ import annotations

import csv
from collections.abc import Callable, Iterable, Iterator, Sequence
from io import StringIO

from layouts.told import dialect
from layouts.told.blocks import DEFERS, Block, joined, paragraph
from layouts.told.objects import as_data, json_text
from layouts.told.roof_buy import buy_blocks
from layouts.told.roof_text import (
    boards_block,
    cautions_block,
    checks_block,
    head,
    heights_block,
    members_blocks,
    places_block,
    studs_block,
)
from layouts.words.lists import pitches
from layouts.words.say import _, say
from tablegen.frame.cut_list import CutList
from tablegen.frame.gable_ends import STUD
from tablegen.numbers.figure import DEGREE, INCH
from tablegen.roof.cautions import DEFERS as DEFER
from tablegen.roof.member import Line

BUY = 'buy'
TEXT: dict[str, Callable[[CutList], Iterable[Block]]] = {
    'members': members_blocks,
    'boards': lambda found: [boards_block(found)],
    'studs': lambda found: [studs_block(found)],
    'heights': lambda found: [heights_block(found)],
    'checks': lambda found: [checks_block(found)],
    'places': lambda found: [places_block(found)],
    'caution': lambda found: [cautions_block(found)],
    BUY: lambda found: buy_blocks(found.buy) if found.buy else [],
}
SHOWN = tuple(TEXT)
"""What can be picked of an answer; in JSON places are the members' own."""
ASKED_FOR = ('places',)
"""What a person is told only where it is picked."""
ALWAYS = ('roof',)


def roof_text(found: CutList, picked: Sequence[str]) -> str:
    """Return the answer for a person, or those of its groups that are picked."""
    stocks = [*(one.stock for one in found.members), *(one.stock for one in found.boards)]
    wanted = [name for name in SHOWN if name in picked or (not picked and name not in ASKED_FOR)]
    blocks = [block for name in wanted for block in TEXT[name](found)]
    more = paragraph(_('More: --show with one or more of {names}.').format(names=', '.join(SHOWN)))
    return joined([head(found.roof, list(dict.fromkeys(stocks))), *blocks, [_(DEFERS), *more]])


def roof_json(found: CutList, picked: Sequence[str]) -> str:
    """Return the answer for a program."""
    wanted = {*ALWAYS, *picked} | ({'members'} if 'places' in picked else set())
    told = {name: one for name, one in as_data(found).items() if not picked or name in wanted}
    return json_text(told | {'defers': say(DEFER)})


def roof_csv(found: CutList) -> str:
    """Return the cut list: a row for each mark and hand, every mark of the board in columns of its own."""
    lines = [line for line in Line if any(mark.line is line for one in found.members for mark in one.marks)]
    out = StringIO()
    csv.writer(out, lineterminator='\n').writerows(_rows(found, lines))
    return out.getvalue()


def _rows(found: CutList, lines: Sequence[Line]) -> Iterator[list[str]]:
    lengths = [name for key in ('cut_from', 'overall', *lines) for name in dialect.column_names(key, INCH)]
    angles = [dialect.column_names(key, DEGREE)[0] for key in ('plumb', 'level')]
    yield ['mark', 'hand', 'kind', 'number', 'stock', 'pitch', 'held', *angles, *lengths]
    for one in found.members:
        at = {mark.line: mark.at for mark in one.marks}
        figures = (one.cut_from, one.overall, *(at.get(line) for line in lines))
        yield [
            one.mark, one.hand or '', one.kind, str(one.number), one.stock, pitches(one.pitch, one.other_pitch), one.held.held,
            one.cut.plumb.decimal, one.cut.level.decimal, *(cell for figure in figures for cell in dialect.cells(figure)),
        ]  # fmt: skip
    for board in found.boards:
        told = [board.mark, '', board.kind, str(board.number), board.stock, '', '', '', '']
        length = dialect.cells(board.length)
        yield [*told, *length, *length, *([''] * 2 * len(lines))]
    for stud in found.studs:
        told = [stud.mark, '', 'gable_stud', str(stud.count), STUD.name, '', '', stud.top_cut.decimal, '']
        yield [*told, *dialect.cells(stud.long) * 2, *([''] * 2 * len(lines))]
