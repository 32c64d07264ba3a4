"""The source itself: imports run one way, every module stands alone, tests compare with assert, templates only place."""

import ast
import subprocess
import sys
from functools import cache
from graphlib import TopologicalSorter
from pathlib import Path

import pytest
from each import over_each
from jinja2 import Environment, nodes

TOP = Path(__file__).resolve().parent.parent
TEMPLATES = sorted(TOP.glob('layouts/html/templates/*.html'))
LONGEST = 300
LONGER = {
    'layouts/bootstrap.py': 'runs before anything is installed, so it is one file with the standard library alone',
    'tests/test_bootstrap.py': 'the test of that one file',
    'tests/test_sheets.py': 'reads sheets back from finished PDFs, with its own small reader of content streams',
}
NOT_FOR_TABLEGEN = {'jinja2', 'layouts', 'markupsafe', 'pydyf', 'pypdf', 'tqdm', 'weasyprint'}
ARITHMETIC = (
    nodes.Add, nodes.Sub, nodes.Mul, nodes.Div, nodes.FloorDiv, nodes.Mod, nodes.Pow, nodes.Neg, nodes.Pos,
)  # fmt: skip
SIZES = {'gt', 'gteq', 'lt', 'lteq'}
RECKONING = {'abs', 'float', 'int', 'max', 'min', 'round', 'sum', 'format', 'filesizeformat'}

CLOSENESS = {'isclose', 'allclose', 'almosteq'}


def sources(*folders: str) -> list[Path]:
    found = sorted(path for folder in folders for path in TOP.glob(f'{folder}/**/*.py'))
    assert len(found) > 10
    return found


def module_of(path: Path) -> str:
    return '.'.join(path.relative_to(TOP).with_suffix('').parts).removesuffix('.__init__')


@cache
def tree_of(path: Path) -> ast.Module:
    """Return a module as it is read, once for all tests of it."""
    return ast.parse(path.read_text('utf-8'))


def imported(path: Path) -> set[str]:
    """Return the top packages that a file imports anywhere in it, also within its functions."""
    found = set()
    for node in ast.walk(tree_of(path)):
        if isinstance(node, ast.Import):
            found |= {name.name.partition('.')[0] for name in node.names}
        if isinstance(node, ast.ImportFrom):
            assert node.level == 0, f'{path}: imports are written in full'
            found.add(node.module.partition('.')[0])
    return found


def in_a_fresh_interpreter(code: str, *words: str) -> str:
    """Return what a new Python prints, started at the top of the project."""
    done = subprocess.run(
        [sys.executable, '-c', code, *words], cwd=TOP, capture_output=True, text=True, check=False
    )
    assert (done.returncode, done.stderr) == (0, '')
    return done.stdout


def bare_comparisons(tree: ast.Module) -> list[int]:
    """Return the lines where closeness is asked for and the answer thrown away: that checks nothing."""
    calls = [
        node.value
        for node in ast.walk(tree)
        if isinstance(node, ast.Expr) and isinstance(node.value, ast.Call)
    ]
    return [call.lineno for call in calls if ast.unparse(call.func).rpartition('.')[2] in CLOSENESS]


def reckoning(template: str) -> list[str]:
    """Return what a template computes.

    It may place a finished text, and ask whether there is one, or more than one of a thing; no more.
    """
    templates = Environment(autoescape=True, extensions=['jinja2.ext.i18n'])
    templates.newstyle_gettext = True
    tree = templates.parse(template)
    found = [type(node).__name__ for node in tree.find_all(ARITHMETIC)]
    sizes = [node for node in tree.find_all(nodes.Operand) if node.op in SIZES]
    found += [node.op for node in sizes if (node.op, node.expr) != ('gt', nodes.Const(1))]
    return found + [node.name for node in tree.find_all(nodes.Filter) if node.name in RECKONING]


@over_each(sources('tablegen'))
def test_tablegen_imports_nothing_of_the_pages(path):
    assert not imported(path) & NOT_FOR_TABLEGEN


def test_only_lengths_touch_the_units_library():
    assert [path.name for path in sources('tablegen', 'layouts') if 'pint' in imported(path)] == [
        'lengths.py'
    ]


def test_tablegen_loads_nothing_of_the_pages_and_no_units_library():
    """Also by way of what it imports: all its modules are loaded, and what came with them is looked at."""
    code = (
        'import sys, importlib; [importlib.import_module(name) for name in sys.argv[1:]]; print(*sys.modules)'
    )
    loaded = {
        name.partition('.')[0]
        for name in in_a_fresh_interpreter(code, *map(module_of, sources('tablegen'))).split()
    }

    assert 'tablegen' in loaded
    assert not loaded & (NOT_FOR_TABLEGEN | {'pint', 'mpmath'})


def needed(path: Path, ours: set[str]) -> set[str]:
    """Return the modules of ours that have to be there before a file is: what it imports as it is read, not in its functions.

    A package is needed too where a module of it is imported from outside: its own file runs first.
    """
    found: set[str] = set()
    unread: list[ast.AST] = [tree_of(path)]
    while unread:
        node = unread.pop()
        if isinstance(node, ast.ImportFrom):
            inner = {f'{node.module}.{name.name}' for name in node.names} & ours
            found |= inner if len(inner) == len(node.names) else {node.module, *inner}
        elif isinstance(node, ast.Import):
            found |= {name.name for name in node.names}
        elif not isinstance(node, (ast.FunctionDef, ast.AsyncFunctionDef, ast.Lambda)):
            unread += ast.iter_child_nodes(node)
    packages = {
        '.'.join(name.split('.')[:place]) for name in found for place in range(1, name.count('.') + 1)
    }
    return {
        name for name in found | packages if name in ours and not f'{module_of(path)}.'.startswith(f'{name}.')
    }


def test_every_module_imports_alone():
    """None needs another to have come first: what they import runs in no circle, and all of it is there."""
    paths = {module_of(path): path for path in sources('tablegen', 'layouts')}
    order = TopologicalSorter({name: needed(path, set(paths)) for name, path in paths.items()})

    last = list(order.static_order())  # refuses a circle, and names it
    code = 'import sys, importlib; [print(importlib.import_module(name).__name__) for name in sys.argv[1:]]'
    assert in_a_fresh_interpreter(code, *reversed(last)).split() == last[::-1]


@over_each(sources('tablegen', 'layouts', 'tests'))
def test_a_module_opens_with_a_sentence(path):
    sentence = ast.get_docstring(tree_of(path))

    assert sentence
    assert sentence.split('\n\n')[0].endswith('.')


def test_no_file_is_too_long_to_read():
    lengths = {
        path.relative_to(TOP).as_posix(): len(path.read_text('utf-8').splitlines())
        for path in sources('tablegen', 'layouts', 'tests')
    }

    assert {name for name, lines in lengths.items() if lines > LONGEST} == set(LONGER)
    assert all(LONGER.values())


@over_each(sources('tests'))
def test_no_comparison_is_thrown_away(path):
    assert bare_comparisons(tree_of(path)) == []


@pytest.mark.parametrize(
    ('written', 'lines'),
    [
        ('math.isclose(a, b)', [1]),
        ('x = 1\nallclose(a, b)', [2]),
        ('mp.almosteq(a, b)', [1]),
        ('np.testing.assert_allclose(a, b)', []),
        ('assert isclose(a, b)', []),
        ('x = isclose(a, b)', []),
        ('print(a)', []),
    ],
)
def test_a_comparison_thrown_away_is_seen(written, lines):
    assert bare_comparisons(ast.parse(written)) == lines


@over_each(TEMPLATES)
def test_a_template_only_places(path):
    assert reckoning(path.read_text('utf-8')) == []


@pytest.mark.parametrize(
    ('template', 'seen'),
    [
        ('{{ a + 1 }}', ['Add']),
        ('{% if a > 24 %}b{% endif %}', ['gt']),
        ('{% if a <= b %}b{% endif %}', ['lteq']),
        ('{% if a > 1 %}b{% endif %}', []),
        ('{{ a|round(2) }}', ['round']),
        ('{{ -a }}', ['Neg']),
        ('{% if a %}{{ a.text }}{% endif %}{% for b in a %}{{ loop.index }}{% endfor %}', []),
    ],
)
def test_a_template_that_reckons_is_seen(template, seen):
    assert reckoning(template) == seen


def test_templates_were_found():
    assert len(TEMPLATES) > 5
