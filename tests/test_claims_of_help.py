"""What the command's help and the starter settings say that a measure is: from where to where, and which is level."""

from __future__ import annotations

import re

import pytest
from asking import ask
from claimed import claims, strange

from layouts.verbs import VERBS
from layouts.words.starter import starter

CHECKS = ('length', 'square', 'steps', 'corner', 'turn-over')
ASKED = {verb: (verb,) for verb in VERBS} | {f'check {check}': ('check', check) for check in CHECKS}


def help_of(words: tuple[str, ...]) -> str:
    """Return help without its usage and its examples, a line an option or a paragraph."""
    out = ask(*words, '--help')[1]
    told = re.split(r'\nexamples?:', out.partition('\n\n')[2])[0]
    told = re.sub(r'^(?:options:|positional arguments:|  -h, --help .*)$', '', told, flags=re.M)
    blocks = re.sub(r'\n {8,}(?=\S)', ' ', told).split('\n\n')
    return '\n'.join(block if re.search(r'^ ', block, re.M) else block.replace('\n', ' ') for block in blocks)


def comments() -> str:
    """Return the comments of the starter settings, each with the key that it explains; lists held ready are none."""
    lines = starter().splitlines()
    commented = [line.partition('# ') for line in lines if '# ' in line]
    return '\n'.join(f'{before.partition("=")[0]} {said}'.strip() for before, _, said in commented)


@pytest.mark.parametrize('asked', ASKED)
def test_help(asked, monkeypatch):
    monkeypatch.setenv('COLUMNS', '80')
    wanted, used = claims('help')[asked], set()

    assert strange(help_of(ASKED[asked]), wanted, {}, used, in_order=False) == []
    assert [wanted[place] for place in sorted(set(range(len(wanted))) - used)] == []


def test_starter_settings():
    wanted, used = claims('help')['starter'], set()

    assert strange(comments(), wanted, {}, used) == []
    assert len(used) == len(wanted)
