"""Reading one page of a worked example: each sentence with what it says, each figure beside it, each mark, each place that is cited."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from fractions import Fraction

from tablegen.proof.digits import named
from tablegen.proof.names import Sentence
from tablegen.proof.roof_reading import run_told
from tablegen.proof.roof_stated import Unstated, inches_of
from tablegen.proof.sentences import told_at
from tablegen.proof.stated import called, pitch_of
from tablegen.proof.worked_cited import INCH, READ
from tablegen.proof.worked_drawn import Drawn
from tablegen.proof.worked_figures import answers
from tablegen.proof.worked_lines import Told
from tablegen.proof.worked_marks import NUMBERED
from tablegen.proof.worked_member import Answers
from tablegen.proof.worked_slopes import one_slope

PITCHES, NAMES, PASSED = {'pitch', 'a-pitch', 'b-pitch'}, {'first', 'second'}, {'page', 'mark'}
GIVEN = {
    'width', 'run', 'whole-run', 'overhang', 'spacing', 'first-space', 'ledger', 'purlin', 'a-run', 'b-run', 'last-run', 'half-width',
}  # fmt: skip
"""What a page says of the roof; said again, it must say the same."""
NEAR = Fraction('0.0006')
"""in, which a run may be off that is told to a thousandth."""
END = re.compile(r'(?<=[.:;]) ')
"""Where another sentence may begin."""
WITHIN = re.compile(r'[.:;] ')
"""What no place of a sentence holds."""
LATER = {'hip': 2, 'valley': 3}
"""What a step cites is told in it, or, of a kind of example, in one of so many steps after it: heel and seat stand beside the height."""
Said = tuple[Sentence, dict[str, str]]
"""A sentence, and what stands in its places."""


class PageReader(Drawn):
    """One page."""

    def read(self) -> None:
        """Read all of it."""
        jacks = self.example.heads
        if self.worked.rows:
            self.roof.jacks = tuple(label for label, _cells in self.worked.rows)
        steps = self.worked.steps
        said = [list(self._said(step, self._row(step))) for step in steps]
        for step, some in zip(steps, said, strict=True):
            self._take(step, some)
        for at, (step, some) in enumerate(zip(steps, said, strict=True), 1):
            self._step(step, some, steps[at : at + LATER.get(self.example.kind, 0)])
        if jacks and self.worked.rows:
            self._rows()
        if self.worked.marks:
            self._marks()
        elif self.state.numbers:
            self.state.know(self.state.numbers)
        for numbers in self.worked.numbers():
            if numbers != [str(n) for n in range(1, len(numbers) + 1)]:
                self._fault('gap', f'{self.title}, {" ".join(numbers)}')
        if self.example.kind == 'rafter' and self.page.is_drawn and not self.state.book.translated:
            self._drawn_rafter()
        if self.worked.heads and self.example.kind == 'slopes':
            right = [self.roof.words.get(name, '') for name in ('first', 'second')]
            self._figure(self.title, '', ' '.join(self.worked.heads), ' '.join(right))

    def _right(self, name: str) -> tuple[str, ...]:
        return self.sizes.get(name, ()) or self._answers().get(name, ()) or ('',)

    # Sentences --------------------------------------------------------------------------------------------------

    def _row(self, step: Told) -> str:
        return f'{self.title}, {step.number}' if step.number else self.title

    def _take(self, step: Told, said: list[Said]) -> None:
        """Take what a step says of the roof, where that is not known yet."""
        for sentence, places in said:
            self.roof.stop = sentence.sets or self.roof.stop
            told = [(dict(sentence.places).get(name, name), printed) for name, printed in places.items()]
            for name, printed in (*told, *zip(sentence.figures, step.figures, strict=False)):
                self.roof.settle()
                if name in PITCHES and (pitch := pitch_of(printed)):
                    self.roof.pitches.setdefault(name, pitch)
                elif name in NAMES:
                    self.roof.words.setdefault(name, printed)
                elif name in GIVEN and (value := _inches(printed)) is not None:
                    own = self.state.book.exactly(printed.removesuffix(' in'))  # 23.622 is 600 mm
                    if (
                        self.lead and name == 'run' and not step.number
                    ):  # of one roof's members each may have its own
                        for of_it in ('run', 'whole-run'):
                            self.roof.given.pop(of_it, None)
                    self.roof.given.setdefault(name, own if abs(own - value) < NEAR else value)

    def _step(self, step: Told, said: list[Said], later: list[Told]) -> None:
        row, beside = self._row(step), False
        self._added(step, row, next((one.figures[0] for one, _places in said if one.figures), ''))
        for sentence, places in said:
            for name, printed in places.items():
                self._told(row, sentence, dict(sentence.places).get(name, name), printed)
            if sentence.figures:
                beside = True
                figures = step.figures + ('',) * (len(sentence.figures) - len(step.figures))
                for name, printed in zip(sentence.figures, figures, strict=False):
                    self._told(row, sentence, name, printed)
        if step.figures and not beside:
            self._fault('words', f'{row}, {step.words}')
        if step.cited:
            self._cited(step, row, later)

    def _said(self, step: Told, row: str) -> Iterator[Said]:
        """Yield the sentences of a step; what is none of them is taken down where it has figures."""
        words, at, unknown = f'{self._without_name(step)} ', 0, ''
        while at < len(words):
            found = [
                (one, told)
                for one in self.example.sentences
                if (told := told_at(one.words, words, at)) and _sound(told[0])
            ]
            if found:
                found.sort(key=lambda it: -it[1][1])
                sentence, (places, at) = next(
                    (it for it in found if self._goes_on(words, it[1][1])), found[0]
                )
                yield sentence, places
                at += words[at : at + 1] == ' '
                continue
            if words.startswith(self.state.names.care, at):
                break
            end = END.search(words, at)
            unknown += words[at : end.end() if end else len(words)]
            at = end.end() if end else len(words)
        self._unknown(step, row, unknown)

    def _goes_on(self, words: str, at: int) -> bool:
        """Return whether a sentence begins in a place, what is read and added does, or nothing follows."""
        rest = words[at:].lstrip()
        begun = (told_at(one.words, rest, 0) for one in self.example.sentences)
        return not rest or READ.match(rest) is not None or any(begun)

    def _without_name(self, step: Told) -> str:
        """Return a step's words without the name of the roof that stands before them."""
        words = step.words.removeprefix(self.lead)
        named_first = self.lead and words[:1] in (',', ':', '')  # a name may be how another word begins
        return words.lstrip(',: ') if named_first else step.words

    def _unknown(self, step: Told, row: str, words: str) -> None:
        """Take down what is no sentence that is known: in a step, or where it has figures."""
        off = (
            re.escape(self.state.names.sum_off)
            .replace(r'\{total\}', '.+')
            .replace(r'\{direct\}', '.+')
            .replace(r'\ ', ' ')
        )
        bare = re.sub(rf'{READ.pattern}(?:{off})?\.?', '', words).strip(' .')
        if bare and (step.number or any(map(str.isdigit, bare))):
            self._fault('words', f'{row}, {bare}')

    def _told(self, row: str, sentence: Sentence, name: str, printed: str) -> None:
        """Hold against what it should be what stands in a place of a sentence, or beside it."""
        head = sentence.words.partition('{')[0].strip(' ,;:.') or sentence.words
        if name in PASSED:
            return
        if name in NUMBERED or name in ('mark-first', 'mark-last'):
            self.state.pending.append(lambda numbers: self._number(row, head, name, printed, numbers))
        elif name == 'marks-apart':
            self.state.pending.append(lambda numbers: self._apart(row, head, printed, numbers))
        elif name in PITCHES:
            self._given_pitch(row, head, name, printed)
        elif name in NAMES:
            self._figure(row, head, printed, self.roof.words.get(name, ''))
        elif name in self.sizes:
            self._figure(row, head, printed.removesuffix(INCH), *self.sizes[name])
        elif name == 'overhang-number':
            right = self.roof.given.get('overhang')
            self._figure(row, head, printed, named(right) if right is not None else '')
        elif name == 'line-sum-off':
            self._sum_off(row, head, printed, self._answers().get('line', ('',))[0])
        elif name == 'line-summed' and 'line' in self.roof.summed:
            self._figure(row, head, printed, *self.form.length(self.roof.summed['line']))
        elif name in GIVEN:
            self._given(row, head, name, printed)
        elif answer := self._answers().get(name):
            bare = printed.replace('− ', '−').replace('+ ', '+')
            self._figure(row, head, bare.removesuffix(' in') if bare not in answer else bare, *answer)
        else:
            self.found.strange.append((self.page.number, f'{head}: {printed}'))

    def _answers(self) -> Answers:
        """Return what is known by now, worked out anew once more is given."""
        roof = self.roof
        roof.settle()
        state = (
            tuple(roof.given.items()),
            tuple(roof.pitches.items()),
            roof.stop,
            roof.jacks,
            len(roof.summed),
        )
        if self.known[0] != state:
            try:
                found = one_slope(roof, self.mark) if self.mark in roof.words.values() else answers(roof)
            except (LookupError, ValueError, ArithmeticError):
                found = {}
            self.known = state, found
        return self.known[1]

    def _given_pitch(self, row: str, head: str, name: str, printed: str) -> None:
        pitch, book = self.roof.pitches.get(name), self.state.book
        known = pitch is not None and (not book.pitches or pitch in book.pitches)
        same = printed if pitch_of(printed) == pitch else called(pitch) if pitch else ''
        self._figure(row, head, printed, same if known else '')

    def _given(self, row: str, head: str, name: str, printed: str) -> None:
        """Hold what is given of the roof against what was given before."""
        value, known = _inches(printed), self.roof.given.get(name)
        if value is None or known is None:
            self._figure(row, head, printed, '')
        else:
            self._figure(row, head, printed, printed if abs(value - known) < NEAR else run_told(known))


def _inches(printed: str) -> Fraction | None:
    try:
        return inches_of(printed)
    except Unstated:
        return None


def _sound(places: Mapping[str, str]) -> bool:
    """Return whether what stands in places of a sentence can stand there."""
    numbers = all(places[name].isdigit() for name in NUMBERED if name in places)
    return numbers and not any(map(WITHIN.search, places.values()))
