"""What find tells a person: short blocks within 80 columns, each saying from where to where it measures."""

from __future__ import annotations

from collections.abc import Sequence
from textwrap import wrap

from layouts.reading_words import exact, group_lines, group_of, measure, pick
from layouts.verbs.columns import LEFT, MIXED, RIGHT, columns
from tablegen.findings import Cut, Finding, Length
from tablegen.readings import Group

FOOT = """\
Lengths run along the member, before anything is taken off for the thickness of
ridge or hip. Rounding is the measure less the exact length, in inches; a half
goes up. Square: its figures on body & tongue at the board's top edge, the line
along the arm named: plumb along the tongue, level along the body; both halved
where the rise is over the tongue's 16 in. Geometry is not strength: local code
and a licensed designer decide."""
DEFERS = 'Geometry is not strength: local code and a licensed designer decide.'


def as_text(found: Finding, groups: dict[str, Group]) -> str:
    """Return what is asked first of a square corner of one pitch.

    Given:
        groups  shortening, seat, tail and caution among them, by key
    """
    more = ', '.join(key.replace('_', '-') for key in groups if key != 'caution')
    blocks = [
        [asked(found)],
        lengths_block(found),
        cuts_block(found),
        deductions_block(groups['shortening']),
        seat_block(groups['seat'], groups['tail']),
        cautions_block(groups['caution']),
        FOOT.split('\n'),
        wrap(f'More: --all, or --show with one or more of {more}.', 80),
    ]
    return joined(blocks)


def listed(head: str, groups: Sequence[Group], caution: Group) -> str:
    """Return whole groups, every value with its line, and the cautions that are called for."""
    blocks = [list(group_lines(group)) for group in groups if group is not caution]
    return joined([[head], *blocks, cautions_block(caution), [DEFERS]])


def joined(blocks: Sequence[Sequence[str]]) -> str:
    """Return blocks of lines with an empty line between them; an empty block leaves nothing."""
    return '\n\n'.join('\n'.join(block) for block in blocks if block) + '\n'


def asked(found: Finding) -> str:
    """Return what was asked, in a line."""
    roof = found.pitch.text
    if found.pitch.rise_in is None:
        roof += f' ({found.rise_per_foot.text} in 12)'
    return f'{roof}, run {found.run.text}, to the nearest {found.part_text} in'


def lengths_block(found: Finding) -> list[str]:
    """Return the lines of the lengths, each saying from where to where it runs."""
    named = [
        ('common, plate line to ridge center', found.common),
        ('hip/valley, plate corner to ridge center', found.hip_valley),
        ('rise, plumb, plate line to ridge center', found.rise),
    ]
    named += [
        (f'jack difference, {jack.spacing.text} on center', jack.difference)
        for jack in found.jack_differences
    ]
    named += [(f'hip drop, plumb, hip {found.hip_thickness.text} thick', found.hip_drop)]
    rows = [(name, told.part.text, told.inches.text, _signed(told)) for name, told in named]
    return columns([('Lengths', 'measure', 'exact in', 'rounding'), *rows], (LEFT, MIXED, RIGHT, RIGHT))


def cuts_block(found: Finding) -> list[str]:
    """Return the lines of the cuts, each group saying from which line on which face it is measured."""
    return columns(
        [
            ('Cuts, from square across the side', 'degrees', 'body & tongue, line'),
            _cut('common, plumb cut', found.plumb_cut),
            _cut('common, level cut', found.level_cut),
            _cut('hip/valley, plumb cut', found.hip_plumb_cut),
            _cut('hip/valley, level cut', found.hip_level_cut),
            ('Cuts, from square across the top face',),
            _cut('jack, cheek', found.jack_cheek),
            _cut('hip, cheek, top not backed', found.hip_cheek),
            ('Bevel, from the square top, seen from the end',),
            ('hip, backing of each side', found.backing_bevel.text, ''),
        ],
        (LEFT, RIGHT, LEFT),
    )


def deductions_block(shortening: Group) -> list[str]:
    """Return what comes off the lengths for the thickness of what is met."""

    def row(name: str, key: str) -> tuple[str, str, str]:
        return name, *(measure(pick(shortening, f'{key}_{way}_in')) for way in ('level', 'along'))

    return columns(
        [
            ('Off, center line of what is met to its face', 'level', 'along the edge'),
            row('common at a ridge', 'common'),
            row('hip/valley at a ridge, ridge over one side', 'hip'),
            row('hip between commons', 'hip_between_commons'),
            row('jack at a hip/valley, on its own center line', 'jack'),
        ],
        (LEFT, MIXED, MIXED),
    )


def seat_block(seat: Group, tail: Group) -> list[str]:
    """Return the bird's mouths and the tails."""

    def row(name: str, *keys: str) -> tuple[str, str, str, str]:
        at = group_of(seat, *keys) if keys else seat
        known = {value.key: value for value in at.values}
        heel = measure(known['heel_in']) if 'heel_in' in known else 'none'
        level = measure(known['seat_in']) if 'seat_in' in known else 'none'
        return name, level, heel, measure(known['height_above_plate_in'])

    stock, out = pick(seat, 'stock').text, pick(tail, 'overhang_in').text
    heads = columns(
        [
            (f"Bird's mouth, {stock}", 'seat level', 'heel plumb', 'height above plate'),
            row('common', *()),
            row('hip, dropped', 'hip_dropped'),
            row('hip, backed', 'hip_backed'),
            row('valley', 'valley'),
        ],
        (LEFT, MIXED, MIXED, MIXED),
    )
    tails = columns(
        [
            (f'Tail, {out} out from the plate, level', 'along the edge'),
            ('common, plate line to tail end', measure(pick(tail, 'common_in'))),
            ('hip/valley, plate corner to tail end', measure(pick(tail, 'hip_in'))),
        ],
        (LEFT, MIXED),
    )
    return heads + tails


def cautions_block(caution: Group) -> list[str]:
    """Return the cautions that are called for, none if there are none."""
    lines = []
    for said in caution.values:
        lines += wrap(f'Caution: {said.text}', 80, subsequent_indent='  ')
    return lines


def two_pitches_text(head: str, corner: Group, caution: Group) -> str:
    """Return what is asked first where two pitches meet."""

    def both(name: str, *keys: str) -> tuple[str, str, str]:
        return name, *(measure(pick(corner, side, *keys)) for side in ('side_a', 'side_b'))

    def hip(name: str, key: str) -> tuple[str, str, str]:
        reading = pick(corner, 'hip', key)
        return name, measure(reading), exact(reading)

    hips = [
        ('Hip or valley', 'measure', 'exact'),
        hip('plan angle, eave A to the hip', 'plan_from_eave_a_deg'),
        hip('plan angle, eave B to the hip', 'plan_from_eave_b_deg'),
        hip('length, plate corner to ridge center', 'length_in'),
        hip('length per foot of run of A', 'per_foot_of_run_a_in'),
        hip('plumb cut, on its side from square', 'plumb_cut_deg'),
    ]
    jacks = [
        both(f'jack difference {at.key.removesuffix("_in").replace("_", " ")} in', 'jack_difference', at.key)
        for at in group_of(corner, 'side_a', 'jack_difference').values
    ]
    sides = [
        ('The sides', 'A', 'B'),
        both('pitch', 'pitch'),
        both('run of the commons, level', 'run_in'),
        *jacks,
        both("jack, saw's line on its side, from square", 'cheek', 'jack', 'saw_deg'),
        both('jack, blade from square', 'cheek', 'jack', 'blade_deg'),
        both('jack, top edge, figure against 12', 'cheek', 'jack', 'figure_against_12_in'),
        both('hip at a ridge over it, figure, square top', 'cheek', 'hip', 'figure_against_12_in'),
        both('hip, off at that ridge, level', 'shortening', 'hip_level_in'),
        both('jack, off at the hip, level', 'shortening', 'jack_level_in'),
        both('backing, from the square top', 'backing', 'bevel_deg'),
        both('drop, plumb', 'drop', 'plumb_in'),
        (
            'overhang, for eaves that meet',
            *(measure(pick(corner, 'eaves', f'overhang_{s}_in')) for s in 'ab'),
        ),
    ]
    slide = corner, 'slide'
    aside = f'Or slide the hip {pick(*slide, "aside_in").text} {pick(*slide, "way").text}, then drop it'
    return joined(
        [
            [head],
            columns(hips, (LEFT, MIXED, RIGHT)),
            columns(sides, (LEFT, MIXED, MIXED)),
            wrap(f'{aside} {pick(*slide, "drop_plumb_in").text}.', 80),
            cautions_block(caution),
            [DEFERS, 'More: --all.'],
        ]
    )


def many_sides_text(head: str, roof: Group, caution: Group) -> str:
    """Return what is asked first of a many-sided roof."""

    def row(name: str, *keys: str) -> tuple[str, str, str]:
        reading = pick(roof, *keys)
        return name, measure(reading), exact(reading)

    jacks = [
        row(f'jack difference {at.key.removesuffix("_in").replace("_", " ")} in', 'jack_difference', at.key)
        for at in group_of(roof, 'jack_difference').values
    ]
    rows = [
        ('Plan and lengths', 'measure', 'exact'),
        row('side of the plates, corner to corner', 'side_in'),
        row('middle of the plan to a corner', 'middle_to_corner_in'),
        row('cut of the plates’ ends, from square', 'plate_miter_deg'),
        row('hip, plate corner to the axis', 'hip', 'length_in'),
        row('hip per foot of run', 'hip', 'per_foot_of_apothem_in'),
        *jacks,
        ('Cuts',),
        row('hip, plumb cut, on its side from square', 'hip', 'plumb_cut_deg'),
        row("jack, saw's line on its side, from square", 'cheek', 'jack', 'saw_deg'),
        row('jack, blade from square', 'cheek', 'jack', 'blade_deg'),
        row('jack, top edge, figure against 12', 'cheek', 'jack', 'figure_against_12_in'),
        row('hip at the peak, blade, both cheeks', 'cheek', 'hip_at_peak', 'blade_deg'),
        row('hip at the peak, figure, square top', 'cheek', 'hip_at_peak', 'figure_against_12_in'),
        row('smallest center post, across flats', 'peak', 'least_post_across_flats_in'),
        row('backing, from the square top', 'backing', 'bevel_deg'),
        row('drop, plumb', 'drop', 'plumb_in'),
    ]
    past = ' Past a saw’s scale: cut from a squared end, see --all.'
    within = pick(roof, 'cheek', 'jack', 'within_saw_scale').data
    return joined(
        [
            [head],
            columns(rows, (LEFT, MIXED, RIGHT)),
            wrap(f'Inches and degrees; blades from square, shoe on the side.{"" if within else past}', 80),
            cautions_block(caution),
            [DEFERS, 'More: --all.'],
        ]
    )


def _signed(told: Length) -> str:
    """Return what rounding has added, with its sign; a length that lost nothing says so."""
    if not told.left.count:
        return 'none'
    return f'+{told.left.text}' if told.left.count > 0 else told.left.text


def _cut(name: str, cut: Cut) -> tuple[str, str, str]:
    return name, cut.degrees.text, cut.held
