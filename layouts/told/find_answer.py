"""The answer of find: in short, whole or in part for a person, or as one JSON object for a program."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from layouts.told import dialect
from layouts.told.blocks import DEFERS as NOT_STRENGTH
from layouts.told.blocks import cautions_block, joined
from layouts.told.find_short import short_text
from layouts.told.objects import as_data, json_text, values_of
from layouts.told.walk import capital, lines_of
from layouts.words.fields import label
from layouts.words.say import _, say
from tablegen.numbers import text
from tablegen.numbers.figure import Figure, decimal_figure, length_figure
from tablegen.numbers.units import INCHES
from tablegen.roof.answer import RegularRoof, answer
from tablegen.roof.cautions import DEFERS
from tablegen.roof.figures import FINEST_PER, READ_PLACES, given
from tablegen.roof.names import Against
from tablegen.roof.question import ManySided, Regular, RoofQuestion, Shed, TwoPitches
from tablegen.roof.shed import ShedRoof

CAUTION = 'caution'
ASKED = ('pitch', 'rafters'), ('rise_per_foot', 'run', 'nearest')
"""What was asked, under these keys: names, and lengths."""


def _names(record: type[RegularRoof] | type[ShedRoof]) -> tuple[str, ...]:
    return tuple(name.replace('_', '-') for name in record.__struct_fields__ if name != CAUTION)


SHOWN, SHED_SHOWN = _names(RegularRoof), _names(ShedRoof)
"""What can be picked of an answer about a regular roof, and about a shed."""


def find_text(ask: RoofQuestion, everything: bool, picked: Sequence[str]) -> str:
    """Return the answer for a person: in short, whole, or some of its groups by name."""
    found = answer(ask, listed=everything or bool(picked))
    head = _head(ask)
    if not everything and not picked:
        return short_text(head, found, ', '.join(SHOWN))
    groups = [list(lines_of(one, capital(label(name)))) for name, one in _groups(found, picked)]
    return joined([[head], *groups, cautions_block(found.caution), [_(NOT_STRENGTH)]])


def find_json(ask: RoofQuestion, picked: Sequence[str]) -> str:
    """Return the answer for a program: what was asked, the groups as named objects, the cautions as a list."""
    found = answer(ask)
    told = {
        'pitch': ask.pitch.text,
        'rise_per_foot': dialect.told(length_figure(ask.pitch.rise, ask.measure)),
        'run': dialect.length(ask.run_in, _run(ask)),
        'nearest': dialect.told(_part(ask)),
        'rafters': ask.stock.name,
        **{name: as_data(one) for name, one in _groups(found, picked)},
        CAUTION: as_data(found.caution),
        'defers': say(DEFERS),
    }
    return json_text(told)


def _groups(found: object, picked: Sequence[str]) -> list[tuple[str, object]]:
    """Return an answer's groups by name; of those picked, in its order, where any is."""
    return [
        (name, one)
        for name, one in values_of(found).items()
        if name != CAUTION and (not picked or name.replace('_', '-') in picked)
    ]


def _head(ask: RoofQuestion) -> str:
    """Return what was asked, in two lines or three."""
    pitch = ask.pitch.text
    if ask.pitch.rise_in is None:
        rise = decimal_figure(ask.pitch.rise, READ_PLACES).text
        pitch = _('{pitch} ({rise} {base})').format(pitch=pitch, rise=rise, base=INCHES.over_base)
    run = _('{pitch}, run {run}, to the nearest {part} in').format(
        pitch=pitch, run=_run(ask), part=_part(ask).text
    )
    values = {'run': run, 'rafters': ask.stock.name, 'hips': ask.hips.name, 'valleys': ask.valleys.name}
    match ask.roof:
        case Regular():
            words = _('{run}\nrafters {rafters}, hips {hips}, valleys {valleys}')
        case TwoPitches(other, corner):
            words = _(
                '{run}\nside A; side B {other}, corner {corner} degrees\n'
                'rafters {rafters}, hips {hips}, valleys {valleys}'
            )
            values |= {'other': other.text, 'corner': text.rational(corner)}
        case ManySided(sides):
            words = _('{run}, {sides} sides\nrafters {rafters}, hips {hips}')
            values |= {'sides': str(sides)}
        case Shed(Against.WALL):
            words = _('{run}\nshed, against a wall; rafters {rafters}')
        case Shed():
            words = _('{run}\nshed, on a ledger; rafters {rafters}')
    return words.format(**values)


def _run(ask: RoofQuestion) -> str:
    """Return the run as a person says it; in decimals where no tape shows it."""
    said = text.run(ask.run_in)
    return f'{given(ask.run_in).text} in' if '/' in said and ask.run_in.denominator > FINEST_PER else said


def _part(ask: RoofQuestion) -> Figure:
    return given(Fraction(1, ask.measure.per))
