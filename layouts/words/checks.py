"""The sentences of the checks: what a terminal shows of each judgement, within 80 columns."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from textwrap import wrap

from layouts.words.say import N_, _, n_, say
from tablegen.checking.allowance import Allowance, Rule, Verdict
from tablegen.checking.corner import BODY_IN, WALL_IN, CornerCheck, TurnOver
from tablegen.checking.reading import LengthCheck
from tablegen.checking.written import Part, inches_text
from tablegen.numbers import text
from tablegen.numbers.figure import Figure
from tablegen.numbers.units import INCHES

WIDTH = 78
NAMES = {
    'common': N_('Common rafter'),
    'hip-valley': N_('Hip or valley'),
    'jack-difference': N_('Difference of jacks'),
    'rise': N_('Rise'),
}
RIGHT_TO = {
    2: N_('Right to the half'),
    4: N_('Right to the quarter'),
    8: N_('Right to the eighth'),
    16: N_('Right to the sixteenth'),
    32: N_('Right to the thirty-second'),
    64: N_('Right to the sixty-fourth'),
}
DEFER = N_('This checks geometry, not strength: local code and a licensed designer decide.')
Pairs = list[tuple[str, str]]


def length_lines(check: LengthCheck) -> list[str]:
    """Return the lines of a length that was read."""
    book, part = check.nearest_book_part, check.part
    if check.run is not None:
        over = _('run {length}').format(length=text.run(check.run))
    else:
        over = _('spacing {length}').format(length=text.run(check.spacing or Fraction(0)))
    pairs = [
        (_('exact'), inches(check.exact)),
        (_('nearest {part}').format(part=part.text), marked(check.nearest)),
        (_('read'), marked(check.read.figure)),
        (_('difference'), f'{way(check.difference)}: {_in_parts(check)}'),
    ]
    if (part.unit, part.per) != (book.unit, book.per):
        label = _('nearest {part}').format(part=f'1/{book.per} {book.unit}')
        pairs.insert(2, (label, marked(book)))
    if check.repeated:
        pairs.append(_repeated(check))
    fits = check.exact_for
    if fits:
        said = f'{fits.rise_per_foot.size} {INCHES.over_base} ({fits.angle.text})'
    else:
        said = _('no pitch: it is no longer than its own level run')
    return [
        f'{_(NAMES[check.of])}, {check.pitch.text}, {over}',
        *in_pairs([*pairs, (_('exact for'), said)]),
        *judged(right_to(part) if check.verdict == Verdict.RIGHT else _('Wrong'), check.allowed, _('it')),
    ]


def corner_lines(check: CornerCheck) -> list[str]:
    """Return the lines of a corner measured across."""
    how = {1: _('{angle} wider than 90°'), -1: _('{angle} tighter than 90°'), 0: _('0°: exactly square')}
    side = {
        1: _('{length} in {side}, outwards'),
        -1: _('{length} in {side}, inwards'),
        0: _('{length} in {side}'),
    }
    unseen = _('less than {length}, with a diagonal read to {part}')
    pairs = [
        (_('true diagonal'), inches(check.true_diagonal)),
        (_('measured'), f'{marked(check.diagonal.figure)}: {way(check.difference)}'),
        (_('out of square'), how[check.out.sign].format(angle=check.out.size)),
        (
            _('over long side'),
            side[check.out.sign].format(length=inches(check.over_long_side), side=text.run(check.long_side)),
        ),
        (
            _('cannot be seen'),
            unseen.format(length=inches(check.unseen), part=check.diagonal.part.text),
        ),
    ]
    right = check.verdict == Verdict.RIGHT
    sides = {'short': text.run(check.short_side), 'long': text.run(check.long_side)}
    return [
        _('Corner with sides of {short} and {long}').format(**sides),
        *in_pairs(pairs),
        *judged(_('Square') if right else _('Out of square'), check.allowed, _('the diagonal')),
    ]


def turn_over_lines(check: TurnOver) -> list[str]:
    """Return the lines of a square turned over."""
    over = _('over {length}')
    at = text.run(check.over)
    pairs = [
        (_('gap'), _('{gap} at {length}').format(gap=marked(check.gap.figure), length=at)),
        (_('the square’s error'), _('{angle}, half of what shows').format(angle=check.out.size)),
        (over.format(length=at), inches(check.error)),
        (over.format(length=text.in_units(BODY_IN)), inches(check.over_body)),
        (over.format(length=text.run(WALL_IN)), inches(check.over_wall)),
    ]
    right = check.verdict == Verdict.RIGHT
    return [
        _('Square turned over: two lines from one point of a straight edge'),
        *in_pairs(pairs),
        *judged(_('True') if right else _('Out of true'), check.allowed, _('the gap')),
        *sentence(
            _(
                'Far from the point, the first line lies where the body lay first: the angle is under 90°. '
                'It lies on the other side: over 90°. The edge must be straight, or the test proves nothing.'
            )
        ),
    ]


def way(off: Figure) -> str:
    """Return an error in inches with its direction: '0.041 in short', 'exact'."""
    if not off.sign:
        return _('exact')
    size = inches(off) if off.count else _('under {length}').format(length=f'0.001 {off.unit}')
    return (_('{length} long') if off.sign > 0 else _('{length} short')).format(length=size)


def inches(figure: Figure) -> str:
    """Return a length without its sign, with its unit."""
    return f'{figure.size} {figure.unit}'


def right_to(part: Part) -> str:
    """Return 'Right to the eighth', or to the decimal that was read."""
    if part.decimals is None and part.per in RIGHT_TO:
        return _(RIGHT_TO[part.per])
    return _('Right to {part}').format(part=part.text)


def allowed(rule: Allowance, what: str) -> str:
    """Return the rule of a verdict in words."""
    said = {Rule.GIVEN: _('as you said'), Rule.USUAL: _('taken where nothing else is said')}.get(
        rule.rule, ''
    )
    if rule.part is not None:  # half of it: no other rule has a part
        assumed = _('half of {part}, the usual finest part, for none was read')
        said = (assumed if rule.part_assumed else _('half of {part}, the finest part read')).format(
            part=rule.part.text
        )
    if rule.tape is not None and rule.tape_source is not None:
        tape = _('{said}, plus {length} for the tape ({source})')
        said = tape.format(said=said, length=inches_text(rule.tape), source=say(rule.tape_source))
    return _('{what} may be off by {length}, {said}.').format(what=what, length=rule.text, said=said)


def table(rows: Sequence[Sequence[str]], indent: str = '  ') -> list[str]:
    """Return lines of columns, every cell to the right; the first row is the heading."""
    widths = [max(map(len, column)) for column in zip(*rows, strict=True)]
    return [
        (indent + '  '.join(cell.rjust(width) for cell, width in zip(row, widths, strict=True))).rstrip()
        for row in rows
    ]


def _repeated(check: LengthCheck) -> tuple[str, str]:
    again = check.repeated
    assert again is not None, 'the caller has looked'
    if check.run is not None:
        label = n_('over {count} step', 'over {count} steps', again.steps)
    else:
        label = n_('over {count} space', 'over {count} spaces', again.steps)
    said = _('{way} in a run of {run}')
    if again.left_run:
        said = _('{way} in a run of {run}, {left} left over')
    run, left = text.run(again.total_run), text.run(again.left_run)
    return label.format(count=again.steps), said.format(way=way(again.error), run=run, left=left)


def _in_parts(check: LengthCheck) -> str:
    many = abs(check.marks_off)
    if not many:
        said = _('{parts} of {part}, on the nearest mark')
    elif check.marks_off > 0:
        said = n_(
            '{parts} of {part}, {count} mark past the nearest',
            '{parts} of {part}, {count} marks past the nearest',
            many,
        )
    else:
        said = n_(
            '{parts} of {part}, {count} mark short of the nearest',
            '{parts} of {part}, {count} marks short of the nearest',
            many,
        )
    return said.format(parts=check.parts_off.size, part=check.part.text, count=many)


def judged(verdict: str, rule: Allowance, what: str) -> list[str]:
    """Return the lines of a verdict and its rule."""
    return sentence(f'{verdict}: {allowed(rule, what)}')


def in_pairs(pairs: Pairs) -> list[str]:
    """Return the lines of labels and what is said under each."""
    widest = max(len(label) for label, _value in pairs)
    lines = []
    for label, value in pairs:
        first, *rest = wrap(value, WIDTH - widest - 4)
        lines += [f'  {label.ljust(widest)}  {first}', *(' ' * (widest + 4) + more for more in rest)]
    return lines


def sentence(said: str) -> list[str]:
    """Return the lines of a sentence."""
    return wrap(said, WIDTH)


def marked(figure: Figure) -> str:
    """Return a figure as it is read, with its unit."""
    return f'{figure.text} {figure.unit}'
