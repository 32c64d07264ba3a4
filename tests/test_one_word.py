"""One word for one thing in the whole command: an option that several verbs have is called, written and told alike."""

from __future__ import annotations

import argparse
from collections import defaultdict
from collections.abc import Iterator

import pytest
from asking import ask

from layouts.verbs import VERBS
from layouts.verbs.whole import command_parser
from tablegen.settings import READERS

TOLD_ALIKE = ('--pitches', '--nearest', '--lengths', '--steep', '--tape', '--pitch')
"""Options that mean the same wherever they stand: their help says so in the same words."""
TOLD_OTHERWISE = {
    ('--nearest', 'rafterbook check length'): 'the part of a book that was read, not of an answer',
    ('--pitches', 'rafterbook check square'): 'those that a square is stamped with',
}
OTHER_THINGS = {
    '--out': {'DIR': 'several files go into a folder', 'FILE': 'one file has a name'},
    '--reads': {'LENGTH': 'what was read off a tape', 'FILE': 'what was read off a whole square'},
}
"""Options that take two kinds of value, with the reason for each."""
SEVERAL = {'--pitches': '--pitch', '--runs': '--run'}
"""Several have a word of their own, from which and to which the other leads: what stands for one is no list."""
OTHER_WORDS = {
    '--table': 'prints one, --tables lists them',
    '--length': 'is measured, --lengths says how it reads',
}
"""Words whose plural stands for another thing."""
BOOK_KEYS = {'--nearest': 'smallest_part', '--runs': 'runs.from', '--roof': 'roofs'}
"""make's options that are not called as their key: the word of all verbs is older than the file's."""
NO_KEY = {'--out', '--plan', '--ask', '--open', '--tagged', '--fresh', '--no-proof'}


def parsers() -> Iterator[tuple[str, argparse.ArgumentParser]]:
    """Return every verb, and every check, by its words."""
    waiting: list[argparse.ArgumentParser] = [command_parser(VERBS)]
    for parser in waiting:
        below = [one for one in parser._actions if isinstance(one, argparse._SubParsersAction)]
        waiting += [other for one in below for other in one.choices.values()]
        if not below:
            yield parser.prog, parser


def options() -> dict[str, dict[str, argparse.Action]]:
    """Return options by their names, each as the verbs declare it."""
    found: dict[str, dict[str, argparse.Action]] = defaultdict(dict)
    for prog, parser in parsers():
        for one in parser._actions:
            for name in one.option_strings:
                found[name][prog] = one
    return dict(found)


def test_every_verb_was_looked_at():
    assert {prog.split(' ')[1] for prog, _ in parsers()} == set(VERBS)
    assert len(options()) > 50


@pytest.mark.parametrize('name', options())
def test_what_follows_an_option_is_called_alike(name):
    after = {one.metavar or one.dest.upper() for one in options()[name].values() if one.nargs != 0}

    assert after <= set(OTHER_THINGS[name]) if name in OTHER_THINGS else len(after) <= 1


@pytest.mark.parametrize('name', TOLD_ALIKE)
def test_an_option_that_means_the_same_is_told_alike(name):
    told = {prog: one.help for prog, one in options()[name].items()}

    assert len({said for prog, said in told.items() if (name, prog) not in TOLD_OTHERWISE}) == 1


def test_what_asks_for_a_flag_in_one_verb_takes_no_value_in_another():
    assert [name for name, of in options().items() if len({one.nargs == 0 for one in of.values()}) > 1] == []


def test_a_word_and_its_plural_never_stand_for_one_thing():
    names = {name for name in options() if f'{name}s' in options() or f'{name}es' in options()}

    assert names == {*SEVERAL.values(), *OTHER_WORDS}


@pytest.mark.parametrize(('several', 'one'), SEVERAL.items())
def test_who_takes_the_one_word_for_the_other_is_led_to_it(several, one):
    for given, meant in ((several, one), (one, several)):
        for prog, parser in parsers():
            if meant in parser.options() and given not in parser.options() and prog != 'rafterbook pitch':
                words = [word for action in parser._actions if action.required for word in needed(action)]
                line = ask(*prog.split(' ')[1:], *words, given, '6')[2]
                assert line.endswith(f'did you mean {meant}?\n'), line


def needed(action: argparse.Action) -> list[str]:
    return [*action.option_strings[:1], *['6'] * (action.nargs or 1)]


def test_a_book_s_options_are_called_as_the_keys_of_its_file():
    (parser,) = [one for prog, one in parsers() if prog == 'rafterbook make']

    for name in set(parser.options()) - NO_KEY:
        assert BOOK_KEYS.get(name, name.removeprefix('--')) in READERS
