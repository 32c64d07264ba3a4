"""The rows of the opening by member: what each is called, and which of a pitch's values it has, for page and proof alike."""

from __future__ import annotations

from collections.abc import Iterator

from msgspec import Struct
from msgspec.structs import replace

from layouts.words.runs import INCHES as IN_INCHES
from layouts.words.say import N_, _, say
from tablegen.numbers import text
from tablegen.numbers.units import INCHES
from tablegen.settings import Settings
from tablegen.tables.values import One, Values

COMMON_TITLE, HIP_TITLE = N_('Common rafter'), N_('Hip, valley, jacks')
HELD = N_('Square: level along the {body}, plumb along the {tongue}')
WITH_ROOT = N_('{body} (√288)')
COMMON_LESS = (
    N_('  both figures halved: one step is {step} of run'),
    N_('  both figures divided by {number}: one step is {step} of run'),
)
HIP_LESS = (
    N_('  17 (√288) and rise halved: a step is {step} of COMMON run'),
    N_('  17 (√288) and rise divided by {number}: a step is {step} of COMMON run'),
)
"""What a step is where the square's figures are halved, or made less still."""
LEVEL, ALONG, PLUMB = N_('level'), N_('along top'), N_('plumb')
JACK_DIFFERENCES = 'jack_differences'
"""One figure a spacing."""


class Row(Struct, frozen=True):
    """One line."""

    values: tuple[str, ...]
    """Attributes of Values; none for how the square is held."""
    name: str = ''
    """What it is called; '' for the head of its first value."""
    inner: bool = False
    """Whether it stands further in, as more of the line above it."""
    stock: str = ''
    """Attribute of the settings whose name follows, of a bird's mouth; a reason stands for its figures where it has none."""


class Group(Struct, frozen=True):
    """Lines under a head."""

    name: str
    """'' for lines that have none."""
    heads: tuple[str, ...]
    rows: tuple[Row, ...]
    second: str = ''
    """Name of a second line of heads, '' for none."""
    below: tuple[str, ...] = ()
    """Its heads."""


def _one(*names: str) -> tuple[Row, ...]:
    return tuple(Row((name,)) for name in names)


def _both(*names: str) -> tuple[Row, ...]:
    return tuple(Row((f'{name}_level', f'{name}_along')) for name in names)


COMMON = (
    Group(
        '',
        (),
        (
            *_one('common_plumb_cut', 'common_level_cut'),
            Row(()),
            *_one('common_per_foot'),
            Row(('common_per_foot_part',), inner=True),
            *_one('common_tail_per_foot'),
        ),
    ),
    Group(N_('Off the length, center line to face'), (LEVEL, ALONG), _both('common_at_ridge')),
    Group(
        N_('Bird’s mouth of a {stock}, seat {seat} in, level'),
        (),
        _one('common_height', 'common_heel', 'common_notch', 'common_left'),
    ),
)
_CHEEK = ('{0}_cheek_top', '{0}_cheek_top_12_and', '{0}_cheek_side', '{0}_cheek_blade')
_MOUTH = ('{0}_height', '{0}_heel', '{0}_seat', '{0}_left')
HIP = (
    Group(
        '',
        (),
        (
            *_one('hip_plumb_cut', 'hip_level_cut'),
            Row(()),
            *_one('hip_per_foot'),
            Row(('hip_per_foot_part',), inner=True),
            *_one('hip_tail_per_foot', 'hip_backing', 'hip_drop', 'valley_heel_out'),
        ),
    ),
    Group(
        N_('Off the length, center line to face'),
        (LEVEL, ALONG),
        _both('hip_at_ridge', 'hip_between_commons', 'jack_at_hip'),
    ),
    Group(
        N_('Cheeks'),
        (N_('top edge'), N_('top edge'), N_('side'), N_('blade')),
        tuple(
            Row(tuple(name.format(member) for name in _CHEEK), called)
            for member, called in (('hip', N_('Hip, valley')), ('jack', N_('Jack')))
        ),
        N_('  from square across'),
        (N_('angle'), N_('along the {base}'), PLUMB, N_('tilt')),
    ),
    Group(
        N_('Between the plumb lines of a cheek'),
        (LEVEL, ALONG),
        _both('hip_points', 'hip_set_back', 'jack_points'),
    ),
    Group(
        N_('Bird’s mouth'),
        (N_('height'), N_('heel'), N_('seat'), N_('wood left')),
        tuple(
            Row(tuple(name.format(member) for name in _MOUTH), called, stock=stock)
            for member, called, stock in (
                ('dropped_hip', N_('Dropped hip'), 'hips'),
                ('valley', N_('Valley'), 'valleys'),
            )
        ),
        N_('  on the center line'),
        (PLUMB, PLUMB, LEVEL, N_('square')),
    ),
    Group(N_('Jacks, on center'), (IN_INCHES,), (Row((JACK_DIFFERENCES,), N_('Longer by, along top')),)),
)


def groups(of: tuple[Group, ...], settings: Settings) -> Iterator[Group]:
    """Yield groups with their heads said in the language in use, a book's sizes in place."""
    values = {'stock': settings.rafters.name, 'seat': text.rational(settings.seat), 'base': INCHES.base}
    for group in of:
        spacings = map(text.rational, settings.spacings)
        heads = [_(head).format(**values) for head in group.heads if head != IN_INCHES]
        if IN_INCHES in group.heads:
            heads += [_(IN_INCHES).format(number=spacing) for spacing in spacings]
        below = tuple(_(head).format(**values) for head in group.below)
        name, second = ((_(words) if words else '').format(**values) for words in (group.name, group.second))
        yield replace(group, name=name, heads=tuple(heads), second=second, below=below)


def columns(row: Row, of: Values) -> tuple[One, ...]:
    """Return the columns of a row's figures."""
    if row.values == (JACK_DIFFERENCES,):
        return of.jack_differences
    return tuple(getattr(of, name) for name in row.values)


def called(row: Row, of: Values, settings: Settings) -> str:
    """Return what a row is called."""
    name = _(row.name) if row.name else say(columns(row, of)[0].head)
    if row.stock:
        return _('{member}, {stock}').format(member=name, stock=getattr(settings, row.stock).name)
    return f'  {name}' if row.inner else name
