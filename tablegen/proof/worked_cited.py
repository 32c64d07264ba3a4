"""Adding up what an example reads, and turning to the places that it cites."""

from __future__ import annotations

import re
from decimal import Decimal

from tablegen.proof.places import named_pitch, stands_in, without_signs
from tablegen.proof.roof_reading import value_of
from tablegen.proof.sentences import told_at
from tablegen.proof.worked_lines import Told
from tablegen.proof.worked_marks import Beside

INCH = '″'
FIGURE = r'(?:\d+′ )?(?:\d+ \d+/\d+|\d+/\d+|\d+)″?'
IN_BRACKETS = r'(?: \([^()]+\))?'
READ = re.compile(rf'(?<![(\d/])(?<!\d ){FIGURE}{IN_BRACKETS}(?: \+ {FIGURE}{IN_BRACKETS})+')
"""What is read and added."""


class Citer(Beside):
    """What a page's steps add and cite."""

    def _sum_off(self, row: str, head: str, printed: str, exactly: str) -> None:
        """Hold by how much a sum is too long or too short against both."""
        exact = value_of(exactly)
        summed = self.roof.summed.get('line')
        if exact is None or summed is None:
            self._fault('words', f'{row}, {head}')
            return
        way = self.state.names.ways[summed < exact]
        self._figure(
            row, head, printed, *(way.format(part=part) for part in self.form.length(abs(summed - exact)))
        )

    def _added(self, step: Told, row: str, name: str) -> None:
        """Add up what is read: the sum stands there too, or a part off it what is rounded once."""
        beside = ' & '.join(step.figures).split(' & ')
        for found in READ.finditer(step.words):
            parts = [value_of(one.partition(' (')[0]) for one in found[0].split(' + ')]
            total = sum((one for one in parts if one is not None), Decimal(0))
            self.roof.summed[name] = total
            off = told_at(f'{self.state.names.sum_off}.', f'{step.words[found.end() :]} ', 0)
            rest, right = step.words[: found.start()], self.form.length(total)
            if off:
                self._figure(row, found[0], off[0]['total'], *right)
                rest, right = rest + step.words[found.end() + off[1] :], (off[0]['direct'],)
            else:
                rest += step.words[found.end() :]
            there = [
                one
                for one in right
                if value_of(one) in map(value_of, beside)
                or stands_in(one.replace(INCH, ''), rest.replace(INCH, ''))
            ]
            self._figure(row, found[0], right[0], right[0] if there else beside[0])

    def _cited(self, step: Told, row: str, later: list[Told]) -> None:
        """Turn to every place: it is of the pitch's opening, and what stands there is told in the step, or soon after."""
        places = self.state.places
        if self.example.kind == 'rafter':
            self.state.at_end.append(lambda: self._cited_shortly(step, row))
            return
        told_here = [f'{one.words} {" & ".join(one.figures)}' for one in (step, *later)]
        told_here += (cell for _label, cells in self.worked.rows for cell in cells)
        words = ' ; '.join(told_here).replace(INCH, '')
        for place_ in places.told(step.cited):
            self.found.figures += 1
            pitch, there = places.pitch_of(place_.page), places.figures(place_)
            told = any(
                stands_in(one, words) or _shorter(one, words) for cell in there for one in self._ways(cell)
            )
            of_it = pitch in self.roof.pitches.values() or pitch is None
            if not of_it or not there or not (told or not step.number):
                head = f'{place_.title} {place_.row} {place_.head}'.strip()
                self._fault('cited', row, head, f'{place_.page}, {named_pitch(pitch)}')

    def _ways(self, cell: str) -> set[str]:
        """Return how a figure may be told elsewhere: in feet and inches, or in inches."""
        value = value_of(cell)
        return {one.replace(INCH, '') for one in (cell, *(self.form.length(value) if value else ()))}

    def _cited_shortly(self, step: Told, row: str) -> None:
        """Look for the page of the pitch, and for the row or the table on it, of a place that stands below a figure."""
        places, found = self.state.places, re.search(r'\d+', step.cited)
        if not found:
            return
        self.found.figures += 1
        page, name = int(found[0]), step.cited[found.end() :].lstrip(', ').replace(', ', ' ')
        rows = (one.replace(': ', ' ') for one in places.rows(page))
        known = name in self.state.names.blocks or any(f'{one} '.startswith(f'{name} ') for one in rows)
        if not known or places.pitch_of(page) != self.roof.pitches.get('pitch'):
            known = self._cited_fully(step)
        if not known and not self._in_a_table(step, page, step.cited[found.end() :].lstrip(', ')):
            self._fault('cited', row, name, str(page))

    def _in_a_table(self, step: Told, page: int, quoted: str) -> bool:
        """Return whether what is quoted is a reference table on a page, in which the step's figure stands."""
        places = self.state.places
        opening, closing = places.citing.quotes.split('{}')
        title = quoted.removeprefix(opening).removesuffix(closing)
        there = {
            value_of(without_signs(printed))
            for row, (_row, _head, printed) in zip(places.rows(page), places.cells(page), strict=True)
            if row.startswith(f'{title}, ')
        }
        values = {value_of(one) for one in step.figures}
        return places.pitch_of(page) is None and bool(values) and values <= there

    def _cited_fully(self, step: Told) -> bool:
        """Return whether each of several places is there, and of the pitch, and the figure of one alone is the step's."""
        places, citing = self.state.places, self.state.places.citing
        short = re.compile(rf'(?<!^){re.escape(citing.short)}(?= \d)')
        words = short.sub(f'; {citing.short}', step.cited).replace(
            citing.short, citing.page.partition(' ')[0]
        )
        told = list(places.told(words))
        there = [places.figures(one) for one in told]
        pitches = {places.pitch_of(one.page) for one in told}
        values = {value_of(one) for one in (step.figures or ('',))[0].split() and step.figures}
        same = len(told) > 1 or {value_of(one) for one in there[0]} >= values if there else False
        return all(there) and pitches == {self.roof.pitches.get('pitch')} and same


def _shorter(figure: str, words: str) -> bool:
    """Return whether a number is told with other decimals: fewer, or all four of an exact foot."""
    decimal = re.fullmatch(r'\d+(\.\d+)?', figure)
    return decimal is not None and any(
        stands_in(f'{round(Decimal(figure), places):f}', words) for places in (4, 3, 2)
    )
