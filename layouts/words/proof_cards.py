"""The printed heads and sentences by which a proof-reader finds figures on cards."""

from __future__ import annotations

from layouts.words import cards
from layouts.words.cards import ColumnWords
from layouts.words.say import _, say
from tablegen.proof.cards import CardNames
from tablegen.proof.digits import FOOT_IN
from tablegen.tables.runs import head_of

COLUMNS = (
    (cards.PLUMB, 'common-plumb-cut'),
    (cards.LEVEL, 'common-level-cut'),
    (cards.HIP_PLUMB, 'hip-plumb-cut'),
    (cards.COMMON, 'common-per-foot'),
    (cards.HIP, 'hip-per-foot'),
    (cards.JACKS, 'jacks-{spacing}'),
    (cards.CHEEK, 'jack-cheek-top'),
    (cards.HIP_CHEEK, 'hip-cheek-top'),
    (cards.BACKING, 'hip-backing'),
    (cards.DROP, 'hip-drop'),
)
LENGTHS = {'common': 'common', 'hip-valley': 'hip', 'rise': 'rise'}
VALUES = (
    ('plumb', 'common-plumb-cut'),
    ('hip_plumb', 'hip-plumb-cut'),
    ('cheek', 'jack-cheek-top'),
    ('hip_cheek', 'hip-cheek-top'),
    ('tilt', 'hip-backing'),
    ('common', 'common-per-foot'),
    ('hip', 'hip-per-foot'),
)


def card_names() -> CardNames:
    """Return them in the language in use."""
    lengths = []
    for table, key in LENGTHS.items():
        name = say(head_of(table))
        lengths += [(f'{name} {_("inches")}', key), (name, key)]
    return CardNames(
        tuple((head, key) for words, key in COLUMNS for head in _heads(words)),
        _(cards.DROP.meaning),
        _(cards.USE),
        tuple((head, LENGTHS[table]) for table, title in cards.TABLES.items() for head in _titles(title)),
        ((' '.join(map(_, cards.RUN_HEAD)), FOOT_IN), (' '.join(map(_, cards.ODD_HEAD)), 1)),
        tuple(lengths),
        tuple((sentence, _places(sentence)) for sentence in cards.values_sentences()),
        _(cards.RUN_STEPS[1]),
        _(cards.PARTS_HEAD),
        _(cards.EXAMPLE),
        _(cards.CUT_SIZE),
    )


def _heads(words: ColumnWords) -> list[str]:
    heads = [_(one) for one in (words.head, words.narrow) if one]
    return [head.replace('\n', ' ') for head in heads]


def _titles(title: tuple[str, str]) -> list[str]:
    name, line = map(_, title)
    return [name, _('{name}: {line}').format(name=name, line=line)]


def _places(sentence: str) -> tuple[tuple[str, str], ...]:
    return tuple((place, key) for place, key in VALUES if f'{{{place}}}' in sentence)
