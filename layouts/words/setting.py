"""The words of what is wrong in a settings file, or in an option that stands for one of its keys."""

from __future__ import annotations

from layouts.words.say import N_

MESSAGES = {
    'setting.see_keys': N_('rafterbook settings prints every key'),
    'setting.unknown_key': N_('unknown key'),
    'setting.given_twice': N_('is given twice, as a key of its own and in a table'),
    'setting.leave_one_out': N_('leave one of the two out'),
    'setting.no_part': N_("'{written}' is not a part of an inch that a tape shows"),
    'setting.no_name': N_('{value} cannot stand on a cover'),
    'setting.one_line': N_('one line of up to {most} letters'),
    'setting.no_language': N_('{value} is no language'),
    'setting.a_language': N_("its short name, such as 'en' or 'pt_BR'"),
    'setting.no_list': N_('{value} is no list'),
    'setting.a_list': N_('a list in square brackets with at least one item'),
    'setting.out_of_range': N_("'{written}' is out of range"),
    'setting.too_many_spacings': N_('{count} spacings are too many'),
    'setting.neither': N_('{value} is neither'),
    'setting.from_up': N_('from {least} up'),
    'setting.no_step': N_('a step of 0 gets nowhere'),
    'setting.below_smallest_part': N_('{step} is below the smallest part'),
    'setting.too_many_runs': N_('{count:,} runs are too many'),
    'setting.up_to_runs': N_('up to {most:,}'),
    'setting.longer_step': N_('take a longer step'),
    'setting.no_run': N_('a run of 0 has no rafter'),
    'setting.runs_backwards': N_('the runs go backwards, from {first} to {last}'),
}
