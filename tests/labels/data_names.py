"""The names of figures in the data files of the reference tables, column by column of the printed ones.

A figure is told twice, NAME_inches, NAME_degrees or NAME exactly and NAME_text as printed: a name here ends in what it is told
in, * being inches; {} stands for what the printed head names.
"""

import re

from labels.expected import Labels

STUBS = {
    'A B': ('a', 'b'),
    'sides': ('sides',),
    'ft': ('length_ft',),
    'leg': ('leg_*',),
    'in 12': ('pitch',),
    'thickness': ('thickness_*',),
    'ridge': ('ridge_*',),
    'degrees': ('degrees',),
}
"""Names of what a row is called by, from the head of its labels."""
TRIANGLES = ('short', 'long', 'diagonal')
ALL = {
    'diagonals-1': 'diagonal_width_{}_ft_*',
    'diagonals-2': 'diagonal_width_{}_ft_*',
    'diagonals-3': 'diagonal_width_{}_ft_*',
    'rafters-needed': 'rafters_{}_in',
    'ridge-ends': 'end_common_with_hip_{}_in_*',
    'shortening-common': 'off_along_edge_{}_in_*',
    'shortening-hip': 'off_along_edge_{}_in_*',
    'shortening-jack': 'off_along_edge_{}_in_*',
    'ridge-sits-down': 'sits_down_{}_in_*',
    'tail-common': 'tail_overhang_{}_in_*',
    'tail-hip': 'tail_overhang_{}_in_*',
    'tail-fall': 'fall_overhang_{}_in_*',
    'tail-plumb-cut': 'plumb_cut_{}_*',
    'tail-square-cut': 'lower_corner_set_in_{}_*',
    'drop-plumb': 'drop_{}_in_*',
    'drop-square': 'drop_{}_in_*',
    'set-backs': 'set_back_{}_in_*',
    'old-rule': 'low_{}_*',
    'longest-seat-quarter': 'seat_{}_*',
    'longest-seat-third': 'seat_{}_*',
}
"""Tables whose columns are alike."""
OF_SIDES = (
    'hip_per_foot_inches hip_plumb_cut_degrees jack_difference_* jack_12_and_* peak_12_and_* backing_bevel_degrees '
    'drop_plumb_*'
)
SIZES = ('2x4', '2x6', '2x8', '2x10', '2x12')
SEATS = ('1-1-2', '3-1-2', '5-1-2')
HIP_SEATS = 'dropped_height_* dropped_heel_* dropped_seat_* backed_height_* backed_heel_* backed_seat_*'
VALLEY_SEATS = 'plumb_depth_* height_* heel_* seat_* heel_out_*'
EACH = {
    **{f'height-{seat}': ' '.join(['heel_*', *(f'height_{size}_*' for size in SIZES)]) for seat in SEATS},
    **{f'stock-left-{seat}': ' '.join(['notch_*', *(f'left_{size}_*' for size in SIZES)]) for seat in SEATS},
    'hip-seat-2x10-with-2x8': HIP_SEATS,
    'valley-seat-2x12-with-2x8': VALLEY_SEATS,
    **{f'hip-seat-{size}': HIP_SEATS for size in SIZES[1:]},
    **{f'valley-seat-{size}': VALLEY_SEATS for size in SIZES[1:]},
    'whole-triangles': 'times_2 times_3 times_4 times_5',
    'braces': 'equal_legs_* ' + ' '.join(f'other_leg_{leg}_in_*' for leg in (12, 18, 24, 30, 36, 48))
    + ' ' + ' '.join(f'cut_other_leg_{leg}_in_degrees' for leg in (12, 18, 24, 30, 36, 48)),
    'shortening-level': 'common_* shed_on_ledger_* hip_or_jack_* end_common_*',
    'hips': 'plumb_cut_degrees level_cut_degrees per_foot_inches backing_bevel_degrees drop_plumb_* drop_square_to_edge_*',
    'jacks': 'difference_12_in_* difference_16_in_* difference_19_2_in_* difference_24_in_* off_at_hip_or_valley_* '
    'off_at_ridge_* short_to_long_point_*',
    'cheeks': 'jack_side_degrees jack_top_degrees jack_top_12_and_* hip_side_degrees hip_top_degrees hip_top_12_and_*',
    'backed-cheeks': 'at_ridge_top_degrees at_ridge_top_12_and_* at_common_top_degrees at_common_top_12_and_*',
    'trim': 'square_to_slope_miter_degrees square_to_slope_bevel_degrees in_roof_plane_miter_degrees '
    'in_roof_plane_bevel_degrees sheathing_from_eave_degrees sheathing_up_for_12_along_*',
    'gable-and-area': 'stud_difference_12_in_* stud_difference_16_in_* stud_difference_19_2_in_* stud_difference_24_in_* '
    'top_cut_degrees area_factor area_over_100_of_plan',
    'unequal-hips': 'plan_from_eave_a_degrees per_foot_of_run_a_inches plumb_cut_degrees jack_difference_a_* '
    'jack_difference_b_*',
    'unequal-cheeks': 'jack_a_blade_degrees jack_b_blade_degrees jack_a_reach_* hip_b_reach_* jack_a_12_and_* jack_b_12_and_* '
    'hip_a_12_and_* hip_b_12_and_*',
    'unequal-fit': 'backing_a_degrees backing_b_degrees drop_a_* drop_b_* gap_a_* overhang_b_*',
    'unequal-slide': 'slide_* drop_once_slid_* jacks_a_shorter_level_* jacks_a_shorter_along_* jacks_b_longer_level_* '
    'jacks_b_longer_along_* hip_longer_at_ridge_a_*',
    'unequal-shortening': 'hip_at_ridge_a_* hip_at_ridge_b_* hip_between_commons_* point_aside_to_b_* jack_a_* jack_b_*',
    'unequal-points': 'jack_a_short_to_long_point_* jack_b_short_to_long_point_* hip_a_set_back_* hip_b_set_back_*',
    'sides': 'corner_degrees plate_miter_degrees side_inches apothem_inches hip_run_inches',
    'sides-jacks': 'blade_degrees off_level_* short_to_long_point_level_* reach_*',
    'sides-peak': 'blade_degrees set_back_level_* reach_* least_post_*',
    **{f'{sides}-sides': OF_SIDES for sides in (5, 6, 8, 10, 12)},
    'degrees-to-pitch': 'rise_inches rise_part_* half_rise_inches',
    'pitch-to-degrees': 'slope_degrees slope_per_foot_inches gap_on_level_24_in_* gap_on_level_48_in_*',
}  # fmt: skip
"""Tables whose columns each have a name of their own, in the order of the printed heads."""


def names_of(wanted: Labels) -> tuple[str, ...]:
    """Return the names of a table's columns in a data file, its labels' own and its marks' not among them."""
    if wanted.key in ALL:
        return tuple(ALL[wanted.key].format(slug(column.head)) for column in wanted.columns)
    return tuple(EACH[wanted.key].split())


def marks_of(wanted: Labels, head: str) -> dict[str, str] | None:
    """Return the marks that may stand beside the figures under a head, by their name in data; None where none may."""
    deep, thin = {'†': 'past_a_quarter', '‡': 'past_a_third'}, {'§': 'thin'}
    if wanted.key.startswith(('longest', 'tail-plumb', 'tail-square')):
        return thin
    of_sizes = wanted.key.startswith(('height', 'stock-left')) and '×' in head
    of_seats = wanted.key.startswith(('hip-seat', 'valley-seat')) and head.endswith('seat')
    return deep | thin if of_sizes or of_seats else None


def stubs_of(wanted: Labels) -> tuple[str, ...]:
    """Return the names of what rows are called by."""
    return TRIANGLES if wanted.key == 'whole-triangles' else STUBS[wanted.corner]


def stub_heads(wanted: Labels) -> tuple[str, ...]:
    """Return the heads of what rows are called by, in the list of tables."""
    heads = {'A B': ('A', 'B')}
    return TRIANGLES if wanted.key == 'whole-triangles' else heads.get(wanted.corner, (wanted.corner,))


def slug(head: str) -> str:
    return re.sub(r'[^a-z0-9]+', '_', head.lower().replace('×', 'x')).strip('_')
