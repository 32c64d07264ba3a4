"""Words: none is said but through the catalogue. Code is read as a tree of its syntax, templates as a tree of theirs."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from each import over_each
from jinja2 import Environment, nodes

LAYOUTS = Path(__file__).parent.parent / 'layouts'
SAID = {'_', 'N_', 'n_'}
"""What words go through."""
FAULTS = {'AssertionError', 'KeyError', 'TypeError', 'ValueError'}
"""Raised at the program's own mistakes: an engineer reads them."""
WORDS = re.compile(r'[A-Za-z]{2,}[’\']?[,;:.!?]? +[A-Za-z]{2,}')
"""Two English words, one after the other."""
OTHER = re.compile(r'^rafterbook |[<>{}=\\^@]|/\w+ Do\b')
"""A command as it is typed, markup, style sheets, patterns, a PDF's operators."""
KEPT = {
    'bootstrap.py': 'runs before anything is installed, where no catalogue is',
    'pages/slopes_room.py': 'what a template says, to count its lines by; held against it in tests/test_roofs_of_our_own.py',
    'pdf/typeset.py: cannot load library': 'what a library says',
    'pdf/typeset.py: Creating layout - Page': 'what a library says',
    'quick/faces.py': 'letters that are set to compare how',
    'quick/shaper.py': 'functions of a library, as its language writes them',
}
"""Words that are not said through a catalogue, each with its reason."""
LETTERS = re.compile(r'[^\W\d_]{2,}')


def unsaid(source: str) -> list[str]:
    """Return a module's strings of two or more words that go through no catalogue; what stands in them as \\0."""
    tree = ast.parse(source)
    passed = {id(part) for node in ast.walk(tree) for part in _let_pass(node)}
    found = []
    for node in ast.walk(tree):
        if id(node) in passed:
            continue
        if isinstance(node, ast.JoinedStr):
            passed |= {id(part) for part in node.values if isinstance(part, ast.Constant)}
            found.append(
                ''.join(
                    str(getattr(part, 'value', '')) if isinstance(part, ast.Constant) else '\0'
                    for part in node.values
                )
            )
        elif isinstance(node, ast.Constant) and isinstance(node.value, str):
            found.append(node.value)
    return [said for said in found if WORDS.search(said) and not OTHER.search(said)]


def _let_pass(node: ast.AST) -> Iterator[ast.AST]:
    """Return what documents, what goes through the catalogue, and what is told of the program's own mistakes."""
    match node:
        case ast.Expr(ast.Constant() as words):
            yield words
        case ast.Call(ast.Name(name)) if name in SAID:
            yield from ast.walk(node)
        case ast.Assert(msg=ast.AST() as words):
            yield from ast.walk(words)
        case ast.Raise(ast.Call(ast.Name(name))) if name in FAULTS:
            yield from ast.walk(node)


def unsaid_in(template: str) -> list[str]:
    """Return the words that a template says outside of its `trans` blocks, markup and style apart."""
    templates = Environment(extensions=['jinja2.ext.i18n'])
    templates.newstyle_gettext = True
    tree = templates.parse(template)
    text = ''.join(f'{part.data}\0' for part in tree.find_all(nodes.TemplateData))
    said = {
        id(part)
        for call in tree.find_all(nodes.Call)
        for part in call.find_all(nodes.Const)
        if _is_said(call)
    }
    placed = [
        part.value
        for part in tree.find_all(nodes.Const)
        if isinstance(part.value, str) and id(part) not in said
    ]
    return LETTERS.findall(re.sub(r'<[^>]*>|&\w+;', ' ', text)) + list(filter(WORDS.search, placed))


def _is_said(call: nodes.Call) -> bool:
    return isinstance(call.node, nodes.Name) and call.node.name in ('gettext', 'ngettext', '_')


def _kept(path: str, said: str) -> bool:
    return path in KEPT or f'{path}: {said}' in KEPT


@over_each(sorted(LAYOUTS.rglob('*.py')))
def test_code_says_no_words_but_through_the_catalogue(path):
    name = path.relative_to(LAYOUTS).as_posix()

    assert [said for said in unsaid(path.read_text('utf-8')) if not _kept(name, said)] == []


@over_each(sorted(LAYOUTS.rglob('*.html')))
def test_a_template_says_no_words_but_through_the_catalogue(path):
    assert unsaid_in(path.read_text('utf-8')) == []


@pytest.mark.parametrize(
    ('source', 'seen'),
    [
        ("_('cut one pair')", []),
        ("X = {'a': N_('cut one pair')}", []),
        ("n_('{count} long page', '{count} long pages', 2)", []),
        ('"""Cut one pair."""', []),
        ("assert x, 'it was cut before'", []),
        ("raise ValueError('it was cut before')", []),
        ("raise BookError('pitch', 'is no pitch')", ['is no pitch']),
        ("X = 'hip, valley'", ['hip, valley']),
        ("X = 'hip_valley'", []),
        ("X = f'{a} in of it'", ['\0 in of it']),
        ("X = f'{a} cut {b} times'", []),
        ("X = f'body {{ top: {a}mm; left: {b}mm }}'", []),
        ("X = ['rafterbook find 6']", []),
        ("say(a, 'cut one pair')", ['cut one pair']),
    ],
)
def test_words_said_past_the_catalogue_are_seen(source, seen):
    assert unsaid(source) == seen


@pytest.mark.parametrize(
    ('template', 'seen'),
    [
        ('<p class="two words">{{ it.x }}</p>', []),
        ('<p>{% trans %}Cut one pair.{% endtrans %}</p>', []),
        ('<p>{% trans n=2 %}one page{% pluralize %}{{ n }} pages{% endtrans %}</p>', []),
        ('<p>Cut</p>', ['Cut']),
        ('<p>{{ it.x }} in</p>', ['in']),
        ('{{ head(it, "Cut one pair") }}', ['Cut one pair']),
        ('<p>{{ _("Cut one pair") }}</p>', []),
        ('<p style="top:{{ it.x }}mm">×</p>', []),
    ],
)
def test_words_of_a_template_past_the_catalogue_are_seen(template, seen):
    assert unsaid_in(template) == seen
