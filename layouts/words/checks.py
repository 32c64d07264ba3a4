"""The sentences of the checks: what a terminal shows of each judgement, within 80 columns."""

from __future__ import annotations

from collections.abc import Sequence
from textwrap import wrap

from layouts.words.say import N_
from tablegen.checking import tape
from tablegen.checking.allowance import NOT_JUDGED, RIGHT, USUAL, Allowance
from tablegen.checking.amounts import Amount
from tablegen.checking.corner import CornerCheck, TurnOver
from tablegen.checking.reading import LengthCheck
from tablegen.checking.steps import StepMark, StepsCheck
from tablegen.checking.written import Written, inches_text
from tablegen.geometry.stepping import Hold
from tablegen.numbers import text

WIDTH = 78
NAMES = {
    'common': 'common rafter',
    'hip-valley': 'hip or valley',
    'jack-difference': 'difference of jacks',
    'rise': 'rise',
}
PARTS = {2: 'half', 4: 'quarter', 8: 'eighth', 16: 'sixteenth', 32: 'thirty-second', 64: 'sixty-fourth'}
MESSAGES = {
    'checks.no_side': N_('a side of 0 makes no corner'),
    'checks.two_sides': N_('two lengths above 0'),
    'checks.cannot_join': N_('{across} cannot join sides of {side} and {other}'),
    'checks.wide_gap': N_('{gap} is not below the distance it is measured at, {over}'),
    'checks.small_gap': N_('a gap far below the distance'),
    'checks.nothing_to_check': N_('a length of 0 cannot be checked'),
    'checks.short_total_run': N_('{total} is shorter than the run that was read'),
    'checks.nothing_to_step': N_('a length of 0 cannot be stepped'),
    'checks.past_tape_table': N_('{length} is past the end of the table of tape tolerances'),
    'checks.leave_out_tape': N_('leave out --tape'),
}
DEFER = 'This checks geometry, not strength: local code and a licensed designer decide.'


def length_lines(check: LengthCheck) -> list[str]:
    """Return the lines of a length that was read."""
    spaced = check.kind == 'jack-difference'
    over = f'{"spacing" if spaced else "run"} {text.run(check.run_in)}'
    book = check.nearest_book_part
    part = check.read.part
    pairs = [
        ('exact', f'{check.exact.size.text} in'),
        (f'nearest {part.text}', _marked(check.nearest.text, part.unit)),
        ('read', _marked(check.read.figure.text, part.unit)),
        ('difference', f'{way(check.difference)}: {_in_parts(check)}'),
    ]
    if (part.unit, part.per) != (book.unit, book.per):
        pairs.insert(2, (f'nearest 1/{book.per} in', f'{book.text} in'))
    if check.repeated:
        again = check.repeated
        left = f', {text.run(again.left_run_in)} left over' if again.left_run_in else ''
        name = _count(again.steps, 'space' if spaced else 'step')
        pairs.append((f'over {name}', f'{way(again.error)} in a run of {text.run(again.total_run_in)}{left}'))
    if check.fits:
        pairs.append(
            ('exact for', f'{check.fits.rise_per_foot.size.text} in 12 ({check.fits.degrees.size.text})')
        )
    else:
        pairs.append(('exact for', 'no pitch: it is no longer than its own level run'))
    return [
        f'{_capital(NAMES[check.kind])}, {check.pitch.text}, {over}',
        *_pairs(pairs),
        *_sentence(
            f'{right_to(check.read) if check.verdict == RIGHT else "Wrong"}: {allowed(check.allowed, "it")}'
        ),
    ]


def steps_lines(check: StepsCheck, marks: Sequence[StepMark] = ()) -> list[str]:
    """Return the lines of a member stepped off."""
    setting = _marked(check.set_figure.text, check.set_figure.unit)
    pairs = [
        ('square held', _held(check.hold)),
        ('whole steps', f'{check.whole}, each of {check.hold.run_text} of common run'),
        ('odd remainder', _remainder(check)),
        ('exact step', f'{check.step.size.text} in'),
        ('step as set' if check.set_to else 'nearest 1/16', f'{setting}: {way(check.step_error)}'),
        ('exact length', f'{check.end.size.text} in'),
        ('last mark', f'{check.reached.size.text} in: {way(check.error)}'),
    ]
    for drift in check.drifts if check.whole else ():
        pairs.append(
            (f'off by 1/{drift.per}', f'{drift.total.size.text} in after {_count(check.whole, "step")}')
        )
    if check.step_allowed:
        pairs.append(('to stay within', f'{check.allowed.text} in, {_small_enough(check)}'))
    if check.seventeen:
        old = check.seventeen
        pairs.append(('with 17 for √288', f'step {old.step.size.text} in: {way(old.error)} at the last step'))
        if check.left_run_in:
            pairs.append(('', f'odd run {old.left_level.text} in on the body'))
    return [
        f'{_capital(NAMES[check.kind])}, {check.pitch.text}, run {text.run(check.run_in)}',
        *_pairs(pairs),
        *_mark_lines(marks, 'steps as set' if check.set_to else 'steps of nearest 1/16'),
        *_sentence(f'{_steps_verdict(check)}: {allowed(check.allowed, "the last mark")}'),
        *_sentence('Measure the whole length once at the end, whatever the steps say.'),
    ]


def corner_lines(check: CornerCheck) -> list[str]:
    """Return the lines of a corner measured across."""
    how = {1: 'wider than', -1: 'tighter than', 0: 'exactly'}[check.out.sign]
    pairs = [
        ('true diagonal', f'{check.true_diagonal.size.text} in'),
        (
            'measured',
            f'{_marked(check.diagonal.figure.text, check.diagonal.part.unit)}: {way(check.difference)}',
        ),
        ('out of square', f'{check.out.size.text} {how} 90°' if check.out.sign else '0°: exactly square'),
        ('over long side', f'{check.over_long.size.text} in in {text.run(check.long_in)}{_side(check.out)}'),
        (
            'cannot be seen',
            f'less than {check.unseen.size.text} in, with a diagonal read to {check.diagonal.part.text}',
        ),
    ]
    verdict = 'Square' if check.verdict == RIGHT else 'Out of square'
    return [
        f'Corner with sides of {text.run(check.short_in)} and {text.run(check.long_in)}',
        *_pairs(pairs),
        *_sentence(f'{verdict}: {allowed(check.allowed, "the diagonal")}'),
    ]


def turn_over_lines(check: TurnOver) -> list[str]:
    """Return the lines of a square turned over."""
    pairs = [
        ('gap', f'{_marked(check.gap.figure.text, check.gap.part.unit)} at {text.run(check.over_in)}'),
        ('the square’s error', f'{check.out.size.text}, half of what shows'),
        (f'over {text.run(check.over_in)}', f'{check.error.size.text} in'),
        ('over 24 in', f'{check.over_body.size.text} in'),
        ('over 12 ft', f'{check.over_wall.size.text} in'),
    ]
    verdict = 'True' if check.verdict == RIGHT else 'Out of true'
    return [
        'Square turned over: two lines from one point of a straight edge',
        *_pairs(pairs),
        *_sentence(f'{verdict}: {allowed(check.allowed, "the gap")}'),
        *_sentence(
            'Far from the point, the first line lies where the body lay first: the angle is under 90°. '
            'It lies on the other side: over 90°. The edge must be straight, or the test proves nothing.'
        ),
    ]


def way(amount: Amount) -> str:
    """Return an error in inches with its direction: '0.041 in short', 'exact'."""
    if not amount.sign:
        return 'exact'
    size = f'{amount.size.text} in' if amount.size.count else 'under 0.001 in'
    return f'{size} {"long" if amount.sign > 0 else "short"}'


def right_to(read: Written) -> str:
    """Return 'Right to the eighth', or to the decimal that was read."""
    part = read.part
    if part.decimals is None and part.per in PARTS:
        return f'Right to the {PARTS[part.per]}'
    return f'Right to {part.text}'


def allowed(rule: Allowance, what: str) -> str:
    """Return the rule of a verdict in words."""
    said = 'as you said'
    if rule.rule == USUAL:
        said = 'taken where nothing else is said'
    if rule.part is not None:  # half of it: no other rule has a part
        taken = 'the usual finest part, for none was read' if rule.part.assumed else 'the finest part read'
        said = f'half of {rule.part.text}, {taken}'
    if rule.tape_in is not None:
        said += f', plus {inches_text(rule.tape_in)} in for the tape ({tape.SOURCE})'
    return f'{what} may be off by {rule.text} in, {said}.'


def _in_parts(check: LengthCheck) -> str:
    parts = f'{check.difference_parts.size.text} of {check.read.part.text}'
    if not check.marks_off:
        return f'{parts}, on the nearest mark'
    way_off = 'past' if check.marks_off > 0 else 'short of'
    return f'{parts}, {_count(abs(check.marks_off), "mark")} {way_off} the nearest'


def _steps_verdict(check: StepsCheck) -> str:
    """Return whether the last mark falls where it may; what nobody has set is not judged."""
    if check.verdict != NOT_JUDGED:
        return 'Right' if check.verdict == RIGHT else 'Wrong'
    if not check.whole:
        return 'Nothing to judge, the run is shorter than a step'
    end = 'within' if check.within else 'outside'
    return f'Nothing to judge, no --step was given; steps of the nearest 1/16 end {end} what is allowed'


def _held(hold: Hold) -> str:
    halved = (
        ''
        if hold.holds == 1
        else f'; the tongue is too short for a foot of run, so both are {_share(hold.holds)}'
    )
    return f'{hold.text}: plumb along the tongue, level along the body{halved}'


def _share(holds: int) -> str:
    return 'halved' if holds == 2 else f'a {holds}th'


def _remainder(check: StepsCheck) -> str:
    if not check.left_run_in:
        return 'none'
    return f'{check.left_level.text} in on the body & {check.left_rise.text} in on the tongue'


def _small_enough(check: StepsCheck) -> str:
    assert check.step_allowed is not None, 'there are whole steps'
    step = f'a step may be off by {check.step_allowed.size.text} in'
    if check.setting is None:
        return f'{step}: no mark is that fine'
    return f'{step}: set it to 1/{check.setting} or finer'


def _side(out: Amount) -> str:
    return {1: ', outwards', -1: ', inwards', 0: ''}[out.sign]


def _mark_lines(marks: Sequence[StepMark], steps: str) -> list[str]:
    if not marks:
        return []
    rows = [('step', 'mark, in', 'exact, in', steps)]
    rows += [(str(one.number), one.figure.text, one.exact.size.text, way(one.stepped)) for one in marks]
    return table(rows)


def table(rows: Sequence[Sequence[str]], indent: str = '  ') -> list[str]:
    """Return lines of columns, every cell to the right; the first row is the heading."""
    widths = [max(map(len, column)) for column in zip(*rows, strict=True)]
    return [
        (indent + '  '.join(cell.rjust(width) for cell, width in zip(row, widths, strict=True))).rstrip()
        for row in rows
    ]


def _pairs(pairs: Sequence[tuple[str, str]]) -> list[str]:
    widest = max(len(label) for label, _ in pairs)
    lines = []
    for label, value in pairs:
        first, *rest = wrap(value, WIDTH - widest - 4)
        lines += [f'  {label.ljust(widest)}  {first}', *(' ' * (widest + 4) + more for more in rest)]
    return lines


def _sentence(said: str) -> list[str]:
    return wrap(said, WIDTH)


def _marked(number: str, unit: str) -> str:
    return f'{number} {unit}'


def _count(number: int, what: str) -> str:
    return f'{number} {what}{"" if number == 1 else "s"}'


def _capital(said: str) -> str:
    return said[0].upper() + said[1:]
