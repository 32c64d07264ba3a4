"""What `find` tells, key by key and line by line, worked out in space for a corner of odd sizes."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from fractions import Fraction
from functools import cache

import pytest
from asking import ask
from fifty_digits import mp, mpf
from labels.asked import ASKED, PITCH, RUN
from labels.found import regular
from labels.found_lines import MANY_SIDES, REGULAR, SENTENCES, SHED, TWO_PITCHES, figure, sentence
from labels.found_sides import many_sides, shed
from labels.found_two import two_pitches
from labels.told import Told, inches, turns
from oracle import setting_out
from oracle.corner import corner, many_sided
from oracle.rounding import nearest, part

STEEP, FLAT = Fraction(15, 2), Fraction(5)
BLOCKS = {
    'regular': (REGULAR, ''),
    'two pitches': (TWO_PITCHES, 'two_pitches.'),
    'eight sides': (MANY_SIDES, 'many_sided.'),
    'ledger': (SHED, ''),
}


def is_words(key: str) -> bool:
    """Return whether a key is of a sentence."""
    return key.startswith(('caution.', 'defers')) or key.endswith('.from')


@cache
def expected(name: str) -> Told:
    """Return what should be told."""
    at, sizes = corner(STEEP), ('7 1/2', '5')
    return {
        'regular': lambda: regular(at, '7 1/2'),
        'two pitches': lambda: two_pitches(corner(STEEP, FLAT), sizes),
        'two pitches at 120': lambda: two_pitches(corner(STEEP, FLAT, 120), sizes),
        'eight sides': lambda: many_sides(many_sided(STEEP, 8), '7 1/2', 8),
        'wall': lambda: shed(at, '7 1/2'),
        'ledger': lambda: shed(at, '7 1/2', Fraction(5, 2)),
        'face of a ledger': lambda: shed(at, '7 1/2', Fraction(5, 2), to_face=True),
    }[name]()


def flat(told: object, above: str = '') -> Iterator[tuple[str, object]]:
    """Return every value under its whole key; places in a list count from 0."""
    if isinstance(told, (dict, list)):
        for key, value in told.items() if isinstance(told, dict) else enumerate(told):
            yield from flat(value, f'{above}.{key}' if above else str(key))
    else:
        yield above, told


@pytest.mark.parametrize('name', ASKED)
def test_every_key(name):
    status, out, err = ask('find', PITCH, RUN, *ASKED[name], '--format', 'json')
    told = {key: value for key, value in flat(json.loads(out)) if not is_words(key)}
    wanted = expected(name)

    assert (status, err) == (0, '')
    assert [
        f'{key}: told {told.get(key)}, expected {value}'
        for key, value in wanted.items()
        if told.get(key) != value
    ] == []
    assert sorted(set(told) - set(wanted)) == []


def blocks(text: str) -> dict[tuple[str, ...], dict[str, tuple[str, ...]]]:
    """Return the blocks of lines that have heads: heads, then labels with their figures."""
    found = {}
    for block in text.split('\n\n'):
        first, *lines = [re.split(r'\s{2,}', line.strip()) for line in block.split('\n')]
        if len(first) > 1:
            rows = [cells for cells in lines if len(cells) == len(first)]
            found[tuple(first)] = {label: tuple(cells) for label, *cells in rows}
            assert len(found[tuple(first)]) == len(rows), f'labels alike under {first}'
    return found


@pytest.mark.parametrize('name', BLOCKS)
def test_every_line(name):
    _, out, _ = ask('find', PITCH, RUN, *ASKED[name])
    wanted, group = BLOCKS[name]

    assert blocks(out) == {
        heads: {
            label: tuple(figure(key, expected(name), group) for key in keys) for label, keys in rows.items()
        }
        for heads, rows in wanted.items()
    }


@pytest.mark.parametrize('name', SENTENCES)
def test_every_sentence_with_figures(name):
    _, out, _ = ask('find', PITCH, RUN, *ASKED[name])
    told, group = ' '.join(out.split()), BLOCKS[name][1]

    for words in SENTENCES[name]:
        assert sentence(words, expected(name), group) in told


# What is found without a roof ----------------------------------------------------------------------------------

LEVEL = ('pitch', '--level', '24', '--gap', '13 1/4')
SLOPE = ('pitch', '--length', '14 ft 5 in', '--run', '12 ft')


def turn(up, over) -> Told:
    """Return a pitch found from a rise over a run."""
    foot = 12 * up / over
    half = Fraction(nearest(foot, 2), 2)
    sign = '+' if foot > half else ''
    off = inches(off_by_per_foot=foot - half)
    return {
        **inches(rise_per_foot=foot),
        **turns(angle=mp.atan2(up, over)),
        'nearest_half_pitch': f'{part(half)} in 12',
        'off_by_per_foot.inches': off['off_by_per_foot.inches'].replace('−', '-'),
        'off_by_per_foot.text': f'{sign}{off["off_by_per_foot.text"]}',
    }


def found_without_a_roof() -> dict[tuple[str, ...], tuple[str, Told]]:
    """Return what should be told, by what is asked."""
    cut = setting_out.brace_cut
    brace = {
        **inches(leg=36, other_leg=24, length=setting_out.diagonal(36, 24)),
        **turns(cut_on_leg=cut(36, 24), cut_on_other_leg=cut(24, 36)),
    }
    return {
        LEVEL: ('pitch_found', turn(mpf(53) / 4, mpf(24))),
        SLOPE: ('pitch_found', turn(mp.sqrt(mpf(173) ** 2 - mpf(144) ** 2), mpf(144))),
        ('diagonal', '24 ft', '16 ft'): (
            'rectangle',
            inches(length=288, width=192, diagonal=setting_out.diagonal(288, 192)),
        ),
        ('brace', '3 ft', '2 ft'): ('brace', brace),
    }


@pytest.mark.parametrize('asked', found_without_a_roof(), ids=' '.join)
def test_every_key_without_a_roof(asked):
    name, wanted = found_without_a_roof()[asked]
    _, out, _ = ask(*asked, '--format', 'json')
    told = dict(flat(json.loads(out)[name]))

    assert {key: value for key, value in told.items() if key != 'from'} == wanted
