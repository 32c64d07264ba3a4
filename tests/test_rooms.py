"""The rooms of the house: DEVELOPERS.md lists every folder of code, and what each takes from the others, and it is so."""

import ast
import re
from collections import defaultdict
from pathlib import Path

TOP = Path(__file__).resolve().parent.parent
ROOM = re.compile(r'^- `(?P<name>(?:tablegen|layouts)/\w+/)`:.*?\.(?: Uses (?P<uses>.*)\.)?$', re.MULTILINE)


def listed() -> dict[str, set[str]]:
    """Return the rooms that DEVELOPERS.md lists, each with the rooms that it says it uses."""
    text = (TOP / 'DEVELOPERS.md').read_text('utf-8').partition('## The rooms')[2].partition('\n## ')[0]
    joined = re.sub(r'\n  +', ' ', text)
    return {
        found['name']: set(re.findall(r'`([\w/]+/)`', found['uses'] or '')) for found in ROOM.finditer(joined)
    }


def built() -> dict[str, set[str]]:
    """Return the folders of code, each with the others that its modules import from."""
    found: dict[str, set[str]] = defaultdict(set)
    for path in sorted(
        path for package in ('tablegen', 'layouts') for path in TOP.glob(f'{package}/*/**/*.py')
    ):
        own = '/'.join(path.relative_to(TOP).parts[:2]) + '/'
        found[own] |= {room for room in rooms_of(path) if room != own}
    return dict(found)


def rooms_of(path: Path) -> set[str]:
    """Return the rooms that a file imports from, anywhere in it."""
    found = set()
    for node in ast.walk(ast.parse(path.read_text('utf-8'))):
        if not isinstance(node, ast.ImportFrom) or not node.module:
            continue
        for name in node.names:
            parts = f'{node.module}.{name.name}'.split('.')
            if len(parts) > 1 and (TOP / parts[0] / parts[1]).is_dir():
                found.add(f'{parts[0]}/{parts[1]}/')
    return {room for room in found if room.startswith(('tablegen/', 'layouts/'))}


def test_every_room_is_listed_with_what_it_uses():
    rooms, real = listed(), built()

    assert sorted(rooms) == sorted(real)
    assert {name: rooms[name] ^ real[name] for name in rooms if rooms[name] != real[name]} == {}


def test_rooms_use_one_another_one_way():
    """In the order of the list: a room uses only rooms above it, and tablegen none of layouts."""
    rooms = listed()
    order = list(rooms)

    assert len(order) > 12
    for place, name in enumerate(order):
        assert rooms[name] <= set(order[:place]), name
    assert order == sorted(order, key=lambda name: not name.startswith('tablegen/'))


def test_no_module_stands_outside_the_rooms_but_those_that_are_named():
    text = (TOP / 'DEVELOPERS.md').read_text('utf-8').partition('## The rooms')[2].partition('\n## ')[0]
    for package in ('tablegen', 'layouts'):
        for path in TOP.glob(f'{package}/*.py'):
            assert (
                path.name == '__init__.py' or f'`{path.name}`' in text or f'`{package}/{path.name}`' in text
            )
