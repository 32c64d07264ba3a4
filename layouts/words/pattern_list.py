"""The words of the list before a roof's patterns."""

from __future__ import annotations

from collections.abc import Iterator

from layouts.words.frame import HANDS, LEVELS, MEMBERS, in_rows
from layouts.words.lists import capital
from layouts.words.pattern_pages import PRINT, cautions_of
from layouts.words.say import N_, _
from tablegen.frame.frame import Frame
from tablegen.frame.framed import Framed
from tablegen.frame.roof_keys import kind_of
from tablegen.roof.pattern import Pattern

TITLE, KIND = N_('{roof}: patterns at full size'), N_('{kind} roof')
FACTS = (
    N_(
        'Each kind of end and each bird’s mouth is printed once, for all marks at its head. Left and right are of one who looks '
        'up the roof. Lengths are along the center of the top edge, in inches, between the lines that the patterns show.'
    ),
)
NO_PATTERN = N_(
    'No pattern: {boards}. They are level or stand plumb, and are sawn by the lengths and angles in the list of rafterbook roof.'
)
STUDS = N_('gable studs')
BOARD = N_('{kind} {marks}')
HEADS = (
    N_('mark'),
    N_('hand'),
    N_('what'),
    N_('number'),
    N_('upper end,\npages'),
    N_('bird’s mouth,\npages'),
    N_('tail or lower\nend, pages'),
    N_('upper cut to\nplate line'),
    N_('plate line\nto tail’s cut'),
    N_('upper cut to\nlower cut'),
)
PAGES = N_('{first}–{last}')


def title_of(frame: Frame) -> str:
    """Return what the patterns are of."""
    roof = frame.asked.name or capital(_(KIND).format(kind=kind_of(frame.asked)))
    return _(TITLE).format(roof=roof)


def facts_of(frame: Frame) -> list[str]:
    """Return how the list is read, and what needs no pattern."""
    boards: dict[str, list[str]] = {}
    for board in frame.levels:
        boards.setdefault(_(LEVELS[board.level]), []).append(board.mark)
    for stud in frame.studs:
        boards.setdefault(_(STUDS), []).append(stud.mark)
    said = [_(BOARD).format(marks=in_rows(dict.fromkeys(marks)), kind=kind) for kind, marks in boards.items()]
    facts = [_(one) for one in FACTS]
    return [*facts, _(NO_PATTERN).format(boards='; '.join(said))] if said else facts


def sentences_of(frame: Frame) -> list[str]:
    """Return what stands at the foot of the list's pages."""
    return [_(PRINT), *cautions_of(one.member for one in frame.members)]


def heads() -> list[str]:
    """Return the heads of the list's columns, some of two lines."""
    return [_(one) for one in HEADS]


def member_cells(framed: Framed) -> Iterator[str]:
    """Return what a row says of its member."""
    yield framed.member.name
    yield _(HANDS[framed.hand]) if framed.hand else ''
    yield _(MEMBERS[framed.member.kind])
    yield str(framed.count)


def length_cells(whole: Pattern) -> Iterator[str]:
    """Return what a row says of how far apart cuts and the plate line lie."""
    yield whole.head_to_plate.text if whole.head_to_plate else ''
    yield whole.plate_to_tail.text if whole.plate_to_tail else ''
    yield whole.head_to_foot.text


def pages_said(first: int, last: int) -> str:
    """Return from which page to which."""
    return _(PAGES).format(first=first, last=last) if last > first else str(first)
