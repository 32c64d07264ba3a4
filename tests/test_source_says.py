"""What the source says by itself: no English in tablegen, no number that a system of units counts by outside its record."""

import ast
import re
from collections.abc import Iterator
from pathlib import Path
from string import Formatter

import pytest
from each import over_each
from test_source import TEMPLATES, TOP, sources, tree_of

from layouts.words import say

COUNTED = {12, 16}
"""Numbers that a system of units says."""
COUNTS_OTHERS = {
    'tablegen/numbers/units.py': 'says how inches count',
    'tablegen/geometry/stepping.py': 'the square itself: its arms, its foot of run, its sixteenths',
    'tablegen/checking/square_judging.py': 'twelfths of an inch, as some squares are engraved',
    'tablegen/numbers/angles.py': 'digits kept back, and what the terms of a series are multiplied by',
    'layouts/cards/one_pitch.py': 'feet that a card of runs has at least',
    'layouts/pages/pitch_pages.py': 'thumb tabs on an edge',
    'layouts/words/proof_pages.py': 'steps that a table of marks counts',
    'layouts/pdf/typefaces.py': 'hexadecimal digits of a glyph',
    'tablegen/written/files.py': 'names of a key, past which its file is refused',
}
OWN_UNITS = ('layouts/drawings/', 'tablegen/proof/')
"""What is drawn is placed in a drawing's own units; a proof-reader shares no number with what it reads."""
SEVERAL = 3
"""A list of so many numbers is one of values that are shown, each as it stands."""
SAYS_A_COUNT = re.compile(r'\b(?:in|per|against|on the|along the) 12\b(?! ft)|\b12 (?:in\b|&)')
TYPED = 'layouts/verbs/'
QUOTES = ('checking.html',)
TWO_WORDS = re.compile(r'[A-Za-z]{2,}[,:;.]? (?:[a-z]+ )*[A-Za-z]{2,}')
A_TITLE = {'Rafter Tables'}
"""The title that a book has until it is given one: it is said through the catalogue."""


def named(path: Path) -> str:
    return path.relative_to(TOP).as_posix()


def with_parents(tree: ast.AST) -> dict[ast.AST, ast.AST]:
    return {child: node for node in ast.walk(tree) for child in ast.iter_child_nodes(node)}


def above(node: ast.AST, parents: dict[ast.AST, ast.AST]) -> Iterator[ast.AST]:
    while node in parents:
        node = parents[node]
        yield node


def strings(tree: ast.Module) -> list[str]:
    """Return the strings of a module, its docstrings and what only programmers are told apart."""
    parents = with_parents(tree)
    found = []
    for node in ast.walk(tree):
        if not isinstance(node, ast.Constant) or not isinstance(node.value, str):
            continue
        around = list(above(node, parents))
        docstring = isinstance(around[0], ast.Expr)
        for_programmers = any(
            isinstance(one, ast.Assert)
            or (isinstance(one, ast.Raise) and 'BookError' not in ast.unparse(one))
            for one in around
        )
        if not docstring and not for_programmers:
            found.append(node.value)
    return found


def english(tree: ast.Module) -> list[str]:
    """Return the strings of a module that are words of a sentence."""
    return [one for one in strings(tree) if TWO_WORDS.search(one) and one not in A_TITLE]


def counts(tree: ast.Module) -> list[int]:
    """Return the lines where a number stands that a system of units says; not in a list of several values."""
    parents = with_parents(tree)
    return [
        node.lineno
        for node in ast.walk(tree)
        if isinstance(node, ast.Constant)
        and type(node.value) is int
        and node.value in COUNTED
        and not any(
            (isinstance(one, (ast.Tuple, ast.List)) and len(one.elts) >= SEVERAL)
            or (isinstance(one, ast.Dict) and len(one.keys) >= SEVERAL)
            for one in above(node, parents)
        )
    ]


@over_each(sources('tablegen'))
def test_tablegen_says_nothing_in_english(path):
    assert english(tree_of(path)) == []


@pytest.mark.parametrize(
    ('written', 'seen'),
    [
        ("x = 'too steep for a rafter'", ['too steep for a rafter']),
        ("raise BookError(place, f'{x} is no length')", [' is no length']),
        ("raise ValueError('square must not be negative')", []),
        ('def f():\n    """Return what is asked."""', []),
        ("x = message('reader.no_length', written='a')", []),
        ("x = 'feet-inches', 'hip_valley', r'(?P<first>.+?) to'", []),
    ],
)
def test_a_sentence_is_seen(written, seen):
    assert english(ast.parse(written)) == seen


@over_each(sources('tablegen', 'layouts'))
def test_how_units_count_is_said_in_one_place(path):
    name = named(path)
    if not name.startswith(OWN_UNITS) and name not in COUNTS_OTHERS:
        assert counts(tree_of(path)) == []


@over_each([*sources('tablegen', 'layouts'), *TEMPLATES])
def test_words_leave_a_place_for_what_units_count_by(path):
    """A help text apart, which shows what a user may type, and what quotes a source."""
    said = strings(tree_of(path)) if path.suffix == '.py' else [path.read_text('utf-8')]

    if not named(path).startswith(TYPED) and path.name not in QUOTES:
        assert [one for one in said if SAYS_A_COUNT.search(one)] == []


def test_what_counts_other_things_does():
    """Also that no exception outlives its reason."""
    assert all(counts(tree_of(TOP / name)) for name in COUNTS_OTHERS)


@pytest.mark.parametrize(
    ('written', 'lines'),
    [
        ('x = 12 * foot', [1]),
        ('x = 1\ny = Measure(16)', [2]),
        ('for n in range(1, 12): pass', [1]),
        ('x = (4, 8, 12, 16)', []),
        ('x = 12.0, 120', []),
        ("x = '12'", []),
    ],
)
def test_a_number_that_units_say_is_seen(written, lines):
    assert counts(ast.parse(written)) == lines


@over_each(sources('tablegen', 'layouts'))
def test_what_is_said_by_name_has_words_and_all_that_stands_in_them(path):
    for node in ast.walk(tree_of(path)):
        match node:
            case ast.Call(ast.Name('message' | 'Message'), [ast.Constant(str() as name)], values):
                placed = {field for _, field, *_ in Formatter().parse(say.english(name)) if field}
                assert placed <= {'base'} | {value.arg for value in values} or None in {v.arg for v in values}
