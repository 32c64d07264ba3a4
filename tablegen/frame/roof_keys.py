"""The keys of a roof file: how each is read, what of the question it says, which roofs use it."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from fractions import Fraction
from typing import Any

from msgspec import Struct

from tablegen.errors import BookError, each_of
from tablegen.frame.asked import (
    CORNERS,
    MIDDLES,
    Asked,
    Bay,
    Eaves,
    Gable,
    Gambrel,
    HalfHip,
    Hip,
    HipHead,
    HipTop,
    ManySided,
    RidgeTop,
    Saltbox,
    Shed,
    TailCut,
    Upper,
    Valleys,
    Wing,
)
from tablegen.geometry.pitch import Pitch
from tablegen.messages import message
from tablegen.numbers import text
from tablegen.numbers.units import INCHES
from tablegen.written.keys import choice, listed, one_line, positive, size, smallest_part, truth
from tablegen.written.lengths import length
from tablegen.written.numbers import NoNumber, normalized, number, whole_number
from tablegen.written.pitches import pitch

SHED, GABLE, SALTBOX, GAMBREL, HIP = 'shed', 'gable', 'saltbox', 'gambrel', 'hip'
HALF_HIP, WING, MANY_SIDED, BAY = 'half-hip', 'wing', 'many-sided', 'bay'
FRAMING, FASCIA = 'framing', 'fascia'
"""To what an overhang is measured: the tails' upper corner, or the outer face of the fascia on them."""
FEWEST_SIDES, MOST_SIDES = 5, INCHES.base
LONGEST_IN = 300 * INCHES.group
"""Of a building: past this a size is a slip of the pen."""
LONGEST_BOARD_IN = 60 * INCHES.group
WIDEST_KERF_IN = Fraction(1, 2)
DEEPEST_IN = 24
Read = Callable[[object, str], Any]
Values = Mapping[str, Any]
"""What has been read, by the file's keys."""


class OfKind(Struct, frozen=True):
    """A kind of roof: its record, and its own keys, each with the field that it says."""

    record: type
    keys: Mapping[str, str]
    needed: tuple[str, ...] = ()


KINDS: dict[str, OfKind] = {
    SHED: OfKind(Shed, {'shed.upper': 'upper', 'shed.thickness': 'thickness_in', 'shed.depth': 'depth_in'}),
    GABLE: OfKind(Gable, {}),
    SALTBOX: OfKind(
        Saltbox,
        {'saltbox.back_pitch': 'back', 'saltbox.back_plate_below': 'back_plate_below_in'},
        ('saltbox.back_pitch',),
    ),
    GAMBREL: OfKind(
        Gambrel,
        {'gambrel.upper_pitch': 'upper', 'gambrel.break': 'break_in'},
        ('gambrel.upper_pitch', 'gambrel.break'),
    ),
    HIP: OfKind(Hip, {'hip.ends': 'ends', 'hip.end_pitch': 'end', 'hip.eaves': 'eaves'}),
    HALF_HIP: OfKind(
        HalfHip,
        {'half-hip.gable_rise': 'gable_rise_in', 'half-hip.end_pitch': 'end'},
        ('half-hip.gable_rise',),
    ),
    WING: OfKind(
        Wing,
        {
            'wing.main_ends': 'main_ends', 'wing.width': 'width_in', 'wing.out': 'out_in', 'wing.from_left': 'from_left_in',
            'wing.pitch': 'pitch', 'wing.end': 'hipped', 'wing.valleys': 'valleys',
            'wing.sheathing': 'sheathing_in', 'wing.valley_boards': 'board_in',
        },
        ('wing.width', 'wing.out', 'wing.from_left'),
    ),
    MANY_SIDED: OfKind(
        ManySided,
        {
            'many-sided.sides': 'sides', 'many-sided.side': 'side_in', 'many-sided.across_flats': 'across_flats_in',
            'many-sided.post': 'post_across_flats_in',
        },
        ('many-sided.sides',),
    ),
    BAY: OfKind(
        Bay,
        {
            'bay.sides': 'sides', 'bay.side': 'side_in', 'bay.across_flats': 'across_flats_in',
            'bay.wall_through': 'wall_through',
        },
        ('bay.sides',),
    ),
}  # fmt: skip
FIELDS = {
    'name': 'name', 'pitch': 'pitch', 'width': 'width_in', 'length': 'length_in', 'spacing': 'spacing_in', 'first': 'first_in',
    'stock.rafters': 'rafters', 'stock.hips': 'hips', 'stock.valleys': 'valleys', 'stock.seat': 'seat_in',
    'overhang.eave': 'overhang_in', 'overhang.fascia': 'fascia_in', 'overhang.gable': 'gable_overhang_in',
    'cuts.tails': 'tail', 'cuts.hips': 'hip_top', 'cuts.hip_heads': 'hip_head',
    'buy.lengths': 'lengths_in', 'buy.kerf': 'kerf_in', 'buy.allowance': 'sheathing_allowance',
}  # fmt: skip
"""What of the question a key says."""
RIDGE = {'ridge.thickness': 'thickness_in', 'ridge.depth': 'depth_in', 'ridge.top': 'top'}
MEASURE = {'smallest_part': 'per', 'lengths': 'style'}
OTHERS = ('kind', 'steep', 'ridge.board', 'overhang.measured_to')
KEYS = (
    *OTHERS,
    *FIELDS,
    *RIDGE,
    *MEASURE,
    *(key for kind in KINDS.values() for key in kind.keys),
)


def kind_of(asked: Asked) -> str:
    """Return the name of a roof's kind."""
    return next(name for name, kind in KINDS.items() if kind.record is type(asked.kind))


def readers(steep: bool) -> dict[str, Read]:
    """Return how each key is read, but for steep itself, which says whether pitches over the usual pass."""

    def a_pitch(value: object, place: str) -> Pitch:
        return pitch(value, place, steep)

    return {
        'kind': lambda v, p: choice(v, p, tuple(KINDS)),
        'name': one_line,
        'smallest_part': smallest_part,
        'lengths': lambda v, p: choice(v, p, text.STYLES),
        **dict.fromkeys(
            ('pitch', 'saltbox.back_pitch', 'gambrel.upper_pitch', 'hip.end_pitch', 'half-hip.end_pitch', 'wing.pitch'),
            a_pitch,
        ),
        **dict.fromkeys(
            ('width', 'length', 'gambrel.break', 'half-hip.gable_rise', 'wing.width', 'wing.out', 'many-sided.side',
             'many-sided.across_flats', 'many-sided.post', 'bay.side', 'bay.across_flats'),
            lambda v, p: positive(v, p, LONGEST_IN),
        ),
        **dict.fromkeys(
            ('first', 'overhang.eave', 'overhang.gable', 'saltbox.back_plate_below', 'wing.from_left'), length
        ),
        'spacing': lambda v, p: positive(v, p, INCHES.widest_spacing),
        **dict.fromkeys(('stock.rafters', 'stock.hips', 'stock.valleys'), size),
        **dict.fromkeys(
            ('stock.seat', 'ridge.thickness', 'shed.thickness'), lambda v, p: positive(v, p, INCHES.thickest)
        ),
        **dict.fromkeys(
            ('overhang.fascia', 'wing.sheathing', 'wing.valley_boards'),
            lambda v, p: _up_to(v, p, Fraction(INCHES.thickest)),
        ),
        'overhang.measured_to': lambda v, p: choice(v, p, (FRAMING, FASCIA)),
        'cuts.tails': lambda v, p: TailCut(choice(v, p, tuple(TailCut))),
        'cuts.hips': lambda v, p: HipTop(choice(v, p, tuple(HipTop))),
        'cuts.hip_heads': lambda v, p: HipHead(choice(v, p, tuple(HipHead))),
        'buy.lengths': _boards,
        'buy.kerf': lambda v, p: _up_to(v, p, WIDEST_KERF_IN),
        'buy.allowance': _share,
        'ridge.board': truth,
        **dict.fromkeys(('ridge.depth', 'shed.depth'), lambda v, p: positive(v, p, DEEPEST_IN)),
        'ridge.top': lambda v, p: RidgeTop(choice(v, p, tuple(RidgeTop))),
        'shed.upper': lambda v, p: Upper(choice(v, p, tuple(Upper))),
        'hip.ends': lambda v, p: _whole(v, p, 1, 2),
        'hip.eaves': lambda v, p: Eaves(choice(v, p, tuple(Eaves))),
        'wing.main_ends': lambda v, p: _whole(v, p, 0, 2),
        'wing.end': lambda v, p: choice(v, p, (GABLE, HIP)) == HIP,
        'wing.valleys': lambda v, p: Valleys(choice(v, p, tuple(Valleys))),
        'many-sided.sides': lambda v, p: _whole(v, p, FEWEST_SIDES, MOST_SIDES),
        'bay.sides': _even_sides,
        'bay.wall_through': lambda v, p: choice(v, p, (CORNERS, MIDDLES)),
    }  # fmt: skip


def unused(kind: str, read: Values) -> list[str]:
    """Return the keys that say nothing about a roof of a kind, as far as what else was read tells."""
    own = KINDS[kind].keys
    keys = [key for other in KINDS.values() for key in other.keys if key not in own]
    ends, wing_end = read.get('wing.main_ends', 0), read.get('wing.end', False)
    hipped = kind in (HIP, HALF_HIP, MANY_SIDED, BAY) or (kind == WING and (ends > 0 or wing_end))
    blind = read.get('wing.valleys') is Valleys.BLIND
    ridged = kind not in (SHED, MANY_SIDED, BAY)
    gabled = (
        kind in (SHED, GABLE, SALTBOX, GAMBREL, HALF_HIP)
        or (kind == HIP and read.get('hip.ends') == 1)
        or (kind == WING and (ends < 2 or not wing_end))
    )
    has = {
        ('width', 'length'): kind not in (MANY_SIDED, BAY),
        ('stock.hips', 'cuts.hips'): hipped,
        ('cuts.hip_heads',): hipped and ridged,
        ('ridge.board',): ridged,
        tuple(RIDGE): ridged and read.get('ridge.board', True),
        ('stock.valleys',): kind == WING and not blind,
        ('wing.sheathing', 'wing.valley_boards'): kind == WING and blind,
        ('overhang.gable',): gabled,
        ('hip.eaves',): kind == HIP and 'hip.end_pitch' in read,
        ('shed.depth',): kind == SHED and read.get('shed.upper') is Upper.LEDGER,
        ('shed.thickness',): kind == SHED and read.get('shed.upper', Upper.WALL) is not Upper.WALL,
    }
    return keys + [key for some, use in has.items() if not use for key in some if key not in keys]


def needed(kind: str, read: Values) -> list[str]:
    """Return the keys that a roof of a kind cannot be without."""
    sizes = [] if kind in (MANY_SIDED, BAY) else ['width', 'length']
    over_a_beam = kind == SHED and read.get('shed.upper') is Upper.BEAM_OVER
    return ['pitch', *sizes, *KINDS[kind].needed, *(['shed.thickness'] if over_a_beam else [])]


def _up_to(value: object, place: str, at_most: Fraction) -> Fraction:
    inches = length(value, place)
    if inches > at_most:
        most = message('error.up_to', most=text.in_units(at_most))
        raise BookError(place, message('setting.out_of_range', written=value), most)
    return inches


def _boards(value: object, place: str) -> tuple[Fraction, ...]:
    found = each_of(listed(value, place), place, lambda one, here: positive(one, here, LONGEST_BOARD_IN))
    return tuple(sorted(set(found)))


def _share(value: object, place: str) -> Fraction:
    """Return a share that is written in percent: 10, "10 %"."""
    try:
        percent = number(normalized(str(value)).removesuffix('%').strip())
    except NoNumber:
        percent = Fraction(-1)
    if isinstance(value, bool) or not 0 <= percent <= 100:
        problem = message('roof_file.no_share', written=str(value))
        raise BookError(place, problem, message('roof_file.percent'))
    return percent / 100


def _whole(value: object, place: str, least: int, most: int) -> int:
    found = whole_number(value) if isinstance(value, str) else value
    if not isinstance(found, int) or isinstance(found, bool) or not least <= found <= most:
        allowed = message('error.from_to', least=least, most=most)
        raise BookError(place, message('setting.out_of_range', written=str(value)), allowed)
    return found


def _even_sides(value: object, place: str) -> int:
    sides = whole_number(value) if isinstance(value, str) else value
    if (
        not isinstance(sides, int)
        or sides not in range(FEWEST_SIDES, MOST_SIDES + 1)
        or isinstance(sides, bool)
    ):
        problem = message('setting.out_of_range', written=str(value))
        raise BookError(place, problem, message('roof_file.even_sides'))
    if sides % 2:
        raise BookError(place, message('roof_file.odd_sides', sides=sides), message('roof_file.even_sides'))
    return sides
