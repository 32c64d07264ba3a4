"""What find tells a person first: what is marked on a board, short blocks that say from where to where they measure."""

from __future__ import annotations

from layouts.told.blocks import (
    CHEEKS_ARE,
    DEFERS,
    LENGTHS_RUN,
    Block,
    cautions_block,
    cheeks_block,
    cuts_block,
    differences,
    in_inches,
    joined,
    lengths_block,
    mouths_block,
    paragraph,
    ridge_block,
    tails_block,
    two_ways_block,
)
from layouts.told.find_two import two_pitches_blocks
from layouts.words.say import _
from tablegen.roof.answer import Answer, CornerRoof, ManySidedRoof, RegularRoof
from tablegen.roof.names import Against
from tablegen.roof.seat import Mouth, Seats
from tablegen.roof.shed import ShedRoof
from tablegen.roof.shortening import Shortening
from tablegen.roof.sides import ManySidedSeats


def short_text(head: str, found: Answer, names: str) -> str:
    """Return what is asked first of any roof.

    Given:
        names  what can be picked of a regular one, in a line
    """
    match found:
        case RegularRoof():
            blocks, more = _regular(found), _('More: --all, or --show with one or more of {names}.')
        case CornerRoof():
            blocks, more = two_pitches_blocks(found.two_pitches), _('More: --all.')
        case ManySidedRoof():
            blocks, more = _many_sides(found), _('More: --all.')
        case ShedRoof():
            blocks, more = _shed(found), _('More: --all, or --show.')
    legend = [_(LENGTHS_RUN)] if isinstance(found, ShedRoof) else [_(LENGTHS_RUN), _(CHEEKS_ARE)]
    ends = [cautions_block(found.caution), paragraph(*legend)]
    last = paragraph(more.format(names=names))
    said = [[_(DEFERS)], last] if isinstance(found, RegularRoof) else [[_(DEFERS), *last]]
    return joined([[head], *blocks, *ends, *said])


def _regular(found: RegularRoof) -> list[Block]:
    cheek, tail, hip = found.cheek, found.tail, _('hip/valley')
    return [
        lengths_block(
            [
                (_('common, plate line to ridge center'), found.length.common),
                (_('hip/valley, plate corner to ridge center'), found.length.hip_valley),
                (_('rise, plumb, plate line to ridge center'), found.length.rise),
                *differences(found.jack.difference, _('jack difference, {spacing} on center')),
            ]
        ),
        cuts_block(
            [
                (_('common, jack'), found.cut.common, found.square.common),
                (hip, found.cut.hip_valley, found.square.hip_valley),
            ]
        ),
        cheeks_block(
            [(_('jack at a hip/valley'), cheek.jack), (_('hip/valley, every cheek'), cheek.hip_at_ridge)]
        ),
        _off_block(found.shortening),
        mouths_block([*_mouths(found.seat), (_('valley'), found.seat.valley)]),
        tails_block(
            _('Tails, {out} out from the plate, level'),
            tail.overhang,
            [
                (_('common and jack, plate line to tail end'), tail.common_and_jack),
                (_('hip/valley, plate corner to its point'), tail.hip_valley),
                (_('hip, plate corner to each side’s line'), tail.hip_side),
                (_('valley, plate corner to each side’s line'), tail.valley_side),
            ],
        ),
        [
            *two_ways_block(
                _('Points, along the board'),
                [
                    (_('jack, long to short point'), cheek.jack.long_to_short_point),
                    (_('hip at a ridge, long to short point'), cheek.hip_at_ridge.long_to_short_point),
                    (
                        _('hip between commons, point back to its sides'),
                        cheek.hip_between_commons.point_to_side,
                    ),
                    (_('hip tail, point back to its sides'), cheek.hip_tail.point_to_side),
                ],
            ),
            *paragraph(
                _(
                    'Hip: backed {bevel} each side, from its square top; or dropped {drop}, plumb, which its bird’s '
                    'mouth has already.'
                ).format(bevel=found.backing.bevel.text, drop=in_inches(found.drop.plumb))
            ),
        ],
        ridge_block(found.ridge, _('Ridge, plates {length} long')),
    ]


def _mouths(seat: Seats | ManySidedSeats) -> list[tuple[str, Mouth]]:
    named = (_('common'), _('hip dropped'), _('hip backed'))
    return list(zip(named, (seat.common, seat.hip_dropped, seat.hip_backed), strict=True))


def _off_block(off: Shortening) -> Block:
    jacks = [(_('jack at a hip/valley, on its center line'), off.jack_at_hip)]
    if off.jack_at_hip.level.decimal != off.jack_at_valley.level.decimal:
        jacks = [
            (_('jack at a hip, on its center line'), off.jack_at_hip),
            (_('jack at a valley, on its center line'), off.jack_at_valley),
        ]
    ends = off.end_common
    return two_ways_block(
        _('Off, center line of what is met to its face'),
        [
            (_('common at a ridge'), off.common_at_ridge),
            (_('hip/valley at a ridge, one cheek'), off.hip_valley_at_ridge),
            (_('hip between commons, to its point'), off.hip_between_commons),
            *jacks,
            *([(_('end common, hips between commons'), ends.between_commons)] if ends else []),
            *([(_('end common, hips on the ridge'), ends.hips_on_ridge)] if ends else []),
        ],
    )


def _many_sides(found: ManySidedRoof) -> list[Block]:
    roof = found.many_sided
    plan, tail, cheek, off = roof.plan, roof.tail, roof.cheek, roof.shortening
    said = _(
        'Plates: ends cut {miter} from square. Smallest center post {post} across flats. Hip: backed {bevel} each side, '
        'from its square top; or dropped {drop}, plumb, which its bird’s mouth has already.'
    )
    return [
        lengths_block(
            [
                (_('side of the plates, corner to corner'), plan.side),
                (_('middle of the plan to a corner'), plan.middle_to_corner),
                (_('hip, plate corner to the axis'), roof.length.hip),
                (_('hip per foot of run'), roof.length.hip_per_foot_of_apothem),
                (_('common, middle of a side to the axis'), roof.length.common),
                *differences(roof.jack.difference, _('jack difference, {spacing} on center')),
            ]
        ),
        cuts_block(
            [
                (_('common, jack'), roof.cut.common, roof.square.common),
                (_('hip'), roof.cut.hip, roof.square.hip),
            ]
        ),
        cheeks_block(
            [
                (_('jack at a hip'), cheek.jack),
                (_('hip at the peak, both'), cheek.hip_at_peak),
                (_('hip tail, both'), cheek.hip_tail),
            ]
        ),
        two_ways_block(
            _('Off, and points, along the board'),
            [
                (_('off a jack at the hip'), off.jack_at_hip),
                (_('off a hip, smallest post'), off.hip_at_least_post),
                (_('jack, long to short point'), cheek.jack.long_to_short_point),
                (_('hip tail, point back to its sides'), cheek.hip_tail.point_to_side),
            ],
        ),
        tails_block(
            _('Tails, {out} out from the plate, level'),
            tail.overhang,
            [
                (_('common and jack, plate line to tail end'), tail.common_and_jack),
                (_('hip, plate corner to its point'), tail.hip),
            ],
        ),
        mouths_block(_mouths(roof.seat)),
        paragraph(
            said.format(
                miter=plan.plate_miter.text,
                post=in_inches(roof.peak.least_post_across_flats),
                bevel=roof.backing.bevel.text,
                drop=in_inches(roof.drop.plumb),
            )
        ),
    ]


def _shed(found: ShedRoof) -> list[Block]:
    shed = found.shed
    to_ledger = shed.run_to is Against.LEDGER
    whole = _('rafter, plate line to the ledger’s face') if to_ledger else _('rafter, plate line to the wall')
    on_ledger = shed.against is Against.LEDGER
    off = _('off the rafter at the ledger') if on_ledger else _('off the rafter at the wall')
    return [
        lengths_block(
            [
                (whole, found.length.rafter),
                (_('rise, plumb, between the same two'), found.length.rise),
                (_('rafter as sawn, plate line to its upper end'), shed.sawn),
                (_('its top there, plumb over the plate’s top'), shed.top_at_upper_end),
            ]
        ),
        cuts_block([(_('rafter'), found.cut.rafter, found.square.rafter)]),
        two_ways_block(_('Off'), [(off, shed.off)]),
        mouths_block([(_('rafter'), found.seat.rafter)]),
        tails_block(
            _('Tail, {out} out from the plate, level'),
            found.tail.overhang,
            [(_('plate line to tail end'), found.tail.rafter)],
        ),
    ]
