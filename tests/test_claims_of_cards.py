"""What cards say in words, sentence by sentence; their figures are proven by head and label."""

from __future__ import annotations

from claimed import claims, strange
from skewed import SKEWED

from layouts.cards.faces import WordsFace
from layouts.cards.formats import FORMATS
from layouts.cards.plan import plan_cards
from layouts.verbs.options import with_pitches
from tablegen.settings import Settings, read_settings

BOOKS = {
    'skewed': read_settings(SKEWED, ''),
    'plain': Settings(),
    'feet': read_settings('pitches = ["30 deg", 6]\nlengths = "feet-inches"', ''),
}
PITCHES = ('', '6')


def words_of(face) -> str:
    """Return the words of a face but those of its tables: a line each name with its meaning."""
    lines = [face.title.what, ' '.join(face.foot)]
    for block in face.blocks if isinstance(face, WordsFace) else ():
        rows = () if block.figures else block.rows
        lines += [
            block.head,
            ' '.join(('\n' if len(row) > 1 and row[0] else '') + ' '.join(row) for row in rows),
        ]
    return '\n'.join(lines).replace('com.', 'com')


def test_every_sentence_of_a_card_is_claimed():
    wanted, used, unknown = claims('cards')['cards'], set(), []
    for name, book in BOOKS.items():
        for size in FORMATS:
            for pitches in PITCHES:
                settings = with_pitches(book, pitches) if pitches else book
                for face in plan_cards(settings, size).faces:
                    said = strange(words_of(face), wanted, {}, used, in_order=False)
                    unknown += [f'{name}, {size}: {one}' for one in said]
    assert unknown == []
    assert [wanted[place] for place in sorted(set(range(len(wanted))) - used)] == []
