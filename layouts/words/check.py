"""The words of what cannot be checked, and of where a tape's own tolerance is from."""

from __future__ import annotations

from layouts.words.say import N_

MESSAGES = {
    'check.no_side': N_('a side of 0 makes no corner'),
    'check.two_sides': N_('two lengths above 0'),
    'check.cannot_join': N_('{across} cannot join sides of {side} and {other}'),
    'check.wide_gap': N_('{gap} is not below the distance it is measured at, {over}'),
    'check.small_gap': N_('a gap far below the distance'),
    'check.nothing_to_check': N_('a length of 0 cannot be checked'),
    'check.short_total_run': N_('{total} is shorter than the run that was read'),
    'check.nothing_to_step': N_('a length of 0 cannot be stepped'),
    'check.past_tape_table': N_('{length} is past the end of the table of tape tolerances'),
    'check.leave_out_tape': N_('leave out --tape'),
    'check.tape_source': N_('NIST Handbook 44, section 5.52 Linear Measures: metal tapes'),
}
