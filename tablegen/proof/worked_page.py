"""Reading one page of a worked example: each sentence with what it says, each figure beside it, each mark, each place that is cited."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from decimal import Decimal

from tablegen.proof.digits import real
from tablegen.proof.names import Sentence
from tablegen.proof.places import named_pitch, stands_in
from tablegen.proof.roof_reading import run_told, value_of
from tablegen.proof.roof_stated import Unstated, inches_of
from tablegen.proof.sentences import told_at
from tablegen.proof.stated import called, pitch_of
from tablegen.proof.worked_figures import answers
from tablegen.proof.worked_lines import Told
from tablegen.proof.worked_marks import NUMBERED, Beside
from tablegen.proof.worked_member import Answers
from tablegen.proof.worked_slopes import one_slope

PITCHES, NAMES, PASSED = {'pitch', 'a-pitch', 'b-pitch'}, {'first', 'second'}, {'page', 'mark'}
GIVEN = {
    'width', 'run', 'whole-run', 'overhang', 'spacing', 'first-space', 'ledger', 'purlin', 'a-run', 'b-run', 'last-run', 'half-width',
}  # fmt: skip
"""What a page says of the roof; said again, it must say the same."""
INCH = '″'
NEAR = Decimal('0.0006')
"""in, which a run may be off that is told to a thousandth."""
FIGURE = r'(?:\d+′ )?(?:\d+ \d+/\d+|\d+/\d+|\d+)″?'
READ = re.compile(rf'(?<![(\d/]){FIGURE}(?: \+ {FIGURE})+')
"""What is read and added."""
END = re.compile(r'(?<=[.:;]) ')
"""Where another sentence may begin."""
WITHIN = re.compile(r'[.:;] ')
"""What no place of a sentence holds."""
LATER = 4
"""What a step cites is told in it, or in one of the steps after it, before so many."""


class PageReader(Beside):
    """One page."""

    def read(self) -> None:
        """Read all of it."""
        jacks = self.example.heads
        if self.worked.rows:
            self.roof.jacks = tuple(label for label, _cells in self.worked.rows)
        for place_, step in enumerate(self.worked.steps):
            self._step(step, self.worked.steps[place_ + 1 : place_ + LATER])
        if jacks and self.worked.rows:
            self._rows()
        if self.worked.marks:
            self._marks()
        elif self.state.numbers:
            self.state.know(self.state.numbers)
        for numbers in self.worked.numbers():
            if numbers != [str(n) for n in range(1, len(numbers) + 1)]:
                self._fault('gap', f'{self.title}, {" ".join(numbers)}')
        if self.worked.heads and self.example.kind == 'slopes':
            right = [self.roof.words.get(name, '') for name in ('first', 'second')]
            self._figure(self.title, '', ' '.join(self.worked.heads), ' '.join(right))

    # Sentences --------------------------------------------------------------------------------------------------

    def _step(self, step: Told, later: list[Told]) -> None:
        row, beside = f'{self.title}, {step.number}' if step.number else self.title, False
        said = list(self._said(step, row))
        self._added(step, row, next((one.figures[0] for one, _places in said if one.figures), ''))
        for sentence, places in said:
            self.roof.stop = sentence.sets or self.roof.stop
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

    def _said(self, step: Told, row: str) -> Iterator[tuple[Sentence, dict[str, str]]]:
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
        return step.words.removeprefix(self.lead).lstrip(',: ') if self.lead else step.words

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
            self._figure(row, head, printed, self.roof.words.setdefault(name, printed))
        elif name in self.sizes:
            self._figure(row, head, printed.removesuffix(INCH), *self.sizes[name])
        elif name in GIVEN:
            self._given(row, head, name, printed)
        elif right := self._answers().get(name):
            bare = printed.replace('− ', '−').replace('+ ', '+')
            self._figure(row, head, bare.removesuffix(' in') if bare not in right else bare, *right)
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
        pitch, book = pitch_of(printed), self.state.book
        if pitch is None or (book.pitches and pitch not in book.pitches):
            self._figure(row, head, printed, '')
        else:
            self._figure(
                row,
                head,
                printed,
                called(self.roof.pitches.setdefault(name, pitch)),
                printed * (self.roof.pitches[name] == pitch),
            )

    def _given(self, row: str, head: str, name: str, printed: str) -> None:
        """Take what is given of the roof, or hold it against what was given before."""
        self.roof.settle()
        try:
            value = inches_of(printed)
        except Unstated:
            self._figure(row, head, printed, '')
            return
        known = self.roof.given.setdefault(name, value)
        self._figure(row, head, printed, printed if abs(real(value - known)) < NEAR else run_told(known))

    # What is added, and cited -----------------------------------------------------------------------------------

    def _added(self, step: Told, row: str, name: str) -> None:
        """Add up what is read: the sum stands there too, or a part off it what is rounded once."""
        beside = ' & '.join(step.figures).split(' & ')
        for found in READ.finditer(step.words):
            parts = [value_of(one) for one in found[0].split(' + ')]
            total = sum((one for one in parts if one is not None), Decimal(0))
            self.roof.summed[name] = total
            off = told_at(f'{self.state.names.sum_off}.', f'{step.words[found.end() :]} ', 0)
            rest, right = step.words[: found.start()], self.form.length(total)
            if off:
                self._figure(row, found[0], off[0]['total'], *right)
                rest, right = rest + step.words[found.end() + off[1] :], (off[0]['direct'],)
            else:
                rest += step.words[found.end() :]
            there = [one for one in right if one in beside or stands_in(one, rest)]
            self._figure(row, found[0], right[0], right[0] if there else beside[0])

    def _cited(self, step: Told, row: str, later: list[Told]) -> None:
        """Turn to every place: it is of the pitch's opening, and what stands there is told in the step, or soon after."""
        places = self.state.places
        if not places.openings:
            return
        words = ' '.join(f'{one.words} {" & ".join(one.figures)} ' for one in (step, *later)).replace(
            INCH, ''
        )
        for place_ in places.told(step.cited):
            self.found.figures += 1
            pitch, there = places.pitch_of(place_.page), places.figures(place_)
            told = any(
                stands_in(one, words) or _shorter(one, words)
                for one in (cell.replace(INCH, '') for cell in there)
            )
            if pitch not in self.roof.pitches.values() or not there or not (told or not step.number):
                head = f'{place_.title} {place_.row} {place_.head}'.strip()
                self._fault('cited', row, head, f'{place_.page}, {named_pitch(pitch)}')


def _sound(places: Mapping[str, str]) -> bool:
    """Return whether what stands in places of a sentence can stand there."""
    numbers = all(places[name].isdigit() for name in NUMBERED if name in places)
    return numbers and not any(map(WITHIN.search, places.values()))


def _shorter(figure: str, words: str) -> bool:
    """Return whether a figure of more decimals is told with fewer."""
    decimal = re.fullmatch(r'\d+\.\d+', figure)
    return decimal is not None and any(
        stands_in(f'{round(Decimal(figure), places):f}', words) for places in (3, 2)
    )
