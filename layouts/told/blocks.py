"""Blocks of a short answer, within 80 columns: each a head over columns, and what is said under them."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from textwrap import wrap

from layouts.told.columns import LEFT, MIXED, RIGHT, WIDTH, columns
from layouts.told.walk import capital, told, wrapped
from layouts.words.caution import called_text
from layouts.words.say import N_, _
from tablegen.numbers.exact import Exact, sign
from tablegen.numbers.figure import INCH, Figure, decimal_figure, rounding_left
from tablegen.numbers.units import INCHES
from tablegen.roof.called import Called
from tablegen.roof.cheeks import CheekCut
from tablegen.roof.figures import PlumbLevel, TwoWays
from tablegen.roof.jacks import Difference
from tablegen.roof.lengths import Held
from tablegen.roof.names import Why
from tablegen.roof.ridge import Ridge
from tablegen.roof.seat import Mouth

LENGTHS_RUN = N_(
    'Lengths run along the top edge. Off: what comes off them, along, or off the run, level. Rounded: the measure '
    'less the exact length, in inches; a half goes up.'
)
CHEEKS_ARE = N_(
    'Cheeks: on top, degrees from the line square across it, and the square held body & tongue, marked along the '
    'body; on the side, the plumb cut from square across, and the tilt of the blade from square.'
)
DEFERS = N_('Geometry is not strength: local code and a licensed designer decide.')
ROUNDING_PLACES = 4
"""Decimals of an inch beside a rounded length."""
Block = list[str]
Named = tuple[str, Figure]


def joined(blocks: Iterable[Sequence[str]]) -> str:
    """Return blocks of lines with an empty line between them; an empty block leaves nothing."""
    return '\n\n'.join('\n'.join(block) for block in blocks if block) + '\n'


def paragraph(*sentences: str) -> Block:
    """Return sentences in lines."""
    return wrap(' '.join(sentences), WIDTH)


def in_inches(figure: Figure) -> str:
    """Return a length with its unit, where its own text does not say it."""
    return figure.text if figure.parts.mark or figure.unit != INCH else f'{figure.text} {INCHES.unit}'


def or_none(value: Figure | Why | None) -> str:
    """Return a length as it is measured; that there is none where one is missing."""
    return value.text if isinstance(value, Figure) else _('none')


def lengths_block(named: Iterable[tuple[str, Figure | Why]]) -> Block:
    """Return lengths in columns, with the exact one and what rounding has added."""
    heads = (_('Lengths'), _('measure'), _('exact in'), _('rounded'))
    rows = [(name, told(one), *_rounding(one)) for name, one in named]
    return columns([heads, *rows], (LEFT, MIXED, RIGHT, RIGHT))


def _rounding(figure: Figure | Why) -> tuple[str, str]:
    """Return a length to four decimals, and the measure less the exact length."""
    if not isinstance(figure, Figure) or not isinstance(figure.value, Exact):
        return '', ''
    left = rounding_left(figure.value, figure)
    added = decimal_figure(left, ROUNDING_PLACES).text
    plus = '+' if sign(left) > 0 else ''
    return decimal_figure(figure.value, ROUNDING_PLACES).text, f'{plus}{added}' if sign(left) else _('none')


def differences(jacks: Iterable[Difference], words: str) -> list[Named]:
    """Return the named differences of jacks, one a spacing; words place {spacing}."""
    return [(words.format(spacing=in_inches(one.spacing)), one.difference) for one in jacks]


def cuts_block(named: Sequence[tuple[str, PlumbLevel, Held]]) -> Block:
    """Return the plumb and level cuts of some members, and how the square is held for each."""
    heads = (_('Cuts on the side, from square across'), _('plumb'), _('level'), _('body & tongue'))
    rows = [(name, cut.plumb.text, cut.level.text, held.held) for name, cut, held in named]
    return [
        *columns([heads, *rows], (LEFT, RIGHT, RIGHT, LEFT)),
        *(line for _name, _cut, held in named for line in _held_lines(held)),
    ]


def _held_lines(square: Held) -> Block:
    """Return which arm of the square gives which line, and how much run a step is."""
    words = _('Held {held}: mark plumb along the tongue ({tongue}), level along the body ({body}).')
    if square.run_of_step.count != INCHES.unit_run * square.run_of_step.per:
        words = _(
            'Held {held}: mark plumb along the tongue ({tongue}), level along the body ({body}); {step} in of run a '
            'step.'
        )
    said = words.format(
        held=square.held,
        tongue=square.plumb_on_tongue.text,
        body=square.level_on_body.text,
        step=square.run_of_step.text,
    )
    return wrapped(said, '  ')


def cheeks_block(named: Sequence[tuple[str, CheekCut]], more: str = '--all', leaning: bool = False) -> Block:
    """Return cheeks in columns; where one is past a saw's scale, how it is cut, and what tells more of that.

    Given:
        leaning  whether they are those of tails at fascias square to the roof
    """
    name, side = (_('Cheeks that lean'), _('side')) if leaning else (_('Cheeks'), _('side plumb'))
    heads = (name, _('top from square'), _('along the body'), side, _('blade'))
    rows = [
        (name, one.top_from_square.text, one.top_held, one.side_line.text, one.side_blade_tilt.text)
        for name, one in named
    ]
    past = '; '.join(name for name, one in named if not one.within_saw_scale)
    said = _('Past a saw’s scale: {cheeks}: by hand saw to the lines on top and sides; see {more}.')
    return [
        *columns([heads, *rows], (LEFT, RIGHT, LEFT, RIGHT, RIGHT)),
        *(wrapped(said.format(cheeks=past, more=more), '  ') if past else []),
    ]


def two_ways_block(head: str, named: Iterable[tuple[str, TwoWays]]) -> Block:
    """Return distances level and along the edge."""
    rows = [(name, one.level.text, one.along.text) for name, one in named]
    return columns([(head, _('level'), _('along')), *rows], (LEFT, MIXED, MIXED))


def tails_block(words: str, overhang: Figure, named: Iterable[tuple[str, Figure | Why]]) -> Block:
    """Return tails along the edge; words place {out}."""
    head = words.format(out=in_inches(overhang))
    return columns([(head, _('along')), *((name, or_none(one)) for name, one in named)], (LEFT, MIXED))


def mouths_block(named: Sequence[tuple[str, Mouth]]) -> Block:
    """Return bird's mouths in columns, how the columns are measured, and why one has none."""
    heads = (
        _('Bird’s mouths') if len(named) > 1 else _('Bird’s mouth'),
        _('seat'), _('heel'), _('height'), _('depth'), _('notch'), _('left'),
    )  # fmt: skip
    rows = [
        (
            f'{name} {one.stock}',
            *map(
                or_none,
                (
                    one.seat,
                    one.heel,
                    one.height_above_plate,
                    one.plumb_depth,
                    one.notch_depth,
                    one.stock_left,
                ),
            ),
        )
        for name, one in named
    ]
    legend = [
        _(
            'Seat: level. Heel, height above plate, depth from top edge to underside: plumb. Notch, and stock left over '
            'it: square to the edge.'
        )
    ]
    for name, one in named:
        if one.heel_back:
            said = _('The {member}’s heel stands {out} outwards of the inside corner.')
            legend.append(said.format(member=name, out=in_inches(one.heel_back)))
        if isinstance(one.seat, Why):
            legend.append(f'{capital(name)}: {told(one.seat)}.')
    return [
        *columns([heads, *rows], (LEFT, *(MIXED,) * (len(heads) - 1))),
        *wrapped(' '.join(legend), '  '),
    ]


def ridge_block(ridge: Ridge, words: str) -> Block:
    """Return the length of a hip roof's ridge, where its plates' length was given; words place {length}."""
    roof = ridge.hip_roof
    if roof is None:
        return []
    rows = (
        (words.format(length=in_inches(roof.plate_length)), _('level')),
        (_('between the points where the hips meet it'), roof.center_lines.text),
        (_('sawn, hips between commons'), roof.sawn_between_commons.text),
        (_('sawn, hips on the ridge'), roof.sawn_hips_on_ridge.text),
    )
    return columns(rows, (LEFT, MIXED))


def cautions_block(caution: Sequence[Called]) -> Block:
    """Return the cautions that are called for, each with its clause; none if there are none."""
    return [line for one in caution for line in wrap(called_text(one), WIDTH, subsequent_indent='  ')]
