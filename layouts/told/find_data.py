"""What find tells a program: one JSON object, every measured number a decimal string."""

from __future__ import annotations

import json
from collections.abc import Sequence

from layouts.words.caution import caution_source, caution_text
from layouts.words.say import say
from tablegen.numbers import text
from tablegen.roof.called import Called
from tablegen.roof.cautions import DEFERS
from tablegen.roof.question import RoofQuestion
from tablegen.roof.readings import Group, as_data, length, set_length, words


def as_json(ask: RoofQuestion, groups: Sequence[Group], caution: Sequence[Called]) -> str:
    """Return what was asked and found as JSON: what was asked, the groups as named objects, the cautions as a list."""
    asked = Group(
        '',
        (
            words('pitch', ask.pitch.text),
            length('rise_per_foot', ask.pitch.rise, ask.measure),
            set_length('run', ask.run_in, text.run(ask.run_in)),
            words('nearest', f'{text.mixed(1, ask.measure.per)} in'),
            words('rafters', ask.stock.name),
        ),
    )
    told = as_data(Group('', (*asked.values, *groups))) | {
        'caution': [called_data(one) for one in caution],
        'defers': say(DEFERS),
    }
    return json.dumps(told, indent=2, ensure_ascii=False) + '\n'


def called_data(one: Called) -> dict[str, object]:
    """Return a caution with those who call for it, its words and its clauses."""
    return {
        'name': one.caution.key,
        'of': list(one.of),
        'text': caution_text(one.caution),
        'source': caution_source(one.caution),
    }
