"""The worked examples: one building, from its common rafter to its hip, jacks and valley and a shed's, and two more roofs, for the book's settings."""

from tablegen.examples.building import Building, nearest_pitch, store_and_porch
from tablegen.examples.hips import whole_hip, whole_valley
from tablegen.examples.jacks import hip_jacks
from tablegen.examples.one_rafter import one_rafter
from tablegen.examples.rafters import common_rafter, ledger_rafter
from tablegen.examples.two_slopes import gambrel_rafters, saltbox_rafters

__all__ = [
    'Building',
    'common_rafter',
    'gambrel_rafters',
    'hip_jacks',
    'ledger_rafter',
    'nearest_pitch',
    'one_rafter',
    'saltbox_rafters',
    'store_and_porch',
    'whole_hip',
    'whole_valley',
]
