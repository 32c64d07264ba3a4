"""All pitches at a glance: an opening with a row for each pitch, in type that its columns have room for."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import accumulate

from layouts.pages.row_pages import Cell, Over, RowsPage, grouped, parted, slot_em
from layouts.paper.longer import CUTS, fitted
from layouts.paper.page import Draft, Index, Maker
from layouts.paper.trim import FRACTION_OF_WHOLE, SPACE_EM, Trim
from layouts.paper.typeface import advance_em
from layouts.words.pages import AT_A_SPACING, GLANCE_BELOW, GLANCE_HEADS, heading
from layouts.words.say import N_, SOURCE, _, speaking
from tablegen.geometry.pitch import Pitch
from tablegen.numbers import text
from tablegen.numbers.figure import Figure
from tablegen.numbers.units import INCHES
from tablegen.roof.members import Members
from tablegen.settings import Settings
from tablegen.tables.values import One, Values, members_of

ROWS = 24
"""Pitches on an opening."""
PITCH = N_('pitch')
"""Head of the pitches where any has another unit than the rest."""
FIGURES, BOLD, HEAVY = CUTS['figures'], CUTS['bold'], CUTS['heavy']
"""Of figures, heads and labels, as the style sheet sets them."""
LABEL_EM, HEAD_EM, GAP_EM = 1.13, 0.88, 0.36
"""Size of labels and heads, and what stands left of every column, in em of the figures."""
TYPE_REM = 0.84
"""Figures are as large as that, where there is room."""
Chosen = Callable[[Values], tuple[One, ...]]
"""Chooses the columns of a page from a pitch's values."""


def glance_drafts(settings: Settings, trim: Trim) -> list[Draft]:
    """Return the openings, to begin on the left."""
    drafts = []
    for start in range(0, len(settings.pitches), ROWS):
        some = settings.pitches[start : start + ROWS]
        for key, chosen in (('glance', _of_members), ('glance-right', _of_jacks)):
            template = 'glance_right' if key == 'glance-right' else 'glance_left'
            make = _maker(settings, trim, some, key, chosen)
            drafts.append(Draft(template, make, '' if start else key, heading(key)))
    return drafts


def pitch_head(pitches: Sequence[Pitch]) -> tuple[str, str]:
    """Return what stands over a column of pitches: one in degrees has its unit with it."""
    in_base = not any(pitch.text == pitch.short for pitch in pitches)
    return (INCHES.unit, str(INCHES.base)) if in_base else ('', _(PITCH))


def _maker(settings: Settings, trim: Trim, pitches: Sequence[Pitch], key: str, chosen: Chosen) -> Maker:
    def make(index: Index) -> RowsPage:
        columns, members = chosen(Values(settings)), [members_of(pitch, settings) for pitch in pitches]
        rows = [((it.pitch.short, ''), *(_cell(column, it) for column in columns)) for it in members]
        with speaking(SOURCE):  # columns are as wide as in English
            over, heads = _heads(key, settings)
            widths = [_width(head, [row[place] for row in rows], place) for place, head in enumerate(heads)]
            rooms = _rooms(over, widths)
        over, heads = _heads(key, settings)
        size = min(TYPE_REM, trim.text_width / 10 / (sum(widths) + GAP_EM * len(widths)))
        return RowsPage(
            tuple(_fitted(head, width) for head, width in zip(heads, widths, strict=True)),
            grouped(rows),
            tuple(Over(_fitted(one.lines, room), one.columns) for one, room in zip(over, rooms, strict=True)),
            round(size, 3),
            _(GLANCE_BELOW[key]) if key in GLANCE_BELOW else '',
        )

    return make


def _of_members(of: Values) -> tuple[One, ...]:
    cuts = of.common_plumb_cut, of.common_level_cut, of.hip_plumb_cut, of.hip_level_cut
    return (*cuts, of.common_per_foot, of.hip_per_foot)


def _of_jacks(of: Values) -> tuple[One, ...]:
    return (*of.jack_differences, of.jack_cheek_top, of.hip_cheek_top, of.hip_backing)


def _heads(key: str, settings: Settings) -> tuple[tuple[Over, ...], tuple[tuple[str, str], ...]]:
    """Return what stands over the heads, and the heads, the pitches' first; those of jacks are one a spacing."""
    over, heads = [Over((), 1)], [pitch_head(settings.pitches)]
    for words, some in GLANCE_HEADS[key]:
        if some is None:
            names = [_(AT_A_SPACING).format(spacing=text.rational(spacing)) for spacing in settings.spacings]
        else:
            names = list(map(_, some))
        over.append(Over(tuple(_(words).split('\n')), len(names)))
        heads += [(high, low) for high, _nl, low in (name.rpartition('\n') for name in names)]
    return tuple(over), tuple(heads)


def _cell(column: One, it: Members) -> Cell:
    figure = column.cell(it)
    return parted(figure) if isinstance(figure, Figure) else ('', '')


def _width(head: Sequence[str], cells: Sequence[Cell], place: int) -> float:
    """Return how wide a column is, in em of the figures."""
    cut, scale = (FIGURES, 1.0) if place else (HEAVY, LABEL_EM)
    figures = [advance_em(figure, *cut) * scale for figure, _fraction in cells]
    slot = slot_em(cells)
    fractions = SPACE_EM + slot * FRACTION_OF_WHOLE if slot else 0.0
    return max(max(figures) + fractions, *map(_head_em, head))


def _fitted(lines: Sequence[str], width: float) -> tuple[str, ...]:
    return tuple(fitted(line, width, HEAD_EM, 'bold') for line in lines)


def _rooms(over: Sequence[Over], widths: Sequence[float]) -> list[float]:
    """Return how wide is what stands over some columns: they are, or widen for what does."""
    firsts = accumulate((one.columns for one in over), initial=0)
    return [
        max([sum(widths[at : at + one.columns]) + GAP_EM * (one.columns - 1), *map(_head_em, one.lines)])
        for at, one in zip(firsts, over, strict=False)
    ]


def _head_em(line: str) -> float:
    return advance_em(line, *BOLD) * HEAD_EM
