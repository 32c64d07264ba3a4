"""Adding up what an example reads, and turning to the places that it cites."""

from __future__ import annotations

import re
from decimal import Decimal

from tablegen.proof.places import named_pitch, stands_in
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
                if one in beside or stands_in(one.replace(INCH, ''), rest.replace(INCH, ''))
            ]
            self._figure(row, found[0], right[0], right[0] if there else beside[0])

    def _cited(self, step: Told, row: str, later: list[Told]) -> None:
        """Turn to every place: it is of the pitch's opening, and what stands there is told in the step, or soon after."""
        places = self.state.places
        if self.example.kind == 'rafter':
            self.state.at_end.append(lambda: self._cited_shortly(step.cited, row))
        if not places.openings or self.example.kind == 'rafter':
            return
        words = ' '.join(f'{one.words} {" & ".join(one.figures)} ' for one in (step, *later)).replace(
            INCH, ''
        )
        for place_ in places.told(step.cited):
            self.found.figures += 1
            pitch, there = places.pitch_of(place_.page), places.figures(place_)
            told = any(
                stands_in(one, words) or _shorter(one, words) for cell in there for one in self._ways(cell)
            )
            if pitch not in self.roof.pitches.values() or not there or not (told or not step.number):
                head = f'{place_.title} {place_.row} {place_.head}'.strip()
                self._fault('cited', row, head, f'{place_.page}, {named_pitch(pitch)}')

    def _ways(self, cell: str) -> set[str]:
        """Return how a figure may be told elsewhere: in feet and inches, or in inches."""
        value = value_of(cell)
        return {one.replace(INCH, '') for one in (cell, *(self.form.length(value) if value else ()))}

    def _cited_shortly(self, cited: str, row: str) -> None:
        """Look for the page, and for the row or the table on it, of a place that stands below a figure."""
        places, found = self.state.places, re.search(r'\d+', cited)
        if not places.openings or not found:
            return
        page, name = int(found[0]), cited[found.end() :].lstrip(', ').replace(', ', ' ')
        self.found.figures += 1
        rows = [
            row.partition(', ')[2].replace(': ', ' ')
            for row, _head, _printed in places.kept.cells.get(page, ())
        ]
        known = any(f'{one} '.startswith(f'{name} ') for one in rows) or name in self.state.names.blocks
        if places.pitch_of(page) != self.roof.pitches.get('pitch') or not known:
            self._fault('cited', row, name, str(page))


def _shorter(figure: str, words: str) -> bool:
    """Return whether a figure of more decimals is told with fewer."""
    decimal = re.fullmatch(r'\d+\.\d+', figure)
    return decimal is not None and any(
        stands_in(f'{round(Decimal(figure), places):f}', words) for places in (3, 2)
    )
