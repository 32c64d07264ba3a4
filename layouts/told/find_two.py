"""What find tells a person first of a corner of two pitches."""

from __future__ import annotations

from layouts.told.blocks import (
    Block,
    cheeks_block,
    cuts_block,
    differences,
    in_inches,
    lengths_block,
    mouths_block,
    paragraph,
    ridge_block,
)
from layouts.told.columns import LEFT, MIXED, columns
from layouts.told.walk import told
from layouts.words.say import _
from tablegen.roof.corner import CornerOfTwo
from tablegen.roof.names import Slid


def two_pitches_blocks(at: CornerOfTwo) -> list[Block]:
    """Return what is asked first where two pitches meet."""
    a, b, hip, square = at.side_a, at.side_b, at.hip_valley, at.square
    return [
        lengths_block(
            [
                (_('rise, plumb, plate line to ridge center'), a.length.rise),
                (_('hip/valley, plate corner to ridge center'), hip.length),
                (_('hip/valley per foot of run of A'), hip.length_per_foot_of_run_a),
                (_('common of A, plate line to ridge center'), a.length.common),
                *differences(a.jack.difference, _('jack difference of A, {spacing} on center')),
                (_('common of B, plate line to ridge center'), b.length.common),
                *differences(b.jack.difference, _('jack difference of B, {spacing} on center')),
            ]
        ),
        [
            *cuts_block(
                [
                    (_('common, jack of A'), a.cut.common, square.side_a),
                    (_('common, jack of B'), b.cut.common, square.side_b),
                    (_('hip/valley'), at.cut.hip_valley, square.hip_valley),
                ]
            ),
            _('  The hip in plan: {a} from eave A, {b} from eave B.').format(
                a=hip.plan_from_eave_a.text, b=hip.plan_from_eave_b.text
            ),
        ],
        cheeks_block(
            [
                (_('jack of A'), a.cheek.jack),
                (_('jack of B'), b.cheek.jack),
                (_('hip/valley, ridge over A'), a.cheek.hip_at_ridge),
                (_('hip/valley, ridge over B'), b.cheek.hip_at_ridge),
                (_('hip at commons, side A'), a.cheek.hip_between_commons),
                (_('hip at commons, side B'), b.cheek.hip_between_commons),
            ]
        ),
        _sides_block(at),
        mouths_block(
            [
                (_('common of A'), a.seat.common),
                (_('common of B'), b.seat.common),
                (_('hip dropped'), at.seat.hip_dropped),
                (_('hip backed'), at.seat.hip_backed),
                (_('valley'), at.seat.valley),
            ]
        ),
        _fit(at),
        ridge_block(at.ridge, _('Ridge over A, both ends of pitch B, plates {length} long')),
    ]


def _sides_block(at: CornerOfTwo) -> Block:
    sides = (at.side_a, at.side_b)
    off = [side.shortening for side in sides]
    ends = [one.end_common for one in off if one.end_common]
    rows = [
        (_('pitch'), *(side.pitch for side in sides)),
        (_('run of the commons, level'), *(side.length.run.text for side in sides)),
        (_('off a common at a ridge, level'), *(one.common_at_ridge.level.text for one in off)),
        (_('off the hip at a ridge over it, level'), *(one.hip_valley_at_ridge.level.text for one in off)),
        (_('off a jack at the hip, level'), *(one.jack_at_hip.level.text for one in off)),
    ]
    if ends:
        rows += [
            (
                _('off an end common, hips at commons, level'),
                *(one.between_commons.level.text for one in ends),
            ),
            (
                _('off an end common, hips on the ridge, level'),
                *(one.hips_on_ridge.level.text for one in ends),
            ),
        ]
    rows += [
        (_('tail of a common, along'), *(side.tail.common_and_jack.text for side in sides)),
        (_('overhang, for eaves that meet'), *(side.tail.overhang.text for side in sides)),
        (_('backing, from the square top'), *(side.backing.bevel.text for side in sides)),
        (_('drop that it asks for, plumb'), *(side.drop.plumb.text for side in sides)),
    ]
    return columns([(_('The sides'), _('A'), _('B')), *rows], (LEFT, MIXED, MIXED))


def _fit(at: CornerOfTwo) -> Block:
    """Return the two ways of a square-topped hip: the greater drop with its gap, or the slide with its jacks."""
    drop, slide = at.drop, at.slide
    plumb = in_inches(drop.plumb)
    if slide.way is Slid.NOT:
        return paragraph(
            _('Drop the hip {drop}, plumb, which its bird’s mouth has already: it serves both sides.').format(
                drop=plumb
            )
        )
    dropped = _(
        'Drop the hip {drop}, plumb, which its bird’s mouth has already; on {side} it then lies {gap} under the roof '
        'plane.'
    )
    slid = _(
        'Or slide it {aside} {way} and drop it {drop}: jacks of A {a} by {by_a}, jacks of B {b} by {by_b}, level.'
    )
    return [
        *paragraph(dropped.format(drop=plumb, side=told(drop.gap_on), gap=in_inches(drop.gap_plumb))),
        *paragraph(
            slid.format(
                aside=in_inches(slide.aside),
                way=told(slide.way),
                drop=in_inches(slide.drop_plumb),
                a=told(slide.jacks_of_a.become),
                by_a=in_inches(slide.jacks_of_a.by.level),
                b=told(slide.jacks_of_b.become),
                by_b=in_inches(slide.jacks_of_b.by.level),
            )
        ),
    ]
