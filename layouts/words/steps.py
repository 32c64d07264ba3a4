"""The sentences of stepping off: how the square is held, what is left over, where the last mark falls."""

from __future__ import annotations

from collections.abc import Sequence

from layouts.words.checks import NAMES, in_pairs, inches, judged, marked, sentence, table, way
from layouts.words.say import _, n_
from tablegen.checking.allowance import Verdict
from tablegen.checking.steps import Held, StepMark, StepsCheck
from tablegen.geometry.stepping import SQUARE
from tablegen.numbers import text
from tablegen.numbers.figure import Figure

SIXTEENTH = text.mixed(1, SQUARE.per)


def steps_lines(check: StepsCheck) -> list[str]:
    """Return the lines of a member stepped off."""
    nearest = _('nearest {part}').format(part=SIXTEENTH)
    steps = n_('{count} step', '{count} steps', check.whole_steps).format(count=check.whole_steps)
    pairs = [
        (_('square held'), _held(check.held)),
        (
            _('whole steps'),
            _('{count}, each of {run} of common run').format(
                count=check.whole_steps, run=text.run(check.held.run)
            ),
        ),
        (_('odd remainder'), _remainder(check)),
        (_('exact step'), inches(check.exact_step)),
        (
            _('step as set') if check.step_given else nearest,
            f'{marked(check.step)}: {way(check.step_error)}',
        ),
        (_('exact length'), inches(check.exact_length)),
        (_('last mark'), f'{inches(check.last_mark)}: {way(check.error)}'),
    ]
    for drift in check.drift if check.whole_steps else ():
        label = _('off by {part}').format(part=drift.step_off_by.number)
        pairs.append((label, _('{length} after {steps}').format(length=inches(drift.total), steps=steps)))
    if check.step_allowed:
        pairs.append((_('to stay within'), _small_enough(check, check.step_allowed)))
    if check.with_seventeen:
        old = check.with_seventeen
        said = _('step {length}: {way} at the last step').format(length=inches(old.step), way=way(old.error))
        pairs.append((_('with 17 for √288'), said))
        if check.odd_run:
            pairs.append(('', _('odd run {length} on the body').format(length=inches(old.odd_body))))
    missed = _('steps as set') if check.step_given else _('steps of nearest {part}').format(part=SIXTEENTH)
    return [
        f'{_(NAMES[check.of])}, {check.pitch.text}, {_("run {length}").format(length=text.run(check.run))}',
        *in_pairs(pairs),
        *_mark_lines(check.marks, missed),
        *judged(_steps_verdict(check), check.allowed, _('the last mark')),
        *sentence(_('Measure the whole length once at the end, whatever the steps say.')),
    ]


def _steps_verdict(check: StepsCheck) -> str:
    """Return whether the last mark falls where it may; what nobody has set is not judged."""
    if check.verdict != Verdict.NOT_JUDGED:
        return _('Right') if check.verdict == Verdict.RIGHT else _('Wrong')
    if not check.whole_steps:
        return _('Nothing to judge, the run is shorter than a step')
    if check.within_allowed:
        said = _(
            'Nothing to judge, no --step was given; steps of the nearest {part} end within what is allowed'
        )
    else:
        said = _(
            'Nothing to judge, no --step was given; steps of the nearest {part} end outside what is allowed'
        )
    return said.format(part=SIXTEENTH)


def _held(held: Held) -> str:
    said = _('{body} & {tongue}: plumb along the tongue, level along the body')
    if held.steps_to_a_foot > 1:
        said += _('; the tongue is too short for a foot of run, so both are {share}')
    share = _('halved') if held.steps_to_a_foot == 2 else _('a {part}th').format(part=held.steps_to_a_foot)
    return said.format(body=held.body.text, tongue=held.tongue.text, share=share)


def _remainder(check: StepsCheck) -> str:
    if not check.odd_run:
        return _('none')
    held = check.odd_remainder
    said = _('{body} on the body & {tongue} on the tongue')
    return said.format(body=marked(held.body), tongue=marked(held.tongue))


def _small_enough(check: StepsCheck, most: Figure) -> str:
    said = _('{allowed}, a step may be off by {most}: no mark is that fine')
    if check.set_to:
        said = _('{allowed}, a step may be off by {most}: set it to {part} or finer')
    part = check.set_to.number if check.set_to else ''
    return said.format(allowed=check.allowed.text, most=inches(most), part=part)


def _mark_lines(marks: Sequence[StepMark], missed: str) -> list[str]:
    if not marks:
        return []
    rows = [(_('step'), _('mark, in'), _('exact, in'), missed)]
    rows += [(str(one.number), one.mark.text, one.exact.size, way(one.off)) for one in marks]
    return table(rows)
