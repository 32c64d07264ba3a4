"""The whole frame of one roof: its plan, every member by its mark, its level boards and studs, heights, checks, cautions."""

from __future__ import annotations

from collections.abc import Callable

from msgspec import Struct

from tablegen.frame.asked import (
    Asked,
    Bay,
    Gable,
    Gambrel,
    HalfHip,
    Hip,
    ManySided,
    Saltbox,
    Shed,
    Wing,
)
from tablegen.frame.checks import Check, checks_of
from tablegen.frame.concerns import Concern, concerns_of
from tablegen.frame.eaves import fascias
from tablegen.frame.framed import Framed, framed_members
from tablegen.frame.gable_ends import Stud, lookouts, studs_of
from tablegen.frame.gables import gable, gambrel, ledgers, shed
from tablegen.frame.heights import Heights, heights_of
from tablegen.frame.hips import half_hipped, hipped
from tablegen.frame.many_sided import bay, rounded
from tablegen.frame.plan import LevelBoard, Plan
from tablegen.frame.square_tails import check_tails
from tablegen.frame.wings import winged

PLANS: dict[type, Callable[[Asked], Plan]] = {
    Shed: shed,
    Gable: gable,
    Saltbox: gable,
    Gambrel: gambrel,
    Hip: hipped,
    HalfHip: half_hipped,
    Wing: winged,
    ManySided: rounded,
    Bay: bay,
}


class Frame(Struct, frozen=True):
    """One whole roof."""

    asked: Asked
    plan: Plan
    members: tuple[Framed, ...]
    """By kind, then from the shortest."""
    levels: tuple[LevelBoard, ...]
    """Ridges and purlins, fascias, lookouts."""
    studs: tuple[Stud, ...]
    """Of its gables."""
    heights: Heights
    checks: tuple[Check, ...]
    concerns: tuple[Concern, ...]


def frame(asked: Asked) -> Frame:
    """Return the frame of a roof.

    Errors:
        BookError for sizes that no such roof has
    """
    plan = PLANS[type(asked.kind)](asked)
    members, heights = tuple(framed_members(asked, plan)), heights_of(asked, plan)
    check_tails(members, asked.measure)
    return Frame(
        asked,
        plan,
        members,
        (*plan.levels, *ledgers(asked), *fascias(asked, plan), *lookouts(asked, plan)),
        studs_of(asked, plan),
        heights,
        tuple(checks_of(asked, plan, heights.ridge_top)),
        concerns_of(asked, plan, members),
    )
