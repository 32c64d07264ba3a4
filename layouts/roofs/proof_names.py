"""The words by which a proof-reader finds figures on the sheets of a roof."""

from __future__ import annotations

from collections.abc import Iterator

from layouts.roofs import cuts
from layouts.words import marking, patterns
from layouts.words.board_ends import BOTH, CUTS, HEADS, RIDGE_ENDS
from layouts.words.drawings import ROOF_SECTION
from layouts.words.examples import HIP_MARKS, MARKS
from layouts.words.frame import AT_WALL, CHECKS, HANDS, LEDGER_TOP, LEVELS, MEET, MEMBERS, OF_PLATES
from layouts.words.lists import capital
from layouts.words.say import _
from tablegen.frame.roof_keys import MOST_SIDES
from tablegen.proof.roof_names import RoofNames
from tablegen.roof.member import Hand, Kind, Line

ENDS = {'head': '', 'tail': 'tail', 'foot': 'foot'}


def roof_names() -> RoofNames:
    """Return them in the language in use."""
    return RoofNames(
        {
            'plan': _('Roof'),
            'section': _('Section and heights'),
            'plates': _('Layout of the plates'),
            'members': _('Members and boards'),
            'boards': _('Level boards'),
            'studs': _('Gable studs, {stock}'),
            'buy': _('What to buy, and what to cut from each board'),
            'asked': _('What was asked for'),
        },
        _heads(),
        {name: marking.slope_name(name) for name in (*marking.SLOPES, *(f'side_{n}' for n in range(1, MOST_SIDES + 1)))},
        {_(words): kind.value for kind, words in MEMBERS.items()},
        dict(_marks()),
        {
            _('plate of this slope'): 'plate',
            _('rafters’ top edge, over the plate line'): 'above',
            _(MEET): 'meet',
            _(AT_WALL): 'meet',
            _(LEDGER_TOP): 'ledger-top',
            _('top of the ridge'): 'ridge-top',
            _('underside of the ridge'): 'ridge-bottom',
            _('top of the purlins'): 'purlin-top',
            _('top of the beam'): 'beam-top',
            _('upper corner of the tails'): 'tail',
        },
        {
            _('Both ends'): 'both',
            _('Upper end'): 'head',
            _('Tail'): 'tail',
            _('Lower end'): 'tail',
            _('Past 45°'): 'past',
            _('Past 45° above'): 'past',
            _('Past 45° below'): 'past',
            _('Seat'): 'seat',
            _('Square'): 'square',
            _('Steps'): 'steps',
            _('Steps’ error'): 'drift',
            _('Tail’s steps'): 'tail-steps',
            _('Top edge'): 'top',
            _('Bird’s mouth'): 'mouth',
            _('On the beam'): 'on-beam',
            _('Comes off above'): 'off',
            _('Comes off below'): 'off-below',
            _('Stands on'): 'stands',
        },
        _sentences(),
        (_(HANDS[Hand.LEFT]), _(HANDS[Hand.RIGHT])),
        _('table below'),
        tuple(map(_, RIDGE_ENDS)),
        {_(words): level.value for level, words in LEVELS.items()},
        {_(words): cut.value for cut, words in CUTS.items()},
        _(BOTH),
        _('every side'),
        {name: _(ROOF_SECTION[name]) for name in ('run', 'overhang', 'above_plate', 'ridge_top', 'ridge_bottom', 'meet', 'peak', 'tail', 'raised', 'ledger_top', 'beam_top', 'at_wall')},
    )  # fmt: skip


def _heads() -> dict[str, str]:
    return {
        'mark': _('mark'),
        'near': _('near side, X to its right'),
        'center': _('center'),
        'bay': _('bay'),
        'on-ridge': _('near side on {mark}'),
        'kind': _('kind'),
        'page': _('page'),
        'number': _('number'),
        'stock': _('stock'),
        'cut-from': _('cut from, tip to tip'),
        'overall': _('overall, top edge'),
        'sawn': _('sawn length'),
        'from-plate': _('from plate line'),
        'long': _('long'),
        'short': _('short'),
        'top-cut': _('top cut'),
        'under': _('under'),
        'name': _('mark, on the top edge'),
        'first': _('from the first point'),
        'last': _('from the last point'),
        'few-cut-from': _('cut from'),
        'few-overall': _('overall'),
        'few-first': _('{number} from the first point'),
        'few-last': _('{number} from the last point'),
        'few-steps': _('steps, then body & tongue'),
        **dict(zip(('of-ends', 'end', 'cut', 'miter', 'blade', 'long-on'), map(_, HEADS), strict=True)),
        'boards': _('boards'),
        'length': _('length'),
        'left': _('left over'),
        'pieces': _('cut, in this order'),
    }


def _sentences() -> dict[str, str]:
    square = _(cuts.SQUARE_ACROSS)
    return {
        'title': _('{kind} roof, {pitch}'),
        'and': _('{first} and {last}'),
        'or': _('{first} or {last}'),
        'sizes': _('{width} wide, {length} long'),
        'spacing': _('{spacing} on center; overhang {overhang}, level; lengths to the nearest {part} in.'),
        'plate-line': _('plate line {length}'),
        'bays': _('Bays that are not the spacing: {bays}.'),
        'a-bay': _('{before} to {mark}: {bay}'),
        'cut-from': _('Cut from {length} in'),
        'before': _('{length} before the board begins'),
        'on': _('{length} on from the first point'),
        'square': square,
        'square-tail': _(
            'square to the top edge, through its mark; blade square, 0°; the lower corner then stands {level} inwards of the mark, level, and '
            '{plumb} under it, plumb'
        ),
        'cheek': _(cuts.CHEEK),
        'past': _(cuts.PAST),
        'leaning': _(cuts.LEANING),
        'leaning-past': _(cuts.LEANING_PAST),
        'to-a-point': _('two cheeks to a point, from each side: {cheek}'),
        'hollow': _('two hollow cheeks, from each side: {cheek}'),
        'blunt': _('{square}; then both corners off: {cheek}').replace('{square}', square),
        'laid': _('level on the side, {level} from square across; blade tilted {tilt}, to lie on the other roof'),
        'unlike': _('left cheek {left}; right cheek {right}'),
        'seat': _('level, {level} from square across; heel plumb, {plumb}; stop the saw short of the corner'),
        'held': _(cuts.HELD),
        'halved': _(cuts.HALVED).replace('{square}', _(cuts.HELD)),
        'stepped': _(cuts.STEPPED),
        'stepped-whole': _(cuts.STEPPED_WHOLE),
        'stepped-by-table': _(cuts.STEPPED_BY_TABLE),
        'stopped': _(cuts.STOPPED),
        'mark': _(cuts.MARK),
        'drift-long': _(cuts.DRIFT_LONG),
        'drift-short': _(cuts.DRIFT_SHORT),
        'few-stepped': _('{whole}, {body} & {tongue}'),
        'dropped': _(cuts.DROPPED),
        'dropped-gap': _(cuts.DROPPED_GAP),
        'mouth': _(cuts.MOUTH),
        'on-beam': _(cuts.ON_BEAM),
        'mouth-out': _('{mouth}; the heel stands {out} outwards of the inside corner, level'),
        'by-hand': _(cuts.BY_HAND),
        'by-hand-leaning': _(cuts.BY_HAND_LEANING),
        'backed': _(
            'backed: from the center line of its top {left} down to the left side and {right} to the right, from the square top'
        ),
        'off': _('{along} along the top edge, {level} level: up to the {stop}'),
        **{name: _(CHECKS[name]) for name in (*OF_PLATES, 'raised_plates', 'upper_hip_top')},
        'ridge-height': _(CHECKS['ridge_height']),
        'buy': _('Buy {stock}: {boards}; {together} together, {bound}.'),
        'a-board': _('{number} of {length}'),
        'part': _('{mark} part {part} of {parts}, {length}'),
        'feet': _('Board feet together: {feet}, by nominal size.'),
        'sheathing': _(
            'Sheathing: {area} square feet along the slopes, {more} with {percent} % for cuts and waste: {sheets} sheets '
            'of 4 × 8 ft.'
        ),
    }  # fmt: skip


def _marks() -> Iterator[tuple[str, tuple[str, str]]]:
    """Yield each mark as it is called on a sheet."""
    hands = {marking.LONG_HAND: 'long', marking.SHORT_HAND: 'short'}
    hands |= {marking.HAND_SIDES[Hand.LEFT]: 'left', marking.HAND_SIDES[Hand.RIGHT]: 'right'}
    whole = {
        Line.CUT: ('head', 'center'),
        Line.SIDE_RIGHT: ('head', 'right'),
        Line.PLATE: ('plate', 'center'),
        Line.TAIL: ('tail', 'center'),
        Line.TAIL_SIDE: ('tail', 'side'),
        Line.TAIL_RIGHT: ('tail', 'right'),
        Line.FOOT_CUT: ('tail', 'center'),
    }
    for line, where in whole.items():
        yield capital(_(marking.LINES[line])), where
    for line in (Line.LONG, Line.SHORT, Line.TAIL_LONG, Line.TAIL_SHORT, Line.FOOT_LONG, Line.FOOT_SHORT):
        end = 'head' if line in (Line.LONG, Line.SHORT) else 'tail'
        for words, across in hands.items():
            yield capital(_(marking.LINES[line]).format(hand=_(words))), (end, across)
    for line, words in marking.ON_CENTER.items():
        yield capital(_(words)), ('head' if line is Line.CUT else 'tail', 'center')
    yield capital(_(MARKS[Kind.VALLEY][Line.POINT])), ('head', 'center')
    yield capital(_(MARKS[Kind.VALLEY][Line.SIDE])), ('head', 'side')
    yield capital(_(MARKS[Kind.HIP][Line.TAIL])), ('tail', 'center')
    yield capital(_(MARKS[Kind.VALLEY][Line.TAIL])), ('tail', 'center')
    yield capital(_(MARKS[Kind.VALLEY][Line.PLATE])), ('plate', 'center')
    yield capital(_(marking.LINES[Line.HEEL])), ('heel', 'center')
    yield capital(_(marking.LINES[Line.UPPER_PLATE])), ('beam', 'center')
    yield capital(_(patterns.PLATES[Kind.HIP])), ('plate', 'center')
    yield capital(_(HIP_MARKS[Line.PLATE])), ('plate', 'center')
    for words in (marking.NO_HEEL, marking.RAISED, patterns.RAISED_PLATE):
        yield capital(_(words)), ('plate', 'center')
    yield capital(_('where the two cheeks meet, aside of the center')), ('head', 'tip')
    yield capital(_('where the tail’s two cheeks meet, aside of the center')), ('tail', 'tip')
    yield capital(_('upper cheek, left side')), ('head', 'left')
    yield capital(_('tail, left side')), ('tail', 'left')
