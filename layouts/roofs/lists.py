"""The lists of a roof: members, level boards, studs, what to buy, checks, cautions."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from msgspec import Struct

from layouts.roofs.groups import Group, Marked
from layouts.told.blocks import in_inches
from layouts.told.roof_buy import CUT_HEADS, JOINTS, bought_words, cut_rows, has_joints, whole_words
from layouts.words.board_ends import HEADS, board_sentences, end_rows, ridge_end
from layouts.words.caution import caution_source, caution_text
from layouts.words.frame import CHECKS, HANDS, LEVELS, MEMBERS, in_rows
from layouts.words.marking import under
from layouts.words.say import _
from tablegen.frame.asked_lines import asked_lines
from tablegen.frame.buying import Buying
from tablegen.frame.frame import Frame
from tablegen.frame.gable_ends import STUD, Stud
from tablegen.frame.lumber import sold_as
from tablegen.numbers.figure import Figure, length_figure


class ListRow(Struct, frozen=True):
    """A mark with what it is, how many, of what, and how long."""

    mark: str
    kind: str
    number: str
    stock: str
    lengths: tuple[Figure, ...]
    key: str = ''
    """Of its marking sheet."""
    note: str = ''


class BuySize(Struct, frozen=True):
    """What to buy of one size, and what is cut from each board."""

    bought: str
    rows: tuple[tuple[str, str, str, str], ...]


class Lists(Struct, frozen=True):
    """All of them."""

    members: tuple[ListRow, ...]
    boards: tuple[ListRow, ...]
    end_heads: tuple[str, ...]
    ends: tuple[tuple[str, ...], ...]
    """Of boards, those that are not square."""
    of_boards: tuple[str, ...]
    """Sentences under them."""
    studs: tuple[tuple[Stud, str], ...]
    """With the slopes that they stand under."""
    stud_stock: str
    buy: tuple[BuySize, ...]
    buy_heads: tuple[str, ...]
    together: tuple[str, ...]
    checks: tuple[str, ...]
    cautions: tuple[tuple[str, str, str], ...]
    """Who calls for it, what it says, its clause."""
    asked: tuple[str, ...]
    """Lines of the roof file that makes these sheets."""


def lists_of(frame: Frame, buy: Buying, groups: list[tuple[str, Group]]) -> Lists:
    """Return the lists.

    Given:
        groups  what is on each marking sheet, after its key
    """
    joints = (_(JOINTS),) if has_joints(buy) else ()
    return Lists(
        tuple(_member_row(key, one) for key, group in groups for one in group),
        tuple(_boards(frame)),
        tuple(map(_, HEADS)),
        tuple(end_rows(frame.levels)),
        tuple(board_sentences([one.level for one in frame.levels], frame.asked.spacing_in)),
        tuple((one, under(one.slopes)) for one in frame.studs),
        STUD.name,
        tuple(BuySize(bought_words(size), tuple(cut_rows(size))) for size in buy.sizes),
        tuple(map(_, CUT_HEADS)),
        (*joints, *whole_words(buy)),
        tuple(said for _name, said in checks_said(frame)),
        tuple(
            (in_rows(one.marks) or _('roof'), caution_text(one.caution), caution_source(one.caution))
            for one in frame.concerns
        ),
        asked_lines(frame.asked),
    )


def checks_said(frame: Frame) -> Iterator[tuple[str, str]]:
    """Return each check by its name, and what it says."""
    for one in frame.checks:
        figures = {what: in_inches(length) for what, length in one.figures.items()}
        yield one.name, _(CHECKS[one.name]).format(**figures)


def _member_row(key: str, one: Marked) -> ListRow:
    member = one.lead.member
    numbers = [f'{each.count} {_(HANDS[each.hand])}' if each.hand else str(each.count) for each in one.hands]
    return ListRow(
        member.name,
        _(MEMBERS[member.kind]),
        ', '.join(numbers),
        member.stock.name,
        (member.stick, member.overall),
        key,
    )


def _boards(frame: Frame) -> Iterator[ListRow]:
    """Return a row for each mark: several of one are alike."""
    numbers: Counter[str] = Counter()
    for board in frame.levels:
        numbers[board.mark] += board.number
    for board in {one.mark: one for one in frame.levels}.values():
        stock = sold_as(board.thickness_in, board.depth_in).name
        length = length_figure(board.length_in, frame.asked.measure)
        yield ListRow(
            board.mark,
            _(LEVELS[board.level]),
            str(numbers[board.mark]),
            stock,
            (length,),
            note=ridge_end(board.end_cheeks, board.end_tilt),
        )
