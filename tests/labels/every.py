"""All reference tables that the skewed book should print, in the order of the work."""

from __future__ import annotations

from labels.expected import Labels
from labels.hips_to_gables import cheeks, hips, jacks, trim_and_gables
from labels.other_roofs import finding_a_pitch, many_sides, setting_out_tables, two_pitches
from labels.ridge_to_tail import ridge, tail
from labels.seats import seat

EXPECTED: tuple[Labels, ...] = (
    *setting_out_tables(),
    *ridge(),
    *seat(),
    *tail(),
    *hips(),
    *jacks(),
    *cheeks(),
    *trim_and_gables(),
    *two_pitches(),
    *many_sides(),
    *finding_a_pitch(),
)
