"""The settings of one copy, as lines of a settings file that makes the same book again."""

from __future__ import annotations

import json
from collections.abc import Iterator, Sequence
from fractions import Fraction
from itertools import takewhile
from pathlib import PurePath

from layouts.paper.page import Index
from layouts.words.say import SOURCE, _
from tablegen.geometry.pitch import Pitch
from tablegen.groups import GROUPS
from tablegen.numbers import text
from tablegen.settings import BOOK_PARTS, EDITIONS, Settings

PAGES_OF = {'how-to': 'one-rafter', **{group: f'group-{group}' for group in GROUPS}}
"""The page that a part always has, where it is not called after the part."""
PLAIN = {'square', 'common', 'hip-valley', 'rise'}
"""Parts whose pages no spacing and no size of lumber changes."""
FEWEST_IN_A_RANGE = 3


def lines(settings: Settings, index: Index | None = None, pitches_named: bool = True) -> tuple[str, ...]:
    """Return the lines; those of what the book has no use for are left out.

    Notes:
        1. A part that was asked for but has no page, since the runs or the other parts are not enough
           for it, is not named; before pages have their numbers, all are. Those of an edition are named by it.
        2. Pitches that are not to be named, being too many for the page, are those of the contents.
    """
    parts = [part for part in BOOK_PARTS if part in settings.parts and (index is None or _is_in(part, index))]
    runs, pitches = settings.runs, _pitches(settings.pitches)
    named = {
        'title': settings.title,
        'owner': settings.owner,
        'language': settings.language,
        'lengths': settings.measure.style,
        'smallest_part': text.mixed(1, settings.measure.per),
        'steep': settings.steep,
        'pitches': pitches,
        'runs': {'from': text.run(runs.first), 'to': text.run(runs.last), 'by': text.run(runs.step)},
    }
    if not settings.steep:
        del named['steep']
    if settings.language == SOURCE:
        del named['language']
    if not set(parts) <= PLAIN:
        named |= {
            'jacks': {'spacings': [_size(spacing) for spacing in settings.spacings]},
            'stock': {
                'ridge': _size(settings.ridge_thickness),
                'hip': _size(settings.hip_thickness),
                'rafter': _size(settings.rafter_thickness),
                'rafters': settings.rafters.name,
                'hips': settings.hips.name,
                'valleys': settings.valleys.name,
                'seat': _size(settings.seat),
            },
        }
    named |= {'paper': settings.paper, 'trim': settings.trim}
    edition = next((name for name, usual in EDITIONS.items() if usual == settings.parts), None)
    named |= {'edition': edition} if edition else {'parts': parts}
    if settings.roofs is not None:
        named['roofs'] = [_file(one) for one in settings.roofs]
    said = {key: f'{key} = {_written(value)}' for key, value in named.items()}
    if not pitches_named:
        said['pitches'] = '# ' + _('pitches: the {count} of the contents').format(count=len(settings.pitches))
    return tuple(said.values())


def _file(name: str) -> str:
    """Return a roof file as it is named from beside a settings file: a path of one machine is of no use to others."""
    path = PurePath(name)
    return path.name if path.is_absolute() else name


def _is_in(part: str, index: Index) -> bool:
    key = PAGES_OF.get(part, part)
    return key in index or any(name.startswith(f'{key}:') for name in index.pages)


def _written(value: object) -> str:
    if isinstance(value, dict):
        return '{ ' + ', '.join(f'{key} = {_written(one)}' for key, one in value.items()) + ' }'
    return json.dumps(value, ensure_ascii=False)


def _size(inches: Fraction) -> str:
    return text.millimeters(inches) if text.is_metric(inches) else f'{text.rational(inches)} in'


def _pitches(pitches: Sequence[Pitch]) -> str | list[str]:
    """Return pitches one by one, those evenly spaced as a range."""
    found = list(_ranges(pitches))
    return found[0] if len(found) == 1 else found


def _ranges(pitches: Sequence[Pitch]) -> Iterator[str]:
    place = 0
    while place < len(pitches):
        some = _evenly_spaced(pitches[place:])
        if len(some) < FEWEST_IN_A_RANGE:
            yield _name(pitches[place])
            place += 1
            continue
        step = text.rational(_rise(some[1]) - _rise(some[0]))
        yield f'{_name(some[0])} to {_name(some[-1])}' + (f' by {step}' if step != '1' else '')
        place += len(some)


def _evenly_spaced(pitches: Sequence[Pitch]) -> Sequence[Pitch]:
    """Return the first few that rise by one step, so far as they are named by inches of rise."""
    risen = list(takewhile(lambda pitch: pitch.degrees is None, pitches))
    count = 1
    while count < len(risen):
        if _rise(risen[count]) - _rise(risen[count - 1]) != _rise(risen[1]) - _rise(risen[0]):
            break
        count += 1
    return pitches[:count]


def _rise(pitch: Pitch) -> Fraction:
    """Return the rise of a pitch that is named by it."""
    assert pitch.rise_in is not None
    return pitch.rise_in


def _name(pitch: Pitch) -> str:
    """Return a pitch so that it can be read in one way: '1/2' could be a rise or a slope."""
    if pitch.degrees is not None:
        return f'{text.rational(pitch.degrees)} deg'
    return pitch.text if '/' in pitch.short and ' ' not in pitch.short else pitch.short
