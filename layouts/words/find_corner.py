"""What find tells a person first of a corner of two pitches, of a many-sided roof, and of a shed."""

from __future__ import annotations

from collections.abc import Sequence
from textwrap import wrap

from layouts.told.columns import LEFT, MIXED, RIGHT, columns
from layouts.told.reading_words import group_of, measure, pick
from layouts.words.find import (
    CHEEKS_ARE,
    DEFERS,
    LENGTHS_RUN,
    cautions_block,
    cheeks_block,
    cuts_block,
    differences,
    held_lines,
    joined,
    lengths_block,
    mouths_block,
    off_rows,
    ridge_block,
    seats_block,
)
from tablegen.roof.called import Called
from tablegen.roof.question import RoofQuestion
from tablegen.roof.readings import Group

MORE = 'More: --all.'


def two_pitches_text(head: str, ask: RoofQuestion, corner: Group, caution: Sequence[Called]) -> str:
    """Return what is asked first where two pitches meet."""
    hip = group_of(corner, 'hip_valley')
    named = [
        ('rise, plumb, plate line to ridge center', pick(corner, 'side_a', 'length', 'rise_in')),
        ('hip/valley, plate corner to ridge center', pick(hip, 'length_in')),
        ('hip/valley per foot of run of A', pick(hip, 'length_per_foot_of_run_a_in')),
    ]
    for letter in 'AB':
        side = group_of(corner, f'side_{letter.lower()}')
        named.append((f'common of {letter}, plate line to ridge center', pick(side, 'length', 'common_in')))
        named += differences(group_of(side, 'jack'), f' of {letter}')
    blocks = [
        [head],
        lengths_block(ask, named),
        _corner_cuts(corner),
        cheeks_block(_corner_cheeks(corner)),
        _sides_block(corner),
        _corner_seats(corner),
        _fit(corner),
        ridge_block(group_of(corner, 'ridge'), 'Ridge over A, both ends of pitch B'),
        cautions_block(caution),
        wrap(f'{LENGTHS_RUN} {CHEEKS_ARE}', 80),
        [DEFERS, MORE],
    ]
    return joined(blocks)


def _corner_cuts(corner: Group) -> list[str]:
    square, hip = group_of(corner, 'square'), group_of(corner, 'cut')
    rows = [
        (
            name,
            pick(cut, f'{key}_plumb_deg').text,
            pick(cut, f'{key}_level_deg').text,
            pick(square, held, 'held').text,
        )
        for name, cut, key, held in (
            ('common, jack of A', group_of(corner, 'side_a', 'cut'), 'common', 'side_a'),
            ('common, jack of B', group_of(corner, 'side_b', 'cut'), 'common', 'side_b'),
            ('hip/valley', hip, 'hip_valley', 'hip_valley'),
        )
    ]
    plan = [pick(corner, 'hip_valley', f'plan_from_eave_{side}_deg').text for side in 'ab']
    return [
        *columns(
            [('Cuts on the side, from square across', 'plumb', 'level', 'body & tongue'), *rows],
            (LEFT, RIGHT, RIGHT, LEFT),
        ),
        *held_lines(group_of(square, 'side_a')),
        *held_lines(group_of(square, 'side_b')),
        *held_lines(group_of(square, 'hip_valley')),
        f'  The hip in plan: {plan[0]} from eave A, {plan[1]} from eave B.',
    ]


def _corner_cheeks(corner: Group) -> list[tuple[str, Group]]:
    def of(side: str, key: str) -> Group:
        return group_of(corner, f'side_{side}', 'cheek', key)

    return [
        ('jack of A', of('a', 'jack')),
        ('jack of B', of('b', 'jack')),
        ('hip/valley, ridge over A', of('a', 'hip_at_ridge')),
        ('hip/valley, ridge over B', of('b', 'hip_at_ridge')),
        ('hip at commons, side A', of('a', 'hip_between_commons')),
        ('hip at commons, side B', of('b', 'hip_between_commons')),
    ]


def _sides_block(corner: Group) -> list[str]:
    def both(name: str, *keys: str) -> tuple[str, str, str]:
        return name, measure(pick(corner, 'side_a', *keys)), measure(pick(corner, 'side_b', *keys))

    square = any(value.key == 'end_common' for value in group_of(corner, 'side_a', 'shortening').values)
    ends = [
        both(f'off an end common, {hips}, level', 'shortening', 'end_common', f'{key}_level_in')
        for hips, key in (('hips at commons', 'between_commons'), ('hips on the ridge', 'hips_on_ridge'))
        if square
    ]
    return columns(
        [
            ('The sides', 'A', 'B'),
            both('pitch', 'pitch'),
            both('run of the commons, level', 'length', 'run_in'),
            both('off a common at a ridge, level', 'shortening', 'common_at_ridge_level_in'),
            both('off the hip at a ridge over it, level', 'shortening', 'hip_valley_at_ridge_level_in'),
            both('off a jack at the hip, level', 'shortening', 'jack_at_hip_level_in'),
            *ends,
            both('tail of a common, along', 'tail', 'common_and_jack_in'),
            both('overhang, for eaves that meet', 'tail', 'overhang_in'),
            both('backing, from the square top', 'backing', 'bevel_deg'),
            both('drop that it asks for, plumb', 'drop', 'plumb_in'),
        ],
        (LEFT, MIXED, MIXED),
    )


def _corner_seats(corner: Group) -> list[str]:
    return mouths_block(
        [
            ('common of A', group_of(corner, 'side_a', 'seat', 'common')),
            ('common of B', group_of(corner, 'side_b', 'seat', 'common')),
            ('hip dropped', group_of(corner, 'seat', 'hip_dropped')),
            ('hip backed', group_of(corner, 'seat', 'hip_backed')),
            ('valley', group_of(corner, 'seat', 'valley')),
        ]
    )


def _fit(corner: Group) -> list[str]:
    """Return the two ways of a square-topped hip: the greater drop with its gap, or the slide with its jacks."""
    drop, slide = group_of(corner, 'drop'), group_of(corner, 'slide')
    said = f'Drop the hip {pick(drop, "plumb_in").text}, plumb, which its bird’s mouth has already'
    if pick(slide, 'way').text == 'not needed':
        return wrap(f'{said}: it serves both sides.', 80)
    gap = (
        f'on {pick(drop, "gap_on").text} it then lies {pick(drop, "gap_plumb_in").text} under the roof plane'
    )
    changed = ', '.join(
        f'{name} {pick(slide, key, "become").text} by {pick(slide, key, "by_level_in").text}'
        for name, key in (('jacks of A', 'jacks_of_a'), ('jacks of B', 'jacks_of_b'))
    )
    aside = f'{pick(slide, "aside_in").text} {pick(slide, "way").text}'
    return [
        *wrap(f'{said}; {gap}.', 80),
        *wrap(f'Or slide it {aside} and drop it {pick(slide, "drop_plumb_in").text}: {changed}, level.', 80),
    ]


def many_sides_text(head: str, ask: RoofQuestion, roof: Group, caution: Sequence[Called]) -> str:
    """Return what is asked first of a many-sided roof."""
    plan, tail = group_of(roof, 'plan'), group_of(roof, 'tail')
    cheek, off = group_of(roof, 'cheek'), group_of(roof, 'shortening')
    named = [
        ('side of the plates, corner to corner', pick(plan, 'side_in')),
        ('middle of the plan to a corner', pick(plan, 'middle_to_corner_in')),
        ('hip, plate corner to the axis', pick(roof, 'length', 'hip_in')),
        ('hip per foot of run', pick(roof, 'length', 'hip_per_foot_of_apothem_in')),
        ('common, middle of a side to the axis', pick(roof, 'length', 'common_in')),
        *differences(group_of(roof, 'jack')),
    ]
    rows = [
        *off_rows(
            off, (('off a jack at the hip', 'jack_at_hip'), ('off a hip, smallest post', 'hip_at_least_post'))
        ),
        *off_rows(group_of(cheek, 'jack'), (('jack, long to short point', 'long_to_short_point'),)),
        *off_rows(group_of(cheek, 'hip_tail'), (('hip tail, point back to its sides', 'point_to_side'),)),
    ]
    tails = [
        ('common and jack, plate line to tail end', measure(pick(tail, 'common_and_jack_in'))),
        ('hip, plate corner to its point', measure(pick(tail, 'hip_in'))),
    ]
    said = (
        f'Plates: ends cut {pick(plan, "plate_miter_deg").text} from square. Smallest center post '
        f'{pick(roof, "peak", "least_post_across_flats_in").text} across flats. Hip: backed '
        f'{pick(roof, "backing", "bevel_deg").text} each side, from its square top; or dropped '
        f'{pick(roof, "drop", "plumb_in").text}, plumb, which its bird’s mouth has already.'
    )
    out = pick(tail, 'overhang_in').text
    blocks = [
        [head],
        lengths_block(ask, named),
        cuts_block(
            group_of(roof, 'cut'), group_of(roof, 'square'), (('common, jack', 'common'), ('hip', 'hip'))
        ),
        cheeks_block(
            (
                ('jack at a hip', group_of(cheek, 'jack')),
                ('hip at the peak, both', group_of(cheek, 'hip_at_peak')),
                ('hip tail, both', group_of(cheek, 'hip_tail')),
            )
        ),
        columns([('Off, and points, along the board', 'level', 'along'), *rows], (LEFT, MIXED, MIXED)),
        columns([(f'Tails, {out} out from the plate, level', 'along'), *tails], (LEFT, MIXED)),
        seats_block(group_of(roof, 'seat')),
        wrap(said, 80),
        cautions_block(caution),
        wrap(f'{LENGTHS_RUN} {CHEEKS_ARE}', 80),
        [DEFERS, MORE],
    ]
    return joined(blocks)


def shed_text(head: str, ask: RoofQuestion, found: dict[str, Group], caution: Sequence[Called]) -> str:
    """Return what is asked first of a shed."""
    shed, tail = found['shed'], found['tail']
    end = 'the ledger’s face' if pick(shed, 'run_to').text == 'ledger' else 'the wall'
    named = [
        (f'rafter, plate line to {end}', pick(found['length'], 'rafter_in')),
        ('rise, plumb, between the same two', pick(found['length'], 'rise_in')),
        ('rafter as sawn, plate line to its upper end', pick(shed, 'sawn_in')),
        ('its top there, plumb over the plate’s top', pick(shed, 'top_at_upper_end_in')),
    ]
    what = 'at the ledger' if pick(shed, 'against').text == 'ledger' else 'at the wall'
    rows = off_rows(shed, ((f'off the rafter {what}', 'off'),))
    out = pick(tail, 'overhang_in').text
    blocks = [
        [head],
        lengths_block(ask, named),
        cuts_block(found['cut'], found['square'], (('rafter', 'rafter'),)),
        columns([('Off', 'level', 'along'), *rows], (LEFT, MIXED, MIXED)),
        mouths_block([('rafter', group_of(found['seat'], 'rafter'))]),
        columns(
            [
                (f'Tail, {out} out from the plate, level', 'along'),
                ('plate line to tail end', measure(pick(tail, 'rafter_in'))),
            ],
            (LEFT, MIXED),
        ),
        cautions_block(caution),
        wrap(LENGTHS_RUN, 80),
        [DEFERS, 'More: --all, or --show.'],
    ]
    return joined(blocks)
