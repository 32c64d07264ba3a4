"""What find tells a person: short blocks within 80 columns, each saying from where to where it measures."""

from __future__ import annotations

from collections.abc import Sequence
from textwrap import wrap

from layouts.told.columns import LEFT, MIXED, RIGHT, columns
from layouts.told.reading_words import group_lines, group_of, measure, measured, pick, rows_of
from layouts.words.caution import called_text
from tablegen.numbers import text
from tablegen.numbers.figure import decimal_figure
from tablegen.roof.called import Called
from tablegen.roof.question import RoofQuestion
from tablegen.roof.readings import READ_PLACES, Group, Reading, rounding, set_length

LENGTHS_RUN = (
    'Lengths run along the top edge. Off: what comes off them, along, or off the run, level. Rounded: the measure less '
    'the exact length, in inches; a half goes up.'
)
CHEEKS_ARE = (
    'Cheeks: on top, degrees from the line square across it, and the square held body & tongue, marked along the body; on '
    'the side, '
    'the plumb cut from square across, and the tilt of the blade from square.'
)
DEFERS = 'Geometry is not strength: local code and a licensed designer decide.'
Found = dict[str, Group]


def listed(head: str, groups: Sequence[Group], caution: Sequence[Called]) -> str:
    """Return whole groups, every value with its line, and the cautions that are called for."""
    return joined(
        [[head], *(list(group_lines(group)) for group in groups), cautions_block(caution), [DEFERS]]
    )


def joined(blocks: Sequence[Sequence[str]]) -> str:
    """Return blocks of lines with an empty line between them; an empty block leaves nothing."""
    return '\n\n'.join('\n'.join(block) for block in blocks if block) + '\n'


def asked(ask: RoofQuestion) -> str:
    """Return what was asked, in a line."""
    roof = ask.pitch.text
    if ask.pitch.rise_in is None:
        roof += f' ({decimal_figure(ask.pitch.rise, READ_PLACES).text} in 12)'
    run = set_length('run', ask.run_in, text.run(ask.run_in)).text
    return f'{roof}, run {run}, to the nearest {text.mixed(1, ask.measure.per)} in'


def regular_text(
    head: str, ask: RoofQuestion, found: Found, caution: Sequence[Called], names: Sequence[str]
) -> str:
    """Return what is asked first of a roof with regular corners.

    Given:
        found  the groups that it is told from, by key
        names  groups that --show can name
    """
    blocks = [
        [head],
        lengths_block(
            ask,
            (
                ('common, plate line to ridge center', pick(found['length'], 'common_in')),
                ('hip/valley, plate corner to ridge center', pick(found['length'], 'hip_valley_in')),
                ('rise, plumb, plate line to ridge center', pick(found['length'], 'rise_in')),
                *differences(found['jack']),
            ),
        ),
        cuts_block(found['cut'], found['square'], (('common, jack', 'common'), ('hip/valley', 'hip_valley'))),
        cheeks_block(
            (
                ('jack at a hip/valley', group_of(found['cheek'], 'jack')),
                ('hip/valley, every cheek', group_of(found['cheek'], 'hip_at_ridge')),
            )
        ),
        _off_block(found),
        seats_block(found['seat']),
        _tails_block(found['tail']),
        _hip_block(found),
        ridge_block(found['ridge'], 'Ridge') if 'ridge' in found else [],
        cautions_block(caution),
        wrap(f'{LENGTHS_RUN} {CHEEKS_ARE}', 80),
        [DEFERS],
        wrap(f'More: --all, or --show with one or more of {", ".join(names)}.', 80),
    ]
    return joined(blocks)


def lengths_block(ask: RoofQuestion, named: Sequence[tuple[str, Reading]]) -> list[str]:
    """Return lengths in columns, with the exact one and what rounding has added."""
    rows = []
    for name, reading in named:
        left = rounding(reading, ask.measure)
        rows.append((name, measure(reading), left.exact, left.added))
    return columns([('Lengths', 'measure', 'exact in', 'rounded'), *rows], (LEFT, MIXED, RIGHT, RIGHT))


def differences(jack: Group, of: str = '') -> list[tuple[str, Reading]]:
    """Return the named differences of jacks, one a spacing."""
    return [
        (f'jack difference{of}, {spacing.text} on center', difference)
        for spacing, difference in rows_of(jack, 'difference').rows
    ]


def cuts_block(cut: Group, square: Group, members: Sequence[tuple[str, str]]) -> list[str]:
    """Return the plumb and level cuts of some members, by their keys, and how the square is held for each."""
    rows = [
        (
            name,
            pick(cut, f'{key}_plumb_deg').text,
            pick(cut, f'{key}_level_deg').text,
            pick(square, key, 'held').text,
        )
        for name, key in members
    ]
    heads = ('Cuts on the side, from square across', 'plumb', 'level', 'body & tongue')
    return [
        *columns([heads, *rows], (LEFT, RIGHT, RIGHT, LEFT)),
        *(line for _, key in members for line in held_lines(group_of(square, key))),
    ]


def held_lines(square: Group) -> list[str]:
    """Return which arm of the square gives which line, and how much run a step is."""
    body, tongue, step = (
        measure(pick(square, key)) for key in ('level_on_body_in', 'plumb_on_tongue_in', 'run_of_step_in')
    )
    said = f'Held {pick(square, "held").text}: mark plumb along the tongue ({tongue}), level along the body ({body})'
    if step != '12':
        said += f'; {step} in of run a step'
    return wrap(f'{said}.', 80, initial_indent='  ', subsequent_indent='    ')


def cheeks_block(named: Sequence[tuple[str, Group]]) -> list[str]:
    """Return cheeks in columns; where one is past a saw's scale, how it is cut."""
    rows = [
        (
            name,
            pick(cheek, 'top_from_square_deg').text,
            pick(cheek, 'top_held').text,
            pick(cheek, 'side_plumb_deg').text,
            pick(cheek, 'side_blade_tilt_deg').text,
        )
        for name, cheek in named
    ]
    past = [name for name, cheek in named if not pick(cheek, 'within_saw_scale').data]
    told = f'Past a saw’s scale: {"; ".join(past)}: by hand saw to the lines on top and sides; see --all.'
    return [
        *columns(
            [('Cheeks', 'top from square', 'along the body', 'side plumb', 'blade'), *rows],
            (LEFT, RIGHT, LEFT, RIGHT, RIGHT),
        ),
        *(wrap(told, 80, initial_indent='  ', subsequent_indent='    ') if past else []),
    ]


def off_rows(group: Group, named: Sequence[tuple[str, str]]) -> list[tuple[str, str, str]]:
    """Return names with what comes off level and along the edge, by their keys."""
    return [
        (name, measure(pick(group, f'{key}_level_in')), measure(pick(group, f'{key}_along_in')))
        for name, key in named
    ]


def _off_block(found: Found) -> list[str]:
    off = found['shortening']
    same = pick(off, 'jack_at_hip_level_in').data == pick(off, 'jack_at_valley_level_in').data
    jacks = (
        (('jack at a hip/valley, on its center line', 'jack_at_hip'),)
        if same
        else (
            ('jack at a hip, on its center line', 'jack_at_hip'),
            ('jack at a valley, on its center line', 'jack_at_valley'),
        )
    )
    rows = off_rows(
        off,
        (
            ('common at a ridge', 'common_at_ridge'),
            ('hip/valley at a ridge, one cheek', 'hip_valley_at_ridge'),
            ('hip between commons, to its point', 'hip_between_commons'),
            *jacks,
        ),
    )
    ends = off_rows(
        group_of(off, 'end_common'),
        (
            ('end common, hips between commons', 'between_commons'),
            ('end common, hips on the ridge', 'hips_on_ridge'),
        ),
    )
    return columns(
        [('Off, center line of what is met to its face', 'level', 'along'), *rows, *ends],
        (LEFT, MIXED, MIXED),
    )


def _hip_block(found: Found) -> list[str]:
    cheek = found['cheek']
    rows = [
        *off_rows(group_of(cheek, 'jack'), (('jack, long to short point', 'long_to_short_point'),)),
        *off_rows(
            group_of(cheek, 'hip_at_ridge'), (('hip at a ridge, long to short point', 'long_to_short_point'),)
        ),
        *off_rows(
            group_of(cheek, 'hip_between_commons'),
            (('hip between commons, point back to its sides', 'point_to_side'),),
        ),
        *off_rows(group_of(cheek, 'hip_tail'), (('hip tail, point back to its sides', 'point_to_side'),)),
    ]
    drop, bevel = pick(found['drop'], 'plumb_in'), pick(found['backing'], 'bevel_deg')
    return [
        *columns([('Points, along the board', 'level', 'along'), *rows], (LEFT, MIXED, MIXED)),
        *wrap(
            f'Hip: backed {bevel.text} each side, from its square top; or dropped {drop.text}, plumb, which its '
            'bird’s mouth has already.',
            80,
        ),
    ]


def seats_block(seat: Group) -> list[str]:
    """Return the bird's mouths of a corner whose two sides are alike."""
    named = [
        ('common', 'common'),
        ('hip dropped', 'hip_dropped'),
        ('hip backed', 'hip_backed'),
        ('valley', 'valley'),
    ]
    there = {value.key for value in seat.values}
    return mouths_block([(name, group_of(seat, key)) for name, key in named if key in there])


def mouths_block(named: Sequence[tuple[str, Group]]) -> list[str]:
    """Return bird's mouths in columns, how the columns are measured, and why one has none."""
    rows = [seat_row(name, mouth) for name, mouth in named]
    head = 'Bird’s mouths' if len(rows) > 1 else 'Bird’s mouth'
    legend = (
        'Seat: level. Heel, height above plate, depth from top edge to underside: plumb. Notch, and stock left over it: '
        'square to the edge.'
    )
    for name, mouth in named:
        for value in mouth.values:
            if value.key == 'heel_back_in' and isinstance(value, Reading):
                legend += f' The {name}’s heel stands {value.text} outwards of the inside corner.'
            if value.key == 'seat' and isinstance(value, Reading):
                legend += f' {name[0].upper()}{name[1:]}: {value.text}.'
    return [
        *columns([(head, *SEAT_HEADS), *rows], (LEFT, *(MIXED,) * len(SEAT_HEADS))),
        *wrap(legend, 80, initial_indent='  ', subsequent_indent='    '),
    ]


SEAT_HEADS = ('seat', 'heel', 'height', 'depth', 'notch', 'left')
SEAT_KEYS = ('seat', 'heel', 'height_above_plate', 'plumb_depth', 'notch_depth', 'stock_left')


def seat_row(name: str, mouth: Group) -> tuple[str, ...]:
    """Return the bird's mouth of one member; 'none' where its stock does not reach the plate."""
    known = {value.key: value for value in mouth.values if isinstance(value, Reading)}
    cells = (measure(known[f'{key}_in']) if f'{key}_in' in known else 'none' for key in SEAT_KEYS)
    return f'{name} {known["stock"].text}', *cells


def ridge_block(ridge: Group, head: str) -> list[str]:
    """Return the length of a hip roof's ridge, where its plates' length was given."""
    if not any(value.key == 'hip_roof' for value in ridge.values):
        return []
    roof = group_of(ridge, 'hip_roof')
    return columns(
        [
            (f'{head}, plates {pick(roof, "plate_length_in").text} long', 'level'),
            ('between the points where the hips meet it', measure(pick(roof, 'center_lines_in'))),
            ('sawn, hips between commons', measure(pick(roof, 'sawn_between_commons_in'))),
            ('sawn, hips on the ridge', measure(pick(roof, 'sawn_hips_on_ridge_in'))),
        ],
        (LEFT, MIXED),
    )


def _tails_block(tail: Group) -> list[str]:
    out = pick(tail, 'overhang_in').text
    return columns(
        [
            (f'Tails, {out} out from the plate, level', 'along'),
            ('common and jack, plate line to tail end', measure(pick(tail, 'common_and_jack_in'))),
            ('hip/valley, plate corner to its point', measure(pick(tail, 'hip_valley_in'))),
            ('hip, plate corner to each side’s line', measured(tail, 'hip_sides')),
            ('valley, plate corner to each side’s line', measured(tail, 'valley_sides')),
        ],
        (LEFT, MIXED),
    )


def cautions_block(caution: Sequence[Called]) -> list[str]:
    """Return the cautions that are called for, each with its clause; none if there are none."""
    return [line for one in caution for line in wrap(called_text(one), 80, subsequent_indent='  ')]
