"""Cheek cuts of regular corners, read on the side, on the top and on the square; where each side's cut starts."""

from __future__ import annotations

from fractions import Fraction

from tablegen.geometry import cheeks, shortening
from tablegen.geometry.pitch import Pitch
from tablegen.messages import message
from tablegen.numbers.exact import Exact
from tablegen.settings import Settings
from tablegen.tables.columns import THICKNESSES_IN, Make, by_pitch, each
from tablegen.tables.table import Table


def listed(settings: Settings) -> list[Table[Pitch]]:
    """Return the tables of this group."""
    make = Make[Pitch](settings)
    against_12 = cheeks.figure_against_12
    jacks_and_hips = (
        make.degrees('jack_side', lambda it: cheeks.jack(it.corner).saw, 'cheek_on_side'),
        make.degrees('jack_top', lambda it: cheeks.jack(it.corner).top, 'cheek_on_top'),
        make.length('jack_top_12_and', lambda it: cheeks.jack(it.corner).figure(), 'cheek_12'),
        make.degrees('hip_side', lambda it: cheeks.hip_at_ridge(it.corner).saw, 'cheek_on_side'),
        make.degrees('hip_top', lambda it: cheeks.hip_at_ridge(it.corner).top, 'cheek_on_top'),
        make.length('hip_top_12_and', lambda it: cheeks.hip_at_ridge(it.corner).figure(), 'cheek_12'),
    )
    backed = (
        make.degrees('at_ridge_top', lambda it: cheeks.backed_at_ridge(it.corner), 'backed_on_top'),
        make.length(
            'at_ridge_top_12_and', lambda it: against_12(cheeks.backed_at_ridge(it.corner)), 'backed_12'
        ),
        make.degrees('at_common_top', lambda it: cheeks.backed_at_common(it.corner), 'backed_on_top'),
        make.length(
            'at_common_top_12_and', lambda it: against_12(cheeks.backed_at_common(it.corner)), 'backed_12'
        ),
    )
    backs = each(make.length, 'set_back', THICKNESSES_IN, _set_back)
    note, span = message('note.set_backs'), 'thickness_of_hip_itself'
    return [
        by_pitch(settings, 'cheeks', 'cheeks', jacks_and_hips),
        by_pitch(settings, 'cheeks', 'backed-cheeks', backed, message('note.backed_cheeks')),
        by_pitch(settings, 'cheeks', 'set-backs', backs, note, datum='set_back', span=span),
    ]


def _set_back(it: Pitch, hip_in: Fraction) -> Exact:
    """Return how far from the center line's mark a hip's or valley's side is cut: half of its short to long point."""
    return shortening.along(shortening.set_back_at_ridge(hip_in, it.corner), it.corner.hip_slope)
