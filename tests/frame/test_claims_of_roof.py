"""What `roof` says in words: every sentence of its answers, and from where to where JSON says that figures are measured."""

from __future__ import annotations

import json
import re
import sys
from itertools import chain

from asking import ask
from claimed import claims, strange
from test_claims_of_find import prose

from layouts.words.starter import roof_starter
from tablegen.frame import buying

HIP = ('--kind', 'hip', '--pitch', '7', '--width', '24 ft', '--length', '36 ft')
CHANGED = {
    'shed': (('upper = "ledger"', 'upper = "over-beam"'), ('thickness = "1 1/2 in"', 'thickness = "3 1/2 in"')),
    'gable': (
        ('gable = "0"', 'gable = "16 in"'), ('fascia = "0"', 'fascia = "3/4 in"'),
        ('lengths = ["8 ft", "10 ft", "12 ft", "14 ft", "16 ft", "18 ft", "20 ft", "24 ft"]', 'lengths = ["16 ft"]'),
    ),
    'gambrel': (),
    'hip': (
        ('#end_pitch = "9"', 'end_pitch = "9"'), ('#eaves = "matched"', 'eaves = "equal"'),
        ('tails = "plumb"', 'tails = "square"'), ('eave = "12 in"', 'eave = "16 in"'),
    ),
    'wing': (),
    'half-hip': (('tails = "plumb"', 'tails = "square"'),),
    'bay': (('hips = "dropped"', 'hips = "backed"'),),
    'many-sided': (),
}  # fmt: skip
"""Starters, each with lines changed, whose answers together say all that an answer may say, but for where members stand."""
ELL = (
    ('from_left = "8 ft"', 'from_left = "0"'),
    ('main_ends = 0', 'main_ends = 1'),
    ('#pitch = "7"', 'pitch = "9"'),
)
MIDDLES = (('wall_through = "corners"', 'wall_through = "middles"'),)
BLIND = (('valleys = "both"', 'valleys = "blind"'),)
"""What makes the starter of a wing an L, that of a bay one of half sides, and a wing one that is laid on."""
OWN_FROM = ('head', 'tail', 'mouth', 'caution')
"""Groups of a member that find has too: tests/claims/find.toml claims theirs."""


def asked(kind: str, *words: str, changed: tuple = ()) -> str:
    path = f'{kind}.toml'
    written = roof_starter(kind)
    for old, new in changed or CHANGED[kind]:
        assert old in written
        written = written.replace(old, new)
    with open(path, 'w', encoding='utf-8') as file:
        file.write(written)
    status, out, _ = ask('roof', path, *words)
    assert status == 0
    return out


def without_the_head(answer: str) -> str:
    """Return an answer without what was asked, which stands first, and places, which are figures beside marks."""
    kept = answer.partition('\n\n')[2]
    kept = re.sub(r'^(\S.* {2}\S.*\n)  [a-z].*\n', r'\1', kept, flags=re.M)  # a head's name goes on
    kept = re.sub(r'^(  \S.* {2}\S.*\n)(?: {4}\S.*\n)+', r'\1', kept, flags=re.M)  # a row's does
    return re.sub(r'^Places\n(?:  .*\n)+', '', kept, flags=re.M)


def test_the_words_of_the_answers(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    wanted, used, unknown = claims('roof')['answer'], set(), []
    answers = [
        *map(asked, CHANGED),
        asked('wing', changed=ELL),
        asked('wing', changed=BLIND),
        asked('bay', changed=MIDDLES),
        ask('roof', *HIP, '--show', 'places')[1],
    ]
    monkeypatch.setattr(buying, 'SECONDS', 0)
    answers.append(asked('wing'))
    monkeypatch.setitem(sys.modules, 'tablegen.frame.cutting_search', None)  # as where no solver is
    answers.append(asked('wing'))
    for answer in answers:
        assert [line for line in answer.splitlines() if len(line) > 80] == []
        past = re.search(r'scale: (.*?): by hand', ' '.join(answer.split()))
        told = {
            'past': re.sub('[,;]', '', past[1]) if past else '',
            'laid': laid[1].replace(',', '')
            if (laid := re.search(r'^(LJ.*?), lower end: level', answer, flags=re.M))
            else '',
            'valleys': 'V1 V2’s' if 'V2' in answer else 'V’s',
            'hips': hips[1].replace(',', '')
            if (hips := re.search(r'^Back (.*?): from', answer, flags=re.M))
            else '',
        }
        unknown += strange(prose(without_the_head(answer)), wanted, told, used, in_order=False)

    assert unknown == [], unknown
    assert [wanted[place] for place in sorted(set(range(len(wanted))) - used)] == []


def test_from_where_figures_are_measured(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    mitered = (('fascia = "0"', 'fascia = "3/4 in"'),)
    told = [
        json.loads(asked(kind, '--format', 'json', changed=lines))
        for kind, lines in (('gable', ()), ('wing', mitered))
    ]
    wanted, used = claims('roof')['from'], set()
    groups = [
        group['from'] for path, group in walked(told) if not any(f'.{own}' in f'.{path}' for own in OWN_FROM)
    ]
    text = '\n'.join(chain.from_iterable(one.split('; ') for one in dict.fromkeys(groups)))

    assert strange(text, wanted, {}, used, in_order=False) == []
    assert [wanted[place] for place in sorted(set(range(len(wanted))) - used)] == []


def walked(told: object, above: str = ''):
    """Return every group that has a sentence, in lists too, under its whole key."""
    if isinstance(told, list):
        for one in told:
            yield from walked(one, above)
        return
    yield from ((above, told),) if isinstance(told, dict) and 'from' in told else ()
    for key, one in told.items() if isinstance(told, dict) else ():
        yield from walked(one, f'{above}.{key}')
