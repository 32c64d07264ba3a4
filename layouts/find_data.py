"""What find tells a program: one JSON object, every measured number a decimal string."""

from __future__ import annotations

import json
from collections.abc import Sequence

from tablegen import findings
from tablegen.findings import Finding, Length
from tablegen.readings import Group, as_data


def as_json(found: Finding, regular: bool, groups: Sequence[Group]) -> str:
    """Return a finding as JSON.

    Given:
        regular  whether it is a square corner of one pitch; if not, what holds for such a corner only is left out
        groups   named objects that follow
    """
    told = {
        'pitch': found.pitch.text,
        'rise_per_foot': findings.plain(found.rise_per_foot),
        'run': {'inches': findings.plain(found.run.inches), 'text': found.run.text},
        'nearest': found.part_text,
        'lengths': _lengths(found, regular),
        'degrees': _degrees(found, regular),
    }
    return (
        json.dumps(told | {group.key: as_data(group) for group in groups}, indent=2, ensure_ascii=False)
        + '\n'
    )


def _lengths(found: Finding, regular: bool) -> dict:
    """Return the lengths in inches, in decimals and as text."""
    plain = {'rise': _length(found.rise), 'common': _length(found.common)}
    jacks = {jack.spacing.text: _length(jack.difference) for jack in found.jack_differences}
    return plain | ({'hip_valley': _length(found.hip_valley), 'jack_difference': jacks} if regular else {})


def _length(told: Length) -> dict:
    return {'inches': findings.plain(told.inches), 'text': told.part.text}


def _degrees(found: Finding, regular: bool) -> dict:
    cuts = {'plumb_cut': found.plumb_cut.degrees, 'level_cut': found.level_cut.degrees}
    if regular:
        cuts |= {
            'hip_plumb_cut': found.hip_plumb_cut.degrees,
            'hip_level_cut': found.hip_level_cut.degrees,
            'jack_cheek_from_square': found.jack_cheek.degrees,
            'hip_cheek_from_square': found.hip_cheek.degrees,
            'backing_bevel': found.backing_bevel,
        }
    return {name: findings.plain(figure) for name, figure in cuts.items()}
