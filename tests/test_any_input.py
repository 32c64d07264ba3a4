"""Any text and any bytes to every reader: settings, roofs, cards, what a square shows, booklets, values of a command line.

Each is answered or refused in lines, at once, with nothing on standard output where it is refused, no file left and
nothing asked of a network. The suite tries 1,500 in all, without planning, setting or framing what can be read;
`-m thorough` 20,000, whole books planned and roofs framed.
"""

from __future__ import annotations

import argparse
import sys
from pathlib import Path
from time import process_time

import pytest
from asking import ask
from hypothesis import example, given, settings
from hypothesis import strategies as st
from quick_books import names

from layouts import build
from layouts.cards.formats import FORMATS
from layouts.verbs import VERBS, make
from layouts.verbs.whole import command_parser
from tablegen.frame.roof_keys import KEYS
from tablegen.settings import READERS

MOST_SECONDS = 2
"""Of work: other programs may have the machine."""
FEW, MANY = 400, 4_000
"""Of each of the five readers, in the suite and thoroughly."""
NEVER = {'--out', '--pdf', '--open', '--ask', '--help'}
"""Options that write a file, show one or ask."""
SOUND = [
    '6', '8', '7 1/2', '1/16', '4 ft', '10 ft', '13 ft 5 1/2 in', '2x8', '16 in', '1 to 12', '30 deg', 'ledger', 'a4',
    'hip', 'common', 'json', 'csv', 'all', 'make', 'square', 'a.toml',
]  # fmt: skip
ODD = [
    '1/2', '-1', '0', '1/0', '1 to 1e9', '1e9', 'inf', 'nan', '0x2', '\N{VULGAR FRACTION ONE HALF}', '\N{ARABIC-INDIC DIGIT SIX}',
    '\x00', '', '-', '--', '</b>', '{{ 7 }}', '%s', '../..', '~', 'http://a.invalid/x', '9' * 400, '6,' * 90, '"', "'''",
    '[6]', '{a = 1}', 'true', '1979-05-27', 'a.csv', '2 x', '6 in 12 in 12', '-9 ft', '\u2028', '\ufeff6', '\x1b[2J',
]  # fmt: skip
COLUMNS = ['rise', 'common', 'hip_valley', 'jack_16', 'jack_24', 'jack_cheek', 'hip_cheek']
TEXT = st.text(st.characters(blacklist_categories=['Cs']), max_size=12)
WORD = st.one_of(st.sampled_from(SOUND), st.sampled_from(ODD), TEXT)
VALUE = st.one_of(
    st.sampled_from(ODD),
    st.sampled_from(SOUND).map(lambda word: f'"{word}"'),
    st.one_of(st.integers(), st.floats()).map(str),
    TEXT.map(lambda text: f'"{text}"'),
    st.lists(st.sampled_from(SOUND), max_size=3).map(
        lambda some: '[' + ', '.join(f'"{one}"' for one in some) + ']'
    ),
)


def files(keys) -> st.SearchStrategy[bytes]:
    """Return settings or roof files: keys that there are with any value, text, bytes."""
    lines = st.lists(st.tuples(st.sampled_from(sorted(keys)), VALUE).map(' = '.join), max_size=6).map(
        '\n'.join
    )
    return st.one_of(
        lines.map(lambda text: text.encode('utf-8', 'replace')), TEXT.map(str.encode), st.binary(max_size=40)
    )


def tables() -> st.SearchStrategy[bytes]:
    """Return files of what a square shows: its columns or others, a few rows of any cells."""
    cell = st.one_of(
        st.sampled_from(['', '8', '17', '14.42', '6 15/16', '18.78']), st.sampled_from(ODD), TEXT
    )
    row = st.lists(cell, min_size=1, max_size=8).map(','.join)
    head = st.one_of(st.just(','.join(COLUMNS)), st.permutations(COLUMNS).map(','.join), row)
    table = st.tuples(head, st.lists(row, max_size=3).map('\n'.join)).map('\n'.join)
    return st.one_of(table.map(lambda text: text.encode('utf-8', 'replace')), st.binary(max_size=60))


def parsers() -> list[argparse.ArgumentParser]:
    """Return the parser of every verb, and of every check."""
    waiting: list[argparse.ArgumentParser] = [command_parser(VERBS)]
    for parser in waiting:
        below = [one for one in parser._actions if isinstance(one, argparse._SubParsersAction)]
        waiting += [other for one in below for other in one.choices.values()]
    return [one for one in waiting if one.prog.count(' ')]


@st.composite
def lines(draw) -> list[str]:
    """Return a command line: a verb, words in its places, some of its options with any value."""
    parser = draw(st.sampled_from(PARSERS))
    words = parser.prog.split()[1:]
    options = [one for one in parser._actions if one.option_strings and one.option_strings[-1] not in NEVER]
    for one in draw(st.lists(st.sampled_from(options), max_size=3)) if options else []:
        words.append(one.option_strings[-1])
        words += [draw(WORD) for _ in range(one.nargs if isinstance(one.nargs, int) else 1)]
    places = [one for one in parser._actions if not one.option_strings]
    words += [draw(WORD) for one in places if one.nargs is None or draw(st.booleans())]
    if words[0] == 'make':
        words.append('--plan')
    return words


PARSERS = parsers()
READ = {
    'settings': st.tuples(st.just(['make', 'a.toml', '--plan']), files(READERS)),
    'roofs': st.tuples(st.just(['roof', 'a.toml', '--show', 'heights']), files([*KEYS, 'title'])),
    'cards': st.tuples(
        st.tuples(st.sampled_from([*FORMATS, *ODD]), WORD).map(
            lambda both: ['card', 'a.toml', '--size', both[0], '--pitches', both[1]]
        ),
        files(READERS),
    ),
    'squares': st.tuples(st.just(['check', 'square', '--reads', 'a.toml']), tables()),
    'lines': st.tuples(lines(), st.one_of(files(READERS), files(KEYS), tables())),
}


def refused_or_done(words: list[str], content: bytes, folder: Path) -> None:
    """Give a line and the file that it may name to the command."""
    (folder / 'a.toml').write_bytes(content)
    began = process_time()
    status, told, remarks = ask(*words)

    assert process_time() - began < MOST_SECONDS, words
    assert status in (0, 1, 2), words
    assert (told == '') == (status == 2), words
    assert all(
        line.startswith('rafterbook') for line in remarks.splitlines() if not line.startswith('made in')
    ), words
    assert names(folder) == ['a.toml'], words


@pytest.fixture(scope='module')
def empty(tmp_path_factory) -> Path:
    """A folder to work in; nobody answers, and nothing is typeset: cards and patterns are laid out."""
    with pytest.MonkeyPatch.context() as patched:
        folder = tmp_path_factory.mktemp('files')
        patched.chdir(folder)
        patched.setattr(sys, 'stdin', None)
        patched.setattr(build, 'typeset', lambda jobs, tell=None: None)
        patched.setattr(build, 'finish_cards', lambda cards, out: ['a card'])
        patched.setattr(build, 'put_in_place', lambda work, names: None)
        patched.setattr(build, '_write_patterns', lambda *asked: None)
        yield folder


@pytest.mark.parametrize('reader', READ)
def test_anything_is_answered_or_refused(reader, empty, no_network, monkeypatch):
    monkeypatch.setattr(make, '_planned', lambda settings: 'a plan')

    @settings(max_examples=FEW)
    @given(READ[reader])
    def tried(asked):
        refused_or_done(*asked, empty)

    tried()


@pytest.mark.thorough
@pytest.mark.parametrize('reader', READ)
def test_thousands_are(reader, empty, no_network):
    @settings(max_examples=MANY)
    @given(READ[reader])
    @example((['make', 'a.toml', '--plan'], b'title = "</title><script src=http://a/>"\npitches = [6]'))
    def tried(asked):
        refused_or_done(*asked, empty)

    tried()
