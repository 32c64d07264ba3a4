"""The words of the pages of a pitch's tables: what stands over each on a left and on a right page, and below it."""

from __future__ import annotations

from layouts.words.say import N_, _

Side = tuple[str, str]
"""Title of a page, and the line below it."""
SMALL_RUNS = (N_('Small runs, {lengths}'), N_('add these to a run of the list'))
LIST = (N_('By common run, {lengths}'), N_('along the top edge; take deductions level'))
JACKS = (N_('Jacks, from the corner'), N_('{lengths}, top edge, from the plate line'))
OVER: dict[str, tuple[Side, Side]] = {
    'common': (
        (N_('Common rafter, {lengths}'), N_('top edge, plate line to ridge center line')),
        (N_('Common rafter, plumb cut {plumb_cut}'), N_('along the top edge; take deductions level')),
    ),
    'hip-valley': (
        (N_('Hip or valley, {lengths}'), N_('by COMMON run; top edge, corner to ridge center')),
        (N_('Hip or valley, plumb cut {hip_plumb_cut}'), N_('by COMMON run; take deductions level')),
    ),
    'rise': (
        (N_('Rise, {lengths}'), N_('plumb, plate line to ridge center line')),
        (N_('Rise, {rise_per_foot} in per foot of run'), N_('plumb, plate line to ridge center line')),
    ),
    'list': (LIST, LIST),
    'small-runs': (SMALL_RUNS, SMALL_RUNS),
    'jacks': (JACKS, JACKS),
}
"""What stands over each table, on a left and on a right page."""
BELOW = {
    'list': N_(
        'To the ridge center line: common from the plate line, hip or valley from the corner of the plates, each along '
        'its top edge; rise plumb.'
    ),
    'jacks': N_(
        'Line: to the hip’s center line, nothing off. Points: cut for a hip {hip}, jacks {rafter} in thick.'
    ),
    'jacks-right': N_(
        'Long point of a hip jack: on the side away from the corner; of a valley jack: towards it. Valley jacks: number '
        'and length from the ridge.'
    ),
}
"""Small print below a table."""
JACK_HEADS = {
    'line': N_('line'),
    'long_point': N_('long'),
    'short_point': N_('short'),
}
"""Heads of a jack's three lengths."""
FOOT, RUN, JACK = N_('ft'), N_('run'), N_('jack')
"""Heads of the labels: feet of run, runs, numbers of jacks."""
INCHES = N_('{number} in')
"""A number of inches as a head."""


def over(table: str, **values: str) -> dict[str, Side]:
    """Return what stands over a table by the side of the page, its values in place."""
    sides = zip(('left', 'right'), OVER[table], strict=True)
    return {side: (_(title).format(**values), _(line).format(**values)) for side, (title, line) in sides}


def below(table: str, **values: str) -> str:
    """Return what stands below a table, '' for nothing."""
    return _(BELOW[table]).format(**values) if table in BELOW else ''
