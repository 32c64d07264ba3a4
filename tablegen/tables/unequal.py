"""Two pitches meeting at a square corner, for chosen pairs: the flatter side is A."""

from __future__ import annotations

from tablegen.geometry import backing, cheeks, corner
from tablegen.messages import message
from tablegen.numbers.figure import UP
from tablegen.numbers.units import INCHES
from tablegen.settings import Settings
from tablegen.tables.columns import Make
from tablegen.tables.pairs import Pair, pair_table
from tablegen.tables.table import Table

OVERHANG_A_IN = INCHES.unit_run
"""The overhang of side A that eaves are told for."""


def listed(settings: Settings) -> list[Table[Pair]]:
    """Return the tables of hips between two pitches, of their cheeks, and of how they fit the planes."""
    return [_hips(settings), _cheeks(settings), _fit(settings)]


def _hips(settings: Settings) -> Table[Pair]:
    make, spacing = Make[Pair](settings), INCHES.spacing
    jacks = message('datum.jacks_of_both', spacing=spacing)
    columns = (
        make.degrees('plan_from_eave_a', lambda it: it.at.plan_a, 'plan_from_eave_a'),
        make.decimal(
            'per_foot_of_run_a', lambda it: corner.hip_length(INCHES.unit_run, it.at), 'per_foot_of_run_a'
        ),
        make.degrees('plumb_cut', lambda it: corner.hip_angle(it.at), 'plumb_cut_of_hip'),
        make.length('jack_difference_a', lambda it: corner.jack_difference(spacing, it.at), jacks),
        make.length('jack_difference_b', lambda it: corner.jack_difference(spacing, it.back), jacks),
    )
    return pair_table('unequal-hips', columns, settings)


def _cheeks(settings: Settings) -> Table[Pair]:
    """Return cheeks of jacks of A and B, and of a hip with its top left square.

    hip_a is against a ridge over A, A's fascia, or a common of B; hip_b against a ridge over B, B's fascia, or a
    common of A. Their blades change over: hip_a has that of B's jacks, hip_b that of A's.
    """
    make, rafter, hip = Make[Pair](settings), settings.rafter_thickness, settings.hip_thickness
    columns = (
        make.degrees('jack_a_blade', lambda it: cheeks.jack(it.at).blade),
        make.degrees('jack_b_blade', lambda it: cheeks.jack(it.back).blade),
        make.length('jack_a_reach', lambda it: cheeks.jack(it.at).reach(rafter), way=UP),
        make.length('hip_b_reach', lambda it: cheeks.hip_at_ridge(it.back).reach(hip), way=UP),
        make.length('jack_a_12_and', lambda it: cheeks.jack(it.at).figure()),
        make.length('jack_b_12_and', lambda it: cheeks.jack(it.back).figure()),
        make.length('hip_a_12_and', lambda it: cheeks.hip_at_ridge(it.at).figure()),
        make.length('hip_b_12_and', lambda it: cheeks.hip_at_ridge(it.back).figure()),
    )
    return pair_table('unequal-cheeks', columns, settings, 'unequal_cheeks', rafter=rafter, hip=hip)


def _fit(settings: Settings) -> Table[Pair]:
    make, hip = Make[Pair](settings), settings.hip_thickness
    eave = message('datum.overhang_b', overhang=OVERHANG_A_IN)
    columns = (
        make.degrees('backing_a', lambda it: backing.bevel(it.at), 'backing_of_both'),
        make.degrees('backing_b', lambda it: backing.bevel(it.back), 'backing_of_both'),
        make.length('drop_a', lambda it: backing.drop_plumb(hip, it.at), 'drops_plumb'),
        make.length('drop_b', lambda it: backing.drop_plumb(hip, it.back), 'drops_plumb'),
        make.length('gap_a', lambda it: backing.gap_when_dropped(hip, it.at), 'gap_a'),
        make.length('overhang_b', lambda it: corner.run_b(OVERHANG_A_IN, it.at), eave),
    )
    return pair_table('unequal-fit', columns, settings, hip=hip)
