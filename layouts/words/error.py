"""Errors in words: a line each, and the sentences of what no roof can be."""

from __future__ import annotations

from layouts.words.say import N_, _, said
from tablegen.errors import BookError, SettingsFaults

LONGEST_PROBLEM = 200
"""Characters; a longer problem keeps its two ends, so that a fault stays a line."""
MESSAGES = {
    'error.did_you_mean': N_('did you mean {word}?'),
    'error.faults': N_('{count} faults'),
    'error.above_zero': N_('above 0'),
    'error.below_zero': N_('is below zero'),
    'error.up_to': N_('up to {most}'),
    'error.above_zero_to': N_('above 0 and up to {most}'),
    'error.above_zero_below': N_('above 0 and below {below}'),
    'error.or_more': N_('{least} or more'),
    'error.between': N_('between {least} and {most}'),
    'error.from_to': N_('{least} to {most}'),
    'error.unknown': N_('{value} is unknown'),
    'error.measures_nothing': N_('{length} measures nothing'),
    'error.measure_again': N_('measure again'),
    'error.leans_back': N_('the hip leans back: the flatter plane never rises to meet the steeper one'),
    'error.closer_pitches': N_('pitches closer to each other, or a corner nearer to square'),
    'error.no_longer_than_run': N_('{length} is no longer than its run'),
    'error.more_than_run': N_('more than the run'),
    'error.no_longer_than_rise': N_('{length} is no longer than its rise'),
    'error.more_than_rise': N_('more than the rise'),
    'error.no_slope': N_('{degrees} is no slope'),
    'error.no_many_sided_roof': N_('{sides} sides make no roof'),
    'error.seat_without_length': N_('a seat needs a length'),
    'error.notch_through_stock': N_('its notch is {notch} in deep and the stock {depth} in'),
    'error.longest_seat': N_('a seat of {seat} in leaves half of the stock'),
    'error.side_without_length': N_('a side needs a length'),
    'error.tail_longer_than_run': N_('{overhang} in is more than the run, {run} in: such a tail cannot be'),
    'error.no_corner': N_('{degrees} degrees is no corner'),
    'error.no_square_corners': N_('is for a hip roof with square corners'),
    'error.leave_it_or_the_corner_out': N_('leave it or the angle of the corner out'),
    'error.inches_or_more': N_('{least} in or more'),
    'error.hips_meet': N_('{length} in is less than twice the run of the ends: the hips meet before it'),
    'error.thick_ledger': N_('it is as thick as the run is long'),
    'error.less_than_the_run': N_('less than the run'),
    'error.up_to_the_run': N_('from 0 up to the run'),
}


def error_line(fault: BookError) -> str:
    """Return an error in one line: place, problem, what is allowed, next step."""
    place, problem, allowed, next_step = (str(said(part)) for part in fault.args)
    if len(problem) > LONGEST_PROBLEM:
        problem = f'{problem[: LONGEST_PROBLEM // 2]} … {problem[-LONGEST_PROBLEM // 4 :]}'
    parts = [
        f'{place}: {problem}' if place else problem,
        _('allowed: {words}').format(words=allowed) if allowed else '',
        _('next: {words}').format(words=next_step) if next_step else '',
    ]
    return _one_line('; '.join(part for part in parts if part))


def error_lines(fault: BookError) -> list[str]:
    """Return the lines to print, one a fault, each beginning with the file if several are told of one."""
    before = _one_line(f'{fault.source}: ') if isinstance(fault, SettingsFaults) and fault.source else ''
    return [f'{before}{error_line(one)}' for one in fault.each()]


def _one_line(words: str) -> str:
    """Return words with what cannot be printed on a line (a newline, a stray byte) written as an escape."""
    return ''.join(
        letter if letter.isprintable() else letter.encode('unicode_escape').decode() for letter in words
    )
