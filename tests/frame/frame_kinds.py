"""How a roof lies, whatever its kind."""

from __future__ import annotations

from frame_lays import broken, gabled, hipped, leant
from frame_many_sides import bayed, many_sided
from frame_slopes import Lay
from frame_wings import winged

from tablegen.frame.asked import Asked, Bay, Gable, Gambrel, HalfHip, Hip, ManySided, Saltbox, Shed, Wing

KINDS = {
    Shed: leant, Gable: gabled, Saltbox: gabled, Gambrel: broken, Hip: hipped, HalfHip: hipped, Wing: winged,
    ManySided: many_sided, Bay: bayed,
}  # fmt: skip


def laid_out(asked: Asked) -> Lay:
    """Return how a roof lies."""
    return KINDS[type(asked.kind)](asked)
