"""A frame's members, level boards and studs as pieces to buy, and its roof as an area to sheathe."""

from __future__ import annotations

from collections import Counter

from tablegen.frame.area import area_in2
from tablegen.frame.buying import Buying, Piece, Shop, buying, sheathing_for
from tablegen.frame.frame import Frame
from tablegen.frame.gable_ends import STUD
from tablegen.frame.joints import joints_of
from tablegen.frame.lumber import sold_as
from tablegen.frame.plan import Level
from tablegen.roof.member import inches_of

SHORT = (Level.LOOKOUT,)
"""Level boards that are made of one piece: they stand out over what holds them."""


def to_buy(frame: Frame) -> Buying:
    """Return what to buy for a frame.

    Errors:
        SettingsFaults naming every member that is longer than the boards that can be bought
    """
    asked = frame.asked
    area = area_in2(frame.plan, asked.gable_overhang_in)
    shop = Shop(asked.lengths_in, asked.kerf_in, asked.measure)
    return buying(pieces_of(frame), shop, sheathing_for(area, asked.sheathing_allowance))


def pieces_of(frame: Frame) -> list[Piece]:
    """Return the pieces that a frame is cut from, members alike as one; both hands of a pair are cut from boards alike."""
    members: dict[str, Piece] = {}
    counts: Counter[str] = Counter()
    for framed in frame.members:
        member = framed.member
        counts[member.name] += framed.count
        members[member.name] = Piece(member.name, member.stock, inches_of(member.stick), counts[member.name])
    levels = [
        Piece(
            board.mark,
            sold_as(board.thickness_in, board.depth_in),
            board.length_in,
            board.number,
            may_be_joined=board.level not in SHORT,
            joints_in=joints_of(board, frame.plan),
        )
        for board in frame.levels
    ]
    studs = [Piece(stud.mark, STUD, inches_of(stud.long), stud.count) for stud in frame.studs]
    return [*members.values(), *levels, *studs]
