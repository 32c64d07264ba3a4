"""What `find` says in words beside its figures: the sentence of every group, and the prose of the short answers."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator

import pytest
from asking import ask
from claimed import claims, strange
from labels.asked import ASKED, PITCH, RUN

OWN = {
    'two_pitches.drop',
    'two_pitches.side.length',
    'many_sided.length',
    'many_sided.shortening',
    'many_sided.jack',
    'many_sided.tail',
    'many_sided.cheek',
}
"""Groups that say something else than others of their name."""
ANSWERS = {
    'regular': (
        (PITCH, RUN, *ASKED['regular']),
        ('20', '10 ft'),
        ('12', '10 ft', '--stock', '2x12', '--hip-stock', '2x6'),
    ),
    'two pitches': (
        (PITCH, RUN, *ASKED['two pitches']),
        ('8', '10 ft', '--with', '8'),
        ('5', '10 ft', '--with', '20'),
    ),
    'eight sides': ((PITCH, RUN, *ASKED['eight sides']),),
    **{name: ((PITCH, RUN, *ASKED[name]),) for name in ('wall', 'ledger', 'face of a ledger')},
}
"""Questions whose answers together say all that a short answer may say, by the kind of roof."""
SET = {
    'pitch': f'{PITCH} in 12',
    'run': RUN,
    'nearest': '1/16 in',
    'rafters': '2×8',
    'hips': '2×10',
    'valleys': '2×12',
    'other': '5 in 12',
    'sides': '8',
}
"""What the roofs of odd sizes were asked with."""
PAST_SCALE = "the tilt is past a saw's scale"


def said_by_groups(told: object, above: str = '') -> Iterator[tuple[str, dict]]:
    """Return every group that has a sentence, under its whole key."""
    if isinstance(told, dict):
        if 'from' in told:
            yield above, told
        for key, value in told.items():
            yield from said_by_groups(value, f'{above}.{key}' if above else key)


def key_of(path: str, is_shed: bool) -> str:
    """Return the key of a group's claims."""
    path = re.sub(r'\bside_[ab]\b', 'side', path)
    above, _, name = path.rpartition('.')
    if above.rpartition('.')[2] == 'cheek' and name != 'backed_hip':
        return 'jack cheek' if name == 'jack' else 'hip cheek'
    if is_shed and name in ('length', 'tail'):
        return f'shed {name}'
    return path if path in OWN else name


def test_every_group_says_its_lines():
    wanted = claims('find')
    used: dict[str, set[int]] = {key: set() for key in wanted}
    unknown, past = [], []
    for name, asked in ASKED.items():
        told = json.loads(ask('find', PITCH, RUN, *asked, '--format', 'json')[1])
        unknown += [
            (name, 'defers', said) for said in strange(told['defers'], wanted['defers'], {}, used['defers'])
        ]
        named = {'face': told['shed']['run_to']} if 'shed' in told else {}
        for path, group in said_by_groups(told):
            key, text = key_of(path, bool(named)), group['from'].replace('; ', '\n')
            unknown += [
                (name, path, said)
                for said in strange(text, wanted.get(key, ()), named, used.setdefault(key, set()))
            ]
            past += [(name, path)] * (
                (PAST_SCALE in text) == group.get('within_saw_scale', PAST_SCALE not in text)
            )
    assert unknown == []
    assert past == []
    unsaid = {
        key: set(range(len(lines))) - used[key]
        for key, lines in wanted.items()
        if not key.startswith(('answer ', 'cautions'))
    }
    assert {key: places for key, places in unsaid.items() if places} == {}


def prose(answer: str) -> str:
    """Return the words of an answer that stand in no column, a line a block; cautions are proven by their clauses."""
    blocks = []
    for block in answer.split('\n\n'):
        lines = [line.strip() for line in block.split('\n')]
        told = ['\n' if re.search(r'\S\s{2,}\S', line) else line for line in lines]
        blocks += [] if block.startswith('Caution') else [' '.join(told)]
    return '\n'.join(blocks)


@pytest.mark.parametrize('kind', ANSWERS)
def test_the_words_of_a_short_answer(kind):
    wanted, used = claims('find')[f'answer {kind}'], set()
    unknown = []
    for asked in ANSWERS[kind]:
        status, out, _ = ask('find', *asked)
        assert status == 0
        unknown += strange(prose(out), wanted, SET if asked[1] == RUN else {}, used)
    assert unknown == []
    assert [wanted[place] for place in sorted(set(range(len(wanted))) - used)] == []
